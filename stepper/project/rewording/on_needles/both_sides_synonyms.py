"""Other wordings for two sides of a neck worked at once, each from its own ball of yarn. No I/O."""

from __future__ import annotations

from stepper.project.rewording.synonym import OFF, STS, N, Synonym, row

_BALL = r"ball(?:\s+of\s+(?:the\s+)?(?:same\s+)?(?:yarn|wool))?"
_OTHER = r"(?:other|second|2nd|separate)"
_JOIN = r"(?:join|attach|add)(?:\s+in)?\s+(?:a\s+|an\s+|the\s+)?"
_SIDE = r"(?:side|front|shoulder|half)"
_CENTRE = r"(?:(?:the\s+)?(?:cent(?:er|re)|next|foll(?:owing)?)\s+)?"
_APART = (
    r"(?:\s*,?\s*(?:with|using|each\s+with|each\s+from)\s+(?:a\s+|its\s+own\s+)?(?:separate|own|different|two|2)?\s*balls?"
    r"(?:\s+of\s+(?:yarn|wool))?(?:\s+for\s+each(?:\s+side)?)?)"
)
_WORK = r"(knit|purl|k|p|work(?:\s+in\s+patt(?:ern)?)?)"

_REST = r"(?:\s+(?:rem(?:ain(?:ing)?)?|left))?(?:\s+(?:at|on|for|to))?\s+each\s+side(?:\s+of\s+(?:the\s+)?neck(?:\s+edge)?)?"

BOTH_SIDES: tuple[Synonym, ...] = (
    row(
        "ball",
        rf"\s*(?:[,;]\s*(?:and\s+|then\s+)?|\band\s+|\bthen\s+){_JOIN}(?:(?:second|2nd|separate)\s+{_BALL}|(?:another|new)\s+{_BALL}(?=\s*(?:,|\band\b|\bto\b)\s*(?:{OFF}|bo)\b))"
        rf"\s*(?:[,;]\s*(?:and\s+)?|\band\s+|\bto\s+)?(?:({OFF}|bo)\s+{_CENTRE}(?=\d))?",
        r", join 2nd ball, \1 ",
        "Next row (RS): K28, join a second ball of yarn and bind off the center 30 sts, knit to end.",
    ),
    row(
        "ball",
        rf"\b{_WORK}\s+(?:across|to\s+end\s+of)\s+(?:the\s+)?(?:first|1st|left|right)\s+{_SIDE}(?:\s+{STS})?\s*[,;]\s*(?:and\s+|then\s+)?(?:with|using)\s+(?:the\s+)?{_OTHER}\s+{_BALL}\s*,?\s*{_WORK}\s+(?:(?:across|to\s+end\s+of)\s+)(?:the\s+)?(?:other|second|2nd|left|right)\s+{_SIDE}(?:\s+{STS})?",
        r"\1 to neck edge, other ball, \2 to end",
        "Next row (WS): Purl across first side; with other ball, purl across second side.",
    ),
    row(
        "ball|side",
        rf"((?:^|:)\s*)(?:(?:with|using)\s+(?:the\s+)?(?:first|1st)\s+{_BALL}|(?:on|for)\s+(?:the\s+)?(?:first|1st)\s+{_SIDE})\s*,\s*(?=[^:.]*[,;]\s*(?:and\s+|then\s+)?(?:(?:with|using)\s+(?:the\s+)?{_OTHER}\s+ball|(?:on|for)\s+(?:the\s+)?(?:other|second|2nd)\s+{_SIDE})\b)",
        r"\1",
        "Dec row (RS): With first ball, k to last 3 sts, k2tog, k1; with second ball, k1, ssk, k to end.",
    ),
    row(
        "ball|side",
        rf"\bto\s+last\s+({N}(?:\s+{STS})?)(?:\s+of\s+(?:the\s+)?(?:first|1st)\s+{_SIDE})?(?=[^:.;]*[,;]\s*(?:and\s+|then\s+)?(?:(?:with|using)\s+(?:the\s+)?{_OTHER}\s+ball|(?:on|for)\s+(?:the\s+)?(?:other|second|2nd)\s+{_SIDE})\b)",
        r"to \1 before neck edge",
        "Dec row (RS): K to last 3 sts of first side, k2tog, k1; on second side, k1, ssk, k to end.",
    ),
    row(
        "ball|side",
        rf"\s*[,;]\s*(?:and\s+|then\s+)?(?:(?:with|using)\s+(?:the\s+)?{_OTHER}\s+{_BALL}|(?:on|for)\s+(?:the\s+)?(?:other|second|2nd)\s+{_SIDE})\s*[,:]?\s+(?=(?:k|p|knit|purl|work|ssk|ssp|skp|bo|{OFF})\b|[kp]\d)",
        ", other ball, ",
        "Dec row (RS): Knit to 3 sts before neck edge, k2tog, k1; on other side, k1, ssk, k to end.",
    ),
    row(
        "both sides",
        rf"(^\s*|[.!]\s*)(?:now\s+|from\s+here\s+|from\s+this\s+point\s+)?(?:cont(?:inue)?(?:\s+to)?\s+)?work(?:ing)?\s+both\s+sides\s+(?:at\s+once|at\s+(?:the\s+)?same\s+time|together|simultaneously){_APART}?(?:\s+(?:from\s+(?:here|now|this\s+point)(?:\s+on)?|throughout))?\s*(?:,\s*(?:and\s+)?|(?=\.)|$)\s*",
        r"\1work both sides at once. ",
        "Working both sides at the same time with separate balls of yarn, dec 1 st at each neck edge every RS row twice.",
    ),
    row(
        "each side",
        rf"(^\s*|[.!]\s*)(?:cont(?:inue)?(?:\s+to)?\s+)?work(?:ing)?\s+each\s+side\s+(?:at\s+once|at\s+(?:the\s+)?same\s+time|simultaneously){_APART}?\s*(?:,\s*(?:and\s+)?|(?=\.)|$)\s*",
        r"\1work both sides at once. ",
        "Working each side at the same time with a separate ball, bind off 2 sts at each neck edge once.",
    ),
    row(
        "each side",
        rf"\s*[—–-]\s*({N}\s+{STS}){_REST}(?=\s*\.?\s*$)",
        r". \1 on each side of the neck",
        "Dec 1 st at each neck edge every 4th row 8 times — 18 sts rem each side.",
    ),
    row(
        "each side",
        rf"((?:^|[.:;]\s+|[(\[])\s*{N}\s+{STS}){_REST}(?=\s*[.)\]]|\s*$)",
        r"\1 on each side of the neck",
        "Next row (RS): K28, bind off 30 sts, k to end. 28 sts each side.",
    ),
    row(
        "shoulder edge",
        rf"\b((?:{OFF}|bo)\s+(?:{N}\s+{STS}\s+)?)(?:from|at)\s+each\s+shoulder\s+edge\b",
        r"\1at each armhole edge",
        "Bind off 6 sts at each shoulder edge twice.",
    ),
)
"""The rows, in the order tried."""
