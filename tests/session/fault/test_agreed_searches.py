"""What is made of a count that is off, at places all over each garment, is as it was agreed on.

The knitters of `tests.mending` and `tests.hunt` answer truly and of one mistake; whether what they are told is right is judged there.
Here somebody counts and looks as it comes: answers that contradict each other, a loop where none can be, interruptions, lifelines, a
round she points at, a count made rounds ago. The texts in `agreed/` only notice change. In a text a case is its place, what is known
there, and then row by row what is said of it: how far the counting has come, what may have happened (`?`), what to look at (`!`)
and what can be done (`>`).
"""

from __future__ import annotations

import random
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from stepper.plan.model import Plan
from stepper.session.fault.diagnosis import choose_question
from stepper.session.fault.inquiry import inquire
from stepper.session.fault.search import search
from stepper.session.fault.tinking import reverse
from stepper.session.state import (
    Answer,
    Fault,
    Knitting,
    Narrowing,
    Observation,
    Position,
    Seen,
    State,
    Verified,
)
from tests.agreed import compare
from tests.agreed_sitting import plan_of, shown

HERE = Path(__file__).parent / "agreed"
FIXTURES = Path(__file__).parents[2] / "fixtures"
GARMENTS = sorted(path.stem for path in FIXTURES.glob("*.yaml"))
CASES = 36
"""In each garment."""
LIKELIEST = 5
"""Of what may have happened, so many are written."""


@pytest.mark.parametrize("garment", GARMENTS)
def test_a_count_that_is_off_is_looked_into_as_agreed(garment: str) -> None:
    """Which count she is asked for next and which way is named first decide what she rips."""
    plan = plan_of((FIXTURES / f"{garment}.yaml").read_text(encoding="utf-8"), None)
    assert plan is not None
    rows: list[str] = []
    for number in range(CASES):
        dice = random.Random(f"agreed search {garment} {number}")
        rows += [*_told(plan, _case(plan, dice), dice), ""]
    compare(HERE / f"{garment}.txt", rows)


def _case(plan: Plan, dice: random.Random) -> State:
    """Stop somewhere, count, and say what there is to say."""
    index = dice.randrange(1, len(plan.rounds))
    round_ = plan.rounds[index]
    inside = round_.progress > 1 and dice.random() < 0.5
    place = Position(index=index, stitch=dice.randrange(1, round_.progress) if inside else 0)
    below = plan.rounds[index - (0 if inside else 1)]
    difference = dice.choice((-2, -1, -1, 1, 1, 2, below.after - below.before, 0))
    fault = Fault(place=place, difference=difference, confirmed=dice.random() < 0.4)
    if not difference or dice.random() < 0.5:
        fault = replace(fault, sights=tuple(_sights(place, dice, must=not difference)))
    if dice.random() < 0.2:
        fault = replace(fault, index=max(0, index - dice.randrange(3)))
    if dice.random() < 0.2:
        fault = replace(fault, chosen=dice.choice(list(Narrowing)))
    at = Position(index=max(0, index - dice.randrange(8)))
    near = [Position(index=max(0, index - dice.randrange(4)), stitch=dice.randrange(9)) for _ in range(2)]
    later = Position(index=min(index + 1, len(plan.rounds))) if dice.random() < 0.15 else place
    knitting = Knitting(
        place=later,
        fault=fault,
        verified=Verified(place=at, stitches=0) if dice.random() < 0.7 else None,
        lifelines=tuple(sorted(near[: dice.randrange(3)])),
    )
    state = State(knitting=knitting, breaks=tuple(near[: dice.randrange(3)]))
    for _ in range(dice.choice((0, 1, 2, 4, 8))):
        state = _answered(plan, state, dice)
    return state


def _sights(place: Position, dice: random.Random, *, must: bool) -> Iterator[Observation]:
    """Look at one thing or two; `must` leaves out that no loop hangs there, since that alone begins no search."""
    if dice.random() < 0.6 and not must:
        yield Observation(seen=Seen.LOOP, number=dice.choice((0, 0, 0, 1)))
    if must or dice.random() < 0.5:
        seen = dice.choice((Seen.CHANGES, Seen.LEFT, Seen.WHOLE))
        number = 1 if seen is Seen.WHOLE else dice.choice((-2, -1, 0, 1, 2))
        yield Observation(
            seen=seen, number=number, index=dice.choice((None, place.index, max(0, place.index - 1)))
        )


def _answered(plan: Plan, state: State, dice: random.Random) -> State:
    """Count what is asked for: mostly right or off by what is looked for, sometimes by something else."""
    fault = state.knitting.fault
    assert fault is not None
    found = search(plan, state, fault)
    if found.next is None:
        return state
    first, end = found.next.count
    off = dice.choice((0, 0, fault.difference, fault.difference, -1, 1, 2, -found.next.stitches))
    answer = Answer(first=first, end=end, stitches=max(0, found.next.stitches + off))
    return replace(
        state, knitting=replace(state.knitting, fault=replace(fault, answers=(*fault.answers, answer)))
    )


def _told(plan: Plan, state: State, dice: random.Random) -> Iterator[str]:
    """Write a case and what is said to it."""
    inquiry = inquire(plan, state)
    assert inquiry is not None
    place, looking = state.knitting.place, inquiry.search
    yield f"== {shown(state.knitting.place)}: {shown(inquiry.fault)}"
    yield f"known {shown(state.knitting.stands)}, lines {shown(state.knitting.lifelines)}, breaks {shown(state.breaks)}"
    if looking.sections is not None:
        yield f"{shown(replace(looking, sections=None))} of {shown(looking.sections)}"
    yield f"found {shown(looking.found)}, part {inquiry.part}, look {shown(inquiry.look)}"
    yield from (f"? {shown(each)}" for each in inquiry.causes[:LIKELIEST])
    yield f"! {shown(choose_question(inquiry.fault, inquiry.causes))}, of {len(inquiry.causes)}"
    yield from (f"> {shown(each)}" for each in inquiry.remedies)
    back = reverse(plan, place, dice.randrange(1, 30))
    if back is not None and place.index < len(plan.rounds):
        yield f"tinked {shown(back)}"


def test_no_text_is_left_over() -> None:
    """What nobody looks into any more must not be kept as if it were agreed on."""
    assert [path.stem for path in sorted(HERE.glob("*.txt"))] == GARMENTS
