"""Rows that only name a stretch of the knitting, and their look-alikes that order."""

from __future__ import annotations

import pytest

from stepper.project.page.pasted import take_apart
from stepper.project.page.stretches import names_a_stretch
from tests.tables import each_row

_BELOW = "Row 1: K to end."


@pytest.mark.parametrize("row", ["Short rows for the back neck", "~ Set up raglans ~", "~ Shape the back neck (optional) ~", "Raise the back neck with short rows:"])
def test_what_only_names_a_stretch_is_no_line(row: str) -> None:
    """Nothing is knitted by it, and nothing is asked of the knitter."""
    assert names_a_stretch(row)


@pytest.mark.parametrize("row", ["~ Knit 4 rnds ~", "* Knit to end, purl *", "Short rows for 4 cm", "~ Set up raglans", "Short rows for the back neck: k20, turn."])
def test_a_row_with_work_in_it_names_no_stretch(row: str) -> None:
    """A number, or one sign alone, and it may be an instruction."""
    assert not names_a_stretch(row)


@each_row(
    "row",
    [
        "First half", "Bust short rows", "Back to the body", "The second half:", "Heel - first half", "Heel \u2013 second half", "Left Front: lower part", "Hand, continued", "Body (continued)", "Getting started",
        "Knitting the body", "Starting the toe", "Joining the fronts", "Dividing for the sleeves", "DIVIDING FOR BODY AND SLEEVES", "SET UP THE PANELS", "Elevation in the neck",
        "Raising the back neck", "On to the heel!", "The plain part", "The bumpy part", "The lace bit", "The row of holes", "The end",
    ],
)  # fmt: skip
def test_the_name_of_a_stretch_above_rows_is_a_heading(row: str) -> None:
    """Its rows stand below it."""
    assert names_a_stretch(row, _BELOW)


@each_row(
    "row",
    [
        "Garter stitch", "In garter stitch", "The other half", "The other half again", "Second half the same", "The next part", "The purl part", "A row of holes", "The row of purl", "Half the stitches",
        "No shaping", "Reverse shaping", "Both sides alike", "Moss stitch all over", "Working in garter stitch", "Knitting every row", "Joining in B", "Purl back", "Same again", "The left half twice",
        "Starting with a purl row", "Turning", "Second size: none", "The end of the row", "Join shoulders", "first half",
    ],
)  # fmt: skip
def test_what_may_be_an_order_is_no_name(row: str) -> None:
    """A heading is not knitted: in doubt the row is asked about."""
    assert not names_a_stretch(row, _BELOW)


def test_a_name_that_may_be_an_order_needs_the_row_below() -> None:
    """"Join shoulders" alone is to be done; above a row that says how, it names it. So with a fabric and how long."""
    assert names_a_stretch("Join shoulders", "With RS together, join the shoulders with a three-needle bind-off.")
    assert names_a_stretch("Join fronts", "Rejoin yarn to the right front, RS facing.")
    assert not names_a_stretch("Join shoulders", "")
    assert not names_a_stretch("JOIN FRONTS", "Knit 4 rows.")
    assert names_a_stretch("The garter part", "Row 1: Knit.")
    assert not names_a_stretch("The garter part", "Work 10 rows.")
    assert not names_a_stretch("The row of holes", "Knit 10 rows.")


@pytest.mark.parametrize("name", ["THE CRAVAT", "CAP", "LEFT GLOVE", "Little finger", "TO COMPLETE", "Finishing touches", "Putting it together", "Sewing up", "Left Front (Button) Band"])
def test_a_piece_by_any_of_its_names_begins_a_part(name: str) -> None:
    """What is below is then a section of its own."""
    parts = take_apart(f"Harbour Set\n\nBODY\nCast on 40 sts. Join in the round.\nKnit 2 rounds.\n\n{name}\n\nKnit 4 rounds.\n").parts
    assert [part.name for part in parts][1:] == [name.lower().removeprefix("the ").replace("(button)", "button")]
    assert not [piece for part in parts for piece in part.pieces if piece.kind == "note"]
