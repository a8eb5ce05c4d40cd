"""Ask about one row of the pattern that is not read, or does not fit, and put the answer into the file."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final

from stepper.plan.so_far import SoFar, find_so_far
from stepper.project.page.kept_rows import (
    marked_rows,
    put_rows,
    split_sentences,
    take_mark_off,
    write_each,
    write_kept,
    write_numbered,
)
from stepper.project.page.left_open import LeftKind, LeftOpen, find_left_open, lines_below
from stepper.project.page.proposals import Kept, Proposal, propose
from stepper.project.reading.own_words import find_own_row, words_refused
from stepper.settling.file_in_hand import FileInHand
from stepper.settling.number_questions import CountAnswer, NumberQuestions
from stepper.settling.prompting import BackAsked, ask, ask_right, read_line, turn_away
from stepper.sitting.folding import print_folded

HELP: Final = (
    "rows: to be knitted by these words; you are asked how many rows and how many stitches after them",
    "note: only said at its place; nothing is knitted for it",
    "out: not for you, or said already; it stays in the file as a comment",
    "cast on, pick up, hold, bind off: what comes or goes by these words",
    "type: write the row anew, or some words of it: old words => new words, or first words ... last => new",
    "split: ask about each of its sentences",
    "later: leave it open; back: the answer before again; stop: end here, what is answered stays",
    "note all, out all: this and all that is open below it in its part (all lines, if it does not fit)",
    "The first letter of each will do.",
)
"""What can be answered, each with what it does."""

_ANSWERS: Final = {
    "rows": Kept.ROWS,
    "r": Kept.ROWS,
    "note": Kept.NOTE,
    "n": Kept.NOTE,
    "out": Kept.OUT,
    "o": Kept.OUT,
    "leave out": Kept.OUT,
    "cast on": Kept.CAST_ON,
    "c": Kept.CAST_ON,
    "pick up": Kept.PICK_UP,
    "p": Kept.PICK_UP,
    "hold": Kept.HOLD,
    "h": Kept.HOLD,
    "bind off": Kept.BIND_OFF,
    "cast off": Kept.BIND_OFF,
    "b": Kept.BIND_OFF,
    "type": Kept.ANEW,
    "t": Kept.ANEW,
    "split": Kept.SPLIT,
    "s": Kept.SPLIT,
}
_SHORT: Final = {Kept.OUT: "out"}
_IN_FRONT: Final = "stands in front of the pattern"
"""What the mark says of text between a stitch pattern and the first part: mostly remarks."""
_MOST_SHOWN: Final = 4
"""Most rows that are shown as they were written; of more, the first two and the last."""
_WHAT: Final = "What is it: rows, note, out, or ? for more"


@dataclass(frozen=True, slots=True, kw_only=True)
class RowAsked:
    """What is known of a row before she answers."""

    left: LeftOpen
    so_far: SoFar
    proposal: Proposal
    refused: str = ""
    """Why its words cannot be kept as rows, as a sentence; empty if they can."""

    @property
    def defines(self) -> bool:
        """Whether it is a numbered row where nothing is on the needles: one of a stitch pattern."""
        return self.so_far.stitches == 0 and self.proposal.numbered


def look_at(left: LeftOpen, text: str) -> RowAsked:
    """Find what can be proposed for a row.

    Args:
        left: The row.
        text: The whole file.
    """
    rows = text.split("\n")
    above = any(
        each.kind is LeftKind.ROW and each.part == left.part and each.first < left.first
        for each in find_left_open(text)
    )
    so_far = find_so_far(text, left.first, left.last)
    if above:  # what is still open above it may change the number
        so_far = SoFar(stitches=None, flat=so_far.flat)
    behind = rows[left.last].strip() if left.last < len(rows) else ""
    proposal = propose(left.text, empty=so_far.stitches == 0, behind=behind)
    if _IN_FRONT in left.why and not proposal.numbered:
        proposal = replace(proposal, kept=Kept.NOTE)
    refused = _why_refused(left.text) if proposal.kept is Kept.ROWS else ""
    if refused:
        proposal = replace(proposal, kept=Kept.ANEW)
    return RowAsked(left=left, so_far=so_far, proposal=proposal, refused=refused)


def _why_refused(words: str) -> str:
    """Return why words cannot be kept as rows, whatever their count; empty if they can."""
    own = find_own_row(f"Own words: {words} 1 sts.")
    refused = words_refused(own) if own is not None else None
    return f"As it stands it cannot be kept: {refused[2]}" if refused is not None else ""


def ask_row(asked: RowAsked, file: FileInHand) -> str:
    """Ask about a row until the answer is read, and return the text of the file with it.

    Args:
        asked: The row, and what is proposed.
        file: The file; kept for one size if a number is for that alone.

    Raises:
        LaterAsked: It is left open; `BackAsked` and `StopAsked` likewise.
    """
    words = asked.left.text
    print_folded([f"  {asked.refused}"] if asked.refused else [])
    while True:
        answer = _ask_kind(asked)
        kept = _ANSWERS[answer.removesuffix(" all")]
        if answer.endswith(" all"):
            return _all_below(asked.left, file, Kept.NOTE if kept is Kept.NOTE else Kept.OUT)
        if kept is Kept.SPLIT:
            sentences = split_sentences(asked.left.text)
            if len(sentences) < 2:
                print_folded(["It is one sentence."])
                continue
            rows = marked_rows(sentences, asked.left.where, "")
            return put_rows(file.text, asked.left.first, asked.left.last, rows)
        before, alone = file.text, file.alone
        try:
            made: Sequence[tuple[str, ...]]
            if kept is Kept.ANEW:
                made = (_type(words),)
                words = made[0][0] if len(made[0]) == 1 else words
            else:
                numbers = NumberQuestions(proposal=asked.proposal, before=asked.so_far.stitches, file=file)
                made = _keep(kept, asked, numbers)
                file.settle_sizes(numbers.typed)
        except BackAsked:  # to what it is, not yet to the answer before
            file.text, file.alone = before, alone
            continue
        text = _first_read(made, asked.left, file)
        if text:
            return text


def _ask_kind(asked: RowAsked) -> str:
    proposed = asked.proposal.kept
    default = "later" if asked.left.kind is LeftKind.LINE else _SHORT.get(proposed, proposed.value)
    while True:
        answer = ask(_WHAT, default).lower()
        plain = answer.removesuffix(" all")
        if plain in _ANSWERS and (plain == answer or _ANSWERS[plain] in (Kept.NOTE, Kept.OUT)):
            return answer
        print_folded(
            HELP if answer in ("?", "help") else ["Answer rows, note, out or another; ? tells them all."]
        )


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


def _type(words: str) -> tuple[str, ...]:
    """Ask for rows in her words, until an empty line."""
    print_folded([words, "Write it as it is to be read, one row on a line; an empty line ends."])
    rows: list[str] = []
    while True:
        line = " ".join(read_line("> ").split())
        turn_away(line)
        if not line:
            return tuple(rows)
        old, arrow, new = (each.strip() for each in line.partition("=>"))
        stretch = _find_stretch(old, words)
        if not arrow:
            rows.append(line)
        elif stretch:
            words = re.sub(r"\s+(?=[,.;:)])", "", " ".join(words.replace(stretch, new, 1).split()))
            rows = [words]
            print_folded([words])
        else:
            print_folded([f'"{old}" does not stand in it.'])


def _find_stretch(old: str, words: str) -> str:
    """Return the stretch of some words that is called by its own or by its ends: "or until ... palm"."""
    ends = [each.strip() for each in re.split(r"\.\.\.|…", old)]
    if not all(ends):
        return ""
    found = re.search(r".*?".join(map(re.escape, ends)), words)
    return found[0] if found is not None else ""


def _keep(kept: Kept, asked: RowAsked, numbers: NumberQuestions) -> Sequence[tuple[str, ...]]:
    """Ask what the program has to know of a row that is kept so.

    Returns:
        The rows that may be written, the best form first; none if no form fits what she answers.
    """
    words, numbered = asked.left.text, asked.proposal.numbered
    if kept in (Kept.NOTE, Kept.OUT, Kept.BIND_OFF):
        return _each_alone(write_kept(words, kept))
    if kept in (Kept.CAST_ON, Kept.PICK_UP):
        verb = "cast on" if kept is Kept.CAST_ON else "picked up"
        return _each_alone(write_kept(words, kept, moved=numbers.ask_moved(verb)))
    if kept is Kept.HOLD:
        moved = numbers.ask_held()
        return _each_alone(write_kept(words, kept, moved=moved, count=numbers.ask_count("1").text))
    rows = asked.proposal.rows if numbered else numbers.ask_rows()
    count = CountAnswer() if asked.defines else numbers.ask_count(rows)
    if not count.each and numbers.changes(count.text) and rows != "1":
        count = numbers.ask_each(rows, count.text, words)
        if not count.each:
            return ()
    if count.each:
        return (write_each(words, count.each),)
    by_number = write_numbered(words, count.text) if numbered else ()
    plain = write_kept(words, kept, rows=rows, count=count.text, flat=asked.so_far.flat)
    return _each_alone((*by_number, *plain))


def _each_alone(forms: Sequence[str]) -> tuple[tuple[str, ...], ...]:
    return tuple((form,) for form in forms)


def _first_read(made: Sequence[tuple[str, ...]], left: LeftOpen, file: FileInHand) -> str:
    """Return the text with the first form that is read; empty, with what is wrong told, if none is."""
    told: list[str] = []
    at = _place_of(left, file.text)
    for rows in made:
        if not rows:
            continue
        text = put_rows(file.text, at, at + left.last - left.first, rows)
        problems = file.problems_with(text, at, len(rows))
        if not problems:
            shown = rows if len(rows) <= _MOST_SHOWN else (*rows[:2], "…", rows[-1])
            print_folded([f"Written: {row}" for row in shown])
            return text
        told = [f"{each.message} {each.hint}".strip() for each in problems]
    print_folded([f"That is not read: {each}" for each in told[:2]])
    return ""


def _place_of(left: LeftOpen, text: str) -> int:
    """Return the first row of what is asked about, which moves where the file was kept for one size."""
    rows = text.split("\n")
    for at in (left.first, left.first + 1):
        if left.kind is LeftKind.LINE:
            if at <= len(rows) and rows[at - 1].strip() == left.text:
                return at
        elif any(each.first == at and each.text == left.text for each in find_left_open(text)):
            return at
    return left.first


def ask_front(left: LeftOpen, file: FileInHand) -> str:
    """Ask about text in front of the pattern; return the text of the file.

    Raises:
        LaterAsked: It is left open; `BackAsked` and `StopAsked` likewise.
    """
    print_folded(["It stands in front of the pattern, so it is never knitted from there."])
    ask_right("Keep it as a comment?")
    return take_mark_off(file.text, left.first)
