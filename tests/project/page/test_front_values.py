from __future__ import annotations

import pytest

from stepper.project.page.front_values import (
    find_gauges,
    find_needle,
    find_needles,
    find_yarns,
    in_inches,
    names_colours,
)
from tests.hanging import hung_on, needs_clock


@pytest.mark.parametrize(
    ("text", "name", "stitches", "rounds", "needle"),
    [
        ('18 sts and 24 rnds = 4" in stockinette stitch', "stockinette", 18, 24, None),
        ("22 sts and 30 rows to 10 cm over stocking stitch using 4 mm needles.", "stockinette", 22, 30, 4.0),
        ("5 sts and 7 rows = 1 inch in St st on US 7 needles", "stockinette", 20, 28, 4.5),
        ("Gauge: 12 sts & 15 rnds = 5 cm in lace", "lace", 24, 30, None),
        ("Tension.—7 sts. and 9 rows to one inch.", "plain", 28, 36, None),
        ("5½ sts. and 7½ rows to one square inch, on 4 mm needles.", "plain", 22, 30, 4.0),
        ("7 sts and 9 rows to 1 sq. inch", "plain", 28, 36, None),
        ("Tension: 6 sts. and 8 rows to the inch", "plain", 24, 32, None),
        ("21.5 stitches by 29 rounds over 10 cm", "plain", 21.5, 29, None),
        ("22 sts and 30 rounds to 4 in square in stocking stitch with the 4 mm needle.", "stockinette", 22, 30, 4.0),
        ("4 mm and 5 mm needles\n20 stitches = 4 inches in the wave pattern on the bigger needles.", "plain", 20, None, 5.0),
    ],
)
def test_a_gauge_is_brought_to_ten_centimetres(
    text: str, name: str, stitches: float, rounds: float, needle: float | None
) -> None:
    """Pages print it over one inch, two, four, five centimetres or ten. Source: common practice."""
    (found,) = find_gauges(text)
    assert (found.name, found.stitches, found.rounds, found.needle_mm) == (name, stitches, rounds, needle)


@pytest.mark.parametrize(
    "size",
    [
        "Chart A (8 sts x 5 rnds)",
        "Lace pattern: a multiple of 6 sts and 4 rows",
        "Cable panel of 14 sts and 12 rows",
        "The pattern repeats over 12 sts and 16 rows.",
        "(9 sts and 10 rows)",
    ],
)
def test_the_size_of_a_chart_or_a_repeat_is_no_gauge(size: str) -> None:
    """Of eight stitches and five rounds over ten centimetres a rib of 6 cm would be three rounds long.

    Source: common practice; a gauge is told over a length, the size of a repeat is not.
    """
    assert not find_gauges(size)
    gauge = 'Gauge: 20 sts and 26 rnds = 10 cm in stockinette on 4.5 mm'
    (found,) = find_gauges(f"{gauge}\n\n{size}\n\nNeckband")
    assert (found.stitches, found.rounds) == (20, 26)


@pytest.mark.parametrize(
    "told",
    ["22-24 sts and 30 rounds = 10 cm", "22 sts and 28-30 rounds = 10 cm", "22 to 24 sts x 30 rows = 10 cm"],
)
def test_a_gauge_of_two_numbers_is_asked_for(told: str) -> None:
    """Either may be meant, and every length of the pattern hangs on it."""
    assert not find_gauges(f"Gauge: {told}")


def test_a_gauge_behind_another_needs_no_length_of_its_own() -> None:
    """Both are over what the first one tells."""
    first, second = find_gauges("Gauge over 10 cm: 20 sts and 26 rnds in stockinette, 24 sts and 30 rnds in rib")
    assert (first.name, second.name) == ("stockinette", "rib")
    assert (second.stitches, second.rounds) == (24, 30)


@pytest.mark.parametrize(
    ("text", "stitches", "rounds", "inches"),
    [
        ("Gauge\n21 sts / 4''", 21, None, True),
        ("Tension: 23 sts = 10 cm", 23, None, False),
        ("4½ sts per inch", 18, None, True),
        ("Gauge: 5 stitches to the inch", 20, None, True),
        ("Gauge\n4.5 stitches to the inch in stockinette (the plain fabric).", 18, None, True),
        ("Knitting gauge: 18 stitches in stockinette on needle no. 4½ = 10 cm.", 18, None, False),
        ("19 sts = 4 in, 26 rows = 4 in", 19, 26, True),
        ("12 sts per 5 cm and 17 rows per 5 cm", 24, 34, False),
    ],
)
def test_stitches_over_a_length_of_their_own_are_a_gauge(
    text: str, stitches: float, rounds: float | None, inches: bool
) -> None:
    """Many pages give no rows, or each over its own length; the rows are asked for then. Source: common practice."""
    (found,) = find_gauges(text)
    assert (found.stitches, found.rounds, in_inches(text)) == (stitches, rounds, inches)


