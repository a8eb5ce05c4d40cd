"""Tell which sizes a line leaves out, having a dash for them in its lists of sizes. No I/O.

"Rep these 2 rnds - (-, 3, 5) times" is for the last two of four sizes. A size with a dash in every list of
a line is one that the line is not for. Where a size has a number in one list and a dash in another, the
dash is none of that, which can be read only where it says how often or how long: a count of no stitches is
no count. Source: common practice of patterns in many sizes.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.signs.size_lists import find_lists
from stepper.records import dataclass
from stepper.regex import regex

_HOW_OFTEN: Final = regex(r"\s*(?:more\s+)?(?:times|x|rnds?|rounds?|rows?)\b", re.I)
_DASH: Final = regex(r"(?:^|[\s,(\[{])-\s*[,)\]}(\[{]")


@dataclass(frozen=True, slots=True)
class LeftOut:
    """The sizes that the dashes of a line leave out."""

    worked: tuple[int, ...] = ()
    """Indices of the sizes that the line is for, from 0; empty for all of them."""
    doubtful: tuple[int, int] | None = None
    """Offset and length of a list whose dash cannot be read; None if all can."""


def sizes_left_out(plain: str, sizes: int) -> LeftOut:
    """Return which sizes the dashes in the lists of a line leave out.

    Args:
        plain: The line, made plain.
        sizes: How many sizes the pattern has; 0 if unknown.
    """
    if not _DASH.search(plain):
        return LeftOut()
    lists = find_lists(plain)
    dashed = [(match, values) for match, values in lists if "-" in values]
    if not dashed or (sizes and any(len(values) != sizes for _, values in lists)):
        return LeftOut()
    number = len(dashed[0][1])
    out = [size for size in range(number) if all(values[size : size + 1] == ["-"] for _, values in lists)]
    for match, values in dashed:
        partly = any(value == "-" and size not in out for size, value in enumerate(values))
        if partly and not _HOW_OFTEN.match(plain, match.end()):
            return LeftOut(doubtful=(match.start(), match.end() - match.start()))
    return LeftOut(tuple(size for size in range(number) if size not in out) if out else ())
