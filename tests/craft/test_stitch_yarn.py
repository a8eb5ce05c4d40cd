"""What each stitch takes: against what is in print, and against how the stitch is made."""

from __future__ import annotations

import math

import pytest

from stepper.craft.stitch_yarn import (
    CAST_ON,
    END_MM,
    FLOAT_SLACK,
    RIB_AT_MOST,
    SEWN_BIND_OFF,
    STRETCHY_BIND_OFF,
    crossing_widths,
    stitch_yarn,
)
from stepper.craft.stitches import STITCHES, Kind
from tests.tables import each_row


@each_row("code", sorted(STITCHES))
def test_every_stitch_of_the_table_has_a_take_in_order(code: str) -> None:
    """Low is never above likely, nor likely above high; a stitch that is worked takes something."""
    take = stitch_yarn(code)
    for low, likely, high in (take.loops, take.widths):
        assert 0 <= low <= likely <= high
    worked = STITCHES[code].leaves and STITCHES[code].kind is not Kind.SHIFT
    if worked:
        assert take.loops[2] + take.widths[2] > 0


@pytest.mark.parametrize(
    ("code", "loops"),
    [
        ("k", 1),
        ("p", 1),
        ("k2tog", 1),
        ("s2kp", 1),
        ("m1l", 1),
        ("kfb", 2),
        ("kfbf", 3),
        ("yo", 1),
        ("sl", 0),
    ],
)
def test_loops_as_they_are_drawn(code: str, loops: float) -> None:
    """Counted from how each is made (common practice): a decrease is one loop, front and back two."""
    assert stitch_yarn(code).loops[1] == loops


@pytest.mark.parametrize(
    ("code", "loops"), [("kfb", 2), ("pfb", 2), ("inc", 2), ("kfbf", 3), ("k", 1), ("ssk", 1)]
)
def test_a_stitch_drawn_through_takes_its_loops_and_no_more(code: str, loops: float) -> None:
    """Where every loop is drawn through another there is nothing to guess (counted from how each is made)."""
    assert stitch_yarn(code).loops == (loops, loops, loops)
    assert stitch_yarn(code).widths == (0, 0, 0)


def test_ribbing_by_the_mill_rule() -> None:
    """1x1 rib K 16431.497, plain K 12068.59 (textilecalculation, Feb 2015): loops 16.7 % longer."""
    assert pytest.approx(1.1668, abs=1e-4) == RIB_AT_MOST


def test_edges_as_printed() -> None:
    """Long tail 3 widths (Righetti); a yarn over before each stitch (Bestor p. 174); sewn 3 to 5 widths."""
    assert CAST_ON.widths == (0, 3, 3)  # a looped cast-on takes nothing besides the loops
    assert STRETCHY_BIND_OFF.loops == (1.5, 2, 2)
    assert SEWN_BIND_OFF.widths == (3, 3, 5)
    assert stitch_yarn("graft").loops[:2] == (0.5, 0.5)  # one loop of the sewn row joins two stitches


@pytest.mark.parametrize(
    ("british", "crossed"), [("c4f", "2/2 lc"), ("c6b", "3/3 rc"), ("t3b", "1/2 rc"), ("c2f", "1/1 lc")]
)
def test_a_british_cable_takes_what_the_same_crossing_takes(british: str, crossed: str) -> None:
    """C4F is two stitches over two (common practice): two names of one thing."""
    assert stitch_yarn(british) == stitch_yarn(crossed)


def test_a_bobble_takes_a_loop_for_each_of_its_stitches_at_least() -> None:
    """Five into one, and what is worked on them comes on top (common practice)."""
    low, likely, high = stitch_yarn("mb").loops
    assert low == 5
    assert 5 + 5 < likely <= 5 + 5 + 5 < high


def test_a_float_is_at_least_as_long_as_the_way_behind_the_stitches() -> None:
    """A straight line is the shortest; the slack itself is an assumption of this project."""
    low, likely, high = FLOAT_SLACK
    assert 1 == low < likely < high


def test_an_end_is_a_hand_long() -> None:
    """Common practice: 10 to 20 cm, about a hand's length of 15."""
    assert END_MM == (100, 150, 200)


