"""A pattern in the page's own words, shaped at its edges and by even changes: which row of it is due, and how many
stitches lie beside what is shaped.

Source: the counts are added up by hand; that a decrease at each end of a row takes two stitches, whatever the
pattern, is common practice, and plain rows with the same shaping are the second reckoning.
"""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.language.phrasing import said_items
from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan, Round
from stepper.project.reader import read_project
from tests.invariants import broken_invariants
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

BEGIN = "Cast on 60 sts.\nWork flat.\n"
LEAF = "Leaf pattern (any number of sts):\nRows 1-3: Own words: as the picture shows.\nRow 4: Purl.\n"
WORKED = BEGIN + LEAF + "Work 4 rows in leaf pattern.\n"


def counts(plan: Plan) -> list[tuple[int, int]]:
    """Return the stitches before and after each row."""
    return [(each.before, each.after) for each in plan.rounds]


def due(round_: Round) -> str:
    """Return the words of a row, without what is shaped in it."""
    return round_.words.partition("; pattern ")[2] or round_.words


def test_each_row_says_which_of_the_pattern_is_due() -> None:
    """By hand: after rows 1 to 4 the next is row 1, and 58, 56 stitches are left by two decreases each."""
    plan = plan_of(project(WORKED + "Dec 1 st each end of next and foll 4th row.\nWork 3 rows in pattern."))
    rows = plan.rounds[5:]
    assert [due(each) for each in rows] == [
        "row 1: as the picture shows",
        "row 2: as the picture shows",
        "row 3: as the picture shows",
        "row 4: purl",
        "row 1: as the picture shows",
        "row 2: as the picture shows",
        "row 3: as the picture shows",
        "row 4: purl",
    ]
    assert [each.after for each in rows] == [58, 58, 58, 58, 56, 56, 56, 56]


def test_another_pattern_in_own_words_begins_with_its_own_first_row() -> None:
    """Two such patterns on one page: the one that the line calls is worked, not the one that stood before."""
    twig = "Twig pattern (any number of sts):\nRow 1: Own words: as the other picture shows.\nRow 2: Purl.\n"
    plan = plan_of(
        project(
            f"{BEGIN}{LEAF}{twig}Work 4 rows in leaf pattern.\nCont in twig pattern, dec 1 st each end of next 2 rows."
        )
    )
    assert [due(each) for each in plan.rounds[-2:]] == ["row 1: as the other picture shows", "row 2: purl"]


def test_what_is_shaped_is_said_first_and_her_words_behind_it() -> None:
    """The edge stitches are the program's, all between is hers; one of them is worked before each decrease."""
    plan = plan_of(project(WORKED + "Dec row: K1, k2tog, work in pattern to last 3 sts, ssk, k1."))
    row = plan.rounds[-1]
    assert row.instruction == row.words
    assert row.words == "k1, k2tog, 54 sts in pattern, ssk, k1; pattern row 1: as the picture shows"
    assert "fifty four stitches in pattern" in said_items(row.phrase, row, plan)
    assert row.shaping == (1, 57)
    assert row.checkpoint is not None
    assert (row.checkpoint.expect, row.checkpoint.reason) == (58, "after the decreases")


@pytest.mark.parametrize(
    ("line", "after"),
    [
        ("Cast off 4 sts at beg of next 2 rows.", [56, 52]),
        ("Keeping pattern correct, cast off 4 sts at beg of next 2 rows.", [56, 52]),
        ("Cast off 3 sts at beg of next 2 rows, keeping continuity of pattern.", [57, 54]),
        ("Cast on 5 sts at beg of next 2 rows.", [65, 70]),
        ("Work 1 row in pattern, increasing 6 sts evenly.", [66]),
        ("Work 1 row in pattern, decreasing 6 sts evenly.", [54]),
        ("Inc 1 st at each end of next 2 rows.", [62, 64]),
        ("Cont in leaf pattern, dec 1 st each end of next 2 rows.", [58, 56]),
    ],
)
def test_the_shaping_says_how_many_stitches_there_are(line: str, after: list[int]) -> None:
    """A pattern that keeps its number on any stitches leaves what the shaping leaves: sums by hand."""
    plan = plan_of(project(WORKED + line + "\nWork 4 rows in pattern."))
    assert [each.after for each in plan.rounds[5:]] == [*after, *[after[-1]] * 4]
    assert [due(each)[:5] for each in plan.rounds[5 + len(after) :]] == [
        f"row {(len(after) + at) % 4 + 1}" for at in range(4)
    ]
    assert broken_invariants(plan) == ()


def test_edge_stitches_beside_her_pattern_are_the_programs() -> None:
    """Nothing is shaped, and the row is one of the pattern: the next is its second."""
    plan = plan_of(project(WORKED + "Next row: K1, work in pattern to last st, k1.\nWork 1 row in pattern."))
    assert plan.rounds[-2].words == "k1, 58 sts in pattern, k1; pattern row 1: as the picture shows"
    assert plan.rounds[-1].words == "row 2: as the picture shows"


