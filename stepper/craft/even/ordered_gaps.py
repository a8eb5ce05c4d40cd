"""Gaps in a given order, written as a phrase in few words.

It works from the end, so that the best wording of the rest is known at each place; the contents of a repeat
are written the same way. Words that separate two parts ("then") have no weight. No I/O.
"""

from __future__ import annotations

from functools import cache, lru_cache

from stepper.craft.even.phrases import Part, Phrase, Repeat, Stretch, words_in

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
    return words_in((Stretch(gap, times),), change)


def _written(gaps: tuple[int, ...], change: str, depth: int) -> Phrase:
    size = len(gaps)
    alike = _alike(gaps)
    cost = [0] * (size + 1)
    choice: list[tuple[Part, int]] = []
    for start in range(size - 1, -1, -1):
        times = 1 + alike[1][start]
        best: Part = Stretch(gaps[start], times)
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
    inside = _written(body, change, depth - 1) if depth else tuple(Stretch(gap) for gap in body)
    part = Repeat(inside, times)
    return part, words_in((part,), change)


def _alike(gaps: tuple[int, ...]) -> list[list[int]]:
    """Return, for each period and place, how many gaps from there on equal those one period later."""
    size = len(gaps)
    table = [[0] * size for _ in range(LONGEST_REPEAT + 1)]
    for period in range(1, LONGEST_REPEAT + 1):
        row = table[period]
        for start in range(size - period - 1, -1, -1):
            row[start] = row[start + 1] + 1 if gaps[start] == gaps[start + period] else 0
    return table


def _chosen(choice: list[tuple[Part, int]]) -> Phrase:
    parts, start = [], 0
    while start < len(choice):
        part, start = choice[start]
        parts.append(part)
    return tuple(parts)
