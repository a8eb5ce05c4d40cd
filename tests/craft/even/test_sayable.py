"""The shortest sayable phrase, against a search over every order of the gaps and every phrase of each."""

from __future__ import annotations

import random
from collections.abc import Iterator
from fractions import Fraction
from functools import cache
from itertools import accumulate, combinations, pairwise

import pytest

from stepper.craft.even.manners import space_changes
from stepper.craft.even.phrases import (
    KNIT_TOGETHER,
    MAKE_ONE,
    Part,
    Phrase,
    Plain,
    Repeat,
    SpacedStretch,
    unfold,
    words_in,
)
from stepper.craft.even.sayable import shortest
from stepper.craft.window import Gaps, Window
from tests.tables import each_row


@cache
def every_phrase(gaps: tuple[int, ...]) -> tuple[Phrase, ...]:
    """Write some gaps in every way there is: each cut into parts, each part as often as it repeats itself."""
    if not gaps:
        return ((),)
    found: list[Phrase] = []
    for cut in range(1, len(gaps) + 1):
        heads: list[Part] = [SpacedStretch(gaps[0], cut)] if len(set(gaps[:cut])) == 1 else []
        for period in range(2, cut // 2 + 1):
            if cut % period == 0 and gaps[:period] * (cut // period) == gaps[:cut]:
                heads += [
                    Repeat(body, cut // period) for body in every_phrase(gaps[:period]) if len(body) > 1
                ]
        found += [(head, *rest) for head in heads for rest in every_phrase(gaps[cut:])]
    return tuple(found)


def can_be_said(phrase: Phrase) -> bool:
    """Allow a repeat that begins with its times in another only where that one is the whole round."""
    deep = [part for part in phrase if isinstance(part, Repeat) and part.deep]
    if not deep:
        return True
    inner = [part for part in deep[0].parts if isinstance(part, Repeat)]
    return len(phrase) == 1 and not any(part.deep for part in inner)


@cache
def fewest_words(gaps: tuple[int, ...], lead: int | None, tail: int, change: str) -> int:
    """Count the words of the shortest phrase for gaps in their order, with the ends of a row around them."""
    behind = (Plain(tail),) if tail else ()
    written = every_phrase(gaps if lead is None else (lead, *gaps))
    return min(words_in((*each, *behind), change) for each in written if can_be_said((*each, *behind)))


def orders(size: int, smaller: int, larger: int) -> Iterator[tuple[int, ...]]:
    """Put so many smaller and larger gaps into every order."""
    for places in combinations(range(smaller + larger), larger):
        yield tuple(size + (place in places) for place in range(smaller + larger))


def stays_near(gaps: tuple[int, ...], plain: int, stitches: int, *, half: bool) -> bool:
    """Look whether each change stands within two gaps of its even place, by fractions."""
    changes = len(gaps)
    for number, worked in enumerate(accumulate(gaps)):
        even = Fraction(plain, changes) * (number + (Fraction(1, 2) if half else 1))
        if abs(worked - even) > 2 * Fraction(stitches, changes):
            return False
    return True


@each_row("change", [MAKE_ONE, KNIT_TOGETHER])
@each_row("changes", range(1, 10))
def test_in_the_round_no_phrase_of_any_order_is_shorter(changes: int, change: str) -> None:
    """Every order of the gaps, every phrase of each, and no limit to the stretches that it names."""
    uses = 0 if change == MAKE_ONE else 2
    for plain in range(changes if uses == 0 else 0, 3 * changes):
        size, larger = divmod(plain, changes)
        stitches = plain + uses * changes
        best = min(
            fewest_words(order, None, 0, change)
            for order in orders(size, changes - larger, larger)
            if stays_near(order, plain, stitches, half=False) and (order[0] or not plain)
        )
        assert space_changes(stitches, changes, change=change, flat=False).words == best, (stitches, changes)


def named(phrase: Phrase) -> int:
    """Count the stretches that a phrase names."""
    return sum(named(part.parts) if isinstance(part, Repeat) else 1 for part in phrase)


@cache
def fewest_in_four(gaps: tuple[int, ...]) -> int:
    """Count the words of the shortest phrase that names up to four stretches; 999 if there is none."""
    kept = [each for each in every_phrase(gaps) if named(each) <= 4 and can_be_said(each)]
    return min((words_in(each, MAKE_ONE) for each in kept), default=999)


@each_row("quarters", [2, 3, 4, 6])
@each_row("changes", range(2, 11))
def test_in_a_narrow_window_no_phrase_of_any_order_is_shorter(changes: int, quarters: int) -> None:
    """Two gaps are wide for few changes, so the window is made as narrow as a half stitch here."""
    for larger in range(1, changes):
        smaller = changes - larger
        best = min(
            fewest_in_four(order)
            for order in orders(4, smaller, larger)
            if all(
                abs(sum(order[:end]) - Fraction(4 * changes + larger, changes) * end) <= Fraction(quarters, 4)
                for end in range(1, changes + 1)
            )
        )
        # In quarters of a stitch times the changes.
        window = Window(0, -4 * larger, 4 * smaller, quarters * changes)
        phrase = shortest([(Gaps(4, smaller, larger), window)], MAKE_ONE)
        assert (words_in(phrase, MAKE_ONE) if phrase else 999) == best, (larger, smaller)


@pytest.mark.parametrize(("changes", "larger"), [(14, 3), (18, 4), (18, 14)])
def test_between_the_ends_of_a_row_no_repeat_in_a_repeat_has_times_inside(changes: int, larger: int) -> None:
    """ "2 times: 2 times: k4, m1, 2 times, ..." cannot be followed by ear: with such phrases a window a half stitch wide would
    be kept, without them it is not, by every order of the gaps and every phrase of each."""
    lead, tail, even = (SpacedStretch(2),), (Plain(2),), Fraction(4 * changes + larger, changes)
    near = [
        order
        for order in orders(4, changes - larger, larger)
        if all(abs(sum(order[:end]) - even * end) <= Fraction(1, 2) for end in range(1, changes + 1))
    ]
    assert near
    assert not [
        each
        for order in near
        for each in every_phrase(order)
        if named(each) <= 4 and can_be_said((*lead, *each, *tail))
    ]
    window = Window(0, -4 * larger, 4 * (changes - larger), 2 * changes)
    assert shortest([(Gaps(4, changes - larger, larger, lead, tail), window)], MAKE_ONE) is None


def says_one_twice(phrase: Phrase) -> bool:
    """Return whether two stretches of the same gap follow each other, which are one stretch with its times."""
    inside = any(says_one_twice(part.parts) for part in phrase if isinstance(part, Repeat))
    pairs = pairwise(phrase)
    return inside or any(
        isinstance(a, SpacedStretch) and isinstance(b, SpacedStretch) and a.gap == b.gap for a, b in pairs
    )


def nearest_first(gaps: Gaps, window: Window) -> tuple[int, int, bool, int] | None:
    """Return what the best phrase of all orders comes to: its words, its stretches, whether it begins with a smaller gap, and
    how far from its even place a change stands; None if no order of the gaps stays in the window."""
    found = []
    for order in orders(gaps.size, gaps.smaller, gaps.larger):
        if gaps.begins_larger not in (None, order[0] > gaps.size):
            continue
        at, far = window.start, abs(window.start)
        for gap in order:
            at += window.larger if gap > gaps.size else window.smaller
            far = max(far, abs(at))
        if far <= window.limit:
            for each in every_phrase(order):
                phrase = (*gaps.lead, *each, *gaps.tail)
                if named(each) <= 4 and can_be_said(phrase) and not says_one_twice(each):
                    found.append((words_in(phrase, MAKE_ONE), named(each), order[0] == gaps.size, far))
    return min(found, default=None)


@pytest.mark.parametrize("size", [0, 4, 20, 29])
def test_of_all_phrases_in_any_window_the_best_is_said(size: int) -> None:
    """Ends of a row, a beginning behind or ahead, gaps of one word beside gaps of two: first the words, then the stretches, the
    larger gap in front and the nearest places, against every order of the gaps and every phrase of each."""
    dice = random.Random(size)
    held = 0
    while held < 80:
        smaller, larger = dice.randint(1, 5), dice.randint(1, 5)
        ends = dice.random() < 0.4
        gaps = Gaps(
            size,
            smaller,
            larger,
            (SpacedStretch(2),) * ends,
            (Plain(2),) * ends,
            begins_larger=dice.choice((None, None, True, False)),
        )
        ahead, behind, start, limit = (
            dice.randint(1, 9),
            dice.randint(1, 9),
            dice.randint(-6, 6),
            dice.randint(6, 24),
        )
        if abs(start + larger * ahead - smaller * behind) > limit:
            continue
        window = Window(start, -behind, ahead, limit)
        phrase, best = shortest([(gaps, window)], MAKE_ONE), nearest_first(gaps, window)
        assert (phrase is None) == (best is None), (gaps, window)
        if phrase is None:
            continue
        held += 1
        inner = phrase[1:-1] if ends else phrase
        order, _ = unfold(inner)
        at, far = window.start, abs(window.start)
        for gap in order:
            at += ahead if gap > size else -behind
            far = max(far, abs(at))
        assert (words_in(phrase, MAKE_ONE), named(inner), order[0] == size, far) == best, (
            gaps,
            window,
            phrase,
        )


def every_row(plain: int, changes: int, least: int) -> Iterator[tuple[int, tuple[int, ...], int]]:
    """Put together every row: half a gap, all others, half a gap."""
    for lead in range(least, plain + 1):
        for tail in range(least, plain - lead + 1):
            size, larger = divmod(plain - lead - tail, changes - 1)
            ends = range(size // 2, (size + (2 if larger else 1)) // 2 + 1)
            if lead in ends and tail in ends:
                for order in orders(size, changes - 1 - larger, larger):
                    yield lead, order, tail


@each_row("change", [MAKE_ONE, KNIT_TOGETHER])
@each_row("changes", range(2, 8))
def test_in_rows_no_phrase_of_any_order_and_any_ends_is_shorter(changes: int, change: str) -> None:
    """In rows the two ends may be half of the smaller or the larger gap, rounded either way."""
    uses, least = (0, 1) if change == MAKE_ONE else (2, 0)
    for plain in range(changes + 1 if uses == 0 else 0, 3 * changes):
        stitches = plain + uses * changes
        best = min(
            fewest_words(order, lead, tail, change)
            for lead, order, tail in every_row(plain, changes, least)
            if stays_near((lead, *order), plain, stitches, half=True)
        )
        assert space_changes(stitches, changes, change=change, flat=True).words == best, (stitches, changes)


def test_of_equally_short_ones_the_larger_gap_comes_first() -> None:
    """Three of 5 and three of 4: "k5, m1 three times" is said before "k4, m1 three times"."""
    assert space_changes(27, 6, change=MAKE_ONE, flat=False).phrase == (Repeat((SpacedStretch(5), SpacedStretch(4)), 3),)
    assert space_changes(23, 5, change=MAKE_ONE, flat=False).phrase == (SpacedStretch(5, 3), SpacedStretch(4, 2))


def test_where_nothing_stays_near_enough_there_is_no_phrase() -> None:
    """A window of nothing at all holds no gaps that are not the even ones."""
    assert shortest([(Gaps(4, 3, 4), Window(0, -4, 3, 0))], MAKE_ONE) is None
    assert shortest([(Gaps(4, 3, 0), Window(0, 0, 1, 0))], MAKE_ONE) == (SpacedStretch(4, 3),)


@pytest.mark.parametrize(
    ("stitches", "changes", "expected"),
    [
        (200, 56, (Repeat((SpacedStretch(4, 4), SpacedStretch(3, 3)), 8),)),  # 200 = 8 x (4 x 4 + 3 x 3)
        (294, 70, (Repeat((SpacedStretch(4, 4), SpacedStretch(5)), 14),)),  # 294 = 14 x (4 x 4 + 5)
        (175, 125, (Repeat((SpacedStretch(2, 2), SpacedStretch(1, 3)), 25),)),  # 175 = 25 x (2 x 2 + 3 x 1)
        (225, 21, (SpacedStretch(11, 15), SpacedStretch(10, 6))),  # 225 = 15 x 11 + 6 x 10
        (100, 10, (SpacedStretch(10, 10),)),  # knitabit.net: every 10th
    ],
)  # fmt: skip
def test_rounds_worked_out_by_hand(stitches: int, changes: int, expected: Phrase) -> None:
    """A common factor is a repeat of everything; few changes are two stretches."""
    assert space_changes(stitches, changes, change=MAKE_ONE, flat=False).phrase == expected
