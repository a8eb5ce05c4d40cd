"""Columns of the fabric through one row: eaten, added, kept in their place."""

from __future__ import annotations

import pytest

from stepper.plan.drafts import DraftRound
from stepper.plan.fabric.columns import (
    KNIT,
    UnknownFabricError,
    as_seen,
    carry_columns,
    fill_columns,
    lay_columns,
    shortest,
    trace_columns,
)
from stepper.plan.state.in_hand import Column
from tests.plans import phrase

K: Column = (("k", ""),)
P: Column = (("p", ""),)


def draft(
    text: str, before: int, after: int, *, side: str = "RS", markers: tuple[int, ...] = ()
) -> DraftRound:
    """Make a row as worked."""
    return DraftRound(
        section="body", before=before, after=after, phrase=phrase(text), line=1, size=0, flat=side == "WS", side=side,
        needle_mm=None, fabric=None, held={}, markers=markers,
    )  # fmt: skip


def columns(letters: str) -> list[Column]:
    """Write columns as they look, one letter each."""
    return [K if letter == "k" else P for letter in letters]


def unheld(name: str) -> None:
    """Nothing is on hold."""


def looks(made: list[Column]) -> str:
    """Read columns of one cell."""
    return "".join(column[0][0] for column in made)


@pytest.mark.parametrize(
    ("row", "before", "after"),
    [
        ("k1 k2tog p1 k2 p2 k1 ssk p1", "kkppkkppkkpp", "kkpkkppkkp"),  # a knit column each stays, it looks so
        ("k2 p2tog k2 p2tog", "kkppkkpp", "kkpkkp"),
        ("k1 m1 k1 (p2 k2)x2 p2", "kkppkkppkkpp", "kkkppkkppkkpp"),  # the repeat goes on outwards
        ("k2 yo p2tog (k2 p2)x2", "kkppkkppkkpp", "kkppkkppkkpp"),  # a buttonhole leaves every column
        ("bo4 (k2 p2)x2", "kkppkkppkkpp", "kkppkkpp"),
        ("k1 kfb (p2 k2)x2 p2", "kkppkkppkkpp", "kkkppkkppkkpp"),  # a stitch knitted twice into is itself and one more
        ("(k2 p2)x3 co2", "kkppkkppkkpp", "kkppkkppkkppkk"),
        ("(k2 p1 m1p p1)x3", "kkppkkppkkpp", "kkpppkkpppkkppp"),  # a stitch made purlwise is purled
        ("(k2 p1 pfb)x3", "kkppkkppkkpp", "kkpppkkpppkkppp"),
        ("(k2 p1 m1 p1)x3", "kkppkkppkkpp", "kkpppkkpppkkppp"),  # between two purl columns stands a third
        ("(k1 m1 k1 p2)x3", "kkppkkppkkpp", "kkkppkkkppkkkpp"),
    ],
)  # fmt: skip
def test_a_row_eats_and_adds_columns_at_its_place(row: str, before: str, after: str) -> None:
    """Worked out by hand on squared paper."""
    made = carry_columns(columns(before), draft(row, len(before), len(after)), 0, unheld)
    assert looks(made) == after


def test_a_wrong_side_row_is_met_from_its_other_end() -> None:
    """What is bound off first on the wrong side are the last columns of the right side."""
    made = carry_columns(columns("kkkkpppp"), draft("bo2 k2 p4", 8, 6, side="WS"), 0, unheld)
    assert looks(made) == "kkkkpp"


def test_a_new_column_beside_a_marker_goes_with_its_own_side() -> None:
    """At a raglan line each side grows towards the marker."""
    row = draft("(k1 p1)x3 m1 m1 (p2 k2)x2", 14, 16, markers=(7,))
    assert (
        looks(carry_columns(columns("kpkpkp" + "ppkkppkk"), row, 0, unheld))
        == "kpkpkp" + "k" + "k" + "ppkkppkk"
    )


def test_without_a_repeat_beside_it_a_new_column_is_stockinette() -> None:
    """As far as it fits, else stockinette."""
    assert fill_columns([None, P, K, K], [0, 4], 1)[0] == (KNIT,)


