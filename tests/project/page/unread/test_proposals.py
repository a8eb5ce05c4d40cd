"""What the words of an unread row say of it. All rows are invented."""

from __future__ import annotations

import time

import pytest

from stepper.project.page.unread.proposals import Kept, one_list, printed_change, printed_count, propose
from tests.tables import each_row


@each_row(
    ("words", "kept"),
    [
        ("Twirl the yarn over k2 across, as drawn.", Kept.ROWS),
        ("Rnd 4: P2, loop, p2.", Kept.ROWS),
        ("(Show it to her! That is half the fun.)", Kept.NOTE),
        ("You now have 96 (100, 104) sts.", Kept.NOTE),
        ("Join the shoulders.", Kept.NOTE),
        ('Corrections: in version 1 there stood "8 times" at row 3.', Kept.NOTE),
        ("Inc row.", Kept.NOTE),
        ("Count: 296 (308) sts; each sleeve 62 (66), the rest in loops.", Kept.NOTE),
        ("Size 1 skips this phase.", Kept.NOTE),
        ("Place BOR m at the centre of the first underarm cast-on, i.e. after its 4th (5th) st.", Kept.NOTE),
        ("Place marker, k10, loops to end.", Kept.ROWS),
        ("Go on over these 18 sts for the left side as follows:—", Kept.NOTE),
        ("Bind off loosely, in the rib.", Kept.BIND_OFF),
        ("Graft the sts tog, see the drawing.", Kept.BIND_OFF),
        ("Cut the yarn, draw the end through rem sts twice.", Kept.BIND_OFF),
        ("Bind off 4 sts at each end, as drawn.", Kept.ROWS),
        ("Next row: k10, place next 12 sts on a holder for thumb, twirl to end.", Kept.HOLD),
        ("Cut the yarn with a long tail, thread it on the needle and run it through all 8 sts twice, slipping them off.", Kept.BIND_OFF),
        ("Break the yarn and draw it through them.", Kept.BIND_OFF),
        ("Weave in the ends and run them through the sts on the inside.", Kept.NOTE),
        ("Divide them up however you like and join, being careful not to twist.", Kept.NOTE),
        ("The slit: instead of going around, turn at the end. Go to and fro like this until the slit is 2 in tall.", Kept.ROWS),
        ("Break yarn, leave.", Kept.NOTE),
        ("Leave first sleeve on its spare needle.", Kept.NOTE),
        ("Leave these on a needle, twirl 4.", Kept.ROWS),
        ("Join without twisting, PM for BOR (the one and only!).", Kept.ROWS),
        ("Join, you know how.", Kept.ROWS),
        ("Join the sleeve seam, you know how.", Kept.NOTE),
        ("Lay the palm together. Graft the sts tog as drawn.", Kept.SPLIT),
    ],
)
def test_what_a_row_may_be_goes_by_its_words(words: str, kept: Kept) -> None:
    """She presses Enter where it is right, so it has to be right mostly."""
    assert propose(words).kept is kept


@pytest.mark.parametrize(
    ("words", "kept", "moved"),
    [
        ("With the fuzzy yarn cast on 84 (88) (92, 96) sts in twos.", Kept.CAST_ON, "84 (88, 92, 96)"),
        ("Begin softly and cast on 44 / 46 / 48 / 50 sts.", Kept.CAST_ON, "44 (46, 48, 50)"),
        ("Cast on softly 88-92-98-102 stitches.", Kept.CAST_ON, "88 (92, 98, 102)"),
        ("Cast on 168 (180) 192 (208) 228 stitches in fuzz.", Kept.CAST_ON, "168 (180, 192, 208, 228)"),
        ("With RS facing pick up and k31 along the hem, 31 sts in twos.", Kept.PICK_UP, "31"),
        ("Pick up 16 sts down the front, 12 sts along the back and 16 sts up. 44 sts.", Kept.PICK_UP, "44"),
        ("Pick up 16 sts down the front, then pick up 16 sts up.", Kept.PICK_UP, ""),
        ("Work as the other one, k the loops.", Kept.ANEW, ""),
        ("Row 4: loops.", Kept.ROWS, ""),
        ("Bind off as you like.", Kept.NOTE, ""),
    ],
)
def test_on_empty_needles_something_comes_first(words: str, kept: Kept, moved: str) -> None:
    """Rows in own words would have nothing to be worked on; two numbers picked up are not added up for her."""
    found = propose(words, empty=True)
    assert (found.kept, found.moved) == (kept, moved)


def test_a_count_without_brackets_is_that_of_every_size() -> None:
    """The last number of "34 / 36 / 38 / 38 sts" is the largest size's, and would be kept for the smallest."""
    assert propose("34 / 36 / 38 / 38 sts remain, twirled.").count == "34 (36, 38, 38)"
    assert propose("Twirl. 116-123-131-138 sts.").count == "116 (123, 131, 138)"
    assert propose("Twirl.", behind="60/64/68 sts.").count == "60 (64, 68)"
    assert propose("Slip next 12 / 14 / 16 sts to a holder, twirl.").moved == "12 (14, 16)"


