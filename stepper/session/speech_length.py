"""Estimate how long a part of a round takes to say, in words. No I/O.

It goes by the stitches alone, since steps are cut without knowing what the yarns are called; a yarn's name is
taken to be one word.
"""

from __future__ import annotations

from collections.abc import Iterable
from itertools import pairwise

from stepper.craft.even.phrases import number_words, times_words
from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Group, Item, Run, flatten

LONGEST_S = 8.0
"""The longest that one stretch of speech lasts. Unit: s. Source: chosen here."""
WORDS_PER_MINUTE = 150
"""The usual rate of the voice. Source: ordinary speech has 120 to 180 words a minute."""
LEAD_WORDS = 4
"""Words in front of most steps: "round thirty, first increase". Source: chosen here."""
MOST_WORDS = int(LONGEST_S * WORDS_PER_MINUTE / 60) - LEAD_WORDS
"""Most words of a step."""

_COUNTED = {"co": "cast on", "bo": "bind off", "pu": "pick up and knit", "rest": "leave unworked"}


def words_of(items: Iterable[Item], *, coloured: bool = False) -> int:
    """Count the words that some items take when spoken.

    Args:
        items: The whole of a round or a part of it.
        coloured: Whether the yarns are named beside the stitches.
    """
    return sum(_words(item, coloured=coloured) for item in items)


def names_yarns(items: Iterable[Item]) -> bool:
    """Return whether stitch and yarn are both said: a round of more than one yarn that is not all knitted."""
    worked = [run for run in flatten(tuple(items)) if stitch(run.stitch).kind not in (Kind.SHIFT, Kind.MARK)]
    return len({run.yarn for run in worked}) > 1 and any(run.stitch != "k" for run in worked)


def _words(item: Item, *, coloured: bool) -> int:
    if isinstance(item, Group):
        inner = words_of(item.items, coloured=coloured)
        # Around a repeat inside it stand "then", and "all that" before how often.
        repeats = [isinstance(one, Group) for one in item.items]
        thens = sum(one or other for one, other in pairwise(repeats))
        return inner + times_words(item.times) + (thens + 2 if any(repeats) else 0)
    return _run_words(item) + (1 if coloured else 0)


def _run_words(run: Run) -> int:
    entry = stitch(run.stitch)
    if run.stitch in ("hold", "return"):
        around = 2 if run.stitch == "hold" else 3  # hold … for, work across … of
        return around + number_words(run.times) + len(run.yarn.split())
    if run.stitch in _COUNTED:
        return len(_COUNTED[run.stitch].split()) + number_words(run.times)
    if entry.counted and run.times > 1:
        return len(entry.counted.format(n="").split()) + number_words(run.times)
    return len(entry.said.split()) + times_words(run.times)
