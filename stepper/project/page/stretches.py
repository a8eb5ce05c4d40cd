"""Find rows that only name a stretch of the knitting: "Short rows", "The bumpy part". No I/O.

Theory of operation. Such a row heads what stands below it, within a piece; nothing is knitted by it. It is
told by forms that are all listed: a shaping that is done in short rows or a band of colour, the half of a
piece by its number, a "part" or "bit" called by one word that orders nothing, and how the making of a piece
begins or ends ("Getting started", "Joining the fronts"). A bare fabric ("Garter stitch"), a colour and "the
other half" may be orders, and are none of these. Source: common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.asides import label_instructs
from stepper.regex import regex

_STRETCH: Final = regex(
    r"(?:(?:first|second|third|fourth|fifth|final|last|next|left|right|back|front|neck|shoulder|yoke|bust|waist|hip|sleeve|heel|toe|hood"
    r"|body|raglan|upper|lower|main|"
    r"colou?r|colou?rwork|contrast|stranded|eyelet|lace|textured|garter|ribbed|german|hem|cuff|cap)\s+){0,3}"
    r"(?:short[-\s]rows?(?:\s+(?:shaping|section))?|(?:colou?r(?:work)?\s+)(?:band|section|motif|yoke"
    r"|border)|colou?rwork|"
    r"(?:eyelet|lace|textured|garter|stranded)\s+(?:band|section|border)|division|separation)\s*:?$"
    r"|(?:short[-\s]rows?\s+(?:for|at)\s+(?:the\s+)?(?:back\s+)?neck|(?:raise"
    r"|shape)\s+(?:the\s+)?back\s+(?:of\s+(?:the\s+)?)?neck"
    r"(?:\s+(?:with|using)\s+(?:german\s+)?short[-\s]rows?)?)\s*:?$",
    re.I,
)
"""What only names a stretch of the knitting: "Back neck short rows", "Second colour band"."""
_FLANKED: Final = regex(r"\s*([~=\u2013\u2014])\s*[A-Z][A-Za-z' -]{2,40}(?:\([a-z ]{3,20}\))?\s*\1\s*")
"""A heading between two signs of decoration, which no sentence has: "~ Set up raglans ~"."""
_REPEATS: Final = regex(
    r"(?:(?:the\s+)?(?:[a-z]+\s+)?pattern\s*[,:]?\s*)?(?:each\s+(?:round|rnd)\s+(?:is\s+)?(?:worked|repeated)\s+\d[\d\s(),:\[\]]*times(?:\s+around)?\s*,\s*)?"
    r"(?:now\s+)?(?:there\s+are\s+)?\d+\s+(?:sts|stitches)\s+(?:in|to)\s+(?:each|the|every)\s+repeat\s*:",
    re.I,
)
"""How many stitches the repeat of the rounds below has: the rounds say so themselves, stitch by stitch."""
_PIECE: Final = (
    r"(?:body|sleeves?|yoke|neck(?:band|line)?|collar|cuffs?|brim|crown|hat|thumbs?|hands?|palm"
    r"|fingers?|heels?|heel\s+flap|foot|toes?|legs?|gussets?|back|fronts?|hem|edging|border|"
    r"hood|pockets?|shoulders?|raglans?|armholes?|underarms?|top|flap|bodice|skirt|waist|instep|sole"
    r"|straps?|mittens?|mitts?|socks?|shawl|scarf|cowl|blanket|panels?|pieces?|parts?|halves|"
    r"wings?|spine|centre|center|thumb\s+gusset|button\s?bands?|steek)"
)
_SIDED: Final = rf"(?:(?:left|right|front|back|first|second|upper|lower|main)\s+)?{_PIECE}"
_HALF: Final = (
    r"(?:(?:first|second|third|left|right|upper|lower|inner|outer)\s+(?:half|part|section|side|quarter)"
    r"|(?:part|section)\s+(?:one|two|three|[1-9]|[IV]{1,3}))"
)
_STAGE: Final = regex(
    rf"(?:(?:the\s+)?(?:first|second)\s+half|(?:the\s+)?{_SIDED}\s*(?:[-\u2013\u2014,:]"
    rf"|\s[-\u2013\u2014])\s*(?:the\s+)?{_HALF}"
    rf"|(?:the\s+)?{_SIDED}\s*(?:[,\u2013\u2014-]\s*|\(\s*)(?:continued|cont\.?|cont'd)\s*\)?"
    rf"|(?:getting|starting|setting)\s+(?:started|off|out)|the\s+(?:beginning|start|end|finish)"
    rf"|(?:knitting|working|starting|beginning|making|finishing|shaping|dividing|joining|setting\s+up"
    rf"|turning|closing)\s+(?:for\s+)?(?:the\s+)?{_SIDED}(?:\s+and\s+(?:the\s+)?{_SIDED})?"
    rf"|set(?:ting)?\s+up\s+(?:the\s+)?(?:panels?|patterns?|raglans?|markers?|yoke|body)|(?:joining"
    rf"|sewing\s+on|cutting|reinforcing)\s+(?:the\s+)?(?:steek|shoulders|yarn\s+ends)"
    rf"|(?:(?:and\s+)?(?:now|next)\s*,?\s+)?(?:on|back)\s+to\s+the\s+{_SIDED}|(?:the\s+)?{_SIDED}\s+first"
    rf"|(?:elevation|rise|raising|lift(?:ing)?)\s+(?:in|of|at"
    rf"|for)?\s*(?:the\s+)?(?:back\s+(?:of\s+the\s+)?)?neck"
    rf")\s*[:.!]?",
    re.I,
)
_BIT: Final = regex(r"the\s+(?P<called>[a-z-]{3,14})\s+(?:part|bit|section|stretch)\s*:?", re.I)
"""A part called by one word: "The bumpy part"."""
_NO_CALL: Final = regex(
    r"(?:next|other|same|last|following|previous|whole|entire|remaining|unworked|second|third"
    r"|purl(?:ed)?|knit(?:ted)?|slipped|worked|held|live|repeated|front|back|middle|cent(?:er|re)|right"
    r"|left|"
    r"centr?al|upper|lower|big|small|larger|smaller|long|short|patterned|marked|above|below|white|black"
    r"|gr[ea]y|red|blue|green|yellow|colou?red|contrast\w*|main)",
    re.I,
)
_OF_HOLES: Final = regex(
    r"the\s+(?:rows?|rounds?|line|band)\s+of\s+(?:holes|eyelets|bobbles|loops|picots|points|scallops)\s*:?",
    re.I,
)
_JOINED: Final = regex(
    r"(?:join|seam|unite)\s+(?:the\s+|both\s+)?(?P<what>shoulders?|fronts?|pieces|sleeves|toe|halves"
    r"|body\s+and\s+sleeves|sleeves\s+and\s+body)(?:\s+(?:seams|together))?\s*[:.]?",
    re.I,
)
"""An order, unless the row below says how: "Join shoulders"."""
_HOW_JOINED: Final = regex(
    r"\b(?:(?:re)?join(?:ing)?|seam|sew|bind(?:ing)?[-\s]off|cast(?:ing)?[-\s]off|bo|three-needle|3-needle"
    r"|graft|k2tog)\b",
    re.I,
)
_ROW_BELOW: Final = regex(r"[^.:;]{2,40}:\s*\S")
_ONLY_LENGTH: Final = regex(
    r"\W*(?:(?:with|using)\s[^,]{1,30},\s*)?(?:work|cont(?:inue)?|rep(?:eat)?)\s+(?:even|straight|as\b"
    r"|until|for|(?:\d+|one|two|three|four|five|six|eight|ten)\s+(?:more\s+)?(?:rows?|rnds?|rounds?|cm"
    r"|in)\b|\d)",
    re.I,
)


def names_a_stretch(row: str, below: str = "") -> bool:
    """Return whether a row only names a stretch of the knitting: "Short rows", "The bumpy part".

    Args:
        row: The row.
        below: The next row that is not empty; empty if there is none. It decides about names that may be
            orders where nothing below them says more ("Join shoulders", "The garter part").
    """
    plain = " ".join(row.split())
    if _STRETCH.match(plain) is not None or _FLANKED.fullmatch(row) is not None:
        return True
    if not plain[:1].isupper() or not below:
        return False
    if _REPEATS.fullmatch(plain):
        return _ROW_BELOW.match(below) is not None
    if _STAGE.fullmatch(plain):
        return True
    bit = _BIT.fullmatch(plain)
    if bit is not None:
        free = not _NO_CALL.fullmatch(bit["called"]) and not label_instructs(bit["called"])
        return free and not _ONLY_LENGTH.match(below)
    if _OF_HOLES.fullmatch(plain):
        return _ROW_BELOW.match(below) is not None
    joined = _JOINED.fullmatch(plain)
    if joined is None or _HOW_JOINED.search(below) is None:
        return False
    return joined["what"][:4].lower() in below.lower()
