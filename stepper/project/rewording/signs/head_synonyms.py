"""Other wordings of heads of rows, of cables told in words, and of counts behind a row. No I/O."""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import STS, N, Synonym, row

_ORDINAL = r"(?:\d+(?:st|nd|rd|th)|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth)"
_CN = r"(?:a\s+|the\s+)?(?:cable\s+needle|cable\s+ndl|cn)\b\.?"
_TO_CN = rf"(?:slip|sl)\s+(?:the\s+)?(?:next\s+|first\s+)?(\d)\s*(?:{STS}\s+)?(?:on)?to\s+{_CN}\s*,?\s*(?:and\s+)?(?:hold|leave|place|keep)\s+(?:it\s+|them\s+|these\s+)?(?:in|at|to)\s+(?:the\s+)?"
_ON_CN = rf"\s*(?:the\s+)?(\d)\s*(?:{STS}\s+)?(?:from|on)\s+{_CN}"
_OF_WORK = r"(?:\s+of\s+(?:the\s+)?work)?\s*[,;]?\s*(?:then\s+)?"
_NEXT = rf"\s*(?:the\s+)?(?:next\s+)?(\d)\s*(?:{STS})?(?:\s*from\s+(?:the\s+)?left(?:-hand)?\s+needle)?\s*[,;]?\s*(?:and\s+)?(?:then\s+)?"
_EACH_END = r"(?:at\s+)?(?:each\s+end|both\s+ends|(?:the\s+)?beg(?:inning)?\s+and\s+(?:the\s+)?end)(?:\s+of\s+(?:the\s+|this\s+)?(?:row|needle))?"
_ONE = r"(?:1|one)\s+(?:st|stitch)\s+"
_ROW_HEAD = r"((?:^|[.])\s*(?:[a-z]+\s+|(?:\d{1,3}(?:st|nd|rd|th)\s*(?:,|&|and\b)?\s*)+)?rows?(?:\s+\d{1,3}(?:(?:\s*(?:-|–|,|&)\s*|\s+(?:to|and)\s+)\d{1,3})*)?(?:\s*\((?:rs|ws)\))?\s*:\s*)"
"""A head and nothing behind it: the row is only what follows."""
_ROWS_HEAD = r"(?:^|[.])\s*[^:.()]*\brows\b[^:.()]*(?:\((?:rs|ws)\))?\s*:\s*"
"""The same of several rows."""
_ENDS = r"(?:at\s+)?(?:each|both|either)\s+(?:ends?|sides?)(?:\s+of\s+(?:(?:the|this|each)\s+)?row)?"
_ROW_DONE = rf"(?=\s*[,.]?\s*(?:$|[(]?\s*{N}\s+{STS}|taking\b|working\b))"

