"""From a path to a plan: read the file, check it and compile it, or report every problem it has."""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import suppress
from dataclasses import replace
from functools import lru_cache
from pathlib import Path
from typing import Never

from stepper.craft.even.manners import Manner
from stepper.errors import ProjectError
from stepper.plan.compile import Compiled, SecondReading, compile_plan, faults_of
from stepper.plan.model import Plan
from stepper.project.model import Project
from stepper.project.page.marks import find_standing_marks, is_from_page
from stepper.project.page.unread.left_open import LeftKind, find_left_open, is_work_row
from stepper.project.problems import Problem, UnsoundFileError
from stepper.project.reader import FileReading, read_project
from stepper.project.size_heads import size_head
from stepper.project.yaml_file.source import read_picture, read_text
from stepper.records import dataclass
from stepper.regex import regex

_SIZES = regex(r"\bsizes?\b", re.I)
"""A further size behind the head of a row: something of it may be hers."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadedProject:
    """A project file without problems."""

    path: Path
    text: str
    """The file's content when it was read."""
    project: Project
    plan: Plan


def load_project(path: Path, *, spacing: Manner | None = None, marks: bool = True) -> LoadedProject:
    """Read a project file and work out its plan.

    Args:
        path: The file.
        spacing: Manner of spacing even changes, instead of the file's.
        marks: Whether a mark that a pasted page left is a problem while it stands.

    Raises:
        UnsoundFileError: The file has problems; the message lists them all.
        SurroundingsError: The file cannot be read.
    """
    text = read_text(path)
    project, plan = _compiled(text, str(path), path.parent, cues=True, marks=marks)
    if spacing is not None and spacing is not project.spacing:
        project = replace(project, spacing=spacing)
        compiled = compile_plan(project)
        if compiled.plan is None:  # a line that counts from a marker may meet it elsewhere
            raise UnsoundFileError(compiled.problems, text, str(path))
        plan = compiled.plan
    return LoadedProject(path=path, text=text, project=project, plan=plan)


def load_as_far(path: Path) -> LoadedProject | None:
    """Read a project file begun from a page of which some rows are not read, up to the first of them.

    Args:
        path: The file.

    Returns:
        The file with its plan, which ends where it is open (`Plan.open`); None if it was not begun from a
        page, or if something else than its rows is not settled. Where the first row is open, no round is
        known and the plan has none.

    Raises:
        SurroundingsError: The file cannot be read.
    """
    text = read_text(path)
    read = _as_far(text, path.parent)
    if read is None:
        return None
    return LoadedProject(path=path, text=text, project=read[0], plan=read[1])


def load_known(path: Path) -> LoadedProject:
    """Read a project file and work out its plan; of one begun from a page as much as is read.

    Raises:
        UnsoundFileError: The file has problems, and does not go on as `load_as_far` needs it.
        SurroundingsError: The file cannot be read.
    """
    try:
        return load_project(path)
    except UnsoundFileError:
        loaded = load_as_far(path)
        if loaded is None:
            raise
        return loaded


def find_in_the_way(path: Path) -> Problem | None:
    """Return the first thing besides its rows for which a file begun from a page cannot be knitted at all.

    Args:
        path: The file.

    Returns:
        A value or text in front of the pattern that is open, or what is not read there; None if nothing is.

    Raises:
        SurroundingsError: The file cannot be read.
    """
    text = read_text(path)
    opened = {each.first for each in find_left_open(text) if each.kind is not LeftKind.ROW}
    first = next((each for each in find_standing_marks(text) if each.line in opened), None)
    if first is not None:
        return first
    reading = read_project(text, lambda picture: read_picture(path.parent / picture))
    return next(iter(_outside_rows(reading, text)), None)


def _outside_rows(reading: FileReading, text: str) -> tuple[Problem, ...]:
    """Return what is not read of a file and is no row of its pattern."""
    rows = text.split("\n")
    return tuple(each for each in reading.problems if not is_work_row(rows, each.line))


def _as_far(text: str, folder: Path) -> tuple[Project, Plan] | None:
    left = find_left_open(text)
    if any(each.kind is not LeftKind.ROW for each in left):
        return None
    reading = read_project(text, lambda picture: read_picture(folder / picture))
    project = reading.project or reading.partial
    if project is None or _outside_rows(reading, text) or not (left or is_from_page(text)):
        return None
    # What looks at the words of a page is loaded only for one that is not read to its end.
    from stepper.plan.as_far import plan_as_far

    hers = [each for each in left if not is_of_other_sizes(each.text, project)]
    lines = {row for each in hers for row in range(each.first, each.last + 1)}
    plan = plan_as_far(project, lines | {each.line for each in reading.problems})
    return None if plan is None else (project, plan)


