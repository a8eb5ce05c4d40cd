"""Put a row that is gathered from several places into the grammar's words, place by place. No I/O.

Theory of operation. The first row of a neckband, a hood or a yoke is a list: "k 5 sts from left sleeve, pick
up and k 10 sts down left front neck, k across 13 sts from front holder, pick up 10 sts up right front neck
and k 25 sts from back neck". Each item says how many and where; a verb holds until the next one. What lies
on hold is told from an edge by the verb (an edge is picked up, what is knitted, purled or ribbed was held)
and by the thing it lies on (a holder, a pin). The list is written anew, item by item, where every item up to
the end of the sentence is of one of these forms and every word of its place is known; else it stays as it is.
Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.reworded import Reworded
from stepper.project.rewording.synonym import N
from stepper.regex import regex

_STS: Final = r"(?:stitches|stitch|sts?)\b(?:\.(?=\s*(?:[,;]|(?-i:[a-z]))))?"
_PART: Final = (
    r"(?:left|right|front|back|cent(?:er|re)|neck|neckline|sleeves?|body|band|button|buttonhole|hood|collar|yoke|"
    r"shoulder|first|second|other|top|side|border)"
)
_NAME: Final = rf"(?:(?:the\s+)?{_PART}(?:[\s-]+{_PART})*)"
_THING: Final = (
    r"(?:(?:st(?:itch)?\.?[\s-]*)?holder|safety[\s-]pin|pin|spare\s+needle|(?:waste|scrap|spare)\s+(?:yarn|wool)|thread)\b"
)
_EDGE: Final = (
    r"(?:(?:evenly|along|down|up|across|around|round|from|at|over|to|of|on|the|each|edge|edges|edging|shaped|"
    r"straight|curved|slope|slopes|shaping|seam|row-?ends?|opening|half|cast-?off|bound-?off|armhole|underarm|neckline|"
    rf"sts?|{_PART})\b[\s-]*)*"
)
_VERB: Final = (
    r"(?:(?P<pick>(?:pick\s+up|pu)(?:\s+(?:and\s+|&\s+)?(?:knit\b|k(?![a-z])\.?))?)"
    r"|(?P<work>knit|purl|rib|patt|work|[kp](?=\d)|[kp]\b)\.?(?:\s+in\s+patt(?:ern)?\b\.?)?(?:\s+across\b)?)?"
)
_ITEM: Final = regex(
    rf"{_VERB}\s*(?:the\s+|these\s+)?"
    rf"(?:(?P<number>{N})\s*)?(?:(?P<before>{_NAME})\s+)?(?P<held>held\s+(?:(?P<after>{_NAME})\s+)?)?(?:{_STS}|(?<=[\d)\]])(?=\s+(?:of|from)\s))"
    rf"(?:\s+(?:left\s+)?(?:from|of|on|off|at)\s+(?:a\s+|the\s+)?(?:(?P<name>{_NAME})\s+)?(?P<thing>{_THING})"
    rf"(?:\s+(?:at|for|of)\s+(?P<at>{_NAME}))?"
    rf"|(?(held)\s+(?:at|for)\s+(?P<near>{_NAME})(?=\s*(?:[,.;:(\[—–-]|and\b|then\b|$))|(?!))"
    rf"|\s+(?:from|of|on)\s+(?:(?:the\s+)?top\s+of\s+)?(?P<of>{_NAME})(?=\s*(?:[,.;:(\[—–-]|and\b|then\b|$))"
    rf"|\s+(?P<edge>(?=[a-z]){_EDGE}))?",
    re.IGNORECASE,
)
_MARK: Final = r"(?:pm|place\s+(?:a\s+)?marker)"
_JOINT: Final = regex(
    rf"(?:\s*,\s*(?:(?:and|then)\s+)*|\s+and\s+(?:then\s+)?|\s+then\s+)(?P<mark>{_MARK}(?:\s*,\s*(?:(?:and|then)\s+)*|\s+and\s+))?(?!{_MARK})",
    re.IGNORECASE,
)
_END: Final = regex(rf"\s*(?:$|[.;:(\[=]|[—–-]|,\s*(?:and\s+)?(?={_MARK}(?:\s+for\s+[a-z ]+)?\s*[.;(]))")
_MARKED: Final = regex(
    r"\s*,?\s*placing\s+(?:a\s+)?markers?\s+(?:(?:at|in|on)\s+(?:each|every)(?:\s+(?:one\s+)?of\s+the(?:\s+(?:four|4|two|2))?)?\s+(?:joins?|joints?|junctions?|transitions?)"
    r"|between\s+(?:the\s+)?(?:each\s+)?(?:pieces?|parts?|sections?))(?=\s*(?:$|[.;:(\[=]|[—–-]))",
    re.IGNORECASE,
)
"""Markers between all items, told once behind them."""
_START: Final = regex(
    r"(?:^|[.!:,]\s|(?<=[a-z])(?<!\bup)\s+and\s)\s*(?=(?:k|p|knit|purl|rib|patt|work|pick|pu)\b|[kp]\d)", re.I
)
_PICKS: Final = regex(r"\bpick\s+up\b|\bpu\b|\b(?:holder|pin|sleeves?|bands?)\b", re.IGNORECASE)
_APART: Final = regex(r"\b(?:neck|bands?|border|collar|hood|button|buttonhole)\b")
"""Parts that wait on a holder until a row gathers them; others, as an instep, may lie on the needle."""
_LEAST: Final = 2
"""One item is read by itself."""

_Written = tuple[str, int, int, str]
"""What stands before the number in the grammar's words, where the number stands, and what follows it."""


