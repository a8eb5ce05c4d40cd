"""What a repeat comes to in all is true of it in every size, or the line is not read."""

from __future__ import annotations

import pytest

from stepper.project.rewording.again.in_all import write_repeats_in_all
from stepper.project.rewording.reworded import as_printed
from tests.tables import each_row

TRUE = {
    "Rep rows 1-4 another 12 (12, 13) times: 13 (13, 14) reps in all.": (
        "Rep rows 1-4 another 12 (12, 13) times.",
        "13 (13, 14) reps in all",
    ),
    "Repeat these 2 rows 17 times more (18 times in all). 40 sts.": (
        "Repeat these 2 rows 17 times more. 40 sts.",
        "18 times in all",
    ),
    "Rep rnds 1 and 2 12 times, for a total of 13 times.": (
        "Rep rnds 1 and 2 12 times more.",
        "for a total of 13 times",
    ),
    "Rep rnds 1 and 2 12 times (12 times in all).": ("Rep rnds 1 and 2 12 times in total.", "12 times in all"),
}


@each_row("printed", TRUE)
def test_what_is_true_is_said_and_settles_what_times_mean(printed: str) -> None:
    """ "12 times" may mean twelve more, or the first among them: rows too many or too few."""
    made = write_repeats_in_all(as_printed(printed))
    assert (made.text, *made.kept) == TRUE[printed]


@pytest.mark.parametrize(
    "printed",
    [
        "Rep rows 1-4 12 more times (12 times in all).",
        "Rep rows 1-4 another 12 (12, 13) times: 13 (13, 13) reps in all.",
        "Rep rows 1-4 another 12 (12, 13) times: 13 reps in all.",
        "Rep rows 1-4 12 times (14 times in all).",
        "Rep rows 1-4 12 times. 40 sts in all.",
        "K2, p2; rep from * 3 times, 16 sts in all.",
    ],
)
def test_what_is_true_in_no_way_is_left_as_it_is_printed(printed: str) -> None:
    """The page or the reader is wrong there, and nobody knows which."""
    assert write_repeats_in_all(as_printed(printed)).text == printed
