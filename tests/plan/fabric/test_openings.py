"""A rib above a buttonhole is the rib below it. Source: common practice; worked out by hand."""

from __future__ import annotations

import pytest

from stepper.plan.stitches.run_repeats import laid_flat
from tests.plan.fabric.test_established import knit

RIB = "Cast on 13 sts.\nWork flat.\nRow 1 (RS): *K1, p1; rep from * to last st, k1.\nRow 2: *P1, k1; rep from * to last st, p1.\n"


@pytest.mark.parametrize(("before", "off"), [(5, 3), (4, 2), (2, 1), (6, 4)])
def test_what_is_cast_on_over_an_opening_goes_on_as_what_was_there(before: int, off: int) -> None:
    """Knitted all alike, three stitches in the middle of a rib stand out above each button."""
    plan = knit(f"{RIB}Next row: Rib {before}, bind off {off} sts, rib to end.\nNext row: Rib to bound-off sts, cast on {off} sts, rib to end.\nRib 2 rows.")
    _, right, wrong, _, _, above, next_ = (list(laid_flat(each.phrase)) for each in plan.rounds)
    assert (above, next_) == (right, wrong)


def test_another_number_cast_on_is_no_buttonhole_closed() -> None:
    """What lies there then nobody can tell from the row below."""
    plan = knit(f"{RIB}Next row: Rib 5, bind off 3 sts, rib to end.\nNext row: Rib to bound-off sts, cast on 1 st, rib to end.\nRib 1 row.")
    assert plan.rounds[5].after == 11
