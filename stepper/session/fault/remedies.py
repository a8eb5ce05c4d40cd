"""List the ways to mend a fault, the cheapest and least harmful first.

The order is that of a knitter who has been harmed before. A live loop runs, so it is looked for before
anything else, and caught before anything else is done. A count may be a slip, so it is made once more. The
place has to be known before a stitch is made or two are worked together. Where two causes call for different
remedies, what tells them apart is looked at. Then the cheapest comes first, and ripping last (common
practice). A way that does not hold here is not offered. No I/O.
"""

from __future__ import annotations

from stepper.craft.counting import SECONDS_PER_COUNTED_STITCH
from stepper.craft.pace import DEFAULT_STITCHES_PER_MINUTE
from stepper.plan.model import Plan
from stepper.session.counting.tally import count_at, tally_stitches
from stepper.session.fault.diagnosis import LOOPED, Likely, choose_question
from stepper.session.fault.landmarks import sections_at
from stepper.session.fault.making_good import is_located, make_good, shifts, spread_left
from stepper.session.fault.search import Search
from stepper.session.fault.taking_back import rip_back, undo_stitches
from stepper.session.fault.ways import Remedy, RemedyKind, StitchesToCount, cost_remedy
from stepper.session.fault.workable import goes_on, shapes_by_sight
from stepper.session.state import Fault, Knitting, Narrowing, Position, Seen

COLUMN_STITCHES = 3.0
"""Plain stitches that working up one stitch of a column with a hook costs. Assumption."""
LOOK_STITCHES = 4.0
"""Stitches knitted in the time it takes to look at one thing. Assumption."""
WORTH_A_LOOK = 0.05
"""Least chance at which a cause that calls for another remedy is looked at first. Source: chosen here."""


def list_remedies(
    plan: Plan, knitting: Knitting, fault: Fault, search: Search, causes: tuple[Likely, ...]
) -> tuple[Remedy, ...]:
    """List the ways to mend a fault, the first to be taken first.

    Args:
        plan: The plan as knitted.
        knitting: Where it stands, its lifelines and the last good count.
        fault: What was counted and seen.
        search: Where on the needles it was found to be.
        causes: What probably happened.

    Returns:
        Nothing but the loop while one may hang there, or hangs there uncaught. Empty where no place to rip
        back to is known either.
    """
    now = knitting.place
    if fault.hangs_a_loop:
        return (_laddered(plan, now, causes),)
    if may_hang_a_loop(fault, causes):
        return (_looking(now, Seen.LOOP, max(0, now.index - 1)),)
    first = [
        *_count_again(plan, now, fault, search),
        *_count_between(now, fault, search),
        *_finish_first(plan, now, fault, search),
        *_look_first(plan, now, fault, causes),
    ]
    begun = Narrowing.PART if fault.answers else None
    chosen = fault.chosen or begun
    first.sort(key=lambda way: chosen is None or way.kind.value != chosen.value)
    respaced = spread_left(plan, knitting, fault, causes)
    if respaced:
        first = [way for way in first if way.kind is not RemedyKind.FINISH]
    found = [
        *respaced,
        *([] if first else make_good(plan, now, fault, search, causes)),
        *undo_stitches(plan, now, fault, causes, search),
    ]
    # One that leaves the count as it is to the bind-off is to live with it, not to mend it.
    to_the_end = [way for way in found if way.kind is RemedyKind.ACCEPT and way.by is None]
    found = sorted((way for way in found if way not in to_the_end), key=lambda way: (way.stitches, way.kind))
    if not (first or found or to_the_end):  # whatever narrows it down comes before ripping
        question = choose_question(fault, causes)
        first = [] if question is None else [_looking(now, *question)]
    return (*first, *found, *to_the_end, *rip_back(plan, knitting, fault, causes))


