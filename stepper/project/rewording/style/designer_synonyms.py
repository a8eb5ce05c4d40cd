"""Wordings of today's independent designers: counts of each section, asides in brackets, remarks between the rows. No I/O.

Such a page tells beside the work how the stitches lie ("50 sts for each sleeve, 70 sts each for front and back"),
where the round begins, what to do with the photos. None of it works a stitch: it is said at its place. The words of
each are listed, so that none can be an instruction. Source: the print of such pages; common practice.
"""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import BEGIN, STOP, STS, N, Synonym, row

_Y = r"(?-i:MC|CC\d?|C\d|[A-H]|[YZ])"
_SIDE = r"(?:left|right|front|back|first|second|upper|lower|cent(?:er|re)|main|half|side)"
_PART = r"(?:sleeves?|fronts?|backs?|bod(?:y|ies)|yoke|hal(?:f|ves)|underarms?|shoulders?|armholes?|necks?|sides?|panels?|raglans?(?:\s+(?:lines?|seams?))?|steek|bands?|saddles?|gussets?)"
_NAMED = rf"(?:(?:each\s+of\s+)?(?:the|each|both|every|your)\s+)?(?:{_SIDE}\s+){{0,2}}{_PART}(?:\s+(?:section|sections|panel|panels|{STS}))?"
_PARTS = rf"{_NAMED}(?:\s*(?:,|and|&|\+)\s*{_NAMED}){{0,3}}"
_IN_PART = rf"{N}(?:\s+{STS})?(?:\s+each)?\s+(?:(?:in|for|on|at|per|across)\s+)?{_PARTS}(?:\s+each)?"
_OF_PART = rf"{_PARTS}(?:\s+have)?\s*[:=]?\s*{N}(?:\s+{STS})?(?:\s+each)?"
_MANY = (
    rf"(?:{_IN_PART}(?:\s*(?:[,;+]|[,;]?\s*(?:and|&|plus))\s*{_IN_PART}){{1,5}}"
    rf"|{_OF_PART}(?:\s*(?:[,;+]|[,;]?\s*(?:and|&|plus))\s*{_OF_PART}){{1,5}})"
)
_HAVE = (
    r"(?:(?:now\s+)?you(?:\s+(?:will|should|now))*\s+have(?:\s+now)?|there\s+(?:are|will\s+be|should(?:\s+now)?\s+be)(?:\s+now)?|"
    r"(?:this|that)\s+(?:gives|leaves|makes)\s+(?:you\s+)?|(?:these|they)\s+are\s+(?:distributed|divided)\s+as\s+follows|(?:stitch\s+)?(?:distribution|breakdown))"
)
_PLACES = (
    r"(?:the|a|at|in|on|of|is|to|and|its|your|middle|cent(?:er|re)|back|front|left|right|side|neck|underarm|raglan|shoulder|sleeve|body|seam|line|steek|beginning|"
    r"now|always|located|there|here|still)"
)

