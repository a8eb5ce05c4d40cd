"""Crossings, twists and bobbles told in words. Source: Craft Yarn Council, cable abbreviations; else common practice."""

from __future__ import annotations

import pytest

from stepper.craft.stitches import stitch
from stepper.project.own_stitches.crossings_told import name_bobble, put_crossings
from stepper.project.own_stitches.meaning import read_meaning
from tests.tables import each_row

_CABLES = {
    "slip next st onto cable needle and leave at back, k2, then p1 from cable needle": "2/1 rpc",
    "slip next 3 sts on to cn and hold at back of work, knit 3 from left-hand needle, then knit 3 from cn": "3/3 rc",
    "slip next 2 stitches to cn and hold in front, purl next stitch from left-hand needle, then knit stitches from cn": "2/1 lpc",
    "slip next 2 sts onto cn, bring to front, k2, k2 from cn": "2/2 lc",
    "with cn in front, sl 3 sts to cn, k3, k3 from cn": "3/3 lc",
    "slip next 2 sts to front on cable needle, k2, k sts from cable needle": "2/2 lc",
    "sl 2 sts on a spare needle and leave at back of work, k2, then k2 from spare needle": "2/2 rc",
    "as C6F but hold cable needle at back": "3/3 rc",
    "same as 2/2 RC, but hold cn in front": "2/2 lc",
    "knit into back of 2nd st on left needle, then knit into front of first st, slipping both sts off needle together": "1/1 lc",
    "miss first st on left-hand needle, k into back of next st, then k into front of missed st and sl both sts off needle tog": "1/1 lc",
    "knit into front of second st on needle, then purl first st, slipping both sts off together": "1/1 rpc",
    "k2tog but do not slip off needle, then k first st again, slip both sts off needle": "1/1 rc",
}


@each_row(("words", "cable"), _CABLES.items())
def test_a_crossing_is_called_by_what_passes_in_front(words: str, cable: str) -> None:
    """What is held in front leans to the left, and what lies behind is purled where the cable says so."""
    meaning = read_meaning(words)
    assert meaning is not None
    assert (meaning.text, meaning.change) == (cable, 0)
    assert meaning.uses == sum(map(int, cable.split()[0].split("/")))


@pytest.mark.parametrize(
    "words",
    [
        "slip next 2 sts onto cn and hold at front, p1, then k1 from cn",  # one stays on the cable needle
        "slip next st onto cn and hold at front, k2, then p1 from cn",  # a purl stitch passes in front
        "slip next sts onto cn and hold at front, k2, then k sts from cn",  # nobody says how many
        "slip next 2 sts onto cn, k2, then k2 from cn",  # nor where they are held
        "as C5F but hold cable needle at back",  # the halves are not alike
        "as 2/1 RPC but hold cn in front",
        "k into back of next st, then k into front of first st",  # which one is missed is not said
        "slip next 2 sts onto cn and hold at front, k2tog, then k2 from cn",
    ],
)
def test_a_crossing_that_is_not_all_told_keeps_its_words(words: str) -> None:
    """A cable guessed from half of its words would be knitted."""
    assert read_meaning(words) is None


@pytest.mark.parametrize(
    ("words", "made"),
    [
        ("(k1, p1, k1, p1, k1) in next st, turn, p5, turn, k5, pass 2nd, 3rd, 4th and 5th sts over first st", True),
        ("(k1, yo, k1) in next st, turn, p3, turn, k3, turn, p3, turn, sk2p", True),
        ("[k1, p1, k1] into next st, [turn, k3] 3 times, turn, sk2p", True),
        ("k1 into front, back, front, back and front of next st, turn, p5, turn, k2tog, k1, k2tog, turn, p3tog", True),
        ("kfbf, turn, p3, turn, sk2p", True),
        ("(k1, p1, k1, p1, k1) in next st, turn, p5, turn, k5, pass 2nd, 3rd and 4th sts over first st", False),
        ("(k1, yo, k1) in next st, turn, p4, turn, sk2p", False),
        ("(k1, yo, k1) in next st, turn, p3, turn, k2tog", False),
        ("(k1, yo, k1) in next st, turn, p3", False),
    ],
)  # fmt: skip
def test_a_bobble_ends_with_the_one_stitch_it_began_with(words: str, *, made: bool) -> None:
    """Each of its rows is over all the stitches it has; else its count would be another."""
    assert (name_bobble(words) == "mb") is made
    assert stitch("mb").change == 0


def test_words_around_a_crossing_stay() -> None:
    """A definition may go on behind it."""
    assert put_crossings("slip 2 sts to cn and hold in back, k2, k2 from cn, p1") == "2/2 rc, p1"
