"""What a page tells beside the work. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain, stop_of, understood


@pytest.mark.parametrize(
    "printed",
    [
        "The sleeves are picked up later.",
        "The two fronts are then joined at the shoulders.",
        "We will now separate the yoke from the sleeves.",
        "Make sure that your yarn is at the back.",
        "This is a good moment to try it on.",
        "Finally, you can sew the side seams.",
        "If you're using dpns, you may need to move the markers.",
        "Hooray, your first sleeve is finished!",
    ],
)
def test_a_comment_is_said_and_works_no_stitches(printed: str) -> None:
    """She hears it at its place, and nothing is knitted for it."""
    read = understood(made_plain(printed))
    assert (read.outcome, len(read.reworded.kept)) == (None, 1)


@pytest.mark.parametrize(
    "printed",
    [
        "Make sure to slip the first stitch of each row.",
        "Make sure the right front is a mirror image, so shape at the other edge.",
        "You will now knit the sleeves in garter stitch.",
        "We will then decrease at both ends of every row.",
        "Remember that the rib continues up the fronts.",
        "Use the magic loop method to cast on 60 sts.",
        "If you are using circular needles, knit 2 more rounds.",
        "Lastly, sew the pocket and repeat for the other side.",
        "You will find it easier to slip the edge stitches.",
        "The sleeves are then joined with 8 sts bound off at each underarm.",
    ],
)
def test_what_may_change_the_knitting_is_no_comment(printed: str) -> None:
    """A comment that hides an instruction would be knitted past in silence."""
    assert stop_of(made_plain(printed)) is not None
