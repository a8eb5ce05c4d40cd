"""Mend a fault without undoing anything: make a stitch or work two together above it, respace the rest of the
round, or let the coming shaping absorb it.

Only where a count has narrowed the place to one stretch (between two markers or two increases, or in one
repeat), or where nothing tells one stitch from another. A way that does not hold here is not offered: nothing
over a chart whose repeats do not divide, nor where the rest of a round has shifted. To make a missed stitch,
or to work a surplus one together with its neighbour, in the round above is common practice. No I/O.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Plan, Round
from stepper.plan.under_way.absorb import Mend, made_good
from stepper.plan.under_way.respace import NoRoomError, Respacing, respace, spread_of
from stepper.session.counting.tally import tally_stitches
from stepper.session.fault.diagnosis import Likely
from stepper.session.fault.search import Search
from stepper.session.fault.spot import find_spot
from stepper.session.fault.symptoms import SPREAD, Cause
from stepper.session.fault.ways import Remedy, RemedyKind, cost_remedy
from stepper.session.fault.workable import (
    find_exact_round,
    goes_on,
    is_even,
    is_tolerant,
    needs_its_repeat,
    start_of_work,
)
from stepper.session.state import Fault, Knitting, Position

MEND_STITCHES = 3.0
"""Plain stitches that making or losing one stitch by hand costs. Assumption; no source found."""
MOST_MENDED = 4
"""Most stitches made or lost in one round without showing. Assumption."""


def make_good(
    plan: Plan, now: Position, fault: Fault, search: Search, causes: tuple[Likely, ...]
) -> list[Remedy]:
    """List the ways to make a count good in the rounds to come.

    Args:
        plan: The plan as knitted.
        now: Where it stands.
        fault: What was counted and seen.
        search: Where on the needles it was found to be.
        causes: What probably happened.
    """
    if not is_located(fault, search, now) or (causes and shifts(plan, causes[0])):
        return []
    if not goes_on(plan, now, search) or needs_its_repeat(plan, now, search):
        return []
    ways = (_plain_round(plan, now, fault, search, causes), _accepted(plan, now, fault, search, causes))
    return [way for way in ways if way is not None]


def is_located(fault: Fault, search: Search, now: Position) -> bool:
    """Return whether a count has narrowed the place to one stretch or, where nothing tells one stitch from
    another, whether the count is known twice."""
    if not search.difference or fault.place != now:
        return False
    if search.sections is None:
        return fault.confirmed
    return search.found is not None


def shifts(plan: Plan, likely: Likely) -> bool:
    """Return whether a cause leaves the rest of its round in the wrong place; where changes are spread
    evenly, a repeat left out is only a change left out."""
    if likely.cause not in SPREAD:
        return False
    return likely.cause is Cause.OTHER_ROUND or not is_even(plan.rounds[likely.index])


def _plain_round(
    plan: Plan, now: Position, fault: Fault, search: Search, causes: tuple[Likely, ...]
) -> Remedy | None:
    """Make it good in the first plain round to come."""
    off = search.difference
    by = find_exact_round(plan, now, off)
    for round_ in plan.rounds[start_of_work(now) : by]:
        if round_.before == 0:
            return None
        if is_tolerant(round_) and abs(off) <= MOST_MENDED:
            spot = find_spot(plan, fault, search, causes, round_)
            if spot is None:
                return None
            mend = Mend(index=round_.index, stitch=spot, change=-off, origin=now.index)
            cost, above = MEND_STITCHES * abs(off), _rounds_above(round_, causes)
            return cost_remedy(RemedyKind.PLAIN, cost, now, mend=mend, by=by, above=above)
    return None


def _accepted(
    plan: Plan, now: Position, fault: Fault, search: Search, causes: tuple[Likely, ...]
) -> Remedy | None:
    """Go on with the count in hand, to the shaping that absorbs it or to the bind-off."""
    off = search.difference
    by = find_exact_round(plan, now, off)
    start, end = start_of_work(now), _end(plan, start_of_work(now))
    here = plan.rounds[start] if start < len(plan.rounds) else None
    spot = find_spot(plan, fault, search, causes, here) if here is not None and here.before else 0
    if spot is None:
        return None
    if by is None:
        mend = Mend(index=end, stitch=spot, change=-off, origin=now.index)
        return cost_remedy(RemedyKind.ACCEPT, 1, now, mend=mend) if start < end else None
    shaped = plan.rounds[by]
    spread = Mend(index=by, stitch=spot, change=-off, origin=now.index, spread=True)
    cost = MEND_STITCHES * abs(off) + 1
    if is_even(shaped) and made_good(shaped, spread) is not None:
        # One change more or fewer is hardly any work; the wait for it is the cost.
        return cost_remedy(RemedyKind.ACCEPT, cost, now, mend=spread, by=by)
    spot = find_spot(plan, fault, search, causes, shaped)
    if spot is None or search.found is None or _locked(shaped) or abs(off) > MOST_MENDED:
        return None
    mend = replace(spread, stitch=spot, spread=False)
    if made_good(shaped, mend) is None:
        return None
    above = _rounds_above(shaped, causes)
    return cost_remedy(RemedyKind.ACCEPT, cost, now, mend=mend, by=by, above=above)


def _rounds_above(round_: Round, causes: tuple[Likely, ...]) -> int:
    """Return how many rounds lie between the likeliest fault and the round that makes it good."""
    return max(0, round_.index - causes[0].index - 1) if causes else 0


def _end(plan: Plan, start: int) -> int:
    """Return the round after the last one that is worked on the stitches in hand."""
    for round_ in plan.rounds[start:]:
        if round_.before == 0:
            return round_.index
    return len(plan.rounds)


def _locked(round_: Round) -> bool:
    """Return whether a round divides or ends the piece, so that its stitches are spoken for."""
    return any(stitch(run.stitch).kind in (Kind.EDGE, Kind.SHIFT) for run in round_.runs)


def spread_left(plan: Plan, knitting: Knitting, fault: Fault, causes: tuple[Likely, ...]) -> list[Remedy]:
    """Respace the rest of a round if she has made more or fewer of its changes than planned."""
    now = knitting.place
    if fault.place != now or not now.stitch or not fault.difference:
        return []
    round_ = plan.rounds[now.index]
    spread = spread_of(round_)
    stands = knitting.stands
    begun_right = stands is not None and stands.place >= Position(index=now.index)
    made_here = bool(causes) and causes[0].index == now.index
    if spread is None or not is_even(round_) or not (begun_right or made_here):
        return []
    here = tally_stitches(round_, now.stitch)
    more, odd = divmod(fault.difference, spread.change.change)
    made = here.shaped + more
    if odd or not 0 <= made <= spread.changes:
        return []
    try:
        places = respace(round_, used=here.used, made=made)
    except NoRoomError:
        return []
    respacing = Respacing.of(round_, places)
    place = Position(index=now.index, stitch=here.used + made * spread.change.change)
    return [cost_remedy(RemedyKind.RESPACE, 1, place, respacing=respacing, made=made)]
