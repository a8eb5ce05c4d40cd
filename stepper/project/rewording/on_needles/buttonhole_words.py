"""Write buttonholes that a line makes beside its rows as a sentence of their own. No I/O.

"Rib 7 rows, making 7 buttonholes in row 4 thus: (yrn, work 2 tog), first and last 4 sts from ends, remainder spaced
evenly between" tells how many, in which rows, how each is made, how far from the ends and that they lie evenly, in any
order and in many words. Each of these is looked for behind "making … buttonholes" until the sentence ends; words that
are none of them leave the line as it is. What they come to is "With 7 buttonholes in row 4, 4 sts from each end, by yo,
k2tog." Looked for only in a line that nothing else reads. Source: the wording of patterns in print, US and UK; common
practice.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Final

from stepper.project.reading.elements import WORDS
from stepper.project.rewording.clauses.telling import works_nothing
from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import N
from stepper.regex import regex

_HOLES: Final = r"(?:button\s?-?holes?|holes?\s+for\s+(?:the\s+)?buttons?)\b"
_NTH: Final = r"(?:\d+(?:st|nd|rd|th)|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth)"
_COUNTED: Final = (
    rf"(?:(?P<number>{N})|an?(?:other)?|one\s+more|the|(?:the\s+)?(?:next|last|{_NTH}))"
)
_LIST: Final = rf"{_NTH}(?:\s*(?:,\s*(?:and\s+)?|and\s+|&\s*){_NTH})*"
_MAKING: Final = regex(
    r"(?P<lead>\s*(?:[,;]\s*|\.\s+)?(?:\band\s*,?\s*|\bbut\s+|\bwhile\s+)?(?:\bat\s+the\s+same\s+time\s*,?\s*)?)"
    rf"(?:(?:on|in)\s+(?:the\s+)?(?:(?P<nths>{_LIST})\s+(?:rows?|rnds?|rounds?)|(?:rows?|rnds?|rounds?)\s+(?P<numbers>\d+(?:\s*(?:,\s*(?:and\s+)?|and\s+|&\s*)\d+)*)|(?P<next>next\s+row))\s*,?\s+)?"
    rf"\b(?P<verb>mak(?:e|ing)|work(?:ing)?|plac(?:e|ing)|form(?:ing)?|includ(?:e|ing)|with)\s+"
    rf"(?:(?P<evenly>evenly\s+spaced)\s+)?(?:{_COUNTED}\s+)?(?:(?P<spaced>evenly\s+spaced)\s+)?{_HOLES}",
    re.I,
)
_EVENLY: Final = regex(
    r"[\s,;]*(?:(?:and|with)\s+)?(?:(?:the\s+)?(?:remainder|rest|others?|remaining\s+(?:ones|\d+|\w+)|remaining)\s+(?:to\s+be\s+)?)?"
    r"(?:(?:evenly\s+spaced|spaced?\s+(?:out\s+)?evenly|evenly|equally\s+spaced|spaced\s+equally|at\s+equal\s+distances)\b)"
    r"(?:\s+(?:between(?:\s+(?:them|these|the\s+two))?|apart|(?:along|across|over|in|on|down|up)\s+(?:the\s+)?(?:whole\s+)?(?:row|band|edge|front|length(?:\s+of\s+(?:the\s+)?(?:row|band|edge))?|sts|stitches)\b(?!\s*\d)))?",
    re.I,
)
_ROWS: Final = regex(
    rf"[\s,;]*(?:(?:in|on|over|across|along|when\s+working)\s+)(?:the\s+)?(?:(?P<nths>{_LIST})(?:\s+(?:rows?|rnds?|rounds?))?"
    r"|(?:rows?|rnds?|rounds?)\s+(?P<numbers>\d+(?:\s*(?:,\s*(?:and\s+)?|and\s+|&\s*)\d+)*)|(?P<this>(?:this|the\s+next|next|same)\s+(?:row|rnd|round)))\b",
    re.I,
)
_EVERY: Final = regex(
    rf"[\s,;]*(?:in|on)?\s*(?:every|each)\s+(?P<every>{_NTH})\s+(?:row|rnd|round)"
    rf"[\s,;]*(?:(?:beg(?:inning)?|start(?:ing)?|first)\.?\s+(?:at|on|with|from|in)|the\s+first\s+(?:one\s+)?(?:in|on)|from)\s+(?:the\s+)?(?:row\s+(?P<row>\d+)|(?P<nth>{_NTH})(?:\s+row)?)"
    rf"(?:[\s,;]*(?P<times>{N})\s+times(?:\s+(?:in\s+all|altogether|in\s+total))?)?",
    re.I,
)
_FOLLOWING: Final = regex(
    rf"[\s,;]*(?:in|on)\s+(?:the\s+)?(?P<nth>{_NTH})(?:\s+row)?\s+and\s+(?:then\s+)?(?:(?:in|on)\s+)?every\s+(?:foll(?:owing)?\.?\s+)?(?P<every>{_NTH})\s+(?:row|rnd|round)"
    rf"(?:\s+(?:thereafter|after(?:wards)?))?(?:[\s,;]*(?P<times>{N})\s+times\s+(?:in\s+all|altogether|in\s+total))?",
    re.I,
)
_ENDS: Final = regex(
    rf"[\s,;]*(?:(?:with\s+)?(?:the\s+)?first\s+and\s+last\s+(?:(?:one|buttonholes?)\s+)?(?:worked\s+|placed\s+|to\s+be\s+)?(?:at\s+)?(?P<first>{N})\s*(?:sts?|stitches)\s+(?:in\s+)?from\s+(?:the\s+|each\s+|either\s+|both\s+)?(?:ends?|edges?)(?:\s+of\s+(?:the\s+)?(?:row|band))?"
    rf"|(?:beginning\s+and\s+ending\s+)?(?P<each>{N})\s*(?:sts?|stitches)\s+(?:in\s+)?from\s+(?:each|either|both|the)\s+(?:ends?|edges?)(?:\s+of\s+(?:the\s+)?(?:row|band))?)\b",
    re.I,
)
_BEFORE: Final = regex(
    r"[\s,;]*(?:made\s+|worked\s+)?(?:as|like)\s+(?:before|(?:the\s+)?(?:last|first|others?|previous)(?:\s+ones?)?)\b", re.I
)
_WHERE: Final = regex(
    r"[\s,;]*(?P<where>(?:at|in|on|into)\s+(?:the\s+)?(?:right|button\s?hole|front)\s+(?:front|band|border|edge)(?:\s+(?:edge|band|border))?(?:\s*\((?:(?:left|right)(?:\s+front)?\s+(?:for|if)\s+[a-z' ]+|(?:as|when)\s+worn)\))?)",
    re.I,
)
_THUS: Final = r"(?:thus|as\s+foll(?:ow)?s?\.?|like\s+this|so|by(?:\s+working)?|each\s+(?:one\s+)?(?:worked(?:\s+(?:thus|by|as\s+follows))?|thus|by)|worked\s+(?:thus|as\s+follows))"
_BRACKET: Final = regex(rf"[\s,;]*(?:{_THUS}\s*[:,-]?\s*)?\(\s*(?P<how>[^()*]+?)\s*\)(?!\s*(?:\d|twice|to\b))", re.I)
_TOLD: Final = rf"\s*[,;]\s*(?:(?:the\s+)?(?:first|remainder|rest|others?|remaining|(?:{N})\s*(?:sts?|stitches)\s+(?:in\s+)?from)\b|evenly\b|spaced\b)"
_HOW: Final = regex(rf"[\s,;]*(?:{_THUS}\s*[:,-]?|[:=]|-+)\s*(?P<how>(?!(?:the\s+)?first\b)(?:(?!{_TOLD})[^.]|\.(?=\w)|(?<=\b[a-z])\.(?=\s*[,;\d])|(?<=tog)\.(?=\s*[,;)]))*)", re.I)
_OVER_THEM: Final = (
    r"(?:over|above)\s+(?:each|those|these|them|the\s+gaps?|the\s+(?:cast|bound)[-\s]off\s+(?:sts|stitches))\b"
    r"(?:\s+(?:of\s+(?:those|these|them)|gap|buttonhole|opening|(?:just\s+)?(?:cast|bound)[-\s]off(?:\s+(?:sts|stitches))?|(?:in|on)\s+(?:the\s+)?(?:previous|last)\s+row))*"
)
_CLOSING: Final = regex(
    rf"[\s,;(]*(?:and\s+)?(?:(?:on|in)\s+(?:the\s+)?(?:next|foll(?:owing)?|return)\s+row\s*,?\s*)?(?:cast(?:ing)?\s+on|co)\s+(?:them\s+on\s+)?(?:(?:(?P<number>\d+)|the\s+same\s+number|them|these)\s*(?:sts\s+)?)?(?:again\s+)?(?:{_OVER_THEM}(?:\s+(?:on|in)\s+(?:the\s+)?(?:next|foll(?:owing)?|return)\s+row)?|(?:on|in)\s+(?:the\s+)?(?:next|foll(?:owing)?)\s+row|again(?:\s+(?:on|in)\s+(?:the\s+)?(?:next|foll(?:owing)?)\s+row)?)\s*\)?(?=\s*(?:[.;,)]|$))",
    re.I,
)
_STOP: Final = regex(r"\s*(?:\.(?=\s|$)|$)")
_OVER: Final = regex(r"\b(?:yrn|yfwd|yfd|yf|wyf|w\.?\s?f(?:wd)?\.?|wool\s+forward|yarn\s+(?:forward|over)|wrn|yon)(?=\s*(?:,|\)|$))", re.I)
_TOGETHER: Final = regex(r"\b(?:work|rib|patt|take)\s*(?:2|two)\s*tog(?:ether)?\b\.?", re.I)
_SHORT: Final = regex(r"\b(?:make|work)\s+(?:another|one\s+more|an?other|a\s+second|a\s+further)\s+button\s?-?hole\b(?:\s+(?:as|like)\s+(?:before|the\s+(?:last|first)))?|\brep(?:eat)?\s+(?:the\s+)?(?:last\s+)?(?:(?:2|two)\s+)?buttonhole\s+rows(?:\s+once(?:\s+more)?)?", re.I)
_LATER: Final = regex(
    rf"\s*[.;,]?\s*(?:\band\s+)?(?:(?:on|in)\s+(?:the\s+)?(?:next|foll(?:owing)?|return)\s+row\s*,?\s*)?(?P<cast>cast(?:ing)?\s+on)\s+(?P<number>{N})\s*(?:sts?\s+|stitches\s+)?"
    rf"{_OVER_THEM}(?:\s+(?:on|in)\s+(?:the\s+)?(?:next|foll(?:owing)?|return)\s+row)?(?=\s*(?:\.|$))",
    re.I,
)
"""How stitches bound off in a row are cast on again in the next, told with it."""
_NEXT_ROW: Final = regex(r"\b(?:on|in)\s+(?:the\s+)?(?:next|foll(?:owing)?|return)\s+row\b", re.I)
_OFF: Final = regex(r"\b(?:cast|bind)\s+off\s+\d|\bBO\s*\d", re.I)
_OFF_SO_MANY: Final = regex(r"\b(?:cast|bind)\s+off\s+(?P<number>\d+)\b", re.I)
_FOR_EACH: Final = regex(r"\s+(?:sts?\s+)?for\s+each(?:\s+(?:buttonhole|one))?$", re.I)
_GOES_ON: Final = regex(r"\s*[,;]\s*(?:and\s+|then\s+)*", re.I)
_HEAD_ALONE: Final = regex(r"(?:^|[.]\s+)(?:next|buttonhole)\s+row(?:\s*\([RW]S\))?\s*(?::\s*$|$)", re.I)
"""The head of a row of which no more is told than that buttonholes are made in it."""
_TWICE: Final = regex(r"(?<=\byo)(?P<twice>\s+(?:twice|2\s+times))(?=\s*,)|(?<=\byrn)\s+twice(?=\s*,)", re.I)
_YO: Final = regex(r"\by(?:o|rn)\b", re.I)
_DROPPED: Final = regex(
    r"\s*[.;,]?\s*(?:\band\s+)?(?:(?:on|in)\s+)?(?:the\s+)?(?:next|foll(?:owing)?|return)\s+row\s*,?\s*(?:drop(?:ping)?|let(?:ting)?\s+(?:go|fall))\s+(?:one|1|the\s+(?:extra|second))\s+(?:of\s+)?(?:(?:the|each|every)\s+)?(?:(?:two|2|double|pair\s+of)\s+)?"
    r"(?:(?:yo|yarn[\s-]?over|loop|wrap)(?:'?s)?|of\s+each)(?:\s+(?:of|in|at|from)\s+each\s+(?:buttonhole|pair|double\s+yo))?(?=\s*(?:\.|$))",
    re.I,
)
"""A yarn over wrapped twice, one loop of which is dropped in the next row: one, and long."""
_WITHOUT: Final = regex(
    rf"\s*[,;]?\s*(?:\band\s+|\bbut\s+)?(?:\b(?:omit(?:ting)?|without|with\s+no|leav(?:e|ing)\s+out)\s+(?:the\s+|all\s+|any\s+|making\s+)*{_HOLES})(?=\s*(?:\.|$))",
    re.I,
)
_TO_END: Final = regex(r"\bto\s+end\b|\*", re.I)
"""A row told up to its end, which needs no edge to be found."""
_ALONE: Final = regex(r":\s*(?P<word>(?:work\s+in\s+)?(?:rib|patt(?:ern)?))$", re.I)
"""A row of which no more is told than that its pattern goes on: "Buttonhole row: Rib"."""


def write_buttonholes(line: Reworded) -> Reworded:
    """Write buttonholes made beside rows as a sentence behind them.

    Returns:
        The line; the same if it makes none, or tells of them in words that are not known.
    """
    text = line.text
    low = text.lower()
    if not any(word in low for word in ("hole", "drop", "cast on", "casting on")):
        return line
    without = _WITHOUT.search(text)
    if without is not None and text[: without.start()].strip():
        return laid_anew(line, *without.span(), (". Without buttonholes",))
    more = _SHORT.search(text)
    if more is not None:
        return _written_more(line, more)
    for making in _MAKING.finditer(text):
        found = _parts(text, making)
        if found is None:
            continue
        words, kept, end = found
        lead = text[: making.start()].rstrip(" ,;")
        if (making["next"] and not lead) or _HEAD_ALONE.search(lead):
            sign = " " if lead else "Next row: "
            written = laid_anew(line, len(lead), end, (f"{sign}Work even. {words}",))
            return replace(written, kept=(*written.kept, *kept))
        if not lead or lead.endswith((".", ":")) or "*" in lead.rsplit(". ", 1)[-1]:
            continue  # no rows are said before it
        start = len(lead)
        tail = "" if text[end:].startswith(".") else "."
        alone = _ALONE.search(lead)
        if alone is not None:
            start, words = alone.start("word"), f"Work in pattern. {words}"
        written = laid_anew(line, start, end, (f"{'' if alone is not None else '. '}{words}{tail}",))
        return replace(written, kept=(*written.kept, *kept))
    return _with_next_row(line)


def _with_next_row(line: Reworded) -> Reworded:
    """Write the row that closes buttonholes, told with the one that opens them, as a sentence of its own."""
    text = line.text
    later, dropped = _LATER.search(text), _DROPPED.search(text)
    if later is not None and _NEXT_ROW.search(later[0]) and _OFF.search(text[: later.start()]):
        words = f". Work in pattern, casting on {_number(later['number'])} sts over each buttonhole"
        return laid_anew(line, *later.span(), (words,))
    wrapped = [each.span() for each in _TWICE.finditer(text)]
    yos = len(_YO.findall(text[: dropped.start()])) if dropped is not None else 0
    if dropped is not None and wrapped and len(wrapped) == yos:
        line = laid_anew(line, *dropped.span(), (". Work 1 row even",))
        for span in reversed(wrapped):
            line = laid_anew(line, *span, ())
        said = "wrap the yarn twice for each yo, and drop one of the two in the next row"
        return replace(line, kept=(*line.kept, said))
    return line


def _written_more(line: Reworded, more: re.Match[str]) -> Reworded:
    """Write "make another buttonhole as before" as a sentence of its own."""
    before, behind = line.text[: more.start()], line.text[more.end() :]
    lead = before.rstrip(" ,;")
    aside = re.match(r"\s*\((?P<said>[^()*\d]*)\)", behind)
    if aside is not None and not works_nothing(f"{aside['said'].strip(' .!')}."):
        return line
    end = more.end() + (aside.end() if aside is not None else 0)
    if lead.lower().endswith(" and"):
        lead = lead[:-4].rstrip(" ,")
    if not _STOP.match(line.text, end) and not line.text[end:].lstrip().startswith((",", ";")):
        return line
    sign = ". " if lead and not lead.endswith((".", ":")) else " " if lead else ""
    start = len(lead)
    rest = _GOES_ON.match(line.text, end)
    words = f"{sign}Work another buttonhole{'. ' if rest is not None else ''}"
    written = laid_anew(line, start, rest.end() if rest is not None else end, (words,))
    return replace(written, kept=(*written.kept, aside["said"].strip())) if aside is not None else written


def _parts(text: str, making: re.Match[str]) -> tuple[str, list[str], int] | None:
    """Return what is told of buttonholes in the words that are read, what is only said, and where it ends."""
    at = making.end()
    number = _number(making["number"]) if making["number"] else ""
    listed = making["nths"] or making["numbers"]
    known: dict[str, str] = {"rows": _in_rows(listed)} if listed else {}
    kept: list[str] = []
    while not _STOP.match(text, at):
        for name, pattern in _TOLD_OF_THEM:
            match = pattern.match(text, at)
            if match is not None and name not in known and match.end() > at:
                break
        else:
            return None
        told = _READERS[name](match, known) if name in _READERS else {}
        if told is None:
            return None
        known.update({name: "", **told})
        kept += [match["where"]] if name == "where" else []
        at = match.end()
    if "made" not in known and "before" not in known:
        return None  # how they are made is not told
    evenly = "evenly" in known or "ends" in known or making["evenly"] or making["spaced"]
    starred = "*" in known.get("made", "")
    if number and number != "1" and not (evenly or starred):
        return None  # several, and where they lie is not told
    if evenly and not number:
        return None  # how many is not told
    if "where" in known and not (known["right"] or evenly or _TO_END.search(known.get("made", ""))):
        return None  # an edge that may be either of the row's
    return _sentence(number if evenly or starred or "made" not in known else "", known), kept, at


def _sentence(number: str, known: Mapping[str, str]) -> str:
    """Return the sentence that tells of buttonholes; without a number they lie where the row says."""
    told = f"{number} buttonholes" if number else "a buttonhole"
    by = f" by {known['made']}" if "made" in known else ""
    again = "" if by else " as before"
    rows, ends, right = (known.get(name, "") for name in ("rows", "ends", "right"))
    return f"With {told}{again}{right}{rows}{ends}{',' if ends and by else ''}{by}"


def _told_how(match: re.Match[str], known: Mapping[str, str]) -> dict[str, str] | None:
    """Read how each is made; None if it is told twice, or closed otherwise than it is opened."""
    how = match["how"]
    closing = _CLOSING.search(how)
    if closing is not None and closing.end() == len(how.rstrip()):
        how = how[: closing.start()]
        if not _closes_as_many(how, closing["number"]):
            return None
    return None if "made" in known else {"made": _made(how)}


def _told_every(match: re.Match[str], known: Mapping[str, str]) -> dict[str, str] | None:
    """Read rows at intervals, and the first of them."""
    first = match.groupdict().get("row") or _ordinal(match["nth"])
    often = f" {match['times']} times" if match["times"] else ""
    return None if "rows" in known else {"rows": f" every {_ordinal(match['every'])}th row from row {first}{often}"}


def _told_rows(match: re.Match[str], known: Mapping[str, str]) -> dict[str, str] | None:
    """Read rows by their numbers; "this row" is the one there is."""
    return {"rows": "" if match["this"] else _in_rows(match["nths"] or match["numbers"])}


def _told_ends(match: re.Match[str], known: Mapping[str, str]) -> dict[str, str] | None:
    return {"ends": f", {_number(match['first'] or match['each'])} sts from each end"}


def _told_where(match: re.Match[str], known: Mapping[str, str]) -> dict[str, str] | None:
    right = re.search(r"\bright\b", match["where"], re.I)
    return {"right": " at right front" if right else ""}


def _told_closing(match: re.Match[str], known: Mapping[str, str]) -> dict[str, str] | None:
    return {} if _closes_as_many(known.get("made", ""), match["number"]) else None


def _closes_as_many(how: str, number: str | None) -> bool:
    """Return whether as many stitches are cast on again as each buttonhole binds off."""
    off = _OFF_SO_MANY.search(how)
    return off is not None and number in (None, off["number"])


def _in_rows(listed: str) -> str:
    """Return in which rows buttonholes lie, from a list of their numbers."""
    rows = [_ordinal(one) for one in re.findall(rf"{_NTH}|\d+", listed, re.I)]
    return f" in row{'s' if len(rows) > 1 else ''} {', '.join(rows)}"


def _made(how: str) -> str:
    """Return how a buttonhole is made in the words that are read within a row."""
    how = _FOR_EACH.sub("", how.strip(" ,;:"))
    words = _TOGETHER.sub("k2tog", _OVER.sub("yo", how))
    return re.sub(r"\bcast\s+off\b", "bind off", words, flags=re.I)


def _number(told: str) -> str:
    """Return a number in figures."""
    return str(WORDS.index(told.lower())) if told.lower() in WORDS else told


_ORDINALS: Final = (
    "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth",
)  # fmt: skip


def _ordinal(told: str) -> str:
    """Return the number of a row: `4th`, `fourth`, `4`."""
    return str(_ORDINALS.index(told.lower()) + 1) if told.lower() in _ORDINALS else re.sub(r"\D", "", told)


_TOLD_OF_THEM: Final = (
    ("every", _EVERY),
    ("following", _FOLLOWING),
    ("rows", _ROWS),
    ("ends", _ENDS),
    ("evenly", _EVENLY),
    ("before", _BEFORE),
    ("where", _WHERE),
    ("closing", _CLOSING),
    ("bracket", _BRACKET),
    ("how", _HOW),
)
"""What may be told of buttonholes, in the order looked for."""
_READERS: Final[Mapping[str, Callable[[re.Match[str], Mapping[str, str]], dict[str, str] | None]]] = {
    "every": _told_every,
    "following": _told_every,
    "rows": _told_rows,
    "ends": _told_ends,
    "where": _told_where,
    "closing": _told_closing,
    "bracket": _told_how,
    "how": _told_how,
}
"""What comes of it: words by what they tell; None where it does not agree with what is told already."""
