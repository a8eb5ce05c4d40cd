"""One round, from a chart or written out, worked as a knitter would."""

from __future__ import annotations

from stepper.plan.fabric.chart_rounds import chart_parts
from stepper.project.model import Cell, Chart
from stepper.project.problems import Span
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

HERE = Span(line=1, column=1)


def test_on_the_wrong_side_a_chart_is_read_left_to_right_with_opposite_stitches() -> None:
    """Source: even rows left to right, symbols as seen from the right side (check-values 1.7.2, 1.7.4)."""
    cells = (Cell("k", None), Cell("p", None), Cell("k2tog", None), Cell("", None))
    chart = Chart(name="c", rounds=(cells,), place=HERE)
    right = chart_parts(chart, 1, yarn="MC", wrong_side=False).repeat
    wrong = chart_parts(chart, 1, yarn="MC", wrong_side=True).repeat
    assert [run.stitch for run in right] == ["k2tog", "p", "k"]
    assert [run.stitch for run in wrong] == ["p", "k", "p2tog"]


def test_a_run_of_like_rounds_is_numbered_one_by_one() -> None:
    """However it is worked out, each round has its own place."""
    plan = plan_of(project("Cast on 8 sts.\nKnit 50 rounds.\nBind off."))
    assert [r.index for r in plan.rounds] == list(range(52))
    assert [r.number for r in plan.rounds] == list(range(1, 53))


def test_more_rounds_than_any_garment_has_are_a_slip() -> None:
    """Rounds without end would fill the memory, whether one number asks for them or several together."""
    assert "more than any garment" in faults(
        project("Cast on 8 sts.\nKnit 9 rounds.\nRep last 9 rounds 9999 times.")
    )
    assert "more rounds than any has" in faults(project("Cast on 8 sts.\n" + "Knit 9999 rounds.\n" * 3))


def test_a_round_in_a_yarn_that_the_file_has_not_is_a_fault() -> None:
    """ "K1 in B" without a B would be counted, weighed and drawn as nothing."""
    work = "Cast on 20 sts. Join in the round.\n*K1 in {}, k1 in A; rep from * to end.\nBind off."
    assert plan_of(project(work.format("MC"))).rounds[1].after == 20
    assert 'there is no yarn "B"' in faults(project(work.format("B")))


def test_a_round_with_a_part_of_a_chart_is_worked_anew_each_time() -> None:
    """Three rounds of one line take three rows of the chart, not one row three times."""
    plan = plan_of(
        project(
            "Cast on 8 sts.\nJoin in the round.\nRnd 1: K2, chart peak over 4 sts, k2.\nRep rnd 1 3 times."
        )
    )
    worked = [round_.runs for round_ in plan.rounds[1:5]]
    assert worked[0] == worked[2] != worked[1] == worked[3]


def test_a_plain_row_back_is_purled() -> None:
    """Stockinette in rows: knitted on the right side and purled on the wrong."""
    plan = plan_of(project("Cast on 8 sts.\nWork flat.\nWork 4 rows in stockinette stitch."))
    assert [round_.instruction for round_ in plan.rounds[1:]] == ["knit", "purl", "knit", "purl"]


def test_the_row_that_works_past_a_turn_says_what_becomes_of_it() -> None:
    """A double stitch knitted as two makes a stitch too many; she hears it where she meets it."""
    lines = "Cast on 20 sts.\nWork flat.\nRow 1 (RS): K15, {}.\nRow 2 (WS): P10, {}.\nKnit 1 row."
    german = plan_of(project(lines.format("turn", "turn")))
    assert "work both legs of every double stitch as one" in german.rounds[3].remarks
    assert german.rounds[2].remarks == ()
    wrapped = plan_of(project(lines.format("w&t", "w&t")))
    assert "work every wrap together with its stitch" in wrapped.rounds[3].remarks


def test_a_yarn_that_the_file_has_not_is_one_fault() -> None:
    """The round is not worked in it, and nothing after it is called wrong for that."""
    told = faults(project("Cast on 20 sts. Join in the round.\nRnd 1: *K1 in CC, k1 in MC; rep from * to end. 20 sts.\nKnit 1 round. 20 sts.\nBind off."))
    assert 'there is no yarn "CC"' in told
    assert told.count("error:") == 1


def test_markers_that_a_round_removes_are_told() -> None:
    """The plan forgets them, and she would go on slipping what no line speaks of."""
    work = "Cast on 40 sts. Join in the round.\nNext round: K10, pm, k to end.\nNext round: Knit, removing markers.\nKnit 1 round.\nBind off."
    rounds = plan_of(project(work)).rounds
    assert ["remove the markers" in each.remarks for each in rounds] == [False, False, True, False, False]
