"""Alterations applied to the plan, marked there, and kept apart from what the pattern prints."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan
from stepper.project.reader import read_project
from tests.invariants import broken_invariants
from tests.plan.test_compile import plan_of
from tests.project.samples import project

SWITCHBACK = (Path(__file__).parents[1] / "fixtures" / "switchback.yaml").read_text(encoding="utf-8")
RULES = "alterations:                     # what the knitter does differently, as rules or in her own words\n"


def planned(rule: str = "", *, knit: str = "") -> Plan | str:
    """Compile the sample with one more rule; the problems where there are any."""
    text = SWITCHBACK.replace(RULES, f"{RULES}  - {rule}\n") if rule else SWITCHBACK
    if knit:
        text = text.replace("  size: 4\n", f"  size: {knit}\n", 1)
    reading = read_project(text)
    if reading.project is None:
        return reading.problems[0].message
    compiled = compile_plan(reading.project)
    if compiled.plan is None:
        return " ".join(f"{problem.message} {problem.hint}" for problem in compiled.problems)
    assert broken_invariants(compiled.plan) == ()
    return compiled.plan


def rounds_of(plan: Plan | str, section: str) -> int:
    """Count the rounds of a section."""
    assert isinstance(plan, Plan), plan
    return sum(round_.section == section for round_ in plan.rounds)


@pytest.mark.parametrize(
    ("rule", "section", "more"),
    [
        ("body 4 cm longer", "body", 12),  # 30 rounds to 10 cm: 4 cm are 12 rounds
        ("body 4 cm shorter", "body", -12),
        ("sleeves 6 rounds longer", "left sleeve", 6),
        ("sleeves 6 rounds longer", "right sleeve", 6),
        ("sleeves 6 rounds longer", "body", 0),
    ],
)
def test_longer_and_shorter_change_the_rounds_of_their_section_alone(
    rule: str, section: str, more: int
) -> None:
    """Source: rounds per length, the gauge of the sample (30 rounds to 10 cm)."""
    assert rounds_of(planned(rule), section) == rounds_of(planned(), section) + more


def test_an_altered_round_says_so_and_the_others_do_not() -> None:
    """What is hers and what is printed stay apart."""
    plan = planned("body 4 cm longer")
    assert isinstance(plan, Plan)
    altered = {round_.section for round_ in plan.rounds if round_.altered}
    assert altered == {"body"}
    assert {words for round_ in plan.rounds for words in round_.altered} == {"body 4 cm longer"}


def test_another_rib_replaces_the_printed_one() -> None:
    """80 to 112 stitches take k1, p1 as they take k2, p2. Source: 2x2 rib takes a multiple of 4
    (check-values 6.1), 1x1 of 2 (6.3)."""
    plan = planned("k1, p1 rib instead of k2, p2 in neckband")
    assert isinstance(plan, Plan)
    ribs = {round_.instruction for round_ in plan.rounds if round_.section == "neckband" and round_.before}
    assert ribs == {"*k1, p1; rep from * to end"}


def test_a_rib_that_does_not_divide_is_refused_with_the_numbers() -> None:
    """108 to 100 stitches: 3x3 rib takes a multiple of 6. Source: check-values 6.3."""
    assert "100" in str(planned("k3, p3 rib in neckband"))


def test_another_bind_off_is_said_in_its_section_alone() -> None:
    """The sleeves keep the printed one."""
    plan = planned("sewn bind-off in body")
    assert isinstance(plan, Plan)
    ends = [round_ for round_ in plan.rounds if round_.after == 0 and round_.before]
    manners = {(end.section, end.instruction) for end in ends}
    assert ("body", "bind off by the sewn method") in manners
    assert ("left sleeve", "bind off stretchily") in manners


def test_another_size_for_one_section_uses_its_numbers_there() -> None:
    """The cast-on is size 3's; a section whose counts do not meet the next is refused with both counts."""
    plan = planned("size 4 in body")
    assert isinstance(plan, Plan)
    sizes = {(round_.section, round_.size) for round_ in plan.rounds}
    assert ("body", "4") in sizes
    assert ("left sleeve", "2") in sizes


def test_a_part_in_another_size_that_is_no_wider_for_it_is_told_so() -> None:
    """She asked for another body, and would get another length alone.

    Source: the counts that the sample prints behind its divide, 164 in size 2 and 192 in size 4.
    """
    plan = planned("size 4 in body")
    assert isinstance(plan, Plan)
    told = next(each.text for each in plan.warnings if each.text.startswith("size 4 in body: "))
    assert "as wide as the 164 stitches that come to it; that size has 192." in told
    assert "A size can be switched at " in told
    without = planned()
    assert isinstance(without, Plan)
    assert not [each for each in without.warnings if "as wide as" in each.text]


def test_a_length_that_leaves_nothing_is_refused() -> None:
    """A stretch of 32 cm cannot become 40 cm shorter."""
    assert "finds nothing to alter" in str(planned("body 40 cm shorter"))


def test_a_decrease_at_an_increase_line_is_refused_unless_the_file_allows_it() -> None:
    """Size 6 has 255 stitches before the final increase, size 1 wants 228.

    Source: the counts of the sample; 27 decreases, whole-number division.
    """
    blend = SWITCHBACK.replace("size: 4\n", "size: 6\n", 1).replace("size: 2}", "size: 1}")
    reading = read_project(blend)
    assert reading.project is not None
    plain = compile_plan(reading.project)
    assert any("reshape: yes" in problem.hint for problem in plain.problems)
    allowed = read_project(blend.replace("size: 1}", "size: 1, reshape: yes}"))
    assert allowed.project is not None
    plan = compile_plan(allowed.project).plan
    assert plan is not None
    (final,) = [round_ for round_ in plan.rounds if round_.label == "Final increase"]
    assert (final.before, final.after, len(final.shaping)) == (255, 228, 27)


@pytest.mark.parametrize(("rule", "more"), [("body 4 cm longer", 11), ("body 4 cm shorter", -11), ("body 4 rounds longer", 4)])
def test_a_stretch_of_so_many_rounds_is_altered_by_the_rounds_of_a_length(rule: str, more: int) -> None:
    """28 rounds to 10 cm: 4 cm are 11.2. The longest stretch is altered, and the printed short ones stay."""
    text = project("Cast on 40 sts.\nJoin in the round.\nPurl 2 rounds.\nKnit 20 rounds.\nPurl 2 rounds.\nBind off.", sizes="one", size="one")
    altered = plan_of(text.replace("sections:", f"alterations: [{rule}]\nsections:"))
    assert [each.instruction for each in altered.rounds[1:-1]] == ["purl"] * 2 + ["knit"] * (20 + more) + ["purl"] * 2
