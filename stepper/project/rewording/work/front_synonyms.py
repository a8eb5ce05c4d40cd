"""Other wordings of fronts and necks: counts behind a shaping, how far as another part, rows that a shaping names. No I/O."""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import OFF, STOP, STS, N, Synonym, row

_S = r"(?:(?<=^)|(?<=[.!]))\s*"
_SHAPES = r"(?:(?:all|both)\s+)?(?:(?:the|neck|armhole|raglan|sleeve|cap|side|front|waist|edge)\s+)*(?:shapings?|decreas(?:es|ing|e\s+rows)|decs?\b\.?|increas(?:es|ing|e\s+rows)|incs?\b\.?)(?:\s+(?:rows|rounds))?"
_DONE = r"(?:(?:is|are|has\s+been|have\s+been)\s+)(?:now\s+)?(?:completed?|finished|done|worked)"
_HAVE = r"(?:(?:there\s+(?:are|will\s+be|should\s+be)|you\s+(?:will\s+|should\s+)?have|you(?:\s+are|'re)\s+left\s+with)\s+)?"
_LEFT = rf"{N}\s+{STS}(?:\s+(?:rem(?:ain(?:ing)?)?\b\.?|left))?"
_CHANGE = r"((dec|inc)(?:rease)?\.?\s+(?:1|one)\s+(?:st|stitch)\s+at\s+(?:the\s+)?(neck|armhole|front|side)\s+edge)"
_PLACE = r"(armhole|raglan)s?"
_ENDS = r"(?:ending|end|finishing)\s+(?:with|on|after)(?:\s+having\s+(?:just\s+)?worked)?"

