"""Rounds told by the halves of a foot, worked out by hand. Source: sock patterns in print; common practice."""

from __future__ import annotations

from stepper.plan.compile import compile_plan
from stepper.plan.stitches.halves import moved_instep, turned_on
from stepper.plan.stitches.needle_by_needle import NeedleEnds
from stepper.project.reader import read_project
from tests.plan.fabric.test_established import knit
from tests.plan.test_compile import faults
from tests.project.samples import project

TWO = "Cast on 40 sts.\nDivide over 2 needles, 20 sts on needle 1, 20 sts on needle 2.\nJoin in the round.\nKnit 2 rounds.\n"
HEEL = """Cast on 40 sts.
Join in the round.
Rnd 1: *K3, p1; rep from * to end.
Rnd 2: Knit.
Rep rnds 1-2 twice.
Work in rows over next 20 sts of heel, hold others 20 sts for instep.
Row 1 (RS): Sl 1, k to end.
Row 2: Sl 1, p to end.
Rep rows 1-2 twice.
Row 1 (RS): K11, ssk, k1, turn.
Row 2: Sl 1, p3, p2tog, p1, turn.
Row 3: Sl 1, k to 1 st before gap, ssk, k1, turn.
Row 4: Sl 1, p to 1 st before gap, p2tog, p1, turn.
Rep rows 3 and 4 until 2 sts remain beyond the gap at each side.
"""
GUSSET = "Next rnd: K12, pick up and knit 8 sts, work across instep in pattern, pick up and knit 8 sts.\n"


def refused(work: str) -> str:
    """Return what is printed of the problems of some lines in one size."""
    return faults(project(work, sizes="S", size="S"))


def test_a_gusset_shrinks_the_sole_beside_an_instep_in_its_pattern() -> None:
    """The heel was turned to 12 sts; the instep came back with row 1 of its pattern, so row 2 comes first, then row 1."""
    lines = HEEL.replace("until 2 sts remain beyond the gap at each side", "until all sts are worked")
    plan = knit(
        f"{lines}{GUSSET}Knit 6 sts to new beginning.\nBegin rounds from middle of sole.\n"
        "Rnd 1: On sole: k to last 3 sts, k2tog, k1; on instep: work in pattern to end; on sole: k1, ssk, k to end.\n"
        "Rnd 2: On sole: knit; on instep: work in pattern to end.\nRep rnds 1-2 until 44 sts rem.\n"
        "K to new beginning at instep.\nOn sole: knit; on instep: work in pattern to end."
    )
    assert [round_.instruction for round_ in plan.rounds[-4:]] == [
        "k11, k2tog, k1, k20, k1, ssk, k11",
        "k13, (k3, p1) 5 times, k13",
        "k10, k2tog, k1, k20, k1, ssk, k10",
        "(k3, p1) 5 times, k24",
    ]
    counted = f"{lines}{GUSSET}48 sts: 20 sts on N1, 28 sts on N2."
    assert "no needle ends where the instep does" in refused(counted)


def test_a_heel_stops_where_so_many_stitches_are_left_at_each_side() -> None:
    """Eleven, ssk, one of 20 leave 6 at each side; every row takes two of them in, and none leaves one."""
    assert [round_.after for round_ in knit(HEEL).rounds[-6:]] == [19, 18, 17, 16, 15, 14]
    assert "the rows leave 0 stitches at a side, and never 1" in refused(HEEL.replace("2 sts remain", "one st remains"))


def test_each_half_is_worked_to_its_own_end() -> None:
    """ "K to last 3 sts" on the instep are the last 3 of needle 2, which holds it here; the line tells it first."""
    plan = knit(f"{TWO}Instep on needle 2.\nRnd 1: Instep: k1, ssk, k to last 3 sts, k2tog, k1; sole: knit.")
    assert plan.rounds[-1].instruction == "k20, k1, ssk, k14, k2tog, k1"


def test_halves_that_nobody_knows_or_that_do_not_fit_are_refused() -> None:
    """Nothing says where the instep lies; a half is told wrong; one half is worked as if it were the round."""
    round_ = "Rnd 1: Knit to the instep; instep in pattern; knit to end."
    assert "which stitches are the instep" in refused(f"{TWO}{round_}")
    assert "the round meets instep, sole" in refused(f"{TWO}Instep on needle 1.\n{round_}")
    assert "the sole has 20 stitches here" in refused(f"{TWO}Instep on needle 1.\nOn instep: knit; on sole: k5.")
    assert "over the whole round" in refused(f"{TWO}Sole: knit.")
    assert "over the whole round" in refused(f"{TWO}Instep: work in pattern as set.")
    assert "a part of what is on the needles" in refused(f"{TWO}Knit across the instep sts.")
    assert "begins 0 stitches before the instep" in refused(f"{TWO}Instep on needle 1.\nThe rnd now begins at center of heel.")


def test_the_front_needle_is_the_first_and_that_is_told() -> None:
    """Two needles in the round; common practice."""
    reading = read_project(project(f"{TWO}Front needle: K1, ssk, k to end; back needle: knit.", sizes="S", size="S"))
    assert reading.project is not None
    made = compile_plan(reading.project)
    assert made.plan is not None
    assert made.plan.rounds[-1].after == 39


def test_the_instep_moves_with_the_round() -> None:
    """A new beginning before it or behind it turns it; one within it leaves nobody able to tell."""
    assert turned_on((10, 30), 10, 40) == (0, 20)
    assert turned_on((10, 30), 30, 40) == (20, 40)
    assert turned_on((10, 30), 20, 40) is None
    assert moved_instep((0, 20), 40, NeedleEnds(placed=[18]), 40, 36) == (0, 18)
    assert moved_instep((0, 20), 40, NeedleEnds(placed=[18], unsure=True), 40, 36) is None
