"""Say how far "across" reaches behind short rows in the round: the row of a heel, or the whole round. No I/O.

"Knit across, picking up wraps" ends, where rows follow, with the last stitch that was wrapped: the heel is
worked on, and the other stitches of the ring wait. Where a round follows, it ends with the round. Where
neither shows, nobody can tell, and half a round too much is knitted in either reading.

"Sl 1, k to end" behind "K32, turn" and "Sl 1, p to end" has the same two ends: nobody slips the first stitch
of a round, but the instep is not on hold either.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.drafts import Template
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.row_elements import MisfitError
from stepper.project.stitchwork import Element, Numbers, TurnHere, Until, Work

_SAY = 'Write how far: "k to end of rnd", or the number of stitches and "turn".'
_HOLD = (
    'Put the other stitches on hold before the rows, as "K32, turn, leave rem 32 sts on a holder", '
    'or write "Rnd" in front of the line.'
)


def as_far_as_meant(template: Template, needles: Needles) -> Template:
    """Return a row with "across" put as far as it reaches.

    Raises:
        MisfitError: nobody can tell.
    """
    _refuse_open_end(template, needles)
    if needles.flat or needles.short_rows.gap is None or needles.line.around:
        return template
    *before, last = _worked(template) or (None,)
    if not isinstance(last, Until) or last.goal != "end" or last.name != "across":
        return template
    met = needles.facing
    ahead = [turn for turn in met.turns if turn <= met.end]
    if not ahead:
        return template
    if not needles.line.turns_back or before:
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


def _worked(template: Template) -> tuple[Element, ...]:
    """Return what a row works, without a turn at its end."""
    ends = bool(template.elements) and isinstance(template.elements[-1], TurnHere)
    return template.elements[:-1] if ends else template.elements


def _refuse_open_end(template: Template, needles: Needles) -> None:
    """Refuse "k to end" in a row from the beginning of the round, whose last short row was turned ahead.

    Raises:
        MisfitError: the row may end with the heel or with the round; or it is one that came back from a turn
            when it was first worked, and would now be purled around.
    """
    short_rows, line = needles.short_rows, needles.line
    if needles.flat or needles.side != "RS" or short_rows.gap not in (None, 0):
        return
    if short_rows.gap is None and id(template) in short_rows.back:
        told = "this row was worked back from a turn before, and no turn comes before it here."
        raise MisfitError(template.place, told, _HOLD)
    if not short_rows.turns:
        return
    *before, last = _worked(template) or (None,)
    if not isinstance(last, Until) or last.goal != "end" or last.name or line.around:
        return
    slips = all(isinstance(one, Work) and one.stitch.startswith("sl") for one in before)
    if not slips or not (before or (line.rows and line.turns_back)):
        return
    at = max(short_rows.turns)
    told = f'"to end" may be the {at} stitches that were turned at, or the whole round of {needles.count}.'
    raise MisfitError(last.place, told, _HOLD)
