"""One round, from a chart or written out, worked as a knitter would."""

from __future__ import annotations

from stepper.plan.chart_rounds import chart_runs
from stepper.project.model import Cell, Chart
from stepper.project.problems import Span
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

HERE = Span(line=1, column=1)


def test_on_the_wrong_side_a_chart_is_read_left_to_right_with_opposite_stitches() -> None:
    """Source: even rows left to right, symbols as seen from the right side (check-values 1.7.2, 1.7.4)."""
    cells = (Cell("k", None), Cell("p", None), Cell("k2tog", None), Cell("", None))
    chart = Chart(name="c", rounds=(cells,), place=HERE)
    right = chart_runs(chart, 1, yarn="MC", wrong_side=False)
    wrong = chart_runs(chart, 1, yarn="MC", wrong_side=True)
    assert [run.stitch for run in right] == ["k2tog", "p", "k"]
    assert [run.stitch for run in wrong] == ["p", "k", "p2tog"]


def test_a_run_of_like_rounds_is_numbered_one_by_one() -> None:
    """However it is worked out, each round has its own place."""
    plan = plan_of(project("Cast on 8 sts.\nKnit 50 rounds.\nBind off."))
    assert [r.index for r in plan.rounds] == list(range(52))
    assert [r.number for r in plan.rounds] == list(range(1, 53))


def test_more_rounds_than_any_garment_has_are_a_slip() -> None:
    """Rounds without end would fill the memory, whether one number asks for them or several together."""
    assert "more than any garment" in faults(project("Cast on 8 sts.\nKnit 9 rounds.\nRep last 9 rounds 9999 times."))
    assert "more rounds than any has" in faults(project("Cast on 8 sts.\n" + "Knit 9999 rounds.\n" * 3))


def test_a_round_in_a_yarn_that_the_file_has_not_is_a_fault() -> None:
    """"K1 in B" without a B would be counted, weighed and drawn as nothing."""
    work = "Cast on 20 sts. Join in the round.\n*K1 in {}, k1 in A; rep from * to end.\nBind off."
    assert plan_of(project(work.format("MC"))).rounds[1].after == 20
    assert 'there is no yarn "B"' in faults(project(work.format("B")))
