"""Measurements and ease against the arithmetic of gauge."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from stepper.plan.blend import try_sizes
from stepper.plan.compile import compile_plan
from stepper.project.model import Project
from stepper.project.reader import read_project
from stepper.report.measure.measurements import measure_fully, measure_garment
from stepper.report.measure.measuring import Measurement
from tests.garments import read_garment
from tests.plan.test_blend import switchback
from tests.plans import plan as made

SAMPLES = Path(__file__).parents[2] / "fixtures"


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
    blend = try_sizes(project, 3, 1, "Final increase")
    return project, {line.name: line for line in measure_garment(blend.rounds, project)}


def test_the_chest_before_and_after_blocking() -> None:
    """164 stitches at 22 to 10 cm are 745.5 mm, at 21.5 after blocking 762.8; against 88 cm 13 % less, stretched.

    Source: stitches over gauge.
    """
    chest = blended()[1]["chest"]
    assert chest.needles_mm == pytest.approx(164 / 22 * 100)
    assert chest.blocked_mm == pytest.approx(164 / 21.5 * 100)
    assert chest.ease_mm == pytest.approx(164 / 21.5 * 100 - 880)
    assert chest.word == "stretched"


def test_the_upper_arm_and_the_wrist_of_a_sleeve() -> None:
    """Size 2: 60 stitches after picking up; 44 at the cuff, in rib on 3.5 mm needles, whose gauge is 24 to 10 cm."""
    found = blended()[1]
    assert found["left sleeve, upper arm"].needles_mm == pytest.approx(60 / 22 * 100)
    assert found["left sleeve, wrist"].needles_mm == pytest.approx(44 / 24 * 100)


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
        # 156 at 18 to 4 in, and one band of 7 rows at 28 to 4 in, which is 1 in
        ("cardigan", "chest", 156 / 18 * 101.6 + 25.4, "bust"),
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


def test_without_a_body_there_is_no_ease() -> None:
    """No figure is made up for a wearer who is not described."""
    project = replace(switchback(), body={})
    blend = try_sizes(project, 0, 0, "")
    assert all(line.ease_mm is None and line.word == "" for line in measure_garment(blend.rounds, project))


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("drop_shoulder", "The neck is left out"),
        ("set_in", "what a seam takes up is not deducted"),
        ("cardigan", "The chest counts one band"),
        ("shawl", "which edges it runs along is not known"),
    ],
)
def test_what_cannot_be_told_is_said(name: str, said: str) -> None:
    """Nothing is left out in silence, and no figure is made up for it."""
    project, plan = read_garment(name)
    found = measure_fully(plan.rounds, project)
    assert any(said in each for each in found.left_out)
    assert name in ("cardigan", "shawl") or "neck" not in {line.measure for line in found.lines}


def test_what_is_all_there_leaves_nothing_out() -> None:
    """A remark that always stands there is not read."""
    for name in ("hem_up_yoke", "raglan", "sock", "hat", "mitten"):
        project, plan = read_garment(name)
        assert measure_fully(plan.rounds, project).left_out == ()


def test_a_back_without_a_front_has_a_width_and_no_chest() -> None:
    """It was the chest once, and half of it."""
    project, _ = read_garment("set_in")
    rows = made(("back", ["co100", *[("k100", {"flat": True})] * 4, "bo100"])).rounds
    found = measure_fully([replace(each, gauge="stockinette") for each in rows], project)
    assert {line.name: line.needles_mm for line in found.lines}["back, width"] == pytest.approx(500)
    assert not any(line.measure == "bust" for line in found.lines)
    assert "The chest is left out: a front to go with it is not in the file." in found.left_out


def test_underarms_bound_off_before_the_join_are_not_the_chest() -> None:
    """Body 40 around, 2 × 4 bound off, sleeves 12 each less 4; joined 32 + 2 × 8."""
    project, _ = read_garment("hem_up_yoke")
    sleeve = ["co12", *["k12"] * 5, "bo4 k8"]
    rows = made(
        ("body", ["co40", *["k40"] * 9, "bo4 k16 bo4 k16", "hold32:body"]),
        ("left sleeve", [*sleeve, "hold8:left"]),
        ("right sleeve", [*sleeve, "hold8:right"]),
        ("yoke", ["return32:body return8:left return8:right", *["k48"] * 6, "(k1 k2tog)x16", "k32", "bo32"]),
    ).rounds
    lines = measure_garment([replace(each, gauge="stockinette", needle_mm=4.5) for each in rows], project)
    found = {line.name: line for line in lines}
    assert {name: found[name].stitches for name in ("neck", "full yoke", "chest", "lower edge")} == {
        "neck": 32,
        "full yoke": 48,
        "chest": 40,
        "lower edge": 40,
    }
    assert found["left sleeve, upper arm"].stitches == found["left sleeve, wrist"].stitches == 12
    assert found["body, length"].needles_mm == pytest.approx(9 * 4)
    assert found["left sleeve, length"].needles_mm == pytest.approx(5 * 4)
    assert found["yoke depth"].needles_mm == pytest.approx(8 * 4)
