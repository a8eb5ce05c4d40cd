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


def test_a_heel_that_does_not_come_out_even_is_refused() -> None:
    """With one stitch left beyond the gap there is none for the k1."""
    assert "0 of the" in faults(project(HEEL.replace("K7", "K8")))


def test_rows_without_turns_have_no_stitches_that_wait() -> None:
    """Such a line says nothing of how often."""
    work = "Cast on 24 sts.\nJoin in the round.\nRnd 1: Knit.\nRep rnd 1 until all sts have been worked.\n"
    assert "leave none" in faults(project(work))
