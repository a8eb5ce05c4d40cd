"""The row at which a sitting stands: what it says, and what it is proposed to be. Asks nothing.

A row of several kinds is taken sentence by sentence.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.plan.checks.other_side import faces
from stepper.plan.model import OpenRow
from stepper.project.page.quoting import comment, value
from stepper.project.page.unread.kept_rows import marked_rows, put_rows, split_sentences
from stepper.project.page.unread.left_open import (
    LeftKind,
    LeftOpen,
    find_left_open,
    is_work_row,
    line_at,
    part_of,
)
from stepper.project.page.unread.proposals import Kept, says_stitches
from stepper.project.page.unread.same_lines import MIRRORED, SamePart, find_same, parts_above, piece_at
from stepper.project.pairs import COPIES
from stepper.project.reading.own_words import find_depended_on
from stepper.records import dataclass
from stepper.regex import regex
from stepper.settling.by_count import is_row_of_ring
from stepper.settling.by_parts import asked_by_parts, short_rows_from
from stepper.settling.coming import COMES
from stepper.settling.file_in_hand import FileInHand, take_in_hand
from stepper.settling.number_questions import NumberQuestions, RowNumbers
from stepper.settling.replies import Reply, propose_reply
from stepper.settling.rows_asked import RowAsked, look_at
from stepper.sitting.project_file import LoadedProject

_AGAIN: Final = regex(r"\brep(?:eat)?\b|\btwice\b|\bboth\b|\balso\b|\bas\s+before\b", re.I)
"""Words by which more goes on hold than is told."""
_NAME: Final = regex(r"\s*- name:")
"""What stands in front of the name of a section."""
_ENDING: Final = regex(r"\bend(?:ing)?\s+(?:with|on|after)\b", re.I)
"""Words by which the last row of a length is of one side: how many they are she has to count."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Looked:
    """A row that is open, with what is known of it."""

    asked: RowAsked
    file: FileInHand
    numbers: NumberQuestions
    reply: Reply | None
    """What it is proposed to be, with all its numbers; None if not all are known."""


def look(loaded: LoadedProject) -> Looked:
    """Look at the row at which a plan ends; of a row of several kinds, at its first sentence."""
    row = loaded.plan.open
    assert row is not None  # the caller has looked
    text = loaded.text.replace("\r\n", "\n")
    second = row.second
    if second:
        text, row = _behind_first(text, row)
    asked = _look_at(_left_at(text, row), row, text)
    left = asked.left
    remark = asked.proposal.kept in (Kept.NOTE, Kept.OUT)  # "I use German short rows" turns nothing itself
    if asked_by_parts(row, asked).several and not remark:
        asked = replace(asked, left=short_rows_from(left, text))
    numbers = _numbers(asked, take_in_hand(text, loaded.path.parent))
    reply, _ = propose_reply(asked, numbers)
    if asked.proposal.kept is Kept.SPLIT and (reply is None or not reply.kinds):
        sentences = split_sentences(left.text)
        text = put_rows(text, left.first, left.last, marked_rows(sentences, left.where, ""))
        asked = _look_at(_left_at(text, replace(row, line=left.first)), row, text)
        numbers = _numbers(asked, take_in_hand(text, loaded.path.parent))
        reply, _ = propose_reply(asked, numbers)
    sure = not asked.proposal.doubtful
    if asked.proposal.kept in (Kept.NOTE, Kept.OUT):  # a yes to a row that is knitted would lose it
        worked = not sure or says_stitches(asked.left.text) or asked.proposal.rows not in ("", "1")
        worked = worked or (row.stitches == 0 and COMES.search(asked.left.text) is not None)
        reply = None if worked else Reply(kept=asked.proposal.kept)
    if reply is None and sure and asked.proposal.kept in (Kept.CAST_ON, Kept.PICK_UP):
        # A line that is read, and open for what stands beside it.
        reply = Reply(kept=asked.proposal.kept, moved=numbers.moved_proposed())
    if reply is None and sure and asked.proposal.kept is Kept.BIND_OFF:
        reply = Reply(kept=Kept.BIND_OFF)
    same = asked.same or _same_meant(asked.left, text, second=second)
    if same is not None and _comes_as_it_is(same, asked.left, text):
        reply = Reply(kept=Kept.AGAIN, part=same)
    whole = reply is not None and _is_whole(reply, asked, numbers)
    return Looked(asked=asked, file=numbers.file, numbers=numbers, reply=reply if whole else None)