@pytest.mark.parametrize("line", ["Cast on 20 sts for 2 in", "Repeat of chart: 8 sts = 2 in", "Dec 2 sts over 4 in."])
def test_stitches_that_are_worked_are_no_gauge(line: str) -> None:
    """Every length of the plan would be wrong by it."""
    assert find_gauges(line) == ()


def test_the_gauge_after_blocking_belongs_to_the_one_before_it() -> None:
    """Both are over the same fabric."""
    (found,) = find_gauges("20 sts and 28 rnds = 10 cm in lace. After blocking: 17 sts and 24 rnds = 10 cm.")
    assert found.blocked == (17, 24)


def test_the_unit_is_that_of_the_gauge() -> None:
    """A gauge over four inches goes with lengths in inches."""
    assert in_inches('18 sts and 24 rnds = 4"; 50 cm long, 20 cm wide')
    assert not in_inches("22 sts and 30 rows = 10 cm")
    assert in_inches('12" long')


@pytest.mark.parametrize(
    "row",
    [
        "MC: 4 (5, 5) (6, 6) skeins\nCC1: 1 skein\nCC2: 1 (1, 2) (2, 2) balls",
        "Yarn: 400 m / 100 g; MC 50 g, CC1 20 g, CC2 15 g",
        "50 g MC, 20 g of CC1, 15 g of CC2",
        "MC: 50 g; CC1: 20 g; CC2 - 15 g",
    ]
)
def test_yarns_of_a_list_of_amounts_are_all_found(row: str) -> None:
    """Each letter with its grams is a yarn of its own."""
    assert [(yarn.key, yarn.name) for yarn in find_yarns([row])] == [
        ("MC", "main yarn"),
        ("CC1", "contrast 1"),
        ("CC2", "contrast 2"),
    ]


def test_a_yarn_called_by_its_letter_is_that_yarn() -> None:
    """No main yarn is made up beside it."""
    found = find_yarns(["2 skeins of wool, 50 g / 200 m, in colour A; a small amount of colour B"])
    assert [(yarn.key, yarn.name, yarn.grams, yarn.metres) for yarn in found] == [
        ("A", "colour A", 50, 200),
        ("B", "colour B", 50, 200),
    ]


def test_a_yarn_with_its_colour_behind_its_letter_is_called_by_the_colour() -> None:
    """Asked for by the letter alone it could not be told from an article; a line of the pattern names none."""
    rows = ["Colour A, peat: 300 (350) g", "Colour B, unbleached: 50 g", "Colour C, knit 4 rounds."]
    assert [(yarn.key, yarn.name) for yarn in find_yarns(rows)][:2] == [("A", "peat"), ("B", "unbleached")]
    assert "knit" not in [yarn.name for yarn in find_yarns(rows)]


def test_the_first_needle_is_found() -> None:
    """US numbers are brought to millimetres by the needle table."""
    assert find_needle("a US 7 (4.5 mm) needle") == 4.5
    assert find_needle("one pair of 3.25 mm needles") == 3.25
    assert find_needle("any needle") is None


def test_yarns_are_found_by_their_letters() -> None:
    """The lines call for them by letter; the voice says the name."""
    yarns = find_yarns(["A: slate (2 skeins); B: foam (1 skein). 50 g = 120 m"])
    assert [(yarn.key, yarn.name) for yarn in yarns] == [("A", "slate"), ("B", "foam")]
    assert (yarns[0].grams, yarns[0].metres) == (50, 120)
    (bare,) = find_yarns(["100 g / 220 yds"])
    assert (bare.key, bare.metres) == ("MC", 201)  # 220 yd are 201.2 m: the international yard is 0.9144 m


