from __future__ import annotations

import pytest

from stepper.language.understanding.part_vocabulary import PART_WORDINGS
from stepper.language.understanding.understand import understand
from stepper.session import cues
from stepper.session.questions.topics import Topic
from tests.fixtures import plan_named


@pytest.mark.parametrize(
    ("said", "cue"),
    [
        ("How often do I decrease?", cues.About(topic=Topic.DECREASE_RHYTHM)),
        ("how many rows between increases", cues.About(topic=Topic.INCREASE_RHYTHM)),
        ("how often do I cross the cable", cues.About(topic=Topic.CABLE_RHYTHM)),
        ("what is cast on under the arm", cues.About(topic=Topic.UNDERARM)),
        ("how far to the body", cues.HowFarTo(place="body")),
        ("how far is this part", cues.HowFarIn()),
        ("what does ssk mean", cues.Explain(text="ssk")),
        ("what is a lifeline?", cues.Explain(text="lifeline")),
        ("what does the place mean", cues.Explain(text="place")),
    ],
)
def test_a_part_a_line_and_a_stitch_are_asked_for_by_name(said: str, cue: cues.Cue) -> None:
    """In any case, with its mark; rows are rounds."""
    assert understand(said, plan_named("switchback")) == cue


def test_each_row_has_several_wordings_and_says_what_it_does() -> None:
    """One alone would have to be learnt; the help reads out what each does."""
    assert all(len(row.spoken) + len(row.typed) > 1 and row.says for row in PART_WORDINGS)
