"""A line in the grammar's words remembers where each letter is printed."""

from __future__ import annotations

from stepper.project.rewording.reworded import Reworded, as_printed


def test_a_line_as_printed_is_where_it_is() -> None:
    """What needs no other words is shown at its own place."""
    line = as_printed("K2, p2 to end.")
    assert line.place(4, 2) == (4, 2)
    assert line.kept == ()


def test_words_put_in_are_shown_where_the_printed_ones_stand() -> None:
    """A problem in words that nobody printed would otherwise be shown nowhere, or behind the line."""
    line = Reworded("knit to end", (0, 0, 0, 0, 1, 2, 3, 4, 5, 6, 7, 8))
    assert line.place(0, 4) == (0, 1)
    assert line.place(8, 3) == (5, 3)
    assert line.place(50, 1) == (8, 1)