HEADS: tuple[Synonym, ...] = (
    row("row|rnd|round", r"^(\s*(?:row|rnd|round)\s+\d{1,3})\s*[);=]\s*(?=[a-z*(\[])", r"\1: ", "Row 1) Knit"),
    row("r", r"^\s*(?-i:R|Rw|Rw\.)\s?(\d{1,3})\s*[.)-]?\s+(?=[kpKP]\s?\d|knit|purl|sl\b|\*)", r"Row \1: ", "R1 k2, p2, k to end"),
    row("row|rnd|round", rf"^(\s*{_ORDINAL}\s+(?:row|rnd|round))\s*\.?\s*-+\s*(?=[a-z*(\[])", r"\1: ", "First row - Knit 4, purl to end."),
    row("side)|(rs)|(ws)", r"^(\s*(?:row|rnd|round)\s+\d{1,3}\s*\((?:rs|ws|right\s+side|wrong\s+side)\))\s*\.\s*(?=[a-z*(\[])", r"\1: ", "Row 1 (Right Side). K1, p1, k to end."),
    row("row|rnd|round", r"^(\s*(?:row|rnd|round))\s+(\d{1,3})\s*(?:-|to|thru|through)\s*(\d{1,3})\s*:", r"\1s \2-\3:", "Row 9 to 12: knit"),
    row("and", r"^(\s*(?:rows|rnds|rounds)\s+\d[\d\s,]*?)\s*,\s+and\s+(\d{1,3})\s*:", r"\1 and \2:", "Rows 9, 10, and 11: knit"),
    # --- signs left out ---
    row("(k|(p", r"(?<![\w(])([kp]\s?\d+)\s+(?=[(\[]\s*[kp]\s?\d+\s*,[^()\[\]]*[)\]]\s*(?:to\b|around|across|twice|rep|\d+\s*(?:times|x)))", r"\1, ", "Row 1: K2 (p2, k2) to end"),
    row("*", r"(?<![\w(])([kp]\s?\d+)\s+\*(?=\s?[kp]\s?\d)", r"\1, *", "Row 1: k2 *p2, k2* across"),
    # --- rows that say only what is shaped at their ends ---
    row("each|both|either", rf"{_ROW_HEAD}(inc|dec)(?:reas(?:e|ing))?\.?\s+{_ONE}{_ENDS}{_ROW_DONE}", r"\1\2 1 st at each end of next row", "Next row: Inc 1 st at each end of row."),
    row("then", r"\b((?:dec|inc)(?:rease)?\.?\s+)(\d\s+sts?)(\s+at\s+(?:each|both)\s+ends?\s+of\s+[^.;:]*?,?\s*(?:and\s+)?\bthen)\s+\2\s+at\s+(?:each|both)\s+ends?\s+(?=of\b)", r"\1\2\3 ", "Dec 1 st at each end of next 3 rows, then 1 st at each end of foll 3 alt rows."),
    row("each|every", rf"({_ROWS_HEAD}(?:inc|dec)(?:reas(?:e|ing))?\.?\s+{_ONE}at\s+(?:each|both)\s+ends?\s+of\s+)(?:each|every)\s+row{_ROW_DONE}", r"\1next row", "Rows 3-6: Inc 1 st at each end of every row."),
    row("beg", rf"({_ROWS_HEAD}(?:cast|bind)[-\s]off\s+{N}(?:\s+{STS})?)\s+at\s+(?:the\s+)?beg(?:inning)?\.?(?:\s+of\s+(?:the|each|every)\s+rows?)?{_ROW_DONE}", r"\1 at beg of row", "Rows 1 and 2: Cast off 4 sts at the beginning of each row."),
    row("first and", rf"{_ROW_HEAD}inc(?:reas(?:e|ing))?\.?\s+(?:{_ONE})?in(?:to)?\s+(?:the\s+)?first\s+and\s+(?:the\s+)?last\s+(?:sts?|stitch|stitches)(?:\s+of\s+(?:the\s+)?row)?{_ROW_DONE}", r"\1inc in first st, work to last st, inc in last st", "Next row: Inc in first and last st."),
    # --- stitches in words ---
    row("tog", r"\b(k|p|knit|purl)\s*(2|two|3|three)\s+(?:sts|stitches)\s+tog(?:ether)?\b", r"\1 \2 together", "K 2 sts together, k to last 2 sts, k 2 sts together"),
    row("inc", r"\binc(?:rease)?\s+(?:(?:1|one)\s+)?(?:st\s+)?in(?:to)?\s+(?:the\s+)?(?:first|last)\s+(?:st|stitch)(?=\s*[,.(]|\s*$)", "inc in next st", "Row 3: Inc in first st, k to last st, inc in last st"),
    row("front and", r"\b(?:k|knit)\s+(?:in)?to\s+(?:the\s+)?front\s+and\s+(?:the\s+)?back\s+of\s+(?:every|each)\s+(?:st|stitch)(?=\s*[.(]|\s*$)", "*kfb; rep from * to end", "Row 3: knit into front and back of each stitch"),
    row("wool|wl|yarn|wrn|w.", r"(?<![\w-])(?:wool|wl|w|yarn)\.?\s?(?:fwd|forward)\b\.?(?=\s*[,.;)\]*]|\s*$)", "yfwd", "K2, wool fwd, k2tog, k to end"),
    row("wrn|wool|wl|yarn", r"(?<![\w-])(?:wrn|w\.r\.n\.|(?:wool|wl|yarn)\s+(?:round|rnd)\s+(?:the\s+)?needle)(?=\s*[,.;)\]*]|\s*$)", "yrn", "K2, wrn, p2tog, p to end"),
    row("yarn over needle|wool over needle|won", r"(?<![\w-])(?:won|(?:wool|yarn)\s+over\s+(?:the\s+)?needle)(?=\s*[,.;)\]*]|\s*$)", "yon", "P2, yarn over needle, k2tog, k to end"),
    row("inc", rf"\b(k)(?:nit)?\s*,\s*inc(?:reas(?:e|ing))?\s+{_ONE}{_EACH_END}(?=\s*[.(]|\s*$)", r"k1, inc 1, k to last 2 sts, inc 1, k1", "Row 3: Knit, increasing 1 st at each end"),
    row("inc", rf"\b(p)(?:url)?\s*,\s*inc(?:reas(?:e|ing))?\s+{_ONE}{_EACH_END}(?=\s*[.(]|\s*$)", r"p1, inc 1, p to last 2 sts, inc 1, p1", "Row 4: Purl, increasing 1 st at each end"),
    row("dec", rf"\b(k)(?:nit)?\s*,\s*dec(?:reas(?:e|ing))?\s+{_ONE}{_EACH_END}(?=\s*[.(]|\s*$)", r"k1, k2tog, k to last 3 sts, k2tog, k1", "Row 3: Knit, decreasing one stitch at beginning and end of row."),
    row("dec", rf"\b(p)(?:url)?\s*,\s*dec(?:reas(?:e|ing))?\s+{_ONE}{_EACH_END}(?=\s*[.(]|\s*$)", r"p1, p2tog, p to last 3 sts, p2tog, p1", "Row 4: Purl, decreasing one stitch at each end of row."),
    row("k sts|k stitches", r"\b(?:k|knit)\s+(?:all\s+)?(?:the\s+)?k\s+(?:sts|stitches)\s*,?\s*(?:and\s+)?(?:p|purl)\s+(?:all\s+)?(?:the\s+)?p\s+(?:sts|stitches)\b", "knit the knit sts and purl the purl sts", "K the k sts and p the p sts"),
    # --- cables in words ---
    said_row_behind("cn|cable n", rf"\b(c\d+[bf])\s*[(\[]\s*(?P<said>(?:slip|sl)\s+(?:the\s+)?(?:next\s+)?\d\s*(?:{STS}\s+)?(?:on)?to\s+{_CN}[^()\[\]*:]*?k\s*\d\s*(?:{STS}\s+)?from\s+{_CN})\s*[)\]]", "P2, C6B (slip 3 sts to cable needle, hold at back, k3, k3 from cn), p2"),
    row("cn|cable n", rf"(?<=[,*(]\s){_TO_CN}front{_OF_WORK}k(?:nit)?{_NEXT}k(?:nit)?{_ON_CN}", r"\1/\2 LC", "P2, slip next 2 sts to cable needle and hold in front, k2, k2 from cable needle, p2"),
    row("cn|cable n", rf"(?<=[,*(]\s){_TO_CN}back{_OF_WORK}k(?:nit)?{_NEXT}k(?:nit)?{_ON_CN}", r"\2/\1 RC", "P2, sl next 2 sts onto cn and hold in back, k2, then k2 from cn, p2"),
    row("cn|cable n", rf"(?<=[,*(]\s){_TO_CN}front{_OF_WORK}p(?:url)?{_NEXT}k(?:nit)?{_ON_CN}", r"\1/\2 LPC", "P2, slip next 2 sts to cn and hold in front, p1, k2 from cn, p2"),
    row("cn|cable n", rf"(?<=[,*(]\s){_TO_CN}back{_OF_WORK}k(?:nit)?{_NEXT}p(?:url)?{_ON_CN}", r"\2/\1 RPC", "P2, slip next 1 st to cn and hold in back, k2, p1 from cn, p2"),
    # --- counts ---
    row("-", r"(?<=[\w)\]])\s*-\s*(\d{1,3})\s*-\s*$", r" (\1 sts)", "Row 3: k2, m1, k to last 2 sts, m1, k2 -24-"),
    row(";", rf"(?<=[\w)\]])\s*;\s*({N}\s+{STS})(?=\s*\.?\s*$)", r". \1", "Row 3: k2, m1, k to last 2 sts, m1, k2; 24 sts."),
)  # fmt: skip
"""The rows, in the order tried."""
