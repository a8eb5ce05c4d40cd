"""Records of what a printed page is cut into: pieces, their parts, charts drawn as text. No I/O."""

from __future__ import annotations

import re
from dataclasses import field

from stepper.project.instructions import (
    BreakYarn,
    Line,
    Needle,
    Phrase,
    PrintedCount,
    Remark,
    TurnMethod,
    WithYarn,
)
from stepper.records import dataclass
from stepper.regex import regex

_KEYED = regex(r"(?:(?<=\s)|^)(\S)\s*=\s*([^;=]+?)(?=\s*[;,]\s*\S\s*=|\s*[;,.]?$)")
"""The key of a chart drawn as text: ". = MC; a = A"."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Piece:
    """A stretch of the text that becomes one row of the file."""

    kind: str
    """`line`, `note`, `comment`, or `label`: a heading that becomes the name of the line below it."""
    text: str
    row: int
    """Row of the text where it begins, from 1."""
    front: str = ""
    """`comment`: its kind of front matter, one of `front_matter.KINDS`."""
    why: str = ""
    """`note`: what stopped the reading."""
    line: Line | None = None


@dataclass(slots=True, kw_only=True)
class PagePart:
    """A section of the garment, as found in the text."""

    name: str
    aside: str = ""
    piece: str = ""
    """Name of the whole piece it belongs to: `right mitten` of its cuff; empty if it is one itself."""
    heading: str = ""
    """Its heading as printed; empty without one."""
    defines: bool = False
    """Whether it is only a stitch pattern that stands before the garment: nothing is worked there."""
    pieces: list[Piece] = field(default_factory=list)

    @property
    def full_name(self) -> str:
        """Its name behind that of its piece: `right mitten, cuff`."""
        return f"{self.piece}, {self.name}" if self.piece else self.name

    @property
    def is_worked(self) -> bool:
        """Whether a line of it works stitches."""
        return any(piece.line is not None and works(piece.line) for piece in self.pieces)


@dataclass(slots=True, kw_only=True)
class DrawnChart:
    """A chart drawn as text."""

    name: str
    key: list[tuple[str, str]] = field(default_factory=list)
    rows: list[str] = field(default_factory=list)
    repeat: str = ""
    drawn: str = ""

    def take(self, row: str) -> bool:
        """Take in a row if it is of the chart or its key; return whether it was."""
        keyed = _KEYED.findall(row)
        if keyed and not self.rows:
            self.key += [(sign, meaning.strip()) for sign, meaning in keyed]
        elif re.match(r"(?:repeat|rep):?\s*(?:sts?|squares)?\s*\d+\s*[-–]\s*\d+$", row, re.I):
            self.repeat = re.sub(r"[^\d–-]", "", row)
        elif re.match(r"(?:only\s+)?(?:RS|right[- ]side)\s+rows\b.*\bdrawn\b", row, re.I):
            self.drawn = "RS rows"
        elif " " not in row and len(row) > 1 and set(row) <= {sign for sign, _ in self.key}:
            self.rows.append(row)
        else:
            return False
        return True


def has_key(row: str) -> bool:
    """Return whether a row is the key of a chart: ". = MC; a = A"."""
    return bool(_KEYED.search(row))


def works(line: Line) -> bool:
    """Return whether a line works stitches, rather than naming a needle or a count."""
    idle = (PrintedCount, Needle, Remark, WithYarn, BreakYarn, TurnMethod)
    worked = [sentence for sentence in line.sentences if not isinstance(sentence, idle)]
    if not worked:
        return False
    counted = re.search(r"\d", line.text) or line.numbers or line.every or line.label is None
    return bool(counted) and not (
        line.label is not None
        and len(worked) == 1
        and isinstance(worked[0], Phrase)
        and len(line.label) <= 8
        and not re.search(r"\b(?:rnd|round|row|rs|ws)\b|\d", f"{line.label} {line.text}", re.I)
    )
