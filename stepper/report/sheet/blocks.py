"""What stands on the sheet, block by block, before it is laid out as a page or as a PDF. Records only."""

from __future__ import annotations

from typing import Literal

from stepper.records import dataclass
from stepper.report.sheet.looks import YarnLooks


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetHeading:
    """A heading."""

    level: Literal[1, 2, 3]
    text: str
    note: str = ""
    """Said beside it, smaller."""
    key: str = ""
    """By which a table below it is named; unique on the sheet, or empty."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Paragraph:
    """A paragraph."""

    text: str
    quiet: bool = False
    """Whether it explains rather than tells what to do."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Bullets:
    """A list of sentences."""

    items: tuple[str, ...]
    cautions: bool = False
    """Whether they warn of something."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Terms:
    """Abbreviations with their meanings."""

    key: str
    items: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class TableCell:
    """A cell of a table."""

    text: str
    looks: YarnLooks | None = None
    """The yarn whose swatch stands before the text."""
    remark: str = ""
    """Said below it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Grid:
    """A table of figures; the first column names its rows."""

    key: str
    """Key of the heading that names it."""
    head: tuple[str, ...]
    rows: tuple[tuple[TableCell, ...], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Sign:
    """A sign of a chart with its meaning."""

    drawing: str
    """SVG markup."""
    words: str
    wide: int = 1
    """Squares it takes."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Picture:
    """A drawing."""

    drawing: str
    """SVG markup."""
    wide_mm: float
    """Width on paper; less where the sheet is narrower. Unit: mm."""
    title: str = ""
    """Its heading; empty for none."""
    caption: str = ""
    signs: tuple[Sign, ...] = ()
    beside: bool = False
    """Whether the next drawings stand beside it as far as it is high."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Gallery:
    """Drawings side by side, as many as the sheet is wide."""

    pictures: tuple[Picture, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class TickBox:
    """A box to tick for one round of one piece."""

    number: int
    """Number of the round in its section."""
    said: str
    """Whose it is: "Left sleeve, round 5"."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CountCheck:
    """A count worth making."""

    expect: int
    """Unit: stitches."""
    reason: str
    """Why here; empty if it is seen from the stitches."""
    length: str = ""
    """How long the section is by then, on the needles, with its unit; empty if the file has no gauge."""

    @property
    def text(self) -> str:
        """The check in words."""
        place = f" at {self.length}" if self.length else ""
        return f"Count {self.expect}{place}{f': {self.reason}' if self.reason else ''}."


@dataclass(frozen=True, slots=True, kw_only=True)
class RoundRow:
    """A run of rounds worked alike."""

    numbers: str
    """Of its rounds, and the side of a single row: `2–9`, `5 WS`."""
    remarks: tuple[str, ...]
    """Sentences said before it."""
    label: str
    """Printed label of the line; empty for none."""
    words: tuple[str, ...]
    """What is worked; of two pieces that differ here, one paragraph each."""
    altered: str
    """How it differs from the printed pattern; empty if it does not."""
    check: CountCheck | None
    before: int
    after: int
    boxes: tuple[tuple[TickBox, ...], ...]
    """For each piece, a box for each round."""

    @property
    def stitches(self) -> str:
        """Stitches on the needles, before and after where they change."""
        return str(self.after) if self.before == self.after else f"{self.before} → {self.after}"


@dataclass(frozen=True, slots=True, kw_only=True)
class RoundTable:
    """The rounds of one section, or of two that are worked alike."""

    key: str
    """Key of the heading that names it."""
    word: str
    """`Round` or `Row`."""
    pieces: tuple[str, ...]
    """Heads of the columns of boxes, one for each piece."""
    rows: tuple[RoundRow, ...]


Block = SheetHeading | Paragraph | Bullets | Terms | Grid | Gallery | RoundTable
