"""Strips of a page: how text is broken into lines, and how strips are placed on sheets. Reads the typeface.

A strip is as wide as the sheet between its margins and is never cut. All lengths are in points.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import field
from importlib.resources import files
from typing import Any, Final

from stepper.records import dataclass

MM: Final = 72 / 25.4
"""A millimetre. Unit: pt."""
PLAIN: Final = "SheetPlain"
BOLD: Final = "SheetBold"
_FILES: Final = {PLAIN: "SourceSansPro-Regular.ttf", BOLD: "SourceSansPro-Semibold.ttf"}

Span = tuple[str, str]
"""Words and the name of their typeface."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Strip:
    """A strip."""

    high: float
    draw: Callable[[Any, float, float], None]
    """Puts it on a page, given its left and upper edge."""
    keeps: bool = False
    """Whether the next strip has to stand on the same sheet."""
    head: Strip | None = None
    """What is said again above it where a sheet begins with it."""


@dataclass(slots=True)
class Sheet:
    """A page with its strips, each with the distance of its upper edge from the top of the print area."""

    strips: list[tuple[float, Strip]] = field(default_factory=list)
    filled: float = 0.0

    def add(self, strip: Strip) -> None:
        """Put a strip below the others."""
        self.strips.append((self.filled, strip))
        self.filled += strip.high


def load_typeface() -> None:
    """Make the typeface known; it comes with a package and is put into every PDF.

    Raises:
        ImportError: A package is missing.
    """
    # Loaded here, as everywhere in these modules: only who asks for a PDF waits for the library.
    from reportlab.pdfbase import pdfmetrics
    from reportlab.pdfbase.ttfonts import TTFont

    for name, file in _FILES.items():
        if name not in pdfmetrics.getRegisteredFontNames():
            path = files("font_source_sans_pro").joinpath("files", file)
            pdfmetrics.registerFont(TTFont(name, str(path)))


def find_missing(text: str) -> str:
    """Return the letters of a text that the typeface does not have, each once."""
    from reportlab.pdfbase import pdfmetrics

    known = pdfmetrics.getFont(PLAIN).face.charToGlyph
    return "".join(sorted({sign for sign in text if sign > " " and ord(sign) not in known}))


def wide_of(text: str, font: str, size: float) -> float:
    """Return how wide words are."""
    from reportlab.pdfbase.pdfmetrics import stringWidth

    return float(stringWidth(text, font, size))


def break_lines(spans: Iterable[Span], size: float, wide: float) -> list[list[Span]]:
    """Break words into lines of a width; a word that is too long for any is broken inside."""
    lines: list[list[Span]] = [[]]
    used = 0.0
    for text, font in spans:
        for word in text.split():
            gap = wide_of(" ", font, size) if lines[-1] else 0.0
            own = wide_of(word, font, size)
            if lines[-1] and used + gap + own > wide:
                lines.append([])
                used = gap = 0.0
            for part in _fit(word, font, size, wide):
                if part is not word and lines[-1] and wide_of(part, font, size) + used > wide:
                    lines.append([])
                    used = gap = 0.0
                lines[-1].append((part, font))
                used += gap + wide_of(part, font, size)
    return lines


def _fit(word: str, font: str, size: float, wide: float) -> list[str]:
    """Return a word in parts that each fit a line."""
    if wide_of(word, font, size) <= wide:
        return [word]
    parts = [""]
    for sign in word:
        if parts[-1] and wide_of(parts[-1] + sign, font, size) > wide:
            parts.append("")
        parts[-1] += sign
    return parts


def put_line(canvas: Any, line: Sequence[Span], left: float, base: float, size: float) -> None:
    """Write a line of words, joining those of one typeface so that they can be copied as they stand."""
    at = 0
    while at < len(line):
        font = line[at][1]
        end = at
        while end < len(line) and line[end][1] == font:
            end += 1
        words = " ".join(text for text, _ in line[at:end]) + (" " if end < len(line) else "")
        canvas.setFont(font, size)
        canvas.drawString(left, base, words)
        left += wide_of(words, font, size)
        at = end


def place_strips(strips: Sequence[Strip], high: float) -> list[Sheet]:
    """Place strips on sheets of a height, in order; those that keep together stay together where they can."""
    sheets = [Sheet()]
    at = 0
    while at < len(strips):
        end = at
        while strips[end].keeps and end + 1 < len(strips):
            end += 1
        group = strips[at : end + 1]
        if sheets[-1].strips and sheets[-1].filled + sum(each.high for each in group) > high:
            sheets.append(Sheet())
        for strip in group:
            if sheets[-1].strips and sheets[-1].filled + strip.high > high:
                sheets.append(Sheet())
            if not sheets[-1].strips and strip.head is not None:
                sheets[-1].add(strip.head)
            sheets[-1].add(strip)
        at = end + 1
    return sheets
