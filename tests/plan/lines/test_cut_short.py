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


def test_a_repeat_that_its_count_ends_is_worked_to_the_side_of_the_next_line() -> None:
    """Two right-side rows in turn nobody can knit: the row back belongs to the repeat, and that is told."""
    rows = "Row 1 (RS): K3, yo, k to last 3 sts, yo, k3.\nRow 2: K3, p to last 3 sts, k3.\nRep rows 1 and 2 until there are 20 sts.\n"
    plan = plan_of(project(f"Cast on 12 sts.\n{rows}Next row (RS): Knit.\nBind off."))
    assert [row.after for row in plan.rounds[1:-1]] == [14, 14, 16, 16, 18, 18, 20, 20, 20]
    assert [row.side for row in plan.rounds[1:-1]] == ["RS", "WS"] * 4 + ["RS"]
    assert any("the repeat goes on behind this count for 1 row" in each.text for each in plan.warnings)
    assert not any("is not worked" in each.text or "Taken as printed" in each.text for each in plan.warnings)


def test_behind_such_a_repeat_the_side_that_comes_anyway_is_taken() -> None:
    """The page goes on with the wrong side itself."""
    rows = "Row 1 (RS): K3, yo, k to last 3 sts, yo, k3.\nRow 2: K3, p to last 3 sts, k3.\nRep rows 1 and 2 until there are 20 sts.\n"
    plan = plan_of(project(f"Cast on 12 sts.\n{rows}Next row (WS): Knit.\nBind off."))
    assert [row.after for row in plan.rounds[1:-1]] == [14, 14, 16, 16, 18, 18, 20, 20]
