"""Lines in their order: numbers, sides, rows that stand for many."""

from __future__ import annotations

import pytest

from stepper.plan.lining import blocks
from stepper.project.reader import read_project
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project


def sides(work: str) -> list[tuple[str, str]]:
    """Work some lines in rows; give side and words of every row after the cast-on."""
    plan = plan_of(project(f"Cast on 10 sts.\nWork flat.\n{work}\nBind off."))
    return [(round_.side, round_.instruction) for round_ in plan.rounds[1:-1]]


@pytest.mark.parametrize(
    "back",
    ["Row 2 and all WS rows: Purl.", "Row 2 (WS) and all following WS rows: purl.", "All WS rows: Purl.", "Rows 2 and 4: Purl."],
)
def test_a_line_for_all_wrong_side_rows_stands_between_the_others(back: str) -> None:
    """However it is printed, rows 2 and 4 are purled."""
    said = sides(f"Row 1 (RS): K1, yo, k2tog, k to end.\n{back}\nRow 3: Knit.")
    assert said[:3] == [("RS", "k1, yo, k2tog, k7"), ("WS", "purl"), ("RS", "knit")]
    assert said[3] == ("WS", "purl")


def test_even_rounds_stand_between_odd_ones() -> None:
    """`Rnd 2 and all even rnds: knit`."""
    plan = plan_of(project("Cast on 8 sts.\nJoin in the round.\nRnd 1: Purl.\nRnd 2 and all even rnds: Knit.\nRnd 3: *K1, p1; rep from * to end.\nBind off."))
    assert [round_.instruction for round_ in plan.rounds[1:-1]] == ["purl", "knit", "*k1, p1; rep from * to end", "knit"]


def test_a_row_that_is_left_out_is_a_fault() -> None:
    """Going on from row 1 with row 3 would put every later row on the wrong side."""
    assert "round 2 is not written out" in faults(project("Cast on 8 sts.\nRow 1 (RS): Knit.\nRow 3: Knit.\nBind off."))


def test_numbered_lines_are_one_block_until_the_numbering_begins_anew() -> None:
    """Rows 1 and 2, then rows 1 and 2 of something else."""
    reading = read_project(project("Cast on 8 sts.\nRow 1: Knit.\nRow 2: Purl.\nRow 1: Purl.\nRow 2: Knit.\nBind off."))
    assert reading.project is not None
    assert [len(block) for block in blocks(reading.project.sections[0].lines)] == [1, 2, 2, 1]


def test_a_stretch_to_a_length_ends_on_the_side_that_the_next_line_needs() -> None:
    """`Row 1 (RS)` after so many centimetres: one row more rather than a row on the wrong side."""
    for length in (4, 5):
        plan = plan_of(project(f"Cast on 10 sts.\nWork flat.\nWork in stockinette for {length} cm.\nNext row (RS): K5, k2tog, k3.\nBind off."))
        shaped = next(round_ for round_ in plan.rounds if round_.shaping)
        assert shaped.side == "RS"
        assert plan.warnings == ()
        assert plan.stretches[0].last == shaped.index - 1


def test_a_row_printed_for_the_other_side_is_told() -> None:
    """Two RS rows in a row mean that one is missing in between."""
    plan = plan_of(project("Cast on 10 sts.\nRow 1 (RS): Knit.\nNext row (RS): Knit.\nBind off."))
    assert "the line is for RS rows" in plan.warnings[0].text


def test_short_rows_in_the_round_do_not_make_the_piece_flat() -> None:
    """After them the round goes on as a round."""
    plan = plan_of(project("Cast on 12 sts.\nJoin in the round.\nRow 1 (RS): K6, turn.\nRow 2 (WS): P6, turn.\nKnit 2 rounds.\nBind off."))
    assert [round_.flat for round_ in plan.rounds] == [False, True, True, False, False, False]


def test_from_round_to_flat_and_back() -> None:
    """A yoke opened for a neck slit, and closed again; and a split hem ribbed flat, then joined (6.17)."""
    plan = plan_of(
        project(
            "Cast on 106 sts.\nWork flat.\n*K2, p2; rep from * to last 2 sts, k2. Work for 3 cm.\nHold 106 sts for front.\n"
            "Cast on 106 sts.\nWork flat.\n*K2, p2; rep from * to last 2 sts, k2. Work for 5 cm.\nReturn front to needles.\n"
            "Join in the round.\nRnd 1: *K104, k2tog; rep from * to end. 210 sts.\nWork flat.\nRow 1 (RS): Knit.\nRow 2 (WS): Purl.\n"
            "Join in the round.\nKnit 1 round.\nBind off."
        )
    )
    joined = next(round_ for round_ in plan.rounds if round_.after == 210)
    assert not joined.flat
    assert [round_.flat for round_ in plan.rounds[joined.index + 1 :]] == [True, True, False, False]
    assert plan.rounds[joined.index + 2].side == "WS"


