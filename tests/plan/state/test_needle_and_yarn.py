"""Needles and yarns changed on the way."""

from __future__ import annotations

import re
from typing import Any

import pytest

from stepper.plan.model import flatten
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import HEAD, project

TWO = HEAD.replace("charts:", "  rib: {{needle: 3.25 mm, stitches: 22, rounds: 30}}\ncharts:")


def test_a_needle_by_its_word_is_one_of_the_two_of_the_file() -> None:
    """`smaller` and `larger` name no size; the gauges of the file do, where they name two."""
    work = "Cast on 20 sts. Join in the round.\nChange to smaller needles.\nKnit 1 rnd.\nBind off."
    assert [round_.needle_mm for round_ in plan_of(project(work, head=TWO)).rounds] == [4.0, 3.25, 3.25]
    assert "it names 4 mm" in faults(project(work))


def test_the_needles_of_the_pattern_tell_which_is_smaller() -> None:
    """A page gives one gauge and lists two needles: the smaller is the one of them that the gauge does not name."""
    work = "Cast on 20 sts. Join in the round.\nChange to smaller needles.\nKnit 1 rnd.\nChange to larger needles.\nBind off."
    listed = HEAD.replace("charts:", "needles: 3.5 mm, 4 mm\ncharts:")
    assert [round_.needle_mm for round_ in plan_of(project(work, head=listed)).rounds] == [4.0, 3.5, 4.0]
    three = HEAD.replace("charts:", "needles: 3.5 mm, 4 mm and 5 mm\ncharts:")
    assert "it names 3.5 mm, 4 mm or 5 mm" in faults(project(work, head=three))


NAMED = "Cast on 20 sts. Join in the round.\nChange to ribbing needles.\nKnit 1 rnd.\nSwitch back to the main needle.\nKnit 1 rnd."


def test_needles_called_by_their_use_are_those_that_the_file_calls_so() -> None:
    """Of three needles none is the smaller; which is for the ribs stands in the materials, or in the name of a gauge."""
    listed = HEAD.replace("charts:", "needles: 3.5 mm ribbing, 4 mm main, 4.5 mm colourwork\ncharts:")
    assert [round_.needle_mm for round_ in plan_of(project(NAMED, head=listed)).rounds] == [4.0, 3.5, 4.0]
    other = NAMED.replace("ribbing needles", "colorwork needles")
    assert [round_.needle_mm for round_ in plan_of(project(other, head=listed)).rounds] == [4.0, 4.5, 4.0]
    cuffs = "Cast on 20 sts. Join in the round.\nChange to ribbing needles.\nKnit 1 rnd."
    assert [round_.needle_mm for round_ in plan_of(project(cuffs, head=TWO)).rounds] == [4.0, 3.25]


def test_of_two_needles_the_smaller_is_for_the_ribs_and_that_is_told() -> None:
    """The page lists two sizes and calls them by their use alone. Source: common practice."""
    listed = HEAD.replace("charts:", "needles: 3.5 mm, 4 mm\ncharts:")
    plan = plan_of(project(NAMED, head=listed))
    assert [round_.needle_mm for round_ in plan.rounds] == [4.0, 3.5, 4.0]
    told = " ".join(caution.text for caution in plan.warnings)
    assert "the rib needles are taken as the smaller of the two, 3.5 mm" in told
    assert "the main needles are taken as the larger of the two, 4 mm" in told


def test_needles_whose_use_names_no_size_are_asked_for() -> None:
    """One gauge, and no needle for ribs: whether it is a size thinner or two nobody can tell."""
    assert '"rib needles" is clear only where' in faults(project(NAMED))
    listed = HEAD.replace("charts:", "needles: 3.5 mm, 4 mm\ncharts:")
    sleeves = NAMED.replace("ribbing needles", "sleeve needles")
    assert '"sleeve needles" is clear only where' in faults(project(sleeves, head=listed))


