from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace

import numpy as np
import pytest

from stepper.ears.bundled.spotting import Spotter
from stepper.ears.wordings import Called, Frame, Reply, Wordings
from stepper.mouth.pronunciation import SOUNDS, Sounds

_SAID = {
    "next": "n ɛ k s t", "step": "s t ɛ p", "go": "g oʊ", "back": "b æ k", "stepper": "s t ɛ p ɜ", "six": "s ɪ k s",
    "i": "aɪ", "have": "h æ v", "forty": "f ɔ r t i", "stitches": "s t ɪ tʃ ɪ z", "count": "k aʊ n t", "is": "ɪ z",
    "it": "ɪ t", "and": "æ n d", "half": "h æ f", "point": "p ɔɪ n t", "inches": "ɪ n tʃ ɪ z",
    "okay": "oʊ k eɪ", "hey": "h eɪ",
}  # fmt: skip
_UNSURE = 0.1


class Dictionary:
    """Knows how a dozen words are pronounced; transcribed by hand (from memory)."""

    def sounds(self, texts: Sequence[str]) -> list[Sounds]:
        """Put the sounds of the words together."""
        return [tuple(sound for word in text.split() for sound in _SAID[word].split()) for text in texts]


WORDINGS = Wordings(
    phrases={"next step": "next", "go back": "back", "step back": "back", "": "silent"},
    frames=(
        Frame(before="count is", after="", means="count"),
        Frame(before="i have", after="stitches", means="count"),
        Frame(before="", after="back", means="ladder"),
    ),
    numbers={"six": 6, "forty six": 46, "forty": 40},
)
HALVES = {"six": 6, "six and half": 6.5, "forty point six": 40.6}
LENGTHS = Wordings(
    phrases={},
    frames=(
        Frame(before="it is", after="", means="length", numbers=HALVES),
        Frame(before="it is", after="inches", means="inches", numbers=HALVES),
        Frame(before="it is", after="stitches", means="count"),
        Frame(before="", after="back", means="ladder", numbers={}),
    ),
    numbers={"six": 6, "forty six": 46},
)


def said(text: str) -> np.ndarray:
    """Make the frames of a clear voice: each sound for two frames, nothing for one between, all else a tenth."""
    columns = [0]
    for sound in Dictionary().sounds([text])[0]:
        columns += [SOUNDS.index(sound) + 1] * 2 + [0]
    likely = np.full((len(columns), len(SOUNDS) + 1), math.log(_UNSURE / len(SOUNDS)))
    likely[range(len(columns)), columns] = math.log(1 - _UNSURE)
    return likely


@pytest.mark.parametrize(
    ("text", "means"),
    [
        ("next step", "next"),
        ("go back", "back"),
        ("count is forty six", ("count", 46)),
        ("i have six stitches", ("count", 6)),
        ("forty back", ("ladder", 40)),
    ],
)
def test_what_was_said_fits_without_a_loss(text: str, means: object) -> None:
    """A phrase, and a number behind, between and in front of words: it fits as well as any sounds could."""
    spotter = Spotter(WORDINGS, "stepper", Dictionary())
    for front in ("", "stepper "):
        best, *rest = spotter.best(said(front + text), 8, 100.0, addressed=bool(front))
        assert (best.text, best.means) == (text, means)
        assert best.score == pytest.approx(0, abs=1e-4)
        assert all(each.score < -4 for each in rest)


def test_a_number_is_given_in_figures_too() -> None:
    """As the decoder may have written it."""
    best = Spotter(WORDINGS, "", Dictionary()).best(said("i have forty six stitches"), 1, 0.0)[0]
    assert (best.text, best.figures) == ("i have forty six stitches", "i have 46 stitches")


@pytest.mark.parametrize(
    ("text", "means", "figures"),
    [
        ("it is six", ("length", 6), "it is 6"),
        ("it is six and half inches", ("inches", 6.5), "it is 6 and half inches"),
        ("it is forty point six", ("length", 40.6), "it is 40.6"),
        ("it is forty six stitches", ("count", 46), "it is 46 stitches"),
    ],
)
def test_frames_that_begin_alike_are_told_by_their_numbers_and_their_ends(
    text: str, means: object, figures: str
) -> None:
    """A length, the same in inches, and a count, all behind "it is"; figures as prose has them."""
    best, *rest = Spotter(LENGTHS, "", Dictionary()).best(said(text), 8, 100.0)
    assert (best.text, best.means, best.figures) == (text, means, figures)
    assert best.score == pytest.approx(0, abs=1e-4)
    assert all(each.score < -4 for each in rest)


