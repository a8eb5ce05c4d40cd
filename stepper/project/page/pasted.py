"""Cut the copied text of a printed pattern into the pieces of a project file. No I/O.

Theory of operation. The text is cut into pieces, and every piece is written, in order: as a line of the
pattern if the wording can be read, as a note with a mark if it cannot, as a comment if it is front matter of
a kind that can be named (sizes, gauge, abbreviations, page numbers). The values found in the front matter are
also written as keys. So nothing is dropped or passed over: the pieces, put together, are the text, each is on
one row of the file, and whatever is not knitted says what it is.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from stepper.project.marks.mark_references import plain_reference
from stepper.project.marks.part_marks import single_stars
from stepper.project.own_stitches.abbreviations import Abbreviations
from stepper.project.own_stitches.yarn_letters import letters_of
from stepper.project.page.drawn.chart_numbers import name_rounds
from stepper.project.page.drawn.grid_charts import find_grids
from stepper.project.page.front_values import names_colours
from stepper.project.page.headings import heading_of, is_clutter
from stepper.project.page.own_abbreviations import read_lists
from stepper.project.page.own_stripes import PageStripes, read_sequences
from stepper.project.page.page_lines import PageLines
from stepper.project.page.pieces import DrawnChart, PagePart, Piece
from stepper.project.page.quoting import writable
from stepper.project.page.run_in_headings import set_headings_apart
from stepper.project.page.shaping_heads import name_by_headings
from stepper.project.page.size_rows import sizes_of
from stepper.project.page.sorting import Sorter, names_a_shaping
from stepper.project.page.stops import sentences_of
from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import Words
from stepper.project.stripes.stripe_sequences import StripeSequences
from stepper.records import dataclass
from stepper.regex import regex

_GAP: Final = regex(
    r"^(\s*(?:rows?|rnds?|rounds?)\s+\d{1,3}(?:\s*[-&,]\s*\d{1,3})*(?:\s*\((?:RS|WS)\))?)(?:\t|[^\S\n]{2,})(?=[*\[(a-z])",
    re.I,
)
"""A row with its number in a column of its own, set off by a gap where other pages print a colon."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Pasted:
    """A text cut into pieces."""

    title: str
    sizes: tuple[str, ...]
    """Their names, or as many numbers as the lists of the text have; empty if not sure."""
    sizes_found: bool
    sizes_doubt: str
    """Why the sizes are not sure, as a sentence; empty if they are."""
    front: tuple[Piece, ...]
    """The pieces before the first section."""
    parts: tuple[PagePart, ...]
    charts: tuple[DrawnChart, ...]
    text: str
    """The front matter as running text, to glean values from."""
    abbreviations: Abbreviations
    """Those that the page explains."""
    stripes: StripeSequences
    """The stripe sequences that the page defines."""
    letters: dict[str, str]
    """The letters by which rounds count their colours, each with what the page says of its yarn."""
    yarn_rows: tuple[str, ...]
    """The rows that mention yarn."""

    @property
    def pieces(self) -> tuple[Piece, ...]:
        """Every piece, in the order of the text."""
        return (*self.front, *(piece for part in self.parts for piece in part.pieces))


def take_apart(text: str) -> Pasted:
    """Cut a copied text into its pieces.

    Args:
        text: The whole text, as copied.

    Returns:
        The pieces, with the title and sizes. Always: the pieces put together are the text, white space aside;
        each is a line, a note, or front matter of a named kind.
    """
    printed = [
        " ".join(_RD.sub(r"\1\2nd", _closed_up(_GAP.sub(r"\1: ", writable(row)))).split())
        for row in text.splitlines()
    ]
    rows, origins = name_rounds(*set_headings_apart(printed))
    found = sizes_of(rows)
    sizes = found.names or tuple(str(number) for number in range(1, found.number + 1))
    letters = {
        letter: yarn
        for row in rows
        if "=" in row or ":" in row
        for one in sentences_of(row)
        for letter, yarn in letters_of(made_plain(one)).items()
    }
    words = Words(sizes=found.number, size_names=sizes, letters=letters)
    stripes = read_sequences(rows)
    sorter, abbreviations = _sorted(rows, words, stripes)
    _number_as_printed(sorter, origins)
    parts = _merged(sorter.parts)
    pieces = [*sorter.front, *(piece for part in parts for piece in part.pieces)]
    doubtful = [piece for piece in sorter.front if piece.kind == "note"]
    untold = ("heading", "page", "comments")
    told = [piece for piece in pieces if piece.kind == "comment" and piece.front not in untold]
    return Pasted(
        title=_title(rows),
        sizes=sizes,
        sizes_found=bool(found.names),
        sizes_doubt=found.doubt,
        front=tuple(sorter.front),
        parts=parts,
        charts=tuple(chart for chart in sorter.charts if chart.rows and chart.key),
        abbreviations=abbreviations,
        stripes=stripes.sequences,
        letters=letters,
        text=_running(sorted([*told, *doubtful], key=lambda piece: piece.row)),
        yarn_rows=tuple(
            piece.text
            for piece in told
            if piece.front == "yarn" or (piece.front == "abbreviations" and names_colours(piece.text))
        ),
    )