def test_each_part_that_goes_on_hold_is_proposed_with_its_name() -> None:
    """The names are needed when they come back."""
    words = "K30, place next 54 (58, 60) sts on waste yarn for first sleeve, twirl 70, slip 54 (58, 60) sts to a holder. 120 (124, 130) sts."
    found = propose(words)
    assert (found.kept, found.count) == (Kept.HOLD, "120 (124, 130)")
    assert found.moved == "54 (58, 60) for first sleeve; 54 (58, 60)"


@each_row(
    ("words", "rows"),
    [
        ("Twirl for the next 3 rows.", "3"),
        ("Work Rnds 1–9 of the loops, over 6 sts each.", "9"),
        ("Work 4 (5, 6) rows in loops.", "4 (5, 6)"),
        ("Work in loops for two rounds.", "2"),
        ("Rep the last 2 loop rows 1 (2) (3) more times.", "2 (4, 6)"),
        ("Rep these four rows twice.", "8"),
        ("Rnds 8–12: loops as drawn.", "5"),
        ("3rd row. K, loop.", "1"),
        ("Twirl until piece measures 8 (9, 9½) in from the cast-on edge, as drawn.", "until piece measures 8 (9, 9½) in from the cast-on edge"),
        ("Twirl until the work measures 8 [9] ins. from the top of the ribbing, or to the wrist.", "until piece measures 8 [9] ins from the top of the ribbing"),
        ("Twirl until the armhole measures 20 cm.", "until armhole measures 20 cm"),
        ("Every round is Round 1. Go on as the ribs lie until the hat is 8 (9, 10) inches tall.", "until hat measures 8 (9, 10) inches"),
        ("Loops for 7 cm more.", "for 7 cm"),
        ('Keep going to 12.5 (13, 13.5)" from underarm.', 'until piece measures 12.5 (13, 13.5)" from underarm'),
        ("Twirl all across.", "1"),
    ],
)
def test_how_many_rows_is_proposed_where_the_words_say_it(words: str, rows: str) -> None:
    """Also how long: measured as the words have it, since from elsewhere it would be another length."""
    assert propose(words).rows == rows


@pytest.mark.parametrize(
    "words",
    [
        "Twirl until it measures 19 cm from the last row of loops.",  # a place that nobody knows
        "Dec in loops on next 4 rows, then on the 3 foll alt rows.",
        "Dec at each end of the next 5 rows and then at each end of every RS row 4 times.",
        "Purl one row and twirl one row.",
        "Small starts here: *k8, k2tog* around. 72 sts. Knit 1 round.",
        "Continue in loops as far as you like.",
        "Twirl until 12 loops are left.",
    ],
)
def test_where_they_do_not_say_it_nothing_is_proposed(words: str) -> None:
    """A 1 that Enter takes would leave rows out of the garment."""
    assert propose(words).rows == ""


@pytest.mark.parametrize(
    ("words", "count"),
    [
        ("Lift the loops across. 96 (100, 104) sts.", "96 (100, 104)"),
        ("Lift the loops across – 96 (100) (104) body sts.", "96 (100, 104)"),
        ("Lift the loops across—14 (16, 18) sts total.", "14 (16, 18)"),
        ("Lift the loops across—12 sts rem for all sizes.", "12"),
        ("Lift the loops (92 sts.).", "92"),
        ("Twirl until 60 (64) 68 (72) 76 sts rem.", "60 (64, 68, 72, 76)"),
        ("Twirl off two by two until 53 (55:59) sts rem, as drawn.", "53 (55, 59)"),
        ("Lift 96 loops across.", ""),
        ("Twirl until 3 sts remain before the marker, lift, k1.", ""),
        ("Twirl until 8 sts are left on each needle.", ""),
        ("Lift 12 sts of the loops and go on.", ""),
    ],
)
def test_the_count_printed_behind_a_row_is_proposed(words: str, count: str) -> None:
    """A number in its midst may be of a part of the row."""
    assert printed_count(words) == count


def test_the_count_may_stand_alone_in_the_row_behind() -> None:
    """Pages print it there where the row is long."""
    assert propose("Lift the loops across.", behind="96 (100) sts.").count == "96 (100)"
    assert propose("Lift the loops across.", behind="K 96 sts.").count == ""


def test_stitches_gained_or_lost_are_proposed_without_a_count() -> None:
    """The page prints the one or the other."""
    assert printed_change("Lift off by twos—4 sts dec’d.") == "4 sts dec'd"
    assert propose("Lift off by twos. 2 (4) sts inc'd.").change == "2 (4) sts inc'd"
    assert propose("Lift off by twos. 96 sts.").change == ""


def test_a_list_in_several_brackets_becomes_one() -> None:
    """The file has one pair of brackets."""
    assert (one_list("88 (92, 96) (100)"), one_list("7"), one_list("53 [55:59]")) == ("88 (92, 96, 100)", "7", "53 (55, 59)")


@pytest.mark.parametrize("words", ["( 1 " * 20_000, "place " * 20_000, "until " * 20_000, "k1, " * 20_000, "1 (1) " * 9_000])
def test_a_long_row_takes_no_time(words: str) -> None:
    """A page may hold anything."""
    began = time.perf_counter()
    propose(words)
    assert time.perf_counter() - began < 2
