"""Charts as drawn."""

from __future__ import annotations

from stepper.project.keys.charts import draw_chart, read_key
from stepper.project.model import Cell
from stepper.project.problems import Problem, Span

HERE = Span(line=1, column=1)
KEY = {".": Cell("k", "MC"), "a": Cell("k", "A")}


def rows(*lines: str) -> list[tuple[str, Span]]:
    """Return drawn lines with their places, the first on line 2."""
    return [(line, Span(line=2 + number, column=5)) for number, line in enumerate(lines)]


def test_the_first_round_is_the_bottom_line() -> None:
    """Source: chart conventions, bottom row first (check-values 1.7.1, published)."""
    chart, problems = draw_chart("trail", rows("aa..", "..aa"), KEY, HERE)
    assert problems == []
    assert chart is not None
    assert [cell.yarn for cell in chart.rounds[0]] == ["MC", "MC", "A", "A"]
    assert chart.width == 4


def test_a_ragged_line_and_an_unknown_sign_are_told_at_their_place() -> None:
    """Both in one run."""
    chart, problems = draw_chart("trail", rows("aa..", ".?a"), KEY, HERE)
    assert chart is None
    assert [(problem.line, problem.column) for problem in sorted(problems)] == [(2, 5), (3, 6)]


def test_an_empty_drawing_is_a_problem() -> None:
    """A chart without rounds knits nothing."""
    assert draw_chart("trail", [], KEY, HERE)[0] is None


def test_a_sign_may_stand_for_a_yarn_a_stitch_or_both() -> None:
    """`A`, `k2tog`, `A p`, `no stitch`."""
    yarns = {"MC": None, "A": None}
    assert read_key("A", HERE, yarns) == Cell("k", "A")
    assert read_key("k2tog", HERE, yarns) == Cell("k2tog", None)
    assert read_key("A p", HERE, yarns) == Cell("p", "A")
    assert read_key("no stitch", HERE, yarns) == Cell("", None)
    assert isinstance(read_key("Q", HERE, yarns), Problem)


def test_a_cable_is_drawn_over_as_many_squares_as_it_has_stitches() -> None:
    """One square is one stitch (check-values 1.7.1), so a crossing of four takes four squares."""
    key = {"-": Cell("p", None), "c": Cell("2/2 rc", None)}
    chart, problems = draw_chart("rope", rows("-cccc-cccccccc"), key, HERE)
    assert problems == []
    assert chart is not None
    assert [cell.stitch for cell in chart.rounds[0] if cell.stitch] == ["p", "2/2 rc", "p", "2/2 rc", "2/2 rc"]
    assert chart.width == 14
    assert draw_chart("rope", rows("-c-"), key, HERE)[1] == []
    assert "takes 4 squares" in draw_chart("rope", rows("-ccc-"), key, HERE)[1][0].message


def test_a_sign_without_a_meaning_is_told_once_and_not_at_every_square() -> None:
    """One forgotten yarn would else be a screenful of the same sentence."""
    lines = [("b.b.", HERE), (".b.b", HERE), ("bccb", HERE)]
    _, problems = draw_chart("leaf", lines, {".": Cell("k", "MC")}, HERE)
    assert [each.message for each in problems] == [f'"{sign}" is not in the key of chart "leaf".' for sign in "bc"]
