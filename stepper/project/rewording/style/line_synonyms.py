"""Other wordings for whole lines: heads, yarn and needles, markers, how often and how long. No I/O."""

from __future__ import annotations

from stepper.craft.needles import NEEDLES
from stepper.project.part_names import PIECE
from stepper.project.rewording.said_rows import said_row
from stepper.project.rewording.synonym import (
    CUT_YARN,
    END,
    JOIN_YARN,
    KEPT,
    LONG,
    ROUND,
    STS,
    N,
    Synonym,
    row,
)

_SHORTER = (
    r"(?:(?:about\s+)?(?:\d[\d./\s¼½¾-]*|(?:one|two|three|four)\s+)(?:cm|mm|in|inch|inches|\")?\s*(?:\([\d./\s¼½¾]+(?:cm|mm|in|inch|inches|\")?\s*\)\s*)?"
    r"(?:less|short(?:er)?|more)\s+(?:than|of)\s+)"
)
_DESIRED = (
    rf"{_SHORTER}?(?:the\s+|your\s+)?(?:total\s+|full\s+|finished\s+)?(?:(?:desired|required|wanted|preferred)\s+"
    rf"(?:(?:total|finished|{PIECE})\s+)?length|length\s+(?:desired|required|wanted|you\s+(?:like|want|wish|prefer)))"
    r"(?:\s+(?:to|before|for)\s+(?:the\s+|your\s+)?(?:underarm|armhole|shoulder|cuff|hem|toe|crown|heel|thumb|gusset|wrist|neck|rib|leg|sleeve|body)s?)?(?:\s+minus\s+\d[\d./\s¼½¾]*(?:cm|in|inches|\"))?"
)
_AS_LONG = r"(?:as\s+long\s+as\s+(?:desired|required|wanted|you\s+(?:like|want|wish|prefer))|long\s+enough)"
_IT = rf"(?:it|(?:the\s+|your\s+)?{PIECE})"
_HER_CHOICE = (
    rf"(?:{_SHORTER}(?:desired|required|wanted)(?!\s+[a-z]*\s*length)|(?:to\s+|until\s+)?{_DESIRED}(?:\s+(?:is|has\s+been)\s+reached)?"
    rf"|until\s+{_IT}\s+(?:(?:is|measures|reaches|has\s+reached)\s+{_DESIRED}|is\s+{_AS_LONG})"
    r"|as\s+long\s+as\s+(?:desired|you\s+(?:like|want|wish|prefer))|as\s+(?:desired|required))\b"
)
"""What leaves a length to the knitter: the one printed before it is worked, and these words are said."""

_SIZED = rf"(?:an?\s+|the\s+)?(?:pair\s+of\s+|set\s+of\s+)?({NEEDLES})"
_NEXT = r"(?=\s(?:cast\s+on|co\b|cast\s+off|bind\s+off|bo\b|pick\s+up|knit\b|work\b|cont(?:inue)?\b)|(?<=\s)(?:cast\s+on|co\b|cast\s+off|bind\s+off|bo\b|pick\s+up|knit\b|work\b|cont(?:inue)?\b))"

