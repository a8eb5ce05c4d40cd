"""Another skein is named before it is needed. Source of the rounds: sums of `tests/plan/yarn/test_skein_ends.py`."""

from __future__ import annotations

from itertools import pairwise

from stepper.language.effect_words import tell_effect
from stepper.plan.yarn.skein_ends import SkeinEnd
from stepper.session.cues import RoundsDone
from stepper.session.due.next_skein import GetSkein, find_ends_ahead, tell_skeins
from stepper.session.effects import TellStep
from stepper.session.machine import Session
from stepper.session.state import Knitting, Position
from tests.fixtures import plan_named
from tests.playbook import AT, after, opened, transcript


def test_the_next_skein_is_named_once_and_rounds_before_the_old_one_ends() -> None:
    """The first 175 m of chalk are knitted in round 21 of the body: nobody looks for a skein with an end in hand."""
    plan = plan_named("switchback")
    places = [Position(index=index) for index in range(len(plan.rounds))]
    told = [one for a, b in pairwise(places) for one in tell_skeins(plan, Knitting(place=b), a, b)]
    ends = find_ends_ahead(plan, Knitting())
    assert [one.end for one in told] == list(ends)
    assert all(0 < one.end.likely - one.here <= 12 for one in told)
    first = plan.rounds[ends[0].likely]
    assert (first.section, first.number, plan.yarns[ends[0].yarn]) == ("body", 21, "chalk")
    assert tell_effect(told[0], plan) == "In about 5 rounds you need another skein of chalk."


def test_it_is_said_before_the_round_and_with_what_else_is_ahead() -> None:
    """Behind the instruction it would push the stitches out of mind."""
    plan = plan_named("switchback")
    first = find_ends_ahead(plan, Knitting())[0]
    session = after(opened(plan), "go to round 16 of body")
    assert session.state.place.index == first.soonest - 2
    session = after(opened(plan), "go to round 15 of body")
    kinds = [type(each) for each in session.consider(RoundsDone(at=AT)).effects]
    assert kinds.index(GetSkein) < kinds.index(TellStep)
    assert "another skein of chalk" in transcript(session, "> what is ahead tonight")


def test_weighing_the_ball_moves_it_and_undo_moves_it_back() -> None:
    """What the scale says is nearer the truth than the label."""
    plan = plan_named("switchback")
    session = after(opened(plan), "go to round 5 of body")
    before = find_ends_ahead(plan, session.state.knitting)[0]
    weighed = after(session, "chalk weighs 4 grams")
    assert find_ends_ahead(plan, weighed.state.knitting)[0].likely < before.likely
    undone = after(weighed, "undo")
    assert find_ends_ahead(plan, undone.state.knitting)[0] == before


def test_the_last_skein_is_never_called_another() -> None:
    """She would look for what is not there; a weighing says whether it lasts."""
    plan = plan_named("switchback")
    last = GetSkein(end=SkeinEnd(yarn="MC", soonest=9, likely=9, more=False), here=8)
    line = tell_effect(last, plan)
    assert line.startswith("In about a round the last skein of chalk may end. Weigh it and say: chalk weighs")


def test_a_finished_garment_needs_no_skein() -> None:
    """Past the last round nothing is in sight."""
    plan = plan_named("switchback")
    session = Session(plan)
    at = Position(index=len(plan.rounds))
    assert list(tell_skeins(plan, session.state.knitting, Position(index=len(plan.rounds) - 1), at)) == []
