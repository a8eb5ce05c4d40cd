"""Tell with which letters a match of a regular expression may begin. No I/O."""

from __future__ import annotations

import marshal
import re
from collections.abc import Iterable
from functools import cache
from re import _constants as ops
from re import _parser as expressions
from typing import Any, Final
from zlib import crc32

from stepper.kept import KeptTable

KEPT_LETTERS: Final = KeptTable("first_letters", most=12_000, least_new=100)
"""With which letters expressions begin: to find it for those of one page takes a tenth of a second."""
_ASCII = frozenset(map(chr, range(128)))
_KINDS = {
    ops.CATEGORY_DIGIT: frozenset(filter(str.isdigit, _ASCII)),
    ops.CATEGORY_SPACE: frozenset(filter(str.isspace, _ASCII)),
}
"""Letters of the kinds in a set, as `\\d`, that are told apart; any other may be any letter."""


def may_begin(expression: str, letter: str) -> bool:
    """Return whether a match of an expression may begin with a letter; true also where it cannot be told."""
    return not letter.isascii() or letter in _first_letters(expression)


@cache
def _first_letters(expression: str) -> frozenset[str]:
    """Return the ASCII letters that a match may begin with; they are kept for the next start."""
    key = (expression, _way())
    kept: str | None = KEPT_LETTERS.get(key)
    if kept is None:
        letters, empty = _begins(expressions.parse(expression), ignoring_case=False)
        kept = "".join(sorted(_ASCII if empty else letters))
        KEPT_LETTERS.add(key, kept)
    return frozenset(kept)


@cache
def _way() -> int:
    """Return a sum of how letters are found, since what another version of this module found is not asked."""
    return crc32(b"".join(marshal.dumps(step.__code__) for step in (_begins, _item_begins, _same, _held)))


def _begins(items: Iterable[tuple[Any, Any]], *, ignoring_case: bool) -> tuple[frozenset[str], bool]:
    """Return the letters that a sequence may begin with, and whether it may match nothing."""
    letters = frozenset[str]()
    for op, value in items:
        more, empty = _item_begins(op, value, ignoring_case=ignoring_case)
        letters |= more
        if not empty:
            return letters, False
    return letters, True


def _item_begins(op: Any, value: Any, *, ignoring_case: bool) -> tuple[frozenset[str], bool]:
    """Return the same of one item of an expression: a letter, a set, a group, alternatives, a repeat."""
    if op is ops.LITERAL:
        return _same(value, value, ignoring_case=ignoring_case), False
    if op is ops.IN:
        return frozenset().union(*(_held(each, of, ignoring_case=ignoring_case) for each, of in value)), False
    if op in (ops.AT, ops.ASSERT, ops.ASSERT_NOT):
        return frozenset(), True  # what must stand before or behind a place takes no letter of its own
    if op is ops.SUBPATTERN:
        _, added, removed, inner = value
        ignoring = bool((added or ignoring_case * re.IGNORECASE) & ~removed & re.IGNORECASE)
        return _begins(inner, ignoring_case=ignoring)
    if op is ops.BRANCH:
        ways = [_begins(way, ignoring_case=ignoring_case) for way in value[1]]
        return frozenset().union(*(letters for letters, _ in ways)), any(empty for _, empty in ways)
    if op in (ops.MAX_REPEAT, ops.MIN_REPEAT, ops.POSSESSIVE_REPEAT):
        least, _, inner = value
        letters, empty = _begins(inner, ignoring_case=ignoring_case)
        return letters, empty or least == 0
    return _ASCII, True


def _same(low: int, high: int, *, ignoring_case: bool) -> frozenset[str]:
    """Return the letters that a range may match; those of other alphabets have twins here, and may be any."""
    if high > ord("\x7f"):
        return _ASCII
    letters = "".join(map(chr, range(low, high + 1)))
    return frozenset(letters + letters.lower() + letters.upper() if ignoring_case else letters)


def _held(op: Any, value: Any, *, ignoring_case: bool) -> frozenset[str]:
    """Return the letters of one entry of a set, as `[a-z]`."""
    if op in (ops.LITERAL, ops.RANGE):
        low, high = (value, value) if op is ops.LITERAL else value
        return _same(low, high, ignoring_case=ignoring_case)
    return _KINDS.get(value, _ASCII) if op is ops.CATEGORY else _ASCII
