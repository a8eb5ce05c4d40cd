from __future__ import annotations

from pathlib import Path

import pytest
from num2words import num2words

from stepper.ears.wordings import Reply
from stepper.language.numbers import number
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.session.cues import Length
from stepper.session.rules import RULES
from stepper.sitting.project_file import load_project
from stepper.sitting.recogniser_wordings import (
    MOVING,
    is_cue,
    is_small_talk,
    last_number,
    list_lengths,
    list_numbers,
    list_wordings,
    moves,
)

SAMPLE = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"


def test_everything_listened_for_is_understood_as_what_it_means() -> None:
    """Whatever a recogniser hands over becomes a cue of the kind it stands for."""
    plan = load_project(SAMPLE).plan
    wordings = list_wordings(plan)
    texts = dict(wordings.phrases)
    texts |= {frame.around("two hundred forty six"): frame.means for frame in wordings.frames}
    for text, means in texts.items():
        cue = understand(text, plan, figures=True)
        assert not isinstance(cue, NotUnderstood), text
        assert isinstance(means, tuple)
        assert isinstance(cue, means[0]), text


def test_every_number_is_listened_for_as_it_is_said() -> None:
    """All from 0 to 999; the forms with "and" are those of an independent library, num2words."""
    ways = list_numbers()
    assert set(ways.values()) == set(range(1000))
    assert all(number(way) == value for way, value in ways.items())
    for value in (0, 7, 46, 100, 246, 303, 999):
        assert ways[num2words(value).replace("-", " ")] == value


def test_every_length_is_listened_for_as_it_is_said() -> None:
    """In words of an independent library, num2words, and in halves and quarters; each read as what it is."""
    ways, plan = list_lengths(), load_project(SAMPLE).plan
    for value in (0, 7, 0.5, 12.5, 99.9, 31.4, 105, 200):
        assert ways[num2words(value).replace("-", " ")] == value
    assert ways["seven and three quarters"] == 7.75
    for said, value in ways.items():
        cue = understand(f"it measures {said} centimeters", plan)
        assert isinstance(cue, Length), said
        assert cue.length_mm == pytest.approx(10 * value), said


@pytest.mark.parametrize(
    ("text", "is_heard"),
    [
        ("it measures twelve inches", True),
        ("length is seven and a half centimeters", True),
        ("chalk weighs forty grams", True),
        ("weight of ember is one hundred and six grams", True),
        ("go to yoke round twelve", True),
        ("go to round twelve of left sleeve", True),
        ("plus ten", True),
        ("and ten", False),
        ("twelve inches", False),
        ("sand weighs forty grams", False),
    ],
)
def test_numbers_stand_in_frames_of_the_plans_own_names(text: str, is_heard: bool) -> None:
    """Yarns and places of the sample; what any talk may hold is no frame."""
    wordings = list_wordings(load_project(SAMPLE).plan)
    said = {frame.around(number) for frame in wordings.frames for number in wordings.numbers_of(frame)}
    assert (text in said) == is_heard


def test_inches_and_centimetres_are_not_the_same_and_compete() -> None:
    """A length without a unit means the plan's: centimetres in the sample."""
    means = {
        frame.after: frame.means
        for frame in list_wordings(load_project(SAMPLE).plan).frames
        if frame.before == "it measures"
    }
    assert means[""] == means["centimeters"] != means["inches"]


@pytest.mark.parametrize(
    ("text", "moves_it"),
    [("next step", True), ("go on", True), ("rip back", True), ("yes it is", True), ("go to yoke", True),
     ("what is next", False), ("hold on", False), ("not now", False), ("i dropped a stitch", False)],
)  # fmt: skip
def test_it_is_known_what_moves_the_knitting(text: str, moves_it: bool) -> None:
    """A phrase, a word behind the address word, and with a place in it."""
    wordings = list_wordings(load_project(SAMPLE).plan)
    means = wordings.phrases.get(text) or wordings.called[text].means
    assert wordings.moves(means) is moves_it


def test_a_number_in_a_frame_moves_the_knitting_as_the_frame_does() -> None:
    """What a number means stands behind what its frame means."""
    frames = {frame.before: frame.means for frame in list_wordings(load_project(SAMPLE).plan).frames}
    assert moves((frames["go to round"], 12))
    assert not moves((frames["it measures"], 12))


