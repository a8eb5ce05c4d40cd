"""Rules for the cues that find, name and mend a fault, for lifelines and for counting aloud."""

from __future__ import annotations

from stepper.plan.model import Plan
from stepper.session.checks import count
from stepper.session.cues import (
    Ask,
    Choose,
    Count,
    CountAloud,
    FaultIn,
    Lifeline,
    MarkerCounts,
    Remedies,
    Saw,
    SectionCount,
    Ten,
    ThatIsAll,
    Tink,
    WhatHappened,
)
from stepper.session.decision import Decision, Refusal
from stepper.session.events import (
    AskingSet,
    LifelineLaid,
    Observed,
    Remedied,
    Searched,
    Tallied,
    Tinked,
)
from stepper.session.fault.diagnosis import choose_question
from stepper.session.fault.inquiry import inquire
from stepper.session.fault.landmarks import Sections
from stepper.session.fault.search import most_counted
from stepper.session.fault.tinking import reverse
from stepper.session.state import Answer, Fault, Position, Seen, Sight, State
from stepper.session.tally import count_at

NO_FAULT = "No fault is being looked for; give a count first."


def section_count(plan: Plan, state: State, cue: SectionCount) -> Decision:
    """Take a count as the answer to the question asked last."""
    inquiry = inquire(plan, state)
    if inquiry is None:
        return Refusal(sentence=NO_FAULT)
    ask = inquiry.search.next
    if ask is None:
        return Refusal(sentence="No count between landmarks is asked for now.")
    first, end = ask.count
    assert inquiry.search.sections is not None
    if not 0 <= cue.stitches <= most_counted(inquiry.search.sections, first, end):
        return Refusal(sentence=f"{cue.stitches} cannot be; {ask.stitches} are expected there.")
    return (Searched(at=cue.at, answers=(Answer(first=first, end=end, stitches=cue.stitches),)),)


def marker_counts(plan: Plan, state: State, cue: MarkerCounts) -> Decision:
    """Take the counts of all sections at once."""
    inquiry = inquire(plan, state)
    if inquiry is None:
        return Refusal(sentence=NO_FAULT)
    sections = inquiry.search.sections
    if sections is None:
        return Refusal(sentence="There are no markers to count between here.")
    return _all_counted(cue, sections, inquiry.fault)


def _all_counted(cue: MarkerCounts, sections: Sections, fault: Fault) -> Decision:
    """Compare the counts of all sections with what they should be and with the whole count."""
    if len(cue.counts) != len(sections.counts):
        return Refusal(sentence=f"{len(cue.counts)} counts were given for {len(sections.counts)} stretches.")
    if any(not 0 <= got <= 2 * max(1, want) for got, want in zip(cue.counts, sections.counts, strict=True)):
        return Refusal(sentence="One of these counts cannot be.")
    total = sections.edges[-1] + fault.difference
    if sum(cue.counts) != total:
        return Refusal(sentence=f"These add up to {sum(cue.counts)}, but the whole count was {total}.")
    answers = tuple(Answer(first=at, end=at + 1, stitches=got) for at, got in enumerate(cue.counts))
    return (Searched(at=cue.at, answers=answers),)


def saw(plan: Plan, state: State, cue: Saw) -> Decision:
    """Keep what is to be seen; stitches left over at the end begin the looking."""
    if cue.number < 0 or cue.number > 9999:
        return Refusal(sentence=f"{cue.number} cannot be.")
    if state.knitting.fault is None and cue.seen is not Seen.LEFT:
        return Refusal(sentence=NO_FAULT)
    if state.place == Position():
        return Refusal(sentence="Nothing has been knitted yet.")
    sight = Sight(seen=cue.seen, number=cue.sign * cue.number, index=_looked_at(plan, state, cue.seen))
    return (Observed(at=cue.at, place=state.place, sight=sight),)


def _looked_at(plan: Plan, state: State, seen: Seen) -> int | None:
    """Find the round a thing was seen in: the one asked about, or else the last one worked.

    A loop hangs below all of them, and what is told of changes unasked may be of any round.
    """
    inquiry = inquire(plan, state)
    asked = choose_question(inquiry.fault, inquiry.causes) if inquiry is not None else None
    if asked is not None and asked[0] is seen:
        return None if seen is Seen.LOOP else asked[1]
    if seen is not Seen.LEFT:
        return None
    return state.place.index if state.place.stitch else state.place.index - 1


