"""Write a shaping whose row is told behind a colon, or in brackets, as the row and how often it is worked. No I/O.

"Increase for the neckline at the beginning of every RS row: knit 2, M1L, knit to end. Increase 4 times in total": what
is shaped and where is only said, as the row shows it; on which rows stands before the row, how often before or behind.
All of these are phrases in any order (`SHAPED`); written is "Every RS row 4 times: knit 2, M1L, knit to end". "4 times
more" comes on top of a row that is told for the next row, and is no number of times for every so many. Looked for only
in a line that nothing else reads. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import ROUND, SIDE, STS, N
from stepper.project.rewording.told.phrases import Kinds, ToldPhrase, leading_phrases, prepare_kinds
from stepper.regex import regex

_PLACE: Final = r"(?:neck(?:line)?|armholes?|shoulders?|raglans?|sleeves?|sides?|front|back|waist|thumb|gusset|v-?neck)"
_ROWS: Final = (
    rf"(?:(?:the\s+)?(?P<next>next|following|foll\.?)|(?:every|each)\s+(?:foll(?:owing)?\.?\s+)?(?:(?P<nth>\d+(?:st|nd|rd|th)|{N}|other|alt(?:ernate)?\.?|second|third|fourth|sixth|eighth)\s+)?)"
    rf"\s*(?P<side>{SIDE})?\s*(?P<row>{ROUND})"
)
_OFTEN: Final = rf"(?:for\s+|a\s+total\s+of\s+|in\s+(?:all|total)\s*,?\s+)*(?P<n>{N})\s+times(?:\s+(?P<all>in\s+(?:all|total)|altogether|total)|\s+(?P<more>more|again|further))?"

SHAPED: Final[Kinds] = prepare_kinds(
    ("often", _OFTEN),
    ("often", rf"(?:another|a\s+further)\s+(?P<n>{N})\s+times|(?P<n2>{N})\s+(?:more|further)\s+times"),
    ("once", r"(?P<once>once|twice)\s+(?:more|again)|again\b"),
    ("rows", rf"(?:(?:(?:at|on)\s+)?(?:the\s+)?(?:beg(?:inning)?|start|end)s?\.?\s+of\s+|(?:on|in|of)\s+)?{_ROWS}"),
    ("where", rf"(?:at|along)\s+(?:the\s+|each\s+)?(?:{_PLACE})\s+edges?\b"),
    ("where", r"(?:at|on)\s+(?:each|both|either)\s+(?:ends?|sides?|edges?)(?:\s+of\s+(?:the\s+)?(?:marker|row|work|piece))?\b"),
    ("where", rf"for\s+(?:the\s+)?(?:(?:left|right|front|back)\s+)?{_PLACE}(?:\s+(?:edge|shaping))?\b"),
    ("manner", r"as\s+foll(?:ow)?s|thus|like\s+(?:this|that|so)|(?:in\s+)?(?:the\s+same|this|that)\s+(?:manner|way|fashion)"),
    ("do", rf"(?:shape|work|make|do)\b(?:\s+(?:it|so|(?:the|this)(?:\s+(?:same|{_PLACE}|(?:inc|dec)(?:rease)?s?(?:\s+{ROUND})?|row))?|{_PLACE}))?(?![\w-])"),
    ("again", rf"rep(?:eat)?\b\.?(?:\s+(?:this|the|that)(?:\s+last)?(?:\s+(?:(?:inc|dec)(?:rease)?s?\b(?:\s+{ROUND})?|{ROUND}))?)?"),
    ("do", rf"(?:inc|dec)(?:reas(?:e|es|ing))?\b\.?(?:\s+(?:1|one)\s+{STS})?"),
    ("lead", r"(?:now|then|next)\b"),
)  # fmt: skip
"""The kinds of phrases about a row that is told besides, in the order tried."""
_STARTS: Final = regex(r"(?:^|[.!;])\s*(?:[a-z][a-z ]{2,24}:\s*)?(?=[A-Za-z])", re.IGNORECASE)
_TOLD: Final = regex(
    r"\s*(?:,?\s*by\s+working\s*|:\s*)(?P<row>[^:.;()]*\bto\s+(?:the\s+)?(?:end|last)\b[^:.;()]*|[^:.;()]*,[^:.;()]*\buntil\s+\d+\s+(?:sts|stitches)\s+(?:rem(?:ain)?|are\s+left)\b[^:.;()]*)"
    r"|\s*\(\s*(?P<inside>[^()]*\bto\s+(?:the\s+)?(?:end|last)\b[^()]*)\)",
    re.IGNORECASE,
)
_LAST_TIMES: Final = regex(rf"\s*,\s*(?:and\s+)?{_OFTEN}\s*$", re.IGNORECASE)
_STOP: Final = regex(r"\s*[.;,]\s*(?:and\s+)?(?:then\s+)?|\s+and\s+(?:then\s+)?", re.IGNORECASE)
_COUNT: Final = regex(rf"\s*(?:[-=:(\[]+\s*|,\s*)(?:=\s*)?(?P<n>{N})\s*{STS}(?:\s+(?:rem(?:ain)?|left))?\s*[)\]]?(?=\s*[.;]|\s*$)", re.IGNORECASE)
_AGAIN: Final = regex(r"[^.;]*[.;][^.;]*\b(?:more|again|times|rep(?:eat)?|do\s+this)\b", re.IGNORECASE)
"""A next sentence that goes on with the row in other words."""
_END: Final = regex(r"\s*(?:[.;]|$)")
_EVEN: Final = regex(r"(?:2nd|second|two|other|alt(?:ernate)?\.?|fourth|four|sixth|six|eighth|eight|\d*[02468](?:th)?)", re.IGNORECASE)
"""Every so many rows that are all of one side."""
_ONE_END: Final = regex(r"\b(?:beg(?:inning)?|start|end)\b", re.IGNORECASE)
_ONE_EDGE: Final = regex(r"^(?!.*\beach\b).*\bedges?$", re.IGNORECASE)
_HAS: Final = regex(r"\b(?:inc|dec|shape|work)", re.IGNORECASE)


def write_shaped_rows(line: Reworded) -> Reworded:
    """Write a row that a line tells behind its shaping with the rows on which it is worked.

    Returns:
        The line; the same if it has no such row, or does not say how often it is worked.
    """
    if (":" not in line.text and "(" not in line.text) or not _HAS.search(line.text):
        return line
    for start in reversed([found.end() for found in _STARTS.finditer(line.text)]):
        line = _written(line, start)
    return line


def _written(line: Reworded, start: int) -> Reworded:
    """Write the row that is told from a place on; the line as it is if none is."""
    text = line.text
    head, at = leading_phrases(text, start, len(text), SHAPED)
    told = _TOLD.match(text, at)
    found = _sorted(head)
    if told is None or found is None or "do" not in found or {"again", "once"} & found.keys():
        return line
    if "rows" not in found:
        return _once(line, start, head, told) if found.keys() <= {"do", "where", "manner", "lead"} else line
    row, end = told.span("row" if told["row"] else "inside"), told.end()
    tail: dict[str, ToldPhrase] = {}
    often = found.get("often")
    within = _LAST_TIMES.search(text, *row)
    stop = _STOP.match(text, end)
    if within is not None and often is None:
        row, often = (row[0], within.start()), ToldPhrase("often", within)
    elif stop is not None:
        phrases, behind = leading_phrases(text, stop.end(), len(text), SHAPED)
        sorted_ = _sorted(phrases)
        closed = _END.match(text, behind) is not None or _COUNT.match(text, behind) is not None
        if sorted_ and closed and {"often", "once"} & sorted_.keys() and not {"where"} & sorted_.keys():
            tail, end = sorted_, behind
    if tail and often is not None:
        return line
    rows = found["rows"]
    again = tail.get("rows")
    if again is not None and (again.get("side").lower() != rows.get("side").lower() or again.get("nth") or not rows.get("next")):
        return line
    if not tail and often is None and _AGAIN.match(text, end) is not None:
        return line
    times = _times(often or tail.get("often") or tail.get("once"), first=bool(rows.get("next")), repeats="again" in tail)
    if times is None or not (rows.get("side") or rows.get("nth") or not rows.get("next")):
        return line
    count = _COUNT.match(text, end)
    counted: list[str | tuple[int, int]] = [". ", count.span("n"), " sts"] if count is not None else []
    said = [phrase.match.group().strip(" ,") for phrase in head if phrase.kind in ("where", "manner")]
    if _at_one_end(rows, said) and not (rows.get("side") or _EVEN.fullmatch(rows.get("nth"))):
        return line  # its row shows the rows of one side only: those of the other are worked at their other end
    made = laid_anew(
        line, start, count.end() if count is not None else end, [f"Every {_which(rows)} {times} times: ", row, *counted]
    )
    return replace(made, kept=(*line.kept, *said))


def _at_one_end(rows: ToldPhrase, said: list[str]) -> bool:
    """Return whether a shaping in rows is told for one edge, or for one end of them."""
    one = _ONE_END.search(rows.match.group()) is not None or any(_ONE_EDGE.search(words) for words in said)
    return one and rows.get("row").lower().startswith("row") and not rows.get("next")


def _once(line: Reworded, start: int, head: tuple[ToldPhrase, ...], told: re.Match[str]) -> Reworded:
    """Write a row that is told for here alone under the name of what it does: "decrease at both sides of the marker: ..."."""
    change = next((phrase for phrase in head if phrase.match.group().lower().startswith(("inc", "dec"))), None)
    where = [phrase.match.group().strip(" ,") for phrase in head if phrase.kind == "where"]
    if change is None or not where or not told["row"]:
        return line
    name = "Increase" if change.match.group().lower().startswith("inc") else "Decrease"
    made = laid_anew(line, start, told.end(), [f"{name}: ", told.span("row")])
    return replace(made, kept=(*line.kept, *where))


def _sorted(phrases: tuple[ToldPhrase, ...]) -> dict[str, ToldPhrase] | None:
    """Return phrases by their kinds; None if one of them that counts is there twice."""
    found: dict[str, ToldPhrase] = {}
    for phrase in phrases:
        if phrase.kind in found and phrase.kind in ("often", "once", "rows"):
            return None
        found[phrase.kind] = phrase
    return found


def _which(rows: ToldPhrase) -> str:
    """Return every how many rows, or rows of which side, it is worked."""
    side = rows.get("side")
    side = "" if not side else "WS " if side.lower().startswith("w") else "RS "
    row = rows.get("row")
    row = row.removesuffix("s") if row.lower() != "rs" else row
    nth = rows.get("nth").lower()
    nth = "other" if nth.startswith("alt") else nth
    return f"{f'{nth} ' if nth else ''}{side}{row}"


def _times(often: ToldPhrase | None, *, first: bool, repeats: bool) -> str | None:
    """Return how often the row is worked in all; None if it is not said.

    Args:
        often: The number of times that is told, if any is.
        first: Whether the row is told for the next row, which more times come on top of.
        repeats: Whether it is told to be repeated so often.
    """
    if often is None:
        return "1" if first else None
    words = often.match.group().lower()
    number = often.get("n") or often.get("n2")
    if often.kind == "once":
        return str({"once": 1, "twice": 2}.get(often.get("once").lower(), 1) + 1) if first else None
    if often.get("more") or words.startswith(("another", "a further")) or often.get("n2"):
        if not first:
            return None
        return re.sub(r"\d+", lambda found: str(int(found[0]) + 1), number) if number[:1].isdigit() else None
    if often.get("all") or "total" in words or words.startswith("in all"):
        return number
    return None if first or repeats else number
