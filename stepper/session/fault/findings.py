"""What is known of a fault, as counts, looks and choices add to it. Pure; knows no event."""

from __future__ import annotations

from dataclasses import replace

from stepper.session.state import Answer, Fault, Narrowing, Observation, Position, Seen


def count_off(before: Fault | None, place: Position, off: int) -> Fault:
    """Begin looking for a fault; if a second count agrees, it was not a slip in counting.

    Args:
        before: The fault looked for so far; None if none is.
        place: Where the count was made.
        off: Stitches too many; below 0 for too few. Unit: stitches.
    """
    if before is None or before.place != place:
        return Fault(place=place, difference=off)
    # No loop hangs there now either; one that did has been caught since, or is asked after once more.
    none_hangs = tuple(each for each in before.sights if each.seen is Seen.LOOP and not each.number)
    if before.difference != off:
        return Fault(place=place, difference=off, sights=none_hangs)
    others = tuple(each for each in before.sights if each.seen is not Seen.LOOP)
    return replace(before, confirmed=True, chosen=None, sights=(*none_hangs, *others))


def is_slip(fault: Fault, place: Position) -> bool:
    """Return whether a count that comes out shows that the one before at the same place was wrong, no loop
    having been caught in between."""
    return fault.place == place and bool(fault.difference) and not fault.hangs_a_loop


def add_answers(fault: Fault, answers: tuple[Answer, ...]) -> Fault:
    """Keep what was counted between landmarks; what she chose to do next is done."""
    return replace(fault, answers=(*fault.answers, *answers), chosen=None)


def choose_way(fault: Fault | None, remedy: str) -> Fault | None:
    """Remember what she chose to do next to narrow a fault down.

    Args:
        fault: The fault looked for; None if none is.
        remedy: Value of the remedy. One that no `Narrowing` is named as leaves nothing chosen.
    """
    if fault is None:
        return None
    return replace(fault, chosen=next((each for each in Narrowing if each.value == remedy), None))


def add_sight(
    fault: Fault | None, place: Position, sight: Observation | None, index: int | None
) -> Fault | None:
    """Add what was seen; where no fault was looked for yet, looking begins.

    Args:
        fault: The fault looked for so far; None if none is.
        place: Where she is.
        sight: What she saw; it takes the place of the same thing seen before in the same round.
        index: The round the fault is in, if she said so.

    Returns:
        None if the loop that hung is caught: what is off then is counted anew.
    """
    caught = sight is not None and sight.seen is Seen.LOOP and not sight.number
    if fault is not None and caught and fault.hangs_a_loop:
        return None
    fault = fault if fault is not None else Fault(place=place, difference=0)
    if sight is not None:
        new = (sight.seen, sight.index)
        others = tuple(each for each in fault.sights if (each.seen, each.index) != new)
        fault = replace(fault, sights=(*others, sight), chosen=None)
    return fault if index is None else replace(fault, index=index)
