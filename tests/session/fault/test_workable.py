from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.model import flatten
from stepper.session.fault.landmarks import SEEN_PAST_EDGES, Landmark, Sections
from stepper.session.fault.search import Search
from stepper.session.fault.workable import (
    find_exact_round,
    goes_on,
    is_even,
    is_tolerant,
    needs_its_repeat,
    shapes_by_sight,
    start_of_work,
)
from stepper.session.state import Position
from tests.plans import phrase, plan


def test_a_rib_is_not_mended_out_of_step() -> None:
    """Only the same stitch all along takes one more or less."""
    rib, plain = plan(("cuff", ["co40", "(k2 p2)x10", "k40"])).rounds[1:]

    assert not is_tolerant(rib)
    assert is_tolerant(plain)
    assert find_exact_round(plan(("cuff", ["co40", "(k2 p2)x10", "k40"])), Position(index=1), 1) == 1


def test_markers_on_the_way_do_not_make_a_plain_round_intolerant() -> None:
    """They are slipped, and any count goes between them; a change of yarn or of stitch does not."""
    for words, tolerant in (
        ("k10 sm k20 sm k10", True),
        ("k10 sm p20 sm k10", False),
        ("k10 sm yo k2tog k28", False),
    ):
        garment = plan(("body", [("co40", {"markers": (10, 30)}), (words, {"markers": (10, 30)})]))
        assert is_tolerant(garment.rounds[1]) is tolerant, words


def test_ten_increases_in_equal_gaps_have_no_place_of_their_own() -> None:
    """They may be moved; a decrease at the edge may not."""
    assert is_even(plan(("yoke", ["co80", "(k8 m1)x10"])).rounds[1])
    assert not is_even(plan(("front", ["co40", "k36 k2tog k2"])).rounds[1])


def test_a_round_half_worked_goes_on_only_where_what_is_left_takes_the_count() -> None:
    """Plain knitting is as long as it comes; a rib of four with one stitch off does not come out."""
    plain, rib = plan(("body", ["co40", "k40", "(k2 p2)x10"])).rounds[1:]
    garment = plan(("body", ["co40", "k40", "(k2 p2)x10"]))
    assert goes_on(garment, Position(index=plain.index, stitch=20), Search(sections=None, difference=-1))
    assert not goes_on(garment, Position(index=rib.index, stitch=20), Search(sections=None, difference=-1))
    assert goes_on(garment, Position(index=rib.index), Search(sections=None, difference=-1))
    assert start_of_work(Position(index=rib.index, stitch=20)) == rib.index + 1


@pytest.mark.parametrize(
    ("found", "right"), [((0, 8), True), ((12, 20), True), ((16, 24), False), ((24, 32), False)]
)
def test_a_fault_found_in_what_is_worked_already_lets_the_rest_come_out(
    found: tuple[int, int], right: bool
) -> None:
    """Twenty stitches of a rib are worked. A stitch too few among those is behind her; one among the next would meet the rib."""
    garment = plan(("body", ["co40", "k40", "(k2 p2)x10"]))
    sections = Sections(kind=Landmark.MARKER, edges=(0, *found, 40) if found[0] else (*found, 40))
    search = Search(sections=sections, suspects=(1 if found[0] else 0,), difference=-1)
    assert goes_on(garment, Position(index=2, stitch=20), search) is right


@pytest.mark.parametrize(
    ("rest", "by_sight"),
    [
        ("k10 pm ssk k16 k2tog pm k8", True),  # a raglan's decreases stand at its markers
        ("k10 pm k9 ssk k9 pm k8", False),  # nothing shows where this one belongs
        ("k10 pm (k2 yo k2tog)x5 pm k8", False),  # lace is no plain run
    ],
)
def test_shaping_is_worked_by_sight_only_where_markers_show_its_place(rest: str, *, by_sight: bool) -> None:
    """Anywhere else a stitch off moves every change behind it."""
    round_ = plan(("body", ["co38", (rest, {"markers": (10, 28)})])).rounds[1]
    assert shapes_by_sight(round_, 0) is by_sight


@pytest.mark.parametrize(("worked", "by_sight"), [(0, True), (33, True), (34, False)])
def test_what_is_left_of_a_round_begins_with_the_next_stitch(worked: int, *, by_sight: bool) -> None:
    """Of 38, five are left behind 33: one more than what stands beside a marker, so that they take the count up. Four do not.
    Were the stitch in hand taken for worked, the last five would be ripped for nothing."""
    round_ = plan(("body", ["co38", "k38"])).rounds[1]
    assert shapes_by_sight(round_, worked) is by_sight


def test_even_changes_between_markers_have_their_place() -> None:
    """A marker says where each belongs, however equal the gaps: a raglan is not mended half-way along the sleeve."""
    marked = plan(("yoke", [("co80", {"markers": (40,)}), ("(k8 m1)x10", {"markers": (45,)})]))
    assert not is_even(marked.rounds[1])


