"""What a question means by the ideas in it, and what is none or not surely one."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.language.understanding.meaning import (
    Names,
    find_remark,
    meant_by_ideas,
    nearest_remarks,
    nearest_senses,
)
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.session.cues import (
    About,
    Again,
    Asks,
    Cue,
    Explain,
    HowFar,
    HowFarIn,
    HowFarTo,
    HowLong,
    HowMany,
)
from stepper.session.questions.topics import PartTopic, Topic
from tests.fixtures import plan_named
from tests.tables import each_row

PLACES = {"yoke": "yoke", "left sleeve": "left sleeve", "buttonhole": "Buttonhole row"}
NAMES = Names(find_place=PLACES.get, yarns=frozenset(("pine", "deep chalk")))


def _meant(said: str, *, aloud: bool = False) -> Asks | None:
    return meant_by_ideas(said, NAMES, aloud=aloud)


@each_row(
    ("said", "topic"),
    [
        ("what colour am i holding", Topic.YARN),
        ("how far to the next colour change", Topic.COLOUR_CHANGE),
        ("in how many rounds is the next decrease", Topic.NEXT_DECREASE),
        ("how long until i decrease again", Topic.NEXT_DECREASE),
        ("how many times do i still have to decrease", Topic.DECREASES_LEFT),
        ("how many increase rounds have i done", Topic.INCREASES_LEFT),
        ("when did i last increase", Topic.LAST_INCREASE),
        ("could you tell me which needle i should be using", Topic.NEEDLE),
        ("is there enough pine", Topic.YARN_LEFT),
        ("how many rounds till the armhole", Topic.DIVISION),
        ("am i on time", Topic.DONE_WHEN),
        ("how much of this skein is left", Topic.YARN_LEFT),
        ("how many chart rounds are left", Topic.CHART),
        ("how long has it got to be", Topic.LENGTH),
        ("what day will i be done", Topic.DONE_WHEN),
        ("how many rounds did i manage this evening", Topic.KNITTED_TODAY),
        ("how many short rounds are still to come", Topic.TURN),
    ],
)
def test_a_question_is_known_by_what_it_is_about(said: str, topic: Topic) -> None:
    """In any turn of phrase: nobody learns a wording with both hands full."""
    assert _meant(said) == About(topic=topic)


def test_a_part_that_is_named_is_asked_about() -> None:
    """To it, in it or how long it is: the small word before it tells which."""
    assert _meant("how many rounds have i got left in the yoke") == HowFarIn(place="yoke")
    assert _meant("how many rounds until the left sleeve") == HowFarTo(place="left sleeve")
    assert _meant("how far away is the buttonhole") == HowFarTo(place="Buttonhole row")
    assert _meant("how long should the yoke be") == HowFarIn(place="yoke", asks=PartTopic.LENGTH)
    assert _meant("how many rounds is the yoke and the left sleeve") is None


def test_questions_with_cues_of_their_own_are_found_too() -> None:
    """Not all that is asked is a topic."""
    assert _meant("what should be on my needles by now") == HowMany()
    assert _meant("how many rounds are there left") == HowFar()
    assert _meant("how long have i been at it") == HowLong()
    assert _meant("i did not catch that") == Again()


@each_row(
    "said",
    [
        "how many biscuits are left",
        "how much longer is this film",
        "when do they increase the price",
        "how many raglan increases are left",
        "when do i increase and decrease",
        "how many rounds between the sleeves",
        "do not increase now",
        "what do i do with this",
        "which one left the room",
        "the next increase",
        "remind me when i increase",
        "",
    ],
)
def test_a_word_too_many_or_none_that_asks_is_not_answered(said: str) -> None:
    """A word that stands for nothing known is what the question is about; no answer is better than another's."""
    assert _meant(said) is None


@each_row(
    ("said", "cue"),
    [
        ("how many stitches will i have at the end of this round", HowMany()),
        ("how many have i decreased so far", About(topic=Topic.DECREASES_LEFT)),
        ("how much time have i spent on this", HowLong()),
        ("how many rounds since the last decrease round", About(topic=Topic.LAST_DECREASE)),
        ("how many stitches did i have before the divide", HowFarIn(place="division", asks=PartTopic.STITCHES)),
        ("how many stitches does the yoke have", HowFarIn(place="yoke", asks=PartTopic.STITCHES)),
        ("what did i note on the left sleeve", HowFarIn(place="left sleeve", asks=PartTopic.NOTES)),
        ("how many buttonhole are left", HowFarIn(place="Buttonhole row", asks=PartTopic.LINES)),
        ("how often do i have to decrease", About(topic=Topic.DECREASE_RHYTHM)),
        ("is this a good place to stop", About(topic=Topic.STITCHES_LEFT)),
        ("which needle should i have in my hand", About(topic=Topic.NEEDLE)),
        ("what round do i decrease on next", About(topic=Topic.NEXT_DECREASE)),
    ],
)
def test_small_words_tell_what_is_asked_about_the_same_thing(said: str, cue: Asks) -> None:
    """At the end and to the end, since and until, before it and on it: each is another question."""
    assert _meant(said) == cue


