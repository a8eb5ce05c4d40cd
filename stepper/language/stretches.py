"""Part what is said into stretches that can be kept in mind: a full stop where a sentence goes on too long.

Nothing is left out or said in another order; a comma, a semicolon or a colon becomes a full stop, and the
voice falls and pauses there. What is worked so many times is never parted, or "nine times" would be heard of
its end alone. No I/O.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from stepper.regex import regex
from stepper.session.speech_length import MOST_S, WORDS_PER_MINUTE, seconds_of

_SENTENCES: Final = regex(r"(?<=[.?!]) ")
_COLONS: Final = regex(r"(?<!times)(?<!once)(?<!twice): ")
_SEMICOLONS: Final = regex(r"; ")
_COMMAS: Final = regex(r", ")
_TIMES: Final = r"\b(?:times|once|twice)"
_HELD: Final = {_SEMICOLONS: regex(rf"{_TIMES}:"), _COMMAS: regex(rf"{_TIMES}\b")}
# What holds the parts on both sides of a sign together: "twelve times: ...; ..." and "..., ..., nine times".


def part_long_sentences(text: str, words_per_minute: int = WORDS_PER_MINUTE) -> str:
    """Put a full stop where a sentence would take longer than `LONGEST_S`, as far as it can be parted.

    Args:
        text: What is said, with every figure in words.
        words_per_minute: The rate at which it is said. Range: above 0.
    """
    most_s = MOST_S * words_per_minute / WORDS_PER_MINUTE
    return " ".join(part for sentence in _SENTENCES.split(text) for part in _parted(sentence, most_s))


def _parted(sentence: str, most_s: float) -> Iterator[str]:
    """Yield the stretches of a sentence, none above an estimate at the usual rate if that can be."""
    if seconds_of(sentence) <= most_s:
        yield sentence
        return
    for sign in (_COLONS, _SEMICOLONS, _COMMAS):
        places = [match.span() for match in sign.finditer(sentence)]
        held = _HELD.get(sign)
        if places and (held is None or held.search(sentence) is None):
            start, end = min(places, key=lambda span: _longer_half(sentence, span))
            yield from _parted(f"{sentence[:start]}.", most_s)
            yield from _parted(sentence[end].upper() + sentence[end + 1 :], most_s)
            return
    yield sentence


def _longer_half(sentence: str, span: tuple[int, int]) -> float:
    return max(seconds_of(sentence[: span[0]]), seconds_of(sentence[span[1] :]))

