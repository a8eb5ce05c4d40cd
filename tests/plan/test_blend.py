"""Which size where: every pair, the blended round, and why a pair cannot be knitted."""

from __future__ import annotations

from pathlib import Path

from stepper.plan.blend import blends, switch_labels, tried
from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan
from stepper.project.model import Project
from stepper.project.reader import read_project
from stepper.report.fit_lines import describe_spacing
from tests.invariants import broken_invariants
from tests.project.samples import project as project_text

SWITCHBACK = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"


def switchback() -> Project:
    """Read the sample."""
    project = read_project(SWITCHBACK.read_text(encoding="utf-8")).project
    assert project is not None
    return project


def test_the_blend_of_the_scenario() -> None:
    """Size 4, then 2 from the final increase: 225 to 246, 15 gaps of 11 and 6 of 10.

    Source: 225 = 21 × 10 + 15, whole-number division.
    """
    blend = tried(switchback(), 3, 1, "Final increase")
    assert (blend.before, blend.after, blend.gaps) == (225, 246, ((11, 15), (10, 6)))


def test_every_pair_is_tried_once_at_every_line_that_can_carry_it() -> None:
    """Six sizes alone, and 6 × 5 pairs at each of three lines."""
    project = switchback()
    assert switch_labels(project) == ("First increase", "Second increase", "Final increase")
    found = [(each.size, each.then, each.label) for each in blends(project)]
    assert len(found) == len(set(found)) == 6 + 3 * 30


def test_a_rejected_pair_says_why_with_its_numbers() -> None:
    """Size 6 has 255 stitches where size 1 wants 228: an increase line cannot do that."""
    blend = tried(switchback(), 5, 0, "Final increase")
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
    """Give before, after and the changes of every evenly spread round."""
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
    assert describe_spacing(tried(project, 1, 0, "More")) == "24 as they are"


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


def test_a_blend_that_a_later_chart_does_not_carry_offers_the_nearest_counts_with_their_cost() -> None:
    """22 stitches and 6 more are 28, a multiple of 4; 22 and 4 more are 26: 24 or 28 would do, 1 cm each at 20 to 10 cm."""
    work = """
        Cast on 20 (22, 24) sts.
        Join in the round.
        More: Increase 4 (6, 8) sts evenly.
        Chart peak.
        Bind off.
    """
    project = read_project(project_text(work)).project
    assert project is not None
    blend = tried(project, 1, 0, "More")
    assert not blend.works
    assert 'chart "peak" has 4 stitches and does not divide 26' in blend.why_not
    assert "24 is 2 fewer, 1 cm narrower; 28 is 2 more, 1 cm wider." in blend.why_not
