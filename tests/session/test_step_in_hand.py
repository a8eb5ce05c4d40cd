from __future__ import annotations

import pytest

from stepper.plan.model import Run, flatten
from stepper.session import cues
from stepper.session.events import Opened, Returned
from stepper.session.evolve import evolve
from stepper.session.machine import Session
from stepper.session.step_in_hand import is_told, step_in_hand
from stepper.session.steps import By, StepPart, cut_into_steps, rest_of
from tests.plans import phrase, plan
from tests.playbook import AT, opened, tell, transcript

CHART = "(k3 yo k1 yo k1 sk2p k2 yo k1 yo k2)x8"
"""A repeat of more than a breath."""


def _chart() -> Session:
    uses = sum(run.uses for run in flatten(phrase(CHART)))
    return opened(plan(("lace", [f"co{uses}", CHART])))


def _come_back(session: Session) -> Session:
    """Kill the sitting and begin another with what was kept of it."""
    event = Opened(at=AT, fingerprint=session.state.fingerprint)
    return Session(session.plan, evolve(session.state, event))


@pytest.mark.parametrize("stride", ["by round", "by repeat"])
def test_who_comes_back_in_a_repeat_hears_the_next_one_in_full(stride: str) -> None:
    """She has heard its end alone; "the same again" would be that end once more, in each repeat of the round."""
    session = _chart()
    transcript(session, f"> go to round 2\n> {stride}\n> next step\n> next step\n> next step")
    transcript(session, f"> stitch {session.plan.rounds[1].progress // 2 + 5}")
    session = _come_back(session)

    said = [tell(session, session.consider(cues.Next(at=AT)))[-1] for _ in range(8)]
    whole = next(at for at, line in enumerate(said) if "the same again" in line)

    heard = " ".join(said[:whole])
    assert "knit three, yarn over, knit one, yarn over" in heard
    assert whole >= 3


@pytest.mark.parametrize("by", list(By))
@pytest.mark.parametrize("told_from", [0, 7, 40])
def test_the_steps_in_hand_work_each_stitch_once_from_wherever_she_comes_back(by: By, told_from: int) -> None:
    """Said in other pieces it is the same round: nothing twice, nothing left out."""
    session = _chart()
    round_ = session.plan.rounds[1]
    transcript(session, f"> go to round 2\n> by {by.value}\n> stitch {told_from}")
    session = _come_back(session)
    assert session.state.told_from == told_from
    worked = 0
    codes: list[str] = []

    while session.state.place.index == 1:
        place = session.state.place.stitch
        part = rest_of(step_in_hand(round_, session.state), place)
        assert part.start == place < part.end
        codes += [run.stitch for run in flatten(part.items) for _ in range(run.times)]
        worked += part.end - place
        tell(session, session.consider(cues.Next(at=AT)))

    assert worked == round_.progress - told_from
    every = [run.stitch for run in flatten(round_.phrase) for _ in range(run.times)]
    assert codes == every[len(every) - len(codes) :]


def test_a_repeat_is_told_once_all_of_it_was_heard_from_its_beginning() -> None:
    """Twelve stitches heard from stitch 12 on are a whole repeat at stitch 24, and none at stitch 20."""
    again = StepPart(start=12, end=48, items=phrase("(k12)x3"), again=True)

    assert is_told(again, 24, 12)
    assert not is_told(again, 24, 13)
    assert not is_told(again, 12, 5)


def test_within_a_sitting_a_repeat_read_in_parts_is_the_same_again() -> None:
    """Nothing is read out twice to who heard it from the beginning."""
    session = _chart()
    transcript(session, "> go to round 2")
    said = [tell(session, session.consider(cues.Next(at=AT)))[-1] for _ in range(3)]

    assert said[-1].endswith("the same again, seven times.")
    part = step_in_hand(session.plan.rounds[1], session.state)
    assert part == cut_into_steps(session.plan.rounds[1], By.ROUND)[-1]
    assert not any(isinstance(item, Run) for item in part.items)


def test_back_in_a_repeat_is_one_breath_for_who_came_back_there_and_one_step_for_who_heard_it() -> None:
    """ "I said next twice" in the fifth of eight repeats must not lead her back to the second."""
    session = _chart()
    once = session.plan.rounds[1].progress // 8
    transcript(session, f"> go to round 2\n> stitch {4 * once + 2}")
    (told,) = session.consider(cues.Back(at=AT)).events
    assert isinstance(told, Returned)
    assert told.place.stitch == 4 * once
    session.adopt(session.consider(cues.Next(at=AT)))
    after = session.state.place.stitch
    (told,) = session.consider(cues.Back(at=AT)).events
    assert isinstance(told, Returned)
    assert 4 * once <= told.place.stitch < after

    heard = _chart()
    transcript(heard, "> go to round 2\n> next step\n> next step\n> next step\n> next step")
    assert heard.state.place.index == 2
