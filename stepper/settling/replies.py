"""Ask what an open row is, in one question: what Enter takes, what may be answered, and what that means."""

from __future__ import annotations

import re
from typing import Final

from stepper.project.page.unread.doubts import is_measured
from stepper.project.page.unread.left_open import LeftKind
from stepper.project.page.unread.proposals import Kept
from stepper.project.page.unread.same_lines import SamePart
from stepper.project.sizes import begun_by_size
from stepper.records import dataclass
from stepper.regex import regex
from stepper.session.open_row.by_parts import not_wanted
from stepper.settling.coming import COMES, wanted_in
from stepper.settling.number_questions import NumberQuestions, RowNumbers
from stepper.settling.prompting import ask
from stepper.settling.rows_asked import RowAsked
from stepper.settling.same_part import say_part
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
    "parts: it turns, binds off or puts stitches on hold: be asked of its stitches, one after the other",
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
    "parts": Kept.PARTS,
    "again": Kept.AGAIN,
    "a": Kept.AGAIN,
}
_SHORT: Final = {Kept.OUT: "out"}
_OFF: Final = "bind off all sts"
_BEGINS: Final = regex(r"\b(?:start|begin|join)", re.I)
_HERS: Final = "in your own words"
"""Told of a line that would have to know the stitches of a row in own words; it may be kept so too."""
_BRINGS: Final = regex(r"\bcast\s+(?:on|up)\b|\bCO\b|\b(?:pick|take)\s+(?:\w+\s+)?up\b", re.I)
"""An order by which stitches come onto the needles."""
_TO_LENGTH: Final = regex(r"\b(?:until|till|as\s+long\s+as|same\s+length)\b", re.I)
"""Words by which another part may only be measured against."""
_WHAT: Final = "What is it?"
_MOVED: Final = regex(
    r"(?P<verb>cast on|pick up|hold)\s+(?P<moved>\d.*)|(?P<again>again)\s+(?P<part>.+)", re.I
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Reply:
    """What she answers to what a row is; what it leaves open is asked for."""

    kept: Kept
    numbers: RowNumbers | None = None
    moved: str = ""
    """What comes or goes, as it is written in the file."""
    count: str | None = None
    """The stitches after a row in which some go on hold; empty for the rest of them."""
    below: bool = False
    """Whether it is for all that is open below it, too."""
    kinds: tuple[Kept, ...] = ()
    """What each of its sentences is, if they are settled together."""
    part: SamePart | None = None
    """The part that comes once more."""
    change: str = ""
    """Words of the row and what is to stand in their place, as typed."""


def ask_kind(
    asked: RowAsked, numbers: NumberQuestions, said: str = "", *, by_parts: bool = False
) -> Reply:
    """Ask what a row is, with all its numbers where the page says them.

    Args:
        asked: The row.
        numbers: The questions about its numbers.
        said: What she answered already; empty if nothing.
        by_parts: Whether it can be asked of its stitches, which is proposed where nothing better is.
    """
    proposed, default = propose_reply(asked, numbers)
    hers = asked.left.kind is LeftKind.ROW and not asked.defines
    if by_parts and hers and asked.proposal.kept in (Kept.ROWS, Kept.ANEW) and _speaks_of_parts(asked):
        proposed, default = Reply(kept=Kept.PARTS), Kept.PARTS.value
    if asked.same is not None and _is_again(asked, asked.same):
        same = asked.same if asked.same.plain else None
        proposed, default = Reply(kept=Kept.AGAIN, part=same), say_part(asked.same)
    while True:
        answer, said = said or ask(_WHAT, default), ""
        if answer == default and proposed is not None:
            return proposed
        if "=>" in answer:
            return Reply(kept=Kept.ANEW, change=answer)
        word = answer.lower()
        plain = word.removesuffix(" all")
        if plain in _ANSWERS and (plain == word or _ANSWERS[plain] in (Kept.NOTE, Kept.OUT)):
            return Reply(kept=_ANSWERS[plain], below=plain != word)
        moved = _MOVED.fullmatch(answer)
        if moved is not None:
            verb, said = moved["verb"] or moved["again"], moved["moved"] or moved["part"]
            wanted = wanted_in(asked.left.text) if verb.lower() == "pick up" and said.isdigit() else None
            if wanted is not None and not wanted.takes(int(said)):
                print_folded([not_wanted(int(said), wanted)])
                said = ""
                continue
            return Reply(kept=_ANSWERS[verb.lower()], moved=said)
        found = numbers.read(answer)
        if isinstance(found, RowNumbers):
            told = numbers.trouble_with(found)
            if not told:
                return Reply(kept=Kept.ROWS, numbers=found)
            print_folded([told])
        elif found is not None:
            print_folded([found])
        else:
            told = "Answer rows, note, out or another, or 12 rows, 84 sts; ? tells them all."
            print_folded(HELP if answer in ("?", "help") else [told])


def _speaks_of_parts(asked: RowAsked) -> bool:
    """Return whether a row is to be asked of its stitches: of a remark on empty needles none come."""
    comes = _BRINGS if asked.proposal.doubtful else COMES  # "they are not picked up later"
    return asked.so_far.stitches != 0 or comes.search(asked.left.text) is not None


def _is_again(asked: RowAsked, same: SamePart) -> bool:
    """Return whether a row surely works another part once more, rather than only speak of it."""
    speaks = asked.proposal.kept is Kept.NOTE or _TO_LENGTH.search(asked.left.text) is not None
    return same.plain or not (speaks or is_measured(asked.left.text))


def propose_reply(asked: RowAsked, numbers: NumberQuestions) -> tuple[Reply | None, str]:
    """Return what Enter takes, and how it stands in brackets; None where that is one of the short answers.

    Where the row may be of another kind nothing stands there: Enter then takes nothing.
    """
    kept = asked.proposal.kept
    head = asked.left.text.partition(":")[0].removeprefix("Note: ")
    of_size = begun_by_size(head, numbers.file.sizes)
    if of_size not in ("", numbers.file.size) and asked.left.kind is LeftKind.ROW:
        # Where another size begins, hers may have begun above, and works that row too.
        return (None, "later") if _BEGINS.search(head) else (Reply(kept=Kept.OUT), _SHORT[Kept.OUT])
    if asked.left.kind is LeftKind.LINE:
        found = numbers.propose()
        sure = not asked.refused and not asked.own and not asked.proposal.doubtful
        goes_on = _HERS in asked.left.why and kept is Kept.ROWS and sure
        if goes_on and numbers.is_whole(found):
            return Reply(kept=kept, numbers=found), numbers.say(found)
        return None, "later"
    if asked.proposal.doubtful or asked.on_other_side or asked.turns_ring:
        return None, ""
    if kept is Kept.ROWS and asked.defines:
        return Reply(kept=kept), "by its words"
    if kept is Kept.ROWS:
        found = numbers.propose()
        whole = not numbers.trouble_with(found)
        return (Reply(kept=kept, numbers=found), numbers.say(found)) if whole else (None, "rows")
    moved = numbers.moved_proposed()
    if kept in (Kept.CAST_ON, Kept.PICK_UP) and moved:
        return Reply(kept=kept, moved=moved), f"{kept.value} {moved} sts"
    if kept is Kept.HOLD and moved:
        printed = numbers.propose().count
        count = printed.text if printed is not None else None
        then = "how many sts" if count is None else count or "the rest"
        then += " sts as printed" if then[-1].isdigit() or then.endswith(")") else ""
        return Reply(kept=kept, moved=moved, count=count), f"hold {moved}, then {then}"
    if kept is Kept.BIND_OFF:
        return Reply(kept=kept), _OFF
    kinds = asked.sentence_kinds if kept is Kept.SPLIT else ()
    if kinds and set(kinds) <= {Kept.NOTE, Kept.BIND_OFF} and kinds.count(Kept.BIND_OFF) == 1:
        said = ", then ".join(_OFF if kind is Kept.BIND_OFF else "a note" for kind in kinds)
        return Reply(kept=kept, kinds=kinds), said
    return None, _SHORT.get(kept, kept.value)
