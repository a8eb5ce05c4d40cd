"""Gaps in a given order as a phrase: the same gaps, in few words."""

from __future__ import annotations

from itertools import product

from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.even.ordered_gaps import write_gaps
from stepper.craft.even.phrases import MAKE_ONE, Part, Phrase, Repeat, SpacedStretch, unfold, words_in


@given(st.lists(st.integers(0, 3), max_size=40).map(tuple))
def test_the_gaps_stay_the_same(gaps: tuple[int, ...]) -> None:
    """A phrase that loses or moves a gap is a wrong round."""
    assert unfold(write_gaps(gaps, MAKE_ONE)) == (gaps, 0)


@given(st.lists(st.integers(1, 3), min_size=1, max_size=40).map(tuple))
def test_no_phrase_is_longer_than_the_gaps_one_by_one(gaps: tuple[int, ...]) -> None:
    """ "Then" aside, which is not weighed: at most one for each part."""
    one_by_one = tuple(SpacedStretch(gap) for gap in gaps)
    assert words_in(write_gaps(gaps, MAKE_ONE), MAKE_ONE) <= words_in(one_by_one, MAKE_ONE) + len(gaps)


def test_repeats_are_found_and_nested() -> None:
    """Three times (4, 4, 4, 3) and then 3 over and over."""
    assert write_gaps((4, 4, 4, 3) * 3 + (3, 3, 3), MAKE_ONE) == (
        Repeat((SpacedStretch(4, 3), SpacedStretch(3)), 3),
        SpacedStretch(3, 3),
    )
    assert write_gaps((5,) * 9, MAKE_ONE) == (SpacedStretch(5, 9),)
    nested = write_gaps((2, 1, 2, 1, 2, 1, 3) * 4, MAKE_ONE)
    assert nested == (Repeat((Repeat((SpacedStretch(2), SpacedStretch(1)), 3), SpacedStretch(3)), 4),)


def words(phrase: Phrase) -> int:
    """Count the words of the parts of a phrase, "then" between them aside."""
    return sum(words_in((part,), MAKE_ONE) for part in phrase)


def shortest(gaps: tuple[int, ...], depth: int = 1) -> Phrase:
    """Try every way to begin with all gaps that are alike or with a repeat, and every way to go on; keep the shortest."""
    if not gaps:
        return ()
    alike = next((at for at, gap in enumerate(gaps) if gap != gaps[0]), len(gaps))
    ways: list[tuple[Part, int]] = [(SpacedStretch(gaps[0], alike), alike)]
    for period in range(2, len(gaps) // 2 + 1):
        body, times = gaps[:period], 1
        while gaps[period * times : period * (times + 1)] == body:
            times += 1
        if times > 1:
            inside = shortest(body, depth - 1) if depth else tuple(SpacedStretch(gap) for gap in body)
            ways.append((Repeat(inside, times), period * times))
    return min(((part, *shortest(gaps[end:], depth)) for part, end in ways), key=words)


def test_of_all_ways_to_write_a_few_gaps_none_is_shorter() -> None:
    """She hears every word. Numbers of one word and of two, up to eight gaps of two sizes and six of three; each way tried."""
    for sizes, most in (((4, 21), 8), ((3, 4, 30), 6)):
        for count in range(1, most + 1):
            for gaps in product(sizes, repeat=count):
                assert words(write_gaps(gaps, MAKE_ONE)) == words(shortest(gaps)), gaps


def test_a_repeat_of_sixteen_changes_is_still_found_and_a_longer_one_is_not() -> None:
    """No knitter keeps seventeen gaps in mind. Gaps that have no shorter repeat in them: one of each size."""
    for period, found in ((16, True), (17, False)):
        gaps = tuple(range(30, 30 + period)) * 2
        written = write_gaps(gaps, MAKE_ONE)
        assert unfold(written) == (gaps, 0)
        assert any(isinstance(part, Repeat) for part in written) is found
