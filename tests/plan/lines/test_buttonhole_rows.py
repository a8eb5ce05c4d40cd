"""Buttonholes that lie in rows while their pattern goes on. Worked out by hand; source: common practice."""

from __future__ import annotations

import pytest

from stepper.plan.model import flatten
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

BAND = "Cast on 21 sts.\nWork flat.\n"
RIB = f"{BAND}Row 1 (RS): *K1, p1; rep from * to last st, k1.\nRow 2: *P1, k1; rep from * to last st, p1.\n"


def rows(work: str) -> list[str]:
    """Return what is worked in each row behind the cast-on."""
    return [
        " ".join(f"{run.stitch}{run.times}" for run in flatten(each.phrase))
        for each in plan_of(project(work)).rounds[1:]
    ]


def test_the_pattern_goes_on_beside_and_above_them() -> None:
    """Rib 21 with three of three: 21 - 4 - 9 leaves 8, four between any two."""
    made = rows(f"{RIB}Rib 4 rows. With 3 buttonholes in row 1, 2 sts from each end, by bind off 3.")
    assert made[2] == "k1 p1 bo3 p1 k1 p1 k1 bo3 k1 p1 k1 p1 bo3 p1 k1"
    assert made[3] == "p1 k1 co3 k1 p1 k1 p1 co3 p1 k1 p1 k1 co3 k1 p1"
    assert made[4:] == made[:2]


def test_their_row_is_called_by_its_name_and_says_where_they_lie() -> None:
    """She may ask for the next buttonhole, and sees the numbers before she begins."""
    plan = plan_of(project(f"{BAND}Knit 4 rows. With 3 buttonholes in row 3, 3 sts from each end, by yo, k2tog."))
    holed = plan.rounds[3]
    assert holed.label == "Buttonhole row"
    assert [each.label for each in plan.rounds if each is not holed] == [None] * 4
    assert "3 buttonholes of 2 stitches, 3 stitches before the first and 3 behind the last, 4 or 5 between them" in holed.remarks
    assert (holed.before, holed.after) == (21, 21)


def test_counts_follow_what_is_bound_off() -> None:
    """Between the two rows of a buttonhole there are fewer stitches on the needle."""
    plan = plan_of(project(f"{BAND}Knit 4 rows. With 2 buttonholes in row 2, 4 sts from each end, by bind off 3."))
    assert [each.after for each in plan.rounds] == [21, 21, 15, 21, 21]


def test_as_before_lies_where_the_last_one_did() -> None:
    """A band goes on in the neckband: as far from the beginning of the row."""
    made = rows(f"{BAND}Buttonhole row: K5, bind off 3 sts, k to end.\nNext row: K to bound-off sts, cast on 3 sts, k to end.\nKnit 4 rows. With a buttonhole as before in row 3.")
    assert made[4:] == ["k5 bo3 k13", "k13 co3 k5"]


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("Knit 4 rows. With 3 buttonholes in row 5, 3 sts from each end, by yo, k2tog.", "there is no row 5"),
        ("Knit 4 rows. With 3 buttonholes, 3 sts from each end, by yo, k2tog.", "does not say in which of them"),
        ("Knit 4 rows. With 9 buttonholes in row 2, 3 sts from each end, by yo, k2tog.", "do not fit on 21"),
        ("Knit 4 rows. With 3 buttonholes in row 4, 3 sts from each end, by bind off 2.", "no row behind it"),
        ("Knit 4 rows. With 3 buttonholes in row 2, 3 sts from each end, by yo.", "takes 0 stitches and leaves 1"),
        ("Knit 4 rows. With a buttonhole as before in row 2.", "does not say how a buttonhole is made"),
        ("Work 4 rows in stockinette. With a buttonhole in row 2 by k3, yo, k2tog, k to end.", "say k where its pattern has p"),
        ("Knit 4 rows. With a buttonhole in row 2 by k30, yo, k2tog, k to end.", "21"),
        ("Knit 4 rows. Work another buttonhole.", "no buttonhole was worked before"),
        ("Knit 4 rows. With a buttonhole in row 2 by k3, yo, k2tog, k to end.\nRep last 4 rows twice.", "whether they come again"),
    ],
)
def test_what_does_not_fit_is_refused(line: str, told: str) -> None:
    """A buttonhole in the wrong row is found when the band is sewn on."""
    assert told in faults(project(BAND + line))


def test_the_ends_are_told_where_they_are_assumed() -> None:
    """Three stitches, as is usual."""
    plan = plan_of(project(f"{BAND}Knit 4 rows. With 3 buttonholes in row 3 by yo, k2tog."))
    assert any("how far from the ends" in each.text for each in plan.warnings)
