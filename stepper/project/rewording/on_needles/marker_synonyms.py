"""Other wordings for markers - placed, removed, counted between - and for rounds written needle by needle. No I/O."""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import KEPT, ROUND, STS, N, Synonym, row

_NTH = r"(?:first|second|third|fourth|1st|2nd|3rd|4th|next|another|new|stitch)"
_ALL_BUT = r"(?:\s+(?:except|but)\s+(?:for\s+)?(?:the\s+)?(?:(?:one|marker|m)\s+(?:at|for|that\s+marks)\s+(?:the\s+)?)?(?:bor|(?:beg(?:inning)?|start)(?:\s+of\s+(?:the\s+)?(?:rnd|round))?|end\s+of\s+(?:rnd|round))(?:\s+(?:marker|m))?)?"
_AS_MET = r"(?:\s+(?:as\s+you\s+(?:come|get|go)(?:\s+to\s+them)?|as\s+you\s+(?:reach|encounter|pass|meet)\s+them|along\s+the\s+way))?"
_HEAD = r"(?:(?:on\s+)?(?:N|needles?\s*|ndls?\.?\s*)\d(?:\s*(?:,|and|&)\s*(?:N\s*|needles?\s*)?\d)*\s*:)"

_JOINED = rf"(?:knit|k|work)\s+(?:across\s+)?(?:(?:the\s+)?{N}\s+(?:{STS}\s+)?(?:of|from)\s+)?(?:the\s+)?(?:(?:left|right|first|second|other)\s+)?(?:front|back|sleeve|body)"

BETWEEN_PARTS: tuple[Synonym, ...] = (
    row(
        "front|back|sleeve|body",
        rf"(\b{_JOINED})\s*,\s*(?-i:M)(?=\s*(?:[,.;(]|$))",
        r"\1, pm",
        "Joining rnd: K 20 of left sleeve, M, k 20 of body, M.",
    ),
    row(
        "sleeve to|front to|back to|body to",
        r"(?<=[*,:]\s)(k|knit)\s+(?=(?:(?:left|right|first|second)\s+)?(?:sleeve|front|back|body)\s+to\s+(?:next\s+)?(?:m|marker)\b)"
        r"|(?<=\*)(k|knit)\s+(?=(?:(?:left|right|first|second)\s+)?(?:sleeve|front|back|body)\s+to\s+(?:next\s+)?(?:m|marker)\b)",
        r"\1\2 across ",
        "Next rnd: *K sleeve to m, sm, k1, ssk, k to 3 sts before next m, k2tog, k1, sm; rep from * once.",
    ),
    row(
        "front|back",
        r"((?:\bsm|slip\s+m(?:arker)?)\s*,\s*(?:k|knit)\s+)(?:the\s+)?(?P<said>(?:front\s*\(\s*back|back\s*\(\s*front)\s*\))(?=\s*;\s*rep\s+from\s+\*\s+once\b)",
        r"\1to marker",
        "Rnd 1: *Sm, k1, ssk, k to 3 sts before m, k2tog, k1, sm, k front (back); rep from * once.",
        spelt_out=True,
    ),
)
"""The parts of a yoke with their markers by their letter, before they are read; markers in a joining round."""

