"""Undo work back to a fault, stitch by stitch or by ripping: the last resort, with its cost. No I/O."""

from __future__ import annotations

from typing import Final

from stepper.craft.counting import RIP_SHARE
from stepper.plan.model import Plan, Round
from stepper.session.counting.tally import count_between, each_stitch, piece_begun, tally_stitches
from stepper.session.fault.diagnosis import Likely
from stepper.session.fault.landmarks import is_turned
from stepper.session.fault.search import Search
from stepper.session.fault.symptoms import SPREAD
from stepper.session.fault.ways import Remedy, RemedyKind, cost_remedy
from stepper.session.state import Fault, Knitting, Position


def undo_stitches(
    plan: Plan, now: Position, fault: Fault, causes: tuple[Likely, ...], search: Search
) -> list[Remedy]:
    """Undo back to the fault, stitch by stitch, if it lies in this round or the one before."""
    # The earliest round it can be in: undoing too little would leave the fault in.
    index = min((each.index for each in causes), default=-2)
    if index < now.index - 1:
        return []
    # Back to the beginning of the stretch the fault is in, which is then worked again as planned.
    start = 0 if any(each.cause in SPREAD for each in causes) else _sound_up_to(plan, index, fault, search)
    if index == now.index and start >= now.stitch:
        start = 0
    place = Position(index=index, stitch=start)
    if place >= now:  # she has gone back behind it since; what is not knitted cannot be undone
        return []
    undone = count_between(plan, place, now)
    if not undone:
        return []
    return [cost_remedy(RemedyKind.TINK, 2 * undone, place, undone=undone, rounds=now.index - index)]


def _sound_up_to(plan: Plan, index: int, fault: Fault, search: Search) -> int:
    """Return the place in a round up to which the stitches are known to be right."""
    if search.found is None or search.sections is None or search.rest:
        return 0
    first = search.found[0]
    if is_turned(plan, index, fault.place.index):
        first = search.sections.edges[-1] - search.found[1]
    return _place_of(plan.rounds[index], first)


def _place_of(round_: Round, column: int) -> int:
    """Return the last whole stitch of a round at or before a column of the needles after it."""
    place = 0
    for entry in each_stitch(round_.runs):
        if place + entry.progress > column:
            return place
        place += entry.progress
    return 0


AT_RISK: Final = 1.5
"""How much dearer than its time ripping is where no lifeline holds the stitches: one may run. Chosen here."""


def rip_back(plan: Plan, knitting: Knitting, fault: Fault, causes: tuple[Likely, ...]) -> list[Remedy]:
    """Rip to the last lifeline or good count before the fault, never into a piece finished before.

    Where she has seen which round it is in, ripping farther than that round would only cost her more.
    """
    now = knitting.place
    begun = Position(index=piece_begun(plan, min(now.index - (not now.stitch), len(plan.rounds) - 1)))
    index = min((each.index for each in causes), default=None)
    here = fault.index if fault.index is not None else index
    marks = [(each, True) for each in knitting.lifelines if each >= begun]
    if knitting.stands is not None and fault.index is None:
        marks.append((max(knitting.stands.place, begun), False))
    before = [(p, line) for p, line in marks if p < now and (here is None or p.index <= here)]
    if here is not None and (fault.index is not None or not before) and begun <= Position(index=here) < now:
        before.append((Position(index=here), False))
    found = [_rip(plan, place, now, lifeline=lifeline) for place, lifeline in before]
    return sorted(found, key=lambda each: each.stitches * (1 if each.lifeline else AT_RISK))[:1]


def _rip(plan: Plan, place: Position, now: Position, *, lifeline: bool) -> Remedy:
    """Cost ripping to one place."""
    undone = count_between(plan, place, now)
    # A stitch ripped where no lifeline holds it has to be picked up one by one.
    pick_up = 0 if lifeline else tally_stitches(plan.rounds[place.index], place.stitch).count
    cost = undone * (1 + RIP_SHARE) + pick_up
    rounds = now.index - place.index
    return cost_remedy(RemedyKind.RIP, cost, place, undone=undone, lifeline=lifeline, rounds=rounds)
