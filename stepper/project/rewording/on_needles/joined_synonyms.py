"""Other wordings that join what is worked one after the other, or end it where a row is named. No I/O."""

from __future__ import annotations

from stepper.craft.needles import SIZE
from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import CUT_YARN, END, HELD_BY, ROUND, STS, YARN, N, Synonym, row

_PLAIN = r"(?:st\.?\s?st\.?|stockinette(?:\s+st(?:itch)?)?|stocking(?:\s+st(?:itch)?)?|garter(?:\s+st(?:itch)?)?)"
_ENDING = r",?\s*(?:and\s+)?(?:end|ending|finish|finishing)\s+(?:with|on|after)\s+(?:an?\s+)?"
_LASTED = rf"(?:{ROUND}|times(?:\s+more)?|more|once|twice|straight|even|{STS}(?:\s+(?:rem(?:ain)?|left))?|rem(?:ain)?|between\s+(?:the\s+)?markers|in\s+{_PLAIN})"
_BEGUN = r"(?:beg(?:inning|in)?|start(?:ing)?)\s+(?:with|on)\s+an?"
_KNIT, _PURL = r"(?:rs|k|knit)\s+row", r"(?:ws|p|purl)\s+row"
_ENDS = r"at\s+(?:each|both)\s+ends?\s+of"
_SIZED = rf"(?:{SIZE}|smaller|larger)\s+(?:(?:circular|double-pointed)\s+)?(?:needles?|dpns?)"
_NEEDLE = r"(?:N|needle\s*)"
_MANNER = r"(?:in\s+)?(?:this|the\s+same|that)\s+(?:manner|way|fashion)"
_WHICH = r"(?:foll(?:owing)?\s+)?(?:other|alt(?:ernate)?|2nd|second)"
_ON_WITH = r"(?:cont(?:inue)?|work|keep\s+on|carry\s+on)"
_SHAPED = rf"^(\s*){_ON_WITH}\s+{_MANNER}\s*,\s*(inc|dec)(?:reas(?:e|ing))?\.?\s+({N}\s+{STS})\s+every"
_CROSSED = rf",?\s*(?:and\s+)?at\s+the\s+same\s+time\s*,?\s*(cross(?:ing)?\s+(?:the\s+)?cables?\s+every\s+\w+\s+{ROUND})"
_UNTIL = rf"\s*,?\s*(until\s+(?:there\s+are\s+|you\s+have\s+)?{N}\s+{STS}[^.;,]*?){END}"

