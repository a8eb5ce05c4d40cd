"""Find in the words of an unread row what they say of it: what it may be, how many rows, which count. No I/O.

What is found is proposed to the knitter and taken by one key, so nothing is made up: a number that is
proposed is printed in the row or right behind it, and what keeps a row from being proposed at all is in
`stepper.project.page.unread.doubts`. It is long because all that a row may be is weighed against each other.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from enum import Enum
from typing import Final

from stepper.project.page.orders import holds_instruction, is_order
from stepper.project.page.stops import sentences_of
from stepper.project.page.unread.doubts import (
    is_doubtful_end,
    is_doubtful_note,
    is_doubtful_pick_up,
    is_measured,
    names_several,
    orders_row,
)
from stepper.project.reading.elements import WORDS
from stepper.project.reading.wording import reads
from stepper.project.rewording.signs.size_lists import in_brackets
from stepper.project.rewording.synonym import STS
from stepper.records import dataclass
from stepper.regex import regex

LONGEST: Final = 2_000
"""Most letters of a row that are looked at."""


class Kept(Enum):
    """What a row that is not read may be kept as."""

    ROWS = "rows"
    """Rows worked by these words."""
    NOTE = "note"
    """A remark, said at its place and worth no stitches."""
    OUT = "leave out"
    """Nothing for her: it stays as a comment."""
    CAST_ON = "cast on"
    PICK_UP = "pick up"
    HOLD = "hold"
    """A row in which stitches go on hold."""
    BIND_OFF = "bind off"
    """All stitches bound off."""
    ANEW = "type"
    """Written anew, since its own words alone would leave nothing to knit."""
    AGAIN = "again"
    """Lines of another part once more."""
    PARTS = "parts"
    """One row whose stitches are told stretch by stretch."""
    SPLIT = "split"
    """Sentence by sentence, since they are of several kinds."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Proposal:
    """What the words of a row say of it."""

    kept: Kept
    rows: str = ""
    """How many rows they are worked, as a number or a list (`4 (4, 5)`), or how long (`until piece measures
    12 cm`); 1 if nothing in them is of more than one; empty if they are of more and do not say how many."""
    numbered: bool = False
    """Whether the row begins with its number or the like, which says how many rows it is."""
    says_rows: bool = False
    """Whether the words themselves say how many rows or how long; else `rows` is at most a guess."""
    count: str = ""
    """The stitches after it as printed, a number or a list; empty if none is printed."""
    change: str = ""
    """The stitches gained or lost as printed, where no count is: `4 sts dec'd`; else empty."""
    moved: str = ""
    """What is cast on, picked up or put on hold: `38 (40, 42)`, `54 for first sleeve, 54 for second sleeve`;
    empty if the words do not say."""
    doubtful: bool = False
    """Whether it may be of another kind: then she is asked, and nothing is proposed."""
    strange: bool = False
    """Whether a stitch in it is not known, so that nobody can tell whether the number stays the same."""


