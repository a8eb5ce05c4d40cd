from __future__ import annotations

import pytest

from stepper.language.effect_words import tell_effect
from stepper.language.fault_words import LINES, name_cause, stretch_words
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.session import cues, effects
from stepper.session.fault.diagnosis import Likely
from stepper.session.fault.landmarks import Landmark
from stepper.session.fault.symptoms import Cause
from stepper.session.fault.ways import RemedyKind
from stepper.session.state import Asking, Mend, Position, Seen
from tests.plans import final_increase, plan

GARMENT = final_increase()


@pytest.mark.parametrize(
    ("cause", "code", "line"),
    [
        (Cause.LEFT_OUT, "m1", "an increase was left out in yoke round 2"),
        (Cause.LEFT_OUT, "k2tog", "a decrease was left out in yoke round 2"),
        (Cause.ONE_TOO_MANY, "m1", "an increase too many was made in yoke round 2"),
        (Cause.REPEAT_TWICE, "", "a repeat was worked twice in yoke round 2"),
        (Cause.REPEAT_LEFT_OUT, "", "a repeat was left out in yoke round 2"),
        (Cause.YARN_OVER, "yo", "a yarn over was dropped in yoke round 2"),
        (Cause.DROPPED, "", "a stitch was dropped in yoke round 2"),
        (Cause.OTHER_ROUND, "", "round 3 was worked for yoke round 2"),
    ],
)
def test_each_cause_is_said_in_plain_words(cause: Cause, code: str, line: str) -> None:
    """No abbreviation, and always the round."""
    likely = Likely(cause=cause, index=3, code=code, odds=0.5, known=(), other=4)
    assert name_cause(likely, GARMENT) == line


@pytest.mark.parametrize("asking", Asking, ids=lambda asking: asking.value)
def test_how_often_is_said_back(asking: Asking) -> None:
    """She hears what she chose."""
    assert tell_effect(effects.TellAsking(asking=asking), GARMENT).startswith("I ask for")


@pytest.mark.parametrize("seen", Seen, ids=lambda seen: seen.value)
def test_a_look_says_how_to_answer(seen: Seen) -> None:
    """And the wordings it offers are understood."""
    line = tell_effect(effects.AskLook(seen=seen, index=3), GARMENT)
    offered = line.split("Say: ")[1].split(",")[0].rstrip(".")
    assert understand(offered, GARMENT) == _first_answer(seen)


def _first_answer(seen: Seen) -> cues.Cue:
    return cues.Saw(seen=seen, number=0 if seen in (Seen.LEFT, Seen.CHANGES) else 1)


@pytest.mark.parametrize(
    ("first", "end", "line"),
    [
        (0, 4, "up to and including the second pine block"),
        (1, 2, "after the first cream block up to and including the first pine block"),
        (4, None, "after the second pine block to the end"),
    ],
)
def test_blocks_of_colour_are_numbered_each_among_its_own(first: int, end: int | None, line: str) -> None:
    """She looks for the second pine block, not for the fourth block of any colour; and hears the yarn's name."""
    yarns = {"MC": "cream", "P": "pine"}
    body = plan(("body", ["co40", "k10:MC k3:P k8:MC k3:P k16:MC"]), yarns=yarns)
    assert stretch_words(Landmark.COLOUR, first, end, 1, body) == line


def test_the_place_is_said_by_markers() -> None:
    """As in "you are eleven stitches past the third marker"."""
    assert tell_effect(effects.TellSpot(past=11, marker=3), GARMENT) == "You are 11 stitches past the third marker."
    assert tell_effect(effects.TellSpot(past=0, marker=1), GARMENT) == "You are at the first marker."


def test_ripping_says_where_to() -> None:
    """And to count there."""
    rip = effects.TellRemedied(remedy=RemedyKind.RIP, undone=(), place=Position(index=2), mend=None)
    assert (
        tell_effect(rip, GARMENT) == "Rip back to the beginning of yoke round 1, pick up the stitches, then count."
    )
    drop = effects.TellRemedied(remedy=RemedyKind.DROP, undone=(), place=Position(index=2), mend=None)
    assert tell_effect(drop, GARMENT).startswith("Drop down one column")
    mend = effects.TellMend(mend=Mend(index=2, stitch=9, change=-2))
    assert tell_effect(mend, GARMENT) == "Mend in this round: at stitch 9, work two together twice."


def test_tens_are_understood_only_while_counting() -> None:
    """A bare number is heard in every film."""
    assert isinstance(understand("ten", GARMENT), NotUnderstood)
    assert understand("ten", GARMENT, counting=True) == cues.Ten(stitches=10)
    assert understand("ten ten and four", GARMENT, counting=True) == cues.Ten(stitches=24)
    assert understand("between 20, 21 and 20", GARMENT) == cues.MarkerCounts(counts=(20, 21, 20))
    assert len(LINES) == 15
