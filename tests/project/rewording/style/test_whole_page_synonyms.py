"""Sentences of whole garments in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Next row: K27, turn and work this side first.", "Next row: K27, turn, hold all sts."),
        ("Bind off 6 sts at beg of next row and 7 sts at beg of foll alt row.", "Bind off 6 sts at beg of next row. work 1 row even. bind off 7 sts at beg of next row."),
        ("When piece measures 20 cm, bind off.", "work even until piece measures 20 cm. bind off."),
        ("Knit 24 rows, finishing at neck edge.", "Knit 24 rows. ends at neck edge."),
        ("Working on last 26 sts only, place remaining sts on holders.", "work in rows over next 26 sts, hold others sts."),
    ],
)  # fmt: skip
def test_a_sentence_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """Each says what is worked; the words around it are said."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    [
        "When piece measures 20 cm, k2tog at each end.",
        "Working on first 26 sts only, place remaining sts on holders.",
        "Bind off 6 sts at beg of next row and 7 sts at each end.",
    ],
)
def test_what_only_looks_like_it_is_not_taken_for_it(printed: str) -> None:
    """Another verb, the stitches at the far end and another place say something else."""
    made = reword(made_plain(printed)).text
    assert "work even until" not in made
    assert "over next 26 sts" not in made
    assert "work 1 row even" not in made
