from __future__ import annotations

from pathlib import Path

from num2words import num2words

from stepper.commands.loading import load
from stepper.commands.wordings import is_cue, numbers, wordings_for
from stepper.language.numbers import number
from stepper.language.understand import NotUnderstood, understand

SAMPLE = Path(__file__).parents[2] / "sample_projects" / "switchback.yaml"


def test_everything_listened_for_is_understood_as_what_it_means() -> None:
    """Whatever a recogniser hands over becomes a cue of the kind it stands for."""
    plan = load(SAMPLE).plan
    wordings = wordings_for(plan)
    texts = dict(wordings.phrases)
    texts |= {frame.around("two hundred forty six"): frame.means for frame in wordings.frames}
    for text, means in texts.items():
        cue = understand(text, plan)
        assert not isinstance(cue, NotUnderstood), text
        assert isinstance(means, tuple)
        assert isinstance(cue, means[0]), text


def test_every_number_is_listened_for_as_it_is_said() -> None:
    """All from 0 to 999; the forms with "and" are those of an independent library, num2words."""
    ways = numbers()
    assert set(ways.values()) == set(range(1000))
    assert all(number(way) == value for way, value in ways.items())
    for value in (0, 7, 46, 100, 246, 303, 999):
        assert ways[num2words(value).replace("-", " ")] == value


def test_her_own_wording_is_listened_for_and_means_what_she_says() -> None:
    """In any letters; one for a cue with a slot has no place to put the slot and is left out."""
    wordings = wordings_for(None, {"Weiter bitte": "next step", "so viele": "count is {number}"})
    assert wordings.phrases["weiter bitte"] == wordings.phrases["next step"]
    assert "so viele" not in wordings.phrases


def test_a_single_word_is_never_heard_as_a_cue() -> None:
    """Over a film one word would be a guess; in a frame a count is understood."""
    plan = load(SAMPLE).plan
    assert not is_cue("next", plan)
    assert is_cue("count is 246", plan)
    assert not is_cue("who put that there", plan)
    assert all(len(phrase.split()) > 1 for phrase in wordings_for(plan).phrases)
