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
from stepper.plan.under_way.absorb import Mend, made_good, refit_round
from stepper.plan.under_way.respace import NoRoomError, Respacing, respace, spread_of
from stepper.session.counting.tally import markers_in, shaping_at, tally_stitches
from stepper.session.fault.diagnosis import Likely, is_lone
from stepper.session.fault.landmarks import Landmark
from stepper.session.fault.search import Search
from stepper.session.fault.symptoms import SPREAD, Cause, list_symptoms
from stepper.session.fault.ways import Remedy, RemedyKind, cost_remedy
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
    if not goes_on(plan, now, search):
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


def is_even(round_: Round) -> bool:
    """Return whether the changes of a round are spread evenly over it, so that none has its own place."""
    shaping = shaping_at(round_, 0)
    marked = any(0 < each < round_.after for each in round_.markers)
    if shaping is None or marked or spread_of(round_) is None:
        return False
    gaps = [gap for gap, _ in shaping.gaps]
    return round_.evenly or (len(round_.shaping) >= LEAST_EVEN and max(gaps) - min(gaps) <= 1)


LEAST_EVEN = 3
"""Fewest changes whose equal gaps are no coincidence. Source: chosen here."""


def find_exact_round(plan: Plan, place: Position, off: int = 1) -> int | None:
    """Find the first round, from a place on, that works out only with its own count.

    Args:
        plan: The plan as knitted.
        place: Where the knitting stands.
        off: Stitches too many; below 0 for too few. A repeat may divide it.

    Returns:
        Its index; None if everything up to the bind-off can be worked with the count in hand.
    """
    for round_ in plan.rounds[_start(place) :]:
        if round_.before == 0 or refit_round(round_, off) is None:
            return round_.index if round_.before else None
    return None


def _start(place: Position) -> int:
    """Return the first round that is still to be worked as a whole."""
    return place.index + (1 if place.stitch else 0)


def is_tolerant(round_: Round) -> bool:
    """Return whether a round is the same plain stitch throughout, and so can be worked over any count."""
    worked = [run for run in round_.runs if stitch(run.stitch).kind is not Kind.MARK]
    alike = {(run.stitch, run.yarn) for run in worked}
    return len(alike) == 1 and stitch(worked[0].stitch).kind is Kind.PLAIN


def goes_on(plan: Plan, now: Position, search: Search) -> bool:
    """Return whether the round in hand can be finished with the count that is off.

    Args:
        plan: The plan as knitted.
        now: Where it stands.
        search: Where on the needles the fault was found to be, and how many stitches are off.
    """
    if not now.stitch or now.index >= len(plan.rounds):
        return True
    behind = search.found is not None and search.found[1] <= now.stitch
    return behind or refit_round(plan.rounds[now.index], search.difference) is not None


NEAR = 4
"""Stitches from a marker, or from the end of the round, up to which a change is placed by it. Assumption."""


def shapes_by_sight(round_: Round, stitches: int) -> bool:
    """Return whether what is left of a round can be worked over a stitch more or fewer: its changes stand at
    markers or at its ends, and a plain run between them is as long as it comes.

    Args:
        round_: The round in hand.
        stitches: Stitches worked of it.
    """
    if len({run.yarn for run in round_.runs}) > 1:
        return False
    parts = _parts_left(round_, stitches)
    kinds = {kind for part in parts for kind, _ in part}
    if not kinds <= {Kind.PLAIN, Kind.INCREASE, Kind.DECREASE, Kind.MARK}:
        return False
    plain = [[times for kind, times in part if kind is Kind.PLAIN] for part in parts]
    as_long_as_it_comes = [[times for times in part if times > NEAR] for part in plain]
    beside = [sum(times for times in part if times <= NEAR) for part in plain]
    return (
        any(as_long_as_it_comes)
        and all(len(part) <= 1 for part in as_long_as_it_comes)
        and all(each <= 2 * NEAR for each in beside)
    )


def _parts_left(round_: Round, stitches: int) -> list[list[tuple[Kind, int]]]:
    """Return what is left of a round, from marker to marker: the kinds of stitches, and how many of each are
    worked one after the other."""
    cuts, place = set(markers_in(round_)), 0
    parts: list[list[tuple[Kind, int]]] = [[]]
    for run in round_.runs:
        entry = stitch(run.stitch)
        for _ in range(run.times):
            if place >= stitches and entry.progress:
                last = parts[-1][-1] if parts[-1] else None
                if last is not None and last[0] is entry.kind:
                    parts[-1][-1] = (entry.kind, last[1] + 1)
                else:
                    parts[-1].append((entry.kind, 1))
            place += entry.progress
            if entry.progress and place in cuts and place > stitches:
                parts.append([])
    return parts


def _plain_round(
    plan: Plan, now: Position, fault: Fault, search: Search, causes: tuple[Likely, ...]
) -> Remedy | None:
    """Make it good in the first plain round to come."""
    off = search.difference
    by = find_exact_round(plan, now, off)
    for round_ in plan.rounds[_start(now) : by]:
        if round_.before == 0:
            return None
        if is_tolerant(round_) and abs(off) <= MOST_MENDED:
            spot = _spot(plan, fault, search, causes, round_)
            if spot is None:
                return None
            mend = Mend(index=round_.index, stitch=spot, change=-off, origin=now.index)
            above = round_.index - causes[0].index - 1 if causes else 0
            cost = MEND_STITCHES * abs(off)
            return cost_remedy(RemedyKind.PLAIN, cost, now, mend=mend, by=by, above=max(0, above))
    return None


