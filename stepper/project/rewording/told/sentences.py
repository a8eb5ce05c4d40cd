"""Write what a line tells of its shaping in the grammar's words, sentence by sentence. No I/O.

A line is looked at so only where nothing else reads it, and a sentence one of whose words belongs to no
phrase stays as it is printed.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.again.patterns import PATTERN_WORK, write_pattern_work
from stepper.project.rewording.again.pieces import PIECES_AGAIN, write_piece_again
from stepper.project.rewording.reworded import Reworded
from stepper.project.rewording.synonym import LONG, ROUND, N
from stepper.project.rewording.told.closing import CLOSING, write_closing
from stepper.project.rewording.told.evenly import EVENLY, JOINED, write_evenly
from stepper.project.rewording.told.numbers import write_numbers
from stepper.project.rewording.told.phrases import ORDERED_NEXT, split_phrases
from stepper.project.rewording.told.references import REFERENCES, write_reference
from stepper.project.rewording.told.repeats import REPEATS, write_repeat
from stepper.project.rewording.told.shaping import Piece, write_shaping
from stepper.project.rewording.told.stripes import write_stripes
from stepper.project.rewording.told.yarn_orders import YARN_ORDERS, write_yarn_orders
from stepper.regex import regex

_STARTS: Final = regex(r"(?:^|[.!;]|(?<!\d):)\s*(?=[A-Za-z])|\s*,?\s+(?P<joint>and(?:\s+then)?|then)\s+(?=make\s+(?:it|this\s+one)\s+(?:a|the)\s+mirror\b|(?:finish|complete|work)\s+(?:off\s+)?(?:this|(?:the\s+)?(?:second|other))\s+(?:side|half|shoulder)\b|(?:finish|complete)\s+(?:it\s+)?to\s+(?:match|correspond)\b|(?:rep(?:eat)?|work|do)\s+(?:(?:only|just|the|these|those|last|first|this|that|same)\s+)*(?:\d+\s+)?(?:(?:inc|dec)(?:rease)?\s+)?(?:rows?|rnds?|rounds?)\b)", re.IGNORECASE)
_LASTS: Final = regex(
    rf"(?:^|[.:]\s)\s*(?:knit|purl|work|rib)\b[^.:]*(?:\b{N}\s+{ROUND}|{LONG})(?:\s+in\s+[^.:]*)?\.\s*$",
    re.IGNORECASE,
)
"""Rounds up to a number or a length, of which a sentence behind them changes the last."""
_TELLS: Final = regex(
    r"\b(?:inc|dec)(?:reas)?|\bneedle|\b(?:rep(?:eat)?|again|times|through|another|fewer|less|more|rows?|rounds?|rnds?)\b"
    r"|\b(?:together|as|like|match|mirror|correspond|same|instructions|section|part|block|step|stage|tier|square|chapter)\b"
    r"|\b(?:break|cut|rest|remainder)\b",
    re.IGNORECASE,
)


def write_told(line: Reworded) -> Reworded:
    """Write the sentences of a line that tell of shaping in the grammar's words.

    Returns:
        The line; the same if it has none that is read so.
    """
    if not _TELLS.search(line.text):
        return line
    line = write_numbers(line)
    text: list[str] = []
    places: list[int] = []
    kept = list(line.kept)
    done = 0
    for start in _STARTS.finditer(line.text):
        if start.end() < done:
            continue
        found = _told(line.text, start.end())
        if found is None:
            continue
        before = start.end()
        pieces, said, end = _with_next(line.text, found)
        if pieces[0][0].startswith(JOINED):
            if _LASTS.search(line.text[:before]) is None:
                continue
            before = start.start()
        joins = bool(start["joint"])
        before = start.start() if joins else before
        kept += said
        text.append(line.text[done:before] + (". " if joins else ""))
        places += [*line.places[done:before], *([line.places[before]] * (2 if joins else 0))]
        for number, (words, at) in enumerate(pieces):
            put = words if number else words[:1].upper() + words[1:]
            text.append(put)
            same = line.text[at : at + len(put)] == put
            places += line.places[at : at + len(put)] if same else [line.places[at]] * len(put)
        done = end
        joint = ORDERED_NEXT.match(line.text, end)
        if joint is not None:
            order = line.text[joint.end()]
            text.append(f". {order.upper()}")
            places += [line.places[end]] * 2 + [line.places[joint.end()]]
            done = joint.end() + 1
    if not done:
        return line
    text.append(line.text[done:])
    places += line.places[done:]
    return replace(line, text="".join(text), places=tuple(places), kept=tuple(kept))


def _with_next(text: str, found: _Told) -> _Told:
    """Return a sentence with those that "then" joins to it, as far as they are read so."""
    pieces, said, end = found
    while (joint := ORDERED_NEXT.match(text, end)) is not None:
        behind = _told(text, joint.end())
        if behind is None:
            break
        (words, at), *others = behind[0]
        pieces = (*pieces, (". ", end), (words[:1].upper() + words[1:], at), *others)
        said, end = (*said, *behind[1]), behind[2]
    return pieces, said, end


_Told = tuple[tuple[Piece, ...], tuple[str, ...], int]
"""A sentence in the grammar's words, what is only said of it, and where it ends."""


def _told(text: str, start: int) -> _Told | None:
    """Return a sentence in the grammar's words, what is only said of it, and where it ends; None if not read."""
    found = split_phrases(text, start)
    pieces = write_shaping(found[0]) if found is not None else None
    if found is not None and pieces is not None:
        said = tuple(phrase.match.group() for phrase in found[0] if phrase.kind == "said")
        return pieces, said, found[1]
    for kinds, write in (
        (EVENLY, write_evenly),
        (REPEATS, write_repeat),
        (CLOSING, write_closing),
        (REFERENCES, write_reference),
        (PATTERN_WORK, write_pattern_work),
        (PIECES_AGAIN, write_piece_again),
        (YARN_ORDERS, write_yarn_orders),
    ):
        found = split_phrases(text, start, kinds)
        written = write(found[0]) if found is not None else None
        if found is not None and written is not None:
            return (*written, found[1])
    striped = write_stripes(text, start)
    return (striped[0], (), striped[1]) if striped is not None else None