FRONTS: tuple[Synonym, ...] = (
    row("when|after|once", rf"{_S}(?:when|after|once)\s+{_SHAPES}\s+{_DONE}\s*,?\s*{_HAVE}({_LEFT})(?=\s*\.?\s*$)", r" \1", "When all shaping is complete, 18 sts rem."),
    row("when|after|once", rf"{_S}({_LEFT})\s*,?\s+(?:when|after|once)\s+{_SHAPES}\s+{_DONE}(?=\s*\.?\s*$)", r" \1", "18 sts rem when all decreases have been worked."),
    said_row("separately", rf"{_S}(?P<said>(?:(?:now\s+)?(?:work|complete|finish)\s+(?:each|both|the\s+two)\s+sides?\s+(?:of\s+(?:the\s+)?neck\s+)?separately|(?:each|both|the\s+two)\s+sides?\s+(?:of\s+(?:the\s+)?neck\s+)?(?:is|are)\s+(?:now\s+)?(?:worked|finished|completed)\s+separately)){STOP}", "Work each side of neck separately."),
    row("having|just worked", r"((?:^|[.])\s*)(?=[^.]*\b(?:having|just\s+worked)\b)ends?\s+(?:having\s+(?:just\s+)?worked|with|after|on)\s+(an?\s+(?:rs|ws|right\s+side|wrong\s+side)\s+row)(?:\s+just\s+worked)?(?=\s*\.?\s*$)", r"\1ends with \2", "Work 4 rows in st st. End having just worked a WS row."),
    row("rem", rf"\b({OFF}|bo)\s+(?:(?:the|all|rem(?:aining)?\.?)\s+)*rem(?:aining)?\.?\s+({N}\s+{STS}\s+(?:at\s+(?:the\s+)?)?beg(?:inning)?\s+of\s+(?:the\s+)?(?:next|foll(?:owing)?)\s+(?:2|two)\s+rows)(?=\s*\.?\s*$)", r"\1 \2. 0 sts", "Bind off rem 10 sts at beg of next 2 rows."),
    row("next", rf"\bnext\s+(rs|ws|right\s+side|wrong\s+side)\s+row\s+and\s+(?:on\s+|of\s+)?(?:the\s+)?(?:foll(?:owing)?\s+({N})|({N})\s+foll(?:owing)?)\s+(\d+(?:nd|rd|th)|alt(?:ernate)?)\s+rows?", r"next \1 row, then every \4 row \2\3 times", "Dec 1 st at neck edge on next RS row and 2 foll alt rows."),
    row("as foll", rf"{_S}{_CHANGE}\s+((?:on\s+)?(?:every|each)\s+(rs|ws)\s+row\s+{N}\s+times)\s*,?\s+as\s+foll(?:ow)?s?\s*:\s*([^.;:]*\bto\s+(?:end|last)\b[^.;:]*?)(?=\s*\.?\s*$)", r" \3 \2 row (\5): \6. Rep \3 \2 row \4 in all", "Dec 1 st at armhole edge every RS row 3 times as foll: K1, ssk, knit to end."),
    row("shaping|shapings", rf"\b((?:as|same\s+as)\s+[^.;:]*?\b)(?:until|to)\s+(?:all\s+|the\s+)*(?:end\s+of\s+(?:the\s+)?)?{_PLACE}\s+shapings?\s+{_DONE}", r"\1to end of \2 shaping", "Work as for back until armhole shaping is complete."),
    row("to |until", rf"(^\s*(?:work\s+)?(?:exactly\s+)?(?:the\s+)?(?:as|same\s+as)\s+[^.;:,]*?\b(?:to|until)\s+(?:the\s+)?(?:(?:beg(?:inning)?|start|end)\s+of\s+(?:the\s+)?)?(?:armholes?|neck|shoulders?|raglan)(?:\s+shapings?)?)\s*,?\s+{_ENDS}\s+(an?\s+)?(rs|ws|right\s+side|wrong\s+side|k|p|knit|purl)\s+row(?=\s*\.?\s*$)", r"\1. ends with a \3 row", "Work as for left front to armhole, ending with a RS row."),
    row("then", rf"\b((?:dec|inc)(?:rease)?\.?\s+(?:1|one)\s+(?:st|stitch)\s+at\s+(?:each\s+end|both\s+ends))(\s+(?:of|on)\s+[^.;]*?\buntil\s+{N}\s+{STS}\s+rem(?:ain)?)\s*,?\s+then\s+(?:on\s+|of\s+)?(?:the\s+)?(?:next|foll(?:owing)?)\s+({N}\s+rows)", r"\1\2. \1 of next \3", "Dec 1 st at each end of every alt row until 30 sts rem, then on foll 4 rows."),
    row("match", r"\b(until\s+(?:the\s+)?(?:left\s+|right\s+)?(?:front|armholes?|piece|work))\s+match(?:es)?\s+(?:the\s+)?(back)\s+at\s+(?:the\s+)?(shoulders?|armholes?)\b", r"\1 measures same as \2 to \3", "Work even until front matches the back at the shoulders."),
    said_row_behind("(k", r"(\bin\s+(?:st\.?\s?st|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?))\s*\(\s*(?P<said>(?:k|knit)\s+(?:on\s+|the\s+|all\s+)?(?:rs|right\s+side)\s+rows\s*[,;]?\s*(?:and\s+)?(?:p|purl)\s+(?:on\s+|the\s+|all\s+)?(?:ws|wrong\s+side)\s+rows)\s*\)", "Work in stockinette (knit RS rows, purl WS rows) until piece measures 9 cm."),
    row(", row|, rnd|, round", r"^(\s*(?:hem|rib(?:bing)?|cuff|band|border|edging|welt|neckband|collar))\s*,\s*(row|rnd|round)\s+(\d+)(?=\s*(?:\(\s*[rw]s\s*\)\s*)?:)", r"\1 \2 \3", "Hem, row 1 (RS): *K1, p1; rep from * to end."),
    said_row("correct", r"^\s*(?P<said>keeping\s+(?:the\s+)?(?:neck|armhole|side|front|raglan|other)\s+edges?\s+correct)\s*,\s*", "Keeping armhole edge correct, dec 1 st at neck edge on next 4 rows."),
)  # fmt: skip
"""The rows, in the order tried."""
