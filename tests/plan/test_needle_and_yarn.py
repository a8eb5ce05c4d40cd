"""Needles and yarns changed on the way."""

from __future__ import annotations

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import HEAD, project

TWO = HEAD.replace("charts:", "  rib: {{needle: 3.25 mm, stitches: 22, rounds: 30}}\ncharts:")


def test_a_needle_by_its_word_is_one_of_the_two_of_the_file() -> None:
    """`smaller` and `larger` name no size; the gauges of the file do, where they name two."""
    work = "Cast on 20 sts. Join in the round.\nChange to smaller needles.\nKnit 1 rnd.\nBind off."
    assert [round_.needle_mm for round_ in plan_of(project(work, head=TWO)).rounds] == [4.0, 3.25, 3.25]
    assert "they name 4 mm" in faults(project(work))


def test_a_yarn_is_taken_and_broken_by_its_name() -> None:
    """The yarn is called as the knitter calls it, and breaking it after the last round is said with that round."""
    plan = plan_of(project("Cast on 20 sts. Join in the round.\nWith A, knit 1 rnd.\nBreak A.\nWith MC, bind off.\nBreak MC."))
    assert plan.rounds[1].remarks == ("join in the round", "with moss")
    assert plan.rounds[2].remarks == ("break moss", "with oat", "break oat when it is done")
    assert 'there is no yarn "Q"' in faults(project("Cast on 20 sts.\nWith Q, knit 1 rnd.\nBind off."))


def test_after_a_yarn_is_broken_the_section_goes_on_in_its_own() -> None:
    """"Break A" and no other yarn named: the next round is in the main one, and says so."""
    start = "Cast on 8 sts.\nJoin in the round.\nKnit 1 round.\nWith A, knit 2 rounds.\n"
    plan = plan_of(project(f"{start}Break A.\nKnit 1 round."))
    assert [run.yarn for run in plan.rounds[-1].runs] == ["MC"]
    assert plan.rounds[-1].remarks == ("break moss", "with oat")
    joined = plan_of(project(f"{start}Break A.\nWith MC, knit 1 round."))
    assert joined.rounds[-1].remarks == ("break moss", "with oat")