MARKERS: tuple[Synonym, ...] = (
    row(
        "remove",
        r"\bremove\s+(?:the\s+)?(?:next\s+|gusset\s+|thumb\s+|side\s+)?m\b(?!\s*\d)",
        "remove marker",
        "K to m, remove m, k to end.",
    ),
    row(
        "remove",
        r"\bremove\s+(?P<said>(?:the\s+)?(?:gusset|thumb|side|raglan|first|second|last))\s+marker\b",
        "remove marker",
        "K to marker, remove gusset marker, k to end.",
        spelt_out=True,
    ),
    row(
        "place|pm",
        rf"\b(?=(?P<said>place\s+(?:an?\s+|the\s+)?{_NTH}\s+markers?\b))place\s+(?:an?\s+|the\s+)?{_NTH}\s+marker\b",
        "pm",
        "K10, place first marker, k20, place second marker, k10.",
        spelt_out=True,
    ),
    row(
        "markers",
        r"((?:^|[.;!])\s*)(?:(?:the|all|these|any)\s+)*(?:(?:remaining|other|raglan|side|dart|gusset|shoulder|waist|thumb|stitch)\s+)?markers\s+(?:(?:may|can|should|must)\s+(?:now\s+|then\s+)?(?:be\s+(?:removed|taken\s+(?:out|off)|slipped\s+off)|come\s+out))(?=\s*[.!;]|\s*$)",
        r"\1remove markers",
        "Rnd 1: K10, pm, k10. The markers may be taken out.",
    ),
    row(
        "remov",
        r"\bremove\s+(?:(?:the|all|any|of)\s+)*(?:remaining|other|raglan|dart|shoulder|waist|old|extra)\s+markers\b",
        "remove markers",
        "Remove the remaining markers.",
    ),
    row(
        "remov",
        rf"^(\s*(?:(?:next|rnd|round|row)[^:]*:\s*)?)((?:knit|purl|work)\s+{N}\s+{ROUND}(?:\s+even)?|(?:knit|purl))\s*,?\s*(?:and\s+)?remov(?:e|ing)\s+(?:all\s+)?(?:the\s+)?markers?{_ALL_BUT}{_AS_MET}(?=\s*\.|\s*$)",
        r"\1remove markers. \2",
        "Knit 1 round, removing markers.",
    ),
    row(
        "remov",
        rf"\bremov(e|ing)\s+(?:all\s+)?(?:the\s+)?markers{_ALL_BUT}{_AS_MET}",
        r"remov\1 markers",
        "Knit to end, removing all markers as you come to them.",
    ),
    row(
        "marker|thread|yarn|pin",
        r"(?:(?<=^)|(?<=[.!]))\s*(?:place|put|hang|attach|insert|clip)\s+(?:an?\s+)?(?:removable|locking|split-?ring|coil-?less|detachable|safety)\s+"
        r"(?:stitch\s+)?(?:marker|pin)s?\s+(?:in|into|on|onto|at|around)\b[^.;:\d]*(?=[.;!]|$)",
        KEPT,
        "Place a removable marker in the fabric to mark the RS.",
    ),
    row(
        "mark",
        r"(?:(?<=^)|(?<=[.!]))\s*mark\s+(?:the\s+)?(?:rs|right\s+side|ws|wrong\s+side|front|back)(?:\s+of\s+(?:the\s+)?(?:work|fabric|piece))?"
        r"(?:\s+with\s+an?\s+[a-z -]+)?(?=\s*[.!]|\s*$)",
        KEPT,
        "Mark the right side of the work with a safety pin.",
    ),
)
"""The rows, in the order tried."""

