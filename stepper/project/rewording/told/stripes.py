"""Stripes told as a list of rows and yarns: "work 2 rows in A and 4 rows in B, 6 times in all". No I/O.

The list is written out once, and its rows again as often as the line says. Common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.synonym import ROUND, N
from stepper.project.rewording.told.shaping import Piece
from stepper.regex import regex

_STRIPE: Final = regex(
    rf"(?:(?P<verb>work|knit|purl)\s+)?(?P<n>\d{{1,2}}|{N})\s+(?P<row>{ROUND})\s+(?:(?:in|with|of|using)\s+)?(?:yarn\s+|colou?r\s+)?(?P<yarn>(?-i:MC|CC\d?|[A-Z]))(?![\w'-])",
    re.IGNORECASE,
)
_GLUE: Final = regex(r"\s*,\s*(?:(?:and|then)\s+)*|\s+(?:and\s+)?then\s+|\s+and\s+|\s*\+\s*", re.IGNORECASE)
_TIMES: Final = regex(
    rf"\s*[,;:]?\s*(?:(?P<all>(?P<n>{N})\s+times(?:\s+(?:in\s+(?:all|total)|altogether))?)|(?:a\s+total\s+of|in\s+(?:all|total))\s+(?P<n2>{N})\s+times)",
    re.IGNORECASE,
)
_END: Final = regex(r"\s*(?:[.;!]|$)")
_LEAST: Final = 2
"""One stripe is read by itself."""


def write_stripes(text: str, start: int) -> tuple[tuple[Piece, ...], int] | None:
    """Write a list of stripes as rows, each with its yarn.

    Args:
        text: The line, made plain.
        start: Where the sentence begins.

    Returns:
        The words in their order, each with its place, and where the sentence ends; None if it is no such
        list, or is worked again and the number of its rows differs by size.
    """
    stripes: list[re.Match[str]] = []
    at = start
    while (match := _STRIPE.match(text, at)) is not None and (match["verb"] or stripes):
        stripes.append(match)
        at = match.end()
        glue = _GLUE.match(text, at)
        if glue is None:
            break
        at = glue.end()
    if len(stripes) < _LEAST or len({match["yarn"] for match in stripes}) < _LEAST:
        return None
    at = stripes[-1].end()
    often = _TIMES.match(text, at)
    end = often.end() if often is not None else at
    if _END.match(text, end) is None:
        return None
    pieces: list[Piece] = []
    verb = stripes[0]["verb"].lower()
    for number, match in enumerate(stripes):
        verb = (match["verb"] or verb).lower()
        yarn = match.start("yarn")
        said = "with" if number else "With"
        pieces += [(f"{'. ' if number else ''}{said.capitalize()} ", match.start()), (match["yarn"], yarn)]
        pieces += [
            (f", {verb} ", match.start("n")),
            (match["n"], match.start("n")),
            (f" {match['row']}", match.start("row")),
        ]
    if often is not None:
        numbers = [match["n"] for match in stripes]
        if not all(number.isdigit() for number in numbers):
            return None
        group = "n" if often["n"] else "n2"
        pieces += [(f". Rep last {sum(map(int, numbers))} {stripes[-1]['row']} ", often.start(group))]
        pieces += [(often[group], often.start(group)), (" times in all", often.end(group) - 1)]
    return tuple(pieces), end
