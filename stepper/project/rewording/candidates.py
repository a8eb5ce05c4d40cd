"""Choose the rows of the table of wordings that may have something to say on a line. No I/O.

Theory of operation. Of some two thousand rows one in two lines needs one. Each row names pieces, one of
which must be in the line, and its pattern demands others (`stepper.project.rewording.demands`); a line is a
set of words, which come again from line to line. So for each word that is met the rows are kept whose demand
it meets, as the bits of a number, one demand behind the other; these numbers are joined over the words of a
line, and the rows that are in each of its demands are looked for. The demands of a row are found, and its
pattern is compiled, when a line first needs it: to do so for all would slow the start.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping, Sequence
from functools import cached_property, reduce
from operator import or_
from typing import Final, NamedTuple

from stepper.project.rewording.demands import find_demands, stands_at_the_start
from stepper.project.rewording.synonym import Synonym

_LETTERS: Final = 3
"""By how many of its first letters a piece is looked for."""
_DEMANDS: Final = 4
"""Demands of a pattern that are asked for; more spare hardly a search."""


class _Pieces:
    """Which demands a word meets, as bits. It is never changed, but for what it remembers of words."""

    def __init__(self, begun: Mapping[str, Mapping[str, int]]) -> None:
        self._begun = begun
        self._met: dict[str, int] = {}

    def with_more(self, more: Iterable[tuple[str, int]]) -> _Pieces:
        """Return these with more pieces, each with the number of the bit that stands for its demand."""
        begun = dict(self._begun)
        for piece, bit in more:
            letters = piece[:_LETTERS]
            found = dict(begun.get(letters, {}))
            found[piece] = found.get(piece, 0) | 1 << bit
            begun[letters] = found
        return _Pieces(begun)

    def met_by(self, words: Iterable[str]) -> int:
        """Return the demands that one of some words meets, as bits."""
        found, met = 0, self._met
        for word in words:
            bits = met.get(word)
            found |= self._met_by_word(word) if bits is None else bits
        return found

    def _met_by_word(self, word: str) -> int:
        found = 0
        begun = {word[at : at + size] for size in range(1, _LETTERS + 1) for at in range(len(word))}
        for letters in begun & self._begun.keys():
            for piece, bits in self._begun[letters].items():
                if piece in word:
                    found |= bits
        self._met[word] = found
        return found


class _Known(NamedTuple):
    """What is known of demands: never changed, but exchanged, since lines may be read beside each other."""

    rows: int
    """The rows whose demands were found, as bits."""
    free: int
    """Those of them that have no first, second, third, fourth demand: for each as many bits as rows."""
    pieces: _Pieces
    """Which of those demands a word meets, in the same bits."""


class Candidates:
    """The rows of a table, to be looked for in one line after the other.

    They are prepared when the first line is looked at: to prepare those of all tables would slow the start.
    """

    def __init__(self, table: Sequence[Synonym]) -> None:
        self.table = table
        self._searches: dict[int, Callable[[str], re.Match[str] | None]] = {}
        self._known = _Known(0, 0, _Pieces({}))

    @cached_property
    def _own_or_none(self) -> tuple[_Pieces, int]:
        """The rows by their own pieces, of several words the longest; and those that have none, as bits."""
        own = [
            (max(piece.split(), key=len, default=""), at)
            for at, row in enumerate(self.table)
            for piece in row.has
        ]
        none = reduce(or_, (1 << at for piece, at in own if not piece), 0)
        return _Pieces({}).with_more((piece, at) for piece, at in own if piece), none

    @cached_property
    def _spaced(self) -> dict[int, tuple[str, ...]]:
        """The pieces of each row of which one has several words."""
        return {
            at: row.has
            for at, row in enumerate(self.table)
            if any(piece.split() != [piece] for piece in row.has)
        }

    def find_first(self, text: str, start: int) -> int | None:
        """Find the first row whose pattern is in a text, with one of the row's own pieces.

        Args:
            text: The line.
            start: The place in the table to begin with, from 0.

        Returns:
            The row's place in the table; None if no more is found.
        """
        low = text.lower()
        rows = self._rows_for(low.split()) >> start
        while rows:
            step = (rows & -rows).bit_length()
            start += step
            rows >>= step
            at = start - 1
            if at in self._spaced and not any(map(low.count, self._spaced[at])):
                continue
            if (self._searches.get(at) or self._prepared(at))(text) is not None:
                return at
        return None

    def _rows_for(self, words: Sequence[str]) -> int:
        """Return the rows whose demands the words of a line meet, as bits."""
        own, always = self._own_or_none
        rows = own.met_by(words) | always
        known = self._known
        if rows & ~known.rows:
            known = self._known = self._learnt(known, rows & ~known.rows)
        met = known.free | known.pieces.met_by(words)
        for number in range(_DEMANDS):
            rows &= met >> number * len(self.table)
        return rows

    def _learnt(self, known: _Known, rows: int) -> _Known:
        """Return what is known with what some more rows demand."""
        free, more, width = known.free, list[tuple[str, int]](), len(self.table)
        for at in (at for at in range(rows.bit_length()) if rows >> at & 1):
            own = self.table[at].has
            # What each of the row's own pieces meets needs no second look.
            demands = [
                demand
                for demand in find_demands(self.table[at].expression)
                if not all(any(part in piece for part in demand) for piece in own)
            ][:_DEMANDS]
            more += [
                (piece, number * width + at) for number, demand in enumerate(demands) for piece in demand
            ]
            for number in range(len(demands), _DEMANDS):
                free |= 1 << number * width + at
        return _Known(known.rows | rows, free, known.pieces.with_more(more))

    def _prepared(self, at: int) -> Callable[[str], re.Match[str] | None]:
        """Return the search for the pattern of a row, compiled."""
        pattern = self.table[at].pattern
        begins = stands_at_the_start(self.table[at].expression)
        self._searches[at] = pattern.match if begins else pattern.search
        return self._searches[at]
