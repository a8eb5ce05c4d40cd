"""Patterns that a page defines under a name: kept, worked where they are called. Worked out by hand."""

from __future__ import annotations

import pytest

from tests.plan.fabric.test_established import knit, told
from tests.plan.test_compile import faults
from tests.project.samples import project

TRELLIS = (
    "Cast on 25 sts. Work flat.\nTrellis pattern (multiple of 6 + 1):\nRow 1 (RS): *K1, p5; rep from * to last st, k1.\n"
    "Row 2: *P1, k5; rep from * to last st, p1.\nRow 3: Knit.\nRow 4: Purl.\n"
)


def test_a_definition_works_nothing() -> None:
    """Four rows too many at the beginning would shift every length."""
    plan = knit(f"{TRELLIS}Knit 2 rows.")
    assert [round_.instruction for round_ in plan.rounds] == ["cast on 25", "knit", "knit"]


def test_a_pattern_is_worked_where_it_is_called() -> None:
    """All rows in order, from the row the line names."""
    assert told(knit(f"{TRELLIS}Work 2 rows in Trellis pattern."), 2) == ["(k1, p5) 4 times, k1", "(p1, k5) 4 times, p1"]
    assert told(knit(f"{TRELLIS}Work 2 rows in trellis patt, beg with row 3."), 2) == ["knit", "purl"]


def test_a_pattern_without_a_multiple_is_kept_if_it_is_called() -> None:
    """A heading with rows below it that nobody calls is worked as it stands."""
    rows = "Cast on 24 sts.\nJoin in the round.\nLace pattern:\nRnd 1: *K1, yo, k2tog; rep from * to end.\nRnd 2: Knit.\n"
    assert len(knit(f"{rows}Purl 1 rnd.\nWork 2 rnds in lace pattern.").rounds) == 4
    assert len(knit(f"{rows}Rep rnds 1-2 once.").rounds) == 5


@pytest.mark.parametrize(
    "work",
    [
        "Cast on 20 sts. Work flat.\n" + TRELLIS.split("\n", 1)[1] + "Work 2 rows in Trellis pattern.",
        f"{TRELLIS}Work 2 rows in Trellis pattern, beg with row 5.",
        f"{TRELLIS}Knit 1 row.\nWork 2 rows in Trellis pattern.",
        TRELLIS.replace("Row 3: Knit.\n", "") + "Work 2 rows in Trellis pattern.",
    ],
)
def test_a_pattern_that_does_not_fit_is_refused(work: str) -> None:
    """Another count, a row it does not have, a right-side row on the wrong side, a row left out."""
    assert faults(project(work, sizes="S", size="S"))


def test_a_pattern_may_be_a_single_row() -> None:
    """Ridged fabrics are printed so: one line under the name."""
    rows = "Cast on 24 sts.\nJoin in the round.\nMoss pattern:\nRnd 1: *K1, p1; rep from * to end.\n"
    assert told(knit(f"{rows}Purl 1 rnd.\nWork 2 rnds in moss pattern."), 2) == ["*k1, p1; rep from * to end"] * 2
