"""The block of work lines: which rows of the file make one printed line. No I/O."""

from __future__ import annotations

from dataclasses import dataclass

from stepper.project.draft import FileDraft
from stepper.project.instructions import Line, Remark, Unread
from stepper.project.problems import Span
from stepper.project.source import Node, Scalar, block_lines
from stepper.project.wording import Words, read_line, reads


def read_work(node: Node, words: Words, draft: FileDraft) -> tuple[Line, ...]:
    """Read the lines of a section; rows that begin with # are left out."""
    if not isinstance(node, Scalar) or node.folded:
        draft.problems.append(
            node.place.problem(
                "the lines of `work` must stand in a block.", 'Write "work: |" and the lines below it.'
            )
        )
        return ()
    rows = [
        row for row in block_lines(node, draft.text_lines) if row[0].strip() and row[0].lstrip()[:1] != "#"
    ]
    if not rows:
        draft.problems.append(node.place.problem("`work` is empty."))
    lines: list[Line] = []
    index = 0
    while index < len(rows):
        found = read_rows(rows[index:], words, draft)
        index += found.taken
        lines.append(found.line or found.meant or _unread(rows[index - 1]))
    return tuple(lines)


@dataclass(frozen=True, slots=True, kw_only=True)
class Rows:
    """What some rows gave."""

    taken: int
    """How many rows make the line. Range: 1 and up."""
    line: Line | None
    """The line; nothing, with problems in the draft, where it cannot be read."""
    meant: Line | None = None
    """The line as it reads with the words that were meant, where it does."""


def _unread(row: tuple[str, Span]) -> Line:
    """Stand in for a line that could not be read, so that the lines around it are checked all the same."""
    text, place = row
    nothing = (Unread(place),)
    return Line(label=None, numbers=(), side="", rows=False, sentences=nothing, text=text, place=place)


def read_rows(rows: list[tuple[str, Span]], words: Words, draft: FileDraft) -> Rows:
    """Read one printed line, which may be broken over several lines of the file.

    A line that cannot be read alone and does not end a sentence is tried together with those that follow it,
    as text copied from a page has its lines broken inside a sentence. A note takes the next row to itself
    only where that is no line of its own.
    """
    first = read_line(rows[0][0], Placer(rows[:1]), words)
    note = first.line is not None and _is_note(first.line) and len(rows) > 1
    if note and read_line(rows[1][0], Placer(rows[1:2]), words).line is not None:
        return Rows(taken=1, line=first.line)
    if first.line is not None and not _goes_on(rows, 1):
        return Rows(taken=1, line=first.line)
    for count in range(2, min(len(rows), 8) + 1):
        if rows[count - 2][0].rstrip().endswith((".", "!")) and not _beside(rows[count - 1][0]):
            break
        if _goes_on(rows, count):
            continue
        joined = " ".join(
            row[0].strip() if number else row[0].rstrip() for number, row in enumerate(rows[:count])
        )
        if not reads(joined):
            continue
        reading = read_line(joined, Placer(rows[:count]), words)
        if reading.line is not None:
            return Rows(taken=count, line=reading.line)
    draft.problems.extend(first.problems)
    return Rows(taken=1, line=first.line, meant=first.meant)


def _is_note(line: Line) -> bool:
    return all(isinstance(sentence, Remark) for sentence in line.sentences)


def _goes_on(rows: list[tuple[str, Span]], count: int) -> bool:
    """Say whether the row at the end of the first so many cannot be the end of a sentence."""
    if count >= len(rows):
        return False
    return rows[count - 1][0].rstrip().endswith((",", ";", "-", "(", "[")) or _beside(rows[count][0])


def _beside(row: str) -> bool:
    """Say whether a row names a shaping beside that of the row before: "At the same time, …"."""
    return row.lstrip().lower().startswith(("at the same time", "and at the same time"))


class Placer:
    """Gives the place in the file of a stretch of text joined from several rows."""

    def __init__(self, rows: list[tuple[str, Span]]) -> None:
        self.starts: list[tuple[int, Span]] = []
        offset = 0
        for number, (text, place) in enumerate(rows):
            lead = len(text) - len(text.lstrip()) if number else 0
            self.starts.append((offset, Span(line=place.line, column=place.column + lead)))
            offset += len(text.strip() if number else text.rstrip()) + 1

    def __call__(self, offset: int, length: int) -> Span:
        """Give the place of a stretch: offset in the joined text from 0, and length."""
        start, place = max((entry for entry in self.starts if entry[0] <= offset), key=lambda entry: entry[0])
        return Span(line=place.line, column=place.column + offset - start, length=max(1, length))
