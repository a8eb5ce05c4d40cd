"""Write in the grammar's words how stitches are laid over needles that have numbers, and what each needle is. No I/O.

Theory of operation. "Place the first 30 sts on Needle 1 (instep) and the remaining 30 sts on Needle 2 (sole)", "Slip 14 sts to
each of needles 1 and 3, and 28 sts to needle 2", "N1: 28 sts; N2: 28 sts": a sentence of laying has a verb, or none, and items,
each of a number and the needles it lies on, in any order. It is written if its items come to every needle from the first on;
a word that belongs to no item leaves it as it is printed. What a needle is ("the instep sts lie on needles 2 and 3") is
written behind it. Stitches told of two needles together are half on each, as where they part is free. Source: the wording of
socks and mittens in print; common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import STS, N
from stepper.records import dataclass
from stepper.regex import regex

_ROLE: Final = r"(?:instep|sole|heel|palm|back\s+of\s+(?:the\s+)?hand|top\s+of\s+(?:the\s+)?foot|bottom\s+of\s+(?:the\s+)?foot|top|bottom|front|back)"
_ORDINAL: Final = r"(?:first|second|third|fourth|1st|2nd|3rd|4th|front|back)"
_ONE: Final = r"(?:needle\s*#?|N\s?|ndls?\.?\s*#?)[1-5](?!\d|\.\d)"
_NEEDLES: Final = (
    rf"(?P<needles>(?:the\s+)?{_ORDINAL}\s+(?:needle|ndl|dpn)|{_ONE}(?:\s*(?:,\s*and|,|and|&)\s*{_ONE})*(?!\w)|needles\s+[1-5](?:\s*(?:,\s*and|,|and|&)\s*[1-5])+(?!\d))"
)
_WHICH: Final = r"(?:(?:the|first|next|last|foll(?:owing)?|rem(?:aining)?|other|another)\s+)*"
_ON: Final = r"(?:on\s+to|onto|on|to)\s+(?:the\s+)?(?P<apiece>each\s+of\s+(?:the\s+)?|both\s+)?"
_LIE: Final = r"(?:(?:are|is|lie|sit|each)\s+)*"
_ITEMS: Final = tuple(
    regex(expression, re.IGNORECASE)
    for expression in (
        rf"(?P<which>{_WHICH})(?P<n>{N})(?:\s+(?P<role>{_ROLE}))?(?:\s+{STS})?(?:\s+(?:for\s+)?(?:the\s+)?(?P<role2>{_ROLE}))?\s+(?P<each>each\s+)?{_LIE}{_ON}{_NEEDLES}(?P<too>\s+(?:each|apiece))?(?P<together>\s+together)?(?:\s*[(-]\s*(?:for\s+)?(?:the\s+)?(?P<role3>{_ROLE})(?:\s+{STS})?\s*\)?|\s+for\s+(?:the\s+)?(?P<role4>{_ROLE})(?:\s+{STS})?)?",
        rf"{_NEEDLES}(?:\s*\(\s*(?P<role>{_ROLE})(?:\s+{STS})?\s*\))?\s*(?::|=|has|holds|-)\s*(?P<n>{N})(?:\s+(?P<role2>{_ROLE}))?\s+{STS}",
        rf"(?:the\s+)?(?P<same>same)(?:\s+number)?\s+{_ON}{_NEEDLES}",
    )
)
"""A number of stitches and the needles that it lies on."""
_LAYS: Final = regex(
    rf"(?:now\s+)?(?:(?:re-?)?(?:divide|arrange|distribute)|split|spread|place|put|slip|lay|set)\s+(?:(?:the|all|these|your|rem(?:aining)?|live|foot|leg|cuff|up)\s+)*(?:(?:{STS}|them)\s*)?(?:evenly\s*)?"
    rf"(?:(?:over|on|onto|between|among)\s+(?:the\s+|your\s+)?(?:(?:two|three|four|[2-4])\s+)?(?:needles|dpns|circulars|circs)\s*)?(?:[:,-]\s*)?(?:as\s+foll(?:ow)?s\s*:?\s*)?(?:(?:so\s+(?:that\s+)?(?:there\s+are\s+|you\s+have\s+)?|with\s+|having\s+))?",
    re.IGNORECASE,
)
_COUNTS: Final = regex(r"(?:(?:there\s+(?:are|should\s+be|will\s+be)|you(?:\s+should|\s+will)?(?:\s+now)?\s+have)(?:\s+now)?\s+)", re.IGNORECASE)
"""What counts stitches where they lie."""
_IS: Final = regex(
    rf"(?:the\s+)?(?:(?:{STS}\s+(?:on|of)\s+)?{_NEEDLES}\s*(?:is|are|holds?|=|:|has|have|form|forms|carry|carries|make)\s+(?:now\s+)?(?:the\s+|your\s+)?(?P<role>{_ROLE})(?:\s+(?:{STS}|half))?)", re.IGNORECASE
)
_LIES: Final = regex(rf"(?:the\s+|your\s+)?(?P<role>{_ROLE})(?:\s+{STS})?\s+(?:is|are|lies?|sits?)\s+(?:now\s+)?on\s+(?:the\s+)?{_NEEDLES}", re.IGNORECASE)
_BARE: Final = regex(rf"{_NEEDLES}\s+(?:the\s+)?(?P<role>{_ROLE})(?:\s+{STS})?", re.IGNORECASE)
_AND: Final = regex(r"\s*(?:[,;]\s*(?:(?:and|with|while)\s+)?|(?:and|with|while)\s+)", re.IGNORECASE)
_STOP: Final = regex(r"\s*\)?\s*(?:$|\.(?:\s+|$))")
_STARTS: Final = regex(r"(?:^|(?<=[.:])\s)\s*(?=\w)")
_TELLS: Final = regex(r"\b(?:needles?|ndls?\.?|N\d|heel)\b", re.IGNORECASE)
_UNITES: Final = regex(
    rf"(?:slip|place|put|transfer|move)\s+(?:the\s+|all\s+)*{STS}\s+(?:from|of|on)\s+(?:needle|N)\s?(?P<a>[1-4])\s+(?:on\s+to|onto|to)\s+(?:needle|N)\s?(?P<b>[1-4])\s*,?\s+and\s+(?:(?:the\s+)?(?:those|{STS})\s+)?(?:from|of|on)\s+(?:needle|N)\s?(?P<c>[1-4])\s+(?:on\s+to|onto|to)\s+(?:needle|N)\s?(?P<d>[1-4])\s*[,;:(-]*\s*(?P<n>{N})\s+{STS}\s+on\s+each(?:\s+needle)?\s*\)?(?=\s*(?:\.|$))",
    re.IGNORECASE,
)
_PAIRS: Final = ({"1", "2"}, {"3", "4"})
_ORDER: Final = {"first": 1, "1st": 1, "second": 2, "2nd": 2, "third": 3, "3rd": 3, "fourth": 4, "4th": 4, "front": 1, "back": 2}
_HEEL: Final = regex(
    rf"(?P<first>(?:knit|k|work)\s+(?:across\s+)?(?:the\s+)?(?:{STS}\s+(?:on|of)\s+)?(?:needle|N)\s?1(?:\s*\([^()]*\))?\s*[.;,]\s*(?:and\s+|then\s+|now\s+)*)?"
    rf"(?:the\s+)?(?:work\s+(?:the\s+)?)?heel(?:\s+flap)?\s+(?:is\s+)?(?:then\s+|now\s+)?(?:worked\s+|knitted\s+)?(?:(?:back\s+and\s+forth|in\s+rows|flat)\s+)?(?:over|on|across)\s+(?:just\s+|only\s+)?(?:the\s+)?(?:(?P<n>{N})\s+)?(?:{STS}\s+(?:on|of)\s+)?(?:needle|N)\s?(?P<on>[1-4])(?:\s+(?:only|alone))?(?:\s+(?:back\s+and\s+forth|in\s+rows))?"
    rf"(?:\s*[;,.]\s*(?:and\s+)?(?P<said>(?:the\s+)?(?:instep\s+)?(?:(?:{STS}\s+(?:on|of)\s+)?(?:needle|N)\s?[1-4](?:\s+{STS})?|(?:other|instep)\s+{STS})\s+(?:(?:are|is|stay|remain|wait|rest)s?\s*(?:on\s+hold|at\s+rest|unworked|there)?)(?:\s+(?:for\s+now|meanwhile))?))?(?=\s*(?:[.]|$))",
    re.IGNORECASE,
)
"""The first needle knitted before the heel, which is worked over the second."""


Words = list[str | tuple[int, int]]
"""What is written anew: words, or where in the line they are from."""


@dataclass(frozen=True, slots=True)
class _Item:
    """Stitches on one needle."""

    needle: int
    number: tuple[int, ...]
    """In each size, or one for all."""
    role: str
    which: str = ""
    """What is said of which they are: "first", "last"."""


def write_needle_layouts(line: Reworded) -> Reworded:
    """Write the sentences of a line about stitches on numbered needles in the grammar's words.

    Returns:
        The line; the same if it has none that is read so.
    """
    if not _TELLS.search(line.text):
        return line
    line = _set_up(line)
    for start in reversed([match.end() for match in _STARTS.finditer(line.text)]):
        for write in (_heel, _united, _apiece, _laid, _named):
            made = write(line, start)
            if made is not None:
                line = made
                break
    return line


_PICK: Final = r"pick\s+up\s+(?:and|&)\s+(?:knit|k)\b"
_SET_UP: Final = regex(rf"\b{_PICK}.*?\binstep\b.*\b{_PICK}[^.]*", re.IGNORECASE)
"""A gusset that is taken up on both sides of the instep."""
_PART_ENDS: Final = regex(r"\s*[.;]\s+(?:and\s+|then\s+)?(?:(?:on\s+)?(?:needle|N)\s?[1-4]\s*[:,]\s*)?", re.IGNORECASE)
_HEADED: Final = regex(r"[.;:]\s+(?:on\s+)?(?:needle|N)\s?[1-4]\s*[:,]", re.IGNORECASE)


def _set_up(line: Reworded) -> Reworded:
    """Write a gusset that is told needle by needle as the one round that it is: no needle has its stitches before."""
    found = _SET_UP.search(line.text)
    if found is None or not _HEADED.search(line.text, 0, found.end()):
        return line
    pieces: Words = []
    at = 0
    for match in _PART_ENDS.finditer(line.text, 0, found.end()):
        pieces += [(at, match.start()), ", "]
        at = match.end()
    return laid_anew(line, 0, found.end(), [*pieces, (at, found.end())])


def _numbers_in(needles: str) -> list[int]:
    """Return the numbers of the needles that words name."""
    word = re.search(_ORDINAL, needles, re.IGNORECASE)
    return [_ORDER[word.group().lower()]] if word is not None else [int(number) for number in re.findall(r"\d", needles)]


def _sizes_of(number: str) -> tuple[int, ...]:
    """Return a number in each of its sizes; empty for a word, which is small and of no round."""
    return tuple(int(each) for each in re.findall(r"\d+", number))


def _role_of(match: re.Match[str]) -> str:
    found = match.groupdict()
    said = next((found[name] for name in ("role", "role2", "role3", "role4") if found.get(name)), "")
    return " ".join(said.lower().split())


def _items(text: str, at: int) -> tuple[list[_Item], int]:
    """Return the items of a list and where it ends; none if two needles together may be laid in two ways."""
    items: list[_Item] = []
    last: tuple[int, ...] = ()
    together, end = False, at
    while True:
        match = next((item for each in _ITEMS if (item := each.match(text, at)) is not None), None)
        if match is None:
            return items, end
        found, own = match.groupdict(), _numbers_in(match["needles"])
        number = last if found.get("same") else _sizes_of(match["n"])
        together = bool(found.get("together")) or (together and bool(found.get("same")))
        apiece = found.get("apiece") or found.get("each") or found.get("too")
        if not number or (len(own) > 1) != bool(apiece or together) or (together and (len(own) != 2 or apiece)):
            return [], end
        role = _role_of(match)
        for place, needle in enumerate(own):
            share = tuple((each + 1 - place) // 2 for each in number) if together else number
            items.append(_Item(needle, share, role, (found.get("which") or "").lower()))
        last, end = number, match.end()
        glue = _AND.match(text, end)
        if glue is None:
            return items, end
        at = glue.end()


def _laid(line: Reworded, start: int) -> Reworded | None:
    """Write stitches laid over needles; None if the sentence is none of that kind."""
    verb, counted = _LAYS.match(line.text, start), _COUNTS.match(line.text, start)
    lead = verb or counted
    if lead is None and line.text[:start].strip()[-1:] not in ("", "."):
        return None  # "74 sts: 28 on N1, ..." counts them behind a colon, for other tables to read
    items, end = _items(line.text, lead.end() if lead is not None else start)
    if _STOP.match(line.text, end) is None:
        return None
    items.sort(key=lambda item: item.needle)
    if len(items) < 2 or [item.needle for item in items] != list(range(1, len(items) + 1)):
        return None
    if any("last" in item.which for item in items[:-1]) or any("first" in item.which for item in items[1:]):
        return None  # the needles are numbered as the round meets them
    counts = ", ".join(f"{_printed(item.number)} sts on needle {item.needle}" for item in items)
    words = [f"{'Divide' if verb is not None else 'Lying'} over {len(items)} needles, {counts}", *_instep({item.needle: item.role for item in items})]
    closes = re.match(r"\s*\)", line.text[end:])
    return laid_anew(line, start, end + (closes.end() if closes else 0), [". ".join(words)])


def _printed(number: tuple[int, ...]) -> str:
    first, *others = map(str, number)
    return f"{first} ({', '.join(others)})" if others else first


def _instep(roles: dict[int, str]) -> list[str]:
    """Return the needles that hold the instep, in the grammar's words; none if the roles do not say."""
    tops = [needle for needle, role in sorted(roles.items()) if role in ("instep", "top of foot", "top of the foot")]
    if not tops:
        return []
    return [f"Instep on needle{'s' if len(tops) > 1 else ''} {' and '.join(map(str, tops))}"]


