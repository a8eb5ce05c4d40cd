"""Find the abbreviations that a page explains, so that its lines are read by them. No I/O.

What a page means wins over what letters mean elsewhere. Written into the file under `abbreviations`, so that
the knitter sees what is taken and can put it right.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from stepper.project.own_stitches.abbreviations import Abbreviations
from stepper.project.own_stitches.changes_worked import used_for_changes
from stepper.project.own_stitches.lists import Entry, breaks_off, entries_of, goes_on
from stepper.project.page.pieces import Piece
from stepper.project.page.quoting import value
from stepper.project.problems import Span
from stepper.records import dataclass

_LISTS = ("abbreviations", "stitch patterns")
_PLACE = Span(line=1, column=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class ExplainedAbbreviations:
    """What the lists of a page explain."""

    abbreviations: Abbreviations
    pieces: tuple[Piece, ...]
    """The pieces, those with a mark that turned out to be explanations without it."""


def read_lists(pieces: Sequence[Piece]) -> ExplainedAbbreviations:
    """Read the abbreviations that pieces of front matter explain.

    Args:
        pieces: The pieces in front of the pattern, or of a part.

    Returns:
        The abbreviations; the pieces, with a mark where the page means another stitch by letters that
        rows use in other ways.
    """
    found = Abbreviations()
    made: list[Piece] = []
    at = 0
    while at < len(pieces):
        taken, entries = _entries_at(pieces, at)
        problems = [found.define(entry.name, entry.words, _PLACE) for entry in entries]
        told = " ".join(f"{one.message} {one.hint}" for one in problems if one is not None)
        for piece in pieces[at : at + taken]:
            if told:
                made.append(replace(piece, kind="note", front="", why=told))
            elif entries and piece.kind == "note" and all(entry.read for entry in entries):
                made.append(replace(piece, kind="comment", front="abbreviations", why=""))
            else:
                made.append(piece)
        at += taken
    return ExplainedAbbreviations(abbreviations=found, pieces=tuple(made))


def _entries_at(pieces: Sequence[Piece], at: int) -> tuple[int, list[Entry]]:
    """Return what a piece explains, and how many pieces it takes: a meaning may go on in the row below."""
    if not _may_explain(pieces[at]):
        return 1, []
    text, taken = pieces[at].text, 1
    while at + taken < len(pieces) and (entries_of(text) or breaks_off(text)):
        below = pieces[at + taken]
        if below.row != pieces[at].row + taken or not _may_explain(below):
            break
        if not (goes_on(text, below.text) or breaks_off(text)):
            break
        text, taken = f"{text} {below.text}", taken + 1
    return taken, entries_of(text)


def _may_explain(piece: Piece) -> bool:
    return piece.kind == "note" or piece.front in _LISTS


def abbreviation_rows(found: Abbreviations, texts: Sequence[str]) -> list[str]:
    """Write the abbreviations of a page that its lines use, as a key of the file.

    Args:
        found: Those that the page explains.
        texts: The lines of the pattern, and what of it is not read.
    """
    used = {one.name for text in texts for one in (*found.used(text), *used_for_changes(text, found))}
    named = [one for one in found.known.values() if one.name in used]
    if not named:
        return []
    return ["", "abbreviations:", *(f"  {value(one.name)}: {value(one.words)}" for one in named)]
