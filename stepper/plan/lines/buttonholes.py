"""Work the row over buttonholes: stitches bound off within the row before, others cast on there. No I/O.

"K to bound-off sts, cast on 2 sts, k to end" and "Knit, casting on 2 sts over each buttonhole" say no number
of stitches: the openings are where the row before bound off; in rows they are met from the other end.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.drafts import Template
from stepper.plan.model import flatten
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.row_elements import MisfitError, fixed_uses
from stepper.project.problems import Span
from stepper.project.stitchwork import Element, Numbers, Several, Until, Work

_HINT = 'Say how many stitches are worked before it: "k8, cast on 2 sts, k to end".'


def over_openings(template: Template, needles: Needles) -> Template:
    """Return a row with numbers in the place of "to bound-off sts" and "over each buttonhole".

    Raises:
        MisfitError: no stitches were bound off within the row before, or not so many openings are ahead.
    """
    if not any(_asks(one, needles) for one in template.elements):
        return template
    elements = tuple(inner for one in template.elements for inner in _unwrapped(one))
    ahead = _openings(needles)
    made: list[Element] = []
    used = 0
    for element in elements:
        if isinstance(element, Several) and element.goal == "openings":
            stretch, cast_on = element.elements
            for place in [place for place in ahead if place >= used] or [_none_there(element.place)]:
                made += [_up_to(stretch, place - used), cast_on]
                used = place
            continue
        if isinstance(element, Until) and _asks(element, needles):
            place = next((place for place in ahead if place > used), -1)
            if place < 0:
                _none_there(element.place)
            made.append(_up_to(element, place - used))
            used = place
            continue
        made.append(element)
        if not (isinstance(element, Until) and element.goal == "end"):
            used += fixed_uses(element, needles.size)
    return replace(template, elements=tuple(made))


def _unwrapped(element: Element) -> tuple[Element, ...]:
    """Return a row's parts, with "knit, casting on … over each" taken apart."""
    return element.elements if isinstance(element, Several) and _wraps_openings(element) else (element,)


def _wraps_openings(element: Several) -> bool:
    """Return whether "casting on … over each" stands within other words of a row."""
    return any(isinstance(inner, Several) and inner.goal == "openings" for inner in element.elements)


def _asks(element: Element, needles: Needles) -> bool:
    """Return whether an element works up to an opening; "the gap" is one where no short row was turned."""
    if isinstance(element, Several):
        return element.goal == "openings" or _wraps_openings(element)
    if not isinstance(element, Until):
        return False
    gap = element.goal == "turn" and not element.name and element.short is None
    return element.goal == "opening" or (gap and not needles.short_rows.turns and bool(_openings(needles)))


def _openings(needles: Needles) -> list[int]:
    """Return where the row before bound off stitches between others, from where the next row begins."""
    last = needles.drafts[-1] if needles.drafts else None
    if last is None or last.after != needles.count or needles.short_rows.gap is not None:
        return []
    places, left = [], 0
    for run in flatten(last.phrase):
        if run.stitch == "co":
            return []
        if run.stitch == "bo" and left > 0 and left not in places:
            places.append(left)
        left += run.leaves
    places = [place for place in places if place < left]
    return sorted(left - place for place in places) if last.flat else places


def _up_to(element: Element, number: int) -> Work:
    assert isinstance(element, Until)
    return Work(element.stitch, Numbers((number,), element.place), element.yarn, element.place)


def _none_there(place: Span) -> int:
    raise MisfitError(place, "no stitches bound off within the row before are ahead of this place.", _HINT)
