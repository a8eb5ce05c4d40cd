"""Other wordings of shawls, cowls and blankets of today: rows of another section, ways to bind off told stitch by stitch. No I/O.

A way to bind off is read where the whole of it is told and leaves no stitch: what is worked again, and up to where.
Source: common practice.
"""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import CUT_YARN, END, LONG, ROUND, STS, N, Synonym, row

_LIST = r"(?:rows?|rnds?|rounds?)\s+\d+(?:\s*(?:-|to)\s*\d+|(?:\s*,\s*\d+)*\s*,?\s*(?:and|&)\s*\d+)?"
_SECTION = r"section\s+(?:\d{1,2}|[a-h])\b"
_CHART = r"(?:the\s+)?chart\s+[a-z0-9][\w-]*"
_BACK = r"(?:(?:back\s+)?(?:to|onto)\s+(?:the\s+)?(?:left(?:-?hand)?\s+needle|lh\s+needle|lhn|left)|back)"
_FROM = r"(?:\s+from\s+(?:the\s+)?(?:right(?:-?hand)?\s+needle|rh\s+needle|rhn|right))?"
_RETURN = r"(?:slip|sl|return|transfer|pass|put|place)"
_TWO = r"(?:both|these|those|the|2|two|these\s+(?:2|two)|the\s+(?:2|two)|both\s+of\s+the)"
_HOW = r"(?:\s+(?:purlwise|knitwise))?"
_TOG = r"(?:[kp]\s?2\s?tog(?:\s+tbl)?|ssk|(?:k|knit|p|purl)\s+(?:them|(?:the\s+)?(?:2|two)(?:\s+sts)?)\s+tog(?:ether)?(?:\s+(?:tbl|through\s+(?:the\s+)?back\s+loops?))?)"
_DECREASED = (
    rf"(?:[kp]\s?1\s*,\s*{_RETURN}\s+{_TWO}(?:\s+{STS})?{_FROM}{_HOW}\s+{_BACK}{_HOW}\s*,\s*(?:and\s+)?{_TOG}"
    rf"|{_RETURN}\s+{_TWO}(?:\s+{STS})?{_FROM}{_HOW}\s+{_BACK}{_HOW}\s*,\s*(?:and\s+)?{_TOG}\s*,\s*[kp]\s?1"
    rf"|{_TOG}\s*,\s*{_RETURN}\s+(?:(?:the|this|that|resulting|new|1|one)\s+)*st{_FROM}{_HOW}\s+{_BACK}{_HOW})"
)
"""What is worked again where each stitch is bound off with the one before: it takes one stitch."""
_USING = r"(?:\s+sts)?(?:\s*,?\s*(?:using|with|by)\s+(?:the\s+|a\s+)?(?:knitted|knit|cable|backward[-\s]loop)(?:\s+(?:cast[-\s]?on|method))*)?"
_CO, _BO = r"(?:co|cast\s+on)\s+", r"(?:bo|bind\s+off)\s+"
_OFF = rf"{_BO}(?:[3-9]|three|four|five|six|seven)(?:\s+sts)?"
_LAST = rf"{_RETURN}\s+(?:(?:the|last|rem(?:aining)?|1|one)\s+)*st{_FROM}\s+{_BACK}"
_MADE_OFF = "|".join(
    rf"{_CO}(?:{made}){_USING}\s*,\s*{_BO}(?:{off})(?:\s+sts)?"
    for made, off in (("2|two", "[3-7]|three|four|five|six"), ("3|three", "[4-7]|four|five|six|seven"), ("4|four", "[5-8]|five|six|seven|eight"))
)
"""So many stitches made and more bound off, so that the edge gets shorter."""
_PICOT = rf"(?:(?:{_MADE_OFF})\s*,\s*{_LAST}|{_LAST}\s*,\s*(?:{_MADE_OFF}))"
"""What is worked again where picots are cast on while the edge is bound off."""
_CORD = rf"(?:k\s?(?P<n>[2-5])\s*,\s*(?:k\s?2\s?tog\s+tbl|ssk|skp)\s*,\s*{_RETURN}\s+(?:(?:all|the|these|those)\s+)*(?:[3-6]\s+)?sts{_FROM}{_HOW}\s+{_BACK}{_HOW})"
_NONE = (
    r"(?:to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:row|rnd|round))?|across|around"
    r"|until\s+(?:no\s+(?:sts|stitches)\s+(?:rem(?:ain)?|are\s+left)|all\s+(?:the\s+)?(?:sts|stitches)\s+(?:are|have\s+been)\s+(?:bound\s+off|worked|used|consumed)"
    r"|(?:only\s+)?(?:1|one)\s+st(?:itch)?\s+(?:rem(?:ains?)?|is\s+left)(?:\s+(?:on|in)\s+(?:the\s+)?(?:right(?:-?hand)?\s+needle|rh\s+needle))?(?:\s+and\s+none\s+(?:on|in)\s+(?:the\s+)?(?:left(?:-?hand)?\s+needle|left))?))"
)
_REST = rf"(?:{_NONE}|until\s+(?:fewer|less)\s+than\s+\d\s+sts\s+rem(?:ain)?\s*[,;]\s*(?:bo|bind\s+off)\s+(?:(?:all|the)\s+)*rem(?:aining)?\s+sts)"
_DRAWN = (
    rf"(?:\s*[,;.]\s*(?:and\s+)?(?:{CUT_YARN}(?:\s*,?\s*and)?(?:\s+(?:draw|pull)\s+(?:the\s+)?(?:tail|yarn|end|it)?\s*through(?:\s+(?:the\s+)?(?:last|final|rem(?:aining)?)\s+(?:st|loop))?)?"
    r"(?:\s*,?\s*(?:and\s+)?fasten\s+off)?|fasten\s+off))?"
)
_AGAIN = r"\s*[;,.]\s*rep(?:eat)?\s+from\s+\*\s+"
_PLACE = r"(?:wings?|borders?|edges?|edgings?|sides?|half|halves|sections?|triangles?|panels?|bands?|quarters?|wedges?|segments?)"
_SHARE = (
    rf"(?:{N}\s+(?:(?:{STS}\s+)?(?:in|for|on|at|between)\s+(?:each|either|the|every|both)\s+(?:(?:garter|side|edge|lace|left|right|outer|inner|cent(?:er|re))\s+){{0,2}}(?:{_PLACE}|spine|middle|sock|corner)"
    rf"|(?:{STS}\s+)?(?:per\s+{_PLACE}|between\s+(?:the\s+)?corners?(?:\s+{STS})?|(?:on\s+|at\s+)?(?:each|either)\s+sides?\s+of\s+(?:the\s+)?(?:spine|cent(?:er|re)(?:\s+st(?:itch)?)?)|corner\s+{STS}|of\s+(?:them|these|which)\s+(?:are\s+)?in\s+(?:st\.?\s?st|stockinette|stocking\s+st(?:itch)?|garter\s+st(?:itch)?|patt(?:ern)?)(?:\s+(?:at|on)\s+(?:either|each)\s+sides?(?:\s+of\s+(?:the\s+)?[a-z]+)?)?)"
    rf"|{STS}\s+between\s+(?:the\s+)?markers|(?:cent(?:er|re)|spine|edge|border|garter|wing|selvedge)\s+{STS}(?:\s+(?:on|at)\s+(?:each|either|both)\s+(?:sides?|edges?|ends?))?)"
    r"(?:\s+each)?|(?:the|1|one)\s+(?:spine|cent(?:er|re)(?:\s+st(?:itch)?)?))"
)
"""What a count behind a row says of a part of it."""
_MADE = (
    rf"(?:(?:you(?:'ll|\s+will|\s+should)?(?:\s+now)?\s+have|there\s+are)\s+(?:now\s+)?(?:worked|completed|made|knit(?:ted)?)|that(?:'s|\s+is|\s+makes))\s+(?:a\s+total\s+of\s+)?{N}\s+(?:(?:increase|decrease|inc|dec|lace|eyelet|pattern|full|complete|garter|stripe|rs|ws)\s+)*(?:rows|rnds|rounds|ridges|repeats|reps|stripes)"
    r"(?:\s+(?:in\s+(?:all|total)|so\s+far|total))?"
)
_TOLD_OFF = (
    r"(?:(?:(?:work\s+(?:an?\s+)?)?(?:i-?cord\s+|picot\s+|stretchy\s+)?(?:bo|bind(?:ing)?[\s-]+off)(?:\s+(?:all\s+)?(?:the\s+)?sts)?"
    r"(?:\s+(?:very\s+|somewhat\s+)?(?:loosely|stretchily|purlwise|knitwise)|\s+on\s+(?:the\s+)?[rw]s)*(?:\s+(?:as\s+follows|like\s+this|this\s+way))?)\s*[:,.-]\s*)"
)
"""That stitches are bound off, before the way is told."""

