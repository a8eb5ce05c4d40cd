"""Needles told by a word and their size. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Change to smaller needles (3.25 mm).", "Change to 3.25 mm needles."),
        (
            "Switch to larger circular needle, US 8, and knit 1 row.",
            "Switch to US 8 needles, and knit 1 row.",
        ),
        ("Change to the smaller UK 10 needles.", "Change to UK 10 needles."),
        (
            "With larger double-pointed needles (size 4 mm), knit 1 round.",
            "change to 4 mm needles. knit 1 round.",
        ),
    ],
)
def test_the_size_is_read(printed: str, read: str) -> None:
    """Which of two needles is meant is then clear."""
    assert " ".join(recast(made_plain(printed)).text.split()).replace(" ,", ",") == read


def test_a_word_alone_stays() -> None:
    """The file says which two needles there are."""
    assert recast(made_plain("Change to larger needles.")).text == "Change to larger needles."
