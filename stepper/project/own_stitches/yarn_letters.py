"""Put the yarns in place of the letters by which a page counts the stitches of a colour round. No I/O.

"Letters: M = MC, R = CC1" makes "*M2, R1, M3*" a round of two stitches in MC, one in CC1 and three in MC. As
elsewhere M1 makes a stitch and S1 slips one, a row is read so only if the page says which yarn each of its
letters is, and it has nothing else than such letters with their numbers. Source: common practice.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from typing import Final

from stepper.project.reading.parsing import made_plain
from stepper.project.respelt import Respelt, Row
from stepper.project.rewording.reworded import Reworded, as_printed, laid_anew
from stepper.project.rewording.yarn_names import CALLED
from stepper.regex import regex

_YARN: Final = rf"(?:(?-i:MC|CC\d?|[DLBP]C)|{CALLED})"
_ENTRY: Final = rf"(?-i:[A-JL-OQ-Z])\s*[=:]\s*(?:the\s+)?{_YARN}(?:\s*\([^()]*\))?"
_LETTERS: Final = regex(
    rf"\W*(?:(?:(?:the\s+)?(?:letters?|colou?rs?|yarns?)|(?:colou?r\s+)?key)(?:\s+used)?(?:\s+in\s+(?:the\s+)?(?:bands?|pattern|yoke|rounds?|chart))?\s*[:.-]\s*)?"
    rf"{_ENTRY}(?:\s*(?:[,;]|\band\b|\s)\s*(?:and\s+)?{_ENTRY})+\s*\.?\W*",
    re.I,
)
"""A sentence that says which yarn each letter is, two of them or more."""
_ONE: Final = regex(rf"(?<!\w)(?P<letter>(?-i:[A-Z]))\s*[=:]\s*(?:the\s+)?(?P<yarn>{_YARN})(?!\w)", re.I)
_HEAD: Final = regex(r"\s*(?:rnds?|rounds?|rows?)\s+\d[^:.*]*[:.]\s*", re.I)
_COUNTED: Final = regex(r"(?<!\w)(?P<letter>[A-Z])(?P<n>\d+)(?!\w)")
_REST: Final = regex(
    r"(?:[\s,;*()\[\]]|(?:and\s+)?rep(?:eat)?\.?\s+from(?=\s*\*)|to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:rnd|round|row))?\b|around\b|\d+\s+times\b)*\.?\s*",
    re.I,
)
"""What else may stand in such a row: its stars and brackets, and how often they are worked."""


def letters_of(text: str) -> dict[str, str]:
    """Return the letters that a sentence explains, each with what it says of its yarn; empty if none."""
    if _LETTERS.fullmatch(text) is None:
        return {}
    return {match["letter"]: match["yarn"] for match in _ONE.finditer(text)}


def put_yarns(text: str, letters: Mapping[str, str]) -> Reworded | None:
    """Put yarns in place of the letters of a row.

    Args:
        text: The row, made plain.
        letters: The letters, each with the yarn it stands for.

    Returns:
        The row, "2 MC, 1 CC1" for "M2, R1"; None if it is no row of such letters alone.
    """
    head = _HEAD.match(text) if letters else None
    if head is None:
        return None
    found = list(_COUNTED.finditer(text, head.end()))
    if not found or any(match["letter"] not in letters for match in found):
        return None
    if _REST.fullmatch(_COUNTED.sub("", text[head.end() :])) is None:
        return None
    line = as_printed(text)
    for match in reversed(found):
        line = laid_anew(line, *match.span(), [match.span("n"), f" {letters[match['letter']]}"])
    return line


def take_letters(rows: Iterable[Row], letters: Mapping[str, str], respelt: Respelt) -> list[Row]:
    """Put yarns in place of the letters of rows.

    Args:
        rows: The rows, each with its place.
        letters: The letters, each with the key of its yarn.
        respelt: Gets the rows as they were.
    """
    made: list[Row] = []
    for text, place in rows:
        put = put_yarns(made_plain(text), letters)
        if put is not None:
            respelt.put((text, place), put)
        made.append((put.text if put is not None else text, place))
    return made
