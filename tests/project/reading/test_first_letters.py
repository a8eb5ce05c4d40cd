"""With which letters a match may begin: Python's own matching is the outside check."""

from __future__ import annotations

import re

from hypothesis import given
from hypothesis import strategies as st

from stepper.project.reading.first_letters import may_begin
from tests.tables import each_row


@each_row(
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
        (r"\d++(?:\.\d++)?+cm", "07", "c."),
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
