"""Needles that a page calls larger and that are smaller."""

from __future__ import annotations

import pytest

from tests.project.corpus_judge import text_of, worked


def told(*lines: str, gauges: str = "") -> list[str]:
    """Work lines; give what is told of their needles."""
    text, _ = text_of(["CO 20 sts. Work flat.", *lines], 1, "cm")
    if gauges:
        text = text.replace("  rib: {needle: 3.5 mm", f"  {gauges}: {{needle: 3.5 mm")
    (plan,), problems = worked(text, 1)
    assert problems == ()
    return [caution.text for caution in plan.warnings]


@pytest.mark.parametrize(
    ("before", "change", "words"),
    [
        (
            "4 mm",
            "Change to larger needles (3.5 mm).",
            "calls these needles larger, and 3.5 mm is smaller than the 4 mm",
        ),
        (
            "4 mm",
            "Change to larger needles, No. 10.",
            "calls these needles larger, and 3.25 mm is smaller than the 4 mm",
        ),
        (
            "3.5 mm",
            "Change to smaller 4 mm needles.",
            "calls these needles smaller, and 4 mm is larger than the 3.5 mm",
        ),
        (
            "5 mm",
            "Change to larger needles.",
            "calls these needles larger, and 4 mm is smaller than the 5 mm",
        ),
    ],
)
def test_a_word_against_the_size_is_told(before: str, change: str, words: str) -> None:
    """Source: the old UK table of the project, where No. 10 is 3.25 mm and No. 8 is 4 mm."""
    said = told(f"Change to {before} needles. Knit 1 row.", f"{change} Knit 1 row.")
    assert any(words in one for one in said), said


@pytest.mark.parametrize(
    ("before", "change"),
    [
        ("4 mm", "Change to smaller needles (3.5 mm)."),
        ("3.5 mm", "Change to larger needles."),
        ("4 mm", "Change to larger needles."),
        ("4 mm", "Change to 3.5 mm needles."),
    ],
)
def test_a_word_that_agrees_or_no_word_is_not(before: str, change: str) -> None:
    """Who has the needles in hand already, or was told only a size, has nothing to look at."""
    said = told(f"Change to {before} needles. Knit 1 row.", f"{change} Knit 1 row.")
    assert not any("calls these needles" in one for one in said)


def test_at_the_beginning_of_a_piece_nothing_is_in_hand() -> None:
    """The needle of the gauge is none that she has knitted with."""
    text, _ = text_of(["With larger needles (3.5 mm), CO 20 sts.", "Knit 1 row."], 1, "cm")
    (plan,), _ = worked(text, 1)
    assert not any("calls these needles" in caution.text for caution in plan.warnings)


def test_a_gauge_that_is_called_larger_and_is_smaller_is_told() -> None:
    """The names of the file are hers; the word goes by the size."""
    said = told("Change to larger needles. Knit 1 row.", gauges="larger")
    assert any(
        'taken as 4 mm, by their size; the file calls its gauge on 3.5 mm "larger"' in one for one in said
    ), said


def test_a_needle_told_by_its_length_begins_a_piece_on_a_size_that_is_told() -> None:
    """The page may give an edge a needle of its own in front of the pattern."""
    lines = ("Change to 3.5 mm needles. Knit 1 row.", "Bind off.", "With the 40 cm needle, pick up and knit 20 sts.")
    assert any("which size is not said here" in one for one in told(*lines))
    assert not any("which size" in one for one in told(*lines[:2], "With 3.5 mm needles, pick up and knit 20 sts."))
