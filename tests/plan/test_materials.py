"""Loops, stocks and the float limit as they follow from the file."""

from __future__ import annotations

import pytest

from stepper.plan.materials import Materials, float_limit, materials_of
from stepper.project.model import Project
from stepper.project.reader import read_project
from tests.project.samples import project

TEXT = project("Cast on 8 sts.")


def read(text: str) -> Project:
    """Read a text that has no problem."""
    found = read_project(text).project
    assert found is not None
    return found


def with_swatch(swatch: str) -> Materials:
    """Return the materials of a file with a weighed swatch and a second gauge."""
    text = TEXT.replace("needle: 4 mm", f"needle: 4 mm, swatch: {{{swatch}}}", 1)
    text = text.replace("\ncharts:", "\n  tight: {needle: 3 mm, stitches: 26, rounds: 36}\ncharts:", 1)
    return materials_of(read(text))


def test_a_yarn_without_a_skein_has_no_stock() -> None:
    """Nothing is made up about a yarn the file says nothing of."""
    stocks = materials_of(read(TEXT)).stocks
    assert set(stocks) == {"MC"}
    assert stocks["MC"].metres == 360


def test_a_loop_is_read_from_both_states() -> None:
    """20 x 28 as knitted by Munden's dry constants, 20 x 27 blocked by the wet ones; 6 heights by the rule of area."""
    loop = materials_of(read(TEXT)).loops["plain"]
    assert loop.both_states
    assert loop.as_knitted_mm == pytest.approx((3.8 * 5.0 * 5 * 100 / 28) ** 0.5)
    assert loop.washed_mm == pytest.approx((4.1 * 5.3 * 5 * 100 / 27) ** 0.5)
    assert loop.by_rule_mm == pytest.approx(6 * 100 / 27)
    assert loop.length.low_mm < loop.as_knitted_mm < loop.length.likely_mm < loop.washed_mm < loop.length.high_mm


def test_a_weighed_swatch_gives_the_loop_of_her_own_hand() -> None:
    """10 g of 120 m to 50 g are 24 m; 30 stitches by 38 rows and two edges are 1,200 loops of 20 mm."""
    materials = with_swatch("stitches: 30, rounds: 38, grams: 10")
    loop = materials.loops["plain"]
    assert loop.weighed
    assert loop.length.likely_mm == pytest.approx(20.0)
    assert loop.length.high_mm / 20.0 - 1 == pytest.approx(0.03 + 0.5 / 10)


def test_a_swatch_corrects_the_other_fabrics_in_its_proportion_with_less_certainty() -> None:
    """A hand that knits one fabric tighter than the constants knits the other so, too (an assumption)."""
    materials = with_swatch("stitches: 30, rounds: 38, grams: 10")
    tight = materials.loops["tight"]
    assert not tight.weighed
    unweighed = ((100 / 26) * (100 / 36)) ** 0.5
    assert tight.length.likely_mm == pytest.approx(20.0 * unweighed / (5 * 100 / 28) ** 0.5)
    assert tight.length.high_mm / tight.length.likely_mm > 1.08


def test_a_swatch_in_a_yarn_without_a_skein_says_nothing() -> None:
    """Grams become metres by the label alone."""
    materials = with_swatch("stitches: 30, rounds: 38, grams: 10, yarn: A")
    assert not materials.loops["plain"].weighed


@pytest.mark.parametrize(
    ("line", "expected"),
    [
        ("", (5, 25.0)),
        ("longest_float: 1 in\n", (5, 25.4)),
        ("longest_float: 6 sts\n", (6, 0.0)),
        ("longest_float: 3.5 cm\n", (7, 35.0)),
        ("longest_float: 1 mm\n", (1, 1.0)),
    ],
)
def test_the_longest_float_by_length_or_by_stitches(line: str, expected: tuple[int, float]) -> None:
    """Stitches of 5 mm: 2.5 cm are exactly five (check-values 5.4 and 5.6: an inch, by gauge)."""
    found = read(line + TEXT)
    assert float_limit(found, found.fabrics["plain"]) == expected


def test_a_section_without_a_gauge_goes_by_the_first_of_the_file() -> None:
    """One gauge is the rule in small files, and nobody names it."""
    materials = materials_of(read(TEXT))
    assert materials.loop("") is materials.loops["plain"]
    assert materials.loop("plain") is materials.loops["plain"]
    assert Materials().loop("") is None


def test_a_float_is_measured_in_the_fabric_it_lies_in() -> None:
    """An inch is 5 stitches at 20 to 10 cm (5 mm each), and 6 at 26 (3.85 mm each)."""
    tight = TEXT.replace("\ncharts:", "\n  tight: {needle: 3 mm, stitches: 26, rounds: 36}\ncharts:", 1)
    found = read(tight)
    assert float_limit(found, found.fabrics["plain"])[0] == 5
    assert float_limit(found, found.fabrics["tight"])[0] == 6
