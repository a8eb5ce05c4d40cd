"""Cut a line into the grammar's tokens, trying at each letter only those that can begin with it. No I/O.

The parser generator's own lexer tries every kind of token at every letter, one after the other; with
two hundred kinds this took a third of the reading. The same is found: the kinds left out cannot match.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Any

from lark.exceptions import UnexpectedCharacters
from lark.lexer import Lexer, LexerState, Token

from stepper.regex import regex


class FirstLetterLexer(Lexer):
    """The tokens of one line, each found among the kinds that its first letter allows."""

    __future_interface__ = 1

    def __init__(
        self, kinds: Sequence[tuple[str, str]], beginning: Mapping[str, Sequence[int]], ignored: Iterable[str]
    ) -> None:
        """Take the kinds of token.

        Args:
            kinds: Name and expression of each, the one that counts first in front.
            beginning: Which of them may begin with a letter; with one that is not there, all may.
            ignored: Names of those that are left out.
        """
        self._kinds = [(name, regex(expression)) for name, expression in kinds]
        self._beginning = beginning
        self._ignored = frozenset(ignored)
        self._possible: dict[str, list[tuple[str, re.Pattern[str]]]] = {}

    def lex(self, lexer_state: LexerState, parser_state: Any) -> Iterator[Token]:
        """Cut the text of a line into tokens.

        Raises:
            UnexpectedCharacters: No token begins at a letter.
        """
        text, at = lexer_state.text.text, 0
        while at < len(text):
            for name, kind in self._kinds_at(text[at]):
                match = kind.match(text, at)
                if match is None:
                    continue
                if name not in self._ignored:
                    token = Token(name, match.group(), at, 1, at + 1, 1, match.end() + 1, match.end())
                    lexer_state.last_token = token
                    yield token
                at = match.end()
                break
            else:
                raise UnexpectedCharacters(text, at, 1, at + 1, state=parser_state)  # type: ignore[no-untyped-call]

    def _kinds_at(self, letter: str) -> list[tuple[str, re.Pattern[str]]]:
        """Return the kinds that may begin with a letter, in order."""
        found = self._possible.get(letter)
        if found is None:
            may = self._beginning.get(letter)
            found = self._kinds if may is None else [self._kinds[number] for number in may]
            self._possible[letter] = found
        return found
