"""Find what a regular expression demands of a text: letters without which it is found nowhere. No I/O.

Theory of operation. To look for a pattern costs some ten times what it costs to look for a word, and to
compile it a thousand times. So the words that stand in the pattern outside of all that may be left out are
looked for first: `(?:bind|cast)\\s+off(?:\\s+loosely)?` demands "bind" or "cast", and "off". Only that much
of the notation is known here as the table needs and as can be taken apart safely; of what is not known
nothing is demanded.
"""

from __future__ import annotations

import marshal
import re
from functools import cache
from typing import Final
from zlib import crc32

from stepper.kept import KeptTable
from stepper.regex import regex

Demand = frozenset[str]
"""Pieces of words in small letters, one of which must be in the text."""
_Tokens = list[tuple[str, str]]
KEPT_DEMANDS: Final = KeptTable("demands", most=12_000, least_new=100)
"""What expressions demand: to find it for the rows that one page needs takes over a second."""

_TOKEN: Final = regex(
    r"(?P<letters>[^\\\[\]()|*+?{}^$.\s]+(?![*+?{])|[^\\\[\]()|*+?{}^$.\s])"
    r"|(?P<sign>\\[^\w\s])"
    r"|(?P<escape>\\(?:u[0-9a-fA-F]{4}|x[0-9a-fA-F]{2}|\d+|.))"
    r"|(?P<open>\((?:\?(?:P<\w+>|<?=|:|-?i:))?(?!\?))"
    r"|(?P<close>\))"
    r"|(?P<repeat>(?:[*+?]|\{\d*,?\d*\})[?+]?)"
    r"|(?P<either>\|)"
    r"|(?P<class>\[\^?\]?(?:\\.|[^\]\\])*\])"
    r"|(?P<without>\(\?<?!)"
    r"|(?P<other>[$^.\s])",
    re.DOTALL,
)


def find_demands(expression: str) -> tuple[Demand, ...]:
    """Find what every text holds in which an expression is found.

    Args:
        expression: A regular expression of the house's own, for upper and lower case alike or not; what it
            demands is kept for the next start.

    Returns:
        Demands, each of which is met by such a text in small letters, the most telling first; none where
        the expression is not taken apart.
    """
    key = (expression, _way())
    kept: tuple[tuple[Demand, ...]] | None = KEPT_DEMANDS.get(key)
    if kept is None:
        kept = (_found(expression),)
        KEPT_DEMANDS.add(key, kept)
    return kept[0]


@cache
def _way() -> int:
    """Return a sum of how demands are found, since what another version of this module found is not asked."""
    steps = (_found, _tokens, _either, _sequence, _word, _weight)
    return crc32(b"".join([_TOKEN.pattern.encode(), *(marshal.dumps(step.__code__) for step in steps)]))


def _found(expression: str) -> tuple[Demand, ...]:
    tokens = _tokens(expression)
    found, end = _either(tokens, 0)
    if end != len(tokens):
        return ()
    return tuple(sorted(dict.fromkeys(found), key=lambda one: (-_weight(one), sorted(one))))


def stands_at_the_start(expression: str) -> bool:
    """Return whether an expression is found at the start of a text or nowhere."""
    if not expression.startswith("^"):
        return False
    tokens, depth = _tokens(expression), 0
    for kind, _ in tokens:
        depth += (kind in ("open", "without")) - (kind == "close")
        if kind == "either" and depth == 0:
            return False
    return bool(tokens)


def _tokens(expression: str) -> _Tokens:
    """Return the kinds and letters of an expression; none where one of them is not known."""
    found = [(match.lastgroup or "", match.group()) for match in _TOKEN.finditer(expression)]
    return found if sum(len(text) for _, text in found) == len(expression) else []


def _either(tokens: _Tokens, at: int) -> tuple[list[Demand], int]:
    """Return what the alternatives of a group demand that begins at a token, and at which it ends."""
    ways = []
    while True:
        found, at = _sequence(tokens, at)
        ways.append(found)
        if at == len(tokens) or tokens[at][0] != "either":
            break
        at += 1
    if len(ways) == 1 or not all(ways):
        return ways[0] if len(ways) == 1 else [], at
    pieces = frozenset[str]().union(*(max(way, key=_weight) for way in ways))
    return [frozenset(one for one in pieces if not any(other in one for other in pieces - {one}))], at


def _sequence(tokens: _Tokens, at: int) -> tuple[list[Demand], int]:
    """Return what stands one after the other demands, and at which token it ends."""
    found: list[Demand] = []
    run = ""
    while at < len(tokens) and tokens[at][0] not in ("close", "either"):
        kind, text = tokens[at]
        letters = text.removeprefix("\\") if kind in ("letters", "sign") else ""
        inner: list[Demand] = []
        if kind in ("open", "without"):
            inner, at = _either(tokens, at + 1)
        at += 1
        repeat = tokens[at][1] if at < len(tokens) and tokens[at][0] == "repeat" else ""
        at += bool(repeat)
        needed = not repeat.startswith(("*", "?", "{0", "{,"))
        run += letters if needed else ""
        if letters and not repeat:
            continue
        found += _word(run)
        run = ""
        found += inner if needed and kind == "open" else []
    return [*found, *_word(run)], at


def _word(run: str) -> list[Demand]:
    """Return the demand of letters that stand together; one alone is in nearly every text, a sign is not."""
    return [frozenset({run.lower()})] if len(run) > 1 or (run and not run.isalpha()) else []


def _weight(demand: Demand) -> float:
    """Return how much a demand is likely to spare: few pieces are, and long ones."""
    return min(map(len, demand)) - len(demand) / 8
