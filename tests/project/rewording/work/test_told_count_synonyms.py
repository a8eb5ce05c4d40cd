"""Counts told of a row further up, of one needle, of the rows worked. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("At the end of Row 12 you will have 81 sts.", "81 sts after row 12. ."),
        ("Stitch count after row 10: 64 (72) sts.", "64 (72) sts after row 10."),
        ("Rep rnds 1 and 2 until 56 sts rem, with 27 on N2.", "Rep rnds 1 and 2 until 56 sts rem. 27 sts on needle 2."),
        ("Rep rows 1 and 2 until 28 (32) rows of the flap have been worked, ending with a WS row.", "Rep rows 1 and 2 until 28 (32) rows so far. ends with a WS row."),
        ("Rep rows 1 and 2 13 times more, until there are 28 rows in the flap.", "Rep rows 1 and 2 13 times more. 28 rows."),
    ],
)  # fmt: skip
def test_a_count_is_put_into_the_words_that_are_checked(printed: str, read: str) -> None:
    """A count that is only said would hide the stitch that is missing."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    ["At the end of Row 12 cast on 12 sts.", "After Row 6, 12 sts inc'd.", "Sts at end of Row 8: 16 more than you started with."],
)  # fmt: skip
def test_what_tells_no_count_of_a_row_stays_as_it_is(printed: str) -> None:
    """Stitches cast on there, and stitches gained, are no count of all."""
    assert reword(made_plain(printed)).text == printed