NUMBER: Final = (
    r"(?<!\d[)\]]\s)(?<!\d[)\]])\d+"
    r"(?:\s?[(\[][\d\s,;:/–—-]+[)\]](?:\s\d+(?![\d.,½¼¾⅛⅜⅝⅞]\d|[½¼¾⅛⅜⅝⅞]))?)*(?!\s?[(\[]\d)"
)
"""A number as printed, with its list of sizes in one pair of brackets or several, or in and out of them by
turns: `168 (180) 192 (208) 228`."""
_BEHIND: Final = regex(
    rf"(?:(?<=[.!?:;)])|(?<=\s)[=–—-]|[(\[–—=→]|\bnow(?:\s+have)?|\btotal\s+of|\bhave)\s*(?P<count>{NUMBER})"
    rf"(?:\s+(?!(?:gusset|thumb|pocket|edge|border|band|panel|steek|underarm|instep|sole|raglan|marked|new|extra|more)\b)[a-z]+){{0,2}}?"
    rf"\s*{STS}\.?(?:\s+(?:in\s+total|total|rem(?:ain(?:ing)?)?|left|on\s+(?:the\s+)?needles?"
    rf"|for\s+all\s+sizes)){{0,2}}\s*[)\]]?\s*[.;]?\s*$",
    re.I,
)
"""The count behind a row, not one of a part of its stitches: "7 gusset sts"."""
_CHANGED: Final = regex(
    rf"(?P<count>{NUMBER})\s*{STS}\s*(?P<way>inc|dec)(?:'d|reased|\.)?(?:\s+(?:in\s+all|each\s+time))?[)\]]?\s*[.;]?\s*$",
    re.I,
)
"""The stitches gained or lost in a row, behind it."""
_REMAIN: Final = regex(
    rf"\b(?:until|to|leaving|there\s+(?:are|will\s+be))\s+(?:there\s+are\s+)?(?P<count>{NUMBER})"
    rf"(?:\s+[a-z]+)?\s*{STS}\s*(?:rem\b|remain|are\s+left|left)"
    r"(?!(?:ing)?\s+(?:on|before|at|to|after|between|unworked|in\s+(?!all|total))\b)",
    re.I,
)
"""The count that rows are worked until; "until 3 sts remain before the marker" is a place in the row."""
_LEFT: Final = regex(
    rf"(?P<count>{NUMBER})\s*{STS}\s+(?:remain\b|rem\b|are\s+left\b|left(?=\s*[.,;)]))"
    r"(?!\s+(?:on|in|before|at)\b)",
    re.I,
)
"""The count that remains, whatever is told of it."""
_HEAD: Final = regex(
    r"^\W*(?:(?:(?!(?:is|are|from|as|of|cont\w*|rep\w*|work|until|on|in)\b)[\w'-]+\s+){0,3}?(?:rows?|rnds?|rounds?)\b\.?\s*"
    r"(?P<first>\d+)(?:\s*(?P<joint>[-–—]|to|and|&)\s*(?P<last>\d+))?\s*(?:\([^)]{1,20}\))?\s*[:.]"
    r"|(?P<nth>\d+)(?:st|nd|rd|th|d)\s+(?:row|rnd|round)\b[^:.]{0,20}[:.]"
    r"|(?P<one>(?:next|foll\w*|inc|dec|set-?up|joining|dividing|eyelet|turning|first|last|final)\s+"
    r"(?:row|rnd|round)\b[^:.]{0,30}[:.]))",
    re.I,
)
"""The head of a row that says how many rows it is; "every round is Round 1." says something of one."""
_WORD_NUMBERS: Final = {word: str(number) for number, word in enumerate(WORDS) if number > 1}
_OFTEN: Final = {"once": "1", "twice": "2"}
NUMBER_OR_WORD: Final = rf"(?:{NUMBER}|{'|'.join([*_OFTEN, *_WORD_NUMBERS])})"
"""The same, or a word for how often or how many."""
_SO_MANY: Final = regex(
    rf"\b(?:for|next|foll(?:owing)?|work|knit|purl|rib|these|another|further|last)\s+(?:the\s+|these\s+)?(?:next\s+)?"
    rf"(?P<rows>{NUMBER}|{'|'.join(_WORD_NUMBERS)})\s+(?:more\s+|further\s+|foll(?:owing)?\s+)?(?:rows|rnds|rounds)\b"
    rf"|^\W*(?P<plain>{NUMBER}|{'|'.join(_WORD_NUMBERS)})\s+(?:rows|rnds|rounds)\b",
    re.I,
)
_LONGER: Final = regex(
    r"\b(?:until|till|for|times|(?:carry|go|keep)(?:ing)?\s+(?:on|going|doing)|like\s+this|thus|so\s+on|again|down\s+to|each|up\s+to|before\s+and\s+after|st\.?\s?st|stocking|stockinette|garter|moss|seed|patt(?:ern)?|patterns|repeats|rows|rnds|rounds|rep(?:eat(?:ing)?)?\s+(?!from)|cont(?:inue)?|even|straight|throughout"
    r"|every|alt(?:ernate)?|length|long|in\s+patt(?:ern)?|rib(?:bing)?|complete|as\s+(?:given\s+)?for|same)\b",
    re.I,
)
"""Words of a row that is likely more than one."""
_ROWS: Final = regex(r"\b(?:rows|rnds|rounds)\b", re.I)
_MORE: Final = regex(r"\bthen\b|\bevery\b|\balt", re.I)
"""Words by which a number of rows is not all of them."""
_A_ROW: Final = regex(r"\b(?:row|rnd|round)\b", re.I)
_ONE_ROW: Final = regex(
    r"\b(?:knit|purl|work|rib|k|p)\s+(?:one|1|a|another)\s+(?:[a-z]+\s+){0,2}?(?:row|rnd|round)\b", re.I
)
_OF_ROWS: Final = regex(
    r"^\W*(?:in|on|during|after|before|between|from|throughout)\s+(?:the\s+)?(?:rows|rnds|rounds)\b", re.I
)
"""Words that speak of rows told elsewhere."""
_CHART: Final = regex(
    r"\b(?:rows|rnds|rounds)\s+(?P<first>\d+)\s*(?:[-–—]|to|through)\s*(?P<last>\d+)\b", re.I
)
_REPEATED: Final = regex(
    rf"\brep(?:eat)?\b.*?\b(?:last|these|those)\s+(?P<rows>\d+|{'|'.join(_WORD_NUMBERS)})\b[^.]*?"
    rf"(?P<times>{NUMBER}|{'|'.join(_WORD_NUMBERS)}|once|twice)\s*(?:more\s*)?(?:times?(?:\(s\))?)?\b",
    re.I,
)
_TO_AN_END: Final = regex(
    r"\b(?:until|till)\b|\bin\s+all\b|\b(?:al)?together\b|\btotal\b|\bform\b|\bset\b|\bor\b", re.I
)
"""Words by which a number of rows or of times is not how many are still to be knitted."""
_SHORT_OF: Final = regex(r"\s*(?:less|short(?:er)?|longer|before)\b", re.I)
"""Words by which a length is told against another."""
_PART_WAY: Final = regex(
    r"\b(?:k|knit|p|purl|work|rib)\s+(?:on\s+)?to\s+(?!(?:the\s+)?(?:end|last)\b)(?!(?:within\s+)?\d)", re.I
)
"""A row that is worked up to a place, and is not all of a row."""
_UNIT: Final = r"(?:cms?\b|mm\b|ins?\b|inch(?:es)?\b|[\"”″])"
_LENGTH: Final = rf"\d[\d.½¼¾⅛⅜⅝⅞]*(?:\s?[(\[][\d\s.,;:½¼¾⅛⅜⅝⅞–—-]+[)\]])*\s*{_UNIT}"
_LASTING: Final = regex(
    rf"\b(?:until|till)\b(?P<until>(?P<what>[^.;]*?)\s(?:measures?|is)\s+(?:about\s+)?(?P<length>{_LENGTH}))"
    rf"|\b(?:for|work)\s+(?:about\s+|another\s+)?(?P<for>{_LENGTH})"
    rf"|\b(?:on|going|even|straight|knit(?:ting)?|work(?:ing)?|continue)\s+to\s+(?:about\s+)?(?P<to>{_LENGTH})",
    re.I,
)
_FROM: Final = regex(
    rf"^\.?(?=\s*(?-i:[a-z/(\[]))\s*(?:[/(\[]\s*{_LENGTH}\s*[)\]]?)?\s*(?:long\s+)?(?P<from>(?:above|below|beyond|past|after|from)\s+[^,.;(]+)",
    re.I,
)
"""Where a length is measured from, if not from the beginning of the piece."""
_FROM_WORD: Final = regex(r"[^a-z]*(?:long\s+)?(?:above|below|beyond|past|after|from)\b", re.I)
PUT_ON_HOLD: Final = regex(
    rf"\b(?:place|put|slip|leav(?:e|ing)|transfer|hold)\s+(?:the\s+)?(?:next\s+|foll(?:owing)?\s+|first\s+|rem(?:aining)?\s+"
    rf"|last\s+|these\s+|cent(?:re|er)\s+)?(?P<number>{NUMBER})\s*(?:[a-z]+\s+){{0,2}}?{STS}"
    rf"[^,.;]*?\b(?:hold(?:er)?s?|(?:waste|spare|scrap)\s+yarn|thread|spare\s+needle|safety[- ]pin|pin)\b"
    rf"(?:\s+(?:for|as)\s+(?:the\s+)?(?P<name>[a-z]+(?:\s+(?:sleeve|thumb|front|back|neck|shoulder|side))?))?",
    re.I,
)
"""Stitches put on hold: their number, and the part that they wait for."""
_CAST: Final = regex(
    rf"\b(?:cast(?:ing)?\s+on|CO)\b[^.;]*?(?P<number>{NUMBER})\s*(?:[a-z]+\s+){{0,2}}?{STS}", re.I
)
_PICKED: Final = regex(
    rf"\bpick(?:ing)?\s+up\b[^.;]*?(?P<number>{NUMBER})\s*(?:[a-z]+\s+){{0,2}}?{STS}", re.I
)
_BINDING: Final = regex(r"^\W*(?:[^.;]*[,.]\s*)?(?:(?:cast|bind)\s+off|BO)\b", re.I)
_BOUND_IN_PART: Final = regex(
    rf"\b(?:(?:cast|bind)\s+off|BO)\s+(?:the\s+)?(?:next\s+|first\s+|cent(?:re|er)\s+)?{NUMBER}\s*{STS}?|\bends?\b|\brows?\b",
    re.I,
)
_ENDING: Final = regex(
    rf"^\W*(?:graft\b|(?:[^.;]*,\s*|(?:cut|break)\b[^.;]*\band\s+)?(?:draw|thread|run|pull)\s+"
    rf"(?:yarn|tail|end|it)?[^.;]*\bthrough\s+"
    rf"(?:them\b|(?:(?:the|all|these|those|your|last|rem\w*|live|{NUMBER})\s+)*{STS}))",
    re.I,
)
"""Ways to end a piece without binding off."""
_INTO_ROUND: Final = (
    r"\W*$|\s*[,;]|\s+(?:without\s+(?:a\s+)?twist|being\s+careful|carefully|(?:in|into|for|to\s+(?:work|knit|form))\b)"
)
"""What follows "join" where the piece is closed into the round; else something is sewn."""
_MAKING_UP: Final = regex(
    rf"^\W*(?:(?:carefully|neatly|loosely)\s+)?(?:join(?!ing?\s+(?:in|to)\b|{_INTO_ROUND})|sew|press|block|weave|steam|graft|seam|stitch|oversew|fold"
    r"|attach|pin|wash|(?:divide|spread|distribute)\s+(?:them|these)|soak|darn|fasten|cut|thread\s+(?:the\s+)?ribbon|set\s+in|close|arrange|draw|run)\b"
    r"(?![^.]*\b(?:round|rnd|rnds)\b)",
    re.I,
)
"""Words about making up, or what is done to the piece beside the knitting."""
_TOLD: Final = regex(
    r"^\W*(?:[a-z]+(?:\s+[a-z]+)?:\s*)?(?:you['’]ve\b|you\s+(?:now\s+)?(?:have|should|will)|there\s+(?:are|will)|if\b|when\b|this\b|these\b"
    r"|for\s+an?\b[^.]*\binstead\b|(?:corrections?|errat(?:a|um))\s*:|end(?:ing)?\s+(?:with|on|after)\b|instead\s+of\b|alternatively\b|optional|note\b|it\b|see\b|all\s+r(?:ou)?nds\s+are|the\s+\w+\s+(?:is|are|can|may|should)\b|\W*try\b|do\s+not\b|don't\b|remember\b|(?:stitch\s+)?count\s*[:=])",
    re.I,
)
_MARKING: Final = regex(
    r"^\W*(?:re)?(?:place|move|hang|put)\s+(?:(?:the|a|your)\s+)?(?:bor|beginning[\w\s-]*|side|end)?\s*"
    r"(?:m|markers?)\b",
    re.I,
)
"""A marker that is put somewhere."""
_AT_REST: Final = regex(
    r"^\W*(?:(?:break|cut)\s+(?:off\s+)?(?:the\s+)?(?:yarn|wool|thread)s?\s*(?:[,;]\s*)?(?:and\s+)?)?"
    r"(?:leave|set|lay|put)(?:\s+(?:it|this|the|first|second|left|right|body|sleeves?|back|front|piece|work|mitten|sock))*"
    r"(?:\s+(?:aside|for\s+(?:now|later)|on\s+(?:(?:its|the|a|spare|own|circular|dp|double-pointed)\s+)*"
    r"(?:needles?|dpns?|circular|cord|cable)))?\W*$",
    re.I,
)
"""A piece that is laid aside as it is: nothing is knitted, and no stitches are named to be put on hold."""
_LEADS_ON: Final = regex(r"\b(?:on|in|at)\s+the\s+(?:next|foll\w*)\s+(?:row|rnd|round)s?\s*:$", re.I)
"""What is told of the row below: "Remove the markers on the next rnd:"."""
_SAYS: Final = regex(
    r"^\W*(?:[\w'’-]+\s+){1,4}?(?:is|are|was|has|have|knits|designs|lives|keeps|writes|shifts|ends|begins?|serves|stands"
    r"|lies|looks|gives|shows|skips?|omits?|repeats|makes|drops?\s+a\s+little|comes|goes|works\s+best)\b",
    re.I,
)
"""A sentence that says something of a thing or a person, and gives no order."""
_HEAD_ALONE: Final = regex(
    r"^\W*(?:[\w'-]+\s+){0,3}(?:rows?|rnds?|rounds?|sections?)\s*[.:]?\s*$|\bas\s+foll(?:ow)?s\W*$",
    re.I,
)
_STITCHES: Final = regex(r"\b(?:[kp]\d|k\d?tog|ssk|yo\b|knit\b|purl\b|[kp]\s|m1|sl\s)", re.I)