_APIECE: Final = regex(
    rf"{_LAYS.pattern}\s*[(\[-]*\s*(?:there\s+are\s+)?(?:half\s+(?:of\s+(?:them|the\s+{STS}))?\s*,\s*)?(?P<n>{N})(?:\s+{STS})?\s*,?\s+(?:(?:are|is|lie)\s+)?(?:on\s+each(?:\s+(?:needle|side))?|per\s+needle|each(?=\s*[)\]]))\s*[)\]]?(?:(?P<join>(?:\s*[,-])?\s+(?:and\s+)?join\b)|(?=\s*(?:\.|$)))",
    re.IGNORECASE,
)
"""As many stitches on each needle."""


def _apiece(line: Reworded, start: int) -> Reworded | None:
    """Write as many stitches on each needle; None if the sentence is none of that kind."""
    match = _APIECE.match(line.text, start)
    if match is None or re.search(r"\d", match["n"]) is None:
        return None
    return laid_anew(line, start, match.end(), [match.span("n"), " sts on each needle", *([". Join"] if match["join"] else [])])


def _united(line: Reworded, start: int) -> Reworded | None:
    """Write the stitches of four needles laid on two; None if the sentence is none of that kind."""
    match = _UNITES.match(line.text, start)
    if match is None or [{match["a"], match["b"]}, {match["c"], match["d"]}] not in ([*_PAIRS], [*_PAIRS[::-1]]):
        return None
    number = match.span("n")
    return laid_anew(line, start, match.end(), ["Divide over 2 needles, ", number, " sts on needle 1, ", number, " sts on needle 2"])


