"""Which size where: every pair, the blended round, and why a pair cannot be knitted."""

from __future__ import annotations

from pathlib import Path

from stepper.plan.blend import blends, switch_labels, tried
from stepper.project.model import Project
from stepper.project.reader import read_project

SWITCHBACK = Path(__file__).parents[2] / "sample_projects" / "switchback.yaml"


def switchback() -> Project:
    """Read the sample."""
    project = read_project(SWITCHBACK.read_text(encoding="utf-8")).project
    assert project is not None
    return project


def test_the_blend_of_the_scenario() -> None:
    """Size 4, then 2 from the final increase: 225 to 246, 15 gaps of 11 and 6 of 10.

    Source: 225 = 21 × 10 + 15, whole-number division.
    """
    blend = tried(switchback(), 3, 1, "Final increase")
    assert (blend.before, blend.after, blend.gaps) == (225, 246, ((11, 15), (10, 6)))


def test_every_pair_is_tried_once_at_every_line_that_can_carry_it() -> None:
    """Six sizes alone, and 6 × 5 pairs at each of three lines."""
    project = switchback()
    assert switch_labels(project) == ("First increase", "Second increase", "Final increase")
    found = [(each.size, each.then, each.label) for each in blends(project)]
    assert len(found) == len(set(found)) == 6 + 3 * 30


def test_a_rejected_pair_says_why_with_its_numbers() -> None:
    """Size 6 has 255 stitches where size 1 wants 228: an increase line cannot do that."""
    blend = tried(switchback(), 5, 0, "Final increase")
    assert not blend.works
    assert blend.rounds == ()
    assert "228" in blend.why_not
    assert "255" in blend.why_not
