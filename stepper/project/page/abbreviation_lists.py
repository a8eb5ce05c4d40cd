"""Tell a run of abbreviations and their meanings, as pages print them: "K, knit; p, purl; …". No I/O.

Theory of operation. A list is cut at its semicolons or, where each entry has a sign between the short form
and its words, at its commas. It is one if it has four entries at least, each a short form with words behind
it, and most words begin with the letter of their short form, as the words of no row of stitches do. Short
forms alone are a list only where several of them are of things that are not knitted ("st(s), rnd(s), rep,
beg"). Source: common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.grammar import abbreviations
from stepper.regex import regex

_LONGEST: Final = 1600
"""Most letters of such a list."""
_FEWEST: Final = 4
"""Fewest entries."""
_ALIKE: Final = 0.6
"""Least share of the entries whose words begin as the short form does."""
_HEAD: Final = regex(
    r"^\W*(?:(?:special|other|standard|common|the)\s+)?(?:abbreviations?|abbrevs?|abbrs?|terms"
    r"|others?)\b(?:\s+used)?"
    r"(?:\s+in\s+this\s+(?:pattern|leaflet))?\W+",
    re.I,
)
_SIGNED: Final = regex(r",\s+(?=[A-Za-z][^,;=:\u2013-]{0,13}\s*[=:\u2013-]\s*[A-Za-z])")
_ENTRY: Final = regex(
    r"(?P<key>[A-Za-z][A-Za-z0-9.&()/'\u2019]{0,11}(?:\s(?:fwd\.?|st\.?|sts|m"
    r"|tog\.?))?)\s*(?:[,=:\u2013\u2014-]\s*|\s)(?P<words>[A-Za-z][^;*]*)"
)
_KNITTED: Final = regex(
    r"\b(?:rows?|rnds?|rounds?)\s+\d|\b\d{2,}\b|\b(?:until|rep(?:eat)?\s+from|cast\s+(?:on"
    r"|off)\s+\d)\b|:\s*[kp]\d",
    re.I,
)
"""What no meaning of a short form says."""
_MEANT: Final = regex(
    r"(?:knit|purl|stitch|repeat|together|slip|round|row|marker|continu|increas|decreas|remain"
    r"|begin|yarn|wool|alternat|follow|pass"
    r"|make|place|bind|beg\b|left|pick|stock|needle|colou?r|right\s+side|wrong\s+side|through|cast|pattern|inch|between|approx|bring|remove)",
    re.I,
)
"""How the meanings of short forms of the trade begin."""
_UNKNITTED: Final = regex(
    r"(?:sts?|st\(s\)|rnds?|rnd\(s\)|rep|beg|rem|cont|foll|patt|tog|alt|approx|rs|ws|mc|cc|pm|sm|bor|m)\.?",
    re.I,
)
_TRADE: Final = regex(
    r"(?:inc|dec|yo|yrn|yfwd|wyib|wyif|kfb|pfb|tog|alt|meas|inc'd|dec'd|dpns?|w&t|est|incl?|cable|yf|yb)(?:\s.*)?",
    re.I,
)
_SHORT: Final = regex(r"[A-Za-z][A-Za-z0-9.()&]{0,8}")
_KEY: Final = (
    r"(?:[A-Za-z][A-Za-z0-9.&/'\u2019]{0,9}(?:\([a-z]{1,3}\))?(?:\s(?:st|sts|st\s+st|m|tog|tbl|below|fwd))?)"
)
_EXPLAINS: Final = regex(
    rf"^\W*(?P<keys>{_KEY}(?:\s*(?:[,/&]|\band\b)\s*{_KEY}){{0,4}})\s*(?P<sign>[=:\u2013\u2014]|,(?=\s)|-(?=\s))\s*(?P<words>\S.*)$"
)
_NO_SHORT_FORM: Final = regex(
    r"(?:row|rnd|round|rows|rnds|rounds|next|note|nb|tip|hint|body|back|front|sleeve|yoke|hat|sock|leg|toe|heel|foot|cuff|brim|hem|neck|thumb|hand|all|every"
    r"|each|knit|purl|work|then|now|with|using|set-?up|also|size|sizes|yarn|step|part|here|repeat|join|turn|cast|bind|first|last|place|main|ribbing)\.?",
    re.I,
)
_ROW: Final = 3
"""Fewest short forms of things that are not knitted in a list without meanings."""


def lists_abbreviations(text: str) -> bool:
    """Return whether a text is a list of abbreviations, most with their meanings, and nothing else.

    Args:
        text: A paragraph or a row, with the heading it may begin with.
    """
    if len(text) > _LONGEST or _KNITTED.search(text):
        return False
    head = _HEAD.match(text)
    body = text[head.end() :] if head is not None else text
    entries = [entry.strip() for entry in body.strip(" .").split(";") if entry.strip()]
    if len(entries) < _FEWEST:
        entries = [entry.strip() for entry in _SIGNED.split(body.strip(" ."))]
        if not all(re.search(r"[=:\u2013-]", entry) for entry in entries):
            entries = []
    found = [_ENTRY.fullmatch(entry) for entry in entries if not _is_known(entry)]
    if len(found) >= _FEWEST and all(found):
        each = [(match["key"], match["words"]) for match in found if match is not None]
        alike = sum(key[0].lower() == words[0].lower() for key, words in each)
        meant = sum(bool(_MEANT.match(words)) for _, words in each)
        return bool(min(alike, meant) >= _ALIKE * len(each))
    return head is not None and _only_names(body)


def explains_short_form(row: str) -> bool:
    """Return whether a row explains short forms by a sign behind them: "LLI, RLI: lifted increases".

    Every one of them has to look as no ordinary word does: capitals, a digit, no vowel, or a form of the
    trade.
    """
    match = _EXPLAINS.match(row)
    if match is None or not re.search(r"[A-Za-z]{2}", match["words"]):
        return False
    keys = re.split(r"\s*(?:[,/&]|\band\b)\s*", match["keys"])
    return all(_is_short_form(key) for key in keys) and (match["sign"] != "," or len(keys) == 1)


def _is_short_form(key: str) -> bool:
    """Return whether a word is cut short, as no ordinary word is."""
    if _NO_SHORT_FORM.fullmatch(key):
        return False
    plain = key.split("(")[0].rstrip(".")
    cut = len(plain) <= 5 and not re.search(r"[aeiouy]", plain, re.I)
    return bool(
        re.search(r"\d|&|/", plain)
        or (plain.isupper() and len(plain) <= 6)
        or cut
        or _UNKNITTED.fullmatch(plain)
        or _TRADE.fullmatch(plain)
    )


def _is_known(entry: str) -> bool:
    """Return whether an entry is a short form alone that every knitter knows: "k2tog"."""
    return re.fullmatch(abbreviations(), entry, re.I) is not None


def _only_names(body: str) -> bool:
    """Return whether a text is short forms alone, several of them of what is not knitted."""
    names = [name.strip() for name in body.strip(" .").split(",")]
    unknitted = sum(bool(_UNKNITTED.fullmatch(name)) for name in names)
    return all(_SHORT.fullmatch(name) for name in names) and unknitted >= _ROW
