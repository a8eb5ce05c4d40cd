"""What leads into the rows below a line is only said, and works nothing itself."""

from __future__ import annotations

import pytest

from stepper.project.rewording.clauses.lead_ins import write_lead_ins
from stepper.project.rewording.reworded import as_printed


@pytest.mark.parametrize(
    ("printed", "left", "said"),
    [
        ("Change to 4 mm needles and proceed in the following pattern:", "Change to 4 mm needles", "proceed in the following pattern"),
        ("Change to the lace pattern, which is worked over 8 sts and 4 rounds:", "", "Change to the lace pattern, which is worked over 8 sts and 4 rounds"),
        ("Knit 2 rows, then work in moss lace as follows:", "Knit 2 rows", "then work in moss lace as follows"),
        ("Begin leaf lace (multiple of 8 sts plus 1):", "", "Begin leaf lace (multiple of 8 sts plus 1)"),
    ],
)
def test_words_that_lead_into_rows_are_said_and_what_stands_before_them_is_left(printed: str, left: str, said: str) -> None:
    """The rows below are worked as they stand; a lead-in that was worked itself would come on top of them."""
    made = write_lead_ins(as_printed(printed))
    assert (made.text, made.kept) == (left, (said,))


@pytest.mark.parametrize(
    "printed",
    [
        "Work in lace pattern",
        "Work in the following pattern until piece measures 10 cm:",
        "Work 4 rows in the following pattern",
        "Work the last 3 rows of the pattern as follows:",
        "Continue in pattern to end, casting off 4 sts as follows:",
    ],
)
def test_words_that_order_more_than_that_rows_follow_are_left(printed: str) -> None:
    """How long, how many rows, and stitches to be bound off are orders: they must be read or refused."""
    assert write_lead_ins(as_printed(printed)).text == printed
