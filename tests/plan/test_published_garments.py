"""Garments whose sums are published, worked round by round from lines as a pattern prints them.

Sources stand beside each check: check-values 4.1 (percentage yoke), 4.2 (raglan), 4.3 (sleeves); crown, heel and
foot as common practice.
"""

from __future__ import annotations

import pytest

from stepper.plan.model import Plan
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project


def counts(plan: Plan) -> list[int]:
    """Return the stitches after every round that changes their number, without the last."""
    return [round_.after for round_ in plan.rounds[:-1] if round_.after != round_.before]


def one_size(work: str) -> str:
    """Put work lines into a file of one size."""
    return project(work, sizes="one", size="one")


def test_the_joined_percentage_yoke_comes_to_134_percent() -> None:
    """K = 200: body 200 and two sleeves of 66, less four underarms of 16, are 268. Source: 4.1.1 to 4.1.6."""
    plan = plan_of(
        one_size(
            "Cast on 66 sts. Join in the round.\nK50, hold 16 sts for left underarm.\nHold 50 sts for left sleeve.\n"
            "Cast on 66 sts. Join in the round.\nK50, hold 16 sts for right underarm.\nHold 50 sts for right sleeve.\n"
            "Cast on 200 sts. Join in the round.\n"
            "Joining rnd: K84, hold 16 sts for left body underarm, k across left sleeve sts, "
            "k84, hold 16 sts for right body underarm, k across right sleeve sts. 268 sts.\nBind off."
        )
    )
    assert plan.rounds[-2].after == 200 + 2 * 66 - 4 * 16 == 268
    assert set(plan.rounds[-2].held.values()) == {16}


def test_the_yoke_of_three_equal_rhythms_reaches_its_neck() -> None:
    """Each round k1, k2tog takes a third away: 268, 179, 120, 80. Source: 4.1.9, leftovers knitted plain."""
    plan = plan_of(
        one_size(
            "Cast on 268 sts. Join in the round.\n*K1, k2tog; rep from * to last st, k1. 179 sts.\n"
            "*K1, k2tog; rep from * to last 2 sts, k2. 120 sts.\n*K1, k2tog; rep from * to end. 80 sts.\nBind off."
        )
    )
    assert counts(plan) == [268, 179, 120, 80]


def test_the_yoke_of_three_different_rhythms_does_not_reach_the_printed_neck() -> None:
    """268, 201, 134, then 80 is printed; k1, k2tog, k2tog does not divide 134. Source: 4.1.10, conflict 4.1.11.

    The program shows the conflict: the rhythm leaves four stitches over, and with them knitted it comes to 82.
    A line that names the target instead comes to 80.
    """
    head = (
        "Cast on 268 sts. Join in the round.\n*K2, k2tog; rep from * to end. 201 sts.\n"
        "*K1, k2tog; rep from * to end. 134 sts.\n"
    )
    told = faults(one_size(head + "*K1, k2tog, k2tog; rep from * to end. 80 sts.\nBind off."))
    assert "26 repeats leave 4 over" in told
    told = faults(one_size(head + "*K1, k2tog, k2tog; rep from * to last 4 sts, k4. 80 sts.\nBind off."))
    assert "prints 80 stitches" in told
    assert "82" in told
    assert counts(plan_of(one_size(head + "Decrease evenly to 80 sts.\nBind off.")))[-1] == 80


def test_a_raglan_takes_eight_stitches_a_round_and_cannot_meet_every_neck() -> None:
    """268 to 80 are 188 stitches, 23 rounds of eight and four over: 23 rounds leave 84. Source: 4.2.1 to 4.2.3."""
    work = (
        "Cast on 268 sts. Join in the round.\nSet-up rnd: K84, pm, k50, pm, k84, pm, k50.\n"
        "Rnd 1: *Ssk, k to 2 sts before marker, k2tog, sm; rep from * to end. 260 sts.\nRnd 2: Knit.\n"
        "Rep rnds 1 and 2 until {} sts rem.\nBind off."
    )
    plan = plan_of(one_size(work.format(84)))
    shaped = [round_ for round_ in plan.rounds[1:-1] if round_.after != round_.before]
    assert {round_.before - round_.after for round_ in shaped} == {8}
    assert len(shaped) == 23
    assert "never leaves 80 stitches" in faults(one_size(work.format(80)))


