"""Even spacing against published worked examples, general libraries and exhaustive search."""

from __future__ import annotations

from itertools import chain, combinations, pairwise
from math import gcd

import numpy as np
import pytest
import skimage
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.even.spacing import (
    count_gaps,
    decrease_positions,
    gaps,
    gaps_between,
    increase_positions,
)

ALL_PAIRS = [(n, k) for n in range(1, 401) for k in range(1, n + 1)]


def _circle(positions: tuple[int, ...], stitches: int) -> list[int]:
    """Measure the gaps around the join without the project's own function."""
    return [b - a for a, b in pairwise((*positions, positions[0] + stitches))]


class _Rows:
    """Rows of places one behind the other, so that numpy looks at all of them at once."""

    def __init__(self, rows: list[tuple[int, ...]]) -> None:
        self.counts = np.array([len(row) for row in rows])
        self.places = np.fromiter(chain.from_iterable(rows), dtype=np.int64, count=self.counts.sum())
        self.last = np.cumsum(self.counts) - 1
        self.first = self.last - self.counts + 1

    def following(self, *, around: int) -> np.ndarray:
        """Return the place after each; after a row's last its first again, so many stitches on."""
        found = np.roll(self.places, -1)
        found[self.last] = self.places[self.first] + around
        return found

    def least(self, values: np.ndarray) -> np.ndarray:
        return np.minimum.reduceat(values, self.first)

    def most(self, values: np.ndarray) -> np.ndarray:
        return np.maximum.reduceat(values, self.first)

    def total(self, values: np.ndarray) -> np.ndarray:
        return np.add.reduceat(values, self.first, dtype=np.int64)


def _rotations(pattern: str) -> set[str]:
    return {pattern[i:] + pattern[:i] for i in range(len(pattern))}


def _bjorklund(ones: int, length: int) -> str:
    """Bjorklund's pairing as Toussaint (BRIDGES 2005, pp. 47-56) describes it.

    The sequences in front are always alike, and so are those behind, so each kind is kept once with its number.
    """
    (front, fronts), (back, backs) = ("x", ones), (".", length - ones)
    while backs > 1:
        paired = min(fronts, backs)
        left = (front, fronts - paired) if fronts > paired else (back, backs - paired)
        (front, fronts), (back, backs) = (front + back, paired), left
    return front * fronts + back * backs


