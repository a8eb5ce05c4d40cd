"""Strands and what passes between them."""

from __future__ import annotations

import pytest

from stepper.report.measure.flow import follow_stitches
from tests.garments import read_garment
from tests.plans import plan


def test_a_strand_begins_at_every_edge_and_goes_on_after_a_rest() -> None:
    """Cast on, put on hold as a whole, another piece, taken up again: two strands."""
    rounds = plan(
        ("a", ["co10", "k10", "hold10:a"]), ("b", ["co8", "bo8"]), ("c", ["return10:a", "k10", "bo10"])
    ).rounds
    flow = follow_stitches(rounds)
    assert [strand.rounds for strand in flow.strands] == [[0, 1, 2, 5, 6, 7], [3, 4]]
    assert [strand.ends for strand in flow.strands] == ["bind-off", "bind-off"]


def test_stitches_that_part_open_a_strand_of_their_own() -> None:
    """A thumb is put on hold, the hand goes on, the thumb is taken up."""
    rounds = plan(
        ("hand", ["co10", "k6 hold4:thumb", "k6", "graft6"]), ("thumb", ["return4:thumb", "draw4"])
    ).rounds
    flow = follow_stitches(rounds)
    (thumb,) = flow.leaving(0)
    assert (thumb.name, thumb.stitches, thumb.target, thumb.opens, thumb.closes) == (
        "thumb",
        4,
        1,
        True,
        False,
    )
    assert flow.strands[1].begins == "return"
    assert flow.strands[1].ends == "closed"


def test_stitches_that_join_stay_in_the_strand_that_takes_them_up() -> None:
    """Two sleeves wait on hold until the body takes them in."""
    _, garment = read_garment("hem_up_yoke")
    flow = follow_stitches(garment.rounds)
    assert [(one.name, one.stitches, one.closes) for one in flow.joining(2)] == [
        ("left sleeve", 50, True),
        ("right sleeve", 50, True),
    ]
    assert [one.name for one in flow.passages if one.target == -1] == [
        "left sleeve underarm",
        "right sleeve underarm",
        "left underarm",
        "right underarm",
    ]


@pytest.mark.parametrize(("first", "begins"), [("co6", "cast-on"), ("pu6", "pick-up")])
def test_how_a_strand_begins_is_known(first: str, begins: str) -> None:
    """A cast-on or stitches picked up."""
    assert follow_stitches(plan(("a", [first, "k6", "bo6"])).rounds).strands[0].begins == begins


def test_edges_are_known_round_by_round() -> None:
    """Also where they stand in a repeat."""
    flow = follow_stitches(plan(("a", ["co6", "(k1 bo1)x2 k2", "k4"])).rounds)
    assert flow.has(1, "bo")
    assert not flow.has(2, "bo", "hold")


def test_nothing_has_no_strands() -> None:
    """A blend that cannot be knitted has no rounds."""
    assert follow_stitches(()).strands == ()
