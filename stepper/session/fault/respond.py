"""What is told of a fault, of lifelines and of counts aloud: from events and state to effects. Pure."""

from __future__ import annotations

from collections.abc import Iterator

from stepper.plan.model import Plan
from stepper.session.count_timing import lifeline_before, why_count
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
    TellTinked,
)
from stepper.session.events import AskingSet, LifelineLaid, Observed, Remedied, Searched, Tallied, Tinked
from stepper.session.fault.diagnosis import choose_question
from stepper.session.fault.inquiry import inquire
from stepper.session.fault.remedies import RemedyKind, find_exact_round
from stepper.session.fault.search import Search
from stepper.session.fault.tinking import reverse
from stepper.session.state import Position, State
from stepper.session.tally import markers_in


def ask_next(plan: Plan, state: State) -> Iterator[Effect]:
    """Ask for the next count, or say where the fault is and what it probably was."""
    inquiry = inquire(plan, state)
    if inquiry is None:
        return
    found = inquiry.search
    if found.single and found.next is not None and found.sections is not None:
        first, end = _marks(found, *found.next.count)
        yield AskSections(kind=found.sections.kind, first=first, end=end, expect=found.next.stitches)
        return
    if inquiry.fault.difference:
        yield _found(found)
    if not found.single and not inquiry.causes:
        return
    yield TellCauses(causes=inquiry.causes, difference=inquiry.fault.difference)
    look = choose_question(inquiry.fault, inquiry.causes)
    if look is not None:
        yield AskLook(seen=look[0], index=look[1])


def _found(found: Search) -> Effect:
    if found.sections is None:
        return TellFound(kind=None, difference=found.difference)
    first, end = _marks(found, found.suspects[0], found.suspects[-1] + 1) if found.suspects else (0, None)
    kind = found.sections.kind
    return TellFound(kind=kind, first=first, end=end, difference=found.difference, single=found.single)


def _marks(found: Search, first: int, end: int) -> tuple[int, int | None]:
    """Turn sections into the landmarks at their ends."""
    assert found.sections is not None
    every, last = found.sections.every, len(found.sections.counts)
    return first * every, None if end == last else end * every


def tell_causes(plan: Plan, state: State, cue: Cue) -> Iterator[Effect]:
    """Say what probably happened."""
    inquiry = inquire(plan, state)
    if inquiry is not None:
        yield TellCauses(causes=inquiry.causes, difference=inquiry.fault.difference)


def tell_remedies(plan: Plan, state: State, cue: Cue) -> Iterator[Effect]:
    """Say how it can be mended."""
    inquiry = inquire(plan, state)
    if inquiry is not None:
        yield TellRemedies(
            remedies=inquiry.remedies,
            exact_at=find_exact_round(plan, state.place, inquiry.fault.difference),
            difference=inquiry.fault.difference,
        )


def tell_tally_so_far(plan: Plan, state: State, cue: Cue) -> Iterator[Effect]:
    """Say how far the count aloud has come."""
    yield TellTally(total=sum(state.knitting.tens or ()))


def tell_search(plan: Plan, before: State, event: Searched | Observed, after: State) -> Iterator[Effect]:
    """Go on looking."""
    yield from ask_next(plan, after)


def tell_remedied(plan: Plan, before: State, event: Remedied, after: State) -> Iterator[Effect]:
    """Say what to do."""
    undone = reverse(plan, event.origin, event.stitches // 2) if event.remedy is RemedyKind.TINK else None
    runs = undone.runs if undone is not None else ()
    yield TellRemedied(remedy=event.remedy, undone=runs, place=event.place, mend=event.mend)


def tell_tinked(plan: Plan, before: State, event: Tinked, after: State) -> Iterator[Effect]:
    """Say what comes off."""
    back = reverse(plan, event.origin, event.stitches)
    yield TellTinked(runs=back.runs if back is not None else (), place=event.place)


def tell_lifeline(plan: Plan, before: State, event: LifelineLaid, after: State) -> Iterator[Effect]:
    """Say that it is kept."""
    yield TellLifeline(laid=True)


def tell_asking(plan: Plan, before: State, event: AskingSet, after: State) -> Iterator[Effect]:
    """Say how often a count is asked for."""
    yield TellAsking(asking=event.asking)


def tell_tally(plan: Plan, before: State, event: Tallied, after: State) -> Iterator[Effect]:
    """Say the tally back."""
    yield TellTally(total=sum(event.tens))


def ask_checks(plan: Plan, state: State, done: int) -> Iterator[Effect]:
    """Ask for what pays to be checked at the end of a round."""
    reason = why_count(plan, state, done)
    if reason is not None:
        yield AskCount(expect=plan.rounds[done].after, reason=reason)
    if lifeline_before(plan, state, done):
        yield TellLifeline(laid=False)


def tell_mends(state: State) -> Iterator[Effect]:
    """Remind of a mend in the round that begins."""
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
