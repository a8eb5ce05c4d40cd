"""Armhole and neck shaped at the same time. Source: common practice; every row worked out by hand."""

from __future__ import annotations

import pytest

from stepper.project.reader import read_project
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

HALF = (
    "Cast on 40 sts. Work flat.\nWork 4 rows in stockinette.\n"
    "Row 5 (RS): Bind off 3 sts for armhole, k until there are 17 sts on right needle, turn and leave rem sts on a holder.\n"
    "Purl 1 row.\n"
)


def one_size(work: str) -> str:
    """Return a file in one size."""
    return project(work, sizes="one", size="one")


def rows(line: str) -> list[tuple[str, str]]:
    """Return side and stitches of the rows behind the division, up to the bind-off."""
    found = plan_of(one_size(f"{HALF}{line}\nBind off.")).rounds[7:-1]
    return [(round_.side, " ".join(f"{run.stitch}{run.times}" for run in round_.runs)) for round_ in found]


def test_each_edge_is_shaped_on_its_own_rows() -> None:
    """Armhole on rows 1, 2, 3, 5, 7, where right-side rows begin; neck on 1, 4, 7, 10, where wrong-side rows do."""
    line = "Dec 1 st at armhole edge of next 3 rows, then of foll 2 alt rows, and at the same time dec 1 st at neck edge on next row and every foll 3rd row until 8 sts rem."
    assert rows(line) == [
        ("RS", "k1 dec1 k11 dec1 k1"), ("WS", "p12 dec1 p1"), ("RS", "k1 dec1 k11"), ("WS", "p1 dec1 p10"),
        ("RS", "k1 dec1 k9"), ("WS", "p11"), ("RS", "k1 dec1 k5 dec1 k1"), ("WS", "p9"), ("RS", "k9"), ("WS", "p1 dec1 p6"),
    ]  # fmt: skip
    (told,) = (each.text for each in plan_of(one_size(f"{HALF}{line}\nBind off.")).warnings if "in all" in each.text)
    assert told == "the neck edge: worked 4 times in all, which leaves 8 stitches beside the other shaping."


def test_right_side_rows_are_kept_by_the_one_that_names_them() -> None:
    """Every RS row is the next one, and every other from there; every 4th row counts all."""
    line = "Dec 1 st at armhole edge on every RS row 3 times, AT THE SAME TIME dec 1 st at neck edge every 4th row twice. 12 sts."
    assert rows(line) == [
        ("RS", "k1 dec1 k14"), ("WS", "p16"), ("RS", "k1 dec1 k13"), ("WS", "p1 dec1 p12"), ("RS", "k1 dec1 k11"),
        ("WS", "p13"), ("RS", "k13"), ("WS", "p1 dec1 p10"),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("Dec 1 st at armhole edge every row 3 times, at the same time dec 1 st at neck edge every 4th row until 20 sts rem.", "no number of times leaves 20 stitches"),
        ("Dec 1 st at armhole edge every row 3 times, at the same time inc 1 st at neck edge every 4th row until 13 sts rem.", "no number of times leaves 13 stitches"),
        ("Dec 1 st at armhole edge every row until 12 sts rem, at the same time dec 1 st at neck edge every 4th row until 13 sts rem.", "which ends first is not said"),
        ("Dec 1 st at armhole edge every row 3 times, at the same time dec 1 st at side edge every 4th row twice.", "the side edge and the armhole edge are one"),
        ("Dec 1 st at armhole edge every row 3 times, at the same time dec 1 st at neck edge every 2 cm twice.", "each need rows between them"),
        ("Dec 1 st at armhole edge every row 3 times, at the same time dec 1 st at neck edge every 4th row twice. 11 sts.", "the pattern prints 11 stitches"),
    ],
)
def test_what_cannot_be_both_is_refused(line: str, told: str) -> None:
    """Nobody can tell which rows are meant, or they do not come to what is printed."""
    assert told in faults(one_size(f"{HALF}{line}\nBind off."))


@pytest.mark.parametrize("beside", ["at each end", "at neck edge"])
def test_an_edge_beside_both_ends_is_not_read(beside: str) -> None:
    """Both ends are the edge as well."""
    other = "at neck edge" if beside == "at each end" else "at each end"
    line = f"Dec 1 st {beside} of every 2nd row 3 times, at the same time dec 1 st {other} of every 4th row 2 times."
    (problem,) = read_project(one_size(f"{HALF}{line}")).problems
    assert problem.message == "beside a shaping of one edge, another of one edge is read."


def test_the_other_side_is_worked_as_its_mirror() -> None:
    """Its armhole is bound off one row later, on the wrong side; from there on both sides lose the same on the same rows."""
    line = "Dec 1 st at armhole edge of next 3 rows, at the same time dec 1 st at neck edge of every 2nd row 4 times. 10 sts."
    work = (
        f"{HALF}{line}\nBind off.\nWith RS facing, rejoin yarn to held sts, k to end.\nNext row: Bind off 3 sts, p to end.\n"
        "Complete to match first side, reversing all shaping."
    )
    worked = plan_of(one_size(work)).rounds[5:]
    first, second = worked[2:11], worked[-9:]
    assert [(each.side, each.before, each.after) for each in second] == [(each.side, each.before, each.after) for each in first]
    for one, other in zip(first[:-1], second[:-1], strict=True):
        mirrored = [(run.stitch, run.times) for run in reversed(one.runs)]
        assert [(run.stitch, run.times) for run in other.runs] == mirrored
