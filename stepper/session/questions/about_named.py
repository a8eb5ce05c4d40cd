"""Answers about a part or a line that was named, and how often something is worked. Pure.

One record for each answer, beside what works it out; the words stand in `stepper.language.named_words`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby, pairwise

from stepper.craft.stitches import Kind
from stepper.plan.model import Plan, Round
from stepper.records import dataclass
from stepper.session.effects import Effect
from stepper.session.moves import DIVISION_NAMES, bare_words
from stepper.session.questions.about_ahead import changes_in
from stepper.session.questions.about_piece import tell_notes
from stepper.session.state import NoteKept, State


@dataclass(frozen=True, slots=True, kw_only=True)
class TellPartNotes(Effect):
    """Say what she noted in the sections that a name means."""

    notes: tuple[tuple[str, tuple[NoteKept, ...]], ...]
    """Each section with what was noted in it, in the order in which it was; the one in hand is left out where
    there are others."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellPartCounts(Effect):
    """Say how many stitches there are at the beginning and the end of what was named."""

    counts: tuple[tuple[str, int, int], ...]
    """Each section or line with the stitches after its first round and after its last; of a line, before it
    and after it. Empty if nothing is called so. Unit: stitches."""
    is_line: bool
    """Whether it is a line, not a section."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellLinesLeft(Effect):
    """Say how many lines of a name are still to be worked."""

    name: str
    """As asked for."""
    ahead: tuple[int, ...]
    """Their rounds, the one in hand included."""
    done: int
    here: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TellUnderarm(Effect):
    """Say how many stitches are cast on where others are put on hold."""

    index: int | None
    """The round: the next one ahead, or else the last; None if there is none."""
    stitches: tuple[int, ...]
    """At each place of it. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellRhythm(Effect):
    """Say how often a section increases, decreases or crosses a cable from here on."""

    kind: Kind
    gaps: tuple[tuple[int, int], ...]
    """Rounds from one to the next, and how often in succession, from the last one worked on."""
    index: int | None
    """The next such round, the one in hand included; None if none comes in the section."""
    here: int


def tell_part_notes(plan: Plan, state: State, place: str) -> Iterator[Effect]:
    """Tell what was noted in the sections that a name means: the other sleeve, where one is in hand."""
    here = plan.rounds[state.place.index].section
    called = find_sections(plan, place)
    if not called:  # "this rib" is no section
        yield from tell_notes(plan, state, "")
        return
    others = tuple(each for each in called if each != here) or called
    kept = [each for each in state.knitting.notes if each.index < len(plan.rounds)]
    yield TellPartNotes(
        notes=tuple(
            (each, tuple(note for note in kept if plan.rounds[note.index].section == each)) for each in others
        )
    )


def find_sections(plan: Plan, name: str) -> tuple[str, ...]:
    """Return the sections whose names hold some words, in any number, in working order."""
    wanted = bare_words(name)
    return tuple(each for each in plan.sections if wanted and wanted <= bare_words(each))


def find_lines(plan: Plan, name: str) -> tuple[Round, ...]:
    """Return the rounds whose label holds some words, in any number, or that are the division."""
    wanted = bare_words(name)
    if not wanted:
        return ()
    labelled = tuple(each for each in plan.rounds if each.label and wanted <= bare_words(each.label))
    if labelled or name.casefold() not in DIVISION_NAMES:
        return labelled
    return tuple(each for each in plan.rounds if each.holds)


def tell_part_counts(plan: Plan, state: State, place: str) -> Iterator[Effect]:
    """Tell the stitches at the beginning and the end of sections, or before and after a line."""
    sections = find_sections(plan, place)
    if sections:
        inside = [[each for each in plan.rounds if each.section == name] for name in sections]
        counts = [
            (name, part[0].after, _last_count(part)) for name, part in zip(sections, inside, strict=True)
        ]
        yield TellPartCounts(counts=tuple(counts), is_line=False)
        return
    lines = find_lines(plan, place)
    ahead = [each for each in lines if each.index >= state.place.index]
    found = ahead[:1] or lines[-1:]
    yield TellPartCounts(
        counts=tuple((each.label or place, each.before, each.after) for each in found), is_line=True
    )


def _last_count(part: list[Round]) -> int:
    """Return the stitches of a section before they are bound off, or put aside as a whole."""
    return next((each.after for each in reversed(part) if each.after), 0)


def tell_lines_left(plan: Plan, state: State, place: str) -> Iterator[Effect]:
    """Tell how many lines of a name are still to be worked: buttonholes, for one."""
    here = state.place.index
    lines = [each.index for each in find_lines(plan, place)]
    ahead = tuple(index for index in lines if index >= here)
    yield TellLinesLeft(name=place, ahead=ahead, done=len(lines) - len(ahead), here=here)


def tell_underarm(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell how many stitches are cast on under each arm."""
    dividing = [each for each in plan.rounds if each.holds and _cast_on_in(each)]
    ahead = [each for each in dividing if each.index >= state.place.index]
    found = next(iter(ahead[:1] or dividing[-1:]), None)
    yield TellUnderarm(
        index=None if found is None else found.index, stitches=() if found is None else _cast_on_in(found)
    )


def _cast_on_in(round_: Round) -> tuple[int, ...]:
    return tuple(run.times for run in round_.runs if run.stitch == "co")


def tell_rhythm(plan: Plan, state: State, at: str, *, kind: Kind) -> Iterator[Effect]:
    """Tell how often the section in hand changes something, from the last time that it did."""
    here = plan.rounds[state.place.index]
    shaped = [each.index for each in plan.rounds if each.section == here.section and changes_in(each, kind)]
    behind = [index for index in shaped if index < here.index]
    ahead = [index for index in shaped if index >= here.index]
    steps = [later - earlier for earlier, later in pairwise([*behind[-1:], *ahead])]
    yield TellRhythm(
        kind=kind,
        gaps=tuple((gap, len(tuple(alike))) for gap, alike in groupby(steps)),
        index=ahead[0] if ahead else None,
        here=here.index,
    )
