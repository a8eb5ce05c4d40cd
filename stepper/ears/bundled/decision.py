"""Decide whether one of the candidates was said: numbers in, a decision out. No I/O."""

from __future__ import annotations

import math
from collections.abc import Collection, Hashable, Sequence

from stepper.ears.bundled.thresholds import (
    FOUND_WHOLE,
    FOUND_WORD,
    LARGEST_DIGIT,
    SLOWEST_S,
    STRAY,
    STRAY_WORD,
    UNASKED_NUMBER,
    Thresholds,
)
from stepper.mouth.pronunciation import Sounds
from stepper.records import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Candidate:
    """A text and how likely it is to have been said, as two models see it."""

    text: str
    means: Hashable
    sounds: float
    """Log-probability of its sounds above that of the likeliest sounds of any kind. Natural logarithm."""
    words: float
    """Log-probability of its words above that of the free transcript. Natural logarithm."""
    number: float | None = None
    """The number in it, if it has one."""
    row: Sounds = ()
    """What it sounds like."""
    is_word: bool = False
    """Whether it is a single word, or a number with no word around it."""
    moves: bool = False
    """Whether it moves the knitting."""
    answers: bool = False
    """Whether it answers what is open."""


def total_score(scored: Candidate, thresholds: Thresholds) -> float:
    """Add up what the two models say, each with its weight. A natural logarithm."""
    return scored.sounds + thresholds.words * scored.words


def decide(scored: Sequence[Candidate], thresholds: Thresholds) -> Candidate | None:
    """Take the likeliest text if it is likely enough and clear of any that means something else.

    What answers an open question needs to be less clear of what does not. A single digit that nobody asked
    for is nothing: no round has so few stitches, and "forward" begins as "four".

    Args:
        scored: In any order.
        thresholds: How sure to be.
    """
    best = max(scored, key=lambda each: _expected_score(each, thresholds), default=None)
    if best is None:
        return None
    score = total_score(best, thresholds)
    if score < (thresholds.agreed if best.words >= 0 else thresholds.least):
        return None
    least, clear = thresholds.least_word if best.is_word else -math.inf, thresholds.clear
    if best.is_word and best.number is not None and not best.answers:
        if best.number <= LARGEST_DIGIT:
            return None
        least = max(least, UNASKED_NUMBER)
    if best.moves:
        least = max(least, thresholds.least_moving)
    if best.number is not None:
        least, clear = max(least, thresholds.least_number), thresholds.clear_number
    if score < least:
        return None
    rivals = [_expected_score(each, thresholds) for each in scored if each.means != best.means]
    return best if not rivals or _expected_score(best, thresholds) - max(rivals) >= clear else None


def _expected_score(scored: Candidate, thresholds: Thresholds) -> float:
    """Return what tells between candidates: while a question is open most of what is said answers it."""
    return total_score(scored, thresholds) + (thresholds.expected if scored.answers else 0.0)


def leave_out_ends(scored: Sequence[Candidate], longer: Collection[str]) -> list[Candidate]:
    """Leave out the single words where the decoder has written down a longer answer, which may end as one.

    "I don't know" ends as "no" does, and of some voices hardly more than that end is found in the sounds.

    Args:
        scored: In any order.
        longer: The answers of more than one word.
    """
    is_written = any(each.text in longer and each.words >= 0 for each in scored)
    return [each for each in scored if not (is_written and each.is_word)]


def is_whole(fit: float, behind: int, *, is_word: bool) -> bool:
    """Return whether what fits best behind the address word, amid other sound, is a whole cue and over.

    Args:
        fit: Log-probability of its sounds above that of the likeliest of any kind. A natural logarithm.
        behind: Frames of the 0.3 s behind it in which something sounds.
        is_word: Whether it is a single word, or a number with no word around it.
    """
    least, stray = (FOUND_WORD, STRAY_WORD) if is_word else (FOUND_WHOLE, STRAY)
    return fit >= least and behind <= stray


def says_more(behind: Collection[int], last: int) -> bool:
    """Return whether something else sounds behind a cue than its own last sound, which may still fade.

    Args:
        behind: The likeliest column of each frame behind it; 0 for no sound.
        last: The column of its last sound.
    """
    return any(column not in (0, last) for column in behind)


def is_drawn_out(length_s: float, sounds: int) -> bool:
    """Return whether sounds lie too far apart to be of one cue: words that have a pause between.

    Args:
        length_s: From the beginning of the first to the end of the last. Unit: s.
        sounds: How many.
    """
    return length_s > SLOWEST_S * sounds