NEEDLEWORK: tuple[Synonym, ...] = (
    row(
        "each of",
        rf"\b(?:divide|arrange|distribute|place|put)\s+({N})\s+{STS}\s+(?:on|onto|over)\s+each\s+of\s+(?:the\s+)?(two|three|four|five|[2-5])\s+(?:needles|dpns|double-pointed\s+needles)",
        r"divide over \2 needles. \1 sts on each needle",
        "Place 16 sts on each of 2 needles.",
    ),
    row(
        "needle|n1|n2",
        r"\s*[.;,]\s*(?=(?:on\s+)?(?:N|needles?\s*)\d(?:\s*(?:,|and|&)\s*(?:N\s*|needles?\s*)?\d)*\s*:)",
        "; ",
        "N1: Knit to last 3 sts, k2tog, k1. N2: K1, ssk, k to end.",
        again=True,
    ),
    row(
        "needle",
        rf"\b(to\s+(?:last\s+{N}\s+{STS}|last\s+{STS}|end))\s+(?:of|on)\s+(?:the\s+)?(?:needle\b(?:\s*\d)?|N\d)(?!\s*[^.*]*\brep)",
        r"\1",
        "N1: K to last 3 sts on needle, k2tog, k1; N2: k1, ssk, k to end of needle.",
    ),
    row(
        "needle|n2",
        rf"\*\s*([^*.]*?\bto\s+(?:last\s+(?:{N}\s+)?{STS}|end|{N}\s+{STS}\s+before\s+end)\b)(?:\s+(?:of|on)\s+(?:the\s+)?needle)?([^*.]*?)[;,]?\s*rep(?:eat)?\s+from\s+\*\s+"
        r"(?:on|for|across)\s+(?:the\s+)?(?:second|2nd|other)\s+needle\b",
        r"needles 1 and 2: \1\2",
        "*K1, m1r, knit to last st on needle, m1l, k1; rep from * on second needle.",
    ),
    row(
        "needle",
        rf"\*\s*([^*.]*?\bto\s+(?:last\s+(?:{N}\s+)?{STS}|end)\b)(?:\s+(?:of|on)\s+(?:the\s+)?needle)?([^*.]*?)[;,]?\s*rep(?:eat)?\s+from\s+\*\s+"
        r"(?:on|for|across)\s+(?:each|every)\s+(?:rem(?:aining)?\s+)?needle\b",
        r"each needle: \1\2",
        "*K to last 2 sts on needle, k2tog; rep from * on each needle.",
    ),
    row(
        "needle",
        r"\b(dec(?:rease)?)\s+(?:1|one)\s+st\s+at\s+(?=(?:the\s+)?(?:beg|end|start)\w*\s+of\s+(?:N|needles?\s*)\d)",
        r"\1 at ",
        "Dec 1 st at end of needle 1 and at beg of needle 2.",
    ),
    row(
        "needle|n1",
        rf"({_HEAD}\s*)work\s+(?:even\s+)?(?:in\s+(?:patt(?:ern)?|rib)|even)(?:\s+as\s+(?:set|established))?(?=\s*[;.,]|\s*$)",
        r"\1work in pattern to end",
        "N1: K1, ssk, k to end; N2: work in patt.",
        again=True,
    ),
)
"""The rows, in the order tried."""

_BEG: Final = r"(?:bor|(?:beg(?:inning)?|start)[-\s]of[-\s](?:(?:the|your)[-\s])?(?:rnd|round))"
_FOR_BEG: Final = rf"(?:for|to\s+mark|as)\s+(?:the\s+|your\s+|a\s+)?(?:new\s+)?{_BEG}"
_SPOT: Final = (
    r"(?:(?:the|your|left|right|front|back|side|cent(?:er|re)|middle|mid|underarm|underarms|first|body|of|between|at|seam|shoulder|sleeve|neck|raglan|steek|heel|sole|"
    r"foot|leg|hand|palm|thumb|line|point)\b\s*){1,7}(?<!\s)"
)
_MARK: Final = r"(?:markers?|m)\b"
_NEW_BEG: Final = rf"(?:this|here|it)\s+is\s+(?:now\s+)?(?:the|your)\s+(?:new\s+)?{_BEG}(?:\s+(?:from\s+now\s+on|from\s+here(?:\s+on)?))?(?:\s*,?\s+(?:at|in)\s+{_SPOT})?"
_KNITS: Final = rf"((?:(?<=^)|(?<=[.:,;]\s)|(?<=[.:,;]))\s*(?:k|knit)\s*{N})(?:\s+more)?(?:\s+{STS})?\s*(?:[,;]\s*(?:and\s+|then\s+)*|\s+and\s+(?:then\s+)?)"
_PUTS: Final = r"(?:pm|(?:re-?)?place|put|set|hang|move)"
_OF_ROW: Final = r"(?:place|put|hang|set)\s+(?:an?\s+|the\s+)?(?:(?:st|stitch|removable|locking|contrasting)\s+)?markers?\s+(?:at|on)\s+(?:each|both)\s+(?:ends?|edges?|sides?)\s+of\s+(?:the\s+)?(?:last|this)\s+row|mark\s+(?:each|both)\s+(?:ends?|edges?|sides?)\s+of\s+(?:the\s+)?(?:last|this)\s+row"
_FOR_WHAT: Final = r"(?:(?:for|to\s+(?:show|mark|denote|indicate))\s+(?:the\s+)?(?:(?:beg(?:inning)?|start|position|base|bottom|top|end|placement)\s+of\s+(?:the\s+)?)?(?:armholes?|sleeves?|side\s+(?:seams?|openings?|slits?)|shoulders?|underarms?|seams?|pockets?|neck)(?:\s+(?:placement|openings?|shapings?))?)"

