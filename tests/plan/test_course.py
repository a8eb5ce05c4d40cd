"""The sections of a garment in their order, and pieces made again. Worked out by hand."""

from __future__ import annotations

import pytest

from stepper.plan.compile import compile_plan
from stepper.plan.model import flatten
from stepper.project.reader import read_project
from tests.plan.lines.again.test_another_part import counts, knit, refused
from tests.plan.test_compile import plan_of
from tests.project.samples import project
from tests.tables import each_row

SLEEVE = ("== sleeve", "CO 8 sts. Work flat.", "Knit 2 rows.", "Bind off.")


@pytest.mark.parametrize("line", ["Make 2.", "Make two alike.", "Make second sleeve the same.", "Work second sleeve to match."])
def test_a_second_piece_is_all_of_the_section_again(line: str) -> None:
    """In a section of its own name, so that each is counted for itself."""
    plan = knit(*SLEEVE, line)
    assert counts(plan, "sleeve") == counts(plan, "sleeve, second") == [8, 8, 8, 0]


def test_make_two_may_stand_before_the_lines() -> None:
    """As under a heading."""
    plan = knit("== sleeves", "Make 2.", *SLEEVE[1:])
    assert counts(plan, "sleeves") == counts(plan, "sleeves, second") == [8, 8, 8, 0]


def test_the_second_piece_comes_behind_all_sections_of_the_first() -> None:
    """ "Make 2" stands below the heading of the piece, and its cap has a heading of its own."""
    cap = ("== sleeves, cap", "Bind off 2 sts at beg of next 2 rows.", "Bind off.")
    plan = knit("== sleeves", "Make 2.", *SLEEVE[1:-1], *cap, "== collar", "CO 4 sts.", "Bind off.")
    assert counts(plan, "sleeves, second") == [8, 8, 8]
    assert counts(plan, "sleeves, cap, second") == counts(plan, "sleeves, cap") == [6, 4, 0]
    assert [round_.section for round_ in plan.rounds][-1] == "collar"


def test_making_up_is_told_with_the_last_round_whatever_is_still_on_the_needles() -> None:
    """A section that only says what is sewn has no round of its own, and none comes behind it."""
    for end in ("Bind off.", "Place all sts on a holder.", "Knit 1 row."):
        plan = knit("== body", "CO 8 sts. Work flat.", "Knit 2 rows.", end, "== finishing", "Sew side seams.", "Weave in ends.")
        assert plan.rounds[-1].remarks[-2:] == ("when it is done: Sew side seams", "when it is done: Weave in ends")
    plan = knit("== body", *SLEEVE[1:], "== finishing", "Sew side seams.", "== pocket", *SLEEVE[1:])
    assert [each.remarks for each in plan.rounds][4] == ("Sew side seams",)


def test_making_up_waits_for_the_second_piece() -> None:
    """Told with the first sleeve it would be forgotten over the second."""
    plan = knit(*SLEEVE, "Work second sleeve to match.", "Fold the neckband in and sew it down.", "Weave in ends.")
    first, second = (each for each in plan.rounds if each.before and not each.after)
    assert first.remarks == ()
    assert [each.removeprefix("when it is done: ") for each in second.remarks] == [
        "Fold the neckband in and sew it down",
        "Weave in ends",
    ]


def test_three_are_the_piece_and_two_more() -> None:
    """Make 3."""
    assert [round_.after for round_ in knit(*SLEEVE, "Make 3.").rounds].count(0) == 3


def test_the_second_sock_is_the_whole_garment_again() -> None:
    """Toe, foot and leg, each a section."""
    sock = ("== toe", "CO 16 sts. Join in the round.", "Knit 1 round.", "== leg", "Knit 2 rounds.", "Bind off.")
    plan = knit(*sock, "Make second sock the same.")
    assert counts(plan, "toe, second") == [16, 16]
    assert counts(plan, "leg, second") == [16, 16, 0]


