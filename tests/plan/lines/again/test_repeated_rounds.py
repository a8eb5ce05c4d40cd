"""Numbered rows filled by others, and rows repeated without a number. The wordings are common practice in print."""

from __future__ import annotations

import pytest

from stepper.project.problems import Problem
from tests.plan.test_compile import compiled, faults, plan_of
from tests.project.samples import project

ROUNDS = "Cast on 20 sts. Join in the round.\nRnd 1: Knit.\nRnd 2: K1, k2tog, k to end.\n"
ROWS = ROUNDS.replace(" Join in the round", " Work flat").replace("Rnd", "Row")


def counts(work: str, *, sizes: str = "S", size: str = "S") -> list[int]:
    """Return the stitches after each round, the cast-on left out."""
    return [round_.after for round_ in plan_of(project(work, sizes=sizes, size=size)).rounds[1:]]


def first_problem(work: str, *, sizes: str = "S", size: str = "S") -> Problem:
    """Return the first thing wrong with lines that must not come out."""
    outcome = compiled(project(work, sizes=sizes, size=size))
    assert outcome.plan is None
    return outcome.problems[0]


@pytest.mark.parametrize("repeat", ["Repeat rows 1-2", "Rep rows 1 and 2", "rep rows 1 to 2", "Rep rows 1-2 4 times", "Rep rows 1-2 4 times more"])
def test_a_range_of_rows_is_filled_by_whole_repeats(repeat: str) -> None:
    """"Rows 3-10: Repeat rows 1-2" are rows 3 to 10: ten rows in all, five of them decreases."""
    plan = plan_of(project(f"{ROWS}Rows 3-10: {repeat}. 15 sts.\nBind off.", sizes="S", size="S"))
    rows = plan.rounds[1:-1]
    assert [row.after for row in rows] == [20, 19, 19, 18, 18, 17, 17, 16, 16, 15]
    assert [row.side for row in rows] == ["RS", "WS"] * 5


@pytest.mark.parametrize("count", [14, 16])
def test_the_count_behind_a_range_of_rows_is_checked_in_every_size(count: int) -> None:
    """A printed count is an oracle wherever it stands; one stitch off is a fault of the page or of the reading."""
    lines = ROWS.replace("20 sts", "20 (24, 28) sts") + "Rows 3-10: Repeat rows 1-2. {} sts.\nBind off."
    right = "15 (19, 23)"
    assert counts(lines.format(right), sizes="S (M, L)", size="M")[-2] == 19
    assert "prints" in first_problem(lines.format(f"{count} (19, 23)"), sizes="S (M, L)", size="M").message
    assert "prints" in first_problem(lines.format(f"15 (19, {count})"), sizes="S (M, L)", size="M").message


def test_a_count_behind_any_numbered_row_is_checked() -> None:
    """Not only behind stitches written out: an even increase of a numbered round has one too."""
    even = ROUNDS + "Rnd 3: Increase evenly to 30 sts. {} sts.\nBind off."
    assert counts(even.format(30))[-2] == 30
    assert "prints 31" in first_problem(even.format(31)).message


def test_rows_that_do_not_make_whole_repeats_are_refused() -> None:
    """Seven rows of a repeat of two would end in its middle, and the next row would be the wrong one."""
    problem = first_problem(ROWS + "Rows 3-9: Repeat rows 1-2.\nBind off.")
    assert "1 are left over" in problem.message
    assert "6 or 8 rows" in problem.hint
    assert "says otherwise" in first_problem(ROWS + "Rows 3-10: Repeat rows 1-2 3 times more.\nBind off.").message


def test_two_rows_repeat_two_rows_once() -> None:
    """"Row 4 and 5: Repeat rows 2 and 3 once more" is two rows, not four."""
    rows = "Cast on 20 sts. Work flat.\nRow 1: Knit.\nRow 2: K1, k2tog, k to end.\nRow 3: Purl.\n"
    assert counts(rows + "Row 4 and 5: Repeat rows 2 and 3 once more. 18 sts.\nBind off.") == [20, 19, 19, 18, 18, 0]
    assert counts(rows + "Row 4: Rep row 2. 18 sts.\nRow 5: Rep row 1.\nBind off.") == [20, 19, 19, 18, 18, 0]


