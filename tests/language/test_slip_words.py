from __future__ import annotations

import pytest

from stepper.language.effect_words import tell_effect
from stepper.language.understanding.understand import understand
from stepper.session import cues
from stepper.session.questions.slips import Harm, TellMarkersLost, TellWayOut, TellWorkedTwice
from stepper.session.questions.topics import Topic
from tests.plans import plan

GARMENT = plan(("yoke", ["co80", "k80", "k80"]))


@pytest.mark.parametrize(
    ("harm", "told"),
    [
        (Harm.NONE, "The next round is worked alike, so it is done already. Say: finished the round."),
        (
            Harm.LONGER,
            "The count is as before, the piece one round longer. Leave it; or undo its 80 stitches, and your place stays.",
        ),
        (
            Harm.SHOWS,
            "The count is as before, but the pattern has that round twice. Leave it; or undo its 80 stitches, and your place stays.",
        ),
        (
            Harm.SIDE,
            "The next round would fall on the other side. So undo its 80 stitches, and your place stays.",
        ),
        (Harm.COUNT, "Then the count may be off: 80 expected. Say: count is, and the number."),
    ],
)
def test_what_a_round_more_does_is_said_with_what_can_be_done(harm: Harm, told: str) -> None:
    """What she has to say next is a wording that is understood."""
    assert tell_effect(TellWorkedTwice(harm=harm, index=1), GARMENT) == told
    assert understand("finished the round", GARMENT) == cues.RoundsDone(rounds=1)


@pytest.mark.parametrize(
    "said",
    ["I did that round twice", "I knitted the last row twice", "I knit this round twice", "one round too many"],
)
def test_it_is_asked_in_her_words(said: str) -> None:
    """As people say it, a row or a round, done or knitted."""
    assert understand(said, GARMENT, nearly=cues.Cue) == cues.About(topic=Topic.WORKED_TWICE)


def test_a_wrong_yarn_is_mended_over_the_stitches_or_by_undoing_them() -> None:
    """A count, which is asked for after other slips, would come out right and leave her with it. Common practice."""
    assert understand("I used the wrong yarn", GARMENT) == cues.About(topic=Topic.WRONG_YARN)
    assert tell_effect(TellWayOut(topic=Topic.WRONG_YARN), GARMENT) == (
        "No count shows that. A few stitches: cover them in duplicate stitch when it is finished. "
        "Many: say unknit, and how many."
    )
    assert understand("unknit twelve", GARMENT) == cues.Tink(stitches=12)


def test_a_long_float_and_a_yarn_that_ends_are_answered_with_what_the_hands_do() -> None:
    """Both halt her in the middle of a round, and what she has to ask next is a wording that is understood. Common
    practice."""
    told = tell_effect(TellWayOut(topic=Topic.LONG_FLOAT), GARMENT)
    assert told.startswith("In the round above, catch it from behind")
    told = tell_effect(TellWayOut(topic=Topic.YARN_OUT), GARMENT)
    assert told.startswith("Leave a tail as long as your hand")
    assert understand("how much yarn is left", GARMENT) == cues.About(topic=Topic.YARN_LEFT)


@pytest.mark.parametrize(
    ("worked", "after", "told"),
    [
        (0, (), "This round begins where the yarn comes from. No other marker is needed in it."),
        (0, (40,), "This round begins where the yarn comes from. Markers in it: behind stitch 40."),
        (
            12,
            (18, 19),
            "This round begins 12 stitches before the last one worked, counted back. Markers in it: behind stitch 18 and 19.",
        ),
    ],
)
def test_a_marker_that_fell_out_is_put_back_by_counting(worked: int, after: tuple[int, ...], told: str) -> None:
    """The yarn hangs where she is, whatever fell to the floor."""
    assert tell_effect(TellMarkersLost(index=1, worked=worked, after=after), GARMENT) == told
