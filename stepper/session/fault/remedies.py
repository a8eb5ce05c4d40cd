"""The ways to mend a fault, each with what it costs, the cheapest first.

`RemedyKind` lists the ways; each is worked out by a function of its own. A way that is not true here is not
offered: nothing is worked over a chart whose repeats do not divide. No I/O.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import StrEnum

from stepper.craft.counting import RIP_SHARE, SECONDS_PER_COUNTED_STITCH
from stepper.craft.pace import DEFAULT_STITCHES_PER_MINUTE
from stepper.craft.stitches import Kind, stitch
from stepper.plan.absorb import Mend, made_good, refitted
from stepper.plan.model import Plan, Round
from stepper.session.fault.diagnosis import SPREAD, Likely
from stepper.session.fault.landmarks import is_turned
from stepper.session.fault.search import Search
from stepper.session.fault.symptoms import Cause
from stepper.session.state import Fault, Knitting, Position, Seen
from stepper.session.tally import count_at, count_between, tally_stitches

MEND_STITCHES = 3.0
"""A stitch worked more or less by hand costs so many plain ones. Assumption; no source found."""
COLUMN_STITCHES = 3.0
"""A stitch of a column dropped and worked up with a hook costs so many plain ones. Assumption."""
MOST_MENDED = 4
"""Stitches worked more or less in one round at most without showing. Assumption."""


class RemedyKind(StrEnum):
    """The ways to mend a fault. The values are what the journal keeps."""

    RECOUNT = "recount"
    """Count once more before anything is changed: it may be the count that is wrong."""
    PLAIN = "plain"
    """Work stitches more or fewer in the next plain round."""
    DROP = "drop"
    """Drop one column down to the fault and work it up again."""
    TINK = "tink"
    """Undo stitches one by one, back to the fault."""
    RIP = "rip"
    """Rip to the last lifeline or good count."""
    ACCEPT = "accept"
    """Go on, the rounds to come following the count in hand (`stepper.plan.absorb`), until the next shaping
    takes it up, or to the bind-off."""

    @property
    def settles(self) -> bool:
        """Whether the fault is taken for mended once this is chosen, and no longer looked for."""
        return self is not RemedyKind.RECOUNT


@dataclass(frozen=True, slots=True, kw_only=True)
class Remedy:
    """One way to mend a fault."""

    kind: RemedyKind
    stitches: int
    """What it costs, in stitches knitted. Unit: stitches."""
    minutes: float
    """The same at her pace. Unit: minutes."""
    place: Position
    """Where the knitting stands once it is carried out."""
    undone: int = 0
    """Stitches taken back on the way. Unit: stitches."""
    mend: Mend | None = None
    """What is then still to be worked."""
    by: int | None = None
    """The round before which it has to be mended, because it no longer works out there."""
    lifeline: bool = False
    """Whether ripping ends at a lifeline."""


def list_remedies(
    plan: Plan, knitting: Knitting, fault: Fault, search: Search, causes: tuple[Likely, ...]
) -> tuple[Remedy, ...]:
    """List the ways to mend a fault, the cheapest first; before all of them, to count once more.

    Args:
        plan: The plan as knitted.
        knitting: Where it stands, its lifelines and the last good count.
        fault: What the count was off by.
        search: Where on the needles it was found to be.
        causes: What probably happened.
    """
    now = knitting.place
    found = [
        *_count_again(plan, now, fault),
        *_in_next_rounds(plan, now, fault, search),
        *_column(plan, now, fault, causes),
        *_tinked(plan, now, fault, causes, search),
        *_ripped(plan, knitting, fault, causes),
    ]
    return tuple(sorted(found, key=lambda each: (each.kind.settles, each.stitches, each.kind)))


def find_exact_round(plan: Plan, place: Position, off: int = 1) -> int | None:
    """Find the first round from a place on that works out with its own count only.

    Args:
        plan: The plan as knitted.
        place: Where the knitting stands.
        off: Stitches too many; below 0 for too few. A repeat may divide it.

    Returns:
        Its index; None if all that follows can be worked with the count in hand, to the bind-off.
    """
    for round_ in plan.rounds[_start(place) :]:
        if round_.before == 0 or refitted(round_, off) is None:
            return round_.index if round_.before else None
    return None


def _start(place: Position) -> int:
    """Return the first round that is still to be worked as a whole."""
    return place.index + (1 if place.stitch else 0)


def is_tolerant(round_: Round) -> bool:
    """Return whether a round is the same plain stitch all along, and so can be worked over any count."""
    worked = [run for run in round_.runs if stitch(run.stitch).kind is not Kind.MARK]
    alike = {(run.stitch, run.yarn) for run in worked}
    return len(alike) == 1 and stitch(worked[0].stitch).kind is Kind.PLAIN


def _cost(kind: RemedyKind, stitches: float, place: Position, **more: object) -> Remedy:
    whole = round(stitches)
    minutes = stitches / DEFAULT_STITCHES_PER_MINUTE
    return Remedy(kind=kind, stitches=whole, minutes=minutes, place=place, **more)  # type: ignore[arg-type] # passed on


def _count_again(plan: Plan, now: Position, fault: Fault) -> list[Remedy]:
    """Count once more, as long as nothing but a single count of the whole speaks of a fault."""
    if not fault.difference or fault.place != now or fault.confirmed or fault.answers or fault.sights:
        return []
    counted = count_at(plan, now.index, now.stitch) + fault.difference
    knit_s = 60 / DEFAULT_STITCHES_PER_MINUTE
    return [_cost(RemedyKind.RECOUNT, max(1, counted) * SECONDS_PER_COUNTED_STITCH / knit_s, now)]


def _in_next_rounds(plan: Plan, now: Position, fault: Fault, search: Search) -> list[Remedy]:
    """Mend in the next plain round, or let the next shaping take it up."""
    off = fault.difference
    # A stitch that hangs loose runs down; no stitch made beside it holds it.
    if not off or _looped(fault) or not _goes_on(plan, now, off, search):
        return []
    ways = (_plain_round(plan, now, off, search), _accepted(plan, now, off, search))
    return [way for way in ways if way is not None]


def _goes_on(plan: Plan, now: Position, off: int, search: Search) -> bool:
    """Return whether the round in hand can be finished with the count that is off."""
    if not now.stitch or now.index >= len(plan.rounds):
        return True
    behind = search.found is not None and search.found[1] <= now.stitch
    return behind or refitted(plan.rounds[now.index], off) is not None


def _plain_round(plan: Plan, now: Position, off: int, search: Search) -> Remedy | None:
    """Make it good in the first plain round to come."""
    by = find_exact_round(plan, now, off)
    for round_ in plan.rounds[_start(now) : by]:
        if round_.before == 0:
            return None
        if is_tolerant(round_) and abs(off) <= MOST_MENDED:
            mend = Mend(index=round_.index, stitch=_spot(search, round_), change=-off, origin=now.index)
            return _cost(RemedyKind.PLAIN, MEND_STITCHES * abs(off), now, mend=mend, by=by)
    return None


def _accepted(plan: Plan, now: Position, off: int, search: Search) -> Remedy | None:
    """Go on with the count in hand: to the shaping that takes it up, or to the bind-off."""
    by = find_exact_round(plan, now, off)
    end = _end(plan, _start(now))
    spot = _spot(search, plan.rounds[_start(now)]) if _start(now) < len(plan.rounds) else 0
    if by is None:
        mend = Mend(index=end, stitch=spot, change=-off, origin=now.index)
        return _cost(RemedyKind.ACCEPT, 1, now, mend=mend) if _start(now) < end else None
    shaped = plan.rounds[by]
    spread = Mend(index=by, stitch=spot, change=-off, origin=now.index, spread=True)
    if made_good(shaped, spread) is not None:
        # Another change more or fewer is hardly any work; waiting for it is what it costs.
        return _cost(RemedyKind.ACCEPT, MEND_STITCHES * abs(off) + 1, now, mend=spread, by=by)
    sure = bool(shaped.shaping) or search.found is not None
    mend = replace(spread, stitch=_spot(search, shaped), spread=False)
    if not sure or _locked(shaped) or abs(off) > MOST_MENDED or made_good(shaped, mend) is None:
        return None
    return _cost(RemedyKind.ACCEPT, MEND_STITCHES * abs(off) + 1, now, mend=mend, by=by)


def _end(plan: Plan, start: int) -> int:
    """Return the round after the last one that is worked on the stitches in hand."""
    for round_ in plan.rounds[start:]:
        if round_.before == 0:
            return round_.index
    return len(plan.rounds)


def _locked(round_: Round) -> bool:
    """Return whether a round divides or ends the piece, so that its stitches are spoken for."""
    return any(stitch(run.stitch).kind in (Kind.EDGE, Kind.SHIFT) for run in round_.runs)


def _spot(search: Search, round_: Round) -> int:
    """Return where to mend: the middle of the stretch the fault is in, away from the ends of the round."""
    found = search.found
    middle = round_.before // 2 if found is None else (found[0] + found[1]) // 2
    place = used = 0
    for run in round_.runs:
        entry = stitch(run.stitch)
        for _ in range(run.times):
            if used >= middle:
                return place
            used += entry.uses
            place += entry.progress
    return place


def _column(plan: Plan, now: Position, fault: Fault, causes: tuple[Likely, ...]) -> list[Remedy]:
    """Drop down one column, where a single stitch was lost there and nothing was crossed above."""
    if not _looped(fault) or not causes or causes[0].cause not in (Cause.DROPPED, Cause.YARN_OVER):
        return []
    if fault.difference != -1:
        return []
    above = plan.rounds[causes[0].index + 1 : now.index]
    if any(
        stitch(run.stitch).kind is Kind.CABLE or round_.shaping for round_ in above for run in round_.runs
    ):
        return []
    return [_cost(RemedyKind.DROP, COLUMN_STITCHES * (len(above) + 1), now)]


def _looped(fault: Fault) -> bool:
    """Return whether she saw a loose loop."""
    return any(each.seen is Seen.LOOP and each.number for each in fault.sights)


def _tinked(
    plan: Plan, now: Position, fault: Fault, causes: tuple[Likely, ...], search: Search
) -> list[Remedy]:
    """Undo back to the fault, stitch by stitch, where it lies in this round or the one before."""
    # The earliest round it can have been: what is undone too little would leave the fault in.
    index = min((each.index for each in causes), default=-2)
    if index < now.index - 1:
        return []
    # Back to where the stretch begins that the fault is in; it is then worked anew as the plan has it.
    start = 0 if any(each.cause in SPREAD for each in causes) else _sound_up_to(plan, index, fault, search)
    if index == now.index and start >= now.stitch:
        start = 0
    place = Position(index=index, stitch=start)
    if place >= now:  # she has gone back behind it since; what is not knitted cannot be undone
        return []
    undone = count_between(plan, place, now)
    return [_cost(RemedyKind.TINK, 2 * undone, place, undone=undone)] if undone else []


def _sound_up_to(plan: Plan, index: int, fault: Fault, search: Search) -> int:
    """Return the place in a round up to which the stitches are known to be right."""
    if search.found is None or search.sections is None:
        return 0
    first = search.found[0]
    if is_turned(plan, index, fault.place.index):
        first = search.sections.edges[-1] - search.found[1]
    return _place_of(plan.rounds[index], first)


def _place_of(round_: Round, column: int) -> int:
    """Return the last whole stitch of a round at or before a column of the needles after it."""
    place = 0
    for run in round_.runs:
        entry = stitch(run.stitch)
        for _ in range(run.times):
            if place + entry.progress > column:
                return place
            place += entry.progress
    return 0


def _ripped(plan: Plan, knitting: Knitting, fault: Fault, causes: tuple[Likely, ...]) -> list[Remedy]:
    """Rip to the last lifeline or good count that lies before the fault."""
    now = knitting.place
    index = min((each.index for each in causes), default=None)
    here = fault.index if fault.index is not None else index
    marks = [(each, True) for each in knitting.lifelines]
    if knitting.stands is not None:
        marks.append((knitting.stands.place, False))
    before = [(p, line) for p, line in marks if p < now]
    if here is not None:
        before = [(p, line) for p, line in before if p.index <= here]
    if not before:
        first = Position(index=here if here is not None else 0)
        before = [(first, False)] if first < now else []
    if not before:
        return []
    found = [_rip(plan, place, now, lifeline=lifeline) for place, lifeline in before]
    return [min(found, key=lambda each: each.stitches)]


def _rip(plan: Plan, place: Position, now: Position, *, lifeline: bool) -> Remedy:
    """Cost ripping to one place."""
    undone = count_between(plan, place, now)
    # A stitch ripped where no lifeline holds it has to be picked up one by one.
    pick_up = 0 if lifeline else tally_stitches(plan.rounds[place.index], place.stitch).count
    cost = undone * (1 + RIP_SHARE) + pick_up
    return _cost(RemedyKind.RIP, cost, place, undone=undone, lifeline=lifeline)
