"""The rest of a part worked as another goes on. Source: common practice; counts by hand."""

from __future__ import annotations

import pytest

from tests.project.corpus_judge import text_of, worked

RIGHT = (
    "== right mitten",
    "CO 24 sts. Join in the round.",
    "Knit 3 rounds.",
    "Set-up rnd: K14, pm, m1l, pm, k to end. 25 sts.",
    "Inc rnd: Knit to marker, sm, m1r, k to marker, m1l, sm, k to end. 27 sts.",
    "Bind off.",
)
BEGUN = ("== left mitten", "CO 24 sts. Join in the round.", "Knit 3 rounds.")


def rounds_of(*own: str) -> list[int]:
    """Work a left mitten behind the right one, and return the counts of its rounds; none where it is refused."""
    plans, _ = worked(text_of([*RIGHT, *BEGUN, *own], 1, "cm")[0], 1)
    return [one.after for one in plans[0].rounds[7:]] if plans else []


def test_it_goes_on_behind_the_line_that_came_to_as_much() -> None:
    """By hand: 24, three rounds, 25, then the increase and the binding off of the right one."""
    own = "Set-up rnd: K10, pm, m1l, pm, k to end. 25 sts."
    assert rounds_of(own, "Complete as for right mitten.") == [24, 24, 24, 24, 25, 27, 0]


@pytest.mark.parametrize(
    "own",
    [
        ("Set-up rnd: K10, pm, m1l, pm, k to end. 25 sts.", "Knit 1 round."),
        ("Set-up rnd: K10, m1l, k to end. 25 sts.",),
        ("Knit 1 round.",),
        ("Set-up rnd: K10, pm, m1l, m1r, pm, k to end. 26 sts.",),
    ],
)
def test_where_nothing_of_the_other_is_alike_it_is_refused(own: tuple[str, ...]) -> None:
    """One round more, no markers, one stitch fewer or more: nobody can tell which line comes next."""
    assert rounds_of(*own, "Complete as for right mitten.") == []


def test_in_the_middle_of_a_line_it_does_not_go_on() -> None:
    """After two of the three rounds the line of the right one is not at its end."""
    text = text_of([*RIGHT, *BEGUN[:2], "Knit 2 rounds.", "Complete as for right mitten."], 1, "cm")[0]
    assert "no line of the right mitten ends" in " ".join(problem.message for problem in worked(text, 1)[1])


def test_nothing_is_left_behind_the_last_line() -> None:
    """A mitten worked whole has no rest."""
    assert rounds_of("Work as for right mitten.", "Complete as for right mitten.") == []
