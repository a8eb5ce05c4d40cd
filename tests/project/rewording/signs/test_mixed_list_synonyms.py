"""Lists in which brackets come and go. Source: pattern pages of continental houses; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Cast on 64 (68-72) 76 (80-84) sts.", "Cast on 64 (68, 72, 76, 80, 84) sts."),
        ("Cast on 64-68-72 sts.", "Cast on 64 (68, 72) sts."),
        ("Knit 2 (3) 4 (5) 6 (7) rounds.", "Knit 2 (3, 4, 5, 6, 7) rounds."),
        ("Work until the piece measures 9 (9½-10) 11 (11½-12) cm.", "Work until the piece measures 9 (9½, 10, 11, 11½, 12) cm."),
        ("Work until the piece measures 4-4½-5 cm.", "Work until the piece measures 4 (4½, 5) cm."),
        ("Knit 20 (22) 24, bind off 8 sts, k to end.", "Knit 20 (22, 24), bind off 8 sts, k to end."),
    ],
)
def test_a_list_stands_in_one_bracket(printed: str, read: str) -> None:
    """Each number is of one size, in the order printed."""
    assert reword(made_plain(printed)).text == read
    assert reads(printed)


@pytest.mark.parametrize("printed", ["Knit 8-9 rounds.", "Work 8-9 cm in st st.", "Row 1: K2 (p2) 3, k to end."])
def test_what_may_be_a_choice_or_a_repeat_is_no_list(printed: str) -> None:
    """Two numbers with a dash may be a choice, and stitches in brackets are a group."""
    assert not reads(printed)
