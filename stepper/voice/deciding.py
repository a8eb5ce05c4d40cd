"""Whether one of the candidates was said: numbers in, a decision out. No I/O."""

from __future__ import annotations

import math
from collections.abc import Hashable, Sequence
from dataclasses import dataclass

from stepper.voice.candidates import Candidate
from stepper.voice.thresholds import Thresholds


@dataclass(frozen=True, slots=True, kw_only=True)
class Scored:
    """A text and how likely the model takes it to be."""

    text: str
    means: Hashable
    score: float
    """Log-probability above that of the free transcript, the longer text given its due. Natural logarithm."""


def by_sound(nearest: Sequence[Candidate], thresholds: Thresholds) -> Candidate | None:
    """Take the nearest candidate if it sounds as what was heard and nothing else does.

    Args:
        nearest: The nearest first.
        thresholds: What it takes.
    """
    if not nearest or nearest[0].distance > thresholds.sounds_within:
        return None
    best = nearest[0]
    rival = next((each for each in nearest if each.means != best.means), None)
    is_clear = rival is None or rival.distance - best.distance >= thresholds.sounds_clear
    return best if is_clear else None


def by_likelihood(scored: Sequence[Scored], thresholds: Thresholds, written: str = "") -> Scored | None:
    """Take the likeliest meaning if it is likely enough and clear of the next.

    All ways to say the same thing count together; the likeliest of them stands for it.

    Args:
        scored: In any order.
        thresholds: What it takes.
        written: What the model wrote down freely, where that is a cue; less is asked for when it agrees.
    """
    meanings: dict[Hashable, list[Scored]] = {}
    for each in scored:
        meanings.setdefault(each.means, []).append(each)
    ranked = sorted(((_together(each), each) for each in meanings.values()), key=lambda each: -each[0])
    if not ranked or ranked[0][0] < thresholds.least:
        return None
    score, texts = ranked[0]
    agrees = any(each.text == written for each in texts)
    clear = thresholds.agreed if agrees else thresholds.clear
    if len(ranked) > 1 and score - ranked[1][0] < clear:
        return None
    return max(texts, key=lambda each: each.score)


def _together(texts: Sequence[Scored]) -> float:
    """Add up the likelihoods of several texts; as a logarithm."""
    best = max(each.score for each in texts)
    return best + math.log(sum(math.exp(each.score - best) for each in texts))
