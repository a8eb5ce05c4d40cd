from __future__ import annotations

import pytest

from stepper.session.counting.doubts import AskBack
from stepper.session.cues import Count, Cue, No, Yes
from stepper.session.effects import AskCount, AskLook, AskSections, Effect
from stepper.session.fault.landmarks import Landmark
from stepper.session.fault.respond import AskAgain
from stepper.session.fault.ways import StitchesToCount
from stepper.session.questions.open_question import list_answers
from stepper.session.state import Doubt, DoubtKind, Knitting, Position, Seen, State
from tests.plans import final_increase

PLACE = Position(index=1)


@pytest.mark.parametrize(
    ("told", "answers"),
    [
        ((), set()),
        ((AskCount(expect=225, reason="here"),), {Count, No}),
        ((AskAgain(expect=225, plain=True),), {Count, No}),
        ((AskLook(seen=Seen.LOOP, index=0),), {Yes, No}),
        ((AskBack(doubt=Doubt(kind=DoubtKind.LENGTH, place=PLACE)),), {Yes, No}),
        ((AskBack(doubt=Doubt(kind=DoubtKind.COUNT, place=PLACE)),), {Yes, No, Count}),
    ],
)
def test_a_question_is_answered_in_a_word_or_a_number(
    told: tuple[Effect, ...], answers: set[type[Cue]]
) -> None:
    """A count with a number, a look with yes or no, a number read back with either; any of them with "not now"."""
    assert list_answers(final_increase(), State(), told) == answers


def test_what_was_asked_back_stays_open_whatever_was_said_since() -> None:
    """A count read back is in the state until it is answered or lapses."""
    doubt = Doubt(kind=DoubtKind.COUNT, place=Position(), number=224)
    state = State(knitting=Knitting(doubt=doubt))
    assert list_answers(final_increase(), state, ()) == {Yes, No, Count}


@pytest.mark.parametrize("part", [False, True])
def test_yes_and_no_answer_a_count_of_a_part_only_where_they_were_offered(*, part: bool) -> None:
    """Elsewhere a yes heard from the film would be taken for a count."""
    stretch = StitchesToCount(kind=Landmark.MARKER, first=0, end=1, expect=20)
    answers = list_answers(final_increase(), State(), (AskSections(stretch=stretch, yes=part),))
    assert (Yes in answers) is part
