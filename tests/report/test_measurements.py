"""Measurements and ease against the arithmetic of gauge."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from stepper.plan.blend import tried
from stepper.plan.compile import compile_plan
from stepper.project.model import Project
from stepper.project.reader import read_project
from stepper.report.measurements import Measurement, find_divide, measure_garment
from tests.plan.test_blend import switchback

SAMPLES = Path(__file__).parents[2] / "sample_projects"


def measured(name: str) -> dict[str, Measurement]:
    """Measure a sample as its file knits it."""
    project = read_project((SAMPLES / f"{name}.yaml").read_text(encoding="utf-8")).project
    assert project is not None
    plan = compile_plan(project).plan
    assert plan is not None
    return {line.name: line for line in measure_garment(plan.rounds, project)}


def blended() -> tuple[Project, dict[str, Measurement]]:
    """Measure the scenario."""
    project = switchback()
    blend = tried(project, 3, 1, "Final increase")
    return project, {line.name: line for line in measure_garment(blend.rounds, project)}


def test_the_chest_before_and_after_blocking() -> None:
    """164 stitches at 22 to 10 cm are 745.5 mm, at 21.5 after blocking 762.8; against 88 cm very close.

    Source: stitches over gauge; fit word: Craft Yarn Council (check-values 1.5.1).
    """
    chest = blended()[1]["chest"]
    assert chest.needles_mm == pytest.approx(164 / 22 * 100)
    assert chest.blocked_mm == pytest.approx(164 / 21.5 * 100)
    assert chest.ease_mm == pytest.approx(164 / 21.5 * 100 - 880)
    assert chest.word == "very close"


def test_the_upper_arm_and_the_wrist_of_a_sleeve() -> None:
    """Size 2: 60 stitches after picking up, 44 at the cuff, which is ribbed at the sleeve's gauge."""
    found = blended()[1]
    assert found["left sleeve, upper arm"].needles_mm == pytest.approx(60 / 22 * 100)
    assert found["left sleeve, wrist"].needles_mm == pytest.approx(44 / 22 * 100)


def test_every_line_that_matters_is_measured() -> None:
    """Neck, each yoke increase, full yoke, chest, lower edge, yoke depth, upper arms, wrists, lengths."""
    assert list(blended()[1]) == [
        "neck", "First increase", "Second increase", "Final increase", "full yoke", "chest", "lower edge",
        "yoke depth", "neckband, length", "body, length", "left sleeve, upper arm", "left sleeve, wrist",
        "left sleeve, length", "right sleeve, upper arm", "right sleeve, wrist", "right sleeve, length",
    ]  # fmt: skip


def test_the_yoke_is_as_deep_as_its_rounds() -> None:
    """36 rounds from the neckband to the divide at 26 to 10 cm; the round that divides belongs to the body."""
    assert blended()[1]["yoke depth"].needles_mm == pytest.approx(36 / 26 * 100)


def test_a_plan_and_the_same_garment_tried_measure_alike() -> None:
    """What is ranked is what is knitted."""
    project, found = blended()
    plan = compile_plan(project).plan
    assert plan is not None
    assert {line.name: line for line in measure_garment(plan.rounds, project)} == found


@pytest.mark.parametrize(
    ("name", "line", "mm", "measure"),
    [
        ("hat", "brim, around", 104 / 26 * 100, "head"),  # 104 stitches at 26 to 10 cm
        ("mittens", "right hand, around", 40 / 21 * 100, "hand"),  # 40 at 21
        ("socks", "first foot, around", 60 / 30 * 100, "foot"),  # 60 at 30
        ("cardigan", "chest", 156 / 18 * 101.6, "bust"),  # 156 at 18 to 4 in
        ("cardigan", "left sleeve, upper arm", 66 / 18 * 101.6, "upper_arm"),
    ],
)
def test_every_sample_is_measured_where_it_goes_around_the_body(
    name: str, line: str, mm: float, measure: str
) -> None:
    """Source: the counts printed in the sample over its gauge."""
    found = measured(name)[line]
    assert found.finished_mm == pytest.approx(mm)
    assert found.measure == measure


def test_mittens_and_shawls_have_no_yoke() -> None:
    """One part on hold is a thumb, not sleeves; a shawl has neither."""
    for name in ("mittens", "socks", "hat", "shawl"):
        assert not {"chest", "neck", "full yoke"} & set(measured(name))
    assert find_divide(()) is None


def test_without_a_body_there_is_no_ease() -> None:
    """No figure is made up for a wearer who is not described."""
    project = replace(switchback(), body={})
    blend = tried(project, 0, 0, "")
    assert all(line.ease_mm is None and line.word == "" for line in measure_garment(blend.rounds, project))
