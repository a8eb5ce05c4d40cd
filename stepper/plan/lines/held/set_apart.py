"""Work rows over a part of the stitches while the others wait: the heel of a sock over one half. No I/O.

The stitches that are worked on are those that come next, from where the yarn hangs. The others lie on hold,
by the name the line gives; those of a heel are the instep.
"""

from __future__ import annotations

import re
from dataclasses import replace

from stepper.craft.stitches import TURNS
from stepper.plan.fabric.established import keep_held
from stepper.plan.lines.held.gaps import gap_in, pieces_at_yarn
from stepper.plan.model import Item, Run, flatten
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.needle_by_needle import SAY_HOW, UNDIVIDED
from stepper.plan.stitches.row_elements import UNNAMED, is_unnamed, name_apart
from stepper.project.instructions import Phrase
from stepper.project.laying_out import SetApart
from stepper.project.stitchwork import Hold, Numbers
from stepper.regex import regex

_HEEL = regex(r"\bheel\b", re.IGNORECASE)


def set_apart(instruction: SetApart, needles: Needles) -> None:
    """Put the others on hold and go on in rows over the stitches that come next."""
    if needles.counting.lost:
        return
    if not needles.count:
        needles.miss_stitches(instruction.place)
        return
    if instruction.needle:
        instruction = _on_needle(instruction, needles)
        if instruction.number is None:
            return
    if instruction.number is None and instruction.others is None:
        _hold_beyond_gap(instruction, needles)
        return
    others = instruction.others.of(needles.size) if instruction.others is not None else None
    number = needles.count - (others or 0)
    if instruction.number is not None:
        number = instruction.number.of(needles.size)
    waiting = needles.count - number
    if number < 1 or waiting < 0 or (others is not None and others != waiting):
        told = f"{number} stitches to work on" + (f" and {others} to wait" if others is not None else "")
        needles.report(instruction.place, f"{told} do not come to the {needles.count} on the needles.")
        needles.lose()
        return
    if _turned_once(needles) and waiting and number > _just_worked(needles):
        # "K14, turn. Heel flap is worked over the next 28 sts": back, and on beyond where the round begins.
        needles.short_rows = replace(needles.short_rows, gap=None, turns=(), turned_at=None)
        needles.markers = ()
        needles.turn_to_rows("WS")
        _hold(instruction, number, (waiting,), needles)
        return
    if needles.short_rows.gap is not None:
        told = "rows over a part of the stitches begin in the middle of a short row here: that is not read."
        needles.miss(instruction.place, told, "End the round first.")
        return
    beside = pieces_at_yarn(needles)
    if not beside and not needles.flat and gap_in(needles):
        told = "the round before has bound off stitches within, and its pieces at both ends are one."
        needles.report(instruction.place, told, "Say which stitches go on hold.")
        needles.lose()
        return
    if beside and beside[0] != number:
        told = f"the row before has bound off stitches, and the next {beside[0]} come before its gap."
        needles.report(instruction.place, told, f"Work on {beside[0]} stitches, or say which wait where.")
        needles.lose()
        return
    if waiting:
        _hold(instruction, number, tuple(beside[1:]) or (waiting,), needles)
    if not needles.flat:
        needles.turn_to_rows("WS" if beside else "RS")


def _turned_once(needles: Needles) -> bool:
    """Return whether the row before is the first of a round that is turned before its end."""
    short = needles.short_rows
    return short.gap is not None and not needles.flat and len(short.turns) <= 1 and needles.wrong


def _just_worked(needles: Needles) -> int:
    """Return how many stitches the row before worked up to its turn."""
    worked = 0
    for run in flatten(needles.drafts[-1].phrase):
        if run.stitch in TURNS:
            return worked
        worked += run.leaves
    return worked


def _on_needle(instruction: SetApart, needles: Needles) -> SetApart:
    """Return rows over the stitches on one needle as rows over those that come next.

    Without their number, and reported, if others come next or the needle holds another number.
    """
    if needles.line.second_holds and instruction.needle == 2 and instruction.number is None:
        return replace(instruction, number=Numbers((needles.line.second_holds,), instruction.place))
    if not needles.ends:
        needles.report(instruction.place, UNDIVIDED, SAY_HOW)
    elif instruction.needle != 1:
        told = f"the yarn hangs before needle 1; needle {instruction.needle} does not come next."
        needles.report(instruction.place, told, "Say how the stitches before them are worked or held.")
    else:
        holds = needles.ends[0]
        number = instruction.number or Numbers((holds,), instruction.place)
        if number.of(needles.size) == holds:
            return replace(instruction, number=number)
        told = f"needle 1 holds {holds} stitches, not {number.of(needles.size)}."
        needles.report(instruction.place, told)
    needles.lose()
    return replace(instruction, number=None)