def is_of_other_sizes(words: str, project: Project) -> bool:
    """Return whether a row that is not read is only for sizes that are not knitted, by its head."""
    plain = words.removeprefix("Note: ")
    head = size_head(plain, project.sizes)
    if head is None or not head.places or head.missing or project.switches:
        return False
    return project.size not in head.places and _SIZES.search(plain[head.end :]) is None


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintedSizes:
    """A pattern whose printed sizes are sound, whether or not the blend is."""

    project: Project
    plan: Plan
    """As it is knitted; if that is impossible, the first size alone, without alterations."""
    readings: frozenset[SecondReading]
    """Wordings taken in their second reading."""
    trouble: str
    """Why it cannot be knitted as the file says; empty if it can."""


def load_sizes(path: Path) -> PrintedSizes:
    """Read a project file of which at least the printed sizes must be sound.

    Raises:
        UnsoundFileError: The file has problems in its printed sizes; the message lists them all.
        SurroundingsError: The file cannot be read.
    """
    text = read_text(path)
    reading = read_project(text, lambda picture: read_picture(path.parent / picture))
    marks = find_standing_marks(text)
    if reading.project is None or marks:
        raise UnsoundFileError((*_all_problems(reading), *marks), text, str(path))
    compiled = compile_plan(reading.project)
    trouble = ""
    if compiled.plan is None:
        unsound = UnsoundFileError(compiled.problems, text, str(path))
        trouble = str(unsound)
        compiled = compile_plan(replace(reading.project, switches=(), alterations=()))
        if compiled.plan is None:
            raise unsound
    return PrintedSizes(
        project=reading.project, plan=compiled.plan, readings=compiled.readings, trouble=trouble
    )


def plan_of_text(text: str, name: str, folder: Path, *, formerly: bool = False) -> Plan:
    """Work out the plan of a project text that is not in a file.

    Args:
        text: The whole text.
        name: What to call it in problems.
        folder: Where its chart pictures are.
        formerly: Whether even rounds are written as they were before they had manners.

    Raises:
        UnsoundFileError: The text has problems.
    """
    return _compiled(text, name, folder, cues=False, formerly=formerly)[1]


def plans_of_text(text: str, name: str, folder: Path) -> Iterator[Plan]:
    """Yield the plans by which a text may have been knitted: as it is, as it was once, as far as it is read.

    Args:
        text: The whole text.
        name: What to call it in problems.
        folder: Where its chart pictures are.
    """
    for formerly in (False, True):
        with suppress(ProjectError):
            yield plan_of_text(text, name, folder, formerly=formerly)
    read = _as_far(text, folder)
    if read is not None:
        yield read[1]


def _compiled(
    text: str, name: str, folder: Path, *, cues: bool, formerly: bool = False, marks: bool = False
) -> tuple[Project, Plan]:
    """Read and compile a text; what it says of cues, and marks that stand, are checked if asked for."""
    try:
        reading, compiled = _read_and_worked_out(text, formerly)
    except _PictureAsked:
        reading = read_project(text, lambda picture: read_picture(folder / picture))
        compiled = _worked_out(reading, formerly=formerly)
    standing = find_standing_marks(text) if marks else ()
    project = reading.project
    if project is None or compiled is None:
        own = _cue_problems(reading.partial, None) if cues else ()
        raise UnsoundFileError((*_all_problems(reading), *own, *standing), text, name)
    problems = (*compiled.problems, *(_cue_problems(project, compiled.plan) if cues else ()), *standing)
    if compiled.plan is None or problems:
        raise UnsoundFileError(problems, text, name)
    return project, compiled.plan


class _PictureAsked(Exception):  # noqa: N818 - no error: the text is read once more
    """A text names a picture, a file of its own, which may change while the text does not."""


def _ask_picture(_name: str) -> Never:
    raise _PictureAsked


@lru_cache(maxsize=16)
def _read_and_worked_out(text: str, formerly: bool) -> tuple[FileReading, Compiled | None]:
    """Read and compile a text; the last few are kept, as both are pure and the records are frozen.

    Raises:
        _PictureAsked: It names a picture.
    """
    reading = read_project(text, _ask_picture)
    return reading, _worked_out(reading, formerly=formerly)


def _worked_out(reading: FileReading, *, formerly: bool) -> Compiled | None:
    """Compile what was read; None if it could not be read."""
    if reading.project is None:
        return None
    return compile_plan(replace(reading.project, spacing=None) if formerly else reading.project)


def _cue_problems(project: Project | None, plan: Plan | None) -> tuple[Problem, ...]:
    """Find the own words for cues that cannot be used."""
    if project is None or not project.cues:
        return ()
    # The vocabulary with all its cues is a third of the start of `plan`; few files have words of their own.
    from stepper.language.understanding.own_words import find_faults

    of = {each.words: each for each in project.cues}
    own = {each.words: each.meant for each in project.cues}
    found = find_faults(own, plan if plan is not None else Plan(title=project.title, rounds=()))
    places = ((of[each.words], each) for each in found)
    return tuple(
        (cue.meant_place if each.at_meaning else cue.place).problem(each.sentence, each.hint)
        for cue, each in places
    )


def _all_problems(reading: FileReading) -> tuple[Problem, ...]:
    """Collect the problems of the wording and those of the arithmetic, so that one run reports all."""
    faults = faults_of(reading.partial) if reading.partial is not None else ()
    return (*reading.problems, *faults)
