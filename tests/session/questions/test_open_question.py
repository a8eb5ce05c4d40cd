from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.model import Plan
from stepper.session.counting.doubts import AskBack
from stepper.session.cues import Count, Cue, Next, No, Yes
from stepper.session.effects import AskCount, AskLook, AskSections, Effect
from stepper.session.fault.landmarks import Landmark
from stepper.session.fault.respond import AskAgain
from stepper.session.fault.ways import StitchesToCount
from stepper.session.questions.open_question import list_answers
from stepper.session.state import Doubt, DoubtKind, Knitting, Position, Seen, State
from tests.plans import final_increase
from tests.playbook import AT
from tests.session.open_row.evening import ONE_ROUND, cowl, evening

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


@pytest.mark.parametrize(
    ("garment", "said", "answers"),
    [
        (cowl(proposed=ONE_ROUND), (), {Yes, No, Count}),
        (cowl(proposed=ONE_ROUND), (No(),), {Count}),
        (cowl(), (), {Count}),
        (cowl(), (Next(), Next()), {Count}),
        (cowl(), (Next(), Count(stitches=44)), {Yes, No, Count}),
        (cowl(proposed=ONE_ROUND), (Next(),), {Yes, No, Count}),
        (cowl(), (No(),), {Yes, No, Count}),
    ],
)
def test_of_a_row_that_is_not_read_a_word_answers_only_what_was_just_asked(
    garment: Plan, said: tuple[Cue, ...], answers: set[type[Cue]]
) -> None:
    """While she knits twenty rounds by its words a film says yes and no as well, and the file is written after a yes."""
    session = evening(garment)
    for cue in said:
        session.adopt(session.consider(replace(cue, at=AT)))
    assert list_answers(session.plan, session.state, ()) == answers
    assert list_answers(session.plan, evening(garment, index=1).state, ()) == set()
