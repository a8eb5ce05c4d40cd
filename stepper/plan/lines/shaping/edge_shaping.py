"""Shape one edge of a piece, named by what it is: neck, armhole, front or side. No I/O.

Theory of operation. Stitches are bound off and cast on in
rows that begin at the edge; other changes are made at the beginning or end of the row, whichever is at the
edge.
"""

from __future__ import annotations

from stepper.craft.stitches import Kind, stitch
from stepper.plan.drafts import Template
from stepper.plan.lines.rounds import work_template
from stepper.plan.lines.shaping.both_sides_shaping import work_at_both
from stepper.plan.lines.shaping.edge_sides import side_beginning_at
from stepper.plan.lines.shaping.intervals import none_in_size, work_between
from stepper.plan.lines.shaping.schedule import occasions, refuse_worked_sides, with_first
from stepper.plan.lines.shaping.to_length import ends_at, tell_how_often
from stepper.plan.model import other_side
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.row_elements import fixed_uses
from stepper.project.instructions import EdgeShaping
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
    if refuse_other_side(instruction, side, needles):
        needles.lose()
        return
    begins, ends = edge_rows(instruction, side, needles)
    before, goes_on = len(needles.findings), bool(needles.section.pattern)
    end, worked = ends_at(instruction.legs, needles), 0
    for plain, leg in occasions(with_first(instruction, needles), needles, end=end):
        wanted = side if instruction.stitch in ("bo", "co") else leg.side
        if wanted and (needles.side == wanted) != (plain % 2 == 0):
            if instruction.first is not None and not worked:
                told = f"the row told here ends at the {instruction.edge} edge"
                needles.warn(instruction.place, f"{told}; it is shaped where a row begins there.")
            plain = plain - 1 if plain else 1
        work_between(plain, needles, instruction.place, goes_on=goes_on)
        row = begins if needles.side == side else ends
        if row is None:
            refuse_as_before(instruction, needles)
            return
        work_template(row, needles)
        if len(needles.findings) > before:
            return
        worked += 1
    if end is not None and len(needles.findings) == before:
        tell_how_often(instruction.legs, worked, needles)
        work_between(end - len(needles.drafts), needles, instruction.place, goes_on=goes_on)


def refuse_other_side(instruction: EdgeShaping, side: str, needles: Needles) -> bool:
    """Report stitches bound off or cast on at an edge where no row of that side begins; True if any."""
    other = any(leg.side not in ("", side) for leg in instruction.legs)
    if instruction.stitch not in ("bo", "co") or not other:
        return False
    told = f"{side} rows begin at the {instruction.edge} edge, as the piece is shaped so far, and no others."
    needles.report(instruction.place, told, "Say on rows of which side it is worked.")
    return True


def edge_rows(
    instruction: EdgeShaping, side: str, needles: Needles
) -> tuple[Template | None, Template | None]:
    """Return the row that begins at the edge it shapes, and the one that ends there.

    Args:
        instruction: The shaping.
        side: Side of the rows that begin at the edge.
        needles: The knitting in hand.

    Returns:
        The two rows; None for one that is to be worked as before, where no row before shows how.
    """
    place = instruction.place
    rest = Until("pattern", "end", None, None, place)
    if instruction.as_before:
        head = _shown(instruction, side, needles, at_end=False)
        tail = _shown(instruction, other_side(side), needles, at_end=True)
        uses = sum(fixed_uses(one, needles.size) for one in tail)
        up_to = Until("pattern", "last", Numbers((uses,), place), None, place)
        begins = Template((*head, rest), place) if head else None
        return begins, Template((up_to, *tail), place) if tail else None
    change = Work(instruction.stitch, instruction.number, None, place)
    stay: tuple[Element, ...] = ()
    if instruction.inset:
        stay = (Work("pattern", Numbers((instruction.inset,), place), None, place),)
    times = instruction.number.of(needles.size)
    uses = times * stitch(instruction.stitch).uses + instruction.inset
    up_to = Until("pattern", "last", Numbers((uses,), place), None, place)
    return Template((*stay, change, rest), place), Template((up_to, change, *stay), place)


def _shown(
    instruction: EdgeShaping, side: str, needles: Needles, *, at_end: bool
) -> tuple[Element, ...]:
    """Return how the last row of a side that shaped one of its ends so did it; nothing if none did."""
    wanted = instruction.number.of(needles.size) * stitch(instruction.stitch).change
    for draft in reversed(needles.drafts[needles.section.start :]):
        template = draft.template
        if draft.side != side or template is None or template.own is not None:
            continue
        stretches = [at for at, one in enumerate(template.elements) if isinstance(one, Until)]
        if len(stretches) != 1 or not all(isinstance(one, Until | Work) for one in template.elements):
            continue
        (at,) = stretches
        shown = template.elements[at + 1 :] if at_end else template.elements[:at]
        made = [one for one in shown if isinstance(one, Work)]
        codes = [one.stitch for one in made if one.stitch != "pattern"]
        if any(stitch(code).kind in (Kind.EDGE, Kind.MARK) for code in codes):
            continue
        changes = (one for one in made if one.stitch in codes)
        if sum(one.times.of(needles.size) * stitch(one.stitch).change for one in changes) == wanted:
            return tuple(shown)
    return ()


def refuse_as_before(instruction: EdgeShaping, needles: Needles) -> None:
    """Report a shaping "as before" of which no row before shows how it is worked at that edge."""
    told = f"no row before this shows how the {instruction.edge} edge is shaped."
    needles.report(instruction.place, told, "Say how many stitches in from the edge it is worked.")
