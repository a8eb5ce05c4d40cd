"""Put the lines of printed pages in reading order: columns, running heads, page numbers. No I/O.

Theory of operation. Each page is a set of lines with their boxes. A page is cut into bands where a line
reaches across the gutter (a heading over two columns), and each band is read column by column, the left one
first. A gutter is a white strip with enough lines on either side and none across it; it separates columns
only if both sides hold running text, because the cells of a table are side by side too, and a table is read
row by row. Text that repeats at the edge of several pages, page numbers aside, is a running head or foot. It
is given once, so that it never lands in the middle of a sentence broken over two pages.

Source: recursive cutting at white space (Nagy and Seth 1984), with one cut in each direction; the thresholds
are chosen here.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from typing import Final

from stepper.records import dataclass
from stepper.regex import regex

EDGE: Final = 0.09
"""Share of a page's height, at its top and at its foot, that holds running heads."""
_LEAST_LINES: Final = 3
"""Fewest lines in each of two columns."""
_FILLED: Final = 0.55
"""Share of its column that a full line of running text fills; the cells of a table fill less."""
_WORDS: Final = 4
"""Fewest words in a full line of running text; the cells of a table have fewer."""
_LEAST_IN_FULL: Final = 0.5
"""Smallest share of a column's letters in full lines; the rest are headings and paragraph ends."""
_SAME_ROW: Final = 0.5
"""Lines whose middles are closer than this share of their height are on one row."""
_PAGE_NUMBER = regex(r"(?:page\s*)?\d{1,3}(?:\s*(?:of|/)\s*\d{1,3})?|[-–]\s*\d{1,3}\s*[-–]", re.I)


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintedLine:
    """A line of text and its box on the page. Unit: points, from the lower left corner."""

    text: str
    left: float
    right: float
    bottom: float
    top: float

    @property
    def middle(self) -> float:
        """Height of its middle."""
        return (self.bottom + self.top) / 2


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintedPage:
    """A page as it is printed."""

    lines: tuple[PrintedLine, ...]
    height: float
    """Unit: points."""
    pictures: int = 0
    """Number of pictures on it."""


def reading_order(pages: Sequence[PrintedPage]) -> tuple[tuple[str, ...], tuple[tuple[str, ...], ...]]:
    """Put the lines of all pages in reading order.

    Returns:
        The running heads and feet, each once, and the rows of each page without them. Always: every word of
        every line is in one of the two, except page numbers alone at the edge of a page and repeated running
        heads.
    """
    heads = _running_heads(pages)
    said: list[str] = []
    texts = []
    for page in pages:
        kept = []
        for line in page.lines:
            if not _at_edge(line, page):
                kept.append(line)
            elif _PAGE_NUMBER.fullmatch(line.text.strip()):
                continue
            elif _without_figures(line.text) in heads:
                if _without_figures(line.text) not in map(_without_figures, said):
                    said.append(line.text)
            else:
                kept.append(line)
        texts.append(tuple(_rows_of(kept)))
    return tuple(said), tuple(texts)


def _running_heads(pages: Sequence[PrintedPage]) -> frozenset[str]:
    """Find the text at the edge of at least two pages and at least half of them."""
    seen: Counter[str] = Counter()
    for page in pages:
        seen.update({_without_figures(line.text) for line in page.lines if _at_edge(line, page)})
    least = max(2, (len(pages) + 1) // 2)
    return frozenset(text for text, times in seen.items() if times >= least)


def _at_edge(line: PrintedLine, page: PrintedPage) -> bool:
    return line.bottom >= page.height * (1 - EDGE) or line.top <= page.height * EDGE


def _without_figures(text: str) -> str:
    return re.sub(r"\d+", "#", " ".join(text.split()).casefold())


def _rows_of(lines: Sequence[PrintedLine]) -> list[str]:
    """Read a page: its bands from top to bottom, the columns of each from left to right."""
    gutter = _gutter(lines)
    if gutter is None:
        return _in_rows(lines)
    rows: list[str] = []
    band: list[PrintedLine] = []
    for line in sorted(lines, key=lambda each: -each.middle):
        if line.left < gutter < line.right:
            rows += _in_columns(band, gutter)
            rows += _in_rows([line])
            band = []
        else:
            band.append(line)
    return rows + _in_columns(band, gutter)


def _in_columns(band: Sequence[PrintedLine], gutter: float) -> list[str]:
    """Read a band divided by a gutter; each side may be divided again."""
    sides = [
        [line for line in band if line.right <= gutter],
        [line for line in band if line.right > gutter],
    ]
    if any(not side for side in sides) or not all(map(_is_running_text, sides)):
        return _in_rows(band)
    return [row for side in sides for row in _rows_of(side)]


def _gutter(lines: Sequence[PrintedLine]) -> float | None:
    """Find the white strip that separates columns of running text; None if there is none.

    Of all strips between the end of one line and the beginning of another, choose the one that the fewest
    lines cross, then the one with the most even sides.
    """
    best: tuple[int, int, float] | None = None
    for left in sorted({round(line.left, 1) for line in lines}):
        reach = [line.right for line in lines if line.right < left]
        if len(reach) < _LEAST_LINES:
            continue
        at = (max(reach) + left) / 2
        sides = [
            [line for line in lines if line.right <= at],
            [line for line in lines if line.left >= at],
        ]
        crossing = len(lines) - len(sides[0]) - len(sides[1])
        if crossing * 2 > len(lines) or min(map(len, sides)) < _LEAST_LINES:
            continue
        if not _side_by_side(*sides) or not all(map(_is_running_text, sides)):
            continue
        rank = (crossing, abs(len(sides[0]) - len(sides[1])), at)
        best = rank if best is None or rank < best else best
    return None if best is None else best[2]


def _side_by_side(one: Sequence[PrintedLine], other: Sequence[PrintedLine]) -> bool:
    """Return whether two groups of lines share heights; if not, one is only indented below the other."""
    low = max(min(line.bottom for line in side) for side in (one, other))
    high = min(max(line.top for line in side) for side in (one, other))
    return high > low


def _is_running_text(side: Sequence[PrintedLine]) -> bool:
    """Return whether most of a column reads as sentences rather than as the cells of a table."""
    wide = max(line.right for line in side) - min(line.left for line in side)
    full = [
        line for line in side if line.right - line.left >= _FILLED * wide and len(line.text.split()) >= _WORDS
    ]
    return sum(len(line.text) for line in full) >= _LEAST_IN_FULL * sum(len(line.text) for line in side)


def _in_rows(lines: Sequence[PrintedLine]) -> list[str]:
    """Read row by row, joining lines side by side on one row; a wide gap becomes two spaces."""
    rows: list[list[PrintedLine]] = []
    for line in sorted(lines, key=lambda each: (-each.middle, each.left)):
        last = rows[-1][0] if rows else None
        if last is not None and last.middle - line.middle < _SAME_ROW * min(
            last.top - last.bottom, line.top - line.bottom
        ):
            rows[-1].append(line)
        else:
            rows.append([line])
    made: list[str] = []
    for number, row in enumerate(rows):
        if number and _is_parted(rows[number - 1], row):
            made.append("")
        made.append("  ".join(line.text.strip() for line in sorted(row, key=lambda each: each.left)))
    return made


def _is_parted(above: Sequence[PrintedLine], below: Sequence[PrintedLine]) -> bool:
    """Return whether a gap of more than a line's height separates two rows: a new paragraph."""
    gap = min(line.bottom for line in above) - max(line.top for line in below)
    return gap > 0.7 * max(line.top - line.bottom for line in below)
