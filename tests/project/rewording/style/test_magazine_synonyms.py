"""Wordings of magazines and older leaflets. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Work in ribbing of K. 3, P. 2, for 3 in.", "Work in K 3, P 2 rib for 3 in."),
        ("Ss 7 rows.", "work 7 rows in st st."),
        ("These 6 rows complete the pattern.", "These 6 rows form pattern."),
        ("K17, wrap next st and turn.", "K17, w&t."),
        ("Rep last 2 rows a further 4 times.", "Rep last 2 rows 4 more times."),
        ("Cut A and attach B.", "Cut A. Join B."),
        ("Rep rows 3 and 4 6 times (52 sts).", "Rep rows 3 and 4 6 times. 52 sts."),
        ("Row 7: Rep row 3 - 48 sts.", "Row 7: Rep row 3. 48 sts."),
        ("Bind off 7 sts each side for armholes.", "Bind off 7 sts each side."),
        ("Beginning at neck edge, cast off 7 sts every other row twice.", "cast off 7 sts at neck edge every other row twice."),
    ],
)
def test_what_a_magazine_prints_is_put_into_the_words_that_are_read(printed: str, words: str) -> None:
    """Each of these says one thing only, in words of its own."""
    assert " ".join(reword(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    "printed",
    [
        "Work in ribbing of your choice.",
        "Ss 1, k to end.",
        "Cast on 3 sts each side.",
        "Do not knit the next row but purl it.",
    ],
)
def test_what_looks_like_it_stays_as_it_is(printed: str) -> None:
    """A fabric left to the knitter, a slipped stitch and stitches added are other things."""
    assert reword(made_plain(printed)).text == made_plain(printed)


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Row 7: *K3, k2tog* x 9.", "Row 7: (K3, k2tog) 9 times."),
        ("Row 7: SSK x 5.", "Row 7: (SSK) 5 times."),
        ("Next row: K2tog across to last 3 sts, k3.", "Next row: *K2tog; rep from * to last 3 sts, k3."),
        ("Work other side to correspond.", "complete like other side, reversing shaping."),
        ("Cont on these 17 sts only.", "17 sts."),
        ("Cast off ribwise.", "Cast off in rib."),
        ("K2tog at both ends of every other row 4 times.", "Dec 1 st at each end of every other row 4 times, working decreases 0 sts in from edge."),
    ],
)
def test_what_is_said_in_few_words_is_put_into_the_words_that_are_read(printed: str, words: str) -> None:
    """Each of these says one thing only, in words of its own."""
    assert " ".join(reword(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    "printed",
    ["Next row: K twice.", "Begin decreases wherever you like.", "Work the other side as you please.", "Multiply 4 x 6."],
)
def test_what_looks_like_it_stays_as_it_is_in_few_words(printed: str) -> None:
    """What is left to the knitter is not to be guessed."""
    assert reword(made_plain(printed)).text == made_plain(printed)


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Rep these 4 rows a further 3 times.", "Rep last 4 rows 3 more times."),
        ("Repeat above 4 rows 3 times.", "Repeat last 4 rows 3 times."),
        ("Next row: K2, k across to last 4 sts, k2tog, k2.", "Next row: K2, k to last 4 sts, k2tog, k2."),
        ("12 Join in the round.", "Join in the round."),
        ("Rows 3-8: St st.", "Rows 3-8: work in St st."),
        ("Row 5: *(A) k1, (B) k3; rep from * to end.", "Row 5: *k1 in A, k3 in B; rep from * to end."),
        ("Next row: Cast on 3 sts over cast-off sts.", "Next row: work in pattern, casting on 3 sts over each buttonhole."),
        ("Work other side to match.", "complete like other side, reversing shaping."),
        ("Complete second side to match first.", "complete like other side."),
        ("Work right front to match left front, reversing shapings.", "Work as for left front, reversing shaping."),
    ],
)
def test_what_a_booklet_prints_is_put_into_the_words_that_are_read(printed: str, words: str) -> None:
    """Each of these says one thing only, in words of its own."""
    assert " ".join(reword(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    "printed",
    ["12 Knit 20.", "Row 5: (A) k1, p3, k to end.", "Rows 3-8: in the other colour.", "Work until 3 (4, 5) or 30 cm."],
)
def test_what_looks_like_it_stays_as_it_is_in_booklets(printed: str) -> None:
    """A number in front of "knit" may be what is left of a broken row, and a yarn in brackets may be that of the whole row."""
    assert reword(made_plain(printed)).text == made_plain(printed)


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Next row: Inc in every 5th st to end.", "Next row: (k4, inc 1) to end."),
        ("K2tog all around. 8 sts.", "K2tog around. 8 sts."),
        ("Bind off loosely using 5 mm needle.", "change to 5 mm needles. Bind off loosely."),
        ("Work on these 24 sts for first side.", "24 sts."),
    ],
)
def test_a_british_wording_says_the_same(printed: str, words: str) -> None:
    """Counts, places and needles are those of the page."""
    assert " ".join(reword(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    "printed",
    [
        "Inc in every st to the marker, k to end.",
        "Inc in every 5th st 3 times.",
        "Proceed to the neck.",
        "Cont until armhole matches the chart.",
        "Slip centre marker, k to end.",
    ],
)
def test_what_is_not_all_told_stays(printed: str) -> None:
    """Where it ends, or what it is measured against, would have to be guessed."""
    assert reword(made_plain(printed)).text == made_plain(printed)
