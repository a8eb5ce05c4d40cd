"""Take stitches back that were put aside, or go on with those that lie on the needle already. No I/O."""

from __future__ import annotations

from stepper.plan.model import Run
from stepper.plan.state.held_below import held_in_sections, row_that_held
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.row_elements import MisfitError, held_stitches, is_short
from stepper.project.instructions import Return
from stepper.project.problems import one_of


def take_back(instruction: Return, needles: Needles) -> None:
    """Put held stitches back on the needles.

    A line that only joins the yarn to stitches ("rejoin yarn to back sts") may mean those that were left on
    the needle, as after a round that bound off both underarms; that is told.
    """
    if needles.counting.lost:
        needles.regain(0)
    try:
        if _lies_on_needle(instruction, needles):
            return
        name, number = held_stitches(
            instruction,
            needles.held,
            needles.size,
            needles.section.name,
            needles.copied,
            held_in_sections(needles),
        )
    except MisfitError as misfit:
        needles.miss(misfit.place, misfit.message, misfit.hint, anywhere=True)
        return
    del needles.held[name]
    rest = (Run("rest", needles.count, needles.yarn),) if needles.count else ()
    told = instruction.right_side or needles.line.right_facing
    if needles.flat and not rest:  # the row before was of other stitches, and of either side
        needles.side = "RS" if told else _side_of(name, needles) or needles.side
    needles.emit((*rest, Run("return", number, name)), needles.count + number)
    if instruction.wrong_side and not needles.joined:
        if not needles.flat:  # a part with a section of its own begins here
            needles.turn_to_rows()
        needles.side = "WS"


def _side_of(name: str, needles: Needles) -> str:
    """Return the side on which stitches were to go on when a row put them aside; empty if it was a round."""
    at = row_that_held(name, needles)
    return needles.drafts[at].side if at is not None and needles.drafts[at].flat else ""


def _lies_on_needle(instruction: Return, needles: Needles) -> bool:
    """Go on with the stitches on the needle, if they are meant.

    Raises:
        MisfitError: the line gives another number of them, or its name may mean stitches on hold too.
    """
    if not instruction.on_needle or needles.count == 0:
        return False
    if not needles.copied and instruction.name in needles.held:
        return False
    said = instruction.number.of(needles.size) if instruction.number is not None else 0
    if not instruction.name and said != needles.count and said in needles.held.values():
        return False
    sure = _just_held(needles) or (said == needles.count and said not in needles.held.values())
    if not instruction.name and needles.held and not sure:
        told = '"remaining" may be what is on the needle or what is on hold.'
        hint = 'Write "held sts" if those are meant, or bind off the others.'
        raise MisfitError(instruction.place, told, hint)
    if instruction.name and not needles.copied and is_short(instruction.name, needles.held):
        told = f'"{instruction.name}" may be what is on the needle or what is on hold.'
        raise MisfitError(
            instruction.place, told, f"On hold: {one_of(needles.held)}. Use one of these names."
        )
    if instruction.number is not None and said != needles.count:
        raise MisfitError(
            instruction.place, f"the pattern prints {said} stitches; {needles.count} are on the needles."
        )
    if needles.flat:
        needles.side = "WS" if instruction.wrong_side else "RS"
    needles.remarks.append(f"join the yarn to the {needles.count} stitches on the needle")
    return True


def _just_held(needles: Needles) -> bool:
    """Return whether nothing was worked since stitches beside those on the needle were put on hold."""
    return bool(needles.drafts) and needles.drafts[-1].codes == {"hold", "rest"}
