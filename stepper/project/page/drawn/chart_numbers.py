"""Put the word for a round in front of bare numbers below the name of a chart: "1: *1 B, 5 A*". No I/O.

Theory of operation. A chart told in words mostly has a number and a colon for each of its rounds, several in
one row of the page, and no full stop behind any: "1: *1 B, 5 A*  2: as 1". Below "Chart 1" numbers that run
up from 1, each with stitches counted by yarns behind it or "as" and a number above, can be nothing else. One
row that is not so ends them, and a chart of one round is left as it is. Source: common practice.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import Final

from stepper.regex import regex

_HEAD: Final = regex(r"chart\s+[A-Z0-9]{1,2}(?:\s*\([^()]{1,40}\))?\s*:?", re.I)
"""The name of a chart alone on its row."""
_YARNS: Final = r"(?-i:MC|CC\d?|[A-J]|[L-OQ-Z])"
_COUNTED: Final = rf"\d{{1,3}}\s*{_YARNS}(?:\s*,\s*\d{{1,3}}\s*{_YARNS})*"
_ROUND: Final = regex(
    rf"(?P<number>\d{{1,3}})\s*[:.)]\s*(?:(?P<work>\*\s*{_COUNTED}\s*\*|{_COUNTED})|as\s+(?P<like>\d{{1,3}})\b)"
    r"(?P<said>\s*[-–—]\s+(?![\s\d*])[^*:]{1,80}?)?\s*[.;]?(?=\s+\d{1,3}\s*[:.)]|\s*$)\s*",
    re.I,
)
"""A round: its number, its stitches by their yarns, or another that is like it; and what is said of it."""


def name_rounds(rows: Sequence[str], origins: Sequence[int]) -> tuple[list[str], list[int]]:
    """Write each round of a chart that is told in words on a row of its own, with the word for it.

    Args:
        rows: The rows of the page.
        origins: For each the row of the page that it comes from.

    Returns:
        The same, "Rnd" put in front of such numbers. Nothing else is changed but a dash before what is said.
    """
    made: list[str] = []
    numbers: list[int] = []
    at = 0
    while at < len(rows):
        made.append(rows[at])
        numbers.append(origins[at])
        at += 1
        if _HEAD.fullmatch(rows[at - 1].strip()) is None:
            continue
        rounds, taken = _rounds_below(rows[at:])
        if len(rounds) > 1:
            made += [words for words, _ in rounds]
            numbers += [origins[at + row] for _, row in rounds]
            at += taken
    return made, numbers


def _rounds_below(rows: Sequence[str]) -> tuple[list[tuple[str, int]], int]:
    """Return the rounds at the head of some rows, each with the row it is in, and how many rows they take."""
    rounds: list[tuple[str, int]] = []
    for at, row in enumerate(rows):
        found = list(_rounds_in(row.strip(), len(rounds) + 1))
        if not found:
            return rounds, at
        rounds += [(words, at) for words in found]
    return rounds, len(rows)


def _rounds_in(row: str, number: int) -> Iterator[str]:
    """Yield the rounds of which a row is made, the first with this number; none if there is anything else."""
    found: list[str] = []
    done = 0
    while done < len(row):
        match = _ROUND.match(row, done)
        if match is None or int(match["number"]) != number or int(match["like"] or 0) >= number:
            return
        said = (match["said"] or "").strip(" -–—")
        work = match["work"] or f"as rnd {match['like']}"
        found.append(f"Rnd {number}: {work}." + (f" {said[:1].upper()}{said[1:]}." if said else ""))
        done, number = match.end(), number + 1
    yield from found
