"""Other wordings of garments printed whole: what ends a rib, one side first, what remains. No I/O."""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import LONG, OFF, ROUND, STS, N, Synonym, row

_EVENLY = rf"(?:inc|dec)(?:reas(?:e|ing))?\.?\s+{N}\s+{STS}\s+evenly"
_LAST = r"(?:across|over|on|in)\s+(?:the\s+)?last\s+row"
_TIMES = rf"(?:rep(?:eat)?\.?\s+(?:these|those|the\s+last|last|rows?)\s+[^.;,]*?\b(?:times(?:\s+more)?|once\s+more|twice(?:\s+more)?)|rep(?:eat)?\.?\s+[^.;,]*?{N}\s+more\s+times)"
_SIDE = r"(?:this|the\s+first|first|one|each)\s+side"
_YARN = r"(?:yarn|wool)"

WHOLE_PAGES: tuple[Synonym, ...] = (
    row(
        "last row",
        rf"(\brep(?:eat)?\b[^.;:]*?\buntil\b[^.;:]*?)\s*,?\s*(?:and\s+)?({_EVENLY})\s+{_LAST}(?=\s*[.,(]|\s*$)",
        r"\1 but the last. work 1 row in pattern, \2",
        "Rep rows 1 and 2 until rib measures 6 cm, ending with a WS row and dec 2 sts evenly across last row.",
    ),
    row(
        "last row",
        rf"(\bending\s+(?:with|after|on)\s+(?:a\s+)?(?:rs|ws)\s+row)\s*,?\s*and\s+(?={_EVENLY}\s+{_LAST})",
        r"\1, ",
        "Work in rib for 6 cm, ending with a WS row and dec 2 sts evenly across last row.",
    ),
    row(
        "last row",
        rf"({_TIMES})\s*,\s*(inc|dec)(?:reas(?:e|ing))?\.?\s+({N})\s+({STS})\s+at\s+(?:the\s+)?(end|beg(?:inning)?)\s+of\s+(?:the\s+)?last\s+row(?=\s*[.,(]|\s*$)",
        r"\1 but the last. \2 \3 \4 at \5 of next row",
        "Rep these 2 rows 5 times more, inc 1 st at end of last row.",
    ),
    row(
        "side",
        rf"\bturn\s*(?:,\s*|\s+and\s+|,\s*and\s+)(?P<said>(?:work|complete|finish|knit)(?:ing)?\s+(?:on\s+)?{_SIDE}(?:\s+of\s+(?:the\s+)?(?:neck|front|back))?\s*(?:first|only|separately)?)(?=\s*[.]|\s*$)",
        "turn, leave rem sts on a holder",
        "Next row: K27, turn and work this side first.",
        spelt_out=True,
    ),
    row(
        "next row and",
        rf"\b((?:{OFF}|bo)\s+{N}\s+{STS}\s+at\s+(?:the\s+)?beg(?:inning)?\.?\s+of\s+(?:the\s+)?next\s+row)\s*,?\s*(?:and|then)\s+({N}\s+{STS}\s+at\s+(?:the\s+)?beg(?:inning)?\.?\s+of\s+)(?:the\s+)?foll(?:owing)?\.?\s+(?:alt|alternate)\.?\s+row\b",
        r"\1. work 1 row even. bind off \2next row",
        "Bind off 6 sts at beg of next row and 7 sts at beg of foll alt row.",
    ),
    said_row_behind(
        "as for|as given for",
        r"\b(in\s+k\s?\d+\s*,\s*p\s?\d+\s+rib(?:bing)?)\s+(?P<said>as\s+(?:given\s+)?for\s+(?:the\s+)?(?:back|front|body|left\s+front|right\s+front|first\s+sleeve))\b",
        "Work 6 cm in k2, p2 rib as for back, ending with a WS row.",
    ),
    row(
        "and st|and stock",
        r"\b(change\s+to\s+(?:larger|smaller|no\.?\s*\d{1,2}|\d(?:\.\d+)?\s*mm)\s+(?:circular\s+)?needles?)\s+and\s+(?=(?:st\.?\s*st\b|stockinette|stocking)[^.;]*,\s*(?:inc|dec))",
        r"\1. cont in ",
        "Change to larger needles and st st, inc 1 st at each end of every 6th row until there are 68 sts.",
    ),
    row(
        "only|alone|until|for",
        r"(?:^|(?<=[.!])\s*)(?:cont(?:inue)?|work)\s+(?:straight\s+|even\s+)?(?:in|with)\s+(?-i:(MC|CC\d?|[A-Z]))(?:\s+(?:only|alone))?\s+(?=until\b|for\b)",
        r"with \1, work even ",
        "Cont in MC only until hat measures 15 cm.",
    ),
    row(
        "alt",
        r"^(\s*\d+(?:st|nd|rd|th))\s+and\s+(?:foll(?:owing)?\s+)?(alt(?:ernate)?\s+(?:rounds|rows|rnds)\s*:)",
        r"\1 and every \2",
        "2nd and alt rounds: K.",
    ),
    row(
        "after",
        rf"\b(until\s+there\s+are\s+{N}\s+{STS}\s+on\s+)(?:the\s+)?needle(?=\s+after\s+(?:bind-off|binding\s+off|cast-off))",
        r"\1right needle",
        "K20, bind off 2 sts, k until there are 16 sts on needle after bind-off, k to end.",
    ),
    row(
        "edge",
        r"\b(?:end|ending|finish|finishing)\s+(?:(?:the\s+)?last\s+row\s+)?at\s+(?:the\s+)?(neck|armhole|front|side)\s+edge\b",
        r"ending at \1 edge",
        "Work even until armhole measures 12 cm, finishing at neck edge.",
    ),
    row(
        "ending at",
        rf"(\b{N}\s+{ROUND}|\bto\s+(?:the\s+)?shoulders?|\btimes|\bmore)\s*,?\s*ending(?=\s+at\s+(?:neck|armhole|front|side)\s+edge\b)",
        r"\1. ends",
        "Knit 24 rows, ending at neck edge.",
    ),
    row(
        "when",
        rf"(?:^|(?<=[.!])\s*)when\s+(?:the\s+)?(piece|work|body|sleeve|back|front|hat|scarf|cowl|cuff|it)\s+(?:measures|is)\s+(?:about\s+)?({LONG})(\s+from\s+(?:the\s+)?(?:cast-on(?:\s+edge)?|beg(?:inning)?|underarm))?\s*,\s*(?:then\s+)?(?=(?:{OFF}|bo)\b|change\s+to\b)",
        r"work even until \1 measures \2\3. ",
        "When piece measures 20 cm, bind off.",
    ),
    said_row_behind(
        "on these|on those",
        rf"(?:^|(?<=[.!])\s*)((?:knit|work)\s+{N}\s+rows)\s+(?P<said>(?:straight\s+|even\s+)?on\s+(?:these|those)\s+{STS}(?:\s+only)?)(?=\s*[.,]|\s*$)",
        "Work 10 rows on these sts.",
    ),
    row(
        "facing",
        rf"\b(re-?join|join)\s+(?:the\s+)?{_YARN}\s+with\s+((?:rs|ws|right\s+side|wrong\s+side)\s+facing)\s+to\s+",
        r"with \2, \1 yarn to ",
        "Rejoin yarn with WS facing to rem 20 sts and k to end.",
    ),
    row(
        "of|for",
        rf"\b((?:re-?join|join)\s+(?:the\s+)?{_YARN}\s+to\s+)(?:the\s+)?(?:rem(?:aining)?\s+|held\s+)*({N})\s+{STS}\s+(?:of|for)\s+(?:the\s+)?((?:left\s+|right\s+)?(?:back|front|neck|sleeve))\b",
        r"\1\2 \3 sts",
        "With WS facing, rejoin yarn to 52 sts of back.",
    ),
    row(
        "last",
        rf"(?:^|(?<=[.!])\s*)(?:cont(?:inue|inuing)?\.?\s+|work(?:ing)?\s+)(?:to\s+work\s+)?on\s+(?:the\s+)?last\s+({N})\s+{STS}\s+only(?:\s+(?P<said>for\s+(?:the\s+)?(?:left\s+|right\s+)?(?:front|back|side|half)))?"
        rf"(?:\s*[,;]?\s*(?:and\s+)?(?:place|put|leave|leaving|placing|slip)\s+(?:the\s+)?(?:rem(?:aining)?|other)\s+{STS}\s+on\s+(?:a\s+)?(?:st(?:itch)?\s+)?(?:holders?|spare\s+needles?|hold|waste\s+yarn))(?=\s*[.]|\s*$)",
        r"work in rows over next \1 sts, hold others sts",
        "Working on last 26 sts only, place remaining sts on holders.",
        spelt_out=True,
    ),
    row("wool", r"\b((?:re)?join|break|break\s+off)\s+wool\b", r"\1 yarn", "Rejoin wool to rem sts."),
)
"""The rows, in the order tried."""
