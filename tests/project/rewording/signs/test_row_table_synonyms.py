"""Rows set in prose or in a table. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


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
    assert " ".join(recast(made_plain(printed)).text.split()).lower().startswith(words.lower().rstrip("."))


@pytest.mark.parametrize("printed", ["On the remaining rows knit.", "Every third row, purl.", "Rows 5-9: Using the scraps."])
def test_what_looks_like_it_stays_as_it_is(printed: str) -> None:
    """What is no head of a row and no number of stitches is not made one."""
    assert recast(made_plain(printed)).text == made_plain(printed)
