"""Cut a sentence into works that come one after the other, each read by itself. No I/O.

Theory of operation. "Change to 4 mm needles and work 6 rows in rib, then place sts on a holder" is three
works in one sentence, and "1st row, k; 2nd row, p; rep these 2 rows 5 times" is two rows and a repeat. Where
a sentence does not read as a whole, it is cut at its joints: before the head of a row, before a verb that
begins an instruction, and at a semicolon. A cut holds if what stands in front of it is finished - it names a
needle or a yarn, casts on, works a number of rows or to a length, is a row of its own - and what follows can
only be worked after it. What may be worked within the rows in front of it (a shaping every few rows), may
belong to both (a repeat, a length behind two works), or is only true at times is never cut off. Rows cut
apart have to be numbered upwards. All works have to read, or none is cut.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache
from typing import Final

from stepper.project.duration import Ended
from stepper.project.instructions import (
    AtIntervals,
    BindOff,
    BreakYarn,
    EdgeRows,
    EdgeShaping,
    Evenly,
    Forms,
    Join,
    Line,
    Needle,
    Phrase,
    PrintedCount,
    Remark,
    Repeated,
    Return,
    WithYarn,
    WorkRounds,
)
from stepper.project.problems import Span
from stepper.project.reading.wording import Words, read_line, reads
from stepper.project.stitchwork import Hold, PickUp, Work
from stepper.records import dataclass
from stepper.regex import regex

_ROWS = r"(?:rows?|rnds?|rounds?)\b"
_NUMBER = r"(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|twelve)"
_VERB = (
    r"(?:(?:work|cont(?:inue)?|proceed)\b|(?:change|switch)\s+to\b|(?:break|cut|rejoin|place|leave|fasten|transfer|weave)\b|join\b|"
    r"(?:cast|bind)\s+(?:on|off)\b|co\b|bo\b|pick\s+up\b|(?:inc|dec)(?:rease)?\b(?!\s+(?:row|rnd|round))|"
    r"rep(?:eat)?\b(?!\s+from)|k(?:nit)?\s*2\s*tog(?:ether)?\b\.?\s+(?=at\b|each\b|both\b)|(?:knit|purl|k|p)\.?\s+(?:(?:\d+|one|two|three|four|five|six|every|all)\s+"
    rf"(?:more\s+)?{_ROWS}|until\b|for\b)|(?:now|next)\s+(?=[a-z])|(?:with|using)\s+[^,;.]{{1,40}}?,?\s*\b(?:knit|purl|work|cast|bind|k|p)\b|"
    r"on\s+(?:the\s+|these\s+)?(?:rem(?:aining)?\.?\s+)?\d|these\s+\d|sew\b|(?:slip|sl)\s+(?:the\s+|these\s+|all\s+)?(?:first\s+|last\s+|rem\w*\s+)?(?:\d+\s+)?(?:sts|stitches)\b)"
)
_HEAD = (
    r"[(\[]?(?:(?:rows?|rnds?|rounds?|rd|r)\.?\s*\d{1,3}\b|\d{1,3}(?:st|nd|rd|th)\s+(?:row|rnd|round)\b|"
    r"(?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth)\s+(?:row|rnd|round)\b|"
    r"next\s+(?:row|rnd|round)\b)"
)
"""What a row begins with that is told by its number."""
_NAMED = r"(?:(?:inc|dec|set-?up|foundation)(?:\.|rease)?\s+(?:row|rnd|round)\b)"
_JOINT = regex(
    rf"(?P<head>\s*[,;]\s*(?:and\s+)?(?={_HEAD})|(?<=[.:!])\s+(?={_HEAD})|(?<=\S)\s+(?=(?:{_HEAD}|{_NAMED})[^:;,.*]{{0,24}}:))"
    rf"|(?P<stop>\s*;\s+(?:and\s+)?(?:(?:then|now)\s+)?)(?=\S)"
    rf"|\s*[,;]?\s+(?:and\s+)?(?P<then>then)\s+(?={_VERB})|\s*[,;]\s+(?:and\s+)?(?={_VERB})|\s+and\s+(?={_VERB})",
    re.I,
)
_UNSAFE = regex(
    r"\b(?:at\s+the\s+same\s+time|at\s+same\s+time|while|whilst|if|unless|when|whenever|or|instead|except|only|"
    r"otherwise|but|alternat\w*|reversing|both|respectively|simultaneously)\b",
    re.I,
)
"""Words that tie works together in a way that working them one by one would miss."""
_LED = regex(r"\*|\bas\s+foll\w*|\bthus\b", re.I)
"""What is only cut where rows with heads follow: stars belong to one row, "as follows" to what follows."""
_HEADED = regex(rf"\s*(?:{_HEAD}|(?:knit|purl)\s+the\s+(?:first|next)\s+(?:row|rnd|round)\b)", re.I)
_ROW_HEAD = regex(rf"[^:.]*\b{_ROWS}[^:.]*:", re.I)
"""The head of a row, which holds for all that stands behind it."""
_BACK = regex(
    rf"\b(?:(?:last|this|that|same|these|those)\s+(?:\w+\s+)?{_ROWS}|same\s+time|throughout)", re.I
)
_SHAPES = regex(r"(?:inc|dec|bind\s+off|cast\s+off|bo\b|cast\s+on|co\b|k(?:nit)?\s*2\s*tog)", re.I)
_SEQUENT = regex(rf"\b(?:next|foll(?:owing)?)\s+(?:\d+\s+|\w+\s+)?(?:alt(?:ernate)?\s+)?{_ROWS}", re.I)
_AMONG = regex(
    r"\b(?:of|on|in)\s+(?:the\s+)?"
    r"(?:\d+(?:st|nd|rd|th)|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth)\b",
    re.I,
)
"""Rows by their numbers from the first of those before: "dec 1 st at each end of 3rd and foll 4th row"."""
_EACH_SIDE = regex(
    r"(?:(?:bind|cast)\s+off|bo)\s+\d[\d\s,()]*(?:sts?|stitches)\b\.?\s+(?:at\s+(?:the\s+)?(?:beg|beginning|start)\b\.?"
    r"\s+of\s+(?:each|every)\s+row\b|(?:at\s+)?(?:each|both)\s+sides?\b)",
    re.I,
)
"""Stitches bound off at both sides of a piece, which no row before it can hold."""
_WHOLE = regex(
    r"(?:bind|cast)\s+off(?:\s+(?:all|rem\w*|loosely|in\b|knitwise|purlwise|on\b)|\s*\.?$)|bo\s*\.?$", re.I
)
_OFF = regex(r"(?:(?:bind|cast)\s+off|bo)\s+\d", re.I)
"""Stitches bound off, with the rest of their row behind them."""
_ONE_ROW = regex(
    r"\b(?:of\s+(?:the\s+)?(?:next|foll(?:owing)?)\s+(?:row|rnd|round)|at\s+(?:the\s+)?(?:armhole|neck|front)\s+(?:side|edge|end))\s*$",
    re.I,
)
"""What is worked in one row, named as a whole."""
_SET = regex(rf"\d|\buntil\b|\b{_NUMBER}\b", re.I)
_SHARED = regex(
    rf"\d\s+(?:more\s+)?{_ROWS}.*\b(?:(?:until|times|twice|once)\b|for\s+(?:about\s+)?\d)", re.I
)
"""A number of rows with an end or a number of times behind it, which may be of the rows before as well."""
_AGAIN = regex(rf"rep(?:eat)?\b[^,;]*\b{_ROWS}|(?:these|this|last)\s+(?:{_NUMBER}\s+)?{_ROWS}", re.I)
"""Rows worked again, or called a pattern."""
_EVENLY_ON = regex(
    rf"(?:work|cont(?:inue)?|proceed)\b(?!\s+(?:even|straight|plain|without|{_NUMBER}\b))", re.I
)
"""Work that does not say that nothing more is shaped: a shaping in front of it may go on in it."""
_IN_ROWS = regex(
    rf"(?:work|knit|purl|k|p|rib)\.?\s+(?:{_NUMBER}\s+{_ROWS}|in\b|even\b|until\b|for\b)", re.I
)
"""Rows over all stitches, which no row of picking up goes on with."""
_ALL_ROW = regex(
    r"(?:knit|purl|k|p)\s*\.?$|\b(?:to\s+(?:the\s+)?end|across|around)(?:\s+of\s+(?:the\s+)?(?:row|rnd|round))?\s*\.?$",
    re.I,
)
"""A row written to its end."""
_MOST_LETTERS = 600
"""Letters of the longest sentence that is cut: every joint of it is tried."""
_MOST_JOINTS = 24
_PLACE = Span(line=1, column=1)


@dataclass(frozen=True, slots=True)
class _Joint:
    """A place where a sentence may be cut."""

    start: int
    end: int
    then: bool
    """Whether "then" stands there."""
    head: bool
    """Whether the head of a row stands behind it."""


@lru_cache(maxsize=512)
def clauses_of(text: str, sizes: int = 0) -> tuple[tuple[int, int], ...]:
    """Find the works of a sentence that does not read as a whole.

    Args:
        text: The sentence as printed.
        sizes: How many sizes the pattern has; 0 if unknown.

    Returns:
        Where each work begins and ends, two or more; empty if the sentence does not read so.
    """
    if len(text) > _MOST_LETTERS or _UNSAFE.search(text):
        return ()
    joints = tuple(
        _Joint(
            match.start(),
            match.end(),
            match.group("then") is not None or "then" in (match.group("stop") or "").lower(),
            match.group("head") is not None,
        )
        for match in _JOINT.finditer(text)
        if match.start() > 0
    )
    if not joints or len(joints) > _MOST_JOINTS:
        return ()
    headed = _HEADED.match(text) is not None or any(joint.head for joint in joints)
    if not headed and (_ROW_HEAD.match(text) or _LED.search(text)):
        return ()
    found = _cut(_Sentence(text, joints, sizes, {}), 0)
    return found if found is not None and _counts_up(text, found) else ()


_ON: Final = regex(
    r"\s*[,;]\s+(?:and\s+)?(?:(?:then|now)\s+)?|\s+and\s+(?:(?:then|now)\s+)?|\s+(?:then|now)\s+(?=[a-z])",
    re.I,
)
_NEXT_ORDER: Final = regex(
    r"(?:(?:work|cont(?:inue)?|proceed|begin|rib|patt|knit|purl|graft|sew|fold|thread|draw|shape|divide|finish"
    r"|fasten|break|cut|rejoin|go\s+on|carry\s+on|place|put|mark|weave|press|block|gather|attach|stuff)\b(?!\s+(?:\d+\s*(?:sts?\b|stitch|tog)|to\s+(?:end|last|the\s+(?:end|last))|out\b|across\b"
    r"|the\s+(?:next|last|first|rest)|them\b|these\b|it\b))"
    r"|(?:change|switch|swap)\s+to\b|(?:cast|bind)\s+off\b(?!\s+\d)|pick\s+up\b)",
    re.I,
)
"""What begins another work, which no row in front of it holds."""
_TIED: Final = regex(
    r"\b(?:at\s+(?:the\s+)?same\s+time|while|whilst|unless|instead|except|otherwise|alternat\w*|reversing|respectively|"
    r"simultaneously|as\s+you|these|this|those|meanwhile|throughout|times?|twice|once|so\s+that|as\s+before|rows?\s+\d)\b",
    re.I,
)
"""Words by which an order may be meant for the rows in front of it."""
_IN_ROWS_BEFORE: Final = regex(r"\b(?:every|each|other|alt|last)\b|\b(?:inc|dec)(?:reas\w*)?\b", re.I)
"""The same, where the order has no rows of its own."""
_OWN_ROWS: Final = regex(
    r"(?:work|cont(?:inue)?|proceed|rib|patt|knit|purl)\b(?!\s+(?:inc|dec))"
    rf".*?(?:\buntil\b|\bfor\b|\d+\s+{_ROWS}|\d\s*(?:cm|mm|in\b|inch))",
    re.I,
)


@lru_cache(maxsize=512)
def first_work(text: str, sizes: int = 0) -> tuple[int, int] | None:
    """Find the work that a sentence begins with, where what follows is another order, read or not.

    Args:
        text: The sentence as printed, not read as a whole.
        sizes: How many sizes the pattern has; 0 if unknown.

    Returns:
        Where the work ends, and where the next begins; None if it is not clear that it ends there.
    """
    if len(text) > _MOST_LETTERS or _HEADED.match(text) or _ROW_HEAD.match(text):
        return None
    for match in reversed(list(_ON.finditer(text))):
        front, behind = text[: match.start()], text[match.end() :]
        if not front or not _NEXT_ORDER.match(behind) or _UNSAFE.search(front) or _LED.search(front):
            continue
        if ":" in front:
            continue  # what stands in front of it may be for all that follows
        if any(front.count(one) != front.count(other) for one, other in ("()", "[]")):
            continue
        then = "then" in match[0].lower()
        if _TIED.search(behind) or (_IN_ROWS_BEFORE.search(behind) and not (then or _OWN_ROWS.match(behind))):
            continue
        if _finished(front, sizes, _Joint(match.start(), match.end(), then, head=False), behind):
            return match.start(), match.end()
    return None


@dataclass(frozen=True, slots=True)
class _Sentence:
    """A sentence that is being cut."""

    text: str
    joints: tuple[_Joint, ...]
    sizes: int
    tried: dict[int, tuple[tuple[int, int], ...] | None]
    """The works from each place that was tried, None where there are none: each is tried once only."""


def _cut(sentence: _Sentence, start: int) -> tuple[tuple[int, int], ...] | None:
    """Return the works from a place on, two or more; None if there are none."""
    if start not in sentence.tried:
        sentence.tried[start] = _cut_anew(sentence, start)
    return sentence.tried[start]


def _cut_anew(sentence: _Sentence, start: int) -> tuple[tuple[int, int], ...] | None:
    text = sentence.text
    for joint in sentence.joints:
        if joint.start <= start:
            continue
        front = text[start : joint.start]
        if _finished(front, sentence.sizes, joint, text[joint.end :]):
            for rest in _rests(sentence, joint.end):
                if _may_follow(front, text[slice(*rest[0])], joint):
                    return (start, joint.start), *rest
        if joint.head:
            break  # no work goes on past the head of the next row
    return None


def _rests(sentence: _Sentence, start: int) -> Iterator[tuple[tuple[int, int], ...]]:
    """Yield the works from a place on: as one, if it reads so, and cut further."""
    if reads(sentence.text[start:]):
        yield ((start, len(sentence.text)),)
    cut = _cut(sentence, start)
    if cut is not None:
        yield cut


def _counts_up(text: str, works: tuple[tuple[int, int], ...]) -> bool:
    """Return whether the rows of a sentence are numbered upwards, if they are numbered."""
    last = 0
    for start, end in works:
        line = _read(text[start:end], 0)
        if line is None or not line.numbers:
            continue
        if line.numbers[0] <= last:
            return False
        last = line.numbers[-1]
    return True


def _may_follow(front: str, work: str, joint: _Joint) -> bool:
    """Return whether what follows a cut can only be worked after what stands before it."""
    if joint.head:
        return _HEADED.match(work) is not None
    repeats = _AGAIN.match(work) is not None
    if _HEADED.match(front) and not repeats and not _ALL_ROW.search(front):
        return False
    if _LED.search(work) or (_LED.search(front) and not _HEADED.match(front)):
        return False
    if _SHARED.search(work) and not re.match(r"rep|inc|dec|work\s+(?:\w+\s+)?(?:inc|dec)", work, re.I):
        return False
    if _BACK.search(work) and not repeats:
        return False
    if _EVENLY_ON.match(work) and _shapes_on(front):
        return False
    if _EACH_SIDE.match(work):
        return True
    return (
        joint.then
        or (_OFF.match(work) is not None and _ALL_ROW.search(work) is not None)
        or not _SHAPES.match(work)
        or _WHOLE.match(work) is not None
        or (_SEQUENT.search(work) is not None and _AMONG.search(work) is None)
    )


def _shapes_on(work: str) -> bool:
    """Return whether a work is a shaping over rows."""
    line = _read(work, 0)
    return line is not None and any(isinstance(one, AtIntervals | EdgeShaping) for one in line.sentences)


def _read(text: str, sizes: int) -> Line | None:
    return read_line(text, lambda _offset, _length: _PLACE, Words(sizes=sizes)).line


def _finished(clause: str, sizes: int, joint: _Joint, follows: str) -> bool:
    """Return whether a work is read and leaves nothing open that the next might end.

    Args:
        clause: The work.
        sizes: How many sizes the pattern has.
        joint: Where it ends.
        follows: All that stands behind it.
    """
    if not reads(clause):
        return False
    line = _read(clause, sizes)
    if line is None:
        return False
    worked = [one for one in line.sentences if not isinstance(one, PrintedCount)]
    last = worked[-1] if worked else None
    if _HEADED.match(clause):
        return isinstance(last, Phrase | WorkRounds | Repeated | Evenly | BindOff)
    if line.numbers or line.side or line.every or line.times:
        return False
    if re.search(_ROWS, line.label or "", re.I):
        return False
    if isinstance(last, Remark):
        return joint.head or not _LED.search(clause)
    if isinstance(last, Phrase):
        made = last.elements
        picked = all(isinstance(one, PickUp) or getattr(one, "stitch", "") == "pu" for one in made)
        return (
            _ONE_ROW.search(clause) is not None
            or all(_leaves_nothing(one) for one in made)
            or (picked and _IN_ROWS.match(follows) is not None)
        )
    if isinstance(last, WorkRounds):
        return _SET.search(clause) is not None
    return isinstance(
        last,
        AtIntervals
        | BindOff
        | BreakYarn
        | EdgeRows
        | EdgeShaping
        | Ended
        | Evenly
        | Forms
        | Join
        | Needle
        | Repeated
        | Return
        | WithYarn,
    )


def _leaves_nothing(element: object) -> bool:
    """Return whether a stretch is a row of its own: stitches cast on, or all that there are put on hold."""
    if isinstance(element, Work):
        return element.stitch == "co"
    return isinstance(element, Hold) and element.times is None and not element.to_marker
