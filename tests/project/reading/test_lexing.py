"""Tokens are those that the parser generator's own lexer finds, each at the same place: it is the outside check."""

from __future__ import annotations

from functools import cache

from hypothesis import given
from hypothesis import strategies as st
from lark.exceptions import UnexpectedCharacters
from lark.lexer import BasicLexer, Lexer, LexerThread

from stepper.project.grammar import grammar_text
from stepper.project.reading.lexing import FirstLetterLexer
from stepper.project.reading.parsing import legal_words
from stepper.project.reading.tables import build, load_tables
from stepper.project.reading.wording import EXAMPLES


@cache
def lexers() -> tuple[Lexer, Lexer]:
    """The generator's own lexer and the one by first letters, both of the whole grammar."""
    grammar = grammar_text()
    tables = load_tables(grammar)
    ours = FirstLetterLexer(tables["kinds"], tables["beginning"], tables["ignored"])
    return BasicLexer(build(grammar).lexer_conf), ours


def cut(lexer: Lexer, text: str) -> tuple[list[tuple[object, ...]], int | None]:
    """Return the tokens of a text with their places, and the offset of the letter that begins none."""
    found: list[tuple[object, ...]] = []
    try:
        for each in LexerThread.from_text(lexer, text).lex(None):
            found.append((each.type, str(each), each.start_pos, each.end_pos, each.column, each.end_column))
    except UnexpectedCharacters as error:
        return found, error.pos_in_stream
    return found, None


def test_every_example_is_cut_into_the_same_tokens() -> None:
    """As printed, in capitals, and with each letter of its own kind gone, so that it stops somewhere."""
    own, ours = lexers()
    for line in EXAMPLES:
        for text in (line, line.upper(), line[1:], line.replace("s", "§")):
            assert cut(ours, text) == cut(own, text)


@given(
    st.lists(st.sampled_from([*sorted(legal_words()), *"0129,.;:*()[]-/½ſ\u212aMA"])),
    st.sampled_from([" ", "", "  "]),
)
def test_any_words_in_any_order_are_cut_into_the_same_tokens(words: list[str], joint: str) -> None:
    """Whatever is typed; a long s and the sign for kelvin are letters that match others where case does not count."""
    own, ours = lexers()
    text = joint.join(words)
    assert cut(ours, text) == cut(own, text)
