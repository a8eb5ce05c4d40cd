"""Heads, repeats and slipped stitches of printed rows. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


def written(printed: str) -> str:
    """Return a line in the words it is read in, whichever stage puts them."""
    return " ".join(reword(made_plain(printed), spoken=True).text.split())


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Row 9: Work as for Row 3.", "Row 9: rep Row 3."),
        ("Row 3: *P4, k1*; repeat *-* to last 4 sts, p4.", "Row 3: *p4, k1; rep from * to last 4 sts, p4."),
        ("[P3, yo, k2tog], repeat from [ to ] until last 3 sts, p3.", "[P3, yo, k2tog] to last 3 sts, p3."),
        ("Row 2: Knit the knits and purl the purls.", "Row 2: work in pattern to end."),
        ("Row 4: With yarn in front, sl 1, k to end.", "Row 4: sl 1 wyif, k to end."),
        ("Odd rows (RS): Purl.", "All Odd rows (RS): Purl."),
    ],
)
def test_a_row_is_put_into_the_words_of_the_grammar(printed: str, words: str) -> None:
    """Its stitches, its side and its repeats stay as printed."""
    assert written(printed) == words


@pytest.mark.parametrize("printed", ["Row 1 (WS - dec row): K1, k2tog, k to end.", "Row 1 (dec row, WS): K1, k2tog, k to end."])
def test_side_and_name_in_one_bracket_are_both_kept(printed: str) -> None:
    """The side says which rows they are, the name calls them again."""
    made = reword(made_plain(printed))
    assert made.name == "dec row"
    assert "(WS)" in made.text


def test_three_stitches_together_so_often_stay_two_things() -> None:
    """"K2tog, ssk 3 times" may be both, three times."""
    assert reword(made_plain("K2tog, ssk 3 times.")).text == "K2tog, ssk 3 times."


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("*K 1, p 1, repeat from * to * across row, end k1, p1.", "*k1, p1; rep from * to last 2 sts, k1, p1."),
        ("Row 1: *K3, p2; rep from * across, ending with k3.", "Row 1: *k3, p2; rep from * to last 3 sts, k3."),
        ("K2, *p1, k1; repeat from * across to last 6 sts, k6.", "K2, *p1, k1; rep from * to last 6 sts, k6."),
        ("*K6, k2tog, repeat to marker, k to end.", "*k6, k2tog; rep from * to marker, k to end."),
        ("Row 1: (K1, p1, k2tog) repeat.", "Row 1: (K1, p1, k2tog) to end."),
        ("K 1, p 1 alternately across.", "(K 1, p 1) to end."),
        ("*K 1, p 1 *, repeat between *s across row.", "*k1, p1; rep from * to end."),
    ],
)
def test_the_end_of_a_repeat_is_its_tail(printed: str, words: str) -> None:
    """What "end" names is worked once, behind the last whole repeat: of the stitches that are left for it."""
    assert written(printed) == words


@pytest.mark.parametrize(
    "printed",
    [
        "*K1, p1; rep from * across, ending with a purl row.",
        "*K1, p1; rep from *, end p 2 rows.",
        "Row 1: *K5, yo; rep from *, end last rep k2.",
    ],
)
def test_a_row_at_the_end_is_no_tail(printed: str) -> None:
    """A row of another side, or another last repeat, is not put behind the repeat as its stitches."""
    assert "from *, p" not in reword(made_plain(printed)).text
    assert "from *, k2" not in reword(made_plain(printed)).text


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Row 7) Knit", "Row 7: Knit"),
        ("R4 k3, p3, k to end", "Row 4: k3, p3, k to end"),
        ("Second row - Purl 3, knit to end.", "Second row: Purl 3, knit to end."),
        ("Row 5 to 8: knit", "Rows 5-8: knit"),
        ("P2, sl next 3 sts onto cn and hold in front, k3, k3 from cn, p2", "P2, 3/3 LC, p2"),
        ("P2, slip next 1 st to cable needle and hold at back, k2, p1 from cable needle, p2", "P2, 2/1 RPC, p2"),
        ("P2, slip next 2 sts to cn and hold in front, p1, k2 from cn, p2", "P2, 2/1 LPC, p2"),
        ("K, decreasing one stitch at each end of row.", "k1, k2tog, k to last 3 sts, k2tog, k1."),
        ("K2, m1, k to end -33-", "K2, m1, k to end (33 sts)"),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """A cable is named after the stitches that lie in front, then those behind (Craft Yarn Council's `n/m LC`)."""
    assert written(printed) == read


@pytest.mark.parametrize(
    "printed",
    [
        "K2 (4, 6), p2",
        "P2, slip next 2 sts to cable needle, k2",
        "C6F: Sl next 3 sts to cn and hold in back, k3, then k3 from cn.",
    ],
)
def test_what_may_mean_something_else_stays_as_it_is(printed: str) -> None:
    """A list of sizes is no bracket to be repeated, and what a cable means is no row in which it is worked."""
    made = reword(made_plain(printed))
    assert "/" not in made.text
    assert "2, (" not in made.text
