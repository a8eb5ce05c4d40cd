"""The names of stitch patterns: in a heading with their rows below it, and where they are called. No I/O."""

from __future__ import annotations

import re
from collections.abc import Iterable

from stepper.regex import regex

NAME_ENDS = r"(?:pattern|patt|stitch|st|rib|ribbing|lace|mesh|twill|moss|cable|panel|motif|chart)"
"""What the name of a stitch pattern ends with."""
FRONT_ENDS = r"(?:ridges?|basketweave|herringbone|trellis|honeycomb|waffle|texture)"
"""What it may end with as well in front of the knitting; further down it may be worked where it stands."""
_ANY_END = rf"(?:{NAME_ENDS}|{FRONT_ENDS})"
_OF_SEVERAL = r"\s+(?:[a-h]|[ivx]{1,3}|\d{1,2})"
NUMBERED = rf"(?:{_OF_SEVERAL})?"
"""The letter or number by which such names are told apart: "Panel A"."""
WORKED_OVER = r"(?:(?:worked\s+)?over|worked\s+on)\b"
"""Words before the stitches that a pattern is worked over."""
BEFORE_WIDTH = rf"\s*(?:[(,:\u2013\u2014-]|\bis\b|(?={WORKED_OVER}))\s*(?:is\s+)?"
"""What stands between a name and the stitches that the pattern needs."""
_FLAT_OR_ROUND = (
    r"(?:(?:worked\s+)?(?:in\s+(?:the\s+)?(?:rnds?|rounds?|rows)|flat|back\s+and\s+forth)(?:\s*[,;:]\s*|\s+(?=over\b)))?"
)
WIDTH = (
    rf"{_FLAT_OR_ROUND}(?:[a-z ]*\bmult(?:iple)?\.?\s+of\b|{WORKED_OVER}|\d+\s*sts\b|any\b"
    r"|\d+[-\s]st(?:itch)?\s+(?:panel|rep(?:eat)?|patt(?:ern)?|motif)\b|(?:odd|even)\s+number\b)[^()]*\)?"
)
"""What a heading says of the stitches that a pattern needs, behind a bracket or comma."""
ANY_WIDTH = (
    rf"{_FLAT_OR_ROUND}"
    r"(?:[a-z ]*\bmult(?:iple)?\.?\s+of\b|any\s+(?:number|mult(?:iple)?)\b|(?:odd|even)\s+number\b)[^()]*\)?"
)
"""The same where it fits many counts, as no part of a garment does: "Heel flap (28 sts)" is a part."""
OF_GARMENT = regex(
    r"\b(?:left|right|front|back|body|sleeve|yoke|neck(?:band|line)?|collar|cuff|brim|crown|hat|cap|band|thumb|hand|palm"
    r"|finger|arm|ear|head|tail|wing|sole|heel|flap|foot|feet|toe|leg|gusset|hem|edg(?:e|ing)|border|hood|pocket|shoulder"
    r"|raglan|waist|bodice|skirt|bib|armhole|underarm|strap|welt|tab|gore|instep|section|part|piece|side|half|size)s?\b",
    re.I,
)
"""Words of parts of a garment: what is named by one, with the stitches it has, is knitted where it stands."""
WRITTEN = (
    r"(?:\s*[(,:\u2013\u2014-]?\s*"
    r"(?:written(?:\s+(?:out|instructions?|version|directions?))?|in\s+words)\b\s*\)?)?"
)
"""What a heading says of a chart whose rows are written below it: "Chart A (written instructions)"."""
SECTION_NUMBER = r"(?:\d{1,2}(?:\.\d{1,2})*[.)]?\s+)?"
"""The number of a section of the page, if one stands before a name: "6.1 Ridge (any number of sts)"."""
_NO_ORDER = (
    r"(?!(?:work|cont|continue|knit|purl|beg|begin|change|rep|repeat|cast|with|using|next|now|in|on|for"
    r"|these|this|that|here|below|above|see|the\s+following|rows?|rnds?|rounds?)\b)(?!.*\bforms?\b)"
)
_BY_STITCHES = r"k\s?\d{1,2}\s*[,/]?\s*p\s?\d{1,2}\s+(?=rib)"
"""A rib called by its stitches: "K2, P2 rib"."""
_HEAD = regex(
    rf"\s*{SECTION_NUMBER}{_NO_ORDER}"
    rf"(?:(?P<name>(?:\d\s?[x/]\s?\d\s+(?={_ANY_END}\b)|{_BY_STITCHES}|[A-Za-z][\w' -]{{0,40}}\b)"
    rf"{_ANY_END}{NUMBERED}"
    rf"|(?P<one>(?:panel|cable|motif|patt(?:ern)?|chart){_OF_SEVERAL}))\b\.?{WRITTEN}\s*(?:{BEFORE_WIDTH}{WIDTH}\.?)?"
    rf"|(?P<wide>[A-Za-z][\w' -]{{0,40}}?)\s*\(\s*(?:(?P<any>{ANY_WIDTH})|{WIDTH}))\s*(?::|\s-)?\s*",
    re.I,
)
"""The name of a stitch pattern, often with the stitches it needs: "Ladder lace (multiple of 6 sts)".

With these it may be any name, but of a part: "Ridge (any number of sts; 4 rnds)", "Ladder (6 sts)"."""
_HOW = (
    r"(?:(?:worked|knit(?:ted)?)\s+)?(?:in\s+(?:the\s+)?(?:rnds?|rounds?|rows)|flat|back\s+and\s+forth)"
    r"(?=\s*[):])\s*\)?"
)
"""How a pattern is worked, behind its name."""
_RUN_IN = regex(
    rf"\s*{SECTION_NUMBER}{_NO_ORDER}(?P<name>(?:{_BY_STITCHES})?[A-Za-z\d][\w' /-]{{0,48}}?)"
    rf"(?:\s*\(\s*(?:(?P<any>{ANY_WIDTH})|{WIDTH})"
    rf"|\s*[,(]?\s*{_HOW}"
    r"|(?P<open>\s*,?\s+(?:worked\s+)?(?:over|on)\s+an?\s+(?:odd|even)\s+number(?:\s+of\s+(?:sts|stitches))?))?"
    r"\s*(?::|\.?\s*[\u2013\u2014]|\s-|(?<=\))\.)\s+(?=\S)",
    re.I,
)
"""What names a stitch pattern in the row that tells it: "Moss stitch (odd number): Row 1: ..."."""
_ENDS_AS_NAME = regex(rf".*\b{_ANY_END}{NUMBERED}", re.I)
_FRONT_NAME = regex(rf"\s*[^(,:]*\b{FRONT_ENDS}{NUMBERED}\s*:?\s*", re.I)
_ONE_ROW = regex(r"\W*(?:[kp]\s?\d|[kp]\b|knit\b|purl\b|sl\b|slip\b|yo\b|ssk\b|k2tog\b|[*(\[])", re.I)
_NO_COLON = regex(
    r"^(?P<head>\s*(?:(?:row|rnd|round|(?-i:R))\s?1|(?:1st|first)\s+(?:row|rnd|round))(?:\s*\([rw]s\))?)\s"
    rf"(?!\s*\([rw]s\b)(?={_ONE_ROW.pattern})",
    re.I,
)
"""The head of a first row that has no colon."""
_HOW_WORKED = regex(
    r"\s*[,;]\s*(?:(?:worked|knit(?:ted)?)\s+)?(?:in\s+(?:the\s+)?(?:rnds?|rounds?|rows)|flat|back\s+and\s+forth)"
    r"(?=\s*(?:[:,;)]|$))|(?<=\()\s*(?:worked\s+)?(?:in\s+(?:the\s+)?(?:rnds?|rounds?|rows)|flat)\s+(?=over\b)",
    re.I,
)
_OPEN_WIDTH = regex(
    rf"^(?P<name>[^(),:]*?\b{NAME_ENDS}{NUMBERED})\s*(?:[,:]\s*|\s(?=over\b))"
    rf"(?P<width>(?:mult(?:iple)?\.?\s+of\b|{WORKED_OVER}|(?:odd|even)\s+number\b)[^()]*)$",
    re.I,
)
_WIDTH_ALONE = regex(rf"\(\s*(?:(?:worked\s+)?over\s+(?:an?\s+)?)?{ANY_WIDTH}\s*", re.I)
"""What a pattern needs, in a row of its own below the name: "(multiple of 4 sts plus 2)"."""
_FIRST = regex(
    r"\W*(?:[rw]s\W+)?(?:(?:(?:row|rnd|round)/)?(?:row|rnd|round)s?\.?\s*(?:#|no\.)?\s*1\b(?!\d)"
    r"|(?:1st|first)(?:\s*(?:[-\u2013,&/]|\band\b|\bto\b)\s*(?:\d{1,2}(?:st|nd|rd|th)|(?:every|each|all|foll\w*|alt\w*|odd)\b))*"
    r"\s+(?:rows?|rnds?|rounds?)\b|r\s?1\b(?=\W))",
    re.I,
)
"""The head of the first row of a pattern, or of several of which it is one."""
_ONLY = regex(
    r"\s*(?P<each>(?:all|every|each)\s+(?P<row>row|rnd|round)s?)"
    rf"(?:\s*(?:\(rs\s*(?:&|and)\s*ws\)\s*)?:|(?=\s+{_ONE_ROW.pattern}))",
    re.I,
)
"""The head of the one row that is a whole pattern: "All rows:", "every row k1, *p1, k1"."""
_NTHS = regex(
    r"\s*(?P<nths>1st(?:\s*(?:[-\u2013,&]|\band\b|\bto\b)\s*\d{1,2}(?:st|nd|rd|th))+)\s+(?P<rows>rows|rnds|rounds)\b",
    re.I,
)
"""Several rows by their ordinals: "1st-3rd rnds"."""
_IN_WORDS = regex(
    r"\W*(?:in\s+words|written(?:\s+(?:out|instructions?|version|directions?))?)\s*[:.]?\s*", re.I
)
"""A row that only says that the rows of a chart are written out below it."""