@pytest.mark.parametrize(
    ("rows", "keys"),
    [
        (["Main color: 410, (470) yds", "Contrast color: 140, (160) yds"], ["MC", "CC"]),
        (["MC: 3 skeins oat", "Contrasting shade: rust"], ["MC", "CC"]),
        (["Contrast colour 1: 50 g", "Contrast colour 2: 50 g"], ["CC1", "CC2"]),
        (["CC - Contrast color", "MC - Main color"], ["MC", "CC"]),
        (["Main (M) \u2013 130 m [255 m]", "Contrast (C) \u2013 45 m [85 m]"], ["M", "C"]),
        (["CC1: moss", "CC2: rust", "Contrast colors: two"], ["CC1", "CC2"]),
    ],
)
def test_yarns_are_found_by_what_they_do(rows: list[str], keys: list[str]) -> None:
    """The lines call them MC and CC then: common practice."""
    assert sorted(yarn.key for yarn in find_yarns(rows)) == sorted(keys)


def test_a_table_of_measurements_names_no_yarn() -> None:
    """The letters of a schematic are those of yarns too."""
    assert find_yarns(["A: 42 (46, 50) cm", "B = length 38", "Bust (C)"]) == ()
    assert find_yarns(["A pair of 4 mm needles"]) == ()


@pytest.mark.parametrize("row", ["3 skeins", "100 g", "fingering weight", "merino and silk", "400 yards"])
def test_yarn_is_what_looks_like_yarn(row: str) -> None:
    """A weight, a fibre, an amount. Source: common practice."""
    assert [yarn.key for yarn in find_yarns([row])] == ["MC"]


@pytest.mark.parametrize(
    ("text", "sizes"),
    [
        ("4 mm and 3.5 mm circular needles, 60 cm long, and dpns 3.5 mm. Gauge on 4 mm needles.", (3.5, 4.0)),
        ("US 7 (4.5 mm) and US 5 (3.75 mm) needles, a 3 mm crochet hook, markers", (3.75, 4.5)),
        ("A 5 mm circular needle", (5.0,)),
        ("4 mm and 4.5 mm circulars, 9 buttons, 15 mm. Then 12 mm beads", (4.0, 4.5)),
    ],
)
def test_every_needle_of_the_page_is_found_once(text: str, sizes: tuple[float, ...]) -> None:
    """Which is the smaller can be told only where all of them are known."""
    assert find_needles(text) == sizes


def test_a_needle_for_one_part_alone_is_none_for_the_gauge() -> None:
    """The body would be worked on the needle of its neckband."""
    assert find_needle("Needles: 3 mm circular for the neckband; 4 mm.") == 4.0
    assert find_needle("A 3.5 mm circular needle for the neckband only.") is None


def test_a_gauge_without_a_full_stop_ends_before_the_next_heading() -> None:
    """The needles listed below it are not those it is told on."""
    text = "Gauge: 20 sts and 28 rnds = 10 cm in stockinette stitch on 4.5 mm needles\nNeedles: 4 mm and 4.5 mm\n"
    (gauge,) = find_gauges(text)
    assert (gauge.stitches, gauge.rounds, gauge.needle_mm) == (20, 28, 4.5)


@needs_clock
def test_a_row_copied_a_hundred_times_is_looked_through_at_once() -> None:
    """A page copied badly: each gauge on it looked for its needle all over the page, from every letter."""
    again = "Tension: 30 sts and 42 rounds to 10 cm " * 100
    assert not hung_on([find_gauges, find_needles], again)
    assert not hung_on([find_needles], f"{again} and a 3 mm crochet hook")
    assert find_needles("4 mm needles, a 3 mm crochet hook, 5 mm dpns") == (4.0, 5.0)


def test_a_gauge_may_be_joined_by_a_plus() -> None:
    """Else the file would get one that is made up."""
    (gauge,) = find_gauges("32 sts + 44 rnds to 10cm in st st.")
    assert (gauge.stitches, gauge.rounds) == (32, 44)


def test_colours_are_known_by_the_letters_that_a_list_of_abbreviations_gives_them() -> None:
    """Leaflets of old print name the wools under materials, and their letters among the abbreviations."""
    rows = ["3 (4 : 4) ozs. Navy, 2 ozs. White, 1 oz. Rust.", "st.st., stocking stitch; N., Navy; W., White; R., Rust; ins., inches."]
    assert [(each.key, each.name) for each in find_yarns(rows)] == [("N", "navy"), ("W", "white"), ("R", "rust")]
    assert names_colours(rows[1])
    assert not names_colours("L., left; R., right; st., stitch.")
    sides = ["2 balls of oat wool", "L., Left; R., Right."]
    assert [each.key for each in find_yarns(sides)] == ["MC"]
