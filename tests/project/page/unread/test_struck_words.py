"""Words that a row may be read without: which may be struck, and which never. All rows are invented."""

from __future__ import annotations

import pytest

from stepper.project.page.unread.struck_words import Struck, ways_to_strike
from stepper.project.reading.wording import reads


def read_without(row: str) -> list[Struck]:
    """Return the ways to strike words with which a row is read."""
    return [way for way in ways_to_strike(row) if reads(way.text)]


@pytest.mark.parametrize(
    ("row", "text", "words"),
    [
        (
            "Knit until thumb measures 5 cm, or ½ cm less than you want it.",
            "Knit until thumb measures 5 cm.",
            "or ½ cm less than you want it",
        ),
        ("Bind off in rib, not like a tight drum.", "Bind off in rib.", "not like a tight drum"),
        ("Knit 4 rounds (see the drawing of the ears).", "Knit 4 rounds.", "see the drawing of the ears"),
        (
            "Work in garter st, without any shaping, until armhole measures 8 cm.",
            "Work in garter st until armhole measures 8 cm.",
            "without any shaping",
        ),
        ("Purl 1 row, which looks like a small wall.", "Purl 1 row.", "which looks like a small wall"),
    ],
)
def test_what_is_only_told_beside_a_row_may_be_struck(row: str, text: str, words: str) -> None:
    """The row is read without it, and the words are hers to be said."""
    first = read_without(row)[0]
    assert (first.text, first.words, first.told) == (text, words, True)
    assert row[first.start : first.end] == words


@pytest.mark.parametrize(
    ("row", "text", "words"),
    [
        ("To Slope the Shoulders.--Cast off 7 sts.", "Cast off 7 sts.", "To Slope the Shoulders"),
        ("For the neck: Knit 4 rows.", "Knit 4 rows.", "For the neck"),
        ("Cast on 8 sts, thorn method.", "Cast on 8 sts.", "thorn method"),
    ],
)
def test_what_is_set_off_by_its_place_may_be_struck(row: str, text: str, words: str) -> None:
    """For which shaping a row is, how it is cast on; that it changes nothing has to be said."""
    (way,) = (way for way in ways_to_strike(row) if way.text == text)
    assert (way.words, way.told) == (words, False)
    assert row[way.start : way.end] == words


@pytest.mark.parametrize(
    ("row", "text", "words"),
    [
        ("Knit 4 rounds in white, sort of. 44 sts.", "Knit 4 rounds in white. 44 sts.", "sort of"),
        ("Work 4 rounds in garter st like a drummer.", "Work 4 rounds in garter st.", "like a drummer"),
    ],
)
def test_a_phrase_that_orders_nothing_may_be_struck(row: str, text: str, words: str) -> None:
    """A likeness, or words that are known to order nothing."""
    assert (text, words, False) in [(way.text, way.words, way.told) for way in ways_to_strike(row)]


@pytest.mark.parametrize(
    "row",
    [
        "Bind off in rib, or work 2 together as a drummer does.",
        "Knit 4 rows, ending like a wall with a WS row.",
        "Knit 4 rows, or so, decreasing like a drum.",
        "Purl 1 row (turn like a drum).",
        "Purl 1 row, but bind off 4 sts like a drum.",
        "Knit 4 rounds, for another 6 cm of walls.",
        "Twirl the walls.",
        # a number, what is left out, whom it is for
        "Knit 4 rounds of 12 walls.",
        "Knit 4 rounds except the walls.",
        "Knit 4 rounds but not the walls.",
        "Knit 4 rounds (grown men only).",
        "Wall (optional): Knit 4 rounds.",
        "(Grown men) Knit 4 rounds.",
        "For grown men, knit 4 rounds.",
        "Knit 4 rounds (for the tall sizes).",
        # a colour, a side, a needle, a part, a yarn
        "Knit 4 rounds in heather white.",
        "Knit 4 rows (on the wrong side).",
        "Knit 4 rounds on the thin needles.",
        "Knit 4 rounds across the left half.",
        "Knit 4 rounds with a twirled strand.",
        "Knit 4 rounds in LC.",
        "Knit 4 rounds (through the back, if they are twisted).",
        "Knit 4 rounds, but with C6F in the wall.",
        "Dec 1 st at each end of next 4 rows as on the back.",
        "Knit 4 rounds, if you want a wall.",
        "Knit 4 rounds, unless you are tall.",
        "Knit until it measures 20 cm, or as long as you like, ending on a wall.",
        "Knit 4 rows (still flat).",
        "Knit 4 rounds, for the back.",
        "The Neckband.--Knit 4 twirls.",
        "For the second front.--Knit 4 twirls.",
        "Twirl until it measures 9 cm, measured from the wall.",
        "Knit 4 rounds, thorn method.",
        # how often, how long, which of two, what else
        "Knit 4 rounds always again.",
        "Knit 4 rounds till dusk.",
        "Knit 4 rounds at the lower wall.",
        "Row 4: As Short Row 2.",
        "Knit 4 rounds, picot.",
        "Knit 4 rounds (trellis).",
        "Knit 4 rounds (in trellis).",
        "Knit 4 rounds of trellis.",
        "Knit 4 rounds, trellis, with A.",
        "Knit 20 furrows.",
        "Knit furrows to end of row.",
        "Knit 4 rounds for furrows.",
        "Knit 4 rounds in Bramble Walls.",
        "Knit 4 trellis rounds.",
        "Dec 1 st at the slope edge.",
        "Knit them in 4 rounds.",
    ],
)
def test_what_may_change_stitches_or_rows_is_never_struck(row: str) -> None:
    """A row read without its decreases would be a wrong plan called sound."""
    assert not read_without(row) or reads(row)


def test_fewest_words_come_first_and_never_more_than_a_third_of_a_phrase() -> None:
    """A row of little else is none."""
    ways = ways_to_strike("Knit 4 jolly rounds, or so, as you like it best, with A.")
    assert [way.cost for way in ways] == sorted(way.cost for way in ways)
    assert not any(not way.told and len(way.words.split()) > 1 for way in ways_to_strike("Knit for jolly good luck."))


def test_what_stands_in_brackets_goes_with_them_alone() -> None:
    """Neither the half of one is struck, nor what stands between two."""
    row = "Knit to 40 cm (or to your knee). Twirl (so it fits)."
    assert all(way.words.count("(") == way.words.count(")") for way in ways_to_strike(row))
    assert "or to your knee). Twirl (so it fits" not in [way.words for way in ways_to_strike(row)]
