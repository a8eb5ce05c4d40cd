"""Markers counted off along the stitches. Worked out by hand."""

from __future__ import annotations

import pytest

from tests.plan.fabric.test_established import knit, told
from tests.plan.test_compile import faults
from tests.project.samples import project


def test_markers_stand_after_so_many_stitches_each() -> None:
    """No stitch is worked for them."""
    plan = knit("Cast on 24 sts.\nJoin in the round.\nPlace markers in turn after 6, 12 sts.\n*K to marker, sm; rep from * to end.")
    assert told(plan, 1) == ["k6, sm, k12, sm, k6, sm"]


def test_a_marker_stands_as_far_in_from_each_end() -> None:
    """The sides of a jacket are counted from both edges."""
    plan = knit("Cast on 24 sts.\nWork flat.\nPlace a marker 7 sts in from each side.\nK to marker, sm, k to marker, sm, k to end.")
    assert told(plan, 1) == ["k7, sm, k10, sm, k7"]


@pytest.mark.parametrize("line", ["Place markers in turn after 12, 12 sts.", "Place a marker 12 sts in from each end.", "Place a marker 13 sts in from each end."])
def test_markers_beyond_the_stitches_are_reported(line: str) -> None:
    """Two markers at one place, or crossed, are no sides."""
    assert "do not fit" in faults(project(f"Cast on 24 sts.\nWork flat.\n{line}\nKnit 1 row."))
