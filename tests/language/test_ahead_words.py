"""Words for what is due on the way."""

from __future__ import annotations

from stepper.language.effect_words import tell_effect
from stepper.session.ready import GetReady
from tests.plans import final_increase


def test_things_to_fetch_are_listed_behind_when_they_are_needed() -> None:
    """When comes first: whether to get up now is what she wants to know."""
    made = final_increase()
    key, name = next(iter(made.yarns.items()))
    one = GetReady(index=3, here=2, markers=1)
    assert tell_effect(one, made) == "In the next round you need a marker."
    many = GetReady(index=4, here=2, needle_mm=4.0, holder=True, markers=8, yarns=(key,))
    expected = f"In 2 rounds you need the 4 mm needle, a holder, markers and {name}."
    assert tell_effect(many, made) == expected