def test_a_sound_that_is_missing_costs_its_unlikelihood() -> None:
    """ "go ba" fits "go back" less well by log 9/10 over log 1/390 for the frame that has to be k.

    Source: worked out by hand; the least is lost where a silent frame becomes the k.
    """
    likely = said("go back")[:-3]
    likely = np.concatenate([likely, said("")])
    best = Spotter(WORDINGS, "", Dictionary()).best(likely, 1, 0.0)[0]
    assert best.text == "go back"
    assert best.score == pytest.approx(math.log(_UNSURE / len(SOUNDS)) - math.log(1 - _UNSURE), abs=1e-4)


def test_the_address_word_has_to_be_there_and_may_stand_alone() -> None:
    """A cue without it fits badly; the word is found with anything behind it and with nothing."""
    spotter = Spotter(WORDINGS, "stepper", Dictionary())
    assert spotter.best(said("go back"), 1, 0.0, addressed=True)[0].score < -20
    assert spotter.called(said("stepper")) == pytest.approx((0, 0), abs=1e-4)
    with_more, alone = spotter.called(said("stepper six six"))
    assert with_more == pytest.approx(0, abs=1e-4)
    assert alone < -20
    assert max(spotter.called(said("go back"))) < -20
    assert Spotter(WORDINGS, "", Dictionary()).called(said("stepper")) == (-math.inf, -math.inf)


def test_only_what_is_near_the_best_is_listed() -> None:
    """No more than asked for, and nothing farther from the best than asked for."""
    spotter = Spotter(WORDINGS, "", Dictionary())
    assert [each.text for each in spotter.best(said("step back"), 8, 1.0)] == ["step back"]
    assert len(spotter.best(said("step back"), 2, math.inf)) == 2


def test_what_has_no_sound_is_named_and_harms_nothing() -> None:
    """Somebody may write three dots; and there may be nothing to say at all."""
    spotter = Spotter(WORDINGS, "", Dictionary())
    assert spotter.unspeakable == ("",)
    assert "" not in [each.text for each in spotter.phrases]
    assert Spotter(Wordings(phrases={}), "", Dictionary()).best(said("go back"), 8, 1.0) == []


def test_a_count_of_which_only_the_beginning_was_said_is_begun() -> None:
    """The opening alone, or a number that needs more words behind it; not a whole cue, and not other words."""
    spotter = Spotter(WORDINGS, "stepper", Dictionary())
    for begun in ("count is", "i have", "i have forty six"):
        assert spotter.begun(said(begun)) == pytest.approx(0, abs=1e-4)
        assert spotter.begun(said(f"stepper {begun}"), addressed=True) == pytest.approx(0, abs=1e-4)
    for other in ("count is six", "next step", "i have six stitches"):
        assert spotter.begun(said(other)) < -4
    assert Spotter(Wordings(phrases={"next step": 1}), "", Dictionary()).begun(said("next step")) == -math.inf


def test_what_has_a_number_in_it_says_which() -> None:
    """So that it can be held against what else was understood."""
    spotter = Spotter(LENGTHS, "", Dictionary())
    assert spotter.best(said("it is forty point six"), 1, 0.0)[0].number == 40.6
    assert Spotter(WORDINGS, "", Dictionary()).best(said("next step"), 1, 0.0)[0].number is None


SURE = Wordings(
    phrases={"go back": "back"},
    called={
        "next": Called(means="next"),
        "it": Called(means="yes", answers=Reply.YES_OR_NO),
    },
    frames=(Frame(before="", after="", means="count", numbers={"six": 6, "six six": 66}),),
)


