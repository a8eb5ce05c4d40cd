"""Which size where: every pair, the blended round, and why a pair cannot be knitted."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

import pytest

from stepper.plan.blend import Blend, blends, try_sizes
from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan
from stepper.project.model import Project
from stepper.project.reader import read_project
from stepper.report.fit.lines import describe_spacing
from tests.fixtures import project_of
from tests.invariants import broken_invariants
from tests.project.samples import project as project_text

SWITCHBACK = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"


def switchback() -> Project:
    """Read the sample."""
    return project_of(SWITCHBACK)


@lru_cache(maxsize=1)
def tried_blends() -> tuple[Blend, ...]:
    """Try every pair of sizes of the sample, once for all tests: what she measures and wishes changes none of it."""
    return tuple(blends(switchback()))


def test_the_blend_of_the_scenario() -> None:
    """Size 4, then 2 from the final increase: 225 to 246, 15 gaps of 11 and 6 of 10.

    Source: 225 = 21 × 10 + 15, whole-number division.
    """
    blend = try_sizes(switchback(), 3, 1, "Final increase")
    assert (blend.before, blend.after, blend.gaps) == (225, 246, ((11, 15), (10, 6)))


def test_a_size_alone_has_no_blended_round() -> None:
    """Its rounds are looked through from the first on, and no stitches are told of a switch."""
    blend = try_sizes(switchback(), 3, 3, "")
    assert (blend.works, blend.at, blend.before, blend.after, blend.gaps) == (True, 0, 0, 0, ())


def test_every_pair_is_tried_once_at_every_line_that_can_carry_it() -> None:
    """Six sizes alone, and 6 × 5 pairs at each of three lines."""
    project = switchback()
    found = [(each.size, each.then, each.label) for each in blends(project)]
    assert {label for _, _, label in found} == {"", "First increase", "Second increase", "Final increase"}
    assert len(found) == len(set(found)) == 6 + 3 * 30


def test_a_rejected_pair_says_why_with_its_numbers() -> None:
    """Size 6 has 255 stitches where size 1 wants 228: an increase line cannot do that."""
    blend = try_sizes(switchback(), 5, 0, "Final increase")
    assert not blend.works
    assert blend.rounds == ()
    assert "228" in blend.why_not
    assert "255" in blend.why_not


def blended(size: str, *then: str) -> Plan:
    """Compile the sample begun in a size, with its switches in the file's own words."""
    text = SWITCHBACK.read_text(encoding="utf-8").replace("  size: 4\n", f"  size: {size}\n", 1)
    old = "    - {from: Final increase, size: 2}\n"
    assert old in text
    project = read_project(text.replace(old, "".join(f"    - {each}\n" for each in then))).project
    assert project is not None
    compiled = compile_plan(project)
    assert compiled.plan is not None, compiled.problems
    assert broken_invariants(compiled.plan) == ()
    return compiled.plan


def counts(plan: Plan) -> list[tuple[int, int, int]]:
    """Return before, after and the changes of every evenly spread round."""
    return [(each.before, each.after, len(each.shaping)) for each in plan.rounds if each.evenly]


def test_several_switches_in_one_garment() -> None:
    """Size 4, size 2 from the second increase, size 5 from the last: every round starts from what is really there.

    Source: the sample's own counts; 150 to 195 is 45, 195 to 312 is 117.
    """
    plan = blended("4", "{from: Second increase, size: 2}", "{from: Final increase, size: 5}")
    assert counts(plan) == [(100, 150, 50), (150, 195, 45), (195, 312, 117)]
    assert [each.size for each in plan.rounds if each.evenly] == ["4", "2", "5"]


def test_a_blended_round_may_have_more_or_fewer_increases_than_either_size_prints() -> None:
    """Size 2 prints 51 increases there, size 5 prints 72; from 2 to 5 it takes 117, from 5 to 2 six."""
    printed = [counts(blended(size, f"{{from: Final increase, size: {size}}}"))[2][2] for size in ("2", "5")]
    assert printed == [51, 72]
    assert counts(blended("2", "{from: Final increase, size: 5}"))[2] == (195, 312, 117)
    assert counts(blended("5", "{from: Final increase, size: 2}"))[2] == (240, 246, 6)


def test_a_blended_round_may_have_no_increase_at_all() -> None:
    """Where the two sizes meet in one count, the round is knitted plain and says so."""
    text = project_text("Cast on 20 (24, 30) sts.\nJoin in the round.\nMore: Increase evenly to 24 (30, 36) sts.")
    project = read_project(text.replace("knit: {size: M}", "knit: {size: M, then: [{from: More, size: S}]}")).project
    assert project is not None
    plan = compile_plan(project).plan
    assert plan is not None
    assert counts(plan) == [(24, 24, 0)]
    assert any("nothing to increase" in warning.text for warning in plan.warnings)
    assert describe_spacing(try_sizes(project, 1, 0, "More")) == "24 as they are"


def test_a_blended_round_may_decrease_where_she_allows_it() -> None:
    """255 to 228: 27 decreases, 201 stitches left plain between them = 27 × 7 + 12."""
    plan = blended("6", "{from: Final increase, size: 1, reshape: yes}")
    assert counts(plan)[2] == (255, 228, 27)


