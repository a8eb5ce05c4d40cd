"""Tell of rows that come on another side than their stitches, or their first time, show. No I/O.

A line that names no side is worked on the one that comes next. Where a repeat before it ended a row early, or
a row was counted that the page does not count, all that follows is a row off: its knit rows are ridges on the
right side. Stitches alone show it, since stockinette is shaped in knit stitches on its right side. Source:
common practice.
"""

from __future__ import annotations

import re

from stepper.craft.stitches import Kind, stitch
from stepper.plan.drafts import Template, without_places
from stepper.plan.fabric.established import ground
from stepper.plan.model import other_side
from stepper.plan.state.needles import Needles
from stepper.project.instructions import BindOff, Line
from stepper.project.problems import Span
from stepper.project.stitchwork import Element, Hold, TurnHere, Until, Work, every_element
from stepper.regex import regex


def tell_wrong_side(template: Template, needles: Needles) -> None:
    """Tell, once in a part, of a shaping or parting row that is knit on the wrong side of stockinette."""
    if not needles.flat or needles.counting.lost or template.side or needles.line.side or needles.free:
        return
    if needles.section.ridge_told or needles.short_rows.gap is not None or needles.short_rows.turns:
        return
    found = _stitches_of(template.elements)
    other = "k" if needles.side == "WS" else "p"
    parts = any(isinstance(element, Hold) for element in every_element(template.elements))
    shaped = parts or "bo" in found[1:] or any(stitch(code).shapes for code in found if code != "turn")
    if (
        not shaped
        or {code[0] for code in found if _is_plain(code)} != {other}
        or ("turn" in found and not parts)
    ):
        return
    if ground(needles) != "plain":
        return
    needles.section.ridge_told = True
    done, side = ("knit", "wrong") if other == "k" else ("purled", "right")
    needles.warn(
        template.place,
        f"the row is {done}, and by the rows before it comes on the {side} side of stockinette; a row may be "
        'missing before it, or one too many. Write its side, as "Next row (RS): …".',
    )


_SAID = regex(r"\(?\s*(?:(?:on|from)\s+(?:the\s+)?)?(?P<side>rs|ws|right\s+side|wrong\s+side)\s*\)?", re.I)
"""A side said beside what is worked: "Knit 4 rows. Bind off on WS."."""


def tell_side_bound_off(line: Line, needles: Needles) -> None:
    """Tell that a line binds off on the other side than it says: behind rows of its own."""
    last = needles.drafts[-1] if needles.drafts else None
    ends = line.sentences[-1] if line.sentences else None
    if line.side or not isinstance(ends, BindOff) or last is None or not last.flat or needles.counting.lost:
        return
    found = (_SAID.fullmatch(words.strip(" .")) for words in line.said)
    sides = [said["side"][0].upper() + "S" for said in found if said is not None]
    if sides and last.side != sides[-1]:
        told = f"it is to be on the {sides[-1]}, and by the rows so far it comes on the {last.side}"
        needles.warn(ends.place, f"{told}. Work a row more or less before it, or leave it so.")


def tell_other_side(cycle: tuple[Template, ...], place: Span, needles: Needles, *, begin: int) -> None:
    """Tell that rows worked again come on the other side than at first: an odd number, or one too many.

    A page means it or has lost a row; the stitches are the same, and the fabric is not. Rows that are all
    alike are the same fabric on both sides, or are meant so.

    Args:
        cycle: The rows.
        place: The line that repeats them.
        needles: The knitting in hand, after them.
        begin: Index of the first draft of the repeat.
    """
    if not needles.flat or needles.counting.lost or len({without_places(each) for each in cycle}) == 1:
        return
    moved = next((each for each in dict.fromkeys(cycle) if _changes_side(each, needles, begin)), None)
    if moved is None:
        return
    side = next(each.side for each in needles.drafts[needles.section.start : begin] if each.template == moved)
    now = "each time on the other side in turn" if len(cycle) % 2 else f"on the {other_side(side)} now"
    which = "the first" if moved == cycle[0] else "one"
    needles.warn(
        place,
        f"{which} of these rows was worked on the {side}, and comes {now}. If that is not meant, a row "
        "is missing.",
    )


def _changes_side(row: Template, needles: Needles, begin: int) -> bool:
    """Return whether a row was worked on one side alone before a draft, and is on the other from there on."""
    before = [each for each in needles.drafts[needles.section.start : begin] if each.template == row]
    sides = {each.side for each in before}
    if len(sides) != 1 or not all(each.flat for each in before):
        return False  # a line for rows 1 and 4 has no side of its own
    return not {each.side for each in needles.drafts[begin:] if each.template == row} <= sides


def _is_plain(code: str) -> bool:
    return stitch(code).kind is Kind.PLAIN


def _stitches_of(elements: tuple[Element, ...]) -> list[str]:
    """Return the stitches of a row as written, with `turn` where it turns before its end."""
    found: list[str] = []
    for element in every_element(elements):
        if isinstance(element, TurnHere):
            found.append("turn")
        elif isinstance(element, Work | Until) and element.stitch != "pattern":
            found.append(element.stitch)
    return found