_WIDE = regex(r"\W*(?:[A-Z](?: [A-Z])*)(?:\s{2,}[A-Z](?: [A-Z])*)+\W*")
_WITHIN = regex(r"(?<=[A-Z]) (?=[A-Z])")


_RD = regex(
    r"(?<![\w.'/-])(?:(r)d|(R)(?:d|D)(?=[sS]\b))(?=[sS]?\b(?!\s+(?:row|rnd|round|needle|size|time|st)s?\b))"
)
"""A round as leaflets call it, "2nd rd.", "44 rds to 4 ins"; no ordinal ("3 rd row"), no road ("Mill Rd")."""


_DASHED = regex(r"(?<=[a-z]):\s*[-\u2013\u2014]+\s*$")


def _closed_up(row: str) -> str:
    """Return a heading of several words with its letters set wide as words: "L E F T   F R O N T".

    What old leaflets print behind a colon at a row's end, "as follows:\u2014", says no more than the colon.
    """
    row = _DASHED.sub(":", row)
    return _WITHIN.sub("", row) if _WIDE.fullmatch(row) and len(row.split()) > 3 else row


def _sorted(rows: Sequence[str], words: Words, stripes: PageStripes) -> tuple[Sorter, Abbreviations]:
    """Sort the rows, and once more where the page explains abbreviations: its lines are then read by them."""
    found = Abbreviations()
    grids = find_grids(rows)
    drawn = {row for grid in grids.values() for row, _ in grid.printed}
    others = ["" if at in drawn else row for at, row in enumerate(rows)]
    while True:
        lines = PageLines(
            rows=others,
            words=words,
            stars=single_stars(again.text if (again := plain_reference(row)) else row for row in rows),
            abbreviations=found,
            stripes=stripes.sequences,
        )
        sorter = Sorter(lines=lines, grids=grids)
        sorter.sort()
        listed = [*sorter.front, *(piece for part in sorter.parts for piece in part.pieces if piece.front)]
        read = read_lists(listed)
        if found.tells_any or not read.abbreviations.tells_any:
            break
        found = read.abbreviations
    sorter.front = [_explained(stripes.mark(piece)) for piece in read.pieces[: len(sorter.front)]]
    marked = iter(read.pieces[len(sorter.front) :])
    for part in sorter.parts:
        pieces = [_explained(stripes.mark(next(marked) if piece.front else piece)) for piece in part.pieces]
        part.pieces = name_by_headings(pieces, sorter.lines.read, names_a_shaping)
    return sorter, found


def _explained(piece: Piece) -> Piece:
    """Return a piece of the page, as front matter if all it does is to say which yarn each letter is."""
    if piece.kind == "line" or not letters_of(made_plain(piece.text)):
        return piece
    return replace(piece, kind="comment", front="abbreviations", why="")


def _number_as_printed(sorter: Sorter, origins: Sequence[int]) -> None:
    """Give each piece the row of the page it was printed in."""
    for pieces in (sorter.front, *(part.pieces for part in sorter.parts)):
        pieces[:] = [replace(piece, row=origins[piece.row - 1]) for piece in pieces]


def _running(pieces: Sequence[Piece]) -> str:
    """Join pieces, with an empty row wherever the text has something else between them."""
    rows: list[str] = []
    last = 0
    for piece in pieces:
        rows += ["", piece.text] if piece.row > last + 1 else [piece.text]
        last = piece.row
    return "\n".join(rows)


def _title(rows: Sequence[str]) -> str:
    for row in rows:
        heading = heading_of(row)
        if row and len(row) <= 60 and not is_clutter(row) and (heading is None or heading.kind == "part"):
            plain = re.sub(r"^(?:title|name|pattern)\s*:\s*", "", row.strip("*#_ "), flags=re.I)
            return plain.rstrip(".:") or "Pasted pattern"
        if row:
            break
    return "Pasted pattern"


def _merged(parts: list[PagePart]) -> tuple[PagePart, ...]:
    """Merge parts without any stitches into the part before them; number names that repeat.

    The heading of a piece goes with the part that is named after it, and a part of which nothing is read yet
    stays one: its rows would be worked in each sleeve, if they stood behind those.
    """
    kept: list[PagePart] = []
    for at, part in enumerate(parts):
        below = parts[at + 1] if at + 1 < len(parts) else None
        unread = any(piece.kind == "note" for piece in part.pieces)
        if below is not None and below.piece == part.name and not part.is_worked and not unread:
            below.pieces[:0] = part.pieces
        elif kept and not part.is_worked and not unread:
            kept[-1].pieces += part.pieces
        elif part.pieces:
            kept.append(part)
    if len(kept) > 1 and not kept[0].is_worked:
        kept[1].pieces[:0] = kept[0].pieces
        del kept[0]
    taken: dict[str, int] = {}
    for part in kept:
        name = part.full_name
        taken[name] = taken.get(name, 0) + 1
        part.name = f"{name} {taken[name]}" if taken[name] > 1 else name
    return tuple(kept)
