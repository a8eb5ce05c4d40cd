"""How far "across" reaches behind short rows in the round."""

from __future__ import annotations

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

HEEL = "Cast on 40 sts. Join in the round.\nRow 1 (RS): K15, w&t.\nRow 2 (WS): P10, w&t.\n"


def test_across_ends_with_the_last_wrap_where_a_row_comes_back() -> None:
    """Read to the end of the round, the next row would purl over the instep."""
    plan = plan_of(project(f"{HEEL}Next row: Knit across.\nNext row (WS): Sl 1, p to 1 st before gap, p2tog, turn.\nBind off."))
    across, back = plan.rounds[3:5]
    assert [(run.stitch, run.times) for run in across.runs] == [("k", 11), ("turn", 1), ("rest", 29)]
    assert back.side == "WS"
    assert any("across" in warning.text for warning in plan.warnings)


def test_across_in_a_round_is_the_round() -> None:
    """A line that calls itself a round says how far it goes."""
    plan = plan_of(project(f"{HEEL}Next rnd: Knit across.\nKnit 1 rnd.\nBind off."))
    assert [round_.flat for round_ in plan.rounds[3:5]] == [False, False]


def test_across_without_either_is_refused() -> None:
    """Half a round too much is knitted in one of the readings, and nothing shows in which."""
    told = faults(project(f"{HEEL}Next row: Knit across.\nKnit 1 rnd.\nBind off."))
    assert "may end with the heel or with the round" in told


FLAP = "Cast on 64 sts. Join in the round.\nRow 1 (RS): K32, turn.\nRow 2 (WS): Sl 1, p to end.\n"


def test_to_end_of_a_flap_is_not_the_round() -> None:
    """The instep is not on hold, and nobody slips the first stitch of a round: 32 stitches too many otherwise."""
    for rows in (
        "Row 3: Sl 1, k to end.\nRep rows 2 and 3 3 times more.",
        "Row 3: Sl 1, k to end.\nRow 4 (WS): Sl 1, p to end.",
        "Next row: Sl 1, k to end.\nKnit 1 rnd.",
    ):
        told = faults(project(f"{FLAP}{rows}\nBind off."))
        assert '"to end" may be the 32 stitches that were turned at' in told
        assert "on hold before the rows" in told


def test_to_end_in_a_round_is_the_round() -> None:
    """A plain line with a round behind it, or one that calls itself a round, goes around as it always did."""
    for rows in ("Knit to end.\nKnit 1 rnd.", "Next rnd: Sl 1, k to end.\nKnit 1 rnd."):
        plan = plan_of(project(f"{FLAP}{rows}\nBind off."))
        assert [(round_.flat, round_.after) for round_ in plan.rounds[3:5]] == [(False, 64), (False, 64)]


def test_a_row_back_from_a_turn_is_not_worked_around() -> None:
    """Repeated where no turn comes before it, it would purl the whole round."""
    told = faults(project("Cast on 64 sts. Join.\nK32, turn.\nPurl to end.\nKnit to end.\nRep last 2 rows twice more.\nBind off."))
    assert "this row was worked back from a turn before" in told


def test_rows_behind_a_hold_go_back_from_it() -> None:
    """The yarn hangs at the 32nd stitch: the first row turns there and is a wrong-side row."""
    hold = "Cast on 64 sts. Join.\nKnit 2 rounds.\nK32, place next 32 sts on hold for the instep.\n"
    plan = plan_of(project(f"{hold}Row 1: Sl 1, p to end.\nRow 2: Sl 1, k to end.\nRep rows 1 and 2 twice more.\nBind off."))
    assert [round_.side for round_ in plan.rounds[4:10]] == ["WS", "RS"] * 3
    named = plan_of(project(f"{hold}Row 1 (RS): K to end.\nRow 2: P to end.\nBind off."))
    assert [round_.side for round_ in named.rounds[4:6]] == ["RS", "WS"]


def test_a_heel_lies_between_a_turn_and_what_is_held_in_the_row_back() -> None:
    """Both turns are the edges of the heel: taken for a short row, a double stitch came in, and rounds behind it."""
    page = "Cast on 48 sts. Join in the round.\nKnit 2 rounds.\nK16, turn. P32, place rem 16 sts on hold.\n"
    plan = plan_of(project(f"{page}Work 4 rows in stockinette.\nBind off."))
    back, *rows = plan.rounds[4:-1]
    assert [(run.stitch, run.times) for run in back.runs] == [("p", 32), ("hold", 16)]
    assert [(round_.flat, round_.side, round_.after) for round_ in rows] == [(True, "RS", 32), (True, "WS", 32)] * 2
    assert not any("double stitch" in warning.text for warning in plan.warnings)