def propose(text: str, *, empty: bool = False, behind: str = "") -> Proposal:
    """Find what the words of a row say of it.

    Args:
        text: The words as printed.
        empty: Whether nothing is on the needles where it stands.
        behind: The row of the page right behind it, which may be the count alone.
    """
    said = in_brackets(" ".join(text.split())[:LONGEST])
    count = printed_count(said) or printed_count(in_brackets(behind), alone=True)
    kept = _kind(said, empty=empty)
    sentences = sentences_of(said)
    kinds = {_kind(each, empty=empty) for each in sentences}
    if len(kinds) > 1 and kinds & {Kept.BIND_OFF, Kept.CAST_ON, Kept.PICK_UP}:
        kept = Kept.SPLIT
    if kept is Kept.NOTE and Kept.ROWS in kinds:
        kept = Kept.ROWS  # what is told first is not all
    head = _HEAD.match(said)
    doubtful = _is_doubtful(kept, said, sentences, counted=bool(count or printed_change(said)))
    rows = "" if doubtful or names_several(said) else _rows_in_head(head) if head is not None else _rows(said)
    return Proposal(
        kept=kept,
        doubtful=doubtful,
        rows=rows,
        numbered=head is not None,
        says_rows=_says_rows(said, rows, headed=head is not None),
        count=count,
        change=printed_change(said) if not count else "",
        moved=_moved(said, kept, count),
    )


