"""Other wordings for a fabric that is worked on: continuing, ribs by their numbers, rows without shaping. No I/O."""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row
from stepper.project.rewording.synonym import LONG, OFF, ROUND, STS, N, Synonym, row

_NAMING = (
    r"(?:(?:the|a|main|body|yoke|border|edging|cuff|leg|twisted|double|single|broken|garter|moss|seed|slip|slipped|textured?|"
    r"lace|lacy|eyelet|cabled?|cables|stripe|striped|stranded|colou?rwork|two-colou?r|basket|basketweave|waffle|honeycomb|"
    r"diamond|chevron|zigzag|wave|leaf|tree|star|linen|brioche|mock|reverse|stitch|st)\s+)*"
)
"""Words that name a pattern whose rows follow."""
_SET = _NAMING + r"(?:pattern\s+st(?:itch)?|patt(?:ern)?|lace|cables?|stripes?|stitch|rib(?:bing)?|st\.?\s?st|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?|garter(?:\s+st(?:itch)?)?)"
_SHAPES = rf"(?:dec(?:rease)?\b|inc(?:rease)?\b|bo\b|{OFF}|cast\s+on\b)"
_TOLD = rf"(?:--?|:|,|;)\s*(?:the\s+)?(?:work|piece)\s+(?:now\s+|should\s+(?:now\s+)?)?measures?\s+(?:about\s+|approx(?:imately|\.)?\s+)?{LONG}(?:\s+from\s+(?:the\s+)?(?:beg(?:inning)?|cast-?on(?:\s+edge)?))?"

