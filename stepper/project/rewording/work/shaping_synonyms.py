"""Other wordings for shaping: the rows it falls on, edges bound off, changes spread evenly. No I/O.

"Dec 1 st at each end of next 3 rows (51 sts), then on every alternate row 4 times (43 sts)" is written out as two
shapings, each with its count behind it; so each count is checked where it holds.
"""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import OFF, ROUND, STS, N, Synonym, row

_FOLL = r"foll(?:owing)?\b\.?"
_NTH = r"(?:(?:\d+(?:st|nd|rd|th)|third|fourth|fifth|sixth|eighth|tenth)\b|alt(?:ernate)?\b\.?)"
_LASTS = rf"(?=\s+(?:until\b|to\s+{N}\s+{STS}|(?:a\s+total\s+of\s+)?{N}\s+(?:more\s+)?times|once\b|twice\b))"
_NOT_EVERY = r"(?<!every )(?<!each )(?<!and all )"
_ROUND_OF = r"(?:[a-z][a-z'-]*\s+){1,3}?(?:round|rnd|row)"
_HOW_OFTEN = rf"(?:on\s+)?(?:every|each)\s+[^:.()]*?(?:{N}\s+(?:more\s+)?times|twice|until\s+{N}\s+{STS}(?:\s+rem(?:ain)?)?)"
_WHERE = r"(?:(?:at\s+)?(?:each|both)\s+(?:ends?|sides?)|at\s+(?:the\s+)?(?:neck|armhole|front|side)\s+edges?)"
_CHANGE = rf"(?:inc|dec)(?:rease)?\.?\s+{N}\s+{STS}\.?\s+{_WHERE}"
_LONG = rf"(?:(?!\b(?:sts|stitches|until|while|same\s+time|then)\b)[^.;:*])*?(?:{ROUND}|\btimes|\btwice|\bonce)"
_COUNT = rf"\s*[,(:-]+\s*({N}\s+{STS}(?:\s+(?:rem(?:ain(?:ing)?)?|in\s+all))?)\.?\s*[)]?\s*-*\s*,?\s*"
_THEN = r"(?:(?:and|then)\s+)+"
_AT_BEG = rf"at\s+(?:the\s+)?beg(?:inning)?\.?\s+of\s+(?:each\s+of\s+)?(?:the\s+)?(?:next|foll(?:owing)?)\s+{N}\s+rows"
_WORK = r"(?=(?:dec|inc|work|cont|cast|bind|bo|k|p|knit|purl|rep|change)(?:rease|tinue|eat)?\b)"