def heads_pattern(row: str, below: str, *, knits: bool = False) -> bool:
    """Return whether a row only names a stitch pattern whose first row stands below it.

    Args:
        row: The row.
        below: The next row that is not empty; empty if there is none.
        knits: Whether something is on the needles already.
    """
    if knits and _FRONT_NAME.fullmatch(row):
        return False
    match = _HEAD.fullmatch(row)
    if match is None or (match["wide"] and not match["any"] and OF_GARMENT.search(match["wide"])):
        return False
    return bool(_FIRST.match(below) or _ONLY.match(below))


def run_in_head(row: str) -> int:
    """Return where the first row of a stitch pattern begins behind the pattern's name; 0 if there is none."""
    match = _named_in_row(row)
    told = row[match.end() :] if match is not None else ""
    return match.end() if match is not None and (_FIRST.match(told) or _ONLY.match(told)) else 0


def tells_pattern(row: str) -> bool:
    """Return whether a row names a stitch pattern and gives its only row: "Rib pattern: *K2, p2; rep"."""
    match = _named_in_row(row)
    return match is not None and _ONE_ROW.match(row, match.end()) is not None


def names_shaping_row(row: str) -> bool:
    """Return whether a row names a row of increases or decreases and tells it: "Raglan dec row (RS): K2"."""
    return _SHAPING_ROW.match(row) is not None


