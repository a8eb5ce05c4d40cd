"""Marks to which other lines refer. Source: patterns in print, UK above all; common practice."""

from __future__ import annotations

import pytest

from stepper.project.marks.part_marks import single_stars, without_marks
from stepper.project.problems import Span


def parted(text: str) -> tuple[list[tuple[str, int]], list[tuple[str, ...]]]:
    """Return the rows with the columns they begin at, and the marks."""
    rows, marks = without_marks((text, Span(line=1, column=1, length=len(text))))
    return [(row, place.column) for row, place in rows], marks


@pytest.mark.parametrize(
    ("text", "rows", "marks"),
    [
        ("Knit 2 rows. **", [("Knit 2 rows.", 1)], [(), ("**",)]),
        ("Knit 2 rows.**", [("Knit 2 rows.", 1)], [(), ("**",)]),
        ("** Knit 2 rows.", [("Knit 2 rows.", 4)], [("**",), ()]),
        ("Knit 2 rows. *** Purl 1 row.", [("Knit 2 rows.", 1), ("Purl 1 row.", 18)], [(), ("***",), ()]),
        ("Knit 2 rows. (**)", [("Knit 2 rows.", 1)], [(), ("**",)]),
        ("**", [], [("**",)]),
    ],
)
def test_a_mark_is_taken_off_where_it_stands(text: str, rows: list[tuple[str, int]], marks: list[tuple[str, ...]]) -> None:
    """The words on both sides keep their place."""
    assert parted(text) == (rows, marks)


@pytest.mark.parametrize(
    "text",
    [
        "Work as for back to **.",
        "**K2, p2; rep from ** to end.",
        "*K2, p2; rep from * to end.",
        "K2, **p2, k2; rep from ** 3 times.",
        "Work from ** to ** as for back.",
    ],
)
def test_a_mark_that_is_referred_to_or_repeats_stays(text: str) -> None:
    """It belongs to the words of the line."""
    assert parted(text) == ([(text, 1)], [(), ()])


def test_what_stands_in_a_note_is_no_row_of_its_own() -> None:
    """Split off the note, its words would be worked."""
    note = ("Note: ** K 4 rnds.", Span(line=1, column=1))
    assert without_marks(note) == ([note], [(), ()])


def test_single_stars_are_marks_only_where_a_row_works_them_again() -> None:
    """A star begins a repeat inside a row; two that stand alone mark a part only if a line calls it by them."""
    marked = ["* Next round: K to end.", "Knit 1 round *.", "Work from * to * once more."]
    assert single_stars(marked)
    assert not single_stars(marked[:2])
    assert not single_stars([*marked, "* K2, p2 * to end."])
    place = Span(line=1, column=1)
    assert without_marks(("Knit 1 round *.", place), stars=True)[1] == [(), ("*",)]
    assert without_marks(("Knit 1 round *.", place))[1] == [(), ()]


def test_one_star_in_front_of_rows_marks_where_a_repeat_goes_back_to() -> None:
    """In front of stitches it begins a repeat of them, and "rep from * 3 times" is none of rows."""
    block = ["* Dec 1 st at each end of next row.", "Work 3 rows straight.", "Rep from * 3 times more."]
    assert single_stars(block)
    assert not single_stars(["* K3, p1.", "Rep from * 3 times more."])
    assert not single_stars([*block, "* Work 4 rows even."])
    assert not single_stars(["* Work 4 rows even.", "Rep from * to 7 sts before end, k7."])
