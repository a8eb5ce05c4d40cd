"""Other wordings for fabrics and patterns called by name, and for edges worked in another. No I/O."""

from __future__ import annotations

from stepper.craft.stitch_patterns import KNOWN, RIB
from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import END, ROUND, STS, N, Synonym, row

_OWN = r"(?:[a-z][a-z'-]+\s+)(?:pattern|patt|stitch|lace)\b"
_NAME = rf"(?:{RIB}|{KNOWN}|{_OWN})"
_AFTER = r"(?=\s+(?:for|until|beg|start|over|keeping)\b|\s*[.,;(]|\s*$)"
_KNIT = (
    r"(?:every\s+(?:row|rnd|round)\s+(?:k|knit)|(?:k|knit)\s+(?:every|all|each)\s+rows?"
    r"|(?:k|knit)\s+(?:1|one)\s+(?:rnd|round)\s*,\s*(?:p|purl)\s+(?:1|one)\s+(?:rnd|round))"
)
_ENDS = (
    r"(?:at\s+(?:each|either|both)\s+(?:edges?|ends?|sides?)(?:\s+of\s+(?:every\s+|each\s+|the\s+)?(?:row|work|piece))?|at\s+"
    r"(?:the\s+)?beg(?:inning)?\s+and\s+end\s+of\s+(?:every|each)\s+row)"
)
_KEEPING = r"(?:\s*[,;]\s*|\s+)(?:and\s+)?(?:at\s+the\s+same\s+time\s*,?\s*)?(?:keeping|working|with)\s+"
_IN = rf"((?:{KNOWN}|{RIB}))"
_THEN = r",?(\s+(?:for|until)\s+[^.]*?)?(?=\s*[.]|\s*$)"
_REVERSE = r"rev(?:ersed?)?\.?\s+(?:st|stock)"
_RS = r"rs|right\s+side|purl|p"
_WS = r"ws|wrong\s+side|knit|k"

PATTERNS: tuple[Synonym, ...] = (
    row(
        "rev",
        rf"^(\s*)(?:beg(?:inning|in)?|start(?:ing)?)\s+(?:with|on)\s+an?\s+(?:{_RS})\s+row\s*,\s*(?=[^.]*\b{_REVERSE})",
        r"\1next row (rs): ",
        "Starting with a p row, work 5 rows in reverse st st.",
    ),
    row(
        "rev",
        rf"^(\s*)(?:beg(?:inning|in)?|start(?:ing)?)\s+(?:with|on)\s+an?\s+(?:{_WS})\s+row\s*,\s*(?=[^.]*\b{_REVERSE})",
        r"\1next row (ws): ",
        "Starting with a knit row, work 5 rows in reverse st st.",
    ),
    row(
        "rev",
        rf"^(\s*)([^.]*?\b{_REVERSE}[^.,]*)\s*,\s*(?:beg(?:inning|in)?|start(?:ing)?)\s+(?:with|on)\s+an?\s+(?:{_RS})\s+row{END}",
        r"\1next row (rs): \2",
        "Work 5 rows in reverse st st, beginning with a purl row.",
    ),
    row(
        "rev",
        rf"^(\s*)([^.]*?\b{_REVERSE}[^.,]*)\s*,\s*(?:beg(?:inning|in)?|start(?:ing)?)\s+(?:with|on)\s+an?\s+(?:{_WS})\s+row{END}",
        r"\1next row (ws): \2",
        "Work 5 rows in reverse st st, beginning with a knit row.",
    ),
    said_row_behind(
        "garter",
        rf"\b(garter(?:\s+st(?:itch)?)?)\.?\s*\((?P<said>{_KNIT})\.?\s*\)",
        "Work in garter st. (every row k.) for 6 rows.",
    ),
    row(
        "rib|st|seed|moss|patt|lace",
        rf"\b(work|cont(?:inue)?)\s+(?!in\b|even\b|\d+\s*(?:st|row|rnd|round)|the\b|in\b|button|chart)(?={_NAME}{_AFTER})",
        r"\1 in ",
        "Work 1x1 rib for 4 rounds.",
    ),
    row(
        "rib|st|seed|moss|patt|lace",
        rf"\b(work\s+(?:for\s+)?{N}\s+{ROUND})\s+(?:of\s+)?(?!in\b)(?={_NAME}{_AFTER})",
        r"\1 in ",
        "Work 4 rounds seed st.",
    ),
    row(
        "rib|st|seed|moss|patt|lace",
        rf"^(\s*)({N}\s+{ROUND})\s+(?:in\s+|of\s+)?(?={_NAME}{_AFTER})",
        r"\1work \2 in ",
        "6 rows moss st.",
    ),
    row(
        "first",
        rf"{_KEEPING}(?:the\s+)?first\s+and\s+last\s+({N})\s+{STS}(?:\s+of\s+(?:every|each)\s+row)?\s+in\s+{_IN}(?:\s+throughout)?{_THEN}",
        r"\3, keeping \1 edge sts in \2",
        "Work 4 rows in stockinette, keeping first and last 3 sts in garter st.",
    ),
    row(
        "at",
        rf"{_KEEPING}({N})\s+{STS}\s+{_ENDS}\s+in\s+{_IN}(?:\s+throughout)?{_THEN}",
        r"\3, keeping \1 edge sts in \2",
        "Work 4 rows in stockinette, keeping 3 sts at each edge in garter st.",
    ),
    row(
        "at",
        rf"{_KEEPING}({N})\s+{STS}\s+in\s+{_IN}\s+{_ENDS}(?:\s+throughout)?{_THEN}",
        r"\3, keeping \1 edge sts in \2",
        "Work in stockinette with 3 sts in garter st at each edge for 4 rows.",
    ),
    row(
        "form|set",
        rf"\b(?:the\s+)?(?:above|prev(?:ious)?|foregoing)\s+({N}\s+{ROUND})\s+(?=form|set)",
        r"these \1 ",
        "The above 2 rows form rib.",
    ),
)
"""The rows, in the order tried."""
