"""Find where a sentence of a printed page ends, and which rows it spans. No I/O.

A full stop does not always end a sentence: old-style pages put one after every stitch ("1st rnd: *P3. C4B.
K6. Rep from * around."), and abbreviations end in one.
"""

from __future__ import annotations

import re
from itertools import pairwise

from stepper.project.page.headings import heading_of, is_clutter
from stepper.project.page.orders import has_row_head, is_fragment
from stepper.project.rewording.on_needles.hub_rounds import announces_one_row
from stepper.project.rewording.work.counts_apart import counts_apart
from stepper.project.sizes import is_for_some
from stepper.regex import regex

ENDS = (".", ":", "!", "?")
"""Signs that end a sentence at the end of a row."""
_SENTENCE = regex(
    r"(?:(?<=[.!?])|(?<=sts[\])])|(?<=sts\.[\])])"
    r"|(?:(?<=follows:)|(?<=folls:)|(?<=follows:-)|(?<=folls:-))(?=\s+(?:Row|Rnd|Round|Next|1st)\b))"
    r"(?<!\bSt\.)(?<!\bNo\.)(?<!\brow beg\.)(?<!\brows beg\.)(?<!\bapprox\.)(?<!\be\.g\.)(?<!\bi\.e\.)\s+"
    r"(?!\((?:or|about|approx|\d[\d.,/\u00bd\u00bc\u00be -]*(?:cm|mm|in))\b)"
    r"(?=[A-Z*(\[]|\d+(?:st|nd|rd|th)\s+(?:row|rnd|round|ROW|RND|ROUND)\b"
    r"|\d+(?:st|nd|rd|th)(?:\s*(?:,|-|to|and)\s*\d+(?:st|nd|rd|th)){1,4}\s+(?:rows|rnds|rounds|ROWS|RNDS|ROUNDS)\b"
    r"|2nd\s+and\s+(?:all|every)\s+[a-z]+\.?\s+(?:row|rnd|round)s?\b"
    r"|\d+\s+(?:rows|rnds|rounds)\s+(?:(?:in|of)\s+)?(?:[kp]\s?\d|rib|garter|moss|seed|st\.?\s?st)\b)"
)
_GOES_ON = regex(
    r"[,;(\[&/+-]$|\b(?:and|or|to|the|of|for|until|every|from|with|an?|at|last|ending|repeating|k|p|rep)$"
    r"|\bin$(?<![\d)\]½¼¾]in)(?<![\d)\]½¼¾] in)",
    re.I,
)
_BEGINS_ANEW = regex(r"^(?:[*(\[]?[A-Z]|\d+(?:st|nd|rd|th)\s+(?:row|rnd|round)|[-•*]\s)")
_NUMBER_OF_ROW = regex(
    r"^\W*(?:r|rd|rnd|row|round)?\.?\s*\d{1,3}(?:st|nd|rd|th)?(?:\s+(?:row|rnd|round))?\.$", re.I
)
"""The number of a row followed by a full stop: "R1. Knit", "1st row. P"."""
_LETTER = regex(r"^\s*[A-H]\.$")
"""The letter of a step: "B. Work 4 rows"."""
_NEEDLE_ALONE = regex(
    r"[.,;:]\s+(?:(?:\d(?:st|nd|rd|th)|first|second|third|fourth)\s+needle|(?:needle|N)\s*\d)\s*:$", re.I
)
"""The name of a further needle at the end of a row of the page: what it works stands in the row below."""
_HEAD_ALONE = regex(r"^\W*(?:row|rnd|round)s?\s+\d{1,3}(?:\s*[(\[][rw]s[)\]])?\s*:$", re.I)
"""The head of a row, with what is worked in the row of the page below."""
_ON_NEEDLE = regex(
    r"^(?:(?:on\s+)?(?:N|needles?\s*|ndls?\.?\s*)(\d)(?:\s*(?:,|and|&)\s*(?:N|needles?\s*)?\d)*\s*:"
    r"|(?:place|put|slip)\s+\d[\d\s(),:;\[\]]*(?:sts|stitches)\s+on(?:to)?\s+(?:the\s+)?needle\s*(?:number\s*)?(\d))",
    re.I,
)
"""What is worked or lies on one needle, each needle in a row of its own: "Needle 1: K to last 3 sts, …"."""
_ON_HALF = regex(
    r"^(?:(?:round|rnd)s?\s+\d+\s*:\s*)?(?:on\s+(?:the\s+)?)?(?P<half>instep|sole)"
    r"(?:\s+(?:sts|stitches|again))?\s*:\s*[kwp*(\[]",
    re.I,
)
"""What is worked on one half of a foot, each in a row of its own: "Instep: Work in pattern."."""
_SHORTENED = regex(
    r"(?:(?<![:—-])\s(?:k|p)|\b(?:cont|foll|alt|rep|approx|patt|inc|dec)|\bat\s+(?:the\s+)?beg|[\d)\]]\s+sts?|\bNos?)\.$",
    re.I,
)
"""A word cut short by a full stop at the end of a row: a small letter below goes on with its sentence."""
_GOES_ON_SMALL = regex(
    r"(?:at|on|of|each|both|in|to|tog|rem|remain|until|from|for|and|over|row|rows|alt|foll|every|next|straight|without|"
    r"end|stitch|stitches|needles?|evenly|knitwise|purlwise|down|up|along|across)\b\.?|\d"
)
"""What such a sentence goes on with; none of it begins an instruction of its own."""
_SMALL = regex(r"[a-z]{2,}\b(?!\s*:)")
"""What a colon at the end of a row leads up to, without a head or a capital of its own."""
_ONE_STITCH = regex(r":\s*[kp]$", re.I)
"""A row worked in one stitch, after which a new one begins: "Row 2: P"."""
_GOES_WITH_STITCH = regex(r"^[\d,;(\[]|^(?:to|tog|all|across|around|until|every|even|for)\b", re.I)
"""What belongs to the stitch at the end of the row above: "Row 3: K" / "to end"."""
_COUNTED = regex(r"[\s,*(:](?:[kp]\s?)?\d{1,3}$", re.I)
_IN_YARN = regex(r"(?:MC|CC\d?|[DLBP]C|[A-H])\s*[,;.*)]")
"""The yarn of the stitches at the end of the row above: "k1" / "MC, k2 CC1."."""
_LIST = regex(r"[(\[]\s*\d+\s*[:,;]?$")
"""A list of sizes that begins at the end of a row, whatever brackets were left open or closed before it."""
_ROWS = regex(r"\b(?:rows|rnds|rounds)\b", re.I)
"""What is repeated from a star are rows then, and no stitches."""
_SO_MANY = regex(r"\bfor\s+\S+\s+(?:rows|rnds|rounds|cm|in|inches|\")\.?$", re.I)
_IN_LAST = regex(r"^(?:inc|dec)(?:rease)?\b[^.:]*\bevenly\b[^.:]*\blast\s+(?:row|rnd|round)\b", re.I)
"""A change in the last row of what the row above it works: it is no row of its own."""
_SPREAD = regex(r"^(?:inc|dec)(?:rease)?\b[^.:]*\bevenly\b", re.I)
"""A change spread over the row whose head stands in front of it: "Row 8: Purl. Decrease 6 sts evenly."""
_PLAIN_ROW = regex(r":\s*(?:knit|purl|k|p)\s*\.$", re.I)
_VERB_ALONE = regex(r"(?:^|[\s.:;\u2013\u2014-])[kp]\.$", re.I)
_STITCHES_BEHIND = regex(
    r"\*?\s*[(\[]?\s*\d+\s+(?-i:[A-Z]{1,3}\d?)(?!\w)|\*\s*[(\[]?\s*(?:[kp]\s?\.?\s?)?\d", re.I
)
"""What is knitted or purled, behind the verb cut short: "Row 1. K. * 1 B, 5 F; rep. from *"."""
_ON_THESE = regex(
    r"^\W*(?:on|over|across)\s+(?:(?:the|these|those|this|first|last|other|rem(?:aining)?|cent(?:re|er)|middle)\s+)+\d[\d\s(),:;\[\]-]*sts?\.$",
    re.I,
)
"""The stitches on which the order behind the shortened word is worked: "On these 12 sts. K. 20 rows"."""
_AS_FOLLOWS = regex(r"\bas\s+foll(?:ow)?s\s*:$", re.I)
_TO_MATCH = regex(r"\bholes?\s+to\s+(?:match|correspond)[^.:]*:$", re.I)
"""How each buttonhole is made stands below, and is no row of its own: "make holes to match:"."""
_STEPS = regex(r"^\d[\d\s(),:;\[\]]*(?:sts|stitches)\s+\d", re.I)
"""The steps of binding off over rows: "5 sts 3 times, then 4 sts twice"."""
_REPEATS = regex(r"^\W*rep(?:eat)?\.?\s+from\b", re.I)