SHAWLS: tuple[Synonym, ...] = (
    # --- rows by their numbers, of another section, in another order ---
    row("order", rf"\b(?:then\s+)?(?:work|do)\s+(rows|rnds|rounds)\s+(\d+)\s*(?:,|and|&)\s*(\d+)\s*,?\s*in\s+(?:that|this|the\s+given)\s+order{END}", r"work \1 \2. work \1 \3", "Work rnds 2 and 1, in that order."),
    row("order", rf"(\b(?:rows|rnds|rounds)\s+\d+(?:\s*,\s*\d+)+\s*,?\s*(?:and|&)\s*\d+(?:\s+of\s+[a-z][\w -]*?)?)\s*,?\s*in\s+(?:that|this|the\s+given)\s+order{END}", r"\1", "Rnds 8-10: Work Rnds 6, 5 and 4, in that order."),
    row("working", rf"\bwork\s+({_CHART})(?:\s+(?:once\s+more|again))?\s*,?\s*(?:this\s+time\s+)?working\s+((?:rows|rnds|rounds)\s+\d+(?:\s*,\s*\d+)+\s*,?\s*(?:and|&)\s*\d+){END}", r"work \2 of \1", "Work Chart fern once more, this time working Rnds 3, 2 and 1."),
    row("section", rf"\b(rep(?:eat)?|work)\s+({_SECTION})\s*,?\s+({_LIST})", r"\1 \3 of \2", "With CC, repeat Section 1 rows 1 and 2 5 times."),
    row("section", rf"\b((?:rep(?:eat)?|work|work(?:ing)?\s+in)\s+{_LIST})\s+(?:as\s+in|from|as\s+for|in)\s+(?={_SECTION})", r"\1 of ", "Rep rows 1 and 2 from Section 1 5 times."),
    row("section", rf"\b(?:cont(?:inue)?)\s+(?:to\s+(?:work|rep(?:eat)?)|working|repeating)\s+({_LIST}\s+of\s+{_SECTION})(?=\s+(?:until|{N}\s+(?:more\s+)?times|once|twice)\b)", r"work \1", "Continue to work Rows 1 and 2 of Section 1 3 more times."),
    said_row_behind("carrying", rf"(\b{_CHART}[^.;:]*?)\s*,?\s*(?P<said>(?:and\s+)?carrying\s+(?:the\s+)?(?:unused|other|non-?working|idle|floating)\s+(?:colou?rs?|yarns?|strands?)(?:\s+loosely)?(?:\s+(?:across|along|at|on|behind)\s+(?:the\s+)?(?:back|wrong\s+side|ws)(?:\s+of\s+(?:the\s+)?work)?)?(?:\s+loosely)?){END}", "Work Chart fern, carrying the unused color loosely across the back."),
    row("section|part", r"^\s*(?P<said>(?i:section|part|clue|stage)\s+(?:\d{1,2}|[A-H]|[IVX]{1,4})\b[^.;*\d&]{0,48}?)(?:\b(?:in|with)\s+)?(?:(?:[Cc]olou?r|COLOU?R)\s+([A-H])|\b(MC|CC\d?))\s*[)\]]?\s*:?\s*$", r"with \2\3", "Section 5 (color A)", exact=True),
    row("every|each", r"\b(rep(?:eat)?|work)\s+(?:this|(?:the\s+)?(?:last|above|previous))\s+(row|rnd|round)\s+(?=(?:(?:on|in)\s+)?(?:every|each)\s+(?:(?:other|second|third|fourth|fifth|sixth|eighth|tenth|\d+(?:st|nd|rd|th)|foll(?:owing)?|alt(?:ernate)?|rs|ws)\s+)+(?:row|rnd|round))", r"\1 same \2 ", "Rep this rnd every 6th rnd 4 more times."),
    said_row_behind("same as", rf"(\bfor\s+(?:{LONG}|{N}\s+{ROUND})[^.;:,]*?)\s*,\s*(?P<said>(?:the\s+)?(?:same\s+as|as)\s+(?:for\s+|on\s+)?(?:the\s+)?(?:bottom|lower|beginning|start|first|other|cast-on|cuff|body|hem|brim)(?:\s+(?:edge|rib|ribbing|border|end|edging|band))?){END}", "Work in 2x2 Rib for 3 cm, same as the bottom."),
    # --- the beginning of the round moved on ---
    row("bor", r"\b(remove|rm)\s+(?:the\s+)?bor\b(?!\s+m)", r"\1 BOR marker", "K6, remove BOR, k6, place BOR marker."),
    row("replace", r"\breplace\s+(?:the\s+)?bor(?:\s+m(?:arker)?)?(?=\s*[.,;]|\s*$)", "place BOR marker", "Shift rnd: Remove BOR marker, k1, replace BOR."),
    # --- what was worked so far ---
    row("have worked|have now worked|have completed|have made|that's|that is", rf"((?:^|[.;]\s)\s*)(?P<said>{_MADE})(?=\s*[.!]?\s*$)", r"\1", "You have worked 36 increase rows.", spelt_out=True),
    row("have worked|have made|do them|work them|worked them|done them", rf"\s*[(]\s*(?P<said>{_MADE}|you(?:'ll|\s+will)\s+(?:do|work|have\s+(?:done|worked))\s+(?:them|these\s+rows)\s+{N}\s+times)\.?\s*[)](?=\s*[.]?\s*$)", "", "Rep rows 1 and 2 until there are 60 sts (you will have worked them 12 times).", spelt_out=True),
    said_row("are knit", r"(?:(?<=^)|(?<=[.]))\s*(?P<said>all\s+(?:rnds|rounds)(?:\s+of\s+(?:the\s+|each\s+)?(?:charts?|colou?r\s+pattern))?\s+are\s+knit(?:ted)?)(?=\s*[.])", "All rounds of the color pattern are knit."),
    said_row("number", r"(?:(?<=^)|(?<=[.]))\s*(?P<said>(?:the|each)\s+numbers?\s+(?:is|are|gives?|shows?|tells?)\s+(?:the\s+number\s+of|how\s+many)\s+(?:sts|stitches)(?:\s+(?:to\s+knit|are\s+knit(?:ted)?))?\s+(?:in|with|of)\s+(?:that|the|each)\s+colou?r)(?=\s*[.])", "The number is the number of sts in that color."),
    # --- a count told by its parts ---
    row("sts|stitches", rf"((?:^|[-.;:,(\[]|\b(?:and|are|have|until))\s*{N}\s+{STS}(?:\s+(?:total|in\s+all|rem(?:ain)?))?)\s*[:;,-]\s*(?:with\s+|i\.?e\.?\s*,?\s*)?(?P<said>{_SHARE}(?:\s*(?:,|;|\+|\band\b|&)\s*(?:and\s+)?{_SHARE})*){END}", r"\1", "97 sts: 45 sts in each wing, 1 center st, and 3 sts in each border.", spelt_out=True),
    row("(", rf"((?:^|[-.;:,]|\b(?:and|are|have|until))\s*{N}\s+{STS}(?:\s+(?:total|in\s+all|rem(?:ain)?))?)\s*[(]\s*(?P<said>{_SHARE}(?:\s*(?:,|;|\+|\band\b|&)\s*(?:and\s+)?{_SHARE})*)\s*[)]{END}", r"\1", "221 sts (107 sts per wing).", spelt_out=True),
    said_row_behind("there is|you have|there's", rf"((?:inc|dec)(?:reased|'d)?)\s*[;,]\s*(?P<said>(?:there\s+is|there's|you\s+(?:now\s+)?have)\s+(?:now\s+)?(?:room|enough\s+sts)\s+for\s+(?:1|one|2|two|an?)\s+(?:more|additional|extra|further)\s+(?:lace\s+|pattern\s+|chart\s+)?rep(?:eat)?s?(?:\s+(?:in|on|at)\s+(?:each|either|both)\s+(?:wings?|sides?|half|halves|sections?))?){END}", "16 sts inc'd; there is now room for one more lace repeat in each wing."),
    # --- ways to bind off ---
    row("rep from|repeat from", rf"(^\s*|[.]\s+|\bfacing\s*,\s*)(?P<said>{_TOLD_OFF}?(?:[kp]\s?[12]\s*,\s*)?\*\s*{_DECREASED}{_AGAIN}{_NONE}{_DRAWN})(?=\s*\.?\s*$)", r"\1bind off all sts", "K2, *slip both sts back to left needle, k2tog tbl, k1; rep from * until 1 st remains.", spelt_out=True),
    row("rep from|repeat from", rf"(^\s*|[.]\s+|\bfacing\s*,\s*)(?P<said>{_TOLD_OFF}?(?:{_OFF}\s*,\s*)?\*\s*{_PICOT}{_AGAIN}{_REST}{_DRAWN})(?=\s*\.?\s*$)", r"\1bind off all sts", "*CO 2 sts, BO 4 sts, slip st back to left needle; rep from * to end.", spelt_out=True),
    row("rep from|repeat from", rf"(^\s*)(?P<said>{_TOLD_OFF}?(?:(?:using|with)\s+(?:the\s+)?(?:knitted|cable)\s+cast[-\s]?on\s*,\s*)?(?:co|cast\s+on)\s+[3-6]\s+(?:sts|stitches)(?:\s+(?:onto|to|on)\s+(?:the\s+)?left(?:-?hand)?\s+needle|\s+at\s+(?:the\s+)?beg(?:inning)?\s+of\s+(?:the\s+)?(?:row|rnd|round))?(?:\s*,?\s*(?:using|with)\s+(?:the\s+)?(?:knitted|cable)\s+(?:cast[-\s]?on|method))?\s*[.;,:]\s*(?:then\s+)?\*\s*{_CORD}{_AGAIN}(?:until\s+(?:only\s+)?[3-6]\s+(?:(?:i-?cord\s+)?sts)\s+rem(?:ain)?)\s*[.,;]\s*(?:(?:k\s?3\s?tog|sk2po?|(?:bo|bind\s+off)(?:\s+(?:these|the|rem(?:aining)?))*\s+(?:[3-6]\s+)?sts){_DRAWN}))(?=\s*\.?\s*$)", r"\1bind off all sts", "Using the knitted cast-on, CO 3 sts onto left needle. *K2, k2tog tbl, slip 3 sts back to left needle; rep from * until 3 sts remain. K3tog. Fasten off.", spelt_out=True),
)  # fmt: skip
"""The rows, in the order tried."""
