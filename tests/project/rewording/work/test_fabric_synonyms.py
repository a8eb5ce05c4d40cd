"""Other wordings for a fabric that goes on. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Starting with p2, work 6 rows in 2x2 rib.", "work 6 rows in p2, k2 rib."),
        ("Starting with k3, work 6 rows in 3x1 rib.", "work 6 rows in k3, p1 rib."),
        ("Continue without shaping for next 7 rows.", "Continue even for 7 rows."),
        ("Work even for 9 rows -- work measures 12 cm from beg.", "Work even for 9 rows."),
        ("K to last 2 sts before marker, k2tog, k to end.", "K to 2 sts before marker, k2tog, k to end."),
    ],
)
def test_the_words_say_the_same(printed: str, words: str) -> None:
    """A rib begins with the stitches that are named; a length said beside a number of rows is only told."""
    assert reword(made_plain(printed)).text == words


def test_a_rib_that_begins_with_other_stitches_than_its_numbers_is_left_alone() -> None:
    """"Starting with p3" in a 2x2 rib is half a rib: nobody can tell what comes after."""
    assert "rib" in reword("Starting with p3, work 6 rows in 2x2 rib.").text
    assert "p3, k2" not in reword("Starting with p3, work 6 rows in 2x2 rib.").text