@pytest.mark.parametrize(
    ("text", "means", "asked", "behind"),
    [
        ("next", "next", None, True),
        ("it", "yes", Reply.YES_OR_NO, False),
        ("six six", ("count", 66), Reply.NUMBER, True),
    ],
)
def test_called_and_bare_numbers_are_heard_behind_the_address_word_or_if_asked_for(
    text: str, means: object, asked: Reply | None, behind: bool
) -> None:
    """Films are full of them: alone they are nothing, unless they answer the very question that is open. A yes
    that answers nothing is none behind the address word either: it is what is left of a longer cue in noise."""
    spotter = Spotter(SURE, "stepper", Dictionary())
    for replies in ((), (asked,) if asked else ()):
        found = [each.means for each in spotter.best(said(f"stepper {text}"), 1, 0.0, addressed=True, asked=replies)]
        assert (found == [means]) == (behind or bool(replies)), replies
    for replies in ((), *((reply,) for reply in Reply)):
        found = [each.means for each in spotter.best(said(text), 8, 100.0, asked=replies)]
        assert (means in found) == (asked in replies), replies
    never = Spotter(SURE, "", Dictionary())
    assert means not in [each.means for each in never.best(said(text), 8, 100.0, addressed=True)]


def test_a_longer_wording_is_heard_behind_the_address_word_whatever_is_open() -> None:
    """It is what is left of nothing else; alone it is heard only where it answers."""
    called = {"next step": Called(means="later", answers=Reply.NO_ANSWER), "step back": Called(means="rip")}
    spotter = Spotter(replace(SURE, called=called), "stepper", Dictionary())
    for text, answers in (("next step", Reply.NO_ANSWER), ("step back", None)):
        for replies in ((), *((reply,) for reply in Reply)):
            behind = spotter.best(said(f"stepper {text}"), 1, 0.0, addressed=True, asked=replies)
            assert [each.text for each in behind] == [text], (text, replies)
            alone = [each.text for each in spotter.best(said(text), 8, 100.0, asked=replies)]
            assert (text in alone) is (answers in replies), (text, replies)


def test_where_nothing_fits_well_enough_nothing_is_listed_and_all_of_it_where_something_does() -> None:
    """Two thousand numbers are laid over the sounds only where one of them may matter; rivals are listed then."""
    spotter = Spotter(WORDINGS, "", Dictionary())
    for text in ("next step", "count is six"):
        likely = said(text)
        all_of_it = spotter.best(likely, 8, 100.0, amid=True)
        closest = all_of_it[0].score
        assert spotter.best(likely, 8, 100.0, amid=True, floor=closest - 0.01) == all_of_it
        assert spotter.best(likely, 8, 100.0, amid=True, floor=closest + 0.01) == []


def test_a_word_that_calls_may_stand_in_front_of_the_address_word() -> None:
    """ "Hey stepper": the way that was said is told, for the decoder."""
    spotter = Spotter(WORDINGS, "stepper", Dictionary())
    for way in ("stepper", "okay stepper", "hey stepper"):
        best = spotter.best(said(f"{way} go back"), 1, 0.0, addressed=True)[0]
        assert (best.text, best.score) == ("go back", pytest.approx(0, abs=1e-4))
        assert spotter.way_called(said(f"{way} go back")) == way
    assert Spotter(WORDINGS, "", Dictionary()).way_called(said("go back")) == ""


def test_a_cue_amid_talk_is_found_with_its_place_if_asked() -> None:
    """Otherwise anything said around it counts against it: a film's sentence may hold a cue's own words."""
    spotter = Spotter(WORDINGS, "stepper", Dictionary())
    front, cue = len(said("have it")), len(said("stepper count is forty six"))
    likely = said("have it stepper count is forty six inches")[1:]
    fits = spotter.best(likely, 2, 100.0, addressed=True, amid=True)
    best = max(fits, key=lambda fit: len(fit.sounds))  # "forty" alone is there as well
    assert (best.text, best.number, best.score) == ("count is forty six", 46, pytest.approx(0, abs=1e-4))
    start, end = spotter.span(likely, best)
    assert abs(start - front) <= 2
    assert front + cue - 4 <= end <= front + cue
    assert spotter.called(likely, amid=True)[0] == pytest.approx(0, abs=1e-4)
    assert spotter.called(likely)[0] < -10
    assert all(each.score < -10 for each in spotter.best(likely, 8, 100.0, addressed=True))


@pytest.mark.parametrize("text", ["count is forty six", "i have forty stitches", "forty back", "go back"])
def test_what_fits_is_told_with_its_sounds(text: str) -> None:
    """Those of the words around a number too, or its place would be that of the number alone."""
    best, *_ = Spotter(WORDINGS, "", Dictionary()).best(said(text), 8, 100.0)
    assert best.sounds == Dictionary().sounds([text])[0]
