"""Respacing against exhaustive search over every arrangement."""

from __future__ import annotations

from itertools import combinations, pairwise

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from stepper.craft.even.respacing import avoid_places, places_touching, respread
from stepper.craft.even.spacing import count_gaps, decrease_positions, gaps, gaps_between, increase_positions


def _all_places(stitches: int, changes: int, uses: int) -> list[tuple[int, ...]]:
    """List every legal arrangement: increases apart, decreases not overlapping."""
    last = stitches - uses
    apart = max(uses, 1)
    return [
        places
        for places in combinations(range(last + 1), changes)
        if all(b - a >= apart for a, b in pairwise(places))
    ]


def _open_gaps(places: tuple[int, ...], left: int, since: int, beyond: int, uses: int) -> list[int]:
    inner = [b - a - uses for a, b in pairwise(places)]
    return [since + places[0], *inner, left - places[-1] - uses + beyond]


@settings(deadline=None)
@given(
    st.integers(0, 11), st.integers(1, 4), st.integers(0, 6), st.integers(0, 6), st.sampled_from([0, 2, 3])
)
def test_respread_is_the_most_even_of_all(left: int, due: int, since: int, beyond: int, uses: int) -> None:
    """No arrangement of the rest has a smaller difference between its gaps; if none is legal it says so."""
    options = [_open_gaps(p, left, since, beyond, uses) for p in _all_places(left, due, uses)]
    if uses == 0:
        options = [sizes for sizes in options if min(sizes) >= 1]
    if not options:
        with pytest.raises(ValueError, match="do not fit"):
            respread(left, due, worked_since=since, beyond=beyond, uses=uses)
        return
    places = respread(left, due, worked_since=since, beyond=beyond, uses=uses)
    ours = _open_gaps(places, left, since, beyond, uses)
    assert len(places) == due
    assert sum(ours) == left + since + beyond - uses * due
    assert max(ours) - min(ours) == min(max(sizes) - min(sizes) for sizes in options)


