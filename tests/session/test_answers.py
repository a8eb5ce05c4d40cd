from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.session import cues
from stepper.session.answers import ANSWERS, TellPlace
from stepper.session.effects import TellHelp
from stepper.session.machine import Session
from stepper.session.questions.about_round import TellRepeat
from stepper.session.rules import RULES, Mode
from stepper.session.state import Day, Done, Fault, Knitting, Position, ReadingAlong, State, TimedStep
from tests.fixtures import plan_named
from tests.plans import final_increase
from tests.playbook import AT, tell
from tests.session.test_rules import example
from tests.tables import each_row

GARMENT = final_increase()
ASKING = tuple(cue for cue in cues.CUES if issubclass(cue, cues.Asks))


def test_every_question_has_an_answer() -> None:
    """A cue that only asks and has none would end the sitting with an error."""
    assert set(ASKING) <= set(ANSWERS)


@each_row("cue", ASKING)
@each_row("index", [0, 4, len(GARMENT.rounds)])
def test_asking_changes_nothing_and_is_answered(cue: type[cues.Cue], index: int) -> None:
    """At the beginning, in the middle and when all is done; else she asks once and never again."""
    session = Session(GARMENT, State(seq=5, knitting=Knitting(place=Position(index=index)), last_cue_at=AT))
    considered = session.consider(example(cue))

    assert considered.events == ()
    assert considered.state == session.state
    assert considered.effects


def test_a_question_is_answered_where_no_row_says_else() -> None:
    """While nothing is asked of her and the ears are open, she may ask."""
    for cue in ASKING:
        assert RULES[Mode.KNITTING, cue] is not RULES[Mode.CLOSED, cue]


def test_how_long_she_has_knitted_is_counted_in_stitches_at_her_pace() -> None:
    """A telephone call in between is no knitting; 30 stitches a minute make 900 half an hour."""
    steps = tuple(TimedStep(stitches=300, seconds=600, work="plain") for _ in range(40))
    days = (
        Day(date="2025-03-01", done=(Done(work="plain", stitches=3600),)),
        Day(date="2025-03-03", done=(Done(work="plain", stitches=900),)),
    )
    session = Session(GARMENT, State(seq=5, worked=steps, days=days, last_cue_at=AT))

    assert tell(session, session.consider(cues.HowLong(at=AT))) == [
        "About 30 minutes of knitting this evening, about 2 hours 30 minutes in all."
    ]
    later = tell(session, session.consider(cues.HowLong(at="2025-03-05T20:00:00+01:00")))
    assert later[0] == "Nothing this evening yet, about 2 hours 30 minutes in all."


def test_how_long_before_a_stitch_is_nothing() -> None:
    """And no figure is made up."""
    session = Session(GARMENT, State(seq=5, last_cue_at=AT))

    assert tell(session, session.consider(cues.HowLong(at=AT))) == ["Nothing has been knitted yet."]


@pytest.mark.parametrize(
    ("open_", "named"),
    [
        ({"tens": (10,)}, cues.Ten),
        ({"fault": Fault(place=Position(index=4), difference=-1)}, cues.SectionCount),
        ({}, cues.Next),
    ],
)
def test_help_names_what_fits_what_is_open_but_not_once_all_is_knitted_or_it_waits(
    open_: dict[str, object], named: type[cues.Cue]
) -> None:
    """Told to count on where nothing listens, or nothing is on the needles, she would talk to the wall."""

    def helped(index: int, **fields: object) -> tuple[type[cues.Cue], ...]:
        knitting = Knitting(place=Position(index=index), **open_)  # type: ignore[arg-type] # test notation
        state = State(seq=5, knitting=knitting, last_cue_at=AT, **fields)  # type: ignore[arg-type] # test notation
        (told,) = ANSWERS[cues.Help](GARMENT, state, cues.Help(at=AT))
        assert isinstance(told, TellHelp)
        return told.cues

    assert named in helped(4)
    assert helped(len(GARMENT.rounds))[0] is cues.Back
    assert helped(4, asleep=True)[0] is cues.Listen


def test_help_while_reading_along_names_what_changes_the_reading() -> None:
    """Slower and faster are what she needs then."""
    reading = State(
        seq=5, knitting=Knitting(place=Position(index=4)), last_cue_at=AT, reading=ReadingAlong(index=4)
    )
    (told,) = ANSWERS[cues.Help](GARMENT, reading, cues.Help(at=AT))
    assert isinstance(told, TellHelp)
    assert {cues.Slower, cues.Faster, cues.PauseReading} <= set(told.cues)


def test_in_the_middle_of_a_chart_round_the_repeat_is_told_with_the_place() -> None:
    """Nobody has counted fifty stitches of a chart, and which repeat it is shows on the needles."""
    made = plan_named("switchback")
    index = next(each.index for each in made.rounds if each.chart)
    place = Position(index=index, stitch=made.rounds[index].progress // 2 + 1)
    session = Session(made, State(seq=1, knitting=Knitting(place=place), last_cue_at=AT))
    told = session.consider(cues.Where(at=AT)).effects
    assert [type(each) for each in told[:2]] == [TellPlace, TellRepeat]
    at_start = replace(session.state, knitting=Knitting(place=Position(index=index)))
    beginning = Session(made, at_start).consider(cues.Where(at=AT)).effects
    assert not any(isinstance(each, TellRepeat) for each in beginning)
