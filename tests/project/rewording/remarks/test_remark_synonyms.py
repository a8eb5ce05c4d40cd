"""Finishing and explanations. Source: patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("NOTE - Slip all markers as you come to them.", ""),
        ("Tip: Try it on as you go.", ""),
        ("For a neater edge, k2tog, k to end.", "k2tog, k to end."),
        ("The body is worked in the round; k2tog, k to end.", "join in the round. k2tog, k to end."),
        ("M1: Lift the bar between the needles and knit into the back of it.", ""),
    ],
)
def test_words_that_only_explain_are_said_and_work_nothing(printed: str, read: str) -> None:
    """What stands behind them is worked all the same."""
    assert recast(made_plain(printed)).text.strip(" .") == read.strip(" .")


@pytest.mark.parametrize(
    "printed",
    [
        "NOTE - K2tog, k to end.",
        "Tip: knit 2 rounds.",
        "M1: yo, k1.",
        "Ssk: k2tog through the front.",
        "Turn hem to inside and knit 2 rounds.",
        "(This round is worked twice.)",
        "For a closer fit, every 4th round, k2tog.",
    ],
)
def test_an_instruction_among_them_is_never_lost(printed: str) -> None:
    """A stitch that is defined otherwise than the table has it, or a row among the words, is not passed over."""
    made = recast(made_plain(printed))
    assert made.text.strip(" .")