def fault_in(plan: Plan, state: State, cue: FaultIn) -> Decision:
    """Take it that the fault is in a round she names."""
    if not plan.rounds:
        return Refusal(sentence="There is nothing to knit in this file.")
    here = plan.rounds[min(state.place.index, len(plan.rounds) - 1)]
    inside = [round_ for round_ in plan.rounds if round_.section == here.section]
    if not 1 <= cue.round_number <= len(inside):
        return Refusal(sentence=f"This section has {len(inside)} rounds.")
    index = inside[cue.round_number - 1].index
    if Position(index=index) >= state.place:
        return Refusal(sentence=f"Round {cue.round_number} is not knitted yet.")
    return (Observed(at=cue.at, place=state.place, index=index),)


def ask_about_fault(plan: Plan, state: State, cue: WhatHappened | Remedies) -> Decision:
    """Change nothing; refuse where no fault is known."""
    return () if state.knitting.fault is not None else Refusal(sentence=NO_FAULT)


def choose(plan: Plan, state: State, cue: Choose) -> Decision:
    """Take a remedy; what is taken back moves the place."""
    inquiry = inquire(plan, state)
    if inquiry is None:
        return Refusal(sentence=NO_FAULT)
    if not 1 <= cue.number <= len(inquiry.remedies):
        many = len(inquiry.remedies)
        return Refusal(sentence="There is 1 remedy." if many == 1 else f"There are {many} remedies.")
    way = inquiry.remedies[cue.number - 1]
    return (
        Remedied(
            at=cue.at,
            origin=state.place,
            place=way.place,
            remedy=way.kind,
            difference=inquiry.fault.difference,
            stitches=way.stitches,
            minutes=round(way.minutes, 2),
            mend=way.mend,
            undone=way.undone,
        ),
    )


def tink(plan: Plan, state: State, cue: Tink) -> Decision:
    """Undo stitches, the place following."""
    if cue.stitches < 1:
        return Refusal(sentence="That undoes nothing.")
    back = reverse(plan, state.place, cue.stitches)
    if back is None:
        return Refusal(sentence="So many stitches are not knitted yet.")
    return (Tinked(at=cue.at, origin=state.place, place=back.place, stitches=back.stitches),)


def lay_lifeline(plan: Plan, state: State, cue: Lifeline) -> Decision:
    """Keep that a lifeline lies here; it runs through a whole round."""
    if state.place == Position():
        return Refusal(sentence="Nothing has been knitted yet.")
    if state.place.stitch:
        return Refusal(sentence="A lifeline goes in between rounds; finish this one first.")
    return (LifelineLaid(at=cue.at, place=state.place),)


def set_asking(plan: Plan, state: State, cue: Ask) -> Decision:
    """Change how often a count is asked for."""
    if cue.asking is state.knitting.asking:
        return Refusal(sentence="That is how it is already.")
    return (AskingSet(at=cue.at, asking=cue.asking),)


def count_aloud(plan: Plan, state: State, cue: CountAloud) -> Decision:
    """Begin a count aloud; where one is being made, go on with it."""
    return () if state.knitting.tens is not None else (Tallied(at=cue.at, tens=()),)


def ten(plan: Plan, state: State, cue: Ten) -> Decision:
    """Add to the count aloud. Without one nothing is said: what was heard may be the film."""
    tens = state.knitting.tens
    if tens is None:
        return Refusal(sentence="No count is being made. Say: count with me.", aloud=False)
    most = 2 * max(1, count_at(plan, state.place.index, state.place.stitch))
    if cue.stitches < 1 or sum(tens) + cue.stitches > most:
        return Refusal(sentence=f"{cue.stitches} more cannot be; {sum(tens)} so far.")
    return (Tallied(at=cue.at, tens=(*tens, cue.stitches)),)


def that_is_all(plan: Plan, state: State, cue: ThatIsAll) -> Decision:
    """Compare the count made aloud with the right one."""
    tens = state.knitting.tens
    if not tens:
        return Refusal(sentence="No count is being made. Say: count with me.")
    return count(plan, state, Count(at=cue.at, stitches=sum(tens)))
