"""Stripes told as a list. Source: common practice."""

from __future__ import annotations

import pytest

from tests.project.rewording.told.test_sentences import written


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Knit 2 rounds A, 1 round B and 4 rounds A.", "With A, knit 2 rounds. With B, knit 1 round. With A, knit 4 rounds."),
        ("Work 2 rows in A and 2 rows in B, 6 times in all.", "With A, work 2 rows. With B, work 2 rows. Rep last 4 rows 6 times in all."),
        ("Knit 2 rows with A, then purl 2 rows with B.", "With A, knit 2 rows. With B, purl 2 rows."),
    ],
)
def test_a_list_of_stripes_is_rows_each_with_its_yarn(printed: str, words: str) -> None:
    """What is worked so often is the whole list."""
    assert written(printed) == words


@pytest.mark.parametrize("printed", ["Knit 2 rounds A.", "Knit 2 (4) rounds A and 2 rounds B, 3 times in all."])
def test_one_stripe_and_stripes_of_each_size_are_left(printed: str) -> None:
    """How many rows are the last ones must not be guessed."""
    assert written(printed) == printed
