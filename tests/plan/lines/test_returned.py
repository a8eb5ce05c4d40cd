"""Stitches taken back from hold, or taken up where they lie. Counts by hand; common practice."""

from __future__ import annotations

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

DIVIDED = """Cast on 80 sts. Join in the round.
Knit 4 rounds.
Bind off 4, k36, bind off 4, k to end.
Break yarn.
Place the front 36 sts on a holder.
"""


def test_yarn_is_joined_to_what_lies_on_the_needle() -> None:
    """The back was never put on hold: nothing can come back from there."""
    plan = plan_of(project(f"{DIVIDED}With RS facing, rejoin yarn to back sts.\nRow 1 (RS): K2, ssk, k to last 4 sts, k2tog, k2.\nRow 2: Purl."))
    decrease = plan.rounds[-2]
    assert (decrease.before, decrease.after, decrease.side, decrease.flat) == (36, 34, "RS", True)
    assert "join the yarn to the 36 stitches on the needle" in decrease.remarks


def test_another_number_than_lies_there_is_refused() -> None:
    """The page and the needle disagree; which is right only she can see."""
    assert "the pattern prints 38 stitches; 36 are on the needles" in faults(
        project(f"{DIVIDED}With RS facing, rejoin yarn to 38 back sts.\nRow 1: Knit.")
    )


def test_stitches_on_hold_come_back_by_the_same_words() -> None:
    """The front waits on its holder; the same sentence fetches it."""
    plan = plan_of(
        project(
            f"{DIVIDED}With RS facing, rejoin yarn to back sts.\nRow 1 (RS): Knit.\nRow 2: Purl.\nBind off.\n"
            "With RS facing, rejoin yarn to front sts.\nNext row (RS): Knit.\nBind off."
        )
    )
    back = next(round_ for round_ in plan.rounds if any(run.stitch == "return" for run in round_.runs))
    assert (back.before, back.after) == (0, 36)


def test_a_name_that_fits_both_is_refused() -> None:
    """The stitches of the back neck would be taken for the back."""
    told = faults(
        project(
            "Cast on 60 sts. Work flat.\nKnit 2 rows.\nK20, hold 20 for back neck, k to end.\n"
            "With RS facing, rejoin yarn to back sts.\nNext row (RS): Knit."
        )
    )
    assert "may be what is on the needle or what is on hold" in told


def test_two_parts_that_wait_without_a_name_one_after_the_other() -> None:
    """The fabric of the first is looked up at its own row, not at the row of the second, which comes later."""
    plan = plan_of(
        project(
            "Cast on 40 sts. Work flat.\nWork 4 rows in stockinette.\n"
            "Next row: K14, turn and leave rem sts on a spare needle.\nPurl 1 row.\nBind off.\n"
            "With RS facing, rejoin yarn to rem sts.\nNext row: Hold 12, k to end.\n"
            "Next row: Purl.\nWork straight for 2 rows.\nBind off."
        )
    )
    assert [round_.after for round_ in plan.rounds if any(run.stitch == "hold" for run in round_.runs)] == [14, 14]
