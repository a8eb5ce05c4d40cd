"""Measurements and ease against the arithmetic of gauge, and the order of the blends."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.blend import tried
from stepper.report.fit import lines, off_by, ranked
from tests.plan.test_blend import switchback


def test_the_chest_before_and_after_blocking() -> None:
    """164 stitches at 22 to 10 cm are 745.5 mm, at 21.5 after blocking 762.8; against 88 cm very close.

    Source: stitches over gauge; fit word: Craft Yarn Council (check-values 1.5.1).
    """
    project = switchback()
    plan = tried(project, 3, 1, "Final increase").plan
    assert plan is not None
    chest = next(line for line in lines(plan, project) if line.name == "chest")
    assert chest.needles_mm == pytest.approx(164 / 22 * 100)
    assert chest.blocked_mm == pytest.approx(164 / 21.5 * 100)
    assert chest.ease_mm == pytest.approx(164 / 21.5 * 100 - 880)
    assert chest.word == "very close"


def test_the_upper_arm_and_the_wrist_of_a_sleeve() -> None:
    """Size 2: 60 stitches after picking up, 44 at the cuff, which is ribbed at the sleeve's gauge."""
    project = switchback()
    plan = tried(project, 3, 1, "Final increase").plan
    assert plan is not None
    found = {line.name: line.needles_mm for line in lines(plan, project)}
    assert found["left sleeve, upper arm"] == pytest.approx(60 / 22 * 100)
    assert found["left sleeve, wrist"] == pytest.approx(44 / 22 * 100)


def test_the_nearest_to_the_ease_wanted_comes_first() -> None:
    """Wanting 9 cm of ease on 88 cm leads to the size of 97 cm; wanting none leads to a smaller one."""
    project = switchback()
    alone = [tried(project, size, size, "") for size in range(6)]
    wide = replace(project, wanted_ease={"bust": 90.0})
    close = replace(project, wanted_ease={"bust": 0.0, "upper_arm": 0.0})
    assert ranked(alone, wide)[0][0].size == "5"  # 208 stitches at 21.5: 967 mm
    assert ranked(alone, close)[0][0].size in ("3", "4")  # 837 and 893 mm


def test_without_a_body_nothing_is_measured_against_it() -> None:
    """No figure is made up for a wearer who is not described."""
    project = replace(switchback(), body={})
    plan = tried(project, 0, 0, "").plan
    assert plan is not None
    assert off_by(lines(plan, project), project) is None
