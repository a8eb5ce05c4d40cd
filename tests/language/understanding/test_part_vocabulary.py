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
        ("what does cast on mean", cues.Explain(text="cast on")),
        ("What's ribbing?", cues.Explain(text="rib")),
        ("what are dpns", cues.Explain(text="double pointed needles")),
        ("how do I purl", cues.Explain(text="p")),
        ("how do I bind off", cues.Explain(text="bind off")),
        ("I don't know what join in the round means", cues.Explain(text="join in the round")),
        ("what is a round", cues.Explain(text="round")),
        ("what is an increase", cues.Explain(text="increase")),
        ("what does foll mean", cues.Explain(text="every following")),
        ("what does beg mean", cues.Explain(text="beg")),
        ("what does that mean", cues.Explain(text="")),
        ("how do I do that", cues.Explain(text="")),
        ("how do I know it is twisted", cues.Explain(text="twist")),
        ("what is the gauge", cues.About(topic=Topic.GAUGE)),
        ("what is on hold", cues.About(topic=Topic.HELD)),
        ("what is a double stitch", cues.Explain(text="ds")),
    ],
)
def test_a_part_a_line_and_a_stitch_are_asked_for_by_name(said: str, cue: cues.Cue) -> None:
    """In any case, with its mark; rows are rounds."""
    assert understand(said, plan_named("switchback")) == cue


def test_each_row_has_several_wordings_and_says_what_it_does() -> None:
    """One alone would have to be learnt; the help reads out what each does."""
    assert all(len(row.spoken) + len(row.typed) > 1 and row.says for row in PART_WORDINGS)
