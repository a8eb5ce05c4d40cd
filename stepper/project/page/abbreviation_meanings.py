"""Notice where a page defines an abbreviation otherwise than it is read: "M1: k in front and back". No I/O.

A definition is put into stitches and compared with the stitch that the abbreviation stands for. One that is
not read says nothing: it is told only where the page is sure to mean another stitch.
"""

from __future__ import annotations

import re
from dataclasses import replace

from stepper.craft.stitches import find_stitch, stitch
from stepper.project.instructions import Line, Phrase
from stepper.project.page.pieces import Piece
from stepper.project.problems import Span
from stepper.project.reading.wording import Words, read_line
from stepper.project.stitchwork import Work

_DEFINED = re.compile(r"(?:^|(?<=[;.])\s*)([A-Za-z][A-Za-z0-9]{1,6})\s*(?:=|:|\s[-–]\s)\s*([^;.=]+)")
_STS = r"(?:sts?|stitch(?:es)?)"
_FRONT_AND_BACK = r"\bk(?:nit)?\s+(?:in(?:to)?\s+)?(?:the\s+)?front\s+and\s+(?:the\s+)?back\b"
_AS_TO_KNIT = r"(?:tog(?:ether)?\s+)?(?:as\s+if\s+to\s+knit|knit-?wise|kwise)"
_IN_SHORT = tuple(
    (re.compile(words, re.I), short)
    for words, short in (
        (r"\bslip(?:ping)?\b", "sl"),
        (rf"\bk(?:nit)?\s*(\d|two|three)\s*{_STS}?\s*tog(?:ether)?\b", r"k\1tog"),
        (rf"\bp(?:url)?\s*(\d|two|three)\s*{_STS}?\s*tog(?:ether)?\b", r"p\1tog"),
        (rf"{_FRONT_AND_BACK}(?:\s+of\s+[a-z ]*\bst(?:itch)?\b)?", "kfb"),
        (r"\bpass\s+(?:the\s+)?(?:2|two|both)\s+(?:slipped\s+|sl\s+)?(?:sts?|stitches)\s+over\b", "p2sso"),
        (r"\bpass\s+(?:the\s+)?(?:slipped\s+|sl\s+)?(?:st|stitch)\s+over\b", "psso"),
        (rf"\bsl\s*(?:2|two)\s*{_STS}?\s*{_AS_TO_KNIT}", "sl2 kwise"),
        (rf"\b(\d)\s*{_STS}\b", r"\1"),
        (r"\bknit\s*(?=\d)", "k"),
        (r"\btwo\b", "2"),
        (r"\bthree\b", "3"),
    )
)
_ALIKE = (
    frozenset({"ssk", "skp", "k2tog tbl"}),
    frozenset({"m1", "m1l", "m1r"}),
    frozenset({"ssp", "p2tog tbl"}),
)
"""Stitches that look alike or nearly so, and keep every count."""
_ANY = ("inc", "dec")
"""Stand for any increase or decrease that uses and leaves as many."""
_PLACE = Span(line=1, column=1)


def note_other_meaning(piece: Piece) -> Piece:
    """Return a piece of front matter as it is, or as a note where an abbreviation means another stitch."""
    if piece.front != "abbreviations":
        return piece
    told = [why for match in _DEFINED.finditer(piece.text) if (why := _other_meaning(*match.groups()))]
    return replace(piece, kind="note", front="", why=" ".join(told)) if told else piece


def _other_meaning(name: str, words: str) -> str:
    """Return what an abbreviation means on the page and here, if these differ; else nothing."""
    entry = find_stitch(name.lower())
    if entry is None:
        return ""
    for pattern, short in _IN_SHORT:
        words = pattern.sub(short, words)
    line = read_line(words.strip(" ,"), lambda offset, length: _PLACE, Words(sizes=1)).line
    codes = _codes(line) if line is not None else []
    if len(codes) != 1 or any({entry.code, *codes} <= alike for alike in _ALIKE):
        return ""  # none, or several: what is told in steps is not put together here
    (code,) = codes
    same = (stitch(code).uses, stitch(code).leaves) == (entry.uses, entry.leaves)
    if code in (entry.code, _crossed(entry.code)) or (same and entry.code in _ANY):
        return ""
    return (
        f'the page means {code} by "{name}", which is read as {entry.code} here: write {code} in the lines '
        "that have it, then take this mark off."
    )


def _crossed(code: str) -> str:
    """Return what a cable by its number crosses: `c4f` is `2/2 lc`; nothing for other stitches."""
    cable = re.fullmatch(r"c(\d+)([fb])", code)
    if cable is None or int(cable.group(1)) % 2:
        return ""
    half = int(cable.group(1)) // 2
    return f"{half}/{half} {'lc' if cable.group(2) == 'f' else 'rc'}"


def _codes(line: Line) -> list[str]:
    """Return the stitches of a line that is one phrase of them; none otherwise."""
    if len(line.sentences) != 1 or not isinstance(line.sentences[0], Phrase) or line.label:
        return []
    elements = line.sentences[0].elements
    worked = [one for one in elements if isinstance(one, Work) and one.stitch != "pattern"]
    if len(worked) != len(elements) or any(len(one.times.values) != 1 for one in worked):
        return []
    return [one.stitch for one in worked for _ in range(one.times.values[0])]
