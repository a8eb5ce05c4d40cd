"""Rounds that a page explains before it casts on, and works only where it refers to them. No I/O.

"RAGLAN: Increase 1 stitch on each side of each marker as follows: …" among the explanations is no row: the
yoke says later when it is worked, and so does a sleeve with another. Such a round is kept for the whole
garment. Written for a marker, it is worked around the beginning of the round where that is the only place
marked: the stitches behind the marker then begin it. Source: common practice.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from stepper.plan.drafts import Template
from stepper.plan.lines.named_rounds import is_named_round
from stepper.plan.state.needles import Needles
from stepper.project.instructions import AtIntervals, Labelled, Line, Together
from stepper.project.stitchwork import Element, Mark, Numbers, Several, Until

TIP = " tip round"
"""Ends the name of a round that a page explains under "DECREASE TIP" and the like."""

_LETTERS = 3
"""A longer word in capitals is the name of an explanation, and no abbreviation as in "DEC round"."""


def is_technique(line: Line, needles: Needles) -> bool:
    """Return whether a line only explains a round that others work by its name.

    It names a round, and nothing is on the needles to work it on; and its name stands in capitals, or a
    line of the garment calls it. What is called a tip is one wherever it stands.
    """
    if not is_named_round(line) or needles.counting.lost:
        return False
    label = line.label or ""
    if label.lower().endswith(TIP):
        return True
    shouted = label.rsplit(" ", 1)[0].isupper() and len(label.split()[0]) > _LETTERS
    return needles.count == 0 and (shouted or label.lower() in _called(needles))


def _called(needles: Needles) -> set[str]:
    """Collect the names of the rounds that the lines of the garment call."""
    called: set[str] = set()
    for one in (one for line in needles.project.lines for one in line.sentences):
        for part in one.parts if isinstance(one, Together) else (one,):
            if isinstance(part, AtIntervals | Labelled):
                called.add(part.label)
    return called


def keep_technique(line: Line, template: Template, needles: Needles) -> None:
    """Keep a round under its name, for all sections."""
    name = (line.label or "").lower()
    needles.techniques[name] = needles.section.named[name] = template
    if name not in _called(needles):
        needles.warn(line.place, f"the {name} is not worked here, and no line calls it by that name.")


def as_placed(name: str, template: Template, needles: Needles) -> Template:
    """Return the round of a name as worked here: around the beginning of the round if no marker is in it."""
    if needles.techniques.get(name) != template or needles.flat or needles.markers:
        return template
    if len(template.elements) != 2 or not isinstance(group := template.elements[0], Several):
        return template
    first, *others = group.elements
    marks = [at for at, one in enumerate(others) if isinstance(one, Mark)]
    if group.goal != "markers" or not isinstance(first, Until) or first.goal != "marker" or len(marks) != 1:
        return template
    return _around_beginning(template, first, others[: marks[0]], others[marks[0] + 1 :])


def beside_marker(template: Template, needles: Needles) -> Template | None:
    """Return a change written for each side of "the marker" as worked here; None, and reported, if unclear.

    In the round the one marker is that of the beginning, and the stitches behind it begin the round; where
    others lie in the round, nobody can tell which is meant.
    """
    first, *others = template.elements
    if not isinstance(first, Until) or needles.counting.lost:
        return template
    if len(needles.markers) == (1 if needles.flat else 0):
        at = next(at for at, one in enumerate(others) if isinstance(one, Mark))
        behind = tuple(others[at + 1 : -1])
        return template if needles.flat else _around_beginning(template, first, others[:at], behind)
    told = "which marker is meant cannot be told." if needles.markers else "no marker is in the row."
    needles.report(template.place, told, "Write the round out, marker by marker.")
    return None


def _around_beginning(
    template: Template, first: Until, before: Sequence[Element], behind: Sequence[Element]
) -> Template:
    """Return a round written for a marker as worked around the beginning of the round."""
    short = first.short if first.short is not None else Numbers((0,), first.place)
    return replace(template, elements=(*behind, replace(first, goal="last", short=short), *before))
