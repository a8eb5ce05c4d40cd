"""No bobbles, another rib, another bind-off: in lines, in charts, in one section alone."""

from __future__ import annotations

import pytest

from stepper.plan.model import Plan
from stepper.plan.under_way.respace import spread_of
from tests.invariants import broken_invariants
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import HEAD, project

BOBBLES = """\
title: Bramble cowl
sizes: S (M, L)
knit: {{size: M}}
yarn: {{MC: oat, A: moss}}
gauge:
  plain: {{needle: 4 mm, stitches: 20, rounds: 28}}
charts:
  berry:
    key: {{".": k, o: mb}}
    rows: |
      .o..
alterations:
  - {rule}
sections:
  - name: front
    work: |
      Cast on 8 sts.
      Join in the round.
      *K3, mb; rep from * to end.
      Chart berry.
      K1, (mb, k1) 3 times, k1.
  - name: back
    work: |
      *K3, mb; rep from * to end.
      Chart berry.
      Bind off.
"""


def stitches(plan: Plan, section: str) -> list[set[str]]:
    """Return the stitches of each round of a section."""
    return [{run.stitch for run in round_.runs} for round_ in plan.rounds if round_.section == section]


def test_bobbles_are_left_out_of_lines_and_charts_and_the_rounds_say_so() -> None:
    """A bobble becomes a knit stitch: one stitch used and one left (common practice)."""
    plan = plan_of(BOBBLES.format(rule="no bobbles"))
    assert broken_invariants(plan) == ()
    assert all("mb" not in each for each in stitches(plan, "front") + stitches(plan, "back"))
    altered = [round_.altered for round_ in plan.rounds]
    assert altered == [(), ("no bobbles",), ("no bobbles",), ("no bobbles",), ("no bobbles",), ("no bobbles",), ()]
    assert [round_.chart for round_ in plan.rounds if round_.chart] == ["berry", "berry"]


def test_bobbles_may_be_left_out_of_one_section_alone() -> None:
    """The same chart has its bobbles in the other."""
    plan = plan_of(BOBBLES.format(rule="no bobbles in back"))
    assert all("mb" in each for each in stitches(plan, "front")[1:])
    assert all("mb" not in each for each in stitches(plan, "back"))
    assert {round_.section for round_ in plan.rounds if round_.altered} == {"back"}


def ribbed(rule: str, work: str) -> Plan:
    """Compile a small piece with one rule."""
    return plan_of(project(work, head=HEAD.replace("sections:", f"alterations:\n  - {rule}\nsections:")))


@pytest.mark.parametrize(
    ("rule", "line", "cast_on", "instruction"),
    [
        ("k1, p1 rib instead of k2, p2", "*K2, p2; rep from * to end.", 20, "*k1, p1; rep from * to end"),
        ("k1, p1 rib", "Work in k2, p2 rib for 2 cm.", 20, "*k1, p1; rep from * to end"),
        ("k3, p3 rib instead of k2, p2", "Work in k2, p2 rib for 2 cm.", 24, "*k3, p3; rep from * to end"),
        ("k1, p1 rib instead of k2, p2", "*P2, k2; rep from * to end.", 20, "*p1, k1; rep from * to end"),
    ],
)
def test_a_rib_is_replaced_however_it_is_written(rule: str, line: str, cast_on: int, instruction: str) -> None:
    """Source: multiples of ribs in the round, check-values 6.1 and 6.3 (4, 2, 6)."""
    plan = ribbed(rule, f"Cast on {cast_on} sts.\nJoin in the round.\n{line}\nBind off.")
    assert plan.rounds[1].instruction == instruction
    assert plan.rounds[1].altered == (rule,)


ROWS = """
    Cast on 34 sts. Work flat.
    Row 1 (WS): P2, *k2, p2; rep from * to end.
    Row 2 (RS): K2, *p2, k2; rep from * to end.
    Bind off.
"""


def test_a_rib_in_rows_keeps_its_edges() -> None:
    """34 is a multiple of 4 and 2 over (2x2 flat, check-values 6.2) and of 6 and 4 over; from the wrong side a knit
    stitch is a purl one (check-values 1.7.4)."""
    plan = ribbed("k4, p2 rib instead of k2, p2", ROWS)
    assert broken_invariants(plan) == ()
    assert [round_.instruction for round_ in plan.rounds[1:3]] == [
        "p4, *k2, p4; rep from * to end",
        "k4, *p2, k4; rep from * to end",
    ]


def test_a_rib_that_its_edges_do_not_carry_is_refused_with_the_nearest_counts() -> None:
    """1x1 in rows is odd with an edge stitch, 34 is not. Source: check-values 6.3."""
    head = HEAD.replace("sections:", "alterations:\n  - k1, p1 rib instead of k2, p2\nsections:")
    told = faults(project(ROWS, head=head))
    assert "33" in told
    assert "35" in told


def test_a_rib_of_another_kind_is_left_alone() -> None:
    """The rule names k2, p2; a k1, p1 rib is not that, and the rule says it found nothing."""
    head = HEAD.replace("sections:", "alterations:\n  - k3, p3 rib instead of k2, p2\nsections:")
    text = project("Cast on 24 sts.\nJoin in the round.\nWork in k1, p1 rib for 2 cm.\nBind off.", head=head)
    assert "finds nothing to alter" in faults(text)


def test_grafted_stitches_are_not_bound_off_another_way() -> None:
    """Another bind-off is for a bind-off."""
    head = HEAD.replace("sections:", "alterations:\n  - sewn bind-off\nsections:")
    work = "Cast on 24 sts.\nJoin in the round.\nKnit 1 round.\nGraft the remaining 24 sts."
    assert "finds nothing to alter" in faults(project(work, head=head))
    plan = plan_of(project(work.replace("Graft the remaining 24 sts", "Bind off"), head=head))
    assert plan.rounds[-1].instruction == "bind off by the sewn method"
    assert spread_of(plan.rounds[-1]) is None


WITH_COUNT = """
    Cast on 20 (22, 24) sts.
    Join in the round.
    {label}: Increase 5 (5, 8) sts evenly. 25 (27, 32) sts.
    Bind off.
"""


def test_another_count_at_a_line_is_spread_and_expected_there() -> None:
    """22 to 28 instead of 27: six increases, 22 = 6 × 3 + 4; the printed sizes are checked as printed."""
    plan = ribbed("28 sts at more", WITH_COUNT.format(label="More"))
    round_ = next(each for each in plan.rounds if each.evenly)
    assert (round_.before, round_.after, len(round_.shaping)) == (22, 28, 6)
    assert round_.altered == ("28 sts at more",)
    assert broken_invariants(plan) == ()


def test_another_count_needs_a_line_that_spreads_one() -> None:
    """A labelled line that only knits has no count to change."""
    head = HEAD.replace("sections:", "alterations:\n  - 28 sts at Plain\nsections:")
    work = "Cast on 20 sts.\nJoin in the round.\nPlain: Knit 2 rounds.\nBind off."
    assert "finds nothing to alter" in faults(project(work, head=head))


def test_a_row_without_its_bobbles_is_written_as_a_plain_one() -> None:
    """ "K3, k1" eight times over would be counted out for nothing; a repeat of a chart keeps its squares."""
    plan = plan_of(BOBBLES.format(rule="no bobbles"))
    written = [round_.instruction for round_ in plan.rounds if round_.altered]
    assert written == ["knit", "chart berry, round 1: *k4; rep from * to end", "knit", "knit", "chart berry, round 1: *k4; rep from * to end"]
