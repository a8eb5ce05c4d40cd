"""Tokens are those that the parser generator's own lexer finds, each at the same place: it is the outside check."""

from __future__ import annotations

import re
from functools import cache

import pytest
from hypothesis import given
from hypothesis import strategies as st
from lark.exceptions import UnexpectedCharacters
from lark.lexer import BasicLexer, Lexer, LexerThread

from stepper.project.reading.lexing import FirstLetterLexer, may_begin
from stepper.project.reading.parsing import build_parser, legal_words
from stepper.project.reading.wording import EXAMPLES


@cache
def lexers() -> tuple[Lexer, Lexer]:
    """The generator's own lexer and the one by first letters, both of the whole grammar."""
    conf = build_parser().lexer_conf
    return BasicLexer(conf), FirstLetterLexer(conf)


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


@pytest.mark.parametrize(
    ("expression", "begin", "never"),
    [
        ("knit", "k", "Kp"),
        ("(?i:knit)", "kK", "p"),
        ("(?i:knit|(?-i:MC))", "kKM", "m"),
        (r"(?:the\s+)?row", "tr", "o"),
        (r"[,;]?\s*and", ",; a", "n"),
        (r"(?!row)\d+", "07", "r"),
        (r"(?<=sts\s)(?:in|over)", "io", "s"),
        ("(?i:[a-c])", "aBcC", "d"),
        ("[^a]", "ab", ""),
        (".", "ab", ""),
        (r"\w", "a1", ""),
        (r"(a)?\1b", "ab", ""),
        ("x*", "xy", ""),
    ],
)
def test_what_may_begin_is_told_letter_by_letter(expression: str, begin: str, never: str) -> None:
    """A kind of token that is left out wrongly would make a legal line unreadable; where in doubt it is tried."""
    assert all(may_begin(expression, letter) for letter in begin)
    assert not any(may_begin(expression, letter) for letter in never)


@given(st.from_regex(re.compile(r"(?i)(?:the\s+)?(?:[kp]\d{1,2}|ro?ws?|\(?rs\)?|[½-¾]|\d+(?:st|nd))"), fullmatch=True))
def test_whatever_matches_may_begin_as_it_does(text: str) -> None:
    """Drawn from the expression itself."""
    assert may_begin(r"(?i)(?:the\s+)?(?:[kp]\d{1,2}|ro?ws?|\(?rs\)?|[½-¾]|\d+(?:st|nd))", text[0])
