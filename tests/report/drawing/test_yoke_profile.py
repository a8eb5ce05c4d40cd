"""How wide a yoke is at each depth, against gauge and the percentage system."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.blend import try_sizes
from stepper.report.drawing.yoke_profile import (
    collar_mm,
    find_tight_rounds,
    follow_yoke,
    outline_wearer,
    wearer_around,
)
from tests.garments import read_garment
from tests.percentages import yoke_counts
from tests.plan.test_blend import switchback

ROUNDS = try_sizes(switchback(), 3, 1, "Final increase").rounds


def test_a_yoke_is_followed_round_by_round_to_where_the_sleeves_part() -> None:
    """10 rounds of rib at 32 to 10 cm and 36 of colourwork at 26; 246 stitches at 22 to 10 cm at the end."""
    steps = follow_yoke(ROUNDS, switchback())
    assert steps[0].around_mm == pytest.approx(100 / 24 * 100)
    assert steps[0].depth_mm == 0  # the cast-on has no height
    assert steps[-1].around_mm == pytest.approx(246 / 22 * 100)
    assert steps[-1].depth_mm == pytest.approx(10 / 32 * 100 + 36 / 26 * 100)
    assert [(step.label, step.before, step.after) for step in steps if step.label] == [
        ("First increase", 100, 150), ("Second increase", 150, 225), ("Final increase", 225, 246),
    ]  # fmt: skip
    assert collar_mm(ROUNDS, steps) == pytest.approx(10 / 32 * 100)


def test_a_yoke_from_the_hem_up_is_followed_from_the_neck_down() -> None:
    """10 rounds of rib, 80 stitches of 4 mm; 60 rounds of 4 mm below, the last of them 268 stitches of 5 mm wide."""
    project, plan = read_garment("hem_up_yoke")
    steps = follow_yoke(plan.rounds, project)
    assert steps[0].around_mm == pytest.approx(80 * 4)
    assert steps[-1].around_mm == pytest.approx(268 * 5)
    assert steps[-1].depth_mm == pytest.approx(10 * 4 + 60 * 4)
    assert [step.depth_mm for step in steps] == sorted(step.depth_mm for step in steps)
    assert [step.before for step in steps if step.label] == [120, 179, 268]
    assert collar_mm(plan.rounds, steps) == pytest.approx(10 * 4)


@pytest.mark.parametrize("body", [200, 250])
def test_body_and_arms_together_are_those_of_the_percentage_system(body: int) -> None:
    """Source: joined stitches at K = 200 and 250 (check-values 4.1): body + 2 sleeves - 4 underarms, with 1 cm for a
    stitch."""
    counts = yoke_counts(body)
    project = replace(
        switchback(),
        body={"bust": body * 10.0, "upper_arm": counts.sleeve * 10.0, "neck": counts.neck * 10.0},
    )
    wearer = outline_wearer(project)
    assert wearer is not None
    assert wearer.underarm_mm == pytest.approx(counts.joined * 10)


def test_the_wearer_is_straight_along_the_neck_and_widens_evenly_below() -> None:
    """Half-way down between collar and underarm she is half-way wide."""
    wearer = outline_wearer(switchback(), 30.0)
    assert wearer is not None
    assert wearer_around(wearer, 20, 170) == wearer.neck_mm == 360
    assert wearer_around(wearer, 100, 170) == pytest.approx((360 + wearer.underarm_mm) / 2)
    assert wearer_around(wearer, 170, 170) == pytest.approx(wearer.underarm_mm)


def test_the_rounds_that_bind_are_those_narrower_than_the_wearer() -> None:
    """Around body and arms she is 880 + 560 - 0.32 × 880 = 1158 mm; the yoke ends with 1118."""
    steps = follow_yoke(ROUNDS, switchback())
    wearer = outline_wearer(switchback(), collar_mm(ROUNDS, steps))
    assert wearer is not None
    assert wearer.underarm_mm == pytest.approx(1158.4)
    tight = find_tight_rounds(steps, wearer)
    assert steps[-1] in tight
    assert steps[0] not in tight


def test_without_a_yoke_or_without_a_body_there_is_nothing() -> None:
    """Nothing is made up."""
    assert follow_yoke(ROUNDS[:5], switchback()) == ()
    assert collar_mm(ROUNDS[:5], ()) == 0
    assert outline_wearer(replace(switchback(), body={"bust": 880.0})) is None