def test_a_crossing_is_longer_the_further_it_goes() -> None:
    """Two legs of hypot(0.76, 2) less 0.76 each for a stitch that moves two (Pythagoras)."""
    assert crossing_widths(1, 2) == pytest.approx(2 * (math.hypot(0.76, 2) - 0.76))
    assert crossing_widths(2, 0) == 0
    assert stitch_yarn("2/2 rc").widths[2] == pytest.approx(4 * crossing_widths(1, 2))
    assert stitch_yarn("3/1 lc").widths[2] == pytest.approx(crossing_widths(3, 1) + crossing_widths(1, 3))
    assert stitch_yarn("1/2/3 rc").widths[2] == pytest.approx(crossing_widths(1, 5) + crossing_widths(3, 3))
    assert stitch_yarn("3/3 lc").widths[1] > stitch_yarn("2/2 rc").widths[1] > stitch_yarn("1/1 rc").widths[1]
    assert stitch_yarn("2/1/2 rc").loops[1] == 5
    assert stitch_yarn("2/2 rc").widths[:2] == (0, stitch_yarn("2/2 rc").widths[2] / 2), (
        "half of it is drawn from around it"
    )


def test_two_yarn_overs_take_twice_what_one_takes() -> None:
    """The yarn is laid over the needle twice (common practice); at least half a loop each, which is the way over it
    alone, and never more than a loop that is drawn through."""
    once, twice = stitch_yarn("yo").loops, stitch_yarn("yo2").loops
    assert twice == tuple(2 * each for each in once)
    assert once == (0.5, 1, 1)


def test_a_german_short_row_stitch_takes_no_more_than_the_loop_it_is_pulled_from() -> None:
    """It is slipped and the yarn pulled tight over the needle: nothing new at the least, a whole loop at the most."""
    assert (stitch_yarn("ds").loops[0], stitch_yarn("ds").loops[2]) == (0, 1)
    assert stitch_yarn("ds").widths == (0, 0, 0)
    assert stitch_yarn("rest") == stitch_yarn("hold") == stitch_yarn("return")
    assert stitch_yarn("rest").loops == stitch_yarn("rest").widths == (0, 0, 0)


def test_each_stitch_cast_on_leaves_one_loop_on_the_needle() -> None:
    """Whatever else the method takes, the loop itself is yarn too: without it a tail comes out too short."""
    assert CAST_ON.loops == (1, 1, 1)


def test_a_double_stitch_takes_about_half_a_loop() -> None:
    """It is the loop below, pulled up over the needle: none more if it is pulled tight, one more at the most."""
    assert stitch_yarn("ds").loops == (0, 0.5, 1)


@each_row(
    ("code", "loops", "widths"),
    [
        ("k1b", (1, 1.2, 1.5), (0, 0, 0)),  # through a loop a row below: never less than one
        ("kyok", (2.5, 3, 3), (0, 0, 0)),  # two loops drawn through and one laid over
        ("yo", (0.5, 1, 1), (0, 0, 0)),  # laid over: at most a whole loop, at least half of one
        ("yo2", (1, 2, 2), (0, 0, 0)),  # two of these
        ("ds", (0, 0.5, 1), (0, 0, 0)),  # pulled over the needle: no more than a loop
        ("w&t", (0, 0, 0), (1, 1.5, 2)),  # across a stitch, and around it at most
        ("bo", (1, 1, 1.5), (0, 0, 0)),  # worked once, perhaps loosely
        ("graft", (0.5, 0.5, 1), (0, 0, 0)),  # one loop for a pair
        ("draw", (0, 0, 0), (0.3, 0.5, 1)),  # at most as wide as the stitch
        ("sl", (0, 0, 0), (1, 1, 1)),  # the yarn passes by
        ("hold", (0, 0, 0), (0, 0, 0)),
        ("rest", (0, 0, 0), (0, 0, 0)),
    ],
)
def test_what_is_laid_or_passed_takes_a_range(
    code: str, loops: tuple[float, float, float], widths: tuple[float, float, float]
) -> None:
    """What a loop takes that is not drawn through another is told from least to most, by how it is made (common practice)."""
    assert (stitch_yarn(code).loops, stitch_yarn(code).widths) == (loops, widths)


def test_stitches_that_are_not_known_take_about_as_much_as_plain_ones() -> None:
    """As many loops as are left; how many are slipped or worked again is a range, which is part of the answer."""
    low, likely, high = stitch_yarn("own 96 to 102").loops
    assert (low, likely, high) == (pytest.approx(96 * 2 / 3), 102, pytest.approx(102 * 3 / 2)), (
        "by hand, as the range says"
    )
    assert stitch_yarn("own").loops[1] == 1
