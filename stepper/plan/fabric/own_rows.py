"""Say which row of a pattern in the page's own words is due beside what is shaped. No I/O."""

from __future__ import annotations

from collections.abc import Iterable

from stepper.plan.drafts import Template, own_words_in
from stepper.plan.fabric.established import row_due, row_due_is_known
from stepper.plan.fabric.own_fabric import hers, in_own_words
from stepper.plan.model import Item, runs_written
from stepper.plan.state.in_hand import Established
from stepper.plan.state.needles import Needles
from stepper.project.pattern_heads import key_of
from stepper.project.problems import Span
from stepper.regex import regex

_HEAD = regex(r"^[^:]{1,60}:\s*(?=\S)")


def words_due(items: Iterable[Item], needles: Needles) -> str:
    """Return the words for the stitches of a row that are worked in a pattern in own words; empty for none.

    Args:
        items: The row, about to be worked.
        needles: The knitting before it.
    """
    known = needles.established
    if not known.hers or all(run.stitch != "own" for run in runs_written(tuple(items))):
        return ""
    at = row_due(needles)
    row = known.cycle[at]
    said = row.own.text if row.own is not None else _printed(row, needles)
    number = _number_of(known, at, needles)
    _tell(known, needles)
    return f"row {number}: {said}" if number and not said.startswith("row ") else said


def begins_in_own_words(manner: str, place: Span, needles: Needles) -> bool:
    """Take up a pattern in own words that a line calls for its shaping, or go on with it where it stands.

    Args:
        manner: How the line calls it, as in `WorkRounds`.
        place: Where.
        needles: The knitting in hand.

    Returns:
        Whether it is such a pattern, and may begin with the row that comes next.
    """
    key, known = key_of(manner.removeprefix("named ")), needles.established
    if known.hers and key_of(known.name.removeprefix("named ")) == key and row_due_is_known(needles):
        return True
    cycle, here = needles.patterns.get(key, ()), len(needles.drafts)
    line = own_words_in(cycle)
    begun = in_own_words(cycle, line, here, []) if line else None
    if begun is None or not begun.hers:
        return False
    first = cycle[0].side
    if first and needles.flat and first != needles.side:
        needles.report(place, f"a {needles.side} row comes next, and row 1 of the pattern is none.")
        return True
    begun.columns, begun.name = hers(needles.count), key_of(manner)
    needles.section.pattern, needles.established = cycle, begun
    return True


def _tell(known: Established, needles: Needles) -> None:
    """Tell once that a fabric in own words goes on beside what is shaped."""
    if known.hers_told or needles.line.place is None:
        return
    known.hers_told = True
    how = "as it is printed" if known.lace else "in your own words"
    needles.warn(
        needles.line.place,
        f"the pattern of line {known.lace or known.own} goes on here {how}, row by row: beside what is "
        "shaped the stitches are yours, and keep their number.",
    )


def _printed(row: Template, needles: Needles) -> str:
    """Return a row that is read as it is printed, without its head."""
    printed = (line.text for line in needles.project.lines if line.place.line == row.place.line)
    text = next(printed, "as the pattern has it")
    said = _HEAD.sub("", text).strip().rstrip(".")
    return said[:1].lower() + said[1:]


def _number_of(known: Established, at: int, needles: Needles) -> int:
    """Return the number of a row in the pattern as the page counts; 0 if it has no numbers."""
    rows = needles.patterns.get(key_of(known.name.removeprefix("named ")), ())
    for first in range(len(rows)):
        if rows[first:] + rows[:first] == known.cycle:
            return (first + at) % len(rows) + 1
    numbered = needles.section.numbered
    for first in sorted(numbered):
        if all(numbered.get(first + place) == row for place, row in enumerate(known.cycle)):
            return first + at
    return 0