def _is_doubtful(kept: Kept, said: str, sentences: Sequence[str], *, counted: bool) -> bool:
    """Return whether words may be of another kind than they look like."""
    match kept:
        case Kept.NOTE | Kept.OUT:
            return is_doubtful_note(said)
        case Kept.ROWS | Kept.ANEW:
            first = (_not_told(said) or sentences)[0]
            lasts = _SO_MANY.search(first) is not None or _LASTING.search(first) is not None
            return not orders_row(first, counted=counted or lasts)
        case Kept.BIND_OFF:
            return is_doubtful_end(said)
        case Kept.PICK_UP:
            return is_doubtful_pick_up(said)
        case _:
            return False


def says_stitches(text: str) -> bool:
    """Return whether words name stitches or a row to be worked, so that something may be knitted for them."""
    return _STITCHES.search(text) is not None or _ONE_ROW.search(text) is not None


def _says_rows(said: str, rows: str, *, headed: bool) -> bool:
    """Return whether words say how many rows they are, or how long."""
    several = sum(says_stitches(each) or _LONGER.search(each) is not None for each in sentences_of(said)) > 1
    if several or _OF_ROWS.match(said):
        return False
    return headed or rows not in ("", "1") or _ONE_ROW.search(said) is not None


def printed_count(text: str, *, alone: bool = False) -> str:
    """Return the count printed at the end of a row, a number or a list written `96 (100, 104)`; empty if
    none is.

    Args:
        text: The words of the row.
        alone: Whether it counts only if nothing else stands there.
    """
    said = " ".join(text.split())[-LONGEST:]
    if alone:
        match = re.fullmatch(rf"\W*(?P<count>{NUMBER})\s*(?:[a-z]+\s+)?{STS}\W*", said, re.I)
        return one_list(match["count"]) if match is not None else ""
    left = list(_LEFT.finditer(said))
    match = _BEHIND.search(said) or _REMAIN.search(said) or (left[-1] if left else None)
    return one_list(match["count"]) if match is not None else ""


