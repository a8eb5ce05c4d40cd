"""The tables by which a line is parsed: worked out of the grammar once, kept, and taken up row by row.

The parser generator works on the grammar for seconds, and takes a tenth of a second to load what it made. Of
fifteen hundred rows and a thousand rules a garment asks two hundred; each is made of what was kept when it is
first asked.
"""

from __future__ import annotations

import marshal
from typing import Any

import lark
from lark import Lark, Token, Tree
from lark.grammar import Rule
from lark.lexer import LexerThread
from lark.parse_tree_builder import ParseTreeBuilder
from lark.parsers.lalr_analysis import IntParseTable, Reduce, Shift
from lark.parsers.lalr_parser import _Parser

from stepper.kept import keep, read_kept
from stepper.project.reading.first_letters import may_begin
from stepper.project.reading.lexing import FirstLetterLexer

_START = "line"
_NAME = "grammar"
FORM = 1
"""What is kept has this form; another number wherever `work_out` puts down anything else."""


class LineParser:
    """Parses a line as the generator's own parser of the grammar does."""

    def __init__(self, tables: dict[str, Any]) -> None:
        self._lexer = FirstLetterLexer(tables["kinds"], tables["beginning"], tables["ignored"])
        rows = _Rows(tables["rows"], tables["rules"])
        table = IntParseTable(rows, tables["first"], tables["last"])  # type: ignore[no-untyped-call]
        self._engine = _Parser(table, rows.callbacks)

    def parse(self, line: str) -> Tree[Token]:
        """Parse a line.

        Raises:
            UnexpectedInput: It stops somewhere.
        """
        tree: Tree[Token] = self._engine.parse(LexerThread.from_text(self._lexer, line), _START)
        return tree


class _Rows(dict[int, dict[str, tuple[Any, Any]]]):
    """What to do in each state of the parser at each token, in the form in which the engine asks."""

    def __init__(self, rows: list[dict[str, int]], rules: list[bytes]) -> None:
        super().__init__()
        self._rows = rows
        self._rules = rules
        self._made: dict[int, Rule] = {}
        self.callbacks: dict[Any, Any] = {}
        """What makes the tree of what each rule has put together; of every rule that a row was asked for."""

    def __missing__(self, state: int) -> dict[str, tuple[Any, Any]]:
        row = {
            token: (Shift, number) if number >= 0 else (Reduce, self._rule(~number))
            for token, number in self._rows[state].items()
        }
        self[state] = row
        return row

    def _rule(self, number: int) -> Rule:
        rule = self._made.get(number)
        if rule is None:
            rule = self._made[number] = Rule.deserialize(marshal.loads(self._rules[number]), {})
            builder = ParseTreeBuilder([rule], Tree, maybe_placeholders=True)  # type: ignore[no-untyped-call]
            self.callbacks |= builder.create_callback()  # type: ignore[no-untyped-call]
        return rule


def load_tables(grammar: str) -> dict[str, Any]:
    """Return the tables of a grammar, as they were kept, or worked out and kept from now on."""
    of = [FORM, lark.__version__, grammar]
    kept = read_kept(_NAME)
    if kept is not None and kept["of"] == of:
        tables: dict[str, Any] = kept
        return tables
    tables = {"of": of, **work_out(build(grammar))}
    keep(_NAME, tables)
    return tables


def build(grammar: str) -> Lark:
    """Have the parser generator build its own parser of a grammar."""
    return Lark(grammar, start=_START, parser="lalr", lexer="basic", maybe_placeholders=True)


def work_out(built: Lark) -> dict[str, Any]:
    """Return what a parser is made of, as plain values.

    Returns:
        `kinds` of token with their expressions, the one that counts first in front; `beginning`, which of
        them may begin with each letter of ASCII; `ignored`, the names of those that are left out; `rows`, for
        each state the next one at each token, or the complement of the number of the rule whose parts are
        together there; `rules`, each as the generator writes it, in bytes of its own, as few are read;
        `first` and `last`, the states in which a line begins and ends.
    """
    kinds = sorted(
        built.terminals,
        key=lambda kind: (-kind.priority, -kind.pattern.max_width, -len(kind.pattern.value), kind.name),
    )
    expressions = [kind.pattern.to_regexp() for kind in kinds]
    letters = map(chr, range(128))
    beginning = {
        letter: [at for at, kind in enumerate(expressions) if may_begin(kind, letter)] for letter in letters
    }
    table = built.parser.parser._parse_table
    numbers = {rule: number for number, rule in enumerate(built.rules)}
    rows = {
        state: {
            str(token): arg if action is Shift else ~numbers[arg] for token, (action, arg) in row.items()
        }
        for state, row in table.states.items()
    }
    return {
        "kinds": [(kind.name, expression) for kind, expression in zip(kinds, expressions, strict=True)],
        "beginning": beginning,
        "ignored": list(built.ignore_tokens),
        "rows": [rows[state] for state in range(len(rows))],
        "rules": [marshal.dumps(rule.serialize()) for rule in built.rules],
        "first": table.start_states,
        "last": table.end_states,
    }
