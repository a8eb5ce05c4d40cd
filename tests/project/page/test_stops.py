from __future__ import annotations

import pytest

from stepper.project.page.stops import begins_row, goes_on, is_broken_at, sentences_of, stands_in_stops
from tests.tables import each_row


@pytest.mark.parametrize(
    ("text", "sentences"),
    [
        ("Knit 2 rows. Purl 1 row.", ["Knit 2 rows.", "Purl 1 row."]),
        ("1st rnd: *P3. C4B. K6. Rep from * around. 112 sts.", ["1st rnd: *P3. C4B. K6. Rep from * around. 112 sts."]),
        ("P3. C4B. K6.", ["P3. C4B. K6."]),
        ("1st row: K. 2nd row: P. Rep these 2 rows.", ["1st row: K.", "2nd row: P.", "Rep these 2 rows."]),
        ("Work in St. St. for 5 cm. Next row: K.", ["Work in St. St. for 5 cm.", "Next row: K."]),
        ("With No. 10 needles cast on 98 sts. Knit.", ["With No. 10 needles cast on 98 sts.", "Knit."]),
        ("1st rnd: *P3. K6. Rep from * around. 2nd rnd: K.", ["1st rnd: *P3. K6. Rep from * around.", "2nd rnd: K."]),
        ("Needle, 16 in. (40.5 cm) long", ["Needle, 16 in. (40.5 cm) long"]),
        ("Work for 16 in. (40 sts) remain.", ["Work for 16 in.", "(40 sts) remain."]),
        ("B. Now work 4 rows. C. Cast off.", ["B. Now work 4 rows.", "C. Cast off."]),
        ("Pick up an even number. 5 rnds k1, p1 rib.", ["Pick up an even number.", "5 rnds k1, p1 rib."]),
        ("K2, p2. Knit 4 rows. C4F.", ["K2, p2.", "Knit 4 rows.", "C4F."]),
        ("Row 1. K. * 1 B, 5 F; rep. from *.", ["Row 1. K. * 1 B, 5 F; rep. from *."]),
        ("Row 1: P. 3 C, 2 M. Row 2: K.", ["Row 1: P. 3 C, 2 M.", "Row 2: K."]),
        ("On these 12 sts. K. 20 rows.", ["On these 12 sts. K. 20 rows."]),
        ("On the last 12 sts. Row 1: K.", ["On the last 12 sts.", "Row 1: K."]),
    ],
)  # fmt: skip
def test_a_full_stop_between_stitches_ends_no_sentence(text: str, sentences: list[str]) -> None:
    """A line for each stitch would be a round for each."""
    assert sentences_of(text) == sentences


def test_the_style_is_seen() -> None:
    """A line in it is only taken whole."""
    assert stands_in_stops("1st rnd: *P3. C4B.")
    assert not stands_in_stops("K to end. 40 sts.")


@each_row(
    ("row", "below", "on"),
    [
        ("Cast on 40 sts. Join", "in the round.", True),
        ("Next rnd:", "knit to end.", True),
        ("Sleeves:", "cuff: knit 10 rounds.", False),
        ("Body:", "Cast on 80 sts.", False),
        ("K20", "(22, 24), pm, k to end.", True),
        ("cast on 120 sts and knit", "12 rows.", True),
        ("3rd rnd: *P3. K4.", "K6. Rep from * around.", True),
        ("Cont. in st.st., ending with a p.", "row.", True),
        ("Cast off 4 sts. Dec. 1 st.", "each end of next row.", True),
        ("there are 73 sts. Cont.", "straight until sleeve measures 40 cm.", True),
        ("every alt. row until 34 (36 : 36) sts.", "remain. Cast off 4 sts.", True),
        ("edge of buttonhole rib, 16 sts.", "down side of neck, k. the 12 sts.", True),
        ("cast on 34 (36 : 36) sts.", "knit 5 rows.", False),
        ("2nd row: P.", "1 row more.", False),
        ("cast on 40 sts.", "knit 5 rows.", False),
        ("until work measures 30 cm from beg.", "k 5 rows.", False),
        ("Knit 2 rows.", "Purl 1 row.", False),
        ("Main part", "Row 1 (RS): Knit.", False),
        ("k2, p2", "", False),
        ("10 cm in stockinette on 3.5 mm", "needles", True),
        ("K to end", "BODY", False),
        ("Work in rib for 6 rows.", "Inc 8 sts evenly across the last row.", True),
        ("Work in rib for 6 rows.", "Inc 8 sts evenly across the next row.", False),
        ("Now place markers while you knit 1 rnd:", "K10 (sleeve), pm, k28 (front).", True),
    ],
)
def test_a_sentence_is_followed_over_its_rows(row: str, below: str, on: bool) -> None:
    """A PDF breaks its rows anywhere."""
    assert goes_on(row, below) is on


