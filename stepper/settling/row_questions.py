"""Ask about one row of the pattern that is not read, or does not fit, and put the answer into the file."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
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
from stepper.project.page.left_words import Shortened, shorten
from stepper.project.page.proposals import Kept, Proposal, propose
from stepper.project.page.same_lines import SamePart, find_same
from stepper.project.reading.own_words import find_depended_on, find_own_row, words_refused
from stepper.settling.file_in_hand import FileInHand
from stepper.settling.number_questions import CountAnswer, NumberQuestions, RowNumbers
from stepper.settling.prompting import (
    BackAsked,
    ask,
    ask_right,
    ask_yes,
    read_line,
    turn_away,
)
from stepper.settling.same_part import ask_part, rows_again, say_part, tell_part
from stepper.sitting.folding import print_folded

HELP: Final = (
    "12 rows, 84 sts: to be knitted by these words, and what there is after them; 84 sts, or 12 rows, if the "
    "other is right in brackets; until 12 cm, 84 sts; same, +4 or -4 for the stitches; rows: to be asked",
    "note: only said at its place; nothing is knitted for it",
    "out: not for you, or said already; it stays in the file as a comment",
    "cast on 38, pick up 31, hold 12 for thumb, bind off: what comes or goes by these words",
    "old words => new words, or first words ... last => new: the row is read with this change",
    "type: write the row anew",
    "again: lines of another part once more; again right mitten 9-20",
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
    "again": Kept.AGAIN,
    "a": Kept.AGAIN,
}
_SHORT: Final = {Kept.OUT: "out"}
_IN_FRONT: Final = "stands in front of the pattern"
"""What the mark says of text between a stitch pattern and the first part: mostly remarks."""
_SHOWN: Final = 40
"""Letters of the page's words that are shown of a row that is written; of words twice as long."""
_MOST_SHOWN: Final = 4
"""Most rows that are shown as they were written; of more, the first two and the last."""
_WHAT: Final = "What is it?"
_MOVED: Final = re.compile(
    r"(?P<verb>cast on|pick up|hold)\s+(?P<moved>\d.*)|(?P<again>again)\s+(?P<part>.+)", re.I
)


@dataclass(frozen=True, slots=True, kw_only=True)
class RowAsked:
    """What is known of a row before she answers."""

    left: LeftOpen
    so_far: SoFar
    proposal: Proposal
    refused: str = ""
    """Why its words cannot be kept as rows, as a sentence; empty if they can."""
    shortened: Shortened | None = None
    """The row without words that change nothing, if it is read so."""
    same: SamePart | None = None
    """The part that it works once more; None if its words refer to none."""

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
    if is_remark(left):
        proposal = replace(proposal, kept=Kept.NOTE)
    refused = _why_refused(left.text) if proposal.kept is Kept.ROWS else ""
    if refused:
        proposal = replace(proposal, kept=Kept.ANEW)
    open_row = left.kind is LeftKind.ROW and not is_remark(left)
    shortened = shorten(left.text) if open_row else None
    same = find_same(left.text, text, left.first) if open_row else None
    return RowAsked(
        left=left, so_far=so_far, proposal=proposal, refused=refused, shortened=shortened, same=same
    )


def is_remark(left: LeftOpen) -> bool:
    """Return whether an open row is likely only said, wherever it stands."""
    if left.kind is not LeftKind.ROW:
        return False
    proposal = propose(left.text)
    return proposal.kept is Kept.NOTE or (_IN_FRONT in left.why and not proposal.numbered)


def _why_refused(words: str) -> str:
    """Return why words cannot be kept as rows, whatever their count; empty if they can, together or one by
    one."""
    depended = find_depended_on(words)
    if depended and depended.keys() <= _ROW_BY_ROW:
        return ""
    own = find_own_row(f"Own words: {words} 1 sts.")
    refused = words_refused(own) if own is not None else None
    return f"As it stands it cannot be kept: {refused[2]}" if refused is not None else ""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Reply:
    """What she answers to what a row is; what it leaves open is asked for."""

    kept: Kept
    numbers: RowNumbers | None = None
    moved: str = ""
    """What comes or goes, as it is written in the file."""
    count: str | None = None
    """The stitches after a row in which some go on hold; empty for the rest of them."""
    below: bool = False
    """Whether it is for all that is open below it, too."""
    part: SamePart | None = None
    """The part that comes once more."""
    without: bool = False
    """Whether it is read without the words that change nothing."""
    change: str = ""
    """Words of the row and what is to stand in their place, as typed."""


