"""Rules for the cues that find, name and mend a fault, and for counting aloud."""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.model import Plan
from stepper.session.counting.checks import count
from stepper.session.counting.tally import count_at, piece_begun, tally_stitches
from stepper.session.cues import (
    Choose,
    Count,
    CountAloud,
    FaultIn,
    MarkerCounts,
    No,
    Remedies,
    Saw,
    SectionCount,
    Ten,
    ThatIsAll,
    Tink,
    WhatElse,
    WhatHappened,
    Yes,
)
from stepper.session.decision import Decision, Refusal
from stepper.session.events import (
    Counted,
    Observed,
    Remedied,
    Respaced,
    Searched,
    Tallied,
    Tinked,
)
from stepper.session.fault.diagnosis import choose_question
from stepper.session.fault.inquiry import Inquiry, inquire
from stepper.session.fault.landmarks import Sections, marked_off
from stepper.session.fault.remedies import may_hang_a_loop
from stepper.session.fault.search import most_counted, search
from stepper.session.fault.tinking import reverse
from stepper.session.fault.ways import Remedy, RemedyKind
from stepper.session.state import Answer, Fault, Observation, Position, Seen, State

NO_FAULT = "No fault is looked for. Count your stitches, then say: count is, and how many."


KNITTED_ON = "You have knitted on since that count: count all the stitches first."


def section_count(plan: Plan, state: State, cue: SectionCount) -> Decision:
    """Take a count as the answer to the question asked last."""
    inquiry = inquire(plan, state)
    if inquiry is None:
        return Refusal(sentence=NO_FAULT)
    ask = inquiry.search.next
    if ask is None and inquiry.search.sections is None and inquiry.fault.difference:
        return _rest_counted(plan, state, cue)
    if ask is None:
        return Refusal(sentence="No count between landmarks is asked for now.")
    if inquiry.is_overtaken(state.place):
        return Refusal(sentence=KNITTED_ON)
    first, end = ask.count
    assert inquiry.search.sections is not None
    if not 0 <= cue.stitches <= most_counted(inquiry.search.sections, first, end):
        return Refusal(sentence=f"{cue.stitches} cannot be; {ask.stitches} are expected there.")
    answers = (Answer(first=first, end=end, stitches=cue.stitches),)
    return _answered(plan, state, inquiry.fault, cue.at, answers)


def _rest_counted(plan: Plan, state: State, cue: SectionCount) -> Decision:
    """Take a count as that of the last part of plain fabric, the others being marked off."""
    whole = count_at(plan, state.place)
    parts, size = marked_off(whole)
    return count(plan, state, Count(at=cue.at, stitches=size * (parts - 1) + cue.stitches))


def _answered(plan: Plan, state: State, fault: Fault, at: str, answers: tuple[Answer, ...]) -> Decision:
    """Keep counts between landmarks; if they make every stretch right, the whole is right."""
    looking = search(plan, state, replace(fault, answers=(*fault.answers, *answers)))
    if not looking.sound:
        return (Searched(at=at, answers=answers),)
    whole = count_at(plan, fault.place)
    return (Counted(at=at, place=fault.place, stitches=whole, expected=whole, expected_end=whole),)


def count_or_part(plan: Plan, state: State, cue: Count) -> Decision:
    """Take a count as the answer to what was asked: as a part's if it is nearer to the part than to the
    whole."""
    inquiry = inquire(plan, state)
    ask = inquiry.search.next if inquiry is not None else None
    if inquiry is None or ask is None or may_hang_a_loop(inquiry.fault, inquiry.causes):
        return count(plan, state, cue)
    if inquiry.fault.place != state.place:  # she has knitted on: what she counts now is all of them
        return count(plan, state, cue)
    whole = count_at(plan, state.place)
    counted_before = whole + inquiry.fault.difference
    off = min(abs(cue.stitches - whole), abs(cue.stitches - counted_before))
    if abs(cue.stitches - ask.stitches) < off:
        return section_count(plan, state, SectionCount(at=cue.at, stitches=cue.stitches))
    return count(plan, state, cue)


def marker_counts(plan: Plan, state: State, cue: MarkerCounts) -> Decision:
    """Take the counts of all sections at once."""
    inquiry = inquire(plan, state)
    if inquiry is None:
        return Refusal(sentence=NO_FAULT)
    sections = inquiry.search.sections
    if sections is None:
        return Refusal(sentence="There are no markers to count between here.")
    if inquiry.is_overtaken(state.place):
        return Refusal(sentence=KNITTED_ON)
    return _all_counted(plan, state, cue, sections, inquiry.fault)


