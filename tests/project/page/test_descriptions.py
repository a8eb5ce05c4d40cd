"""What describes a piece in front of its pattern is told from rules that may stand nowhere else. All sentences are invented."""

from __future__ import annotations

import pytest

from stepper.project.page.descriptions import describes
from tests.tables import each_row

DESCRIBED = (
    "Construction: A top-down triangle with a garter tab start, increasing four stitches every right-side row.",
    "Bands of stockinette, lace and garter alternate; the lace repeat is six stitches wide and six rows high.",
    "We cast on for the back neck and the sleeve tops with just two stitches for each front.",
    "The raglans grow every right-side row; the fronts grow at the neck a bit slower.",
    "In the pattern, the figure for the short cowl comes first.",
    "Techniques used: knit, purl, yarn over, k2tog, and sk2p.",
    "Work instructions in square brackets [ ] the number of times given.",
    "This pattern was test knit by five patient people.",
    "The front is a little shorter than the back.",
)
RULES = (
    "The edge stitches are always knitted.",
    "The body has a garter border at each edge.",
    "The sleeves are worked in reverse stockinette.",
    "The yoke is worked with two strands held together.",
    "The cuffs are worked on smaller needles.",
    "Slip the first stitch of every row.",
    "The first and last stitch are knitted on every row.",
    "Every other row is purled.",
    "Right-side rows are knitted and wrong-side rows are purled.",
    "Begin at the lower edge and finish with the collar.",
    "Knit every row unless told otherwise.",
    "The body is 120 sts.",
    "Rows 1 and 2 are the garter border.",
    "You must slip the first stitch.",
    "The centre stitch is knitted on each row.",
)


@pytest.mark.parametrize("sentence", DESCRIBED)
def test_a_description_is_told(sentence: str) -> None:
    """The rows below say it again, and they are worked."""
    assert describes(sentence)


@each_row("sentence", RULES)
def test_a_rule_that_lasts_describes_nothing(sentence: str) -> None:
    """It may stand in no row below."""
    assert not describes(sentence)
