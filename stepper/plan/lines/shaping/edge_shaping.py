"""Shape one edge of a piece, named by what it is: neck, armhole, front or side. No I/O.

Theory of operation. Which end of the row the neck is at follows from what was shaped before: the rows since
the piece began, or since it was divided, that changed stitches at one end only. A row that names this edge,
or the opposite one, settles it; a row that names neither is taken to mean this edge, and the knitter is told.
If rows point both ways, it cannot be known and the line is refused. Stitches are bound off and cast on in
rows that begin at the edge; other changes are made at the beginning or end of the row, whichever is at the
edge.
"""

from __future__ import annotations

import re

from stepper.craft.stitches import Kind, stitch
from stepper.plan.drafts import DraftRound, Template
from stepper.plan.lines.rounds import work_template
from stepper.plan.lines.shaping.intervals import none_in_size, work_between
from stepper.plan.lines.shaping.schedule import occasions
from stepper.plan.model import flatten
from stepper.plan.state.needles import Needles
from stepper.project.instructions import EdgeShaping, Leg
from stepper.project.stitchwork import Element, Numbers, Until, Work

_NEAR = 6
"""A change within this many stitches of an end of the row is one at that end."""
_INNER = re.compile(r"\b(?:neck\w*|front\s+edges?|v-?neck)\b", re.I)
_OUTER = re.compile(
    r"\b(?:arm-?holes?|underarms?|side\s+(?:edges?|seams?)|sleeves?|shoulders?|raglans?)\b", re.I
)


def work_at_edge(instruction: EdgeShaping, needles: Needles) -> None:
    """Change stitches at one edge, row by row, as often as the line says."""
    if needles.counting.lost or none_in_size(instruction.number, needles):
        return
    side = _side_beginning_at(instruction, needles)
    if not side:
        return
    begins, ends = _rows(instruction, needles)
    first = () if instruction.first is None else (_once(instruction.first),)
    before = len(needles.findings)
    for plain, leg in occasions((*first, *instruction.legs), needles):
        wanted = side if instruction.stitch in ("bo", "co") else leg.side
        if wanted and (needles.side == wanted) != (plain % 2 == 0):
            plain = plain - 1 if plain else 1
        work_between(plain, needles, instruction.place, goes_on=bool(needles.section.pattern))
        work_template(begins if needles.side == side else ends, needles)
        if len(needles.findings) > before:
            return


def _once(row: Numbers) -> Leg:
    return Leg(row, Numbers((1,), row.place), False)


def _rows(instruction: EdgeShaping, needles: Needles) -> tuple[Template, Template]:
    """Return the row that begins at the edge, and the one that ends there."""
    place = instruction.place
    change = Work(instruction.stitch, instruction.number, None, place)
    stay: tuple[Element, ...] = ()
    if instruction.inset:
        stay = (Work("pattern", Numbers((instruction.inset,), place), None, place),)
    times = instruction.number.of(needles.size)
    uses = times * stitch(instruction.stitch).uses + instruction.inset
    rest = Until("pattern", "end", None, None, place)
    up_to = Until("pattern", "last", Numbers((uses,), place), None, place)
    return Template((*stay, change, rest), place), Template((up_to, change, *stay), place)


def _side_beginning_at(instruction: EdgeShaping, needles: Needles) -> str:
    """Return the side of the rows that begin at the edge; empty, and reported, if that cannot be known."""
    edge, place = instruction.edge, instruction.place
    own, across = (_INNER, _OUTER) if edge in ("neck", "front") else (_OUTER, _INNER)
    texts = {
        line.place.line: f"{line.label or ''} {line.text}"
        for section in needles.project.sections
        for line in section.lines
    }

    def words(draft: DraftRound) -> str:
        return "neck" if draft.divide else texts.get(draft.line, "")

    shaped = shaped_at_one_end(needles)
    named = [(begins, draft) for begins, draft in shaped if own.search(words(draft))]
    opposite = [
        (other_side(begins), draft)
        for begins, draft in shaped
        if across.search(words(draft)) and not own.search(words(draft))
    ]
    for found in (named, opposite, shaped):
        sides = {begins for begins, _ in found}
        if len(sides) == 1 and needles.flat:
            side = sides.pop()
            where = "begin" if side == "RS" else "end"
            if found is not named:
                needles.warn(
                    place,
                    f"the {edge} edge is taken as the one where right-side rows {where}, "
                    f"by the shaping of line {found[-1][1].line}.",
                )
            return side
        if sides:
            break
    needles.report(
        place,
        f'"at {edge} edge" does not say at which end of the row, and nothing before it shows which.',
        "Write at the beginning or at the end of RS rows.",
    )
    needles.lose()
    return ""


def shaped_at_one_end(needles: Needles) -> list[tuple[str, DraftRound]]:
    """Return the rows that changed the piece in hand at one end, with the side of rows beginning there."""
    found: list[tuple[str, DraftRound]] = []
    for draft in needles.drafts:
        if not draft.before:
            found = []
            continue
        where = _end_of(draft)
        if draft.divide and draft.flat:
            found = []  # the dividing edge is the inner one, whatever was shaped before
        if where and draft.after:
            begins = draft.side if where == "start" else other_side(draft.side)
            found.append((begins, draft))
    return found


def _end_of(draft: DraftRound) -> str:
    """Return at which end of its row a round changes stitches, `start` or `end`; empty for both."""
    places: set[str] = set()
    at = 0
    for run in flatten(draft.phrase):
        kind = stitch(run.stitch).kind
        changes = kind in (Kind.INCREASE, Kind.DECREASE) or run.stitch in ("bo", "co", "hold")
        if changes:
            start = at <= _NEAR
            end = at + run.uses >= draft.before - _NEAR
            places.add("start" if start and not end else "end" if end and not start else "both")
        at += run.uses
    return places.pop() if len(places) == 1 and "both" not in places else ""


def other_side(side: str) -> str:
    """Return the side of the rows that begin at the other edge: `RS` or `WS`."""
    return "WS" if side == "RS" else "RS"