def test_in_lace_a_marker_section_is_not_yet_the_place() -> None:
    """A stitch made in another repeat than its own sets every repeat between the two a stitch aside, row after row,
    though each section counts right. Where the lace is done, nothing shows."""
    lace = ("k4 pm (yo k2tog k2)x8 pm k4", {"markers": (4, 36)})
    plain = ("k40", {"markers": (4, 36)})
    looking = replace(
        Search(sections=None, difference=-1),
        sections=Sections(kind=Landmark.MARKER, edges=(0, 4, 36, 40)),
        suspects=(1,),
        counted=(1,),
    )
    now = Position(index=2)
    assert needs_its_repeat(plan(("shawl", ["co40", lace, plain, lace])), now, looking)
    assert not needs_its_repeat(plan(("shawl", ["co40", lace, plain, plain])), now, looking)
    assert not needs_its_repeat(plan(("shawl", ["co40", plain, plain, lace])), now, looking)
    beside = replace(looking, suspects=(0,), counted=(0,))
    assert not needs_its_repeat(plan(("shawl", ["co40", lace, plain, lace])), now, beside)


def test_lace_that_lies_far_below_is_not_gone_on_with() -> None:
    """Ten rounds up nobody sees which repeat a stitch belongs to, so it may be made good anywhere between its markers."""
    lace = ("k4 pm (yo k2tog k2)x8 pm k4", {"markers": (4, 36)})
    looking = replace(
        Search(sections=None, difference=-1),
        sections=Sections(kind=Landmark.MARKER, edges=(0, 4, 36, 40)),
        suspects=(1,),
        counted=(1,),
    )
    plain = ("k40", {"markers": (4, 36)})
    for between, needed in (
        (0, True),
        (SEEN_PAST_EDGES - 1, True),
        (SEEN_PAST_EDGES, False),
        (SEEN_PAST_EDGES + 3, False),
    ):
        shawl = plan(("shawl", ["co40", lace, *[plain] * between, lace]))
        assert needs_its_repeat(shawl, Position(index=2 + between), looking) is needed, between
        above = plan(("shawl", ["co40", lace, *[plain] * between, lace]))
        assert needs_its_repeat(above, Position(index=2), looking) is needed, between
    assert SEEN_PAST_EDGES == 10


@pytest.mark.parametrize(
    ("line", "even"),
    [
        ("(k8 m1)x3 k56", False),  # three in a corner
        ("k26 m1 k27 m1 k27 m1", True),  # gaps of 26 and 27, twice
        ("k40 m1 k40 m1", False),  # two may be a coincidence
        ("k25 m1 k27 m1 k28 m1", False),  # three sizes of gaps
    ],
)
def test_three_changes_in_gaps_that_differ_by_one_are_spread_evenly(line: str, *, even: bool) -> None:
    """From three on equal gaps are meant. By hand, around the join."""
    assert is_even(plan(("yoke", ["co80", line])).rounds[1]) is even


@pytest.mark.parametrize(
    ("rest", "by_sight"),
    [
        ("k10 pm ssk k16 k2tog pm k8", True),
        ("k10 pm ssk k4 m1 k4 m1 k8 k2tog pm k8", True),  # eight beside the marker and the run
        ("k10 pm ssk k4 m1 k4 m1 k1 m1 k8 k2tog pm k8", False),  # nine
        ("k10 pm ssk k16:A k2tog pm k8", False),  # where the colours change is counted
        ("k10 pm ssk k14 yo k2tog k2tog pm k8", True),
        ("k10 pm ssk k14 bo2 k2tog pm k8", False),  # an edge has its place
        ("k4 pm k2 m1 k2 pm k4", False),  # no plain run to take it up
    ],
)
def test_work_by_sight_needs_plain_stretches_of_one_yarn_and_little_beside_them(
    rest: str, *, by_sight: bool
) -> None:
    """A change is seen to stand at a marker only from nearby. By hand: four stitches either side of it at most."""
    uses = sum(run.uses for run in flatten(phrase(rest)))
    round_ = plan(("body", [f"co{uses}", (rest, {"markers": (10, 28)})])).rounds[1]
    assert shapes_by_sight(round_, 0) is by_sight


def test_two_changes_the_pattern_calls_even_are_even() -> None:
    """Two in equal gaps may be a coincidence; where the line says "evenly" they are none."""
    round_ = plan(("yoke", ["co80", "k40 m1 k40 m1"])).rounds[1]
    assert not is_even(round_)
    assert is_even(replace(round_, evenly=True))


def test_lace_asks_for_its_repeat_only_while_the_fault_is_known_between_markers_and_no_closer() -> None:
    """Not found yet, there is no stretch; seen at one stitch, it is that stitch; without markers nothing is set aside."""
    lace = ("k4 pm (yo k2tog)x16 pm k4", {"markers": (4, 36)})
    shawl = plan(("shawl", ["co40", lace, lace]))
    markers = Sections(kind=Landmark.MARKER, edges=(0, 4, 36, 40))
    found = Search(sections=markers, suspects=(1,), counted=(1,), difference=-1)
    now = Position(index=2)
    assert needs_its_repeat(shawl, now, found)
    assert not needs_its_repeat(shawl, now, replace(found, spot=20))
    assert not needs_its_repeat(shawl, now, replace(found, suspects=()))
    assert not needs_its_repeat(shawl, now, replace(found, sections=replace(markers, kind=Landmark.REPEAT)))


def test_what_is_worked_behind_the_bind_off_of_a_piece_asks_nothing_of_its_count() -> None:
    """A stitch too many on the front is bound off with the others, however exactly the back has to be counted."""
    pieces = plan(("front", ["co40", "k40", "k40", "bo40"]), ("back", ["co40", "k40", "(k8 m1)x5", "k45"]))
    assert find_exact_round(pieces, Position(index=2), 1) is None
    assert find_exact_round(pieces, Position(index=5), 1) == 6
