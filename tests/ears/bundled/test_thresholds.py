from __future__ import annotations

from stepper.ears.bundled.thresholds import LOOSE, STRICT


def test_behind_an_address_word_less_is_asked_for() -> None:
    """No threshold of the loose row is stricter than that of the strict one; nor where two models agree."""
    assert LOOSE.least <= STRICT.least
    assert LOOSE.agreed <= STRICT.agreed
    for row in (LOOSE, STRICT):
        assert row.agreed <= row.least
    assert LOOSE.clear <= STRICT.clear
