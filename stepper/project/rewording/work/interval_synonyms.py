"""Other wordings for how far apart changes are, where a row spreads them, and what is counted behind. No I/O.

"On the 5th row, then every 8th row 7 times" is one row after five and seven more, eight apart: two intervals, one
behind the other. A second count of a sentence becomes a sentence of its own, which is checked. Source: the
wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from stepper.project.rewording.synonym import OFF, ROUND, STS, N, Synonym, row

_NTH = r"(?:\d+(?:st|nd|rd|th)(?:\s*[(\[](?:\s*\d+(?!\d)(?:st|nd|rd|th)?\s*,?)+[)\]])?|third|fourth|fifth|sixth|eighth|tenth)"
_EDGE = r"(?:neck|armhole|raglan|front|side)\s+edges?"
_ENDS = r"(?:at\s+)?(?:each|both)\s+(?:ends?|sides?)"
_START = r"(^\s*|[.!:;,]\s*|\b(?:and|time)\s+)"
_MANNER = r"(?:in\s+(?:this|the\s+same|that)\s+(?:manner|way|fashion)|as\s+(?:set|established|before)|thus)"
_OR_LEFT = r"(?:\s+(?:rem(?:ain)?|(?:are\s+)?left)\b)?"
_GO_ON = r"(?:cont(?:inue)?|go\s+on|carry\s+on|keep(?:\s+on)?)\s+(?:to\s+)?dec(?:reas(?:e|ing)|\.)?"
_LESS = rf"(?:working|having|with|knitting|leaving)\s+(?:1|one)\s+{STS}\s+(?:less|fewer)\s+between\s+(?:the\s+)?dec(?:rease)?s"
_EVERY = r"(?:every|each)\s+(?:(?:other|alt(?:ernate)?|rs|right[-\s]side|2nd|second|ws)\s+)?(?:row|rnd|round)"
_YARN = r"(?:MC|CC\d?|[A-Z])"

INTERVALS: tuple[Synonym, ...] = (
    # --- decreases at the ends of rows ---
    row(
        "then",
        rf"(\bat\s+beg(?:inning)?\.?\s+of\s+(?:the\s+)?next\s+{N}\s+rows)\s*,?\s*(?:and\s+)?then\s+(?=(?:k2tog|dec|inc|work|cont)\b)",
        r"\1. ",
        "Cast off 6 sts at beg of next 2 rows, then k2tog at both ends of every row until 40 sts rem.",
    ),
    row(
        "edge",
        rf"(\b(?:bo|{OFF})\s+{N}\s+{STS}\s+at\s+(neck|armhole|front|side)\s+edge\s+(?:{N}\s+times|once|twice))\s*,?\s*(?:and\s+)?(?:then\s+)?((?:dec|inc)(?:rease)?\.?\s+{N}\s+{STS})\s+(?:at\s+(?:the\s+)?(?:same|that)\s+edge\s+)?(?=(?:on\s+)?(?:every|each)\s)",
        r"\1. \3 at \2 edge ",
        "At neck edge, bind off 4 sts once, then dec 1 st every other row 3 times.",
    ),
    row(
        "cont",
        rf"(^\s*|[.!]\s*)cont(?:inue)?\s+(?:to\s+)?(?:(dec)|(inc))(?:reas(?:e|ing)|\.)?\s+(?:1|one)\s+{STS}\s+{_ENDS}\s+(?:(?:of|on)\s+)?(?=(?:every|each)\s[^.;]*?\b(row|rnd|round)s?\b)",
        r"\1rep alike \2\3 \4 ",
        "Cont to dec 1 st at each end of every RS row until 20 sts rem.",
    ),
    row(
        "cont",
        rf"{_START}cont(?:inue)?\s+(?:to\s+)?(dec|inc)(?:reas(?:e|ing)|\.)?\s+(?={N}\s+{STS}\s+at\s+(?:the\s+)?{_EDGE}\b(?![^.]*\bas\s+(?:set|before|established)\b))",
        r"\1\2 ",
        "Cont to dec 1 st at neck edge on every 4th row until 20 sts rem.",
    ),
    row(
        "before and after",
        rf"(\b(?:inc|dec)(?:rease|reasing)?\.?\s+{N}\s+{STS})\s+before\s+and\s+after\s+(?:the\s+)?(?=marker\b)",
        r"\1 at each side of ",
        "Inc 1 st before and after marker on every 8th round 6 times.",
    ),
    row(
        "raglan edge",
        r"(\b(?:dec|inc)(?:rease)?\.?\s+(?:1|one)\s+st\s+at\s+(?:the\s+)?)raglan\s+edge\b(?![^.]*\b(?:as\s+(?:set|before|established)|inside|within)\b)",
        r"\1armhole edge",
        "Cont to dec at raglan edge on every RS row until 20 sts rem.",
    ),
    row(
        "only",
        rf"(\bat\s+(?:the\s+)?{_EDGE})\s+only\s+(?=(?:(?:on|of|in)\s+)?(?:the\s+)?(?:every|each|next|foll)\b)",
        r"\1 ",
        "Dec 1 st at neck edge only on every RS row until 20 sts rem.",
    ),
    row(
        "then",
        rf"(?<!every )(?<!foll )(?<!following )(?<!and )\b(?:on\s+)?(?:the\s+)?({_NTH})\s+(row|rnd|round)\s*,?\s*(?:and\s+)?then\s+(?=(?:on\s+)?(?:every|each)\s)",
        r"every \1 \2 1 times, then ",
        "Inc 1 st at each end of 5th row, then every 8 rows 7 times.",
    ),
    row(
        "every rou|every rnd|every row",
        rf"(^\s*|[.:]\s*)(?:knit|work\s+in\s+(?:st\.?\s?st|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?))(?:\s+(?:every|each)\s+(?:round|rnd))?\s*[,;]?\s*(?:and\s+|while\s+)?(?:at\s+the\s+same\s+time\s*,?\s+)?(?=(?:inc|dec)(?:reas(?:e|ing))?\s+{N}\s+{STS}\s+{_ENDS}\s)",
        r"\1work in stockinette, ",
        "Knit every round, at the same time inc 1 st at each end of 5th and every foll 8th round until there are 66 sts.",
    ),
    row(
        "next r",
        rf"\bnext\s+(round|rnd|row)\s*:\s*((?:inc|dec)(?:rease)?\.?\s+{N}\s+{STS}\s+{_ENDS})(?:\s+of\s+(?:the|this)\s+{ROUND})?(?=\s*[.(]|\s*$)",
        r"\2 of next \1",
        "On the next round, increase 1 stitch at each end of the round.",
    ),
    row(
        "i.e.|on every|every row from|rs row|right side row",
        r"\bevery\s+(?:2nd|second|other|alternate)\s+(row)\s*[(,]\s*(?:i\.?e\.?\s*,?\s*|=\s*)?(?:on\s+)?every\s+(?:(?:row\s+from\s+the\s+)?right\s+side(?:\s+row)?|rs\s+row)\s*[),]",
        r"every RS \1",
        "Rep this inc every other row (i.e. on every row from the right side) 8 times in all.",
    ),
    *(
        row(
            "beg",
            pattern,
            r"\1\3 \4 at beg of every \2 row \5. \3 \6 at beg of every \2 row \7" if told else r"\1\2 \4 at beg of every \3 row \5. \2 \6 at beg of every \3 row \7",
            example,
        )
        for told, pattern, example in (
            (False, rf"(^\s*|[.:]\s*)({OFF}|bo)(?:\s+for\s+(?:the\s+)?shoulders?)?\s*,?\s+at\s+(?:the\s+)?beg(?:inning)?\s+of\s+(rs|ws)\s+rows\s*,?\s+({N}\s+{STS})\s+(once|twice|{N}\s+times)\s*,?\s*(?:and\s+|then\s+)+({N}\s+{STS})\s+(once|twice|{N}\s+times)", "Cast off at beg of RS rows 7 sts twice and 6 sts once."),
            (True, rf"(^\s*|[.:]\s*)at\s+(?:the\s+)?beg(?:inning)?\s+of\s+(rs|ws)\s+rows\s*,?\s+({OFF}|bo)\s+({N}\s+{STS})\s+(once|twice|{N}\s+times)\s*,?\s*(?:and\s+|then\s+)+({N}\s+{STS})\s+(once|twice|{N}\s+times)", "At beg of RS rows, bind off 7 sts twice, then 6 sts once."),
        )
    ),
    row("and then every|and then on every", r"(\btimes)\s*,?\s*and\s+then\s+(?=(?:on\s+)?every\s)", r"\1, then ", "Rep dec rnd every 2nd rnd 3 times and then every rnd 5 times."),
    # --- an interval to a count, then another ---
    row(
        "to|until",
        rf"(\b(?:dec|inc)\w*\.?\s+{N}\s+{STS}\s+[^.;]*?\b(?:every|each)\s[^.;]*?\b{ROUND}\s+(?:to|until(?:\s+there\s+are)?)\s+{N}\s+{STS}{_OR_LEFT})\s*,?\s+(?:and\s+)?then\s+(?:{_ENDS}\s+)?(?:of\s+|on\s+|in\s+)?(?:the\s+)?(?:next|foll(?:owing)?)\s+({N})\s+(?:rows|rounds|rnds)\b",
        r"\1, then every row \2 times",
        "Dec 1 st at each end of every RS row to 35 sts, then on next 5 rows.",
    ),
    row(
        "following",
        rf"\bevery\s+({_NTH})\s+(row|rnd|round)\s+following\b",
        r"every foll \1 \2",
        "Inc 1 st at each end of 3rd row and every 6th row following until there are 60 sts.",
    ),
    # --- how often ---
    row(
        "have been",
        rf"(\b(?:rep(?:eat)?|work)\b[^.;]*?\bevery\s[^.;]*?\b(?:row|rnd|round))\s+until\s+(?:a\s+total\s+of\s+)?({N})\s+(?:dec(?:rease)?|inc(?:rease)?)s?(?:\s+{ROUND})?\s+(?:have\s+been|are)\s+(?:made|worked|done)(?:\s+in\s+(?:all|total)|\s+altogether)?",
        r"\1 \2 times in all",
        "Repeat this decrease every 6th rnd until a total of 8 decreases have been made.",
    ),
    row(
        "until",
        rf"(\btimes(?:\s+(?:more|in\s+all|in\s+total|altogether))?)\s*,\s*until\s+(?:(?:only|there\s+are|you\s+have)\s+)?(?:again\s+)?(?:{N}\s+{STS}\s+on\s+each\s+needle\s*,?\s*(?:i\.?e\.?,?|=|or)\s*)?({N}\s+{STS}){_OR_LEFT}(?=\s*[.(]|\s*$)",
        r"\1. \2",
        "Rep dec rnd every 3rd rnd 4 times more, until only 56 sts remain.",
    ),
    row(
        "between",
        rf"(\buntil\s+(?:there\s+are\s+|you\s+have\s+)?{N}\s+{STS}\s+between\s+(?:the\s+)?(?:[a-z]+\s+)?markers)\s*,?\s*(?:and\s+)?(?:(?:you\s+have|there\s+are)\s+)?({N}\s+{STS})(?:\s+(?:in\s+(?:all|total)|altogether))?(?=\s*[.(]|\s*$)",
        r"\1. \2",
        "Rep inc rnd every 3rd rnd until there are 13 sts between the markers and you have 49 sts in total.",
    ),
    row(
        "then|and",
        rf"(\b(?:rep(?:eat)?|inc|dec)\w*\b[^.;]*?\buntil\s+(?:there\s+are\s+|you\s+have\s+|only\s+)?{N}\s+{STS}(?:\s+(?:rem(?:ain)?|(?:are\s+)?left))?(?:\s+between\s+(?:the\s+)?markers)?)\s*,?\s*(?:and\s+)?then\s+(?=(?:work|cont)\s+(?:even|straight|in)\b|(?:knit|purl|work)\s+{N}\s+{ROUND}|(?:rep(?:eat)?|work)\s+(?:the\s+)?(?:dec|inc)\w*\s+{ROUND}|(?:change|dec|inc)\b)",
        r"\1. ",
        "Rep inc rnd every 8th rnd until there are 60 sts, then work even until sleeve measures 40 cm.",
    ),
    row(
        "less|fewer",
        rf"(^\s*|[.!]\s*){_GO_ON}\s*,?\s+(?:{_MANNER}\s*,?\s+)?{_LESS}\s*,?\s+(?:on\s+|in\s+)?({_EVERY})\s*,?\s+(?=until\b)",
        r"\1rep closer dec rnd \2 ",
        "Continue to dec in this manner, working one st less between the decreases in every RS row, until 19 sts remain.",
    ),
    row("then dec|then inc", r"(\b(?:bind|cast)\s+off\b[^.;:]*?\b(?:once|twice|times))\s*,\s*(?:and\s+)?then\s+(?=(?:dec|inc)(?:rease)?\.?\s+(?:1|one)\s+st\s+at\s+(?:each|both|the)?\s*(?:neck|armhole|front|side)\s+edges?\b)", r"\1. ", "Bind off 3 sts at each neck edge once and 2 sts twice, then dec 1 st at each neck edge every RS row 4 times."),
    # --- spread over a row ---
    row(
        "same time",
        rf"\s*,?\s*(?:and\s+)?at\s+the\s+same\s+time\s+as\s+({N}\s+{STS})\s+are\s+(inc|dec)reased\s+evenly",
        r", \2rease \1 evenly",
        "Knit 1 round, at the same time as 16 sts are increased evenly.",
    ),
    row(
        "same time",
        rf"(\b(?:knit|purl|work)\s+{N}\s+{ROUND})\s*,?\s*(?:and\s+|while\s+)?at\s+the\s+same\s+time\s*,?\s+(?=(?:inc|dec)\w*\.?\s+(?:{N}\s+{STS}\s+)?evenly)",
        r"\1, ",
        "Knit 1 round, at the same time increasing 16 sts evenly.",
    ),
    row(
        " and ",
        rf"(\b(?:knit|purl)\s+{N}\s+{ROUND})\s*,?\s+and\s+(?:at\s+the\s+same\s+time\s+)?(?=(?:inc|dec)rease\s+(?:evenly\s+{N}|{N}(?:\s+{STS})?\s+evenly))",
        r"\1, ",
        "Knit 1 round and decrease 8 sts evenly.",
    ),
    row("cont", rf"(^\s*|[.]\s*)cont(?:inu(?:e|ing))?\s+(?:in|with)\s+((?-i:{_YARN}))\s*,\s*(?=(?:knit|purl|work|rep)\b)", r"\1with \2, ", "Continuing in MC, knit 1 round."),
)  # fmt: skip
"""The rows, in the order tried."""

COUNTED: tuple[Synonym, ...] = (
    row(
        "on each needle|each needle",
        rf"\b(until\s+)(?:(?:there\s+are|you\s+have)\s+)?({N}\s+{STS})\s+(?:(?:are|rem(?:ain)?)\s+)?on\s+each\s+needle\s*[,;.(:-]+\s*(?:i\.?e\.?,?\s*|that\s+is\s+|for\s+a\s+total\s+of\s+|or\s+|=\s*)?({N})(?:\s+{STS})?(?:\s+(?:in\s+(?:all|total)|altogether|total|rem(?:ain)?))?\s*[)]?(?=\s*[.]|\s*$)",
        r"\1there are \3 sts. \2 on each needle",
        "Rep last 2 rnds until there are 28 sts on each needle, 56 altogether.",
    ),
    row(
        "each needle",
        rf"((?:^|[.])\s*)({N}\s+{STS}\s+on\s+each\s+needle)\s*[,;:(-]+\s*({N})(?:\s+{STS})?\s+(?:in\s+(?:all|total)|altogether|total)\s*[)]?(?=\s*[.]|\s*$)",
        r"\1\3 sts. \2",
        "Knit 1 round. 28 sts on each needle, 56 altogether.",
    ),
    row("each needle", rf"[(]\s*({N}\s+{STS}\s+on\s+each\s+needle)\s*\.?\s*[)]", r"\1", "Knit 1 round. (9 sts on each needle.)"),
    row(
        "each needle",
        rf"({N}\s+{STS}(?:\s+rem(?:ain)?)?)\s*[,;:-]\s*({N})\s+(?:{STS}\s+)?on\s+each\s+needle(?=\s*[.]|\s*$)",
        r"\1. \2 sts on each needle",
        "Work rnd 1 3 times - 20 sts rem, 10 on each needle.",
    ),
    row(
        "between",
        rf"((?:^|[.])\s*{N}\s+{STS}\s+between\s+(?:the\s+)?markers)\s*,?\s+and\s+({N}\s+{STS})(?:\s+in\s+(?:all|total))?(?=\s*[.]|\s*$)",
        r"\1. \2",
        "Knit 1 round. 17 sts between markers and 64 sts in total.",
    ),
    row("-", rf"([.])\s*-+\s*(?={N}\s+{STS}\s+(?:dec|inc))", r"\1 ", "K1, k2tog, k to end. - 1 st decreased."),
    row("each on", rf"((?:^|[.])\s*{N}\s+{STS}\s+each)\s+on\s+(?:the\s+)?front\s+and\s+back(?:\s+pieces?)?(?=\s*[.]|\s*$)", r"\1 for front and back", "Knit 1 round. 78 sts each on front and back piece."),
    row("now there are|now you have", rf"((?:^|[.])\s*)now\s+(?:there\s+are|you\s+have)\s+({N}\s+{STS}\s+each)\s+on\s+(?:the\s+)?front\s+and\s+back(?:\s+pieces?)?(?=\s*[.]|\s*$)", r"\1\2 for front and back", "Knit 1 round. Now there are 39 sts each on front and back piece."),
    row("now rem|left on|still rem", rf"((?:^|[.])\s*{N}\s+{STS})\s+(?:(?:now|still)\s+remain|left\s+on\s+(?:the\s+)?needles?)(?=\s*[.]|\s*$)", r"\1 rem", "Knit 1 round. 40 sts now remain."),
    row("this gives|this leaves|that leaves|that gives", rf"((?:^|[.])\s*)th(?:is|at)\s+(?:gives|leaves|makes)\s+(?:you\s+(?:with\s+)?)?({N}\s+{STS})(?=\s*[.]|\s*$)", r"\1\2", "Knit 1 round. This leaves 40 sts."),
    row("the first time", rf"({N}\s+{STS})(?:\s*\([^()]*\))?\s+the\s+first\s+time(?=\s*[.]|\s*$)", r"\1", "Row 8: Knit. 189 sts the first time."),
    row("+", rf"(?<=[\w)\]*.!])(?:\s*[.!,;:=-]+|\s)\s*\+\s*({N})(?:\s+{STS})?(?=\s*[.]?\s*$)", r". \1 sts inc", "K1, m1, k to end. +1 st."),
    row("+", rf"[(\[]\s*\+\s*({N})(?:\s+{STS})?\s*[)\]](?=\s*[.]?\s*$)", r"(\1 sts inc)", "K1, m1, k to end (+1 st)."),
)  # fmt: skip
"""The rows, in the order tried."""
