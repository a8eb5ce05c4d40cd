"""Rows and rounds that are worked again, told in prose: which, how often, until when. No I/O.

"Keep working these two rows until you have 28 rows, ending with row 2", "now do just Round 1 another 3 times"
and "repeat rib round 11 times more, or until brim is 4 cm deep" are made of the same few phrases. A number of
times behind rows just written out that says neither "more" nor "in all" is left alone, as it may count the
first time or not. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from stepper.craft.stitch_patterns import RIB
from stepper.project.rewording.synonym import LONG, ROUND, STS, N
from stepper.project.rewording.told.phrases import (
    ALL,
    BETWEEN_MARKERS,
    DONE,
    MORE_TIMES,
    SECTIONED,
    TIMES,
    TIMES_IN_ALL,
    Kinds,
    ToldPhrase,
    prepare_kinds,
)
from stepper.project.rewording.told.shaping import Piece, sections
from stepper.regex import regex

_ROW: Final = rf"(?:short[-\s]?)?{ROUND}"
_DOING: Final = r"(?:repeat(?:ing)?|working|doing|knitting)"
_WHILE: Final = r"(?:\s+(?:only|alternately|in\s+turn|throughout|over\s+and\s+over(?:\s+again)?|again\s+and\s+again))?"
_TH: Final = r"(?:st|nd|rd|th)"
_CHANGES: Final = rf"{N}\s+(?:inc|dec)(?:rease)?(?:s|\s+{_ROW})(?:\s+(?:have\s+been\s+)?{DONE})?(?:\s+{ALL})?"

HOW_OFTEN: Final = (
    (
        "all",
        rf"(?:until\s+(?:you(?:'ve|\s+have)\s+{DONE}\s+(?:them|these|it|this)|(?:they|these|it|this)\s+ha(?:s|ve)\s+been\s+{DONE})\s+)(?:a\s+total\s+of\s+)?(?P<n>{N})\s+times(?:\s+{ALL})?",
    ),
    ("all", TIMES_IN_ALL),
    ("more", MORE_TIMES),
    ("more", r"twice\s+(?:more|again)\b|(?:another\s+two|two\s+more)\s+times\b"),
    (
        "once",
        r"(?:one\s+(?:last|more|final|further)\s+time|(?:another|a\s+(?:second|last))\s+time|once\s+(?:more|again)|again(?:\s+once)?)\b",
    ),
    ("times", TIMES),
)
"""The kinds of phrases that say how often: in all, more, once more, or so many times."""

REPEATS: Final[Kinds] = prepare_kinds(
    (
        "lead",
        r"(?:(?:now|then|just|simply|from\s+(?:here|now)(?:\s+on)?|skip\s+the\s+plain\s+(?:rounds|rnds|rows))\b\s*(?:,\s*)?)+",
    ),
    (
        "half",
        rf"(?:(?:rep(?:eat)?|work)\s+)?the\s+(?:first|1st)\s+of\s+(?:these|those|them|the)(?:\s+(?:two|2|last\s+(?:two|2)))?(?:\s+{_ROW})?(?:\s+(?:once\s+more|again|once|only))?",
    ),
    (
        "verb",
        rf"(?:(?:keep(?:\s+(?:on|going))?|cont(?:inue)?\.?|go\s+on|carry\s+on|proceed)(?:\s+(?:to|with|in(?=\s+(?:the\s+last|these|those))))?(?:\s+{_DOING}\b)?|rep(?:eat)?\b\.?|work|do|alternate|knit)(?:\s+(?:just|only))?(?=\s)",
    ),
    (
        "span",
        rf"(?:only\s+|just\s+)?(?:the\s+)?(?P<row>{_ROW})\s+(?P<n>\d+)(?!\s*[(\[]\s*\d)(?:\s*(?:-|and|&|to|through)\s*(?P<to>\d+))?{_WHILE}(?!\s*[:(])",
    ),
    (
        "span",
        rf"(?:only\s+|just\s+)?(?:from\s+)?(?:the\s+)?(?P<n>\d+){_TH}(?:\s+(?={_ROW}\s+(?:-|to|through)\s))?(?:(?:{_ROW}\s+)?(?:\s*-\s*|\s+(?:and|to|through)\s+)(?:the\s+)?(?P<to>\d+){_TH})?\s+(?P<row>{_ROW}){_WHILE}(?!\s*[:(])",
    ),
    ("pair", rf"(?:these|those|this|that|the)\s+(?:(?:last|previous|same)\s+)?pair(?:\s+of\s+(?P<row>{_ROW}))?"),
    (
        "last",
        rf"(?:only\s+|just\s+)?(?:these|those|the\s+last|last|the\s+previous|the\s+above|the(?=\s+(?:[2-9]|1\d|two|three|four|six|eight)\s+{_ROW}\b))\s+(?:(?P<n>{N})\s+)?(?P<row>{_ROW}){_WHILE}",
    ),
    ("both", rf"(?:both|the\s+two)\s+(?:of\s+(?:these|those|the)\s+)?(?P<row>{_ROW}){_WHILE}"),
    ("them", r"(?:them|these|those)(?=\s+(?:\d|[a-z]+\s+(?:more\s+)?times|twice|once|again|until|till|for\b)|\s*,\s*until)"),
    ("so", r"(?:this|(?:like|in)\s+this(?:\s+(?:way|manner))?)(?=\s+for\s+)"),
    ("for rows", rf"for\s+(?:a\s+total\s+of\s+)?(?P<n>{N})\s+{ROUND}(?:\s+{ALL})?"),
    ("this", rf"(?:this|that)\s+(?:(?!inc|dec)[a-z]+\s+)?(?P<row>{_ROW})"),
    (
        "named",
        r"(?:the\s+)?(?P<name>(?!last|this|that|these|those|next|every|each|same|other|first|second|short|more|all|of)[a-z]+\s+(?:round|rnd|row))\b(?!\s+\d+\b(?!\s*[(\[]|\s+(?:more|times|further)))",
    ),
    # --- how often ---
    (
        "shaped",
        rf"(?:until|till)\s+(?:you(?:'ve|\s+have)\s+{DONE}\s+)?(?:a\s+total\s+of\s+)?(?P<n>{N})\s+(?:inc|dec)(?:rease)?(?:s\b|\s+{_ROW})(?:\s+(?:have\s+been\s+)?{DONE})?(?:\s+{ALL})?(?P<since>\s+since\s+(?:joining|dividing|the\s+(?:cast[-\s]on|join|division|separation)))?",
    ),
    ("each", SECTIONED),
    ("each", BETWEEN_MARKERS),
    (
        "used",
        rf"until\s+(?:all\s+(?:of\s+)?(?:the\s+)?(?:[a-z]+\s+)?{STS}\s+(?:have\s+been|are)\s+(?:worked|used(?:\s+up)?|decreased)|no\s+(?:more\s+)?{STS}\s+(?:remain|are\s+left)\s+(?:outside|beyond)\s+(?:the\s+)?(?:gaps?|turns?))",
    ),
    *HOW_OFTEN,
    ("every", rf"(?:(?:on\s+)?(?:every|each)\s+(?:time|{_ROW}))"),
    # --- until when ---
    (
        "worked",
        rf"(?:until|till)\s+(?:you(?:'ve|\s+have)(?:\s+{DONE})?|there\s+are)\s+(?:a\s+total\s+of\s+)?(?P<n>{N})\s+{_ROW}(?:\s+(?:have\s+been\s+)?{DONE})?(?P<all>\s+{ALL})?",
    ),
    (
        "worked",
        rf"(?:until|till)\s+(?P<n>{N})\s+{_ROW}\s+(?:have\s+been|are)\s+{DONE}(?P<all>\s+{ALL})?",
    ),
    (
        "unwrapped",
        rf"(?:until|till)\s+(?:(?:you(?:\s+have|'ve)(?:\s+got)?|there\s+are|only)\s+)*(?:{N}\s+wrapped\s+{STS}\s+(?:(?:on|at)\s+)?(?:each|either|both)\s+(?:sides?|ends?)\s+and\s+)?(?P<n>{N})\s+(?:{STS}\s+(?:(?:are\s+left|rem(?:ain)?|left)\s+)?between\s+(?:the\s+)?(?:wraps|wrapped\s+{STS})|(?:{STS}\s+(?:are\s+(?:left\s+)?|rem(?:ain)?s?\s+|left\s+)?unwrapped|unwrapped\s+(?:{STS}|ones)(?:\s+(?:rem(?:ain)?|(?:are\s+)?left))?)\s+(?:in|at)\s+(?:the\s+)?(?:middle|cent(?:re|er)))",
    ),
    (
        "until",
        rf"(?:until|till)\s+(?:(?:there\s+are|you(?:\s+have|'ve)(?:\s+got)?|you\s+(?:get|come|are)\s+(?:(?:back|down|up)\s+)*to|you're\s+(?:(?:back|down|up)\s+)*(?:to|at)|only|again|a\s+total\s+of|the\s+(?:shawl|work|piece)\s+has)\s+)*(?P<n>{N})(?:\s+{STS}|(?=\s+(?:rem(?:ain(?:ing)?)?|(?:are\s+)?left)\b))"
        rf"(?:\s+(?:rem(?:ain(?:ing)?)?|(?:are\s+)?left|on\s+(?:the|your)\s+needles?|again|once\s+more|{ALL}))*",
    ),
    ("reworked", r"(?:(?:again\s+)?working\s+(?:all\s+)?(?:the\s+)?(?:sts|stitches)\s+as\s+they\s+(?:appear|come|face\s+you|present\s+themselves)|in\s+(?:exactly\s+)?the\s+same\s+way)\b"),
    (
        "measured",
        rf"(?:until|till)\s+(?P<far>(?!all\b|you\b)(?:[a-z][a-z'-]*\s+){{1,5}}(?:measures?|is|are|reach(?:es)?)\s+[^.;:()]*?{LONG}(?:(?![^.;:]*\b(?:until|then|inc|dec|increas|decreas))[^.;:()]*)?)(?=\s*[.;]|\s*$)",
    ),
    ("long", rf"for\s+(?P<long>{LONG})"),
    (
        "purpose",
        rf"for\s+(?:the\s+)?(?:{RIB}|(?:(?!next|last|first|each|every)[a-z0-9][a-z0-9'-]*\s+){{0,3}}?(?:rib(?:bing)?|patt?(?:ern)?|st(?:itch)?|lace|border|cuff|welt|brim|hem)\b\.?)(?=\s+(?:until|till|for|\d|[a-z]+\s+(?:more\s+)?times|twice|once)\b|\s*,)",
    ),
    (
        "ending",
        rf"(?:ending|finishing|stopping)\s+(?:with|after)\s+(?:an?\s+)?(?:(?:row|round|rnd)\s+\d+|(?:rs|ws)\s+{_ROW})",
    ),
    (
        "done",
        rf"[(:=-]*\s*(?:(?:you(?:'ll|\s+will)\s+(?:then\s+)?have\s+{DONE}|(?:which|that)(?:\s+(?:is|means|makes|gives|comes\s+to)|'s)|that\s+is|i\.e\.|for)\s+)?(?:a\s+total\s+of\s+)?{_CHANGES}\s*\)?(?=\s*[.,;]|\s*$)",
    ),
    ("or", r"or\s+until\s+[^.;:()]*?(?:is|are|measures?|reach(?:es)?)\s+[^.;:()]*?(?=\s*[.;(]|\s*$)"),
    (
        "counts",
        rf"(?:[:=-]|-+)?\s*(?P<list>\d+(?:\s*,\s*(?:then\s+)?\d+)+)(?:\s*,?\s*(?:and|then)\s+(?:finally\s+)?(?P<end>\d+))?\s+{STS}",
    ),
)
"""The kinds of phrases of which such a sentence is made."""


def write_repeat(phrases: Sequence[ToldPhrase]) -> tuple[tuple[Piece, ...], tuple[str, ...]] | None:
    """Write a sentence about rows worked again in the grammar's words.

    Args:
        phrases: The phrases it is made of.

    Returns:
        The words in their order, each with its place, and what is only said; None if they are not read.
    """
    pieces: list[Piece] = []
    said: list[str] = []
    verb: ToldPhrase | None = None
    for clause in _clauses(phrases):
        verb = next((phrase for phrase in clause if phrase.kind == "verb"), verb)
        written = _write_clause(clause, verb)
        if written is None:
            return None
        (words, at), *others = written[0]
        pieces += [(". ", at), (words[:1].upper() + words[1:], at), *others] if pieces else written[0]
        said += written[1]
    return tuple(pieces), tuple(said)


_WHAT: Final = ("so", "span", "last", "both", "pair", "them", "this", "named")
_ENDS: Final = ("all", "more", "once", "times", "every", "worked", "until", "used", "shaped", "unwrapped", "measured", "long", "for rows")


def _clauses(phrases: Sequence[ToldPhrase]) -> list[list[ToldPhrase]]:
    """Return the phrases of each order of a sentence: "rows 1-2 until 48 sts rem, then row 1 only until 40"."""
    clauses: list[list[ToldPhrase]] = [[]]
    for phrase in phrases:
        kinds = {told.kind for told in clauses[-1]}
        if phrase.kind in ("verb", *_WHAT) and kinds & {*_WHAT} and kinds & {*_ENDS}:
            clauses.append([])
        clauses[-1].append(phrase)
    return clauses


def _write_clause(
    phrases: Sequence[ToldPhrase], verb: ToldPhrase | None
) -> tuple[tuple[Piece, ...], tuple[str, ...]] | None:
    """Write one order of a sentence, whose verb may be that of the one before."""
    by_kind: dict[str, ToldPhrase] = {}
    for phrase in phrases:
        if phrase.kind in by_kind:
            return None
        by_kind[phrase.kind] = phrase
    what = [by_kind[kind] for kind in _WHAT if kind in by_kind]
    ends = [by_kind[kind] for kind in _ENDS if kind in by_kind]
    each = by_kind.get("every")
    if each is not None and len(ends) == 2 and _each_row(each) and len(what) == 1 and not what[0].get("to"):
        ends.remove(each)  # a row worked on every row has no other between
    if verb is None or len(what) != 1 or len(ends) != 1:
        return None
    (rows,), (end,) = what, ends
    by_kind["verb"] = verb
    if rows.get("name")[:3].lower() in ("inc", "dec") and end.kind not in ("more", "once"):
        return None  # whether the one shown is one of them is for its shaping to tell
    again = not re.match(r"work|do\b|knit", verb.match.group(), re.IGNORECASE)
    often = _often(rows, end, by_kind, again=again)
    if often is None:
        return None
    named = _rows(rows, end, again=again)
    half = by_kind.get("half")
    if half is not None:
        two = rows.kind == "both" or (rows.kind == "last" and rows.get("n").lower() in ("2", "two"))
        if not two or not again or end.kind not in ("more", "once", "times"):
            return None
        at = half.match.start()
        often = (*often, (f". Rep last 2 {rows.get('row') or 'rows'} once more but the last", at))
    finish = by_kind.pop("ending", None) if end.kind == "used" else None  # where the last stitch is worked
    said = tuple(by_kind[kind].match.group().strip(" ():=-") for kind in ("purpose", "reworked", "or", "done") if kind in by_kind)
    said += () if finish is None else (finish.match.group(),)
    return (*named, *often, *_behind(by_kind)), said


def _rows(rows: ToldPhrase, end: ToldPhrase, *, again: bool) -> tuple[Piece, ...]:
    """Return the words for the rows."""
    at, row = rows.match.start(), (rows.get("row") or "round").lower()
    if rows.kind == "named":
        return (("rep ", at), (f"{rows.get('name')} ", rows.match.start("name")))
    if rows.kind == "span":
        verb = "work" if end.kind in ("once", "times", "every") and not again else "rep"
        number: tuple[Piece, ...] = ((f"{verb} {row} ", at), (rows.get("n"), rows.match.start("n")))
        if not rows.get("to"):
            return (*number, (" ", at))
        joint = rows.match.string[rows.match.end("n") : rows.match.start("to")].lower()
        joint = " and " if re.search(r"\band\b|&", joint) else "-"
        return (*number, (joint, at), (rows.get("to"), rows.match.start("to")), (" ", at))
    if rows.kind == "so":
        return (("rep last round ", at),)
    if rows.kind == "this":
        return ((f"rep last {row} ", at),)
    if rows.kind == "them":
        return ((f"rep last {_just_told(rows)}rows ", at),)
    if rows.kind in ("both", "pair") or not rows.get("n"):
        row = "rows" if rows.kind == "pair" and not rows.get("row") else row
        return ((f"rep last {'2 ' if rows.kind != 'last' else ''}{row} ", at),)
    return (("rep last ", at), (rows.get("n"), rows.match.start("n")), (f" {row} ", at))


_COUNTED: Final = regex(rf"[^.;]*[.;]\s+(?:(?:you(?:\s+now)?\s+have|there\s+are|now)\s+)*{N}\s+{STS}", re.IGNORECASE)
"""A count in the sentence behind, which the plan compares."""


def _just_told(them: ToldPhrase) -> str:
    """Return how many rows the sentence before speaks of: "These 4 rounds form the pattern. Work them ..."."""
    before = _FORMED.search(them.match.string[: them.match.start()])
    return "" if before is None else f"{before['n']} "


_ONE_ROW: Final = regex(r"(?:^|[.:])\s*(?![^.]*\b(?:rounds|rnds|rows)\b)(?=[^.]*(?:\*|\b(?:around|across|to\s+(?:the\s+)?end)\b))[^.]+[.]\s*[a-z]+\s+$", re.IGNORECASE)
"""One row told stitch by stitch, and the verb behind it: "*K1, p1; rep from * around. Do this for 7 rounds"."""
_FORMED: Final = regex(
    rf"\b(?:these|the\s+last|last)\s+(?P<n>{N})\s+{ROUND}\s+(?:form|make|set(?:\s+up)?|establish)\b[^.:;]*[.;]\s+[a-z]+\s+$",
    re.IGNORECASE,
)


def _often(
    rows: ToldPhrase, end: ToldPhrase, by_kind: dict[str, ToldPhrase], *, again: bool
) -> tuple[Piece, ...] | None:
    """Return the words for how often or until when; None if nobody can tell."""
    at, kind = end.match.start(), end.kind
    counts = by_kind.get("counts")
    if kind == "every":
        if counts is None or rows.kind != "span" or rows.get("to"):
            return None
        many = len(_listed(counts))
        return ((f"{many} times", at),)
    if counts is not None:
        return None
    if kind == "once":
        return (("once" if rows.kind == "span" and not again else "once more", at),)
    if kind == "measured":
        return (("until ", at), (end.get("far"), end.match.start("far")))
    if kind == "long":
        return (("for ", at), (end.get("long"), end.match.start("long")))
    if rows.kind == "so" or kind == "for rows":
        # all of them are so many, the one just told as well
        fits = rows.kind == "so" and kind == "for rows" and _ONE_ROW.search(rows.match.string[: rows.match.start()])
        return ((end.get("n"), end.match.start("n")), (" times in all", at)) if fits else None
    if kind == "unwrapped":
        return (("until ", at), (end.get("n"), end.match.start("n")), (" sts unwrapped in the middle", at))
    if kind == "used":
        return (("until all sts have been worked", at),)
    group = "n" if end.match.groupdict().get("n") else "n2"
    if kind == "times" and not end.get(group):
        return ((end.match.group().lower(), at),) if again or rows.kind == "span" else None
    if kind == "more" and not end.get(group):
        return (("twice more" if again or rows.kind != "span" else "twice", at),)
    number = (end.get(group), end.match.start(group))
    if kind == "worked":
        if end.get("all") or rows.kind == "named":
            return None  # of the piece or of this repeat is not said, and of one round not what lies between
        return (("until ", at), number, (" rows so far", at))
    if kind == "until":
        return (("until ", at), number, (" sts", at))
    apart = rows.kind in ("both", "last", "pair", "them") and ("count" in by_kind or _COUNTED.match(end.match.string, end.match.end()) is not None)
    if kind == "shaped" and end.get("since"):
        return (number, (" times in all", at))
    if kind == "shaped" or (kind == "times" and apart and not again):
        return (number, (" times in all", at)) if apart else None
    if kind == "times" and "every" in by_kind and "count" in by_kind:
        return (number, (" times", at))  # the count behind tells whether the one just worked is one of them
    if kind == "times":
        said = by_kind["verb"].match.group().lower().startswith("rep")
        return (number, (" times", at)) if said or (rows.kind == "span" and not again) else None
    tail = " times in all" if kind == "all" else " more times" if again or rows.kind != "span" else " times"
    return (number, (tail, at))


def _each_row(each: ToldPhrase) -> bool:
    return not each.match.group().lower().endswith("time")


def _listed(counts: ToldPhrase) -> list[str]:
    return re.findall(r"\d+", counts.match.group())


def _behind(by_kind: dict[str, ToldPhrase]) -> tuple[Piece, ...]:
    """Return the words behind: with which row it ends, and the count."""
    pieces: list[Piece] = []
    ending, count, counts = by_kind.get("ending"), by_kind.get("count"), by_kind.get("counts")
    if ending is not None:
        words = re.sub(r"^\w+\s+\w+\s+(?:an?\s+)?", "", ending.match.group(), flags=re.IGNORECASE)
        at = ending.match.end() - len(words)
        pieces += [(". Ends with ", ending.match.start()), (words, at)]
    if count is not None:
        pieces += [(". ", count.match.start()), (f"{count.get('n')} sts", count.match.start("n"))]
    if counts is not None:
        pieces += [(". ", counts.match.start()), (f"{_listed(counts)[-1]} sts", counts.match.start("list"))]
    return (*pieces, *sections(tuple(by_kind.values())))
