from __future__ import annotations

import pytest

from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.session import cues
from stepper.session.questions.topics import Topic
from tests.plans import final_increase

GARMENT = final_increase()


@pytest.mark.parametrize(
    ("said", "topic"),
    [
        ("What's next?", Topic.NEXT_STEP),
        ("okay, which colour is it", Topic.YARN),
        ("when is the next decrease", Topic.NEXT_DECREASE),
        ("which row is it right side or wrong side", None),
        ("right side or wrong side", Topic.SIDE),
        ("how long should it be", Topic.LENGTH),
        ("Is the float caught?", Topic.FLOAT),
        ("do I have enough yarn", Topic.YARN_LEFT),
    ],
)
def test_questions_are_understood_as_they_are_asked(said: str, topic: Topic | None) -> None:
    """In any case, with a filler, with its mark; two questions at once are not."""
    cue = understand(said, GARMENT)

    if topic is None:
        assert isinstance(cue, NotUnderstood)
    else:
        assert cue == cues.About(topic=topic)


def test_an_unknown_stitch_is_named_as_unknown() -> None:
    """Rather than explained by guess."""
    cue = understand("what is foo", GARMENT)

    assert isinstance(cue, NotUnderstood)
    assert cue.sentence == 'I do not know a word "foo".'