@pytest.mark.parametrize(
    ("begin", "legs", "end", "rows"),
    [
        (60, ((10, 10), (9, 4)), 88, 136),  # 4.3.1, split computed
        (60, ((10, 12), (8, 2)), 88, 136),  # 4.3.2, the same flat, on right-side rows only
        (38, ((10, 9), (9, 2)), 60, 108),  # 4.3.3, split computed
    ],
)
def test_sleeves_of_the_tables_come_out_in_stitches_and_rounds(
    begin: int, legs: tuple[tuple[int, int], ...], end: int, rows: int
) -> None:
    """Paired increases at two intervals reach the upper arm in the rounds there are. Source: 4.3.1 to 4.3.3."""
    first, second = (f"every {every}th rnd {times} times" for every, times in legs)
    plan = plan_of(
        one_size(
            f"Cast on {begin} sts. Join in the round.\nInc rnd: K1, m1l, k to last st, m1r, k1.\n"
            f"Work inc rnd {first}, then {second}. {end} sts.\nBind off."
        )
    )
    assert len(plan.rounds) - 2 == rows
    assert plan.rounds[-2].after == end


def test_the_first_sleeve_of_the_tables_can_be_worked_flat_on_right_side_rows() -> None:
    """12 x 10 rows and 2 x 8 rows are 136, every shaping on the right side. Source: 4.3.2, computed."""
    plan = plan_of(
        one_size(
            "Cast on 60 sts. Work flat.\nRow 1 (WS): Purl.\nInc row (RS): K1, m1l, k to last st, m1r, k1.\n"
            "Work inc row every 10th row 12 times, then every 8th row 2 times. 88 sts.\nBind off."
        )
    )
    shaped = [round_ for round_ in plan.rounds[1:-1] if round_.after != round_.before]
    assert {round_.side for round_ in shaped} == {"RS"}
    assert len(shaped) == 14


@pytest.mark.parametrize(("sections", "each"), [(8, 14), (6, 18), (7, 16)])
def test_a_crown_of_wedges_loses_one_stitch_a_wedge_and_ends_with_one_of_each(sections: int, each: int) -> None:
    """n wedges of m stitches need m - 1 decrease rounds, the first of k(m - 2), k2tog. Source: common practice."""
    count = sections * each
    lines = [f"Rnd {2 * (each - left) + 1}: *K{left - 2}, k2tog; rep from * to end. {sections * (left - 1)} sts.\nRnd {2 * (each - left) + 2}: Knit." for left in range(each, 2, -1)]
    plan = plan_of(
        one_size(
            f"Cast on {count} sts. Join in the round.\n" + "\n".join(lines) + f"\n*K2tog; rep from * to end. {sections} sts.\nBreak yarn and draw through rem sts."
        )
    )
    shaped = [round_ for round_ in plan.rounds[1:-1] if round_.after != round_.before]
    assert len(shaped) == each - 1
    assert plan.rounds[-1].before == sections


def test_a_turned_heel_leaves_half_its_stitches_and_two() -> None:
    """A heel of n stitches turned from n/2 + 2 leaves n/2 + 2: 24 leave 14. Source: common practice, from memory."""
    plan = plan_of(
        one_size(
            "Cast on 24 sts. Work flat.\nRow 1 (RS): K14, ssk, k1, turn.\nRow 2 (WS): Sl 1, p5, p2tog, p1, turn.\n"
            "Row 3: Sl 1, k to 1 st before gap, ssk, k1, turn.\nRow 4: Sl 1, p to 1 st before gap, p2tog, p1, turn.\n"
            "Rep rows 3 and 4 2 times more.\nRow 5: Sl 1, k to 1 st before gap, ssk.\nRow 6: Sl 1, p to 1 st before gap, p2tog. 14 sts.\nBind off."
        )
    )
    assert len(plan.rounds[1:-1]) == 10
    assert {round_.before - round_.after for round_ in plan.rounds[1:-1]} == {1}