def _hold_beyond_gap(instruction: SetApart, needles: Needles) -> None:
    """Go on with the piece at which the yarn hangs; the one beyond the gap waits."""
    pieces = pieces_at_yarn(needles)
    if len(pieces) != 2:
        told = f"{len(pieces)} pieces are" if pieces else "no two pieces are"
        needles.report(
            instruction.place,
            f"{told} on the needles, parted by stitches bound off: which go on hold is not said.",
            'Write how many: "Place first 40 sts on hold for front".',
        )
        needles.lose()
        return
    if not needles.flat:
        needles.turn_to_rows("WS")
    name = name_apart(instruction.name or UNNAMED, needles.held)
    part(pieces[0], ((name, pieces[1]),), needles)
    needles.last.apart = len(needles.drafts)


def _hold(instruction: SetApart, number: int, others: tuple[int, ...], needles: Needles) -> None:
    """Put the others on hold, what lies beyond each gap by itself and without a name."""
    called = f"{needles.section.name} {needles.section.label or ''}"
    heel = instruction.heel or _HEEL.search(called) is not None
    wanted = instruction.name or ("instep" if heel else UNNAMED)
    names: list[str] = []
    for _ in others:
        names.append(name_apart(wanted if len(others) == 1 else UNNAMED, (*needles.held, *names)))
    part(number, tuple(zip(names, others, strict=True)), needles)
    if len(others) == 1 and not instruction.held:
        told = "" if is_unnamed(names[0]) else f", for {names[0]}"
        needles.warn(instruction.place, f"the other {others[0]} stitches wait on hold{told}.")
    needles.last.apart = len(needles.drafts)


def part(number: int, others: tuple[tuple[str, int], ...], needles: Needles) -> None:
    """Go on with the stitches that come next, and leave those beyond them on hold.

    Args:
        number: How many come next; 0 where all of them wait.
        others: Names and stitches of what lies beyond, in the order in which the next row would come to it.
        needles: The knitting in hand.
    """
    items: tuple[Item, ...] = (
        *((Run("rest", number, needles.yarn),) if number else ()),
        *(Run("hold", waiting, name) for name, waiting in others),
    )
    keep_held(items, needles)
    needles.held.update(others)
    # Markers are counted from where right-side rows begin; before a wrong-side row that is among the others.
    before = needles.count - number if needles.wrong else 0
    needles.markers = tuple(mark - before for mark in needles.markers if 0 < mark - before < number)
    needles.emit(items, number, divide=True)
    needles.ends, needles.instep = (), None


def leave_waiting(name: str, needles: Needles) -> None:
    """Leave all stitches on their needle while another piece is begun: a body that waits for its sleeves.

    Args:
        name: The piece they are of, as a line may call it later.
        needles: The knitting in hand; no stitches are on it then.
    """
    called, waiting = name_apart(name.lower(), needles.held), needles.count
    needles.held_by[called] = (needles.section.name, needles.line.number)
    needles.remarks.append(f"the {waiting} stitches of the {name.lower()} wait on their needle or a holder")
    part(0, ((called, waiting),), needles)


def take_as_the_others(instruction: Phrase, needles: Needles) -> bool:
    """Take "place the remaining 32 sts on hold for instep" behind rows over the others as those that wait.

    Returns:
        Whether that is what the line says; nothing is worked then.
    """
    only = instruction.elements[0] if len(instruction.elements) == 1 else None
    if not isinstance(only, Hold) or needles.last.apart != len(needles.drafts) or not needles.drafts:
        return False
    name, waiting = next(reversed(needles.held.items()))
    if not only.rest or only.times is None or only.times.of(needles.size) != waiting:
        told = f"{waiting} stitches wait on hold already, and this line does not say whether it means them."
        needles.miss(only.place, told, f'Write "hold rem {waiting} sts" if those are meant, or leave it out.')
        return True
    if only.name and only.name != name:
        needles.held[only.name] = needles.held.pop(name)
        needles.kept[only.name] = (*needles.kept.get(only.name, ()), *needles.kept.pop(name, ()))
        needles.remarks.append(f"the stitches on hold wait for {only.name}")
    return True
