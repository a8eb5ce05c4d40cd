"""Tell of a row shaped in knit stitches that comes on the wrong side of stockinette. No I/O.

A line that names no side is worked on the one that comes next. Where a repeat before it ended a row early, or
a row was counted that the page does not count, all that follows is a row off: its knit rows are ridges on the
right side. Stitches alone show it, since stockinette is shaped in knit stitches on its right side. Source:
common practice.
"""

from __future__ import annotations

from stepper.craft.stitches import Kind, stitch
from stepper.plan.drafts import Template
from stepper.plan.fabric.established import ground
from stepper.plan.state.needles import Needles
from stepper.project.stitchwork import Element, Several, TurnHere, Until, Work


def tell_wrong_side(template: Template, needles: Needles) -> None:
    """Tell, once in a part, of a shaped row knit on the wrong side of stockinette, or purled on the right."""
    if not needles.flat or needles.counting.lost or template.side or needles.line.side or needles.free:
        return
    if needles.section.ridge_told or needles.short_rows.gap is not None or needles.short_rows.turns:
        return
    found = _stitches_of(template.elements)
    other = "k" if needles.side == "WS" else "p"
    shaped = any(stitch(code).kind in (Kind.INCREASE, Kind.DECREASE) for code in found)
    if not shaped or {code[0] for code in found if _is_plain(code)} != {other} or "turn" in found:
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


def _is_plain(code: str) -> bool:
    return stitch(code).kind is Kind.PLAIN


def _stitches_of(elements: tuple[Element, ...]) -> list[str]:
    """Return the stitches of a row as written, with `turn` where it turns before its end."""
    found: list[str] = []
    for element in elements:
        if isinstance(element, Several):
            found += _stitches_of(element.elements)
        elif isinstance(element, TurnHere):
            found.append("turn")
        elif isinstance(element, Work | Until) and element.stitch != "pattern":
            found.append(element.stitch)
    return found
