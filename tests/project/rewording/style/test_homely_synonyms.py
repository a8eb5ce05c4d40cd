"""Pages that knitters type for each other. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Rows 6,7,&8: Purl.", "Rows 6,7 and 8: Purl."),
        ("Row 2 & 4- (ws) purl", "Row 2 and 4 (ws): purl"),
        ("K 2tog, k to end.", "K2tog, k to end."),
        ("Round 2: Knit every stitch.", "Round 2: Knit."),
        ("Repeat until 28 sts remain.", "rep last rows until 28 sts remain."),
        ("Continue working on these 32 sts.", "32 sts."),
        ('Work even in st st for \u00bd" more.', "Work even in st st for \u00bd in."),
        ("Work straight until piece measures 5 in from 1st row of armhole shaping.", "Work straight until armhole measures 5 in."),
        ("Bind off 3 sts at beg of next 2 rows, then decrease 1 st at each end of next row.", "Bind off 3 sts at beg of next 2 rows. decrease 1 st at each end of next row."),
        ("Rep from ** to ** twice, then rows 1-2 once.", "again from ** to ** twice. work rows 1-2 once."),
    ],
)  # fmt: skip
def test_a_page_typed_at_home_is_brought_into_the_words_of_the_trade(printed: str, words: str) -> None:
    """Each of these can mean one thing only."""
    assert " ".join(reword(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    "printed",
    [
        "Knit every stitch but the last.",
        "Repeat until it is long enough.",
        "Work until piece measures 5 in from 1st row of pattern.",
        "Starting at the marker, cast on 20 sts.",
    ],
)
def test_what_only_looks_like_it_stays_as_printed(printed: str) -> None:
    """A word more or another place, and the line says something else."""
    assert reword(made_plain(printed)).text == printed
