from __future__ import annotations

import re
from dataclasses import replace

from stepper.screen.drawing.rows import text_of
from stepper.screen.keys import KEYS, NUMBER_KEYS
from stepper.screen.pages.keys_page import draw_keys_page, fill_blanks
from tests.screen.scenes import Desk, terminal


def _whole(columns: int) -> str:
    scene = Desk().scene("?")
    return "\n".join(text_of(row) for row in draw_keys_page(scene, terminal(columns, 200)))


def test_the_page_is_the_table() -> None:
    """Every key, what it does and what can be said instead, at every width."""
    for columns in (60, 80, 120):
        text = " ".join(_whole(columns).split())
        for row in KEYS:
            assert row.says in text
            assert all(f'"{fill_blanks(phrase, "chalk")}"' in text for phrase in row.spoken)
        for number in NUMBER_KEYS:
            assert f"{number.key} {number.says}" in text


def test_down_shows_more_and_stops_at_the_end() -> None:
    """Nobody scrolls into nothing."""
    far = Desk().scene("?", *["down"] * 200)
    text = "\n".join(text_of(row) for row in draw_keys_page(far, terminal()))

    assert "stepper knit FILE --plain" in text


def test_her_own_words_stand_on_the_page() -> None:
    """Who forgot what she called a cue looks where all the others are."""
    scene = replace(Desk().scene("?"), own_words={"weiter bitte": "next step"})
    text = "\n".join(text_of(row) for row in draw_keys_page(scene, terminal(80, 200)))

    assert "Your own words:" in text
    assert re.search(r'"weiter bitte" +"next step"', text)


def test_examples_can_be_said_as_they_stand() -> None:
    """No blank is left, and the first person is a capital."""
    assert fill_blanks("and {tens}", "pine") == "and ten"
    assert fill_blanks("{yarn} weighs {weight}", "pine") == "pine weighs 42 grams"
    assert fill_blanks("where am i", "pine") == "where am I"
