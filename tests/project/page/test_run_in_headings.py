"""Headings printed in one row with their text."""

from __future__ import annotations

import pytest

from stepper.project.page.pasted import take_apart
from stepper.project.page.run_in_headings import set_headings_apart


@pytest.mark.parametrize(
    ("row", "parts"),
    [
        ("Shape Armholes Bind off 3 sts at beg of next 2 rows.", ["Shape Armholes", "Bind off 3 sts at beg of next 2 rows."]),
        ("LEFT FRONT … With smaller needles cast on 40 sts.", ["LEFT FRONT", "With smaller needles cast on 40 sts."]),
        ("Knit 2 rows. Left Sleeve Cast on 40 sts.", ["Knit 2 rows.", "Left Sleeve", "Cast on 40 sts."]),
        ("Shape raglan – Cast off 3 sts at beg of next 2 rows.", ["Shape raglan", "Cast off 3 sts at beg of next 2 rows."]),
        ("Ears: (make two) Using brown, cast on 5 sts.", ["Ears: (make two)", "Using brown, cast on 5 sts."]),
        ("Cuff. Cast on 36 sts loosely.", ["Cuff.", "Cast on 36 sts loosely."]),
        ("Thumb gusset. Round 1: K20, m1r, k to end.", ["Thumb gusset.", "Round 1: K20, m1r, k to end."]),
        ("Shape crown. *K2tog; rep from * to end.", ["Shape crown.", "*K2tog; rep from * to end."]),
        ("Prickles (knit 6 alike): Cast on 3 sts.", ["Prickles (knit 6 alike)", "Cast on 3 sts."]),
        ("Button Band.\u2014With 3 mm needles cast on 13 sts.", ["Button Band.", "With 3 mm needles cast on 13 sts."]),
        ("BUTTONHOLE BAND As button band, making 3 holes.", ["BUTTONHOLE BAND", "As button band, making 3 holes."]),
    ],
)
def test_a_heading_in_a_row_stands_apart(row: str, parts: list[str]) -> None:
    """What is below it is then read as a sentence of its own."""
    assert set_headings_apart([row])[0] == parts


@pytest.mark.parametrize(
    "row",
    ["Work Back as for Front.", "Knit the ears (make two) like the tail.", "Ears (make two)", "K to end. Sleeve sts remain on hold.", "Back of the neck is shaped by short rows.", "Raglan Dec Row (RS): K2, ssk, knit to end.", "Left Front Decrease Round: Knit.", "Body Inc Rnd: K1, M1L, k to end.", "Neck Dec Row (RS): K1, ssk, k to end.", ""],
)
def test_a_sentence_about_a_part_stays_whole(row: str) -> None:
    """It heads nothing."""
    assert set_headings_apart([row])[0] == [row]


def test_a_part_with_a_full_stop_may_end_the_sentence_above() -> None:
    """Its first letter alone does not make it a heading."""
    assert set_headings_apart(["Knit 20 sts of the Left", "Front. Knit to end."])[0] == ["Knit 20 sts of the Left", "Front. Knit to end."]
    assert set_headings_apart(["Knit 20 rows.", "Front. Knit to end."])[0] == ["Knit 20 rows.", "Front.", "Knit to end."]
    assert set_headings_apart(["Hand. then knit"])[0] == ["Hand. then knit"]


def test_pieces_are_numbered_as_the_page_is() -> None:
    """She looks for row 2 on the page, however many rows it was cut into."""
    pasted = take_apart("Cast on 40 sts.\nShape Neck Cast off 3 sts at beg of next 2 rows.\nOffset the frobs.")
    assert [piece.row for piece in pasted.pieces if "frobs" in piece.text] == [3]
    assert [piece.row for piece in pasted.pieces if "Cast off" in piece.text] == [2]


def test_a_part_begins_though_its_first_sentence_is_not_read() -> None:
    """Else all its rows would be knitted on to the part before. One that is made once asks for nothing."""
    page = take_apart(
        "Toy hedgehog\n\nBody: (make one) Begin at the frob and twiddle.\nKnit 4 rows.\nCast off.\n\n"
        "Ears: (make two) Cast on 5 sts and twiddle.\nKnit 3 rows.\nCast off.\n"
    )
    assert [part.name for part in page.parts] == ["body", "ears"]
    body, ears = ([piece.kind for piece in part.pieces if piece.kind != "comment"] for part in page.parts)
    assert body == ["note", "line", "line"]
    assert ears == ["line", "line", "note", "line", "line"]  # how often they are made is a line
