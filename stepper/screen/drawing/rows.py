"""Rows of text: measuring, cutting and wrapping them, and putting them beside each other. No I/O."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Sequence
from functools import lru_cache
from itertools import groupby, zip_longest
from operator import itemgetter
from typing import Final, NamedTuple

from stepper.screen.drawing.style import BOLD, PLAIN, Paint
from stepper.screen.drawing.unprintable import blank_unprintable


class Styled(NamedTuple):
    """A piece of text in one style. A tuple, because thousands are made and compared at every key."""

    text: str
    paint: Paint = PLAIN


Row = tuple[Styled, ...]
"""One row of the screen, from the left."""


def clean(text: str) -> str:
    """Make a text safe to show: anything that moves the cursor or is invisible becomes a space.

    A pattern's title or a note may hold anything; an escape sequence in it must not reach the terminal.
    """
    return blank_unprintable(text)


@lru_cache(maxsize=4096)
def text_width(text: str) -> int:
    """Count the columns of a text. Unit: columns.

    Source: Unicode Standard Annex 11: wide and fullwidth characters take two, combining marks none.
    """
    return len(text) if text.isascii() else sum(_letter_width(letter) for letter in text)


@lru_cache(maxsize=4096)
def _letter_width(letter: str) -> int:
    if unicodedata.category(letter) in ("Mn", "Me", "Cf"):
        return 0
    return 2 if unicodedata.east_asian_width(letter) in ("W", "F") else 1


def row_width(row: Row) -> int:
    """Count the columns of a row. Unit: columns."""
    text = text_of(row)
    return len(text) if text.isascii() else sum(map(text_width, map(_TEXT, row)))


def row(text: str, paint: Paint = PLAIN) -> Row:
    """Make a row in one style."""
    return (Styled(clean(text), paint),)


def cut(cells: Row, columns: int) -> Row:
    """Cut a row to a width."""
    if row_width(cells) <= columns:
        return cells
    kept, left = [], columns
    for span in cells:
        text = _first_columns(span.text, left)
        if text:
            kept.append(Styled(text, span.paint))
        left -= text_width(text)
        if text != span.text:
            break
    return tuple(kept)


def _first_columns(text: str, columns: int) -> str:
    if text_width(text) <= columns:
        return text
    taken = 0
    for at, letter in enumerate(text):
        taken += _letter_width(letter)
        if taken > columns:
            return text[:at]
    return text


def shorten(text: str, columns: int) -> str:
    """Cut a text to a width; a sign at its end says if something was left out."""
    text = clean(text)
    if text_width(text) <= columns:
        return text
    return _first_columns(text, max(0, columns - 1)).rstrip() + "…"[: max(0, columns)]


def pad(cells: Row, columns: int) -> Row:
    """Cut or fill a row to exactly a width."""
    kept = cut(cells, columns)
    missing = columns - row_width(kept)
    return (*kept, Styled(" " * missing)) if missing else kept


def put_apart(left: Row, right: Row, columns: int) -> Row:
    """Put one row at the left edge and another at the right, which is left out if there is no room."""
    gap = columns - row_width(left) - row_width(right)
    if gap < 2:
        return cut(left, columns)
    return (*left, Styled(" " * gap), *right)


def put_beside(left: Sequence[Row], right: Sequence[Row], *, at: int) -> list[Row]:
    """Put two blocks beside each other.

    Args:
        left: Rows of the left block.
        right: Rows of the right block.
        at: Column where the right block begins, from 0.
    """
    pairs = zip_longest(left, right, fillvalue=())
    return [(*pad(one, at), *other) if other else one for one, other in pairs]


def indent(rows: Iterable[Row]) -> list[Row]:
    """Put the usual edge before rows; an empty one stays empty."""
    return [(Styled(" "), *each) if each else each for each in rows]


def wrap(text: str, columns: int) -> list[str]:
    """Break a text into lines between words; a word wider than a line is broken where necessary.

    Always: no line is wider than `columns`.
    """
    lines: list[str] = []
    for word in clean(text).split():
        for piece in _pieces(word, max(1, columns)):
            if lines and text_width(f"{lines[-1]} {piece}") <= columns:
                lines[-1] = f"{lines[-1]} {piece}"
            else:
                lines.append(piece)
    return lines


def _pieces(word: str, columns: int) -> Iterable[str]:
    while text_width(word) > columns:
        head = _first_columns(word, columns) or word[0]
        yield head
        word = word[len(head) :]
    if word:
        yield word


def paragraph(text: str, columns: int, paint: Paint = PLAIN) -> list[Row]:
    """Break a text into rows."""
    return [(Styled(line, paint),) for line in wrap(text, columns)]


def flow_facts(facts: Sequence[Row], columns: int, gap: int = 3) -> list[Row]:
    """Put as many facts on each row as fit; a fact is broken only if it is wider than a row."""
    rows: list[Row] = []
    for fact in facts:
        last = rows[-1] if rows else ()
        if last and row_width(last) + gap + row_width(fact) <= columns:
            rows[-1] = (*last, Styled(" " * gap), *fact)
        else:
            rows.append(cut(fact, columns))
    return rows


def write_fact(name: str, value: str) -> Row:
    """Write a fact: its name, and its value in bold."""
    return (Styled(f"{clean(name)} "), Styled(clean(value), BOLD))


def join_spans(spans: Iterable[Styled]) -> Row:
    """Join neighbours of the same style, so that there are fewer to draw."""
    return tuple(Styled("".join(map(_TEXT, same)), paint) for paint, same in groupby(spans, _PAINT))


_TEXT: Final = itemgetter(0)
_PAINT: Final = itemgetter(1)


def text_of(cells: Row) -> str:
    """Return the plain text of a row."""
    return "".join(map(_TEXT, cells))


def clean_row(cells: Row) -> Row:
    """Make a row safe to show, as `clean` does a text."""
    if text_of(cells).isprintable():  # nearly always: one question for the row instead of one for each span
        return cells
    return tuple(Styled(clean(text), paint) for text, paint in cells)
