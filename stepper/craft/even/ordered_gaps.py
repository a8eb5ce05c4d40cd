"""Gaps in a given order, written as a phrase in few words.

It works from the end, so that the best wording of the rest is known at each place; the contents of a repeat
are written the same way. Words that separate two parts ("then") have no weight. No I/O.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache, lru_cache

from stepper.craft.even.phrases import Part, Phrase, Repeat, SpacedStretch, words_in

LONGEST_REPEAT = 16
"""Most changes in a repeat that is searched for."""


def write_gaps(gaps: tuple[int, ...], change: str) -> Phrase:
    """Write gaps in their order.

    Args:
        gaps: Plain stitches before each change, in working order.
        change: Code of the change in the stitch table, for its words.

    Returns:
        A phrase with the same gaps. Repeats are nested at most once.

    Source: dynamic programming, as for any shortest path.
    """
    return _written(gaps, change, 1)


@cache
def _unit(gap: int, times: int, change: str) -> int:
    return words_in((SpacedStretch(gap, times),), change)


def _written(gaps: tuple[int, ...], change: str, depth: int) -> Phrase:
    size = len(gaps)
    alike = count_alike(gaps, LONGEST_REPEAT)
    cost = [0] * (size + 1)
    choice: list[tuple[Part, int]] = []
    for start in range(size - 1, -1, -1):
        times = 1 + alike[1][start]
        best: Part = SpacedStretch(gaps[start], times)
        end = start + times
        cost[start] = _unit(gaps[start], times, change) + cost[end]
        for period in range(2, min(LONGEST_REPEAT, (size - start) // 2) + 1):
            if alike[period][start] < period:
                continue
            times = 1 + alike[period][start] // period
            part, words = _repeat(gaps[start : start + period], times, change, depth)
            behind = start + period * times
            if words + cost[behind] < cost[start]:
                cost[start], best, end = words + cost[behind], part, behind
        choice.append((best, end))
    return _chosen(choice[::-1])


@lru_cache(maxsize=4096)
def _repeat(body: tuple[int, ...], times: int, change: str, depth: int) -> tuple[Part, int]:
    inside = _written(body, change, depth - 1) if depth else tuple(SpacedStretch(gap) for gap in body)
    part = Repeat(inside, times)
    return part, words_in((part,), change)


def count_alike(numbers: Sequence[int], longest: int) -> list[list[int]]:
    """Return, for each period and place, how many numbers from there on equal those one period later.

    Args:
        numbers: In their order.
        longest: The longest period looked at. Range: 1 and up.

    Returns:
        By the period, from 0, which is left empty. Shape: (longest + 1, len(numbers)).
    """
    size = len(numbers)
    table = [[0] * size for _ in range(longest + 1)]
    for period in range(1, longest + 1):
        row = table[period]
        for start in range(size - period - 1, -1, -1):
            if numbers[start] == numbers[start + period]:
                row[start] = row[start + 1] + 1
    return table


def _chosen(choice: list[tuple[Part, int]]) -> Phrase:
    parts, start = [], 0
    while start < len(choice):
        part, start = choice[start]
        parts.append(part)
    return tuple(parts)