def write_gathered(line: Reworded) -> Reworded:
    """Write the lists of a line that gather stitches from several places item by item.

    Returns:
        The line; the same if it holds no such list, or one with an item of no known form.
    """
    if not _PICKS.search(line.text):
        return line
    text: list[str] = []
    places: list[int] = []
    kept = list(line.kept)
    done = 0
    for start in _START.finditer(line.text):
        found = _items(line.text, start.end()) if start.end() >= done else None
        if found is None:
            continue
        items, said, end = found
        text.append(line.text[done : start.end()])
        places.extend(line.places[done : start.end()])
        for number, (before, first, last, behind) in enumerate(items):
            capital = not number and line.text[start.end()].isupper()
            lead = f", {before}" if number else before.capitalize() if capital else before
            text += [lead, line.text[first:last], behind]
            places += [line.places[first]] * len(lead)
            places += [*line.places[first:last], *[line.places[last]] * len(behind)]
        kept += said
        done = end
    if not done:
        return line
    text.append(line.text[done:])
    places.extend(line.places[done:])
    return replace(line, text="".join(text), places=tuple(places), kept=tuple(kept))


def _items(text: str, start: int) -> tuple[list[_Written], list[str], int] | None:
    """Return the items of the list that begins at a place, the edges that are said with them, and its end."""
    at, picking, work, mark = start, False, "", ""
    written: list[_Written] = []
    said: list[str] = []
    picked = held = 0
    while True:
        match = _ITEM.match(text, at)
        if match is None:
            return None
        groups = match.groupdict()
        if groups["pick"]:
            picking, work = True, ""
        elif groups["work"]:
            picking, work = False, groups["work"].lower()
        elif not written:
            return None
        end = match.end() - len(match.group()) + len(match.group().rstrip())
        name = _name_of(groups)
        on_hold = bool(groups["thing"] or groups["held"])
        if picking and groups["pick"] and on_hold:
            return None  # stitches on a holder are not picked up along an edge
        across = match.group().lower().startswith(("k across", "knit across", "work across"))
        if groups["before"] and not (on_hold or across or _APART.search(name)):
            return None  # "k 20 instep sts" may lie on the needle
        if on_hold or (not picking and name and not groups["edge"]):
            verb = work if work in ("p", "purl", "work") else "work" if work in ("rib", "patt") else "k"
            first, last = match.span("number") if groups["number"] else (match.start(), match.start())
            space = " " if groups["number"] else ""
            whose = f"{space}held {name + ' ' if name else ''}sts"
            written.append((f"{mark}{verb} across ", first, last, whose))
            held += 1
        elif (picking and groups["number"] and not name) or (picking and groups["of"]):
            written.append((f"{mark}pick up and knit ", *match.span("number"), " sts"))
            edge = (groups["edge"] or groups["of"] or "").strip()
            said += [edge] if edge else []
            picked += 1
        else:
            return None
        marked = _MARKED.match(text, end)
        if marked is not None:
            written[1:] = [
                (f"pm, {before.removeprefix('pm, ')}", first, last, behind)
                for before, first, last, behind in written[1:]
            ]
            end = marked.end()
        if _END.match(text, end):
            break
        joint = _JOINT.match(text, end)
        if joint is None:
            return None
        at, mark = joint.end(), "pm, " if joint["mark"] else ""
    if len(written) < _LEAST or not held:
        return None  # edges alone are read one by one
    return written, said, end


def _name_of(groups: dict[str, str | None]) -> str:
    """Return the name of the part an item takes its stitches from; empty if it says none."""
    said = (groups[key] for key in ("before", "name", "at", "near", "after", "of") if groups[key])
    words = next(said, None) or ""
    plain = re.sub(r"\bthe\s+|-", lambda match: " " if match.group() == "-" else "", words.lower())
    return " ".join(plain.split())