_SHAPING_ROW = regex(
    r"\W*(?:(?!next\b)[a-z-]+\s+){0,3}?(?:inc|dec)(?:rease)?s?\.?\s+(?:row|rnd|round)s?\b\s*"
    r"(?:[(\[]\s*(?:[rw]s|(?:right|wrong)\s+side)\s*[)\]])?\s*(?:[:.=\u2013\u2014-]+\s*|\s)"
    r"(?=[kp]\s?\d|[kp]\b|[*(\[]|knit|purl|sl)",
    re.I,
)


def _named_in_row(row: str) -> re.Match[str] | None:
    match = _RUN_IN.match(row)
    if match is None or not (match["any"] or match["open"] or _ENDS_AS_NAME.fullmatch(match["name"])):
        return None
    return match


def as_plain_head(row: str) -> str:
    """Return the heading of a pattern as other pages print it: its stitches in brackets.

    How it is worked, flat or in the round, is left out.
    """
    plain = _HOW_WORKED.sub("", row.rstrip().rstrip(":.").rstrip(" -"))
    plain = re.sub(r"^\s*k\s?(\d{1,2})\s*[,/]?\s*p\s?(\d{1,2})\s+(?=rib)", r"\1x\2 ", plain, flags=re.I)
    return _OPEN_WIDTH.sub(r"\g<name> (\g<width>)", plain)


