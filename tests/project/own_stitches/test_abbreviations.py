"""Abbreviations of a page, kept and put into rows."""

from __future__ import annotations

import pytest

from stepper.project.own_stitches.abbreviations import Abbreviations
from stepper.project.problems import Span
from tests.tables import each_row

PLACE = Span(line=1, column=1)


def defined(**meanings: str) -> Abbreviations:
    """Define some."""
    made = Abbreviations()
    for name, words in meanings.items():
        assert made.define(name, words, PLACE) is None
    return made


@each_row(
    ("row", "read"),
    [
        ("Row 1: SE, k to last st, se.", "Row 1: sl 1 wyif, k to last st, sl 1 wyif."),
        ("Rnd 2: *T2; rep from * to end.", "Rnd 2: *k2tog, yo; rep from * to end."),
        ("Rnd 2: T2 to last 4 sts, k4.", "Rnd 2: (k2tog, yo) to last 4 sts, k4."),
        ("Rnd 2: K1, T2 3 times, k to end.", "Rnd 2: K1, (k2tog, yo) 3 times, k to end."),
        ("Rnd 2: Work T2 over next 2 sts, k to end.", "Rnd 2: k2tog, yo, k to end."),
        ("Rnd 2: Work T2 over next 4 sts, k to end.", "Rnd 2: k2tog, yo over next 4 sts, k to end."),
        ("Rnd 2: K1, T2 (2 times), SE (2 times), k4.", "Rnd 2: K1, (k2tog, yo) 2 times, sl 2 wyif, k4."),
        ("T2 rnd: K1, T2, k to end.", "T2 rnd: K1, k2tog, yo, k to end."),
        ("Work T2 rnd once.", "Work T2 rnd once."),
        ("Row 1: SET2, T21, T2/3, k to end.", "Row 1: SET2, T21, T2/3, k to end."),
        ("Row 1: K2, M1, k to end.", "Row 1: K2, kfb, k to end."),
        ("Row 1: K2, M1, k to end. (1 st M1'd; 21 sts M1)", "Row 1: K2, kfb, k to end. (1 st M1'd; 21 sts M1)"),
        ("Row 1: K2, M1L, k to end.", "Row 1: K2, M1L, k to end."),
    ],
)
def test_stitches_stand_in_place_of_an_abbreviation(row: str, read: str) -> None:
    """Names of rows, longer words and stretches of another width are left alone, to be refused as they are."""
    own = defined(SE="slip 1 purlwise with yarn in front", T2="k2tog, yo", M1="kfb")
    made = own.put(row)
    assert made.text == read
    assert len(made.places) == len(made.text) + 1
    assert all(0 <= at <= len(row) for at in made.places)


def test_every_letter_keeps_its_printed_place() -> None:
    """A problem stands under what is printed."""
    row = "Row 1: SE, k to lsat st."
    made = defined(SE="slip 1 purlwise with yarn in front").put(row)
    assert made.place(made.text.index("lsat"), 4) == (row.index("lsat"), 4)


def test_the_usual_meaning_is_not_kept() -> None:
    """A list of every usual abbreviation would be told line by line."""
    own = defined(K2tog="knit 2 stitches together", MB="(k1, yo, k1) in next st, turn, p3, turn, k3tog",
                  C4F="slip 2 sts to cn and hold in front, k2, k2 from cn", SSK="slip 1, k1, psso")  # fmt: skip
    assert own.known == {}


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("ssk", "slip, slip, knit"),
        ("SSK", "slip, slip, knit (left leaning)"),
        ("ssp", "slip, slip, purl"),
        ("sssk", "slip, slip, slip, knit"),
        ("ssk", "slip 1, slip 1, k2tog tbl"),
        ("ssk", "sl 2 sts, knit 2 together"),
    ],
)
def test_a_decrease_told_by_its_letters_is_a_decrease(name: str, words: str) -> None:
    """Two slipped stitches and a knitted one would be three stitches worked where two become one: common practice."""
    assert defined(**{name: words}).put(f"Row 1: K2, {name}, k to end.").text == f"Row 1: K2, {name}, k to end."


def test_letters_with_numbers_and_places_keep_their_meaning() -> None:
    """`k2`, "k to end" and "knit 4 rounds" are read everywhere as knit."""
    own = Abbreviations()
    problem = own.define("K", "knit through the back loop", PLACE)
    assert problem is not None
    assert "k1 tbl" in problem.message
    assert own.known == {}


def test_the_stitch_of_a_short_row_keeps_its_meaning() -> None:
    """A page explains at length how a double stitch is drawn up; the rows know it."""
    made = defined(MDS="make double stitch: slip 1 st purlwise, pull the yarn up so that the st looks like two legs")
    assert made.put("Row 2: MDS, p to end.").text == "Row 2: MDS, p to end."
    assert made.used("Row 2: MDS, p to end.") == []
    assert defined(MDS="make a deep scallop").used("Row 2: MDS, p to end.")


def test_inc_is_a_stitch_only_where_one_is_worked() -> None:
    """ "Inc 1 st at each end" says where, and not which."""
    own = defined(inc="purl into front and back of st")
    assert own.put("Row 2: P2, inc, p to end.").text == "Row 2: P2, pfb, p to end."
    for row in ("Row 2: Inc 1 st at each end.", "Inc 8 sts evenly.", "inc. evenly to 40 sts."):
        assert own.put(row).text == row
        assert own.used(row) == []


def test_one_meaning_may_use_another() -> None:
    """The list explains from the top down."""
    own = defined(SF="slip 1 purlwise with yarn in front", ED="SF, k1")
    assert own.put("Row 1: ED, k to end.").text == "Row 1: sl 1 wyif, k1, k to end."


def test_the_key_of_a_chart_has_single_stitches() -> None:
    """A square is one stitch."""
    own = defined(SE="slip 1 purlwise with yarn in front", T2="k2tog, yo", KW="wrap twice")
    assert own.single() == {"SE": "sl wyif"}


def test_a_needle_by_its_number_is_no_abbreviation() -> None:
    """The rows know N1; a list that says what lies on it tells nothing of how a stitch is worked."""
    made = defined(N1="needle 1 (instep)", N2="needle 2 (heel/sole)", N3="needle 1")
    assert set(made.known) == {"N3"}
