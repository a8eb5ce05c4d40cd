"""What keeps anything from being proposed for an unread row. All rows are invented."""

from __future__ import annotations

import time

import pytest

from stepper.project.page.unread.doubts import (
    is_doubtful_end,
    is_doubtful_note,
    is_doubtful_pick_up,
    is_headed,
    is_measured,
    may_be_worked,
    may_change,
    names_several,
    orders_row,
)
from tests.tables import each_row


@each_row(
    ("words", "doubtful"),
    [
        ("Show it to her.", False),
        ("Sew the seams with a blunt needle.", False),
        ("Phase 1.", False),
        ("Nothing more to do until the skirt is 9 in.", True),
        ("Tie in the wool at the far edge and work the same.", True),
        ("Patch 2: PUK 18 along patch 1.", True),
        ("3d row.--Like first.", True),
        ("Rd 13 as 9, 15 as 7.", True),
        ("Set the pattern so:", True),
        ("Fan 8, Rope 6, Fan 8, Moss 4.", True),
        ("The left strap alike.", True),
        ("Twirl second strap as first strap.", True),
        ("8 [9, 10] times.", True),
        ("When it is 4 cm long dec 2 at the seam.", True),
        ("From here all is st st.", True),
        ("Twirl each pair over the thumb.", True),
        ("front, 1 st at the point (a thread there!), 21 (22, 23) sts up the other side.", True),
        ("*", True),
    ],
)
def test_a_row_that_may_order_something_is_no_remark(words: str, doubtful: bool) -> None:
    """A remark is knitted by nobody: the body of a jumper was lost so."""
    assert is_doubtful_note(words) is doubtful


@each_row(
    ("words", "ordered"),
    [
        ("Knit all round.", True),
        ("Change to the thin needles and rib to end.", True),
        ("Back: k straight on.", True),
        ("Set-up rnd: as drawn.", True),
        ("Twirl k2 in loops.", True),
        ("*K2, twirl; rep from * to end.", True),
        ("Go on like that for a while.", True),
        ("SEPARATE", False),
        ("k2tog once on the last rnd (= 36 sts).", False),
        ("Put a thread at the beginning.", False),
        ("The front carries a panel.", False),
        ("set lace", False),
        ("Now it measures 27 / 30 / 33 cm.", False),
        ("In the last of them decrease 8 sts.", False),
        ("Hat: go on, so.", False),
        ("Rnd 1 of the fans, take 8.", False),
        ("Begin the rnd at the back.", False),
        ("If you like purl it.", False),
        ("Better: knit them in.", False),
        ("N1: k1, m1, k to end.", False),
        ("Work on the last 6 sts.", False),
        ("2nd row. (Right side).", False),
        ("Lift 30 along the edge, work the 9 of the gusset.", False),
        ("The reader wrote that k 7 was k 9.", False),
    ],
)
def test_a_row_is_proposed_only_for_an_order_to_knit(words: str, ordered: bool) -> None:
    """Talk taken for a round shifts all that is counted behind it."""
    assert orders_row(words) is ordered


def test_a_count_behind_words_makes_a_row_of_them() -> None:
    """Not of a count alone, nor of a sentence that only tells."""
    assert orders_row("Knot them by twos.", counted=True)
    assert not orders_row("Total.", counted=True)
    assert not orders_row("You have them all now.", counted=True)


def test_a_head_is_one_only_with_what_is_worked() -> None:
    """Its stitches may stand in the row below, which is another row then."""
    assert is_headed("Next rnd: loops.")
    assert is_headed("2d row.--Purl.")
    assert not is_headed("1st row. (Right side).")
    assert not is_headed("Continue from row 1. Go on.")