def is_in_words(row: str) -> bool:
    """Return whether a row below the name of a chart only says that its rows are written: "In words:"."""
    return _IN_WORDS.fullmatch(row) is not None


def as_first_row(row: str) -> str:
    """Return the only row of a pattern as its first: "All rows: K." is "Row 1:   K.", letters in place.

    Several by their ordinals are numbered, "1st-3rd rnds:" is "rnds 1-3    :".
    A first row without a colon gets one, "Row 1 (RS) K2" is "Row 1 (RS):K2". Any other row is returned
    as it is. To be asked of a row right below the name of a pattern alone.
    """
    match = _ONLY.match(row)
    nth = _NTHS.match(row) if match is None else None
    if nth is not None:
        head = f"{nth['rows']} {re.sub(r'(?<=[0-9])(?:st|nd|rd|th)', '', nth['nths'])}"
        return f"{row[: nth.start('nths')]}{head.ljust(nth.end() - nth.start('nths'))}{row[nth.end() :]}"
    if match is None:
        return _NO_COLON.sub(lambda bare: f"{bare['head']}:", row, count=1)
    head = f"{match['row']} 1"
    room = match.end() - match.start("each")
    return f"{row[: match.start('each')]}{f'{head}:'.ljust(room)}{row[match.end() :]}"


def goes_with_head(row: str, above: str) -> bool:
    """Return whether a row only says the stitches that the pattern named in the row above needs."""
    return _WIDTH_ALONE.fullmatch(row) is not None and heads_pattern(f"{above} {row}", "Row 1")


def name_in_head(row: str) -> str:
    """Return the name in a row for which `heads_pattern` holds, in lower case."""
    match = _HEAD.fullmatch(row)
    return " ".join((match["name"] or match["one"] or match["wide"]).lower().split()) if match else ""


def key_of(name: str) -> str:
    """Return a name in the form used for looking up patterns: without "the", "pattern" or "stitch".

    A rib is called by its stitches: "2 x 2 ribbing" is `2x2 rib`.
    """
    words = " ".join(name.lower().split())
    words = _RIB.sub(_by_numbers, words)
    words = re.sub(rf"^\s*{SECTION_NUMBER}(?:the\s+)?", "", words)
    return re.sub(r"(?:\s+(?:pattern|patt|stitch|st))+\.?$", "", words)


_RIB = regex(r"^(?:(\d)\s?[x/]\s?(\d)|k\s?(\d)\s*[,/]?\s*p\s?(\d))\s+rib(?:bing)?(?=\s|$)")


def _by_numbers(match: re.Match[str]) -> str:
    return f"{match[1] or match[3]}x{match[2] or match[4]} rib"


def key_called(name: str, known: Iterable[str]) -> str:
    """Return the key of the pattern that a line calls, by the whole of its name or by how it ends.

    "Row 2 of panel" means the braid panel, where no other name of the page ends so.

    Args:
        name: As the line calls it.
        known: The keys of the patterns of the page.
    """
    key, keys = key_of(name), set(known)
    ending = [one for one in keys if one.endswith(f" {key}")] if key else []
    return ending[0] if key not in keys and len(ending) == 1 else key
