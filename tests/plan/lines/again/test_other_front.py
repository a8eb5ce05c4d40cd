"""A front finished as the mirror image of the other. Source: common practice; counts by hand."""

from __future__ import annotations

import pytest

from tests.project.corpus_judge import text_of, worked

LEFT = (
    "== left front",
    "CO 20 sts. Work flat.",
    "Work 6 rows in st st.",
    "Next row (RS): Bind off 3 sts, k to end.",
    "P 1 row.",
    "Next row: K1, ssk, k to end.",
    "P 1 row.",
    "Bind off.",
)
BEGUN = ("== right front", "CO 20 sts. Work flat.")


def rows_of(*own: str) -> tuple[list[int], str]:
    """Return the counts of the rows of a right front behind the left one, and what is reported."""
    plans, problems = worked(text_of([*LEFT, *BEGUN, *own], 1, "cm")[0], 1)
    told = " ".join(problem.message for problem in problems)
    return ([one.after for one in plans[0].rounds[12:]] if plans else []), told


@pytest.mark.parametrize(("rows", "counts"), [(5, [17, 16, 16, 0]), (6, [20, 17, 16, 16, 0]), (7, [17, 16, 16, 0]), (8, [20, 17, 16, 16, 0])])
def test_its_shaping_begins_on_the_other_side(rows: int, counts: list[int]) -> None:
    """The stitches of an armhole are bound off where wrong-side rows begin, a row sooner or later than there."""
    found, _ = rows_of(f"Work {rows} rows in st st.", "Complete to match left front, reversing shapings.")
    assert found[rows + 1 :] == counts


@pytest.mark.parametrize("own", ["Work 2 rows in st st.", "Work 10 rows in st st.", "Work 5 rows in st st.\nDec 1 st at beg of next row."])
def test_where_nobody_can_tell_it_is_refused(own: str) -> None:
    """Rows missing, rows too many, and a stitch fewer than the other front had."""
    found, told = rows_of(*own.split("\n"), "Complete to match left front, reversing shapings.")
    assert found == []
    assert "it is not known where in the left front this goes on" in told


def test_the_last_step_of_a_shoulder_comes_as_late_as_the_others() -> None:
    """It binds off all that is left, and is a row of its own edge like the step before it."""
    left = [*LEFT[:-1], "Next row (RS): Bind off 8 sts, k to end.", "P 1 row.", "Next row (RS): Bind off 8 sts."]
    own = [*BEGUN, "Work 6 rows in st st.", "Complete to match left front, reversing shapings."]
    plans, _ = worked(text_of([*left, *own], 1, "cm")[0], 1)
    assert [(one.side, one.after) for one in plans[0].rounds[-5:]] == [("WS", 16), ("RS", 16), ("WS", 8), ("RS", 8), ("WS", 0)]


def test_without_such_a_front_it_is_the_other_side_of_this_piece() -> None:
    """"Left front" may be one side of a front that was divided."""
    _, told = rows_of("Work 6 rows in st st.", "Complete to match right front, reversing shapings.")
    assert "no first side of this part is known" in told
