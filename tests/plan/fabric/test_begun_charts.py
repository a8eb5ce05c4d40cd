"""Charts beside other stitches that a page begins and then goes on with "as set"."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

BEGUN = "Cast on 12 sts. Join in the round.\nSet-up rnd: K2, work rnd 1 of chart peak over next 4 sts, k to end.\n"


def test_in_pattern_goes_on_with_the_next_round_of_the_chart() -> None:
    """Its first round again and again would be another fabric."""
    plan = plan_of(project(f"{BEGUN}Cont in patt as set for 4 rnds.\nBind off."))
    first, second, *rest = [round_.instruction for round_ in plan.rounds[1:6]]
    assert first != second
    assert rest == [first, second, first]


def test_a_chart_that_was_worked_once_through_begins_again() -> None:
    """All of its rounds beside other stitches are the pattern, in their order."""
    whole = BEGUN + "Next rnd: K2, work rnd 2 of chart peak over next 4 sts, k to end.\nRep last 2 rnds once more.\n"
    plan = plan_of(project(f"{whole}Work in pattern for 2 rnds.\nBind off."))
    written = [round_.instruction for round_ in plan.rounds[1:7]]
    assert written[:2] * 3 == written


def test_a_chart_begun_and_then_shaped_beside_cannot_be_told() -> None:
    """Where its next round stands on the stitches that are left is not known."""
    work = f"{BEGUN}Dec rnd: K1, k2tog, k to end.\nWork in pattern for 2 rnds.\nBind off."
    assert "not worked once through" in faults(project(work))


PANEL = "Cable panel (8 sts)\nRnd 1: P2, k4, p2.\nRnd 2: P2, C4F, p2.\nRnds 3-4: P2, k4, p2.\n"
BESIDE = f"{PANEL}Cast on 20 sts. Join in the round.\nSet-up rnd: K6, work rnd 1 of cable panel over next 8 sts, k6.\n"


def told(work: str) -> list[str]:
    """Return the instructions of the rounds behind the cast-on."""
    return [round_.instruction for round_ in plan_of(project(work, sizes="S", size="S")).rounds[1:]]


def test_a_panel_that_the_page_writes_out_goes_on_beside_other_stitches() -> None:
    """Worked out by hand: the cable of its second round comes in every fourth round."""
    rounds = told(f"{BESIDE}Work 7 rnds in pattern.")
    crossed = [number for number, said in enumerate(rounds, 1) if "C4F" in said]
    assert crossed == [2, 6]
    assert rounds[1] == "k6, p2, C4F, p2, k6"


def test_a_panel_goes_on_through_shaping_beside_it() -> None:
    """Decreases at the ends take plain stitches; the cable keeps its rounds: 2, 6, 10, 14."""
    work = f"{BESIDE}Work 8 rnds in pattern.\nDec rnd: K1, k2tog, work in pattern to last 3 sts, ssk, k1.\nWork 5 rnds in pattern."
    rounds = told(work)
    assert [number for number, said in enumerate(rounds, 1) if "C4F" in said] == [2, 6, 10, 14]
    assert rounds[9] == "k1, k2tog, k3, p2, C4F, p2, k3, ssk, k1"


def test_a_chart_goes_on_through_shaping_beside_it() -> None:
    """Read off one round of it alone, it used to be lost with the first decrease."""
    rounds = told(
        f"{BEGUN}Work 3 rnds in pattern.\nDec rnd: K1, k2tog, work in pattern to last 3 sts, ssk, k1.\nWork 2 rnds in pattern."
    )
    assert rounds[5] != rounds[6]


@pytest.mark.parametrize(
    "line",
    [
        "Next rnd: K6, work rnd 5 of cable panel over next 8 sts, k6.",
        "Next rnd: K6, work rnd 1 of cable panel over next 9 sts, k5.",
        "Next rnd: K6, work rnd 1 of rope panel over next 8 sts, k6.",
    ],
)
def test_a_panel_that_does_not_fit_is_refused(line: str) -> None:
    """A round it does not have, stitches it does not fill, a name the page does not define."""
    assert faults(project(f"{PANEL}Cast on 20 sts. Join in the round.\n{line}", sizes="S", size="S"))


def test_a_panel_in_rows_keeps_to_its_sides() -> None:
    """Row 1 is a right-side row; on the wrong side it would be turned inside out."""
    panel = "Cable panel (4 sts)\nRow 1 (RS): P1, k2, p1.\nRow 2 (WS): K1, p2, k1.\n"
    work = f"{panel}Cast on 10 sts. Work flat.\nKnit 1 row.\nNext row: P3, work row 1 of cable panel over next 4 sts, p3."
    assert "no WS row" in faults(project(work, sizes="S", size="S"))