JOINED: tuple[Synonym, ...] = (
    # --- joined in the round ---
    row(
        "join",
        r"\bjoin(?:\s+(?:to\s+work\s+|for\s+working\s+)?in\s+(?:the\s+)?(?:rnd|round)s?)?\s*,?\s*and\s+(?=(?:k|knit|p|purl|work)\b)",
        "join in the round. ",
        "CO 20 sts. Join and work 4 rnds in k1, p1 rib.",
    ),
    said_row_behind(
        "bor|beg|start|cent",
        r"\b((?:pm|place\s+(?:an?\s+)?(?:\w+\s+)?marker))\s*\(\s*(?P<said>(?:(?:bor|beg(?:inning)?|start|end)(?:\s+of\s+(?:the\s+)?(?:rnd|round))?|cent(?:er|re)\s+back|back\s+cent(?:er|re)|side|underarm|[\s,/])+)\s*\)",
        "Join in the round and place marker (BOR, centre back).",
    ),
    row("join", rf"\b((?:cast\s+on|co)\s+{N}\s+{STS})\s*;\s*(?=join\b)", r"\1. ", "CO 20 sts; join."),
    row(
        "facing",
        rf"(?<=:\s)(with\s+(?:the\s+)?(?:rs|ws|right\s+side|wrong\s+side)\s+facing)\s*,?\s*and\s+({_SIZED})\s*,?\s+(?=pick\b|k\b|knit\b|rejoin\b)",
        r"change to \2. \1, ",
        "Neckband: With RS facing and 4 mm needles, pick up and k 20 sts along edge.",
    ),
    row(
        "using|with",
        r"(?<=,)\s*(?P<said>(?:using|with)\s+(?:the\s+|an?\s+)?[a-z-]+(?:\s+[a-z-]+){0,2}\s+(?:method|cast-?on|technique))\s+(?=(?:cast\s+on|co)\s+\d)",
        " ",
        "K10, using backward loop method cast on 4 sts, k to end.",
    ),
    row(
        "(",
        rf"\b((?:{STS}\s+)?(?:on|onto|to)\s+{HELD_BY})\s*\(\s*(?:for\s+)?(?:the\s+)?((?:left|right|front|back|body|sleeve|yoke|heel|instep|thumb|hood|neck)(?:\s+(?:front|back|sleeve|side|thumb))?)\s*\)",
        r"\1 for \2",
        "K9, place next 12 sts on waste yarn (left sleeve), k to end.",
    ),
    row(
        "row|rnd|round",
        r"^(\s*[a-z][a-z -]{2,30}(?:\([^():]{1,60}\)\s*)?:\s*)(\d+)(?:st|nd|rd|th)\s+(row|rnd|round)\s*(?=:|\()",
        r"\1\3 \2",
        "Shape crown: 1st row: K1, k2tog, k to end.",
    ),
    row(
        "change|switch",
        rf"\b((?:change|switch)\s+to\s+(?:the\s+)?{_SIZED})\s+and\s+(?:(?:to|with|yarn)\s+)*({YARN})(?=\s*[.,;]|\s*$)",
        r"\1. With \2",
        "Change to larger needles and CC.",
    ),
    row(
        "change|switch",
        rf"\b((?:change|switch)\s+to\s+)({YARN})\s+and\s+(?:to\s+)?(?:the\s+)?({_SIZED})",
        r"\1\3. With \2",
        "Switch to MC and larger needles.",
    ),
    row(
        "join",
        rf"\b(pick\s+up\s+and\s+(?:knit|k)\s+{N}\s+{STS}(?:\s+(?:in|over|across|at|along)\s+(?:the\s+)?(?:gap|underarm|thumb|opening|cast-?on|edge))?)\s*,?\s*(?:and\s+)?(?=join\b(?!\s+yarn))",
        r"\1. ",
        "Pick up and knit 2 sts in gap, join in the round.",
    ),
    # --- a fabric and its rows ---
    row(
        "change",
        rf"\b(?:change|switch)\s+to\s+({_PLAIN})\s*,?\s*and\s+work\s+({N}\s+{ROUND})",
        r"work \2 in \1",
        "Change to st st and work 4 rows.",
    ),
    row(
        "row",
        rf"^(\s*)({_BEGUN}\s+(?:{_KNIT}|{_PURL}))\s+(?=(?:work|cont(?:inue)?)\b)",
        r"\1\2, ",
        "Beg with a K row work 6 rows in st st.",
    ),
    *(
        row(
            "row",
            rf"^(\s*)(?:work|cont(?:inue)?)\s+in\s+({_PLAIN})\s*,\s*{_BEGUN}\s+{told}\s*,?\s*(?:and\s+)?work\s+({N}\s+{ROUND})",
            rf"\1next row ({side}): work \3 in \2",
            f"Cont in st st, beg with a {how} row, and work 4 rows.",
        )
        for side, how, told in (("rs", "k", _KNIT), ("ws", "p", _PURL))
    ),
    row("g", r"\bg\.?\s?st\b\.?(?=\s|,|;|$)", "garter st", "Work 4 rows in g st."),
    row(
        "rib",
        rf"\brib\s+({N})\s+more\s+({ROUND})",
        r"work \1 more \2 in rib",
        "Rib 2 more rows.",
    ),
    said_row_behind(
        "across all",
        rf"\b((?:knit|purl|k|p)\s*{N}\s+{ROUND})\s+(?P<said>across\s+all\s+{STS})(?=\s*[.,;]|\s*$)",
        "P 1 row across all sts.",
    ),
    said_row_behind(
        "for",
        rf"\b((?:knit|purl|k|p)\s*{N}\s+{ROUND})\s+(?P<said>for\s+(?:the\s+)?(?:hem\s?line|fold(?:\s?line)?|hem|turning\s+(?:ridge|line|row|rnd|round)|ridge))"
        r"(?=\s*[.,;]|\s*$)",
        "P 1 rnd for hemline.",
    ),
    row(
        "change|switch",
        rf"^(\s*)(?:change|switch)\s+to\s+({YARN})\s*:\s*(?=(?:k|p|knit|purl|work)\b)",
        r"\1with \2, ",
        "Change to CC: k 1 rnd, p 1 rnd.",
    ),
    # --- repeats ---
    row(
        "rep",
        r"\b(rep(?:eat)?)\s+(?:the\s+)?(\d+)(?:st|nd|rd|th)\s+(row|rnd|round)\b",
        r"\1 \3 \2",
        "Rep 1st row 5 times more.",
    ),
    row(
        "then",
        rf"(\b(?:times(?:\s+more)?|more|once|twice))\s*,?\s*(?:and\s+)?then\s+(?:(?:rep(?:eat)?|work)\s+)?({ROUND}\s+\d+)\s+(?:again|once\s+more|once)(?=\s*[.]|\s*$)",
        r"\1. work \2 once more",
        "Rep last 2 rows 3 times more, then row 1 once more.",
    ),
    row(
        "then",
        r"(\b(?:times(?:\s+more)?|more|once|twice))\s*,?\s*(?:and\s+)?then\s+(?:rep(?:eat)?\s+)?((?:[a-z]+\s+)?(?:dec|inc)\s+(?:rnd|round|row)\s+(?:on\s+)?(?:every|each)\b)",
        r"\1. rep \2",
        "Rep last 2 rnds twice more, then dec rnd every rnd until 12 sts rem.",
    ),
    row(
        "then",
        rf"(\b{_ENDS}\s+[^.;]*?,\s*then)\s+{_ENDS}\s+(?=every|each|next|foll|alt)",
        r"\1 on ",
        "Dec 1 st at each end of every row until 20 sts rem, then at each end of every alt row until 14 sts rem.",
    ),
    row(
        "way|manner",
        rf"^(\s*)(inc|dec)(?:rease)?\s+{_MANNER}\s+((?:on\s+)?(?:every|each)\s+\S+\s+(rnd|round|row))\b",
        r"\1work \2 \4 \3",
        "Inc in this way every 3rd rnd 3 times.",
    ),
    row(
        "end",
        r"\*((?:[^*;]*?,\s*)?)(([kp])\s?\d+)[;,]\s*(rep(?:eat)?\s+from\s+\*)\s*,?\s*end(?:ing)?\s+(?:the\s+)?last\s+rep(?:eat)?\s+(?:with\s+)?(\3\s?\d+)(?=\s*\.?\s*$)",
        r"*\1\2; \4, \1\5",
        "K3, *p2, k2; rep from *, end last rep k3.",
    ),
    row(
        "*",
        r"^(\s*)rep(?:eat)?\s+from\s+(\*{2,4})\s+to\s+(\*{2,4})\s+(?=\S)",
        r"\1again from \2 to \3 ",
        "Rep from ** to ** twice more.",
    ),
    row(
        "from *",
        rf"^(\s*)rep(?:eat)?\s+from\s+(\*{{1,4}})\s+(?=(?:{N}\s+)?(?:more\s+)?times\b|once\b|twice\b)",
        r"\1again from \2 ",
        "Rep from ** twice more.",
    ),
    row(
        "needle|n3|n4",
        rf"\b({_NEEDLE}(\d))\s*:\s*([^;:]{{0,160}}?)\s*((?:[.;]\s*{_NEEDLE}.{{0,480}}?)?)\s*[.;]?\s*{_NEEDLE}(\d)\s*:\s*(?:work\s+)?(?:as|same\s+as)\s+(?:for\s+)?{_NEEDLE}\2\b",
        r"needles \2 and \5: \3\4",
        "N1: K to last 3 sts, k2tog, k1; N2: k1, ssk, k to end; N3: as N1; N4: as N2.",
        again=True,
    ),
    row(
        "each of",
        r"\barrange\s+(?:the\s+)?(?:sts|stitches)\s+with\s+(\d+)\s+(?:sts|stitches)\s+on\s+each\s+of\s+(three|four|five|[2-5])\s+needles(?:\s*,?\s*and\s+(?=join\b))?",
        r"divide over \2 needles. \1 sts on each needle. ",
        "Arrange sts with 8 sts on each of 4 needles and join in the rnd.",
    ),
    # --- endings ---
    row(
        "row|rnd|round|rs|ws",
        rf"(\b(?<!last )(?<!next ){_LASTED}){_ENDING}(?=(?:rs|ws|right[-\s]side|wrong[-\s]side|k|knit|p|purl)\b(?:\s+row)?(?=\s*[.]|\s*$)|{ROUND}\s+\d+(?=\s*[.]|\s*$))",
        r"\1. ends with a ",
        "Work 5 rows straight, ending with a WS row.",
    ),
    row(
        "last row",
        rf"^(\s*rep(?:eat)?\s+(?:(?:the\s+last|last|these|those)\s+(?:{N}\s+)?)?{ROUND}(?:\s+[\d\s,and-]*\d)?\s+(?:{N}\s+times(?:\s+more)?|{N}\s+more\s+times|once(?:\s+more)?|twice(?:\s+more)?))\s*,\s*"
        rf"((?:inc|dec)(?:reas(?:e|ing))?\.?\s+{N}\s+{STS}\s+evenly)(?:\s+(?:across|over|on|in))?\s+(?:the\s+)?last\s+(?:row|rnd|round)\b",
        r"\1 but the last. work 1 row in pattern, \2",
        "Rep last 2 rows 2 times more, dec 2 sts evenly across last row.",
    ),
    row(
        "last row",
        rf"^(\s*rep(?:eat)?\s+(?:(?:the\s+last|last|these|those)\s+(?:{N}\s+)?)?{ROUND}(?:\s+[\d\s,and-]*\d)?\s+(?:{N}\s+times(?:\s+more)?|{N}\s+more\s+times|once(?:\s+more)?|twice(?:\s+more)?))\s*,\s*"
        rf"((?:inc|dec)(?:reas(?:e|ing))?\.?\s+{N}\s+{STS}\s+{_ENDS})\s+(?:the\s+)?last\s+row\b",
        r"\1 but the last. \2 next row",
        "Rep last 2 rows once more, inc 1 st at each end of last row.",
    ),
    row(
        "cent|middle",
        rf"\b(?P<rows>work\s+{N}\s+rows?\s+(?:in|of)\s+[^.;]*?,\s*)(inc|dec)(?:reas(?:e|ing))?\.?\s+(?:1|one)\s+st(?:itch)?\s+(?P<said>(?:in|at)\s+(?:the\s+)?(?:cent(?:er|re)|middle)"
        r"\s+of\s+(?:the\s+)?last\s+row)(?=\s*[.]|\s*$)",
        r"\1\2 1 st evenly",
        "Work 5 rows in k1, p1 rib, inc 1 st in centre of last row.",
        spelt_out=True,
    ),
    # --- shaping that goes on ---
    row(
        "other|alt|2nd|second",
        rf"{_SHAPED}\s+{_WHICH}\s+({ROUND}){_UNTIL}",
        r"\1repeat last 2 \4 \5. at a pace of \2rease \3 every 2nd \4",
        "Continue in this manner, inc 2 sts every other rnd, until there are 26 sts.",
    ),
    row(
        "cross",
        rf"{_SHAPED}\s+{_WHICH}\s+({ROUND}){_CROSSED}{_UNTIL}",
        r"\1repeat last 2 \4 \6, \5. at a pace of \2rease \3 every 2nd \4",
        "Cont in this manner, inc 2 sts every other rnd and at the same time crossing cable every 8th rnd, until there are 26 sts.",
    ),
    row(
        "each end",
        rf"^(\s*(?:next\s+row\s*(?:\([rw]s\))?\s*:\s*)?)(k2tog|p2tog|ssk)\s+{_ENDS}\s+(?:the\s+)?next\s+row\b",
        r"\1\2, work in pattern to last 2 sts, \2",
        "K2tog at each end of next row.",
    ),
    # --- numbers ---
    said_row_behind(
        "provisional",
        rf"\b((?:cast\s+on|co)\s+{N}\s+{STS})\s+(?P<said>provisionally)\b",
        "Cast on 20 sts provisionally.",
    ),
    row(
        "through",
        rf"^(\s*{CUT_YARN}\s*,?\s*(?:and\s+)?(?:draw|pull|thread|run|pass)\s+(?:(?:the\s+)?(?:yarn|tail|end|it)\s+)?(?:twice\s+)?through\s+(?:the\s+)?(?:rem(?:aining)?\s+)?)({N})\s+({STS})",
        r"\2 \3. \1 \3",
        "Cut yarn, thread through rem 20 sts and pull tight.",
    ),
    row(
        "remov",
        r"(?<=[a-z0-9)])\s+(?=removing\s+(?:the\s+|all\s+)*markers?\b)",
        ", ",
        "K10, hold 4 sts for thumb removing markers, k to end.",
    ),
)
"""The rows, in the order tried."""
