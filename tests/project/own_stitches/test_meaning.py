"""What an abbreviation means on a page, told in words."""

from __future__ import annotations

from stepper.project.own_stitches.meaning import Meaning, read_meaning
from tests.tables import each_row


@each_row(
    ("words", "stitches", "uses", "change"),
    [
        ("slip edge: slip the first stitch purlwise with yarn in front", "sl 1 wyif", 1, 0),
        ("with yarn in front, slip 1 purlwise", "sl 1 wyif", 1, 0),
        ("lift the bar from front to back, knit it through the back loop", "m1l", 0, 1),
        ("lift the bar from back to front and knit into the front of it", "m1r", 0, 1),
        ("pick up the bar between sts and knit into the back of it", "m1", 0, 1),
        ("knit into front and back of next stitch (1 st increased)", "kfb", 1, 1),
        ("purl into the front and back of the stitch", "pfb", 1, 1),
        ("slip 1, knit 2 together, pass the slipped stitch over", "sk2p", 3, -2),
        ("slip 2 together knitwise, knit 1, pass 2 slipped sts over", "s2kp", 3, -2),
        ("slip 2 sts one at a time knitwise, knit them together through back loops", "ssk", 2, -1),
        ("slip 2 sts knitwise one at a time and knit them together through the back loops", "ssk", 2, -1),
        ("knit, yarn over, knit into the same stitch", "(k1, yo, k1) in one st", 1, 2),
        ("slip next 2 sts to cable needle and hold in front, p1, k2 from cable needle", "2/1 lpc", 3, 0),
        ("slip 1 st to cn, hold at back, k2, p1 from cn", "2/1 rpc", 3, 0),
        ("slip 2 sts to cn and hold in back, k2, k2 from cn", "2/2 rc", 4, 0),
        ("skip the first st, knit the second st, then knit the first st, and slip both off together", "1/1 rc", 2, 0),
        ("knit the 2nd st through the back loop, then knit the 1st st; drop both off the needle", "1/1 lc", 2, 0),
        ("(k1, yo, k1, yo, k1) in next st, turn, p5, turn, k5tog", "mb", 1, 0),
        ("k2tog, yo", "k2tog, yo", 2, 0),
        ("(k1, yo) twice", "k1, yo, k1, yo", 2, 2),
        ("wool forward", "yo", 0, 1),
        ("over, that is, thread before the needle to make a stitch", "yo", 0, 1),
        ("wool round needle", "yo", 0, 1),
        ("narrow, by knitting two together", "k2tog", 2, -1),
        ("double decrease (sl. 1, K. 2 tog., p.s.s.o.)", "sk2p", 3, -2),
        ("slip 1, K. 1, pass slipped st. over", "skp", 2, -1),
        ("slip 1 as if to knit, k2tog, pass the slipped st over", "sk2p", 3, -2),
        ("sl 2 sts together as if to knit, k1, pass both over (the middle stitch lies on top)", "s2kp", 3, -2),
        ("lift strand between sts on to left needle and knit into the back of it", "m1", 0, 1),
        ("pick up and knit", "pick up and knit", 0, 0),
    ],
)  # fmt: skip
def test_a_stitch_told_in_words_is_read(words: str, stitches: str, uses: int, change: int) -> None:
    """Source: Craft Yarn Council, knitting abbreviations (m1l, m1r, kfb, ssk, sk2p, n/m LC, RPC); twist and bobble: common practice."""
    meaning = read_meaning(words)
    assert meaning is not None
    assert (meaning.text, meaning.uses, meaning.change) == (stitches, uses, change)


@each_row(
    "words",
    [
        "slip first st, knit last st",
        "narrow, by purling two together",
        "narrow (sl 1, k2tog, psso)",
        "wool forward or round the needle",
        "knit on RS, purl on WS",
        "k1 or p1",
        "k2tog, yo, rep to end",
        "lift the bar from front to back and knit into the front of it",
        "slip 2 sts to cn and hold in front, k2, k1 from cn",
        "(k1, yo, k1) in next st, turn, p5, turn, k5tog",
        "wrap the yarn three times around the next 2 sts",
        "knit into front and back of next stitch (2 sts increased)",
        "slip 1 knitwise with yarn in front",
        "cast on 2 sts",
        "",
    ],
)
def test_words_that_are_not_all_understood_mean_nothing(words: str) -> None:
    """An eyelet is no make one, a cable gives back what it held, and a claimed gain is the gain: a guess would be knitted."""
    assert read_meaning(words) is None


def test_stitches_are_written_as_a_row_has_them() -> None:
    """Equal neighbours of the plain stitches are joined, as a printed row joins them."""
    assert Meaning(("k", "k", "p tbl", "sl wyif", "sl wyif")).text == "k2, p1 tbl, sl 2 wyif"


def test_what_it_does_to_the_count_and_which_way_it_leans_is_no_stitch() -> None:
    """"(1 st dec'd, leans right)" stands behind many a k2tog; a lifted loop may be worked into, too."""
    for words in ("knit 2 sts together (1 st dec'd, leans right)", "knit 2 together (right-leaning decrease)"):
        assert read_meaning(words) == read_meaning("k2tog")
    lifted = "make one stitch by picking up the loop lying before the next stitch and working into the back of it"
    assert read_meaning(lifted) == read_meaning("m1")


def test_that_it_is_an_increase_or_a_decrease_may_be_said_first() -> None:
    """Old lists say what an abbreviation is for before they say how; what goes the other way is no such meaning."""
    for words in (
        "increase by working into front and back of the stitch",
        "inc. 1 st by working twice into next st (1 st increased)",
        "increase (knit into front then back of st)",
        "increase, by k. into front and back of same st",
    ):
        assert read_meaning(words) == read_meaning("kfb"), words
    assert read_meaning("decrease by knitting 2 sts together") == read_meaning("k2tog")
    assert read_meaning("make 1 purlwise") == read_meaning("m1p")
    for words in ("increase by k2tog", "decrease by working into front and back of st", "increase by (k1, yo, k1) in next st"):
        assert read_meaning(words) is None, words
