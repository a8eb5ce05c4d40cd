"""What continental pages tell beside the work. Source: pattern pages of such houses; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    "printed",
    [
        "READ THE WHOLE SECTION BEFORE YOU CONTINUE!",
        "REMEMBER THE GAUGE!",
        "The round begins at mid back.",
        "The jumper measures approx. 54 (56, 58) cm from the shoulder down.",
        "On the next round the yarn overs are worked twisted.",
        "The new stitches are worked in stockinette stitch.",
        "All decreases are worked from the right side!",
        "Allow the marker threads to follow your work onwards.",
        "The yoke is divided for body and sleeves and the body is continued downwards in the round.",
    ],
)
def test_a_remark_is_said_and_works_nothing(printed: str) -> None:
    """All of its words are said; none is left to work."""
    made = reword(made_plain(printed))
    assert made.text.strip(" .!") == ""
    assert " ".join(made.kept).strip(".!") == made_plain(printed).strip(".!")


@pytest.mark.parametrize(
    "printed",
    [
        "Read the whole section before you continue, then knit 2 rounds twisted together.",
        "The sleeves are worked in rib.",
        "The yoke is divided for body and sleeves after 20 rounds.",
        "On every round the yarn overs are worked twisted.",
        "Then work the new stitches in garter stitch.",
        "All decreases are worked on every right side row.",
        "The round begins 4 stitches before the marker.",
    ],
)
def test_a_sentence_that_also_orders_is_no_remark(printed: str) -> None:
    """How long, how often, in which rows and in what pattern change what is knitted."""
    assert not reads(printed)