def sentences_of(text: str) -> list[str]:
    """Split a text into its sentences.

    Returns:
        The sentences. Always: joined, they are the text, white space aside; a row of single stitches with
        full stops between them is one sentence.
    """
    made: list[str] = []
    last = ""
    for part in _SENTENCE.split(text):
        starred = "*" in last and _REPEATS.match(part) and not _ROWS.search(last)
        if made and (starred or _goes_with(last, part) or _NUMBER_OF_ROW.match(last) or _LETTER.match(last)):
            made[-1] += f" {part}"
        else:
            made.append(part)
        last = part
    return made


def _goes_with(last: str, part: str) -> bool:
    """Return whether the text after a full stop belongs to the same row of stitches."""
    if has_row_head(last) and _PLAIN_ROW.search(last) and _SPREAD.match(part):
        return True
    if has_row_head(part):
        return False
    if _ON_THESE.match(last) or (_VERB_ALONE.search(last) and _STITCHES_BEHIND.match(part)):
        return True
    if not is_fragment(last):
        return False
    return is_fragment(part) or bool(_REPEATS.match(part))


def stands_in_stops(text: str) -> bool:
    """Return whether full stops separate the stitches of one row: "*P3. C4B. K6. Rep from *"."""
    parts = _SENTENCE.split(text)
    return any(_goes_with(last, part) for last, part in pairwise(parts))