SHAPING: tuple[Synonym, ...] = (
    row(
        "to end|to the end",
        rf"\b(?:(k)(?:nit)?|(p)(?:url)?)\s+to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?{ROUND})?\s*,?\s*(?:and\s+)?(?=(?:inc|dec)(?:reas(?:e|ing))?\.?\s+{N}(?:\s+{STS})?\s+evenly\b)",
        r"\1\2, ",
        "Next row: Purl to end, decreasing 4 sts evenly. 20 sts.",
    ),
    # --- heads that say on which rows ---
    row(
        "every|each",
        rf"^(\s*)({_ROUND_OF})\s*(?:,|-|\()\s*(?:work(?:ed)?\s+)?({_HOW_OFTEN})\s*\)?\s*:\s*([^.]*?)\.?(\s+[(\[]?\s*{N}\s+{STS}[^.:]*\.?)?\s*$",
        r"\1\2: \4. work \2 \3.\5",
        "Decrease round, every 4th round 3 times: K1, k2tog, k to end.",
    ),
    row(
        "sts|st)|stitches",
        rf"^(\s*(?:next\s+)?{ROUND}(?:\s+\d+)?(?:\s*\(?(?:rs|ws)\)?)?)\s*[(\[]\s*({N}\s+{STS})\s*[)\]]\s*:\s*(.*?)\.?\s*$",
        r"\1: \3. \2",
        "Next rnd (32 sts): *K3, k2tog; rep from * to end.",
    ),
    row(
        "row|rnd|round",
        rf"^(\s*(?:next\s+(?:\d+\s+)?)?{ROUND}(?:\s+\d+(?:\s*(?:-|–|to|and|,|&)\s*\d+)*)?(?:\s*\(?(?:rs|ws)\)?)?)\s*[(\[]\s*({N}\s+{ROUND})\s*[)\]]\s*:\s*(.*?)\.?\s*$",
        r"\1: \3. \2",
        "Rows 1-6 (6 rows): Knit.",
    ),
    # --- changes spread evenly ---
    row(
        "cent|middle",
        rf"\b(?:(?P<rows>(?:knit|purl)\s+{N}\s+rows?\s*,\s*)(inc|dec)(?:reas(?:e|ing))?\.?\s+(?:1|one)\s+st(?:itch)?\s+(?P<said>(?:in|at)\s+(?:the\s+)?(?:cent(?:er|re)|middle)"
        r"(?:\s+of\s+(?:(?:the\s+)?(?:last|next|this)\s+)?row)?))(?=\s*[.]|\s*$)",
        r"\1\2 1 st evenly",
        "Knit 3 rows, inc 1 st in centre of last row.",
        spelt_out=True,
    ),
    row(
        "next",
        rf"\b((?:inc|dec)(?:reas(?:e|ing))?\.?\s+{N}\s+(?:{STS}\s+)?evenly)\s+(?:spaced\s+)?(?:across|along|in|on|over)\s+(?:the\s+)?next\s+(?={N}\s+{STS})",
        r"\1 over next ",
        "Inc 6 sts evenly across next 30 sts, k to end.",
    ),
    row(
        "inc",
        rf"\binc\.?\s+(?={N}\s+{STS}\s+in\s+every\b)",
        "increase ",
        "Knit, inc 1 st in every 10th st.",
    ),
    # --- where the last round ends ---
    row(
        "end|stop|finish",
        rf"(?<=\w),?\s*(?:and\s+)?(?P<said>(?:end(?:ing)?|stop(?:ping)?|finish(?:ing)?)\s+(?:the\s+)?(?:last\s+(?:rnd|round)\s+)?({N})\s+{STS}\s+(?:before|from|short\s+of)\s+"
        r"(?:the\s+)?(?:bor(?:\s+(?:marker|m))?\b|(?:end|beg(?:inning)?)(?:\s+of\s+(?:the\s+)?(?:last\s+|this\s+)?(?:rnd|round))?(?:\s+(?:marker|m)\b)?)(?:\s+on\s+(?:the\s+)?last\s+(?:rnd|round))?)(?=\s*[.]|\s*$)",
        r". stop short \2 sts",
        "Knit 3 rounds, ending last rnd 4 sts before BOR marker.",
        spelt_out=True,
    ),
    row(
        "last",
        rf"(?<=\w),?\s*(?:and\s+)?(?P<said>(?:end(?:ing)?|stop(?:ping)?|finish(?:ing)?)\s+(?:the\s+)?last\s+(?:rnd|round)\s+({N})\s+{STS}\s+(?:before|from|short\s+of)\s+(?:the\s+)?(?:marker|m)\b)(?=\s*[.]|\s*$)",
        r". stop short \2 sts",
        "Knit 3 rounds, ending last rnd 4 sts before marker.",
        spelt_out=True,
    ),
    said_row_behind(
        "bor|end",
        rf"(\b{ROUND}|straight|even|(?:cm|in|inches|\"))\s*,?\s*(?P<said>(?:end(?:ing)?|finish(?:ing)?)\s+at\s+(?:the\s+)?(?:bor|end\s+of\s+(?:the\s+)?(?:rnd|round))(?:\s+(?:marker|m))?)\b(?=\s*[.]|\s*$)",
        "Knit 3 rounds, ending at BOR marker.",
    ),
    # --- the rows it falls on ---
    row(
        "in all|in total|total of|altogether",
        rf"\bnext\s+(?:{ROUND}\s+)?(?:and|then)\s+(?:on\s+)?(?:the\s+)?{_FOLL}\s+({_NTH}(?:\s*[(\[][^)\]]*[)\]])?)\s+{ROUND}\s+(?=a\s+total\s+of\s+{N}\s+times|{N}\s+times\s+(?:in\s+(?:all|total)|altogether))",
        r"next and every foll \1 row ",
        "Dec 1 st at each end of next and foll alt rows 3 times in all.",
    ),
    row(
        "foll",
        rf"\bnext\s+(?:{ROUND}\s+)?(?:and|then)\s+(?:on\s+|in\s+)?(?=(?:the\s+)?(?:{N}\s+)?{_FOLL})",
        "next row, then ",
        "Dec 1 st at each end of next and foll alt row.",
    ),
    row(
        "foll",
        rf"{_NOT_EVERY}\b(?:on\s+|of\s+|in\s+)?(?:the\s+)?(?:{_FOLL}\s+({N})|({N})\s+{_FOLL})\s+({_NTH})\s+{ROUND}",
        r"every \3 row \1\2 times",
        "Inc 1 st at each end of next row, then on 3 foll 6th rows.",
    ),
    row(
        "foll",
        rf"{_NOT_EVERY}\b(?:on\s+|of\s+|in\s+)?(?:the\s+)?{_FOLL}\s+({_NTH})\s+{ROUND}{_LASTS}",
        r"every \1 row",
        "Inc 1 st at each end of next row, then on foll 6th rows to 52 sts.",
    ),
    row(
        "foll",
        rf"{_NOT_EVERY}\b(?:on\s+|of\s+|in\s+)?(?:the\s+)?{_FOLL}\s+({_NTH})\s+(?:row|rnd|round)\b",
        r"every \1 row 1 times",
        "Dec 1 st at each end of next and foll 4th row.",
    ),
    row(
        "foll",
        rf"(\bnext\s+(?:{N}\s+)?{ROUND}\s*,?\s*(?:then|and)\s+)(?:on\s+|of\s+)?(?:the\s+)?(?:{_FOLL}\s+({N})|({N})\s+{_FOLL})\s+(rs|ws)\s+rows?\b",
        r"\1every \4 row \2\3 times",
        "Dec 1 st at each end of next 2 rows, then on foll 3 RS rows.",
    ),
    row(
        "foll",
        rf"(\bnext\s+(?:{N}\s+)?{ROUND}\s*,?\s*(?:then|and)\s+)(?:on\s+|of\s+)?(?:the\s+)?(?:{_FOLL}\s+({N})|({N})\s+{_FOLL})\s+{ROUND}",
        r"\1every row \2\3 times",
        "Dec 1 st at each end of next row and foll 3 rows.",
    ),
    row(
        "each of",
        rf"\b(?:on|of|in)\s+each\s+of\s+(?:the\s+)?next\s+(?={N}\s+{ROUND})",
        "of next ",
        "Dec 1 st at neck edge on each of next 4 rows.",
    ),
    # --- several at one edge ---
    row(
        "edge",
        rf"((?:^|[.:])\s*)at\s+(?:the\s+|each\s+)?(neck|armhole|front|side)\s+edges?\s*,?\s*((?:bo|{OFF})\s+{N}\s+{STS})\b",
        r"\1\3 at \2 edge",
        "At neck edge, bind off 3 sts once, then 2 sts twice.",
    ),
    row(
        "edge",
        rf"\b(bo|{OFF})\s+(?:at|from)\s+(?:the\s+|each\s+)?(neck|armhole|front|side)\s+edges?\s*,?\s*(?:every\s+other\s+row\s*,?\s*)?({N}\s+{STS})\b",
        r"\1 \3 at \2 edge",
        "Bind off at neck edge 3 sts once, 2 sts twice.",
    ),
    row(
        "edge",
        rf"((bo|{OFF})\s+{N}\s+{STS}\s+at\s+(?:the\s+|each\s+)?(neck|armhole|front|side)\s+edge\s+(?:{N}\s+times|once|twice))\s*,?\s*(?:then\s+|and\s+)?({N}\s+{STS})\s+(?={N}\s+times\b|once\b|twice\b)(?!.*\bsame\s+time\b)",
        r"\1. \2 \4 at \3 edge ",
        "Bind off 3 sts at neck edge once, then 2 sts twice.",
        again=True,
    ),
    # --- what is worked at the ends of a row ---
    row(
        "st",
        r"(?<!\*)\b(inc|dec)(?:rease)?\.?\s+(?:1|one)\s+st(?:itch)?\b(?=\s*[,;])",
        r"\1 1",
        "Dec 1 st, k to last 2 sts, dec 1 st.",
    ),
    row(
        "st",
        r"([,;]\s*)(inc|dec)(?:rease)?\.?\s+(?:1|one)\s+st(?:itch)?\b(?=\s*(?:\.|$))",
        r"\1\2 1",
        "K to last 2 sts, dec 1 st.",
    ),
    said_row_behind(
        "cent|middle",
        rf"\b((?:k|p|knit|purl)\s*{N}(?:\s+{STS})?)\s+(?P<said>to\s+(?:the\s+)?(?:cent(?:er|re)|middle))\b(?=\s*[,;.]|\s*$)",
        "K10 to centre, p to end.",
    ),
    row(
        "side",
        r"(^\s*|[.!:]\s*)(?:(inc)|(dec))(?:rease|\.)?\s+(?:1|one)\s+(?:st|stitch)\s+(?:at|on)?\s*(?:each|either|both)\s+sides?\s+of\s+(?:(?:each|every|both|all)\s+(?:of\s+the\s+)?|the\s+(?=[a-z\s]*\bmarkers\b))"
        r"(?:(?:raglan|side|gusset|thumb)\s+)?markers?\s+(?=(?:on\s+)?(?:every|each|next)\s[^.;]*?\b(row|rnd|round)s?\b)",
        r"\1rep beside \2\3 \4 ",
        "Dec 1 st each side of each marker every 4th rnd 2 times more.",
    ),
)
"""The rows, in the order tried."""

