"""Stitches that come back, told in prose. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.moving import write_moves


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Put the 54 sts of one sleeve on 4 mm needles.", "Change to 4 mm needles. Return 54 held sleeve sts to needles."),
        ("Return 50 held sts to larger ndl, RS facing.", "With RS facing, change to larger needles. Return 50 held sts to needles."),
        ("Take up the 30 sts from the thread and knit across.", "Return 30 held sts to needles. Knit across."),
        ("Return to the sts on hold, join yarn and k across.", "Return held sts to needles. K across."),
        ("Rejoin yarn to the sts on the spare needle, with WS facing, at the armhole edge.", "With WS facing, return held sts to needles."),
        ("With RS facing, slip next 11 sts from spare needle onto a st holder, rejoin yarn to rem sts and k to end.", "With RS facing, take up remaining sts. Hold 11 sts and k to end."),
        ("Leave the centre 12 sts on a thread. With RS facing, join yarn at the neck edge, k to end.", "With RS facing, take up remaining sts. Hold 12 sts, k to end."),
        ("Pick up and knit 22 sts, k26 from holder, pick up and knit 22 sts, k46 from back holder.", "Pick up and knit 22 sts, k across 26 held sts, pick up and knit 22 sts, k across 46 held back sts."),
    ],
)  # fmt: skip
def test_what_comes_back_is_written_as_the_grammar_has_it(printed: str, words: str) -> None:
    """Whose they are, how many, on which needles and from which side; where the yarn is joined changes no stitch."""
    assert write_moves(as_printed(printed)).text == words