PLACED: tuple[Synonym, ...] = (
    # --- what a marker is called ---
    row("m", r"\b(place|slip|sl|remove|replace)\s+(?:(?:the|a|an|your)\s+)?(?:(?:gusset|thumb|side|stitch|st|new|first|second|next|contrasting|raglan|other)\s+)?m(?=\s*[,.;:)]|\s*$|\s+and\b|\s+for\b)", r"\1 marker", "Next rnd: K20, place gusset m, m1l, place m, k to end."),
    row("marker", r"\b(place\s+)(?:your|(?:a|the)\s+(?:contrasting|different(?:[-\s]colou?red)?|colou?red|gusset|thumb|side|raglan|underarm|locking|removable))\s+(?=marker\b(?!\s+(?:in|on|into|around)\b))", r"\1", "K20, place a contrasting marker, k20."),
    # --- where the round begins ---
    row("mark", rf"((?:^|[.;!])\s*)mark\s+(?:the\s+)?(?:middle|cent(?:er|re))\s+of\s+(?:the\s+)?underarm(?:\s+{STS})?\s*(?:=|-|,)?\s*(?:as|for|(?:this|which|it)\s+is)?\s*(?:the\s+|your\s+)?(?:new\s+)?{_BEG}(?=\s*[.;]|\s*$)", r"\1place marker for BOR in the middle of the underarm sts", "Mark the middle of the underarm = BOR."),
    row("this|here|it", rf"(?:^\s*|(?<=[:]\s))(?:remove\s+(?:the\s+)?(?:{_BEG}\s+)?{_MARK}\s*,\s*)?(?:k|knit)\s*({N})(?:\s+(?:heel\s+)?{STS})?(?:\s+to\s+(?:the\s+)?(?:middle|cent(?:er|re))\s+of\s+(?:the\s+)?(?:heel|back|underarm|sole))?(?:\s*(?:,\s*(?:and\s+)?|\s+and\s+)(?:pm|(?:re-?)?place\s+(?:the\s+|a\s+)?(?:{_BEG}\s+)?{_MARK})|(?=[.;,]\s*(?:this|here|it)\s+is\s+(?:now\s+)?(?:the|your)\s+new\b))\s*[:;,.(-]+\s*(?P<said>{_NEW_BEG}(?:\s*[-,;:.]+\s*(?:(?:place|put)\s+(?:a|your|the)\s+)?marker\s+here)?)\)?(?=\s*\.?(?:\s*$|\s*{N}\s+{STS}))", r"K\1, pm for new BOR", "Remove BOR marker, k4, replace BOR marker; this is the new beginning of round.", spelt_out=True),
    row("bor|beg|start", rf"{_KNITS}{_PUTS}\s+(?:(?:a|the|your)\s+)?(?:new\s+)?{_BEG}\s+{_MARK}(?:\s+(?:here|there|to\s+this\s+(?:point|place|spot)))?(?:\s*,?\s+(?P<said>(?:at|in)\s+{_SPOT}))?(?=\s*[.;]|\s*$)", r"\1, pm for new BOR", "Knit 4 sts and place your BOR marker here, in the middle of the underarm.", spelt_out=True),
    row("replace", rf"^(\s*)remove\s+(?:the\s+)?(?:{_BEG}\s+)?{_MARK}\s*,\s*(?:k|knit)\s*({N})(?:\s+{STS})?\s*,\s*(?:and\s+)?replace\s+(?:the\s+)?(?:{_BEG}\s+)?{_MARK}(?=\s*\.?\s*$)", r"\1K\2, pm for new BOR", "Remove marker, knit 4, replace marker."),
    row("bor|beg|start", rf"\b{_PUTS}\s+(?:(?:a|the|your)\s+)?{_BEG}\s+{_MARK}(?:\s+here)?", "pm for BOR", "Place BOR m."),
    row("join", rf"\b(join(?:\s+(?:to|for)\s+work(?:ing)?)?\s+in\s+(?:the\s+)?(?:rnd|round)s?)\s*(?:,\s*(?:and\s+)?|\s+and\s+)(?:pm|plac(?:e|ing)\s+(?:(?:a|the|your)\s+)?{_MARK})\s+(?:{_FOR_BEG}|(?P<said>(?:on|in|around|before)\s+(?:the\s+)?first\s+{STS}))(?=\s*[.;]|\s*$)", r"\1. Pm for BOR", "Join in rnd, placing a marker on first st.", spelt_out=True),
    said_row_behind("marker", r"(^\s*|[.]\s*)(?P<said>(?:always\s+)?slip\s+(?:(?:the|all|each|every|your)\s+)*markers?\s+(?:throughout|(?:as|when|whenever)\s+you\s+(?:come\s+to|reach|meet|get\s+to|encounter)\s+(?:it|them|one))(?:\s*,?\s+(?:unless|except\s+where)\s+(?:told|instructed|directed|stated)\s+otherwise)?)(?=\s*[.;!]|\s*$)", "Slip all markers when you reach them."),
    row("each side|both sides", rf"\b(?:insert|place|put|set|hang)\s+an?\s+(?:marker\s+thread|marker)\s+(?:on|at|in)\s+(?:each|both)\s+sides?\s*,?\s+so\s+(?:that\s+)?there\s+are\s+({N})\s+{STS}\s+(?P<said>(?:both\s+)?(?:on|for)\s+(?:the\s+)?(?:top\s+of\s+the\s+foot|front|back)\s+and\s+(?:(?:under|on|for)\s+)?(?:the\s+)?(?:foot|sole|front|back))(?=\s*\.?\s*$)", r"place markers in turn after \1 sts", "CO 56 sts. Join in the round. Insert a marker on each side so that there are 28 stitches both on top of the foot and under the foot.", spelt_out=True),
    # --- the ends of a row ---
    said_row_behind("each|both", rf"(\b(?:{_OF_ROW}))(?:\s+with\s+(?:a\s+)?(?:waste\s+yarn|(?:contrasting|colou?red)\s+(?:thread|yarn)|threads?|markers?))?\s+\(?(?P<said>{_FOR_WHAT})\)?(?=\s*[.;]|\s*$)", "Place a marker at each end of last row for beg of armholes."),
)  # fmt: skip
"""The rows for lines that nothing else reads, in the order tried."""

