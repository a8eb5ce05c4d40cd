"""The reference of the wording: every pattern of it is knitted, and every rule of the grammar stands in it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

from lark import Lark, Token

from stepper.plan.compile import compile_plan
from stepper.project.grammar import grammar_text
from stepper.project.reader import read_project
from stepper.project.reading.parsing import NOTE, Stopped, made_plain, understood
from stepper.project.rewording.reference import about, other_wordings, page, reference, stitch_lines
from tests.invariants import broken_invariants
from tests.project.wording_patterns import Pattern, as_file, patterns
from tests.tables import each_row

PATTERNS = patterns()


@each_row("pattern", PATTERNS)
def test_every_pattern_of_the_page_can_be_knitted(pattern: Pattern) -> None:
    """Read by the grammar, worked in every size with its printed counts, and bound off to the last stitch."""
    reading = read_project(as_file(pattern))
    assert reading.problems == ()
    assert reading.project is not None
    compiled = compile_plan(reading.project)
    assert compiled.problems == ()
    assert compiled.plan is not None
    assert broken_invariants(compiled.plan) == ()
    assert compiled.plan.rounds[-1].after == 0


class Watched:
    """The grammar of the program, with a note of every rule and terminal that was used."""

    always_accept = ()

    def __init__(self) -> None:
        self.lark = Lark(
            grammar_text(), start="line", parser="lalr", lexer="basic", maybe_placeholders=True, postlex=self
        )
        self.rules = {_name(rule): False for rule in self.lark.rules}
        self.productions = dict.fromkeys(self.lark.rules, False)
        self.terminals = {terminal.name: False for terminal in self.lark.terminals}
        callbacks: dict[Any, Callable[..., Any]] = self.lark.parser.parser.parser.callbacks  # type: ignore[attr-defined]  # lark names no type for it
        for rule, built in list(callbacks.items()):
            callbacks[rule] = self._watching(rule, built)

    def _watching(self, rule: Any, built: Callable[..., Any]) -> Callable[..., Any]:
        def note(children: Any) -> Any:
            self.rules[_name(rule)] = self.productions[rule] = True
            return built(children)

        return note

    def process(self, stream: Iterator[Token]) -> Iterator[Token]:
        """Note the terminals on their way to the parser."""
        for token in stream:
            self.terminals[token.type] = True
            yield token

    def read(self, body: str) -> None:
        """Read the body of a line and note what it uses."""
        self.lark.parse(body)


def _name(rule: Any) -> str:
    origin = rule.origin.name
    return f"{origin} -> {rule.alias}" if rule.alias else str(origin)


def bodies() -> list[str]:
    """Return what the grammar sees of every line of the page and of the other wordings."""
    found = []
    for line in [*(row for pattern in PATTERNS for row in pattern.work.splitlines()), *other_wordings()]:
        plain = made_plain(line)
        if NOTE.match(plain):
            continue
        read = understood(plain)
        if read.outcome is not None and not isinstance(read.outcome, Stopped):
            found.append(read.reworded.text[read.start :])
    return found


def watched() -> Watched:
    """Read the whole page."""
    grammar = Watched()
    for body in bodies():
        grammar.read(body)
    return grammar


def test_every_rule_and_word_of_the_grammar_stands_in_the_page() -> None:
    """A wording that nobody can look up is as good as none."""
    grammar = watched()
    unused = [name for name, used in grammar.rules.items() if not used and not name.startswith("__")]
    assert unused == []
    silent = {"WORD", "SIGN", "__ANON_0", "_unused"}
    words = [name for name, used in grammar.terminals.items() if not used and name not in silent]
    assert [word for word in words if not word.startswith("__")] == []


def test_a_rule_without_an_example_would_be_seen() -> None:
    """The watch can fail: a page of one line leaves most rules unused."""
    grammar = Watched()
    grammar.read("Cast on 80 sts.")
    assert grammar.rules["line"]
    assert not grammar.rules["turn_method"]


def test_the_reference_is_the_page_and_the_tables() -> None:
    """One text, printed by the program."""
    text = reference()
    assert text.startswith(page()[:200])
    assert all(line in text for line in other_wordings())
    assert all(line in text for line in stitch_lines())
    assert "ssk        2 to 1" in text


def test_a_word_finds_its_paragraphs() -> None:
    """She looks up one thing."""
    assert "## Short rows" in about("german")
    assert "Cast on 21 sts." not in about("german")
    assert about("xylophone") == ""
    listed = [row for row in about("buttonhole").splitlines() if row.startswith("- ")]
    assert listed
    assert all("buttonhole" in row.lower() for row in listed)
