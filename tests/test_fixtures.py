"""Every garment the tests rest on is whole: each printed size can be knitted to its last stitch."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

import pytest

from stepper.craft.stitches import Kind, stitch
from stepper.language.phrasing import say_round
from stepper.plan.compile import compile_plan
from tests.fixtures import SAMPLES, compile_in_size, plan_in_size, plan_named, plans_of, project_of
from tests.invariants import broken_invariants


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_every_size_keeps_the_invariants_to_the_last_stitch(path: Path) -> None:
    """No size of a sample loses a stitch, and none is left on a needle or a holder at the end."""
    for plan in plans_of(path):
        assert broken_invariants(plan) == ()
        assert plan.rounds[-1].after == 0
        assert plan.rounds[-1].held == {}


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_every_round_can_be_read_and_said(path: Path) -> None:
    """A round without words would leave the knitter sitting there."""
    plan = plan_in_size(path)
    for round_ in plan.rounds:
        assert round_.instruction
        assert re.fullmatch(r"[a-z ,;:'-]+", say_round(round_, plan)), say_round(round_, plan)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_every_stitch_cast_on_is_bound_off(path: Path) -> None:
    """What comes to the needles, by the stitch table of the Craft Yarn Council, leaves them again."""
    for plan in plans_of(path):
        gained = sum(run.leaves - run.uses for round_ in plan.rounds for run in round_.runs)
        assert gained == 0


def test_a_size_alone_is_what_it_is_among_the_others() -> None:
    """Else the tests would rest on other garments than those that are knitted."""
    for path in SAMPLES:
        if path.stem in ("hat", "mittens"):
            project = replace(project_of(path), switches=())
            for size in range(len(project.sizes)):
                assert compile_in_size(project, size).plan == compile_plan(replace(project, size=size)).plan


def test_the_shawl_grows_by_four_on_every_right_side_row() -> None:
    """A triangular shawl grows at both edges and on both sides of its middle stitch. Source: common practice."""
    plan = plan_named("shawl")
    rows = [round_ for round_ in plan.rounds if round_.section == "shawl"][9:]
    assert {round_.after - round_.before for round_ in rows if round_.side == "RS"} == {4}
    assert {round_.after - round_.before for round_ in rows if round_.side == "WS"} == {0}
    assert rows[-1].after == 137


def test_the_heel_of_the_sock_loses_no_stitch_and_says_every_turn() -> None:
    """Short rows turn sixteen times each way in size M, and all sixty stitches stay. Source: common practice."""
    heel = [round_ for round_ in plan_named("socks").rounds if round_.section == "first heel"]
    turned = [round_ for round_ in heel if any(run.stitch == "turn" for run in round_.runs)]
    assert {round_.before for round_ in heel} == {round_.after for round_ in heel} == {60}
    worked = [
        sum(run.uses for run in round_.runs if stitch(run.stitch).kind is Kind.PLAIN) for round_ in turned
    ]
    assert worked == [29, 28, *range(27, 9, -1), *range(11, 29)]
    assert [round_.side for round_ in turned] == ["RS", "WS"] * (len(turned) // 2)
    assert not heel[0].flat


def test_the_raglan_grows_by_eight_on_every_right_side_row() -> None:
    """Four lines of two stitches: eight a shaping row. Source: check-values 4.2.2."""
    yoke = [round_ for round_ in plan_named("cardigan").rounds if round_.section == "yoke"]
    shaped = [round_ for round_ in yoke if round_.after - round_.before == 8]
    assert len(shaped) == 24
    assert {round_.side for round_ in shaped} == {"RS"}
    assert {len(round_.markers) for round_ in shaped} == {4}


def test_the_thumb_waits_and_comes_back() -> None:
    """The gusset is put on hold at the opening and worked after the hand."""
    plan = plan_named("mittens")
    held = [round_.held for round_ in plan.rounds if round_.section == "right hand"]
    assert held[0] == {}
    assert held[-1] == {"right thumb": 15}
    back = next(round_ for round_ in plan.rounds if round_.section == "right thumb")
    assert (back.after, back.held) == (15, {})


def test_the_crown_of_the_hat_ends_in_eight() -> None:
    """Eight sections of one stitch each are drawn together. Source: common practice."""
    crown = [round_ for round_ in plan_named("hat").rounds if round_.section == "crown"]
    assert crown[-1].before == 8
    assert crown[-1].instruction.startswith("draw the yarn through the 8 sts")
    assert {round_.before - round_.after for round_ in crown[:-1]} == {0, 8}


def test_a_plain_row_of_the_shawl_s_chart_is_said_as_one_stretch() -> None:
    """Edge, repeat and edge of a plain chart row are knitted alike; three numbers in a row would have to be added."""
    plan = plan_named("shawl")
    for round_ in plan.rounds:
        assert not re.search(r"\bk\d+, k\d+\b(?!tog)", round_.instruction), round_.instruction


def test_a_new_yarn_is_named_once() -> None:
    """"With clover. Round 1: in clover, knit all sixty" would be the same thing twice."""
    plan = plan_named("socks")
    heel = next(round_ for round_ in plan.rounds if round_.section == "first heel")
    assert "with clover" in heel.remarks
    assert say_round(heel, plan) == "knit all sixty"