STATEMENTS: tuple[Synonym, ...] = (
    # --- how the stitches lie ---
    said_row(
        "each|front|back|sleeve|body",
        rf"{BEGIN}(?P<said>(?:{_HAVE}\s*:?\s*)?{_MANY}){STOP}(?=\s*$|\s*[A-Z\[(])",
        "There should be 50 sts in each sleeve section and 70 sts each in front and back.",
    ),
    said_row_behind(
        "each|front|back|sleeve|body",
        rf"([\[(]\s*{N}\s+{STS}(?:\s+(?:total|in\s+total|in\s+all))?)\s*[:;,.-]\s*(?P<said>{_MANY})(?=\s*[\])])",
        "Knit 1 rnd. [240 sts; 50 sts for each sleeve, 70 sts each for front and back]",
    ),
    said_row_behind(
        "each|front|back|sleeve|body",
        rf"((?:^|[.!;]\s+)(?:{_HAVE}\s+)?(?:a\s+total\s+of\s+)?{N}\s+{STS}(?:\s+(?:total|in\s+total|in\s+all|on\s+(?:your|the)\s+needles?))?)\s*(?:[:;,-]|\()\s*(?P<said>{_MANY})\)?(?=\s*\.?\s*$)",
        "Knit 1 rnd. You should now have 240 sts (50 sts for each sleeve, 70 sts each for front and back).",
    ),
    said_row(
        "each shoulder|each front|either side|each sleeve|each side of",
        rf"{BEGIN}(?P<said>{N}\s+{STS}\s+(?:rem(?:ain(?:ing)?)?\b\.?\s+|left\s+)?(?:on|for|at|in)?\s*(?:(?:each|either)\s+(?:shoulder|front|sleeve)|(?:either\s+side|each\s+side(?=\s+of\s+(?:the\s+)?(?:front|back|opening))))(?:\s+of\s+(?:the\s+)?(?:neck|front|back|opening))?){STOP}$",
        "Next row (RS): K28, BO 16 sts, k to end. 28 sts rem for each shoulder.",
    ),
    said_row(
        "markers on",
        rf"{BEGIN}(?P<said>{_HAVE}\s+(?:a\s+total\s+of\s+)?(?:\d+|two|three|four|five|six|eight)\s+markers?\s+(?:on|in)\s+(?:your|the)\s+(?:needles?|work|knitting)(?:\s*[,(]\s*(?:including|incl\.?|counting|and)\s+(?:the\s+)?(?:bor|beginning)(?:[\s-]+(?:of[\s-]+(?:the[\s-]+)?(?:rnd|round)|marker|m))*\)?)?){STOP}",
        "You now have 5 markers on your needle (including BOR).",
    ),
    said_row_behind(
        "repeats",
        rf"([.)\]]\s*|\d\s*)[(\[]\s*(?P<said>{N}\s+(?:full\s+|complete\s+|whole\s+)?(?:chart\s+|pattern\s+|motif\s+|patt\s+)?(?:repeats|reps)(?:\s+(?:in\s+all|in\s+total|around|per\s+(?:rnd|round)|in\s+each\s+(?:rnd|round)))?)\s*[)\]](?=\s*\.?\s*$)",
        "Work Chart A, rnds 1-12. (19 pattern repeats)",
    ),
    # --- where the round begins, what is counted ---
    said_row(
        "bor|beginning of|round begins|round starts|rnd begins|rnd starts|rounds begin|rounds start",
        rf"{BEGIN}[(]?(?P<said>(?:the\s+)?(?:bor|beginning\s+of\s+(?:the\s+)?(?:rnd|round)|(?:round|rnd)s?\s+(?:now\s+)?(?:begins?|starts?))(?:\s+{_PLACES})+)(?:\s*\.?\s*[)])?{STOP}",
        "The BOR is at the centre of the back.",
    ),
    said_row(
        "count",
        rf"{BEGIN}(?P<said>(?:do\s+not|don't)\s+(?:count|include)\s+(?:the\s+)?(?:short\s+(?:rows?|rounds?)|double\s+stitches|ds|steek\s+{STS}|yarn\s*overs?|wraps?)\s+(?:as\s+(?:rounds?|rows?|rnds?|{STS})|in\s+(?:the|your|any)\s+(?:stitch\s+)?counts?|when\s+counting\s+{STS})){STOP}",
        "Do not count short rows as rounds.",
    ),
    said_row(
        "not included|never included|not counted|counted as one",
        rf"{BEGIN}(?P<said>(?:the\s+)?(?:steek\s+{STS}|double\s+{STS}|ds|wraps|yarn\s*overs)\s+(?:is|are)\s+(?:not|never|always)\s+(?:included|counted)(?:\s+as\s+(?:one|1)(?:\s+{STS})?)?(?:\s+in\s+(?:the|any)\s+(?:stitch\s+)?counts?)?){STOP}",
        "The steek sts are never included in the stitch counts.",
    ),
    # --- between designer and knitter ---
    said_row(
        "for support|for help|for questions|for pattern support|questions?|any questions",
        r"(?:(?<=^)|(?<=[.!?]))\s*(?P<said>(?:for\s+(?:pattern\s+)?(?:support|help|questions|errata)|if\s+you\s+(?:have|need|find)\s+(?:any\s+|a\s+)?(?:questions?|help|support|mistakes?|errors?)(?:\s+(?:about|with)\s+(?:the|this)\s+pattern)?|any\s+questions\s*\?|questions\s*\?)\s*,?\s*(?:please\s+)?(?:feel\s+free\s+to\s+)?(?:write|email|e-mail|contact|visit|message|see|read|send|check|get\s+in\s+touch|join)\b[^!?]{0,120})(?:[.!?]+|$)",
        "For support please write to the address on my website.",
    ),
    said_row(
        "personal use|copyright|distribute|redistribut|all rights|resell|reproduc",
        r"(?:(?<=^)|(?<=[.!?]))\s*(?P<said>(?:this|the)\s+pattern\s+is\s+(?:intended\s+)?(?:for|©)\s+(?:your\s+)?(?:personal|private|non-?commercial)[^.!?]{0,80}|(?:please\s+)?(?:do\s+not|don't)\s+(?:copy|distribute|redistribute|resell|sell|share|reproduce)[^.!?]{0,100}|(?:it|this\s+pattern|no\s+part(?:\s+of\s+(?:it|this\s+pattern))?)\s+(?:may|must|can)\s+(?:not\s+)?be\s+(?:copied|distributed|redistributed|resold|sold|reproduced)[^.!?]{0,100}|all\s+rights\s+reserved)(?:[.!?]+|$)",
        "This pattern is for personal use only.",
    ),
)  # fmt: skip
"""The rows for what is said between the rows, tried before anything is put into other words."""

