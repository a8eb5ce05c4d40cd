"""Carry a place from the plan knitted so far over to the plan of a changed project file, and list what
changed.

Pure: two plans and a place in, a place (or the choice of one) and a list of changes out. The place follows
what is knitted (`stepper.plan.under_way.resuming`). For the list of changes, sections are matched by name,
renamed ones by what is knitted in them; within a section rounds are aligned by what is worked in them, so a
round inserted or removed is reported as such and not as a change of every round after it. Nothing is silent:
the caller tells `changes`, which of them are already knitted, and a count that no longer fits.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from difflib import SequenceMatcher
from enum import StrEnum

from stepper.plan.model import Plan, Round, Run, Stretch
from stepper.plan.under_way.aligning import renamed_sections
from stepper.plan.under_way.fingerprint import Knitted, placed_alike
from stepper.plan.under_way.lengthen import LengthCorrection, in_rows, rounds_at_gauge
from stepper.plan.under_way.resuming import PlaceChoice, resume
from stepper.records import dataclass

_Work = tuple[tuple[Run, ...], float | None, bool, str, tuple[str, ...]]


class ChangeKind(StrEnum):
    """What became of rounds from one plan to another."""

    CHANGED = "changed"
    ADDED = "added"
    REMOVED = "removed"
    RENAMED = "renamed"


@dataclass(frozen=True, slots=True, kw_only=True)
class Difference:
    """Neighbouring rounds of a section that differ between two plans."""

    kind: ChangeKind
    section: str
    """As it is called now; for `removed` as it was."""
    first: int
    """Round of the section with which it begins, from 1: in the new plan, for `removed` in the old one."""
    last: int
    """Round of the section with which it ends."""
    label: str | None
    """The label of the first round, if it has one."""
    rounds_before: int
    """Rounds there were. Unit: rounds."""
    rounds_after: int
    """Rounds there are now. Unit: rounds."""
    count_before: int
    """Stitches after the last of them as it was; as it is for `added`. Unit: stitches."""
    count_after: int
    """Stitches after the last of them now; as it was for `removed`. Unit: stitches."""
    knitted: bool
    """Whether any of it lies in what is already knitted."""
    was: str = ""
    """What the section was called, for `renamed`; the rounds told are then all of it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Carried:
    """A place in the new plan, and all there is to say about it."""

    index: int
    """Round to go on with, from 0; the number of rounds if the new plan has none left. The likeliest if she
    has to choose."""
    stitch: int
    """Stitches of it worked."""
    found: bool
    """Whether the place is sure."""
    same: bool
    """Whether the new plan has the current round there, with the same stitches in it."""
    choices: tuple[PlaceChoice, ...]
    """Places to choose from, likeliest first; empty if the place is sure."""
    have: int
    """Stitches on the needles at the beginning of the current round, by the old plan. Unit: stitches."""
    want: int
    """Stitches the new plan has at the beginning of the round to go on with. Unit: stitches."""
    changes: tuple[Difference, ...]
    """What changed, in the order knitted."""


def carry(old: Plan, new: Plan, *, index: int, stitch: int) -> Carried:
    """Find a place of one plan in another and list what differs.

    Args:
        old: The plan knitted so far, with its lengths corrected.
        new: The plan to go on with, its lengths corrected too.
        index: Current round in the old plan, from 0; the number of rounds if all are done.
        stitch: Stitches of it worked.
    """
    place = resume(old, new, index=index, stitch=stitch)
    have = old.count_before(index)
    return Carried(
        index=place.index,
        stitch=place.stitch,
        found=not place.choices,
        same=place.same,
        choices=place.choices,
        have=have,
        # A place that is sure fits what is on the needles; otherwise it would not be sure.
        want=new.count_before(place.index) if place.choices else have,
        changes=tuple(_changes(old, new, old_index=index, new_index=place.index)),
    )