def ask_row(asked: RowAsked, file: FileInHand) -> str:
    """Ask about a row until the answer is read, and return the text of the file with it.

    Args:
        asked: The row, and what is proposed.
        file: The file; kept for one size if a number is for that alone.

    Raises:
        LaterAsked: It is left open; `BackAsked` and `StopAsked` likewise.
    """
    words = asked.left.text
    without = _without(asked, file)
    if without and asked.shortened is not None:
        print_folded([f'  It is read without "{asked.shortened.left}", which is said with it.'])
    elif asked.same is not None:
        tell_part(asked.same)
    elif asked.refused:
        print_folded([f"  {asked.refused}"])
    while True:
        numbers = NumberQuestions(
            proposal=asked.proposal,
            before=asked.so_far.stitches,
            file=file,
            words=asked.left.text,
            flat=asked.so_far.flat,
        )
        reply = _ask_kind(asked, numbers, without)
        kept = reply.kept
        if reply.without:
            return _first_read((without,), asked.left, file)
        if reply.below:
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
            if kept is Kept.AGAIN:
                part = reply.part or ask_part(asked.same, reply.moved, asked.left, file)
                more = _type("") if asked.same is not None and not asked.same.plain else ()
                made = ((*rows_again(part, asked.left, file), *more),) if part is not None else ()
            elif kept is Kept.ANEW:
                made = (_type(words, reply.change),)
                words = made[0][0] if len(made[0]) == 1 else words
            else:
                made = _keep(reply, asked, numbers)
                if made:
                    file.settle_sizes(numbers.typed)
        except BackAsked:  # to what it is, not yet to the answer before
            file.text, file.alone = before, alone
            continue
        text = _first_read(made, asked.left, file)
        if text:
            return text


def _without(asked: RowAsked, file: FileInHand) -> tuple[str, ...]:
    """Return the rows without the words that change nothing, which are a note; none if that is not read."""
    if asked.shortened is None:
        return ()
    rows = (f"Note: … {asked.shortened.left}", asked.shortened.text)
    at = _place_of(asked.left, file.text)
    text = put_rows(file.text, at, at + asked.left.last - asked.left.first, rows)
    return rows if not file.problems_with(text, at, len(rows)) else ()


def _ask_kind(asked: RowAsked, numbers: NumberQuestions, without: Sequence[str]) -> _Reply:
    """Ask what a row is, with all its numbers where the page says them."""
    proposed, default = _propose(asked, numbers)
    if without:
        proposed, default = _Reply(kept=Kept.ANEW, without=True), "read without that"
    elif asked.same is not None:
        same = asked.same if asked.same.plain else None
        proposed, default = _Reply(kept=Kept.AGAIN, part=same), say_part(asked.same)
    while True:
        answer = ask(_WHAT, default)
        if answer == default and proposed is not None:
            return proposed
        if "=>" in answer:
            return _Reply(kept=Kept.ANEW, change=answer)
        word = answer.lower()
        plain = word.removesuffix(" all")
        if plain in _ANSWERS and (plain == word or _ANSWERS[plain] in (Kept.NOTE, Kept.OUT)):
            return _Reply(kept=_ANSWERS[plain], below=plain != word)
        moved = _MOVED.fullmatch(answer)
        if moved is not None:
            verb, said = moved["verb"] or moved["again"], moved["moved"] or moved["part"]
            return _Reply(kept=_ANSWERS[verb.lower()], moved=said)
        found = numbers.read(answer)
        if isinstance(found, RowNumbers):
            told = numbers.trouble_with(found)
            if not told:
                return _Reply(kept=Kept.ROWS, numbers=found)
            print_folded([told])
        elif found is not None:
            print_folded([found])
        else:
            told = "Answer rows, note, out or another, or 12 rows, 84 sts; ? tells them all."
            print_folded(HELP if answer in ("?", "help") else [told])


def _propose(asked: RowAsked, numbers: NumberQuestions) -> tuple[_Reply | None, str]:
    """Return what Enter takes, and how it stands in brackets; None where that is one of the short answers."""
    kept = asked.proposal.kept
    if asked.left.kind is LeftKind.LINE:
        return None, "later"
    if kept is Kept.ROWS and asked.defines:
        return _Reply(kept=kept), "by its words"
    if kept is Kept.ROWS:
        found = numbers.propose()
        whole = not numbers.trouble_with(found)
        return (_Reply(kept=kept, numbers=found), numbers.say(found)) if whole else (None, "rows")
    moved = numbers.moved_proposed()
    if kept in (Kept.CAST_ON, Kept.PICK_UP) and moved:
        return _Reply(kept=kept, moved=moved), f"{kept.value} {moved} sts"
    if kept is Kept.HOLD and moved:
        printed = numbers.propose().count
        count = printed.text if printed is not None else ""
        then = count or "the rest"
        then += " sts as printed" if then[-1].isdigit() or then.endswith(")") else ""
        return _Reply(kept=kept, moved=moved, count=count), f"hold {moved}, then {then}"
    if kept is Kept.BIND_OFF:
        return _Reply(kept=kept), "bind off all sts"
    return None, _SHORT.get(kept, kept.value)


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
    found = re.search(r".*?".join(map(re.escape, ends)), words)
    return found[0] if found is not None else ""


