"""Write what a line tells of stitches that are moved in the grammar's words, clause by clause. No I/O.

Common practice. What is put on something that holds it waits; which stitches they are is told by their place among
those of the row ("the next 26", "the last 42" are those the row has left, and held against them), by the part they are
of, or by what was just worked ("these": the row's own; behind a finished row all of them). What comes onto a needle
from a holder, or by the name of a part, comes back. Yarn joined to what remains takes it up, and stitches that the
same sentence puts on a holder before it are then the first of those. A clause one of whose words belongs to no phrase
stays as it is printed, as do stitches told by a place that nobody can find in the row.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import CUT_YARN, STS, N
from stepper.project.rewording.told.moves import Clause, split_clause
from stepper.project.rewording.told.moves_back import (
    CENTRE_OFF,
    MATCHES,
    write_across,
    write_gone_back,
    write_joined,
    write_returned,
    write_taken_up,
)
from stepper.project.rewording.told.moves_held import (
    UNDER_THE_ROW,
    WHOLE,
    Item,
    Words,
    is_hold,
    number_in,
    partial_before,
    side_in,
    write_held,
)
from stepper.regex import regex

_BEGINS: Final = regex(
    r"(?:now\s+)?(?:make|(?:knit|work)\s+(?:the|a|an|another|one)\b|(?:work|cont(?:inue)?|go\s+on)\s+(?:with|on)\b|complete)",
    re.IGNORECASE,
)
_CUTS: Final = regex(rf"{CUT_YARN}|leave\s+(?:a\s+)?long\s+(?:tail|end)", re.IGNORECASE)
"""What is done to the yarn, a sentence of its own before stitches that wait."""
_TELLS: Final = regex(
    r"\b(?:hold|holder|holders|rest|wait|thread|pins?|aside|spare|waste|scrap|unworked|held|set|yarn|wool|needles?|ndls?|dpns?|circulars?|work|cable|string|cotton|cord|another|third|sleeve)\b",
    re.IGNORECASE,
)
_STOP: Final = regex(r"(?<!\bsts)(?<!\bst)(?<!\brem)(?<!\bk)(?<!\bp)(?<!\bpatt)[.!](?=\s|$)|\.(?=\s+[A-Z*]|\s*$)")
_HEAD: Final = regex(
    r"\s*(?:(?:next|\d+(?:st|nd|rd|th)|joining|dividing|separating|division|divide)\s+(?:row|rnd|round)|(?:row|rnd|round)s?\s*\d+|(?:divide|separate|neck|shape\s+neck|front|back|thumb)\b[^:.,]{0,30})\s*(?:\([^()]*\)\s*)?(?::|\.\s*[-\u2013\u2014]+)\s*"
    r"|\s*[^:.,;*\d]{1,40}(?:\([^()]*\)\s*)?:\s+",
    re.IGNORECASE,
)
"""The name of a row or of a part, before what is worked."""
_JOINT: Final = regex(r"\s*(?:[,;:.]\s*(?:(?:and|then|now)\s+)*|\b(?:and|then)\s+(?:then\s+)?)", re.IGNORECASE)
_NEXT: Final = regex(r"[,;]\s|\s(?:and|then)\s", re.IGNORECASE)
_WORKED: Final = regex(rf"work\s+(?P<n>{N})\s+{STS}", re.IGNORECASE)
_TURN: Final = regex(r"turn(?:\s+(?:the\s+|your\s+)?work)?", re.IGNORECASE)
_AT_YARN: Final = ("join", "at", "facing", "adverb")
"""Kinds of phrases that say where yarn is joined to what came back, and which side faces."""
_ALONE: Final = regex(r"(?:hold|(?:set|put|leave)(?:\s+(?:them|it))?\s+aside|leave)\s*", re.IGNORECASE)


def write_moves(line: Reworded) -> Reworded:
    """Write the clauses of a line that tell of stitches that are moved in the grammar's words.

    Returns:
        The line; the same if it has none that is read so.
    """
    if not _TELLS.search(line.text):
        return line
    for start, stop in reversed(list(_sentences(line.text))):
        line = _write_sentence(line, start, stop)
    return line


def _sentences(text: str) -> list[tuple[int, int]]:
    """Return where the sentences of a line begin and end, each behind its label and before its full stop."""
    found = []
    at = 0
    for stop in [*(match.start() for match in _STOP.finditer(text)), len(text)]:
        if stop < at:
            continue
        head = _HEAD.match(text, at, stop)
        start = head.end() if head is not None else at
        start += len(text[start:stop]) - len(text[start:stop].lstrip())
        if start < stop:
            found.append((start, stop))
            if len(found) > 1 and _goes_on(text, *found[-2], stop, start):
                found[-2:] = [(found[-2][0], stop)]
        at = stop + 1
    return found


def _goes_on(text: str, first: int, end: int, stop: int, start: int) -> bool:
    """Return whether a sentence moves stitches, and the one behind it joins yarn to them or to the others."""
    one, other = split_clause(text, first, end), split_clause(text, start, stop)
    if one is None or one.end < end or other is None:
        return False
    if one.has("needle"):
        return all(
            item.clause is not None and item.clause.only(*_AT_YARN) for item in _items(text, start, stop)
        )
    held = one.has("next", "middle", "one", "some") and is_hold(one, listed=False)
    return held and other.has("facing", "join") and not other.has("put")


def _items(text: str, start: int, stop: int) -> list[Item]:
    """Return the clauses of a sentence in their order."""
    items: list[Item] = []
    at = start
    while at < stop:
        clause = split_clause(text, at, stop)
        end = clause.end if clause is not None else _clause_end(text, at, stop)
        items.append(Item(at, end, clause))
        joint = _JOINT.match(text, end, stop)
        if joint is None or joint.end() == end:
            if end < stop:
                items.append(Item(end, stop, None))
            break
        at = joint.end()
    return items


def _clause_end(text: str, at: int, stop: int) -> int:
    """Return where a clause ends that is not about moves: before a comma or "and" outside brackets."""
    for match in _NEXT.finditer(text, at, stop):
        before = text[at : match.start()]
        if before.count("(") == before.count(")") and before.count("[") == before.count("]"):
            return match.start()
    return stop


def _write_sentence(line: Reworded, start: int, stop: int) -> Reworded:
    """Write one sentence; the line unchanged if nothing in it is read so."""
    text = line.text
    if _ALONE.fullmatch(text, start, stop) and text[start:stop].lower() != "leave":
        return laid_anew(line, start, stop, [WHOLE])
    items = _items(text, start, stop)
    words: Words = []
    begins = start
    changed = new = False
    at = 0
    while at < len(items):
        item, put = items[at], Words()
        done = _read(text, items, at, start, stop, behind_move=new)
        words += [". " if new else (items[at - 1].end, item.start)] if at else []
        if at and not new and _holds_within(done, len(items)):
            words[-1] = ", "  # "k20 and hold these 20 sts, k to end" is one row
        if at and done is not None and _CUTS.fullmatch(text, items[at - 1].start, items[at - 1].end):
            new, words = True, [*words[:-1], ". "]
        opens = new or not at
        used, new = (at + 1, False) if done is None else (done[1], done[2])
        if done is None:
            put = _capital([(item.start, item.end)], text) if opens and at else [(item.start, item.end)]
        else:
            changed = True
            put = done[0]
            if put and put[0] == UNDER_THE_ROW:
                before = partial_before(text, start)
                if before is None:
                    return line
                begins, opens, put = before, False, [", ", *put[1:]]
            elif opens and put:
                put = _capital(put, text)
        if not put and words:
            words.pop()
        words += put
        at = used
    return laid_anew(line, begins, stop, words) if changed else line


def _holds_within(done: tuple[Words, int, bool] | None, all_: int) -> bool:
    """Return whether a clause holds stitches just worked, and the row goes on behind it."""
    return done is not None and done[1] < all_ and bool(done[0]) and str(done[0][0]).startswith("hold these")


def _read(
    text: str, items: list[Item], at: int, start: int, stop: int, *, behind_move: bool
) -> tuple[Words, int, bool] | None:
    """Return an item in the grammar's words, the first item behind it, and whether a sentence ends there."""
    clause = items[at].clause
    if clause is None:
        if behind_move and (match := MATCHES.fullmatch(text, items[at].start, items[at].end)):
            return ["complete like other side"], at + 1, False
        if behind_move and (match := CENTRE_OFF.match(text, items[at].start, items[at].end)):
            return ["bind off ", (match.end(), items[at].end)], at + 1, False
        worked = _WORKED.fullmatch(text, items[at].start, items[at].end)
        turns = at + 1 < len(items) and _TURN.fullmatch(text, items[at + 1].start, items[at + 1].end)
        if worked is not None and turns:
            return ["work ", worked.span("n"), " sts in pattern"], at + 1, False
        return write_across(text, items, at, start, stop)
    if clause.only("facing") and at + 1 < len(items):
        return _moved(text, items, at + 1, start, stop, side_in(clause))
    return _moved(text, items, at, start, stop, "")


