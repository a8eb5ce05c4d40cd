"""Say what there is to say of faults, lifelines and counts aloud: from events and state to effects. Pure."""

from __future__ import annotations

from collections.abc import Iterator

from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.session.counting.count_timing import lifeline_before, why_count
from stepper.session.counting.tally import count_at, markers_in
from stepper.session.cues import Cue
from stepper.session.effects import (
    AskCount,
    AskLook,
    AskSections,
    Effect,
    TellAsking,
    TellCauses,
    TellFound,
    TellLifeline,
    TellMend,
    TellRemedied,
    TellRemedies,
    TellSpot,
    TellTally,
)
from stepper.session.events import AskingSet, LifelineLaid, Observed, Remedied, Searched, Tallied
from stepper.session.fault.diagnosis import choose_question
from stepper.session.fault.inquiry import Inquiry, inquire
from stepper.session.fault.landmarks import sections_at
from stepper.session.fault.remedies import may_hang_a_loop, next_stretch
from stepper.session.fault.search import Search
from stepper.session.fault.tinking import reverse
from stepper.session.fault.ways import Remedy, RemedyKind
from stepper.session.fault.workable import find_exact_round
from stepper.session.state import Asking, Position, Seen, State


@dataclass(frozen=True, slots=True, kw_only=True)
class AskAgain(Effect):
    """Ask for the whole count once more."""

    expect: int
    """Stitches there should be. Unit: stitches."""
    plain: bool
    """Whether nothing tells one stitch from another, so that markers help to count."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellFaultOpen(Effect):
    """Say that a fault is open yet, where only the place or the next step is told."""

    difference: int
    """Stitches too many; below 0 for too few, 0 where it was seen and not counted. Unit: stitches."""
    index: int
    """The round in which it was counted or seen."""
    here: int
    """The round in hand."""
    loop: bool
    """Whether a live loop is not caught yet."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellSound(Effect):
    """Say that every stretch is as it should be, so that the whole count was a slip."""

    stitches: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TellLadder(Effect):
    """Say how to catch a live loop, before anything else is done."""

    above: int
    """Rounds worked since it fell, as far as is known. Unit: rounds."""
    flat: bool
    """Whether it is worked in rows, so that its bars are seen from either side."""


