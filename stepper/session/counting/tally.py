"""Count what is on the needles anywhere in a round, and how much of its shaping is done.

No I/O. Places are in stitches as counted on the right needle (`Run.progress`).
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import accumulate, pairwise, repeat

from stepper.craft.stitches import Kind, Stitch, stitch
from stepper.plan.model import Plan, Round, Run
from stepper.records import dataclass
from stepper.session.state import Position
from stepper.session.steps import MARKS


@dataclass(frozen=True, slots=True, kw_only=True)
class Tally:
    """How a round stands after some of its stitches."""

    count: int
    """Stitches on the needles, both together. Unit: stitches."""
    used: int
    """Stitches of the old round used up. Unit: stitches."""
    shaped: int
    """Increases and decreases done. Unit: changes."""


def each_stitch(runs: Iterable[Run]) -> Iterator[Stitch]:
    """Yield the stitches of some runs one by one, as the table of stitches has them."""
    for run in runs:
        yield from repeat(stitch(run.stitch), run.times)


def placed_runs(round_: Round) -> Iterator[tuple[int, Run]]:
    """Yield the runs of a round, each with the stitches of the round before it."""
    return zip(accumulate((run.progress for run in round_.runs), initial=0), round_.runs, strict=False)


def tally_stitches(round_: Round, stitches: int) -> Tally:
    """Count after `stitches` of a round; a half-made stitch is not counted."""
    count, used, shaped, left = round_.before, 0, 0, stitches
    for run in round_.runs:
        entry = stitch(run.stitch)
        done = run.times if run.progress <= left else left // max(1, entry.progress)
        count += done * entry.change
        used += done * entry.uses
        if entry.shapes:
            shaped += done
        left -= done * entry.progress
        if done < run.times:
            break
    return Tally(count=count, used=used, shaped=shaped)


def count_at(plan: Plan, place: Position) -> int:
    """Count the stitches that should be on the needles; after the last round, those it leaves."""
    if place.index < len(plan.rounds):
        return tally_stitches(plan.rounds[place.index], place.stitch).count
    return plan.count_before(place.index)


def is_counted_at(plan: Plan, place: Position) -> bool:
    """Return whether the stitches at a place are known: not among rows of which only the last was counted."""
    near = (place.index - 1, place.index) if place.stitch else (place.index - 1,)
    return not any(plan.rounds[at].is_uncounted for at in near if 0 <= at < len(plan.rounds))


def count_between(plan: Plan, start: Position, end: Position) -> int:
    """Count the stitches from one place to another; below 0 if the other comes first."""
    first, last = min(start.index, end.index), max(start.index, end.index)
    whole = sum(round_.progress for round_ in plan.rounds[first:last])
    return (whole if end.index >= start.index else -whole) + end.stitch - start.stitch


def piece_begun(plan: Plan, index: int) -> int:
    """Return the last round up to an index that begins with nothing on the needles.

    What came before it hangs there no longer: a sock that is grafted, a body that is bound off.
    """
    return next((at for at in range(index, 0, -1) if not plan.rounds[at].before), 0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Shaping:
    """How the increases and decreases of a round are spaced."""

    increases: int
    decreases: int
    gaps: tuple[tuple[int, int], ...]
    """Numbers of plain stitches between two changes and how often each occurs, larger first, across the join
    if worked in the round. Unit: stitches, times."""
    first: int
    """Stitches of the old round before the first change. Unit: stitches."""
    done: int
    """Changes done at the place asked about. Unit: changes."""
    next_in: int | None
    """Stitches of the old round to work before the next change; None if all are done."""


def shaping_at(round_: Round, stitches: int) -> Shaping | None:
    """Return the shaping of a round seen from a place in it, or None if it has none.

    Gaps are the plain stitches between the changes: an `m1` takes no stitch of the old round, a `k2tog` takes
    two.
    """
    if not round_.shaping:
        return None
    changes = [entry for entry in each_stitch(round_.runs) if entry.shapes]
    now = tally_stitches(round_, stitches)
    ahead = [place for place in round_.shaping[now.shaped :] if place >= now.used]
    widths = [entry.uses for entry in changes] if len(changes) == len(round_.shaping) else []
    return Shaping(
        increases=sum(entry.kind is Kind.INCREASE for entry in changes),
        decreases=sum(entry.kind is Kind.DECREASE for entry in changes),
        gaps=_gaps(round_, widths or [0] * len(round_.shaping)),
        first=round_.shaping[0],
        done=now.shaped,
        next_in=ahead[0] - now.used if ahead else None,
    )


def _gaps(round_: Round, widths: list[int]) -> tuple[tuple[int, int], ...]:
    """Count the gaps between changes by their size."""
    places = round_.shaping
    ends = [place + width for place, width in zip(places, widths, strict=True)]
    gaps = [after - end for end, after in zip(ends, places[1:], strict=False)]
    if not round_.flat:
        gaps.append(round_.before - ends[-1] + places[0])
    return tuple((gap, gaps.count(gap)) for gap in sorted(set(gaps), reverse=True))


def markers_in(round_: Round) -> tuple[int, ...]:
    """Return the places of the markers inside a round, in working order, without those at its ends.

    They are where the round itself says to place or slip one; a round that does not mention markers keeps
    those that are there.
    """
    places = [place for place, run in placed_runs(round_) if run.stitch in MARKS]
    return tuple(sorted({each for each in (places or round_.markers) if 0 < each < round_.progress}))


def between_markers(round_: Round) -> tuple[int, ...]:
    """Count the stitches between the markers after a round, in working order; empty if there are none."""
    marks = sorted({each for each in round_.markers if 0 < each < round_.after})
    if not marks:
        return ()
    edges = [0, *marks, round_.after]
    return tuple(after - before for before, after in pairwise(edges))
