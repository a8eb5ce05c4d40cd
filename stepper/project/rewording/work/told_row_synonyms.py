"""Other wordings inside a row told in prose: how far, past which place, between which stars, and what it changes. No I/O.

They are looked for only in a line that nothing else reads. A group between two stars that ends its row is
worked over all of it (common practice). Source: the wording of patterns in print, US and UK.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import LONG, ROUND, STS, N, Synonym, row

_WORK: Final = r"(k|p|knit|purl)"
_PART: Final = r"(?:(?:left|right|first|second|other|half)\s+)*(?:back|fronts?|sleeves?|body|palm|instep|sole|thumb)"
_DS: Final = r"(?:ds|double\s+st(?:itch)?)"
_TURN: Final = r"(?=\s*,\s*(?:and\s+)?(?:turn|w&t|wrap))"
_STITCH: Final = r"(?:[kp]\s?\d|k\d?tog|p\d?tog|ssk|ssp|skp|skpo|sl\b|m1|cdd|dec\b|inc\b|turn|w&t)"
_PASS: Final = r"(?:sm|slm|slip\s+(?:the\s+)?marker)\b"
_ENDS: Final = r"(?=\s*[.,;=(]|\s+-|\s*$)"
_GROUP: Final = r"\*(?!\s)([^*:.()]*(?:\([^*()]*\)[^*:.()]*)*)\*"

TOLD_ROWS: tuple[Synonym, ...] = (
    # --- what is repeated over a whole row ---
    row(
        "*",
        rf"((?:^|[.:])\s*){_GROUP}\s*(?:-+\s*|,\s*)?(?:(?:rep(?:eat)?(?:ed)?)(?:\s+(?:between\s+(?:the\s+)?(?:stars|asterisks|\*s?)|(?:from\s+)?\*\s*(?:-|to)\s*\*))?)?(?:\s*(?:to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:round|rnd|row))?|(?:all\s+)?(?:the\s+way\s+)?a?round|the\s+(?:whole\s+)?(?:round|row)\s+out))?(?=\s*[.=(]|\s+-|\s*$)",
        r"\1*\2; rep from * to end",
        "Increase round: *Knit 3, M1* = 64 sts.",
    ),
    # --- how far ---
    row("across|over", rf"\b{_WORK}\s+(?P<said>(?:back\s+)?(?:across|over|along)\s+(?:the\s+)?{_PART})\s*,\s*(?={_PASS})", r"\1 to marker, ", "Row 2 (WS): P to marker, sm, p across the back, sm, p4, turn.", again=True, spelt_out=True),
    row("sleeve|front|back|body|palm|instep", rf"(\b{_PASS}\s*,\s*{_WORK}\s+)(?P<said>(?:the\s+)?{_PART})\s*,\s*(?={_PASS})", r"\1to marker, ", "Row 2 (WS): P to marker, sm, p the right sleeve, sm, p4, turn.", again=True, spelt_out=True),
    said_row_behind("on the other", rf"(\b(?:last|previous)\s+(?:{_DS}|wrapped\s+st(?:itch)?|wrap))\s+(?P<said>(?:on|at)\s+(?:the\s+)?other\s+(?:side|end)){_ENDS}", "Row 3: DS, k to 3 sts before the last DS on the other side, turn."),
    row("further|more|beyond|past", rf"\bto\s+(?:the\s+)?(marker|bor|m)\s*,?\s+(?:and|then)\s+(?:{_WORK}\s+)?({N})(?:\s+{STS})?\s+(?:further|more|beyond(?:\s+it)?|past(?:\s+it)?){_TURN}", r"to \3 sts past \1", "Row 2: P to BOR and 6 sts further, turn."),
    row("past|beyond", rf"\b{_WORK}\s*({N})(?:\s+{STS})?\s+(?:past|beyond)\s+(?=(?:the\s+)?(?:marker|bor|m)\b)", r"\1 to \2 sts past ", "K 10 past the marker, turn."),
    row(" it,", rf"\bto\s+(?:the\s+)?({_DS})\s*,\s*{_WORK}\s+it\s*,", r"to \1, \2 \1,", "Row 3: Knit to the double st, knit it, knit 5 sts, turn."),
    row("to ", rf"\b({_WORK}\s+to\s+)({N})\s+(?=before\b)", r"\1\3 sts ", "Rnd 1: K1, k2tog, knit to 3 before marker, ssk, k1."),
    row("until", rf"\b{_WORK}\s+until\s+(?:there\s+(?:is|are)\s+)?({N})\s+{STS}\s+(?:is\s+left|are\s+left|left|rem(?:ains?)?)(?=\s*,\s*{_STITCH})", r"\1 to last \2 sts", "Row 2: K1, purl until 1 st is left, k1."),
    row("back to", rf"\b{_WORK}\s+back\s+(?=to\b)", r"\1 ", "Turn, purl back to 3 sts before last turn, turn."),
    # --- what a row is called ---
    row("increase|decrease|inc|dec", rf"^(\s*)next\s+({ROUND})\s*[,-]\s*(inc|dec)(?:reas(?:e|ing))?(?:\s+(?:rnd|round|row))?\s*:", r"\1Next \2 (\3 \2):", "Next round, decrease: k1, k2tog, k to end."),
    # --- rib with its stitches behind ---
    row("rib", rf"\bwork\s+(?:({LONG})\s+(?:of\s+|in\s+)?|(?:in\s+)?)rib(?:bing)?(?:\s+(?:in\s+the\s+round|round\s+and\s+round|all\s+round))?\s*(?:,\s*|\(\s*|:\s*)k(?:nit)?\s?(\d)\s*,\s*p(?:url)?\s?(\d)\s*\)?(?=\s*\.?\s*$)(?<=[\d)])", r"work in k\2, p\3 rib for \1", "Work 4 cm rib in the round, k 1, p 1."),
    row("rib", r"\bwork\s+(?:in\s+)?rib(?:bing)?(?:\s+(?:in\s+the\s+round|round\s+and\s+round|all\s+round))?\s*\(\s*k(?:nit)?\s?(\d)\s*,\s*p(?:url)?\s?(\d)\s*\)\s*(?=until\b|for\b)", r"work in k\1, p\2 rib ", "Work rib round and round (knit 1, purl 1) until piece measures 9 cm."),
    # --- which rows are the pattern ---
    row("same|like", rf"((?:^|[.!])\s*)(?:(?:every|each|all)\s+(?:(?:the\s+)?(?:following|foll|other|remaining|subsequent)\s+)?)(round|rnd|row)s?\s+(?:is|are)\s+(?:worked\s+|knit\s+)?(?:(?:exactly\s+)?(?:the\s+same|alike)|like\s+this(?:\s+one)?){_ENDS}", r"\1this \2 forms pattern", "K2, p2 around. Every following round is the same. Work until piece measures 5 cm."),
    row("whole|entire|pattern|repeat", rf"((?:^|[.!])\s*)(?:those|these)\s+({N})\s+(rounds|rnds|rows)\s+are\s+(?:your|the)\s+(?:whole\s+|entire\s+|complete\s+)?(?:pattern|repeat|pattern\s+repeat|yoke|lace|texture|cable){_ENDS}", r"\1these \2 \3 form pattern", "Those 2 rows are the whole pattern."),
    # --- what it changes ---
    row("you lose", rf"((?:^|[.!])\s*)you\s+lose\s+({N})\s+{STS}{_ENDS}", r"\1\2 sts dec", "Dec round: K1, k2tog, k to end. You lose 1 st."),
    row("you gain", rf"((?:^|[.!])\s*)you\s+gain\s+({N})\s+{STS}{_ENDS}", r"\1\2 sts inc", "Inc round: K1, m1, k to end. You gain 1 st."),
    row("gone|fewer|less|lost|taken", rf"((?:^|[.!(])\s*)({N})\s+{STS}\s+(?:gone|fewer|less|lost|taken\s+out|disappear){_ENDS}", r"\1\2 sts dec", "Dec round: K1, k2tog, k to end. 1 st gone."),
    row("more|gained|added|extra", rf"((?:^|[.!(])\s*)({N})\s+{STS}\s+(?:more|gained|added|extra){_ENDS}", r"\1\2 sts inc", "Inc round: K1, m1, k to end. 1 st more."),
    # --- charts ---
    said_row_behind("repeats", rf"(\bwork\s+(?:rounds|rnds|rows)\s+\d+\s*-\s*\d+\s+(?:of|from)\s+(?:the\s+)?chart(?:\s+[a-z0-9])?)\s*[,:]\s*(?P<said>{N}\s+repeats(?:\s+of\s+{N}\s+{STS})?(?:\s+a?round)?){_ENDS}", "Work rounds 1-8 of Chart A: 35 repeats of 8 sts."),
)  # fmt: skip
"""The rows, in the order tried."""
