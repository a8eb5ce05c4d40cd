"""Longer sentences of pages in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Cast off 3 sts. at beg. of next 2 rows.", "Cast off 3 sts at beg of next 2 rows."),
        ("CO 88, 96, 104 sts.", "CO 88 (96, 104) sts."),
        ("Cast on 60 : 64 : 68 sts.", "Cast on 60 (64, 68) sts."),
        ("CO 80 sts; pm and join.", "CO 80 sts. join in the round."),
        ("*K2 CC, k2 MC; rep from * around.", "*k2 in CC, k2 in MC; rep from * to end."),
        ("1st row: K (2A, 2B) to end.", "row 1: *k2 in A, k2 in B; rep from * to end."),
        ("Bind off loosely on the next RS row.", "next row (RS): Bind off loosely."),
        ("Rep rows 1 and 2 four more times, until you have 17 sts.", "Rep rows 1 and 2 four more times. 17 sts."),
        ("Knit 4 rows, slipping the first st of every row.", "next 4 rows: sl 1, knit to end."),
        ("Rep last 2 rows another 3 (4, 5) times.", "Rep last 2 rows 3 (4, 5) times more."),
        ("Cast on 60 sts, 20 on each of three needles.", "Cast on 60 sts. divide over three needles. 20 sts on each needle."),
    ],
)  # fmt: skip
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """What is meant is the same, whichever way the page writes it."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    ["K2, 3 sts remain.", "Knit 6 rows. 48 sts.", "C6B: slip next 3 sts to cn and hold in front, k3, then k3 from cn."],
)
def test_what_may_mean_something_else_stays_as_it_is(printed: str) -> None:
    """A list is none without three numbers, and a cable told otherwise than its name is not passed over."""
    made = reword(made_plain(printed))
    assert made.text == printed
    assert made.kept == ()
