"""Other wordings for fabrics and patterns called by name, for edges in another, and for part of a row. No I/O.

A fabric or a pattern of the page is worked over a part of a row - a border in seed stitch, a cable panel - only where
stitches stand beside it: "work cable pattern" alone is a row, or many, of it.
"""

from __future__ import annotations

from stepper.craft.stitch_patterns import KNOWN, RIB, TEXTURE
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
_BEGUN = r"(?:beg(?:inning|in)?|start(?:ing)?)\s+(?:with|on)\s+an?"
_FABRIC = r"(?:seed|moss|garter|st|stockinette|stocking|rev(?:erse)?\.?\s+(?:st|stockinette|stocking))"
_FULL = rf"(?:{_FABRIC}\s+st(?:itch)?\b\.?|stockinette\b)"
_STITCH = r"(?:[kp]\s?\d+|knit|purl|k|p|sm|slm|pm|rm|ssk|k2tog|m1[lr]?|slip\s+(?:the\s+)?marker|place\s+(?:a\s+)?marker|remove\s+(?:the\s+)?marker)"
_BESIDE = rf"(?=\s*[,;]\s*(?:and\s+|then\s+)?(?:{_STITCH}|work|seed|garter)(?=\W|$))"
_BEHIND = rf"(\b(?:{_STITCH}|\d+\s+{STS})(?:\s+(?:to|until)\s+[^,;.]*)?\s*[,;]\s*(?:and\s+|then\s+)?)"
_GOAL = r"(?=\s+to\s+(?:the\s+)?(?:last\b|end\b|next\b|marker\b|m\b|first\b|second\b|third\b|within\b|\d+\s+(?:sts?|stitch)))"
_NO = (
    r"in|even|next|established|est|rib|the|this|that|these|same|to|as|rows?|rnds?|rounds?|sts?|of|set|chart\w*|first|last|all|each|every|"
    r"stripe|lace\s+and|st|garter|seed|moss|stockinette|stocking|reverse|rev|end|across|over|main|your|both|patt(?:ern)?|on|with|work\w*|until|body|color\w*|colour\w*"
)
_PATTERN_NAME = rf"((?:(?!(?:{_NO})\b)[a-z][a-z'-]*\s+){{1,3}}(?:patt(?:ern)?|panel|cable|motif|lace)\b\.?)"

PATTERNS: tuple[Synonym, ...] = (
    *(
        reversed_row
        for side, how, told in (("rs", "purl", r"rs|right\s+side|purl|p"), ("ws", "knit", r"ws|wrong\s+side|knit|k"))
        for reversed_row in (
            row(
                "rev",
                rf"^(\s*){_BEGUN}\s+(?:{told})\s+row\s*,\s*(?=[^.]*\b{_REVERSE})",
                rf"\1next row ({side}): ",
                f"Starting with a {how} row, work 5 rows in reverse st st.",
            ),
            row(
                "rev",
                rf"^(\s*)([^.]*?\b{_REVERSE}[^.,]*)\s*,\s*{_BEGUN}\s+(?:{told})\s+row{END}",
                rf"\1next row ({side}): \2",
                f"Work 5 rows in reverse st st, beginning with a {how} row.",
            ),
        )
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
        "basketweave|herringbone|trellis|honeycomb|waffle|lattice",
        rf"\b(work|cont(?:inue)?)\s+(?!in\b|even\b)(?={TEXTURE}\b{_AFTER})",
        r"\1 in ",
        "Work trellis for 4 rounds.",
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

STRETCHES: tuple[Synonym, ...] = (
    row("in seed|in moss|in garter|in st|in rev", rf"((?:^|[,;:])\s*(?:and\s+)?)(?:[kp]\s?|work\s+)?({N})(?:\s+{STS})?\s+in\s+({_FULL}){_BESIDE}", r"\1work \2 sts in \3", "5 sts in seed st, k to last 5 sts, 5 sts in seed st."),
    row("in seed|in moss|in garter|in st|in rev", rf"{_BEHIND}(?:[kp]\s?|work\s+)?({N})(?:\s+{STS})?\s+in\s+({_FULL})(?=\s*[,;.(]|\s*$)", r"\1work \2 sts in \3", "K to last 5 sts, k5 in garter st."),
    row("over", rf"((?:^|[,;:])\s*(?:and\s+)?)work\s+(?:in\s+)?({_FULL})\s+over\s+(?:the\s+)?(?:first\s+|next\s+|last\s+)?({N})(?:\s+{STS})?(?=\s*[,;.]|\s*$)", r"\1work \3 sts in \2", "Work seed st over next 5 sts, k to end."),
    row("to", rf"([,;:]\s*(?:and\s+)?)({_FULL}){_GOAL}", r"\1work in \2", "K5, seed st to last 5 sts, k5."),
    row("patt", rf"([,;:]\s*(?:and\s+)?)work\s+(?:in\s+)?(?:the\s+)?((?:(?!(?:{_NO})\b)[a-z][a-z'-]*\s+){{1,3}})patt(?:ern)?\b\.?{_GOAL}", r"\1work next rnd of \2stitch", "K to m, sm, work in Rope Pattern to m, sm, k to end."),
    row("panel|cable|motif|lace", rf"([,;:]\s*(?:and\s+)?)work\s+(?:in\s+)?(?:the\s+)?{_PATTERN_NAME}{_GOAL}", r"\1work next rnd of \2", "K to m, sm, work in Rope Cable to m, sm, k to end."),
    row("patt|panel|cable|motif|lace", rf"([,;:]\s*(?:and\s+)?)work\s+(?:in\s+)?(?:the\s+)?{_PATTERN_NAME}{_BESIDE}", r"\1work next rnd of \2 to fill", "K to m, sm, work Rope Cable, sm, k to end."),
)
"""The rows, in the order tried."""
