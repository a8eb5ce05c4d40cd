"""Stitches between markers. Source: arithmetic; "(23 sts between markers)" as gloves and gussets print it."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import compiled
from tests.project.samples import project

TWO = "Cast on 40 sts.\nJoin in the round.\nK10, pm, k20, pm, k10.\n"
GUSSET = "Cast on 40 sts.\nJoin in the round.\nK20, pm, k to end.\nK to m, sm, k5, pm, m1l, k1, m1r, pm, k to end.\n"


@pytest.mark.parametrize(
    ("work", "fits"),
    [
        (TWO + "Knit 1 round. 20 sts between markers.", True),
        (TWO + "Knit 1 round. (18 sts between markers)", False),
        (TWO + "Knit 1 round. 10 sts in each section.", False),
        ("Cast on 40 sts.\nJoin in the round.\nPlace marker every 10 sts.\nKnit 1 round. 10 sts in each section.", True),
        # Three markers: the gusset grew between the last two.
        (GUSSET + "Knit 1 round. 3 sts between gusset markers.", True),
        (GUSSET + "Knit 1 round. 5 sts between gusset markers.", False),
        ("Cast on 40 sts.\nJoin in the round.\nPlace marker every 10 sts.\nKnit 1 round. 10 sts between markers.", False),
        ("Cast on 40 sts.\nJoin in the round.\nKnit 1 round. 40 sts between markers.", False),
    ],
)
def test_a_count_between_markers_is_checked(work: str, fits: bool) -> None:
    """Where there are more than two markers, only shaping between two of them shows which are meant."""
    assert (compiled(project(f"{work}\nBind off.")).problems == ()) is fits
