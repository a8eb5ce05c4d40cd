from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.stitches import stitch
from stepper.plan.model import Plan, Round
from stepper.session.counting.tally import (
    between_markers,
    count_at,
    count_between,
    markers_in,
    piece_begun,
    shaping_at,
    tally_stitches,
)
from stepper.session.state import Position
from tests.plans import final_increase, plan

GARMENT = final_increase()
INCREASES = GARMENT.rounds[3]


def test_the_count_follows_the_increases_already_made() -> None:
    """Between the ends of a shaped round the needles hold the old count and what was gained so far.

    The first increase of the sample is after 5 stitches, the second 11 further on: made by hand from the
    scenario.
    """
    assert [tally_stitches(INCREASES, at).count for at in (0, 5, 6, 17, 18, 246)] == [
        225,
        225,
        226,
        226,
        227,
        246,
    ]


def test_held_and_cast_on_stitches_count_where_they_are_dealt_with() -> None:
    """After 43 knitted, 54 held and 9 cast on, 246 - 54 + 9 are on the needles."""
    divide = GARMENT.rounds[7]

    assert [tally_stitches(divide, at).count for at in (0, 43, 97, 106, 259)] == [246, 246, 192, 201, 156]


@given(st.integers(0, len(GARMENT.rounds) - 1), st.data())
def test_a_tally_begins_and_ends_with_the_rounds_own_counts(index: int, data: st.DataObject) -> None:
    """Whatever the way through a round, it leads from `before` to `after`."""
    round_ = GARMENT.rounds[index]
    at = data.draw(st.integers(0, round_.progress))

    assert tally_stitches(round_, 0).count == round_.before
    assert tally_stitches(round_, round_.progress).count == round_.after
    assert tally_stitches(round_, round_.progress).used == round_.before
    assert 0 <= tally_stitches(round_, at).used <= round_.before


def test_a_stitch_half_made_is_not_counted() -> None:
    """A front-and-back of which one loop is on the needle is not an increase yet."""
    round_ = plan(("body", ["co4", "k1 kfb k2"])).rounds[1]

    assert [tally_stitches(round_, at).count for at in (1, 2, 3)] == [4, 4, 5]


def test_after_the_last_round_its_count_stands() -> None:
    """All done means what the last round leaves: nothing after binding off."""
    assert count_at(GARMENT, Position(index=len(GARMENT.rounds))) == 0
    assert count_at(GARMENT, Position(index=4, stitch=17)) == 246


def test_spacing_is_fifteen_gaps_of_eleven_and_six_of_ten() -> None:
    """225 to 246 by 21 increases: 15 gaps of 11 and 6 of 10, around the join. Source: the project's
    scenario."""
    shaping = shaping_at(INCREASES, 0)

    assert shaping is not None
    assert shaping.gaps == ((11, 15), (10, 6))
    assert sum(gap * times for gap, times in shaping.gaps) == 225
    assert (shaping.increases, shaping.decreases, shaping.first, shaping.next_in) == (21, 0, 5, 5)


def test_the_next_change_is_told_from_where_the_work_is() -> None:
    """In the middle of a gap what is left of it counts, and after the last change there is none."""
    middle, end = shaping_at(INCREASES, 10), shaping_at(INCREASES, 243)

    assert middle is not None
    assert (middle.done, middle.next_in) == (1, 7)
    assert end is not None
    assert (end.done, end.next_in) == (21, None)


def test_gaps_between_decreases_leave_out_what_they_take() -> None:
    """ "Knit six, knit two together" is a gap of six, though eight stitches lie from change to change."""
    shaping = shaping_at(plan(("crown", ["co24", "(k6 k2tog)x3"])).rounds[1], 0)

    assert shaping is not None
    assert (shaping.decreases, shaping.gaps) == (3, ((6, 3),))


def test_a_row_has_no_gap_around_its_ends() -> None:
    """Flat knitting has no join to count around."""
    shaping = shaping_at(plan(("back", ["co10", ("k2 m1 k6 m1 k2", {"flat": True})])).rounds[1], 0)

    assert shaping is not None
    assert shaping.gaps == ((6, 1),)


def test_a_plain_round_has_no_shaping() -> None:
    """Nothing to tell is told as nothing."""
    assert shaping_at(GARMENT.rounds[2], 0) is None


def test_markers_are_where_the_round_says_or_where_they_were_left() -> None:
    """A round that slips its markers knows where they are; one that is silent keeps those that are there."""
    made = plan(("body", ["co20", "k8 pm k12", ("k20", {"markers": (0, 8, 20)}), "k8 sm k12"]))

    assert [markers_in(round_) for round_ in made.rounds] == [(), (8,), (8,), (8,)]


def test_stitches_between_markers_add_up_to_the_round() -> None:
    """The knitter checks section by section; together they are the count."""
    round_ = plan(("body", [("co20", {"markers": (6, 16)})])).rounds[0]

    assert between_markers(round_) == (6, 10, 4)
    assert between_markers(GARMENT.rounds[2]) == ()


