"""Ask at the keyboard what is done with the stitches of an open row, as a sitting asks it."""

from __future__ import annotations

from stepper.language.open_words import ask_parts
from stepper.plan.model import OpenKind, OpenRow
from stepper.project.page.unread.left_open import LeftOpen
from stepper.session.open_row.by_parts import Ask, PartQuestion, not_wanted, question_after
from stepper.session.state import OpenAnswer, PartAnswer
from stepper.settling.by_parts import OF_PARTS, asked_by_parts, write_asked, write_counted
from stepper.settling.file_in_hand import FileInHand
from stepper.settling.prompting import BackAsked, ask_read
from stepper.settling.rows_asked import RowAsked
from stepper.settling.written_rows import Forms

_YES = {"yes": True, "y": True, "no": False, "n": False}


def row_by_parts(asked: RowAsked) -> OpenRow | None:
    """Return a row as it is asked of its stitches; None where its count is enough, or nothing is known of it.

    Args:
        asked: The row.
    """
    so_far = asked.so_far
    if so_far.stitches is None:
        return None
    row = OpenRow(
        line=asked.left.first,
        section=asked.left.part,
        flat=so_far.flat is not False,
        words=asked.left.text,
        stitches=so_far.stitches,
        wrong=so_far.wrong,
        held=so_far.held,
    )
    made = asked_by_parts(row, asked)
    return made if made.is_asked_by_parts else None


def ask_stitches(asked: RowAsked, row: OpenRow, file: FileInHand) -> Forms:
    """Ask about the stitches of a row, and return the rows that may be written; none if it is nothing.

    Args:
        asked: The row.
        row: The same, as `row_by_parts` returns it.
        file: The file; kept for one size, as what she says is for that alone.

    Raises:
        LaterAsked: It is left open; `BackAsked` and `StopAsked` likewise.
    """
    answers: list[PartAnswer] = []
    while True:
        question = question_after(row, answers)
        if question.ask in (Ask.DONE, Ask.ALL_DONE):  # it may be knitted later
            answers.append(PartAnswer(yes=True))
            continue
        try:
            said = ask_read(ask_parts(row, question), "", lambda typed: _read(typed, question))  # noqa: B023
        except BackAsked:
            if len(answers) <= (row.stitches > 0):
                raise
            answers.pop()
            continue
        if question.answer is None:
            answers.append(said)
        elif said.yes:
            # All of it is counted on her needles: for the other sizes not even a yes says how many.
            if question.answer.kind is not OpenKind.IDLE and file.keep_for_hers():
                file.tell_kept()
            return _written(question.answer, row, asked.left)
        else:
            answers.pop()


def _read(typed: str, question: PartQuestion) -> PartAnswer | str:
    """Return what an answer says; what is wrong with it, as a sentence."""
    if typed.isdigit() and question.takes_number:
        number = int(typed)
        if question.wanted is not None and number and not question.wanted.takes(number):
            return not_wanted(number, question.wanted)
        if question.least <= number <= question.most:
            return PartAnswer(number=number)
        return f"It is from {question.least} to {question.most}."
    known = _YES.get(typed.lower())
    if known is None or not (question.takes_yes if known else question.takes_no):
        return "Answer with the number." if not question.takes_yes else "Answer yes or no."
    return PartAnswer(yes=known)


def _written(answer: OpenAnswer, row: OpenRow, left: LeftOpen) -> Forms:
    if answer.kind in OF_PARTS:
        return write_asked(answer, row, left)
    if answer.kind is OpenKind.ROWS:
        return write_counted(answer, left.text, row.stitches)
    return ((f"Note: {' '.join(left.text.split())}",),)
