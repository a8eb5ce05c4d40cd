"""Charts are knitted as they are printed. Source: check-values 1.7."""

from __future__ import annotations

import pytest

from stepper.plan.fabric.chart_rounds import chart_parts
from stepper.plan.model import Run
from stepper.plan.stitches.run_repeats import join_runs
from stepper.project.model import Cell, Chart
from stepper.project.problems import Span
from tests.plan.test_compile import compiled, plan_of
from tests.project.samples import HEAD, project

HERE = Span(line=1, column=1)
STITCHED = HEAD.replace(
    "sections:",
    """\
  lace:
    key: {{".": k, "-": p, o: yo, "/": k2tog, x: no stitch}}
    repeat: 2-3
    rows: |
      -/o-
      -..-
sections:""",
)


def chart(*rows: str, left: int = 0, right: int = 0) -> Chart:
    """Draw a chart of stitches, top row first."""
    key = {"k": "k", "-": "p", "o": "yo", "/": "k2tog", "x": ""}
    rounds = tuple(tuple(Cell(key[sign], None) for sign in row) for row in reversed(rows))
    return Chart(name="t", rounds=rounds, place=HERE, edge_left=left, edge_right=right)


def chart_runs(drawn: Chart, number: int, *, wrong_side: bool) -> tuple[Run, ...]:
    """Read one whole round of a chart, edges included."""
    parts = chart_parts(drawn, number, yarn="MC", wrong_side=wrong_side)
    return join_runs(parts.before + parts.repeat + parts.after)


def test_right_side_rows_are_read_from_right_to_left() -> None:
    """The first stitch knitted is the last square of the drawn row (1.7.2)."""
    assert chart_runs(chart("-kko"), 1, wrong_side=False) == (
        Run("yo", 1, "MC"),
        Run("k", 2, "MC"),
        Run("p", 1, "MC"),
    )


def test_wrong_side_rows_are_read_from_left_to_right_with_the_stitches_exchanged() -> None:
    """A square shows the right side, so purl is knitted and two are purled together behind (1.7.4)."""
    assert chart_runs(chart("-k/"), 1, wrong_side=True) == (
        Run("k", 1, "MC"),
        Run("p", 1, "MC"),
        Run("p2tog", 1, "MC"),
    )


def test_no_stitch_squares_are_passed_over() -> None:
    """They use nothing and leave nothing (1.7.7)."""
    assert chart_runs(chart("kxxk"), 1, wrong_side=False) == (Run("k", 2, "MC"),)


def test_edges_change_ends_with_the_side() -> None:
    """What is worked first on the right side is worked last on the wrong side."""
    drawn = chart("-kko", left=1, right=1)
    right = chart_parts(drawn, 1, yarn="MC", wrong_side=False)
    wrong = chart_parts(drawn, 1, yarn="MC", wrong_side=True)
    assert (right.before, right.after) == ((Run("yo", 1, "MC"),), (Run("p", 1, "MC"),))
    assert (wrong.before, wrong.after) == ((Run("k", 1, "MC"),), (Run("yo", 1, "MC"),))


def test_a_chart_with_edges_fits_on_its_repeats_and_the_edges() -> None:
    """Edges of two stitches and a repeat of two: ten stitches hold four repeats."""
    plan = plan_of(project("Cast on 10 sts.\nWork flat.\nChart lace, 2 times.\nBind off.", head=STITCHED))
    assert [round_.instruction for round_ in plan.rounds[1:3]] == [
        "chart lace, round 1: p1, (k2) 4 times, p1",
        "chart lace, round 2: k1, (p2tog, yo) 4 times, k1",
    ]
    assert [round_.side for round_ in plan.rounds[1:5]] == ["RS", "WS"] * 2


