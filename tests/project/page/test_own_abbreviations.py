"""Abbreviations that a pasted page explains."""

from __future__ import annotations

import pytest

from stepper.plan.compile import compile_plan
from stepper.project.page.file_text import write_file
from stepper.project.page.own_abbreviations import abbreviation_rows, read_lists
from stepper.project.page.pasted import take_apart
from stepper.project.page.pieces import Piece
from stepper.project.reader import read_project

PAGE = """Bramble hat

ABBREVIATIONS
k: knit
{list}

Cast on 72 sts. Join in the round.
Rnd 1: *K5, {used}; rep from * around.
"""


def pieces(*texts: str) -> list[Piece]:
    """Make rows of a list."""
    return [
        Piece(kind="comment", text=text, row=row, front="abbreviations") for row, text in enumerate(texts, 1)
    ]


@pytest.mark.parametrize(
    ("listed", "used", "stitches", "after"),
    [
        ("M1: knit into front and back of st", "M1", "kfb", 84),
        ("SK2P: slip 2 sts tog knitwise, k1, pass 2 slipped sts over\nyo: yarn over", "yo, sk2p, yo", "s2kp", 72),
        ("SE: slip edge: slip the first stitch purlwise\nwith yarn in front", "SE", "sl wyif", 72),
        ("k2tog: knit 3 sts together", "k2tog", "k3tog", 54),
    ],
)  # fmt: skip
def test_the_lines_are_read_by_the_list_of_the_page(
    listed: str, used: str, stitches: str, after: int
) -> None:
    """Counts by hand: 72 sts in 12 sixes, 9 eights or 9 eights with yarn overs. What the page means wins."""
    text = write_file(take_apart(PAGE.format(list=listed, used=used))).text
    assert "abbreviations:" in text
    project = read_project(text.replace("LOOK", "looked at")).project
    assert project is not None
    plan = compile_plan(project).plan
    assert plan is not None
    last = plan.rounds[-1]
    assert stitches in {run.stitch for run in last.runs}
    assert last.after == after
    assert any("as the page defines it" in caution.text for caution in plan.warnings)


@pytest.mark.parametrize(
    "text",
    [
        "sk2p = slip 1, knit 2 together, pass slipped stitch over",
        "ssk = slip 1, k1, psso",
        "ssk: slip 2 sts knitwise, k2tog tbl",
        "k2tog - knit 2 sts together",
        "K = knit",
        "pm: place marker",
        "RS: right side",
    ],
)
def test_the_usual_meaning_is_left_alone(text: str) -> None:
    """A list that says what everybody says adds nothing to the file."""
    found = read_lists(pieces(text))
    assert all(one.meaning is None for one in found.abbreviations.known.values())
    assert found.pieces == tuple(pieces(text))


def test_only_what_the_lines_use_is_written() -> None:
    """The rest of the list stands in the file as it is printed."""
    found = read_lists(pieces("SE: slip 1 purlwise with yarn in front", "T2: k2tog, yo"))
    assert abbreviation_rows(found.abbreviations, ["Rnd 1: *T2; rep from * to end."]) == [
        "",
        "abbreviations:",
        '  T2: "k2tog, yo"',
    ]
    assert abbreviation_rows(found.abbreviations, ["Knit 1 round."]) == []


def test_another_stitch_for_knit_stands_under_a_mark() -> None:
    """No file is sound while a mark stands in it, so the lines are looked at before they are knitted."""
    (piece,) = read_lists(pieces("K = knit through the back loop")).pieces
    assert piece.kind == "note"
    assert "k1 tbl" in piece.why


def test_a_row_whose_abbreviation_is_not_read_is_no_line() -> None:
    """It says why at its place."""
    text = write_file(take_apart(PAGE.format(list="KW: wrap the yarn twice around 2 sts", used="KW"))).text
    assert '"KW" is an abbreviation of the page, and what it means is not read' in text
    assert "Note: Rnd 1: *K5, KW; rep from * around." in text


def test_a_meaning_above_the_cast_on_needs_no_heading() -> None:
    """Old pages put it below the tension; worked as a row it would be the first of the garment, and "inc" would use a stitch."""
    page = take_apart(
        "HARBOUR MITTENS\n\nTension, 6 sts and 8 rounds to the inch.\n\n"
        "C6: slip the next 3 sts to the cable needle and leave at the front, k3, then k3 from the cable needle.\n"
        "Inc: make a stitch by lifting the bar before the next st and knitting into the back of it.\n\n"
        "RIGHT HAND\n\nCast on 36 sts.\nNext rnd: k5, C6, k to end.\nNext rnd: k5, inc, k to end.\n"
    )
    assert {name: own.meaning.codes for name, own in page.abbreviations.known.items() if own.meaning} == {"C6": ("3/3 lc",), "Inc": ("m1",)}
    assert [piece.text for piece in page.pieces if piece.kind == "line"] == [
        "Cast on 36 sts.",
        "Next rnd: k5, C6, k to end.",
        "Next rnd: k5, inc, k to end.",
    ]


def test_a_sentence_broken_over_rows_is_no_list() -> None:
    """Its rows begin with words, and no short form; it would be told by nobody."""
    page = take_apart("Wren hat\n\nABBREVIATIONS\nThe first three and the\nlast three stitches are\nkept in garter stitch\nthroughout.\n\nCast on 72 sts.\n")
    (said,) = [piece for piece in page.pieces if piece.text.startswith("The first")]
    assert (said.kind, said.text) == ("note", "The first three and the last three stitches are kept in garter stitch throughout.")
