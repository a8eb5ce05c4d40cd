"""Wordings of magazines and older leaflets. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


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
    assert " ".join(recast(made_plain(printed)).text.split()) == words


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
    assert recast(made_plain(printed)).text == made_plain(printed)
