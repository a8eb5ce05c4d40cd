from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest

from stepper.plan.model import Plan
from stepper.session.changed_plan.plan_question import first_say
from stepper.session.cues import Back, Choose, Count, GoTo, Next, Undo
from stepper.session.events import PlaceAsked, PlanChanged
from stepper.session.machine import Session
from stepper.session.replay import replay_events
from stepper.session.state import Knitting, Position, State
from tests.plans import plan
from tests.playbook import AT, check, opened, tell
from tests.session.test_machine import MemoryJournal

OLD = plan(("neck", ["co20", "k20"]), ("yoke", ["k20", "k10 m1 k10", "k21", "p21", "bo21"]))
NEW = plan(("neck", ["co20", "k20"]), ("yoke", ["k20", "k5 m1 k10 m1 k5", "k22", "p22", "bo22"]))


def at_the_chest(journal: MemoryJournal | None = None) -> Session:
    """Stand in the fifth round of the garment, with three stitches of it worked."""
    session = opened(OLD)
    journal = journal if journal is not None else MemoryJournal()
    journal.append(Session(OLD).consider_opening(AT, "first").events)
    for cue in (GoTo(at=AT, place="yoke", round_number=3),):
        considered = session.consider(cue)
        journal.append(considered.events)
        session.adopt(considered)
    return session


def asked() -> tuple[Session, list[str]]:
    """Open a sitting on a file that was changed in what is knitted."""
    session = at_the_chest()
    return session, tell(session, session.consider_plan(NEW, AT, "second"))


def test_where_to_go_on_is_asked_and_nothing_moves_before_the_answer() -> None:
    """The count on her needles is not the new pattern's: she says where, the program does not guess."""
    session, lines = asked()

    assert lines[0].startswith("The pattern has changed since last time.")
    assert lines[1] == (
        "Where do you go on? 1: Yoke, round 3; you have 21 stitches and it wants 22. "
        "2: Yoke, round 2; 20 stitches, as it wants; take back 1 round. Say: take number 1."
    )
    assert (session.state.place, session.plan, session.state.fingerprint) == (Position(index=4), OLD, "first")


@pytest.mark.parametrize(
    "cue", [Next(at=AT), Back(at=AT), Count(at=AT, stitches=21), Undo(at=AT), Choose(at=AT, number=7)]
)
def test_everything_else_waits_for_the_answer(cue: Next) -> None:
    """A pedal pressed out of habit must not move her in a pattern she has not agreed to."""
    session, _ = asked()
    before = session.state

    considered = session.consider(cue)

    assert (considered.events, considered.state) == ((), before)
    assert first_say(before) == "First say where you go on: take number 1 to 2."


def test_the_answer_moves_to_the_new_pattern() -> None:
    """By a cue as any other: what comes off, what does not fit, and what is knitted next."""
    session, _ = asked()

    check(
        session,
        """
        > say again
        Where do you go on? 1: Yoke, round 3; you have 21 stitches and it wants 22. 2: Yoke, round 2;
            20 stitches, as it wants; take back 1 round. Say: take number 1.
        > take number 2
        Going on in the changed pattern. Take back 1 round.
        Yoke, round 2 of 5: knit five, make one, knit ten, make one, knit five.
        > next step
        Round 3: knit all twenty two.
        """,
    )
    assert (session.base, session.state.fingerprint, session.state.question) == (NEW, "second", None)


def test_the_question_and_the_answer_are_kept_and_replayed() -> None:
    """The journal alone leads to the same place; a power cut before the answer asks again."""
    journal = MemoryJournal()
    session = at_the_chest(journal)
    question = session.consider_plan(NEW, AT, "second")
    journal.append(question.events)
    session.adopt(question)
    before = replay_events(journal.events)
    assert before == session.state
    assert isinstance(question.events[-1], PlaceAsked)

    again = Session(OLD, before).consider_plan(NEW, AT, "second")
    assert again.state.question == before.question
    answer = session.consider(Choose(at=AT, number=1))
    journal.append(answer.events)
    session.adopt(answer)

    assert isinstance(answer.events[0], PlanChanged)
    assert replay_events(journal.events) == session.state
    assert session.state.place == Position(index=4)