def _all_counted(plan: Plan, state: State, cue: MarkerCounts, sections: Sections, fault: Fault) -> Decision:
    """Compare the counts of all sections with what they should be and with the whole count."""
    if len(cue.counts) != len(sections.counts):
        return Refusal(sentence=f"{len(cue.counts)} counts were given for {len(sections.counts)} stretches.")
    if any(not 0 <= got <= 2 * max(1, want) for got, want in zip(cue.counts, sections.counts, strict=True)):
        return Refusal(sentence="One of these counts cannot be.")
    total = sections.edges[-1] + fault.difference
    if sum(cue.counts) != total and cue.counts != sections.counts:
        return Refusal(sentence=f"These add up to {sum(cue.counts)}, but the whole count was {total}.")
    answers = tuple(Answer(first=at, end=at + 1, stitches=got) for at, got in enumerate(cue.counts))
    return _answered(plan, state, fault, cue.at, answers)


def saw(plan: Plan, state: State, cue: Saw) -> Decision:
    """Keep what she saw; a live loop or stitches left over at the end start the search."""
    if cue.number < 0 or cue.number > 9999:
        return Refusal(sentence=f"{cue.number} cannot be.")
    begins = cue.seen is Seen.LEFT or (cue.seen is Seen.LOOP and cue.number)
    if state.knitting.fault is None and not begins:
        return Refusal(sentence=NO_FAULT)
    if state.place == Position():
        return Refusal(sentence="Nothing has been knitted yet.")
    sight = Observation(seen=cue.seen, number=cue.sign * cue.number, index=_looked_at(plan, state, cue.seen))
    return (Observed(at=cue.at, place=state.place, sight=sight),)


def _looked_at(plan: Plan, state: State, seen: Seen) -> int | None:
    """Find the round a thing was seen in: the one asked about, or else the last one worked.

    A loop hangs below all of them, and changes she reports unasked may be in any round.
    """
    asked = asked_look(plan, state)
    if asked is not None and asked[0] is seen:
        return None if seen is Seen.LOOP else asked[1]
    if seen is not Seen.LEFT:
        return None
    return state.place.index if state.place.stitch else state.place.index - 1


def asked_look(plan: Plan, state: State) -> tuple[Seen, int] | None:
    """Return what she is to look at, and in which round; None if nothing is asked, or a count is asked
    for."""
    inquiry = inquire(plan, state)
    if inquiry is None:
        return None
    if may_hang_a_loop(inquiry.fault, inquiry.causes):
        return Seen.LOOP, max(0, state.place.index - 1)
    if inquiry.look is not None or inquiry.search.next is not None:
        return inquiry.look
    return choose_question(inquiry.fault, inquiry.causes)


_IF_NOT = {
    Seen.LEFT: "Then say how many were left over, or how many short.",
    Seen.CHANGES: "Then say how many are too many, or too few.",
}


def yes(plan: Plan, state: State, cue: Yes) -> Decision:
    """Answer what is asked with yes; for a part that was counted, that there are as many as expected."""
    asked = asked_look(plan, state)
    if asked is None:
        inquiry = inquire(plan, state)
        if inquiry is None or inquiry.part is None:
            return _not_asked(inquiry)
        return section_count(plan, state, SectionCount(at=cue.at, stitches=inquiry.part))
    number = 0 if asked[0] in _IF_NOT else 1
    return saw(plan, state, Saw(at=cue.at, seen=asked[0], number=number))


def no(plan: Plan, state: State, cue: No) -> Decision:
    """Answer what is asked with no; if that is not enough, ask for the number."""
    asked = asked_look(plan, state)
    if asked is None:
        return _not_asked(inquire(plan, state))
    if asked[0] in _IF_NOT:
        return Refusal(sentence=_IF_NOT[asked[0]])
    return saw(plan, state, Saw(at=cue.at, seen=asked[0], number=0))


def _not_asked(inquiry: Inquiry | None) -> Refusal:
    """Refuse a yes or a no that answers nothing; where a count is asked for, say what does."""
    if inquiry is not None and inquiry.fault.hangs_a_loop:
        return Refusal(sentence="Once the loop is on the needle, say: it is caught.", aloud=False)
    if inquiry is not None and inquiry.search.next is not None:
        return Refusal(sentence="Say the number.")
    return Refusal(sentence="Nothing is asked. Is the step done, say next step.", aloud=False)