def test_a_yarn_is_taken_and_broken_by_its_name() -> None:
    """The yarn is called as the knitter calls it, and breaking it after the last round is said with that round."""
    plan = plan_of(
        project(
            "Cast on 20 sts. Join in the round.\nWith A, knit 1 rnd.\nBreak A.\nWith MC, bind off.\nBreak MC."
        )
    )
    assert plan.rounds[1].remarks == ("join in the round", "with moss")
    assert plan.rounds[2].remarks == ("break moss", "with oat", "break oat when it is done")
    assert 'there is no yarn "Q"' in faults(project("Cast on 20 sts.\nWith Q, knit 1 rnd.\nBind off."))


def test_after_a_yarn_is_broken_the_section_goes_on_in_its_own() -> None:
    """ "Break A" and no other yarn named: the next round is in the main one, and says so."""
    start = "Cast on 8 sts.\nJoin in the round.\nKnit 1 round.\nWith A, knit 2 rounds.\n"
    plan = plan_of(project(f"{start}Break A.\nKnit 1 round."))
    assert [run.yarn for run in plan.rounds[-1].runs] == ["MC"]
    assert plan.rounds[-1].remarks == ("break moss", "with oat")
    joined = plan_of(project(f"{start}Break A.\nWith MC, knit 1 round."))
    assert joined.rounds[-1].remarks == ("break moss", "with oat")


def rounds_on(work: str, gauges: str) -> list[tuple[str, int]]:
    """Return the gauge of each stretch of rounds and how many it has."""
    head = re.sub(r"  plain: .*\n", gauges, HEAD)
    found: list[list[Any]] = []
    for round_ in plan_of(project(work, head=head)).rounds[1:]:
        if found and found[-1][0] == round_.gauge:
            found[-1][1] += 1
        else:
            found.append([round_.gauge, 1])
    return [(name, rounds) for name, rounds in found]


BOTH = """\
  plain: {{needle: 4 mm, stitches: 20, rounds: 28}}
  rib: {{needle: 3.5 mm, stitches: 24, rounds: 40}}
"""
HEM = "Cast on 40 sts.\nJoin in the round.\nKnit for 10 cm.\nChange to 3.5 mm needles.\n*K2, p2; rep from * to end. Work for 5 cm."


def test_a_length_becomes_rounds_by_the_gauge_of_the_needle_in_hand() -> None:
    """10 cm at 28 to 10 cm are 28 rounds, 5 cm at 40 are 20; by the section's own gauge they would be 14."""
    assert rounds_on(HEM, BOTH) == [("plain", 28), ("rib", 20)]


def test_back_on_the_first_needle_the_first_gauge_holds() -> None:
    """The needle says which fabric it is, there and back."""
    back = HEM + "\nChange to 4 mm needles.\nKnit for 5 cm."
    assert rounds_on(back, BOTH) == [("plain", 28), ("rib", 20), ("plain", 14)]


def test_a_needle_without_one_gauge_of_its_own_leaves_the_section_its_gauge() -> None:
    """None for it, or two between which it does not choose."""
    assert rounds_on(HEM, BOTH.replace("3.5 mm", "3 mm")) == [("plain", 28 + 14)]
    third = "  lace: {{needle: 3.5 mm, stitches: 18, rounds: 26}}\n"
    assert rounds_on(HEM, BOTH + third) == [("plain", 28 + 14)]


def test_what_is_measured_as_one_piece_adds_up_over_both_gauges() -> None:
    """15 cm from the beginning: 28 rounds are 10 cm, so 5 cm are left, 20 rounds on the smaller needle."""
    work = HEM.replace("Work for 5 cm", "Work until piece measures 15 cm")
    assert rounds_on(work, BOTH) == [("plain", 28), ("rib", 20)]