def test_stitches_worked_another_way_say_what_they_are_now() -> None:
    """A row of one cell is what it looks like; in a pattern of more rows nobody can tell, but at the edge."""
    assert looks(carry_columns(columns("pppp"), draft("k2 p2", 4, 4), 0, unheld)) == "kkpp"
    seed = [(("k", ""), ("p", "")), (("p", ""), ("k", ""))] * 8
    with pytest.raises(UnknownFabricError):
        carry_columns(seed, draft("p16", 16, 16), 0, unheld)
    assert carry_columns(seed, draft("k2 (k1 p1)x7", 16, 16), 0, unheld)[1] == (("k", ""), ("k", ""))


def test_rows_are_read_as_columns() -> None:
    """The first row is the first cell; equal rows make one."""
    rows = [draft("(k1 p1)x3", 6, 6), draft("(p1 k1)x3", 6, 6)]
    assert trace_columns(rows)[:2] == [(("k", ""), ("p", "")), (("p", ""), ("k", ""))]
    assert shortest(trace_columns([draft("(k1 p1)x3", 6, 6)] * 2)) == columns("kpkpkp")


@pytest.mark.parametrize("row", ["(k2tog yo)x4", "co8"])
def test_lace_and_a_cast_on_are_no_columns(row: str) -> None:
    """They are refused rather than guessed, where there is more to the pattern than how one row looks."""
    with pytest.raises(UnknownFabricError):
        trace_columns([draft(row, 0 if row == "co8" else 8, 8), draft("k8", 8, 8)])


@pytest.mark.parametrize(
    ("row", "looks_like"),
    [
        ("2/2_rc p4", "kkkkpppp"),
        ("p1 2/1_rpc 2/1_lpc p1", "pkkppkkp"),
        ("k2tog yo p6", "kkpppppp"),
        ("(p2tog yo)x2 k4", "ppppkkkk"),
        ("c4f p4", "kkkkpppp"),
    ],
)
def test_one_row_of_lace_or_cables_is_worked_back_as_it_looks(row: str, looks_like: str) -> None:
    """The row back is "knit the knits and purl the purls". Source: Craft Yarn Council, cables (from memory)."""
    assert looks(trace_columns([draft(row, 8, 8)])) == looks_like


@pytest.mark.parametrize(
    ("row", "looks_like"), [("k4 (p2tog yo)x2", "kkkkpppp"), ("p4 (k2tog yo)x2", "ppppkkkk")]
)
def test_lace_of_a_wrong_side_row_looks_from_the_right_side_as_its_decreases(
    row: str, looks_like: str
) -> None:
    """A yarn over is worked back as the fabric it is in: k2tog is a purl from behind, and so is what makes up for it.

    Source: common practice, "knit the knits and purl the purls". It was forgotten on wrong-side rows: stockinette followed lace
    in garter stitch, in silence.
    """
    wanted = looks_like.translate(str.maketrans("kp", "pk"))[::-1]
    assert looks(trace_columns([draft(row, 8, 8, side="WS")])) == wanted


def test_every_stitch_left_stands_somewhere() -> None:
    """As many as the row leaves; a decrease stands on all it took."""
    made = lay_columns(draft("k1 k3tog m1 k1 pu2", 5, 5))
    assert [each.below for each in made] == [(0,), (1, 2, 3), (), (4,), (), ()][:6]


def test_the_other_side_of_a_stitch() -> None:
    """Craft Yarn Council: a knit stitch is a purl from behind."""
    assert (as_seen("k", wrong=True), as_seen("k", wrong=False), as_seen("p tbl", wrong=True)) == (
        "p",
        "k",
        "k tbl",
    )


def test_rows_of_which_one_between_was_refused_tell_no_columns() -> None:
    """A printed count is taken up behind a line that is not read: the next row has stitches of which no row
    tells."""
    rows = [draft(f"k2 p2 k{each - 4}", each, each) for each in (8, 12)]
    with pytest.raises(UnknownFabricError, match="along the whole needle"):
        trace_columns(rows)
