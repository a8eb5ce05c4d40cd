"""Work a change that is spread evenly in the stitch in which the page makes its changes. No I/O.

A page that explains "inc" as a stitch worked into twice means that one by "inc 12 sts evenly", too: between
two made ones lies a stitch less than between two made out of nothing, so that her count would not come out.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Final

from stepper.craft.stitches import find_stitch
from stepper.project.instructions import Evenly, Line, Phrase, Sentence
from stepper.project.own_stitches.abbreviations import Abbreviations, OwnStitch
from stepper.project.stitchwork import Element, Several, Spread
from stepper.regex import regex

_EVENLY = regex(
    r"\b(?P<change>inc|dec)(?:r?\.|reas\w+|r)?\s[^:]*?\bevenly\b|\bevenly\s+(?P<behind>inc|dec)", re.I
)
_SAID: Final = regex(
    r"\W*(?:by|using|with|working)\s+(?:(?:working|an?|the)\s+)*"
    r"(?:make[-\s](?:1|one)(?:[-\s](?P<leans>left|right))?|(?P<stitch>[a-z0-9&]+))",
    re.I,
)
"""The stitch in which a line says that it makes a change."""


def work_changes(line: Line, own: Abbreviations) -> Line:
    """Return a line with its even changes worked in the stitch that it names ("evenly, using kfb").

    Else in that in which the page makes such changes, which is told.
    """
    named = _named_in(line)
    if named is not None:
        named_so = tuple(
            replace(each, worked_in=named) if isinstance(each, Evenly) else each for each in line.sentences
        )
        return replace(line, sentences=named_so)
    ways = list(_ways(_directions(line.sentences), own))
    if not ways:
        return line
    sentences = tuple(_worked(each, own) for each in line.sentences)
    return own.tell(replace(line, sentences=sentences), ways)


def _named_in(line: Line) -> str | None:
    """Return the code of the stitch in which a line says that it makes its one even change; None for none."""
    changes = [each for each in line.sentences if isinstance(each, Evenly)]
    for words in line.said if len(changes) == 1 else ():
        said = _SAID.match(words)
        name = "" if said is None else said["stitch"] or f"m1{(said['leans'] or '')[:1]}"
        found = find_stitch(name.lower()) if name else None
        if found is not None and found.shapes and found.change == changes[0].direction:
            return found.code
    return None


def used_for_changes(text: str, own: Abbreviations) -> list[OwnStitch]:
    """Return the stitches of the page in which a row as it is printed works even changes."""
    words = ((each["change"] or each["behind"]).lower() for each in _EVENLY.finditer(text))
    return list(_ways((1 if word == "inc" else -1 for word in words), own))


def _ways(directions: Iterator[int], own: Abbreviations) -> Iterator[OwnStitch]:
    return (way for way in map(own.way_to_change, directions) if way is not None)


def _directions(parts: Sequence[Sentence | Element]) -> Iterator[int]:
    """Yield which way each even change goes: +1 or -1."""
    for one in parts:
        if isinstance(one, Evenly):
            yield one.direction
        elif isinstance(one, Spread):
            yield one.change
        elif isinstance(one, Phrase | Several):
            yield from _directions(one.elements)


def _worked(sentence: Sentence, own: Abbreviations) -> Sentence:
    if isinstance(sentence, Evenly):
        return replace(sentence, worked_in=_code(sentence.direction, own))
    if isinstance(sentence, Phrase):
        return replace(sentence, elements=_elements(sentence.elements, own))
    return sentence


def _elements(elements: tuple[Element, ...], own: Abbreviations) -> tuple[Element, ...]:
    return tuple(
        replace(each, worked_in=_code(each.change, own))
        if isinstance(each, Spread)
        else replace(each, elements=_elements(each.elements, own))
        if isinstance(each, Several)
        else each
        for each in elements
    )


def _code(direction: int, own: Abbreviations) -> str:
    way = own.way_to_change(direction)
    return way.meaning.codes[0] if way is not None and way.meaning is not None else ""
