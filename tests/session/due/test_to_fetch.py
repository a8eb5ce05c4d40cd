"""What has to be fetched before it is needed. The rounds were read off the printed garments of the fixtures."""

from __future__ import annotations

from itertools import pairwise

import pytest

from stepper.language.effect_words import tell_effect
from stepper.session.cues import Next
from stepper.session.due.to_fetch import GetReady, find_needed, tell_ready
from stepper.session.effects import TellStep
from stepper.session.machine import Session
from stepper.session.state import Knitting, Position, State
from tests.fixtures import plan_named
from tests.plans import plan
from tests.playbook import AT


def index_of(name: str, section: str, number: int) -> int:
    """Return the index of a round of a garment."""
    rounds = plan_named(name).rounds
    return next(each.index for each in rounds if (each.section, each.number) == (section, number))


@pytest.mark.parametrize(
    ("name", "section", "number", "told"),
    [
        ("switchback", "yoke", 1, "In 2 rounds you need the 3.75 mm needle."),
        ("switchback", "yoke", 5, "In 2 rounds you need pine."),
        ("switchback", "yoke", 37, "In 2 rounds you need a holder."),
        ("mittens", "right hand", 5, "In 2 rounds you need markers."),
        ("cardigan", "hem", 1, "In 2 rows you need the 4 mm needle."),
    ],
)
def test_what_the_pattern_asks_for_is_told_two_rounds_ahead(
    name: str, section: str, number: int, told: str
) -> None:
    """As printed: a needle, a yarn, a holder, markers; nobody gets up in the middle of a round."""
    plan, index = plan_named(name), index_of(name, section, number)
    found = find_needed(plan, index, here=index - 2)
    assert found is not None
    assert tell_effect(found, plan) == told


def test_each_thing_is_told_once_however_the_rounds_go_by() -> None:
    """Round by round or three at a time, each need lies in sight of one step alone; what is passed is not told."""
    plan = plan_named("switchback")
    needed = {each.index for each in plan.rounds[1:] if find_needed(plan, each.index, here=0)}
    for stride in (1, 3):
        places = [Position(index=index) for index in range(0, len(plan.rounds), stride)]
        told = [one.index for a, b in pairwise(places) for one in tell_ready(plan, a, b)]
        assert len(told) == len(set(told))
        assert set(told) <= needed
        if stride == 1:
            assert set(told) == {index for index in needed if index > 2}


def test_it_is_said_before_the_first_stitch_of_the_round() -> None:
    """Behind the instruction it would push the stitches out of mind."""
    plan = plan_named("switchback")
    index = index_of("switchback", "yoke", 5)
    before = plan.rounds[index - 3]
    place = Position(index=before.index)
    session = Session(plan, State(seq=5, knitting=Knitting(place=place), last_cue_at=AT))
    told = session.consider(Next(at=AT)).effects
    kinds = [type(each) for each in told if isinstance(each, GetReady | TellStep)]
    assert kinds == [GetReady, TellStep]


def test_a_first_needle_named_within_the_piece_is_no_change_of_needles() -> None:
    """The line names what she has been knitting with; sent to fetch it, she would look for another."""
    for before, needed in ((None, None), (3.75, 4.0), (4.0, None)):
        body = plan(("body", ["co20", ("k20", {"needle_mm": before}), ("k20", {"needle_mm": 4.0})]))
        found = find_needed(body, 2, here=1)
        assert (None if found is None else found.needle_mm) == needed, before