def _named(line: Reworded, start: int) -> Reworded | None:
    """Write what each needle is; None if the sentence says nothing else of that kind."""
    text, at, roles = line.text, start, dict[int, str]()
    while True:
        match = _IS.match(text, at) or _LIES.match(text, at) or (_BARE.match(text, at) if roles else None)
        if match is None:
            return None
        roles |= dict.fromkeys(_numbers_in(match["needles"]), _role_of(match))
        at = match.end()
        if _STOP.match(text, at) is not None:
            break
        glue = _AND.match(text, at)
        if glue is None:
            return None
        at = glue.end()
    words = _instep(roles)
    return laid_anew(line, start, at, words) if words else None


_HEEL_NEXT: Final = regex(
    rf"(?:k|knit)\s*(?:across\s+)?(?:the\s+)?(?:first\s+)?(?P<first>{N})\s*(?:instep\s+{STS}|{STS}\s+(?:for|of)\s+(?:the\s+)?instep)\s*[.;,]\s*(?:and\s+|then\s+|now\s+)*(?:the\s+)?(?:work\s+(?:the\s+)?)?heel(?:\s+flap)?\s+(?:is\s+)?(?:then\s+|now\s+)?(?:worked\s+)?(?:(?:back\s+and\s+forth|in\s+rows|flat)\s+)?"
    rf"(?:over|on|across)\s+(?:the\s+)?(?:next|other|last|rem(?:aining)?)\s+(?P<n>{N})\s+{STS}(?:\s+(?:only|alone))?(?=\s*(?:[.]|$))",
    re.IGNORECASE,
)
"""The instep knitted before the heel, which is worked over the others."""


def _heel(line: Reworded, start: int) -> Reworded | None:
    """Write a heel over the second of two needles, behind the first; None if the sentences are none of that kind."""
    behind = _HEEL_NEXT.match(line.text, start)
    if behind is not None:
        words: Words = ["K", behind.span("first"), " sts to new beginning. Work in rows over next ", behind.span("n"), " sts of heel, hold others for instep"]
        return laid_anew(line, start, behind.end(), words)
    match = _HEEL.match(line.text, start)
    if match is None or (match["first"] and match["on"] != "2"):
        return None
    if not match["first"]:
        if line.text[:start].strip() or line.text[match.end() :].strip(" ."):
            return None  # what stands beside it may say what is worked first, and what waits
        over: Words = ["next ", match.span("n"), " sts"] if match["n"] else ["sts"]
        return laid_anew(line, start, match.end(), ["Work in rows over ", *over, f" of heel on needle {match['on']}, hold others for instep"])
    over = ["next ", match.span("n"), " sts of heel"] if match["n"] else ["sts of heel on needle 2"]
    words = ["K needle 1 to the new beginning. Work in rows over ", *over, ", hold others for instep"]
    return laid_anew(line, start, match.end(), words)