_HOW_MANY = rf"(?:{N}|to\s+(?:the\s+)?(?:next\s+|first\s+|second\s+|third\s+|fourth\s+|last\s+|bor\s+)*(?:m|marker|end)|to\s+bor)"
_ASIDE = rf"(?:(?:the\s+|for\s+|this\s+is\s+|these\s+are\s+|=\s*)?(?:(?:one\s+)?half\s+(?:of\s+)?(?:the\s+)?)?(?:{_SIDE}\s+){{0,2}}{_PART}(?:\s+(?:section|{STS}))?)"

IN_ROWS: tuple[Synonym, ...] = (
    said_row_behind(
        "(",
        rf"(\b(?:(?:k|p|knit|purl|work)\s*(?:{N}|\s{_HOW_MANY})|(?:co|cast\s+on)\s+{N})(?:\s+{STS})?)\s*\(\s*(?P<said>{_ASIDE})\s*\)(?=\s*[,;.]|\s+and\b|\s*$)",
        "K44 (half of back), pm, k to next m (front), pm, k to end.",
    ),
    row(
        "circular",
        r"(\d(?:\.\d+)?\s*mm\s+circular)s?(?=\s*[.,;]|\s+and\b|\s*$)",
        r"\1 needle",
        "Change to 3.5 mm circular.",
    ),
    row(
        "the ds|ds of|ds as|ds from|double",
        r"\bto\s+(?:the\s+|your\s+|last\s+)*(ds|double\s+st(?:itch)?)\s+(?:of|from|on|in|made\s+(?:in|on))\s+(?:the\s+)?(?:previous|prev|last|preceding)\s+(?:short\s+)?(?:row|round|rnd|turn)",
        r"to \1",
        "Row 3 (RS): Make a DS, knit to the DS of the previous row, k DS, k4, turn.",
    ),
    row(
        "the ds|ds of|ds as|double",
        r"^([^:]*\(?\b([rw]s)\)?\s*:[^:]*?\bto)\s+(?:the\s+|your\s+|last\s+)*(ds|double\s+st(?:itch)?)\s+(?P<said>(?:of|from|on|in|made\s+(?:in|on))\s+(?:the\s+)?(?:previous|prev|last|preceding)\s+\2\s+row)",
        r"\1 \3",
        "Row 3 (RS): Make a DS, knit to the DS of the previous RS row, k DS, k4, turn.",
        spelt_out=True,
    ),
    row(
        "as one|as 1|as a single",
        r"\b(k|p|knit|purl|work)\s+(?:the\s+)?(ds|double\s+st(?:itch)?)\s+as\s+(?:one|1|a\s+single)(?:\s+st(?:itch)?)?\b",
        r"\1 \2",
        "Row 3 (RS): Make a DS, k to DS, knit the DS as one st, k4, turn.",
    ),
    row(
        "more",
        rf"((?:\bds|\bw&t|\bdouble\s+st(?:itch)?)\s*,\s*(?:and\s+)?(?:then\s+)?(?:k|p|knit|purl)\s*{N})\s+more\s+{STS}(?=\s*,\s*turn)",
        r"\1",
        "Row 3 (RS): Make a DS, k to DS, k DS, knit 4 more sts, turn.",
    ),
    row(
        "complete|full|whole",
        r"\b(knit|purl|work)\s+(?:one|1|a)\s+(?P<said>complete|full|whole)\s+(rnd|round)\b",
        r"\1 1 \3",
        "Knit one complete round.",
        spelt_out=True,
    ),
    row(
        "without shaping|even|straight",
        r"\b(knit|purl)\s+(?:(?:even|straight)\s+(?=(?:until|till)\b)|without\s+shaping\s+(?=(?:until|till|for)\b))",
        r"\1 ",
        "Knit without shaping until piece measures 8 cm.",
    ),
    said_row_behind(
        "joining and|breaking|as needed|as necessary|as required",
        r"(\bchart\b[^.;:]*?)\s*,\s*(?P<said>(?:joining|adding|joining\s+in|introducing)(?:\s*(?:,|and)\s*(?:breaking|cutting|dropping))?(?:\s+off)?\s+(?:the\s+|new\s+|any\s+|contrast\s+)*(?:colou?rs?|yarns?)\s+(?:as|when|where)\s+(?:needed|necessary|required|indicated|shown|you\s+need\s+them))(?=\s*[.]|\s*$)",
        "Work Chart A, rnds 1-12, joining and breaking colours as needed.",
    ),
    said_row(
        "chart is worked|chart repeats|chart is repeated",
        rf"{BEGIN}(?P<said>(?:the\s+)?chart\s+(?:repeats|is\s+(?:repeated|worked))\s+(?:a\s+total\s+of\s+)?(?:twice|{N}\s+times)\s+(?:around|across|(?:on|in)\s+each\s+(?:rnd|round))){STOP}",
        "The chart is worked 19 times around.",
    ),
    said_row_behind(
        "colour band|color band|colourwork|colorwork|colour pattern|color pattern",
        rf"(\bjoin\s+{_Y})\s+(?:and|to)\s+(?P<said>(?:start|begin|work|knit)\s+(?:the\s+)?(?:first|second|third|next|last)?\s*(?:colou?r(?:work)?)(?:\s+(?:band|section|pattern|yoke))?)(?=\s*[.:]|\s*$)",
        "Join CC1 and start the first colour band.",
    ),
    row(
        "break|cut",
        rf"(\b(?:break|cut)\s+(?:off\s+)?{_Y}(?:\s+and\s+{_Y})?)\s+(?:and|,)\s+(knit|work|cont(?:inue)?)\s+with\s+({_Y})\s+(?=until|for)",
        r"\1. With \3, \2 ",
        "Break CC and knit with MC until piece measures 9 cm.",
    ),
    row(
        "ready to|to begin|to start|to work",
        r"^(\s*)((?:return|place|transfer|slip)\b[^.]*?)\s*,?\s+(?:and\s+)?(?P<said>(?:re-?)?(?:join|attach)\s+(?:the\s+)?(?:new\s+)?(?:yarn|MC)(?:\s+ready)?)\s+to\s+(?:work|begin|start)(?:\s+with)?\s+an?\s+(rs|ws)\s+row(?=\s*\.?\s*$)",
        r"\1with \4 facing, \2",
        "Return 20 held sts to needle and join yarn ready to work a WS row.",
        spelt_out=True,
    ),
    said_row_behind(
        "(or ",
        r"((?:cm|mm|inch(?:es)?|in|\")(?:\s+from\s+[a-z -]{4,30}?)?)\s*,?\s*[(]\s*(?P<said>or\s+(?:(?:until\s+|to\s+)?(?:your\s+|the\s+)?(?:desired|preferred|wanted)\s+(?:(?:body|sleeve|total)\s+)?length(?:\s*,?\s*(?:minus|less)\s+\d[\d.¼½¾ ]*\s*(?:cm|in|\")(?:\s*/\s*\d[\d.¼½¾ ]*\s*(?:cm|in|\"))?)?|\d[\d.¼½¾ ]*\s*(?:cm|in|\")(?:\s*/\s*\d[\d.¼½¾ ]*\s*(?:cm|in|\"))?\s+(?:less|shorter)\s+than\s+(?:your\s+|the\s+)?(?:desired|preferred)\s+(?:total\s+)?length))\s*[)](?=\s*\.?\s*$)",
        "Work even until piece measures 30 cm from cast-on (or desired length minus 5 cm).",
    ),
    row(
        "(*|[*",
        r"\b(work\s+(?:in\s+)?(\d+)\s*x\s*(\d+)\s+rib(?:bing)?)\s*[(\[]\s*\*\s*(?P<said>k\s?\2\s*,\s*p\s?\3)\s*\*?(?:[\s;,.*]|\b(?:rep(?:eat)?|from|to|the|end|around|round|across)\b)*[)\]]",
        r"\1",
        "Work 2x2 rib (*k2, p2*, repeat from * to * to end) for 3 cm.",
        spelt_out=True,
    ),
)  # fmt: skip
"""The rows for what stands inside a row."""
