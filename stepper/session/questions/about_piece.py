"""Answers about the piece in hand as a whole: its width, stitches and sections, how much is done. Pure.

One record for each answer, beside what works it out; the words stand in `stepper.language.piece_words`.
"""

from __future__ import annotations

from collections.abc import Iterator

from stepper.craft.stitches import Kind
from stepper.plan.kinds import kind_of
from stepper.plan.model import Plan, Round
from stepper.records import dataclass
from stepper.session.counting.count_timing import why_count
from stepper.session.counting.tally import count_at
from stepper.session.effects import Effect
from stepper.session.moves import RIB_NAMES, bare_words, round_called
from stepper.session.pace.outlook import paces_of, work_in
from stepper.session.questions.about_ahead import changes_in, length_mm, tell_length
from stepper.session.state import Asking, NoteKept, State

COUNT_WITHIN = 60
"""Rounds within which a count to come is looked for. Source: chosen here."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellLastShaping(Effect):
    """Say how many rounds ago stitches were last increased or decreased."""

    increases: bool
    index: int | None
    """The round; None if there was none in this section."""
    here: int
    changes: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TellNextCount(Effect):
    """Say when a count will be asked for."""

    index: int | None
    """The round at whose end it is; None if none comes soon."""
    here: int
    reason: str
    expect: int
    """Stitches there should be then. Unit: stitches."""
    asks: bool
    """Whether counts are asked for at all."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellNextSection(Effect):
    """Say which section comes after the one in hand."""

    section: str
    index: int | None
    """Its first round; None if this is the last section."""
    here: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TellHeld(Effect):
    """Say which stitches wait on hold."""

    held: tuple[tuple[str, int], ...]
    """What they were held for, and how many. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellCastOn(Effect):
    """Say with how many stitches the piece in hand began."""

    section: str
    stitches: int | None
    """None if nothing was cast on or picked up. Unit: stitches."""
    is_cast_on: bool
    """Whether they were cast on, not picked up or taken from a holder."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellWidth(Effect):
    """Say how wide the fabric on the needles is by its gauge."""

    stitches: int
    width_mm: float | None
    """None if the file gives no gauge. Unit: mm."""
    flat: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class TellShareDone(Effect):
    """Say how much of the garment is done."""

    stitches: float
    """Share of all stitches. Range: 0 to 1."""
    rounds: int
    of: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TellSection(Effect):
    """Say how far one section is done, and how long its rest takes."""

    section: str
    done: int
    """Rounds done."""
    of: int
    flat: bool
    seconds_left: float
    """Knitting time, breaks left out. Unit: s."""
    measured: bool
    """Whether at her own pace."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellPartLength(Effect):
    """Say how long a part is as a whole that is not in hand."""

    section: str
    rounds: int
    flat: bool
    length_mm: float | None
    """By its rounds and the gauge; None if no gauge is known. Unit: mm."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellNotes(Effect):
    """Say what she noted."""

    section: str
    """The one in hand."""
    here: tuple[NoteKept, ...]
    """What she noted in it, in the order in which she did."""
    last: NoteKept | None
    """What she noted last anywhere; None if nothing."""


