"""The turn of a heel, until all its stitches are worked. Source: common practice; counts by hand."""

from __future__ import annotations

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

HEEL = """Cast on 24 sts.
Join in the round.
Knit 1 round.
Work back and forth over the first 14 sts for heel.
Row 1 (RS): K7, ssk, k1, turn.
Row 2: Sl 1, p1, p2tog, p1, turn.
Row 3: Sl 1, k to 1 st before gap, ssk, k1, turn.
Row 4: Sl 1, p to 1 st before gap, p2tog, p1, turn.
Rep rows 3 and 4 until all heel sts have been worked.
"""


def test_the_rows_end_when_no_stitch_waits_on_either_side() -> None:
    """By hand: 14 stitches, 4 wait on each side after the first two rows and each row takes in 2: 6 rows in all,
    one stitch less each: 8 remain."""
    rounds = plan_of(project(HEEL)).rounds[3:]
    assert [one.after for one in rounds] == [13, 12, 11, 10, 9, 8]


def test_the_stitch_behind_the_last_decreases_is_left_out_where_none_is_left() -> None:
    """By hand: 16 stitches, 5 wait on each side after the first two rows; 2, 2 and the last one are taken in: 8 rows."""
    plan = plan_of(project(HEEL.replace("first 14", "first 16").replace("K7", "K8")))
    assert [one.after for one in plan.rounds[3:]] == [15, 14, 13, 12, 11, 10, 9, 8]
    assert any("left out" in caution.text for caution in plan.warnings)


def test_a_heel_whose_sides_do_not_come_out_alike_is_refused() -> None:
    """With one stitch left beyond the gap on one side alone there is none for the k1, and a number is wrong."""
    assert "0 of the" in faults(project(HEEL.replace("K7", "K8")))


def test_rows_without_turns_have_no_stitches_that_wait() -> None:
    """Such a line says nothing of how often."""
    work = "Cast on 24 sts.\nJoin in the round.\nRnd 1: Knit.\nRep rnd 1 until all sts have been worked.\n"
    assert "leave none" in faults(project(work))


def test_rows_told_by_numbers_take_one_stitch_more_before_the_decrease_each() -> None:
    """By hand, of 28 stitches: 9 wait on each side after two rows, 7 after four; then 8, 9, 10 ... stitches come before
    the decrease, and all are worked in eight more rows: 24 - 8 = 16 stitches."""
    rows = "Row 1 (RS): K16, skp, k1, turn.\nRow 2: Sl 1, p5, p2tog, p1, turn.\nRow 3: Sl 1, k6, skp, k1, turn.\n"
    work = f"Cast on 28 sts. Work flat.\nKnit 1 row. Purl 1 row.\n{rows}Row 4: Sl 1, p7, p2tog, p1, turn.\n"
    goes_on = "Continue in this manner, working 1 more st before the dec on every row, until all sts have been worked. 16 sts."
    plan = plan_of(project(work + goes_on + "\n"))
    assert [one.after for one in plan.rounds[-8:]] == [23, 22, 21, 20, 19, 18, 17, 16]
    assert any("one stitch more" in caution.text for caution in plan.warnings)
    # Two rows of which the second has not one stitch more do not go on by themselves.
    assert faults(project(work.replace("p7", "p6") + goes_on + "\n"))
