"""Where a foot is measured from: the back of its heel, or the tip of its toe. No I/O.

Short rows add nothing to the length at the sides, but the sole runs along their middle. Behind a heel flap
all rows that turn the heel lie under the foot; a heel or a toe of short rows alone is folded in its middle,
so half of them do. Common practice: a foot is measured along the sole, from the back of the heel or from the
tip of the toe.
"""

from __future__ import annotations

from stepper.craft.stitches import TURNS
from stepper.plan.drafts import DraftRound
from stepper.plan.model import flatten
from stepper.plan.state.needles import Needles
from stepper.records import dataclass

_APART = 6
"""Rounds without a turn that part one heel or toe from another."""
_GROWN = 1.3
"""How many times the stitches of its cast-on a foot has that begins with a toe. An assumption."""


@dataclass(frozen=True, slots=True, kw_only=True)
class FootBegin:
    """Where a foot begins."""

    origin: int
    """Index of the draft from whose beginning the rounds count."""
    more_mm: float
    """What short rows add along the sole. Unit: mm."""
    told: str
    """How it was found, for the knitter; empty if nothing is measured otherwise than the words say."""


def heel_begun(needles: Needles, piece: int) -> FootBegin | None:
    """Return the back of the heel that was last turned in a piece; None if none was."""
    rows = _last_turned(needles, piece)
    if not rows or _is_toe(rows, piece):
        return None
    first, last = rows[0], rows[-1]
    if any("pu" in draft.codes for draft in needles.drafts[last + 1 :]):
        told = "measured from the back of the heel, with the rows that turn it (lines"
        return FootBegin(origin=first, more_mm=_along(needles, rows), told=_with_lines(told, rows, needles))
    return _folded("back of the heel", rows, needles)


def foot_begun(needles: Needles, piece: int) -> FootBegin:
    """Return where a foot begins that a line measures without saying from where."""
    heel = heel_begun(needles, piece)
    if heel is not None:
        return heel
    rows = _last_turned(needles, piece)
    if rows:
        return _folded("tip of the toe", rows, needles)
    begun = needles.drafts[piece].after if piece < len(needles.drafts) else 0
    section = max(needles.section.start, piece)
    if begun * _GROWN <= needles.count:
        told = "measured from the tip of the toe, where the piece begins." if section > piece else ""
        return FootBegin(origin=piece, more_mm=0.0, told=told)
    told = "no heel was turned so far: measured from the beginning of this section."
    return FootBegin(origin=section, more_mm=0.0, told=told)


def _folded(where: str, rows: list[int], needles: Needles) -> FootBegin:
    """Return the middle of a heel or toe of short rows alone; a row that works to its end lies behind it."""
    turned = [at for at in rows if needles.drafts[at].codes & TURNS]
    told = f"measured from the {where}, the middle of its {len(turned)} short rows (lines"
    more = _along(needles, rows) - _along(needles, turned) / 2
    return FootBegin(origin=rows[-1] + 1, more_mm=more, told=_with_lines(told, turned or rows, needles))


def _last_turned(needles: Needles, piece: int) -> list[int]:
    """Return the short rows of the last heel or toe that was turned, near each other."""
    rows: list[int] = []
    for at in range(len(needles.drafts) - 1, piece - 1, -1):
        codes = needles.drafts[at].codes
        short = "rest" in codes and not codes & {"hold", "return", "pu", "co"}
        if not (short or codes & TURNS):
            continue
        if rows and rows[-1] - at > _APART:
            break
        rows.append(at)
    rows.reverse()
    while len(rows) > 2 and _leaves_alike(needles.drafts[rows[0]], needles.drafts[rows[2]]):
        rows = rows[1:]  # a heel flap over a part of the stitches, each row of which turns at the same place
    return rows if len(rows) > 1 else []


def _leaves_alike(row: DraftRound, other: DraftRound) -> bool:
    """Return whether two rows of one side leave the same stitches unworked and none fewer behind them."""
    waiting = {
        sum(run.times for run in flatten(each.phrase) if run.stitch == "rest") for each in (row, other)
    }
    return len(waiting) == 1 and row.before == row.after == other.before == other.after


def _is_toe(rows: list[int], piece: int) -> bool:
    """Return whether the rows are those of a toe: they stand where the piece begins."""
    return rows[0] - piece <= _APART


def _along(needles: Needles, rows: list[int]) -> float:
    """Return what short rows add along their middle, beyond what counts as their height. Unit: mm."""
    short = (needles.drafts[at] for at in rows if not needles.drafts[at].height_mm)
    return sum(draft.fabric.gauge.round_mm for draft in short)


def _with_lines(told: str, rows: list[int], needles: Needles) -> str:
    first, last = needles.drafts[rows[0]].line, needles.drafts[rows[-1]].line
    return f"{told.removesuffix('s')} {first})." if first == last else f"{told} {first}-{last})."
