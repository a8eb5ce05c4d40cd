"""The evenly spaced round against published examples and general libraries."""

from __future__ import annotations

import numpy
import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.spacing import count_gaps, gaps_between
from stepper.plan.evenly import even_round, purled, tallied
from stepper.plan.run_repeats import laid_flat


def test_the_blended_round_of_the_scenario() -> None:
    """225 to 246: 21 increases, 15 gaps of 11 and 6 of 10.

    Source: whole-number division, 225 = 21 × 10 + 15; numpy.array_split shares the same way (check-values
    3.3.5).
    """
    _, places = even_round(225, 246, yarn="MC", flat=False)
    assert len(places) == 21
    assert count_gaps(gaps_between(places, 225)) == ((11, 15), (10, 6))
    parts = sorted(len(part) for part in numpy.array_split(range(225), 21))
    assert sorted(gaps_between(places, 225)) == parts


@pytest.mark.parametrize(
    ("before", "after", "sizes"),
    [
        # Source: published worked examples, check-values 3.1.1, 3.1.6, 3.1.7, 3.1.11 and computed 3.2.1, 3.2.3.
        (51, 55, [12, 13, 13, 13]),
        (100, 110, [10] * 10),
        (100, 111, [9] * 10 + [10]),
        (48, 54, [8] * 6),
        (72, 90, [4] * 18),
        (73, 91, [4] * 17 + [5]),
    ],
)
def test_published_increases_in_the_round(before: int, after: int, sizes: list[int]) -> None:
    """The gaps are those of the printed answers, whatever their order."""
    _, places = even_round(before, after, yarn="MC", flat=False)
    assert sorted(gaps_between(places, before)) == sizes


def test_eighty_to_seventy_is_knit_six_knit_two_together_ten_times() -> None:
    """Source: check-values 3.2.4, computed: *k6, k2tog* x10 in the round."""
    phrase, places = even_round(80, 70, yarn="MC", flat=False)
    assert len(places) == 10
    plain = [run.times for run in laid_flat(phrase) if run.stitch == "k"]
    assert sum(plain) == 60
    assert set(plain[1:-1]) == {6}
    assert plain[0] + plain[-1] == 6


@given(st.integers(2, 400), st.data())
def test_the_round_uses_and_leaves_what_it_says(before: int, data: st.DataObject) -> None:
    """For every pair of counts, in the round and flat."""
    flat = data.draw(st.booleans())
    after = data.draw(st.integers((before + 1) // 2, 2 * before - 1))
    phrase, places = even_round(before, after, yarn="MC", flat=flat)
    assert sum(item.uses for item in phrase) == before
    assert sum(item.leaves for item in phrase) == after
    assert len(places) == abs(after - before)
    short = tallied(before, after, yarn="MC")
    assert sum(item.uses for item in short) == before
    assert sum(item.leaves for item in short) == after


def test_what_cannot_be_done_is_refused() -> None:
    """More than one increase between two stitches, more than half the stitches decreased away."""
    with pytest.raises(ValueError, match=r"."):
        even_round(10, 40, yarn="MC", flat=False)
    with pytest.raises(ValueError, match=r"."):
        even_round(10, 3, yarn="MC", flat=False)


def test_a_purled_round_looks_from_behind_as_the_knitted_one() -> None:
    """Each stitch has its twin of the other side: k and p, m1 and m1p, k2tog and p2tog (check-values 1.7.4)."""
    for after in (25, 16):
        knitted, _ = even_round(20, after, yarn="MC", flat=True)
        purl = laid_flat(purled(knitted))
        assert [run.times for run in purl] == [run.times for run in laid_flat(knitted)]
        assert {run.stitch for run in purl} == ({"p", "m1p"} if after > 20 else {"p", "p2tog"})