def test_needles_in_rows_of_their_own_are_one_round() -> None:
    """A round each would be knitted as many times as there are needles."""
    assert goes_on("Needle 1: K to last 3 sts, k2tog, k1.", "Needle 2: K1, ssk, k to end.")
    assert goes_on("Dec round:", "Needle 1: K to last 3 sts, k2tog, k1.")
    assert goes_on("Needles 1 and 3: 5 sts each", "Needles 2 and 4: 6 sts each")
    assert not goes_on("Needle 2: K1, ssk, k to end.", "Needle 1: K to last 3 sts, k2tog, k1.")
    assert not goes_on("Knit 3 rounds.", "Needle 1: K to last 3 sts, k2tog, k1.")


def test_a_repeat_behind_a_full_stop_belongs_to_its_star() -> None:
    """Cut off, neither half could be read; a star in front of whole rows is a mark of another kind."""
    starred = "1st row: (Wrong side) * K 3, p 1. Repeat from * to 7 sts from end of row, k 7."
    assert sentences_of(starred) == [starred]
    assert len(sentences_of("*Knit 4 rows. Repeat from * 3 times more.")) == 2


def test_steps_and_lists_are_followed_into_the_row_below() -> None:
    """The numbers alone, or half a list, would be no line."""
    assert goes_on("alt row as folls:", "5 (5: 6) sts 3 (2: 1) times, then")
    assert goes_on("23: 26)cm, 6 (7: 8)in, 50 (58:", "66: 72) rows total.")
    assert not goes_on("Work as follows:", "Knit 4 rows.")
    assert goes_on("Next rd.: 1st needle: K to last 3 sts, K2 tog., K1. 3rd needle:", "K1, sl.1, K1, p.s.s.o., K to end.")


def test_a_broken_row_is_seen() -> None:
    """What follows one is no page number."""
    assert is_broken_at("K to last")
    assert not is_broken_at("K to end.")
    assert begins_row("Next row (RS): K2.")
    assert not begins_row("Knit.")


def test_a_change_spread_over_a_plain_row_stays_with_its_head() -> None:
    """Cut off, it would be a row of its own."""
    whole = "Row 8: Purl. Decrease 6 sts evenly across row."
    assert sentences_of(f"{whole} Work 4 rows.") == [whole, "Work 4 rows."]


def test_both_halves_of_a_foot_in_rows_of_their_own_are_one_round() -> None:
    """A half each would be knitted over the whole round."""
    assert goes_on("Instep: Work in pattern.", "Sole: Knit.")
    assert goes_on("Rnd 1: Sole: K1, ssk, k to last 3 sts, k2tog, k1.", "Instep: K1, ssk, k to end.")
    assert not goes_on("Instep: Work in pattern.", "Instep: Knit.")
    assert not goes_on("Knit 4 rounds.", "Sole: Knit.")


def test_how_a_row_begins_is_no_sentence_of_its_own() -> None:
    """Cut off behind "beg." the stitch it begins with was a row of one stitch."""
    assert sentences_of("Work in K.1, P.1 rib for 1¼ in., 1st row beg. K.1. Change to No. 10 needles.") == [
        "Work in K.1, P.1 rib for 1¼ in., 1st row beg. K.1.",
        "Change to No. 10 needles.",
    ]
