"""Sentences of continental pages in English. Source: pattern pages of such houses; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Work rib in the round (= knit 2, purl 2) for 3 cm.", "work in k2, p2 rib for 3 cm."),
        ("Increase like this every 2nd round a total of 5 times.", "rep same Inc round every 2nd round 5 times in total."),
        ("Repeat the decrease every 4 cm another 2 times.", "rep same dec round every 4 cm 2 times more."),
        ("Change back to double pointed needles size 3 mm.", "Change to 3 mm double-pointed needles."),
        ("Bind off loosely by knitting.", "Bind off loosely in knit."),
        ("After the last increase there are 88 stitches on the needle.", "88 stitches."),
        ("Work the other side mirrored.", "complete like other side, reversing shaping."),
        ("Put the work aside and knit the sleeves.", "hold all sts."),
        ("Bind off when the piece measures 26 cm.", "work even until piece measures 26 cm. Bind off."),
    ],
)
def test_a_sentence_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """What is meant is the same, whichever way the page says it."""
    assert reword(made_plain(printed)).text == read
    assert reads(printed)


@pytest.mark.parametrize(
    "printed",
    [
        "Increase like this every 2nd round until it fits.",
        "Decrease for buttonholes when the piece measures 4, 8 and 12 cm.",
        "Work pattern - see CHART B.",
        "Knit 4 rounds (= until the piece is long enough, then turn).",
        "Bind off 6 stitches in each side (= 2 stitches on each side of both marker threads).",
        "When the piece measures 9 cm, it is time for the heel, and then knit 4 rounds.",
        "Insert 1 marker thread in the middle of the new stitches under the sleeve.",
        "Put the work aside and knit 4 rounds.",
        "Work as right front piece but longer.",
    ],
)
def test_what_looks_alike_and_means_another_thing_is_refused(printed: str) -> None:
    """An order, a choice or a number that does not agree is never taken for a remark."""
    assert not reads(printed)