@dataclass(frozen=True, slots=True, kw_only=True)
class AskToFinish(Effect):
    """Have the round finished and counted."""

    expect: int
    """Stitches there should be then. Unit: stitches."""
    by_eye: bool = False
    """Whether its shaping goes where it is seen to belong, since the count is off."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellOtherWays(Effect):
    """Say the other ways to mend it, in few words each."""

    remedies: tuple[Remedy, ...]
    """All of them, including the first."""
    exact_at: int | None
    """The round before which it has to be mended; None if there is none."""


def ask_next(plan: Plan, state: State) -> Iterator[Effect]:
    """Ask the next question, about a loop or for a count, or say where the fault is and what it was."""
    inquiry = inquire(plan, state)
    if inquiry is None:
        return
    fault, found = inquiry.fault, inquiry.search
    stretch, was_seen = next_stretch(found), fault.index is not None or fault.was_seen
    if fault.hangs_a_loop:
        yield _ladder(plan, inquiry)
    elif may_hang_a_loop(fault, inquiry.causes):
        yield AskLook(seen=Seen.LOOP, index=max(0, fault.place.index - 1))
    elif inquiry.look is not None:
        yield AskLook(seen=inquiry.look[0], index=inquiry.look[1])
    elif inquiry.is_overtaken(state.place):
        yield _again(plan, state)
    elif stretch is not None:
        again = not fault.answers and not fault.confirmed
        yield AskSections(stretch=stretch, again=again, yes=inquiry.part is not None)
    elif found.sections is None and fault.difference and not fault.confirmed and not was_seen:
        yield AskAgain(expect=count_at(plan, fault.place), plain=True)
    else:
        yield from _tell_found(inquiry)


def tell_fault_open(plan: Plan, state: State) -> Iterator[Effect]:
    """Say that a fault is open yet: the stitches told besides are those of the pattern."""
    fault = state.knitting.fault
    if fault is not None and plan.rounds:
        last = len(plan.rounds) - 1
        yield TellFaultOpen(
            difference=fault.difference,
            index=min(fault.place.index, last),
            here=min(state.place.index, last),
            loop=fault.hangs_a_loop,
        )


def tell_left_behind(plan: Plan, before: State, after: State) -> Iterator[Effect]:
    """Say once, with the first step away from where a fault was found, that it is open yet."""
    fault = after.knitting.fault
    if fault is not None and fault.place == before.place != after.place:
        yield from tell_fault_open(plan, after)


def _ladder(plan: Plan, inquiry: Inquiry) -> Effect:
    place = inquiry.fault.place
    flat = plan.rounds[min(place.index, len(plan.rounds) - 1)].flat
    return TellLadder(above=inquiry.remedies[0].above, flat=flat)


def _tell_found(inquiry: Inquiry) -> Iterator[Effect]:
    """Ask what tells the likeliest causes apart; then say where the fault is or, if that is all there is to
    say, what it was."""
    look = choose_question(inquiry.fault, inquiry.causes)
    if look is not None:
        yield AskLook(seen=look[0], index=look[1])
    elif inquiry.fault.difference and (inquiry.search.single or not inquiry.causes):
        yield _found(inquiry.search)
    else:
        yield TellCauses(causes=inquiry.causes, difference=inquiry.fault.difference)


def _found(found: Search) -> Effect:
    sections = found.sections
    if sections is None:
        return TellFound(kind=None, difference=found.difference)
    first, end = (found.suspects[0], found.suspects[-1] + 1) if found.suspects else (0, None)
    return TellFound(
        kind=sections.kind,
        first=first,
        end=None if end == len(sections.counts) else end,
        difference=found.difference,
        single=found.single,
        index=sections.index,
        rest=found.rest,
    )


def tell_causes(plan: Plan, state: State, cue: Cue) -> Iterator[Effect]:
    """Say what probably happened."""
    inquiry = inquire(plan, state)
    if inquiry is not None:
        yield TellCauses(causes=inquiry.causes, difference=inquiry.fault.difference)


def tell_remedies(plan: Plan, state: State, cue: Cue) -> Iterator[Effect]:
    """Say how it can be mended."""
    inquiry = inquire(plan, state)
    if inquiry is not None:
        yield TellRemedies(remedies=inquiry.remedies)


def tell_other_ways(plan: Plan, state: State, cue: Cue) -> Iterator[Effect]:
    """Say how else it can be mended."""
    inquiry = inquire(plan, state)
    if inquiry is not None:
        off = inquiry.fault.difference
        exact_at = find_exact_round(plan, state.place, off) if off else None
        yield TellOtherWays(remedies=inquiry.remedies, exact_at=exact_at)


def ask_again(plan: Plan, state: State, cue: Cue) -> Iterator[Effect]:
    """Ask for a count once more; nothing changes."""
    yield _again(plan, state)


def _again(plan: Plan, state: State) -> Effect:
    return AskAgain(expect=count_at(plan, state.place), plain=sections_at(plan, state.place) is None)


def tell_tally_so_far(plan: Plan, state: State, cue: Cue) -> Iterator[Effect]:
    """Say how far the count aloud has come."""
    yield TellTally(total=sum(state.knitting.tens or ()))


def tell_search(plan: Plan, before: State, event: Searched | Observed, after: State) -> Iterator[Effect]:
    """Go on looking; once a loop is caught, have the stitches counted."""
    had, has = before.knitting.fault, after.knitting.fault
    if has is None and had is not None and had.hangs_a_loop:
        yield AskCount(expect=count_at(plan, after.place), reason="now that the loop is caught")
    yield from ask_next(plan, after)


def tell_remedied(plan: Plan, before: State, event: Remedied, after: State) -> Iterator[Effect]:
    """Say what to do."""
    if not event.remedy.settles:
        yield from _take_up(plan, after, event.remedy)
        return
    undone = reverse(plan, event.origin, event.undone) if event.remedy is RemedyKind.TINK else None
    yield TellRemedied(
        remedy=event.remedy,
        undone=undone.runs if undone is not None else (),
        place=event.place,
        mend=event.mend,
        stitches=event.undone,
        expect=count_at(plan, event.place) if event.remedy is RemedyKind.LADDER else 0,
    )


def _take_up(plan: Plan, state: State, remedy: RemedyKind) -> Iterator[Effect]:
    """Ask for what a remedy that changes nothing needs to know."""
    inquiry = inquire(plan, state)
    way = next((each for each in inquiry.remedies if each.kind is remedy), None) if inquiry else None
    if way is None or remedy is RemedyKind.RECOUNT:
        yield _again(plan, state)
    elif remedy is RemedyKind.FINISH:
        yield AskToFinish(expect=way.expect, by_eye=way.by_eye)
    elif way.look is not None:
        yield AskLook(seen=way.look[0], index=way.look[1])
    elif way.stretch is not None:
        yield AskSections(stretch=way.stretch, yes=True)


def tell_lifeline(plan: Plan, before: State, event: LifelineLaid, after: State) -> Iterator[Effect]:
    """Say that a lifeline is kept."""
    yield TellLifeline(laid=True)


def tell_asking(plan: Plan, before: State, event: AskingSet, after: State) -> Iterator[Effect]:
    """Say how often a count is asked for."""
    yield TellAsking(asking=event.asking)


def tell_tally(plan: Plan, before: State, event: Tallied, after: State) -> Iterator[Effect]:
    """Say the tally back."""
    yield TellTally(total=sum(event.tens))


def ask_checks(plan: Plan, state: State, done: int, first: int | None = None) -> Iterator[Effect]:
    """Ask for what pays to be checked at the end of a round.

    Args:
        plan: The plan as knitted.
        state: Where it stands, at the beginning of the round after that one.
        done: Index of the round, whose stitches are on the needles now.
        first: The first of the rounds, where several were finished at once; None for that one alone.
    """
    on_needles = plan.rounds[done].after
    # What fell due in a round before says nothing any more once other stitches are on the needles.
    due = [
        each
        for each in range(done, (done if first is None else first) - 1, -1)
        if all(later.after == on_needles for later in plan.rounds[each : done + 1])
        and not plan.rounds[done].is_uncounted
    ]
    reason = next(filter(None, (why_count(plan, state, each) for each in due)), None)
    if reason is None and state.knitting.asking is not Asking.NEVER:
        reason = next(filter(None, (_why_now(state, each) for each in due)), None)
    if reason is not None:
        yield AskCount(expect=on_needles, reason=reason)
    if any(lifeline_before(plan, state, each) for each in due):
        yield TellLifeline(laid=False)


def _why_now(state: State, done: int) -> str | None:
    """Return why a fault or its mend is to be counted after a round; None if it is not."""
    # It may have been one of several faults, and a mend that went wrong is found at once.
    if any(each.index == done for each in state.knitting.mends):
        return "after the mend"
    fault = state.knitting.fault
    if fault is None or not fault.difference or fault.place.index != done:
        return None
    return "to find the place" if fault.place.stitch else None


def tell_mends(state: State) -> Iterator[Effect]:
    """Remind her of a mend in the round that begins."""
    for mend in state.knitting.mends:
        if mend.index == state.place.index and state.place <= Position(index=mend.index, stitch=mend.stitch):
            yield TellMend(mend=mend)


def tell_spot(plan: Plan, state: State, *, marked: bool = False) -> Iterator[Effect]:
    """Say the place before a break and after it: how far past which marker, or which round begins.

    Args:
        plan: The plan as knitted.
        state: Where it stands.
        marked: Whether only a place behind a marker is worth saying, because another line says the stitch.
    """
    place = state.place
    if place.index >= len(plan.rounds):
        return
    if not place.stitch:
        if not marked:
            yield TellSpot(past=0, marker=0, index=place.index)
        return
    behind = [each for each in markers_in(plan.rounds[place.index]) if each <= place.stitch]
    if marked and not behind:
        return
    yield TellSpot(past=place.stitch - (behind[-1] if behind else 0), marker=len(behind))
