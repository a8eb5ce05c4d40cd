"""The fit report in words."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.blend import try_sizes
from stepper.plan.compile import compile_plan
from stepper.project.model import Switch
from stepper.report.fit.lines import (
    WIDE,
    describe_spacing,
    detail_lines,
    measurement_lines,
    name_blend,
    name_sizes,
    rejected_lines,
    signed_length,
)
from stepper.report.fit.report import report_fit
from stepper.report.measure.measuring import Measurement
from tests.plan.test_blend import switchback, tried_blends


def test_measurements_stand_in_columns() -> None:
    """Needles, blocked, body, ease with the fit word; a length has no ease."""
    project = switchback()
    plan = compile_plan(project).plan
    assert plan is not None
    rows = list(measurement_lines(report_fit(project, plan, ()).now, project, "Switchback"))
    chest = next(row for row in rows if row.startswith("  chest"))
    assert chest.split() == [
        "chest",
        "74.5",
        "cm",
        "76.3",
        "cm",
        "88",
        "cm",
        "-11.7",
        "cm",
        "(stretched)",
    ]


@pytest.mark.parametrize(
    ("size", "then", "words"),
    [
        (3, 1, "225 to 246: 21 increases 10 or 11 apart"),
        (0, 0, "size 1"),
        (5, 4, "255 to 312: 57 increases 4 or 5 apart"),  # 255 = 57 × 4 + 27
    ],
)
def test_a_blend_is_named_with_its_spacing(size: int, then: int, words: str) -> None:
    """In words, as they are counted on the needle."""
    label = "Final increase" if size != then else ""
    assert words in name_blend(try_sizes(switchback(), size, then, label))


def test_a_blended_round_may_decrease_or_change_nothing() -> None:
    """Where the file allows it: 255 to 228 is 27 decreases; 255 less 54 used are 201 = 27 × 7 + 12 plain ones."""
    project = switchback()
    where = project.sections[0].place
    project = replace(project, switches=(Switch(label="Final increase", size=0, place=where, reshape=True),))
    blend = try_sizes(project, 5, 0, "Final increase")
    assert describe_spacing(blend) == "255 to 228: 27 decreases 7 or 8 apart"


def test_a_name_too_long_for_its_column_stands_on_a_line_of_its_own() -> None:
    """The figures keep to their columns and the page to 80, however a designer names the parts."""
    line = Measurement(name="a name " * 10, needles_mm=1000, blocked_mm=None, stitches=200)
    rows = list(measurement_lines([line], switchback(), "Title"))
    assert rows[2].strip() == line.name.strip()
    assert rows[3].split() == ["100", "cm", "-"]
    assert len(rows[3]) <= WIDE


def test_what_cannot_be_knitted_is_told_as_far_as_asked() -> None:
    """All of them, or the first few of the size in hand and how many are left."""
    found = tried_blends()
    refused = [each for each in found if not each.works]
    everything = list(rejected_lines(found))
    assert all(any(name_blend(each) in row for row in everything) for each in refused)
    few = list(rejected_lines(found, most=2, first="2"))
    assert few[1].startswith("  size 2, then 6 from First increase")
    assert few[-1] == f"  … and {len(refused) - 2} more: --all lists them."
    assert list(rejected_lines(())) == []


def test_two_sleeves_that_change_alike_are_told_once() -> None:
    """A size changes both."""
    project = switchback()
    plan = compile_plan(project).plan
    assert plan is not None
    found = report_fit(project, plan, [try_sizes(project, 3, 4, "Final increase")])
    (told,) = [row for row in detail_lines(found.ranked[0], "cm") if "compared with now" in row]
    assert told.count("upper arm") == 1
    assert "each sleeve, upper arm +5.6 cm" in told  # 72 stitches instead of 60 at 21.5 to 10 cm


def test_what_is_knitted_now_is_named_with_its_switches() -> None:
    """Or, where that cannot be, what is shown in its place."""
    assert name_sizes(switchback(), "") == "size 4, then 2 from Final increase"
    assert name_sizes(switchback(), "trouble") == "size 4 alone"


def test_a_difference_has_its_sign() -> None:
    """Plus for wider."""
    assert [signed_length(mm, "cm") for mm in (20, -5, 0.2, -0.2)] == ["+2 cm", "-0.5 cm", "+0 cm", "+0 cm"]