def test_help_is_not_asked_for_by_what_is_said_in_every_film() -> None:
    """"Can you help me" as heard; at the keyboard it is meant for the program."""
    plan = plan_named("switchback")
    assert isinstance(understand("can you help me please", plan, nearly=Asks), NotUnderstood)
    assert not isinstance(understand("can you help me please", plan, nearly=Cue), NotUnderstood)
    assert not isinstance(understand("can you tell me the next round", plan, nearly=Asks), NotUnderstood)


def test_what_was_heard_has_to_be_about_knitting() -> None:
    """In a film people ask when it will be finished and where the body is."""
    assert _meant("when is it over", aloud=True) is None
    assert _meant("how long has it got to be", aloud=True) is None
    assert _meant("when is the next increase", aloud=True) == About(topic=Topic.NEXT_INCREASE)


def test_the_nearest_are_offered() -> None:
    """By what it is about, rather than by letters that agree."""
    nearest = nearest_senses("how many cabbages until the increases", NAMES)
    assert About(topic=Topic.NEXT_INCREASE) in nearest
    assert nearest_senses("how many biscuits", NAMES) == ()
    assert nearest_senses("the increases", NAMES) == ()


def test_what_went_wrong_is_offered_where_it_was_heard_and_done_where_it_was_typed() -> None:
    """A fault that is taken up moves the evening: heard, it has to be said exactly; typed, it is surely meant."""
    plan = plan_named("switchback")
    assert nearest_remarks("whoops i let a stitch fall", NAMES) == ("i dropped a stitch",)
    assert nearest_remarks("which stitch did i drop", NAMES) == ()
    for said, wording in (
        ("whoops I let a stitch fall", "i dropped a stitch"),
        ("there's a stitch too many", "i have one too many"),
        ("I think I skipped an increase", "i forgot an increase"),
    ):
        heard = understand(said, plan, nearly=Asks)
        assert isinstance(heard, NotUnderstood)
        assert heard.sentence.endswith(f"Did you mean: {wording}?")
        assert understand(said, plan, nearly=Cue) == understand(wording, plan)


@pytest.mark.parametrize(
    "said",
    [
        "there are three stitches too many",
        "i did not drop a stitch",
        "maybe i dropped a stitch",
        "the cat dropped a stitch",
        "something is wrong",
        "i dropped a stitch and forgot an increase",
        "i have to stop in the middle of the round",
    ],
)
def test_a_remark_of_more_or_less_than_one_thing_is_not_done(said: str) -> None:
    """How many there are, whether there is one at all, and which of two: she has to say it in a wording."""
    assert find_remark(said, NAMES) is None


@pytest.mark.parametrize("nearly", [Cue, Asks])
def test_a_stitch_is_explained_however_it_is_asked_for(nearly: type[Cue]) -> None:
    """By its sign or its name, with "again" behind it."""
    plan = plan_named("switchback")
    for said in ("what does yarn over mean again", "how do I work a yarn over", "how is yo done"):
        assert understand(said, plan, nearly=nearly) == Explain(text="yo"), said
    assert isinstance(understand("how do I work the neckband", plan, nearly=nearly), NotUnderstood)


TALK = (Path(__file__).parent / "talk.txt").read_text(encoding="utf-8").splitlines()


def test_talk_in_the_room_and_lines_of_a_film_ask_nothing() -> None:
    """Two hundred sentences written before the words of the trade were listed, forty of them about knitting. Left out are
    two that have the very wording of a cue: "which repeat is this", and "note" with something behind it."""
    plan = plan_named("switchback")
    assert len(TALK) == 198
    for nearly in (Cue, Asks):
        taken = [said for said in TALK if not isinstance(understand(said, plan, nearly=nearly), NotUnderstood)]
        assert taken == [], nearly
