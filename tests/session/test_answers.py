from __future__ import annotations

import pytest

from stepper.session import cues
from stepper.session.answers import ANSWERS
from stepper.session.machine import Session
from stepper.session.rules import RULES, Mode
from stepper.session.state import Knitting, Position, State
from tests.plans import final_increase
from tests.playbook import AT

GARMENT = final_increase()
ASKING = tuple(cue for cue in cues.CUES if issubclass(cue, cues.Asks))


def test_every_question_has_an_answer() -> None:
    """A cue that only asks and has none would end the sitting with an error."""
    assert set(ASKING) <= set(ANSWERS)


@pytest.mark.parametrize("cue", ASKING, ids=lambda cue: cue.__name__)
@pytest.mark.parametrize("index", [0, 4, len(GARMENT.rounds)])
def test_asking_changes_nothing_and_is_answered(cue: type[cues.Cue], index: int) -> None:
    """At the beginning, in the middle and when all is done; else she asks once and never again."""
    session = Session(GARMENT, State(seq=5, knitting=Knitting(place=Position(index=index)), last_cue_at=AT))
    considered = session.consider(cue(at=AT))

    assert considered.events == ()
    assert considered.state == session.state
    assert considered.effects


def test_a_question_is_answered_where_no_row_says_else() -> None:
    """While nothing is asked of her and the ears are open, she may ask."""
    for cue in ASKING:
        assert RULES[Mode.KNITTING, cue] not in (RULES[Mode.ASLEEP, cues.Next], RULES[Mode.CLOSED, cue])
