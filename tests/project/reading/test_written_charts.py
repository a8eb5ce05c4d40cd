"""Charts whose rows the page writes out are worked by the rows under their names. Wordings: common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.written_charts import chart_in_label, written_key
from tests.plan.test_compile import compiled, plan_of
from tests.project.samples import project

LACE = "Lace Chart (written instructions)\nRnd 1: *K1, yo, k2tog; rep from * to end.\nRnd 2: Knit.\n"
BODY = "Cast on 12 sts. Join in the round.\n{}\nBind off."


@pytest.mark.parametrize(
    ("label", "key"),
    [
        ("Chart A (multiple of 6 sts, 5 rnds)", "chart a"),
        ("Chart A", "chart a"),
        ("Lace Chart", "lace chart"),
        ("Yoke Chart B (8 sts)", "yoke chart b"),
        ("Charted lace", ""),
        ("Lace pattern", ""),
        ("Dec round", ""),
    ],
)
def test_a_label_names_a_chart(label: str, key: str) -> None:
    """Rows under any other name are no chart's."""
    assert chart_in_label(label) == key


def test_a_drawn_chart_comes_before_rows_of_its_name() -> None:
    """The drawing is what a line means that calls a chart, and of two written ones nobody says which."""
    assert written_key("a", {"chart a"}) == "chart a"
    assert written_key("lace", {"lace chart"}) == "lace chart"
    assert written_key("upper-yoke", {"upper yoke chart"}) == "upper yoke chart"
    assert written_key("A", {"chart a"}, {"a"}) == ""
    assert written_key("b", {"chart a"}) == ""
    assert written_key("chart", {"chart a"}) == "chart a"
    assert written_key("chart", {"chart a", "chart b"}) == ""


def test_a_chart_in_words_is_worked_where_it_is_called() -> None:
    """"Work Lace Chart twice" is four rounds, and none is worked where they are written."""
    plan = plan_of(project(LACE + BODY.format("Work Lace Chart twice."), sizes="S", size="S"))
    assert [round_.after for round_ in plan.rounds] == [12] * 5 + [0]
    beside = BODY.format("Next rnd: K3, work rnd 1 of Lace Chart over next 6 sts, k3.")
    assert [one.after for one in plan_of(project(LACE + beside, sizes="S", size="S")).rounds] == [12, 12, 0]


def test_times_in_all_and_rounds_through_one_are_no_rows_by_number() -> None:
    """What a drawn chart alone can tell - which of its rounds come next - is refused and not guessed."""
    for line in ("Work chart lace through rnd 2.", "Work next rnd of Lace Chart."):
        assert compiled(project(LACE + BODY.format(line), sizes="S", size="S")).plan is None


def test_charts_printed_last_are_worked_where_they_are_called() -> None:
    """Their rows stand behind the garment, and none of them is knitted there."""
    first, last = LACE, BODY.format("Work Lace Chart twice.")
    at_the_end = project(f"{last}\n{first}", sizes="S", size="S")
    in_front = plan_of(project(f"{first}{last}", sizes="S", size="S"))
    assert [one.phrase for one in plan_of(at_the_end).rounds] == [one.phrase for one in in_front.rounds]


def test_a_chart_counted_by_its_colours_is_one() -> None:
    """"1 MC, 3 A" behind the name of the chart is a round of it as below it."""
    chart = "Chart A (4 sts)\nRnd 1: *1 MC, 3 A; rep from * around.\nRnd 2: A.\n"
    plan = plan_of(project(chart + BODY.format("Work Rnds 1 and 2 of Chart A."), sizes="S", size="S"))
    assert [one.after for one in plan.rounds] == [12, 12, 12, 0]


def test_what_is_told_between_two_rounds_of_a_chart_does_not_end_it() -> None:
    """Else the rounds behind it would be knitted where the page prints them, after the garment."""
    last = BODY.format("Work Lace Chart twice.")
    head, first, second, _ = LACE.split("\n")
    told = project(f"{last}\n{head}\n{first}\nNote: it may look loose.\n{second}", sizes="S", size="S")
    assert [round_.after for round_ in plan_of(told).rounds] == [12] * 5 + [0]
