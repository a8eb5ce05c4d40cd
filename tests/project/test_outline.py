"""Charts, alterations and labels of the outline."""

from __future__ import annotations

import pytest

from stepper.project.outline import check_labels, read_alteration
from stepper.project.problems import Place
from stepper.project.reader import read_project
from tests.project.samples import project

HERE = Place(line=1, column=1)


def test_an_alteration_is_read_as_a_rule() -> None:
    """Rules are carried out; anything else has to be called a note."""
    rule = read_alteration("needle 3.75 mm instead of 4 mm in yoke", HERE)
    assert rule is not None
    assert (rule.kind, rule.mm, rule.instead_of, rule.section) == ("needle", 3.75, 4.0, "yoke")
    bobbles = read_alteration("no bobbles", HERE)
    assert bobbles is not None
    assert bobbles.kind == "no bobbles"
    assert read_alteration("knit it nicely", HERE) is None


@pytest.mark.parametrize("label", ["Setup", "setup"])
def test_a_switch_finds_its_line_whatever_the_case(label: str) -> None:
    """The label is words, not code."""
    text = project("Setup: Cast on 8 sts.").replace("{size: M}", f"{{size: M, then: [{{from: {label}, size: S}}]}}")
    assert read_project(text).problems == ()


def test_a_label_that_two_lines_bear_cannot_carry_a_switch() -> None:
    """Which of the two would begin the other size?"""
    text = project("Setup: Cast on 8 sts.\nSetup: Knit.").replace(
        "{size: M}", "{size: M, then: [{from: Setup, size: S}]}"
    )
    problems = read_project(text).problems
    assert "labels 2 lines" in problems[0].message


def test_no_switch_needs_no_label() -> None:
    """A pattern without labels is fine."""
    problems: list[object] = []
    check_labels((), (), problems)  # type: ignore[arg-type]
    assert problems == []
