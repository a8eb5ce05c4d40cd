"""The step in hand: what is told and worked next, by where in the round she stands and what she has heard.

A repeat is worked "the same again" by who has heard all of it. Who comes back in the middle of one has heard
its end alone, and would knit that again; she gets the rest in the breaths in which the repeat was read out
first, and the next one in full. No I/O.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from stepper.plan.model import Group, Round
from stepper.session.state import State
from stepper.session.steps import StepPart, cut_into_steps, part_at


def step_in_hand(round_: Round, state: State) -> StepPart:
    """Return the step that the place is in; what is worked of it is still in it.

    Args:
        round_: The round in hand.
        state: Where the session stands.
    """
    cut = cut_into_steps(round_, state.knitting.by_of(round_))
    return _told_part(cut, state.place.stitch, state.told_from)


def step_before(round_: Round, state: State, *, within: int) -> int:
    """Return where the step began that ends at a place, or that the place is amid. Unit: stitches.

    Args:
        round_: The round in hand, or the one before it.
        state: Where the session stands.
        within: Stitches of the round worked; 0 for the end of the round before.
    """
    cut = cut_into_steps(round_, state.knitting.by_of(round_))
    if not within:
        return cut[-1].start
    part = part_at(cut, within - 1)
    begins = range(part.start, within, _stitches_once(part)) if part.again else range(0)
    whole = next((each for each in begins if is_told(part, each, state.told_from)), None)
    return whole if whole is not None else _told_part(cut, within - 1, state.told_from).start


def is_told(part: StepPart, stitches: int, told_from: int) -> bool:
    """Return whether all of a repeat was told before the one that begins at a place.

    Args:
        part: A part that is worked again.
        stitches: Stitches of the round worked.
        told_from: As `State.told_from`.
    """
    return told_from <= stitches - _stitches_once(part)


def _told_part(cut: Sequence[StepPart], stitches: int, told_from: int) -> StepPart:
    part = part_at(cut, stitches)
    once = _stitches_once(part)
    start = stitches - (stitches - part.start) % once
    if not part.again or is_told(part, start, told_from):
        return part
    first = part.start - once * (part.repeat[0] - 1 if part.repeat is not None else 1)
    breaths = [
        replace(each, start=each.start - first + start, end=each.end - first + start, repeat=None)
        for each in cut
        if first <= each.start < each.end <= first + once
    ]
    if not breaths or (breaths[0].start, breaths[-1].end) != (start, start + once):
        return part
    if part.repeat is not None:
        breaths[0] = replace(breaths[0], repeat=part.repeat)
    return _told_part(breaths, stitches, told_from)


def _stitches_once(part: StepPart) -> int:
    """Return the stitches of one repetition of a part worked again; of any other part, of all of it."""
    groups = [item for item in part.items if isinstance(item, Group)]
    times = groups[0].times if part.again and part.repeat is None and groups else 1
    return max(1, (part.end - part.start) // times)
