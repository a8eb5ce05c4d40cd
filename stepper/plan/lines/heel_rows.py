"""Say how far "across" reaches behind short rows in the round: the row of a heel, or the whole round. No I/O.

"Knit across, picking up wraps" ends, where rows follow, with the last stitch that was wrapped: the heel is
worked on, and the other stitches of the ring wait. Where a round follows, it ends with the round. Where
neither shows, nobody can tell, and half a round too much is knitted in either reading.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.drafts import Template
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.row_elements import MisfitError
from stepper.plan.stitches.row_facing import face
from stepper.project.stitchwork import Element, Numbers, TurnHere, Until, Work

_SAY = 'Write how far: "k to end of rnd", or the number of stitches and "turn".'


def as_far_as_meant(template: Template, needles: Needles) -> Template:
    """Return a row with "across" put as far as it reaches.

    Raises:
        MisfitError: nobody can tell.
    """
    last = template.elements[-1] if template.elements else None
    across = isinstance(last, Until) and last.goal == "end" and last.name == "across"
    gap = needles.short_rows.gap
    if not across or needles.flat or gap is None or needles.line.around:
        return template
    assert isinstance(last, Until)
    wrong = needles.side == "WS"
    side, turns = needles.side if wrong else "RS", needles.short_rows.turns
    met = face(count=needles.count, flat=False, side=side, gap=gap, turns=turns)
    ahead = [turn for turn in met.turns if turn <= met.end]
    if not ahead:
        return template
    if not needles.line.turns_back or len(template.elements) > 1:
        told = '"across" behind short rows may end with the heel or with the round.'
        raise MisfitError(last.place, told, _SAY)
    number = ahead[-1] + (1 if needles.short_rows.method == "wrap" else 0)
    needles.warn(
        last.place,
        f'"across" is read as {number} stitches, up to the last that was turned at, from where the next line '
        "comes back.",
    )
    row: tuple[Element, ...] = (
        Work(last.stitch, Numbers((number,), last.place), last.yarn, last.place),
        TurnHere("plain", last.place),
    )
    return replace(template, elements=row)
