"""Go on with one part of a piece that was divided, back or front, where its name alone tells which. No I/O.

"Place front sts on a holder", "Working on back sts only": behind a round that has bound off at both sides
two halves lie on the needle, and where both are as many either may be called the front. Behind a row that
has parted a back from two fronts alike, the part worked last is the one at which the yarn hangs, and as
worn it is the left front of a right-side row. In all else nobody can tell, and the line is refused. Source:
common practice.
"""

from __future__ import annotations

from stepper.plan.lines.held.gaps import pieces_at_yarn
from stepper.plan.lines.held.set_apart import part
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.row_elements import name_apart
from stepper.project.instructions import Phrase
from stepper.project.laying_out import OnlyOn
from stepper.project.stitchwork import Hold

_HALVES = {"back": ("front",), "front": ("back",)}


def go_on_over(instruction: OnlyOn, needles: Needles) -> None:
    """Go on with one part of a piece that was divided; the others wait, if they do not yet.

    Where they wait already the words only tell which is left. The part has to lie where the yarn hangs.
    """
    if needles.counting.lost:
        return
    name, pieces = instruction.part, pieces_at_yarn(needles)
    if not pieces and needles.held and name not in needles.held:
        return
    others = _beside(name, pieces, needles)
    if not others:
        told = f"{len(pieces)} pieces are on the needles ({', '.join(map(str, pieces))} stitches)"
        if not pieces:
            undivided = f"all {needles.count} stitches are on the needles, undivided"
            told = f"the {name} is on hold" if name in needles.held else undivided
        needles.report(
            instruction.place,
            f"{told}: which are worked on here is not clear.",
            'Say how many: "Work in rows over next 40 sts, hold others", or which go on hold.',
        )
        needles.lose()
        return
    if not needles.drafts[-1].flat:
        needles.turn_to_rows("WS")
    held = [name_apart(other, needles.held) for other in others]
    told = f"the {name} is where the yarn hangs; {' and '.join(others)} go on hold."
    needles.warn(instruction.place, told)
    part(pieces[0], tuple(zip(held, pieces[1:], strict=True)), needles)


def _beside(name: str, pieces: list[int], needles: Needles) -> tuple[str, ...]:
    """Return the parts beyond the one at which the yarn hangs, as the next row would come to them.

    None unless the pieces are alike at both ends, so that no number is taken for another's.
    """
    if not pieces or pieces[0] != pieces[-1]:
        return ()
    in_rows = needles.drafts[-1].flat  # the line in hand may have turned to rows already
    if not in_rows and len(pieces) == 2:
        return _HALVES.get(name, ())
    if in_rows and len(pieces) == 3:
        sides = ("left front", "right front") if needles.wrong else ("right front", "left front")
        return ("back", sides[1]) if name == sides[0] else ()
    return ()


def hold_half(instruction: Phrase, needles: Needles) -> bool:
    """Take "place front sts on hold" behind a round bound off at both sides as the half without the yarn.

    Two halves that differ, or other parts, are refused elsewhere.

    Returns:
        Whether that is what the line says; nothing else is worked then.
    """
    only = instruction.elements[0] if len(instruction.elements) == 1 else None
    if not isinstance(only, Hold) or only.times is not None or only.name.lower() not in _HALVES:
        return False
    pieces = pieces_at_yarn(needles)
    if needles.counting.lost or len(pieces) != 2 or pieces[0] != pieces[1] or needles.drafts[-1].flat:
        return False
    (other,) = _HALVES[only.name.lower()]
    told = f"the {only.name} is taken for the half at which the yarn does not hang; the {other} goes on."
    needles.warn(only.place, told)
    needles.turn_to_rows("WS")
    part(pieces[0], ((name_apart(only.name, needles.held), pieces[1]),), needles)
    return True
