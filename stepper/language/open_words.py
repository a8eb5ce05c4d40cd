"""Say a row that is not read, ask what it is, and say how far the pattern is known. No I/O."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from types import MappingProxyType
from typing import Any, Final, assert_never

from stepper.craft.rows import row_word
from stepper.language.measures import plural
from stepper.language.places import end_sentence, sentence_case
from stepper.plan.model import OpenKind, OpenRow, PartKind, Plan, Proposed, RowPart
from stepper.plan.stitches.abbreviate import put_on_hold
from stepper.session.effects import Effect
from stepper.session.open_row.by_parts import Ask, PartQuestion, say_wanted
from stepper.session.open_row.in_parts import begins_with, part_heard
from stepper.session.open_row.telling import (
    SettleRow,
    TellOpenAhead,
    TellOpenRow,
    TellSettled,
    TellSoFar,
)
from stepper.session.questions.about import TellUnread


def tell_open_row(effect: TellOpenRow, plan: Plan) -> str:
    """Say the row, unless she has just heard it, and ask for what is not known of it."""
    row, asked = effect.row, "For more say next step." if effect.more else _ask(effect)
    if effect.brief:
        return asked
    part, heard = _quoted(part_heard(row, effect.work)), effect.work.heard
    if heard:
        return f"{part} {asked}"
    first = " ".join(_quoted(sentence_case(each)) for each in row.remarks)
    begins = "goes on" if any(each.section == row.section for each in plan.rounds) else "begins"
    printed = f"{sentence_case(row.section)} {begins} with words that I do not read: {part}"
    return " ".join(filter(None, [first, printed, asked]))


def say_proposed(proposed: Proposed, *, flat: bool) -> str:
    """Say what a row is likely to be: "2 rounds, 96 stitches after them as printed"."""
    stitches = plural(proposed.stitches, "stitch", "stitches")
    match proposed.kind:
        case OpenKind.ROWS:
            word = row_word(flat)
            rows = plural(proposed.rows, word) if proposed.rows else f"{word}s {proposed.lasts}"
            after = "after it" if proposed.rows == 1 else "after them"
            if not proposed.stitches:
                return f"{rows}, all stitches bound off {after.replace('after', 'by')}"
            return f"{rows}, {stitches} {after}{' as printed' if proposed.printed else ' as before'}"
        case OpenKind.IDLE:
            return "nothing to knit"
        case OpenKind.CAST_ON | OpenKind.PICK_UP:
            done = "cast on" if proposed.kind is OpenKind.CAST_ON else "picked up"
            return f"{proposed.moved} stitches {done}"
        case OpenKind.HOLD:
            return f"{proposed.moved} on hold, {stitches} left"
        case OpenKind.BIND_OFF:
            return "all stitches bound off"
        case OpenKind.AGAIN:
            first = f"all {proposed.moved} stitches bound off, then " if proposed.moved else ""
            return f"{first}{proposed.part} once more"
        case OpenKind.PARTS:
            return say_parts(proposed.parts)
        case OpenKind.SHORT_ROWS:
            return f"short rows, {stitches} behind them"
        case OpenKind.TAKEN:
            return f"{stitches} taken from hold"
        case OpenKind.COME:
            return f"{stitches} that come onto the needles"
    assert_never(proposed.kind)


def say_parts(parts: Sequence[RowPart]) -> str:
    """Say all stitches of a row in their order: "25 worked and put on hold, 10 bound off, 25 worked"."""
    said: list[str] = []
    for part in parts:
        named = f" for {part.name}" if part.name else ""
        match part.kind:
            case PartKind.WORKED:
                made = f" to {part.leaves}" if part.leaves != part.stitches else ""
                said.append(f"{part.stitches} worked{made}")
            case PartKind.FIRST_HELD:
                said.append(f"these {part.stitches} then on hold{named}")
            case PartKind.BACK:
                said.append(f"{part.stitches} from hold{named}")
            case PartKind.BEYOND:
                said.append(f"turned, the other {part.stitches} on hold{named}")
            case _:
                said.append(f"{part.stitches} {part.kind.value}{named}")
    return ", ".join(said)


def ask_parts(row: OpenRow, question: PartQuestion) -> str:
    """Ask about the stitches of a row, in one short sentence."""
    many = plural(question.number, "stitch", "stitches")
    within = _within(row)
    match question.ask:
        case Ask.DONE:
            return "Knit it by its words; when it is done say yes. Is nothing knitted, say no."
        case Ask.ALL_DONE:
            return "Knit all these rows; when the last is done say yes. Is nothing knitted, say no."
        case Ask.TO_END:
            return "Did you work it to the end of the row?"
        case Ask.MADE:
            return "How many stitches are on the needle that you knit on?"
        case Ask.BEYOND:
            return f"Then {question.number} are left beyond the turn: is that so?"
        case Ask.LEFT:
            return "How many are left beyond the turn?"
        case Ask.WAIT:
            return f"Do the {question.number} beyond the turn wait on hold?"
        case Ask.BEFORE:
            return f"How many did you work before the first {within}? If none, say no."
        case Ask.MORE:
            return f"How many then, before the next {within}? If none, say no."
        case Ask.OFF:
            return "How many are bound off there? If none, say no."
        case Ask.HELD:
            return "How many wait on hold there? If none, say no."
        case Ask.ON:
            return "How many are cast on there? If none, say no."
        case Ask.REST:
            return f"{sentence_case(many)} to go: all worked to the end?"
        case Ask.FIRST:
            return f"Do the first {question.number} wait on hold now?"
        case Ask.SAME:
            return f"{sentence_case(many)} on the needles now: is that so?"
        case Ask.AFTER:
            return "How many stitches are on the needles now?"
        case Ask.FACING:
            return "Does the right side face you now?"
        case Ask.TAKEN:
            return f"Do the {many} that wait {put_on_hold(question.name)} come onto the needles?"
        case Ask.COME:
            wanted = f" It is to be {say_wanted(question.wanted)}." if question.wanted is not None else ""
            return f"How many stitches come onto the needles?{wanted} If none, say no."
        case Ask.ROUND:
            return "Do you go on in rounds?"
        case Ask.SUM:
            return f"{_said_sum(row, question)}: is that so?"
    assert_never(question.ask)


def _within(row: OpenRow) -> str:
    """Say what breaks a row off, as its words have it: "that wait or are bound off"."""
    done = [_DONE[kind] for kind in (PartKind.HELD, PartKind.OFF, PartKind.ON) if kind in row.by_parts]
    return f"that {' or '.join(done)}"


_DONE: Final = MappingProxyType(
    {PartKind.HELD: "wait", PartKind.OFF: "are bound off", PartKind.ON: "are cast on"}
)


def _said_sum(row: OpenRow, question: PartQuestion) -> str:
    answer = question.answer
    assert answer is not None  # it asks whether that is so
    if answer.kind is OpenKind.PARTS:
        then = "" if answer.round is None else f", in {row_word(not answer.round)}s from here"
        return f"{sentence_case(say_parts(answer.parts))}; {answer.left} on the needles{then}"
    if answer.kind is OpenKind.IDLE:
        return "Nothing is knitted for these words"
    stitches = plural(answer.left, "stitch", "stitches")
    if answer.kind is OpenKind.SHORT_ROWS:
        side = "wrong" if row.wrong is (answer.rows == 2) else "right"
        faces = f", the {side} side facing" if row.flat else ""
        return f"These rows are done, {stitches} on the needles{faces}"
    if answer.kind in (OpenKind.TAKEN, OpenKind.COME):
        side = "" if answer.round else f", the {'right' if answer.right else 'wrong'} side facing"
        return f"{sentence_case(stitches)} on the needles, in {row_word(not answer.round)}s{side}"
    return f"One {row_word(row.flat)}, {stitches} on the needles"


def _ask(effect: TellOpenRow) -> str:
    row, work, question = effect.row, effect.work, effect.question
    if question is not None:
        last = work.answers[-1].number if work.answers else None
        heard = f"{last}. " if last is not None else ""
        return f"{heard}{ask_parts(row, question)}"
    word, proposed = row_word(row.flat), row.proposed
    if work.idle:
        return "Nothing is knitted for these words: is that so?"
    if work.stitches is not None:
        rows = work.rows or (proposed.rows if proposed is not None else 0)
        said = say_proposed(
            Proposed(kind=OpenKind.ROWS, rows=rows, stitches=work.stitches, printed=True), flat=row.flat
        )
        besides = f", {row.besides}" if row.besides else ""
        return f"{said.removesuffix(' as printed')}{besides}: is that so?"
    if work.rows:
        done = f"{sentence_case(word)} {work.rows} of these words is done."
        if effect.fits and proposed is not None:
            after = plural(proposed.stitches, "stitch", "stitches")
            return f"{done} Are they done, with {after} as printed? Say yes, or the count."
        return f"{done} Say next step after the next, or the count if it was the last."
    if proposed is None or work.declined:
        if row.trouble:
            return f"{row.trouble} Stepper settle asks about it, at the keyboard. Is nothing knitted, say no."
        how = f"next step after each {word}, then the count"
        none = f"They order {row.fabric}" if row.fabric else "Is nothing knitted, say no"
        return f"Knit it by its words: {how}. {none}."
    if proposed.kind is OpenKind.IDLE:
        return "Nothing seems to be knitted for it: is that so?"
    return f"I take it for {say_proposed(proposed, flat=row.flat)}: is that so?"


def _ahead(effect: TellOpenAhead, plan: Plan) -> str:
    words = effect.row.words
    begins = begins_with(words)
    if begins == " ".join(words.split()):
        printed = f"Behind this comes a row that I do not read: {_quoted(words)}"
        return f"{printed} Look whether it speaks of what you knit now."
    printed = f"Behind this comes a row that I do not read. It begins: {_quoted(begins)}"
    return f"{printed} Look whether it speaks of what you knit now; to hear all of it say: read that row."


def _unread(effect: TellUnread, plan: Plan) -> str:
    return "Every row of the pattern is read." if effect.row is None else _quoted(effect.row.words)


def _settled(effect: TellSettled, plan: Plan) -> str:
    return "Kept so."


def _so_far(effect: TellSoFar, plan: Plan) -> str:
    if effect.known:
        return "That is as far as the pattern is read."
    return "That is not known while a row of the pattern is not read."


def _nothing(effect: SettleRow, plan: Plan) -> str:
    return ""


def _quoted(words: str) -> str:
    """Return words as they are quoted, ended as a sentence."""
    plain = " ".join(words.split()).removeprefix("Note: ").lstrip("-–•* ").rstrip(" …:;,")
    return end_sentence(plain)


LINES: Final[MappingProxyType[type[Effect], Callable[[Any, Plan], str]]] = MappingProxyType(
    {
        TellOpenRow: tell_open_row,
        TellOpenAhead: _ahead,
        TellUnread: _unread,
        TellSettled: _settled,
        TellSoFar: _so_far,
        SettleRow: _nothing,
    }
)
