"""What the phrases of a sentence about shaping mean together. Source: common practice."""

from __future__ import annotations

import pytest

from tests.project.rewording.told.test_sentences import written


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Do that again every 9th round until you've done it 10 times in all.", "Rep same round on every 9th round 10 times in all."),
        ("Work increase round every 10th round until you have worked it 8 times.", "Work increase round on every 10th round 8 times in all."),
        ("Increase like this on every 3rd rnd until there are 17 sts between the markers, 64 sts altogether.", "Rep alike inc round on every 3rd rnd until 17 sts between the markers. 64 sts."),
        ("Continue to decrease in this way every 6 rounds until 48 sts are left.", "Rep alike dec round on every 6 rounds until 48 sts."),
        ("Decrease 1 st at each side on the next and every following RS row, 4 times in total.", "Dec 1 st at each end of next row and every RS row 4 times in all."),
        ("Work the increases on both sides of the markers as before on every second round 15 more times.", "Rep beside inc round on every other round 15 more times."),
        ("Repeat the decrease round for every 4 cm in total 8 times = 48 sts.", "Rep decrease round on every 4 cm 8 times in all. 48 sts."),
        ("Keep decreasing in every second round until 32 sts remain, then in every round until 8 sts remain.", "Rep alike dec round on every other round until 32 sts, then every round until 8 sts."),
    ],
)  # fmt: skip
def test_a_shaping_is_written_as_the_grammar_has_it(printed: str, words: str) -> None:
    """However it is told, it falls on the same rows as often."""
    assert written(printed) == words


def test_a_number_of_stitches_is_that_of_the_row_shown() -> None:
    """It is handed on, to be looked for there; at two ends it is twice the number."""
    assert written("Increase 8 sts in the same way on every other round 3 more times.") == "Rep alike inc round 8 on every other round 3 more times."
    assert written("Continue to decrease 1 st at each end of every RS row 3 more times.") == "Rep alike dec row 2 on every RS row 3 more times."


@pytest.mark.parametrize(
    "printed",
    [
        "Decrease like this every other round 12 times.",
        "Raglan increases are worked on every 2nd round 22 times.",
        "Increase 4 sts every round 6 times, then every other round 10 times.",
    ],
)
def test_times_that_may_count_the_row_shown_or_not_are_left(printed: str) -> None:
    """Only a count behind them could tell."""
    assert written(printed) == printed


@pytest.mark.parametrize("part", ["neck", "sleeve", "body"])
def test_what_a_row_shapes_is_not_taken_for_the_last_row(part: str) -> None:
    """The last row that increases may shape another edge."""
    printed = f"Repeat the {part} increases every other round 2 more times."
    assert written(printed) == printed
