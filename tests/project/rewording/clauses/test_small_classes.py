"""The small sets are held against the closed classes beside which they are asked. Source: English grammar."""

from __future__ import annotations

import pytest

from stepper.project.rewording.clauses import small_classes as small
from stepper.project.rewording.clauses import word_classes as of
from stepper.project.rewording.clauses.telling import works_nothing

DANGERS = of.CRAFT | of.FABRIC | of.COLOURS | of.LIMITS | of.NUMBERS


@pytest.mark.parametrize(
    "words",
    [
        *(small.PAST, small.LIES, small.FRAGMENT, small.MILD, small.GOOD, small.OPENS, small.GREETINGS),
        *(small.ANSWERED, small.INDIFFERENT, small.SOMEBODY, small.SHOWN),
    ],
)
def test_words_that_let_a_sentence_pass_hold_none_of_danger(words: frozenset[str]) -> None:
    """A danger stands for a sentence that is not passed over, so a word cannot be both."""
    assert words & DANGERS == set()


def test_greetings_and_fragments_name_nothing_of_the_work() -> None:
    """By them a cry is known, and "Sleeves next!" is none."""
    assert set() == (small.GREETINGS | small.FRAGMENT | small.GOOD) & (of.STITCH_THINGS | of.PARTS)


def test_beginnings_are_places_or_faults_of_the_work() -> None:
    """By "the seam lies at the back" a place is told; only what lies somewhere by itself may be in the set."""
    faults = {"hole", "holes", "gap", "gaps", "bump", "bumps", "jog"}
    assert {*faults, "opening"} == small.BEGINNINGS - (of.STITCH_THINGS | of.PARTS)
    assert faults <= of.TROUBLES


def test_mild_words_are_forms_in_ing_of_no_craft() -> None:
    """What "is growing" works nothing, who "is purling" does."""
    assert all(word.endswith("ing") for word in small.MILD)
    assert set() == small.MILD & of.CRAFT


@pytest.mark.parametrize(
    ("told", "doubted"),
    [
        ("Well, that was fun!", "Well, that was purled!"),
        ("The hole sits at the back.", "The hole now sits at the back."),
        ("I used a soft yarn.", "I use the sleeve."),
        ("Does it look nice?", "Does it look too short?"),
        ("The hat is shown in the photo.", "The hat is knitted in the photo."),
    ],
)
def test_each_word_tips_its_sentence(told: str, doubted: str) -> None:
    """A set is worth its place only where a sentence hangs on it."""
    assert (works_nothing(told), works_nothing(doubted)) == (True, False)
