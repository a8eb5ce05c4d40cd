"""Find where in a round a fault is made good: above the mistake, or strictly inside the stretch it lies in.

A stitch made at a marker, an increase or the join may come to lie on the wrong side of it. No I/O.
"""

from __future__ import annotations

from stepper.craft.stitches import Kind
from stepper.plan.model import Plan, Round
from stepper.session.counting.tally import each_stitch
from stepper.session.fault.diagnosis import Likely, is_lone
from stepper.session.fault.landmarks import Landmark
from stepper.session.fault.search import Search
from stepper.session.fault.symptoms import Cause, list_symptoms
from stepper.session.state import Fault


def find_spot(
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
    for entry in each_stitch(round_.runs):
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
