"""Take a number that was typed alone for what it most likely is: a count, unless it is far from one. Pure.

A count that is off begins a search, so that a 2 typed for the second remedy, or a 16 for sixteen centimetres,
must not be taken for one. What was heard is read back in any case (`stepper.session.counting.doubts`).
"""

from __future__ import annotations

from typing import Final

from stepper.plan.model import Plan
from stepper.session.counting.checks import expected_at_end, stretch_to_measure
from stepper.session.counting.tally import count_at
from stepper.session.cues import Count, RoundsBack
from stepper.session.decision import Decision, Refusal
from stepper.session.fault.inquiry import Inquiry, inquire
from stepper.session.fault.rules import asked_look, count_or_part
from stepper.session.fault.search import most_counted
from stepper.session.moves import rounds_back
from stepper.session.state import DoubtKind, Seen, State

FEWEST: Final = 0.5
"""From which share of the stitches expected a number alone is taken for a count of all. Half, since a round
that halves or doubles the stitches may have been left out. Chosen here."""

MOST_ROUNDS: Final = 12
"""Up to which number, far from the stitches, rounds are meant: "rip back" asks how many. Chosen here."""

_LOOKS: Final = {
    Seen.LEFT: "Say: {0} left over, or: {0} short.",
    Seen.CHANGES: "Say: {0} too many, or: {0} too few.",
}


def take_count(plan: Plan, state: State, cue: Count) -> Decision:
    """Compare a count, or refuse a number alone that is far from any, with what else it may be."""
    doubt = state.knitting.doubt
    if cue.bare and doubt is not None and doubt.kind is DoubtKind.ROUNDS and cue.stitches <= MOST_ROUNDS:
        return rounds_back(plan, state, RoundsBack(at=cue.at, rounds=cue.stitches))
    if cue.bare and cue.heard is None and not _may_be_count(plan, state, cue.stitches):
        return Refusal(sentence=_ask_which(plan, state, cue.stitches))
    return count_or_part(plan, state, cue)


def _may_be_count(plan: Plan, state: State, number: int) -> bool:
    """Return whether a number may be a count of all stitches, or of the part that is asked for."""
    place = state.place
    expected = min(count_at(plan, place), expected_at_end(plan, place))
    return number >= FEWEST * expected or _may_be_part(inquire(plan, state), state, number)


def _may_be_part(inquiry: Inquiry | None, state: State, number: int) -> bool:
    if inquiry is None or not inquiry.asks_part(state.place):
        return False
    ask = inquiry.search.next
    assert ask is not None
    assert inquiry.search.sections is not None
    return number <= most_counted(inquiry.search.sections, *ask.count) and number * 2 >= ask.stitches


def _ask_which(plan: Plan, state: State, number: int) -> str:
    """Return what to say in place of a number alone: what is asked first, then what else it can be."""
    asked = asked_look(plan, state)
    if asked is not None and asked[0] in _LOOKS:
        return _LOOKS[asked[0]].format(number)
    inquiry = inquire(plan, state)
    ways = [f"count is {number}"]
    expected = count_at(plan, state.place)
    if inquiry is not None and inquiry.asks_part(state.place):
        assert inquiry.search.next is not None
        expected = inquiry.search.next.stitches
        ways.insert(0, f"there are {number}")
    if inquiry is not None and 1 <= number <= len(inquiry.remedies):
        ways.insert(0, f"take remedy {number}")
    elif inquiry is None and 1 <= number <= MOST_ROUNDS:
        # Nobody counts two stitches where eighty are; a search for a fault would begin.
        several = [f"go back {number} rounds", f"{number} rounds done"]
        ways = several if number > 1 else ["go back", "next step"]
    if stretch_to_measure(plan, state.place) is not None:
        ways.append("it measures, and the length")
    return f"{number} alone is far from {expected} stitches. Say: {'; or: '.join(ways)}."
