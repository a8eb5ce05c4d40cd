"""Fault finding against every possible search tree, every possible strategy, Huffman's bound and Shannon's entropy."""

from __future__ import annotations

import heapq
import math
from functools import cache
from itertools import combinations

import pytest
import scipy
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.craft.fault_finding import CountedSection, NextCount, Sparing, next_count, plain_odds

rows = st.lists(
    st.builds(CountedSection, stitches=st.integers(1, 60), odds=st.floats(0.05, 50)), min_size=1, max_size=7
)


def _search(row: list[CountedSection], faulty: int, sparing: Sparing = "counts") -> tuple[int, int]:
    """Follow the advice until one section is left; counts made and stitches counted."""
    suspects, counts, stitches = tuple(range(len(row))), 0, 0
    while (advice := next_count(row, suspects, sparing=sparing)) is not None:
        counts += 1
        stitches += sum(section.stitches for section in row[slice(*advice.count)])
        found_wrong = advice.count[0] <= faulty < advice.count[1]
        suspects = advice.if_wrong if found_wrong else advice.if_right
        assert counts <= len(row)
    assert suspects == (faulty,)
    return counts, stitches


def _best_of_all_strategies(row: list[CountedSection]) -> float:
    """Try every strategy: at each point any set of sections may be counted, neighbours or not. Gives the
    odds-weighted stitches, not divided by the odds."""

    @cache
    def best(suspects: frozenset[int]) -> float:
        if len(suspects) == 1:
            return 0.0
        odds = sum(row[at].odds for at in suspects)
        found = math.inf
        for size in range(1, len(suspects)):
            for counted in combinations(sorted(suspects), size):
                cost = odds * sum(row[at].stitches for at in counted)
                rest = suspects - set(counted)
                found = min(found, cost + best(frozenset(counted)) + best(rest))
        return found

    return best(frozenset(range(len(row))))


def _best_of_all_trees(row: list[CountedSection]) -> float:
    """Try every tree; odds-weighted counts, not divided by the odds."""
    if len(row) == 1:
        return 0.0
    odds = sum(section.odds for section in row)
    best = math.inf
    for cut in range(1, len(row)):
        best = min(best, odds + _best_of_all_trees(row[:cut]) + _best_of_all_trees(row[cut:]))
    return best


def _huffman(odds: list[float]) -> float:
    """Mean depth of the best tree without any order: a lower bound (Huffman 1952)."""
    heap, depth = list(odds), 0.0
    heapq.heapify(heap)
    while len(heap) > 1:
        joined = heapq.heappop(heap) + heapq.heappop(heap)
        depth += joined
        heapq.heappush(heap, joined)
    return depth / sum(odds)


def _needed(advice: NextCount | None) -> NextCount:
    assert advice is not None
    return advice


@settings(deadline=None)
@given(rows)
def test_no_search_tree_needs_fewer_counts(row: list[CountedSection]) -> None:
    """The average promised is the best of all trees, and following the advice keeps the promise."""
    if len(row) == 1:
        assert next_count(row, sparing="counts") is None
        return
    odds = [section.odds for section in row]
    counts = _needed(next_count(row, sparing="counts"))
    assert counts.expected_counts == pytest.approx(_best_of_all_trees(row) / sum(odds))
    walked = sum(o * _search(row, i)[0] for i, o in enumerate(odds)) / sum(odds)
    assert counts.expected_counts == pytest.approx(walked)


@settings(deadline=None, max_examples=60)
@given(rows)
def test_no_strategy_counts_fewer_stitches(row: list[CountedSection]) -> None:
    """Against every strategy there is, counting any set of sections at once; and the promise is kept."""
    if len(row) == 1:
        return
    odds = [section.odds for section in row]
    advice = _needed(next_count(row))
    assert advice.expected_stitches == pytest.approx(_best_of_all_strategies(row) / sum(odds))
    walked = sum(o * _search(row, i, "stitches")[1] for i, o in enumerate(odds)) / sum(odds)
    assert advice.expected_stitches == pytest.approx(walked)


