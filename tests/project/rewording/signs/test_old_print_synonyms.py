"""Old print, needles of a sock, and what is only stated. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Bind off bind off all sts.", "Bind off all sts."),
        ("K. 2 and p. 2 for 3 cm.", "work in k2, p2 rib for 3 cm."),
        ("Row 6: (CC) k3, (MC) k1 around.", "Row 6: (k3 in CC, k1 in MC) to end."),
        ("Row 4: *k2, p4; to end.", "Row 4: *k2, p4; rep from * to end."),
        ("Second needle: k1, ssk, k to end.", "needle 2: k1, ssk, k to end."),
        ("Divide sts: 6 sts on 1st needle, 4 sts on 2nd, 6 sts on 3rd.", "divide over 3 needles, 6 sts on needle 1, 4 sts on needle 2, 6 sts on needle 3."),
        ("Work left wing in the same way.", "make again 1 wing."),
        ("Knit until as long as you want it.", "Knit until piece measures desired length of piece_______."),
    ],
)
def test_old_print_is_put_into_the_words_that_are_read(printed: str, words: str) -> None:
    """Each of these says one thing only, in spellings of its own."""
    assert " ".join(reword(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    ("printed", "said"),
    [
        ("You should now have 9 ridges on each side.", ("You should now have 9 ridges on each side",)),
        ("The piece now measures about 5 inches.", ("about", "The piece now measures 5 inches")),
        ("Knit for 20 cm, or however long you want it.", ("or however long you want it",)),
        ("Trim the lower edge with two rounds of double crochet.", ("Trim the lower edge with two rounds of double crochet",)),
    ],
)
def test_what_is_only_stated_is_said(printed: str, said: tuple[str, ...]) -> None:
    """It works no stitches, and the knitter hears it where it stands."""
    assert reword(made_plain(printed)).kept == said


@pytest.mark.parametrize(
    "printed",
    [
        "Work until 4 ridges are on each side.",
        "Knit for 20 cm, or knit 4 more rows if you like.",
        "Gather the remaining stitches.",
        "Work left front in the same way, omitting buttonholes.",
        "Trim with one row of seed stitch.",
    ],
)
def test_what_instructs_is_not_only_said(printed: str) -> None:
    """A choice of rows, live stitches and what is left out change the plan: they are not passed over."""
    assert not reword(made_plain(printed)).kept


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Third row, purl 2, knit to end.", "row 3: purl 2, knit to end."),
        ("(Rnd 6) K4, p4.", "Rnd 6: K4, p4."),
        ("Purl the first row plain.", "row 1: Purl"),
        ("Rows 7 and 8 Using C.", "Rows 7 and 8: with C, work in pattern"),
        ("Rows 5-9: Beg with a p row, work in st st.", "Rows 5-9 (WS): work in st st."),
        ("Work in pattern 6 rows.", "work 6 rows in pattern."),
        ("On the remaining 14 sts work even for 3 cm.", "14 sts. work even for 3 cm."),
    ],
)
def test_rows_in_prose_become_rows(printed: str, words: str) -> None:
    """Each of these says one thing only, in words of its own."""
    assert " ".join(reword(made_plain(printed)).text.split()).lower().startswith(words.lower().rstrip("."))


@pytest.mark.parametrize("printed", ["On the remaining rows knit.", "Every third row, purl.", "Rows 5-9: Using the scraps."])
def test_what_looks_like_it_stays_as_it_is(printed: str) -> None:
    """What is no head of a row and no number of stitches is not made one."""
    assert reword(made_plain(printed)).text == made_plain(printed)
