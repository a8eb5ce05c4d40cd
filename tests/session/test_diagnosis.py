from __future__ import annotations

import random
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from stepper.commands.loading import load
from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Group, Plan, Round
from stepper.session.diagnosis import Likely, diagnose, questions, shows
from stepper.session.events import Counted
from stepper.session.evolve import evolve
from stepper.session.foretelling import Cause
from stepper.session.state import Answer, Fault, Knitting, Place, Seen, Sight, State, Verified
from tests import fabric, hunt, knitter
from tests.knitter import Row
from tests.plans import final_increase
from tests.plans import plan as made

SAMPLES = sorted((Path(__file__).parents[2] / "sample_projects").glob("*.yaml"))
LACE = made(("lace", ["co60", "k60", "(k4 yo k2tog)x10", "k60", "(k3 yo)x20", "k80"]))


def changes(round_: Round) -> list[int]:
    """List the operations that are increases or decreases."""
    kinds = (Kind.INCREASE, Kind.DECREASE)
    return [at for at, code in enumerate(knitter.operations(round_.phrase)) if stitch(code).kind in kinds]


def plain(round_: Round) -> list[int]:
    """List the operations that are plain stitches."""
    return [
        at for at, code in enumerate(knitter.operations(round_.phrase)) if stitch(code).kind is Kind.PLAIN
    ]


def groups(round_: Round) -> list[int]:
    """List the items that are repeats."""
    return [at for at, item in enumerate(round_.phrase) if isinstance(item, Group) and item.uses]


def left_out(plan: Plan, round_: Round, dice: random.Random) -> Row | None:
    """Leave a change out."""
    places = changes(round_)
    return knitter.without(round_, dice.choice(places)) if places else None


def one_too_many(plan: Plan, round_: Round, dice: random.Random) -> Row | None:
    """Make a change too many."""
    codes = [knitter.operations(round_.phrase)[at] for at in changes(round_)]
    if not codes:
        return None
    code, todo = dice.choice(codes), knitter.operations(round_.phrase)
    uses = stitch(code).uses
    fit = [at for at in plain(round_) if not uses or todo[at : at + uses] == [todo[at]] * uses]
    return knitter.with_one_more(round_, dice.choice(fit), code) if fit else None


def twice(plan: Plan, round_: Round, dice: random.Random) -> Row | None:
    """Work a repeat twice."""
    places = groups(round_)
    if not places:
        return None
    at = dice.choice(places)
    item = round_.phrase[at]
    assert isinstance(item, Group)
    return knitter.repeated(round_, at, item.times + 1)


def repeat_out(plan: Plan, round_: Round, dice: random.Random) -> Row | None:
    """Leave a repeat out."""
    places = groups(round_)
    if not places:
        return None
    at = dice.choice(places)
    item = round_.phrase[at]
    assert isinstance(item, Group)
    return knitter.repeated(round_, at, item.times - 1)


def yarn_over(plan: Plan, round_: Round, dice: random.Random) -> Row | None:
    """Let a yarn over fall off."""
    todo = knitter.operations(round_.phrase)
    places = [at for at, code in enumerate(todo) if code == "yo"]
    return knitter.work(todo, round_.before, slipped_off=dice.choice(places)) if places else None


def dropped(plan: Plan, round_: Round, dice: random.Random) -> Row | None:
    """Drop a stitch."""
    places = plain(round_)
    todo = knitter.operations(round_.phrase)
    return knitter.work(todo, round_.before, dropped=dice.choice(places)) if places else None


def other_round(plan: Plan, round_: Round, dice: random.Random) -> Row | None:
    """Work the next round in the place of this one."""
    if round_.index + 1 >= len(plan.rounds):
        return None
    wrong = plan.rounds[round_.index + 1]
    if any(stitch(run.stitch).kind in (Kind.EDGE, Kind.SHIFT) for run in wrong.runs):
        return None  # nobody binds off or divides in the place of a round by mistake
    row = knitter.work(knitter.operations(wrong.phrase), round_.before)
    # Where neither the count nor the end of the round shows it, it is not a fault of counting.
    return row if (row.count, row.left) != (round_.after, 0) else None


Maker = Callable[[Plan, Round, random.Random], Row | None]
KINDS: dict[Cause, Maker] = {
    Cause.LEFT_OUT: left_out,
    Cause.ONE_TOO_MANY: one_too_many,
    Cause.REPEAT_TWICE: twice,
    Cause.REPEAT_LEFT_OUT: repeat_out,
    Cause.YARN_OVER: yarn_over,
    Cause.DROPPED: dropped,
    Cause.OTHER_ROUND: other_round,
}


def seeded(garment: Plan, cause: Cause, times: int, seed: int) -> Iterator[tuple[Round, Row]]:
    """Give rounds with one fault of a kind, at random places; none where a garment has no place for it."""
    dice = random.Random(f"{garment.title} {cause.value} {seed}")
    rounds = [each for each in garment.rounds if each.index and each.before]
    dice.shuffle(rounds)
    possible = [each for each in rounds if KINDS[cause](garment, each, dice) is not None]
    for _ in range(times if possible else 0):
        round_ = dice.choice(possible)
        row = KINDS[cause](garment, round_, dice)
        if row is not None:
            yield round_, row


