"""Find what a pasted page left for the knitter to settle, each with its words and its place. No I/O.

What is left is what bears a mark (`stepper.project.page.marks`): a row that stands as a note, text in front
of the pattern that may be an instruction, or a value that the page does not say.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from enum import Enum
from typing import Final

from stepper.project.page.marks import MARK, find_standing_marks
from stepper.records import dataclass
from stepper.regex import regex

_NOTE: Final = regex(r"note\s*:\s*", re.I)
_ROW_MARK: Final = regex(
    rf"# ?{MARK} \((?P<row>rows? \d[^)]*?)(?: of the text)?\)(?:: *(?P<why>.*)|\.)\s*$"
)
_VALUE_MARK: Final = regex(rf"# ?{MARK}(?:: *(?P<why>.*)|\.)\s*$")
_SECTION: Final = regex(r"^\s*- name:\s*(?P<name>.*?)\s*$")
_KEY: Final = regex(r"^\s*(?P<key>\"[^\"]*\"|[^\s#:][^:#]*?)\s*:")
_OPEN_END: Final = " …"
"""What stands behind a note that breaks off, so that the row below it is not taken for its end."""


class LeftKind(Enum):
    """What kind of thing is left open."""

    ROW = "row"
    """A row of the pattern, kept as a note."""
    FRONT = "front"
    """Text in front of the pattern, kept as a comment."""
    VALUE = "value"
    """A value of the file that the page does not say."""
    LINE = "line"
    """A line that is read and does not fit; it bears no mark."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LeftOpen:
    """One thing that is left to the knitter."""

    kind: LeftKind
    first: int
    """Its first row in the file, from 1."""
    last: int
    """Its last row in the file."""
    where: str
    """Its row of the printed page: `row 87`; empty if it has none."""
    part: str
    """Name of the part it belongs to; empty in front of all."""
    text: str
    """Its words: of a value, its row of the file without the mark."""
    why: str
    """What is not understood, or not known, as the mark says it; may be empty."""
    key: str = ""
    """`VALUE`: its key in the file; empty if the row has none."""


def find_left_open(text: str) -> tuple[LeftOpen, ...]:
    """Find what is left open.

    Args:
        text: The whole text of a project file.

    Returns:
        What bears a mark that stands, in the order of the file.
    """
    rows = text.split("\n")
    return tuple(_left_at(rows, problem.line) for problem in find_standing_marks(text))


def line_at(text: str, number: int, why: str) -> LeftOpen | None:
    """Return a line of the pattern that is read and does not fit.

    Args:
        text: The whole text of a project file.
        number: Row of the file, from 1.
        why: What does not fit.

    Returns:
        The line; None if that row is no line of a part.
    """
    rows = text.split("\n")
    if not 0 < number <= len(rows) or not is_work_row(rows, number):
        return None
    said = rows[number - 1].strip()
    part = part_of(rows, number)
    return LeftOpen(kind=LeftKind.LINE, first=number, last=number, where="", part=part, text=said, why=why)


def lines_below(text: str, left: LeftOpen) -> tuple[LeftOpen, ...]:
    """Return a line of a part and all lines below it in the same part, notes and comments left out.

    Args:
        text: The whole text of a project file.
        left: The line.
    """
    rows = text.split("\n")
    found = []
    for number in range(left.first, len(rows) + 1):
        if _SECTION.match(rows[number - 1]):
            break
        line = line_at(text, number, left.why)
        if line is not None and not _NOTE.match(line.text):
            found.append(line)
    return tuple(found)


def is_work_row(rows: Sequence[str], number: int) -> bool:
    """Return whether a row of a file, from 1, is a line under `work` and no comment."""
    said = rows[number - 1]
    if not said.strip() or said.lstrip().startswith("#"):
        return False
    indent = indent_of(said)
    for above in reversed(rows[: number - 1]):
        if above.strip() and indent_of(above) < indent:
            return re.match(r"\s*(?:- )?work:\s*\|", above) is not None
    return False


def part_of(rows: Sequence[str], number: int) -> str:
    """Return the name of the part in which a row of a file stands, from 1; empty in front of all."""
    for row in reversed(rows[: number - 1]):
        match = _SECTION.match(row)
        if match is not None:
            return match["name"].strip('"')
    return ""


def indent_of(row: str) -> int:
    """Return how far a row of a file is indented. Unit: letters."""
    return len(row) - len(row.lstrip())


def _left_at(rows: Sequence[str], number: int) -> LeftOpen:
    row = rows[number - 1]
    marked = _ROW_MARK.search(row)
    part = part_of(rows, number)
    if marked is None:
        value = _VALUE_MARK.search(row)
        before = row[: value.start()] if value is not None else row
        key = _KEY.match(before)
        return LeftOpen(
            kind=LeftKind.VALUE,
            first=number,
            last=number,
            where="",
            part=part,
            text=before.strip(),
            why=(value["why"] or "").strip() if value is not None else "",
            key=key["key"].strip('"') if key is not None else "",
        )
    below = list(_below(rows, number))
    front = all(each.lstrip().startswith("#") for each in below)
    said = " ".join(each.strip().lstrip("#").strip() if front else _words(each) for each in below)
    return LeftOpen(
        kind=LeftKind.FRONT if front else LeftKind.ROW,
        first=number,
        last=number + len(below),
        where=marked["row"],
        part=part,
        text=said,
        why=(marked["why"] or "").strip(),
    )


def _below(rows: Sequence[str], number: int) -> Iterator[str]:
    """Yield the rows that a mark in a row is for: one note, or the comments of one stretch."""
    for at, row in enumerate(rows[number:]):
        said = row.strip()
        if at == 0 and _NOTE.match(said):
            yield row
            return
        if not said.startswith("#") or said.startswith("# ---") or _ROW_MARK.search(said):
            return
        yield row


def _words(row: str) -> str:
    """Return the words of a note as the page prints them."""
    return _NOTE.sub("", row.strip(), count=1).removesuffix(_OPEN_END)

