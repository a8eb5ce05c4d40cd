"""Durations and shaping, from the words to the rows they come to. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.instructions import Buttonholes, Repeated
from stepper.project.reader import read_project
from stepper.project.stitchwork import Work
from tests.plan.test_compile import compiled, plan_of
from tests.project.samples import HEAD, project


def counts(work: str) -> list[int]:
    """Return the stitches after every row behind the cast-on and before the bind-off."""
    return [round_.after for round_ in plan_of(project(f"{work}\nBind off.")).rounds[1:-1]]


def test_shaping_at_the_ends_of_rows_needs_no_name() -> None:
    """British patterns print no row for it: "Inc 1 st at each end of every 4th row 2 times" takes eight rows."""
    head = "Cast on 20 sts. Work flat.\n"
    assert counts(head + "Inc 1 st at each end of every 4th row 2 times.") == [20, 20, 22, 22, 22, 22, 24, 24]
    assert counts(head + "Dec 1 st at the beginning of next row.") == [19]
    assert counts(head + "Dec 1 st at each end of next 3 rows.") == [18, 16, 14]
    assert counts(head + "Decrease 1 st at each side every RS row 2 times.") == [18, 18, 16]
    assert counts(head + "Knit 1 row.\nDecrease 1 st at each side every RS row 2 times.") == [20, 20, 18, 18, 16]


def test_next_and_every_has_two_readings_and_both_are_told() -> None:
    """Five times may count the next row or not; the printed count decides, and where none is printed both are told."""
    head = "Cast on 20 sts. Work flat.\nDec 1 st at each end of next and every foll 4th row 3 times."
    assert counts(head)[-1] == 12
    assert counts(head + " 14 sts.")[-1] == 14
    told = plan_of(project(head + " 14 sts.\nBind off.")).warnings[0].text
    assert "4 times in all" in told
    assert "3 times in all" in told
    assert "alone fits" in told


def test_a_total_counts_the_times_already_worked() -> None:
    """"A total of 3 times" is three, and needs no word of caution; "another 3 times" is three more."""
    head = "Cast on 20 sts. Work flat.\nRow 1 (RS): K1, ssk, k to end.\nRow 2: Purl.\n"
    assert counts(head + "Rep rows 1 and 2 a total of 3 times.")[-1] == 17
    assert counts(head + "Rep rows 1 and 2 another 3 times.")[-1] == 16
    assert plan_of(project(head + "Rep rows 1 and 2 a total of 3 times.\nBind off.")).warnings == ()


def test_a_shaping_begins_beside_another_when_the_piece_is_long_enough() -> None:
    """Armhole from the start, neck from 5 cm on. Source: arithmetic, 28 rows to 10 cm, so the neck waits 14 rows."""
    rows = counts(
        "Cast on 60 sts. Work flat.\nArmhole row (RS): K1, ssk, k to end.\nNeck row (RS): K to last 3 sts, k2tog, k1.\n"
        "Work armhole row every 2nd row 6 times.\n"
        "AT THE SAME TIME, when piece measures 5 cm, work neck row every 2nd row 3 times."
    )
    changes = [before - after for before, after in zip([60, *rows], rows, strict=False)]
    assert sum(changes[:14]) == 6
    assert sum(changes[14:]) == 3
    assert changes[14] == 1


def test_a_piece_worked_for_a_length_ends_with_the_side_that_is_asked_for() -> None:
    """"Work for 4 cm, ending with a WS row": 11 rows by the gauge, 12 to end on the wrong side."""
    plan = plan_of(project("Cast on 20 sts. Work flat.\nWork in st st for 4 cm, ending with a WS row.\nBind off."))
    assert len(plan.rounds) == 14
    assert plan.rounds[-2].side == "WS"


def test_rounds_worked_by_turns_and_then_one_of_them_to_a_length() -> None:
    """"Repeat rnd 1 once, then rnd 2 until piece measures 5 cm"; "work" right behind the rounds may mean themselves."""
    written = "Cast on 20 sts. Join in the round.\nRnd 1: Purl.\nRnd 2: Knit.\n{} rnd 1 once, then rnd 2 until piece measures 5 cm.\nBind off."
    plan = plan_of(project(written.format("Repeat")))
    assert "come on top is not clear" in compiled(project(written.format("Work"))).problems[0].message
    assert [round_.instruction for round_ in plan.rounds[1:5]] == ["purl", "knit", "purl", "knit"]
    assert len(plan.rounds) == 16


@pytest.mark.parametrize("words", ["Dec 1 st at neck edge every row 4 times.", "Dec 1 st at armhole edge of next row."])
def test_an_edge_that_may_be_either_is_asked_for(words: str) -> None:
    """Which end the neck is at depends on the piece; the program does not guess."""
    problems = compiled(project(f"Cast on 20 sts. Work flat.\n{words}\nBind off.")).problems
    assert "does not say at which end of the row" in problems[0].message


def test_smaller_and_larger_needles_are_those_of_the_gauges() -> None:
    """Two sizes in the file make the words clear; one does not."""
    two = HEAD.replace("charts:", "  rib: {{needle: 3.25 mm, stitches: 22, rounds: 30}}\ncharts:")
    work = "With smaller needles, cast on 20 sts.\nJoin in the round.\nChange to larger needles and knit 2 rounds.\nBind off."
    assert [round_.needle_mm for round_ in plan_of(project(work, head=two)).rounds] == [3.25, 4.0, 4.0, 4.0]
    assert '"smaller needles" is clear only where' in compiled(project(work)).problems[0].message


def holes(printed: str) -> Buttonholes:
    """Return what the last sentence of a line tells of its buttonholes."""
    read = read_project(project(f"Cast on 60 sts.\nWork flat.\n{printed}")).project
    assert read is not None
    made = read.sections[0].lines[-1].sentences[-1]
    assert isinstance(made, Buttonholes)
    return made


def test_all_that_is_told_is_kept() -> None:
    """How many, in which row, how far from the ends and how each is made."""
    found = holes("Knit 7 rows. With 5 buttonholes in row 4, 3 sts from each end, by yo, k2tog.")
    assert found.number is not None
    assert found.ends is not None
    assert (found.number.values, found.ends.values) == ((5,), (3,))
    assert found.rows == (4,)
    assert [one.stitch for one in found.made if isinstance(one, Work)] == ["yo", "k2tog"]


def test_rows_at_intervals_have_a_first() -> None:
    """And may say how often."""
    found = holes("Knit 60 rows. With a buttonhole every 14th row from row 5 4 times by k3, yo, k2tog, k to end.")
    assert (found.every, found.rows, found.number) == (14, (5,), None)
    assert found.times is not None
    assert found.times.values == (4,)


def test_rows_that_are_repeated_count_with_them() -> None:
    """The first of 36 rows is the one written out."""
    rows = "Row 1 (RS): Knit.\nRow 2: Knit.\nRep rows 1-2 17 times more. With a buttonhole in row 11 by k3, yo, k2tog, k to end."
    assert isinstance(holes(rows).again, Repeated)
    assert holes("Knit 12 rows. With a buttonhole in row 11 by k3, yo, k2tog, k to end.").again is None


def test_the_next_one_is_told_apart() -> None:
    """It is worked in rows of its own."""
    assert holes("Buttonhole row: K3, yo, k2tog, k to end.\nKnit 3 rows.\nWork another buttonhole.").more
