from __future__ import annotations

import pytest

from stepper.session import cues, events
from stepper.session.answers import ANSWERS, step_at
from stepper.session.control import ask
from stepper.session.effects import AskLength, Lead, RestHands, TellFinished, TellStep, TurnTo
from stepper.session.machine import Session
from stepper.session.respond import _TOLD
from stepper.session.rules import RULES, Mode
from stepper.session.state import Knitting, Position, State
from tests.plans import final_increase, with_stretch
from tests.playbook import AT, check, opened, tell

GARMENT = final_increase()


def _at(index: int, stitch: int = 0) -> State:
    return State(seq=5, knitting=Knitting(place=Position(index=index, stitch=stitch)), last_cue_at=AT)


def test_every_event_and_every_question_is_answered() -> None:
    """A kind of event or question without an answer would leave the knitter in silence."""
    asking = {cue for (mode, cue), rule in RULES.items() if rule is ask and mode is Mode.KNITTING}

    assert set(_TOLD) <= set(events.EVENTS)  # the others are told in their own words: test_event_words
    assert set(ANSWERS) == asking | {cues.Help, cues.WhatHappened, cues.Remedies, cues.CountAloud, cues.Respace}


@pytest.mark.parametrize("view", cues.View)
def test_looking_changes_nothing_and_turns_the_screen(view: cues.View) -> None:
    """A page is no event: nothing is kept."""
    considered = Session(GARMENT).consider(cues.Look(at=AT, view=view))

    assert considered.events == ()
    assert considered.effects == (TurnTo(view=view),)


def test_a_first_sitting_begins_and_a_later_one_recaps() -> None:
    """What was last done, then what comes first now."""
    assert tell(Session(GARMENT), Session(GARMENT).consider_opening(AT, "f")) == [
        "Starting: 23 rounds in all. Say next step when a step is done.",
        "Neckband, round 1 of 2: cast on two hundred twenty five.",
    ]
    session = Session(GARMENT, _at(3, 102))
    assert tell(session, session.consider_opening("2025-03-04T20:00:00+01:00", "f")) == [
        "Last done on 3 March: Yoke, round 2 of 6, Final increase, stitch 102.",
        "Yoke, round 2 of 6, Final increase, at stitch 102: knit ten, make one; "
        "then knit eleven, make one, three times.",
    ]
    fresh = Session(GARMENT, State(seq=2))
    assert tell(fresh, fresh.consider_opening(AT, "f"))[0] == "Nothing is knitted yet."


def test_a_step_is_said_from_the_place_in_it() -> None:
    """What is already worked of a step is not said again as still to do."""
    effect = step_at(GARMENT, _at(8, 100), Lead.PART)

    assert isinstance(effect, TellStep)
    assert (effect.part.start, effect.part.end) == (100, 156)
    assert isinstance(step_at(GARMENT, _at(23), Lead.FULL), TellFinished)


def test_again_is_slower_and_changes_nothing() -> None:
    """The same step, a little slower."""
    session = Session(GARMENT, _at(7))
    considered = session.consider(cues.Again(at=AT))

    assert [effect.slower for effect in considered.effects if isinstance(effect, TellStep)] == [True]
    assert considered.state == session.state
    check(
        session,
        """
        > say that again
        Round 6, Divide: in chalk, knit forty three, hold fifty four for left sleeve,
            cast on nine, knit eighty one.
        """,
    )


def test_questions_are_answered_in_one_line_each() -> None:
    """Where, how many, how far and how spaced, from the middle of a shaped round."""
    check(
        Session(GARMENT, _at(3, 10)),
        """
        > where am i
        Yoke, round 2 of 6, Final increase, at stitch 10 of 246. 226 stitches on the needles.
        > how many stitches
        226 stitches now, 246 at the end.
        > how far to go
        5 rounds left in yoke, 20 altogether, 3578 stitches.
        About 2 hours 20 minutes of knitting left, at a usual pace until yours is known. Done about
            6 March, with usual evenings until yours are known; in 8 cases of 10 between 4 March and 9 March.
        A two-hour film brings 17 rounds: done to Body, round 12 of 15.
        > where are the increases
        21 increases: 15 gaps of 11 and 6 of 10; 1 done, next in 7 stitches.
        > go to body
        Body, round 1 of 15: knit all one hundred fifty six.
        > where are the increases
        No increases or decreases in this round, and none follow.
        > go to yoke
        Yoke, round 1 of 6: knit all two hundred twenty five.
        > where are the decreases
        No increases or decreases in this round; the next are 1 round on: Yoke, round 2 of 6, Final increase.
        """,
    )


def test_a_rest_is_suggested_at_the_end_of_a_round_once() -> None:
    """Fifty minutes of knitting, then one line in front of the next round, and none at the round after."""
    session = Session(GARMENT)
    session.adopt(session.consider_opening("2025-03-03T20:00:00+01:00", "a"))
    minutes, told_at = 0, []
    while session.state.place.index < len(GARMENT.rounds) - 1:
        minutes += 3
        at = f"2025-03-03T{20 + minutes // 60}:{minutes % 60:02}:00+01:00"
        considered = session.consider(cues.Next(at=at))
        rests = [each for each in considered.effects if isinstance(each, RestHands)]
        if rests:
            told_at.append((minutes, rests[0].minutes, considered.effects.index(rests[0])))
            assert isinstance(considered.effects[-1], TellStep)
            assert considered.state.place.stitch == 0
        session.adopt(considered)
    assert minutes > 70
    assert [(told, said) for told, said, _ in told_at] == [(told_at[0][0], 50)]
    assert 50 <= told_at[0][0] < 56


def test_nothing_is_foretold_of_a_finished_garment() -> None:
    """Every round is done; there is no day to name."""
    session = Session(GARMENT, _at(len(GARMENT.rounds)))
    effects = session.consider(cues.HowFar(at=AT)).effects
    assert [type(each).__name__ for each in effects] == ["TellFar"]


def test_a_stretch_too_short_to_measure_is_not_asked_about() -> None:
    """Three rounds of rib cannot be measured before they are begun."""
    short = with_stretch(GARMENT, last=10)
    session = Session(short, _at(7))

    effects = session.consider(cues.Next(at=AT)).effects

    assert not any(isinstance(effect, AskLength) for effect in effects)


def test_help_offers_what_makes_sense() -> None:
    """It names wordings that are understood, with examples from this garment."""
    session = opened(GARMENT)
    lines = tell(session, session.consider(cues.Help(at=AT)))

    assert lines[0].startswith("You can say: next step; go back; say again; where am I;")
    assert "start listening" not in lines[0]
    assert "chalk weighs 42 grams" in lines[0]