def test_a_marker_at_the_beginning_or_the_end_of_a_round_bounds_no_section() -> None:
    """Nobody can count the nought stitches before it. By hand: ten stitches, a marker at each end and after four."""
    round_ = plan(("body", [("co10", {"markers": (0, 4, 10)})])).rounds[0]
    assert between_markers(round_) == (4, 6)


SHAPED = plan(
    (
        "yoke",
        [
            "co20",
            "k2 m1 k4 k2tog kfb k3 ssk k4 yo k2tog",
            ("k2 pm k3tog k4 sm yo2 k5 yo k6", {"markers": (2, 7)}),
            "k3 hold4:thumb co2 sl2 p11 kfb",
        ],
    )
)


def _one_by_one(round_: Round, worked: int) -> tuple[int, int, int]:
    """Return stitches on the needles, those used up and changes done, by taking one stitch after the other off the left
    needle while it fits into what is worked."""
    count, used, shaped, done = round_.before, 0, 0, 0
    for run in round_.runs:
        for _ in range(run.times):
            entry = stitch(run.stitch)
            if done + entry.progress > worked:
                return count, used, shaped
            done += entry.progress
            count, used = count + entry.leaves - entry.uses, used + entry.uses
            shaped += entry.kind.value in ("increase", "decrease")
    return count, used, shaped


@pytest.mark.parametrize("garment", [SHAPED, GARMENT], ids=["every kind of stitch", "the scenario"])
def test_a_tally_is_what_is_counted_stitch_by_stitch(garment: Plan) -> None:
    """After each stitch of every round, by the needles and not by sums over runs."""
    for round_ in garment.rounds:
        for worked in range(round_.progress + 1):
            tally = tally_stitches(round_, worked)
            assert (tally.count, tally.used, tally.shaped) == _one_by_one(round_, worked), (
                round_.instruction,
                worked,
            )


def test_the_way_between_two_places_is_counted_forth_and_back() -> None:
    """As if all stitches of the piece lay on one thread. By that thread, from every place to every other."""
    thread = [
        Position(index=round_.index, stitch=at) for round_ in SHAPED.rounds for at in range(round_.progress)
    ]
    thread.append(Position(index=len(SHAPED.rounds)))
    for first, start in enumerate(thread):
        for second, end in enumerate(thread):
            assert count_between(SHAPED, start, end) == second - first


def test_each_change_is_the_next_one_until_it_is_made() -> None:
    """By hand: two knitted, one made, three knitted, two together, one knitted; gaps of three all round, and in rows
    none around the ends."""
    crown = plan(("crown", ["co8", "k2 m1 k3 k2tog k1"])).rounds[1]
    seen = [shaping_at(crown, at) for at in range(crown.progress + 1)]
    assert [(each.done, each.next_in) for each in seen if each is not None] == [
        (0, 2), (0, 1), (0, 0), (1, 3), (1, 2), (1, 1), (1, 0), (2, None), (2, None),
    ]  # fmt: skip
    first = seen[0]
    assert first is not None
    assert (first.increases, first.decreases, first.first, first.gaps) == (1, 1, 2, ((3, 2),))
    row = shaping_at(plan(("crown", ["co8", ("k2 m1 k3 k2tog k1", {"flat": True})])).rounds[1], 0)
    assert row is not None
    assert row.gaps == ((3, 1),)
    unequal = shaping_at(plan(("crown", ["co12", "k2tog k1 k2tog k4 k2tog k1"])).rounds[1], 0)
    assert unequal is not None
    assert (unequal.first, unequal.gaps) == (0, ((4, 1), (1, 2)))


def test_markers_that_hang_together_or_at_the_ends_part_nothing() -> None:
    """What is counted between them would be none. By hand."""
    kept = {"markers": (0, 4, 4, 6, 10)}
    body = plan(("body", [("co10", kept), ("k10", kept), "pm k4 pm sm k6 pm", "k10"]))
    assert [markers_in(each) for each in body.rounds] == [(4, 6), (4, 6), (4,), ()]
    assert [between_markers(each) for each in body.rounds] == [(4, 2, 4), (4, 2, 4), (), ()]


def test_nothing_is_on_the_needles_of_a_piece_without_rounds() -> None:
    """A file may hold notes alone."""
    assert count_at(plan(), Position()) == 0


def test_a_piece_begins_where_nothing_hangs_on_the_needles() -> None:
    """Of two socks the second begins with its own cast-on, and stitches bound off at its edge begin none."""
    pair = plan(("first", ["co20", "k20", "bo20"]), ("second", ["co20", "bo5 k15", "k15"]))
    assert [piece_begun(pair, index) for index in range(-1, 6)] == [0, 0, 0, 0, 3, 3, 3]


def test_changes_whose_stitches_are_not_known_are_measured_from_place_to_place() -> None:
    """A round that says where its changes are, but not by which stitches: by hand, from 5 to 12 are seven, and from 12 across
    the join of twenty to 5 thirteen."""
    told = shaping_at(replace(plan(("body", ["co20", "k20"])).rounds[1], shaping=(5, 12)), 0)
    assert told is not None
    assert told.gaps == ((13, 1), (7, 1))
