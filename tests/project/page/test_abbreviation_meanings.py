"""Abbreviations that a page defines otherwise than they are read here."""

from __future__ import annotations

import pytest

from stepper.project.page.abbreviation_meanings import note_other_meaning
from stepper.project.page.file_text import write_file
from stepper.project.page.pasted import take_apart
from stepper.project.page.pieces import Piece


def told(text: str) -> str:
    """Give what is told of a row of abbreviations."""
    piece = note_other_meaning(Piece(kind="comment", text=text, row=1, front="abbreviations"))
    assert (piece.kind == "note") == bool(piece.why)
    return piece.why


@pytest.mark.parametrize(
    ("text", "meant", "read"),
    [
        ("SK2P: slip 2 sts knitwise, k1, pass 2 slipped sts over", "s2kp", "sk2p"),
        ("M1 = knit into front and back of next st", "kfb", "m1"),
        ("CDD: sl 1, k2tog, psso; yo: yarn over", "sk2p", "s2kp"),
        ("k2tog: knit 3 sts together", "k3tog", "k2tog"),
        ("inc = m1", "m1", "inc"),
    ],
)
def test_another_meaning_is_told(text: str, meant: str, read: str) -> None:
    """A decrease that leans elsewhere, or an increase that takes up a stitch, is another knitting. Meanings: common practice."""
    assert f"the page means {meant} by" in told(text)
    assert f"read as {read} here" in told(text)


@pytest.mark.parametrize(
    "text",
    [
        "sk2p = slip 1, knit 2 together, pass slipped stitch over",
        "ssk = slip 1, k1, psso",
        "ssk: slip 2 sts knitwise, k2tog tbl",
        "k2tog - knit 2 sts together",
        "M1: make 1 stitch by lifting the bar",
        "inc: knit in front and back of st",
        "dec = k2tog",
        "K = knit",
        "pm: place marker",
        "RS: right side",
    ],
)
def test_the_usual_meaning_is_left_alone(text: str) -> None:
    """A mark in front of every list of abbreviations would be taken off unread."""
    assert told(text) == ""


def test_the_file_of_a_page_says_so_under_a_mark() -> None:
    """No file is sound while a mark stands in it, so the lines are looked at before they are knitted."""
    page = "Bramble hat\n\nABBREVIATIONS\nk: knit\nM1: knit into front and back of st\n\nCast on 72 sts. Join in the round.\n*K5, M1; rep from * around.\n"
    text = write_file(take_apart(page)).text
    assert "LOOK (row 5 of the text): the page means kfb by" in text.replace("# LOOK", "LOOK")
