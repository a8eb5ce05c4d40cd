"""Needles called by their use become sizes called by a word. All examples are invented; source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.voice.needle_roles import write_needle_roles


@pytest.mark.parametrize(
    ("printed", "written"),
    [
        ("Change to ribbing needles.", "Change to rib-size needles."),
        ("With the main needle, cast on 60 sts.", "With main-size needle, cast on 60 sts."),
        ("Change to needles for ribbing and knit 2 rounds.", "Change to rib-size needles and knit 2 rounds."),
        ("Change to body-size needles.", "Change to main-size needles."),
        ("Using sleeve dpns, knit 1 round.", "Using sleeve-size dpns, knit 1 round."),
    ],
)
def test_a_use_becomes_a_size_and_the_kind_of_needle_stays(printed: str, written: str) -> None:
    """The size is looked up in the materials, where it stands under one word for each use."""
    assert write_needle_roles(as_printed(printed)).text == written


def test_each_of_two_needles_of_a_line_is_written() -> None:
    """The second would be lost if the first moved its place."""
    printed = "On body needles, knit 1 round. Change to lace circular needle."
    written = "On main-size needles, knit 1 round. Change to lace-size circular needle."
    assert write_needle_roles(as_printed(printed)).text == written


@pytest.mark.parametrize(
    "printed",
    [
        "Change to smaller needles.",
        "Change to rib.",
        "Join the ribbing to main needle stitches.",
        "Cast on on 4 mm needles.",
    ],
)
def test_needles_that_are_called_otherwise_stay(printed: str) -> None:
    """A size by guess would be a wrong needle for a whole sleeve."""
    line = as_printed(printed)
    assert write_needle_roles(line) == line


def test_words_that_stay_keep_their_printed_place() -> None:
    """A fault behind the needle is shown where the page has it."""
    printed = "With the ribbing needles, knit 2 rounds."
    line = write_needle_roles(as_printed(printed))
    assert line.place(line.text.index("knit"), 4) == (printed.index("knit"), 4)
