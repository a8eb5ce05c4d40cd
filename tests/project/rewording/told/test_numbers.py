"""Numbers that a line spells out. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.numbers import digits_of, number_of, write_numbers


@pytest.mark.parametrize(
    ("line", "digits"),
    [
        ("Repeat rows 3 and 4 twenty-two more times.", "Repeat rows 3 and 4 22 more times."),
        ("Work Section Two three times.", "Work Section 2 three times."),
        ("Knit eleven rows.", "Knit 11 rows."),
        ("Work in part one round more.", "Work in part one round more."),
        ("Twenty minutes later it is done.", "Twenty minutes later it is done."),
    ],
)
def test_what_counts_is_written_as_digits(line: str, digits: str) -> None:
    """Each letter keeps its place, and words that count no rows stay."""
    made = write_numbers(as_printed(line))
    assert made.text == digits
    assert len(made.places) == len(digits) + 1


def test_a_word_that_is_no_number_stays() -> None:
    """A section may be called by a letter."""
    assert (digits_of("Forty-one"), digits_of("b")) == ("41", "b")


def test_a_number_is_one_in_words_or_digits() -> None:
    """A sign that looks like a digit and counts nothing is none."""
    assert [number_of(word) for word in ("twelve", "Twenty-four", "8", "sleeves", "²")] == [12, 24, 8, None, None]
