from __future__ import annotations

from stepper.language.understanding.question_vocabulary import QUESTION_WORDINGS
from stepper.session import cues
from stepper.session.questions.topics import Topic


def test_every_topic_can_be_asked_for_in_more_than_one_way() -> None:
    """A topic without a wording would be knowledge that nobody can reach; two wordings, as for every cue."""
    asked = {
        row.fixed["topic"]: len(row.spoken) + len(row.typed)
        for row in QUESTION_WORDINGS
        if row.cue is cues.About
    }

    assert set(asked) == set(Topic)
    assert min(asked.values()) >= 2