def printed_change(text: str) -> str:
    """Return the stitches gained or lost that are printed at the end of a row: `4 sts dec'd`; empty if none
    are."""
    match = _CHANGED.search(" ".join(text.split())[-LONGEST:].replace("’", "'"))
    return f"{one_list(match['count'])} sts {match['way'].lower()}'d" if match is not None else ""


def one_list(printed: str) -> str:
    """Write a number with its list as one list: `88 (92, 96) (100)` as `88 (92, 96, 100)`."""
    numbers = re.findall(r"\d+", printed)
    return numbers[0] if len(numbers) == 1 else f"{numbers[0]} ({', '.join(numbers[1:])})"


def _kind(said: str, *, empty: bool) -> Kept:
    if _BINDING.match(said) and not _BOUND_IN_PART.search(said):
        return Kept.NOTE if empty else Kept.BIND_OFF
    if PUT_ON_HOLD.search(said):
        return Kept.HOLD
    if not empty and _ENDING.search(said):
        return Kept.BIND_OFF
    if empty and _CAST.search(said):
        return Kept.CAST_ON
    if empty and re.search(r"\bpick(?:ing)?\s+up\b", said, re.I):
        return Kept.PICK_UP
    if _HEAD_ALONE.search(said) or _MAKING_UP.match(said) or _TOLD.match(said):
        return Kept.NOTE
    if _AT_REST.match(said) or _LEADS_ON.search(said):
        return Kept.NOTE
    if _MARKING.match(said) and not _STITCHES.search(said):
        return Kept.NOTE
    if _SAYS.match(said) and not is_order(said) and not _STITCHES.search(said):
        return Kept.NOTE
    if not holds_instruction(said) and not _STITCHES.search(said) and not _LASTING.search(said):
        return Kept.NOTE
    return Kept.ANEW if empty and _HEAD.match(said) is None else Kept.ROWS


