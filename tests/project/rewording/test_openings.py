"""What a sentence opens with, in any number and order. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

from itertools import permutations

import pytest

from stepper.project.instructions import Needle, WithYarn
from stepper.project.problems import Span
from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import Words, read_line
from stepper.project.rewording.openings import split_opening, write_openings_in_order
from stepper.project.rewording.reworded import as_printed
from tests.tables import each_row


def written(printed: str) -> str:
    """Return a line with what its sentences open with in the order of the grammar."""
    return write_openings_in_order(as_printed(made_plain(printed))).text


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("With RS facing and using dpns, pick up 30 sts.", "With RS facing, pick up 30 sts."),
        ("Using larger needles and with MC, knit 4 rows.", "Change to larger needles. With MC, knit 4 rows."),
        ("With smaller needles cast on 96 sts.", "Change to smaller needles. Cast on 96 sts."),
        ('Smaller 24" needle, CO 172 sts.', "Change to Smaller needle. CO 172 sts."),
        ('US 6 16" circular: CO 60 sts.', "Change to US 6 circular needle. CO 60 sts."),
        ("4 mm needle: CO 60 sts.", "Change to 4 mm needle. CO 60 sts."),
        ('16" smaller needle, RS facing, beg at left shoulder: pick up 60 sts.', "Change to smaller needle. With RS facing, pick up 60 sts."),
        ("With No. 6 dp needles cast on 48 sts.", "Change to No. 6 double-pointed needles. Cast on 48 sts."),
        ("MC and larger needles: knit 4 rows.", "Change to larger needles. With MC, knit 4 rows."),
        ("Using MC and a stretchy cast-on, cast on 96 sts.", "With MC, cast on 96 sts."),
        ("Next row (RS): Using 4 mm needles and CC, k to end.", "Next row (RS): Change to 4 mm needles. With CC, k to end."),
        ("Knit 2 rows. With WS facing and 3 mm needles, bind off.", "Knit 2 rows. Change to 3 mm needles. With WS facing, bind off."),
    ],
)
def test_needles_yarn_and_side_are_written_in_one_order(printed: str, words: str) -> None:
    """The same three things stand in every order in print, and mean the same."""
    assert written(printed) == words


PHRASES = ("with RS facing", "using 3 mm needles", "with CC", "beginning at left shoulder")


@each_row("order", list(permutations(PHRASES)))
@each_row("joint", [", ", " and "])
def test_every_order_of_four_phrases_is_read_alike(order: tuple[str, ...], joint: str) -> None:
    """No order is worked in another yarn, on another needle or over other stitches; none loses a word."""
    line = f"{joint.join(order)}, pick up and knit 48 sts."
    line = line[0].upper() + line[1:]
    reading = read_line(line, lambda at, length: Span(line=1, column=at + 1, length=length), Words(sizes=0))
    assert reading.line is not None, line
    needle, yarn, *_ = reading.line.sentences
    assert isinstance(needle, Needle)
    assert isinstance(yarn, WithYarn)
    assert (needle.mm, yarn.yarn) == (3.0, "CC")
    assert {"with RS facing", "beginning at left shoulder"} <= {words.lower().replace("rs", "RS") for words in reading.line.said}


@pytest.mark.parametrize(
    "printed",
    [
        "Beginning at armhole edge and using 3 mm needles, bind off 5 sts, k to end.",
        "With a heavy heart and 3 mm needles, cast on 48 sts.",
        "Using 3 mm needles, MC, and then CC in turn, cast on 48 sts.",
        "With 12 sts on the needle, knit 1 row.",
        "With A and B, knit 2 rounds.",
        "Using smaller needles, A and B, cast on 20 sts.",
    ],
)
def test_an_opening_of_no_known_kind_stays(printed: str) -> None:
    """Which edge is meant, or which yarn, would be lost."""
    assert written(printed) == made_plain(printed)


def test_the_yarn_is_not_part_of_how_to_cast_on() -> None:
    """The band would be knitted in the main yarn."""
    line = "Using CC and the long-tail method, cast on 48 sts."
    reading = read_line(line, lambda at, length: Span(line=1, column=at + 1, length=length), Words(sizes=0))
    assert reading.line is not None
    assert any(isinstance(one, WithYarn) and one.yarn == "CC" for one in reading.line.sentences)


def test_phrases_are_told_with_their_places() -> None:
    """A problem is shown under the words that are printed."""
    line = "With RS facing and dpns, pick up 30 sts."
    opening = split_opening(line, 0)
    assert opening is not None
    phrases, behind = opening
    assert [(kind, line[first:end]) for kind, first, end in phrases] == [("facing", "RS"), ("sizeless", "dpns")]
    assert line[behind:] == "pick up 30 sts."