def test_a_chart_that_does_not_fit_says_where_it_would() -> None:
    """The edges count once, the repeat as often as it fits."""
    problem = compiled(
        project("Cast on 11 sts.\nWork flat.\nChart lace.\nBind off.", head=STITCHED)
    ).problems[0]
    assert "besides 2 for its edges" in problem.message
    assert problem.hint.startswith("It would fit on 10 or 12 stitches.")


def test_a_chart_in_part_of_a_row_goes_on_with_its_next_round() -> None:
    """`chart lace over 6 sts` works one round of it, and the next time the one above."""
    plan = plan_of(
        project(
            "Cast on 12 sts.\nJoin in the round.\nRnd 1: K3, chart lace over 6 sts, k3.\nRep rnd 1 2 times.\nBind off.",
            head=STITCHED,
        )
    )
    assert [round_.instruction for round_ in plan.rounds[1:4]] == [
        "k3, p1, k4, p1, k3",
        "k3, p1, (yo, k2tog) 2 times, p1, k3",
        "k3, p1, k4, p1, k3",
    ]


def test_a_chart_in_numbered_rounds_goes_on_round_by_round() -> None:
    """`Rnd 2: chart peak` is the chart's next round; several rounds take as many of the chart."""
    plan = plan_of(
        project(
            "Cast on 8 sts. Join in the round.\nRnd 1: Chart peak.\nRnd 2: Chart peak.\n"
            "Rnds 3-6: Chart peak, rounds 1-2.\nBind off."
        )
    )
    assert [round_.chart_round for round_ in plan.rounds[1:-1]] == [1, 2, 1, 2, 1, 2]


def test_a_chart_is_worked_for_rounds_or_to_a_length() -> None:
    """`for 3 rounds` is three rounds, not three times the chart. Source: arithmetic, 28 rounds to 10 cm."""
    plan = plan_of(
        project(
            "Cast on 8 sts. Join in the round.\nChart peak for 3 rounds.\nKnit 1 round.\n"
            "Work chart peak until piece measures 5 cm.\nBind off."
        )
    )
    assert [round_.chart_round for round_ in plan.rounds[1:5]] == [1, 2, 1, None]
    assert len(plan.rounds) == 1 + 14 + 1


def test_a_chart_that_is_not_there_is_told_in_a_numbered_round_too() -> None:
    """A slip of the pen is a sentence, never a traceback."""
    outcome = compiled(project("Cast on 8 sts.\nRnd 1: Chart peek.\nRnd 2: Chart peak, round 7.\nBind off."))
    assert [problem.hint for problem in outcome.problems] == ['Did you mean "peak"?', ""]
    assert 'chart "peak" has 2 rounds, not 7' in outcome.problems[1].message


NEXT_ROW = [
    "Rnd 1: K4, work next row of chart {chart} to last 4 sts, k4.\nRep rnd 1 6 times.",
    "K4, work next row of chart {chart} to last 4 sts, k4. Work 7 rounds.",
    "K4, work next round of chart {chart} over next 32 sts, k4.\nRep last rnd 6 times more.",
    "Peak rnd: K4, work next row of chart {chart} to last 4 sts, k4.\nRep peak rnd every round 6 times.",
]


@pytest.mark.parametrize("words", NEXT_ROW)
def test_the_next_row_of_a_chart_goes_on_in_a_repeated_round(words: str) -> None:
    """Seven rounds of a chart of two are its rounds 1, 2, 1, 2, 1, 2, 1: before, all after the second were alike."""
    plan = plan_of(
        project(
            f"Cast on 40 sts. Join in the round.\n{words.format(chart='peak')}\nBind off.",
            sizes="S",
            size="S",
        )
    )
    second = [any(run.times == 8 for run in each.runs) for each in plan.rounds[1:-1]]
    assert ["a" if each.runs[1].yarn == "A" else "-" for each in plan.rounds[1:-1]] == ["a"] * 7
    assert second == [False] * 7
    assert [each.runs[0].times for each in plan.rounds[1:-1]] == [5, 4, 5, 4, 5, 4, 5]
