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
