"""Advice and opinions are told beside the work; what may be an instruction is none. Source: patterns in print."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    "printed",
    [
        "The first 24 sts are the heel.",
        "If you would like a longer cuff, add a few rounds here.",
        "You will have 12 garter ridges.",
        "This gives a neat edge.",
        "Be careful not to pull too tightly.",
        "The lower edge will curl.",
        "Thumb opening made.",
        "Isn't it pretty?",
        "The mitten is worked from the bottom up.",
    ],
)
def test_a_remark_is_kept_whole_and_works_nothing(printed: str) -> None:
    """The knitter is told it where it stands, and no round comes of it."""
    made = reword(made_plain(printed))
    assert made.text.strip(" .") == ""
    assert made.kept == (printed.rstrip(".?"),)


@pytest.mark.parametrize(
    "printed",
    [
        "I knit 14 rounds.",
        "Remember to slip the first stitch of every row.",
        "This makes it easier to knit every row.",
        "Want a longer cuff?",
        "If you are making the larger size, knit 4 rows.",
        "Keep 4 sts in garter stitch.",
        "Row 3: See the photo.",
        "You will have 40 sts.",
        "You can now bind off.",
        "Note that the first row is worked on the wrong side rows only.",
    ],
)
def test_what_may_be_an_instruction_is_no_remark(printed: str) -> None:
    """An instruction passed over as a remark is a round that is missing."""
    assert reword(made_plain(printed)).kept == ()
