"""Stitches laid over the needles of a sock. Worked out by hand."""

from __future__ import annotations

import pytest

from tests.plan.fabric.test_established import knit, told
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

SOCK = "Cast on 32 sts.\nJoin in the round.\n"


@pytest.mark.parametrize(
    ("line", "ends"),
    [
        ("Divide sts evenly over 4 needles.", "k7, p1, k7, p1, k7, p1, k7, p1"),
        ("Arrange sts on two needles, 16 sts on each.", "k15, p1, k15, p1"),
        ("Place 8 sts on each of 4 needles.", "k7, p1, k7, p1, k7, p1, k7, p1"),
    ],
)
def test_stitches_are_laid_over_needles(line: str, ends: str) -> None:
    """The last stitch of every needle is purled, which shows where the needles end."""
    work = f"{SOCK}{line}\n*K to last st on needle, p1; rep from * on each needle."
    assert told(knit(work), 1) in ([ends], ["(k7, p1) 4 times"], ["(k15, p1) 2 times"])


def test_slipping_stitches_moves_the_end_between_two_needles() -> None:
    """Seven stitches more on needle 1."""
    work = f"{SOCK}Arrange sts on two needles, 16 sts on each.\nSlip 7 sts from needle 2 to needle 1.\nN1: Knit; N2: purl."
    assert told(knit(work), 1) == ["k23, p9"]


@pytest.mark.parametrize(
    "line",
    [
        "Arrange sts on two needles, 15 sts on each.",
        "Divide sts over 3 needles: 8 sts on N1, 16 sts on N2, 9 sts on N3.",
        "Arrange sts on two needles, 16 sts on each. Slip 17 sts from needle 2 to needle 1.",
        "Arrange sts on 4 needles, 8 sts on each. Slip 2 sts from needle 1 to needle 3.",
        "Slip 7 sts from needle 2 to needle 1.",
    ],
)
def test_what_does_not_come_out_is_refused(line: str) -> None:
    """Needles that hold other than the stitches in hand."""
    assert faults(project(f"{SOCK}{line}\nKnit 1 round.", sizes="S", size="S"))


def test_a_division_that_is_not_even_is_only_said() -> None:
    """32 stitches over 3 needles: which holds 10 and which 11 is hers to choose, so no needle can be told of."""
    plan = knit(f"{SOCK}Divide sts over 3 needles.\nKnit 1 round.")
    assert "divide over 3 needles" in plan.rounds[-1].remarks
    work = f"{SOCK}Divide sts over 3 needles.\nN1: Knit; N2: purl; N3: knit."
    assert "not divided over needles" in faults(project(work, sizes="S", size="S"))


def test_stitches_lie_as_they_did_until_their_number_changes() -> None:
    """A plain round leaves ten on each needle; a decrease at its beginning leaves nine on the first, and ten cannot be slipped."""
    start = "Cast on 40 sts. Join in the round.\nDivide evenly over 4 needles.\nKnit 1 round.\n"
    slip = "Slip 10 sts from needle 1 to needle 2.\nKnit 1 round.\nBind off."
    plan = plan_of(project(f"{start}{slip}"))
    assert any("slip 10 stitches" in remark for round_ in plan.rounds for remark in round_.remarks)
    assert "needle 1 holds 9 stitches, not 10" in faults(project(f"{start}K2tog, k to end.\n{slip}"))


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("Divide over 2 needles, 12 sts on each needle.", "on 2 needles: 12, 12 stitches"),
        ("Divide over 2 needles, 12 sts on each needle. Slip 2 sts from needle 2 to needle 1.", "slip 2 stitches from needle 2 to needle 1"),
        ("Work back and forth over the first 14 sts.", "work in rows"),
        ("K5, pm for new beginning of round.", "knit 5 more stitches: from here on the round begins there"),
    ],
)
def test_what_is_laid_out_is_said_and_no_stitch_is_lost(line: str, told: str) -> None:
    """It changes where things are, and the next row says so."""
    plan = plan_of(project(f"Cast on 24 sts.\nJoin in the round.\nKnit 2 rounds.\n{line}\nKnit 1 row.\n" if "back" in line else f"Cast on 24 sts.\nJoin in the round.\nKnit 2 rounds.\n{line}\nKnit 1 round.\n"))
    last = plan.rounds[-1]
    assert last.after + sum(last.held.values()) == 24
    assert told in [remark for round_ in plan.rounds for remark in round_.remarks]
