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
    ],
)
def test_a_heading_in_a_row_stands_apart(row: str, parts: list[str]) -> None:
    """What is below it is then read as a sentence of its own."""
    assert set_headings_apart([row])[0] == parts


@pytest.mark.parametrize(
    "row",
    ["Work Back as for Front.", "K to end. Sleeve sts remain on hold.", "Back of the neck is shaped by short rows.", ""],
)
def test_a_sentence_about_a_part_stays_whole(row: str) -> None:
    """It heads nothing."""
    assert set_headings_apart([row])[0] == [row]


def test_pieces_are_numbered_as_the_page_is() -> None:
    """She looks for row 2 on the page, however many rows it was cut into."""
    pasted = take_apart("Cast on 40 sts.\nShape Neck Cast off 3 sts at beg of next 2 rows.\nOffset the frobs.")
    assert [piece.row for piece in pasted.pieces if "frobs" in piece.text] == [3]
    assert [piece.row for piece in pasted.pieces if "Cast off" in piece.text] == [2]