def may_hang_a_loop(fault: Fault, causes: tuple[Likely, ...]) -> bool:
    """Return whether a stitch may have been dropped and she has not said whether a loop hangs there."""
    if any(each.seen is Seen.LOOP for each in fault.sights):
        return False
    return fault.difference < 0 or any(each.cause in LOOPED for each in causes)


def _laddered(plan: Plan, now: Position, causes: tuple[Likely, ...]) -> Remedy:
    """Catch the loop and work it up through the rounds above it."""
    looped = [each.index for each in causes if each.cause in LOOPED]
    above = max(0, now.index - (looped[0] if looped else now.index) - (0 if now.stitch else 1))
    expect = count_at(plan, now)
    return cost_remedy(RemedyKind.LADDER, COLUMN_STITCHES * (above + 1), now, above=above, expect=expect)


def _looking(now: Position, seen: Seen, index: int) -> Remedy:
    return cost_remedy(RemedyKind.LOOK, LOOK_STITCHES, now, look=(seen, index))


def _count_again(plan: Plan, now: Position, fault: Fault, search: Search) -> list[Remedy]:
    """Count once more while only a single count of the whole points to a fault, or if she has knitted on
    since it was made."""
    if not fault.difference or fault.index is not None:
        return []
    alone = not (fault.confirmed or search.counted or fault.was_seen)
    if not alone and fault.place == now:
        return []
    expect = count_at(plan, now)
    cost = _cost_of_counting(expect + fault.difference)
    return [cost_remedy(RemedyKind.RECOUNT, cost, now, expect=expect, plain=search.sections is None)]


def _count_between(now: Position, fault: Fault, search: Search) -> list[Remedy]:
    """Count the next stretch while the place is not known."""
    stretch = next_stretch(search)
    if stretch is None or fault.place != now:
        return []
    return [cost_remedy(RemedyKind.NARROW, _cost_of_counting(stretch.expect), now, stretch=stretch)]


def _cost_of_counting(stitches: int) -> float:
    """Return what it takes to count stitches, in stitches knitted in that time."""
    return max(1, stitches) * SECONDS_PER_COUNTED_STITCH / (60 / DEFAULT_STITCHES_PER_MINUTE)


def _finish_first(plan: Plan, now: Position, fault: Fault, search: Search) -> list[Remedy]:
    """Finish the round and count then: where plain fabric in the middle of a round is not so plain at its
    end, and where its shaping can be seen to belong somewhere though the count is off."""
    if not now.stitch or not is_located(fault, search, now):
        return []
    round_, done = plan.rounds[now.index], Position(index=now.index + 1)
    by_eye = not goes_on(plan, now, search)
    if by_eye and not shapes_by_sight(round_, now.stitch):
        return []
    if not by_eye and (search.sections is not None or sections_at(plan, done) is None):
        return []
    left, shaped = round_.progress - now.stitch, tally_stitches(round_, now.stitch).shaped
    by_eye = by_eye and shaped < len(round_.shaping)
    return [cost_remedy(RemedyKind.FINISH, left, now, expect=round_.after, by_eye=by_eye)]


def next_stretch(search: Search) -> StitchesToCount | None:
    """Return the stretch to count next; None if no count helps any more."""
    if search.next is None or search.sections is None:
        return None
    first, end = search.next.count
    return StitchesToCount(
        kind=search.sections.kind,
        first=first,
        end=None if end == len(search.sections.counts) else end,
        expect=search.next.stitches,
        index=search.sections.index,
    )


def _look_first(plan: Plan, now: Position, fault: Fault, causes: tuple[Likely, ...]) -> list[Remedy]:
    """Look at what tells the likeliest causes apart if they call for different remedies."""
    likely = [each for each in causes if each.odds >= WORTH_A_LOOK]
    other = next((each for each in likely if shifts(plan, each) != shifts(plan, likely[0])), None)
    question = choose_question(fault, (likely[0], other)) if other is not None else None
    return [] if question is None else [_looking(now, *question)]
