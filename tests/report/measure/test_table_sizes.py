"""Measurements from a table where she gave only her bust."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.report.fit.ranking import find_wishes, measured_eases
from stepper.report.measure.measurements import measure_garment
from stepper.report.measure.measuring import Measurement
from stepper.report.measure.table_sizes import fill_from_table, name_table, table_sizes
from tests.garments import read_garment
from tests.plan.test_blend import switchback

ARM = Measurement(name="upper arm", needles_mm=300, blocked_mm=None, stitches=60, measure="upper_arm")


def test_an_upper_arm_is_taken_from_the_size_of_the_bust() -> None:
    """37 in are size M, upper arm 11 in. Source: Craft Yarn Council's women's sizes (check-values 1.4, from memory)."""
    project = replace(switchback(), body={"bust": 37 * 25.4})
    (line,) = fill_from_table([ARM], project)
    assert line.body_mm == pytest.approx(11 * 25.4)
    assert line.from_table


def test_between_two_sizes_the_middle_is_taken() -> None:
    """35 in lie between S, upper arm 10.25, and M, 11: 10.625 in (check-values 1.4, from memory)."""
    project = replace(switchback(), body={"bust": 35 * 25.4})
    assert [size.name for size in table_sizes(project)] == ["S", "M"]
    (line,) = fill_from_table([ARM], project)
    assert line.body_mm == pytest.approx(10.625 * 25.4)


def test_her_own_measurements_are_never_replaced() -> None:
    """One of them besides the bust, and the table is silent; so it is beyond its sizes."""
    project = replace(switchback(), body={"bust": 940.0, "neck": 360.0})
    assert fill_from_table([ARM], project) == (ARM,)
    assert fill_from_table([ARM], replace(project, body={"bust": 2000.0})) == (ARM,)
    assert fill_from_table([ARM], replace(project, body={"upper_arm": 280.0})) == (ARM,)
    assert name_table(project) == ""


def test_the_source_is_named_with_its_weakness() -> None:
    """She should know that it is a table's and from memory."""
    said = name_table(replace(switchback(), body={"bust": 880.0}))
    assert said.startswith("* taken from the Craft Yarn Council's table")
    assert "between sizes S and M" in said
    assert "from memory" in said


def test_the_order_is_never_by_the_table() -> None:
    """An assumed arm would outweigh the bust she gave."""
    project, plan = read_garment("raglan")
    project = replace(project, body={"bust": 920.0})
    lines = measure_garment(plan.rounds, project)
    assert any(line.from_table for line in lines)
    assert set(measured_eases(lines)) == {"bust"}
    assert [each.measure for each in find_wishes(project)] == ["bust"]