_MARKED_ST: Final = r"(?:the\s+|this\s+|your\s+)?(?:(?:marked\s+(?:cent(?:er|re)\s+)?|cent(?:er|re)\s+marked\s+)st(?:itch)?|st(?:itch)?\s+(?:with\s+the\s+marker|you\s+(?:have\s+)?marked))\b"
_MARKING: Final = r"mark(?:ing)?\s+(?:it|this(?:\s+one)?|the\s+last|that)(?:\s+st(?:itch)?)?(?:\s+with\s+(?:a\s+)?(?:removable\s+|locking\s+|stitch\s+)*(?:marker|pin|thread))?"

_WHAT_FOR: Final = r"(?:\s*,?\s*(?P<said>(?:to\s+(?:mark|show|indicate|divide|separate)|for|showing|marking|where)\b(?!\s+(?:\d|each|every|both))[^.;:,\d]*))?"
_ONE_MARKER: Final = r"(?:(?:place|put|hang|attach|insert|clip)\s+(?:an?\s+)?(?:(?:removable|locking|coil-?less|stitch|contrasting|colou?red|new)\s+)*(?:markers?|pins?|(?:marker\s+)?threads?))"
_EDGES: Final = r"(?:(?:each|both)\s+(?:sides?|edges?|ends?))"

