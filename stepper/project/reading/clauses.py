"""Cut a sentence into clauses that are worked one after the other, each read by itself. No I/O.

Theory of operation. "Change to 4 mm needles and work 6 rows in rib, then place sts on a holder" is three
instructions in one sentence. Where a sentence does not read as a whole, it is cut before a verb that
begins an instruction, if what stands in front of the cut is finished: it names a needle or a yarn, casts
on, or works a number of rows or to a length. What may be worked within the rows in front of it (a shaping
every few rows), may belong to both (a repeat, a length behind two works), or is only true at times is
never cut off.
"""

from __future__ import annotations

import re
from functools import lru_cache

from stepper.project.instructions import (
    BindOff,
    BreakYarn,
    Count,
    EdgeRows,
    EdgeShaping,
    Join,
    Line,
    Needle,
    Phrase,
    Repeated,
    WithYarn,
    WorkRounds,
)
from stepper.project.problems import Span
from stepper.project.reading.wording import Words, read_line, reads
from stepper.project.stitchwork import Work

_ROWS = r"(?:rows?|rnds?|rounds?)\b"
_VERB = (
    r"(?:(?:work|cont(?:inue)?|proceed)\b|(?:change|switch)\s+to\b|(?:break|cut|rejoin|place|leave)\b|join\b|"
    r"(?:cast|bind)\s+(?:on|off)\b|co\b|bo\b|pick\s+up\b|(?:inc|dec)(?:rease)?\b(?!\s+(?:row|rnd|round))|"
    r"rep(?:eat)?\b(?!\s+from)|k(?:nit)?\s*2\s*tog(?:ether)?\b\.?\s+(?=at\b|each\b|both\b)|(?:knit|purl|k|p)\s+(?:\d+|one|two|three|four|five|six|every|all)\s+"
    rf"(?:more\s+)?{_ROWS})"
)
_JOINT = re.compile(
    rf"\s*[,;]?\s+(?:and\s+)?(?P<then>then)\s+(?={_VERB})|\s*[,;]\s+(?:and\s+)?(?={_VERB})|\s+and\s+(?={_VERB})",
    re.I,
)
_UNSAFE = re.compile(
    r"\*|\b(?:at\s+the\s+same\s+time|at\s+same\s+time|while|whilst|if|unless|when|whenever|or|instead|except|only|"
    r"otherwise|but|alternat\w*|reversing|both|respectively|simultaneously|as\s+foll\w*)\b",
    re.I,
)
"""Words that tie clauses together in a way that working them one by one would miss."""
_ROW_HEAD = re.compile(rf"[^:.]*\b{_ROWS}[^:.]*:", re.I)
"""The head of a row, which holds for all that stands behind it."""
_BACK = re.compile(
    rf"\b(?:(?:last|this|that|same|these|those)\s+(?:\w+\s+)?{_ROWS}|same\s+time|throughout)", re.I
)
_SHAPES = re.compile(r"(?:inc|dec|bind\s+off|cast\s+off|bo\b|cast\s+on|co\b)", re.I)
_SEQUENT = re.compile(rf"\b(?:next|foll(?:owing)?)\s+(?:\d+\s+|\w+\s+)?(?:alt(?:ernate)?\s+)?{_ROWS}", re.I)
_EACH_SIDE = re.compile(
    r"(?:(?:bind|cast)\s+off|bo)\s+\d[\d\s,()]*(?:sts?|stitches)\b\.?\s+(?:at\s+(?:the\s+)?(?:beg|beginning|start)\b\.?"
    r"\s+of\s+(?:each|every)\s+row\b|(?:at\s+)?(?:each|both)\s+sides?\b)",
    re.I,
)
"""Stitches bound off at both sides of a piece, which no row before it can hold."""
_ONE_ROW = re.compile(
    r"\b(?:of\s+(?:the\s+)?(?:next|foll(?:owing)?)\s+(?:row|rnd|round)|at\s+(?:the\s+)?(?:armhole|neck|front)\s+(?:side|edge|end))\s*$",
    re.I,
)
"""What is worked in one row, named as a whole."""
_SET = re.compile(r"\d|\buntil\b|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve)\b", re.I)
_SHARED = re.compile(rf"\d\s+(?:more\s+)?{_ROWS}.*\b(?:until|times|twice|once|for)\b", re.I)
"""A number of rows with an end or a number of times behind it, which may be of the rows before as well."""
_MOST_LETTERS = 400
"""Letters of the longest sentence that is cut: every joint of it is tried."""
_PLACE = Span(line=1, column=1)


@lru_cache(maxsize=512)
def clauses_of(text: str, sizes: int = 0) -> tuple[tuple[int, int], ...]:
    """Find the clauses of a sentence that does not read as a whole.

    Args:
        text: The sentence as printed.
        sizes: How many sizes the pattern has; 0 if unknown.

    Returns:
        Where each clause begins and ends, two or more; empty if the sentence does not read so.
    """
    if len(text) > _MOST_LETTERS or _UNSAFE.search(text) or _ROW_HEAD.match(text):
        return ()
    return _cut(text, 0, sizes, set()) or ()


def _cut(text: str, start: int, sizes: int, dead: set[int]) -> tuple[tuple[int, int], ...] | None:
    """Return the clauses from a place on; None if there are none.

    Args:
        text: The whole sentence.
        start: The place.
        sizes: How many sizes the pattern has.
        dead: Places from which none were found, so that each is tried once only.
    """
    if start in dead:
        return None
    for joint in _JOINT.finditer(text, start):
        rest = text[joint.end() :]
        if joint.start() <= start or not _may_follow(rest, then=joint.group("then") is not None):
            continue
        if not _finished(text[start : joint.start()], sizes):
            continue
        if reads(rest):
            return (start, joint.start()), (joint.end(), len(text))
        more = _cut(text, joint.end(), sizes, dead)
        if more is not None:
            return (start, joint.start()), *more
    dead.add(start)
    return None


def _may_follow(rest: str, *, then: bool) -> bool:
    """Return whether what follows a cut can only be worked after what stands before it."""
    if _SHARED.search(rest) and not re.match(r"rep|inc|dec|work\s+(?:\w+\s+)?(?:inc|dec)", rest, re.I):
        return False
    if _BACK.search(rest) and not re.match(r"rep", rest, re.I):
        return False
    if _EACH_SIDE.match(rest):
        return True
    whole = re.match(r"(?:bind|cast)\s+off\s+(?:all|rem\w*|loosely|in\b|\.?$)", rest, re.I)
    return then or not _SHAPES.match(rest) or whole is not None or _SEQUENT.search(rest) is not None


def _finished(clause: str, sizes: int) -> bool:
    """Return whether a clause is read and leaves nothing open that the next might end."""
    if not reads(clause):
        return False
    line: Line | None = read_line(clause, lambda _offset, _length: _PLACE, Words(sizes=sizes)).line
    if line is None or line.numbers or line.side or line.every or line.times:
        return False
    if re.search(_ROWS, line.label or "", re.I):
        return False
    worked = [one for one in line.sentences if not isinstance(one, Count)]
    last = worked[-1] if worked else None
    if isinstance(last, Phrase):
        return _ONE_ROW.search(clause) is not None or all(
            isinstance(one, Work) and one.stitch == "co" for one in last.elements
        )
    if isinstance(last, WorkRounds):
        return _SET.search(clause) is not None
    return isinstance(
        last, BindOff | BreakYarn | EdgeRows | EdgeShaping | Join | Needle | Repeated | WithYarn
    )
