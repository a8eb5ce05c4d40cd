from __future__ import annotations

from functools import cache

import pytest

from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.language.understanding.vocabulary import VOCABULARY
from stepper.screen.keys import BY_KEY, KEYS, NUMBER_KEYS, PAGES, Key
from stepper.screen.pages.keys_page import fill_blanks
from stepper.session import cues
from tests.screen.scenes import Desk
from tests.tables import each_row


@cache
def desk() -> Desk:
    """A desk two steps on; made when a test first asks, not while tests are collected."""
    return Desk().do("next", "next")


@each_row(
    ("key", "cue"),
    [
        ("space", cues.Next()),
        ("enter", cues.Next()),
        ("page down", cues.Next()),
        ("right", cues.Next()),
        ("down", cues.Next()),
        ("page up", cues.Back()),
        ("left", cues.Back()),
        ("up", cues.Back()),
        ("u", cues.Undo()),
        ("backspace", cues.Undo()),
        ("r", cues.Redo()),
        ("a", cues.Again()),
        ("w", cues.Where()),
        ("h", cues.HowMany()),
        ("i", cues.Spacing()),
        ("f", cues.HowFar()),
        ("m", cues.AtMarker()),
        ("b", cues.Stride()),
        ("e", cues.Wait()),
        ("c", cues.CountAloud()),
        ("+", cues.Ten(stitches=10)),
        ("x", cues.WhatHappened()),
        ("y", cues.Remedies()),
        ("p", cues.Respace()),
        ("v", cues.Lifeline()),
        ("q q", cues.Enough()),
    ],
)
def test_a_key_asks_for_its_cue(key: str, cue: cues.Cue) -> None:
    """The table, row by row. What pedals send (PageUp, PageDown, arrows, space, enter) steps."""
    row = BY_KEY[key]

    assert row.cue is not None
    assert row.cue(desk().state) == cue
    assert type(cue) in row.kinds


def test_keys_that_toggle_follow_the_state() -> None:
    """Closed ears open, a count under way ends."""
    asleep = Desk().do("stop listening").state
    counting = Desk().do("count with me").state

    assert BY_KEY["e"].cue is not None
    assert BY_KEY["e"].cue(asleep) == cues.Listen()
    assert BY_KEY["c"].cue is not None
    assert BY_KEY["c"].cue(counting) == cues.ThatIsAll()


def test_no_key_stands_in_two_rows() -> None:
    """One key, one thing."""
    assert len(BY_KEY) == sum(len(row.keys) for row in KEYS)


@each_row("row", KEYS)
def test_every_key_is_a_cue_by_voice_too(row: Key) -> None:
    """What can be pressed can be said, and what the page tells her to say is understood as that cue."""
    assert {wording.cue for wording in VOCABULARY} >= set(row.kinds)
    for kind, phrase in zip(row.kinds, row.spoken, strict=True):
        cue = understand(fill_blanks(phrase, "chalk"), desk().plan, counting=True)
        assert not isinstance(cue, NotUnderstood), phrase
        assert type(cue) is kind
        assert not isinstance(cue, cues.Look) or PAGES[cue.view] is row.page


@pytest.mark.parametrize("row", NUMBER_KEYS, ids=lambda row: row.key)
def test_a_number_key_makes_its_cue(row: object) -> None:
    """The number reaches the cue, whichever field it is."""
    assert isinstance(row, type(NUMBER_KEYS[0]))
    cue = row.cue(42)

    assert type(cue) is row.kind
    assert 42 in [getattr(cue, name) for name in type(cue).__dataclass_fields__]
