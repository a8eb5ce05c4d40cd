"""Find the lines of another part that a row asks for once more: "Complete as for right mitten". No I/O."""

from __future__ import annotations

import re
from dataclasses import replace
from difflib import SequenceMatcher
from typing import Final

from stepper.project.page.unread.left_open import is_work_row
from stepper.records import dataclass
from stepper.regex import regex

_SECTION: Final = regex(r"^\s*- name:\s*(?P<name>.*?)\s*$")
_REFERS: Final = regex(
    r"\b(?:as\s+(?:given\s+|described\s+)?(?:for|on|the)|(?<!measures )(?<!measures the )same\s+as"
    r"|to\s+(?:match|correspond)|like\s+(?:the|first|right|left)"
    r"|(?:match|correspond)(?:es|ing|s)?\s+(?:to|with))\b",
    re.I,
)
"""Words by which a row works another part once more."""
MIRRORED: Final = regex(r"\brevers|\bopposite|\bmirror|\bcorrespond", re.I)
"""Words by which it is the other side of a garment."""
_ALIKE: Final = regex(
    r"work|complete|knit|make|finish|it|all|this|in|the|same|way|as|for|given|described|on|to|match|until|end|of|and|up"
    r"|exactly|like|both|piece|rest"
)
"""Words that say nothing but that another part comes once more."""
_UP_TO: Final = regex(
    r"\b(?:to|until|as\s+far\s+as|short\s+of|before)\s+(?:the\s+)?(?P<name>[a-z]+(?:\s+[a-z]+)?)", re.I
)
_TO_THE_END: Final = regex(r"\W*(?:complete|finish)\b", re.I)
_SIDES: Final = {"first", "second", "other", "the", "one", "of", "and"}
_LIKE: Final = 0.6
"""How much alike two lines are, from 0 to 1, that are taken for the same in two parts."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SourceLine:
    """A line of an earlier part."""

    text: str
    row: int
    """Its row in the file, from 1."""
    section: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SamePart:
    """An earlier part whose lines may come once more."""

    name: str
    lines: tuple[SourceLine, ...]
    first: int = 1
    """The first of its lines that is proposed, from 1."""
    last: int = 0
    """The last."""
    upto: str = ""
    """What the words name as the end, if that is a section of the part: `gusset`; else empty."""
    plain: bool = True
    """Whether the words say nothing else; if not, she has to say which lines, and what is otherwise."""
    to_end: bool = True
    """Whether all the rest of it is meant: "Complete as for …"; if not, no lines are proposed to her."""
    mirrored: bool = False
    """Whether the words speak of the other side: lines that are copied are not mirrored."""


def parts_above(text: str, row: int) -> tuple[SamePart, ...]:
    """Return the parts that stand whole above a row of the file, sections of one piece together.

    Args:
        text: The whole file.
        row: The row, from 1.
    """
    rows = text.split("\n")
    found: dict[str, list[SourceLine]] = {}
    section = ""
    for at in range(1, row):
        head = _SECTION.match(rows[at - 1])
        if head is not None:
            section = head["name"].strip('"')
        elif section and is_work_row(rows, at):
            piece = section.lower().partition(", ")[0]
            found.setdefault(piece, []).append(
                SourceLine(text=rows[at - 1].strip(), row=at, section=section.lower())
            )
    return tuple(
        SamePart(name=name, lines=tuple(lines), last=len(lines)) for name, lines in found.items() if lines
    )


def find_same(words: str, text: str, row: int) -> SamePart | None:
    """Find the part that a row works once more, with the lines that are likely meant.

    Args:
        words: The words of the row.
        text: The whole file.
        row: Its row in the file, from 1.

    Returns:
        The part; None if the words refer to none, or to several.
    """
    if not _REFERS.search(words):
        return None
    said = {_stem(word) for word in re.findall(r"[a-z]+", words.lower())}
    here = piece_at(text, row)
    named = [
        part
        for part in parts_above(text, row)
        if part.name != here and {_stem(word) for word in part.name.split()} - _SIDES <= said
    ]
    if len(named) != 1:
        return None
    part = named[0]
    first = _first_meant(part, text, row)
    last, upto = _last_meant(part, words, first)
    return replace(
        part,
        first=first,
        last=last,
        upto=upto,
        plain=not _is_otherwise(words, part),
        to_end=_TO_THE_END.match(words) is not None,
        mirrored=MIRRORED.search(words) is not None,
    )


def lines_between(part: SamePart, first: int, last: int) -> tuple[str, ...]:
    """Return the lines of a part to be written once more, from 1."""
    return tuple(line.text for line in part.lines[first - 1 : last])


def _is_otherwise(words: str, part: SamePart) -> bool:
    """Return whether words say more than that a part comes once more, or up to one of its sections."""
    known = {_stem(word) for line in part.lines for word in re.findall(r"[a-z]+", line.section)}
    said = re.findall(r"[a-z]+|\d+", words.lower())
    return any(not _ALIKE.fullmatch(word) and _stem(word) not in known for word in said)


def _first_meant(part: SamePart, text: str, row: int) -> int:
    """Return the line behind the one that is like the last above the row in its own part, or the first."""
    rows = text.split("\n")
    above = next(
        (
            rows[at - 1].strip()
            for at in range(row - 1, 0, -1)
            if is_work_row(rows, at) or _SECTION.match(rows[at - 1])
        ),
        "",
    )
    if not above or _SECTION.match(above) or above.lower().startswith("note"):
        return 1
    ratios = [SequenceMatcher(None, line.text.lower(), above.lower()).ratio() for line in part.lines]
    best = max(ratios)
    at = ratios.index(best) + 2
    return at if best >= _LIKE and at <= len(part.lines) else 1


def _last_meant(part: SamePart, words: str, first: int) -> tuple[int, str]:
    """Return the line before the first of what the words name as the end, with that; or the last line."""
    ends = [] if _TO_THE_END.match(words) else list(_UP_TO.finditer(words))
    for match in reversed(ends):
        for name in (match["name"], match["name"].split()[0]):
            stem = re.compile(rf"\b{re.escape(_stem(name))}", re.I)
            for number, line in enumerate(part.lines, start=1):
                if number > first and stem.search(line.section.partition(", ")[2]):
                    return number - 1, name
    return len(part.lines), ""


def line_meant(part: SamePart, *, mirrored: bool = False) -> str:
    """Return the line that works a part once more from its beginning, in words that are read; empty if only
    lines of its middle are meant.

    Args:
        part: The part.
        mirrored: Whether it is the other side of the garment.
    """
    if part.first > 1 or not part.plain:
        return ""
    end = ", reversing shaping" if mirrored else ""
    return f"Work as for {part.name}{f' to {part.upto}' if part.upto else ''}{end}."


def piece_at(text: str, row: int) -> str:
    """Return the piece that a row of the file is of, in lower case; empty above the first section."""
    for above in reversed(text.split("\n")[: row - 1]):
        head = _SECTION.match(above)
        if head is not None:
            return head["name"].strip('"').lower().partition(", ")[0]
    return ""


def _stem(word: str) -> str:
    return word.lower().removesuffix("s")
