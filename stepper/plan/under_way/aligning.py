"""Align the rounds of two plans by what is knitted in them. Pure.

How well a seam (a place between two rounds) of one plan matches a seam of another is measured by the rounds
that agree, in order, before both and after both: the longest common subsequence of what comes before, and
that of what comes after. Both are worked out for all seams of the other plan at once with one machine word a
plan, after Crochemore, Iliopoulos, Pinzon and Reid 2001, "A fast and practical bit-vector algorithm for the
longest common subsequence problem" (from memory; the tests compare it with the table of the textbooks).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Hashable, Sequence

from stepper.plan.model import Plan
from stepper.plan.under_way.fingerprint import Knitted, placed_alike

ALIKE = 0.5
"""Share of the rounds of a section that must be found in another for it to be the same one under another
name. Source: chosen here."""


def common_lengths(one: Sequence[Hashable], other: Sequence[Hashable]) -> list[int]:
    """Return the lengths of the longest common subsequences with the beginnings of another sequence.

    Args:
        one: A sequence.
        other: The one whose beginnings are compared with it.

    Returns:
        For each number of items from 0 to all of `other` the length. Shape: (len(other) + 1,).
    """
    where: dict[Hashable, int] = {}
    for at, item in enumerate(other):
        where[item] = where.get(item, 0) | 1 << at
    full = (1 << len(other)) - 1
    bits = full
    for item in one:
        matched = bits & where.get(item, 0)
        bits = ((bits + matched) | (bits - matched)) & full
    lengths = [0]
    for at in range(len(other)):
        lengths.append(lengths[-1] + (not bits >> at & 1))
    return lengths


def seams(before: Sequence[Hashable], after: Sequence[Hashable], other: Sequence[Hashable]) -> list[int]:
    """Count the items alike for each seam of a sequence, given what lies before and after that of another.

    Returns:
        For each seam of `other` the items alike before and after it. Shape: (len(other) + 1,).
    """
    fore = common_lengths(before, other)
    back = common_lengths(after[::-1], other[::-1])
    return [one + two for one, two in zip(fore, reversed(back), strict=True)]


def skipped_or_doubled(
    done: Sequence[Hashable], ahead: Sequence[Hashable], new: Sequence[Hashable], seam: int
) -> bool:
    """Return whether going on at a seam of another plan would skip something or work it twice.

    Skipped is what was still to come but would now count as done; worked twice is the opposite. What is only
    in one of the two plans is neither.
    """
    new_done, new_ahead = Counter(new[:seam]), Counter(new[seam:])
    old_done, old_ahead = Counter(done), Counter(ahead)
    skipped = (new_done - old_done) & (old_ahead - new_ahead)
    doubled = (old_done - new_done) & (new_ahead - old_ahead)
    return bool(skipped or doubled)


def renamed_sections(old: Plan, new: Plan) -> dict[str, str]:
    """Find the sections that have another name in the new plan, by what is knitted in them.

    Returns:
        Old names with the new ones, for those that differ.
    """
    gone = [name for name in old.sections if name not in new.sections]
    come = [name for name in new.sections if name not in old.sections]
    found: dict[str, str] = {}
    for name in gone:
        mine = rounds_of(old, name)
        shares = {
            each: common_lengths(mine, rounds_of(new, each))[-1] / max(len(mine), len(rounds_of(new, each)))
            for each in come
        }
        best = max(shares, key=lambda each: shares[each], default=None)
        if best is not None and shares[best] >= ALIKE:
            found[name] = best
            come.remove(best)
    return found


def rounds_of(plan: Plan, section: str) -> list[Knitted]:
    """Return what is knitted in the rounds of a section."""
    return [placed_alike(round_) for round_ in plan.rounds if round_.section == section]
