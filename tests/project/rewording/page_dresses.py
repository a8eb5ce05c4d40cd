"""Whole pages in other words, and what is read of them against what was read of the page as printed."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Hashable
from dataclasses import dataclass, fields, is_dataclass

from stepper.project.instructions import Assumed, Remark
from stepper.project.page.pasted import Pasted, take_apart
from stepper.project.page.pieces import Piece
from stepper.project.page.quoting import writable
from stepper.project.problems import Span
from tests.project.rewording.word_dresses import dress

_WORDS_ONLY = ("text", "said", "assumed", "place")
"""What a line keeps of how it is printed, and what is only told with it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Compared:
    """What became of a page."""

    tried: int
    """Rows with a line that other words change."""
    lost: tuple[tuple[str, str], ...]
    """Rows that are not read any more, as printed and in other words."""
    other: tuple[tuple[str, str], ...]
    """Rows read as other instructions than before; these may be worked alike all the same."""


def compare(text: str, seed: str) -> Compared:
    """Put a page into other words and say which of its rows are read as before."""
    rows = [" ".join(writable(row).split()) for row in text.splitlines()]
    was = _by_row(take_apart(text))
    worded = list(rows)
    changed = []
    plain = [(row, piece.text) for row, pieces in was.items() for piece in pieces if piece.kind == "line"]
    for (row, printed), now in zip(plain, dress([printed for _, printed in plain], seed), strict=True):
        if printed != now and printed in worded[row - 1]:
            worded[row - 1] = worded[row - 1].replace(printed, now, 1)
            changed.append(row)
    now_read = _by_row(take_apart("\n".join(worded)))
    lost, other = [], []
    for row in dict.fromkeys(changed):
        notes = {piece.text for piece in was[row] if piece.kind == "note"}
        if any(piece.kind != "line" and piece.text not in notes for piece in now_read[row] if piece.kind != "label"):
            lost.append((rows[row - 1], worded[row - 1]))
        elif _meaning(was[row]) != _meaning(now_read[row]):
            other.append((rows[row - 1], worded[row - 1]))
    return Compared(tried=len(set(changed)), lost=tuple(lost), other=tuple(other))


def _by_row(pasted: Pasted) -> dict[int, list[Piece]]:
    found: dict[int, list[Piece]] = defaultdict(list)
    for piece in pasted.pieces:
        found[piece.row].append(piece)
    return found


def _meaning(pieces: list[Piece]) -> Hashable:
    return tuple(_plain(piece.line) for piece in pieces if piece.kind == "line")


def _plain(value: object) -> Hashable:
    """Return what is to be worked, without where it is printed and what is only said."""
    if isinstance(value, Span):
        return ""
    if isinstance(value, tuple):
        return tuple(_plain(each) for each in value if not isinstance(each, Remark | Assumed))
    if is_dataclass(value):
        kept = (field.name for field in fields(value) if field.name not in _WORDS_ONLY)
        return (type(value).__name__, *(_plain(getattr(value, name)) for name in kept))
    return _SAME.sub(lambda found: _SAME_AS[found[0].lower()], str(value).lower()).replace("loosely", "").strip()


_SAME_AS = {"rnd": "round", "rnds": "rounds", "patt": "pattern", "pat": "pattern", "st": "stitch", "sts": "stitches", "k": "knit", "p": "purl"}
_SAME = re.compile(rf"\b(?:{'|'.join(_SAME_AS)})\b", re.IGNORECASE)
"""Words of a name or a remark that other words may stand for."""
