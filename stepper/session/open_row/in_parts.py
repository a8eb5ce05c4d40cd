"""Part the words of a row that are too long to be said at once: a table printed as one row. Pure.

A part ends where a sentence does, else at a semicolon, a comma or between words, never within brackets, and
takes no longer than one stretch of speech; so nothing of a row is said twice to hear its end.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import lru_cache
from typing import Final

from stepper.plan.model import OpenRow
from stepper.regex import regex
from stepper.session.speech_length import seconds_of
from stepper.session.state import OpenWork

_MOST_S: Final = 9.0
"""How long a part is at most; with what leads to it or is asked behind it, 12. Unit: s, estimated."""
_GLIMPSE_S: Final = 4.0
"""How long the beginning is by which a row is named beforehand, at most. Unit: s, estimated."""
_ENDS: Final = tuple(map(regex, (r"(?<=[.!?])\s+(?=\W*[A-Z])", r"(?<=;)\s+", r"(?<=,)\s+", r"\s+")))
"""Where words are parted, the best place first; no sentence ends in "needle no. 9"."""


@lru_cache(maxsize=64)
def parts_of(words: str) -> tuple[str, ...]:
    """Return some words in parts of no more than one stretch of speech each; one part if they are short.

    Args:
        words: The words as printed.
    """
    return tuple(_joined(list(_parted(" ".join(words.split()), 0))))


def begins_with(words: str) -> str:
    """Return as much of the beginning of some words as names a row beforehand; all of them if they are short.

    Args:
        words: The words as printed.
    """
    return next(_joined(list(_parted(" ".join(words.split()), 0, _GLIMPSE_S)), _GLIMPSE_S))


def _parted(words: str, rank: int, most_s: float = _MOST_S) -> Iterator[str]:
    if seconds_of(words) <= most_s or rank == len(_ENDS):
        yield words
        return
    begin = 0
    for end in _ENDS[rank].finditer(words):
        before = words[: end.start()]
        if before.count("(") + before.count("[") <= before.count(")") + before.count("]"):
            yield from _parted(words[begin : end.start()], rank + 1, most_s)
            begin = end.end()
    yield from _parted(words[begin:], rank + 1, most_s)


def _joined(pieces: Sequence[str], most_s: float = _MOST_S) -> Iterator[str]:
    """Yield the pieces, short ones together."""
    held = ""
    for piece in pieces:
        both = f"{held} {piece}".strip()
        if held and seconds_of(both) > most_s:
            yield held
            both = piece
        held = both
    yield held


def part_heard(row: OpenRow, work: OpenWork) -> str:
    """Return the part of the words that is said where so many are heard."""
    parts = parts_of(row.words)
    return parts[min(work.heard, len(parts) - 1)]


def is_more_to_hear(row: OpenRow, work: OpenWork) -> bool:
    """Return whether some of the words are yet to be said."""
    begun = work.rows or work.answers or work.stitches is not None or work.idle
    return not begun and work.heard < len(parts_of(row.words)) - 1
