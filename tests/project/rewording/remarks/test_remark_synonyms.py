"""Finishing and explanations. Source: patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


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
    assert reword(made_plain(printed)).text.strip(" .") == read.strip(" .")


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
    made = reword(made_plain(printed))
    assert made.text.strip(" .")


@pytest.mark.parametrize(
    ("printed", "words", "kept"),
    [
        ("Knit 3 rnds (slipping the side markers as you go).", "Knit 3 rnds.", "slipping the side markers as you go"),
        ("CO 50 sts over 2 needles held together.", "CO 50 sts.", "over 2 needles held together"),
        ("Join to work in the round; don't twist.", "Join to work in the round.", "don't twist"),
        ("K8, use the knitted method to CO 5 sts, k to end.", "K8, CO 5 sts, k to end.", "knitted method"),
        ("Bind off as for neckband.", "Bind off.", "as for neckband"),
        ("Work even in rib with CC until piece measures 4 cm.", "with CC, Work even in rib until piece measures 4 cm.", ""),
        ("Row 2 and all WS rows through Row 10: Purl.", "even Rows 2-10: Purl.", ""),
        ("Work Rows 1-6 of Low Tide twice.", "Work Rows 1-6 of Low Tide pattern twice.", ""),
    ],
)  # fmt: skip
def test_what_works_no_stitch_is_said_beside(printed: str, words: str, kept: str) -> None:
    """The work is read without it, and nothing of it is lost."""
    made = reword(made_plain(printed))
    assert " ".join(made.text.split()) == words
    assert kept == " ".join(made.kept)
    assert reads(made_plain(printed))


@pytest.mark.parametrize(
    "printed",
    [
        "Work Rows 1-6 of Back twice.",
        "Row 2 and all odd rows through Row 10: Purl.",
        "K2 (slipping 2 sts), k to end.",
        "Bind off as for body, decreasing 3 sts.",
    ],
)
def test_what_may_be_work_is_not_passed_over(printed: str) -> None:
    """A part has no rows of a pattern, and odd rows do not begin with an even one."""
    assert not reads(made_plain(printed))
