"""Write a shaping in steps at one end of rows of one side as a sentence for each step. No I/O.

"At the neck edge (beginning of the WS rows) bind off 3 sts once and 2 sts twice": where may stand before or behind, an
edge called by its name or only as the beginning of rows of a side, and the steps in a list. Each step is written by
itself, "Bind off 3 sts at beginning of every WS row 1 times", which needs no knowledge of the edge. Rows of neither side,
steps without their number of times behind others, and a bracket with anything else are left as printed. Looked for only in
a line that nothing else reads. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import N
from stepper.regex import regex

_STS: Final = r"(?:sts?|stitch(?:es)?)\b"
_DO: Final = r"(?P<do>(?:bind|cast)\s+off|(?-i:BO)|dec(?:rease)?|inc(?:rease)?)"
_EDGE: Final = r"(?:(?:neck|armhole|shoulder|front|side|inner|outer|left|right|raglan)\s+(?:edge|side))"
_SIDE: Final = r"(?:rs|ws|right[-\s]side|wrong[-\s]side)"
_BEGINNING: Final = (
    rf"(?:(?:(?:that\s+is|i\.e\.|which\s+is)\s*,?\s*)?(?:(?:at|on|from)\s+)?(?:the\s+)?(?P<end>beg(?:inning)?|start|end)s?\.?\s+of\s+"
    rf"(?:(?P<this>this\s+and\s+(?:the\s+)?next)|(?P<next>(?:the\s+)?(?:next|following|foll)(?:\s+(?P<many>{N}))?)|(?:the\s+)?(?:every|each|all(?:\s+the)?)?)\s*(?P<side>{_SIDE})\s+rows?"
    rf"|(?:(?:at|on)\s+)?(?:the\s+)?(?:beg(?:inning)?|start)s?\.?\s+of\s+(?P<rows>(?:each|every)\s+row))"
)
_WHERE: Final = rf"(?:(?:at|on|from|along)\s+(?:the\s+)?{_EDGE}\s*[(,]?\s*)?{_BEGINNING}\s*[),]?"
_FOR: Final = (
    r"(?:\s+for\s+(?:the\s+)?(?:(?:left|right|front|back)\s+)?(?:neck(?:line)?|armholes?|shoulders?|raglan))"
)
_STEP: Final = rf"(?:{N})(?:\s+{_STS})?(?:\s*,?\s+(?:in\s+all\s+)?(?:once|twice|(?:{N})\s+times)(?:\s+in\s+(?:all|total))?)?"
_LIST: Final = (
    rf"(?P<list>{_STEP}(?:\s*(?:,\s*(?:and\s+)?(?:then\s+)?|\s+and\s+(?:then\s+)?|\s+then\s+){_STEP})*)"
)
_AFTER: Final = r"(?P<often>\s*,?\s*(?:once|twice|(?:\d+|two|three|four|five|six|seven|eight|nine|ten)(?:\s*[(\[][\d\s,;:]+[)\]])*\s+times)(?:\s+in\s+(?:all|total))?)?"
_E: Final = r"(?=\s*[.;]|\s*$)"
_FORMS: Final = tuple(
    regex(rf"(?:(?<=^)|(?<=[.!:]))(?P<lead>\s*(?:then\s+|now\s+|next\s*,\s*)?){form}{_E}", re.I)
    for form in (
        rf"{_WHERE}\s*[,:]?\s*{_DO}{_FOR}?\s+{_LIST}{_FOR}?",
        rf"{_DO}{_FOR}?\s+{_LIST}{_FOR}?\s+{_WHERE}{_AFTER}{_FOR}?",
        rf"(?:on|in)\s+(?:the\s+|every\s+|each\s+)?(?P<side>{_SIDE})\s+rows?\s*,?\s*{_DO}{_FOR}?\s+{_LIST}\s+at\s+(?:the\s+)?(?P<end>beg(?:inning)?|start|end)(?:\s+of\s+(?:the|each|every)\s+row)?{_AFTER}{_FOR}?",
        rf"{_DO}{_FOR}?\s*,?\s+{_WHERE}{_FOR}?\s*[,:]?\s*{_LIST}{_FOR}?",
    )
)
_ROW: Final = regex(
    rf"(?:(?<=^)|(?<=:))(?P<lead>\s*)(?:dec(?:rease)?|inc(?:rease)?)\s+(?:1|one)\s+{_STS}\s+at\s+(?:the\s+)?{_EDGE}\s+(?:(?:on|of|in)\s+)?(?:the\s+)?next\s+(?P<side>{_SIDE})\s+row\s*"
    rf"\((?P<row>[^()]*\bto\s+(?:the\s+)?(?:end|last)\b[^()]*)\)(?:\s*[.;,]\s*(?:and\s+|then\s+)*(?:(?:(?:dec(?:rease)?|inc(?:rease)?|do\s+(?:this|so|it|the\s+same)|rep(?:eat)?(?:\s+(?:this|the)(?:\s+(?:row|dec\w*|inc\w*))?)?|work\s+this\s+row)\s+)|(?<=then\s)|(?<=and\s))"
    rf"(?P<more>once\s+(?:more|again)|again|twice\s+more|(?:{N})\s+(?:more\s+times|times\s+more))(?:\s+(?:in\s+the\s+same\s+(?:manner|way|fashion)|like\s+this|on\s+(?:the\s+)?(?:next|following)\s+(?P=side)\s+row))?)?{_E}",
    re.I,
)
_ONE: Final = regex(
    rf"(?P<number>{N})(?:\s+{_STS})?(?:\s*,?\s+(?:in\s+all\s+)?(?P<times>once|twice|(?:{N})\s+times))?(?:\s+in\s+(?:all|total))?",
    re.I,
)


def write_edge_steps(line: Reworded) -> Reworded:
    """Write each step of a shaping at the beginning of rows of one side as a sentence.

    Returns:
        The line; the same if it has no such shaping.
    """
    row = _ROW.search(line.text)
    if row is not None:
        return _put(line, row, _worked_on(row["side"], row["row"], row["more"] or ""))
    for form in _FORMS:
        match = form.search(line.text)
        if match is None:
            continue
        words = _sentences(match.groupdict())
        if not words:
            continue
        return _put(line, match, words)
    return line


def _put(line: Reworded, match: re.Match[str], words: str) -> Reworded:
    """Put words for what matched, behind the spaces that lead it."""
    start = match.start() + len(match["lead"]) - len(match["lead"].lstrip())
    return laid_anew(line, start, match.end(), [words])


def _worked_on(side: str, row: str, more: str) -> str:
    """Return a row with the rows of its side on which it is worked: the next, and as many more as are told."""
    often = {"": 1, "again": 2, "once more": 2, "once again": 2, "twice more": 3}.get(
        " ".join(more.lower().split())
    )
    told = str(often)
    if often is None:
        told = re.sub(r"\d+", lambda found: str(int(found[0]) + 1), re.split(r"\s+(?:more|times)", more)[0])
    return f"Every {'WS' if side.lower().startswith('w') else 'RS'} row {told} times: {row}"


def _sentences(told: dict[str, str | None]) -> str:
    """Return a sentence for each step; empty where it is not said how often one is worked."""
    do = (told["do"] or "").lower()
    verb = "Bind off" if do[:1] in "bc" else "Dec" if do.startswith("dec") else "Inc"
    side = "WS" if (told["side"] or "").lower().startswith("w") else "RS"
    end = "end" if (told["end"] or "").lower() == "end" else "beginning"
    if end == "end" and verb == "Bind off":
        return ""
    steps = list(_ONE.finditer(told["list"] or ""))
    behind = (told.get("often") or "").strip(" ,")
    rows = "2 times" if told.get("this") else f"{told.get('many') or 1} times" if told.get("next") else ""
    made = []
    for step in steps:
        often = [one for one in (step["times"], behind, rows) if one]
        if len(often) != 1 or (len(steps) > 1 and not step["times"]):
            return ""
        times = {"once": "1 times", "twice": "2 times"}.get(often[0].lower(), often[0])
        if told.get("rows"):
            many = times.removesuffix(" times").strip()
            if verb != "Bind off" or len(steps) < 2:
                return ""  # of one step alone, nobody can tell whether it is worked on both sides
            made.append(f"{verb} {step['number']} sts at beginning of next {many} rows")
            continue
        made.append(f"{verb} {step['number']} sts at {end} of every {side} row {times}")
    return ". ".join(made)