@given(st.integers(2, 300), st.data())
def test_respread_in_step_keeps_the_whole_round_within_one(stitches: int, data: st.DataObject) -> None:
    """Asked in the middle of an untouched round, the gaps of the whole round still differ by one at most."""
    changes = data.draw(st.integers(2, max(2, stitches // 2)))
    done = data.draw(st.integers(1, changes - 1))
    places = increase_positions(stitches, changes, flat=False)
    here = places[done - 1]
    rest = respread(stitches - here, changes - done, beyond=places[0])
    whole = (*places[:done], *(here + place for place in rest))
    sizes = gaps_between(whole, stitches)
    assert sum(sizes) == stitches
    assert max(sizes) - min(sizes) <= 1


def test_respread_after_a_missed_increase() -> None:
    """30 stitches past the last increase the next comes at once and the rest is even again (arithmetic)."""
    places = respread(100, 5, worked_since=30, beyond=0)
    assert places[0] == 0
    assert count_gaps(b - a for a, b in pairwise((*places, 100))) == ((20, 5),)


def test_respread_says_what_is_impossible() -> None:
    """The sentence names what is left and what fits."""
    with pytest.raises(ValueError, match=r"9 increases do not fit into the 5 stitches left.*room for 4"):
        respread(5, 9)
    with pytest.raises(ValueError, match=r"4 decreases do not fit into the 7 stitches left.*room for 3"):
        respread(7, 4, uses=2)
    assert len(respread(5, 4)) == 4
    # One before the first stitch left and one behind the last, since stitches lie there too.
    assert len(respread(5, 6, worked_since=3, beyond=3)) == 6
    with pytest.raises(ValueError, match="room for 6"):
        respread(5, 7, worked_since=3, beyond=3)
    with pytest.raises(ValueError, match="room for 5"):
        respread(5, 6, worked_since=3)
    assert len(respread(7, 3, uses=2)) == 3
    assert respread(7, 0) == respread(1, 0) == respread(0, 0) == respread(0, 0, uses=2) == ()


def _difference(places: tuple[int, ...], stitches: int, flat: bool, uses: int) -> int:
    """Find the smallest difference that holds all gaps; flat, an end holds half a gap, rounded outwards."""
    lead, *inner = places[0], *(b - a - uses for a, b in pairwise(places))
    tail = stitches - places[-1] - uses
    if not flat:
        sizes = [lead + tail, *inner]
        return max(sizes) - min(sizes)
    for difference in range(2 * stitches + 3):
        for low in range(stitches + 1):
            ends = range(low // 2, (low + difference + 1) // 2 + 1)
            if lead in ends and tail in ends and all(low <= gap <= low + difference for gap in inner):
                return difference
    raise AssertionError("every arrangement has some difference")


def _legal(places: tuple[int, ...], given_places: tuple[int, ...], stitches: int, uses: int) -> bool:
    joins = {0, stitches} - set(given_places) if uses == 0 else set()
    # The first and last place are the same gap when both stand at the join.
    return not joins.intersection(places) and not (uses == 0 and {0, stitches} <= set(places))


@settings(deadline=None, max_examples=250)
@given(st.integers(2, 13), st.integers(1, 5), st.sampled_from([0, 2, 3]), st.booleans(), st.data())
def test_avoiding_is_the_best_of_all(
    stitches: int, changes: int, uses: int, flat: bool, data: st.DataObject
) -> None:
    """Smallest difference first, fewest stitches moved second, over every arrangement there is."""
    assume(changes * uses <= stitches and changes < stitches)
    barred = data.draw(st.sets(st.integers(0, stitches), max_size=stitches))
    if uses:
        places = decrease_positions(stitches, changes, uses=uses, flat=flat)
    else:
        places = increase_positions(stitches, changes, flat=flat)
    if not barred.intersection(places):
        assert avoid_places(places, stitches, barred, flat=flat, uses=uses) == places
        return
    options = [
        other
        for other in _all_places(stitches, changes, uses)
        if not barred.intersection(other) and _legal(other, places, stitches, uses)
    ]
    if not options:
        with pytest.raises(ValueError, match="cannot be placed"):
            avoid_places(places, stitches, barred, flat=flat, uses=uses)
        return
    scores = [
        (_difference(o, stitches, flat, uses), sum(abs(a - b) for a, b in zip(o, places, strict=True)))
        for o in options
    ]
    ours = avoid_places(places, stitches, barred, flat=flat, uses=uses)
    assert ours in options
    moved = sum(abs(a - b) for a, b in zip(ours, places, strict=True))
    assert (_difference(ours, stitches, flat, uses), moved) == min(scores)


def _check_best(
    places: tuple[int, ...], stitches: int, barred: set[int], uses: int, *, flat: bool = False
) -> None:
    options = [
        (_difference(each, stitches, flat, uses), sum(abs(a - b) for a, b in zip(each, places, strict=True)))
        for each in _all_places(stitches, len(places), uses)
        if not barred.intersection(each) and _legal(each, places, stitches, uses)
    ]
    if not barred.intersection(places):
        assert avoid_places(places, stitches, barred, uses=uses, flat=flat) == places
    elif options:
        ours = avoid_places(places, stitches, barred, uses=uses, flat=flat)
        moved = sum(abs(a - b) for a, b in zip(ours, places, strict=True))
        assert (_difference(ours, stitches, flat, uses), moved) == min(options), barred
        assert not barred.intersection(ours)
    else:
        with pytest.raises(ValueError, match="cannot be placed"):
            avoid_places(places, stitches, barred, uses=uses, flat=flat)


@pytest.mark.parametrize(("stitches", "changes", "uses"), [(8, 3, 0), (7, 2, 0), (9, 3, 2), (9, 2, 3)])
def test_of_every_set_of_forbidden_places_the_best_is_found(stitches: int, changes: int, uses: int) -> None:
    """Every one of the sets there are on a small round, with every arrangement beside it."""
    if uses:
        places = decrease_positions(stitches, changes, uses=uses, flat=False)
    else:
        places = increase_positions(stitches, changes, flat=False)
    for bits in range(2 ** (stitches + 1)):
        _check_best(places, stitches, {place for place in range(stitches + 1) if bits >> place & 1}, uses)


def test_an_increase_printed_at_the_join_may_stay_there() -> None:
    """A pattern that begins its round with an increase means it; where only 0 and 4 are free, both are taken."""
    assert avoid_places((0, 5), 10, {1, 2, 3, 5, 6, 7, 8, 9}) == (0, 4)


def test_a_forbidden_place_moves_one_increase_and_keeps_the_gaps() -> None:
    """225 + 21 with 26 forbidden: still 15 gaps of 11 and 6 of 10 (225 = 21 x 10 + 15)."""
    places = increase_positions(225, 21, flat=False)
    moved = avoid_places(places, 225, {26})
    assert 26 not in moved
    assert count_gaps(gaps_between(moved, 225)) == ((11, 15), (10, 6))
    assert sum(a != b for a, b in zip(places, moved, strict=True)) <= 2


def test_a_free_centre_front_stays_free() -> None:
    """41 stitches in the middle of a round carry no increase, and those beside it stay close to even."""
    motif = range(90, 131)
    places = avoid_places(increase_positions(220, 20, flat=False), 220, places_touching(motif))
    assert not [place for place in places if 90 <= place < 130]
    widest, *others = sorted(gaps_between(places, 220), reverse=True)
    # 20 gaps share 220; one has to be 41 at least, so the smallest can be 179 / 19 = 9 at the best.
    assert widest == 41
    assert min(others) == 9


def test_decreases_stay_off_a_marked_stitch() -> None:
    """A decrease uses its stitches, so it must begin two before or just behind a marked one."""
    marked = 40
    places = decrease_positions(80, 10, flat=False)
    assert not [
        p for p in avoid_places(places, 80, places_touching({marked}, uses=2), uses=2) if p in (38, 39)
    ]
    assert places_touching({marked}, uses=2) == {38, 39}
    assert places_touching({1}, uses=2) == {0}
    assert places_touching({10, 11, 12, 20}) == {10, 11}


def test_bad_arguments_are_refused() -> None:
    """Every range in a docstring is kept."""
    with pytest.raises(ValueError, match="0 up"):
        respread(-1, 1)
    with pytest.raises(ValueError, match="uses"):
        respread(5, 1, uses=1)
    with pytest.raises(ValueError, match="in order"):
        avoid_places((5, 3), 10, {5})
    with pytest.raises(ValueError, match="start at 1"):
        places_touching({0})
    with pytest.raises(ValueError, match="10 changes cannot be placed on 20 stitches: 9 places"):
        avoid_places(increase_positions(20, 10, flat=False), 20, set(range(11)))


def test_respread_of_a_fresh_flat_row_agrees_with_whole_gaps() -> None:
    """From the start of a row with no half gap asked for, the sizes are those of `gaps`."""
    places = respread(120, 10)
    assert count_gaps(gaps_between(places, 120, flat=True)) == count_gaps(gaps(120, 10, flat=True))


def test_a_difference_that_will_not_do_is_refused() -> None:
    """20 increases on 220 stitches cannot keep 41 free with gaps within one (220 / 20 = 11)."""
    places = increase_positions(220, 20, flat=False)
    with pytest.raises(ValueError, match="within 1"):
        avoid_places(places, 220, places_touching(range(90, 131)), within=1)
    assert avoid_places(places, 220, {places[3]}, within=1) == avoid_places(places, 220, {places[3]})


@pytest.mark.parametrize(
    ("stitches", "changes", "barred"),
    [
        (12, 2, {0, 1, 2, 3, 9, 10}),
        (10, 2, {3, 9}),
        (11, 4, {0, 4, 7, 8}),
        (14, 3, {7, 8, 9}),
        (14, 3, {5, 7, 8, 10, 13}),
        (14, 3, {1, 2, 5, 7, 8, 12, 14}),
    ],
)
def test_in_a_row_an_end_may_be_half_a_gap_rounded_outwards(
    stitches: int, changes: int, barred: set[int]
) -> None:
    """Where the last place is barred, the best arrangement has its longest stretch at an end of the row; against every
    arrangement there is."""
    _check_best(increase_positions(stitches, changes, flat=True), stitches, barred, 0, flat=True)


@pytest.mark.parametrize("uses", [1, -1])
def test_no_change_takes_up_one_stitch_or_less_than_none(uses: int) -> None:
    """One stitch worked as one is no change; a caller that says so has miscounted."""
    with pytest.raises(ValueError, match=r"uses|change|stitch"):
        places_touching({4}, uses=uses)
    assert places_touching({4, 5}) == {4}
    assert places_touching({1, 4}, uses=2) == {0, 2, 3}
