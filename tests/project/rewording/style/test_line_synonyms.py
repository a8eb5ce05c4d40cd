"""Other wordings of whole lines. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("1st and 2nd rows: Knit.", "rows 1 and 2: Knit."),
        ("Row 1: (RS) K to end.", "Row 1 (RS): K to end."),
        ("Knit two rounds even.", "Knit two rounds."),
        ("Work for 5 cm or until leg is desired length.", "Work for 5 cm."),
        ("Work for 5 cm, or until desired length is reached.", "Work for 5 cm."),
        ("Purl to end, lifting the wraps and purling them together with their sts.", "Purl to end."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """A head may be printed in any order."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    [
        "Do not break yarn k10, k2tog.",
        "Work for 5 cm or until piece measures 20 cm.",
        "K to end, picking up wraps and knitting 2 rounds.",
    ],
)
def test_what_has_two_meanings_stays_as_it_is(printed: str) -> None:
    """A guess in the table would be a row knitted wrong in silence; such a line is refused."""
    assert reword(made_plain(printed)).text == printed
