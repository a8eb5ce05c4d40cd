"""A repeat that its count ends in the middle. Source of the two readings: common practice."""

from __future__ import annotations

from tests.plan.test_compile import plan_of
from tests.project.samples import project

SHAPED = "Cast on 12 sts.\nWork flat.\nRow 1: K1, k2tog, k to last 3 sts, ssk, k1.\nRow 2: Purl.\nRep rows 1-2 until 6 sts rem.\n"


def told(work: str) -> list[str]:
    """Give what is told of repeats that end early."""
    cautions = plan_of(project(work)).warnings
    return [caution.text for caution in cautions if caution.text.startswith("the repeat ends with")]


def test_a_repeat_cut_short_by_its_count_is_told() -> None:
    """Whether the plain row of the pair still follows is left open on many pages."""
    (only,) = told(f"{SHAPED}Bind off.")
    assert "(1 round) is not worked" in only


def test_a_page_that_goes_on_with_a_row_of_the_repeat_leaves_nothing_open() -> None:
    """"Rep row 1 until 4 sts rem" says which row follows; another row says nothing of it."""
    assert told(f"{SHAPED}Rep row 1 until 4 sts rem.\nBind off.") == []
    assert len(told(f"{SHAPED}Knit 2 rows.\nRep row 1 until 4 sts rem.\nBind off.")) == 1


def test_a_repeat_that_comes_out_whole_is_not_told() -> None:
    """The last row of the repeat leaves the count."""
    whole = SHAPED.replace("Row 1: K1, k2tog, k to last 3 sts, ssk, k1.\nRow 2: Purl.", "Row 1: Knit.\nRow 2: P1, p2tog, p to last 3 sts, p2tog, p1.")
    assert told(f"{whole}Bind off.") == []