def test_every_cue_that_is_decided_as_a_move_moves_the_knitting() -> None:
    """So that a new kind of move is not heard on less than the others are."""
    decided = {cue for (_, cue), rule in RULES.items() if rule.__module__ == "stepper.session.moves"}
    assert decided
    assert decided <= set(MOVING)


def test_a_remark_may_hold_numbers_and_has_to_hold_something() -> None:
    """Nothing is worked out from it, so a number misheard does no harm."""
    wordings = list_wordings(load_project(SAMPLE).plan)
    assert wordings.remark("make a note two stitches short")
    for text in ("make a note", "note", "count is two", "two stitches short"):
        assert not wordings.remark(text)
    assert not list_wordings(None).remark("make a note two stitches short")


def test_her_own_wording_is_listened_for_and_means_what_she_says() -> None:
    """In any letters; one for a cue with a slot has no place to put the slot and is left out."""
    wordings = list_wordings(None, {"Weiter bitte": "next step", "so viele": "count is {number}"})
    assert wordings.phrases["weiter bitte"] == wordings.phrases["next step"]
    assert "so viele" not in wordings.phrases


def test_a_single_word_is_never_heard_as_a_cue() -> None:
    """Over a film one word would be a guess; in a frame a count is understood."""
    plan = load_project(SAMPLE).plan
    assert not is_cue("next", plan)
    assert is_cue("count is 246", plan)
    assert not is_cue("who put that there", plan)
    assert all(len(phrase.split()) > 1 for phrase in list_wordings(plan).phrases)


def test_a_single_word_behind_others_that_mean_nothing_is_none_either() -> None:
    """ "Stepper, slow down" of a synthetic voice was written down as "so done", which finished the step."""
    plan = load_project(SAMPLE).plan
    assert not any(is_cue(said, plan) for said in ("so done", "well next", "please undo"))
    assert all(is_cue(said, plan) for said in ("next please", "another round done", "well where am i"))


def test_a_short_wording_that_is_only_typed_is_small_talk_and_what_is_listened_for_is_not() -> None:
    """ "Good night" in a film must not end her evening, nor "wait for me" hold her up."""
    plan = load_project(SAMPLE).plan
    for said in ("good night", "Good night.", "wait for me", "that is enough for tonight"):
        assert is_small_talk(said), said
        assert is_cue(said, plan), said
    for said in ("go to yoke", "remind me at yoke", "how many stitches left", *list_wordings(plan).phrases):
        assert not is_small_talk(said), said


def test_what_counts_behind_the_address_word_is_small_talk_and_a_cue() -> None:
    """In a film it is nothing, however well it is written down; three of them answer what is open."""
    plan = load_project(SAMPLE).plan
    wordings = list_wordings(plan)
    longer = {text: each.answers for text, each in wordings.called.items() if " " in text}
    assert {text for text, answers in longer.items() if answers is Reply.NO_ANSWER} == {
        "not now",
        "i do not know",
        "i don't know",
    }
    assert {"wait a minute", "rip back", "i did that round twice"} <= longer.keys()
    for text in longer:
        assert is_small_talk(text), text
        assert is_cue(text, plan), text
        assert text not in wordings.phrases


@pytest.mark.parametrize("value", [0, 6, 46, 100, 206, 246, 999])
def test_the_number_at_the_end_of_a_transcript_is_read_however_it_is_written(value: int) -> None:
    """In figures, in words of an independent library, num2words, digit by digit, and with words behind it."""
    ways = (str(value), num2words(value), " ".join(str(value)), ", ".join(str(value)), "-".join(str(value)))
    for way in ways:
        assert last_number(f"count is {way}") == value, way
        assert last_number(f"i have {way} stitches") == value, way


def test_without_a_number_that_can_be_read_there_is_none() -> None:
    """A text without any, and none at all; a length with its half is one number."""
    assert last_number("next step") is None
    assert last_number("") is None
    assert last_number("it measures 12 and a half") == 12.5


def test_a_question_in_words_of_her_own_is_known_and_talk_is_not() -> None:
    """Its meaning is taken only where something of it is about knitting, so that a film asks nothing."""
    plan = load_project(SAMPLE).plan
    assert plan is not None
    assert is_cue("how many decreases are behind me", plan)
    assert is_cue("how long until i increase again", plan)
    for said in ("how long has it got to be", "when is it over", "how many people are left", "i let a stitch fall"):
        assert not is_cue(said, plan), said
