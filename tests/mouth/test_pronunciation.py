from __future__ import annotations

from collections.abc import Iterator
from importlib.util import find_spec

import pytest

from stepper.mouth.pronunciation import SOUNDS, Pronouncer, split_phonemes


@pytest.fixture(scope="module")
def pronouncer() -> Iterator[Pronouncer]:
    """One worker for the tests of this module."""
    if find_spec("espeakng_loader") is None:
        pytest.skip("eSpeak NG is not installed")
    found = Pronouncer()
    yield found
    found.close()


def test_figures_are_pronounced_as_the_words_they_stand_for(pronouncer: Pronouncer) -> None:
    """A recogniser may write either; both must be the same sounds."""
    figures, words = pronouncer.sounds(["count is 246", "count is two hundred forty six"])
    assert figures == words != ()


def test_two_words_that_sound_alike_have_the_same_sounds(pronouncer: Pronouncer) -> None:
    """Knit and nit, purl and pearl: homophones by any dictionary (from memory)."""
    knit, nit, purl, pearl = pronouncer.sounds(["knit", "nit", "purl", "pearl"])
    assert knit == nit
    assert purl == pearl
    assert knit != purl


def test_several_clauses_are_one_row_and_silence_is_none(pronouncer: Pronouncer) -> None:
    """Marks do not cut a text off, and an empty text has no sounds."""
    apart, together, nothing = pronouncer.sounds(["Stepper. Next step!", "stepper next step", ""])
    assert apart == together
    assert nothing == ()


def test_stress_and_length_are_dropped_and_double_letters_kept() -> None:
    """The alphabet's tʃ and oʊ are one sound each; its ˈ and ː are none."""
    assert split_phonemes("ˈtʃoʊz") == ("tʃ", "oʊ", "z")
    assert split_phonemes("niː(de)d") == ("n", "i", "d")
    assert set(split_phonemes("ɹʌnɚ")) <= set(SOUNDS)
