"""Rounds of a chart: some of them, the next one, and how the chart goes on."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import HEAD, project

FOUR = HEAD.replace("      a..a\n      .aa.\n", "      a...\n      .a..\n      ..a.\n      ...a\n")
START = "Cast on 8 sts.\nJoin in the round.\n"


def chart_rounds(work: str) -> list[int | None]:
    """Return the round of the chart that each round behind the cast-on works."""
    return [round_.chart_round for round_ in plan_of(project(START + work, head=FOUR)).rounds[1:]]


@pytest.mark.parametrize("words", ["Work 2 rounds as established.", "Work 2 rounds in pattern."])
def test_a_chart_worked_in_part_goes_on_with_its_next_round(words: str) -> None:
    """Rounds 1 and 2 are followed by 3 and 4; worked again they would shift the whole motif."""
    assert chart_rounds(f"Work chart peak, rounds 1-2.\n{words}") == [1, 2, 3, 4]


def test_a_chart_goes_on_from_its_last_round_with_the_first() -> None:
    """Behind round 4 of 4 comes round 1."""
    assert chart_rounds("Work chart peak, rounds 3-4.\nWork 3 rounds as established.") == [3, 4, 1, 2, 3]


def test_a_part_of_a_chart_worked_over_and_over_stays_that_part() -> None:
    """Two rounds worked twice are a pattern of two rounds."""
    assert chart_rounds("Work chart peak, rounds 1-2, 2 times.\nWork 2 rounds as established.") == [1, 2, 1, 2, 1, 2]


def test_the_next_round_of_a_chart_is_one_round() -> None:
    """"Work next rnd of chart" worked the whole chart."""
    assert chart_rounds("Work chart peak, rounds 1-2.\nWork next rnd of chart peak.") == [1, 2, 3]
    assert chart_rounds("Work next rnd of chart peak.") == [1]


def test_rounds_that_a_chart_has_not_are_refused() -> None:
    """Round 5 of a chart of four is a slip of the pen."""
    assert "has 4 rounds, not 5" in faults(project(START + "Work chart peak, rounds 3-5.\nBind off.", head=FOUR))


@pytest.mark.parametrize("before", ["", "Cast on 24 sts.\nKnit 2 rounds.\nBind off.\n"])
def test_a_chart_is_not_worked_on_no_stitches(before: str) -> None:
    """Four rounds without a stitch in them were called a plan."""
    assert "there are no stitches on the needles" in faults(project(f"{before}Chart peak.", head=FOUR))
