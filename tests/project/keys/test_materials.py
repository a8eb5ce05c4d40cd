"""Yarns, gauges and measurements of the outline."""

from __future__ import annotations

import pytest

from stepper.project.reader import read_project
from tests.project.samples import project

TEXT = project("Cast on 8 sts.")


def test_a_yarn_may_be_only_a_name() -> None:
    """`MC: oat` is enough to begin with."""
    found = read_project(TEXT.replace('A: {name: moss, colour: "#4f6b3a"}', "A: moss")).project
    assert found is not None
    assert (found.yarns["A"].name, found.yarns["A"].colour) == ("moss", None)


def test_both_spellings_and_both_words_are_read() -> None:
    """`color` as well as `colour`, `tension` as well as `gauge`."""
    text = TEXT.replace('A: {name: moss, colour: "', 'A: {name: moss, color: "').replace("\ngauge:", "\ntension:")
    found = read_project(text).project
    assert found is not None
    assert found.yarns["A"].colour == "#4f6b3a"
    assert found.fabrics["plain"].needle_mm == 4.0


@pytest.mark.parametrize(
    ("written", "sizes"),
    [("3.5 mm, 4 mm", (3.5, 4.0)), ("US 8 and US 6", (4.0, 5.0)), ("4 mm", (4.0,))],
)
def test_the_needles_of_a_pattern_are_listed(written: str, sizes: tuple[float, ...]) -> None:
    """By either number, in any order. Source of the US numbers: Craft Yarn Council, hooks and needles."""
    found = read_project(TEXT.replace("charts:", f"needles: {written}\ncharts:")).project
    assert found is not None
    assert found.needles_mm == sizes


@pytest.mark.parametrize("written", ["3.5 mm, 3.5 mm", "small, large", "4 mm, US 6"])
def test_needles_that_are_no_list_of_sizes_are_refused(written: str) -> None:
    """The same needle twice tells nothing about which is the smaller."""
    problems = read_project(TEXT.replace("charts:", f'needles: "{written}"\ncharts:')).problems
    assert [problem.message for problem in problems] == [f'`needles` is "{written}".']


def test_the_body_is_kept_in_millimetres() -> None:
    """Each measurement in its own unit."""
    found = read_project(TEXT.replace("charts:", "body: {bust: 88 cm, neck: 14 1/2 in}\ncharts:")).project
    assert found is not None
    assert found.body == pytest.approx({"bust": 880.0, "neck": 368.3})


def test_a_skein_may_be_in_ounces_and_yards() -> None:
    """As its label says where inches are used: 3.5 oz are 99.22 g, 220 yd are 201.17 m (international pound and yard)."""
    text = TEXT.replace("{grams: 50, metres: 120}", "{ounces: 3.5, yards: 220}")
    found = read_project(text).project
    assert found is not None
    assert found.yarns["MC"].grams == pytest.approx(99.22, abs=0.01)
    assert found.yarns["MC"].metres == pytest.approx(201.17, abs=0.01)
    mixed = read_project(TEXT.replace("{grams: 50, metres: 120}", "{grams: 50, yards: 131}")).project
    assert mixed is not None
    assert mixed.yarns["MC"].metres == pytest.approx(119.79, abs=0.01)


@pytest.mark.parametrize(
    ("skein", "told"),
    [
        ("{grams: 50, ounces: 2, metres: 120}", "grams and ounces are both given"),
        ("{ounces: 0, metres: 120}", '`ounces` is "0"'),
        ("{ounces: 2}", "no `metres`"),
        ("{ounces: 2, yrads: 120}", "yrads"),
    ],
)
def test_a_skein_that_says_too_much_or_too_little_is_told(skein: str, told: str) -> None:
    """Two weights of one skein would leave it to chance which is bought by."""
    problems = read_project(TEXT.replace("{grams: 50, metres: 120}", skein)).problems
    assert told in " ".join(f"{each.message} {each.hint}" for each in problems)


@pytest.mark.parametrize("value", ["0", "-3", "many", "1e9", "nan"])
def test_an_amount_is_a_number_above_nothing(value: str) -> None:
    """Grams, metres and stitches can be counted."""
    problems = read_project(TEXT.replace("stitches: 20, rounds: 28", f"stitches: {value}, rounds: 28")).problems
    assert "`stitches`" in problems[0].message


def test_a_weighed_swatch_and_the_longest_float_are_read() -> None:
    """Her own swatch, and her own limit by length or by stitches."""
    swatch = "needle: 4 mm, swatch: {stitches: 30, rows: 40, grams: 7.5, yarn: A}"
    text = TEXT.replace("needle: 4 mm", swatch, 1)
    project = read_project("longest_float: 1 in\n" + text).project
    assert project is not None
    found = project.fabrics["plain"].swatch
    assert found is not None
    assert (found.stitches, found.rounds, found.grams, found.yarn) == (30, 40, 7.5, "A")
    assert (project.float_mm, project.float_stitches) == (25.4, None)
    counted = read_project("longest_float: 5 sts\n" + text).project
    assert counted is not None
    assert (counted.float_mm, counted.float_stitches) == (None, 5)


def test_a_swatch_of_no_yarn_and_a_limit_that_is_none_are_told() -> None:
    """What the file says wrongly is told with what would be right."""
    swatch = "needle: 4 mm, swatch: {stitches: 30, rows: 40, grams: 7.5, yarn: Z}"
    problems = read_project("longest_float: often\n" + TEXT.replace("needle: 4 mm", swatch, 1)).problems
    told = " ".join(f"{each.message} {each.hint}" for each in problems)
    assert 'there is no yarn "Z"' in told
    assert "Write a length or a count: 2.5 cm, or 5 sts." in told


def test_a_needle_of_a_gauge_may_be_a_us_number_that_means_one_size() -> None:
    """Patterns print "US 6 needles"; where makers differ, only millimetres say which. Source: the needle table."""
    made = read_project(project("Cast on 8 sts.").replace("needle: 4 mm", "needle: US 6")).project
    assert made is not None
    assert {fabric.needle_mm for fabric in made.fabrics.values()} >= {4.0}
    unsure = read_project(project("Cast on 8 sts.").replace("needle: 4 mm", "needle: US 2"))
    assert "the same everywhere" in unsure.problems[0].message


def test_a_yarn_has_the_letter_that_its_rounds_count_it_by() -> None:
    """K and P knit and purl, and one letter is one yarn: else a round would be worked in the wrong colour."""
    lettered = {
        letter: read_project(TEXT.replace("A: {name: moss,", f"A: {{name: moss, letter: {letter},"))
        for letter in ("R", "K", "red")
    }
    found = lettered["R"].project
    assert found is not None
    assert (found.yarns["A"].letter, found.yarns["MC"].letter) == ("R", "")
    assert [bool(lettered[letter].problems) for letter in ("K", "red")] == [True, True]
    twice = TEXT.replace("A: {name: moss,", "A: {name: moss, letter: R,").replace("MC: {name: oat,", "MC: {name: oat, letter: R,")
    assert 'two yarns have the letter "R"' in read_project(twice).problems[0].message
