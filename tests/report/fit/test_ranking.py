"""The order of the blends, and what changes with each."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from stepper.plan.blend import blends, try_sizes
from stepper.project.model import Project, Switch
from stepper.project.reader import read_project
from stepper.report.fit.ranking import (
    RankedBlend,
    find_nearest,
    find_other_wishes,
    find_present,
    find_wishes,
    miss_of_ease,
    rank_blends,
    wanted_ease,
)
from stepper.report.measure.measurements import measure_garment
from tests.plan.test_blend import switchback, tried_blends


def alone(project: Project) -> tuple[RankedBlend, ...]:
    """Rank the six sizes, against the scenario as it is knitted."""
    now = measure_garment(try_sizes(project, 3, 1, "Final increase").rounds, project)
    return rank_blends([try_sizes(project, size, size, "") for size in range(6)], project, now)


def test_the_nearest_to_the_ease_wanted_comes_first() -> None:
    """Wanting 9 cm of ease on 88 cm leads to the size of 97 cm; wanting none leads to a smaller one."""
    project = replace(switchback(), body={"bust": 880.0})
    wide = replace(project, wanted_ease={"bust": 90.0})
    close = replace(project, wanted_ease={"bust": 0.0})
    assert alone(wide)[0].blend.size == "5"  # 208 stitches at 21.5: 967 mm
    assert alone(close)[0].blend.size == "4"  # 192 stitches: 893 mm


def test_the_neck_counts_too() -> None:
    """Two blends with the same chest and arms differ by the neck they begin with: 42 cm wanted on 36 cm leads to the
    100 stitches of size 4, at 24 to 10 cm 41.7 cm."""
    project = replace(switchback(), wanted_ease={"neck": 60.0})
    now = measure_garment(try_sizes(project, 3, 1, "Final increase").rounds, project)
    pairs = [try_sizes(project, size, 4, "Final increase") for size in (0, 1, 2, 3, 5)]
    assert rank_blends(pairs, project, now)[0].blend.size == "4"


def test_chest_and_bust_are_one_wish() -> None:
    """Whichever word the file uses."""
    assert wanted_ease(replace(switchback(), wanted_ease={"chest": 12.0}))["bust"] == 12.0
    assert wanted_ease(switchback())["bust"] == pytest.approx(
        3 * 25.4
    )  # the middle of 2 to 4 in, check-values 1.5.3


def test_without_a_body_nothing_is_measured_against_it() -> None:
    """No rank is made up for a wearer who is not described."""
    project = replace(switchback(), body={})
    assert miss_of_ease(measure_garment(try_sizes(project, 0, 0, "").rounds, project), project) is None


def test_a_hat_is_ranked_by_its_widest_part() -> None:
    """Crown of 112 stitches at 22 to 10 cm, 50.9 cm, on a head of 56 cm: 5.1 cm narrower, as hats are."""
    text = (Path(__file__).parents[2] / "fixtures" / "hat.yaml").read_text(encoding="utf-8")
    project = read_project(text).project
    assert project is not None
    found = rank_blends(list(blends(project)), project, ())
    assert found[0].blend.size == "M"
    assert found[0].off_mm == pytest.approx(abs(112 / 22 * 100 - 560 + 50.8))


def test_the_change_at_each_line_is_the_difference_of_the_counts() -> None:
    """Size 5 instead of size 2 from the final increase: 208 stitches instead of 164 around the chest.

    Source: 44 stitches at 21.5 to 10 cm.
    """
    project = switchback()
    now = measure_garment(try_sizes(project, 3, 1, "Final increase").rounds, project)
    (one,) = rank_blends([try_sizes(project, 3, 4, "Final increase")], project, now)
    assert one.changes_mm["chest"] == pytest.approx(44 / 21.5 * 100)
    assert one.changes_mm["neck"] == 0
    assert one.changes_mm["Second increase"] == 0


def test_what_still_divides_is_listed_with_its_repeats() -> None:
    """246 stitches are 41 cairns of 6; 164 and 44 are 41 and 11 ribs of 4."""
    project = switchback()
    now = measure_garment(try_sizes(project, 3, 1, "Final increase").rounds, project)
    (one,) = rank_blends([try_sizes(project, 3, 1, "Final increase")], project, now)
    found = {(each.name, each.stitches, each.times) for each in one.later}
    assert found == {("chart cairn", 6, 41), ("k2, p2 rib", 4, 41), ("k2, p2 rib", 4, 11)}


def test_among_equals_no_switch_comes_first_and_then_the_least_crowded_round() -> None:
    """A round of 225 to 312 is more crowded than one of 255 to 312, which size 6 to 5 makes."""
    project = replace(switchback(), body={"bust": 880.0})
    now = measure_garment(try_sizes(project, 3, 1, "Final increase").rounds, project)
    found = [one for one in rank_blends(tried_blends(), project, now) if one.blend.then == "5"]
    assert found[0].blend.label == ""
    crowded = [one.crowded for one in found[1:]]
    assert crowded == sorted(crowded)
    assert {one.off_mm for one in found} == {found[0].off_mm}


def test_the_nearest_to_a_blend_that_fails_keeps_its_sizes_before_its_line() -> None:
    """Size 6 to 1 fails at the last increase and works at an earlier one."""
    project = switchback()
    where = project.sections[0].place
    asked = replace(project, size=5, switches=(Switch(label="Final increase", size=0, place=where),))
    now = measure_garment(try_sizes(project, 3, 1, "Final increase").rounds, project)
    near = find_nearest(asked, rank_blends(tried_blends(), project, now))
    assert near is not None
    assert (near.blend.size, near.blend.then) == ("6", "1")
    assert near.blend.label in ("First increase", "Second increase")
    assert find_nearest(asked, ()) is None


def test_the_order_is_by_what_she_asked_for_and_only_then_by_what_she_measured() -> None:
    """A wish for the bust leaves the neck out of the sum; without any wish all she measured counts, as assumed."""
    project = replace(switchback(), body={"bust": 880.0, "neck": 360.0}, wanted_ease={"bust": 60.0})
    assert [(each.measure, each.ease_mm, each.assumed) for each in find_wishes(project)] == [
        ("bust", 60.0, False)
    ]
    assert [each.measure for each in find_other_wishes(project)] == ["neck"]
    lines = measure_garment(try_sizes(project, 3, 1, "Final increase").rounds, project)
    assert miss_of_ease(lines, project) == pytest.approx(abs(164 / 21.5 * 100 - 880 - 60))
    free = replace(project, wanted_ease={})
    assert {each.measure for each in find_wishes(free)} == {"bust", "neck"}
    assert all(each.assumed for each in find_wishes(free))


def test_a_wish_without_a_measurement_ranks_nothing() -> None:
    """An ease on an arm that nobody measured cannot be missed."""
    project = replace(switchback(), body={"bust": 880.0}, wanted_ease={"upper_arm": 40.0})
    assert [(each.measure, each.assumed) for each in find_wishes(project)] == [("bust", True)]


def test_the_present_choice_is_found_among_what_can_be_knitted() -> None:
    """By its sizes and its line; the size alone where the blend fails; none with two switches."""
    project = switchback()
    now = measure_garment(try_sizes(project, 3, 1, "Final increase").rounds, project)
    found = rank_blends(tried_blends(), project, now)
    present = find_present(project, found, alone=False)
    assert present is not None
    assert (present.blend.before, present.blend.after) == (225, 246)
    single = find_present(project, found, alone=True)
    assert single is not None
    assert (single.blend.size, single.blend.label) == ("4", "")
    twice = replace(project, switches=(*project.switches, *project.switches))
    assert find_present(twice, found, alone=False) is None
