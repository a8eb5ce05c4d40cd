"""Text as a voice can say it: without what is not for the ear, in pieces short enough to make at once. No
I/O."""

from __future__ import annotations

import re
import unicodedata

LONGEST_PIECE = 300
"""Most characters a voice is asked for at once: about twenty seconds of speech, made in a few hundredths of a
second."""

_BREAKS = (r"[.!?;:]\s", r",\s", r"\s")
"""Where a long text may be cut, best first."""


def strip_unspeakable(text: str) -> str:
    """Drop what no voice can say: control characters, lone surrogates, repeated spaces.

    Returns:
        The text on one line. Always: encodes to UTF-8, with no space first, last or doubled.
    """
    kept = (" " if unicodedata.category(each) in {"Cc", "Cs", "Cn", "Co"} else each for each in text)
    return " ".join("".join(kept).split())


def cut_into_pieces(text: str) -> tuple[str, ...]:
    """Cut a text where a speaker would draw breath, after `LONGEST_PIECE` characters at the latest.

    Returns:
        The pieces; none if there is nothing to say. Always: joined, they are the characters of
        `strip_unspeakable(text)` in order, spaces aside.
    """
    rest = strip_unspeakable(text)
    found = []
    while len(rest) > LONGEST_PIECE:
        cut = _last_break(rest[:LONGEST_PIECE])
        found.append(rest[:cut].rstrip())
        rest = rest[cut:].lstrip()
    return (*found, rest) if rest else tuple(found)


_SHORT = 60
"""Most characters a slow voice is asked for at once, if the text can be cut: about four seconds of speech."""


def cut_into_clauses(text: str) -> tuple[str, ...]:
    """Cut a text for a slow voice: at the end of each clause, and at commas if the clause is long.

    Returns:
        The pieces; none if there is nothing to say. Always: joined, they are the characters of
        `strip_unspeakable(text)` in order, spaces aside.
    """
    ended = (clause for piece in cut_into_pieces(text) for clause in re.split(_CLAUSE_ENDS, piece))
    return tuple(short for clause in ended for short in _phrases(clause))


_CLAUSE_ENDS = r"(?<=[.!?;:]) "


def _phrases(clause: str) -> list[str]:
    """Join the parts between commas for as long as the result stays short."""
    found: list[str] = []
    for part in re.split(r"(?<=,) ", clause):
        if found and len(found[-1]) + 1 + len(part) <= _SHORT:
            found[-1] = f"{found[-1]} {part}"
        else:
            found.append(part)
    return found


def _last_break(text: str) -> int:
    for pattern in _BREAKS:
        ends = [match.end() for match in re.finditer(pattern, text)]
        if ends:
            return ends[-1]
    return len(text)
