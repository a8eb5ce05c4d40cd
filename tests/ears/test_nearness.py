from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.ears.nearness import HERS_LESS, NEAR, less_for_hers, nearness
from stepper.ears.ports import FoundAlone

CUE = FoundAlone(text="what happened", start_s=0.5, end_s=1.3, fit=0.0, length=9, before=0, behind=0)


def of(found: FoundAlone, falls_db: float = 9.0, above_db: float = 3.0, sure: float = 1.0) -> float:
    """Return how surely a cue is hers."""
    return nearness(found, falls_db=falls_db, above_db=above_db, sure=sure)


def test_the_sum_is_that_of_the_table() -> None:
    """By hand: 0 + 7.5 + 0.55 × 9 + 0.52 × 9 + 0.40 × 3 - 17.8 = 0.53."""
    assert of(CUE) == pytest.approx(0.53)


def test_a_cue_that_goes_on_or_does_not_fit_is_not_hers() -> None:
    """Each alone turns the same cue into a film's."""
    assert of(CUE, falls_db=4.0) < 0
    assert of(replace(CUE, behind=3)) < 0
    assert of(replace(CUE, before=4)) < 0
    assert of(CUE, sure=0.7) < 0
    assert of(CUE, above_db=1.0) < 0
    assert of(replace(CUE, fit=-9.0)) < 0


def test_a_short_cue_has_to_be_nearer_than_a_long_one() -> None:
    """ "Go on" is said by the way in any film, "how far to the next decrease" in hardly any."""
    short = replace(CUE, text="go on", length=4)
    assert of(short) < 0 <= of(short, falls_db=14.0, above_db=6.0)


def test_nothing_counts_beyond_where_it_was_learnt() -> None:
    """However much louder than the room, words that do not fit stay unheard."""
    assert of(CUE, falls_db=60.0, above_db=50.0) == of(CUE, falls_db=14.0, above_db=8.0)
    assert of(replace(CUE, fit=-200.0), sure=0.0) == of(replace(CUE, fit=-12.0), sure=0.6)
    assert of(replace(CUE, fit=-12.0, behind=4), falls_db=60.0, above_db=50.0, sure=0.6) < 0


def test_what_is_needed_can_be_asked_for_more_strictly() -> None:
    """The table is one value, so that another can be tried on the same sound."""
    strict = replace(NEAR, least=NEAR.least + 2)
    assert nearness(CUE, falls_db=9.0, above_db=3.0, sure=1.0, table=strict) == pytest.approx(of(CUE) - 2)


def test_more_is_needed_for_a_number() -> None:
    """A wrong count costs more than a cue said again."""
    assert of(replace(CUE, has_number=True)) == pytest.approx(of(CUE) - 0.5)


def test_less_is_needed_of_an_answer_to_what_is_open() -> None:
    """ "No" is two sounds, which no other cue would be heard by; what falls too little is the film's own all the
    same."""
    word = replace(CUE, text="no", length=2)
    assert of(word) < 0 <= of(replace(word, is_answer=True), above_db=5.0)
    assert of(replace(word, is_answer=True), falls_db=2.5, above_db=5.0) < 0


def test_her_own_voice_may_be_as_soft_as_the_film_but_not_in_the_middle_of_a_sentence() -> None:
    """It stands for what loudness would have told, up to a bound: by hand 0.52 × 2 + 0.40 × 3 = 2.24."""
    assert less_for_hers(12.0, 5.0) == pytest.approx(2.24)
    assert less_for_hers(14.0, 8.0) == 0
    assert less_for_hers(3.0, 0.0) == HERS_LESS
    soft = of(CUE, falls_db=5.0, above_db=0.0)
    assert soft < 0 <= soft + less_for_hers(5.0, 0.0)
    said_amid = of(replace(CUE, before=4, behind=4), falls_db=5.0, above_db=0.0)
    assert said_amid + less_for_hers(5.0, 0.0) < 0
