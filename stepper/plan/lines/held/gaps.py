"""Refuse a row that works across a gap: stitches bound off in the middle of the row before. No I/O.

What stands on both sides of a neck is two pieces from there on. A row over both of them would close the gap,
which no page means: a buttonhole is cast on again, a neck is worked one side after the other.
"""

from __future__ import annotations

from collections.abc import Iterable

from stepper.craft.stitches import TURNS
from stepper.plan.drafts import DraftRound
from stepper.plan.model import Item, flatten, runs_written
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.row_elements import is_unnamed
from stepper.project.problems import Span

_SMALLEST = 2
"""Fewer stitches bound off leave a hole that the next row may well pass."""
_ENDS_THERE = TURNS | {"co", "pu", "return", "rest", "hold"}
"""What keeps a row from crossing a gap as it is: it is filled, or the row does not go on beyond it."""


def gap_left(needles: Needles) -> int:
    """Return how many stitches the row before has bound off in its middle; 0 for none. Unit: stitches."""
    last = needles.drafts[-1] if needles.drafts else None
    if last is None or last.after != needles.count or needles.two_balls:
        return 0
    return _bound_off_within(last)


def refuse_across_gap(items: Iterable[Item], after: int, place: Span, needles: Needles) -> None:
    """Report a row that works both sides of a gap which the row before has left.

    Args:
        items: The row.
        after: Stitches it leaves.
        place: Where it is written.
        needles: The knitting before it.
    """
    gap = gap_left(needles)
    if not gap or after > needles.count:
        return
    runs = list(runs_written(tuple(items)))
    if not after and [run.stitch for run in runs] == ["hold"]:
        _refuse_hold_over_gap(runs[0].yarn, gap, place, needles)
    if _ENDS_THERE & {run.stitch for run in runs}:
        return
    needles.report(
        place,
        f"the row before has bound off {gap} stitches in its middle, and this one works across the gap.",
        'Put one side on hold first ("K20, turn, leave rem sts on a holder"), and work each by itself; or '
        "cast on over the gap.",
    )


def _refuse_hold_over_gap(name: str, gap: int, place: Span, needles: Needles) -> None:
    """Report that all stitches go on hold for one part of a garment, where a gap has parted them in two.

    "Place front sts on hold" between front and back means one of the two, and does not say which; only the
    section's own stitches may lie on one holder with a gap between them, as two shoulders do.
    """
    section = needles.section.name.lower()
    own = " and " not in section and name.lower() in section  # "divide for front and back" is neither
    if not is_unnamed(name) and not own:
        needles.report(
            place,
            f"the row before has bound off {gap} stitches between two pieces, and all of them go on hold for "
            f"{name} here.",
            f'Say which: "Place {name} sts on hold and continue on the other sts" if the yarn hangs at the '
            'others, else how many: "Place first 40 sts on hold".',
        )


def gap_in(needles: Needles) -> bool:
    """Return whether the round just worked has left a gap within what is on the needle."""
    return _parted_by(needles) is not None


def pieces_at_yarn(needles: Needles) -> list[int]:
    """Return the pieces that gaps have parted, the one at which the yarn hangs first.

    In the round the yarn hangs at the end, and the pieces at both ends are one unless the round began by
    binding off.

    Returns:
        The pieces; none if no gap parts what is on the needle.
    """
    last = _parted_by(needles)
    if last is None or last.flat:
        return pieces_ahead(needles)
    first = next((run for run in flatten(last.phrase) if run.uses or run.leaves), None)
    return _pieces_of(last) if first is not None and first.stitch == "bo" and first.times >= _SMALLEST else []


def pieces_ahead(needles: Needles) -> list[int]:
    """Return the stitches between the gaps that the row before has left, as the next row comes to them.

    Returns:
        The pieces; none if no gap parts what is on the needle.
    """
    last = _parted_by(needles)
    return _pieces_of(last) if last is not None and last.flat else []


def _parted_by(needles: Needles) -> DraftRound | None:
    """Return the round just worked if it bound off within what is still on the needle, else None."""
    last = needles.drafts[-1] if needles.drafts else None
    return last if last is not None and last.after == needles.count and _bound_off_within(last) else None


def _pieces_of(draft: DraftRound) -> list[int]:
    """Return the stitches between the gaps of a row, the piece worked last first."""
    pieces = [0]
    for run in flatten(draft.phrase):
        if run.stitch == "bo" and run.times >= _SMALLEST and pieces[-1]:
            pieces.append(0)
        pieces[-1] += run.leaves
    return [piece for piece in reversed(pieces) if piece]


def _bound_off_within(draft: DraftRound) -> int:
    """Return how many stitches a row bound off between others; 0 for none, or where it cast on as well."""
    if "bo" not in draft.codes or "co" in draft.codes:
        return 0
    runs = [run for run in flatten(draft.phrase) if run.uses or run.leaves]
    gaps = [at for at, run in enumerate(runs) if run.stitch == "bo" and run.times >= _SMALLEST]
    left = [at for at, run in enumerate(runs) if run.leaves]
    return next((runs[at].times for at in gaps if left and left[0] < at < left[-1]), 0)
