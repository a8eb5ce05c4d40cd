"""Runs of consecutive rounds that are worked alike, for reading. No I/O."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from stepper.plan.model import Round
from stepper.plan.stitches.abbreviate import yarns_of


def fold_alike(rounds: Sequence[Round]) -> Iterator[tuple[Round, Round]]:
    """Group consecutive rounds that are worked exactly alike, with nothing to say or count in between.

    Yields:
        First and last round of each stretch, in order. Always: every round is in one stretch.
    """
    at = 0
    while at < len(rounds):
        last = at
        while last + 1 < len(rounds) and _goes_on(rounds[last], rounds[last + 1]):
            last += 1
        yield rounds[at], rounds[last]
        at = last + 1


def _goes_on(one: Round, other: Round) -> bool:
    same = other.section == one.section and other.flat == one.flat and other.altered == one.altered
    if not same or other.remarks or other.label or one.checkpoint is not None:
        return False
    if set(yarns_of(other.runs)) != set(yarns_of(one.runs)):
        return False  # a round of one colour does not name it in its instruction
    return other.instruction == one.instruction and other.before == one.before and other.after == one.after
