"""Rows of letters: how wide they are, and how they are cut, wrapped and put beside each other. No I/O."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache

from stepper.screen.style import BOLD, PLAIN, Paint


@dataclass(frozen=True, slots=True)
class Span:
    """Letters that look alike."""

    text: str
    paint: Paint = PLAIN


Row = tuple[Span, ...]
"""One row of the screen, from the left."""


def clean(text: str) -> str:
    """Make a text safe to show: what moves the cursor or cannot be seen becomes a space.

    A pattern's title or a note may hold anything; an escape sequence in it must not reach the terminal.
    """
    return "".join(
        " " if unicodedata.category(letter) in ("Cc", "Cs", "Zl", "Zp") else letter for letter in text
    )


@lru_cache(maxsize=4096)
def width(text: str) -> int:
    """Count the columns of a text. Unit: columns.

    Source: Unicode Standard Annex 11, wide and fullwidth letters take two; marks that combine take none.
    """
    return len(text) if text.isascii() else sum(_letter_width(letter) for letter in text)


@lru_cache(maxsize=4096)
def _letter_width(letter: str) -> int:
    if unicodedata.category(letter) in ("Mn", "Me", "Cf"):
        return 0
    return 2 if unicodedata.east_asian_width(letter) in ("W", "F") else 1


def row_width(row: Row) -> int:
    """Count the columns of a row. Unit: columns."""
    return sum(width(span.text) for span in row)


def row(text: str, paint: Paint = PLAIN) -> Row:
    """Make a row of one look."""
    return (Span(clean(text), paint),)


def cut(cells: Row, columns: int) -> Row:
    """Cut a row to a width."""
    if row_width(cells) <= columns:
        return cells
    kept, left = [], columns
    for span in cells:
        text = _first_columns(span.text, left)
        if text:
            kept.append(Span(text, span.paint))
        left -= width(text)
        if text != span.text:
            break
    return tuple(kept)


def _first_columns(text: str, columns: int) -> str:
    if width(text) <= columns:
        return text
    taken = 0
    for at, letter in enumerate(text):
        taken += _letter_width(letter)
        if taken > columns:
            return text[:at]
    return text


def shorten(text: str, columns: int, more: str = "…") -> str:
    """Cut a text to a width; where something is left out, say so by a sign at its end."""
    text = clean(text)
    if width(text) <= columns:
        return text
    return _first_columns(text, max(0, columns - width(more))).rstrip() + more[: max(0, columns)]


def pad(cells: Row, columns: int) -> Row:
    """Cut or fill a row to exactly a width."""
    kept = cut(cells, columns)
    missing = columns - row_width(kept)
    return (*kept, Span(" " * missing)) if missing else kept


def put_apart(left: Row, right: Row, columns: int) -> Row:
    """Put one row at the left edge and another at the right; the right one is left out where it is in the
    way."""
    gap = columns - row_width(left) - row_width(right)
    if gap < 2:
        return cut(left, columns)
    return (*left, Span(" " * gap), *right)


def put_beside(left: Sequence[Row], right: Sequence[Row], *, at: int) -> list[Row]:
    """Put two blocks beside each other.

    Args:
        left: Rows of the left block.
        right: Rows of the right block.
        at: Column where the right block begins, from 0.
    """
    rows = []
    for number in range(max(len(left), len(right))):
        one = left[number] if number < len(left) else ()
        other = right[number] if number < len(right) else ()
        rows.append((*pad(one, at), *other) if other else one)
    return rows


def wrap(text: str, columns: int) -> list[str]:
    """Break a text into lines between words; a word that is wider than a line is broken where it must.

    Always: no line is wider than `columns`.
    """
    lines: list[str] = []
    line = ""
    for word in clean(text).split():
        for piece in _pieces(word, max(1, columns)):
            longer = f"{line} {piece}" if line else piece
            if width(longer) <= columns:
                line = longer
                continue
            if line:
                lines.append(line)
            line = piece
    return [*lines, line] if line else lines


def _pieces(word: str, columns: int) -> Iterable[str]:
    while width(word) > columns:
        head = _first_columns(word, columns) or word[0]
        yield head
        word = word[len(head) :]
    if word:
        yield word


def paragraph(text: str, columns: int, paint: Paint = PLAIN) -> list[Row]:
    """Break a text into rows."""
    return [(Span(line, paint),) for line in wrap(text, columns)]


def flow(facts: Sequence[Row], columns: int, gap: int = 3) -> list[Row]:
    """Put facts one after another, as many to a row as fit; none is broken unless wider than a row."""
    rows: list[Row] = []
    for fact in facts:
        last = rows[-1] if rows else ()
        if last and row_width(last) + gap + row_width(fact) <= columns:
            rows[-1] = (*last, Span(" " * gap), *fact)
        else:
            rows.append(cut(fact, columns))
    return rows


def add_title(name: str, value: str) -> Row:
    """Write a fact: what it is, and in bold what it amounts to."""
    return (Span(f"{clean(name)} "), Span(clean(value), BOLD))


def join(spans: Iterable[Span]) -> Row:
    """Join neighbours that look alike; there are fewer to draw then."""
    kept: list[Span] = []
    texts: list[str] = []
    for span in spans:
        if texts and (kept[-1].paint is span.paint or kept[-1].paint == span.paint):
            texts[-1] += span.text
        else:
            kept.append(span)
            texts.append(span.text)
    return tuple(Span(text, span.paint) for text, span in zip(texts, kept, strict=True))


def text_of(cells: Row) -> str:
    """Return the letters of a row alone."""
    return "".join(span.text for span in cells)