def test_a_question_ends_where_the_file_is_put_back() -> None:
    """The next sitting opens on the pattern she knitted by, as if nothing had been asked."""
    session, _ = asked()
    later = Session(OLD, session.state)

    considered = later.consider_opening(AT, "first")

    assert considered.state.question is None
    assert considered.plan == OLD


def test_without_the_file_an_answer_has_no_pattern_to_lead_to() -> None:
    """A state taken up alone refuses, rather than put her place into the wrong plan."""
    session, _ = asked()
    alone = Session(OLD, session.state)

    assert alone.consider(Choose(at=AT, number=1)).events == ()


def test_the_ears_may_close_and_the_evening_may_end_on_a_question() -> None:
    """Going to bed is no answer; it is asked again next time."""
    session, _ = asked()

    check(
        session,
        """
        > stop listening
        Not listening until you say: start listening.
        > start listening
        Listening.
        Where do you go on? 1: Yoke, round 3; you have 21 stitches and it wants 22. 2: Yoke, round 2;
            20 stitches, as it wants; take back 1 round. Say: take number 1.
        > that is all for tonight
        I will ask again next time where to go on in the changed pattern.
        """,
    )


def test_a_pattern_that_is_sure_asks_nothing() -> None:
    """Rounds changed further on are told, and she goes on where she is."""
    longer: Plan = plan(
        ("neck", ["co20", "k20"]), ("yoke", ["k20", "k10 m1 k10", "k21", "p21", "k21", "bo21"])
    )
    session = at_the_chest()

    session.adopt(session.consider_plan(longer, AT, "third"))

    assert (session.state.place, session.state.question) == (Position(index=4), None)
    assert State().question is None


def test_in_the_middle_of_an_increase_round_the_rest_is_offered_to_be_spread_anew() -> None:
    """Five of ten increases are made and the file now wants twenty: beside going back to where both are the same, the
    fifteen to come are spread over the forty stitches left, and the new count is met without ripping."""
    was, now = (
        plan(("yoke", ["co80", line, end])) for line, end in (("(k8 m1)x10", "k90"), ("(k4 m1)x20", "k100"))
    )
    was, now = (
        replace(each, rounds=(each.rounds[0], replace(each.rounds[1], evenly=True), each.rounds[2])) for each in (was, now)
    )
    session = Session(was, State(seq=1, fingerprint="first", knitting=Knitting(place=Position(index=1, stitch=45))))
    lines = tell(session, session.consider_plan(now, AT, "second"))
    assert "1: Yoke, round 2, stitch 45; the rest spread anew, 5 of 20 made." in lines[1]
    assert "take back" in lines[1]

    tell(session, session.consider(Choose(at=AT, number=1)))

    round_ = session.plan.rounds[1]
    assert session.state.place == Position(index=1, stitch=45)
    assert (round_.before, round_.after, len(round_.shaping)) == (80, 100, 20)
    assert round_.shaping[:5] == (8, 16, 24, 32, 40), "those she has made lie where she made them"
    ahead = [after - before for before, after in pairwise(round_.shaping[5:])]
    assert max(ahead) - min(ahead) <= 1


@pytest.mark.parametrize(("many", "words"), [(1, "take number 1."), (2, "take number 1 to 2.")])
def test_as_many_numbers_are_offered_as_there_are_places(many: int, words: str) -> None:
    """ "1 to 1" would have her look for the other."""
    session, _ = asked()
    assert session.state.question is not None
    question = replace(session.state.question, choices=session.state.question.choices[:many])
    assert first_say(replace(session.state, question=question)) == f"First say where you go on: {words}"
