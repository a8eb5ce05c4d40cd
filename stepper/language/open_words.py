"""Say a row that is not read, ask what it is, and say how far the pattern is known. No I/O."""

from __future__ import annotations

from collections.abc import Callable
from types import MappingProxyType
from typing import Any, Final, assert_never

from stepper.craft.rows import row_word
from stepper.language.measures import plural
from stepper.language.places import sentence_case
from stepper.plan.model import OpenKind, Plan, Proposed
from stepper.session.effects import Effect
from stepper.session.open_row.telling import (
    SettleRow,
    TellOpenAhead,
    TellOpenRow,
    TellSettled,
    TellSoFar,
)


def tell_open_row(effect: TellOpenRow, plan: Plan) -> str:
    """Say the row, unless she has just heard it, and ask for what is not known of it."""
    row, asked = effect.row, _ask(effect)
    if effect.brief:
        return asked
    first = " ".join(_quoted(sentence_case(each)) for each in row.remarks)
    printed = f"{sentence_case(row.section)} goes on with words that I do not read: {_quoted(row.words)}"
    return " ".join(filter(None, [first, printed, asked]))


def say_proposed(proposed: Proposed, *, flat: bool) -> str:
    """Say what a row is likely to be: "2 rounds, 96 stitches after them as printed"."""
    stitches = plural(proposed.stitches, "stitch", "stitches")
    match proposed.kind:
        case OpenKind.ROWS:
            word = row_word(flat)
            rows = plural(proposed.rows, word) if proposed.rows else f"{word}s {proposed.lasts}"
            after = "after it" if proposed.rows == 1 else "after them"
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
            return f"{proposed.part} once more"
    assert_never(proposed.kind)


def _ask(effect: TellOpenRow) -> str:
    row, work = effect.row, effect.work
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
        return f"Knit it by its words: {how}. Is nothing knitted, say no."
    if proposed.kind is OpenKind.IDLE:
        return "Nothing seems to be knitted for it: is that so?"
    return f"I take it for {say_proposed(proposed, flat=row.flat)}: is that so?"


def _ahead(effect: TellOpenAhead, plan: Plan) -> str:
    return (
        f"Behind this comes a row that I do not read: {_quoted(effect.row.words)} "
        "Look whether it speaks of what you knit now."
    )


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
    ended = plain.endswith((".", "!", "?", ".)", "!)", "?)"))
    return plain if ended else f"{plain}."


LINES: Final[MappingProxyType[type[Effect], Callable[[Any, Plan], str]]] = MappingProxyType(
    {
        TellOpenRow: tell_open_row,
        TellOpenAhead: _ahead,
        TellSettled: _settled,
        TellSoFar: _so_far,
        SettleRow: _nothing,
    }
)
