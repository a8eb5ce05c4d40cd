"""Shape one edge of a piece, named by what it is: neck, armhole, front or side. No I/O.

Theory of operation. Stitches are bound off and cast on in
rows that begin at the edge; other changes are made at the beginning or end of the row, whichever is at the
edge.
"""

from __future__ import annotations

from stepper.craft.stitches import stitch
from stepper.plan.drafts import Template
from stepper.plan.lines.rounds import work_template
from stepper.plan.lines.shaping.both_sides_shaping import work_at_both
from stepper.plan.lines.shaping.edge_sides import side_beginning_at
from stepper.plan.lines.shaping.intervals import none_in_size, work_between
from stepper.plan.lines.shaping.schedule import occasions, refuse_worked_sides
from stepper.plan.lines.shaping.to_length import ends_at, tell_how_often
from stepper.plan.state.needles import Needles
from stepper.project.instructions import EdgeShaping, Leg
from stepper.project.stitchwork import Element, Numbers, Until, Work


def work_at_edge(instruction: EdgeShaping, needles: Needles) -> None:
    """Change stitches at one edge, row by row, as often as the line says."""
    if needles.counting.lost or none_in_size(instruction.number, needles):
        return
    if refuse_worked_sides(instruction.legs, needles):
        return
    if needles.two_balls:
        work_at_both(instruction, needles)
        return
    side = side_beginning_at(instruction.edge, instruction.place, needles)
    if not side:
        return
    begins, ends = edge_rows(instruction, needles)
    first = () if instruction.first is None else (_once(instruction.first),)
    before, goes_on = len(needles.findings), bool(needles.section.pattern)
    end, worked = ends_at(instruction.legs, needles), 0
    for plain, leg in occasions((*first, *instruction.legs), needles, end=end):
        wanted = side if instruction.stitch in ("bo", "co") else leg.side
        if wanted and (needles.side == wanted) != (plain % 2 == 0):
            plain = plain - 1 if plain else 1
        work_between(plain, needles, instruction.place, goes_on=goes_on)
        work_template(begins if needles.side == side else ends, needles)
        if len(needles.findings) > before:
            return
        worked += 1
    if end is not None and len(needles.findings) == before:
        tell_how_often(instruction.legs, worked, needles)
        work_between(end - len(needles.drafts), needles, instruction.place, goes_on=goes_on)


def _once(row: Numbers) -> Leg:
    return Leg(row, Numbers((1,), row.place), False)


def edge_rows(instruction: EdgeShaping, needles: Needles) -> tuple[Template, Template]:
    """Return the row that begins at the edge it shapes, and the one that ends there."""
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