@pytest.mark.parametrize("hundred", range(4))
def test_positions_are_within_one_for_every_pair_up_to_400(hundred: int) -> None:
    """No arrangement can beat a spread of 0 where k divides n and 1 elsewhere: every pair reaches it."""
    for n in range(100 * hundred + 1, 100 * hundred + 101):
        ks = np.arange(1, n + 1)
        rows = _Rows([increase_positions(n, k, flat=False) for k in range(1, n + 1)])
        circle = rows.following(around=n) - rows.places
        least, most = rows.least(circle), rows.most(circle)
        assert (rows.counts == ks).all()
        assert (rows.total(circle) == n).all()
        assert (most - least == (n % ks != 0)).all(), n
        larger = circle == np.repeat(-(-n // ks), ks)
        assert (rows.total(larger) == np.where(n % ks == 0, ks, n % ks)).all(), n
        assert (least >= 1).all()
        assert (rows.places[rows.first] >= 1).all()
        assert (rows.places[rows.last] <= np.where(ks == n, n, n - 1)).all(), n


def test_gaps_are_the_shares_of_numpy_for_every_pair_up_to_400() -> None:
    """The smaller and larger gaps are as many as numpy.array_split makes: every pair up to 60, then one in 29."""
    for n, k in [pair for pair in ALL_PAIRS if pair[0] <= 60] + ALL_PAIRS[::29]:
        places = increase_positions(n, k, flat=False)
        shares = [len(part) for part in np.array_split(np.arange(n), k)]
        assert sorted(_circle(places, n), reverse=True) == shares, (n, k)


@pytest.mark.parametrize("hundred", range(4))
def test_flat_positions_are_within_one_for_every_pair_up_to_400(hundred: int) -> None:
    """Flat, the inner gaps are within one and both ends are half a gap to within a stitch."""
    for n in range(max(2, 100 * hundred + 1), 100 * hundred + 101):
        ks = np.arange(1, n)
        rows = _Rows([increase_positions(n, k, flat=True) for k in range(1, n)])
        assert (rows.counts == ks).all()
        inner = rows.following(around=0) - rows.places
        # The last place of a row has none behind it: it is left out by standing for the gap of its neighbour.
        inner[rows.last] = inner[np.maximum(rows.last - 1, rows.first)]
        several = ks > 1
        assert (rows.least(inner)[several] >= 1).all(), n
        assert ((rows.most(inner) - rows.least(inner))[several] <= 1).all(), n
        lead, tail = rows.places[rows.first], n - rows.places[rows.last]
        assert (lead >= 1).all()
        assert (tail >= 1).all()
        assert (abs(lead - tail) <= 1).all(), n
        assert (abs(lead - n / (2 * ks)) <= 0.5).all()
        assert (abs(tail - n / (2 * ks)) <= 0.5).all()


def test_decreases_are_within_one_for_every_pair_up_to_400() -> None:
    """Decreases never overlap, never cross the join, and leave plain gaps within one."""
    for n in range(2, 401):
        ks = np.arange(1, n // 2 + 1)
        rows = _Rows([decrease_positions(n, k, flat=False) for k in range(1, n // 2 + 1)])
        plain = rows.following(around=n) - rows.places - 2
        assert (rows.counts == ks).all()
        assert (rows.total(plain) == n - 2 * ks).all()
        assert (rows.most(plain) - rows.least(plain) == ((n - 2 * ks) % ks != 0)).all(), n
        assert (rows.least(plain) >= 0).all()
        assert (rows.places[rows.first] >= 0).all()
        assert (rows.places[rows.last] + 2 <= n).all()


@pytest.mark.parametrize("n", range(2, 13))
def test_no_arrangement_at_all_has_a_smaller_spread(n: int) -> None:
    """Exhaustive search over every way to place the increases finds nothing more even."""
    for k in range(1, n):
        best = min(max(c) - min(c) for p in combinations(range(n), k) if (c := _circle(p, n)))
        ours = _circle(increase_positions(n, k, flat=False), n)
        assert max(ours) - min(ours) == best


def test_gaps_follow_the_floor_oracle() -> None:
    """Whole-gap ends, read backwards, are the integer oracle floor((i+1)n/k) - floor(in/k), for all pairs."""
    for n, k in ALL_PAIRS[::7]:
        oracle = tuple((i + 1) * n // k - i * n // k for i in range(k))
        assert gaps(n, k) == oracle[::-1]


@pytest.mark.parametrize(("n", "k"), [(72, 18), (13, 4), (225, 21), (51, 4), (100, 11), (400, 37), (246, 15)])
def test_half_start_is_the_rasterised_line(n: int, k: int) -> None:
    """Increases stand where skimage's line from (0, 0) to (k, n) steps; a tie may fall a stitch aside."""
    rows, columns = skimage.draw.line(0, 0, k, n)
    steps = tuple(int(c) for r0, r1, c in zip(rows, rows[1:], columns[1:], strict=False) if r1 > r0)
    places = increase_positions(n, k, flat=False)
    # The line lights pixel centres, so the step lies in the column at or just after the ideal place.
    assert all(0 <= step - place <= 1 for step, place in zip(steps, places, strict=True))
    assert count_gaps(_circle(steps, n)) == count_gaps(_circle(places, n))


@pytest.mark.parametrize(
    ("ones", "length", "pattern"),
    [
        (3, 8, "x..x..x."),
        (5, 8, "x.xx.xx."),
        (2, 5, "x.x.."),
        (4, 9, "x.x.x.x.."),
        (5, 12, "x..x.x..x.x."),
        (7, 12, "x.xx.x.xx.x."),
        (5, 16, "x..x..x..x..x..."),
        (7, 16, "x..x.x.x..x.x.x."),
        (5, 13, "x..x.x..x.x.."),
    ],
)
def test_euclidean_rhythms_are_the_same_circle(ones: int, length: int, pattern: str) -> None:
    """Toussaint's rhythms (BRIDGES 2005) are our circle of gaps, turned."""
    places = set(increase_positions(length, ones, flat=False))
    ours = "".join("x" if i in places else "." for i in range(length))
    assert _bjorklund(ones, length) in _rotations(pattern)
    assert ours in _rotations(pattern)


def test_bjorklund_agrees_up_to_rotation_for_every_pair_up_to_400() -> None:
    """Not only the spread but the mixing of larger and smaller gaps is the most even one.

    A pair with a common divisor is its reduced pair over and over in both, so these stand for all.
    """
    for length, ones in ALL_PAIRS:
        if ones == length or gcd(length, ones) > 1:
            continue
        circle = np.full(length, ord("."), dtype=np.uint8)
        circle[list(increase_positions(length, ones, flat=False))] = ord("x")
        ours, theirs = circle.tobytes().decode(), _bjorklund(ones, length)
        assert ours in theirs + theirs, (ones, length)


def test_a_pair_with_a_common_divisor_is_its_reduced_pair_over_and_over() -> None:
    """So what holds for reduced pairs holds for all of them."""
    for length, ones in ALL_PAIRS[::7]:
        divisor = gcd(length, ones)
        if divisor == 1 or ones == length:
            continue
        short = increase_positions(length // divisor, ones // divisor, flat=False)
        step = length // divisor
        again = tuple(place + turn * step for turn in range(divisor) for place in short)
        assert increase_positions(length, ones, flat=False) == again, (ones, length)
        assert _bjorklund(ones, length) in _rotations(_bjorklund(ones // divisor, step) * divisor)


def test_published_round_example_51_plus_4() -> None:
    """woolpackyarn.com, "Calculating where to place the increases": increase at 13, 26, 39, 51."""
    assert gaps(51, 4) == (13, 13, 13, 12)


def test_published_flat_example_51_plus_4() -> None:
    """Same source, flat with half ends: at 6, 19, 32, 45."""
    assert increase_positions(51, 4, flat=True) == (6, 19, 32, 45)
    assert gaps(51, 4, flat=True, start="half") == (6, 13, 13, 13, 6)


def test_published_flat_example_112_plus_16() -> None:
    """Same source: every 7 stitches, half of it 3.5 at the ends."""
    lead, *inner, tail = gaps(112, 16, flat=True, start="half")
    assert set(inner) == {7}
    assert sorted((lead, tail)) == [3, 4]


@pytest.mark.parametrize(
    ("stitches", "changes", "flat", "expected"),
    [
        (40, 4, True, ((8, 5),)),  # dummies.com, "increase at several points": five sections of 8
        (30, 5, True, ((5, 6),)),  # Teach Yourself Visually Knitting, ch. 4: k5 between
        (100, 10, False, ((10, 10),)),  # knitabit.net: every 10th
        (100, 11, False, ((10, 1), (9, 10))),  # knitabit.net: 9th ten times, 10th once
        (110, 10, True, ((10, 11),)),  # knitabit.net: 110/11 = 10
        (48, 6, False, ((8, 6),)),  # moderndailyknitting, "Evenly Across, part I": 6 groups of 8
        (72, 18, True, ((4, 15), (3, 4))),  # quotient and remainder: 72 = 19 x 3 + 15
        (73, 18, False, ((5, 1), (4, 17))),  # quotient and remainder
        (60, 10, True, ((6, 5), (5, 6))),  # 80 -> 70 flat: decreases use 20, 60 stay plain in 11 gaps
        (225, 21, False, ((11, 15), (10, 6))),  # 225 = 21 x 10 + 15
    ],
)
def test_published_and_computed_gap_counts(
    stitches: int, changes: int, flat: bool, expected: tuple[tuple[int, int], ...]
) -> None:
    """Gap sizes and how often each occurs match worked examples."""
    assert count_gaps(gaps(stitches, changes, flat=flat)) == expected


def test_published_example_120_plus_10_is_wrong_in_print() -> None:
    """knitabit.net prints "10th x9, 11th x1" for 120 flat; that is 101 stitches, so ours must differ."""
    printed = 10 * 9 + 11 * 1
    assert printed == 101
    ours = gaps(120, 10, flat=True)
    assert sum(ours) == 120
    assert count_gaps(ours) == ((11, 10), (10, 1))


def test_72_to_90_starts_with_half_a_repeat() -> None:
    """k2, m1, *k4, m1* x17, k2."""
    places = increase_positions(72, 18, flat=False)
    assert gaps_between(places, 72, flat=True) == (2, *([4] * 17), 2)


def test_80_to_70_leaves_six_plain_between_decreases() -> None:
    """*k6, k2tog* x10 with half a gap first: 10rowsaday, "Evenly increase/decrease"."""
    places = decrease_positions(80, 10, flat=False)
    assert places == (3, 11, 19, 27, 35, 43, 51, 59, 67, 75)
    assert gaps_between(places, 80, uses=2) == (6,) * 10


@pytest.mark.parametrize(
    ("stitches", "expected"), [(268, 89), (179, 59), (120, 40)], ids=["half", "three quarters", "top"]
)
def test_yoke_decreases_of_one_third_are_k1_k2tog(stitches: int, expected: int) -> None:
    """Knitting Without Tears yoke, 268 -> 179 -> 120 -> 80: *k1, k2tog* with the rest plain."""
    assert (
        count_gaps(gaps_between(decrease_positions(stitches, expected, flat=False), stitches, uses=2))[-1][0]
        == 1
    )
    if stitches == 120:
        assert set(gaps_between(decrease_positions(120, 40, flat=False), 120, uses=2)) == {1}


def test_double_decreases_use_three_stitches() -> None:
    """Two stitches fewer each: 60 to 48 with six double decreases leaves seven plain between."""
    assert count_gaps(gaps_between(decrease_positions(60, 6, uses=3, flat=False), 60, uses=3)) == ((7, 6),)


def test_225_to_246_starts_half_a_gap_in() -> None:
    """The sample garment's final increase: 5, 16, 26, ... by floor((2i+1)n/2k)."""
    places = increase_positions(225, 21, flat=False)
    assert places == tuple((2 * i + 1) * 225 // 42 for i in range(21))
    assert places[:3] == (5, 16, 26)


@given(st.integers(0, 300), st.integers(0, 60), st.booleans(), st.sampled_from(["whole", "half"]))
def test_gaps_sum_to_the_stitches(stitches: int, changes: int, flat: bool, start: str) -> None:
    """Whatever the start, no stitch is lost."""
    parts = gaps(stitches, changes, flat=flat, start=start)  # type: ignore[arg-type]  # sampled words
    assert len(parts) == (changes + 1 if flat else changes)
    if parts:
        assert sum(parts) == stitches
        assert min(parts) >= 0
    full = parts[1:-1] if flat and start == "half" else parts
    if full:
        assert max(full) - min(full) <= 1


@pytest.mark.parametrize("flat", [False, True])
def test_more_increases_than_gaps_is_refused_with_a_sentence(flat: bool) -> None:
    """A make-one needs its own bar between two stitches."""
    limit = 9 if flat else 10
    assert len(increase_positions(10, limit, flat=flat)) == limit
    with pytest.raises(ValueError, match=f"at most {limit}"):
        increase_positions(10, limit + 1, flat=flat)


def test_more_decreases_than_pairs_is_refused_with_a_sentence() -> None:
    """Eleven stitches hold five pairs."""
    assert len(decrease_positions(11, 5, flat=True)) == 5
    with pytest.raises(ValueError, match="need 12 stitches, but there are 11: at most 5"):
        decrease_positions(11, 6, flat=False)


def test_bad_arguments_are_refused() -> None:
    """Every range in a docstring is kept."""
    with pytest.raises(ValueError, match="0 up"):
        gaps(-1, 2)
    with pytest.raises(ValueError, match="start"):
        gaps(10, 2, start="third")  # type: ignore[arg-type]  # the point of the test
    with pytest.raises(ValueError, match="uses"):
        decrease_positions(10, 2, uses=1, flat=False)
    with pytest.raises(ValueError, match="in order"):
        gaps_between((5, 3), 10)
    with pytest.raises(ValueError, match="in order"):
        gaps_between((3, 9), 10, uses=2)
    with pytest.raises(ValueError, match="in order"):
        gaps_between((-1, 5), 10)


def test_nothing_to_do_is_nothing() -> None:
    """No changes: no positions; a flat row is one gap."""
    assert increase_positions(10, 0, flat=False) == ()
    assert decrease_positions(0, 0, flat=True) == ()
    assert gaps(10, 0) == ()
    assert gaps(10, 0, flat=True) == (10,)
    assert gaps_between((), 10, flat=True) == (10,)
    assert gaps_between((), 10) == ()


def test_fewer_than_no_changes_and_fewer_than_no_stitches_are_refused() -> None:
    """A sign that slipped in must not come out as a round."""
    for stitches, changes in ((10, -1), (-1, 0)):
        with pytest.raises(ValueError, match="from 0 up"):
            increase_positions(stitches, changes, flat=False)
    assert increase_positions(0, 0, flat=False) == ()
