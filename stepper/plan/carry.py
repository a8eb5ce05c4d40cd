"""Carry a place from the plan knitted so far into the plan of a changed project file, and say what changed.

Pure: two plans and a place in, a place and a list of changes out. Theory of operation:

1. Sections are matched by name. Within a section, rounds are aligned by what is worked in them, so a round
   put in or left out is told as that and not as a change of every round after it.
2. A place is section, round and label. The stretch of rounds that belongs to a label (from the label to the
   next one) is looked up in the new plan. If it begins the same as far as the round in hand, the place is as
   far from the label as it was; if not, the place goes with the round as aligned; if the round is gone, the
   place is as far from the label as the new plan allows, and `found` is false.
3. Nothing is silent: the caller tells `changes`, which of them are already knitted, and a count that no
   longer fits.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from difflib import SequenceMatcher
from typing import Literal

from stepper.plan.lengthen import Correction, rounds_at_gauge
from stepper.plan.model import Plan, Round, Run, Stretch

_Work = tuple[tuple[Run, ...], float | None, bool, str, tuple[str, ...]]


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """Neighbouring rounds of a section that differ between two plans."""

    kind: Literal["changed", "added", "removed"]
    section: str
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


@dataclass(frozen=True, slots=True, kw_only=True)
class Carried:
    """A place in the new plan, and all there is to say about it."""

    index: int
    """Round to go on with, from 0; the number of rounds when the new plan has none left."""
    stitch: int
    """Stitches of it worked."""
    found: bool
    """Whether the round in hand is in the new plan, with the same stitches in it."""
    have: int
    """Stitches on the needles at the beginning of the round in hand, by the old plan. Unit: stitches."""
    want: int
    """Stitches the new plan has at the beginning of the round to go on with. Unit: stitches."""
    changes: tuple[Change, ...]
    """What changed, in the order knitted."""


def carry(old: Plan, new: Plan, *, index: int, stitch: int) -> Carried:
    """Find a place of one plan in another and list what differs.

    Args:
        old: The plan knitted so far, with its lengths corrected.
        new: The plan to go on with, its lengths corrected too.
        index: Round in hand in the old plan, from 0; the number of rounds when all are done.
        stitch: Stitches of it worked.
    """
    if not old.rounds or not new.rounds:
        place, found = 0, not index
    elif index >= len(old.rounds):
        last, found = _carried_index(old, new, len(old.rounds) - 1)
        place = last + 1
    else:
        place, found = _carried_index(old, new, index)
    worked = 0
    if stitch and index < len(old.rounds) and place < len(new.rounds):
        same = old.rounds[index].runs == new.rounds[place].runs
        found = found and same
        worked = stitch if same else max(0, min(stitch, new.rounds[place].progress - 1))
    return Carried(
        index=place,
        stitch=worked,
        found=found,
        have=_count_before(old, index),
        want=_count_before(new, place),
        changes=tuple(_changes(old, new, old_index=index, new_index=place)),
    )


def carry_corrections(old: Plan, new: Plan, corrections: Iterable[Correction]) -> tuple[Correction, ...]:
    """Move corrections of lengths to the stretches of another plan.

    A stretch is matched by its section and its place among that section's stretches. Where the new plan wants
    another length, the gauge as knitted says how many rounds that is.

    Args:
        old: The old plan as compiled, without corrections.
        new: The new plan as compiled.
        corrections: What measuring said while knitting the old one.
    """
    places = {_stretch_name(new, at): at for at in range(len(new.stretches))}
    carried = []
    for correction in corrections:
        if not 0 <= correction.stretch < len(old.stretches):
            continue
        at = places.get(_stretch_name(old, correction.stretch))
        if at is None:
            continue
        before, after = old.stretches[correction.stretch], new.stretches[at]
        if _shape(before) == _shape(after):
            carried.append(replace(correction, stretch=at))
        else:
            rounds = rounds_at_gauge(after, correction.rounds_per_10cm)
            carried.append(replace(correction, stretch=at, rounds=rounds))
    return tuple(sorted(carried, key=lambda each: each.stretch))


def _shape(stretch: Stretch) -> tuple[float, int, int]:
    return stretch.target_mm, stretch.first - stretch.origin, stretch.cycle


def _stretch_name(plan: Plan, at: int) -> tuple[str, int]:
    """Name a stretch by its section and its place among the stretches of that section."""
    sections = [plan.rounds[min(each.first, len(plan.rounds) - 1)].section for each in plan.stretches]
    return sections[at], sections[:at].count(sections[at])


def _count_before(plan: Plan, index: int) -> int:
    """Count the stitches at the beginning of a round; after the last one, what that one leaves."""
    if index < len(plan.rounds):
        return plan.rounds[index].before
    return plan.rounds[-1].after if plan.rounds else 0


# The place


def _carried_index(old: Plan, new: Plan, index: int) -> tuple[int, bool]:
    """Find the round of the new plan that goes with one of the old plan, and whether it is the same."""
    name = old.rounds[index].section
    old_span, new_span = _spans(old, new, index)
    if not new_span:
        return _after_lost_section(old, new, index), False
    for spans in ((old_span, new_span), (_section(old, name), _section(new, name))):
        at = _aligned(old, new, *spans, index=index)
        if at is not None:
            return at, True
    nearest = min(new_span.start + index - old_span.start, new_span.stop - 1)
    return nearest, False


def _aligned(old: Plan, new: Plan, old_span: range, new_span: range, *, index: int) -> int | None:
    """Find a round among the rounds of a span: as far from its beginning, or else where it moved to."""
    offset = index - old_span.start
    before = [_work(old.rounds[at]) for at in old_span]
    after = [_work(new.rounds[at]) for at in new_span]
    if before[: offset + 1] == after[: offset + 1]:
        return new_span.start + offset
    for block in SequenceMatcher(None, before, after, autojunk=False).get_matching_blocks():
        if block.a <= offset < block.a + block.size:
            return new_span.start + block.b + offset - block.a
    return None


def _spans(old: Plan, new: Plan, index: int) -> tuple[range, range]:
    """Give the rounds of the label a round belongs to, in both plans.

    Without a label they are those from the beginning of the section. Where the new plan does not know the
    label the whole section stands in: what the label stood at may still be there.
    """
    span = _span(old, index)
    head = old.rounds[span.start]
    old_section, new_section = _section(old, head.section), _section(new, head.section)
    if head.label is None:
        return (span, _from(new, new_section.start)) if new_section else (span, new_section)
    alike = [at for at in old_section if _same_name(old.rounds[at].label, head.label)]
    found = [at for at in new_section if _same_name(new.rounds[at].label, head.label)]
    nth = alike.index(span.start)
    if nth < len(found):
        return span, _from(new, found[nth])
    return old_section, new_section


def _section(plan: Plan, name: str) -> range:
    """Give the rounds of a section."""
    places = [round_.index for round_ in plan.rounds if round_.section == name]
    return range(places[0], places[-1] + 1) if places else range(0)


def _span(plan: Plan, index: int) -> range:
    """Give the rounds that belong to the same label as a round: from the label up to the next one."""
    section = plan.rounds[index].section
    start = index
    while start and plan.rounds[start].label is None and plan.rounds[start - 1].section == section:
        start -= 1
    return _from(plan, start)


def _from(plan: Plan, start: int) -> range:
    """Give the rounds from one that begins a labelled line, or a section, up to the next such."""
    section = plan.rounds[start].section
    stop = start + 1
    while (
        stop < len(plan.rounds) and plan.rounds[stop].label is None and plan.rounds[stop].section == section
    ):
        stop += 1
    return range(start, stop)


def _same_name(one: str | None, other: str | None) -> bool:
    return one is not None and other is not None and one.casefold() == other.casefold()


def _after_lost_section(old: Plan, new: Plan, index: int) -> int:
    """Find where to go on when the section in hand is gone: with the next section that is still there."""
    names = old.sections
    for name in names[names.index(old.rounds[index].section) + 1 :]:
        for round_ in new.rounds:
            if round_.section == name:
                return round_.index
    return min(index, len(new.rounds))


# The changes


def _work(round_: Round) -> _Work:
    """Give what makes a round the same to knit."""
    return round_.runs, round_.needle_mm, round_.flat, round_.side, round_.remarks


def _key(round_: Round) -> tuple[str | None, _Work]:
    """Give what is told as a change when it differs."""
    return round_.label, _work(round_)


def _changes(old: Plan, new: Plan, *, old_index: int, new_index: int) -> Iterator[Change]:
    """List what differs, section by section."""
    for section in dict.fromkeys((*old.sections, *new.sections)):
        before = [round_ for round_ in old.rounds if round_.section == section]
        after = [round_ for round_ in new.rounds if round_.section == section]
        matcher = SequenceMatcher(None, [*map(_key, before)], [*map(_key, after)], autojunk=False)
        for tag, b1, b2, a1, a2 in matcher.get_opcodes():
            if tag == "equal":
                continue
            # What is knitted is told apart from what is to come, where round stands for round.
            knitted = min(max(old_index - before[b1].index, 0), b2 - b1) if b2 - b1 == a2 - a1 else 0
            if knitted:
                yield _change(
                    section, before[b1 : b1 + knitted], after[a1 : a1 + knitted], old_index, new_index
                )
            if knitted < max(b2 - b1, a2 - a1):
                yield _change(
                    section, before[b1 + knitted : b2], after[a1 + knitted : a2], old_index, new_index
                )


def _change(section: str, before: list[Round], after: list[Round], old_index: int, new_index: int) -> Change:
    shown = after or before
    knitted = before[0].index < old_index if before else after[0].index < new_index
    kind: Literal["changed", "added", "removed"] = "changed"
    if not before:
        kind = "added"
    elif not after:
        kind = "removed"
    return Change(
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
