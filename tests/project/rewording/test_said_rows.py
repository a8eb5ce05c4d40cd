"""Rows for words that are only said with the line."""

from __future__ import annotations

from stepper.project.rewording.reword import put_words
from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.said_rows import said_row, said_row_behind


def test_what_is_said_leaves_the_line() -> None:
    """Nobody knits the words, but she has to hear them."""
    made = put_words(as_printed("K10 (both sides)."), said_row("(", r"\s*\((?P<said>[a-z ]+)\)", "K1 (one)."))
    assert (made.text, made.kept) == ("K10.", ("both sides",))


def test_what_stands_before_it_stays() -> None:
    """The words hang on what they are told of, and that is knitted."""
    row = said_row_behind("for", r"(\brows)\s+(?P<said>for\s+[a-z]+)", "Knit 2 rows for hem.")
    made = put_words(as_printed("Knit 2 rows for hem."), row)
    assert (made.text, made.kept) == ("Knit 2 rows.", ("for hem",))


def test_no_instruction_is_looked_for_in_words_that_are_spelt_out() -> None:
    """ "Work" is such a word: where the pattern spells it out, it is known to instruct nothing."""
    made = put_words(as_printed("Knit 2 rows, work is hard."), said_row("work", r",\s*(?P<said>work is hard)", "x"))
    assert made.text == "Knit 2 rows."
