"""Rows between marks worked again to a length."""

from __future__ import annotations

from tests.project.corpus_judge import text_of, worked

ROWS = ("CO 20 sts. Join in the round.", "* Knit 2 rounds.", "Purl 1 round. **")


def rounds_and_told(last: str) -> tuple[int, list[str]]:
    """Work rows and their repeat; give how many rounds are worked, and what is told or refused."""
    text, _ = text_of([*ROWS, last], 1, "cm")
    plans, problems = worked(text, 1)
    if not plans:
        return 0, [problem.message for problem in problems]
    (plan,) = plans
    return sum(1 for one in plan.rounds if one.before), [caution.text for caution in plan.warnings]


def test_they_are_worked_whole_the_nearest_number_of_times() -> None:
    """By hand: 3 rounds to the centimetre, so 3.4 cm are 10 rounds, and three times 3 is nearest; 3.6 cm are 11, four times."""
    rounds, told = rounds_and_told("Rep from * to ** until piece measures 3.4 cm.")
    assert rounds == 9
    assert any("these 3 rows are worked twice more, whole, to 3.4 cm" in words for words in told)
    assert rounds_and_told("Rep from * to ** until piece measures 3.6 cm.")[0] == 12


def test_a_length_that_is_reached_already_is_refused() -> None:
    """One that is shorter than the rows that stand written."""
    rounds, told = rounds_and_told("Rep from * to ** until piece measures 1 cm.")
    assert rounds == 0
    assert any("measures 1 cm before these rows are worked once more" in words for words in told)


def test_which_row_ends_them_is_not_chosen() -> None:
    """Whole groups end with their own last row."""
    rounds, told = rounds_and_told("Rep from * to ** until piece measures 4 cm, ending with a WS row.")
    assert rounds == 0
    assert told