def test_halving_counts_nearly_twice_the_stitches() -> None:
    """Sixteen equal sections: 4 counts and 15/16 of the stitches by halving, 8.4 counts and 53 % one by one.

    Source: 8 + 4 + 2 + 1 of 16; (1 + 2 + ... + 15 + 15) / 16 of 16, by hand.
    """
    row = [CountedSection(stitches=20, odds=1)] * 16
    halved, scanned = _needed(next_count(row, sparing="counts")), _needed(next_count(row))
    assert (halved.expected_counts, halved.expected_stitches) == (4, 300)
    assert (scanned.expected_counts, scanned.expected_stitches) == pytest.approx((135 / 16, 20 * 135 / 16))


def test_a_question_that_costs_something_is_asked_less_often() -> None:
    """Twenty rib repeats of four stitches: free questions ask one by one, dear ones halve, and in between the
    effort is no more than that of either."""
    row = [CountedSection(stitches=4, odds=1)] * 20
    free, halved = _needed(next_count(row)), _needed(next_count(row, sparing="counts"))
    assert _needed(next_count(row, question=1e6)).expected_counts == halved.expected_counts
    for price in (1, 4, 8, 20):
        both = _needed(next_count(row, question=price))
        effort = [each.expected_stitches + price * each.expected_counts for each in (both, free, halved)]
        assert effort[0] <= min(effort[1:]) + 1e-9
    assert _needed(next_count(row, question=8)).expected_counts < free.expected_counts
    ordered = _needed(next_count(row, question=8, in_order=True))
    assert ordered.count[0] == 0 < ordered.count[1] - 1


def test_in_order_counts_from_the_first_suspect_on() -> None:
    """Where increases are counted off from the beginning, a later one cannot be found without the earlier."""
    row = [CountedSection(stitches=20, odds=o) for o in (1, 1, 90, 1)]
    assert _needed(next_count(row)).count == (2, 3)
    assert _needed(next_count(row, in_order=True)).count == (0, 1)
    assert _needed(next_count(row, (1, 2, 3), in_order=True)).count == (1, 2)


@settings(deadline=None)
@given(
    st.lists(
        st.builds(CountedSection, stitches=st.integers(1, 60), odds=st.floats(0.05, 50)),
        min_size=2,
        max_size=24,
    )
)
def test_counts_lie_between_the_bounds(row: list[CountedSection]) -> None:
    """Entropy and Huffman from below, entropy plus 2 from above (Gilbert and Moore 1959)."""
    odds = [section.odds for section in row]
    advice = _needed(next_count(row, sparing="counts"))
    entropy = float(scipy.stats.entropy(odds, base=2))
    assert entropy - 1e-9 <= advice.expected_counts < entropy + 2
    assert _huffman(odds) <= advice.expected_counts + 1e-9


@pytest.mark.parametrize("doublings", range(1, 6))
def test_equal_sections_are_halved(doublings: int) -> None:
    """2^k equal sections take k counts each time: the entropy itself, halving each time."""
    row = [CountedSection(stitches=20, odds=1)] * 2**doublings
    advice = _needed(next_count(row, sparing="counts"))
    assert advice.expected_counts == doublings
    assert advice.count[1] - advice.count[0] == 2 ** (doublings - 1)
    assert all(_search(row, faulty)[0] == doublings for faulty in range(2**doublings))


def test_the_part_with_fewer_stitches_is_counted() -> None:
    """The other part's answer follows from the wrong total."""
    advice = _needed(next_count([CountedSection(stitches=100, odds=1), CountedSection(stitches=30, odds=1)]))
    assert advice.count == (1, 2)
    assert advice.stitches == 30
    assert (advice.if_wrong, advice.if_right) == ((1,), (0,))


@pytest.mark.parametrize("stitches", [(100, 30), (30, 100), (60, 50, 10, 20), (10, 20, 60, 50)])
def test_the_half_with_fewer_stitches_is_counted(stitches: tuple[int, ...]) -> None:
    """Either half tells the same, so the shorter one is counted; only what is counted from the beginning is not free."""
    row = [CountedSection(stitches=each, odds=1) for each in stitches]
    middle = len(row) // 2
    halves = {(0, middle): sum(stitches[:middle]), (middle, len(row)): sum(stitches[middle:])}
    advice = _needed(next_count(row, sparing="counts"))
    assert (advice.count, advice.stitches) == min(halves.items(), key=lambda half: half[1])
    assert _needed(next_count(row, sparing="counts", in_order=True)).count == (0, middle)


