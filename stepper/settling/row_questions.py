"""Ask about one row of the pattern that is not read, or does not fit, and put the answer into the file."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Final

from stepper.project.page.unread.doubts import may_be_worked
from stepper.project.page.unread.kept_rows import (
    marked_rows,
    put_rows,
    split_sentences,
    take_mark_off,
    write_each,
    write_kept,
)
from stepper.project.page.unread.left_open import LeftKind, LeftOpen, find_left_open, lines_below
from stepper.project.page.unread.proposals import Kept
from stepper.project.reading.own_words import find_depended_on
from stepper.settling.by_count import fabric_ordered
from stepper.settling.file_in_hand import FileInHand
from stepper.settling.mend_questions import ask_mended, find_fitting
from stepper.settling.number_questions import NumberQuestions
from stepper.settling.part_questions import ask_stitches, row_by_parts
from stepper.settling.prompting import BackAsked, ask_right, ask_yes, read_line, turn_away
from stepper.settling.replies import Reply, ask_kind
from stepper.settling.rows_asked import ROW_BY_ROW, RowAsked, bound_off_at_edge
from stepper.settling.same_part import ask_part, rows_again, tell_part
from stepper.settling.written_rows import forms_of, write_first_read
from stepper.sitting.folding import print_folded

_SHOWN: Final = 40
"""Letters of the page's words that are shown of a row that is written; of words twice as long."""
_SHORTEST: Final = 2
"""Most letters that have to be typed as they are printed: a yarn is called by one."""
_MOST_SHOWN: Final = 4
"""Most rows that are shown as they were written; of more, the first two and the last."""


def ask_row(asked: RowAsked, file: FileInHand) -> str:
    """Ask about a row until the answer is read, and return the text of the file with it.

    Args:
        asked: The row, and what is proposed.
        file: The file; kept for one size if a number is for that alone.

    Raises:
        LaterAsked: It is left open; `BackAsked` and `StopAsked` likewise.
    """
    offers = find_fitting(asked, file)
    while True:
        mended, said = ask_mended(asked, file, offers)
        if mended:
            return mended
        try:
            return _ask_open(asked, file, said)
        except BackAsked:  # to the offer, which she has answered last
            if not offers:
                raise


def _ask_open(asked: RowAsked, file: FileInHand, said: str) -> str:
    """Ask what a row is that is taken with no change, and return the text of the file with it.

    Args:
        asked: The row.
        file: The file.
        said: What she answered already; empty if nothing.
    """
    if asked.same is not None:
        tell_part(asked.same)
    elif asked.refused:
        print_folded([f"  {asked.refused}"])
    words, by_parts = asked.left.text, row_by_parts(asked) is not None
    while True:
        numbers = NumberQuestions(
            proposal=asked.proposal,
            before=asked.so_far.stitches,
            file=file,
            words=asked.left.text,
            flat=asked.so_far.flat,
        )
        reply = ask_kind(asked, numbers, said, by_parts=by_parts)
        said = ""
        before, alone = file.text, file.alone
        if reply.below:
            return _all_below(asked.left, file, Kept.NOTE if reply.kept is Kept.NOTE else Kept.OUT)
        if reply.kept is Kept.SPLIT and not reply.kinds:
            text = _split(asked.left, file)
        else:
            try:
                made = _made(reply, asked, numbers, words)
            except BackAsked:  # to what it is, not yet to the answer before
                file.text, file.alone = before, alone
                continue
            if reply.kept is Kept.ANEW and made and len(made[0]) == 1:
                words = made[0][0]  # what is changed next is what she wrote
            text = _first_read(made, asked.left, file)
        if text:
            return text


def _split(left: LeftOpen, file: FileInHand) -> str:
    """Return the text with the sentences of a row under a mark each; empty, told, if it is one sentence."""
    sentences = split_sentences(left.text)
    if len(sentences) < 2:
        print_folded(["It is one sentence."])
        return ""
    return put_rows(file.text, left.first, left.last, marked_rows(sentences, left.where, ""))


