"""Rules where the pattern goes on with a row that is not read: she says what it is, and it is kept so.

What the page lets guess is asked first and taken with a yes. Else she knits the row by its words, and the
program does what a row counter does: each "next step" is a row of it, and with the count after the last it
is known. Nothing is written into the file before a yes. Pure.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.model import OpenKind, OpenRow, Plan
from stepper.session import moves
from stepper.session.counting import bare_number, doubts
from stepper.session.cues import Back, Count, Cue, GoOn, Next, No, RoundsDone, Yes
from stepper.session.decision import Decision, Refusal
from stepper.session.events import RowAnswered, RowSaid
from stepper.session.open_row.by_parts import (
    MOST_COME,
    NUMBERS,
    Ask,
    PartQuestion,
    not_wanted,
    question_of,
)
from stepper.session.open_row.in_parts import is_more_to_hear
from stepper.session.state import OpenAnswer, OpenWork, PartAnswer, State

_BY_KEYBOARD = "Its count is not enough: it is settled at the keyboard, by stepper settle."
_BY_COUNT = "Say next step after each round of it, and then the count."
_REST_FIRST = "First the rest of its words: say next step."
_NOTHING = "Is nothing knitted for it, say yes. If you knitted a round by its words, say: one round done."
_YES = PartAnswer(yes=True)
_KNITTED = frozenset((Ask.DONE, Ask.ALL_DONE))
"""Where "next step" says what yes does: that it is knitted."""
MOST_ROWS = 1000
"""Rows that may be worked by the words of one row; more is a slip of the tongue. Chosen here."""


def next_row(plan: Plan, state: State, cue: Next | GoOn) -> Decision:
    """Go on in its words; count a row worked by them, or take it as done where all of it is asked for.

    Where nothing seems to be knitted it is asked for an answer: "next step" is what she says to go on, and a
    round counted for a remark would stand in the file.
    """
    row, work = _row(plan), state.knitting.row_said
    if is_more_to_hear(row, work):
        return (RowSaid(at=cue.at, said=replace(work, heard=work.heard + 1)),)
    fresh = work == OpenWork(heard=work.heard)
    if work.idle or (fresh and row.proposed is not None and row.proposed.kind is OpenKind.IDLE):
        return Refusal(sentence=_NOTHING)
    question = question_of(row, work)
    if question is None:
        return _rows(plan, state, cue, 1)
    return _said(cue, row, work, _YES) if question.ask in _KNITTED else _first(question)


def takes_next(plan: Plan, state: State) -> bool:
    """Return whether "next step" says something of the row: of a remark, or of one question, it does not."""
    return not isinstance(next_row(plan, state, GoOn(at="")), Refusal)


def rows_done(plan: Plan, state: State, cue: RoundsDone) -> Decision:
    """Count several rows worked by the words."""
    question = question_of(_row(plan), state.knitting.row_said)
    if question is not None:
        return _first(question)
    return _rows(plan, state, cue, cue.rounds)


def _rows(plan: Plan, state: State, cue: Cue, more: int) -> Decision:
    row, work = _row(plan), state.knitting.row_said
    if row.trouble:
        return Refusal(sentence=_BY_KEYBOARD)
    rows = work.rows + more
    if not 0 < more <= rows <= MOST_ROWS:
        return Refusal(sentence="Say how many rounds are done.")
    return (RowSaid(at=cue.at, said=OpenWork(rows=rows, declined=True, heard=work.heard)),)


def back(plan: Plan, state: State, cue: Back) -> Decision:
    """Take a row off, or what was said of the row; before that, return to the step before."""
    work = state.knitting.row_said
    if len(work.answers) > work.joined:
        return (RowSaid(at=cue.at, said=replace(work, answers=work.answers[:-1], idle=False)),)
    if work.rows:
        fewer = replace(work, rows=work.rows - 1, stitches=None, idle=False)
        return (RowSaid(at=cue.at, said=fewer if fewer.rows else OpenWork(heard=work.heard)),)
    if work.heard and work == OpenWork(heard=work.heard):
        return (RowSaid(at=cue.at, said=replace(work, heard=work.heard - 1)),)
    if work != OpenWork():
        return (RowSaid(at=cue.at, said=OpenWork(heard=work.heard)),)
    return moves.go_back(plan, state, cue)


def count(plan: Plan, state: State, cue: Count) -> Decision:
    """Take a count as that after the row, which is read back; while a fault is looked for, as any other."""
    if _is_looking(state):
        return bare_number.take_count(plan, state, cue)
    row, work = _row(plan), state.knitting.row_said
    if row.trouble:
        return Refusal(sentence=_BY_KEYBOARD)
    question = question_of(row, work)
    if question is None and row.stitches == 0:  # a number is no remark
        come = question_of(row, replace(work, declined=True))
        question = come if come is not None and come.ask is Ask.COME else None
    if question is not None:
        return _number(cue, row, work, question)
    if not (work.rows or _rows_proposed(row)):
        return Refusal(sentence="First its rounds: say next step after each, or: three rounds done.")
    most = 3 * (plan.count_before(len(plan.rounds)) + sum(many for _, many in row.held)) or MOST_COME
    if not (0 if row.stitches else 1) <= cue.stitches <= most:  # none: they are bound off at its end
        return Refusal(sentence=f"{cue.stitches} cannot be. Say how many stitches are on the needles.")
    one = (work.rows or _rows_proposed(row)) == 1  # of many rows the number of rows would be lost
    if one and row.stitches and any(cue.stitches >= row.stitches + many for _, many in row.held):
        joined = OpenWork(
            joined=True, answers=(_YES,), declined=True, heard=work.heard, stitches=cue.stitches
        )
        return (RowSaid(at=cue.at, said=joined),)
    return (RowSaid(at=cue.at, said=replace(work, stitches=cue.stitches, idle=False)),)


def yes(plan: Plan, state: State, cue: Yes) -> Decision:
    """Take the row for what was asked."""
    if _is_looking(state):
        return doubts.yes(plan, state, cue)
    row, work = _row(plan), state.knitting.row_said
    if is_more_to_hear(row, work):
        return Refusal(sentence=_REST_FIRST)
    if work.idle:
        return _answered(cue, row, OpenAnswer(kind=OpenKind.IDLE))
    question = question_of(row, work)
    if question is not None:
        if question.answer is not None:
            return _answered(cue, row, question.answer)
        then = question_of(row, replace(work, answers=(*work.answers, _YES), declined=True))
        if question.ask is Ask.SAME and then is not None and then.answer is not None:
            return _answered(cue, row, then.answer)  # it would be the same question once more
        return _said(cue, row, work, _YES) if question.takes_yes else _first(question)
    rows = work.rows or _rows_proposed(row)
    if work.stitches is not None:
        return _answered(cue, row, OpenAnswer(kind=OpenKind.ROWS, rows=rows, stitches=work.stitches))
    if work.rows:
        if rows == _rows_proposed(row) and row.proposed is not None and row.proposed.printed:
            stitches = row.proposed.stitches
            return _answered(cue, row, OpenAnswer(kind=OpenKind.ROWS, rows=rows, stitches=stitches))
        return Refusal(sentence="Say the count after them.")
    if row.proposed is None or work.declined:
        return Refusal(sentence=_BY_KEYBOARD if row.trouble else _BY_COUNT)
    return _answered(cue, row, OpenAnswer(kind=row.proposed.kind))


def no(plan: Plan, state: State, cue: No) -> Decision:
    """Drop what was asked; where nothing was, nothing is knitted for the row, which is asked back."""
    if _is_looking(state):
        return doubts.no(plan, state, cue)
    row, work = _row(plan), state.knitting.row_said
    if cue.later or cue.unsure:
        return Refusal(sentence="Then it waits here: behind it nothing is known yet.")
    if is_more_to_hear(row, work):
        return Refusal(sentence=_REST_FIRST)
    if (work.stitches is not None and not work.joined) or work.idle:
        return (RowSaid(at=cue.at, said=replace(work, stitches=None, idle=False)),)
    if work.rows:
        return Refusal(sentence="Say the count after them, or go back.")
    if row.proposed is not None and not work.declined:
        return (RowSaid(at=cue.at, said=OpenWork(declined=True, heard=work.heard)),)
    question = question_of(row, work)
    if question is not None and (row.stitches == 0 or question.ask not in _KNITTED):
        if question.answer is not None:  # something in it is not so: the last answer, or one before
            return back(plan, state, Back(at=cue.at))
        return _said(cue, row, work, PartAnswer()) if question.takes_no else _first(question)
    if row.fabric:
        by_words = "Knit them: next step after each round, then the count."
        return Refusal(sentence=f"They order {row.fabric}, and I would go on as before. {by_words}")
    return (RowSaid(at=cue.at, said=replace(work, idle=True)),)


def not_before(plan: Plan, state: State, cue: Cue) -> Decision:
    """Refuse what needs a round that is read."""
    return Refusal(sentence="First the row that I do not read. To hear it, say: again.")


def _said(cue: Cue, row: OpenRow, work: OpenWork, answer: PartAnswer) -> Decision:
    """Keep an answer about the stitches of the row; a count that led to the questions answers its own."""
    said = replace(work, answers=(*work.answers, answer), declined=True)
    then = question_of(row, said) if said.stitches is not None else None
    if then is not None and then.ask is Ask.SAME:
        said = replace(said, answers=(*said.answers, PartAnswer(number=said.stitches)), stitches=None)
    return (RowSaid(at=cue.at, said=said),)


def _number(cue: Count, row: OpenRow, work: OpenWork, question: PartQuestion) -> Decision:
    """Take a number for what is asked of the stitches; one that cannot be is said, and asked for again."""
    number = cue.stitches
    if question.answer is not None:
        made = question.answer.left
        if number == made:
            return _answered(cue, row, question.answer)
        return Refusal(sentence=f"By your answers it is {made}, not {number}. Go back, or say yes.")
    if not question.takes_number:
        return Refusal(sentence="Say yes or no.")
    if not question.least <= number <= question.most:
        limit = f"at most {question.most}" if number > question.most else f"at least {question.least}"
        return Refusal(sentence=f"{number} cannot be: it is {limit}.")
    if question.wanted is not None and number and not question.wanted.takes(number):
        return Refusal(sentence=not_wanted(number, question.wanted))
    return _said(cue, row, work, PartAnswer(number=number))


def _first(question: PartQuestion) -> Refusal:
    """Refuse what does not answer a question about the stitches."""
    if question.ask in NUMBERS:
        none = ", or no for none" if question.takes_no else ""
        return Refusal(sentence=f"Say how many{none}.")
    return Refusal(sentence="Say yes, no or the number." if question.takes_number else "Say yes or no.")


def _answered(cue: Cue, row: OpenRow, answer: OpenAnswer) -> Decision:
    return (RowAnswered(at=cue.at, meant=answer, words=row.words),)


def _row(plan: Plan) -> OpenRow:
    assert plan.open is not None  # the mode says so
    return plan.open


def _rows_proposed(row: OpenRow) -> int:
    proposed = row.proposed
    return proposed.rows if proposed is not None and proposed.kind is OpenKind.ROWS else 0


def _is_looking(state: State) -> bool:
    """Return whether something else is asked: a number that was read back, a fault that is looked for.

    Once a round of the words is knitted a number is of these: she has gone on past the fault.
    """
    fault = state.knitting.fault is not None and not state.knitting.row_said.rows
    return state.knitting.doubt is not None or fault
