"""Ask in one question about remarks that follow each other, and about all text in front of the pattern."""

from __future__ import annotations

from collections.abc import Sequence

from stepper.project.page.unread.doubts import may_be_worked
from stepper.project.page.unread.kept_rows import put_rows, take_mark_off, write_kept
from stepper.project.page.unread.left_open import LeftKind, LeftOpen
from stepper.project.page.unread.proposals import Kept
from stepper.settling.prompting import ask_read
from stepper.settling.rows_asked import is_remark
from stepper.sitting.folding import print_folded


def alike_below(left: LeftOpen, opened: Sequence[LeftOpen], text: str) -> tuple[LeftOpen, ...]:
    """Return what may be kept in one answer: a remark with those right below it, or all text in front.

    Args:
        left: The first of them.
        opened: All that is open, in the order of the file.
        text: The whole file.

    Returns:
        Two or more, this one among them; none if it has to be asked about by itself, as text in front is that
        may be knitted.
    """
    at, rows = opened.index(left), text.split("\n")
    if left.kind is LeftKind.FRONT:
        if may_be_worked(left.text):
            return ()
        found = [each for each in opened if each.kind is LeftKind.FRONT and not may_be_worked(each.text)]
    elif left.kind is LeftKind.ROW:
        found = []
        for each in opened[at:]:
            between = rows[found[-1].last : each.first - 1] if found else []
            if any(row.strip() and not row.strip().startswith("#") for row in between) or not is_remark(each):
                break
            found.append(each)
    else:
        found = []
    return tuple(found) if len(found) > 1 else ()


def ask_together(together: Sequence[LeftOpen], text: str) -> str:
    """Ask whether several pieces are all remarks, and return the text of the file with the answer.

    Args:
        together: The pieces.
        text: The whole file.

    Returns:
        The text; as it was if they are to be asked about one by one.

    Raises:
        LaterAsked: They are left open; `BackAsked` and `StopAsked` likewise.
    """
    front = together[0].kind is LeftKind.FRONT
    if front:
        print_folded(["They stand in front of the pattern, so they are never knitted from there."])
    default = "comments" if front else "notes"
    known = {default: True, default[:-1]: True, default[0]: True, "one by one": False, "one": False}
    told = f"Answer {default} or one by one."
    question = f"Keep them all as {default}, or ask one by one?"
    if not ask_read(question, default, lambda said: known.get(said.lower(), told)):
        return text
    for each in reversed(together):
        if front:
            text = take_mark_off(text, each.first)
        else:
            text = put_rows(text, each.first, each.last, write_kept(each.text, Kept.NOTE))
    return text