def _made(
    reply: Reply, asked: RowAsked, numbers: NumberQuestions, words: str
) -> Sequence[tuple[str, ...]]:
    """Return the rows that an answer comes to, the best form first, with what it leaves open asked for.

    Args:
        reply: The answer.
        asked: The row.
        numbers: The questions about its numbers.
        words: Its words, as they are changed by now.
    """
    file = numbers.file
    if reply.kept is Kept.SPLIT:
        kinds = zip(split_sentences(asked.left.text), reply.kinds, strict=True)
        return (tuple(row for one, kind in kinds for row in write_kept(one, kind)),)
    if reply.kept is Kept.AGAIN:
        part = reply.part or ask_part(asked.same, reply.moved, asked.left, file)
        rows = rows_again(part, asked.left, file) if part is not None else ()
        if not rows:
            return ()
        return ((*rows, *(_type("") if asked.same is not None and not asked.same.plain else ())),)
    if reply.kept is Kept.PARTS:
        row = row_by_parts(asked)
        if row is None:
            print_folded(["Nothing is known of its stitches, or its count is enough."])
            return ()
        return ask_stitches(asked, row, file)
    if reply.kept is Kept.ANEW:
        old = reply.change.partition("=>")[0].strip()
        stands = not old or _find_stretch(old, words)
        return (_type(words if stands else asked.left.text, reply.change),)
    fabric = fabric_ordered(asked.left.text) if reply.kept in (Kept.NOTE, Kept.OUT) else ""
    if fabric:
        print_folded([f"Its words order {fabric}; the rows behind it would go on as before."])
        if not ask_yes("Keep it so all the same?", "no"):
            return ()
    made = _keep(reply, asked, numbers)
    if made:
        file.settle_sizes(numbers.typed)
    return made


def _all_below(left: LeftOpen, file: FileInHand, kept: Kept) -> str:
    """Keep as notes or as comments a row and all that are open below it in its part; of a line that does not
    fit, all lines below it, since they hang on it."""
    text = file.text
    below = [
        each
        for each in find_left_open(text)
        if each.kind is LeftKind.ROW and each.part == left.part and each.first >= left.first
    ]
    if left.kind is LeftKind.LINE:
        below += lines_below(text, left)
    for each in sorted(below, key=lambda one: one.first, reverse=True):
        text = put_rows(text, each.first, each.last, write_kept(each.text, kept))
    print_folded([f"{len(below)} {'row is' if len(below) == 1 else 'rows are'} kept so."])
    return text


def _type(words: str, change: str = "") -> tuple[str, ...]:
    """Ask for rows in her words, until an empty line.

    Args:
        words: The row as it stands.
        change: What is to be changed in it, if that is said already; then nothing else is asked.
    """
    if change:
        changed = _changed(words, change)
        return (changed,) if changed else ()
    told = "Write it as it is to be read, one row on a line; an empty line ends."
    print_folded([words, told] if words else [f"What comes behind these lines? {told}"])
    rows: list[str] = []
    while True:
        line = " ".join(read_line("> ").split())
        turn_away(line)
        if not line:
            return tuple(rows)
        changed = _changed(words, line) if "=>" in line else ""
        if changed:
            words = changed
            rows = [words]
            print_folded([words])
        elif "=>" not in line:
            rows.append(line)


def _changed(words: str, change: str) -> str:
    """Return words with what an answer changes in them, `old => new`; empty, told, if that is not there."""
    old, _, new = (each.strip() for each in change.partition("=>"))
    stretch = _find_stretch(old, words)
    if not stretch:
        print_folded([f'"{old}" does not stand in it.'])
        return ""
    return re.sub(r"\s+(?=[,.;:)])", "", " ".join(words.replace(stretch, new, 1).split()))


