"""The edges of a pattern behind a row that shapes there: how the outermost stitches go on. No I/O.

Theory of operation. "Inc 1 st at each end, taking inc sts into patt": the stitches inside the change stay
where they are in the pattern, and it goes on outwards from them. Moss stitch and its like, in which all
stitches are one and the same in other rows, go on to the very edge, whatever a stitch beside the edge was
before: two alike side by side would be none of it. In a rib every stitch is worked as it looks, so that one
between the edge and the change stays what it is, and the new one follows the repeat beside it. Edge
stitches that were none of the pattern before the row stay what they are. Source: common practice ("keep
pattern correct").
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise, takewhile

from stepper.craft.stitches import TURNS
from stepper.plan.drafts import DraftRound
from stepper.plan.fabric.borders import border_of
from stepper.plan.fabric.columns import KNIT, SELVEDGE, StandingColumns, fields, lay_columns
from stepper.plan.fabric.repeats import SEEN, repeat_of
from stepper.plan.state.in_hand import Column
from stepper.plan.stitches.cable_cells import look_of
from stepper.records import dataclass

_OTHER_ENDS = TURNS | {"bo", "co", "pu", "hold", "return", "rest"}
"""What gives a row another edge than it had."""


@dataclass(slots=True, kw_only=True)
class EdgeNotes:
    """What was taken for granted of the edges of a pattern."""

    worked_otherwise: bool = False
    """Whether the row works a stitch of an edge otherwise than the pattern, which goes on over it."""
    alone: bool = False
    """Whether a new stitch has no repeat beside it that it could follow, and stockinette is no part of it."""

    def told(self, line: int) -> str:
        """Return what the knitter is told of the row of a line; empty if nothing was taken for granted."""
        if self.alone:
            return (
                f"beside the new stitches of line {line} no repeat of the pattern stands that they could "
                "follow; they are taken as stockinette."
            )
        if self.worked_otherwise:
            return (
                f"line {line} works the stitches at its edges otherwise than the pattern; in the rows behind "
                "it the pattern goes over them."
            )
        return ""


def settle_edges(
    before: Sequence[Column], after: list[Column], draft: DraftRound, phase: int, notes: EdgeNotes
) -> list[Column]:
    """Return the columns behind a row, settled at its ends and beside markers where it shapes there.

    Args:
        before: Columns before the row, from the first stitch of the right side.
        after: Columns behind it, each carried through it for itself.
        draft: The row.
        phase: Which cell of the columns the row works.
        notes: Takes down what is taken for granted.
    """
    changed = draft.before != draft.after and not draft.codes & _OTHER_ENDS
    if not changed or not after or len(set(before)) < 2 or len(before[0]) != len(after[0]):
        return after
    row, made = lay_columns(draft), []
    for low, high in pairwise(fields(draft)):
        first, last = low == 0, high == len(row)
        part = _settled(after[low:high], row[low:high], before if first else (), phase, notes)
        part = _settled(part[::-1], row[low:high][::-1], before[::-1] if last else (), phase, notes)
        made += part[::-1]
    return made


def _settled(
    columns: list[Column],
    row: Sequence[StandingColumns],
    before: Sequence[Column],
    phase: int,
    notes: EdgeNotes,
) -> list[Column]:
    """Return the columns of a stretch whose first stitch stands at an edge or a marker.

    Args:
        columns: Its columns behind the row, from there inwards.
        row: What the row leaves of them.
        before: Columns before the row, from the same end of it; empty beside a marker.
        phase: Which cell of the columns the row works.
        notes: Takes down what is taken for granted.
    """
    plain = _count(row, _is_plain)
    wide = plain + _count(row[plain:], _is_changed)
    change = row[plain:wide]
    if not change or plain > (SELVEDGE if before else 0) or any(each.made for each in change):
        return columns  # nothing is shaped so near, or it is made purlwise and says itself what it is
    moss = _is_moss(columns[wide:])
    if border_of(before) and not moss:
        return columns  # an edge in garter stitch has been kept by then
    old = len({below for each in row[:wide] for below in each.below})
    own = _own(before, old) if before and plain else 0
    outer = _outwards(columns[wide:], wide)
    grows = all(len(each.below) < 2 for each in change)
    if outer is None or own is None:
        notes.alone |= grows and set(columns[wide : wide + 1]) != {(KNIT,) * len(columns[0])}
        return columns
    own = own if moss else max(own, plain)
    if not grows and (own or not moss):
        return columns  # what is left of a decrease, and what stands beside it, are worked as they look
    if not own:
        met = zip(row[:plain], before[:plain], strict=True)
        notes.worked_otherwise |= any(
            each.cell is not None and each.cell[0] != look_of(column[phase % len(column)][0])
            for each, column in met
        )
    stay = [column for column, each in zip(columns[:wide], row[:wide], strict=True) if each.below][:own]
    return [*stay, *outer[len(stay) :], *columns[wide:]]


def _own(before: Sequence[Column], number: int) -> int | None:
    """Return how many of the first stitches are none of the pattern beside them; None if it has no repeat."""
    outer = _outwards(before[number:], number)
    if outer is None:
        return None
    return max((at + 1 for at in range(number) if outer[at] != before[at]), default=0)


def _count(row: Sequence[StandingColumns], like: Callable[[StandingColumns], bool]) -> int:
    return sum(1 for _ in takewhile(like, row))


def _is_plain(each: StandingColumns) -> bool:
    """Return whether a stitch was worked one into one."""
    return len(each.below) == 1 and each.cell is not None


def _is_changed(each: StandingColumns) -> bool:
    """Return whether a stitch is new, what is left of a decrease, or worked for an increase."""
    return not each.held and each.look is None and (len(each.below) != 1 or each.cell is None)


def _is_moss(columns: Sequence[Column]) -> bool:
    """Return whether columns begin with a repeat that is one column all along, begun in different rows."""
    repeat = repeat_of(columns[:SEEN])
    begun = {repeat[0][at:] + repeat[0][:at] for at in range(len(repeat[0]))} if repeat else set()
    return len(set(repeat)) > 1 and begun.issuperset(repeat)


def _outwards(inner: Sequence[Column], number: int) -> list[Column] | None:
    """Return so many columns that continue a repeat towards its edge; None where there is no repeat."""
    made = list(inner[:SEEN])
    for _ in range(number):
        repeat = repeat_of(made)
        if not repeat:
            return None
        made.insert(0, repeat[-1])
    return made[:number]
