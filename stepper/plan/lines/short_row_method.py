"""How short rows are turned: as the pattern says, or by an assumed method, which is told once. No I/O.

German short rows are assumed if a pattern only says "turn": every method reaches the same stitches, and a
double stitch needs no mention in the row that closes the gap. "Wrap and turn" anywhere in a section settles
it.
"""

from __future__ import annotations

import re
from functools import lru_cache

from stepper.plan.drafts import Template
from stepper.plan.model import flatten
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.phrase import WorkedPhrase
from stepper.project.instructions import Line, Phrase, TurnMethod
from stepper.project.stitchwork import Element, TurnHere, Work, every_element
from stepper.regex import regex

_TURNING = (
    "nothing says how short rows are turned: taken as German short rows, with a double stitch at every turn. "
    'Write "wrap and turn" in the line, or "short_rows: wrap" (or "german", or "plain") in the section.'
)


_LOOP = (
    "a yarn over behind a turn may be the loop of a yarn-over short row, which is closed with the next "
    "stitch, or a stitch of its own."
)
_SAY_LOOP = (
    'For the loop write the turn alone, with "short_rows: german" in the section: a double stitch stands in '
    'its place. For a stitch of its own write "short_rows: plain".'
)
"""Source: common practice; both are printed so."""


def begins_with_stitch(template: Template, needles: Needles) -> bool:
    """Return whether a row behind a turn begins with a stitch; report one that may begin with its loop."""
    rows, first = needles.short_rows, next(iter(template.elements), None)
    if rows.gap is None or rows.slipped or rows.method not in ("", "german"):
        return True
    if not isinstance(first, Work) or first.stitch != "yo":
        return True
    needles.report(first.place, _LOOP, _SAY_LOOP)
    needles.lose()
    return False


def tell_turning(template: Template, worked: WorkedPhrase, needles: Needles) -> None:
    """Adopt the method of turning that a line names; if none does, say once which was assumed."""
    rows, said = needles.short_rows, turning_of(template.elements)
    if said:
        rows.method, rows.turned_at = said, None
    elif worked.turned and not rows.method and not rows.slipped:
        rows.turned_at = rows.turned_at or template.place
    if rows.turned_at is None:
        return  # no turn is left to tell of
    first = next((run for run in flatten(worked.items) if run.uses and run.stitch != "rest"), None)
    doubled = first is not None and first.stitch == "ds"
    if doubled or (worked.left.passed and not rows.slipped):
        _tell_assumed(needles)


def tell_open_turn(needles: Needles) -> None:
    """Say which method was assumed for a turn that no later row worked across."""
    if needles.short_rows.gap is not None and not needles.short_rows.slipped:
        _tell_assumed(needles)


def _tell_assumed(needles: Needles) -> None:
    """Say, once, which method is taken where a turn does not say it."""
    rows = needles.short_rows
    if rows.turned_at is not None and not rows.told and not rows.method:
        rows.told = True
        needles.warn(rows.turned_at, _TURNING)


def count_unwrapped(needles: Needles) -> int | None:
    """Count the stitches between the last wrap and the nearest one behind it, around a ring in the round.

    The stitch that is turned at becomes a double stitch, and lies within the short row; one that is wrapped
    lies beyond it.

    Returns:
        The stitches; None unless short rows that are wrapped and turned, or turned with double stitches, end
        at both ends of them.
    """
    rows = needles.short_rows
    if rows.gap is None or rows.method not in ("wrap", "german"):
        return None
    doubled = 2 if rows.method == "german" else 0
    behind = [rows.gap - turn if needles.side == "WS" else turn - rows.gap for turn in rows.turns]
    apart = behind if needles.flat else [stitches % needles.count for stitches in behind]
    return min((stitches - doubled for stitches in apart if stitches > doubled), default=None)


def turning_of(elements: tuple[Element, ...]) -> str:
    """Return how a line says that it turns: `wrap` or `german`; empty where it does not say."""
    for one in every_element(elements):
        if isinstance(one, TurnHere) and one.method:
            return one.method
    return ""


def turned_in(lines: tuple[Line, ...]) -> str:
    """Return how the first line of a section that says so turns; empty if none says, or if one sets it."""
    for line in lines:
        for sentence in line.sentences:
            if isinstance(sentence, TurnMethod):
                return ""
            said = turning_of(sentence.elements) if isinstance(sentence, Phrase) else ""
            if said:
                return said
    return "german" if any(_speaks_of_double(line.text) for line in lines) else ""


@lru_cache(maxsize=4096)  # every line is asked in every size
def _speaks_of_double(text: str) -> bool:
    """Return whether a line names the stitch that only German short rows have."""
    return _DOUBLE.search(text) is not None


_DOUBLE = regex(r"\b(?:m?ds|double\s+st(?:itche?)?s?)\b", re.I)
"""The stitch that only German short rows have."""