def _find_stretch(old: str, words: str) -> str:
    """Return the stretch of some words that is called by its own or by its ends: "or until ... palm"."""
    ends = [each.strip() for each in re.split(r"\.\.\.|…", old)]
    if not all(ends):
        return ""
    stretch = r".*?".join(map(re.escape, ends))
    loose = re.I if min(map(len, ends)) > _SHORTEST else re.NOFLAG
    found = re.search(stretch, words) or re.search(stretch, words, loose)
    return found[0] if found is not None else ""


def _keep(reply: Reply, asked: RowAsked, numbers: NumberQuestions) -> Sequence[tuple[str, ...]]:
    """Ask what the program has to know of a row that is kept so, and is not answered yet.

    Returns:
        The rows that may be written, the best form first; none if no form fits what she answers.
    """
    kept, words = reply.kept, asked.left.text
    if kept in (Kept.CAST_ON, Kept.PICK_UP):
        verb = "cast on" if kept is Kept.CAST_ON else "picked up"
        reply = replace(reply, moved=numbers.ask_moved(verb, reply.moved))
    elif kept is Kept.HOLD:
        moved = numbers.ask_held(reply.moved)
        reply = replace(reply, moved=moved, count=numbers.ask_rest() if reply.count is None else reply.count)
    elif kept is Kept.ROWS and not (asked.defines and reply.numbers is None):
        found = numbers.ask_numbers() if reply.numbers is None else numbers.complete(reply.numbers)
        depended = find_depended_on(words)
        if found is None or found.count is None:
            return ()
        if depended:
            counts = numbers.row_by_row(found)
            return (write_each(words, counts),) if counts and _may_be_rows(words, depended, asked) else ()
        reply = replace(reply, numbers=found)
    return forms_of(reply, asked)


def _may_be_rows(words: str, depended: Mapping[str, str], asked: RowAsked) -> bool:
    """Return whether words that later rows depend on may be kept as rows, each with its count; tell why not.

    Stitches bound off at an edge leave whole rows; where the page does not say that they are, she is asked.
    """
    no = [why for kind, why in depended.items() if kind not in ROW_BY_ROW]
    if not no and asked.so_far.flat is False and "go" in depended:
        no = [depended["go"]]  # a round has no edge
    asks = not no and not bound_off_at_edge(words)
    if asks and not ask_yes("Are all stitches bound off at an edge of the piece?", ""):
        no = [depended["go"]]
    how = "Answer parts, type it so that it is read, or say later."
    print_folded([f"It cannot be kept as rows: {why} {how}" for why in no[:1]])
    return not no


def _first_read(made: Sequence[Sequence[str]], left: LeftOpen, file: FileInHand) -> str:
    """Return the text with the first form that is read; empty, with what is wrong told, if none is."""
    written = write_first_read(made, left, file)
    if written.text:
        rows = written.settled
        shown = rows if len(rows) <= _MOST_SHOWN else (*rows[:2], "…", rows[-1])
        print_folded([f"Written: {_shortened(row, left.text)}" for row in shown])
        if len(rows) < len(written.rows):
            print_folded(["Its words say more: what is knitted behind that is asked next."])
    print_folded([f"That is not read: {each}" for each in written.trouble[:2]])
    return written.text


def _shortened(row: str, words: str) -> str:
    """Return a row as it is shown: of words of the page, which she has just read, the first few."""
    plain = " ".join(words.split())
    stem = plain[_SHOWN:].rstrip(".")
    return row.replace(stem, " …", 1) if len(row) > 2 * _SHOWN < len(plain) and stem in row else row


def ask_front(left: LeftOpen, file: FileInHand) -> str:
    """Ask about text in front of the pattern; return the text of the file.

    Raises:
        LaterAsked: It is left open; `BackAsked` and `StopAsked` likewise.
    """
    print_folded(["It stands in front of the pattern, so it is never knitted from there."])
    worked = may_be_worked(left.text)
    if worked:
        print_folded(["It may be knitted: then leave it open, and write it in the file where it is worked."])
    ask_right("Keep it as a comment?", "" if worked else "yes")
    return take_mark_off(file.text, left.first)