FABRICS: tuple[Synonym, ...] = (
    # --- how it is written ---
    row(
        "-|;",
        rf"(?<=[a-z)\]])\s*(?:-{{1,2}}|;)\s*(?={N}\s+{STS}(?:\s+(?:rem(?:ain(?:ing)?)?|on\s+(?:the\s+)?needles?|in\s+all|total|left))?\s*\.?\s*$)",
        ". ",
        "Knit 4 rows-70 sts.",
    ),
    row("st", r"(?<=\d)(?=(?:sts|stitch|stitches)\b|(?<!1)st\b)", " ", "Increase 1stitch at each end of next row."),
    row("folls", r"\bfolls\b\.?", "follows", "Cont as folls:"),
    said_row(
        "follows",
        r"(?:^\s*|(?<=,)\s*)(?P<said>(?:(?:now\s+)?(?:work|cont(?:inue)?|dec(?:rease)?|inc(?:rease)?|proceed|beg(?:in)?|place\s+markers|shape\s+[a-z ]+)(?:\s+(?:decreases|increases|shaping|top|crown|toe|heel|neck|armholes?|shoulders?))?"
        rf"(?:\s+in\s+(?:{_SET}))?\s+as\s+follows|work\s+in\s+patt(?:ern)?(?=\s*:))\s*[:.]?\s*)$",
        "Decrease as follows:",
    ),
    row(
        "last",
        r"\bto\s+last\s+st(?:itch)?\s+before\s+(?=(?:the\s+)?(?:next\s+)?(?:marker|m)\b)",
        "to 1 st before ",
        "K to last st before marker, m1, k to end.",
    ),
    row(
        "last",
        rf"\bto\s+last\s+({N}\s+{STS})\s+before\s+(?=(?:the\s+)?(?:next\s+)?(?:marker|m)\b)",
        r"to \1 before ",
        "K to last 2 sts before marker, k2tog, k to end.",
    ),
    row(
        "needle",
        rf"\b({STS})\s+on\s+(?:your|the)\s+needles?\b",
        r"\1",
        "Repeat rows 2 and 3 until you have 76 stitches on your needles.",
    ),
    row(
        "mm|cm|in|\"",
        rf"({LONG})\s*,?\s*(?P<said>(?:when\s+)?measured\s+(?:straight\s+)?(?:through|up|along|at|down|over|across|on)\s+(?:the\s+)?[a-z -]+?)(?=\s*[,.;]|\s*$)",
        r"\1",
        "Work even until piece measures 9 cm measured through centre of work.",
    ),
    said_row(
        "twist|sure",
        r"\s*,?\s*(?P<said>(?:make|making)\s+(?:sure|certain)\s+(?:that\s+)?(?:your\s+|the\s+)?(?:sts|stitches|row|work)\s+(?:are|is)\s+not\s+twisted)",
        "Join in the round, make sure your sts are not twisted.",
    ),
    said_row(
        "twist",
        r"\s*\(\s*(?P<said>(?:be|being|take|taking)\s+care(?:ful)?\s+not\s+to\s+twist(?:\s+(?:the\s+)?(?:sts|stitches|row|work))?)\s*\)",
        "Join to work in the round (be careful not to twist the row).",
    ),
    said_row(
        "taking|working|incorporating|bringing|keeping",
        rf",?\s*(?P<said>(?:taking|working|incorporating|bringing|keeping)\s+(?:all\s+|the\s+|these\s+)*(?:(?:inc(?:reased|reases|'d)?|new|extra|dec(?:reases?)?|cast-?on)\s*(?:{STS}\s+)?|{STS}\s+)(?:in|into|to)\s+(?:the\s+)?(?:{_SET}|{_NAMING}(?:moss|seed)(?:\s+st(?:itch)?)?)(?:\s+as\s+(?:set|established|they\s+(?:come|occur)))?)(?!\s*,\s*(?:for|until)\b)(?=\s*[.,;]|\s*$)",
        "Inc 1 st at each end of next and 3 foll 4th rows, taking inc sts into patt.",
    ),
    said_row(
        "worked|taken|knitted|brought|knit",
        rf"\s*,\s*(?P<said>(?:and\s+|with\s+)?(?:all\s+|the\s+|these\s+)*(?:inc(?:reased)?|new|extra|additional)\s+{STS}\s+(?:(?:are|being|to\s+be|is)\s+)?(?:worked|taken|knitted|brought|knit)\s+(?:in|into|to)\s+(?:the\s+)?(?:{_SET}|{_NAMING}(?:moss|seed)(?:\s+st(?:itch)?)?)(?:\s+as\s+(?:set|established|they\s+(?:come|occur)|you\s+go))?)(?:\s*,(?=\s*until\b)|(?=\s*[.,;]|\s*$))",
        "Inc 1 st at each end of next and 3 foll 4th rows, the extra sts worked into patt.",
    ),
    row(
        "new|inc",
        rf"\s*,\s*(?P<said>(?:working|taking|knitting)\s+(?:all\s+|the\s+)*(?:new|inc(?:reased)?|extra)\s+{STS}\s+(?:in(?:to)?)\s+(?:patt(?:ern)?|rib|st\s+st|stockinette(?:\s+st(?:itch)?)?))\s*,\s*(?=for\b|until\b)",
        " ",
        "Work in k1, p1 rib, working new sts in pattern, for 3 cm.",
        spelt_out=True,
    ),
    row("interval", r"\bat\s+even\s+intervals\b", "evenly", "Inc 8 sts at even intervals across row."),
    row(
        "edge",
        rf"\b((?:inc|dec)(?:rease)?\.?\s+{N}\s+{STS}|(?:bo|{OFF})\s+{N}\s+{STS})\s+(?:on|from)\s+(?:the\s+)?(neck|armhole|front|side)\s+(?:edge|side)\b",
        r"\1 at \2 edge",
        "Decrease 1 st on neck edge every other row 3 times.",
    ),
    row(
        "through",
        rf"\b((?:draw|pull|thread|run|pass)\s+(?:(?:the\s+)?(?:yarn|tail|end|it)\s+)?through\s+)(?:the\s+)?last\s+(?={N}\s+{STS})",
        r"\1rem ",
        "Break yarn, draw through last 8 sts and pull tight.",
    ),
    row(
        "first",
        rf"((?:^|[:.])\s*)(?:place|put|slip|sl)\s+(?:the\s+)?first\s+({N})\s+({STS})\s+(?:of\s+(?:the\s+)?(?:rnd|round|row)\s+)?(?:on|onto|to)\s+(?:hold\s+on(?:to)?\s+)?(?=(?:an?\s+)?(?:st(?:itch)?\s+)?(?:holder|hold\b|(?:waste|scrap)\s+yarn))",
        r"\1place next \2 \3 on ",
        "Next rnd: Place first 9 sts of round on hold on waste yarn; k to end.",
    ),
    row(
        "remainder|rest",
        r"\b(k|knit|p|purl)\s+(?:the\s+)?(?:remainder|rest)\s+of\s+(?:the\s+)?(?:row|rnd|round)\b",
        r"\1 to end",
        "K2, yo, k2tog, k remainder of row.",
    ),
    row(
        "rib",
        rf"\b(rep(?:eat)?\s+(?:these|those|(?:the\s+)?last)\s+(?:{N}\s+)?)(?:rib|patt(?:ern)?)\s+(?=rows|rnds|rounds)",
        r"\1",
        "Rep these 2 rib rows 4 times more.",
    ),
    # --- ribs by their numbers ---
    row(
        "rib",
        r"\b(?:start(?:ing)?|beg(?:inning|in)?)\s+with\s+k\s?(\d+)\s*,\s*(work\b[^.;]*?\bin)\s+\1\s?x\s?(\d+)\s+rib\b",
        r"\2 k\1, p\3 rib",
        "Starting with k2, work 6 rows in 2x2 rib.",
    ),
    row(
        "rib",
        r"\b(?:start(?:ing)?|beg(?:inning|in)?)\s+with\s+p\s?(\d+)\s*,\s*(work\b[^.;]*?\bin)\s+(\d+)\s?x\s?\1\s+rib\b",
        r"\2 p\1, k\3 rib",
        "Starting with p2, work 6 rows in 2x2 rib.",
    ),
    row("rib", r"\b(\d+)\s?/\s?(\d+)\s+rib\b", r"k\1, p\2 rib", "Work 6 rows in 2/2 rib."),
    row("rib", rf"\b(?:knit|work)\s+(?:for\s+)?({LONG}|{N}\s+{ROUND})\s+(?:(?:of|in)\s+)?rib(?:bing)?\s*[,:]\s*(?:k|knit)\s*(\d)\s*,\s*(?:p|purl)\s*(\d)(?=\s*[.;]|\s*$)", r"work in k\2, p\3 rib for \1", "Knit 7 cm rib, 2 knit, 2 purl."),
    row("rib ", r"(^\s*|[.:]\s*)rib\s+(\d)\s+and\s+(\d)\s+(?=for\b|until\b)", r"\1work in k\2, p\3 rib ", "Rib 2 and 2 for 5 cm."),
    row(
        "rib",
        r"\brib\s+(\d)\s?x\s?(\d)\s*\(\s*(k\s?\1\s*,\s*p\s?\2)\s*\)\s+to\s+(marker|m)\b",
        r"(\3) to \4",
        "Rnds 1-5: rib 1x1 (k1, p1) to marker.",
    ),
    row(
        "rib",
        r"\brib\s+(\d)\s?x\s?(\d)\s*\(\s*(k\s?\1\s*,\s*p\s?\2)\s*\)(?:\s+to\s+end\b)?",
        r"(\3) to end",
        "Rnds 1-5: rib 1x1 (k1, p1) to end.",
    ),
    row("k|p", r"\bk\.?\s?(\d+)\s*[.,]?\s*p\.?\s?(\d+)\.?\s+(?=rib)", r"k\1, p\2 ", "Work in K1.P1 rib for 3 cm."),
    row(
        "k",
        rf"(^\s*|[.]\s+)(k\s?\d+)\s*,?\s*(p\s?\d+)\s+(?:for\s+)({N}\s+{ROUND})",
        r"\1work \4 in \2, \3 rib",
        "K1 P 1 for 6 rows.",
    ),
    row(
        "rib",
        r"(^\s*|[.]\s+)(?:work\s+)?(k\s?\d+)\s*,?\s*(p\s?\d+)\s+in\s+rib(?:bing)?\s+(?=for\b|until\b)",
        r"\1work in \2, \3 rib ",
        "K 1, P 1 in ribbing for 5 cm.",
    ),
    # --- going on ---
    row(
        "continu",
        rf"(^\s*|[:.*]\s*)continu(?:e|ing)\s+in\s+({_SET})\s+as\s+(?:set|established)\s*,\s*(?={_SHAPES})",
        r"\1cont in \2, ",
        "Continuing in rib as set, dec 1 st at each end of next row.",
    ),
    row(
        "keeping",
        rf"(^\s*|[:.]\s*)keeping\s+(?:the\s+)?rib(?:bing)?\s+(?:going|correct|as\s+set)\s*,\s*(?={_SHAPES})",
        r"\1cont in rib, ",
        "Keeping the rib going, cast off 5 sts at beg of next 2 rows.",
    ),
    # --- rows without shaping ---
    row(
        "shaping|even|straight",
        rf"\b(work|cont(?:inue)?)\s+(?:even|straight|without\s+(?:further\s+|any\s+)?shaping)\s+for\s+(?:the\s+)?next\s+(?={N}\s+{ROUND})",
        r"\1 even for ",
        "Work without shaping for next 17 rows.",
    ),
    row(
        "without",
        r"\b(work|cont(?:inue)?)\s+(?:without\s+(?:further\s+|any\s+)?(?:shaping|increas(?:e|es|ing)|decreas(?:e|es|ing)))\s+(?=for\b|until\b)",
        r"\1 even ",
        "Continue without further increase until piece measures 9 cm.",
    ),
    row(
        "measure",
        rf"(\b(?:{ROUND}|more|times|once|twice))\s*{_TOLD}",
        r"\1",
        "Work even for 9 rows -- work measures 12 cm from beg.",
    ),
    row(
        "further",
        rf"\bwork\s+a\s+further\s+({N}\s+{ROUND})\s+(?:in\s+)?(?={_SET})",
        r"work \1 in ",
        "Work a further 6 rows rib.",
    ),
    row(
        "meas",
        r"\bmeas\b\.?(?!u)",
        "measures",
        "Cont straight until sleeve meas 30 cm.",
    ),
)
"""The rows, in the order tried."""
