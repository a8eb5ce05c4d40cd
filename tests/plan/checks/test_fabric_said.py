"""A fabric explained on the page otherwise than it is worked. Source: common practice, a handbook's first chapter.

Garter stitch is knitted in every row, and in the round knit and purled by turns; stockinette is purled on the wrong
side, and in the round knitted in every round.
"""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project
from tests.tables import each_row

ROUND, FLAT = "Cast on 40 sts.\nJoin in the round.\n", "Cast on 40 sts. Work flat.\n"


@pytest.mark.parametrize(
    ("begins", "line", "told"),
    [
        (ROUND, "Work in garter st (knit every row) for 4 cm.", "garter stitch in the round is knit one round"),
        (ROUND, "Work in garter st (knit all rows) for 4 cm.", "Work flat."),
        (FLAT, "Work in garter st (knit 1 rnd, purl 1 rnd) for 4 cm.", "garter stitch in rows is knitted"),
        (FLAT, "Work in st st (k every rnd) for 4 cm.", "stockinette in rows is purled on the wrong side"),
    ],
)
def test_what_the_page_explains_otherwise_is_refused(begins: str, line: str, told: str) -> None:
    """The page says to knit where purl rounds would be worked: one of the two is wrong, and nobody knows which."""
    assert told in faults(project(begins + line))


@pytest.mark.parametrize(
    ("begins", "line"),
    [
        (FLAT, "Work in garter st (knit every row) for 4 cm."),
        (ROUND, "Work in garter st (knit 1 rnd, purl 1 rnd) for 4 cm."),
        (ROUND, "Work in st st (knit every rnd) for 4 cm."),
        (FLAT, "Work in st st (k 1 row, p 1 row) for 4 cm."),
        (FLAT, "Work in st st (k on RS, p on WS) for 4 cm."),
    ],
)
def test_what_the_page_explains_as_it_is_worked_is_read(begins: str, line: str) -> None:
    """Most pages explain their fabric rightly."""
    told = [caution.text for caution in plan_of(project(begins + line)).warnings]
    assert not any("said of rows" in text for text in told)


def test_stockinette_explained_for_rows_is_told_in_the_round() -> None:
    """A page for both ways explains the rows; in the round all of it is knitted, and she may have missed the join."""
    plan = plan_of(project(f"{ROUND}Work in st st (k 1 row, p 1 row) for 4 cm."))
    assert any("said of rows; in the round every round" in caution.text for caution in plan.warnings)
    assert {run.stitch for round_ in plan.rounds[1:] for run in round_.runs} == {"k"}


@each_row("before", ["moss stitch", "k1, p1 rib", "garter stitch", "stockinette stitch"])
@each_row("said", ["moss st", "rib", "garter st", "st st", "patt"])
def test_new_stitches_taken_into_another_fabric_than_the_one_beside_them_are_refused(before: str, said: str) -> None:
    """Moss stitch beside a rib, or stockinette beside moss stitch: the pattern went on over them, in silence. Source: common practice."""
    work = f"{FLAT.replace('40', '41')}Work in {before} for 4 rows.\nInc 1 st at each end of next row, taking inc sts into {said}.\nWork 2 rows in patt."
    same = {"moss st": "moss", "rib": "rib", "garter st": "garter", "st st": "stockinette", "patt": ""}[said]
    if same in before:
        assert plan_of(project(work)).rounds[-1].after == 43
    else:
        assert "beside them another pattern goes on" in faults(project(work))
