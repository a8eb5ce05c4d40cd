from __future__ import annotations

import pytest

from stepper.craft.stitches import stitch as stitch_of
from stepper.session.fault.landmarks import SEEN_PAST_EDGES, colour_blocks, marked_off, sections_at
from stepper.session.state import Position
from tests import fabric
from tests.garments import read_garment
from tests.plan.test_compile import plan_of
from tests.plans import final_increase, plan
from tests.project.samples import project


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
    above = sections_at(plan(("yoke", [*yoke, "k81 bo9"])), Position(index=4))
    assert above is not None
    assert above.counts == (9,) * 9, "the last that is left ends the round, and parts nothing"


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


def _edges(garment: object, index: int, stitch: int = 0) -> tuple[str, tuple[int, ...]] | None:
    sections = sections_at(garment, Position(index=index, stitch=stitch))  # type: ignore[arg-type] # a plan
    return None if sections is None else (sections.kind.value, sections.edges)


def test_markers_hang_where_the_work_has_brought_them() -> None:
    """On the right needle where they were slipped, on the left where they are left, moved on by what was made. By hand:
    of 20 with markers after 5 and 12, one is made behind the first."""
    body = plan(("body", [("co20", {"markers": (5, 12)}), ("k5 sm m1 k7 sm k8", {"markers": (5, 13)}), "k21"]))
    assert [_edges(body, 1, at) for at in (0, 4, 5, 6, 12, 13, 20)] == [
        ("marker", (0, 5, 12, 20)),
        ("marker", (0, 5, 12, 20)),
        ("marker", (0, 5, 12, 20)),
        ("marker", (0, 5, 13, 21)),
        ("marker", (0, 5, 13, 21)),
        ("marker", (0, 5, 13, 21)),
        ("marker", (0, 5, 13, 21)),
    ]
    assert _edges(body, 2) == ("marker", (0, 5, 13, 21))


def test_after_the_last_round_its_markers_still_hang() -> None:
    """A piece that ends on a needle or a thread is counted between them. By hand; those at the ends part nothing."""
    strip = plan(("strip", [("co10", {"markers": (0, 4, 10)})]))
    assert _edges(strip, 1) == ("marker", (0, 4, 10))
    assert _edges(plan(), 0) is None


def test_a_row_back_meets_the_markers_from_the_other_side() -> None:
    """Three from the right edge are seven from the left of ten."""
    flat = {"flat": True, "markers": (3,)}
    rows = plan(("front", [("co10", flat), ("p10", {"side": "WS", **flat})]))
    assert _edges(rows, 1) == ("marker", (0, 7, 10))


def test_changes_end_their_sections_and_the_end_of_the_round_is_no_landmark() -> None:
    """By hand: five increases, each behind eight stitches, the fifth ends the round; of decreases the first begins it."""
    assert _edges(plan(("yoke", ["co40", "(k8 m1)x5"])), 2) == ("change", (0, 9, 18, 27, 36, 45))
    assert _edges(plan(("crown", ["co30", "(k2tog k8)x3"])), 2) == ("change", (0, 1, 10, 19, 27))
    assert _edges(plan(("crown", ["co10", "k8 k2tog"])), 2) is None


def test_repeats_end_their_sections_and_what_stands_beside_them_is_one() -> None:
    """By hand: three knitted, a rib of four three times, three knitted. A round of one stitch has no repeats to see."""
    assert _edges(plan(("cuff", ["co18", "k3 (k2 p2)x3 k3"])), 2) == ("repeat", (0, 7, 11, 15, 18))
    assert _edges(plan(("cuff", ["co12", "(k2 p2)x3"])), 2) == ("repeat", (0, 4, 8, 12))
    assert _edges(plan(("cuff", ["co12", "(k4)x3"])), 2) is None
    assert _edges(plan(("cuff", ["co12", "(k2 p2)x3", "k12", "k12"])), 4) == ("repeat", (0, 4, 8, 12))