def _keep(reply: _Reply, asked: RowAsked, numbers: NumberQuestions) -> Sequence[tuple[str, ...]]:
    """Ask what the program has to know of a row that is kept so, and is not answered yet.

    Returns:
        The rows that may be written, the best form first; none if no form fits what she answers.
    """
    kept, words, numbered = reply.kept, asked.left.text, asked.proposal.numbered
    if kept in (Kept.NOTE, Kept.OUT, Kept.BIND_OFF):
        return _each_alone(write_kept(words, kept))
    if kept in (Kept.CAST_ON, Kept.PICK_UP):
        verb = "cast on" if kept is Kept.CAST_ON else "picked up"
        return _each_alone(write_kept(words, kept, moved=numbers.ask_moved(verb, reply.moved)))
    if kept is Kept.HOLD:
        moved = numbers.ask_held(reply.moved)
        count = numbers.ask_count() if reply.count is None else reply.count
        return _each_alone(write_kept(words, kept, moved=moved, count=count))
    if asked.defines and reply.numbers is None:
        found: RowNumbers | None = RowNumbers(rows=asked.proposal.rows, count=CountAnswer())
    elif reply.numbers is not None:
        found = numbers.complete(reply.numbers)
    else:
        found = numbers.ask_numbers()
    if found is None or found.count is None:
        return ()
    rows, count_text = found.rows, found.count.text
    depended = find_depended_on(words)
    if depended:
        counts = numbers.row_by_row(found)
        return (write_each(words, counts),) if counts and _may_be_rows(words, depended, asked) else ()
    if found.count.each:
        return (write_each(words, tuple(map(str, found.count.each))),)
    by_number = write_numbered(words, count_text) if numbered and rows == asked.proposal.rows else ()
    plain = write_kept(words, kept, rows=rows, count=count_text, flat=asked.so_far.flat)
    return _each_alone((*by_number, *plain))


_OFF: Final = re.compile(r"\b(?:(?:bind|cast)(?:ing)?[\s-]+off|bound[\s-]+off|BO)\b[^.;]*", re.I)
_AT_EDGE: Final = re.compile(
    r"\bat\s+(?:the\s+)?(?:beg|start\b|(?:each|both|either)\s+(?:end|side)|(?:[a-z]+\s+)?edges?\b)", re.I
)
_ROW_BY_ROW: Final = {"go", "at once"}
"""What rows may say that are kept one by one, each with its count."""


def _may_be_rows(words: str, depended: Mapping[str, str], asked: RowAsked) -> bool:
    """Return whether words that later rows depend on may be kept as rows, each with its count; tell why not.

    Stitches bound off at an edge leave whole rows; where the page does not say that they are, she is asked.
    """
    no = [why for kind, why in depended.items() if kind not in _ROW_BY_ROW]
    if not no and asked.so_far.flat is False and "go" in depended:
        no = [depended["go"]]  # a round has no edge
    at_edge = all(_AT_EDGE.search(found) for found in _OFF.findall(words))
    if not no and not at_edge and not ask_yes("Are all stitches bound off at an edge of the piece?", ""):
        no = [depended["go"]]
    how = "Type it so that it is read, or say later."
    print_folded([f"It cannot be kept as rows: {why} {how}" for why in no[:1]])
    return not no


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
            print_folded([f"Written: {_shortened(row, left.text)}" for row in shown])
            return text
        told = [f"{each.message} {each.hint}".strip() for each in problems]
    print_folded([f"That is not read: {each}" for each in told[:2]])
    return ""


def _shortened(row: str, words: str) -> str:
    """Return a row as it is shown: of words of the page, which she has just read, the first few."""
    plain = " ".join(words.split())
    stem = plain[_SHOWN:].rstrip(".")
    return row.replace(stem, " …", 1) if len(plain) > 2 * _SHOWN and stem in row else row


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
