"""Even spacing: at which stitches of a round the shaping is worked.

Theory of operation. Sharing `n` stitches over `k` gaps gives quotient `q` and remainder `r`: `r` gaps of
`q + 1` and `k - r` of `q`. No arrangement has a smaller spread. What remains to choose is where the larger
gaps go and where the round starts. Both follow from one formula: gaps end at `floor((i*n + c) / k)`. Any `c`
gives gaps that differ by at most one, because the ends are an arithmetic progression rounded down, and the
larger gaps fall evenly among the smaller. `c = n // 2` starts with half a gap, so the join of the round lies
in the middle of a gap and no increase is at the join.

Everything is integer arithmetic: no rounding rule can move a stitch. No I/O.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from itertools import pairwise
from typing import Literal

Start = Literal["whole", "half"]


def gaps(stitches: int, changes: int, *, flat: bool = False, start: Start = "whole") -> tuple[int, ...]:
    """Return the plain stitches between changes, in working order.

    For decreases, pass only the plain stitches, which the decreases do not use.

    Args:
        stitches: Plain stitches to share. Range: 0 and up.
        changes: Increases or decreases among them. Range: 0 and up.
        flat: Worked in rows, so the two ends do not join.
        start: `whole` begins with a full gap, `half` with about half a gap.

    Returns:
        In the round, one gap for each change, the first being the one that ends at the first change (with
        `half` it lies across the join); none without changes. Flat, one more than changes: before the first,
        between, and after the last; with `half` those at the two ends are about half as long as the others.
        Always: the sum is `stitches`; full gaps differ by at most one.

    Raises:
        ValueError: A number is below 0, or `start` is not one of the two words.

    Source: quotient and remainder; larger gaps mixed in evenly as in Bresenham's line.
    """
    _require_counts(stitches, changes)
    if start not in ("whole", "half"):
        raise ValueError(f'start must be "whole" or "half" (got "{start}").')
    if changes == 0:
        return (stitches,) if flat else ()
    if start == "half":
        ends = _half_starts(stitches, changes, flat=flat)
        return gaps_between(ends, stitches, flat=flat)
    over = changes + 1 if flat else changes
    # Rounding the gap ends up puts a larger gap first, which is how patterns are printed.
    return tuple(-(-(i + 1) * stitches // over) + (-i * stitches) // over for i in range(over))


def increase_positions(stitches: int, increases: int, *, flat: bool) -> tuple[int, ...]:
    """Return the number of stitches of the old round before each increase.

    One increase fits into each gap between two neighbouring stitches, as with make-one from the bar. In the
    round there are as many gaps as stitches, including the join, which is used only if no other is left.
    Flat, there is one fewer.

    Args:
        stitches: Stitches of the round before. Range: 0 and up.
        increases: Stitches to add. Range: 0 to `stitches`, flat to `stitches - 1`.
        flat: Worked in rows: half a gap at each end.

    Returns:
        Stitches worked before each increase. Shape: (increases,). Always: rising, each from 1 to `stitches -
        1` (to `stitches` if every gap is taken); gaps between neighbours, in the round also across the join,
        differ by at most one.

    Raises:
        ValueError: A number is below 0, or there are more increases than gaps.

    Source: half-interval start `floor((2i + 1) n / 2k)`, the same as the steps of a rasterised line; flat, it
        is rounded to the nearest, which makes both ends alike.
    """
    _require_counts(stitches, increases)
    room = stitches - 1 if flat else stitches
    if increases > max(room, 0):
        where = f"a row of {stitches} stitches" if flat else f"a round of {stitches} stitches"
        raise ValueError(
            f"{increases} increases do not fit into {where}: "
            f"one goes between two stitches, so at most {max(room, 0)}."
        )
    if flat:
        return _half_starts(stitches, increases, flat=True)
    # With less than half a stitch before it, the first increase would be at the join: take one stitch at
    # least.
    offset = max(stitches // 2, increases)
    return tuple((i * stitches + offset) // increases for i in range(increases))


def decrease_positions(stitches: int, decreases: int, *, uses: int = 2, flat: bool) -> tuple[int, ...]:
    """Return the number of stitches of the old round before each decrease.

    Args:
        stitches: Stitches of the round before. Range: 0 and up.
        decreases: Decreases to work. Range: 0 to `stitches // uses`.
        uses: Stitches each takes up: 2 for k2tog and ssk, 3 for a double decrease. Range: 2 and up.
        flat: Worked in rows: half a gap at each end.

    Returns:
        Stitches worked before each decrease. Shape: (decreases,). Always: each at least `uses` after the one
        before it, the last ends within the round; plain gaps differ by at most one.

    Raises:
        ValueError: A number is out of range, or the decreases need more stitches than there are.

    Source: the half-interval start of `increase_positions` on the stitches left plain, each decrease centred
        where an increase would be.
    """
    _require_counts(stitches, decreases)
    if uses < 2:
        raise ValueError(f"uses must be a whole number from 2 up (got {uses}).")
    if decreases * uses > stitches:
        raise ValueError(
            f"{decreases} decreases of {uses} stitches need {decreases * uses} stitches, "
            f"but there are {stitches}: at most {stitches // uses}."
        )
    leads = _half_starts(stitches - decreases * uses, decreases, flat=flat)
    return tuple(lead + i * uses for i, lead in enumerate(leads))


def gaps_between(
    positions: Sequence[int], stitches: int, *, flat: bool = False, uses: int = 0
) -> tuple[int, ...]:
    """Return the numbers of plain stitches between changes at given places.

    Args:
        positions: Stitches of the old round worked before each change, in order.
        stitches: Stitches of the old round. Range: 0 and up.
        flat: Keep the two ends apart instead of joining them into one gap.
        uses: Stitches of the old round each change takes up; 0 for increases.

    Returns:
        As for `gaps`: in the round one for each change, the gap across the join first; flat, one more than
        changes, the two ends being the first and the last.

    Raises:
        ValueError: Changes are out of order, overlap, or lie outside the round.

    Source: subtraction.
    """
    if not positions:
        return (stitches,) if flat else ()
    tail = stitches - positions[-1] - uses
    inner = tuple(later - earlier - uses for earlier, later in pairwise(positions))
    if positions[0] < 0 or tail < 0 or any(gap < 0 for gap in inner):
        raise ValueError(f"changes at {tuple(positions)} do not fit in order into {stitches} stitches.")
    return (positions[0], *inner, tail) if flat else (tail + positions[0], *inner)


def count_gaps(sizes: Iterable[int]) -> tuple[tuple[int, int], ...]:
    """Count how often each gap occurs, larger gaps first.

    Args:
        sizes: Gaps, in any order.

    Returns:
        Pairs (gap, times), for example ((11, 15), (10, 6)): 15 gaps of 11 and 6 of 10.

    Source: counting.
    """
    return tuple(sorted(Counter(sizes).items(), reverse=True))


def _half_starts(stitches: int, changes: int, *, flat: bool) -> tuple[int, ...]:
    # floor((2i + 1) n / 2k); rounded to the nearest when flat, so that both ends come out alike.
    nudge = changes if flat else 0
    return tuple(((2 * i + 1) * stitches + nudge) // (2 * changes) for i in range(changes))


def _require_counts(stitches: int, changes: int) -> None:
    if stitches < 0 or changes < 0:
        raise ValueError(f"stitches and changes must be whole numbers from 0 up (got {stitches}, {changes}).")