def test_filled_rows_can_be_repeated_by_their_numbers() -> None:
    """Rows 3 to 6 are rows of the numbering like those written out."""
    assert counts(ROWS + "Rows 3-6: Rep rows 1-2. 17 sts.\nRep rows 5-6 once more. 16 sts.\nBind off.")[-2:] == [16, 0]


@pytest.mark.parametrize(
    "words",
    ["Repeat these rounds", "Rep the last rounds", "Rep these rnds", "Rep last rnds", "Repeat the previous rounds"],
)
def test_these_rounds_are_all_of_the_numbering_just_written(words: str) -> None:
    """"Repeat these rounds 4 times" repeats both rounds of the two written out, not the last alone."""
    assert counts(f"{ROUNDS}{words} 4 times. 15 sts.\nBind off.")[-4:] == [16, 16, 15, 0]


def test_these_rounds_without_a_numbering_before_them_are_refused() -> None:
    """Which rounds is not said; she would be knitting a guess."""
    work = "Cast on 20 sts. Join in the round.\nKnit 1 round.\nPurl 1 round.\nRep these rounds 4 times.\nBind off."
    problem = first_problem(work)
    assert "how many rounds" in problem.message
    assert counts(work.replace("these rounds", "last 2 rounds")).count(20) == 10


def test_numbered_rows_that_bring_their_own_rows_are_worked_once() -> None:
    """"Rows 1-2: bind off 4 sts at the beginning of the next 2 rows" is two rows, and not four."""
    work = "Cast on 20 sts. Work flat.\nRows 1-{}: Bind off 4 sts at the beginning of the next 2 rows.\nBind off."
    assert counts(work.format(2)) == [16, 12, 0]
    assert "numbers 3 of the rows, and comes to 2" in first_problem(work.format(3)).message
    chart = "Cast on 20 sts. Join in the round.\nRnds 1-{}: Chart peak, 2 times.\nBind off."
    assert counts(chart.format(4)) == [20] * 4 + [0]
    assert "its chart" in first_problem(chart.format(6)).message


def test_a_numbered_round_keeps_its_yarn_when_it_is_repeated() -> None:
    """"Rnd 1: With A, knit" is in A each time, and "Rnds 1-2: With A, knit" is two rounds."""
    work = "Cast on 20 sts. Join in the round.\nRnd 1: With A, knit.\nRnds 2-3: With MC, knit.\nRep rnds 1-3 once more.\nBind off."
    yarns = [round_.runs[0].yarn for round_ in plan_of(project(work, sizes="S", size="S")).rounds[1:-1]]
    assert yarns == ["A", "MC", "MC"] * 2


@pytest.mark.parametrize(
    ("line", "rounds"),
    [
        ("Rep rnds 1-2 four more times ({} rounds). 15 sts.", (8, 10)),
        ("Knit 6 rounds ({} rnds).", (6,)),
        ("Rnds 3-10: Rep rnds 1-2. {} rounds.", (8,)),
        ("Next 3 rnds: Knit. {} rounds.", (3,)),
        ("Rep last 2 rounds 3 times more ({} rounds in all).", (6, 8)),
    ],
)
def test_a_printed_number_of_rounds_is_checked(line: str, rounds: tuple[int, ...]) -> None:
    """It is an oracle like the stitches: one round more or less is a fault of the page or of the reading."""
    for number in rounds:
        assert counts(f"{ROUNDS}{line.format(number)}\nBind off.")
        assert counts(f"{ROUNDS}{line.format(number)}\nBind off.")[-1] == 0
    for wrong in (rounds[0] - 1, rounds[-1] + 7):
        assert f"prints {wrong} rounds" in first_problem(f"{ROUNDS}{line.format(wrong)}\nBind off.").message


def test_stripes_that_are_repeated_keep_their_yarns() -> None:
    """Knitted in the yarn in hand, the second stripe would be of the wrong colour."""
    work = "Cast on 20 sts. Join in the round.\nWith MC, knit 2 rounds. With A, knit 2 rounds.\nRep last 4 rounds once more.\nBind off."
    rounds = plan_of(project(work)).rounds[1:9]
    assert [round_.runs[0].yarn for round_ in rounds] == ["MC", "MC", "A", "A"] * 2


