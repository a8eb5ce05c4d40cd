"""From a path to a plan, or to every problem."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.errors import ProjectError
from stepper.sitting.project_file import load_project, plan_of_text
from tests.project.samples import project


def test_a_sound_file_gives_text_project_and_plan(tmp_path: Path) -> None:
    """The text is kept for the journal."""
    path = tmp_path / "a.yaml"
    path.write_text(project("Cast on 8 sts.\nBind off."), encoding="utf-8")
    loaded = load_project(path)
    assert loaded.text == path.read_text(encoding="utf-8")
    assert loaded.plan.title == loaded.project.title == "Bramble cowl"


def test_problems_are_named_by_the_name_given() -> None:
    """A text without a file is called what the caller calls it."""
    with pytest.raises(ProjectError, match=r"the old pattern:18:\d+: error"):
        plan_of_text(project("Knit 2 rounds."), "the old pattern", Path())