def _accepted(
    plan: Plan, now: Position, fault: Fault, search: Search, causes: tuple[Likely, ...]
) -> Remedy | None:
    """Go on with the count in hand, to the shaping that absorbs it or to the bind-off."""
    off = search.difference
    by = find_exact_round(plan, now, off)
    start, end = _start(now), _end(plan, _start(now))
    here = plan.rounds[start] if start < len(plan.rounds) else None
    spot = _spot(plan, fault, search, causes, here) if here is not None and here.before else 0
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
    spot = _spot(plan, fault, search, causes, shaped)
    if spot is None or search.found is None or _locked(shaped) or abs(off) > MOST_MENDED:
        return None
    mend = replace(spread, stitch=spot, spread=False)
    return cost_remedy(RemedyKind.ACCEPT, cost, now, mend=mend, by=by) if made_good(shaped, mend) else None


def _end(plan: Plan, start: int) -> int:
    """Return the round after the last one that is worked on the stitches in hand."""
    for round_ in plan.rounds[start:]:
        if round_.before == 0:
            return round_.index
    return len(plan.rounds)


def _locked(round_: Round) -> bool:
    """Return whether a round divides or ends the piece, so that its stitches are spoken for."""
    return any(stitch(run.stitch).kind in (Kind.EDGE, Kind.SHIFT) for run in round_.runs)


def _spot(
    plan: Plan, fault: Fault, search: Search, causes: tuple[Likely, ...], round_: Round
) -> int | None:
    """Return where in a round to mend: above the change itself if there is one, else in the middle of the
    stretch; None if the stretch has no room. Unit: stitches of the round."""
    total = round_.before
    low, high = 0, total
    if search.found is not None:
        stretch = _stretch_later(plan, fault, search)
        if stretch is None:
            return None
        low, high = stretch
        if plan.rounds[min(fault.place.index, len(plan.rounds) - 1)].side != round_.side:
            low, high = total - high, total - low
        if causes and is_lone(plan, causes[0].cause, causes[0].index, search):
            low, high = 0, total
    wanted = search.spot if search.spot is not None else _change_in(plan, causes, round_, low, high)
    short = max(0, -search.difference)
    if short and search.sections is not None:
        # A stitch made right at a marker, or at the join, may come to lie on the wrong side of it.
        hung = search.sections.kind is Landmark.MARKER
        beside = hung or not low or high - low > 2 * short
        low, high = low + beside, high - short * (hung or high == total)
    room = [(column, place) for column, place in _plain_places(round_) if low <= column < high]
    needed = 2 * abs(search.difference) - 1
    if len(room) < needed:
        return None
    middle = wanted if wanted is not None else (low + high) // 2
    nearest = min(range(len(room)), key=lambda at: (abs(room[at][0] - middle), at))
    return room[min(nearest, len(room) - needed)][1]


def _stretch_later(plan: Plan, fault: Fault, search: Search) -> tuple[int, int] | None:
    """Return the stretch a fault lies in, in the stitches as they lie once the round in hand is done."""
    assert search.sections is not None
    assert search.found is not None
    if not fault.place.stitch or fault.place.index >= len(plan.rounds):
        return search.found
    round_ = plan.rounds[fault.place.index]
    edges = (0, *(each for each in round_.markers if 0 < each < round_.after), round_.after)
    if search.sections.kind is not Landmark.MARKER or len(edges) != len(search.sections.edges):
        return None
    return edges[search.suspects[0]], edges[search.suspects[-1] + 1]


def _plain_places(round_: Round) -> list[tuple[int, int]]:
    """List the plain stitches of a round: the stitch of the old round each takes up, and its place."""
    found, used, place = [], 0, 0
    for run in round_.runs:
        entry = stitch(run.stitch)
        for _ in range(run.times):
            if entry.kind is Kind.PLAIN:
                found.append((used, place))
            used += entry.uses
            place += entry.progress
    return found


def _change_in(
    plan: Plan, causes: tuple[Likely, ...], round_: Round, low: int, high: int
) -> int | None:
    """Return the stitch of the increase or decrease left out; None unless only one is possible."""
    if not causes or causes[0].cause is not Cause.LEFT_OUT:
        return None
    made = plan.rounds[causes[0].index]
    wanted = (causes[0].cause, causes[0].code)
    told = [each for each in list_symptoms(plan, made.index) if (each.cause, each.code) == wanted]
    turned = made.side != round_.side
    for each in told:
        shares = [1 - start if turned else start for start, _, _ in each.spans]
        inside = [int(share * made.after) for share in shares if low <= share * made.after < high]
        if inside:
            return inside[0]
    return None


def spread_left(plan: Plan, knitting: Knitting, fault: Fault, causes: tuple[Likely, ...]) -> list[Remedy]:
    """Respace the rest of a round if she has made more or fewer of its changes than planned."""
    now = knitting.place
    if fault.place != now or not now.stitch or now.index >= len(plan.rounds) or not fault.difference:
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
