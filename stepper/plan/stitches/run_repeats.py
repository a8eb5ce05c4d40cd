"""Find the repeats in a round laid out flat, so that it takes few words. No I/O."""

from __future__ import annotations

from collections.abc import Iterable

from stepper.craft.even.ordered_gaps import count_alike
from stepper.plan.model import Group, Item, Run, flatten

LONGEST_REPEAT = 8
"""Most runs in one repeat: nobody remembers more than four pairs. Unit: runs."""


def join_runs(runs: Iterable[Run]) -> tuple[Run, ...]:
    """Join neighbours of the same stitch and yarn. The stitches stay the same."""
    made: list[Run] = []
    for run in runs:
        if made and made[-1].stitch == run.stitch and made[-1].yarn == run.yarn:
            made[-1] = Run(run.stitch, made[-1].times + run.times, run.yarn)
        else:
            made.append(run)
    return tuple(made)


def condense(runs: tuple[Run, ...]) -> tuple[Item, ...]:
    """Write a flat round with repeats as groups, in the fewest items.

    It works from the end, so that the best wording of the rest is known at each place. A group costs its
    items and one more. `flatten` of the result gives the same runs.
    """
    size = len(runs)
    numbers: dict[Run, int] = {}
    names = [numbers.setdefault(run, len(numbers)) for run in runs]
    alike = count_alike(names, LONGEST_REPEAT)
    cost = [0] * (size + 1)
    choice: list[tuple[int, int]] = [(1, 1)] * size
    for start in range(size - 1, -1, -1):
        cost[start] = 1 + cost[start + 1]
        for period in range(1, min(LONGEST_REPEAT, size - start) + 1):
            times = 1 + alike[period][start] // period
            found = period + 1 + cost[start + period * times]
            if found < cost[start]:
                cost[start] = found
                choice[start] = (period, times)
    return _written(runs, choice)


def _written(runs: tuple[Run, ...], choice: list[tuple[int, int]]) -> tuple[Item, ...]:
    items: list[Item] = []
    start = 0
    while start < len(runs):
        period, times = choice[start]
        if times > 1:
            items.append(Group(runs[start : start + period], times))
        else:
            items.append(runs[start])
        start += period * times
    return tuple(items)


def laid_flat(phrase: tuple[Item, ...]) -> tuple[Run, ...]:
    """Lay a phrase out flat, with equal neighbours joined."""
    return join_runs(flatten(phrase))