@pytest.mark.parametrize(("changes", "seen"), [(1, False), (2, True), (12, True), (13, False)])
def test_blocks_of_colour_are_landmarks_where_nobody_loses_count_of_them(changes: int, *, seen: bool) -> None:
    """From two changes on, so that it is a block, to twelve."""
    blocks = " ".join(f"k3:{'MC' if number % 2 else 'B'}" for number in range(changes + 1))
    motif = plan(("body", [f"co{3 * (changes + 1)}", blocks]))
    edges = tuple(range(0, 3 * (changes + 1) + 1, 3))
    assert _edges(motif, 2) == (("colour", edges) if seen else None)


def test_blocks_are_counted_as_they_lie_on_the_right_needle() -> None:
    """Two of one colour side by side are one, what leaves no stitch is none, and held stitches make the rest unclear.
    By hand."""
    motif = plan(("body", ["co12", "k3:MC k2tog:MC k3:B k4:MC", "k3:B hold4:thumb k4:B"])).rounds
    assert colour_blocks(motif[1]) == (("MC", 4), ("B", 7), ("MC", 11))
    held = plan(("body", ["co20", "k5:MC k5:B hold4:thumb k6:MC"]))
    assert _edges(held, 2) is None
    flat = {"flat": True}
    rows = plan(("front", [("co12", flat), ("k4:MC k4:B k4:MC", flat), ("p12", {"side": "WS", **flat})]))
    assert _edges(rows, 2) is None, "from behind the blocks are told apart by nobody"


def test_plain_fabric_is_marked_off_from_forty_and_from_a_hundred_stitches_on() -> None:
    """By hand, at either side of each."""
    assert [marked_off(total) for total in (39, 40, 41, 99, 100, 103)] == [
        (1, 39), (2, 20), (2, 20), (2, 49), (4, 25), (4, 25),
    ]  # fmt: skip


def test_what_is_made_where_is_seen_below_by_a_second_reckoning() -> None:
    """Each stitch is carried down by its own number, one by one, past holds and cast-ons: what is counted between must be
    where those stitches have come to. Three raglans with other numbers."""
    for front, sleeve, under in ((11, 6, 4), (15, 10, 2), (9, 5, 7)):
        line = f"k{front} m1 k{sleeve} m1 k{front} m1 k{sleeve} m1"
        total = 2 * front + 2 * sleeve
        above = f"k{front + 1} hold{sleeve + 1}:left co{under} k{front + 1} hold{sleeve + 1}:right co{under}"
        body = 2 * (front + 1) + 2 * under
        piece = plan(("yoke", [f"co{total}", line, f"k{total + 4}", above]), ("body", [f"k{body}"] * 3))
        places: list[object] = []
        for run in piece.rounds[1].runs:
            places += [run.stitch == "m1"] * run.leaves
        assert len(places) == total + 4
        left, right = list(places), list[object]()
        for run in piece.rounds[3].runs:
            for _ in range(run.times):
                entry = stitch_of(run.stitch)
                taken = [left.pop(0) for _ in range(entry.uses)]
                right += (taken if entry.leaves == entry.uses else [False] * entry.leaves)
        seen = tuple(at + 1 for at, made in enumerate(right) if made and at + 1 < body)
        assert _edges(piece, 5) == ("change", (0, *seen, body))


def test_stitches_bound_off_one_by_one_leave_no_repeats_to_count_between() -> None:
    """Nothing of them is on the needles; stretches of no stitch would be asked for."""
    assert sections_at(plan(("body", ["co12", "k4 (bo1)x3 p5", "k9"])), Position(index=2)) is None


def test_nothing_is_followed_through_a_row_in_own_words() -> None:
    """Where its stitches go is not known, so the increases below it are no landmarks above it."""
    work = "Cast on 40 sts.\nJoin in the round.\nIncrease evenly to 50 sts.\n{line}\nKnit 3 rounds."
    plain = plan_of(project(work.format(line="Knit 1 round.")))
    own = plan_of(project(work.format(line="Own words: twist.")))
    seen = sections_at(plain, Position(index=4))
    assert seen is not None
    assert len(seen.edges) == 11
    assert sections_at(own, Position(index=4)) is None
