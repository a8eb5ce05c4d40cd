"""The neck is across from the armhole: a row at the wrong one of the two is refused. Source: common practice."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

FRONT = "Cast on 40 sts. Work flat.\nWork 4 rows in stockinette.\nBind off 6 sts for armhole.\n"


@pytest.mark.parametrize("rows", [2, 4, 8])
def test_the_neck_is_not_bound_off_at_the_armhole(rows: int) -> None:
    """After an even number of rows the next one begins at the armhole again; the front would have no neck."""
    told = faults(project(f"{FRONT}Work {rows - 1} rows in stockinette.\nBind off 12 sts for neck."))
    assert "shapes the neck in a right-side row, at the edge where line" in told
    assert "comes in a wrong-side row" in told


@pytest.mark.parametrize("rows", [1, 3, 7])
def test_the_neck_is_bound_off_where_the_other_rows_begin(rows: int) -> None:
    """The armhole where right-side rows begin, the neck where wrong-side rows do."""
    plan = plan_of(project(f"{FRONT}Work {rows - 1} rows in stockinette.\nBind off 12 sts for neck.\nBind off."))
    neck = next(round_ for round_ in plan.rounds if round_.after == 22)
    assert (neck.side, next(run.stitch for run in neck.runs)) == ("WS", "bo")


OLD_FRONT = "Cast on 40 sts. Work flat.\nWork 20 rows in stockinette.\nBind off 6 sts at beg of next row. Work 1 row. Dec 1 st at armhole edge on next and every alt row until 32 sts remain. Work straight until armhole measures 6 cm{}.\n"
OLD_NECK = "Bind off 8 sts at beg of next row, then dec 1 st at neck edge on every row until 20 sts remain. Cont until armhole measures 12 cm, ending at armhole edge.\nBind off."


def test_an_edge_at_which_rows_end_is_not_the_edge_that_they_shape() -> None:
    """ "Ending at front edge" stood in the armhole's line, and the neck came where the armhole was. Common practice."""
    plan = plan_of(project(OLD_FRONT.format(", ending at front edge") + OLD_NECK))
    assert next(round_.side for round_ in plan.rounds if round_.after == 24) == "WS"
    assert "shapes the neck in a right-side row" in faults(project(OLD_FRONT.format(", ending with a WS row") + OLD_NECK))


def test_the_shoulder_is_at_the_armhole_and_not_at_the_neck() -> None:
    """Shoulder and armhole are the outer edge, the neck the inner one."""
    shaped = FRONT + "Bind off 12 sts at neck edge once.\nWork {} rows in stockinette.\nBind off 8 sts for shoulder."
    assert plan_of(project(f"{shaped.format(2)}\nBind off."))
    assert "shapes the armhole in a wrong-side row" in faults(project(shaped.format(3)))


def test_a_back_with_two_armholes_is_left_alone() -> None:
    """It has an armhole at each edge, and its neck in the middle."""
    back = "Cast on 60 sts. Work flat.\nWork 4 rows in stockinette.\nBind off 6 sts at beg of next 2 rows for armholes.\n"
    neck = "Next row (RS): K16, turn and leave rem sts on a holder.\nPurl 1 row.\nBind off 3 sts at neck edge once.\nBind off."
    assert plan_of(project(back + "Work 4 rows in stockinette.\n" + neck))
