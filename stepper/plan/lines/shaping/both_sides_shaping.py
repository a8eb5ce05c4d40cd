"""Shape two sides of a neck that are worked at once: each neck edge, each armhole. No I/O.

Common practice. Stitches are bound off at the beginning of a side, so those of both sides take two rows; they
are decreased at both neck edges of one row.
"""

from __future__ import annotations

from stepper.craft.stitches import stitch
from stepper.plan.drafts import Template
from stepper.plan.lines.held.gaps import pieces_ahead
from stepper.plan.lines.rounds import work_template
from stepper.plan.lines.shaping.intervals import work_between
from stepper.plan.lines.shaping.schedule import occasions, with_first
from stepper.plan.model import Item, Run
from stepper.plan.state.needles import Needles
from stepper.project.instructions import BothSides, EdgeShaping
from stepper.project.stitchwork import Element, Mark, Numbers, Until, Work


def over_both_sides(code: str, needles: Needles) -> tuple[Item, ...]:
    """Return a row that takes all stitches off in one way; of two sides worked at once, each by its ball."""
    if not needles.two_balls:
        return (Run(code, needles.count, needles.yarn),)
    (first,) = needles.facing.markers
    rest = needles.count - first
    return (Run(code, first, needles.yarn), Run("other ball", 1, needles.yarn), Run(code, rest, needles.yarn))


def part_sides(instruction: BothSides, needles: Needles) -> None:
    """Go on with both sides of a neck at once: with those parted already, or from a gap in the row before."""
    if needles.two_balls or needles.counting.lost:
        return
    pieces = pieces_ahead(needles)
    if len(pieces) != 2 or needles.markers or not needles.flat:
        told = "two sides are worked at once, and nothing before this line parts the stitches in two."
        needles.miss(instruction.place, told, 'Write the row: "K20, join 2nd ball, bind off 10, k to end."')
        return
    needles.markers, needles.sides_parted = (pieces[needles.side == "WS"],), True
    needles.remarks.append("work both sides at once, with a second ball of yarn for the other side")


def work_at_both(instruction: EdgeShaping, needles: Needles) -> None:
    """Change stitches at both neck edges, or bind them off at both armholes, as often as the line says."""
    off, place = instruction.stitch == "bo", instruction.place
    inner = instruction.edge in ("neck", "front")
    if instruction.as_before or instruction.stitch == "co" or not (inner or off):
        told = f"two sides are worked at once here, and this is not read of both {instruction.edge} edges."
        needles.report(place, told, "Write the rows out, or say at each end of which rows.")
        needles.lose()
        return
    if any(leg.upto is not None or leg.until is not None or (off and leg.side) for leg in instruction.legs):
        told = "two sides are worked at once here: say how often both of them are shaped."
        needles.report(place, told, "Write every how many rows, and how often.")
        needles.lose()
        return
    row = Template(_elements(instruction, needles, inner=inner), place)
    before, goes_on = len(needles.findings), bool(needles.section.pattern)
    for plain, leg in occasions(with_first(instruction, needles), needles):
        if leg.side and (needles.side == leg.side) != (plain % 2 == 0):
            plain = plain - 1 if plain else 1
        work_between(max(0, plain - off), needles, place, goes_on=goes_on)
        for _ in range(1 + off):
            work_template(row, needles)
        if len(needles.findings) > before:
            return


def _elements(instruction: EdgeShaping, needles: Needles, *, inner: bool) -> tuple[Element, ...]:
    """Return the row that shapes: of stitches bound off, the one side whose row begins at the edge."""
    place = instruction.place
    change = Work(instruction.stitch, instruction.number, None, place)
    rest, ball = Until("pattern", "end", None, None, place), Mark("other ball", "", place)
    if instruction.stitch == "bo":
        to_neck = (Until("pattern", "marker", None, None, place, "neck"), ball) if inner else ()
        return (*to_neck, change, rest)
    inset = instruction.inset
    stay = (Work("pattern", Numbers((inset,), place), None, place),) if inset else ()
    uses = instruction.number.of(needles.size) * stitch(instruction.stitch).uses + inset
    up_to = Until("pattern", "marker", Numbers((uses,), place), None, place, "neck")
    return (up_to, change, *stay, ball, *stay, change, rest)