def fault_in(plan: Plan, state: State, cue: FaultIn) -> Decision:
    """Take the fault to be in the round she names."""
    if not plan.rounds:
        return Refusal(sentence="There is nothing to knit in this file.")
    here = plan.rounds[min(state.place.index, len(plan.rounds) - 1)]
    if cue.back:
        return _fault_below(plan, state, cue)
    inside = [round_ for round_ in plan.rounds if round_.section == here.section]
    if not 1 <= cue.round_number <= len(inside):
        many = f"{len(inside)} rounds" if len(inside) > 1 else "1 round"
        return Refusal(sentence=f"This section has {many}.")
    index = inside[cue.round_number - 1].index
    if Position(index=index) >= state.place:
        return Refusal(sentence=f"Round {cue.round_number} is not knitted yet.")
    return (Observed(at=cue.at, place=state.place, index=index),)


def _fault_below(plan: Plan, state: State, cue: FaultIn) -> Decision:
    """Take the fault to be so many rounds below the needles, in the piece in hand."""
    index = state.place.index - cue.back
    last = min(max(0, state.place.index - 1), len(plan.rounds) - 1)
    if cue.back < 1 or index < piece_begun(plan, last):
        return Refusal(sentence="So many rounds are not knitted yet.")
    return (Observed(at=cue.at, place=state.place, index=index),)


def ask_about_fault(plan: Plan, state: State, cue: WhatHappened | Remedies | WhatElse) -> Decision:
    """Change nothing; refuse if no fault is known."""
    return () if state.knitting.fault is not None else Refusal(sentence=NO_FAULT)


def choose(plan: Plan, state: State, cue: Choose) -> Decision:
    """Take a remedy; undoing moves the place."""
    inquiry = inquire(plan, state)
    if inquiry is None:
        return Refusal(sentence=NO_FAULT)
    if not 1 <= cue.number <= len(inquiry.remedies):
        many = len(inquiry.remedies)
        known = "no remedy to take" if not many else "1 remedy"
        return Refusal(sentence=f"There are {many} remedies." if many > 1 else f"There is {known}.")
    way = inquiry.remedies[cue.number - 1]
    if way.kind is RemedyKind.RESPACE:
        return _respaced(plan, state, cue, way)
    return (
        Remedied(
            at=cue.at,
            origin=state.place,
            place=way.place,
            remedy=way.kind,
            # Of several faults, only the one found is mended.
            difference=inquiry.fault.difference if way.mend is None else -way.mend.change,
            stitches=way.stitches,
            minutes=round(way.minutes, 2),
            mend=way.mend,
            undone=way.undone,
        ),
    )


def _respaced(plan: Plan, state: State, cue: Choose, way: Remedy) -> Decision:
    assert way.respacing is not None
    planned = tally_stitches(plan.rounds[state.place.index], state.place.stitch).shaped
    return (
        Respaced(
            at=cue.at,
            origin=state.place,
            place=way.place,
            made=way.made,
            planned=planned,
            respacing=way.respacing,
        ),
    )


def tink(plan: Plan, state: State, cue: Tink) -> Decision:
    """Undo stitches, and move the place back with them."""
    if cue.stitches < 1:
        return Refusal(sentence="That undoes nothing.")
    back = reverse(plan, state.place, cue.stitches)
    if back is None:
        return Refusal(sentence="So many stitches are not knitted yet.")
    return (Tinked(at=cue.at, origin=state.place, place=back.place, stitches=back.stitches),)


def count_aloud(plan: Plan, state: State, cue: CountAloud) -> Decision:
    """Begin a count aloud, or go on with the one being made."""
    return () if state.knitting.tens is not None else (Tallied(at=cue.at, tens=()),)


def ten(plan: Plan, state: State, cue: Ten) -> Decision:
    """Add to the count aloud. Without one nothing is said: what was heard may be the film."""
    tens = state.knitting.tens
    if tens is None:
        return Refusal(sentence="No count is being made. Say: count with me.", aloud=False)
    most = 2 * max(1, count_at(plan, state.place))
    if cue.stitches < 1 or sum(tens) + cue.stitches > most:
        return Refusal(sentence=f"{cue.stitches} more cannot be; {sum(tens)} so far.")
    return (Tallied(at=cue.at, tens=(*tens, cue.stitches)),)


def that_is_all(plan: Plan, state: State, cue: ThatIsAll) -> Decision:
    """Compare the count made aloud with the right one."""
    tens = state.knitting.tens
    if not tens:
        return Refusal(sentence="No count is being made. Say: count with me.")
    return count(plan, state, Count(at=cue.at, stitches=sum(tens)))
