"""Write lists of sizes of any form as one number and one bracket: chains, all in one bracket, brackets that come and go. No I/O.

"10/12/14", "4th-6th-8th", "CO (82, 90, 98) sts", "64 (68-72) 76 (80-84)" become "10 (12, 14)" and so on, each number with its
printed place, wherever a number or a length may stand. Two numbers alone are no list: "2/3 cm" and "4-5 rounds" stay as
they are, as do rows by their numbers ("rows 1-3-5"), cables ("2/1/2 RPC") and the stitches of needles ("8:10:8").
Source: the print of patterns in many sizes; common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.reworded import Reworded
from stepper.regex import regex

_PART: Final = r"(?:\d+(?:\.\d+)?(?:\s?[½¼¾⅛⅜⅝⅞]|[-\s][1-7]/[248](?!\d))?(?:st|nd|rd|th)?|[½¼¾⅛⅜⅝⅞])(?![\w.]*[\d½¼¾⅛⅜⅝⅞])"
_OF: Final = r"(?:(?:cm|mm|in|inch(?:es)?|\")(?!\w)|sts?\b|stitch(?:es)?\b|rows?\b|rnds?\b|rounds?\b|(?:more\s+)?times\b)"
"""What a list is of."""
_JOINED: Final = rf"\s*[,;:/-]\s*{_PART}"
_GROUP: Final = rf"[(\[{{]\s*(?![13]/[248]\s*[)\]}}]){_PART}(?:{_JOINED})*\s*[)\]}}]"
_ALL: Final = rf"[(\[{{]\s*{_PART}(?:{_JOINED}){{2,}}\s*[)\]}}]"
_NO_LIST: Final = "".join(rf"(?<!\b{word}\s)" for word in ["row", "rows", "rnd", "rnds", "round", "rounds", "size", "sizes", "needle", "needles", "on", "to"])
_BEHIND: Final = r"(?<!\dst\s)(?<!\dnd\s)(?<!\drd\s)(?<!\dth\s)"
"""That no number of a row stands in front, with which a bracket is one list: "12th (10th, 9th, 7th)"."""
_IN_BRACKET: Final = rf"(?<![\d½¼¾][(\[])(?<![\d½¼¾]\s[(\[])(?<=[(\[])(?={_PART}(?:\s?[-/]\s?{_PART})+\s*{_OF})"
_COUNTED: Final = rf"(?={_PART}(?:\s?[-/]\s?{_PART})+\s+(?:(?:more|new|extra)\s+)?(?:times|sts|stitches|st(?=[,.]))\b)"
"""What is so often, or so many stitches, is no row by its number: "every 4th row 5-6-7 times"."""
_LAST: Final = rf"(?<=\d[)\]])\s+{_PART}(?=\s*[,.;]\s|\s*\.?\s*$|\s*[(\[]\s*=?\s*[a-z]|\s+(?:new|more|extra|front|back|sleeve|body)\s+st)"
"""The last number of a list whose brackets come and go, before a comma or what its stitches are: "10 (11) 12 (sleeve)"."""
_FORMS: Final = (
    regex(
        rf"(?:(?<![\w.½¼¾/:-])|(?<=\b[kp])){_PART}(?:\s*{_GROUP}(?:\s+{_PART}(?=\s*{_GROUP}|\s+{_OF}))?|,\s*{_GROUP}(?=\s*{_OF}))+(?:{_LAST})?(?!\s*,?\s*\d+:)",
        re.I,
    ),
    regex(
        rf"(?:(?<=[a-z]\s)|(?<=[.;:=-]\s)|(?<=[a-z],\s)|(?<=[(\[])|^)(?<!\d[(\[])(?<!\d\s[(\[]){_BEHIND}{_ALL}(?=\s*(?:[a-z]+\s+){{0,2}}{_OF}|\.?\s*$)"
        rf"|(?<=\b[kp])\s?{_ALL}|(?:(?<=knit\s)|(?<=purl\s)){_ALL}(?=[,;.])",
        re.I,
    ),
    regex(
        rf"(?:(?<![\w(\[.,:/½¼¾-])(?<![\d½¼¾]\s)(?<!\d,\s)(?<!\d\s[-/]\s)|(?<=\b[kp])|{_IN_BRACKET})(?:{_NO_LIST}|{_COUNTED})"
        rf"{_PART}(\s?[-/]\s?){_PART}(?:\1{_PART})+(?!\s*[-/(\[\w]?[-/])(?!\w|\s*(?:[lr]p?c|rib|cable|mm\s+needles?)\b)",
        re.I,
    ),
)
"""Brackets that come and go or have other signs than commas in them; all in one bracket; chains of three or more."""
_PARTS: Final = regex(_PART, re.I)
_PLAIN: Final = regex(r"[\d.½¼¾⅛⅜⅝⅞]+\s*[(\[]\s*[\d.½¼¾⅛⅜⅝⅞]+(?:\s*[,:;-]\s*[\d.½¼¾⅛⅜⅝⅞]+)*\s*[)\]]")
"""A list that is read as it stands."""


def write_in_one_bracket(line: Reworded) -> Reworded:
    """Write lists of sizes of any form as a number and one bracket; those that have it stay as they are."""
    for form in _FORMS:
        line = _write_form(line, form)
    return line


def _write_form(line: Reworded, form: re.Pattern[str]) -> Reworded:
    text, places, done = "", tuple[int, ...](), 0
    for match in form.finditer(line.text):
        parts = list(_PARTS.finditer(line.text, match.start(), match.end()))
        if len(parts) < 2 or _PLAIN.fullmatch(match.group()):
            continue
        text += line.text[done : match.start()]
        places += line.places[done : match.start()]
        for number, part in enumerate(parts):
            joint = ("", " (", *([", "] * (len(parts) - 2)))[number]
            text += joint + part.group()
            places += (line.places[part.start()],) * len(joint) + line.places[part.start() : part.end()]
        text += ")"
        places += (line.places[match.end() - 1],)
        done = match.end()
    if not done:
        return line
    return replace(line, text=text + line.text[done:], places=(*places, *line.places[done:]))
