"""How short rows are turned, and that it is told where nobody says so.

Source of the methods: Craft Yarn Council, short rows (wrap and turn; German short rows with a double stitch).
"""

from __future__ import annotations

import pytest

from stepper.plan.model import Plan
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

START = "Cast on 20 sts. Work flat.\nKnit 1 row.\nPurl 1 row.\n"
BARE = START + "K15, turn.\nP10, turn.\nK to end.\nPurl 1 row.\nBind off."


def told(plan: Plan) -> list[tuple[int, str]]:
    """Return what is told of turning: line and words."""
    return [(caution.line, caution.text) for caution in plan.warnings if "short rows are turned" in caution.text]


def stitches(plan: Plan) -> set[str]:
    """Return every stitch that occurs."""
    return {run.stitch for round_ in plan.rounds for run in round_.runs}


def plan(work: str, **more: str) -> Plan:
    """Work the lines in one size."""
    return plan_of(project(work, sizes="S", size="S", **more))


def test_a_bare_turn_is_told_once_with_its_place() -> None:
    """Double stitches nobody wrote are an assumption; she may know only wraps."""
    made = plan(BARE)
    ((line, text),) = told(made)
    assert line == BARE[: BARE.index("K15")].count("\n") + 18
    assert "German" in text
    assert "wrap and turn" in text
    assert "ds" in stitches(made)
    twice = plan(BARE.replace("Bind off.", "K15, turn.\nP10, turn.\nK to end.\nPurl 1 row.\nBind off."))
    assert len(told(twice)) == 1


@pytest.mark.parametrize("words", ["w&t", "W&T", "wrap and turn", "wrap next st, turn", "wrap next stitch and turn"])
def test_wrap_and_turn_in_the_line_settles_it(words: str) -> None:
    """No double stitch is made where the line wraps, in the row itself and in the row after it."""
    made = plan(BARE.replace("turn", words))
    assert told(made) == []
    assert "ds" not in stitches(made)
    assert "w&t" in stitches(made)


def test_one_wrap_and_turn_settles_the_section() -> None:
    """"K15, turn. P10, w&t." is one method, not two."""
    made = plan(BARE.replace("P10, turn", "P10, w&t"))
    assert told(made) == []
    assert "ds" not in stitches(made)


def test_a_pattern_that_says_how_is_not_told() -> None:
    """`short_rows`, "Use German short rows" and "turn, make ds" each say it."""
    for work in (
        BARE.replace("K15, turn", "K15, turn, make ds"),
        BARE.replace("K15", "Use German short rows.\nK15"),
        BARE.replace("K15", "Use plain short rows.\nK15"),
    ):
        assert told(plan(work)) == []


def test_a_heel_that_slips_after_its_turn_is_not_told() -> None:
    """Such a heel closes its own gaps: no double stitch is made, and nothing is assumed."""
    heel = START + "K14, turn.\nSl1, p7, turn.\nSl1, k6, k2tog, turn.\nSl1, p to end.\nBind off."
    assert told(plan(heel)) == []


def test_a_turn_at_the_end_of_the_pattern_is_told() -> None:
    """Nobody comes back over it, but she works it all the same."""
    assert len(told(plan(START + "K15, turn."))) == 1


@pytest.mark.parametrize("words", ["(P1, k1) 5 times", "*P1, k1; rep from * to last 5 sts"])
def test_a_rib_behind_a_turn_loses_no_stitch_to_the_double_stitch(words: str) -> None:
    """The first stitch of the first repeat is the double one (Craft Yarn Council); the other four repeats stay."""
    row = plan(BARE.replace("P10", words)).rounds[4]
    assert row.instruction == "ds, k1, (p1, k1) 4 times, turn, leave 5 unworked"
    assert sum(run.times for run in row.runs if run.stitch in ("ds", "k", "p")) == 10


@pytest.mark.parametrize("words", ["DS, p10, turn.", "Make DS, p10, turn."])
def test_a_double_stitch_in_a_row_says_that_they_are_german(words: str) -> None:
    """No other method has one: nothing is assumed."""
    assert told(plan_of(project(f"{START}K15, turn.\n{words}\nDS, k to end.\nPurl 1 row.\nBind off."))) == []


def test_rows_with_their_turns_on_one_line_are_rows() -> None:
    """By hand: ten of 40 stitches, ten back, and all 40. On one line they were one row that knitted thirty: the ten purled back
    were taken for the ten behind them."""
    for words in ("K10, turn, p10, turn, k to end.", "Next row: K10, w&t; p10, w&t; k to end."):
        made = plan(f"Cast on 40 sts. Work flat.\nWork 4 rows in st st.\n{words}\nPurl 1 row.\nBind off.")
        assert len(made.rounds) == 1 + 4 + 3 + 1 + 1
        assert [sum(run.uses for run in each.runs if run.stitch in ("k", "p", "ds")) for each in made.rounds[5:8]] == [10, 10, 40]


@pytest.mark.parametrize(
    "words",
    [
        "K5, (k1, yo, k1) in next st, turn, p3, turn, k3tog, k to end.",
        "(K3, turn, p3, turn) twice, k to end.",
    ],
)
def test_a_row_that_turns_and_goes_on_is_refused(words: str) -> None:
    """What is worked behind a turn goes back over the stitches before it; counted on, every number after it was wrong."""
    assert "what is worked back is a row of its own" in faults(project(f"Cast on 40 sts. Work flat.\nWork 4 rows in st st.\n{words}"))


@pytest.mark.parametrize(
    "rows",
    ["K15, turn, yo, p10, turn, yo, k to end.", "Row 3: K15, turn.\nRow 4: Yo, p10, turn.\nRow 5: Yo, k to end."],
)
def test_a_yarn_over_behind_a_turn_is_refused_unless_the_section_says_how_it_turns(rows: str) -> None:
    """The loop of a yarn-over short row was counted as a stitch, beside the double stitch that stands for it.

    Common practice.
    """
    work = f"Cast on 20 sts.\nWork flat.\nKnit 2 rows.\n{rows}\nKnit 1 row."
    assert "may be the loop of a yarn-over short row" in faults(project(work))
    plain = project(work).replace("    work: |", "    short_rows: plain\n    work: |")
    assert plan_of(plain).rounds[-1].after == 22