def _capital(words: Words, text: str) -> Words:
    """Return words that begin a sentence, with a capital."""
    first, *others = words
    if isinstance(first, str):
        return [first[:1].upper() + first[1:], *others]
    begin, end = first
    return [text[begin].upper(), (begin + 1, end), *others]


def _moved(
    text: str, items: list[Item], at: int, start: int, stop: int, facing: str
) -> tuple[Words, int, bool] | None:
    """Return a move in the grammar's words, the first item behind it, and whether a sentence ends there."""
    item = items[at]
    clause = item.clause
    if clause is None:
        return None
    if clause.only("back", "rem", "held", "named", "some", "lying", "adverb", "set") and not clause.has("needle", "from"):
        joined = write_gone_back(items, at, facing) if clause.has("back") else None
        if joined is not None:
            return joined, at + 2, True
    if clause.has("join"):
        joined = write_joined(text, items, at, facing)
        return None if joined is None else (joined, at + 1, True)
    if clause.has("needle") or (clause.has("back") and clause.has("lying", "from")):
        back = write_returned(clause)
        if back is None:
            return None
        side, used = facing or side_in(clause), at + 1
        while used < len(items) and (nearby := items[used].clause) is not None:
            if not (nearby.has("join", "facing") and nearby.only(*_AT_YARN)):
                break
            side, used = side or side_in(nearby), used + 1
        lead: Words = [f"with {side} facing, "] if side else []
        return [*lead, *back], used, True
    if at + 1 < len(items) and clause.has("rem", "next", "last") and clause.has("is"):
        return _said_of(clause, items[at + 1].clause, at)
    taken = write_taken_up(text, items, at, start, stop, facing)
    if taken is not None:
        return taken
    if facing:
        return None
    held = write_held(text, items, at, start)
    if held is None:
        return None
    used = at + 1
    if used < len(items) and _ALONE.fullmatch(text, items[used].start, items[used].end):
        used += 1
    if not held:
        return held, used, False
    whole = str(held[0]).lower() in (WHOLE, "hold all sts")
    return held, used, whole and used < len(items) and _BEGINS.match(text, items[used].start) is not None


def _said_of(clause: Clause, behind: Clause | None, at: int) -> tuple[Words, int, bool] | None:
    """Return a part told by what it is, before words that it or the rest waits."""
    which, made = clause.first("rem", "next", "last"), clause.first("is")
    if behind is None or which is None or made is None or not behind.has("stay", "put"):
        return None
    if not behind.only("stay", "holder", "rem", "later", "said", "these", "put", "for"):
        return None
    if which.kind == "rem" and not behind.has("rem") and behind.has("stay", "these"):
        number = number_in(which)
        lead: Words = ["hold rem ", number, " sts for "] if number is not None else ["hold all sts for "]
        return [*lead, made.match.span("use")], at + 2, False
    if which.kind == "next" and behind.has("rem") and (number := number_in(which)) is not None:
        return ["work in rows over next ", number, " sts, hold others"], at + 2, False
    return None