def test_a_piece_still_on_the_needles_cannot_be_made_again() -> None:
    """Its stitches would be cast on beside."""
    assert "on the needles where the second sleeve begins" in refused(*SLEEVE[:-1], "Make 2.")
    apart = ("Make 2.", "== cuff", "CO 4 sts.", "Bind off.")
    assert "nothing is knitted in the mitts" in refused("CO 8 sts.", "Bind off.", "== mitts", *apart)


@each_row("behind", ["Pick up and knit 9 sts.", "CO 9 sts."])
def test_rows_behind_a_finished_piece_that_is_made_again_are_refused(behind: str) -> None:
    """A band printed below the second sleeve would be knitted with each: nothing says whose it is."""
    sock = ("== toe", "CO 16 sts. Join in the round.", "Knit 1 round.", "== leg", "Knit 2 rounds.", "Bind off.")
    for lines in ((*SLEEVE, "Second sleeve the same."), (*SLEEVE, "Make 2."), (*sock, "Make second sock the same.")):
        assert "rows are worked behind the line that makes the second" in refused(*lines, behind, "Knit 3 rows.", "Bind off.")
        assert knit(*lines, "Weave in ends.", "== band", behind, "Knit 3 rows.", "Bind off.").rounds
    assert knit("== sleeves", "Make 2.", *SLEEVE[1:]).rounds


def test_a_second_piece_begins_in_the_size_the_first_began_in() -> None:
    """A switch of size within the sleeve comes again at the same line, not before it."""
    text = (
        "title: Cuffs\nsizes: S (M)\nknit:\n  size: S\n  then:\n    - {from: Top, size: M}\nyarn: {MC: oat}\ngauge: {plain: {needle: 4 mm, stitches: 20, rounds: 28}}\n"
        "sections:\n  - name: cuff\n    work: |\n      CO 8 (10) sts. Work flat.\n      Top: Increase evenly to 9 (12) sts.\n"
        "      Bind off.\n      Make 2.\n"
    )
    project = read_project(text).project
    assert project is not None
    plan = compile_plan(project).plan
    assert plan is not None
    assert [round_.after for round_ in plan.rounds] == [8, 12, 0, 8, 12, 0]


def test_a_section_goes_on_in_the_yarn_in_hand() -> None:
    """A heading changes no yarn: that it goes on in contrast is told, and one that the file names is taken up."""
    work = "Cast on 12 sts. Join in the round.\nWith A, knit 2 rounds."
    later = "  - name: band\n{}    work: |\n      Knit 2 rounds.\n      Bind off.\n"
    plan = plan_of(project(work) + later.format(""))
    assert {run.yarn for one in plan.rounds[1:5] for run in flatten(one.phrase)} == {"A"}
    assert any("band goes on in moss" in caution.text for caution in plan.warnings)
    named = plan_of(project(work) + later.format("    yarn: MC\n"))
    assert {run.yarn for one in named.rounds[3:5] for run in flatten(one.phrase)} == {"MC"}
    assert not any("goes on in" in caution.text for caution in named.warnings)


def test_a_section_goes_on_with_the_needle_in_hand() -> None:
    """A heading changes no needle: what goes on with 3.5 mm is told, and a gauge that the file names is taken up."""
    work = "Cast on 12 sts with 3.5 mm needles. Join in the round.\nKnit 2 rounds."
    later = "  - name: band\n{}    work: |\n      {}Knit 2 rounds.\n      Bind off.\n"
    plan = plan_of(project(work) + later.format("", ""))
    assert [one.needle_mm for one in plan.rounds[1:5]] == [3.5] * 4
    assert any("band goes on with 3.5 mm needles" in caution.text for caution in plan.warnings)
    for named in (later.format("    gauge: plain\n", ""), later.format("", "Change to 4 mm needles.\n      ")):
        plan = plan_of(project(work) + named)
        assert [one.needle_mm for one in plan.rounds[1:5]] == [3.5, 3.5, 4.0, 4.0]
        assert not any("goes on with" in caution.text for caution in plan.warnings)
