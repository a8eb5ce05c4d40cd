from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from stepper.lap.touches import CUES, LONGEST_TEXT, NUMBER_CUES, Touch, parse_touch
from stepper.session import cues
from stepper.session.state import Knitting, Memento, Position, State
from tests.tables import each_row

GOOD: dict[str, Any] = {"device": "ab12", "number": 3, "ask": "next", "seen": 41, "place": [4, 20], "again": True, "age": 1.5}


def test_a_touch_is_read() -> None:
    """All of it, and nothing else that may be there."""
    assert parse_touch({**GOOD, "more": "of this"}) == Touch(
        device="ab12", number=3, ask="next", seen=41, place=Position(index=4, stitch=20), again=True, age_s=1.5
    )


@each_row(
    "wrong",
    [
        {"device": ""},
        {"device": "x" * 41},
        {"device": 7},
        {"number": 0},
        {"number": -1},
        {"number": True},
        {"number": "3"},
        {"number": 1.5},
        {"ask": "close the window"},
        {"ask": None},
        {"ask": ["next"]},
        {"seen": None},
        {"place": [1]},
        {"place": "12"},
        {"place": [1, -2]},
        {"place": {"index": 1}},
        {"value": 10_000},
        {"value": -1},
        {"text": 5},
        {"text": "x" * (LONGEST_TEXT + 1)},
        {"age": "old"},
        {"age": 10**400},
        {"age": float("inf")},
        {"age": float("nan")},
        {"age": -1},
    ],
)
def test_what_is_malformed_is_no_touch(wrong: dict[str, Any]) -> None:
    """It comes from outside, so that anything may be anything."""
    assert parse_touch({**GOOD, **wrong}) is None


def test_half_a_letter_is_shown_as_a_sign_for_one() -> None:
    """A browser may send half of a pair of UTF-16, which no file and no terminal takes."""
    found = parse_touch({**GOOD, "ask": "note", "text": "tight \ud83e here"})
    assert found is not None
    assert found.text == "tight ? here"


def test_a_touch_without_anything_is_none() -> None:
    """Nor is an empty message one."""
    assert parse_touch({}) is None


def test_each_touch_is_a_cue_that_can_be_said() -> None:
    """A page has no door of its own into the session."""
    for ask in CUES:
        made = Touch(device="a", number=1, ask=ask).cue
        assert type(made) in cues.CUES
    for ask in NUMBER_CUES:
        made = Touch(device="a", number=1, ask=ask, value=7).cue
        assert type(made) in cues.CUES
        assert 7 in (getattr(made, "stitches", None), getattr(made, "number", None))
    assert Touch(device="a", number=1, ask="note", text="soft").cue == cues.Note(text="soft")
    assert Touch(device="a", number=1, ask="words", text="where am i").cue is None


@pytest.mark.parametrize(
    ("ask", "by_place", "by_event"),
    [("next", True, False), ("count", True, False), ("undo", False, True), ("choose", False, True), ("note", False, False)],
)
def test_a_step_is_meant_for_the_place_and_an_undo_for_what_happened(ask: str, by_place: bool, by_event: bool) -> None:
    """A note is right wherever it comes; a step from a place that was left would be one too many."""
    here = Position(index=4, stitch=20)
    state = State(seq=41, knitting=Knitting(place=here))
    made = Touch(device="a", number=1, ask=ask, seen=41, place=here)
    assert made.still_meant(state)
    moved = State(seq=41, knitting=Knitting(place=Position(index=5)))
    assert made.still_meant(moved) is not by_place
    assert made.still_meant(State(seq=42, knitting=Knitting(place=here))) is not by_event


def test_a_touch_made_before_a_stop_was_heard_is_not_the_step_behind_it() -> None:
    """At a stop before a step the place stays: a voice and a finger that mean the stop must not finish the step."""
    here = Position(index=4)
    memento = Memento(seq=42, kind="Advanced", knitting=Knitting(place=here))
    heard = State(seq=42, knitting=Knitting(place=here, heard=1), undo=(memento,))
    assert not Touch(device="a", number=1, ask="next", seen=41, place=here).still_meant(heard)
    assert Touch(device="a", number=1, ask="next", seen=42, place=here).still_meant(heard)
    assert Touch(device="a", number=1, ask="next", seen=42, place=here).still_meant(replace(heard, seq=43))