def test_a_line_for_some_sizes_is_worked_in_those_alone() -> None:
    """"Sizes M and L only: ..." changes the counts of M and L; a size that is not there is a problem."""
    work = "Cast on 80 sts. Join in the round.\nSizes M and L only: Increase evenly to 84 sts.\nKnit 1 rnd. 80 (84, 84) sts.\nBind off."
    assert [len(plan_of(project(work, size=size)).rounds) for size in ("S", "M", "L")] == [3, 4, 4]
    reading = read_project(project(work.replace("M and L", "M and Q")))
    assert 'there is no size "Q"' in reading.problems[0].message


HEAD = "Cast on 40 sts. Join in the round.\n"


@pytest.mark.parametrize("again", ["Rep dec rnd. 38 sts.", "Repeat dec rnd. 38 sts.", "Rep dec rnd once more. 38 sts.", "Work dec rnd. 38 sts."])
def test_a_named_round_is_worked_where_it_is_printed_and_again_where_it_is_called(again: str) -> None:
    """Once on the second round, once on the eighth: before, the first was left out and the count with it."""
    plan = plan_of(project(f"{HEAD}Dec rnd: K1, k2tog, k to end.\nKnit 5 rounds.\n{again}\nKnit 1 round."))
    assert [each.index for each in plan.rounds if each.shaping] == [1, 7]


def test_a_call_that_may_be_the_round_itself_is_told() -> None:
    """"Work dec rnd" has two readings; the count decides, and without one the knitter is told."""
    words = f"{HEAD}Dec rnd: K1, k2tog, k to end.\nWork dec rnd."
    assert len([each for each in plan_of(project(f"{words} 39 sts.")).rounds if each.shaping]) == 1
    plan = plan_of(project(words))
    assert len([each for each in plan.rounds if each.shaping]) == 2
    assert "work dec rnd" in plan.warnings[0].text


def test_a_count_printed_with_a_round_that_is_called_later_is_checked() -> None:
    """Written out first and worked at intervals, what it loses and leaves is checked where it is worked."""
    words = f"{HEAD}Dec rnd: K1, k2tog, k to last 3 sts, ssk, k1. {{}}\nWork dec rnd every 4th round 2 times. 36 sts."
    assert plan_of(project(words.format("2 sts dec'd."))).rounds[-1].after == 36
    assert "prints 3 stitches lost" in faults(project(words.format("3 sts dec'd.")))
    assert "prints 37 stitches" in faults(project(words.format("37 sts.")))


@pytest.mark.parametrize(
    "head",
    ["Next 4 rnds", "Following 4 rounds", "Foll 4 rnds", "For the next 4 rounds", "The following four rounds", "Next four rnds"],
)
def test_a_head_for_several_rounds_works_each_of_them(head: str) -> None:
    """"Following 4 rounds: …" is four rounds, and its printed count is that of the fourth."""
    start = "Cast on 20 sts. Join in the round.\n"
    plan = plan_of(project(f"{start}{head}: K1, k2tog, k to end. 16 sts.\nBind off.", sizes="S", size="S"))
    assert [round_.after for round_ in plan.rounds[1:-1]] == [19, 18, 17, 16]
    assert "prints 17" in faults(project(f"{start}{head}: K1, k2tog, k to end. 17 sts.\nBind off.", sizes="S", size="S"))


def test_a_head_for_several_rows_may_have_a_number_for_each_size() -> None:
    """"Next 2 (4, 6) rows" are four in size M."""
    assert len(sides("Next 2 (4, 6) rows: K to end.")) == 4
    assert sides("Next 2 rows (WS): Purl.")[0] == ("WS", "purl")


def test_a_label_may_say_how_often_its_round_is_worked() -> None:
    """"Inc round (work 3 times)" is three rounds, under the name by which it is called again."""
    work = "Cast on 20 sts. Join in the round.\nInc round (work 3 times): K1, m1, k to end. 23 sts.\nWork inc round. 24 sts.\nBind off."
    assert [round_.after for round_ in plan_of(project(work, sizes="S", size="S")).rounds[1:-1]] == [21, 22, 23, 24]


def test_what_a_line_leaves_open_is_told_with_its_place() -> None:
    """"Gusset marker" is taken as the next marker of the row, as markers have no names; she can judge."""
    work = "Cast on 20 sts. Join in the round.\nK10, pm, k to end.\nK to gusset marker, m1, k to end.\nBind off."
    (told,) = plan_of(project(work, sizes="S", size="S")).warnings
    assert told.line == 20
    assert "gusset marker" in told.text


def test_a_line_for_all_rows_of_a_side_gives_a_row() -> None:
    """Anything else was taken for stockinette."""
    assert sides("Row 1 (RS): *K1, p1; rep from * to end.\nRow 2 and all WS rows: Work in pattern.\nRow 3: Knit.")[1] == (
        "WS",
        "*k1, p1; rep from * to end",
    )
    bad = "Cast on 10 sts.\nRow 1 (RS): Knit.\nRow 2 and all WS rows: Decrease evenly to 8 sts.\nRow 3: Knit.\nBind off."
    assert "gives one row" in faults(project(bad))
