"""The text of a printed pattern, as copied from a page, to a project file. No I/O.

Theory of operation. The text is cut into pieces, and every piece is written, in its order: as a line of the
pattern where the wording can be read, as a note with a mark where it cannot, as a comment where it stands
before the first line of the pattern (materials, gauge, abbreviations) or is the page's own (page numbers).
The values found in the front matter are written as keys besides. So nothing is dropped: the pieces, put
together, are the text, and each stands on one row of the file.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field

from stepper.project.draft import Draft
from stepper.project.gleaned import find_sizes, infer_sizes
from stepper.project.headings import Heading, heading_of, inline_part, is_clutter
from stepper.project.instructions import BreakYarn, Count, Line, Needle, Phrase, Remark, TurnMethod, WithYarn
from stepper.project.lines import read_rows
from stepper.project.problems import Place
from stepper.project.quoting import writable
from stepper.project.wording import Words, reads

MARK = "LOOK"
"""The word that stands wherever the knitter has to look."""
_MOST_ROWS = 8
"""Most rows of a page that one sentence is broken over."""
_SENTENCE = re.compile(r"(?<=[.!?])\s+(?=[A-Z*(\[])")
_GOES_ON = re.compile(
    r"[,;(\[&/+-]$|\b(?:and|or|to|the|of|for|until|every|from|with|an?|in|at|last|ending|k|p|rep)$", re.I
)
_ASIDE = re.compile(r"(?:pattern\s+)?notes?$|hints?$|needles?$|gauge$|tension$", re.I)
"""Headings that stand in the middle of a pattern without ending it."""
_SUBHEAD = re.compile(r"(?:shape|shaping|divide|begin|separate|split)\b(?:\s+(?!and\b)[a-z]+){0,4}:?$", re.I)
"""Rows that say what follows is for, such as "Shape armholes"."""
_KEYED = re.compile(r"(?:(?<=\s)|^)(\S)\s*=\s*([^;=]+?)(?=\s*[;,]\s*\S\s*=|\s*[;,.]?$)")
"""The key of a chart drawn as text: ". = MC; a = A"."""
_BEGINS_ANEW = re.compile(r"^(?:[*(\[]?[A-Z]|\d+(?:st|nd|rd|th)?\s+(?:row|rnd|round)|[-•*]\s)")


@dataclass(frozen=True, slots=True, kw_only=True)
class Piece:
    """A stretch of the text that stands on one row of the file."""

    kind: str
    """`line`, `note` or `comment`."""
    text: str
    row: int
    """Row of the text it begins in, from 1."""
    why: str = ""
    """`note`: what stopped the reading."""
    line: Line | None = None


@dataclass(slots=True, kw_only=True)
class Part:
    """A section of the garment in the text."""

    name: str
    aside: str = ""
    pieces: list[Piece] = field(default_factory=list)

    @property
    def is_worked(self) -> bool:
        """Whether a line of it works stitches."""
        return any(piece.line is not None and _works(piece.line) for piece in self.pieces)


@dataclass(slots=True, kw_only=True)
class DrawnChart:
    """A chart drawn as text."""

    name: str
    key: list[tuple[str, str]] = field(default_factory=list)
    rows: list[str] = field(default_factory=list)
    repeat: str = ""
    drawn: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Pasted:
    """What a text comes to."""

    title: str
    sizes: tuple[str, ...]
    sizes_found: bool
    front: tuple[Piece, ...]
    """The pieces before the first section."""
    parts: tuple[Part, ...]
    charts: tuple[DrawnChart, ...]
    text: str
    """The front matter as running text, for what is gleaned from it."""
    rows: tuple[str, ...]

    @property
    def pieces(self) -> tuple[Piece, ...]:
        """Every piece in the order of the text."""
        return (*self.front, *(piece for part in self.parts for piece in part.pieces))


def take_apart(text: str) -> Pasted:
    """Cut a copied text into its pieces.

    Args:
        text: The whole text, as copied.

    Returns:
        The pieces and what heads them. Always: the pieces put together are the text, white space aside.
    """
    rows = [" ".join(writable(row).split()) for row in text.splitlines()]
    sizes = find_sizes(rows)
    count = len(sizes) or infer_sizes(rows)
    names = sizes or tuple(str(number) for number in range(1, count + 1))
    sorter = _Sorter(rows=rows, words=Words(sizes=count))
    sorter.sort()
    parts = _merged(sorter.parts)
    used = {row for part in parts for piece in part.pieces for row in [piece.row]}
    front_rows = [row for number, row in enumerate(rows, start=1) if number not in used]
    return Pasted(
        title=_title(rows),
        sizes=names,
        sizes_found=bool(sizes),
        front=tuple(sorter.front),
        parts=parts,
        charts=tuple(chart for chart in sorter.charts if chart.rows and chart.key),
        text="\n".join(front_rows),
        rows=tuple(rows),
    )


def _title(rows: Sequence[str]) -> str:
    for row in rows:
        heading = heading_of(row)
        if row and len(row) <= 60 and not is_clutter(row) and (heading is None or heading.kind == "part"):
            plain = re.sub(r"^(?:title|name|pattern)\s*:\s*", "", row.strip("*#_ "), flags=re.I)
            return plain.rstrip(".:") or "Pasted pattern"
        if row:
            break
    return "Pasted pattern"


def _merged(parts: list[Part]) -> tuple[Part, ...]:
    """Give parts without any stitches to the part before them; a name that comes twice gets a number."""
    kept: list[Part] = []
    for part in parts:
        if kept and not part.is_worked:
            kept[-1].pieces += part.pieces
        elif part.pieces:
            kept.append(part)
    if len(kept) > 1 and not kept[0].is_worked:
        kept[1].pieces[:0] = kept[0].pieces
        del kept[0]
    taken: dict[str, int] = {}
    for part in kept:
        taken[part.name] = taken.get(part.name, 0) + 1
        if taken[part.name] > 1:
            part.name = f"{part.name} {taken[part.name]}"
    return tuple(kept)


@dataclass(slots=True, kw_only=True)
class _Sorter:
    """Goes through the rows once and puts each where it belongs."""

    rows: list[str]
    words: Words
    front: list[Piece] = field(default_factory=list)
    parts: list[Part] = field(default_factory=list)
    charts: list[DrawnChart] = field(default_factory=list)
    mode: str = "front"
    """`front`, `work` or `chart`."""

    def sort(self) -> None:
        """Sort all rows."""
        at = 0
        while at < len(self.rows):
            row = self.rows[at]
            if not row:
                at += 1
                continue
            heading = None if is_clutter(row) and self.mode != "chart" else heading_of(row)
            if self._is_title(at, heading):
                self._comment(row, at)
                at += 1
            elif heading is not None and self._is_heading(heading, at):
                self._head(heading, row, at)
                at += 1
            elif self.mode == "chart" and self._drawn(row, at):
                at += 1
            elif is_clutter(row) or _SUBHEAD.match(row):
                self._comment(row, at)
                at += 1
            else:
                at = self._content(at)

    def _is_title(self, at: int, heading: Heading | None) -> bool:
        """Say whether a row is the first of the text and no part begins right below it."""
        if heading is None or heading.kind != "part" or any(self.rows[:at]):
            return False
        below = next((row for row in self.rows[at + 1 :] if row), "")
        return not (below and (self._is_line(below) or self._sentences_work(below)))

    def _is_heading(self, heading: Heading, at: int) -> bool:
        """Say whether a row that looks like a heading is one, and no line of the pattern."""
        if heading.kind == "chart":
            below = next((row for row in self.rows[at + 1 :] if row), "")
            return bool(_KEYED.search(below))
        return heading.kind == "front" or not self._is_line(self.rows[at])

    def _is_line(self, row: str) -> bool:
        line = self._read([row])
        return line is not None and _works(line)

    def _comment(self, row: str, at: int) -> None:
        piece = Piece(kind="comment", text=row, row=at + 1)
        (self.parts[-1].pieces if self.parts else self.front).append(piece)

    def _head(self, heading: Heading, row: str, at: int) -> None:
        if heading.kind == "part":
            begins = bool(self.parts) or self._work_follows(at + 1)
            if begins:
                self.parts.append(Part(name=heading.name, aside=heading.aside))
                self.mode = "work"
            elif not self.parts:
                self.mode = "front"
        elif heading.kind == "chart":
            self.charts.append(DrawnChart(name=heading.name))
            self.mode = "chart"
        elif not (self.parts and _ASIDE.match(heading.name)):
            self.mode = "front"
        self._comment(row, at)

    def _work_follows(self, at: int) -> bool:
        """Say whether the rows up to the next heading hold a line that works stitches."""
        while at < len(self.rows) and (not self.rows[at] or heading_of(self.rows[at]) is None):
            if self.rows[at]:
                taken, line = self._joined(at)
                if line is not None and _works(line):
                    return True
                if self._sentences_work(self.rows[at]):
                    return True
                at += taken
            else:
                at += 1
        return False

    def _sentences_work(self, row: str) -> bool:
        lines = [self._read([part]) for part in _SENTENCE.split(row)]
        return any(line is not None and _works(line) for line in lines)

    def _content(self, at: int) -> int:
        """Take a row of content, with those it goes on in; give the next row."""
        part = inline_part(self.rows[at])
        if part and self._joined(at)[1] is not None:
            self.parts.append(Part(name=part))
            self.mode = "work"
        elif self.mode != "work" and not self.parts and self._casts_on(at):
            self.parts.append(Part(name="beginning"))
            self.mode = "work"
        if self.mode != "work":
            self._comment(self.rows[at], at)
            return at + 1
        taken, line = self._joined(at)
        text = " ".join(self.rows[at : at + taken])
        pieces = self.parts[-1].pieces
        if line is not None:
            pieces.append(Piece(kind="line", text=text, row=at + 1, line=line))
        else:
            taken = self._run_on(at)
            pieces.extend(self._by_sentence(" ".join(self.rows[at : at + taken]), at + 1))
        return at + taken

    def _casts_on(self, at: int) -> bool:
        """Say whether the pattern begins here: a cast-on, in a text without headings before it."""
        if not re.search(r"\b(?:cast\s+on|co)\s+\d", self.rows[at], re.I):
            return False
        line = self._joined(at)[1]
        return _works(line) if line is not None else self._sentences_work(self.rows[at])

    def _run_on(self, at: int) -> int:
        """Count the rows of a paragraph that cannot be read: to the end of its sentence."""
        taken = 1
        while at + taken < len(self.rows) and self._continues(at + taken - 1) and taken < 4 * _MOST_ROWS:
            taken += 1
        return taken

    def _continues(self, at: int) -> bool:
        """Say whether the row after this one goes on in the middle of a sentence."""
        if at + 1 >= len(self.rows):
            return False
        row, following = self.rows[at], self.rows[at + 1]
        if not following or is_clutter(following) or heading_of(following) is not None:
            return False
        if _GOES_ON.search(row):
            return True
        return not row.endswith((".", ":", "!", "?")) and not _BEGINS_ANEW.match(following)

    def _joined(self, at: int) -> tuple[int, Line | None]:
        """Read the row at a place together with those it goes on in, as many as make a line."""
        most = 1
        while most < _MOST_ROWS and at + most < len(self.rows) and self._continues(at + most - 1):
            most += 1
        for taken in range(most, 0, -1):
            line = self._read([" ".join(self.rows[at : at + taken])])
            if line is not None:
                return taken, line
        return self._broken_anywhere(at)

    def _broken_anywhere(self, at: int) -> tuple[int, Line | None]:
        """Read a row that does not end its sentence together with those below it, however they begin."""
        for taken in range(2, _MOST_ROWS + 1):
            rows = self.rows[at : at + taken]
            if len(rows) < taken or not all(rows) or rows[-2].endswith((".", ":", "!", "?")):
                break
            line = self._read([" ".join(rows)])
            if line is not None:
                return taken, line
        return 1, None

    def _by_sentence(self, text: str, row: int) -> list[Piece]:
        """Split what cannot be read as a whole into its sentences; neighbours that cannot stay together."""
        pieces: list[Piece] = []
        sentences = _SENTENCE.split(text)
        for sentence in sentences:
            line = self._read([sentence]) if len(sentences) > 1 else None
            if line is not None:
                pieces.append(Piece(kind="line", text=sentence, row=row, line=line))
            elif pieces and pieces[-1].kind == "note":
                last = pieces.pop()
                pieces.append(Piece(kind="note", text=f"{last.text} {sentence}", row=row, why=last.why))
            else:
                pieces.append(Piece(kind="note", text=sentence, row=row, why=self._why(sentence)))
        return pieces

    def _read(self, rows: list[str]) -> Line | None:
        draft = Draft(text_lines=[])
        places = [(text, Place(line=1, column=1)) for text in rows]
        if rows[-1].endswith((",", ";", "-", "(", "[")) or rows[0].startswith("#"):
            return None  # in the file such a row would take the next one to itself, or be a comment
        return read_rows(places, self.words, draft).line if reads(rows[0]) else None

    def _why(self, sentence: str) -> str:
        draft = Draft(text_lines=[])
        read_rows([(sentence, Place(line=1, column=1))], self.words, draft)
        if not draft.problems:
            return ""
        problem = draft.problems[0]
        hint = problem.hint if problem.hint.startswith("Did you mean") else ""
        return f"{problem.message} {hint}".strip()

    def _drawn(self, row: str, at: int) -> bool:
        """Take a row of a chart drawn as text, or of its key; say whether it was one."""
        chart = self.charts[-1]
        keyed = _KEYED.findall(row)
        if keyed and not chart.rows:
            chart.key += [(sign, meaning.strip()) for sign, meaning in keyed]
        elif re.match(r"(?:repeat|rep):?\s*(?:sts?|squares)?\s*\d+\s*[-–]\s*\d+$", row, re.I):
            chart.repeat = re.sub(r"[^\d–-]", "", row)
        elif re.match(r"(?:only\s+)?(?:RS|right[- ]side)\s+rows\b.*\bdrawn\b", row, re.I):
            chart.drawn = "RS rows"
        elif " " not in row and len(row) > 1 and set(row) <= {sign for sign, _ in chart.key}:
            chart.rows.append(row)
        else:
            self.mode = "work" if self.parts else "front"
            return False
        self._comment(row, at)
        return True


def _works(line: Line) -> bool:
    """Say whether a line works stitches, rather than naming a needle or a count."""
    idle = (Count, Needle, Remark, WithYarn, BreakYarn, TurnMethod)
    worked = [sentence for sentence in line.sentences if not isinstance(sentence, idle)]
    if not worked:
        return False
    counted = re.search(r"\d", line.text) or line.numbers or line.every or line.label is None
    return bool(counted) and not (
        line.label is not None
        and len(worked) == 1
        and isinstance(worked[0], Phrase)
        and len(line.label) <= 8
        and not re.search(r"\b(?:rnd|round|row|rs|ws)\b|\d", f"{line.label} {line.text}", re.I)
    )
