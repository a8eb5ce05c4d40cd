"""Follow the rows that say for which sizes those below them are: heads, jumps and where they end. No I/O.

"Sizes 6-9 only:" on a row of its own is for all lines up to "All sizes:", to a heading with "(all sizes)",
or to another such head. "Sizes S and M: proceed to Hem band" sends those sizes on to the row that is called
so: the lines between are for the others, and a head that is still open ends there, since all come together.
The place has to stand further down in the same section, or be the name of the section behind it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import field
from typing import Final

from stepper.project.draft import FileDraft
from stepper.project.problems import Span
from stepper.project.rewording.asides import instructs
from stepper.project.sizes import nearest_size, sizes_called
from stepper.records import dataclass
from stepper.regex import regex

Row = tuple[str, Span]

_SOME_SIZES = regex(
    r"^\s*(?:for\s+)?(?:sizes?\s+)?([^:.]{1,60}?)(?:\s+sizes?)?\s+only\s*:?\s*$|^\s*(?:for\s+)?sizes?\s+([^:.]{1,60}?)\s*:\s*$"
    r"|^\s*only\s+(?:for\s+)?(?:the\s+)?sizes?\s+([^:.]{1,60}?)\s*:\s*$",
    re.I,
)
_ALL_SIZES = regex(
    r"^\s*(?:for\s+)?(?:all\s+sizes|every(?:one|body))"
    r"(?:\s+(?:again|joins?\s+in|together|(?:from\s+)?here|now))*(?:\s*:?\s*(?:resume(?:\s+here)?"
    r"|(?:continue|cont|proceed|work)(?:\s+here|\s+as\s+follows)?))?\s*[:.!]?\s*$",
    re.I,
)
_HEAD_OF_ALL: Final = regex(
    r"^[\s#]*(?P<name>[A-Z][\w' -]{1,40}?)\s*[(\[]\s*(?:for\s+)?all\s+sizes\s*[)\]]\s*:?\s*$", re.I
)
"""A heading that is for all sizes: "Hem band (all sizes)"."""
_ALL_THEN: Final = regex(r"^\s*(?:for\s+)?all\s+sizes\s*[:,-]\s*(?=\S)", re.I)
_JUMP: Final = regex(
    r"^\s*(?:for\s+)?(?:sizes?\s+(?P<sizes>[^:.]{1,60}?)|(?P<named>[^:.,]{1,40}?)\s+sizes?)"
    r"(?:\s+only)?\s*[:,]\s*(?:please\s+)?"
    r"(?:proceed|go|skip|jump|move|continue|pass)(?:\s+(?:on|ahead|straight|directly|right|down|forward))*\s+(?:to|with|at)\s+"
    r"(?:the\s+)?(?:(?:section|heading|part|paragraph)\s+)?[\"'“”‘’]?(?P<place>[a-z][\w' -]{1,40}?)[\"'“”‘’]?"
    r"(?:\s+(?:section|heading|part)(?:\s+below)?|\s+below)?\s*[.!]?\s*$",
    re.I,
)
_ROW: Final = regex(r"\b(?:rows?|rnds?|rounds?)\b", re.I)


def _called(text: str) -> str:
    """Return the name by which a heading is referred to, without its dress."""
    plain = re.sub(r"^[\s#*]*(?:note\s*:\s*)?|[(\[][^()\[\]]*[)\]]|[\"'“”‘’:.!]", "", text, flags=re.I)
    return " ".join(plain.lower().split())


def _is_called(text: str, place: str) -> bool:
    """Return whether a row is the heading of a place: named so alone, or with words behind."""
    name = _called(text)
    longer = (f"{place} for ", f"{place} of ", f"{place} -")
    return len(name) <= 60 and (name == place or name.startswith(longer))


def jump_of(text: str, size_names: tuple[str, ...]) -> tuple[tuple[int, ...], str] | None:
    """Return the sizes that a row sends on and the place it names; None if it is no such row."""
    match = _JUMP.match(text) if size_names else None
    if match is None or _ROW.search(match.group("place")):
        return None
    found, missing = sizes_called(match.group("sizes") or match.group("named"), size_names)
    return (found, _called(match.group("place"))) if found and not missing else None


def names_sizes(text: str, size_names: tuple[str, ...], below: Sequence[str] = ()) -> bool:
    """Return whether a row only says for which sizes those below it are: `L only:`, `All sizes:`, or a jump.

    Args:
        text: The row.
        size_names: The sizes of the pattern.
        below: The rows below it, in which the place of a jump is looked for.
    """
    if not size_names:
        return False
    jump = jump_of(text, size_names)
    if jump is not None:
        return any(_is_called(row, jump[1]) for row in below)
    match = _SOME_SIZES.match(text)
    if match is None:
        return _ALL_SIZES.match(text) is not None or _heads_all(text)
    found, missing = sizes_called(match.group(match.lastindex or 1), size_names)
    return bool(found) and not missing


def _heads_all(text: str) -> bool:
    match = _HEAD_OF_ALL.match(text)
    return match is not None and len(match["name"].split()) <= 5 and instructs(match["name"]) is None


@dataclass(slots=True)
class SizeBlocks:
    """The sizes that the rows of one section are for, read from the top down."""

    size_names: tuple[str, ...]
    rows: Sequence[Row]
    """All rows of the section, those that are not knitted too."""
    behind: str
    """Name of the section behind it; empty for the last."""
    draft: FileDraft
    only: tuple[int, ...] = ()
    """Sizes of the head in force; empty for all."""
    jumped: list[tuple[int, tuple[int, ...]]] = field(default_factory=list)
    """For each jump: the line of the file where it arrives, 0 behind the section, and its sizes."""
    ends: tuple[int, ...] = ()
    """Lines of the file with a heading that is for all sizes."""
    passed: int = 0
    """Line of the file of the last row taken in."""

    def __post_init__(self) -> None:
        self.ends = tuple(at.line for text, at in self.rows if _heads_all(text))

    def take(self, row: Row, below: Sequence[Row]) -> bool:
        """Take in a row; return whether it only says for which sizes others are."""
        text, place = row
        if not self.size_names:
            return False
        arrived = [line for line, _ in self.jumped if 0 < line <= place.line]
        if arrived or any(self.passed < line <= place.line for line in self.ends):
            self.only = ()
            self.jumped = [jump for jump in self.jumped if jump[0] not in arrived]
        self.passed = place.line
        if _ALL_SIZES.match(text) or _heads_all(text):
            self._end_all(place)
            return True
        if _ALL_THEN.match(text):
            self._end_all(place)
            return False
        jump = jump_of(text, self.size_names)
        taken = self._jump(row, *jump) if jump is not None else self._head(row, below)
        if not taken and self.nobody():
            told = "no size comes to this line: all of them were sent on or are not named."
            self.draft.report(place, told)
        return taken

    def sizes(self) -> tuple[int, ...]:
        """Return the sizes that a line is for, as indices; empty for all."""
        gone = {size for _, sizes in self.jumped for size in sizes}
        if not gone:
            return self.only
        here = self.only or tuple(range(len(self.size_names)))
        return tuple(size for size in here if size not in gone)

    def nobody(self) -> bool:
        """Return whether no size comes to a line."""
        return bool(self.jumped) and not self.sizes()

    def _end_all(self, place: Span) -> None:
        self.only = ()
        if self.jumped:
            told = "some sizes were sent on to a place further down, and this is for all sizes."
            hint = "Put the sizes here that it is for, or take the row out that sends the others on."
            self.draft.report(place, told, hint)
            self.jumped = []

    def _jump(self, row: Row, sizes: tuple[int, ...], name: str) -> bool:
        place = row[1]
        below = (row_ for row_ in self.rows if row_[1].line > place.line)
        there = next((at.line for text, at in below if _is_called(text, name)), 0)
        if not there and not _is_called(self.behind, name):
            told = f'"{name}" is the heading of no row further down in this section, nor of the next section.'
            hint = 'Write "Sizes … only:" above the lines for the others, and "All sizes:" behind them.'
            self.draft.report(place, told, hint)
            return True
        self.jumped.append((there, sizes))
        return True

    def _head(self, row: Row, below: Sequence[Row]) -> bool:
        text, place = row
        match = _SOME_SIZES.match(text)
        if match is None:
            return False
        found, missing = sizes_called(match.group(match.lastindex or 1), self.size_names)
        if missing and re.match(r"\s*(?:for\s+)?sizes?\s", text, re.I) and "needle" not in text.lower():
            hint = nearest_size(missing, self.size_names)
            self.draft.report(place, f'there is no size "{missing}".', hint)
            self.only = ()
            return True
        if missing or not found:
            return False
        ends = any(_ends(other) for other, _ in below) or any(line > place.line for line in self.ends)
        if not ends and not any(line > place.line for line, _ in self.jumped):
            told = f'where "{text.strip()}" ends is not said.'
            hint = 'Write "All sizes:" on a row of its own behind its lines, or "Size L only: ..." in each.'
            self.draft.report(place, told, hint)
        self.only = found
        return True


def _ends(text: str) -> bool:
    """Return whether a row ends the head above it."""
    return bool(_ALL_SIZES.match(text) or _ALL_THEN.match(text) or _SOME_SIZES.match(text))