def test_a_bare_number_goes_by_the_wording_of_the_page() -> None:
    """ "No. 6 needles" are 4 mm where stitches are bound off, and 5 mm where they are cast off; told either way.

    Source: the needle tables of `craft/needles`; old US and UK pages both print "No.".
    """
    start = "Change to No. 6 needles. Cast on 20 sts.\nKnit 1 row.\n"
    for end, mm, table in (
        ("Bind off.", 4.0, "US 6"),
        ("Cast off.", 5.0, "old UK size"),
        ("Knit 1 row.", 5.0, "old UK size"),
    ):
        plan = plan_of(project(start + end))
        assert {round_.needle_mm for round_ in plan.rounds} == {mm}
        assert any(table in warning.text for warning in plan.warnings)


def test_a_disputed_us_number_asks_for_millimetres() -> None:
    """US 2 is sold as 2.75 and as 3 mm; UK 2 would be 7 mm."""
    told = faults(project("Change to No. 2 needles. Cast on 20 sts.\nKnit 1 row.\nBind off."))
    assert "US 2, which is sold as 2.75 mm or 3 mm" in told


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("Knit 2 rounds.", True),
        ("*K2 A; rep from * to end.", False),
        ("Work chart peak, round 2.", False),
        ("With MC, knit 2 rounds.", False),
        ("Break A.\nKnit 2 rounds.", False),
        ("*K1 A, k1 MC; rep from * to end.", False),
    ],
)
def test_the_yarn_of_a_plain_round_behind_one_of_two_yarns_is_told(line: str, told: bool) -> None:
    """The page says nothing; she would knit on in whichever hangs nearer."""
    plan = plan_of(
        project(
            f"Cast on 24 sts.\nJoin in the round.\n*K2 MC, k2 A; rep from * to end.\n{line}\nWith MC, bind off."
        )
    )
    assert any("nothing says in which" in warning.text for warning in plan.warnings) == told


def test_the_rounds_of_a_repeat_are_told_of_once() -> None:
    """A round that was told of where it is written is the same round when it comes again."""
    rows = "Rnd 1: *K1 MC, k1 A; rep from * to end.\nRnd 2: Knit.\nRep rnds 1-2 5 times.\n"
    plan = plan_of(project(f"Cast on 24 sts.\nJoin in the round.\n{rows}With MC, bind off."))
    assert sum("nothing says in which" in warning.text for warning in plan.warnings) == 1


def test_all_contrast_yarns_are_broken_in_one_word() -> None:
    """"Break CCs" cuts each of them, and the section goes on in its own; without any it is refused."""
    work = project("Cast on 24 sts.\nJoin in the round.\nWith CC1, knit 1 round.\nBreak CCs.\nKnit 1 round.")
    both = work.replace("  A: {name: moss", "  CC1: {name: rust}\n  CC2: {name: straw}\n  A: {name: moss")
    plan = plan_of(both)
    assert [{run.yarn for run in flatten(each.phrase)} for each in plan.rounds[1:]] == [{"CC1"}, {"MC"}]
    assert plan.rounds[-1].remarks[:2] == ("break rust", "break straw")
    assert 'there is no yarn "CCs"' in faults(project("Cast on 24 sts.\nKnit 1 row.\nBreak CCs.\nKnit 1 row."))


@pytest.mark.parametrize("words", ["circular needle 3", "double-pointed needles 3", "needles 3", "size 3 needles"])
def test_a_bare_number_is_in_millimetres_where_the_file_names_that_size(words: str) -> None:
    """A page whose needles are in millimetres may leave the unit out; a size that it does not name is asked for, and one of a table goes first, told."""
    work = f"Cast on 20 sts. Join in the round.\nKnit 1 rnd.\nChange to {words}. Knit 1 rnd.\nBind off."
    listed = HEAD.replace("charts:", "needles: 3 mm, 4 mm\ncharts:")
    assert [round_.needle_mm for round_ in plan_of(project(work, head=listed)).rounds] == [4.0, 4.0, 3.0, 3.0]
    assert "does not say of which table: 3.25 mm (US) or 6.5 mm (UK)" in faults(project(work))
    both = HEAD.replace("charts:", "needles: 3 mm, 3.25 mm\ncharts:")
    assert any("is taken as US 3, 3.25 mm" in warning.text for warning in plan_of(project(work, head=both)).warnings)
