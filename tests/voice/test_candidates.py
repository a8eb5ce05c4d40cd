from __future__ import annotations

from collections.abc import Sequence

from stepper.voice.candidates import Candidates
from stepper.voice.pronouncing import Sounds
from stepper.voice.wordings import Wordings

_SAID = {
    "next": "n ɛ k s t", "step": "s t ɛ p", "go": "g oʊ", "back": "b æ k", "bag": "b æ g", "stepper": "s t ɛ p ɜ",
}  # fmt: skip


class Dictionary:
    """Knows how half a dozen words are pronounced; transcribed by hand (from memory)."""

    def sounds(self, texts: Sequence[str]) -> list[Sounds]:
        """Put the sounds of the words together."""
        return [tuple(sound for word in text.split() for sound in _SAID[word].split()) for text in texts]


WORDINGS = Wordings(phrases={"next step": "next", "go back": "back", "step back": "back"})


def heard(text: str, address: str = "") -> list[tuple[str, object, float]]:
    """Give what is nearest to a text: wording, meaning, distance."""
    dictionary = Dictionary()
    found = Candidates(WORDINGS, address, dictionary).nearest(dictionary.sounds([text])[0], 2)
    return [(each.text, each.means, each.distance) for each in found]


def test_a_phrase_said_right_is_nearest_and_one_misheard_near() -> None:
    """At no distance with what it means; with one like sound in place of another still before the rest."""
    assert heard("next step")[0] == ("next step", "next", 0)
    text, _, distance = heard("go bag")[0]
    assert text == "go back"
    assert 0 < distance < 0.1 < heard("go bag")[1][2]


def test_the_address_word_belongs_to_what_is_heard_but_not_to_the_wording() -> None:
    """With it a cue fits exactly; the text that comes back is the cue alone."""
    assert heard("stepper go back", "stepper")[0] == ("go back", "back", 0)
    assert heard("go back", "stepper")[0][2] > 0.3


def test_silence_is_near_to_nothing() -> None:
    """No sounds, or no phrases, no candidates."""
    assert heard("") == []
    assert Candidates(Wordings(phrases={}), "", Dictionary()).nearest(("g",), 4) == []


def test_wordings_of_different_meaning_that_sound_alike_are_named() -> None:
    """Two wordings of one cue may sound alike as they please."""
    wordings = Wordings(
        phrases={"go back": "back", "go bag": "other", "step back": "back", "next step": "next"}
    )
    [(one, other, distance)] = Candidates(wordings, "", Dictionary()).alike(0.1)
    assert (one, other) == ("go back", "go bag")
    assert 0 < distance <= 0.1
    assert Candidates(wordings, "", Dictionary()).alike(0.0) == []


def test_a_wording_without_a_sound_is_named_and_harms_nothing() -> None:
    """Somebody may write three dots."""
    wordings = Wordings(phrases={"": "silent", "go back": "back"})
    candidates = Candidates(wordings, "", Dictionary())
    assert candidates.unspeakable == ("",)
    assert [each.text for each in candidates.nearest(("g", "oʊ"), 4)] == ["go back"]
