"""Rounds of a chart: some of them, the next one, and how the chart goes on."""

from __future__ import annotations

import pytest

from stepper.plan.model import Item, Run, flatten
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import HEAD, project
from tests.tables import each_row

FOUR = HEAD.replace("      a..a\n      .aa.\n", "      a...\n      .a..\n      ..a.\n      ...a\n")
START = "Cast on 8 sts.\nJoin in the round.\n"


def chart_rounds(work: str) -> list[int | None]:
    """Return the round of the chart that each round behind the cast-on works."""
    return [round_.chart_round for round_ in plan_of(project(START + work, head=FOUR)).rounds[1:]]


@pytest.mark.parametrize("words", ["Work 2 rounds as established.", "Work 2 rounds in pattern."])
def test_a_chart_worked_in_part_goes_on_with_its_next_round(words: str) -> None:
    """Rounds 1 and 2 are followed by 3 and 4; worked again they would shift the whole motif."""
    assert chart_rounds(f"Work chart peak, rounds 1-2.\n{words}") == [1, 2, 3, 4]


def test_a_chart_goes_on_from_its_last_round_with_the_first() -> None:
    """Behind round 4 of 4 comes round 1."""
    assert chart_rounds("Work chart peak, rounds 3-4.\nWork 3 rounds as established.") == [3, 4, 1, 2, 3]


def test_a_part_of_a_chart_worked_over_and_over_stays_that_part() -> None:
    """Two rounds worked twice are a pattern of two rounds."""
    assert chart_rounds("Work chart peak, rounds 1-2, 2 times.\nWork 2 rounds as established.") == [1, 2, 1, 2, 1, 2]


def test_the_next_round_of_a_chart_is_one_round() -> None:
    """"Work next rnd of chart" worked the whole chart."""
    assert chart_rounds("Work chart peak, rounds 1-2.\nWork next rnd of chart peak.") == [1, 2, 3]
    assert chart_rounds("Work next rnd of chart peak.") == [1]


def test_rounds_that_a_chart_has_not_are_refused() -> None:
    """Round 5 of a chart of four is a slip of the pen."""
    assert "has 4 rounds, not 5" in faults(project(START + "Work chart peak, rounds 3-5.\nBind off.", head=FOUR))


@pytest.mark.parametrize("before", ["", "Cast on 24 sts.\nKnit 2 rounds.\nBind off.\n"])
def test_a_chart_is_not_worked_on_no_stitches(before: str) -> None:
    """Four rounds without a stitch in them were called a plan."""
    assert "there are no stitches on the needles" in faults(project(f"{before}Chart peak.", head=FOUR))


@pytest.mark.parametrize(
    ("words", "worked"),
    [
        ("Work chart through rnd 3.", [1, 2, 3]),
        ("Work chart peak, rounds 1-2.\nContinue working the chart through Rnd 4.", [1, 2, 3, 4]),
        ("Work rnds 1-2 of Chart.\nContinue as set until rnd 3 of chart has been worked.", [1, 2, 3]),
        ("Work Rnds 1-4 of the chart once, then Rnds 1-2 again.", [1, 2, 3, 4, 1, 2]),
        ("Rep Rnds 1-2 of Chart peak 2 more times.", [1, 2, 1, 2]),
        ("Work chart rnds 2-3.", [2, 3]),
        ("Work 6 rnds from chart.", [1, 2, 3, 4, 1, 2]),
        ("Work Chart peak 2 times in all.", [1, 2, 3, 4, 1, 2, 3, 4]),
    ],
)
def test_rounds_of_the_only_chart_are_worked_as_a_page_calls_them(words: str, worked: list[int]) -> None:
    """A page with one chart says "the chart"; a round named last is the last one worked. Source: by hand."""
    assert chart_rounds(words) == worked


@pytest.mark.parametrize(
    ("words", "worked"),
    [
        ("Begin Chart peak.\nWork Rnds 1-2 of Chart peak.", [1, 2]),
        ("Begin working chart. Work Rnds 1-3.", [1, 2, 3]),
        ("Begin chart.", [1, 2, 3, 4]),
        ("Begin chart.\nNext rnd: Work chart around.\nKnit 1 rnd.", [None, None]),
    ],
)
def test_a_chart_that_is_begun_is_not_worked_twice(words: str, worked: list[int]) -> None:
    """"Begin Chart A" above its rows was the whole chart in front of them."""
    assert chart_rounds(words) == worked


