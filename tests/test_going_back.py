"""Going back goes back: whatever was said before, no way to mend a fault leads ahead of where she is.

Over every sample, with jumps, lifelines, counts right and wrong, answers, remedies and undo in any order.
"""

from __future__ import annotations

import random

import pytest

from stepper.plan.model import Plan
from stepper.session import cues
from stepper.session.counting.tally import count_at
from stepper.session.cues import Cue
from stepper.session.events import Remedied
from stepper.session.fault.inquiry import inquire
from stepper.session.machine import Session
from stepper.session.state import Asking, Position, Seen
from stepper.session.steps import By
from tests.fixtures import SAMPLES, plan_named
from tests.playbook import AT, after, opened

CUES = 260
"""Cues said to each sample."""
NAMES = [path.stem for path in SAMPLES]


def test_a_rip_to_a_remembered_count_never_skips_rounds() -> None:
    """A count of round 9 is no way back from round 5: she would be told to go on four chart rounds ahead."""
    session = after(
        opened(plan_named("hat")),
        "go to band round 9", "count is 112", "go to band round 5", "stitch 20", "count is 110",
    )  # fmt: skip
    before = session.state.place

    after(session, "what can i do", "take remedy 1")

    assert session.state.place <= before


def test_a_lifeline_behind_the_last_round_breaks_nothing() -> None:
    """She laid a lifeline at the end, went back, and counted: the ways to mend it are told."""
    garment = plan_named("switchback")
    last = garment.rounds[-1]
    session = after(
        opened(garment),
        f"go to {last.section} round {last.number}", "next", "lifeline here", "back", "stitch 3",
        f"count is {count_at(garment, Position(index=last.index, stitch=3)) - 1}",
    )  # fmt: skip

    inquiry = inquire(session.plan, session.state)

    assert inquiry is not None
    assert all(way.place <= session.state.place for way in inquiry.remedies)
    after(session, "what can i do")


def test_a_fault_told_before_she_went_back_is_not_undone_ahead_of_her() -> None:
    """The count was off at round 9; she has gone back to round 5 since, and there is nothing to unknit."""
    session = after(opened(plan_named("hat")), "go to band round 9", "stitch 30", "count is 111")
    after(session, "go to band round 5")

    inquiry = inquire(session.plan, session.state)

    assert inquiry is not None
    assert all(way.place <= session.state.place for way in inquiry.remedies)


@pytest.mark.parametrize("name", NAMES)
def test_no_remedy_moves_ahead_and_no_cue_raises(name: str) -> None:
    """A remedy takes work back or leaves her where she is; whatever she says is answered."""
    chance = random.Random(f"going back {name}")
    session = opened(plan_named(name))
    offered = 0
    for _ in range(CUES):
        before = session.state.place
        considered = session.consider(any_cue(session.plan, session, chance))
        assert considered.effects
        for event in considered.events:
            assert not isinstance(event, Remedied) or event.place <= before
        session.adopt(considered)
        inquiry = inquire(session.plan, session.state)
        for way in inquiry.remedies if inquiry is not None else ():
            offered += 1
            assert way.place <= session.state.place, way
    assert offered


def any_cue(garment: Plan, session: Session, chance: random.Random) -> Cue:
    """Say anything, more often what moves the place, what counts and what mends."""
    place = session.state.place
    expected = count_at(garment, place)
    target = chance.choice(garment.rounds)
    here = garment.rounds[min(place.index, len(garment.rounds) - 1)]
    return chance.choice(
        (
            cues.Next(at=AT),
            cues.Next(at=AT),
            cues.Back(at=AT),
            cues.Back(at=AT),
            cues.GoTo(at=AT, place=target.section, round_number=target.number),
            cues.GoTo(at=AT, round_number=max(1, here.number + chance.randint(-4, 4))),
            cues.AtStitch(at=AT, stitch=chance.randint(0, max(1, here.progress))),
            cues.AtMarker(at=AT),
            cues.Count(at=AT, stitches=expected),
            cues.Count(at=AT, stitches=max(0, expected + chance.choice((-2, -1, 1, 2)))),
            cues.Lifeline(at=AT),
            cues.Tink(at=AT, stitches=chance.randint(1, 150)),
            cues.Choose(at=AT, number=chance.randint(1, 4)),
            cues.Choose(at=AT, number=1),
            cues.Remedies(at=AT),
            cues.WhatHappened(at=AT),
            cues.Saw(at=AT, seen=chance.choice(list(Seen)), number=chance.randint(0, 2)),
            cues.FaultIn(at=AT, round_number=max(1, here.number - chance.randint(0, 6))),
            cues.SectionCount(at=AT, stitches=chance.randint(0, 40)),
            cues.Respace(at=AT),
            cues.Ask(at=AT, asking=chance.choice(list(Asking))),
            cues.Stride(at=AT, by=chance.choice(list(By))),
            cues.Length(at=AT, length_mm=chance.uniform(10, 600)),
            cues.Undo(at=AT),
            cues.Undo(at=AT),
            cues.Redo(at=AT),
            cues.Again(at=AT),
            cues.HowFar(at=AT),
        )
    )


def test_places_are_ordered_as_they_are_knitted() -> None:
    """Round before round, then stitch before stitch: a smaller stitch of a later round is not earlier."""
    assert Position(index=4, stitch=20) < Position(index=8) < Position(index=8, stitch=1)