MARKINGS: tuple[Synonym, ...] = (
    # At both edges of a piece in rows: the row is marked. No stitch is worked.
    row("mark", rf"(^\s*|[.!]\s+)(?:{_ONE_MARKER}\s+(?:at|on|in|to)\s+{_EDGES}|mark\s+{_EDGES})(?:\s+of\s+(?:the\s+)?(?:work|piece|knitting|fabric|back|front))?(?:\s+with\s+(?:an?\s+)?(?:(?:removable|locking|stitch|contrasting|colou?red)\s+)*(?:markers?|pins?|threads?|yarn))?{_WHAT_FOR}(?=\s*[.;]|\s*$)", r"\1mark each end of last row", "Mark both edges with a removable marker."),
    row("mark", rf"(^\s*|[.;!]\s+)(?:(?:on|in)\s+(?:the\s+)?(?:first|next|1st|set-?up)\s+{ROUND}\s*,?\s*)?{_ONE_MARKER.replace('new', 'new|second|side|2nd|another')}\s+after\s+(?:the\s+)?(?:first\s+)?({N}\s+{STS}){_WHAT_FOR}(?=\s*[.;]|\s*$)", r"\1place markers in turn after \2", "CO 40 sts. Join in the round. Place a marker after 16 sts, to divide front from back."),
    *(
        row("one|another|second", rf"{before}{_ONE_MARKER}\s+(?:at|for)\s+(?:the\s+)?(?:beg(?:inning)?|start)(?:\s+of\s+(?:the\s+)?(?:rnd|round))?(?:\s*,\s*(?P<said>(?:at\s+)?(?:the\s+)?(?:left|right)\s+(?:underarm|side))\s*,)?\s+and\s+(?:one|another|a\s+second)(?:\s+one)?\s+after\s+(?:the\s+)?(?:next\s+|first\s+)?({N}\s+{STS})(?:\s*(?:=|for)\s*(?:the\s+)?sides?(?:\s+seams?)?)?(?=\s*[.;]|\s*$)", words, example, spelt_out=True)
        for before, words, example in (
            (r"(^\s*|[.;!]\s+)", r"\1place markers in turn after \3", "Put a thread at the beginning and one after 20 sts = the sides."),
            (r"(\bjoin\s+(?:in|into)\s+(?:the\s+|a\s+)?(?:rnd|round))\s*,\s*(?:and\s+)?", r"\1. Place markers in turn after \3", "Join into a round, place marker at start, left underarm, and another after 20 sts."),
        )
    ),
)  # fmt: skip
"""The rows for markers that show a place, tried on lines that nothing else reads."""

MARKED_STITCHES: tuple[Synonym, ...] = (
    # The marker hangs before the stitch, as seen from the right side.
    row("mark", rf"(^\s*|[,:]\s*(?:and\s+|then\s+)*)([kp]\s*1|(?:knit|purl)\s+(?:1|one)(?:\s+st(?:itch)?)?)\s*(?:[(,]\s*|\band\s+)(?:and\s+)?{_MARKING}\s*\)?(?=\s*[,.;]|\s*$|\s+and\b)", r"\1pm for marked st, \2", "Set-up rnd: K20, k1 (mark this st), k to end."),
    row("marked|mark", rf"\b(to\s+(?:{N}\s+(?:{STS}\s+)?(?:before|from)\s+)?)(?:you\s+reach\s+)?{_MARKED_ST}", r"\1the marked marker", "Rnd 2: Knit to 1 st before the marked st, s2kp, k to end."),
    row("marked|mark", rf"(\bthe\s+marked\s+marker\b[^.]*?)\b(knit|k|purl|p)\s+{_MARKED_ST}", r"\1\2 1", "Rnd 2: Knit to the marked st, yo, knit the marked st, yo, k to end."),
    row("rib to", rf"\b(?:rib|patt|work(?:\s+in\s+rib)?)(?=\s+to\s+(?:{N}\s+(?:{STS}\s+)?before\s+)?the\s+marked\s+marker\b)", "work in pattern", "Rnd 2: Rib to 1 st before the marked st, s2kp, rib to end."),
)  # fmt: skip
"""The rows for a stitch that is marked and worked to, tried on lines that nothing else reads."""
