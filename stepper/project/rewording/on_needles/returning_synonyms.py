"""Other wordings for stitches that come back to the needles, and for the yarn that is joined to them. No I/O.

What a page says of it has three parts in any order: whose stitches they are and what they hung on, where the yarn is
joined, and which side faces then. Where the yarn is joined is said; the side is where the next row begins. Yarn that
is joined at an edge without a word of stitches takes up the other half only where the same sentence goes on with it
("and work to match"): else it may be the yarn for a band that is picked up. Source: the wording of patterns in print,
US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.craft.needles import SIZE
from stepper.project.part_names import PART, WHICH
from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import CLOSED, JOIN_ANY_YARN, SIDE, STS, N, Synonym, row

_PUT: Final = r"(?:place|put|slip|sl|transfer|return|move|take|pick\s+up)"
_PART: Final = rf"{WHICH}(?:{PART}|side)"
_YARN: Final = r"(?:yarn|wool|thread)"
_THING: Final = rf"(?:(?:(?:an?|the|its|their|your|{_PART}|neck|st|stitch|waste|scrap|spare|stitch)\s+)*(?:(?:st|stitch)?-?\s?holders?|(?:waste|scrap|spare)\s+(?:{_YARN}|needle)|{_YARN}|pin|hold))"
_NEEDLE: Final = rf"(?:(?:(?:the|a|an|your|main|working|left|right|{SIZE}|smaller|larger|short|long|\d{{2}}\s*(?:cm|in|\"))\s*(?:,\s*)?)*(?:set\s+of\s+)?(?:(?:circular|double[-\s]pointed|dp|[2-5]|two|three|four|five)\s+)*(?:needles?|dpns?|circulars?|circ))(?!\w)(?!\s*[1-5](?![\d.]))"
_ONTO: Final = r"(?:(?:back\s+)?(?:on\s+to|onto|on|to))"
_FACING: Final = rf"(?:(?:with\s+)?(?:the\s+)?({SIDE})(?:\s+of\s+(?:the\s+)?work)?\s+facing(?:\s+you)?)"
_READY: Final = (
    rf"(?:ready\s+(?:for|to\s+(?:work|begin(?:\s+with)?|start(?:\s+with)?))\s+an?\s+({SIDE})\s+row)"
)
_JOIN: Final = r"(?:(?:re-?)?(?:join|attach)(?:\s+in)?)"
_SPOT: Final = (
    r"(?:(?:(?:at|to|in|by|from)\s+(?:the\s+)?)(?:(?:neck|neckline|armhole|front|back|side|inner|outer|left|right|underarm|thumb|palm|hand|cent(?:er|re)|middle|beginning|beg|start|"
    r"base|edge|end|finger|little|ring|index|inside|tip|of|the|gap|row|rnd|round|heel|opening|shoulder|sleeve|body|raglan|corner|bottom|top|lower|upper|bound|cast|off|on|sts|stitches|first|second|other)\b[\s-]*)+(?<!\s))"
)
_EDGE: Final = r"(?:at\s+(?:the\s+)?(?:neck|armhole|front|side|inner|cent(?:er|re))\s+(?:edge|end)(?:\s+of\s+(?:the\s+)?(?:(?:left|right|other|second)\s+)?(?:shoulder|front|side|neck|half))?)"
_WORK: Final = r"(?:(?:k|p|knit|purl|work|rib|patt|bind|cast|bo)\b|[kp]\d)"
_AND: Final = r"(?:\s*[.;,]\s*(?:and\s+|then\s+)*|\s+and\s+(?:then\s+)?)"
_START: Final = r"(^\s*|[.:]\s*)"

RETURNS: tuple[Synonym, ...] = (
    # --- whose stitches they are ---
    row("set of", rf"\b({_PUT}\s+)(?:the\s+|one\s+|a\s+|first\s+)*set\s+of\s+(?=(?:held\s+)?(?:sleeve|thumb)\s+{STS})", r"\1", "Place one set of sleeve sts onto dpns."),
    row("off|from", rf"\btake\s+((?:the\s+)?(?:{N}\s+)?(?:held\s+)?(?:{_PART}\s+)?{STS})\s+((?:off|from)\s+{_THING}){_AND}(?:place|put|slip|divide|arrange|distribute)\s+(?:them\s+)?(?:evenly\s+)?(?:over|onto|on\s+to|on|to|between)\s+", r"place \1 \2 onto ", "Take the sleeve sts off the holder and place them on dpns."),
    row("place|put|sl|transfer|return|move|take|pick", rf"\b(?:{_PUT}\s+(?:the\s+)?(?:held\s+|rem(?:aining)?\s+)?({N}\s+)?(?:held\s+)?(?:({_PART})\s+)?{STS}\s+(?:from|off)\s+{_THING}|{_PUT}\s+(?:the\s+)?(?:held\s+({N}\s+)?|({N}\s+)?held\s+)(?:({_PART})\s+)?{STS}|return\s+(?:the\s+)?(?:rem(?:aining)?\s+)?({N}\s+)?(?:({_PART})\s+)?{STS}|{_PUT}\s+(?:the\s+)?({N}\s+)?({_PART})\s+{STS})\s+{_ONTO}\s+(?={_NEEDLE})", r"return \1\3\4\6\8held \2\5\7\9 sts to ", "Pick up the held thumb sts on 3 dpns."),
    # --- the needles they come to ---
    row("return", rf"\b(return\s+(?:{N}\s+)?held\s+(?:{_PART}\s+)?)\s*(sts\s+to)\s+(?:(?:the|a|your|set\s+of)\s+)*([2-5]|two|three|four|five)\s+(?:dpns?|(?:double[-\s]pointed\s+)?needles)(?!\w)", r"\1\2 needles. Divide over \3 needles", "Pick up the held thumb sts on 3 dpns."),
    # --- the yarn is joined, and a side faces ---
    row("facing", rf"{_START}(?:{_FACING}\s*,\s*)?{JOIN_ANY_YARN}\s+{_EDGE}(?:\s*,?\s*(?:and\s+)?{_FACING}|\s*,\s*{_READY}){_AND}(?=(?:bind\s+off|cast\s+off|bo|dec|k\d|k|p\d|p|knit|purl|work)\b)", r"\1With \2\3\4 facing, take up remaining sts. ", "Attach yarn at neck edge, WS facing. Bind off 2 sts, work to end."),
    row("facing", rf"{_START}(?P<said>{JOIN_ANY_YARN}(?:\s+{_SPOT})?)\s*,?\s*(?:and\s+)?{_FACING}{_AND}(?={_WORK}|pick|pu\b)", r"\1With \3 facing, ", "Join the yarn at the underarm, RS facing, and knit to the end of the row.", spelt_out=True),
    row("join|attach", rf"^(\s*)(?P<said>{JOIN_ANY_YARN}(?:\s+{_SPOT})?)\s*,?\s*(?:for|ready\s+for|to\s+(?:work|begin\s+with))\s+an?\s+({SIDE})\s+row{_AND}(?={_WORK})", r"\1Next row (\3): ", "Join yarn for a WS row and purl across.", spelt_out=True),
    row("from ", rf"^(\s*)(?:(?P<said>{JOIN_ANY_YARN}(?:\s+{_SPOT})?){_AND})?(knit|purl)\s+(?:1|one|a)\s+row\s+from\s+(?:the\s+)?({SIDE}){CLOSED}", r"\1Next row (\4): \3", "Join yarn and purl 1 row from WS.", spelt_out=True),
    said_row_behind("join|attach", rf"{_START}(?P<said>{JOIN_ANY_YARN}\s+{_SPOT})(?:{_AND}(?={_WORK}|pick|pu\b)|{CLOSED})", "Join yarn at the base of the ring finger, pick up and k 2 sts, knit to end."),
    row("join|attach", rf"(^\s*|[.:,;]\s*(?:and\s+)?|\band\s+){_JOIN}\s+((?-i:MC|CC\d?|[A-H]))\s+(?P<said>{_SPOT}){CLOSED}", r"\1join \2", "Join MC at the center of the underarm.", spelt_out=True),
)  # fmt: skip
"""The rows, tried on lines that nothing else reads."""
