"""Cut a line into the grammar's tokens, trying at each letter only those that can begin with it. No I/O.

The parser generator's own lexer tries every kind of token at every letter, one after the other; with
two hundred kinds this took a third of the reading. The same is found: the kinds left out cannot match.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from functools import cache
from re import _constants as ops
from re import _parser as expressions
from typing import Any

from lark.common import LexerConf
from lark.exceptions import UnexpectedCharacters
from lark.lexer import Lexer, LexerState, Token

_KINDS = {ops.CATEGORY_DIGIT: str.isdigit, ops.CATEGORY_SPACE: str.isspace}
"""Kinds of letters in a set, as `\\d`, that are told apart; any other may be any letter."""


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
        self._matchers: dict[str, re.Pattern[str]] = {}

    def lex(self, lexer_state: LexerState, parser_state: Any) -> Iterator[Token]:
        """Cut the text of a line into tokens.

        Raises:
            UnexpectedCharacters: No token begins at a letter.
        """
        text, at = lexer_state.text.text, 0
        while at < len(text):
            match = self._matcher(text[at]).match(text, at)
            if match is None or match.lastgroup is None:
                at_letter = {"state": parser_state, "terminals_by_name": self._by_name}
                raise UnexpectedCharacters(text, at, 1, at + 1, **at_letter)  # type: ignore[no-untyped-call]
            if match.lastgroup not in self._ignored:
                token = Token(match.lastgroup, match.group(), at, 1, at + 1, 1, match.end() + 1, match.end())
                lexer_state.last_token = token
                yield token
            at = match.end()

    def _matcher(self, letter: str) -> re.Pattern[str]:
        """Return what matches any token that may begin with a letter, compiled when it is first asked for."""
        found = self._matchers.get(letter)
        if found is None:
            kinds = (f"(?P<{name}>{kind})" for name, kind in self._kinds if may_begin(kind, letter))
            found = self._matchers[letter] = re.compile("|".join(kinds) or r"(?!)")
        return found


def may_begin(expression: str, letter: str) -> bool:
    """Return whether a match of an expression may begin with a letter; true also where it cannot be told."""
    return not letter.isascii() or any(_begins(_parsed(expression), letter, ignoring_case=False))


@cache
def _parsed(expression: str) -> Any:
    return expressions.parse(expression)


def _begins(items: Iterable[tuple[Any, Any]], letter: str, *, ignoring_case: bool) -> tuple[bool, bool]:
    """Return whether a sequence may begin with a letter, and whether it may match nothing."""
    for op, value in items:
        may, empty = _item_begins(op, value, letter, ignoring_case=ignoring_case)
        if may or not empty:
            return may, empty
    return False, True


def _item_begins(op: Any, value: Any, letter: str, *, ignoring_case: bool) -> tuple[bool, bool]:
    """Return the same of one item of an expression: a letter, a set, a group, alternatives, a repeat."""
    if op is ops.LITERAL:
        return _same(value, letter, ignoring_case=ignoring_case), False
    if op is ops.IN:
        return any(_holds(each, of, letter, ignoring_case=ignoring_case) for each, of in value), False
    if op in (ops.AT, ops.ASSERT, ops.ASSERT_NOT):
        return False, True  # what must stand before or behind a place takes no letter of its own
    if op is ops.SUBPATTERN:
        _, added, removed, inner = value
        ignoring = bool((added or ignoring_case * re.IGNORECASE) & ~removed & re.IGNORECASE)
        return _begins(inner, letter, ignoring_case=ignoring)
    if op is ops.BRANCH:
        ways = [_begins(way, letter, ignoring_case=ignoring_case) for way in value[1]]
        return any(may for may, _ in ways), any(empty for _, empty in ways)
    if op in (ops.MAX_REPEAT, ops.MIN_REPEAT):
        least, _, inner = value
        may, empty = _begins(inner, letter, ignoring_case=ignoring_case)
        return may, empty or least == 0
    return True, True


def _same(code: int, letter: str, *, ignoring_case: bool) -> bool:
    """Return whether a letter of an expression may be one of a line; other alphabets have twins here."""
    if code > ord("\x7f"):
        return True
    return chr(code) == letter or (ignoring_case and chr(code).lower() == letter.lower())


def _holds(op: Any, value: Any, letter: str, *, ignoring_case: bool) -> bool:
    """Return whether one entry of a set, as `[a-z]`, may be a letter."""
    if op is ops.LITERAL:
        return _same(value, letter, ignoring_case=ignoring_case)
    if op is ops.RANGE:
        low, high = value
        forms = {letter, letter.lower(), letter.upper()} if ignoring_case else {letter}
        return high > ord("\x7f") or any(low <= ord(form) <= high for form in forms)
    return op is not ops.CATEGORY or value not in _KINDS or _KINDS[value](letter)