def _not_told(said: str) -> list[str]:
    """Return the sentences of some words that do not only tell something."""
    return [each for each in sentences_of(said) if not _TOLD.match(each) and not _SAYS.match(each)]


def _is_worked(sentence: str) -> bool:
    """Return whether rows are knitted for a sentence."""
    lasts = _LASTING.search(sentence) is not None or _SO_MANY.search(sentence) is not None
    return lasts or says_stitches(sentence) or orders_row(sentence)


def _rows_in_head(head: re.Match[str]) -> str:
    if head["last"] is None:
        return "1"
    many = int(head["last"]) - int(head["first"]) + 1
    if many < 1 or (head["joint"].isalpha() and head["joint"] != "to" and many > 2):
        return ""  # "Rows 2 and 4" are not three, and do not follow each other
    return str(many)


def _rows(said: str) -> str:
    if sum(map(_is_worked, _not_told(said))) > 1:
        return ""  # "Rib for 2 in. Knit three rows." is not three rows
    repeated = _REPEATED.search(said) if not _TO_AN_END.search(said) else None
    if repeated is not None:
        rows, times = in_figures(repeated["rows"]), in_figures(repeated["times"])
        numbers = [int(rows) * int(each) for each in re.findall(r"\d+", times)]
        return one_list(" ".join(map(str, numbers)))
    many = _SO_MANY.search(said) if not _TO_AN_END.search(said) else None
    if many is not None:
        several = (
            len(_ROWS.findall(said)) > 1 or _MORE.search(said) is not None
        )  # "on next 4 rows, then on 3 alt rows": neither is how many
        return "" if several else one_list(in_figures(many["rows"] or many["plain"]))
    chart = _CHART.search(said) if not _TO_AN_END.search(said) else None
    if chart is not None:
        return str(max(1, int(chart["last"]) - int(chart["first"]) + 1))
    lasting = _LASTING.search(said)
    if lasting is None:
        several = len(_A_ROW.findall(said)) > 1 or (
            _ONE_ROW.search(said) is not None and sum(map(says_stitches, sentences_of(said))) > 1
        )  # "*k8, k2tog* around. Knit 1 round." is two
        several = several or _LONGER.search(said) is not None or _PART_WAY.search(said) is not None
        return "" if several or is_measured(said) else "1"
    if _SHORT_OF.match(said[lasting.end() :]):
        return ""  # "until the foot is 3 in. less than your foot" is no length of the foot
    if lasting["for"]:
        return f"for {_plain_length(lasting['for'])}"
    measured = _FROM.match(said[lasting.end() :])
    if measured is None and _FROM_WORD.match(said[lasting.end() :]):
        return ""
    behind = f" {measured['from'].strip()}" if measured is not None else ""
    what = re.sub(r"^\W*(?:the\s+|your\s+)?", "", lasting["what"] or "", flags=re.I).partition(",")[0].strip()
    what = "piece" if what.lower() in ("it", "work", "this", "") else what
    until = f"until {what} measures {_plain_length(lasting['length'] or lasting['to'])}{behind}"
    return until if reads(f"Knit {until}.") else ""  # "from the third stripe" is no place that is known


def in_figures(number: str) -> str:
    """Write a number that may be a word in figures: `twice` as `2`; any other as it is."""
    plain = number.lower()
    return _OFTEN.get(plain) or _WORD_NUMBERS.get(plain, number)


def _plain_length(printed: str) -> str:
    """Write a length with its sizes in one pair of brackets."""
    joined = re.sub(r"\s*[)\]]\s*[(\[]\s*", ", ", printed.strip())
    return " ".join(joined.replace("”", '"').replace("″", '"').split())


def _moved(said: str, kept: Kept, count: str) -> str:
    """Return what comes onto the needles or goes on hold by the words."""
    if kept is Kept.HOLD:
        found = (
            one_list(each["number"]) + (f" for {each['name'].lower()}" if each["name"] else "")
            for each in PUT_ON_HOLD.finditer(said)
        )
        return "; ".join(found)
    if kept is Kept.CAST_ON:
        match = _CAST.search(said)
        return one_list(match["number"]) if match is not None else ""
    if kept is Kept.PICK_UP:
        several = list(_PICKED.finditer(said))
        return count or (one_list(several[0]["number"]) if len(several) == 1 else "")
    return ""