@pytest.mark.parametrize(
    "row",
    [
        "Rnd 1: K2, work chart, k2.",
        "Rnd 1: K2, work Row 1 of Chart, k2.",
        "Rnd 1: K2, pm, work Chart across next 4 sts, pm, k2.",
        "Rnd 1: K2, pm, work Peak Chart, pm, k to end.",
    ],
)
def test_a_chart_beside_stitches_leaves_them_theirs(row: str) -> None:
    """Worked out by hand: two stitches on either side, and the dark stitch one further on in every round."""
    rounds = plan_of(project(f"{START}{row}\nWork Peak Chart through rnd 3.", head=FOUR)).rounds[1:]
    dark = [
        [at for at, run in enumerate(laid_flat(round_.phrase), 1) if run.yarn == "A"] for round_ in rounds
    ]
    assert dark == [[3], [4], [5]]


def laid_flat(items: tuple[Item, ...]) -> list[Run]:
    """Return a run of one for every stitch of a round, without its markers."""
    return [run for run in flatten(items) for _ in range(run.times) if run.uses]


def test_a_chart_between_markers_fills_the_stitches_between_them() -> None:
    """A chart of four on eight stitches is worked twice across, whatever is knitted after the marker."""
    work = "Cast on 12 sts.\nJoin in the round.\nK2, pm, k8, pm, k2.\nRnd 1: K to m, sm, work chart, sm, k to end."
    last = plan_of(project(work, head=FOUR)).rounds[-1]
    assert [at for at, run in enumerate(laid_flat(last.phrase), 1) if run.yarn == "A"] == [3, 7]


@pytest.mark.parametrize(
    ("work", "told"),
    [
        ("Work chart peak, rounds 1-3.\nContinue chart through rnd 2.", "round 2 of chart"),
        ("Work chart peak, rounds 1-2.\nWork Chart peak a total of 2 times.", "times in all"),
        ("Rnd 1: K2, work chart, round 3 over next 4 sts, k2.\nWork chart through rnd 2.", "round 2 of chart"),
    ],
)
def test_a_round_of_a_chart_that_is_past_is_not_worked_to(work: str, told: str) -> None:
    """Which rows are meant is told, never guessed."""
    assert told in faults(project(START + work, head=FOUR))


def test_rounds_of_a_chart_are_worked_in_the_order_of_the_line() -> None:
    """A band that is mirrored goes down the chart again; a round that the chart has not is told."""
    line = "Work rnds 3, 2 and 1 of chart peak."
    rounds = plan_of(project(START + line, head=FOUR)).rounds[-3:]
    up = plan_of(project(START + "Work rnds 1-3 of chart peak.", head=FOUR)).rounds[-3:]
    assert [one.phrase for one in rounds] == [one.phrase for one in reversed(up)]
    assert "no round" in faults(project(START + "Work rnds 99, 98 and 97 of chart peak.", head=FOUR))
    assert "without numbers" in faults(project(START + "Rnds 1-3: Work rnds 3, 2 and 1 of chart peak.", head=FOUR))
    assert "in repeats" in faults(project(START + "Work rnds 3, 2 and 1 of chart peak for 5 cm.", head=FOUR))


@each_row(
    ("line", "told"),
    [
        ("Work the chart, repeating the 4 sts 3 times.", "stands 3 times across, and it goes 2 times into the 8"),
        ("Work rnds 1-2 of the chart, working the 4-st repeat 2 times around.", ""),
        ("Work the chart, repeating the 4 sts two times.", ""),
        ("Work the chart, repeating the 6 sts across.", "6 stitches of chart \"peak\" are repeated, and its repeat has 4"),
        ("Work chart peak, which goes 12 times round.", "stands 12 times across"),
        ("Next rnd: Work rnd 1 of chart peak 8 times around.", "stands 8 times across"),
        ("Next rnd: K2, work chart peak, repeating the 4 sts 2 times, k2.", "goes 1 times into the 4"),
    ],
)
def test_how_often_a_chart_is_said_to_stand_across_is_held_against_the_stitches(line: str, told: str) -> None:
    """A number that does not fit shows a slip of the chart or of the count; it was read aloud and not looked at."""
    work = project(START + line, head=FOUR)
    if told:
        assert told in faults(work)
    else:
        assert plan_of(work).rounds[1].chart_round == 1
