"""Lengths that a page leaves to the knitter, and the file gives: `lengths: {foot: 24 cm}`. No I/O.

A line that works "until foot measures 4 cm less than desired foot length" is read without knowing how long
that is. Once all sections are read, each such length is looked up by its name; one that the file does not
give is a problem where the line stands, since none is ever guessed.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

from stepper.craft.figures import format_number
from stepper.project.draft import FileDraft
from stepper.project.instructions import Assumed, Line, Unread
from stepper.project.lengths import read_length
from stepper.project.model import Section
from stepper.project.nested_records import records_in, replace_nested
from stepper.project.page.marks import MARK
from stepper.project.problems import Span, nearest, one_of
from stepper.project.stitchwork import PrintedLength
from stepper.project.yaml_file.fields import Fields
from stepper.project.yaml_file.source import Scalar
from stepper.records import dataclass
from stepper.regex import regex

_PIECE = ("piece", "work", "it", "section")
"""Words that name no part: the section is meant."""


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnLength:
    """One length that the knitter gives."""

    mm: float | None
    """None if the file has its name and no length, which is told there. Unit: mm."""
    printed: str
    place: Span


_OWN = regex(
    r"(?:the\s+)?desired\s+length\s+of\s+(?:the\s+)?(?P<name>[a-z]\w*)(?:\s+less\s+(?P<less>.+))?", re.I
)


def split_own(text: str) -> tuple[str, str]:
    """Return the name of the length that is left to the knitter, empty for none, and the length printed."""
    own = _OWN.fullmatch(text.strip())
    return ("", text) if own is None else (_name_length(own.group("name")), own.group("less") or "")


def _name_length(words: str) -> str:
    """Return the name of a length from the words that a line has for it, joined with `_`.

    Behind `__` stand those that say which length of it: where they name a part, that is meant.
    """
    what, _, which = words.lower().partition("__")
    named = [word for word in re.split(r"[_\s]+", which) if word and word not in _WHOLE]
    spoken = which if named and named[0] not in ("to", *_PLACES) else f"{what}_{which}"
    said = list(dict.fromkeys(re.split(r"[_\s]+", spoken.strip("_ "))))
    telling = [word for word in said if word not in _PIECE]
    parts = [word for word in telling if word not in _WHOLE]
    whole = ["total"] if len(parts) < len(telling) else []
    at = parts.index("to") if "to" in parts else len(parts)
    if not parts[:at]:
        parts = ["piece", *parts]
    elif at == len(parts) and len(parts) > 1 and parts[-1] in _PLACES:
        parts = [*parts[:-1], "to", parts[-1]]
    return " ".join((*whole, *parts))


_WHOLE = ("total", "full", "finished", "overall", "actual")
"""Words for all of a length, which are one to the file."""
_PLACES = ("underarm", "armhole", "shoulder", "hem", "toe", "crown", "heel", "wrist")
"""Places up to which a part is measured; they stand behind its name."""


def asked_lengths(lines: tuple[Line, ...], section: str) -> dict[str, Span]:
    """Return the names of the lengths that lines of a section leave to the knitter, each with its place."""
    found: dict[str, Span] = {}
    for line in lines:
        for length in _own(line.sentences):
            found.setdefault(_named(length, section), length.place)
    return found


def read_own_lengths(file: Fields, draft: FileDraft) -> dict[str, OwnLength]:
    """Read `lengths`: how long the knitter wants what the page leaves to her, by name."""
    node = file.mapping("lengths")
    if node is None:
        return {}
    inner = Fields(node, "`lengths`", draft.problems)
    given: dict[str, OwnLength] = {}
    for name, (key, value) in inner.found.items():
        place, text = value.place, value.text if isinstance(value, Scalar) else ""
        mm: float | None = None
        if not text.strip():
            if MARK not in draft.text_lines[key.place.line - 1]:
                told = f'how long "{name}" is to be is not said.'
                draft.report(key.place, told, _HINT.format(name))
        else:
            values, trouble = read_length(text, inches=draft.inches)
            if trouble or len(values) != 1:
                told = trouble or "a length of yours is one length, of the size that you knit."
                draft.report(place, told, _HINT.format(name))
            else:
                mm = values[0]
        given[" ".join(name.lower().split())] = OwnLength(mm=mm, printed=text.strip(), place=key.place)
    return given


_HINT = 'Write it as "{}: 24 cm".'


def give_lengths(
    sections: tuple[Section, ...], given: dict[str, OwnLength], draft: FileDraft
) -> tuple[Section, ...]:
    """Put the knitter's lengths into the lines that ask for them; report what is missing or not asked for.

    A line whose length is missing counts as not read, so that nothing behind it is reported.
    """
    asked: dict[str, Span] = {}
    for section in sections:
        for name, place in asked_lengths(section.lines, section.name).items():
            asked.setdefault(name, place)
    if not asked and not given:
        return sections
    made = []
    for section in sections:
        lines = tuple(_give(line, section.name, given, draft) for line in section.lines)
        made.append(replace(section, lines=lines))
    for name, place in asked.items():
        if name not in given:
            told = f'how long it is to be is left to you, and the file does not give "{name}".'
            draft.report(place, told, f'Write "lengths:" and below it "  {name}: 24 cm".')
    for name, length in given.items():
        if name not in asked:
            hint = nearest(name, asked) or (
                f"They ask for {one_of(asked)}." if asked else 'Write "alterations: - body 4 cm longer".'
            )
            told = f'no line leaves the length of "{name}" to you.'
            draft.report(length.place, told, hint)
    return tuple(made)


def _named(length: PrintedLength, section: str) -> str:
    """Return the name of a length: that of its section where the words name no part."""
    words = length.own.split()
    if "piece" in words:
        words[words.index("piece")] = " ".join(section.lower().split())
    return " ".join(words)


def _give(line: Line, section: str, given: dict[str, OwnLength], draft: FileDraft) -> Line:
    """Return a line with its lengths filled in; as unread if one of them is not known."""
    told: list[Assumed] = []
    for length in _own(line.sentences):
        known = given.get(_named(length, section))
        if known is None or known.mm is None:
            return replace(line, sentences=(Unread(line.place),))
        left = tuple(known.mm + less for less in length.values)
        if min(left) <= 0:
            words = f'"{_named(length, section)}" is {known.printed}: nothing is left of it.'
            draft.report(length.place, words)
            return replace(line, sentences=(Unread(line.place),))
        words = f"{_named(length, section)}: {known.printed} by `lengths`"
        words += f", so {_printed(left, draft)} here" if any(length.values) else ""
        told.append(Assumed(f"{words}.", length.place))
    if not told:
        return line
    sentences = _filled(line.sentences, section, given, draft)
    return replace(line, sentences=sentences, assumed=(*line.assumed, *told))


def _printed(left: tuple[float, ...], draft: FileDraft) -> str:
    """Write lengths in the unit of the file."""
    unit, mm = ("in", 25.4) if draft.inches else ("cm", 10.0)
    first, *others = (format_number(round(value / mm, 2)) for value in left)
    more = f" ({', '.join(others)})" if others else ""
    return f"{first}{more} {unit}"


def _own(record: object) -> Iterator[PrintedLength]:
    """Yield the lengths left to the knitter in a record and all records inside it."""
    return (each for each in records_in(record) if isinstance(each, PrintedLength) and each.own)


def _filled(record: Any, section: str, given: dict[str, OwnLength], draft: FileDraft) -> Any:
    """Return a record with every length left to the knitter as she gives it."""

    def fill(inner: Any) -> Any:
        if not isinstance(inner, PrintedLength) or not inner.own:
            return inner
        mm = given[_named(inner, section)].mm or 0.0
        left = tuple(mm + less for less in inner.values)
        return PrintedLength(left, inner.place, _printed(left, draft))

    return replace_nested(record, fill)
