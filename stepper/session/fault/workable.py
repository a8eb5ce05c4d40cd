"""Tell which rounds can be worked though the count is off, and which only with their own count.

A plain round takes any count, a rib or a chart one that its repeats divide; what is left of a shaped round
can be worked by sight where its changes stand at markers. Common practice. No I/O.
"""

from __future__ import annotations

from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Plan, Round
from stepper.plan.under_way.absorb import refit_round
from stepper.plan.under_way.respace import spread_of
from stepper.session.counting.tally import each_stitch, markers_in, placed_runs, shaping_at
from stepper.session.fault.landmarks import SEEN_PAST_EDGES, Landmark
from stepper.session.fault.search import Search
from stepper.session.state import Position


def find_exact_round(plan: Plan, place: Position, off: int = 1) -> int | None:
    """Find the first round, from a place on, that works out only with its own count.

    Args:
        plan: The plan as knitted.
        place: Where the knitting stands.
        off: Stitches too many; below 0 for too few. A repeat may divide it.

    Returns:
        Its index; None if everything up to the bind-off can be worked with the count in hand.
    """
    for round_ in plan.rounds[start_of_work(place) :]:
        if round_.before == 0 or refit_round(round_, off) is None:
            return round_.index if round_.before else None
    return None


def start_of_work(place: Position) -> int:
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
    if not now.stitch:
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
    for entry in each_stitch(round_.runs):
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


def needs_its_repeat(plan: Plan, now: Position, search: Search) -> bool:
    """Return whether a fault between two markers lies in lace that goes on above it.

    Made good in another repeat than its own, it would set every repeat between the two a stitch aside.

    Args:
        plan: The plan as knitted.
        now: Where it stands.
        search: Where on the needles the fault was found to be, and how many stitches are off.
    """
    marked = search.sections is not None and search.sections.kind is Landmark.MARKER
    if not marked or search.found is None or search.spot is not None:
        return False
    start = start_of_work(now)
    worked, ahead = plan.rounds[max(0, start - SEEN_PAST_EDGES) : start], plan.rounds[start:]
    side = plan.rounds[min(now.index, len(plan.rounds) - 1)].side
    both = worked, ahead[:SEEN_PAST_EDGES]
    return all(any(_is_lace(each, search, side) for each in rounds) for rounds in both)


def _is_lace(round_: Round, search: Search, side: str) -> bool:
    """Return whether a round both increases and decreases in the stretch a fault was found in."""
    assert search.sections is not None
    assert search.found is not None
    total, (low, high) = search.sections.edges[-1], search.found
    if round_.side != side:
        low, high = total - high, total - low
    shares = ((place / max(1, round_.after), run) for place, run in placed_runs(round_))
    kinds = {stitch(run.stitch).kind for share, run in shares if low / total <= share < high / total}
    return kinds >= {Kind.INCREASE, Kind.DECREASE}
