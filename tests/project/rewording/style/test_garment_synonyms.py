"""Wording of garment patterns of today. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Row 3: P to end, turn your work.", "Row 3: P to end, turn."),
        ("Place next 8 sts on a stitch holder, a safety pin or waste yarn.", "hold 8 sts."),
        ("Bind off loosely, preferably with a tubular bind-off.", "Bind off loosely."),
        ("BO all sts on the WS.", "next row (WS): bind off all sts."),
        ("Work until 3 cm above beginning of armhole.", "Work until armhole measures 3 cm."),
        ("Knit the second shoulder just like the first one.", "Work as for first shoulder."),
        ("Work right front as left front, but reverse shaping.", "Work as for left front, reversing shaping."),
        ("Swap to smaller needles.", "change to smaller needles."),
        ("CO 32 sts, divided evenly over 4 dpns.", "CO 32 sts. divide over 4 needles."),
    ],
)
def test_each_is_put_into_the_words_that_are_read(printed: str, words: str) -> None:
    """Each of these says one thing only, in words of its own."""
    assert " ".join(reword(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    ("printed", "said"),
    [
        ("Place next 8 sts on a stitch holder or a spare cable.", "a stitch holder or a spare cable"),
        ("Bind off all sts, or use a tubular bind off.", "or use a tubular bind off"),
        ("Pick up and knit roughly 30 sts along the neck.", "roughly"),
    ],
)
def test_what_is_left_to_her_is_said(printed: str, said: str) -> None:
    """Which holder and which bind-off is hers to choose, and that a number is rough hers to know."""
    assert said in reword(made_plain(printed)).kept


@pytest.mark.parametrize(
    ("printed", "left"),
    [
        ("Bind off 5 sts using a spare needle, k to end.", "k to end"),
        ("Work left front as right front, reversing buttonholes.", "reversing buttonholes"),
        ("Place next 8 sts on a holder and leave them until the next row.", "until the next row"),
    ],
)
def test_what_would_be_lost_stays_as_it_is(printed: str, left: str) -> None:
    """A row that works on behind such words is not cut short."""
    assert left in reword(made_plain(printed)).text
