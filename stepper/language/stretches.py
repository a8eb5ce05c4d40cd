"""Part what is said into stretches that can be kept in mind: a full stop where a sentence goes on too long.

Nothing is left out or said in another order; a comma, a semicolon or a colon becomes a full stop, and the
voice falls and pauses there. What is worked so many times is never parted, or "nine times" would be heard of
its end alone. No I/O.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

LONGEST_S: Final = 8.0
"""The longest that one stretch lasts. Unit: s. Source: chosen here."""
_PART_ABOVE_S: Final = 7.2
# An estimate above which a sentence is parted: what it falls short by is less than the rest. Unit: s.
_LETTER_S, _WORD_S, _COMMA_S, _COLON_S, _SENTENCE_S = 0.067, 0.016, 0.33, 0.41, 0.26
# What each takes at 150 words a minute: by least squares over sentences of six garments, rendered by
# eSpeak NG (`tests/bench/speech_seconds.py`). Over 4,845 of them the standard deviation of what is left is
# 0.21 s, and none takes more than 0.7 s longer.
_LETTERS_OF_A_DIGIT: Final = 7
# A figure too large to be put into words is said in full: "28576" takes as long as 35 letters.
_SENTENCES: Final = re.compile(r"(?<=[.?!]) ")
_COLONS: Final = re.compile(r"(?<!times)(?<!once)(?<!twice): ")
_SEMICOLONS: Final = re.compile(r"; ")
_COMMAS: Final = re.compile(r", ")
_TIMES: Final = r"\b(?:times|once|twice)"
_HELD: Final = {_SEMICOLONS: re.compile(rf"{_TIMES}:"), _COMMAS: re.compile(rf"{_TIMES}\b")}
# What holds the parts on both sides of a sign together: "twelve times: ...; ..." and "..., ..., nine times".


def seconds_of(text: str) -> float:
    """Estimate how long a text takes to say, with every figure in words. Unit: s, at 150 words a minute."""
    return (
        _LETTER_S * sum(_LETTERS_OF_A_DIGIT if sign.isdigit() else sign.isalnum() for sign in text)
        + _WORD_S * len(text.split())
        + _COMMA_S * text.count(",")
        + _COLON_S * (text.count(":") + text.count(";"))
        + _SENTENCE_S
    )


def in_stretches(text: str) -> str:
    """Put a full stop where a sentence would take longer than `LONGEST_S`, as far as it can be parted.

    Args:
        text: What is said, with every figure in words.
    """
    return " ".join(part for sentence in _SENTENCES.split(text) for part in _parted(sentence))


def _parted(sentence: str) -> Iterator[str]:
    """Yield the stretches of a sentence."""
    if seconds_of(sentence) <= _PART_ABOVE_S:
        yield sentence
        return
    for sign in (_COLONS, _SEMICOLONS, _COMMAS):
        places = [match.span() for match in sign.finditer(sentence)]
        held = _HELD.get(sign)
        if places and (held is None or held.search(sentence) is None):
            start, end = min(places, key=lambda span: _longer_half(sentence, span))
            yield from _parted(f"{sentence[:start]}.")
            yield from _parted(sentence[end].upper() + sentence[end + 1 :])
            return
    yield sentence


def _longer_half(sentence: str, span: tuple[int, int]) -> float:
    return max(seconds_of(sentence[: span[0]]), seconds_of(sentence[span[1] :]))