@each_row(
    ("words", "several"),
    [
        ("Rd 13 as 9, 15 as 7.", True),
        ("5th row: loops. 6th row: loops.", True),
        ("Row 3 and all WS: loops.", True),
        ("Next rnd: loops. Next rnd, knots.", True),
        ("5th row: loops.", False),
    ],
)
def test_several_rows_are_no_one_row(words: str, several: bool) -> None:
    """All but the first would be left out."""
    assert names_several(words) is several


@each_row(
    ("words", "changes"),
    [
        ("Twirl all across.", False),
        ("*K2, yo, k2tog, loop; rep from *.", False),
        ("K1, *yo, k3, sl 1, k2tog, psso, k3, yo, k1; rep from *.", False),
        ("K1, * o, k 3, sl 1, n, pass the slipped stitch over, k 3, o, k 1; repeat.", False),
        ("K. 2 tog., w.fwd., K. 1, w.fwd., s.k.p.o.", False),
        ("With needles No. 2 and yarn N. knit one row.", False),
        ("Twirl, P. 2, K. 15.", False),
        ("Yo twice, k2tog, loop.", True),
        ("K2tog, loops.", True),
        ("*K2tog, k1*, yo, loop.", True),
        ("K1, o, k2t, o, k2. (8)", True),
        ("K8, s2kp, k8. → 17", True),
        ("* K 5, n; repeat. Fifty-four.", True),
        ("* K 5, n, o; repeat, leaving fifty-four.", True),
        ("Knit 3, knit 2 together, repeat; six narrowings.", True),
        ("Loops, then 38-44-50.", False),
        ("Loops to end. 38-44-50.", True),
        ("Knit 2, make one, knit to end.", True),
        ("Rib, with a buttonhole.", True),
        ("Like first.", True),
        ("Repeat until 2 sts are left.", True),
    ],
)
def test_the_number_stays_only_where_nothing_changes_it(words: str, changes: bool) -> None:
    """Lace takes in each stretch what it adds; a number printed behind a row is most likely its count."""
    assert may_change(words) is changes


def test_an_end_in_part_and_stitches_that_come_back_are_asked_about() -> None:
    """All the stitches would be bound off, and those that waited picked up as new ones."""
    assert is_doubtful_end("Cast off all border sts.")
    assert is_doubtful_end("Bind off the shoulders.")
    assert not is_doubtful_end("Cut the yarn, thread it through the last sts.")
    assert is_doubtful_pick_up("Take the 9 from the string and pick up 5.")
    assert not is_doubtful_pick_up("Pick up 5 along the edge.")


@each_row(
    ("words", "worked"),
    [
        ("Make a ring, or cast on 6 sts. as you like.", True),
        ("PART I 1st round: o, k1, o.", True),
        ("Ten rounds form the pattern.", True),
        ("Each round is to be worked 4 times.", True),
        ("And the moss, 2 sts. and 2 rds.: 1st rd. 1 M., 1 W.", True),
        ("3 mm needles; 6 buttons; a stitch-holder.", False),
        ("k2tog knit 2 together, ssk slip, slip, knit", False),
    ],
)
def test_text_in_front_that_casts_on_is_no_comment(words: str, worked: bool) -> None:
    """Three quarters of a shawl were buried by one key."""
    assert may_be_worked(words) is worked


def test_inches_are_told_from_the_word_in() -> None:
    """ "K2 in loops" measures nothing."""
    assert not is_measured("Twirl k2 in loops.")
    assert is_measured("until it is 8 (9, 9½) in from the edge")
    assert is_measured("4 [4½, 5] ins. long")


@pytest.mark.parametrize("words", ["( 1 ", "a, 1, ", "cast on ", "take a a ", "k1, ", "1 (1) ", "until 1 ", "aa: "])
def test_a_long_row_takes_no_time(words: str) -> None:
    """A page may hold anything."""
    long, began = words * (2000 // len(words)), time.perf_counter()
    for asks in (is_doubtful_note, orders_row, names_several, may_change, may_be_worked, is_doubtful_end, is_measured):
        asks(long)
    assert time.perf_counter() - began < 2
