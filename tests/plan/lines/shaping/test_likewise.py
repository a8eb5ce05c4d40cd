"""Shaping that goes on "in this manner". Source: crowns and toes, common practice; counts by hand."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

CROWN = "Cast on 40 sts.\nJoin in the round.\nRnd 1: *K8, k2tog; rep from * around.\nRnd 2: Knit.\n"
LESS = "working 1 st less between decreases on each following dec round"


def counts(work: str) -> list[int]:
    """Give the stitches after each round."""
    return [round_.after for round_ in plan_of(project(work)).rounds]


def test_each_round_has_a_stitch_less_between_its_decreases() -> None:
    """By hand: four decreases a round, 40 to 36 to 32 to 28, a plain round between as before."""
    assert counts(f"{CROWN}Continue in this manner, {LESS}, until 28 sts rem.\n")[1:] == [36, 36, 32, 32, 28]


def test_the_last_round_of_all_has_none_between() -> None:
    """By hand: k7 … k1 and then k2tog four times: eight rounds, 36 - 8 x 4 = 4."""
    made = counts(f"{CROWN}Continue decreasing every round, working 1 st less between decreases each time, until 4 sts rem.\n")
    assert made[-8:] == [32, 28, 24, 20, 16, 12, 8, 4]


def test_past_the_last_stitch_between_nothing_is_made_up() -> None:
    """Twelve such rounds would need fewer than no stitches between."""
    text = faults(project(f"{CROWN}Rnd 3: *K1, k2tog; rep from * around.\nContinue in this manner, {LESS}, until 2 sts rem.\n"))
    assert "between" in text


@pytest.mark.parametrize(
    "line",
    [
        "Continue decreasing in this manner every 2nd round until 24 sts remain.",
        "Dec 1 st each side of each marker every 2nd round until 24 sts remain.",
    ],
)
def test_a_manner_that_the_page_does_not_show_is_refused(line: str) -> None:
    """One round of "k8, k2tog" may be followed by another of it, or by "k7, k2tog"."""
    assert "error" in faults(project(CROWN + line))


def test_a_round_that_shapes_at_markers_goes_on_as_it_stands() -> None:
    """By hand: 4 stitches less each time, 24, 20, 16, the round since counted."""
    work = (
        "Cast on 24 sts.\nJoin in the round.\nK12, pm, k12.\n"
        "Rnd 1: *K1, ssk, k to 3 sts before marker, k2tog, k1, sm; rep from * to end.\nRnd 2: Knit.\n"
        "Continue decreasing in this manner every 2nd round until 12 sts remain.\n"
    )
    assert counts(work)[2:] == [20, 20, 16, 16, 12]


@pytest.mark.parametrize(("size", "rounds"), [("S", 2), ("M", 4), ("L", 6)])
def test_each_size_comes_closer_by_its_own_stitches(size: str, rounds: int) -> None:
    """The largest goes on where the smallest has no stitches left between its decreases. Worked by hand: 12, 16 and 20
    stitches come to 8 in one, two and three shaped rounds, each behind a plain one."""
    work = (
        "Cast on 20 (24, 28) sts.\nJoin in the round.\nRnd 1: *K3 (4, 5), k2tog; rep from * to end.\nRnd 2: Knit.\n"
        "Rnd 3: *K2 (3, 4), k2tog; rep from * to end. 12 (16, 20) sts.\nCont to dec in this way on every alt round until 8 sts rem.\n"
    )
    assert len(plan_of(project(f"{work}Bind off. ", size=size)).rounds) == 1 + 3 + rounds + 1


def test_decreasing_in_this_manner_comes_closer_at_the_intervals_shown() -> None:
    """By hand: k8, k7, then k6 … k1 and k2tog alone, every other round: eight less each time from 80 to 8."""
    shown = (
        "Cast on 80 sts.\nJoin in the round.\nNext rnd: *K8, k2tog; rep from * around.\nKnit 1 round.\n"
        "Next rnd: *K7, k2tog; rep from * around.\nKnit 1 round.\n"
    )
    work = f"{shown}Continue decreasing in this manner until 8 sts rem.\n"
    assert counts(work)[1:] == [72, 72, 64, 64, 56, 56, 48, 48, 40, 40, 32, 32, 24, 24, 16, 16, 8]
    assert any("one such round in every 2" in one.text for one in plan_of(project(work)).warnings)


def test_decreasing_in_this_manner_goes_on_at_the_edges_as_shown() -> None:
    """By hand: 24 to 22, two rows between, and so every third round to 16."""
    work = (
        "Cast on 24 sts.\nJoin in the round.\nKnit 2 rounds.\nNext rnd: K1, ssk, k to last 3 sts, k2tog, k1.\n"
        "Knit 2 rounds.\nContinue decreasing in this manner until 16 sts rem.\n"
    )
    assert counts(work)[2:] == [24, 22, 22, 22, 20, 20, 20, 18, 18, 18, 16]


@pytest.mark.parametrize("between", ["", "Knit 1 round.\n"])
def test_one_spread_round_shows_no_manner(between: str) -> None:
    """Behind a single "k8, k2tog" nobody can tell whether k7 or k8 comes next."""
    shown = f"Cast on 80 sts.\nJoin in the round.\nNext rnd: *K8, k2tog; rep from * around.\n{between}"
    assert "error" in faults(project(f"{shown}Continue decreasing in this manner until 8 sts rem.\n"))


def test_the_rounds_between_are_those_shown() -> None:
    """A crown on the purl side is purled between its decreases; knitted rounds there would be ridges.

    By hand: 24, 21, 18, then p4 and p3 with a purled round before each.
    """
    work = (
        "Cast on 24 sts.\nJoin in the round.\nNext rnd: *P6, p2tog; rep from * around.\nPurl 1 round.\n"
        "Next rnd: *P5, p2tog; rep from * around.\nPurl 1 round.\nContinue decreasing in this manner until 12 sts rem.\n"
    )
    rounds = [each.instruction for each in plan_of(project(work)).rounds]
    assert rounds[-3:] == ["*p4, p2tog; rep from * to end", "purl", "*p3, p2tog; rep from * to end"]


@pytest.mark.parametrize("rem", [10, 61])
def test_a_count_that_the_manner_does_not_come_to_is_refused(rem: int) -> None:
    """From 64 it goes by eight: neither 10 nor 61 is among what it leaves."""
    shown = "Cast on 80 sts.\nJoin in the round.\nNext rnd: *K8, k2tog; rep from * around.\nNext rnd: *K7, k2tog; rep from * around.\n"
    assert "never leaves" in faults(project(f"{shown}Continue decreasing in this manner until {rem} sts rem.\n"))


def test_each_side_of_the_marker_is_worked_as_the_section_shows_it() -> None:
    """Two stitches in, as the round before is; one that shapes elsewhere in the row shows nothing of it."""
    shaped = "Inc 1 st each side of marker on the 4th and every foll 4th round until there are 46 sts."
    shown = "Cast on 40 sts.\nJoin in the round.\nKnit 1 round.\nNext rnd: K2, m1l, k to last 2 sts, m1r, k2.\n"
    work = plan_of(project(f"{shown}{shaped}\n"))
    assert [[run.stitch for run in one.phrase] for one in work.rounds if one.after > one.before > 0] == [["k", "m1l", "k", "m1r", "k"]] * 3
    elsewhere = "Cast on 40 sts. Work flat.\nK20, pm, k20.\nNext row: K1, m1, k to last st, m1, k1.\n"
    assert "is not worked beside the marker" in faults(project(f"{elsewhere}{shaped.replace('round', 'row')}\n"))