LINES: tuple[Synonym, ...] = (
    # --- heads ---
    row(
        "rnd|round|row",
        rf"^(\s*)((?:\d+(?:st|nd|rd|th)(?:\s*(?:,|and|&|to|-)\s*)?)+)\s+({ROUND})(?=[^:]*:)",
        r"\1\3 \2",
        "1st row (RS): Knit.",
    ),
    row(
        "rnd|round|row",
        r"^(\s*(?:rows?|rnds?|rounds?)\b[^:]*?\d)(?:st|nd|rd|th)\b(?=[^:]*:)",
        r"\1",
        "1st and 2nd rows: Knit.",
        again=True,
    ),
    row(
        "rnd|round|row",
        r"^(\s*(?:next\s+)?(?:rows?|rnds?|rounds?)(?:\s+\d+)?)\s*[-,]\s*\(?([rw]s)\)?\s*:",
        r"\1 (\2):",
        "Next row, RS: Knit.",
    ),
    row(
        "rnd|round|row",
        r"^(\s*(?:rows?|rnds?|rounds?)\s+\d+)\s*(?:[.]|-+)\s+(?=\(?[rw]s\)|[a-z*\[(])",
        r"\1: ",
        "Row 1 - bind off 5 sts, k to end.",
    ),
    row(
        "rnd|round|row",
        r"^(\s*(?:rows?|rnds?|rounds?)\s+\d+):\s*\(([rw]s)\)\.?\s*",
        r"\1 (\2): ",
        "Row 1: (RS) K to end.",
    ),
    row("and", r"\(\s*(and\s+(?:all|every)[^)]*)\)(?=\s*:)", r"\1", "Row 2 (and all WS rows): Purl."),
    row("&", r"(?<=\s)&(?=\s)", "and", "Rnds 2 & 4: Knit.", again=True),
    row(
        "row",
        rf"^(\s*)(knit|purl)\s+(?:1|one)\s+row\s*(?:\(|on\s+(?:the\s+)?)(rs|ws|right\s+side|wrong\s+side)\)?{END}",
        r"\1next row (\3): \2",
        "Purl 1 row (WS).",
    ),
    *(
        row(
            "row",
            rf"^(\s*)(?:beg(?:inning|in)?|start(?:ing)?)\s+(?:with|on)\s+an?\s+(?:{told})\s+row\s*,\s*",
            rf"\1next row ({side}): ",
            f"Starting with a {how} row, work 10 rows in stocking stitch.",
        )
        for side, how, told in (
            ("rs", "knit", r"rs|right\s+side|knit|k"),
            ("ws", "purl", r"ws|wrong\s+side|purl|p"),
        )
    ),
    # --- what is said with the line ---
    row(
        "block|change|divide|fasten|inside|make|marker|n't|not|sew|soak|steam|try|wash|weave",
        r"(?:(?<=^)|(?<=[.!]))\s*(?![^.!;]*\b(?:make|knit|work)\s+(?:the|a|an|your)\s+(?:other|second|2nd|next)\b)(?![^.!;]*\b(?:is|are)\s+(?:then\s+|now\s+)?(?:worked|knit(?:ted)?|purled|bound\s+off|cast\s+(?:on|off)|picked\s+up)\b|[^.!;]*\bin\s+(?:garter|rib|moss|seed)\b)(?:weave|block|sew|steam|soak|wash|fasten\s+off|(?:slip|sl)\s+markers?\s+as|"
        r"divide\s+for|try\s+on|turn\s+inside\s+out|(?:do\s+not|don't)\s+(?:break|cut|turn|join)|"
        r"change\s+to\s+(?:(?:an?\s+)?(?:shorter|longer|\d+\s*(?:in|cm|\")(?:\s*\([^)]*\))?)\s+)?(?:dpns?|double-pointed|circular)(?!\s+(?:needles?\s+)?\d{1,2}(?:\.\d+)?(?:\s*[.,;!]|\s*$|\s+and\b))(?![^.!;]*\b(?:and|then|,)\s*(?:work|knit|k|purl|p|shape|dec\w*|inc\w*|cast|bind|rep\w*|cont\w*)\b)|make\s+(?:1|2|one|two)(?=\s*[.!]|\s*$|\s+(?:alike|the\s+same)\b))\b[^.!;]*;?\s*",
        KEPT,
        "Weave in ends.",
    ),
    said_row(
        "desired|required|wanted|preferred|like|long enough|wish|want",
        rf",?\s*\b(?P<said>or\s+{_HER_CHOICE})",
        "Work until piece measures 30 cm or until desired length.",
    ),
    said_row(
        "wrap",
        rf",?\s*(?P<said>(?:picking\s+up|lifting)\s+(?:the\s+|all\s+|any\s+)*(?:remaining\s+)?wraps?\s+and\s+(?:knitt?|purl|work)ing\s+"
        rf"(?:them|it|each|each\s+(?:one|wrap))\s+(?:tog(?:ether)?\s+)?with\s+(?:(?:their|its|the)\s+(?:own\s+|wrapped\s+)?|wrapped\s+){STS}){END}",
        "Knit across, picking up wraps and knitting them together with their sts.",
    ),
    row(
        "cast|loop|method|technique",
        r",?\s*\b(?:using|by|with)\s+(?:the\s+|an?\s+)?(?!rs\b|ws\b|live\b|held\b|open\b|right\b|wrong\b|three\b|\d)(?!(?-i:MC|CC\d?|[A-Z])\b|[^,]*\b(?:needles?|dpns?|facing)\b)[a-z-]+(?:\s+[a-z-]+){0,3}?\s+(?:loops?\s+(?:method|cast-?\s?on)|method|cast-?\s?on|technique|loops?)\b(?!\s*\d)",
        KEPT,
        "K20, using the backward loop method, cast on 8 sts, k to end.",
    ),
    row(
        "and",
        r"\band\s+(?:starting|beginning)\s+at\s+[^,.;]*",
        KEPT,
        "With RS facing and starting at the front edge, pick up and knit 98 sts.",
    ),
    row(
        "rnd|round|row",
        rf"\s*\(\s*({N}\s+{ROUND}(?:\s+(?:total|in\s+all|in\s+total))?)\s*\)(?=\s*[.]|\s*$)",
        r". \1",
        "Repeat rounds 1 and 2 four more times (8 rounds).",
    ),
    row(
        "rnd|round|row",
        rf"\s*\(\s*\d+\s+{ROUND}(?![^)]*\b(?:sizes?|only|if|when|unless|instead|not|but|except|on|for)\b)[^)]*\)(?!\s*:)",
        KEPT,
        "Knit 8 rounds (8 rounds in stockinette).",
    ),
    row(
        "garter|st|stocking",
        r"\s*\((?:=\s*)?(?:garter|st(?:ockinette)?|stocking)\b[^)]*\)",
        KEPT,
        "Knit 6 rows (garter stitch).",
    ),
    row(
        "on|right|rs|wrong|ws",
        rf"\s*\((?:rs|ws|right\s+side|wrong\s+side)\)(?={END})|\s*\bon\s+(?:the\s+)?(?:rs|ws|right\s+side|wrong\s+side){END}",
        KEPT,
        "Knit 1 row. Purl 1 row (WS).",
    ),
    row(
        "across|over",
        rf"\b((?:k|p|knit|purl)\s*{N})\s+(?P<said>(?:across|over)\s+(?!(?:the\s+)?next\b)(?:the\s+)?[a-z][a-z ]*(?<!\s)){END}",
        r"\1",
        "Pick up and knit 15 sts, k30 across instep, pick up and knit 15 sts.",
    ),
    # --- yarn and needles ---
    row("dpn", r"\bdpns?\b", "double-pointed needles", "Change to 3.75 mm dpns."),
    row("us", r"\bus\s*\d+(?:\.\d+)?\s*/\s*(?=\d+(?:\.\d+)?\s*mm)", "", "Change to US 5 / 3.75mm needles."),
    row(
        "needle",
        rf"\b(?:with|using)\s+([a-z]\w?\d?)\s+and\s+({NEEDLES})\s*,",
        r"change to \2. with \1,",
        "With MC and smaller needles, CO 80 sts.",
    ),
    row(
        "with|using",
        rf"\b(?:with|using)\s+{_SIZED}\s+and\s+(?:yarn\s+|colou?r\s+)?([a-z]\w?\d?)\s*(?:,|{_NEXT})",
        r"change to \1. with \2, ",
        "Using a pair of 4 mm needles and yarn A, cast on 80 sts.",
    ),
    row(
        "with|using",
        rf"\b(?:with|using)\s+{_SIZED}\s*(?:,\s*|{_NEXT})",
        r"change to \1. ",
        "Using a 4 mm needle, cast off.",
    ),
    row(
        "change",
        rf"\b(change\s+to\s+{NEEDLES})\s+and\s+",
        r"\1. ",
        "Change to 3.75 mm needles and knit 2 rounds.",
    ),
    row(
        "st",
        rf"\b(change\s+to\s+(?:{NEEDLES}|(?:larger|smaller)\s+needles?))(?:\.\s+|\s+and\s+)((?:rev(?:erse)?\.?\s+)?(?:st\.?\s?st|stocking\s+stitch|stockinette(?:\s+st(?:itch)?)?|garter\s+st(?:itch)?))(?=\s*\.?\s*$)",
        r"\1. go on in \2",
        "Change to 4 mm needles and st.st.",
    ),
    row("rejoin", r"\b[Rr]ejoin\s+([A-Z]\w?\d?)\b", r"with \1", "Rejoin MC, k to end.", exact=True),
    row(
        "in|using|with",
        rf"\b((?:[Cc]ast\s+on|CO|[Pp]ick\s+up\s+and\s+knit)\s+{N}(?:\s+{STS})?)\s+(?:in|using|with)\s+(?:yarn\s+)?(MC|CC\d?|[A-Z])\b",
        r"with \2, \1",
        "Cast on 80 sts using A.",
        exact=True,
    ),
    row(
        "yarn",
        rf"\b{JOIN_YARN}\s*(?:,\s*(?:and\s+)?|and\s+)?",
        KEPT,
        "With RS facing, rejoin yarn and k across left sleeve sts.",
    ),
    row(
        "knit|purl|work",
        rf"\b([Kk]nit|[Pp]url|[Ww]ork)\s+({N})\s+({ROUND})\s+(?:in\s+|with\s+)?(MC|CC\d?|[A-Z])\b",
        r"with \4, \1 \2 \3",
        "Knit 1 rnd in A.",
        exact=True,
    ),
    row(
        "",
        r"\b([KkPp]\s?\d*)\s+(?:with\s+)?(MC|CC\d?|[A-Z])(?=\s*[,;.)\]]|\s*$)",
        r"\1 in \2",
        "*K1 A, k1 B; rep from * to end.",
        exact=True,
        again=True,
    ),
    row(
        "yarn",
        rf"\b({CUT_YARN})\s*,?\s*and\s+(?=place|put|leave|slip|hold)",
        r"\1. ",
        "Break yarn and place sts on hold for front.",
    ),
    # --- the round, its markers ---
    row(
        "join",
        r"\b(?:pm|place\s+(?:an?\s+)?marker)(?:\s+for\s+[^,.;]*?)?\s*(?:,|and)\s*(?=join\b)",
        KEPT,
        "PM and join in the round.",
    ),
    row(
        "join",
        r"(?<=join)(?=\s*,\s*(?:being|taking)|\s*[.]|\s*$)",
        " in the round",
        "Join, being careful not to twist.",
    ),
    row(
        "and",
        r"(?<=\S),?\s*\band\s+(?:pm|place\s+(?:an?\s+)?marker)\b(?!\s+(?:after\s+)?every\b)[^.,;]*(?=\s*[.]|\s*$)",
        KEPT,
        "Join in the round and place marker (BOR).",
    ),
    row(
        "in",
        r"(?<!\bto\s)\b(?:begin|start|resume|cont(?:inue)?|go\s+on)\s+(?:working\s+|knitting\s+)?in\s+(?:the\s+)?(?:rounds?|rnds?)\b",
        "join in the round",
        "Continue in rounds.",
    ),
    row(
        "join",
        rf"\b((?:cast\s+on|co)\s+{N}\s+{STS})\s*,?\s*(?:and\s+)?(?=join\b)",
        r"\1. ",
        "Cast on 120 sts and join in the round.",
    ),
    row(
        "join",
        rf"(\d(?:\s*[)\]])?(?:\s+{STS})?|\bto\s+end)\s*,\s*(?:and\s+)?(?=join\s+(?:to\s+(?:work|knit)\s+)?in\s+the\s+(?:rnd|round)\b)",
        r"\1. ",
        "K20, pm for BOR and join.",
    ),
    row(
        "turn",
        r"(^\s*|[.:]\s+)turn\s+and\s+(?=(?:work|knit|purl)\b)",
        r"\1Turn work. ",
        "Turn and work in rows.",
    ),
    row(
        "turn",
        r"(^\s*|[.:]\s+)((?:join|with|change\s+to)\b[^.;:]*?)\s*(?:,\s*(?:and\s+)?|\s+and\s+)turn\s+and\s+(?=(?:work|knit|purl)\b)",
        r"\1Turn work. \2 and ",
        "Join in contrast colour and turn and work 6 rows.",
    ),
    row(
        "marker",
        r"\bplace\s+(?:an?\s+)?(bor|end|side)\s+marker\b",
        r"place marker for \1",
        "Place BOR marker.",
    ),
    row(
        "p",
        r"\b(place\s+(?:an?\s+)?marker|pm)\s+([A-Z]|\d)\b",
        r"\1 for \2",
        "K10, place marker A, k to end.",
        exact=True,
    ),
    row(
        "sl",
        r"\b(?:sl|slip)\s+(?:the\s+)?(?:m|marker)\b",
        "sm",
        "*K to marker, sl m; rep from * 3 times more, k to end.",
    ),
    # --- how often, how long ---
    row(
        "knit|purl",
        rf"\b((?:knit|purl)\s+{N}\s+{ROUND})\s*,\s*(?:then\s+|and\s+)?(?=(?:knit|purl)\s+{N}\s+{ROUND})",
        r"\1. ",
        "Purl 1 round, knit 1 round, purl 1 round.",
        again=True,
    ),
    row(
        "same",
        r"(?<=[^\s.])\.\s+(?=at\s+the\s+same\s+time\b)",
        ", ",
        "Work dec row every 4th row 3 times. At the same time, work neck row every 2nd row 5 times.",
    ),
    row(
        "same",
        r"\b(at\s+the\s+same\s+time)\s*,?\s+working\b",
        r"\1 work",
        "Work dec row every 4th row 3 times, while at the same time working neck row every 2nd row 5 times.",
    ),
    row(
        "cable",
        rf"(,?\s*(?:and\s+)?(?:at\s+the\s+same\s+time\s*,?\s*)?cross(?:ing)?\s+(?:the\s+)?cables?\s+(?:on\s+)?(?:every|each)\s+\w+\s+{ROUND})\s*,\s*((?:for|until)\b[^.;]*)",
        r" \2\1",
        "Work even in patt, crossing cable every 4th rnd, for 8 rnds.",
    ),
    row(
        "total",
        rf"\ba\s+total\s+of\s+({N}|\S+)\s+times\b",
        r"\1 times in all",
        "Rep Rnds 1 and 2 a total of 5 times.",
    ),
    row("thrice", r"\bthrice\b", "3 times", "K10, (yo, k2tog) thrice, k to end."),
    row(
        "rep",
        rf"\b(rep(?:eat)?)\s+(?:the\s+last|the\s+prev(?:ious)?|prev(?:ious)?|these|those)\s+((?:{N}\s+)?{ROUND})",
        r"\1 last \2",
        "Rep these two rows three times more.",
    ),
    row(
        "rnd|round|row",
        rf"\b({ROUND}\s+\d+)\s+(?:to|through|thru)\s+(?=\d)",
        r"\1-",
        "Rep rows 1 to 4 twice.",
    ),
    row(
        "patt",
        rf"\b(rep(?:eat)?\s+(?:last\s+(?:\S+\s+)?{ROUND}|{ROUND}\s+[\d\s,and-]*\d))\s+(?:for|to\s+form)\s+(?:the\s+)?patt(?:ern)?\b",
        r"\1 0 times more",
        "Rep these 4 rows for pattern.",
    ),
    row(
        "knit|purl",
        rf"\b(knit|purl)\s+(?:every|all|each)\s+{ROUND}\s+(?=until\b|for\b)",
        r"\1 ",
        "Knit every round until piece measures 10 cm.",
    ),
    row(
        "knit|work",
        rf"\b(?:knit|work)\s+({LONG}(?:\s*\[[^\]]*\])?)\s+(in\s+[^.;*]+?)(?=\s*[.;]|\s*,\s*end|\s*,?\s*(?:and\s+)?then\b|\s*,\s*change\b|\s*$)",
        r"work \2 for \1",
        "Work 5 cm in k2, p2 rib.",
    ),
    row("knit|purl", rf"\b(knit|purl)\s+(?={LONG}(?:[\s.,;]|$))", r"\1 for ", "Knit 5 cm."),
    row("rib", rf"\brib\s+({N}\s+{ROUND})", r"work \1 in rib", "Rib 6 rows."),
    row(
        "rib",
        r"(?<!\bin\s)(?:\bwork\s+)?\b(k\s?\d+\s*,?\s*p\s?\d+\s+rib(?:bing)?)\b",
        r"work in \1",
        "K2, p2 rib for 5 cm.",
    ),
    row("rib", r"\bin\s+rib(?:bing)?\s+(?=as\s+(?:set|established)\b)", "", "Work in rib as set for 5 cm."),
    row(
        "knit|purl|work",
        rf"\b((?:knit|purl)\s+{N}\s+{ROUND})\s+(?:even|straight|plain)\b",
        r"\1",
        "Knit two rounds even.",
    ),
    row(
        "knit|work",
        r"\b(?:knit\s+the\s+knit(?:\s+(?:sts|stitches))?\s+and\s+purl\s+the\s+purl\s+(?:sts|stitches)|work\s+(?:all\s+|the\s+)*(?:sts|stitches)\s+as\s+they\s+(?:appear|present)(?:\s+themselves)?)",
        "work in pattern to end",
        "Knit the knit sts and purl the purl sts.",
    ),
)
"""The rows, in the order tried."""