def test_likely_sections_come_first() -> None:
    """A section with nearly all the odds is counted alone."""
    row = [CountedSection(stitches=20, odds=o) for o in (40, 1, 1, 1, 1, 1, 1, 1)]
    assert _needed(next_count(row)).count == (0, 1)


def test_shaping_raises_the_odds() -> None:
    """A section with three changes is likelier than a plain one of the same length: by eight stitches for each (an assumption
    of this project)."""
    assert (plain_odds(20, 3), plain_odds(20, 0), plain_odds(1, 0)) == (44, 20, 1)


def test_bad_arguments_are_refused() -> None:
    """Every range in a docstring is kept."""
    row = [CountedSection(stitches=10, odds=1)] * 4
    with pytest.raises(ValueError, match="section needs"):
        CountedSection(stitches=0, odds=1)
    with pytest.raises(ValueError, match="section needs"):
        CountedSection(stitches=1, odds=0)
    with pytest.raises(ValueError, match="suspects"):
        next_count(row, ())
    with pytest.raises(ValueError, match="suspects"):
        next_count(row, (0, 5))
    with pytest.raises(ValueError, match="suspects"):
        next_count(row, (2, 1))
    with pytest.raises(ValueError, match="neighbouring"):
        next_count(row, (0, 2), sparing="counts")
    with pytest.raises(ValueError, match="suspects"):
        next_count([])
    with pytest.raises(ValueError, match="sparing"):
        next_count(row, sparing="time")  # type: ignore[arg-type]  # the point of the test
    with pytest.raises(ValueError, match="suspects"):
        next_count(row, (-1, 2))
    with pytest.raises(ValueError, match="stitch or more"):
        plain_odds(0, 1)
    with pytest.raises(ValueError, match="changes"):
        plain_odds(1, -1)


@settings(deadline=None, max_examples=40)
@given(rows, st.booleans())
def test_the_stitches_promised_are_those_that_are_counted(row: list[CountedSection], in_order: bool) -> None:
    """Where counts are saved the price in stitches is told as well, and is what following the advice comes to."""
    if len(row) == 1:
        return
    odds = [section.odds for section in row]
    advice = _needed(next_count(row, sparing="counts", in_order=in_order))
    walked = 0.0
    for faulty, weight in enumerate(odds):
        suspects = tuple(range(len(row)))
        while (step := next_count(row, suspects, sparing="counts", in_order=in_order)) is not None:
            walked += weight * sum(section.stitches for section in row[slice(*step.count)])
            suspects = step.if_wrong if step.count[0] <= faulty < step.count[1] else step.if_right
    assert advice.expected_stitches == pytest.approx(walked / sum(odds))


def test_two_sections_are_settled_by_counting_the_smaller() -> None:
    """Of 10 and 30 stitches one count of 10 tells which is wrong, whatever is to be saved (worked by hand)."""
    row = [CountedSection(stitches=30, odds=1), CountedSection(stitches=10, odds=1)]
    for advice in (next_count(row), next_count(row, sparing="counts"), next_count(row, question=5)):
        assert (_needed(advice).count, _needed(advice).stitches) == ((1, 2), 10)
        assert (_needed(advice).expected_counts, _needed(advice).expected_stitches) == (1, 10)


def test_odds_without_end_and_suspects_out_of_order_are_refused() -> None:
    """Either would send her to count a stretch for no reason."""
    for odds in (math.inf, math.nan, 0.0):
        with pytest.raises(ValueError, match="odds above 0"):
            CountedSection(stitches=5, odds=odds)
    row = [CountedSection(stitches=5, odds=1.0)] * 4
    for suspects in ((0, 2, 1, 3), (0, 1, 1, 3), ()):
        with pytest.raises(ValueError, match="suspects must be"):
            next_count(row, suspects, sparing="stitches")


def test_suspects_that_are_no_neighbours_are_counted_one_by_one_however_dear_a_question_is() -> None:
    """Counted together, the sections between, which are known to be right, would be counted as well."""
    row = [CountedSection(stitches=5, odds=1.0)] * 9
    together = next_count(row, tuple(range(5)), sparing="stitches", question=100.0)
    apart = next_count(row, (0, 2, 4, 6, 8), sparing="stitches", question=100.0)
    assert together is not None
    assert apart is not None
    assert len(together.if_wrong) > 1
    assert (len(apart.if_wrong), apart.count[1] - apart.count[0]) == (1, 1)
