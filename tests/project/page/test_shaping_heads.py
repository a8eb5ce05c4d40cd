"""Headings of a shaping become the names of the lines below them."""

from __future__ import annotations

import pytest

from stepper.project.page.file_text import write_file
from stepper.project.page.pasted import take_apart

PAGE = "Vest\n\nSizes: S (M)\n\nBACK\nCast on 90 (96) sts.\nKnit 8 rows.\n{head}\n{below}\n"


def kinds(head: str, below: str) -> tuple[str, str]:
    """Return what a heading and the row below it become."""
    *_, one, other = take_apart(PAGE.format(head=head, below=below)).parts[-1].pieces
    return one.kind, other.kind


@pytest.mark.parametrize("head", ["Shape armholes", "Shape Armholes:", "Neck shaping"])
def test_a_heading_is_the_name_of_the_line_below_it(head: str) -> None:
    """She hears it when she comes there, and a line may mean what stands below it."""
    below = "Bind off 6 (7) sts at beg of next 2 rows."
    assert kinds(head, below) == ("label", "line")
    pieces = take_apart(PAGE.format(head=head, below=below)).parts[-1].pieces
    assert pieces[-1].line is not None
    assert pieces[-1].line.label == head.rstrip(":")
    assert [piece.text for piece in pieces[-2:]] == [head, below]
    assert f"      {head.rstrip(':')}:\n      {below}\n" in write_file(take_apart(PAGE.format(head=head, below=below))).text


@pytest.mark.parametrize(
    "below",
    [
        "Next row Cast off 4 (5) sts, k to end.",
        "Armhole row (RS): K1, k2tog, k to last 3 sts, ssk, k1.",
        "Ponder the frobs.",
    ],
)
def test_a_heading_stays_a_comment_above_what_has_a_name_or_is_not_read(below: str) -> None:
    """Two names in front of one line would be read otherwise."""
    assert kinds("Shape armholes", below)[0] == "comment"


def test_a_name_of_a_part_is_no_name_of_a_line() -> None:
    """Only what says what is shaped below it is."""
    assert kinds("Pocket lining", "Knit 4 rows.")[0] != "label"


def test_a_heading_with_a_full_stop_is_the_name_without_it() -> None:
    """ "Shape neck.:" is no line of the file."""
    written = write_file(take_apart(PAGE.format(head="Shape neck.", below="Bind off 6 (7) sts at beg of next 2 rows."))).text
    assert "      Shape neck:\n" in written
