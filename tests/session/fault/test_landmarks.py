from __future__ import annotations

import pytest

from stepper.session.fault.landmarks import SEEN_PAST_EDGES, marked_off, sections_at
from stepper.session.state import Position
from tests import fabric
from tests.garments import read_garment
from tests.plans import final_increase, plan


def test_markers_come_first() -> None:
    """They are counted between by everyone."""
    garment = plan(("body", [("co40", {"markers": (10, 30)}), ("k10 m1 k30", {"markers": (11, 31)})]))
    at_start = sections_at(garment, Position(index=1))
    inside = sections_at(garment, Position(index=1, stitch=11))
    assert at_start is not None
    assert (at_start.kind, at_start.counts) == ("marker", (10, 20, 10))
    assert inside is not None
    assert sum(inside.counts) == 41


def test_without_markers_the_increases_are_counted_between() -> None:
    """They can be seen in the fabric, also some rounds later."""
    sections = sections_at(final_increase(), Position(index=4))
    assert sections is not None
    assert sections.kind == "change"
    assert sum(sections.counts) == 246
    assert sections.counts[:2] == (6, 12)


def test_plain_knitting_has_nothing_to_count_between() -> None:
    """Nothing is made up."""
    assert sections_at(plan(("body", ["co40", "k40", "k40"])), Position(index=2)) is None


def test_repeats_can_be_told_apart() -> None:
    """A rib or a chart is counted by its repeats."""
    sections = sections_at(plan(("cuff", ["co40", "(k2 p2)x10"])), Position(index=2))
    assert sections is not None
    assert (sections.kind, set(sections.counts)) == ("repeat", {4})


def test_what_is_bound_off_takes_its_increases_along_and_the_next_is_counted_in_their_place() -> None:
    """A plain round leaves increases to be seen. By hand: of ten, each after the ninth stitch of nine, ten stitches
    bound off take the first; the next is the eighth stitch of those left."""
    yoke = ("co80", "(k8 m1)x10", "k90")
    assert sections_at(plan(("yoke", [*yoke])), Position(index=3)) is not None
    below = sections_at(plan(("yoke", [*yoke, "bo10 k80"])), Position(index=4))
    assert below is not None
    assert below.counts == (8, *[9] * 8)


def test_below_an_underarm_the_raglan_lines_are_counted_between() -> None:
    """A stitch made good at the other side of the body shows where nothing was wrong. By hand: of 40 stitches the increases
    are the 11th and the 31st; stitches 15 to 24 are held and 4 cast on, so the second is the 25th of 34. What was
    increased in the sleeve is held with it."""
    lines = ["co38", "k10 m1 k18 m1 k10", "k40", "k15 hold10:sleeve co4 k15"]
    below = plan(("yoke", lines), ("body", ["k34"] * 12))
    sections = sections_at(below, Position(index=5))
    assert sections is not None
    assert (sections.kind, sections.index, sections.counts) == ("change", 1, (11, 13, 10))
    in_sleeve = ["co38", "k16 m1 k6 m1 k16", "k40", "k15 hold10:sleeve co4 k15"]
    assert sections_at(plan(("yoke", in_sleeve), ("body", ["k34"])), Position(index=5)) is None


def test_below_an_underarm_the_repeats_of_the_yoke_are_counted_between() -> None:
    """The chart of a yoke hangs in the front and the back of the body, so half a round off is seen there. By hand: of
    eight repeats of five the fourth and the fifth end in the sleeve and are held with it."""
    lines = ["co40", "(k2 p3)x8", "k15 hold12:sleeve co4 k13"]
    below = plan(("yoke", lines), ("body", ["k32"] * 12))
    sections = sections_at(below, Position(index=3))
    assert sections is not None
    assert (sections.kind, sections.index, sections.counts) == ("repeat", 1, (5, 5, 5, 7, 5, 5))
    assert sections_at(below, Position(index=2 + SEEN_PAST_EDGES)) is None


def test_far_below_an_underarm_nothing_is_counted_between() -> None:
    """Nobody follows a line up through a hand's breadth of plain knitting and past an underarm."""
    lines = ["co38", "k10 m1 k18 m1 k10", "k40", "k15 hold10:sleeve co4 k15"]
    body = plan(("yoke", lines), ("body", ["k34"] * 12))
    assert sections_at(body, Position(index=1 + SEEN_PAST_EDGES)) is not None
    assert sections_at(body, Position(index=2 + SEEN_PAST_EDGES)) is None


