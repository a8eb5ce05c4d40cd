from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.stitches import STITCHES
from stepper.language.abbreviations import expand_abbreviations


@pytest.mark.parametrize(
    ("printed", "said"),
    [
        ("k2tog", "knit two together"),
        ("K1, ssk, yo", "knit one, slip slip knit, yarn over"),
        ("M1L at the marker", "make one left at the marker"),
        ("sl1 wyif, p3 tbl", "slip one with yarn in front, purl 3 through the back loop"),
        ("sl 1 wyif, K1, sl 2 wyif", "slip one with yarn in front, knit one, slip 2 with yarn in front"),
        ("CO 100, then BO 12", "cast on 100, then bind off 12"),
        ("12 sts on hold, RS facing", "12 stitches on hold, right side facing"),
        ("Rep to end of rnd", "Repeat to end of round"),
        ("round 18, Dec rnd", "round 18, decrease round"),
        ("in St st for 3 cm", "in stockinette stitch for 3 cm"),
        ("w&t", "wrap and turn"),
    ],
)
def test_an_abbreviation_is_said_as_a_knitter_says_it(printed: str, said: str) -> None:
    """Source: the Craft Yarn Council's list of abbreviations (from memory) and common practice."""
    assert expand_abbreviations(printed) == said


def test_some_are_abbreviations_in_capitals_alone() -> None:
    """ "Co." is a firm and "ds" nothing at all; DS, CO and BO are what a page means."""
    assert expand_abbreviations("working rem DS as one st") == "working remaining double stitch as one stitch"
    assert expand_abbreviations("on right needle after BO") == "on right needle after bind off"
    assert expand_abbreviations("before BOR m") == "before marker at the beginning of the round"


@pytest.mark.parametrize(
    "line",
    [
        "Hold the rest and return",
        "Turn the bead",
        "Pine and Co. at 7 pm",
        "Ask K. about it",
        "size k-2",
        "to be kept for a st-bernard",
        "Knit seven, purl two.",
    ],
)
def test_what_may_be_a_word_or_a_name_is_left_alone(line: str) -> None:
    """A note is read back as she made it."""
    assert expand_abbreviations(line) == line


@given(st.text() | st.lists(st.sampled_from([*STITCHES, "3", "sts", "rnd", " ", ",", "K2"])).map(" ".join))
def test_doing_it_twice_changes_nothing(line: str) -> None:
    """Nobody has to know whether a line was prepared already."""
    assert expand_abbreviations(expand_abbreviations(line)) == expand_abbreviations(line)