def tell_notes(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell what she noted in the section in hand, or else what she noted last."""
    section = plan.rounds[min(state.place.index, len(plan.rounds) - 1)].section
    kept = tuple(each for each in state.knitting.notes if each.index < len(plan.rounds))
    here = tuple(each for each in kept if plan.rounds[each.index].section == section)
    yield TellNotes(section=section, here=here, last=kept[-1] if kept else None)


def tell_last_shaping(plan: Plan, state: State, at: str, *, kind: Kind) -> Iterator[Effect]:
    """Tell how many rounds ago stitches were last increased or decreased in this section."""
    here = plan.rounds[state.place.index]
    inside = (each for each in plan.rounds[: here.index] if each.section == here.section)
    behind = [each for each in inside if changes_in(each, kind)]
    last = behind[-1] if behind else None
    yield TellLastShaping(
        increases=kind is Kind.INCREASE,
        index=None if last is None else last.index,
        here=here.index,
        changes=0 if last is None else changes_in(last, kind),
    )


def tell_next_count(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell at the end of which round a count will be asked for, as things stand."""
    here = state.place.index
    asks = state.knitting.asking is not Asking.NEVER
    for round_ in plan.rounds[here : here + COUNT_WITHIN] if asks else ():
        reason = why_count(plan, state, round_.index)
        if reason is not None:
            yield TellNextCount(index=round_.index, here=here, reason=reason, expect=round_.after, asks=True)
            return
    yield TellNextCount(index=None, here=here, reason="", expect=0, asks=asks)


def tell_next_section(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell which section comes after the one in hand."""
    here = plan.rounds[state.place.index]
    index = next((each.index for each in plan.rounds[here.index :] if each.section != here.section), None)
    yield TellNextSection(section=here.section, index=index, here=here.index)


def tell_held(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell which stitches wait on hold."""
    index = state.place.index
    held = plan.rounds[index - 1].held if index else {}
    yield TellHeld(held=tuple((name, many) for name, many in held.items() if many))


def tell_cast_on(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell with how many stitches the piece in hand began."""
    here = state.place.index
    first = next((each for each in reversed(plan.rounds[: here + 1]) if not each.before), None)
    yield TellCastOn(
        section=plan.rounds[here].section if first is None else first.section,
        stitches=None if first is None else first.after,
        is_cast_on=first is not None and any(run.stitch == "co" for run in first.runs),
    )


def tell_width(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell how wide the fabric on the needles is."""
    place = state.place
    round_, count = plan.rounds[place.index], count_at(plan, place)
    loop = plan.materials.loop(round_.gauge)
    width = None if loop is None else count * loop.stitch_mm
    yield TellWidth(stitches=count, width_mm=width, flat=round_.flat)


def tell_share_done(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell how much of the garment is done, by its stitches and by its rounds."""
    place = state.place
    done = sum(each.progress for each in plan.rounds[: place.index]) + place.stitch
    whole = sum(each.progress for each in plan.rounds)
    yield TellShareDone(stitches=done / max(1, whole), rounds=place.index, of=len(plan.rounds))


def tell_section(plan: Plan, state: State, place: str) -> Iterator[Effect]:
    """Tell how far a part is done, and how long its rest takes.

    Args:
        plan: The plan as knitted.
        state: Where the session stands.
        place: The section's name, a word of it, or what a rib is called; empty for the section in hand.
    """
    part = part_called(plan, place, plan.rounds[state.place.index])
    at = min(state.place.index, part.rounds[-1].index + 1)
    ahead = tuple(each for each in part.rounds if each.index >= at)
    paces = paces_of(state)
    yield TellSection(
        section=part.name,
        done=len(part.rounds) - len(ahead),
        of=len(part.rounds),
        flat=part.rounds[0].flat,
        seconds_left=paces.seconds_for(work_in(ahead, state.place)),
        measured=paces.measured,
    )


def tell_part_length(plan: Plan, state: State, at: str, place: str) -> Iterator[Effect]:
    """Tell how long a part is: the one in hand as far as it is done, any other as a whole.

    Args:
        plan: The plan as knitted.
        state: Where the session stands.
        at: Now. ISO 8601.
        place: The section's name, a word of it, or what a rib is called.
    """
    part = part_called(plan, place, plan.rounds[state.place.index])
    if any(each.index == state.place.index for each in part.rounds):
        yield from tell_length(plan, state, at)
        return
    yield TellPartLength(
        section=part.name,
        rounds=len(part.rounds),
        flat=part.rounds[0].flat,
        length_mm=length_mm(plan, part.rounds),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """Rounds that are asked about together."""

    name: str
    rounds: tuple[Round, ...]
    """At least one, in working order."""


def part_called(plan: Plan, name: str, here: Round) -> Part:
    """Find the part that a name means: the one in hand before the next ahead, which goes before one done.

    Args:
        plan: The plan as knitted.
        name: Of a section, a word of it, or what a rib is called; empty for the section in hand.
        here: The round in hand.

    Returns:
        The rounds; those of the section in hand if nothing is called so.
    """
    wanted = bare_words(name)
    if wanted <= bare_words(here.section):
        return _section(plan, here)
    in_rib = name in RIB_NAMES and kind_of(here) == "rib"
    index = None if in_rib else round_called(plan, name, here.index)
    found = here if index is None else plan.rounds[index]
    if name in RIB_NAMES and kind_of(found) == "rib":
        return _rib(plan, found, name)
    return _section(plan, found)


def _section(plan: Plan, one: Round) -> Part:
    inside = tuple(each for each in plan.rounds if each.section == one.section)
    return Part(name=one.section, rounds=inside)


def _rib(plan: Plan, one: Round, name: str) -> Part:
    """Return the rounds of rib before and after one of them, as far as they follow each other."""
    section = _section(plan, one)
    others = [each.index for each in section.rounds if kind_of(each) != "rib"]
    first = max((index for index in others if index < one.index), default=-1)
    last = min((index for index in others if index > one.index), default=len(plan.rounds))
    inside = tuple(each for each in section.rounds if first < each.index < last)
    return section if inside == section.rounds else Part(name=name, rounds=inside)
