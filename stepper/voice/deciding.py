"""Whether one of the candidates was said: numbers in, a decision out. No I/O."""

from __future__ import annotations

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


def by_likelihood(scored: Sequence[Scored], thresholds: Thresholds) -> Scored | None:
    """Take the likeliest text if it is likely enough and clear of the next of another meaning.

    Args:
        scored: In any order.
        thresholds: What it takes.
    """
    ranked = sorted(scored, key=lambda each: each.score, reverse=True)
    if not ranked or ranked[0].score < thresholds.least:
        return None
    best = ranked[0]
    rival = next((each for each in ranked if each.means != best.means), None)
    return best if rival is None or best.score - rival.score >= thresholds.clear else None
