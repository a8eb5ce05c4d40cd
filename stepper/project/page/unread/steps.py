"""Work out the count after each row of a shaping that is told in words: "every other rnd 3 times". No I/O.

What is worked out is proposed to the knitter. It comes to the count that the page prints, with as many
stitches in each shaping row, or nothing is proposed; what is cast off at the beginning of rows is all told.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

from stepper.project.page.unread.proposals import NUMBER, NUMBER_OR_WORD, in_figures
from stepper.regex import regex

_MOST_ROWS: Final = 200
_MOST_A_ROW: Final = 16
"""Most stitches that one shaping row takes or adds."""
_ROWS: Final = r"(?:rows?|rnds?|rounds?)"
_NEXT: Final = (
    rf"\bnext\s+(?P<next>{NUMBER_OR_WORD})\s+{_ROWS}\b"
    rf"|\b(?:(?P<following>{NUMBER_OR_WORD})\s+(?:foll\w*\s+)?|foll\w*\s+(?P<after>{NUMBER_OR_WORD})\s+)(?:alt\w*|other)\s+{_ROWS}\b"
)
_EVERY: Final = (
    rf"\bevery\s+(?:foll\w*\s+)?(?:(?P<other>other|alt\w*|second|2nd|[RW]S)\s+|(?P<nth>\d+)(?:st|nd|rd|th)\s+)?{_ROWS}\s+"
    rf"(?P<times>{NUMBER_OR_WORD})\s*(?:more\s+)?(?:times?\b)?"
)
_SHAPED: Final = regex(rf"{_NEXT}|{_EVERY}", re.I)
_UNSURE: Final = regex(
    r"\bat\s+the\s+same\s+time\b|\buntil\b|\bor\b|\b(?:cast|bind)(?:ing)?\s+off\b|\bevery\b(?!\s+(?:foll\w*\s+)?"
    rf"(?:(?:other|alt\w*|second|2nd|[RW]S|\d+(?:st|nd|rd|th))\s+)?{_ROWS}\s+{NUMBER_OR_WORD})",
    re.I,
)
"""Words by which the rows of the shaping are not all told."""
_OFF: Final = regex(
    rf"(?:\b(?:cast|bind)(?:ing)?\s+off|,|\band|\bthen)\s+(?P<sts>{NUMBER})\s+(?:sts?\b\.?|stitches)\s+at\s+"
    rf"(?:the\s+)?beg\w*\s+of\s+(?:each\s+of\s+)?(?:the\s+)?(?:(?:next|foll\w*)\s+)?(?P<rows>{NUMBER_OR_WORD})\s+(?:foll\w*\s+)?{_ROWS}\b",
    re.I,
)
"""Stitches cast off at the beginning of rows: "Cast off 7 sts at the beginning of the next 4 rows"."""


def counts_by_words(words: str, before: int, last: int, size: int, of: int) -> tuple[int, ...]:
    """Return the stitches after each row of a shaping.

    Args:
        words: The words of the page.
        before: The stitches before it. Range: 1 and up.
        last: The stitches after it, as printed; 0 if that is not printed.
        size: The size that is knitted, from 0.
        of: How many sizes there are; a list of another length is not read.

    Returns:
        The counts; none if the words do not tell them all.
    """
    said = " ".join(words.split())
    off = _cast_off(said, before, size, of)
    if off:
        return off if last in (0, off[-1]) else ()
    rows = list(_shaping_rows(said, size, of)) if not _UNSURE.search(said) else []
    shaped = sum(rows)
    if not last or not shaped or len(rows) > _MOST_ROWS:
        return ()
    step, over = divmod(last - before, shaped)
    if over or not step or abs(step) > _MOST_A_ROW:
        return ()
    counts, here = [], before
    for row in rows:
        here += step if row else 0
        counts.append(here)
    return tuple(counts)


def _shaping_rows(said: str, size: int, of: int) -> Iterator[bool]:
    """Yield for each row whether it shapes; nothing if a number cannot be read."""
    rows: list[bool] = []
    for match in _SHAPED.finditer(said):
        number = next((match[name] for name in ("next", "following", "after", "times") if match[name]), "")
        times = _in_size(number, size, of)
        if times is None or times > _MOST_ROWS:
            return
        other = match["following"] or match["after"] or match["other"]
        interval = int(match["nth"] or 0) or (2 if other else 1)
        by_side = (match["other"] or "").upper() in ("RS", "WS")
        if by_side and len(rows) % 2 == 0:
            return  # which row is on that side cannot be told
        rows += ([False] * (interval - 1) + [True]) * times
    yield from rows


def _cast_off(said: str, before: int, size: int, of: int) -> tuple[int, ...]:
    """Return the counts where stitches are cast off at the beginning of rows, and nothing else is said."""
    found = list(_OFF.finditer(said))
    if not found or re.search(r"(?<!as you )\b(?:cast|bind)(?:ing)?\s+off\b", said[found[0].end() :], re.I):
        return ()
    counts, here = [], before
    for match in found:
        sts, rows = _in_size(match["sts"], size, of), _in_size(match["rows"], size, of)
        if sts is None or rows is None or rows > _MOST_ROWS:
            return ()
        for _ in range(rows):
            here -= sts
            counts.append(here)
    return tuple(counts) if here > 0 else ()


def _in_size(number: str, size: int, of: int) -> int | None:
    """Return a number in one size; None for a list that is not of the sizes."""
    values = [int(each) for each in re.findall(r"\d+", in_figures(number))]
    if len(values) not in (1, of):
        return None
    return values[0] if len(values) == 1 else values[size]
