"""How rows say that what stands between two marks is worked again."""

from __future__ import annotations

import pytest

from stepper.project.marks.mark_references import plain_reference, split_reference, take_references
from stepper.project.problems import Span
from stepper.project.respelt import Respelt
from tests.tables import each_row


@each_row(
    ("row", "plain"),
    [
        ("Rep rounds between * and ** 2 more times.", "again from * to ** 2 times."),
        ("Repeat from * to * twice more.", "again from * to * 2 times."),
        ("Repeat from * to * another time.", "again from * to * 1 times."),
        ("Rep rows between ** and ** once again.", "again from ** to ** 1 times."),
        ("Work rounds from * to ** an additional two times.", "again from * to ** 2 times."),
        ("Rep rnds between * and ** 3 further times.", "again from * to ** 3 times."),
        ("Work from † to †† again.", "again from † to †† 1 times."),
        ("Repeat instructions from * to ** one more time.", "again from * to ** 1 times."),
        ("Work from * to * 3 times in total.", "again from * to * 2 times."),
        ("Repeat from ** to ** for a total of 4 times.", "again from ** to ** 3 times."),
        ("Rep between [*] and [**] once.", "again from * to ** 1 times."),
        ("Repeat from * to ** until piece measures 3 cm.", "again from * to ** until piece measures 3 cm."),
    ],
)
def test_every_way_to_say_it_comes_to_one(row: str, plain: str) -> None:
    """Once, twice and "3 times" behind "repeat" are besides the time that is written; "in total" holds it. Common practice."""
    made = plain_reference(row)
    assert made is not None
    assert made.text == plain
    assert len(made.places) == len(plain) + 1


@pytest.mark.parametrize(
    "row",
    [
        "Work from * to ** twice.",
        "Work from *** to *** once more, on 16 sts.",
        "Rep from * to end.",
        "Rep from * to last 3 sts, k3.",
        "Rep from * 2 more times.",
        "Work from ** in total once.",
    ],
)
def test_other_rows_stay_as_they_are(row: str) -> None:
    """With or without the first time, over other stitches, or a repeat of stitches: none of these is taken for it."""
    assert plain_reference(row) is None


def test_a_row_of_rounds_may_end_with_it() -> None:
    """A row with a star of its own repeats its stitches."""
    row = "Knit 2 rounds; rep from * 2 more times."
    assert row[split_reference(row) :] == "rep from * 2 more times."
    assert split_reference("Rnd 1: *K2, p2; rep from * 2 times.") == 0
    assert split_reference("K2, p2; rep from * 2 times.") == 0


def test_what_goes_on_with_the_row_above_is_no_row_of_its_own() -> None:
    """A page breaks its rows anywhere."""
    rows = [
        ("Rnd 1: *K2, p2*,", Span(line=1, column=1)),
        ("rep from * to * 4 times.", Span(line=2, column=1)),
    ]
    assert take_references(rows, Respelt()) == rows


def test_the_printed_words_are_kept() -> None:
    """She reads what her page prints."""
    respelt = Respelt()
    row = ("Rep rounds between * and ** once.", Span(line=3, column=7))
    (made,) = take_references([row], respelt)
    assert made[0] == "again from * to ** 1 times."
    assert respelt.words([made]) == row[0]
