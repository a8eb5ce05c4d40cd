"""An even increase or decrease, worked once and worked again."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.plan.compile import compile_plan
from stepper.plan.even.even_change import counts_over
from stepper.project.reader import read_project
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import HEAD, project

START = "Cast on 20 sts.\nJoin in the round.\n"


def after(work: str) -> list[int]:
    """Return the stitches after each round behind the cast-on."""
    return [round_.after for round_ in plan_of(project(START + work)).rounds[1:]]


def test_an_even_change_is_repeated_with_the_rounds_around_it() -> None:
    """"Rep last 3 rounds" behind a decrease and two plain rounds decreases again; it was dropped in silence."""
    assert after("Decrease 4 sts evenly.\nKnit 2 rounds.\nRep last 3 rounds once more.") == [16, 16, 16, 12, 12, 12]


def test_an_even_change_is_repeated_alone() -> None:
    """"Rep last round" takes the decrease, not the plain round before it."""
    assert after("Knit 1 round.\nDecrease 4 sts evenly.\nRep last round once more.") == [20, 16, 12]


def test_a_change_to_a_count_is_not_repeated() -> None:
    """What goes to 16 stitches cannot go there again; she is asked to write it out."""
    told = faults(project(START + "Decrease evenly to 16 sts.\nKnit 2 rounds.\nRep last 3 rounds once more.\nBind off."))
    assert "cannot be worked again" in told


def test_the_fabric_goes_on_behind_a_repeated_change() -> None:
    """Stockinette stays stockinette however often it was decreased."""
    plan = plan_of(project(START + "Knit 2 rounds.\nDecrease 4 sts evenly.\nKnit 1 round.\nRep last 2 rounds once more.\nWork 2 rounds even."))
    assert [round_.instruction for round_ in plan.rounds[-2:]] == ["knit", "knit"]
    assert plan.rounds[-1].after == 12


LEAP = "Cast on 80 (92, 200) sts.\nJoin in the round.\nInc: Knit, inc 56 (64, 70) sts evenly. 136 (156, 270) sts.\nKnit 1 round."


def leap(then: str) -> tuple[list[int], str]:
    """Blend 80 stitches to another size; return the stitches after each round, or none, and what is told."""
    text = project(LEAP, size="S").replace("{size: S}", f"{{size: S, then: [{{from: Inc, size: {then}}}]}}")
    read = read_project(text)
    assert read.project is not None
    compiled = compile_plan(read.project)
    if compiled.plan is None:
        return [], " ".join(f"{each.message} {each.hint}" for each in compiled.problems)
    return [each.after for each in compiled.plan.rounds[1:]], " ".join(each.text for each in compiled.plan.warnings)


def test_a_blend_that_changes_half_of_the_stitches_is_doubted_and_two_rounds_are_offered() -> None:
    """80 to 156 is 76 increases, nearly one in every stitch; in equal shares 80 goes to 112 and 156 (√(80 × 156) = 111.7)."""
    counts, told = leap("M")
    assert counts == [156, 156]
    assert "76 increases on 80 stitches in one round: half of them or more are changed." in told
    assert "`over: 2 rounds` beside the switch goes from 80 to 112 and then to 156." in told
    counts, told = leap("M, over: 2 rounds")
    assert counts == [112, 156, 156]
    assert "half of them" not in told


def test_a_leap_that_no_round_can_carry_says_how_many_rounds_can() -> None:
    """80 to 270 is more than twice; √(80 × 270) = 147, and neither step is."""
    counts, told = leap("L")
    assert counts == []
    assert "`over: 2 rounds` beside the switch spreads the change over 2 rounds." in told
    assert leap("L, over: 2 rounds")[0] == [147, 270, 270]


def test_a_size_alone_is_never_doubted() -> None:
    """Yokes are increased by half as they are printed: 80 to 136."""
    counts, told = leap("S")
    assert counts == [136, 136]
    assert told == ""


def test_an_even_round_in_pattern_goes_on_in_rib() -> None:
    """By hand: ten stitches to each of four decreases, eight of them in the rib as it stands, which two stitches fewer each
    time begin with the other half; two purls are purled together."""
    rib = "Cast on 40 sts.\nJoin in the round.\n*K2, p2; rep from * to end. Work 2 rounds.\n"
    last = plan_of(project(f"{rib}Work 1 round in pattern, decreasing 4 sts evenly.")).rounds[-1]
    half = "(k2, p2) 2 times, k2tog, (p2, k2) 2 times, p2tog"
    assert (last.before, last.after, last.instruction) == (40, 36, f"{half}, {half}")


@given(st.integers(2, 300), st.integers(2, 300), st.integers(1, 4))
def test_the_rounds_that_share_a_change_change_in_the_same_proportion(before: int, after: int, rounds: int) -> None:
    """Every step the same factor, but for half a stitch of rounding."""
    counts = counts_over(before, after, rounds, 1 if after > before else -1)
    assert (len(counts), counts[-1]) == (rounds, after)
    for at, count in enumerate(counts, start=1):
        assert abs(count - before * (after / before) ** (at / rounds)) <= 0.5 + 1e-6


@pytest.mark.parametrize(
    ("behind", "told"),
    [("*K2, p2; rep from * to end.", True), ("Knit 2 rounds.", False), ("Chart peak.", False), ("Knit 1 round.\n*K2, p2; rep from * to end.", False)],
)
def test_a_change_knitted_plain_in_the_middle_of_a_rib_is_told(behind: str, told: bool) -> None:
    """One plain round shows in a rib; before plain knitting or a chart it is what is meant."""
    rib = "Cast on 40 sts.\nJoin in the round.\n*K2, p2; rep from * to end. Work 2 rounds.\nIncrease evenly to 44 sts.\n"
    plan = plan_of(project(f"{rib}{behind}", sizes="S", size="S"))
    assert any("knitted plain" in each.text for each in plan.warnings) is told


def test_a_blend_over_three_rounds_with_nothing_cast_on_is_refused() -> None:
    """It ended in a division by nothing."""
    head = HEAD.replace("knit: {{size: {size}}}", "knit: {{size: S, then: [{{from: First, size: L, over: 3}}]}}")
    assert "there are no stitches on the needles" in faults(project("First: increase evenly to 50 (55, 60) sts.\nKnit 1 round.", head=head))