@pytest.mark.parametrize("name", ["raglan", "cardigan", "mitten"])
def test_what_is_asked_for_is_what_lies_on_the_needles(name: str) -> None:
    """A count up to another increase than the one meant would send her to the wrong place. The second knitter finds each
    landmark by looking at her loops, also below the underarm and from the other side."""
    garment = read_garment(name)[1]
    photographs, found = fabric.knitted_right(garment), 0
    for round_ in garment.rounds:
        sections = sections_at(garment, Position(index=round_.index))
        if sections is not None and sections.index is not None:
            on_needles = photographs[round_.index]
            assert sections.edges == (0, *on_needles.edges(sections.kind.value), on_needles.count)
            found += 1
    assert found


def test_a_marker_at_the_end_of_the_round_makes_no_section_of_nothing() -> None:
    """The end of the round is an edge as it is, also with a part of the round worked. By hand: ten, twenty, ten."""
    hat = plan(("hat", [("co40", {"markers": (10, 30, 40)}), "k40"]))
    for stitch in (0, 5):
        sections = sections_at(hat, Position(index=1, stitch=stitch))
        assert sections is not None
        assert 0 not in sections.counts
        assert sum(sections.counts) == 40


def test_a_row_back_shows_the_landmarks_of_the_row_before_from_the_other_side() -> None:
    """Knitted flat the work is turned: six before the first increase become the last six. By hand: increases after
    the 3rd and 4th of 12 stitches on the right needle lie after the 8th and 9th seen from behind."""
    flat = {"flat": True}
    row = plan(("front", [("co10", flat), ("k2 m1 m1 k8", flat), ("p12", {"side": "WS", **flat})]))
    sections = sections_at(row, Position(index=2))
    assert sections is not None
    assert sections.turned
    assert sections.edges == (0, 8, 9, 12)
    assert sections.index == 1


def test_a_few_blocks_of_colour_are_counted_between() -> None:
    """Where nothing else tells one stitch from another, a change of colour is seen on the needle, as long as the blocks are
    few and in the round just worked. By hand; the second knitter sees the same."""
    motif = ["co40", "k10:MC k3:P k8:MC k3:P k16:MC", "k40:MC"]
    body = plan(("body", motif))
    sections = sections_at(body, Position(index=2))
    assert sections is not None
    assert (sections.kind, sections.counts) == ("colour", (10, 3, 8, 3, 16))
    assert fabric.knitted_right(body)[2].edges("colour") == [10, 13, 21, 24]
    assert sections_at(body, Position(index=3)) is None
    many = " ".join(["k2:MC k2:P"] * 10)
    assert sections_at(plan(("body", ["co40", many])), Position(index=2)) is None


def test_increases_go_before_blocks_of_colour() -> None:
    """They tell more of what may have gone wrong than a colour does."""
    yoke = plan(("yoke", ["co40", "k10:MC m1:MC k20:P m1:P k10:MC"]))
    sections = sections_at(yoke, Position(index=2))
    assert sections is not None
    assert sections.kind == "change"


def test_every_increase_is_a_landmark() -> None:
    """A repeat of lace is to be known before a stitch is made in it, however many there are."""
    wide = plan(("yoke", ["co80", "(k2 m1)x40", "k120"]))
    sections = sections_at(wide, Position(index=3))
    assert sections is not None
    assert set(sections.counts) == {3}
    assert len(sections.counts) == 40


def test_plain_fabric_is_marked_off_at_the_half_and_the_quarters() -> None:
    """So that a count that is broken off is not lost; a sock needs no marker, a sweater three. By hand."""
    assert marked_off(30) == (1, 30)
    assert marked_off(80) == (2, 40)
    assert marked_off(205) == (4, 51)


def test_a_marker_behind_which_stitches_were_made_is_one_marker() -> None:
    """Half-way through the round it hangs where it was slipped. By hand: four, the marker, one made, two knitted
    and four left are eleven, cut into four and seven."""
    garment = plan(("body", [("co10", {"markers": (4,)}), ("k4 sm m1 k6", {"markers": (4,)})]))
    sections = sections_at(garment, Position(index=1, stitch=7))
    assert sections is not None
    assert sections.counts == (4, 7)