GARMENTS = [*[(path.stem, path) for path in SAMPLES], ("final increase", None), ("lace", None)]


PLACES = 6
"""Random places for each kind in each garment; `python -m tests.bench.faults` takes 200."""


@pytest.mark.parametrize("path", SAMPLES, ids=[path.stem for path in SAMPLES])
def test_the_true_cause_comes_first(path: Path) -> None:
    """Of every kind of single fault, at random places in every garment, the true one is first in nine of ten
    and nearly always among three, once she has counted between the landmarks and looked where she is asked to;
    and from the counts alone it is among three in nine of ten. The fabric is that of a second knitter, who
    knows nothing of how faults are looked for."""
    garment = load(path).plan
    photographs = fabric.knitted_right(garment)
    found = [each for kind in fabric.MISTAKES for each in hunt.trials(garment, photographs, kind, PLACES, 7)]

    assert len(found) >= 5 * PLACES
    assert sum(each.by_looks == 0 for each in found) >= 0.90 * len(found)
    assert sum(each.by_looks < 3 for each in found) >= 0.98 * len(found)
    assert sum(each.by_sections < 3 for each in found) >= 0.90 * len(found)
    assert sum(each.stitches for each in found) < 0.7 * sum(each.all_stitches for each in found)


def test_a_loop_tells_a_dropped_stitch_from_an_increase_left_out() -> None:
    """The same count, two causes; what hangs below the needles decides."""
    garment = final_increase()
    state = State(
        knitting=Knitting(place=Place(index=4), verified=Verified(place=Place(index=3), stitches=225))
    )
    counted = Counted(at="", place=Place(index=4), stitches=245, expected=246, expected_end=246)
    fault = evolve(state, counted).knitting.fault
    assert fault is not None

    assert diagnose(garment, state, fault)[0].cause is Cause.LEFT_OUT
    looped = Fault(place=fault.place, difference=-1, sights=(Sight(seen=Seen.LOOP, number=1),))
    assert diagnose(garment, state, looped)[0].cause is Cause.DROPPED


def test_what_is_seen_in_one_round_says_nothing_of_another() -> None:
    """The changes of the round asked about are right, so it was one of the round before."""
    garment = made(("yoke", ["co80", "(k8 m1)x10", "k90", "(k9 m1)x10", "k100"]))
    state = State(
        knitting=Knitting(place=Place(index=4), verified=Verified(place=Place(index=1), stitches=80))
    )
    right = Fault(place=Place(index=4), difference=-1, sights=(Sight(seen=Seen.CHANGES, number=0, index=3),))
    found = [each for each in diagnose(garment, state, right) if each.cause is Cause.LEFT_OUT]

    assert [each.index for each in found] == [1]


def test_a_missing_increase_makes_its_section_run_on() -> None:
    """Counted from increase to increase, the one left out cannot be counted to; that tells it from a stitch
    dropped beside it, without a look."""
    garment = made(("yoke", ["co80", "(k8 m1)x10", "k90"]))
    state = State(
        knitting=Knitting(place=Place(index=2), verified=Verified(place=Place(index=1), stitches=80))
    )
    run_on = Fault(place=Place(index=2), difference=-1, answers=(Answer(first=0, end=1, stitches=17),))
    short = Fault(place=Place(index=2), difference=-1, answers=(Answer(first=0, end=1, stitches=8),))

    assert {each.cause for each in diagnose(garment, state, run_on)} == {Cause.LEFT_OUT}
    dropped = diagnose(garment, state, short)
    assert dropped[0].cause is Cause.DROPPED
    assert Cause.LEFT_OUT not in {each.cause for each in dropped}


def test_a_question_tells_the_likeliest_two_apart() -> None:
    """What is asked for is seen differently if one or the other happened, and nothing is asked twice."""

    def likely(cause: Cause, changes: int) -> Likely:
        return Likely(cause=cause, index=3, code="", odds=0.5, known=(), changes=changes)

    two = (likely(Cause.LEFT_OUT, -1), likely(Cause.DROPPED, 0))
    asked = questions(Fault(place=Place(index=4), difference=-1), two)
    assert asked == (Seen.LOOP, 3)
    assert shows(two[0], *asked) != shows(two[1], *asked)
    looked = Fault(place=Place(index=4), difference=-1, sights=(Sight(seen=Seen.LOOP, number=0),))
    assert questions(looked, two) == (Seen.CHANGES, 3)
    assert questions(looked, two[:1]) is None
    assert questions(looked, ()) is None


def test_what_no_single_fault_explains_has_no_cause() -> None:
    """Nothing is made up."""
    garment = final_increase()
    fault = Fault(place=Place(index=4), difference=17)

    assert diagnose(garment, State(knitting=Knitting(place=Place(index=4))), fault) == ()
