"""Cut a line into the grammar's tokens, trying at each letter only those that can begin with it. No I/O.

The parser generator's own lexer tries every kind of token at every letter, one after the other; with
two hundred kinds this took a third of the reading. The same is found: the kinds left out cannot match.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from functools import cache
from re import _compiler as compiler  # type: ignore[attr-defined]
from re import _constants as ops
from re import _parser as expressions
from typing import Any

from lark.common import LexerConf
from lark.exceptions import UnexpectedCharacters
from lark.lexer import Lexer, LexerState, Token

_ASCII = frozenset(map(chr, range(128)))
_KINDS = {
    ops.CATEGORY_DIGIT: frozenset(filter(str.isdigit, _ASCII)),
    ops.CATEGORY_SPACE: frozenset(filter(str.isspace, _ASCII)),
}
"""Letters of the kinds in a set, as `\\d`, that are told apart; any other may be any letter."""


class FirstLetterLexer(Lexer):
    """The tokens of one line, each found among the kinds that its first letter allows."""

    __future_interface__ = 1

    def __init__(self, conf: LexerConf) -> None:
        kinds = sorted(
            conf.terminals,
            key=lambda kind: (-kind.priority, -kind.pattern.max_width, -len(kind.pattern.value), kind.name),
        )
        self._kinds = [(kind.name, kind.pattern.to_regexp()) for kind in kinds]
        self._by_name = conf.terminals_by_name
        self._ignored = frozenset(conf.ignore)
        self._possible: dict[str, list[tuple[str, re.Pattern[str]]]] = {}

    def lex(self, lexer_state: LexerState, parser_state: Any) -> Iterator[Token]:
        """Cut the text of a line into tokens.

        Raises:
            UnexpectedCharacters: No token begins at a letter.
        """
        text, at = lexer_state.text.text, 0
        while at < len(text):
            name, match = next(self._found(text, at), ("", None))
            if match is None:
                at_letter = {"state": parser_state, "terminals_by_name": self._by_name}
                raise UnexpectedCharacters(text, at, 1, at + 1, **at_letter)  # type: ignore[no-untyped-call]
            if name not in self._ignored:
                token = Token(name, match.group(), at, 1, at + 1, 1, match.end() + 1, match.end())
                lexer_state.last_token = token
                yield token
            at = match.end()

    def _found(self, text: str, at: int) -> Iterator[tuple[str, re.Match[str]]]:
        """Yield the tokens that a text may have at a place, the one that counts first."""
        for name, kind in self._kinds_at(text[at]):
            if match := kind.match(text, at):
                yield name, match

    def _kinds_at(self, letter: str) -> list[tuple[str, re.Pattern[str]]]:
        """Return the kinds that may begin with a letter, in order, found when it is first asked for.

        Each is compiled once: one expression of all that begin with a letter takes the most of a first start.
        """
        found = self._possible.get(letter)
        if found is None:
            possible = ((name, kind) for name, kind in self._kinds if may_begin(kind, letter))
            found = self._possible[letter] = [(name, _compiled(kind)) for name, kind in possible]
        return found


def may_begin(expression: str, letter: str) -> bool:
    """Return whether a match of an expression may begin with a letter; true also where it cannot be told."""
    return not letter.isascii() or letter in _first_letters(expression)


@cache
def _compiled(expression: str) -> re.Pattern[str]:  # parsed once for this and for its first letters
    compiled: re.Pattern[str] = compiler.compile(_parsed(expression))
    return compiled


@cache
def _parsed(expression: str) -> Any:
    return expressions.parse(expression)


@cache
def _first_letters(expression: str) -> frozenset[str]:
    """Return the ASCII letters that a match may begin with."""
    letters, empty = _begins(_parsed(expression), ignoring_case=False)
    return _ASCII if empty else letters


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
    if op in (ops.MAX_REPEAT, ops.MIN_REPEAT):
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