BETWEEN: tuple[Synonym, ...] = (
    row(
        "sts|stitches",
        rf"\b({_CHANGE})(\s+{_LONG}){_COUNT}{_THEN}(?:{_WHERE}\s+)?((?:of|on|in)\s+)?(?=(?:the\s+)?(?:next|every|each|foll|{N}\s+foll))",
        r"\1\2. \3. \1 \4",
        "Dec 1 st at each end of next 3 rows (51 sts), then on every alternate row 4 times.",
    ),
    row(
        "sts|stitches",
        rf"\b({OFF}|bo)(\s+{N}\s+{STS}\.?\s+{_AT_BEG}){_COUNT}(?:{_THEN})?(?={N}\s+{STS}\.?\s+{_AT_BEG})",
        r"\1\2. \3. \1 ",
        "Cast off 6 sts at beg of next 2 rows (62 sts), then 4 sts at beg of next 2 rows.",
        again=True,
    ),
    row(
        "and ",
        rf"\b({OFF}|bo)(\s+{N}\s+{STS}\.?\s+{_AT_BEG})\s*,?\s+and\s+(?:then\s+)?(?={N}\s+{STS}\.?\s+{_AT_BEG})",
        r"\1\2. \1 ",
        "Bind off 5 sts at beg of next 2 rows, and 3 sts at beg of the 2 rows after that.",
        again=True,
    ),
    row(
        "then",
        rf"\b((?:{_CHANGE}|(?:{OFF}|bo)\s+{N}\s+{STS})\b{_LONG}){_COUNT}(?:and\s+)?then\s+{_WORK}",
        r"\1. \2. ",
        "Cast off 6 sts at beg of next 2 rows (62 sts), then dec 1 st at each end of next 4 rows.",
    ),
)
"""The rows, in the order tried."""
