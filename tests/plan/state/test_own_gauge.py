"""Lengths of garter stitch and its like. Source: common practice, garter stitch has more rows to a length."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import plan_of
from tests.project.samples import HEAD, project

GARTER = "Cast on 20 sts. Work flat.\nWork in garter stitch for 5 cm.\nBind off."


def test_a_length_of_garter_stitch_by_another_gauge_is_told() -> None:
    """By the rows of stockinette the band is too short, and nothing in the plan shows it."""
    plan = plan_of(project(GARTER))
    assert len(plan.rounds) == 16  # 5 cm at 28 rows to 10 cm, cast-on and bind-off
    assert any("rows of garter stitch are usually closer" in warning.text for warning in plan.warnings)


def test_a_gauge_of_its_own_is_used() -> None:
    """Who gives it has swatched it; 5 cm at 40 rows to 10 cm are 20."""
    head = HEAD.replace("charts:", "  garter: {{needle: 4 mm, stitches: 20, rounds: 40}}\ncharts:").replace(
        "  - name: body\n", "  - name: body\n    gauge: plain\n"
    )
    plan = plan_of(project(GARTER, head=head))
    assert len(plan.rounds) == 22
    assert not any("usually closer" in warning.text for warning in plan.warnings)


@pytest.mark.parametrize("without", ["plain", "garter"])
def test_a_gauge_without_a_needle_is_for_any(without: str) -> None:
    """Where the file names no needle for one of the two, nothing says that they are knitted on different ones."""
    head = HEAD.replace("charts:", "  garter: {{needle: 3 mm, stitches: 20, rounds: 40}}\ncharts:").replace(
        "  - name: body\n", "  - name: body\n    gauge: plain\n"
    )
    head = head.replace(
        f"  {without}: {{{{needle: {'4' if without == 'plain' else '3'} mm, ", f"  {without}: {{{{"
    )
    plan = plan_of(project(GARTER, head=head))
    assert len(plan.rounds) == 22
    assert not any("usually closer" in warning.text for warning in plan.warnings)


def test_on_another_needle_its_gauge_says_nothing() -> None:
    """A swatch on another needle is another fabric."""
    head = HEAD.replace("charts:", "  garter: {{needle: 3 mm, stitches: 24, rounds: 48}}\ncharts:").replace(
        "  - name: body\n", "  - name: body\n    gauge: plain\n"
    )
    plan = plan_of(project(GARTER, head=head))
    assert any("usually closer" in warning.text for warning in plan.warnings)


def test_rows_and_stockinette_need_no_telling() -> None:
    """A number of rows is a number of rows."""
    for work in ("Work 6 rows in garter stitch.", "Work in stockinette for 5 cm."):
        assert plan_of(project(f"Cast on 20 sts. Work flat.\n{work}\nBind off.")).warnings == ()


def test_a_length_on_a_needle_without_a_gauge_is_told_once() -> None:
    """A rib on a smaller needle has closer rows, and by those of the larger one it comes out too short."""
    rib = "Cast on 40 sts. Work flat.\nWith 3 mm needles, work in k2, p2 rib for 5 cm.\nWork in stockinette for 2 cm."
    told = [warning.text for warning in plan_of(project(f"{rib}\nBind off.")).warnings]
    assert [text for text in told if "lengths on 3 mm needles become rows" in text] == [
        "lengths on 3 mm needles become rows by the gauge of plain, which is for 4 mm: give 3 mm a gauge of its own, "
        "or measure."
    ]
    head = HEAD.replace("charts:", "  ribbed: {{needle: 3 mm, stitches: 24, rounds: 40}}\ncharts:").replace(
        "  - name: body\n", "  - name: body\n    gauge: plain\n"
    )
    plan = plan_of(project(f"{rib}\nBind off.", head=head))
    assert len(plan.rounds) == 30  # 5 cm are 20 rows and 2 cm 8, cast-on and bind-off
    assert not any("lengths on" in warning.text for warning in plan.warnings)


@pytest.mark.parametrize("rule", ["no needle change in cuff", "needle 3.5 mm instead of 4 mm in cuff"])
def test_on_her_own_needle_the_gauge_of_another_fabric_is_told(rule: str) -> None:
    """She knits on with the needle of the rib, so that a length of stockinette becomes rows by the gauge of the rib: that is
    nobody's gauge of it. Behind it the pattern's own rib on that needle is by its own gauge, and nothing is told."""
    text = (
        "title: Cuff\nsizes: one\nknit: {size: one}\nyarn: {MC: {name: reed}}\n"
        "gauge:\n  rib: {needle: 3.5 mm, stitches: 24, rounds: 32}\n"
        "  stockinette: {needle: 4 mm, stitches: 22, rounds: 28}\n"
        "alterations: [%s]\nsections:\n  - name: cuff\n    gauge: rib\n    work: |\n"
        "      Cast on 40 sts.\n      Join in the round.\n      *K1, p1; rep from * to end. Work for 5 cm.\n"
        "      Change to 4 mm needles.\n      Knit for 10 cm.\n"
        "      Change to 3.5 mm needles.\n      *K1, p1; rep from * to end. Work for 5 cm.\n      Bind off.\n"
    )
    plan = plan_of(text % rule)
    assert [warning.text for warning in plan.warnings] == [
        "the pattern has 4 mm needles here; lengths on yours become rows by the gauge of rib, which is for 3.5 mm: if that "
        "is another fabric, measure."
    ]
    assert plan_of(text % "cuff 1 cm longer").warnings == ()


def test_a_kept_needle_is_told_by_its_size_where_the_page_says_larger() -> None:
    """"Keep your needle; the pattern changes to 0 mm" was nonsense."""
    work = "Cast on 40 sts. Work flat.\nChange to larger needles.\nKnit 2 rows.\nBind off."
    head = HEAD.replace("charts:", "  ribbed: {{needle: 3 mm, stitches: 24, rounds: 40}}\ncharts:")
    text = project(work, head=head).replace("sections:", "alterations: [no needle change]\nsections:")
    assert [remark for round_ in plan_of(text).rounds for remark in round_.remarks if "keep" in remark] == [
        "keep your needle; the pattern changes to 4 mm"
    ]
