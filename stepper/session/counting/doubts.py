"""Read a number back before it changes anything: what was heard is not yet a fact.

A count that would start a search or narrow it, a length that would cut or add rounds, stitches left over:
heard through the microphone, each is said back with what would follow, and nothing moves before a yes, a
no, or the number once more. One that only confirms is taken at once, if it was heard well. What is typed
or keyed is never read back. Two things are asked back however they came in: a count that fits the end of a
round she is still in, since the round may be finished, and one of a part that the count of all stitches does
not account for, since a slip there would end in ripping back. Anything else she asks lets the question lapse,
so that it is never in the way. No I/O.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Final

from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.session.counting import checks
from stepper.session.counting.tally import count_at
from stepper.session.cues import (
    Count,
    Cue,
    Length,
    MarkerCounts,
    No,
    RoundsBack,
    Saw,
    SectionCount,
    ThatIsAll,
    Yes,
)
from stepper.session.decision import Decision, Refusal
from stepper.session.effects import Effect
from stepper.session.events import Counted, Doubted, Event, Measured, Observed, Searched, SearchLeft
from stepper.session.fault import rules as faults
from stepper.session.fault.inquiry import inquire
from stepper.session.fault.landmarks import Landmark
from stepper.session.moves import lifeline_down, rounds_back
from stepper.session.state import Doubt, DoubtKind, Seen, State

HEARD_WELL: Final = 0.7
"""How well a number has to be heard to be taken at once if it only confirms. Range: 0 to 1. Source: chosen
here."""


NOTHING_WAITS: Final = "Nothing waits for an answer: go on. To be asked for no counts, say: never ask."

COUNTS: Final = frozenset({DoubtKind.COUNT, DoubtKind.PART})
"""The doubts that are about a count of stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class AskBack(Effect):
    """Read back a number with what would follow, or ask whether the round is finished."""

    doubt: Doubt
    expected: int = 0
    """Stitches there should be where a count is asked back. Unit: stitches."""
    longer_by: int = 0
    """Rounds a length would add; below 0 for those it would cut. Unit: rounds."""
    rounds_left: int = 0
    """Rounds of the stretch that would then be left. Unit: rounds."""
    lifeline: int = 0
    """How far down the last lifeline lies where rounds are ripped back; 0 for none. Unit: rounds."""
    misheard: bool = False
    """Whether another count was read back just before: one of the two was not heard as it was said."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellDismissed(Effect):
    """Say that what was asked back is dropped, and how to say it again."""

    count: bool
    """Whether it was a count of two figures or more, which is heard best digit by digit."""
    number: bool = True
    """Whether a number was read back that may have been meant otherwise."""


def hold(plan: Plan, state: State, cue: Cue, decision: Decision) -> Decision:
    """Hold back what a cue would do if it rests on a number that is not sure.

    Args:
        plan: The plan as knitted.
        state: Where the session stands.
        cue: What was asked, and how well it was heard.
        decision: What would come of it.
    """
    if isinstance(decision, Refusal) or not decision or isinstance(cue, ThatIsAll | MarkerCounts):
        return decision
    event = decision[0]
    answers = isinstance(cue, Yes | No)
    if isinstance(event, Counted) and event.expected != event.stitches == event.expected_end and not answers:
        # It fits the end of the round in hand and not the place.
        return _doubted(cue, Doubt(kind=DoubtKind.FINISHED, place=event.place, number=event.stitches))
    if isinstance(event, Searched) and not answers and _is_beyond(plan, state, event):
        number = sum(each.stitches for each in event.answers)
        part = Doubt(kind=DoubtKind.PART, place=state.place, number=number)
        return decision if part == state.knitting.doubt else _doubted(cue, part)
    if cue.heard is None:
        return decision
    doubt = _doubt_of(plan, state, event, well=cue.heard >= HEARD_WELL)
    if doubt is None or doubt == state.knitting.doubt:  # heard the same twice
        return decision
    return _doubted(cue, doubt)


BEYOND: Final = 2
"""By how many stitches a part may be off otherwise than all are before it is asked back. Chosen here."""


def _is_beyond(plan: Plan, state: State, event: Searched) -> bool:
    """Return whether a part is off by more than all stitches are, or the other way.

    Not where increases are the landmarks: one that is missing makes her count on to the next.
    """
    inquiry = inquire(plan, state)
    sections = inquiry.search.sections if inquiry is not None else None
    if inquiry is None or sections is None or sections.kind is Landmark.CHANGE:
        return False
    expected = sum(sum(sections.counts[each.first : each.end]) for each in event.answers)
    off = sum(each.stitches for each in event.answers) - expected
    low, high = sorted((0, inquiry.search.difference))
    return not low - BEYOND <= off <= high + BEYOND


def _doubted(cue: Cue, doubt: Doubt) -> Decision:
    return (Doubted(at=cue.at, doubt=doubt),)


def _doubt_of(plan: Plan, state: State, event: Event, *, well: bool) -> Doubt | None:
    """Return what is to be read back of an event; None if it may be taken at once."""
    place = state.place
    match event:
        case Counted():
            agrees = event.agrees and well
            return None if agrees else Doubt(kind=DoubtKind.COUNT, place=place, number=event.stitches)
        case Searched():
            stitches = sum(each.stitches for each in event.answers)
            agrees = stitches == _asked(plan, state) and well
            return None if agrees else Doubt(kind=DoubtKind.PART, place=place, number=stitches)
        case Measured() if event.correction is not None:
            if event.correction.rounds == event.rounds_before and well:
                return None
            return Doubt(kind=DoubtKind.LENGTH, place=place, length_mm=event.length_mm)
        case Observed() if event.sight is not None and event.sight.seen is Seen.LEFT and event.sight.number:
            return Doubt(kind=DoubtKind.LEFT, place=place, number=event.sight.number)
    return None


def _asked(plan: Plan, state: State) -> int | None:
    """Return the stitches expected in the part that is asked for."""
    inquiry = inquire(plan, state)
    ask = inquiry.search.next if inquiry is not None else None
    return ask.stitches if ask is not None else None


def yes(plan: Plan, state: State, cue: Yes) -> Decision:
    """Carry out what was asked back; else answer what a search asks."""
    doubt = state.knitting.doubt
    if doubt is None:
        return faults.yes(plan, state, cue)
    match doubt.kind:
        case DoubtKind.COUNT:
            return faults.count_or_part(plan, state, Count(at=cue.at, stitches=doubt.number))
        case DoubtKind.PART:
            return faults.section_count(plan, state, SectionCount(at=cue.at, stitches=doubt.number))
        case DoubtKind.LENGTH:
            return checks.measure(plan, state, Length(at=cue.at, length_mm=doubt.length_mm))
        case DoubtKind.LEFT:
            sign = 1 if doubt.number > 0 else -1
            seen = Saw(at=cue.at, seen=Seen.LEFT, number=abs(doubt.number), sign=sign)
            return faults.saw(plan, state, seen)
        case DoubtKind.FINISHED:
            return _counted(plan, state, cue, finished=True)
        case DoubtKind.ROUNDS:
            return rounds_back(plan, state, RoundsBack(at=cue.at, rounds=doubt.number or -1))


def no(plan: Plan, state: State, cue: No) -> Decision:
    """Drop what was asked back; a round that is not finished has a count that is off."""
    if cue.later or cue.unsure:
        return _not_answered(state, cue)
    doubt = state.knitting.doubt
    if doubt is None:
        return faults.no(plan, state, cue)
    if doubt.kind is DoubtKind.FINISHED:
        return _counted(plan, state, cue, finished=False)
    return (Doubted(at=cue.at, doubt=None),)


def _not_answered(state: State, cue: No) -> Decision:
    """Drop what was asked back, or else leave the search; what she cannot tell stays open."""
    doubt = state.knitting.doubt
    if doubt is None and state.knitting.fault is None:
        return Refusal(sentence=NOTHING_WAITS)
    if cue.unsure:
        return Refusal(sentence="Then it stays open. Look again when you can, or say: not now.")
    if doubt is not None:
        return (Doubted(at=cue.at, doubt=None),)
    if state.knitting.fault is not None and state.knitting.fault.hangs_a_loop:  # it would run down unseen
        return Refusal(sentence="A loose loop runs down: put a pin through it, then say: it is caught.")
    return (SearchLeft(at=cue.at),)


def _counted(plan: Plan, state: State, cue: Cue, *, finished: bool) -> Decision:
    """Take the count that fits the end of the round as that of the end or of the place."""
    doubt, place = state.knitting.doubt, state.place
    assert doubt is not None
    expected = count_at(plan, place)
    worked = plan.rounds[place.index].progress - place.stitch if finished else 0
    end = checks.expected_at_end(plan, place) if finished else expected
    return (
        Counted(
            at=cue.at, place=place, stitches=doubt.number, expected=expected, expected_end=end, worked=worked
        ),
    )


def ask_back(plan: Plan, state: State) -> Iterator[AskBack]:
    """Read back what is not sure, with what would follow, while that is open."""
    doubt = state.knitting.doubt
    if doubt is None:
        return
    match doubt.kind:
        case DoubtKind.COUNT:
            yield AskBack(doubt=doubt, expected=count_at(plan, state.place))
        case DoubtKind.PART:
            yield AskBack(doubt=doubt, expected=_asked(plan, state) or 0)
        case DoubtKind.LENGTH:
            kept = checks.measure(plan, state, Length(length_mm=doubt.length_mm))
            yield _length_back(doubt, kept)
        case DoubtKind.ROUNDS:
            yield AskBack(doubt=doubt, lifeline=lifeline_down(state))
        case DoubtKind.LEFT | DoubtKind.FINISHED:
            yield AskBack(doubt=doubt)


def _length_back(doubt: Doubt, kept: Decision) -> AskBack:
    measured = None if isinstance(kept, Refusal) else kept[0]
    if not isinstance(measured, Measured) or measured.correction is None:
        return AskBack(doubt=doubt)
    longer_by = measured.correction.rounds - measured.rounds_before
    return AskBack(doubt=doubt, longer_by=longer_by, rounds_left=measured.rounds_left)


def tell_doubted(plan: Plan, before: State, event: Doubted, after: State) -> Iterator[Effect]:
    """Read back, or say that it is dropped."""
    dropped = before.knitting.doubt
    if event.doubt is None:
        number = dropped is None or dropped.kind is not DoubtKind.ROUNDS
        yield TellDismissed(count=_has_figures(dropped), number=number)
    for effect in ask_back(plan, after):
        yield replace(effect, misheard=_has_figures(dropped) and _has_figures(event.doubt))


def _has_figures(doubt: Doubt | None) -> bool:
    """Return whether it is about a count of two figures or more."""
    return doubt is not None and doubt.kind in COUNTS and doubt.number > 9
