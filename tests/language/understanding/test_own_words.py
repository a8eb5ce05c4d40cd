from __future__ import annotations

import pytest

from stepper.language.understanding.own_words import find_faults, list_own_words, means_the_same, sound_alike
from tests.plans import final_increase

GARMENT = final_increase()


def test_words_that_can_be_followed_have_no_fault() -> None:
    """In any language, and where a wording of the vocabulary is only said again."""
    own = {"weiter bitte": "next step", "Tick!": "n", "carry on": "move on", "zurück": "go back"}

    assert list(find_faults(own, GARMENT)) == []


@pytest.mark.parametrize(
    ("own", "words", "at_meaning", "sentence"),
    [
        ({"tick": "next stp"}, "tick", True, "not a wording of a cue"),
        ({"tick": "count is {number}"}, "tick", True, "has a blank"),
        ({"carry on": "go back"}, "carry on", False, "is a cue already"),
        ({"go to the yoke": "go back"}, "go to the yoke", False, "is a cue already"),
        ({"stitch ten": "go back"}, "stitch ten", False, "is a cue already"),
        ({"tick tock": "next step", "Tick, tock!": "go back"}, "Tick, tock!", False, "sound the same"),
        ({"!": "next step"}, "!", False, "no word in it"),
    ],
)
def test_words_that_cannot_be_followed_are_told(
    own: dict[str, str], words: str, at_meaning: bool, sentence: str
) -> None:
    """A cue taken for another moves her place; one that is never understood looks like a deaf program."""
    (fault,) = find_faults(own, GARMENT)

    assert (fault.words, fault.at_meaning) == (words, at_meaning)
    assert sentence in fault.sentence


def test_wordings_of_one_cue_mean_the_same() -> None:
    """Two wordings of hers that are alike are a clash only where they stand for different cues."""
    assert means_the_same("next step", "carry on", GARMENT)
    assert not means_the_same("next step", "go back", GARMENT)
    assert sound_alike("The tick, please!", "tick")


def test_the_help_names_her_own_words() -> None:
    """What she set herself can be asked for too; without any nothing is added."""
    assert list_own_words({"weiter bitte": "next step"}) == 'Your own words: "weiter bitte" for next step.'
    assert list_own_words({}) == ""
