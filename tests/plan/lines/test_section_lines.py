"""Lines in their order: blocks of one numbering, sizes, heads for several rounds."""

from __future__ import annotations

import pytest

from stepper.plan.lines.section_lines import blocks
from stepper.project.reader import read_project
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project


def sides(work: str) -> list[tuple[str, str]]:
    """Work some lines in rows; give side and words of every row after the cast-on."""
    plan = plan_of(project(f"Cast on 10 sts.\nWork flat.\n{work}\nBind off."))
    return [(round_.side, round_.instruction) for round_ in plan.rounds[1:-1]]


def test_numbered_lines_are_one_block_until_the_numbering_begins_anew() -> None:
    """Rows 1 and 2, then rows 1 and 2 of something else."""
    reading = read_project(project("Cast on 8 sts.\nRow 1: Knit.\nRow 2: Purl.\nRow 1: Purl.\nRow 2: Knit.\nBind off."))
    assert reading.project is not None
    assert [len(block) for block in blocks(reading.project.sections[0].lines)] == [1, 2, 2, 1]


def test_a_line_for_some_sizes_is_worked_in_those_alone() -> None:
    """"Sizes M and L only: ..." changes the counts of M and L; a size that is not there is a problem."""
    work = "Cast on 80 sts. Join in the round.\nSizes M and L only: Increase evenly to 84 sts.\nKnit 1 rnd. 80 (84, 84) sts.\nBind off."
    assert [len(plan_of(project(work, size=size)).rounds) for size in ("S", "M", "L")] == [3, 4, 4]
    reading = read_project(project(work.replace("M and L", "M and Q")))
    assert 'there is no size "Q"' in reading.problems[0].message


def test_care_at_the_join_is_told_at_the_join() -> None:
    """Heard before the cast-on it is forgotten by the time the stitches are on the needle, and a twist stays in for good."""
    plan = plan_of(project("With MC, cast on 20 sts. Join in the round, make sure your sts are not twisted. Knit 2 rounds.\nBind off."))
    assert not any("twist" in remark for remark in plan.rounds[0].remarks)
    assert plan.rounds[1].remarks == ("join in the round", "make sure your sts are not twisted")


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


def test_a_count_behind_a_named_round_and_its_intervals_is_checked() -> None:
    """The count in the same line as "work dec rnd every 3rd rnd" is that after all of them."""
    line = "Cast on 40 sts.\nJoin in the round.\nDec rnd: K1, k2tog, k to last 3 sts, ssk, k1. Work dec rnd every 3rd rnd 2 times. {} sts."
    assert plan_of(project(line.format(36))).rounds[-1].after == 36
    assert "prints 37" in faults(project(line.format(37)))


def test_the_markers_of_a_row_are_told_from_where_it_begins() -> None:
    """3 stitches from the edge on the right side, 7 from the other where the row back begins."""
    plan = plan_of(project("Cast on 10 sts.\nRow 1 (RS): K3, pm, k7.\nRow 2 (WS): Purl.\nBind off."))
    assert [round_.markers for round_ in plan.rounds[1:3]] == [(3,), (7,)]


def test_a_marker_is_placed_where_the_line_places_it_and_not_before_its_cast_on() -> None:
    """"Cast on 40 sts. Join in the round. Place marker for beginning of round.": it was said before the cast-on too,
    when nothing is on the needles."""
    plan = plan_of(project("Cast on 40 sts. Join in the round. Place marker for beginning of round.\nKnit 2 rounds.\nBind off."))
    assert [each.remarks for each in plan.rounds[:2]] == [(), ("join in the round", "place marker for beginning of round")]


def test_fastening_off_takes_the_last_stitch_off_the_needle() -> None:
    """It was only said, and the stitch lay on the needle when the next piece was to begin."""
    plan = plan_of(project("Cast on 2 sts. Work flat.\nPurl 1 row.\nK2tog. Fasten off.\nCast on 6 sts.\nKnit 1 row.\nBind off."))
    assert [(row.before, row.after) for row in plan.rounds] == [(0, 2), (2, 2), (2, 1), (1, 0), (0, 6), (6, 6), (6, 0)]


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("Knit 4 rows and bind off fairly firmly.", ("fairly firmly",)),
        ("Knit 4 rows. Cast off, not too tight. A size bigger needle helps.", ("not too tight", "A size bigger needle helps")),
    ],
)
def test_how_the_stitches_come_off_is_said_as_they_do(line: str, said: tuple[str, ...]) -> None:
    """Said with the first of the rows before it, "firmly" would be about these."""
    plan = plan_of(project(f"Cast on 10 sts. Work flat.\nKnit 1 row.\n{line}"))
    assert [each.remarks for each in plan.rounds[2:]] == [(), (), (), (), said]


def test_a_manner_of_binding_off_is_part_of_the_order() -> None:
    """It is read out with it, however much of it is asked for."""
    for manner in ("tightly", "neatly", "very loosely", "rather loosely", "loosely"):
        plan = plan_of(project(f"Cast on 10 sts. Work flat.\nKnit 2 rows. Bind off all sts {manner}."))
        assert (plan.rounds[-1].instruction, plan.rounds[-1].remarks) == (f"bind off {manner}", ())


def test_how_many_each_part_has_is_told_with_the_last_round_that_makes_them_so() -> None:
    """Heard at the first of ten rounds it is false; where the line has one round, or says it first, it stays there."""
    lines = "Cast on 80 sts. Join in the round.\nK20, pm, k20, pm, k20, pm, k20, pm.\nInc round: *K1, m1, k to 1 st before marker, m1, k1, sm; rep from * to end.\n"
    counts = "30 sts for each sleeve, 30 sts for front and back"
    plan = plan_of(project(f"{lines}Work inc round every other round 5 times. {counts}.\nBind off."))
    assert [each.after for each in plan.rounds if counts in each.remarks] == [120]
    once = counts.replace("30", "22")
    plan = plan_of(project(f"{lines}Work inc round once. {once}.\nBind off."))
    assert [each.after for each in plan.rounds if once in each.remarks] == [88]