def goes_on(row: str, following: str) -> bool:
    """Return whether a sentence goes on from a row of the page into the one below."""
    if not following or heading_of(following) is not None or is_clutter(following):
        return False
    if _ONE_STITCH.search(row) and (begins_row(following) or not _GOES_WITH_STITCH.match(following)):
        return False
    if _GOES_ON.search(row) or _is_open(row) or _HEAD_ALONE.match(row) or _NEEDLE_ALONE.search(row):
        return True
    if announces_one_row(row) or (_COUNTED.search(row) and _IN_YARN.match(following)):
        return True
    if _TO_MATCH.search(row):
        return True
    if _AS_FOLLOWS.search(row) and _STEPS.match(following):
        return True
    if _goes_on_needles(row, following):
        return True
    if _SO_MANY.search(row) and _IN_LAST.match(following):
        return True
    if begins_row(following):
        return False
    if _SHORTENED.search(row) and _GOES_ON_SMALL.match(following):
        return True
    if row.endswith(":") and counts_apart(f"{row} {following}") is not None and counts_apart(row) is not None:
        return True
    if row.endswith(":") and _SMALL.match(following):
        return True
    if row.endswith(ENDS) and is_for_some(following):
        return False
    if row.endswith(ENDS):
        return _stops_go_on(row, following)
    return not _BEGINS_ANEW.match(following)


def _goes_on_needles(row: str, following: str) -> bool:
    """Return whether the row below is of a further needle, or of the first after a head of its own."""
    below = _ON_NEEDLE.match(following)
    if below is None:
        return _goes_on_halves(row, following)
    number, above = int(below.group(1) or below.group(2)), _ON_NEEDLE.match(row)
    if above is not None:
        return number > int(above.group(1) or above.group(2))
    return number == 1 and row.endswith(":")


def _goes_on_halves(row: str, following: str) -> bool:
    """Return whether two rows of a page tell one round: the row below of the other half of the foot."""
    above, below = _ON_HALF.match(row), _ON_HALF.match(following)
    return above is not None and below is not None and above["half"].lower() != below["half"].lower()


def _is_open(row: str) -> bool:
    """Return whether a bracket of a row is closed only further on: "2 (3: 4:"."""
    opened = max(row.rfind("("), row.rfind("["))
    more = row.count("(") + row.count("[") > row.count(")") + row.count("]")
    return more or (opened > max(row.rfind(")"), row.rfind("]")) and bool(_LIST.match(row[opened:])))


def _stops_go_on(row: str, following: str) -> bool:
    parts = _SENTENCE.split(row)
    styled = stands_in_stops(row) or has_row_head(parts[-1]) or parts[-1].lstrip("([ ").startswith("*")
    return styled and row.endswith(".") and _goes_with(parts[-1], _SENTENCE.split(following)[0])


def begins_row(row: str) -> bool:
    """Return whether a row of the page begins with a head and its colon: "Row 1 (RS): "."""
    return has_row_head(row) and bool(re.match(r"[^.;]{1,48}:", row))


def is_broken_at(row: str) -> bool:
    """Return whether the last word of a row cannot end its sentence."""
    return bool(_GOES_ON.search(row))