def carry_corrections(
    old: Plan, new: Plan, corrections: Iterable[LengthCorrection]
) -> tuple[LengthCorrection, ...]:
    """Move corrections of lengths to the stretches of another plan.

    A stretch is matched by its section and its place among that section's stretches. If the new plan wants
    another length, the gauge as knitted gives the number of rounds.

    Args:
        old: The old plan as compiled, without corrections.
        new: The new plan as compiled.
        corrections: What measuring said while knitting the old one.
    """
    renamed = renamed_sections(old, new)
    places = {_stretch_name(new, at): at for at in range(len(new.stretches))}
    carried = []
    for correction in corrections:
        if not 0 <= correction.stretch < len(old.stretches):
            continue
        section, nth = _stretch_name(old, correction.stretch)
        at = places.get((renamed.get(section, section), nth))
        if at is None:
            continue
        before, after = old.stretches[correction.stretch], new.stretches[at]
        if _shape(before) == _shape(after):
            carried.append(replace(correction, stretch=at))
        else:
            rounds = rounds_at_gauge(after, correction.rounds_per_10cm, flat=in_rows(new, after))
            carried.append(replace(correction, stretch=at, rounds=rounds))
    return tuple(sorted(carried, key=lambda each: each.stretch))


def _shape(stretch: Stretch) -> tuple[float, int, int]:
    return stretch.target_mm, stretch.first - stretch.origin, stretch.cycle


def _stretch_name(plan: Plan, at: int) -> tuple[str, int]:
    """Name a stretch by its section and its place among the stretches of that section."""
    sections = [plan.rounds[min(each.first, len(plan.rounds) - 1)].section for each in plan.stretches]
    return sections[at], sections[:at].count(sections[at])


# The changes


def _work(round_: Round) -> _Work:
    """Return what makes a round the same to knit."""
    return round_.runs, round_.needle_mm, round_.flat, round_.side, round_.remarks


def _told_of(round_: Round) -> tuple[str | None, Knitted, float | None, tuple[str, ...]]:
    """Return what matters of a round that is done: where its even changes are can no longer change."""
    return round_.label, placed_alike(round_), round_.needle_mm, round_.remarks


def _key(round_: Round) -> tuple[str | None, _Work]:
    """Return what is told as a change when it differs."""
    return round_.label, _work(round_)


def _changes(old: Plan, new: Plan, *, old_index: int, new_index: int) -> Iterator[Difference]:
    """List what differs, section by section."""
    renamed = renamed_sections(old, new)
    for section in dict.fromkeys((*(renamed.get(name, name) for name in old.sections), *new.sections)):
        was = next((name for name, now in renamed.items() if now == section), section)
        before = [round_ for round_ in old.rounds if round_.section == was]
        after = [round_ for round_ in new.rounds if round_.section == section]
        if was != section:
            told = _change(section, before, after, old_index, new_index)
            yield replace(told, kind=ChangeKind.RENAMED, was=was, label=None)
        matcher = SequenceMatcher(None, [*map(_key, before)], [*map(_key, after)], autojunk=False)
        for tag, b1, b2, a1, a2 in matcher.get_opcodes():
            if tag == "equal":
                continue
            # If rounds correspond one to one, what is knitted is reported apart from what is to come.
            knitted = min(max(old_index - before[b1].index, 0), b2 - b1) if b2 - b1 == a2 - a1 else 0
            done = zip(before[b1 : b1 + knitted], after[a1 : a1 + knitted], strict=True)
            b_now, a_now = b1 + knitted, a1 + knitted
            if any(_told_of(one) != _told_of(other) for one, other in done):
                yield _change(section, before[b1:b_now], after[a1:a_now], old_index, new_index)
            if knitted < max(b2 - b1, a2 - a1):
                yield _change(section, before[b_now:b2], after[a_now:a2], old_index, new_index)


def _change(
    section: str, before: list[Round], after: list[Round], old_index: int, new_index: int
) -> Difference:
    shown = after or before
    knitted = before[0].index < old_index if before else after[-1].index < new_index
    kind = ChangeKind.CHANGED
    if not before:
        kind = ChangeKind.ADDED
    elif not after:
        kind = ChangeKind.REMOVED
    return Difference(
        kind=kind,
        section=section,
        first=shown[0].number,
        last=shown[-1].number,
        label=shown[0].label,
        rounds_before=len(before),
        rounds_after=len(after),
        count_before=(before or after)[-1].after,
        count_after=(after or before)[-1].after,
        knitted=knitted,
    )
