"""From a path to a plan, or to every problem."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.errors import ProjectError
from stepper.sitting.project_file import LoadedProject, load_as_far, load_project, plan_of_text, plans_of_text
from tests.project.samples import begun_from_page, project


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


MARK = "# LOOK (row 9 of the text)."
OPEN = f"Cast on 8 sts.\n{MARK}\nNote: Twirl them.\nBind off."


def far(tmp_path: Path, text: str) -> LoadedProject | None:
    """Read a text from a file as far as it goes."""
    path = tmp_path / "a.yaml"
    path.write_text(text, encoding="utf-8")
    return load_as_far(path)


def test_a_page_is_read_as_far_as_it_goes(tmp_path: Path) -> None:
    """Its plan ends at the first row that is left open; a sound one has no end of that kind."""
    loaded = far(tmp_path, begun_from_page(OPEN))
    assert loaded is not None
    assert loaded.plan.open is not None
    assert (len(loaded.plan.rounds), loaded.plan.open.words) == (1, "Note: Twirl them.")
    sound = far(tmp_path, begun_from_page("Cast on 8 sts.\nBind off."))
    assert sound is not None
    assert sound.plan.open is None


def test_what_is_no_row_of_a_page_ends_nothing(tmp_path: Path) -> None:
    """A size that is not known, a gauge that is not read, a file that was typed: the problems are told instead."""
    assert far(tmp_path, begun_from_page(OPEN).replace("size: M", "size: M  # LOOK: which?")) is None
    assert far(tmp_path, begun_from_page(OPEN).replace("rounds: 28", "rounds: many")) is None
    assert far(tmp_path, project("Cast on 8 sts.\nTwirl them.")) is None


def test_the_plans_a_text_may_have_been_knitted_by_are_all_tried(tmp_path: Path) -> None:
    """Or a journal begun on a page that was not read to its end could not be compared with today's file."""
    plans = plans_of_text(begun_from_page(OPEN), "as it was", tmp_path)
    assert [len(each.rounds) for each in plans] == [2, 2, 1]
    assert [len(each.rounds) for each in plans_of_text(project("Twirl."), "as it was", tmp_path)] == []