def test_a_switch_is_offered_at_a_plain_line_only_where_the_counts_meet() -> None:
    """A labelled line that spreads nothing can change sizes where both come to it with the same stitches."""
    work = """
        Cast on 20 (20, 24) sts.
        Join in the round.
        Plain part: Knit 4 (6, 8) rounds.
        Bind off.
    """
    project = read_project(project_text(work)).project
    assert project is not None
    found = {(each.size, each.then) for each in blends(project) if each.label == "Plain part"}
    assert found == {("S", "M"), ("M", "S")}


def test_a_line_that_changes_by_an_amount_reaches_the_count_that_a_later_chart_divides() -> None:
    """S alone goes from 20 to 24, a multiple of the chart's 4; M comes with 22, so it takes 2 and not 4."""
    work = """
        Cast on 20 (22, 24) sts.
        Join in the round.
        More: Increase 4 (6, 8) sts evenly.
        Chart peak.
        Bind off.
    """
    project = read_project(project_text(work)).project
    assert project is not None
    blend = try_sizes(project, 1, 0, "More")
    assert (blend.why_not, blend.before, blend.after) == ("", 22, 24)


@pytest.mark.parametrize(
    ("line", "size", "then", "counts"),
    [
        # Source: the page itself; S, M and L alone come to these counts.
        ("Inc: Knit, inc 8 (10, 12) sts evenly. 48 (54, 60) sts.", 0, 2, (40, 60)),
        ("Inc: Knit, inc 8 (10, 12) sts evenly.", 2, 1, (48, 54)),
        ("Inc: *K4, m1; rep from * to last 0 (4, 0) sts, k to end. 50 (54, 60) sts.", 0, 1, (40, 54)),
        ("Inc: *K3, kfb; rep from * to end. 50 (55, 60) sts.", 0, 2, (40, 60)),
        ("Dec: Knit, dec 8 (8, 10) sts evenly. 32 (36, 38) sts.", 2, 0, (48, 32)),
        ("Dec: *K2, ssk; rep from * to end. 30 (33, 36) sts.", 1, 0, (44, 30)),
    ],
)
def test_a_line_blends_by_whatever_words_it_changes_evenly(
    line: str, size: int, then: int, counts: tuple[int, int]
) -> None:
    """By an amount, with a count or without, and written out between stars, up and down."""
    work = f"Cast on 40 (44, 48) sts.\nJoin in the round.\n{line}\nKnit 2 rounds."
    project = read_project(project_text(work)).project
    assert project is not None
    blend = try_sizes(project, size, then, line.split(":")[0])
    assert (blend.why_not, blend.before, blend.after) == ("", *counts)
    listed = {(each.size, each.then) for each in blends(project) if each.label}
    assert (blend.size, blend.then) in listed


def test_why_a_line_cannot_carry_a_switch_is_told_with_those_that_can() -> None:
    """She is sent to a line that works, not left with two counts that differ."""
    work = """
        Cast on 40 (44, 48) sts.
        Join in the round.
        Body: Knit 10 rounds.
        Waist: K1, k2tog, k to last 3 sts, ssk, k1. 38 (42, 46) sts.
        Flare: Knit, inc 8 (8, 10) sts evenly. 46 (50, 56) sts.
    """
    project = read_project(project_text(work)).project
    assert project is not None
    body, waist = (try_sizes(project, 0, 1, label).why_not for label in ("Body", "Waist"))
    assert '"Body" begins with 44 stitches in size M, 40 are on the needles, and it changes no stitches.' in body
    assert "its shaping stands at places of its own" in waist
    assert 'A size can be switched at "Flare".' in body
    assert 'A size can be switched at "Flare".' in waist


def test_where_sizes_cannot_be_switched_nobody_is_told_to_knit_the_rest_there() -> None:
    """The stitches that are left over are of the other size: knitted to the end they would be in the wrong places."""
    work = """
        Cast on 40 (44, 48) sts.
        Join in the round.
        Flare: Knit, inc 8 (8, 10) sts evenly. 48 (52, 58) sts.
        Parts: K10 (12, 14), hold 14 (14, 15) for pocket, cast on 14 (14, 15), k24 (26, 29).
    """
    text = project_text(work).replace("knit: {size: M}", "knit: {size: M, then: [{from: Parts, size: S}]}")
    project = read_project(text).project
    assert project is not None
    told = compile_plan(project).problems
    assert len(told) == 1
    assert "4 are left over" in told[0].message
    assert "k to end" not in told[0].hint
    assert 'A size can be switched at "Flare".' in told[0].hint


def test_a_file_kept_for_one_size_has_nothing_to_blend() -> None:
    """The counts of the others are not known."""
    text = project_text("Cast on 40 (44, 48) sts.\nJoin in the round.\nFirst: Increase evenly to 50 (54, 58) sts.")
    project = read_project(text.replace("size: M", "size: M, only: M")).project
    assert project is not None
    assert [(each.size, each.then, each.label) for each in blends(project)] == [("M", "M", "")]
