"""Durations and shaping, from the words to the rows they come to. Source: common practice."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import compiled, plan_of
from tests.project.samples import HEAD, project


def counts(work: str) -> list[int]:
    """Return the stitches after every row behind the cast-on and before the bind-off."""
    return [round_.after for round_ in plan_of(project(f"{work}\nBind off.")).rounds[1:-1]]


def test_shaping_at_the_ends_of_rows_needs_no_name() -> None:
    """British patterns print no row for it: "Inc 1 st at each end of every 4th row 2 times" takes eight rows."""
    head = "Cast on 20 sts. Work flat.\n"
    assert counts(head + "Inc 1 st at each end of every 4th row 2 times.") == [20, 20, 22, 22, 22, 22, 24, 24]
    assert counts(head + "Dec 1 st at the beginning of next row.") == [19]
    assert counts(head + "Dec 1 st at each end of next 3 rows.") == [18, 16, 14]
    assert counts(head + "Decrease 1 st at each side every RS row 2 times.") == [18, 18, 16]
    assert counts(head + "Knit 1 row.\nDecrease 1 st at each side every RS row 2 times.") == [20, 20, 18, 18, 16]


def test_next_and_every_has_two_readings_and_both_are_told() -> None:
    """Five times may count the next row or not; the printed count decides, and where none is printed both are told."""
    head = "Cast on 20 sts. Work flat.\nDec 1 st at each end of next and every foll 4th row 3 times."
    assert counts(head)[-1] == 12
    assert counts(head + " 14 sts.")[-1] == 14
    told = plan_of(project(head + " 14 sts.\nBind off.")).warnings[0].text
    assert "4 times in all" in told
    assert "3 times in all" in told
    assert "alone fits" in told


def test_a_total_counts_the_times_already_worked() -> None:
    """"A total of 3 times" is three, and needs no word of caution; "another 3 times" is three more."""
    head = "Cast on 20 sts. Work flat.\nRow 1 (RS): K1, ssk, k to end.\nRow 2: Purl.\n"
    assert counts(head + "Rep rows 1 and 2 a total of 3 times.")[-1] == 17
    assert counts(head + "Rep rows 1 and 2 another 3 times.")[-1] == 16
    assert plan_of(project(head + "Rep rows 1 and 2 a total of 3 times.\nBind off.")).warnings == ()


def test_a_shaping_begins_beside_another_when_the_piece_is_long_enough() -> None:
    """Armhole from the start, neck from 5 cm on. Source: arithmetic, 28 rows to 10 cm, so the neck waits 14 rows."""
    rows = counts(
        "Cast on 60 sts. Work flat.\nArmhole row (RS): K1, ssk, k to end.\nNeck row (RS): K to last 3 sts, k2tog, k1.\n"
        "Work armhole row every 2nd row 6 times.\n"
        "AT THE SAME TIME, when piece measures 5 cm, work neck row every 2nd row 3 times."
    )
    changes = [before - after for before, after in zip([60, *rows], rows, strict=False)]
    assert sum(changes[:14]) == 6
    assert sum(changes[14:]) == 3
    assert changes[14] == 1


def test_a_piece_worked_for_a_length_ends_with_the_side_that_is_asked_for() -> None:
    """"Work for 4 cm, ending with a WS row": 11 rows by the gauge, 12 to end on the wrong side."""
    plan = plan_of(project("Cast on 20 sts. Work flat.\nWork in st st for 4 cm, ending with a WS row.\nBind off."))
    assert len(plan.rounds) == 14
    assert plan.rounds[-2].side == "WS"


def test_rounds_worked_by_turns_and_then_one_of_them_to_a_length() -> None:
    """"Repeat rnd 1 once, then rnd 2 until piece measures 5 cm"; "work" right behind the rounds may mean themselves."""
    written = "Cast on 20 sts. Join in the round.\nRnd 1: Purl.\nRnd 2: Knit.\n{} rnd 1 once, then rnd 2 until piece measures 5 cm.\nBind off."
    plan = plan_of(project(written.format("Repeat")))
    assert "come on top is not clear" in compiled(project(written.format("Work"))).problems[0].message
    assert [round_.instruction for round_ in plan.rounds[1:5]] == ["purl", "knit", "purl", "knit"]
    assert len(plan.rounds) == 16


@pytest.mark.parametrize("words", ["Dec 1 st at neck edge every row 4 times.", "Dec 1 st at armhole edge of next row."])
def test_an_edge_that_may_be_either_is_asked_for(words: str) -> None:
    """Which end the neck is at depends on the piece; the program does not guess."""
    problems = compiled(project(f"Cast on 20 sts. Work flat.\n{words}\nBind off.")).problems
    assert "does not say at which end of the row" in problems[0].message


def test_smaller_and_larger_needles_are_those_of_the_gauges() -> None:
    """Two sizes in the file make the words clear; one does not."""
    two = HEAD.replace("charts:", "  rib: {{needle: 3.25 mm, stitches: 22, rounds: 30}}\ncharts:")
    work = "With smaller needles, cast on 20 sts.\nJoin in the round.\nChange to larger needles and knit 2 rounds.\nBind off."
    assert [round_.needle_mm for round_ in plan_of(project(work, head=two)).rounds] == [3.25, 4.0, 4.0, 4.0]
    assert '"smaller needles" is clear only where' in compiled(project(work)).problems[0].message
