"""Pieces worked alike: told once, with boxes for both, and only if they are alike."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.report.sheet.blocks import CountCheck, RoundRow, RoundTable, TickBox
from stepper.report.sheet.pairs import join_words, merge_rows, tell_apart
from stepper.report.sheet.rounds import lay_out_rounds
from stepper.sitting.project_file import load_project

SHIPPED = Path(__file__).parents[3] / "sample_projects"


def row(words: str, *, after: int = 8, check: CountCheck | None = None, remark: str = "") -> RoundRow:
    """Make a row of one round of eight stitches."""
    return RoundRow(
        numbers="1", remarks=(remark,) if remark else (), label="", words=(words,), altered="", check=check,
        before=8, after=after, boxes=((TickBox(number=1, said="Round 1"),),),
    )  # fmt: skip


@pytest.mark.parametrize(
    ("one", "other", "joined"),
    [
        ("left sleeve", "right sleeve", "left / right sleeve"),
        ("Return 54 of left sleeve.", "Return 54 of right sleeve.", "Return 54 of left / right sleeve."),
        ("first leg", "second leg", "first / second leg"),
        ("K2, p2.", "K2, p2.", "K2, p2."),
        ("K2, p2.", "K2, p3.", None),
        ("left sleeve", "right cuff", None),
        ("left sleeve", "sleeve", None),
    ],
)
def test_only_the_side_may_differ_in_a_text(one: str, other: str, joined: str | None) -> None:
    """A figure or another word makes it another instruction."""
    assert join_words(one, other) == joined


def test_names_are_told_apart_by_their_side() -> None:
    """The columns of boxes are headed by what differs."""
    assert tell_apart("left sleeve", "right sleeve") == ("Left", "Right")
    assert tell_apart("cuff of one", "other cuff") == ("Cuff of one", "Other cuff")


LEFT_RIGHT = ("left front", "right front")


def test_rows_that_differ_are_told_for_both() -> None:
    """Mirrored shaping among plain rows: each side has its own words, and both their boxes."""
    merged = merge_rows((row("Knit."), row("K6, k2tog.", after=7)), (row("Knit."), row("Ssk, k6.", after=7)), LEFT_RIGHT)
    assert merged is not None
    assert merged[0].words == ("Knit.",)
    assert merged[1].words == ("Left: K6, k2tog.", "Right: Ssk, k6.")
    assert [len(each.boxes) for each in merged] == [2, 2]


@pytest.mark.parametrize(
    "other",
    [
        (row("Knit."),),
        (row("Knit."), row("Purl.", after=7)),
        (row("Knit."), row("Purl.", remark="Join in A.")),
        (row("Knit."), row("Purl.", check=CountCheck(expect=8, reason="now"))),
        (row("Purl."), row("Knit.")),
    ],
)
def test_pieces_of_other_rows_counts_or_words_stay_apart(other: tuple[RoundRow, ...]) -> None:
    """Fewer rows, another count, a remark of one alone, a check of one alone, most rows unlike."""
    assert merge_rows((row("Knit."), row("Purl.")), other, LEFT_RIGHT) is None


def test_pieces_whose_names_share_nothing_stay_apart() -> None:
    """A pocket and a strap of the same rows are two things to knit."""
    assert merge_rows((row("Knit."),), (row("Knit."),), ("pocket", "strap")) is None


@pytest.mark.parametrize(("name", "pairs"), [("pullover", 1), ("cardigan", 1), ("socks", 3), ("mittens", 3), ("hat", 0)])
def test_sleeves_socks_and_mittens_are_told_once(name: str, pairs: int) -> None:
    """With two columns of boxes, in which every round of both is found once."""
    loaded = load_project(SHIPPED / f"{name}.yaml")
    tables = [block for block in lay_out_rounds(loaded.plan, loaded.project) if isinstance(block, RoundTable)]
    assert sum(len(table.pieces) == 2 for table in tables) == pairs
    said = sorted(box.said for table in tables for each in table.rows for boxes in each.boxes for box in boxes)
    assert len(said) == len(set(said)) == len(loaded.plan.rounds)
