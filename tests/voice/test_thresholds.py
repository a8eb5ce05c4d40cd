from __future__ import annotations

from stepper.voice.thresholds import LOOSE, STRICT


def test_behind_an_address_word_less_is_asked_for() -> None:
    """No threshold of the loose row is stricter than that of the strict one."""
    assert LOOSE.least <= STRICT.least
    assert LOOSE.clear <= STRICT.clear
