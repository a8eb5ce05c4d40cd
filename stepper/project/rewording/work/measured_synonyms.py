"""Other wordings for where a length is measured, what it may be instead, and what it is like. No I/O.

A length has a place it is measured from; along which line it is measured changes no row and is said with the
line. Where a page prints a length and leaves another open ("6 in or desired length to heel"), the printed one
is worked and the words are said. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from stepper.project.part_names import PART, WHICH
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import LONG, ROUND, STOCKINETTE, STS, N, Synonym, row

_RIB = r"(?:rib(?:bing)?|\(?k\s?\d(?:\s+tbl)?\s*[,/]?\s*p\s?\d(?:\s+tbl)?\)?\s+rib(?:bing)?|\dx\d\s+rib(?:bing)?)"
_FABRIC = rf"(?:{STOCKINETTE}|{_RIB}|garter(?:[-\s]st(?:itch)?)?|(?:moss|seed)(?:\s+st(?:itch)?)?)"
_ALONG = (
    r"(?:(?:measured|measuring)\s+(?:straight\s+)?(?:flat|straight|(?:up|down|along|at|in)\s+(?:the\s+|your\s+)?(?:(?:cent(?:er|re)|middle)(?:\s+of)?\s+(?:the\s+)?)?"
    r"(?:front|back|underarm|sleeve|side|seam|edge|fold|palm|sole)))"
)
_SIDE = r"(?:(?:rs|ws|right[-\s]side|wrong[-\s]side)(?:\s+row)?|(?:p|purl|k|knit)\s+row)"
_BACK = rf"({WHICH}(?:{PART}|side))"
_SAME = r"(?:the\s+)?same\s+(?:length|depth|height)\s+as\s+(?:(?:on|for|that\s+of|in)\s+)?(?:the\s+)?"

_OTHER = rf"(?:(?:that|those)\s+(?:of|on|for)\s+|on\s+|for\s+)?(?:the\s+)?({WHICH}{PART})(?:\s+(?:armholes?|piece))?"
_OWN = r"(?:the\s+|your\s+)?(?:piece|work|it|(?:left\s+|right\s+)?front|back|body|sleeve)"
_UPTO = r"(?:(?:up\s+)?to|at|before)\s+((?:the\s+)?(?:(?:beg(?:inning)?|start)\s+of\s+(?:the\s+)?)?(?:shoulder|armhole|underarm|neck|raglan)s?(?:\s+shapings?)?)"
_FEWER = rf"(?:is|are|measures?|has)\s+({N})\s+rows\s+(?:short(?:er)?|less|fewer)\s+(?:than|of)\s+"
_STOP = r"(?=\s*,\s*end|\s*[.;]|\s*$)"

AS_LONG: tuple[Synonym, ...] = (
    # --- the same as another part ---
    row(
        "rows",
        rf"\buntil\s+(?:(?:the\s+)?armholes?|{_OWN})\s+{_FEWER}{_OTHER}\s+{_UPTO}{_STOP}",
        r"until piece measures same as \2 to \3 less \1 rows",
        "Work even until front is 4 rows shorter than back to start of shoulder shaping.",
    ),
    row(
        "rows",
        rf"\buntil\s+(?:(?:the\s+)?armholes?|{_OWN})\s+{_FEWER}{_OTHER}{_STOP}",
        r"until piece measures same as \2 to shoulder less \1 rows",
        "Work even until front is 4 rows shorter than the back.",
    ),
    row(
        "rows",
        rf"(\bas\s+(?:for|on)\s+(?:the\s+)?(back|front|left\s+front|right\s+front)\s+until\s+)(?:you\s+are|there\s+are|the\s+work\s+is)\s+({N})\s+rows\s+(?:short\s+of|before|below|less\s+than)\s+(?:the\s+)?(?:(?:beg(?:inning)?|start)\s+of\s+(?:the\s+)?)?(shoulder|neck|armhole)s?(?:\s+shapings?)?{_STOP}",
        r"\1piece measures same as \2 to \4 less \3 rows",
        "Work as for the back until you are 6 rows short of the shoulder shaping.",
    ),
    # --- along the edge of an armhole ---
    row("armhole edge", rf"\buntil\s+(?:the\s+)?armhole\s+edge\s+(?:is|measures)\s+({LONG})(?:\s+long)?{_STOP}", r"until piece measures \1 from armhole edge", "Work in st st until the armhole edge measures 18 cm."),
    row(
        "armhole",
        rf"(\buntil\s+(?:the\s+)?(?:piece|work|it|back|front|body)\s+(?:is|measures)\s+{LONG})(?:\s+long)?\s*,?\s+(?:(?:measured|measuring)\s+)?(?:straight\s+)?(?:(?:down|up)\s+)?(?:along|at|on|down|up)\s+(?:the\s+)?armhole(?:\s+edge)?{_STOP}",
        r"\1 from armhole edge",
        "Work in st st until back measures 14 cm along the armhole edge.",
    ),
    row(
        "same length|same depth",
        rf"\buntil\s+(?:the\s+)?armholes?\s+(?:is|are|measures?)\s+{_SAME}{_BACK}(?:\s+to\s+(?:the\s+)?shoulders?)?(?=\s*,\s*end|\s*[.]|\s*$)",
        r"until armhole measures same as \1 to shoulder",
        "Work even until armhole is same length as on back, ending with a WS row.",
    ),
    row(
        "same length",
        rf"\buntil\s+(?:(?:the\s+)?(?:work|piece|it)\s+from\s+(?:the\s+)?(?:beg(?:inning)?|start|cast-on(?:\s+edge)?)\s+(?:is|measures)\s+)?{_SAME}{_BACK}\s+(?=(?:up\s+)?to\s+(?:the\s+)?(?:armhole|underarm|shoulder|neck|raglan))",
        r"until piece measures same as \1 ",
        "Cont even until work from beg measures same length as Back to armhole, ending with a purl row.",
    ),
    row(
        "rib",
        rf"((?:^|[.])\s*)(?:work\s+in\s+|work\s+|knit\s+)?(?:rib(?:bing)?\s+[(]?\s*(?=[^.]{{3,9}}[)\d]\s+(?:a?r|in))|(?=[^.]{{3,9}}\srib))(k)\s?(\d)\s*[,/]?\s*(p)\s?(\d)\s*[)]?(?:\s+rib(?:bing)?)?\s+(?:a?round|in\s+the\s+round)\s+(?=for\s+{LONG})",
        r"\1work in \2\3, \4\5 rib ",
        "K2 P2 rib around for 6 cm.",
    ),
    row(
        "but stop when|but only until|but stopping when",
        rf"\b(?:knit|work)\s+(?:it\s+)?(?:just\s+|exactly\s+)?(?:(?:the\s+)?same\s+as|like|as\s+for|as)\s+(?:for\s+)?(?:the\s+)?{_BACK}\s*,?\s*but\s+(?:stop(?:ping)?\s+when|only\s+until)\s+(?:the\s+)?(?:piece|work|it)\s+(?:is|measures)\s+({LONG})(?:\s+long)?",
        r"Work as for \1 until piece measures \2",
        "Work as for back, but stop when piece measures 12 cm.",
    ),
    row("garter-st|moss-st|seed-st|stocking-st|rib-st", r"\b(garter|moss|seed|stocking)-(st(?:itch)?)\b", r"\1 \2", "Work 4 rows in garter-stitch."),
    row("knit,", r"(^\s*|[.]\s*)knit(?:\s*,\s*(?:and\s+)?knit)+\s+(?=until\b)", r"\1knit ", "Knit, knit, knit until piece measures 12 cm."),
)  # fmt: skip
"""The rows for what is as long as another part, and for ribs, in the order tried; before a sentence is parted."""

MEASURED: tuple[Synonym, ...] = (
    # --- what a length may be instead ---
    said_row_behind(
        "you want|you like|you wish|you prefer",
        rf"(^\s*(?:knit|purl|work|cont(?:inue)?)\s+(?:for\s+)?{LONG})\s*,?\s+(?P<said>or\s+until\s+(?:the\s+|your\s+)?[a-z]+\s+is\s+(?:about\s+|approx\.?\s+)?{LONG}\s+(?:less|short(?:er)?)\s+than\s+you\s+(?:want|like|wish|prefer)(?:\s+it)?(?:\s+to\s+be)?)(?=\s*[.]|\s*$)",
        "Knit 20 cm or until the tee is about 7 cm shorter than you want it.",
    ),
    said_row_behind(
        "or until",
        rf"(\b(?:work|rep(?:eat)?)\s+[^.;,]*?\b{N}\s+{ROUND}(?:\s+(?:in|of)\s+[^.;,]*?)?)\s*,?\s+(?P<said>or\s+until\s+(?:the\s+|your\s+)?(?:yoke|body|sleeve|piece|collar|neckband|cuff|brim|rib|ribbing|hem|work|it|band|leg|flap|heel\s+flap)\s+(?:measures|is)\s+(?:about\s+|approx\.?\s+)?{LONG}(?:\s+long)?(?:\s+from\s+(?:the\s+)?(?:beg(?:inning)?|start|cast-on(?:\s+edge)?|co(?:\s+edge)?))?)(?=\s*[.]|\s*$)",
        "Work 18 rounds in rib, or until piece measures 6 cm from cast-on edge.",
    ),
    said_row(
        "all sizes", r"(?<=[a-z\"])\s*,\s*(?P<said>(?:for\s+)?all\s+sizes)(?=\s*[.]|\s*$)", "Continue straight until sleeve measures 40 cm, all sizes."
    ),
    # --- along which line, from where ---
    said_row_behind(
        "measur",
        rf"(\buntil\b[^.;]*?{LONG}(?:\s+from\s+[a-z -]{{3,30}}?)?)\s*,?\s+(?P<said>{_ALONG})(?=\s*,\s*end|\s*[.]|\s*$)",
        "Knit until sleeve measures 20 cm, measuring along the underarm.",
    ),
    row(" from ", rf"({LONG})\s*,\s+(?:(?:measured|measuring)\s+)?(?=from\s+(?:the\s+)?(?:cast|beg|start|under|marker|(?:end|top|back|base|tip)\s+of|rib))", r"\1 ", "Continue in pattern until foot measures 4 cm less than desired length, measured from the back of the heel."),
    row(
        "armhole",
        rf"(\buntil\s+(?:the\s+)?armholes?\s+measures?\s+{LONG})\s+(?:above|from)\s+(?:the\s+)?(?:(?:bound|cast)[-\s]off\s+(?:{STS}|edge)|(?:underarm\s+)?(?:bind|cast)[-\s]off)",
        r"\1",
        "Work even until armhole measures 5 in above bound-off sts.",
    ),
    said_row_behind(
        "same row",
        r"(\bto\s+(?:the\s+)?(?:armhole|shoulder|underarm|neck|raglan)s?(?:\s+shapings?)?)\s*,\s*(?P<said>ending\s+(?:with|on|after)\s+(?:the\s+)?same\s+(?:patt(?:ern)?\s+)?row(?:\s+of\s+(?:the\s+)?patt(?:ern)?)?)(?=\s*[.]|\s*$)",
        "Work in st st until front measures same as back to armhole shaping, ending with the same row.",
    ),
    row(
        "ending on",
        r"\bending\s+on\s+(?=(?:row|rnd|round)\s+\d)",
        "ending with ",
        "Work in rib for 6 cm, ending on a 2nd row.",
    ),
    # --- how it is worked until then ---
    row(
        "rem|these",
        rf"(^\s*|[.]\s*)((?:work|cont(?:inue)?)\s+(?:even\s+|straight\s+|in\s+patt(?:ern)?\s+)?)on\s+(?:(?:the|these)\s+(?:rem(?:aining)?\.?\s+)?|rem(?:aining)?\.?\s+)({N}\s+{STS})(?:\s+only)?\s*,?\s+((?:until|for)\s+(?!(?:the\s+)?(?:first|second|left|right)\b)[^.;]*)(?=[.;]|$)",
        r"\1\2\4. \3",
        "Work even on these 20 sts for 10 rows.",
    ),
    row(
        "on these|on the ",
        rf"(\bwork\s+{N}\s+{ROUND}(?:\s+in\s+{_FABRIC})?)\s+on\s+(?:these|the)\s+({N}\s+{STS})(?=\s*[.]|\s*$)",
        r"\1. \2",
        "Work 10 rows in rib on these 20 sts.",
    ),
    row("m.st", r"\bm\.\s?st\b\.?", "moss st", "Work in m.st for 4 cm."),
    said_row_behind("approx|about", rf"(\b(?:{LONG}|{_FABRIC}))\s*\(\s*(?P<said>=?\s*(?:approx\.?|approximately|about)\s+{N}\s+{ROUND})\s*\)", "Work 4 cm rib (= approx. 16 rnds)."),
    said_row_behind(
        "in the round|in rounds|in rnds",
        rf"(\b(?:cont(?:inue)?|work|knit)\s+(?:even\s+|straight\s+)?in\s+{STOCKINETTE})\s+(?P<said>in\s+(?:the\s+)?(?:rounds?|rnds?))(?=\s+(?:until|for)\b)",
        "Knit in stocking stitch in the round until the body measures 17 cm.",
    ),
    row(
        " row",
        r"(^\s*|[.]\s*)[(]\s*(knit\s+(?:1|one)\s+row)\.\s*(purl\s+(?:1|one)\s+row)\s*[)]\s*,?\s+(?=(?:until|for)\b)",
        r"\1\2. \3. rep last 2 rows ",
        "(K 1 row, P 1 row) until piece measures 9 inches.",
    ),
    # --- a stretch of a fabric ---
    row(
        "these|the ",
        rf"(\bwork\s+in\s+{_FABRIC})\s+on\s+(?:these|the)\s+({N}\s+{STS})\s+(for\s+{LONG})(?=\s*[.,;]|\s*$)",
        r"\1 \3. \2",
        "Work 3 cm in rib on these 20 sts.",
    ),
    row(
        "cm|in|\"",
        rf"\bwork\s+({LONG})\s+(?:(?:of\s+)?(?:work\s+in\s+)?|(?:even|straight)\s+in\s+)({_FABRIC})(?=\s*[.,;]|\s*$)",
        r"work in \2 for \1",
        "Work 3 cm moss stitch.",
    ),
    row(
        ",",
        rf"(\bwork\s+in\s+{_FABRIC}\s+for\s+{LONG}(?:\s*\([^()]*\))?)\s*,\s*(?:and\s+)?(?:then\s+)?(?=(?:change|work|knit|purl|cont)\b|(?:dec|inc)(?:rease)?\.?\s+{N}\s+{STS}\s+(?:at\s+)?(?:each|both)\b)",
        r"\1. ",
        "Work in rib for 2 in, change to larger needles.",
    ),
    row(
        "for the ",
        rf"(\bwork\s+in\s+{_FABRIC})\s+(?P<said>for\s+the\s+(?:yoke|body|sleeve|back|front|top|crown|leg|foot))\s*,\s*(?:even\s*,\s*)?(?=(?:until|for)\b)",
        r"\1 ",
        "Work in garter st for the yoke, without any shaping, until the armhole measures 8 cm.",
        spelt_out=True,
    ),
    row(
        "times (|more (",
        rf"(\btimes(?:\s+more)?)\s*\(\s*(?P<said>(?:about\s+|approx\.?\s+)?{LONG}(?:\s*[;,]\s*[a-z ]+)?)\s*\)(?=\s*[.]|\s*$)",
        r"\1",
        "Rep last rnd 24 more times (4 in; brim folds double).",
    ),
    # --- endings ---
    row(
        "end with|end on|end after",
        rf"(\brep(?:eat)?\b[^.;]*?\buntil\s+(?:there\s+are\s+|you\s+have\s+)?{N}\s+{STS}(?:\s+rem(?:ain)?)?)\.\s+end\s+(?:on|after|with)\s+((?:row|rnd|round)\s+\d+)(?=\s*[.]|\s*$)",
        r"\1. ends with \2",
        "Rep rows 3 and 4 until there are 60 sts. End with row 4.",
    ),
    row(
        "end on|end with|end after|finish",
        r"(\buntil\b[^.;]*?),?\s*(?:end|finish)\s+(?:on|after|with)\s+(?:a\s+)?(?:(right|wrong)[-\s]side(?:\s+row)?|(rs|ws)(?:\s+row)?)(?=\s*[.]|\s*$)",
        r"\1, ending with a \2\3 side row",
        "Work until piece measures 9 inches from start, end on wrong side.",
    ),
    row(
        "end with|end on|end after|finish with|finish on|finish after",
        rf"(\buntil\b[^.;]*?{LONG}[^.;]*)\.\s+(?:end|finish)\s+(?:on|after|with)\s+(?:an?\s+)?({_SIDE}|(?:row|rnd|round)\s+\d+)(?:\s+(?:as\s+before|again))?(?=\s*[.]|\s*$)",
        r"\1, ending with \2",
        "Continue in garter st until piece is 30 cm. End with a purl row.",
    ),
)  # fmt: skip
"""The rows, in the order tried."""
