"""What a line that changes by an amount should reach from another size's stitches."""

from __future__ import annotations

from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan
from stepper.project.reader import read_project
from tests.project.samples import project

YOKE = """
Cast on 184 (192, 200) sts.
Join in the round.
Knit 1 round.
Inc Rnd 3: Knit, inc 56 (64, 72) sts evenly. 240 (256, 272) sts.
Knit 2 rounds. 240 (256, 272) sts.
"""


def blended(work: str, size: str, switch: str) -> Plan:
    """Compile lines begun in a size, with a switch."""
    text = project(work, size=size).replace(f"knit: {{size: {size}}}", f"knit: {{size: {size}, then: [{switch}]}}")
    read = read_project(text)
    assert read.project is not None, read.problems
    compiled = compile_plan(read.project)
    assert compiled.plan is not None, compiled.problems
    return compiled.plan


def test_the_amount_follows_from_the_count_to_reach() -> None:
    """M brings 192, L prints 272: 80 more and not L's 72; the note has both (272 - 192 = 80)."""
    plan = blended(YOKE, "M", "{from: Inc Rnd 3, size: L}")
    round_ = next(each for each in plan.rounds if each.label == "Inc Rnd 3")
    assert (round_.before, round_.after, len(round_.shaping)) == (192, 272, 80)
    told = [caution.text for caution in plan.warnings]
    assert (
        "the line would increase by 72, from 200 to 272; from the 192 on the needles it is 80 to reach 272." in told
    )


def test_a_size_alone_takes_its_amount_as_printed() -> None:
    """And says nothing of it."""
    plan = blended(YOKE, "M", "{from: Inc Rnd 3, size: M}")
    assert [len(each.shaping) for each in plan.rounds if each.shaping] == [64]
    assert not any("on the needles it is" in caution.text for caution in plan.warnings)


def test_a_later_line_takes_up_what_an_earlier_switch_left_open() -> None:
    """Switched where no stitches change, the next line that spreads a change brings them to the size's own."""
    work = YOKE.replace("Knit 1 round.", "Plain: Knit 1 round.", 1)
    plan = blended(work, "S", "{from: Plain, size: L}")
    round_ = next(each for each in plan.rounds if each.label == "Inc Rnd 3")
    assert (round_.size, round_.before, round_.after) == ("L", 184, 272)


def test_the_second_change_of_a_line_is_compared_with_the_second_of_the_size() -> None:
    """Not with the first: once the stitches are those of the size, its own amounts hold."""
    work = "Cast on 40 (44, 48) sts.\nJoin in the round.\nInc: Increase 8 sts evenly. Knit 1 round. Increase 4 sts evenly."
    plan = blended(work, "S", "{from: Inc, size: L}")
    assert [(each.before, each.after) for each in plan.rounds] == [(0, 40), (40, 56), (56, 56), (56, 60)]
