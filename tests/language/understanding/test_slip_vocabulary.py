from __future__ import annotations

import pytest

from stepper.language.understanding.slip_vocabulary import SLIP_WORDINGS
from stepper.language.understanding.understand import understand
from stepper.session import cues
from stepper.session.questions.topics import HelpWith, Topic
from tests.fixtures import plan_named


@pytest.mark.parametrize(
    ("said", "topic"),
    [
        ("I lost my marker!", Topic.MARKER_LOST),
        ("where is the beginning of the round", Topic.MARKER_LOST),
        ("my float is too long", Topic.LONG_FLOAT),
        ("I ran out of yarn", Topic.YARN_OUT),
        ("how do I join a new ball?", Topic.YARN_OUT),
        ("which colour is dominant", Topic.CARRIED),
        ("which yarn goes underneath", Topic.CARRIED),
        ("there is a wrong colour", Topic.WRONG_YARN),
        ("I knitted chalk instead of pine", Topic.WRONG_YARN),
        ("I knit the last round in the wrong colour", Topic.WRONG_YARN),
        ("I ran out of chalk", Topic.YARN_OUT),
        ("the chalk is finished", Topic.YARN_OUT),
    ],
)
def test_slips_are_told_in_the_words_of_who_has_just_made_them(said: str, topic: Topic) -> None:
    """With the work in her lap she looks for no word of the trade."""
    assert understand(said, plan_named("switchback"), nearly=cues.Cue) == cues.About(topic=topic)


@pytest.mark.parametrize(
    ("said", "cue"),
    [
        ("I said next twice", cues.Back()),
        ("I forgot to say next", cues.Help(about=HelpWith.PLACES)),
        ("how do I stop", cues.Help(about=HelpWith.LISTENING)),
        ("what do I do now", cues.Again()),
        ("I lost my place", cues.Where()),
        ("I have done this round", cues.RoundsDone(rounds=1)),
        ("done for tonight", cues.Enough()),
    ],
)
def test_what_a_beginner_says_is_understood(said: str, cue: cues.Cue) -> None:
    """She does not know the words yet, and nobody is there to tell her."""
    assert understand(said, plan_named("switchback")) == cue


def test_each_row_has_several_wordings_and_says_what_it_does() -> None:
    """One alone would have to be learnt; the help reads out what each does."""
    assert all(len(row.spoken) + len(row.typed) > 1 and row.says for row in SLIP_WORDINGS)
