"""Stripes. Source: common practice."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

HEAD = "Cast on 20 sts.\nJoin in the round.\nKnit 1 round.\n"


def yarns(line: str) -> list[str]:
    """Return the yarn of every round of a line."""
    return [round_.runs[0].yarn for round_ in plan_of(project(f"{HEAD}{line}\nBind off.")).rounds[2:-1]]


@pytest.mark.parametrize(
    ("line", "expected"),
    [
        ("Work 6 rounds in stripes of 2 rnds A, 1 rnd MC.", ["A", "A", "MC", "A", "A", "MC"]),
        ("Knit 4 rounds in stripes of 1 rnd A and 2 rnds MC.", ["A", "MC", "MC", "A"]),
        ("Work in stripes of 2 rnds A, 2 rnds MC for 4 rounds.", ["A", "A", "MC", "MC"]),
    ],
)
def test_each_stripe_has_its_rounds(line: str, expected: list[str]) -> None:
    """One yarn after the other, begun anew when all were worked."""
    assert yarns(line) == expected


def test_the_fabric_goes_on_under_the_stripes() -> None:
    """A rib stays one, whatever its colour."""
    rib = "Cast on 20 sts.\nJoin in the round.\n*K2, p2; rep from * to end. Work for 2 rounds.\n"
    plan = plan_of(project(f"{rib}Work 2 rounds in stripes of 1 rnd A, 1 rnd MC.\nBind off."))
    assert [run.stitch for run in plan.rounds[3].runs][:4] == ["k", "p", "k", "p"]


def test_a_yarn_that_is_not_there_is_told() -> None:
    """A stripe in no yarn cannot be knitted."""
    assert 'no yarn "C"' in faults(project(f"{HEAD}Work 6 rounds in stripes of 2 rnds C, 1 rnd MC.\nBind off."))


def test_a_stripe_without_end_is_told() -> None:
    """A number with a slip of the finger in it ends in a sentence."""
    assert "is no stripe" in faults(project(f"{HEAD}Work 6 rounds in stripes of {'4' * 25} rnds A, 1 rnd MC.\nBind off."))