@pytest.mark.parametrize(
    "work",
    [
        "Knit 2 rounds.\nRepeat the last 5 rounds 2 times. (10 rounds)",
        "Decrease evenly to 18 sts.\nRepeat the last round 3 times. (3 rounds)\nKnit 3 rounds. (4 rounds) 17 sts.",
        "Knit 1 round.\nWork in oyster pattern for 4 rounds. (4 rounds) 20 sts.\nKnit 2 rounds. (3 rounds)",
        "Repeat rnds 1-2 twice. (4 rounds) 17 sts.",
        "Next round: K30.\nKnit 3 rounds. 20 sts. (4 rounds)",
    ],
)
def test_what_follows_from_a_fault_is_not_told_as_another(work: str) -> None:
    """Once it is unknown what was worked no printed number can be wrong; she would mend what is right."""
    assert "1 problem in" in faults(project(f"Cast on 20 sts.\nJoin in the round.\n{work}\nBind off.", sizes="S", size="S"))


@pytest.mark.parametrize(("times", "right"), [("3 times", False), ("4 times", True), ("5 times", True), ("6 times", False), ("4 times more", True), ("5 times more", False)])
def test_rows_and_how_often_they_are_worked_have_to_agree(times: str, right: bool) -> None:
    """Rows 3 to 10 are four times two rows, five times with the once that is written; no other number is meant."""
    text = project(f"{ROWS}Rows 3-10: Rep rows 1-2 {times}.\nBind off.", sizes="S", size="S")
    if right:
        assert len(plan_of(text).rounds) == 12
    else:
        assert "but says otherwise" in faults(text)


@pytest.mark.parametrize(("rows", "over", "near"), [("3-9", 1, "6 or 8"), ("3-3", 1, "2")])
def test_rows_that_no_whole_repeat_fills_are_told_with_those_that_would(rows: str, over: int, near: str) -> None:
    """Seven rows are three repeats of two and one row over: six or eight would come out."""
    told = faults(project(f"{ROWS}Rows {rows}: Rep rows 1-2.\nBind off.".replace("Rows 3-3", "Row 3"), sizes="S", size="S"))
    assert f"{over} are left over" in told
    assert f"{near} rows would be whole repeats" in told


@pytest.mark.parametrize("last", ["Rep the last row 15 times", "Knit 1 row.\nRep last 2 rows 3 times"])
def test_the_cast_on_of_a_piece_is_no_row_to_repeat(last: str) -> None:
    """Where the rows between are not read, the last row is the cast-on: forty stitches would become 640."""
    problem = first_problem(f"Cast on 40 sts.\n{last}.\nBind off.")
    assert "casts the piece on" in problem.message


def test_stitches_cast_on_at_the_beginning_of_rows_are_repeated() -> None:
    """A sleeve grows so from the side; the piece stands on the needles by then."""
    assert counts("Cast on 20 sts.\nKnit 2 rows.\nNext row: Cast on 4 sts, k to end.\nRep last row 3 times.\nBind off.")[-2] == 36


SHORT = "Cast on 20 sts. Work flat.\nShort row 1 (RS): K to last 3 sts, w&t.\nShort row 2 (WS): P to last 3 sts, w&t.\n"


@pytest.mark.parametrize(
    "again", ["Rep the last 2 short rows once.", "Repeat last two short rows once more.", "Rep previous 2 short-rows once."]
)
@pytest.mark.parametrize("between", ["", "Next row: K to end.\nNext row: P to end.\n"])
def test_the_last_short_rows_are_worked_again_whatever_lies_between(again: str, between: str) -> None:
    """The two whole rows between were worked again in their place, and the counts were the same."""
    rows = plan_of(project(f"{SHORT}{between}{again}\nBind off.")).rounds[-3:-1]
    worked = [sum(run.times for run in row.runs if run.stitch in ("k", "p")) for row in rows]
    assert worked == ([17, 14] if between else [14, 14])
    assert [row.side for row in rows] == ["RS", "WS"]


@pytest.mark.parametrize(
    ("between", "again"),
    [
        ("Next row: K to end.\n", "Rep the last 2 short rows once."),
        ("", "Rep last short row twice."),
        ("", "Rep the last 3 short rows twice."),
    ],
)
def test_short_rows_that_cannot_come_next_are_refused(between: str, again: str) -> None:
    """They begin at the other edge, or a short row and the row back are meant by one."""
    assert "short rows are not known" in first_problem(f"{SHORT}{between}{again}\nBind off.").message

