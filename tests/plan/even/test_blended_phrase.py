"""Written-out rounds of even changes over another size's stitches."""

from __future__ import annotations

import pytest

from stepper.plan.compile import compile_plan
from stepper.project.reader import read_project
from tests.invariants import broken_invariants
from tests.plan.even.test_blended_count import blended
from tests.project.samples import project

DEC = """
Cast on 240 (264, 282) sts.
Join in the round.
Knit 1 round.
Fewer: *K4, k2tog; rep from * to end. 200 (220, 235) sts.
Knit 1 round.
"""


def test_a_repeat_that_does_not_divide_is_spread_evenly() -> None:
    """264 to 235: 29 decreases; 264 - 58 = 206 plain stitches are 3 gaps of 8 and 26 of 7 (206 = 29 × 7 + 3)."""
    plan = blended(DEC, "M", "{from: Fewer, size: L}")
    round_ = next(each for each in plan.rounds if each.label == "Fewer")
    assert (round_.before, round_.after, round_.size) == (264, 235, "L")
    plain = sorted(run.times for run in round_.runs if run.stitch == "k")
    assert plain == [7] * 26 + [8] * 3
    assert {run.stitch for run in round_.runs} == {"k", "k2tog"}
    assert broken_invariants(plan) == ()
    assert any("they are spread evenly to reach 235" in caution.text for caution in plan.warnings)


def test_one_that_fits_as_it_is_printed_stays_as_it_is_printed() -> None:
    """Where the phrase meets the count of the size, it is the designer's; here both sizes have the same stitches."""
    work = DEC.replace("240 (264, 282)", "240 (240, 282)").replace("200 (220, 235)", "200 (200, 235)")
    plan = blended(work, "S", "{from: Fewer, size: M}")
    round_ = next(each for each in plan.rounds if each.label == "Fewer")
    assert (round_.instruction, round_.evenly) == ("*k4, k2tog; rep from * to end", False)


@pytest.mark.parametrize(
    ("repeat", "after"), [("k3, ssk", 176), ("k4, kfb", 264), ("k4, yo", 275), ("p3, p2tog", 176)]
)
def test_the_changes_are_those_of_the_line(repeat: str, after: int) -> None:
    """An ssk leans the other way than k2tog, and a yarn over leaves its hole. 220 is 44 × 5 and 55 × 4."""
    work = f"Cast on 200 (220, 240) sts.\nJoin in the round.\nThis: *{repeat}; rep from * to end.\nKnit 1 round."
    plan = blended(work, "S", "{from: This, size: M}")
    round_ = next(each for each in plan.rounds if each.label == "This")
    plain, change = repeat.split(", ")
    assert {run.stitch for run in round_.runs} == {plain[0], change}
    assert (round_.before, round_.after, round_.evenly) == (200, after, True)
    assert broken_invariants(plan) == ()


def test_shaping_with_a_place_of_its_own_is_refused_with_the_lines_that_can() -> None:
    """Darts spread over the round would be no darts."""
    work = DEC.replace("Knit 1 round.", "Dart: K1, k2tog, k to last 3 sts, ssk, k1. 238 (262, 280) sts.", 1).replace(
        "*K4, k2tog; rep from * to end. 200 (220, 235)", "Knit, dec 40 sts evenly. 198 (222, 240)"
    )
    text = project(work, size="S").replace("knit: {size: S}", "knit: {size: S, then: [{from: Dart, size: M}]}")
    read = read_project(text)
    assert read.project is not None
    told = "\n".join(f"{each.message} {each.hint}" for each in compile_plan(read.project).problems)
    assert "its shaping stands at places of its own" in told
    assert 'A size can be switched at "Fewer".' in told


def test_a_round_that_was_spread_is_not_repeated_as_if_it_were_printed() -> None:
    """It goes to a count, which is reached once."""
    work = DEC.replace("Knit 1 round.\n", "", 1).replace("200 (220, 235) sts.\nKnit 1 round.", "200 (220, 235) sts.")
    text = project(work + "Rep last round 1 time more.", size="M")
    text = text.replace("knit: {size: M}", "knit: {size: M, then: [{from: Fewer, size: L}]}")
    read = read_project(text)
    assert read.project is not None
    assert "goes to a fixed count" in " ".join(each.message for each in compile_plan(read.project).problems)
