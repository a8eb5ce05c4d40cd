"""Write a picking up along several edges as one behind the other, whatever the edges are called. No I/O.

"Pick up and knit 62 sts to the start of the V, 41 up the V, 48 around the neck and the same number down the other
side" says once what is done, then how many and where. Where is only said, and may have any words but those that order
something or tell how often; what lies on a holder is knitted, so a stretch along "the sleeve" or "the thread" stays as
printed unless it names an edge of it. A sum that is told first ("80 sts around the neck: 30 along the back, 25 down
each side") is worked, and the stretches said, if they come to it in every size. Looked for only in a line that nothing
else reads. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final, NamedTuple

from stepper.project.reading.elements import WORDS
from stepper.project.rewording.asides import instructs
from stepper.project.rewording.reworded import Reworded
from stepper.project.rewording.synonym import N
from stepper.regex import regex

_STS: Final = r"(?:sts?\b\.?(?=\W)|stitch(?:es)?\b)"
_PICK: Final = regex(
    r"\b(?:pick(?:ing)?\s+up|pu|(?:knit|k)\s+up(?=\s+(?:the\s+)?\d))(?:\s*(?:and|&)\s*(?:knit\b|k\b\.?|k(?=\s?\d)))?(?:\s*,\s*(?P<facing>(?:with\s+)?(?:the\s+)?(?:rs|right\s+side)\s+(?:outside|facing)(?:\s+you)?)\s*,)?\s+(?:sts?\s+|stitches\s+)?(?:as\s+foll(?:ow)?s\s*:\s*)?(?:the\s+)?", re.I
)
_PLACE: Final = (
    r"(?:evenly\s+)?(?:along|down|up|across|around|round|over|in|on|at|between|into|to|from|through|under|below|behind|for)\b"
    r"[^,;.:()=+\d\u2013\u2014*\[\]]*?|(?:left|right)(?:\s+(?:side|front|neck|slope))?(?=\s*(?:[,;.:)=\u2013\u2014-]|$))"
)
_MARK: Final = r"(?:pm|place\s+(?:a\s+)?marker)(?:\s+for\s+[a-z][a-z ]{1,20}?)?"
_GO_ON: Final = rf"(?:(?:another\s+)?(?:{N}|(?:the\s+)?same\b|as\s+many\b)|pick|pu\b|{_MARK}|[kp]\s*\d|knit|work|join|the\s+\d)"
_NEXT: Final = (
    rf"(?=\s*[,;.:()=+]|\s*[\u2013\u2014]|\s*-+\s*\d|\s+and\s+(?:then\s+)?{_GO_ON}|\s+(?:then|plus)\s+{_GO_ON}|\s*$)"
)
_ITEM: Final = regex(
    rf"(?:another\s+)?(?:(?P<number>{N})(?:\s+more)?|(?P<same>(?:the\s+)?same(?:\s+(?:number|amount))?(?:\s+of)?|as\s+many))"
    rf"(?P<marked>\s+marked)?(?:\s*(?P<of>(?:cast|bound|bind)-?\s?(?:off|on)\s+{_STS})|\s*{_STS})?(?:\s+more)?(?:\s+(?P<where>{_PLACE}(?:\s*,\s*(?:out|up|down|along|around|across|over|from|starting|beginning|ending)\b[^,;.:()=\d*\[\]]*?)?))?"
    rf"(?:\s*[(,]?\s*(?P<mark>mark(?:ing)?\s+(?:it|this(?:\s+one)?|the)(?:\s+{_STS})?|(?:this\s+is\s+)?(?:the\s+)?marked\s+{_STS})(?:\s+with\s+(?:a\s+)?[a-z ]{{3,30}}?)?\s*!?\s*\)?)?{_NEXT}",
    re.I,
)
_JOINT: Final = regex(
    rf"\s*(?:[,;+]\s*(?:and\s+)?(?:then\s+)?|\band\s+(?:then\s+)?|\bthen\s+|\bplus\s+)(?P<pm>{_MARK}(?:\s*,\s*(?:and\s+)?(?:then\s+)?|\s+and\s+))?"
    r"(?:(?:pick(?:ing)?\s+up|pu|(?:knit|k)\s+up)(?:\s*(?:and|&)\s*(?:knit\b|k\b\.?|k(?=\s?\d)))?\s+)?(?=(?:another\s+)?(?:\d|one\b|two\b|three\b|four\b|five\b|six\b|eight\b|ten\b|the\s+same|same|as\s+many))",
    re.I,
)
_LISTED: Final = regex(
    r"\s*(?:,?\s*(?:as\s+foll(?:ow)?s|thus|like\s+this))?\s*(?:[:(]\s*|-+\s+)(?:that\s+is\s*,?\s*)?", re.I
)
_HELD: Final = regex(
    r"\b(?:sleeves?|body|thumb|finger|holders?|held|hold|pin|thread|waste|scrap|spare|lining)\b", re.I
)
_OF_IT: Final = regex(r"\b(?:edges?|tops?|seams?|caps?|cast|bound|bind|corner|base|side)\b", re.I)
_PASSED: Final = regex(
    r"\bround\s+(?:the\s+)?(?:neck|armhole|edge|front)\b|\bone\s+(?:side|edge|end|half)\b|\bagain\b|\bunderarm\s+(?:co|bo)\b|\b(?:co|bo)\s+(?:edge|row|sts|stitches)\b", re.I
)
"""Words that name a place, though they may order something elsewhere."""
_EACH: Final = regex(r"\b(?:each|both|either)\s+(?:\w+\s+)?(?:side|edge|front|half|slope)s?\b", re.I)


_KNITTED: Final = regex(r"\s+and\s+knit\b(?!\s*[\da-z])", re.I)
"""The other half of "pick up … and knit", told behind the edge."""


_TOTAL: Final = regex(
    rf"(?P<number>{N})(?:\s*{_STS})?(?P<all>\s+(?:in\s+all|altogether|in\s+total|total))?(?=\s*(?:\.(?!\s*(?-i:[a-z]))|$))", re.I
)
"""A number behind the last stretch, which may be that of all of them: "…, 119 in all"."""


class _Item(NamedTuple):
    number: str
    where: str
    mark: str
    marked: bool
    total: bool = False
    """Whether it counts those before it."""


def write_edge_lists(line: Reworded) -> Reworded:
    """Write the stretches of edges along which a line picks stitches up as pickings up, where they are only said.

    Returns:
        The line; the same if it has no such stretch, or one whose words may be an order.
    """
    text, places, kept, done = "", list[int](), list(line.kept), 0
    for pick in _PICK.finditer(line.text):
        if pick.start() < done:
            continue
        found = _told_as_sum(line.text, pick.end()) or _items(line.text, pick.end())
        if found is None:
            continue
        items, end = found
        total = items.pop() if items[-1].total else None
        lead = "Pick" if line.text[pick.start()].isupper() else "pick"
        words = ""
        for at, item in enumerate(items):
            words += f"{', ' if at else ''}{item.mark}{'pm for marked st, ' if item.marked else ''}"
            words += f"{'pick' if words else lead} up and knit {item.number} sts"
        words += f". {total.number} sts" if total is not None else ""
        text += line.text[done : pick.start()] + words
        places += [*line.places[done : pick.start()], *([line.places[pick.end()]] * len(words))]
        kept += [words for words in (pick["facing"], *(item.where for item in items)) if words]
        done = end
    if not done:
        return line
    return replace(
        line, text=text + line.text[done:], places=(*places, *line.places[done:]), kept=tuple(kept)
    )


def _items(text: str, at: int, *, summed: bool = False) -> tuple[list[_Item], int] | None:
    """Return the stretches that begin at a place, and where they end; None if one is told otherwise."""
    items: list[_Item] = []
    mark = ""
    while True:
        total = _TOTAL.match(text, at) if items else None
        placed = all(item.where for item in items)  # then a bare number counts them, rightly or wrongly
        if total is not None and (placed or total["all"] or (len(items) > 1 and _comes_to(total["number"], items))):
            return ([*items, _Item(total["number"], "", "", False, True)], total.end())
        match = _ITEM.match(text, at)
        where = match["where"] or "" if match is not None else ""
        if match is None or _orders(_EACH.sub(" ", where) if summed else where):
            return None
        if match["same"] and not items:
            return None
        number = match["number"] or items[-1].number
        marked = bool(match["mark"] or match["marked"])
        if marked and number.lower() not in ("1", "one"):
            return None
        where = " ".join(filter(None, [match["of"], where.strip()]))
        items.append(_Item(number, where, mark, marked))
        end = match.end()
        joint = _JOINT.match(text, end)
        if joint is None:
            return None if _KNITTED.match(text, end) else (items, end)
        at, mark = joint.end(), f"{joint['pm'].rstrip(' ,')}, " if joint["pm"] else ""
        mark = re.sub(r"(?:\s+and|\s*,\s*and)\s*,\s*$", ", ", mark)


def _comes_to(total: str, items: list[_Item]) -> bool:
    """Return whether a number is no less in any size than some stretches together."""
    known = [_numbers(item.number) for item in items]
    sizes = max(map(len, [_numbers(total), *known]))
    wide = [(one * sizes)[:sizes] for one in [_numbers(total), *known]]
    return all(size[0] >= sum(size[1:]) for size in zip(*wide, strict=True))


def _orders(where: str) -> bool:
    """Return whether the words of a place may order something, or tell of stitches that wait."""
    if _HELD.search(where) and not _OF_IT.search(where):
        return True
    return instructs(_PASSED.sub(" ", where)) is not None


def _told_as_sum(text: str, at: int) -> tuple[list[_Item], int] | None:
    """Return a picking up whose stretches are told behind it, and come to its number; None if it is none."""
    whole = _ITEM.match(text, at)
    listed = _LISTED.match(text, whole.end()) if whole is not None and whole["number"] else None
    if whole is None or listed is None or _orders(whole["where"] or ""):
        return None
    found = _items(text, listed.end(), summed=True)
    if found is None or len(found[0]) < 2 or found[0][-1].total:
        return None
    items, end = found
    if "(" in listed.group():
        if not text[end:].lstrip().startswith(")"):
            return None
        end = text.index(")", end) + 1
    total = _numbers(whole["number"])
    sums = [
        [number * (2 if _EACH.search(item.where) else 1) for number in _numbers(item.number)]
        for item in items
    ]
    sizes = max(map(len, [total, *sums]))
    if any(len(one) not in (1, sizes) for one in [total, *sums]):
        return None
    wide = [one * sizes if len(one) == 1 else one for one in [total, *sums]]
    if [sum(size) for size in zip(*wide[1:], strict=True)] != wide[0]:
        return None
    told = " ".join(filter(None, [(whole["where"] or "").strip(), text[listed.end() : end].strip(" )")]))
    return [_Item(whole["number"], told, "", False)], end


def _numbers(told: str) -> list[int]:
    digits = [int(one) for one in re.findall(r"\d+", told)]
    return digits or [WORDS.index(told.lower()) if told.lower() in WORDS else 0]