def _behind_first(text: str, row: OpenRow) -> tuple[str, OpenRow]:
    """Leave a line that makes the second of a piece open in a section behind the first.

    The line itself becomes a comment. What it asks for is told with it: nobody takes it for a heading then.
    """
    rows, piece = text.split("\n"), piece_at(text, row.line)
    head = next(at for at in range(row.line, 0, -1) if _NAME.match(rows[at - 1]))
    opens = next(at for at in range(head, row.line) if is_work_row(rows, at + 1))
    own = (at for at in range(row.line, len(rows) + 1) if piece_at(text, at) == piece)
    last, line = max(at for at in own if is_work_row(rows, at)), rows[row.line - 1]
    said, indent = line.strip(), line[: len(line) - len(line.lstrip())]
    second = value(f"{part_of(rows, row.line)}, {COPIES[0]}")
    opened = marked_rows([f"Knit the second as the first: {said}"], "", "")
    named = rows[head - 1][: rows[head - 1].index(":") + 1]
    behind = [f"{named} {second}", *rows[head:opens], *(f"{indent}{each}" for each in opened)]
    above = [*rows[: row.line - 1], f"{indent}{comment(said)}", *rows[row.line : last]]
    return "\n".join([*above, *behind, *rows[last:]]), replace(row, line=last + len(behind))


def _same_meant(left: LeftOpen, text: str, *, second: bool) -> SamePart | None:
    """Return the part that a line works once more: its own where it makes the second of a piece."""
    if not second:
        return find_same(left.text, text, left.first)
    own = next(part for part in parts_above(text, left.first) if part.name == piece_at(text, left.first))
    return None if MIRRORED.search(left.text) else own


def _comes_as_it_is(same: SamePart, left: LeftOpen, text: str) -> bool:
    """Return whether lines of another part may come once more as they stand: of no other side, and all."""
    other = same.mirrored or faces(piece_at(text, left.first), same.name)
    return same.plain and not other and not same.upto


def _look_at(left: LeftOpen, row: OpenRow, text: str) -> RowAsked:
    """Look at a row; that nothing is on the needles the plan knows for certain."""
    return look_at(left, text, empty=row.stitches == 0, held=row.held)


def _left_at(text: str, row: OpenRow) -> LeftOpen:
    for left in find_left_open(text):
        if left.kind is LeftKind.ROW and left.first <= row.line <= left.last:
            return left
    rows, last = text.split("\n"), row.line
    while last < len(rows) and rows[last - 1].rstrip().endswith(":"):  # a heading is part of the next line
        last += 1
    line = line_at(text, row.line, "")
    if line is not None:
        whole = " ".join(each.strip() for each in rows[row.line - 1 : last])
        return replace(line, last=last, text=whole)
    return LeftOpen(
        kind=LeftKind.LINE, first=row.line, last=row.line, where="", part=row.section, text=row.words, why=""
    )


def _numbers(asked: RowAsked, file: FileInHand) -> NumberQuestions:
    return NumberQuestions(
        proposal=asked.proposal,
        before=asked.so_far.stitches,
        file=file,
        words=asked.left.text,
        flat=asked.so_far.flat,
    )


def _is_whole(reply: Reply, asked: RowAsked, numbers: NumberQuestions) -> bool:
    """Return whether a proposal leaves nothing to ask."""
    match reply.kept:
        case Kept.ROWS:
            found = reply.numbers
            known = found is not None and found.count is not None and (found.count.text or numbers.before)
            told = asked.proposal.says_rows or bool(asked.proposal.count)
            told = told and not (found is not None and _lasts(found) and _ENDING.search(asked.left.text))
            whole = bool(known) and told and found is not None and numbers.is_whole(found)
            return whole and not find_depended_on(asked.left.text) and not is_row_of_ring(asked)
        case Kept.AGAIN:
            return reply.part is not None
        case Kept.HOLD:
            return reply.count is not None and _AGAIN.search(asked.left.text) is None
        case Kept.CAST_ON | Kept.PICK_UP:
            return bool(reply.moved)
        case _:
            return reply.kept in (Kept.NOTE, Kept.OUT, Kept.BIND_OFF)


def _lasts(numbers: RowNumbers) -> bool:
    """Return whether rows go on to a length."""
    return bool(numbers.rows) and not numbers.rows[0].isdigit()


def is_idle(reply: Reply | None) -> bool:
    """Return whether nothing is knitted for a row as it is proposed."""
    return reply is not None and reply.kept in (Kept.NOTE, Kept.OUT)