def test_a_pattern_may_begin_with_its_shaping() -> None:
    """By hand: the third row and every fourth behind it, so rows 3 and 7."""
    plan = plan_of(
        project(BEGIN + LEAF + "Work in leaf pattern, dec 1 st each end of 3rd and every 4th row once.")
    )
    assert [each.after for each in plan.rounds[1:]] == [60, 60, 58, 58, 58, 58, 56]
    assert [due(each)[:5] for each in plan.rounds[1:]] == [f"row {n}" for n in (1, 2, 3, 4, 1, 2, 3)]


def test_called_again_by_its_name_it_goes_on_where_it_stands() -> None:
    """ "Cont in leaf pattern" after a shaping does not start it over."""
    shaped = "Dec 1 st each end of next row.\nWork 2 rows in leaf pattern."
    assert [due(each)[:5] for each in plan_of(project(WORKED + shaped)).rounds[-2:]] == ["row 2", "row 3"]


def test_words_worked_to_a_length_go_on_beside_a_shaping() -> None:
    """They are said row after row anyway."""
    text = (
        BEGIN
        + "Own words, for 2 cm, ending with a RS row: in the small check.\nDec 1 st each end of every 4th row 2 times."
    )
    plan = plan_of(project(text))
    assert [each.after for each in plan.rounds[-4:]] == [58, 58, 58, 56]
    assert plan.rounds[-2].words == "in the small check"
    assert plan.rounds[-1].words.endswith("; in pattern: in the small check")


def test_that_her_stitches_keep_their_number_is_told_once() -> None:
    """It is what the counts stand on."""
    line = "Dec 1 st each end of next and foll 4th row.\nWork 3 rows in pattern.\nCast off 4 sts at beg of next 2 rows."
    plan = plan_of(project(WORKED + line))
    told = [
        each.text for each in plan.warnings if "beside what is shaped the stitches are yours" in each.text
    ]
    assert len(told) == 1


COUNTED = "Leaf pattern (any number of sts):\nRow 1: Own words: twist. 64 sts.\nRow 2: Own words: untwist. 60 sts.\n"
LACE = "Leaf pattern (any number of sts):\nRow 1: Own words: twist.\nRow 2: K1, yo, k to end.\nRow 3: K1, k2tog, k to end.\nRow 4: Purl.\n"


@pytest.mark.parametrize(
    "work",
    [
        BEGIN + COUNTED + "Work 2 rows in leaf pattern.\nDec 1 st each end of next row.",
        BEGIN + LACE + "Work 4 rows in leaf pattern.\nDec 1 st each end of next row.",
        BEGIN + LACE + "Work 1 row in leaf pattern.\nDec 1 st each end of next row.",
        WORKED + "Work in pattern until 50 sts rem.",
        WORKED + "Next row: K2, m1, p to end.\nWork 2 rows in pattern.",
        BEGIN + "Own words: twist.\nDec 1 st each end of next row.\nWork 2 rows in pattern.",
        BEGIN + "Own words, 4 rows: twist.\nCast off 4 sts at beg of next 2 rows.\nWork 2 rows in pattern.",
    ],
)
def test_where_a_row_may_change_the_stitches_nothing_goes_on(work: str) -> None:
    """A row with a count is for that count, a row that shapes in itself is for its stitches, and a single row may
    be worked only once: a number behind any of them would be a guess."""
    assert "in your own words" in faults(project(work))


def test_stitches_that_come_back_from_hold_are_none_of_the_pattern() -> None:
    """Which row they wait for is not known: the other side of the neck has gone on."""
    split = "Next row: Work in pattern over 20 sts, turn, leave rem sts on hold for right.\nWork 3 rows in pattern.\nBind off.\n"
    back = "Place right on needle.\nWork 2 rows in pattern."
    told = faults(project(WORKED + split + back))
    assert "no pattern has been set up before this line" in told


@given(
    steps=st.lists(
        st.one_of(
            st.integers(1, 9).map(lambda rows: f"Work {rows} rows in pattern."),
            st.tuples(st.sampled_from(("Dec", "Inc")), st.integers(2, 4), st.integers(1, 3)).map(
                lambda it: f"{it[0]} 1 st each end of every {it[1] * 2}th row {it[2]} times."
            ),
            st.integers(1, 4).map(lambda number: f"Cast off {number} sts at beg of next 2 rows."),
            st.integers(1, 4).map(lambda number: f"Work 1 row in pattern, increasing {number} sts evenly."),
        ),
        min_size=1,
        max_size=5,
    )
)
@settings(max_examples=40, deadline=None)
def test_shaped_rows_count_as_those_of_a_fabric_that_is_read(steps: list[str]) -> None:
    """Stockinette with the same shaping has as many stitches on every row, and her rows follow each other in
    the order of the pattern."""
    lines = "\n".join(steps)
    plain = BEGIN + "Work 4 rows in stockinette.\n" + lines
    own, read = read_project(project(WORKED + lines)).project, read_project(project(plain)).project
    assert own is not None
    assert read is not None
    mine, theirs = compile_plan(own).plan, compile_plan(read).plan
    assert mine is not None
    assert theirs is not None
    assert counts(mine) == counts(theirs)
    assert broken_invariants(mine) == ()
    behind = [each for each in mine.rounds[1:] if each.words]
    for each in behind:
        number = (each.index - 1) % 4 + 1
        assert due(each).startswith(f"row {number}:")
