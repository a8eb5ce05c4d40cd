"""A measurement beside the wearer's."""

from __future__ import annotations

from dataclasses import replace

from stepper.report.measure.measuring import Measurement, body_of
from tests.plan.test_blend import switchback

CHEST = Measurement(name="chest", needles_mm=800, blocked_mm=None, stitches=160, measure="bust", body_mm=900)


def test_the_fit_has_a_word_at_the_chest_alone() -> None:
    """800 on 900 mm is 11 % narrower: stretched; 860 is 4 %, very close."""
    assert CHEST.word == "stretched"
    assert replace(CHEST, needles_mm=860).word == "very close"
    assert replace(CHEST, measure="neck").word == ""


def test_what_is_worn_is_what_is_blocked() -> None:
    """Ease is taken from the blocked garment where that is known."""
    assert replace(CHEST, blocked_mm=850).ease_mm == -50


def test_only_what_goes_around_and_the_foot_are_compared() -> None:
    """A sleeve may be as long as she likes; a sock as long as her foot."""
    length = replace(CHEST, stitches=0)
    assert not replace(length, measure="arm_length").compared
    assert replace(length, measure="foot_length").compared


def test_chest_and_bust_are_one_measurement() -> None:
    """Whichever word the file uses."""
    assert body_of(replace(switchback(), body={"chest": 900}), "bust") == 900
    assert body_of(replace(switchback(), body={}), "bust") is None
