"""Charts and labels of the outline."""

from __future__ import annotations

import pytest

from stepper.project.draft import FileDraft
from stepper.project.keys.outline import check_labels
from stepper.project.reader import read_project
from tests.project.samples import project


@pytest.mark.parametrize("label", ["Setup", "setup"])
def test_a_switch_finds_its_line_whatever_the_case(label: str) -> None:
    """The label is words, not code."""
    text = project("Setup: Cast on 8 sts.").replace(
        "{size: M}", f"{{size: M, then: [{{from: {label}, size: S}}]}}"
    )
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
    draft = FileDraft(text_lines=[])
    check_labels((), (), draft)
    assert draft.problems == []
