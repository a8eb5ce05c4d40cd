"""Write an open row as it was answered, in the first form that is read. Asks nothing."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from stepper.project.page.marks import MARK
from stepper.project.page.unread.kept_rows import (
    put_rows,
    split_sentences,
    write_each,
    write_kept,
    write_numbered,
)
from stepper.project.page.unread.left_open import LeftKind, LeftOpen, find_left_open
from stepper.project.page.unread.proposals import Kept
from stepper.project.page.unread.same_lines import SamePart
from stepper.records import dataclass
from stepper.settling.coming import open_behind
from stepper.settling.file_in_hand import FileInHand
from stepper.settling.replies import Reply
from stepper.settling.rows_asked import RowAsked
from stepper.settling.same_part import rows_again

Forms = Sequence[tuple[str, ...]]
"""The rows that may be written for an answer, without indentation, the best form first."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Written:
    """A file with an open row as it was answered."""

    text: str = ""
    """The whole file; empty if no form is read."""
    rows: tuple[str, ...] = ()
    """The rows that were written."""
    trouble: tuple[str, ...] = ()
    """What is wrong with the last form tried, as sentences; empty if one is read."""
    copied: bool = False
    """Whether they are lines of another part, one of which may not fit here: then it is asked about there."""

    @property
    def settled(self) -> tuple[str, ...]:
        """The rows that were written and do not stay open under a mark."""
        pairs = zip(("", *self.rows), self.rows, strict=False)
        return tuple(row for above, row in pairs if MARK not in above and MARK not in row)


def forms_of(reply: Reply, asked: RowAsked) -> Forms:
    """Return the rows that may be written for an answer that leaves nothing open.

    Args:
        reply: The answer, with all its numbers.
        asked: The row.
    """
    kept, words = reply.kept, asked.left.text
    if kept in (Kept.CAST_ON, Kept.PICK_UP):
        behind = open_behind(asked.left, ())
        return tuple((form, *behind) for form in write_kept(words, kept, moved=reply.moved))
    if kept is Kept.HOLD:
        return _each_alone(write_kept(words, kept, moved=reply.moved, count=reply.count or ""))
    if kept is Kept.SPLIT:
        kinds = zip(split_sentences(words), reply.kinds, strict=True)
        return (tuple(row for one, kind in kinds for row in write_kept(one, kind)),)
    if kept is not Kept.ROWS:
        return _each_alone(write_kept(words, kept))
    numbers = reply.numbers
    rows = numbers.rows if numbers is not None else asked.proposal.rows
    count = numbers.count if numbers is not None else None
    if count is not None and count.each:
        return (write_each(words, tuple(map(str, count.each)), uncounted=count.last_alone),)
    text = count.text if count is not None else ""
    by_number = asked.proposal.numbered and rows == asked.proposal.rows
    plain = write_kept(words, kept, rows=rows, count=text, flat=asked.so_far.flat)
    return _each_alone((*(write_numbered(words, text) if by_number else ()), *plain))


def write_reply(
    reply: Reply, asked: RowAsked, file: FileInHand, *, behind: tuple[str, ...] = ()
) -> Written:
    """Write an open row as it was answered.

    Args:
        reply: The answer, with all its numbers.
        asked: The row.
        file: The file.
        behind: Rows written behind it.
    """
    if reply.kept is Kept.AGAIN and reply.part is not None:
        rows = rows_again(reply.part, asked.left, file)
        return write_first_read((rows,) if rows else (), asked.left, file)
    forms = [(*form, *behind) for form in forms_of(reply, asked)]
    return write_first_read(forms, asked.left, file)


def write_copied(part: SamePart, asked: RowAsked, file: FileInHand) -> Written:
    """Write the lines of a part once more in the place of a row, though one of them may not fit there.

    Args:
        part: The part.
        asked: The row.
        file: The file.
    """
    rows = rows_again(part, asked.left, file, copied=True)
    return replace(write_first_read((rows,) if rows else (), asked.left, file), copied=True)


def write_first_read(made: Sequence[Sequence[str]], left: LeftOpen, file: FileInHand) -> Written:
    """Put the first form that is read in the place of a row.

    Args:
        made: The rows that may be written, the best form first.
        left: The row.
        file: The file.
    """
    trouble: tuple[str, ...] = ()
    at = _place_of(left, file.text)
    for rows in made:
        if not rows:
            continue
        text = put_rows(file.text, at, at + left.last - left.first, rows)
        problems = file.problems_with(text, at, len(rows))
        if not problems:
            return Written(text=text, rows=tuple(rows))
        trouble = tuple(f"{each.message} {each.hint}".strip() for each in problems)
    return Written(trouble=trouble)


def _each_alone(forms: Sequence[str]) -> Forms:
    return tuple((form,) for form in forms)


def _place_of(left: LeftOpen, text: str) -> int:
    """Return the first row of what is asked about, which moves where the file was kept for one size."""
    rows = text.split("\n")
    for at in (left.first, left.first + 1):
        if left.kind is LeftKind.LINE:
            row = rows[at - 1].strip() if at <= len(rows) else ""
            if row and left.text.startswith(row):  # a heading may stand above it
                return at
        elif any(each.first == at and left.text.startswith(each.text) for each in find_left_open(text)):
            return at
    return left.first
