"""What should be looked at: units, edges too narrow for the head, garments worn stretched."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.blend import tried
from stepper.plan.compile import compile_plan
from stepper.project.model import Project
from stepper.report.cautions import EDGE_STRETCH, find_cautions
from stepper.report.measurements import measure_garment
from tests.plan.test_blend import switchback


def told(project: Project, size: int = 3) -> tuple[str, ...]:
    """Give the cautions of the sample in one size."""
    plan = compile_plan(replace(project, size=size, switches=())).plan
    assert plan is not None
    alone = [
        (name, measure_garment(tried(project, at, at, "").rounds, project))
        for at, name in enumerate(project.sizes)
    ]
    return find_cautions(measure_garment(plan.rounds, project), plan.rounds, project, alone)


def test_a_body_in_inches_written_as_centimetres_is_noticed() -> None:
    """35 cm around the bust beside 89 cm of garment: 35 in are 88.9 cm. Source: 1 in = 2.54 cm exactly."""
    (caution,) = told(replace(switchback(), body={"bust": 350.0}))
    assert "bust is 35 cm" in caution
    assert "35 in, which is 88.9 cm" in caution


def test_a_body_in_centimetres_written_as_inches_is_noticed() -> None:
    """88 in around the bust beside 35 in of garment: 88 cm are 34.65 in."""
    (caution,) = told(replace(switchback(), units="in", body={"bust": 88 * 25.4}))
    assert "88 cm, which is 34.65 in" in caution


@pytest.mark.parametrize("bust", [700.0, 880.0, 1000.0])
def test_a_body_that_may_be_meant_so_is_left_alone(bust: float) -> None:
    """89 cm of garment on 70 to 100 cm of body is a matter of taste."""
    assert told(replace(switchback(), body={"bust": bust})) == ()


def test_a_neck_that_would_not_go_over_the_head_says_what_would() -> None:
    """80 stitches at 24 to 10 cm are 33.3 cm, stretched by half 50 cm: not over 56 cm. 56 / 1.5 × 2.4 = 89.6, so
    90 stitches would; size 3 has 92. Source: arithmetic; the factor is from memory and stated as such."""
    assert EDGE_STRETCH == 1.5
    (caution,) = told(replace(switchback(), body={"head": 560.0}), size=0)
    assert "neck of 80 stitches is 33.3 cm" in caution
    assert "50 cm" in caution
    assert "head of 56 cm" in caution
    assert "From 90 stitches on it would; size 3 has 92." in caution
    assert told(replace(switchback(), body={"head": 560.0}), size=2) == ()


def test_a_chest_worn_very_stretched_names_the_nearest_size_that_is_not() -> None:
    """76.3 cm on 95 cm is 20 % narrower; at most 15 % are 80.75 cm, which size 3 of 83.7 cm keeps."""
    (caution,) = told(replace(switchback(), body={"bust": 950.0}), size=1)
    assert "18.7 cm narrower" in caution
    assert "20%" in caution
    assert "Nearest: size 3, 83.7 cm" in caution
