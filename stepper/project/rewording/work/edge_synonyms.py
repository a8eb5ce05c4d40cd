"""Other wordings for shaping at edges and ends, for steps cast off, and for changes spread over a row. No I/O.

A place told first is put behind the change that is made there, a list of rows that goes on behind a number of
stitches becomes a shaping of its own, and a row that is written out for every so many rows is put behind them.
Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import OFF, ROUND, STS, N, Synonym, row

_E: Final = r"(?=\s*[.;]|\s+-+\s+\d|\s*$)"
_START: Final = r"((?:^|[.!])\s*(?:[a-z][a-z ]{2,30}:\s*)?)"
_EDGE: Final = r"(?:neck|armhole|raglan|front|side|shoulder)\s+edges?"
_CHANGE: Final = r"(?:dec|inc)(?:rease)?\.?"
_CHANGING: Final = r"(?:dec|inc)(?:reas(?:e|ing))?\.?"
_ENDS: Final = r"(?:at\s+)?(?:each|both)\s+(?:ends?|sides?)"
_WHERE: Final = rf"(?:at\s+(?:the\s+)?{_EDGE}|{_ENDS})"
_ROW: Final = r"(?:foll(?:owing)?\.?\s+)?(?:(?:\d+(?:st|nd|rd|th)|other|alt(?:ernate)?\.?|second|third|fourth|sixth|eighth|rs|ws|right[-\s]side|wrong[-\s]side)\s+)?(?:row|rnd|round)"
_EVERY: Final = rf"(?:every|each)\s+{_ROW}"
_OFTEN: Final = rf"(?:for\s+)?(?:a\s+total\s+of\s+)?({N})\s+times(?:\s+(?:in\s+(?:all|total)|altogether|total))?"
_SHAPED: Final = (
    r"(?:k2tog(?:\s+tbl)?|ssk|skpo?|s[1l]\s?1,\s*k1,\s*psso|p2tog(?:\s+tbl)?|ssp|m1[lrp]?|kfb|pfb|yo|(?:inc|dec)(?:\s+1)?)"
)
_FEW: Final = r"(?:(?:knit|purl|k|p|work)\s*\d+(?:\s+sts?)?\s*,\s*)?"
_WORK: Final = r"(?:work|knit|purl|k|p|patt(?:ern)?|rib|cont(?:inue)?)\b(?:\s+(?:in\s+(?:patt(?:ern)?|rib)|even|across))?"
_BEGUN: Final = rf"{_FEW}{_SHAPED}\s*,\s*{_WORK}\s+to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?row)?"
_ENDED: Final = rf"{_WORK}\s+to\s+(?:the\s+)?last\s+{N}(?:\s+{STS})?\s*,\s*{_SHAPED}(?:\s*,\s*(?:knit|purl|k|p|work)\s*\d+)?"
_BOTH: Final = rf"{_FEW}{_SHAPED}\s*,\s*{_WORK}\s+to\s+(?:the\s+)?last\s+{N}(?:\s+{STS})?\s*,\s*{_SHAPED}(?:\s*,\s*(?:knit|purl|k|p|work)\s*\d+)?"
_END_OF: Final = r"(?:(?:at|on)\s+(?:the\s+)?(?:beg(?:inning)?|start|end)\.?\s+of\s+)"
_AGAIN: Final = rf"\s*[.,;]\s*(?:and\s+)?then\s+(?:do\s+(?:the\s+same|this|so)|work\s+(?:the\s+same|this)|the\s+same)\s+(?:{_END_OF}|on\s+|in\s+)?(?:every|each)\s+({_ROW})\s+(?:another\s+|a\s+further\s+)?{_OFTEN}"
_DO: Final = r"\s*[.;]\s*(?:do|work|rep(?:eat)?)\s+(?:this|so|the\s+same)(?:\s+(?:row|dec(?:rease)?|inc(?:rease)?))?\s+"
_THING: Final = (
    r"(?:(?:left|right|front|back|both)\s+)*(?:armholes?|neck(?:line)?s?|v-?neck|raglans?|shoulders?|sides?|sleeve\s+cap|waist)"
    r"(?:\s+(?:edges?|shapings?|decreases|decs?))*"
)
_SAME_TIME: Final = r"(?:at\s+(?:the\s+)?same\s+time|simultaneously)"
_ARE: Final = (
    r"(?:(?:are|is|will\s+be)\s+(?:both\s+)?(?:(?:shaped|worked|made|done|knitted|knit|decreased)\s+)?|(?:both\s+)?(?:happens?|occurs?|takes?\s+place|goes?\s+on|begins?|starts?|runs?)\s+)"
)
AT_ONCE: Final = (
    rf"(?:(?:shapings?\s+(?:of|for)\s+(?:the\s+)?)?{_THING}\s+(?:and|&)\s+(?:the\s+)?{_THING}\s+{_ARE}{_SAME_TIME}"
    rf"|(?:work|shape)\s+(?:the\s+)?{_THING}\s+(?:and|&)\s+(?:the\s+)?{_THING}\s+{_SAME_TIME}"
    rf"|{_SAME_TIME}\s*,?\s+(?:the\s+)?{_THING}\s+(?:and|&)\s+(?:the\s+)?{_THING}\s+{_ARE}"
    rf"|(?:next|following)\s+(?:(?:two|2)\s+)?(?:sections?|steps?|shapings?|lines?|instructions?|paragraphs?)\s+{_ARE}{_SAME_TIME})"
)
"""Words that say that two things told below are worked at the same time."""
_READ_ON: Final = r"(?:please\s+)?read(?:\s+(?:on|ahead|through|the|next|following|this|whole|all|section|part|to|end|of|it|instructions?|first|carefully|once)\b)+(?:\s+before\s+(?:you\s+)?(?:continu|begin|start|go)\w*(?:\s+on)?)?\s*"
_AS_SET: Final = r"as\s+(?:before|set|established)"

ABBREVIATED: tuple[Synonym, ...] = (
)  # fmt: skip
"""Abbreviations with a full stop, as old pages print them: looked for before all other rows."""

EDGES: tuple[Synonym, ...] = (
    row("edge|each|both|either", rf"\b({_CHANGE}\s+(?:1|one|2|two))\s+(?=(?:at\s+)?(?:each|both|either)\s+ends?\b|at\s+(?:the\s+)?{_EDGE}\b)", r"\1 st ", "Inc 1 each end of 5th row, then every 8th row 10 times more."),
    row("every|each", rf"{_START}((?:on|in)\s+(?:every|each)\s+{_ROW})\s+(?=(?:[kp]\s?\d|ssk|skp|k2tog|sl|work\s+\d)[^:]*,[^:]*\btimes\b)", r"\1\2, ", "Shape the raglan: on every RS row k2, ssk, k to last 4 sts, k2tog, k2, 14 times."),
    row("once", r"\b((?:inc|dec)(?:reas(?:e|ing))?\.?)\s+once\s+(?=at\s+(?:the\s+)?(?:each|both|either|neck|armhole|front|side|beg|end)\b)", r"\1 1 st ", "Inc once at each end of the 5th row and every foll 6th row 3 times."),
    row("beg|start", rf"{_START}((?:cont(?:inue)?|work|proceed)\s+in\s+[^,.;:]{{2,30}}?)\s*,\s*((?:beg(?:inning)?|start(?:ing)?|commencing)\.?\s+with\s+an?\s+(?:k|p|knit|purl|rs|ws)\s+row)\s*(?:,|\band\b)\s*(?=(?:inc|dec)\b)", r"\1\3, \2, ", "Cont in st st, beg with a k row, inc 1 st at each end of 3rd and every foll 4th row 5 times."),
    row("after", rf"\b(inc|dec)(?:rease)?\.?\s+(?:2|two)\s+{STS}\s*(?P<said>(?:at\s+(?:the\s+)?|mid(?:dle)?\s+)?under(?:\s*the)?\s*(?:arm|sleeve)s?\s+)?\(\s*=?\s*(?:1|one)\s+st\s+after\s+(?:the\s+)?(?:first\s+st|marker)\s+and\s+(?:1|one)\s+st\s+before\s+(?:the\s+)?(?:last\s+st|marker)(?:\s+(?:of|on|in)\s+(?:the\s+)?(?:rnd|round))?\s*\)(?:\s+(in|on)\s+the\s+(?:1st|first)\s+(rnd|round))?", r"\1 1 st at each end of next rnd", "Inc 2 sts under the arm (1 st after first st and 1 st before last st of rnd) in the 1st rnd and then in every 8th rnd 8 times.", spelt_out=True),
    row("rem|other|rest", rf"{_START}(?:keeping|with|working)\s+((?:the\s+)?{N}\s+{STS}\s+at\s+(?:each|both|either)\s+(?:ends?|edges?|sides?))\s+in\s+(garter(?:\s+st(?:itch)?)?|g\.?\s?st|moss(?:\s+st(?:itch)?)?|seed(?:\s+st(?:itch)?)?)(?:\s+throughout)?\s*(?:,|\band\b|,\s*and)\s*(?:the\s+)?(?:rem(?:aining)?|other|rest\s+of\s+the)\s+{STS}\s+in\s+(st\.?\s?st|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?|patt(?:ern)?)\s*,\s*(?:work|knit|cont(?:inue)?)\s+({N}\s+rows)", r"\1work \5 in \4, keeping \2 in \3", "Keeping 5 sts at each end in garter st throughout and rem sts in stocking st, work 6 rows."),
    row("last row", r"\s*,?\s*working\s+(?:the\s+)?last\s+row\s+on\s+(?:the\s+)?(wrong|right)\s+side(?:\s+of\s+(?:the\s+)?work)?(?=\s*[.;]|\s*$)", r", ending with a \1-side row", "Work in st st until piece measures 10 cm, working last row on wrong side."),
    *(
        row("alt", rf"\b(?:of|in|on)\s+{first}alt(?:ernate|\.)?\s+rows\b", words, f"Dec 1 st at each end {'of' if first else 'on'} {printed}alt rows until 60 sts rem.")
        for first, words, printed in ((r"(?:the\s+)?next\s+and\s+", "of next and every alt row", "next and "), ("", "of every alt row", ""))
    ),
    row("then alt", r"(,\s*then\s+)(?:on\s+)?alt(?:ernate|\.)?\s+rows\b", r"\1every alt row", "Dec 1 st at each end of next 5 rows, then alt rows until 60 sts rem."),
    row("dec|inc", rf"(\b(?:cast|bind)\s+off\b[^.;:]*?\bnext\s+{N}\s+rows)\s*[,;]\s*(?:and\s+)?(?=(?:dec|inc)(?:rease)?\.?\s+(?:1|one)\s+st\b)", r"\1. ", "Cast off 7 sts at beg of next 2 rows, dec 1 st each end of every alt row until 60 sts rem."),
    row("then", rf"\s*\(\s*({N}\s+{STS})\s*\)\s*,\s*then\s+(?=(?:k|p)\.?\s?2\s?tog|dec|inc)", r". \1. ", "Cast off 8 sts at the beg of the next 2 rows (105 sts), then k2tog at both ends of every alternate row until 97 sts remain."),
    row("each of the next|each of next", r"\bat\s+(?:the\s+)?(?:beg(?:inning)?|start)\.?\s+of\s+each\s+of\s+(?:the\s+)?(?=next\b)", "at beg of ", "Keeping pattern right, cast off 7 sts at the start of each of the next two rows."),
    row("; dec|; inc", r"(\bsts\.?\s+rem(?:ain)?\.?)\s*;\s*(?=(?:dec|inc)(?:rease)?\.?\s+(?:1|one)\s+st\b)", r"\1. ", "Cast off 8 sts at beg of next 2 rows; dec 1 st each end of alt rows until 60 sts rem; dec 1 st each end of every row until 50 sts rem."),
    row("of each of", r"\bof\s+each\s+of\s+(?:the\s+)?(?:following|foll|next)\s+(?=\d)", "of next ", "Dec 1 st at both ends of each of the following 5 rows."),
    row("take 2|take two", r"\btake\s+(?:2|two)\s+(?:sts\s+)?tog(?:ether)?\s+(?=at\s+(?:both|each))", "dec 1 st ", "Take 2 together at both ends of every RS row until 60 sts remain."),
    row("in each of", r"\bin\s+each\s+of\s+(?=(?:the\s+)?(?:next|foll(?:owing)?|\d+)\b[^.;:,]*\brows\b)", "on ", "Dec 1 st at neck edge in each of next 6 rows, then in each of 4 foll alt rows.", again=True),
    *(
        row(", then", rf"(\b(?:of|on)\s+(?:the\s+)?\d+(?:st|nd|rd|th))\s*,\s*then\s+(?=(?:on\s+)?(?:every|each)\s+(?:\S+\s+){{0,2}}{word}\b)", rf"\1 {word}, then ", f"Inc 1 st at each end of the 5th, then every following 6th {word} 3 times.")
        for word in ("row", "round", "rnd")
    ),
    row("thus|this|that", rf"{_START}(cont(?:inue)?)\s+(?:thus|(?:in|like)\s+th(?:is|at)(?:\s+(?:way|manner))?)\s*,\s*(?=(?:inc|dec)(?:reas)?ing\s+(?:1|one|once)\b)", r"\1\2 in patt, ", "Continue thus, increasing 1 st at each end of the 5th row and every foll 6th row 3 times."),
    # --- a row written out, and the rows on which it is worked ---
    *(
        row("every|each", rf"{_START}(?:{where}on\s+|in\s+)?(?:every|each)\s+({_ROW})\s*,\s*({shaped}){often}{_E}", words, example)
        for where, shaped, examples in (
            (r"(?:at|on)\s+(?:the\s+)?(?:beg(?:inning)?|start)\.?\s+of\s+|", _BEGUN, ("At the beginning of every RS row, k1, ssk, work to end, 5 times in all.", "At the beginning of every RS row, k1, ssk, work to end, 5 times. Then do the same at the beginning of every 4th row 3 times.")),
            (r"(?:at|on)\s+(?:the\s+)?end\s+of\s+|", _ENDED, ("At the end of every RS row, work to last 3 sts, k2tog, k1, for a total of 6 times.", "Neck: At the end of every RS row, work to last 3 sts, k2tog, k1, for a total of 6 times. Then do the same at the end of every 4th row 11 times.")),
            ("", _BOTH, ("On every RS row, k1, ssk, k to last 3 sts, k2tog, k1, for a total of 8 times.", "On every RS row, k1, ssk, k to last 3 sts, k2tog, k1, 8 times, then do the same every 4th row 3 times.")),
        )
        for often, words, example in (
            (rf"\s*,?\s*{_OFTEN}{_AGAIN}", r"\1every \2 \4 times, then every \5 \6 times: \3", examples[1]),
            (rf"(?:{_DO}|\s*,?\s*){_OFTEN}", r"\1every \2 \4 times: \3", examples[0]),
        )
    ),
    row("every|each", rf"{_START}({_BEGUN}|{_ENDED}|{_BOTH})\s*,?\s+(?:on|at)\s+(?:every|each)\s+({_ROW})\s*,?\s*{_OFTEN}{_E}", r"\1every \3 \4 times: \2", "K1, ssk, k to last 3 sts, k2tog, k1 on every RS row, 5 times in all."),
    # --- the place told first, or between ---
    row("edge", rf"{_START}(?:work(?:ing)?\s+)?at\s+(?:the\s+)?({_EDGE})\s*,?\s+({_CHANGE})\s+({N}\s+{STS})\s+(?!at\b)", r"\1\3 \4 at \2 ", "At neck edge, dec 1 st every row 3 times, then every other row 4 times."),
    row("every|each|on |next", rf"{_START}(?:on|in)\s+(?:the\s+)?((?:every|each|next)\s+[^.,;:]*?{ROUND}(?:\s+and\s+(?:every|each)\s+[^.,;:]*?{ROUND})?)\s*,?\s+({_CHANGE}\s+{N}\s+{STS}\s+{_WHERE})(?=\s*,?\s*(?:{N}\s+times|until\b|to\s+{N}\s+{STS}|twice\b|once\b|\.|$))\s*,?", r"\1\3 of \2 ", "On next and every foll 4th row, dec 1 st at neck edge until 20 sts rem."),
    row("shaping", rf"{_START}shaping\s+(?:the\s+)?(?:sides?|sleeves?)\s+by\s+({_CHANGING}\s+{N}\s+{STS}\s+{_ENDS}\s+[^.;:]*?{ROUND})\s*,\s*((?:work|cont(?:inue)?)\s+in\s+(?:st\.?\s+st|patt(?:ern)?|stocking\s+stitch|stockinette(?:\s+stitch)?))\s*,?\s*(?=until\b|to\b)", r"\1\3, \2 ", "Shaping sides by increasing 1 st at both ends of 7th and every foll 8th row, work in st st until there are 64 sts."),
    row("for the|for neck|for armhole", rf"\b({_CHANGE})(?:\s+{N}\s+{STS})?\s+for\s+(?:the\s+)?(?:neck|armhole|raglan|v-?neck)\s+(?=at\s+(?:the\s+)?(?:beg(?:inning)?|start|end)\s+of\s+(?:every|each|next)\b)", r"\1 1 st ", "Decrease for the neck at the end of every RS row, 6 times."),
    row("row and", r"(^\s*beg(?:inning)?\s+with\s+an?\s+\w+\s+row)\s+and\s+(?=work)", r"\1, ", "Beg with a k row and working all increases 2 sts in from ends of rows, now work in st st, shaping sides by inc 1 st at each end of 3rd and every foll 8th row to 71 sts."),
    row("working|work ", rf"((?:^|[.!])\s*(?:beg(?:inning)?\s+with\s+an?\s+\w+\s+row,\s*)?)work(?:ing)?\s+(?:all\s+)?(?:the\s+)?({_CHANGE}|{_CHANGE}s|(?:in|de)creases)\s+({N}\s+{STS}\s+in)\s+from\s+(?:the\s+|each\s+)?(?:edges?|ends?)(?:\s+of\s+(?:the\s+)?(?:rows?|work))?\s*,\s*(?:now\s+)?([^.;]*?\b{_CHANGING}\s+{N}\s+{STS}\s+{_ENDS}\b[^.;]*?){_E}", r"\1\4, working \2 \3 from the edges", "Working all decreases 3 sts in from the edge, dec 1 st at each end of next and foll 5 alt rows."),
    # --- two edges at the same time ---
    row("same time|simultaneously", rf"^\s*(?:from\s+(?:now|here)\s+on\s*,?\s*)?(?:{_READ_ON},?\s*(?:as|because|since|:)\s+)?(?:(?:please\s+)?note(?:\s+that)?:?\s+)?(?:the\s+)?{AT_ONCE}\s*(?:,?\s*(?:so\s+(?:please\s+)?{_READ_ON}|as\s+foll(?:ow)?s))?\s*[.:!]?\s*$", "the next lines side by side", "Read the next section through before you continue, as armhole and neck are shaped at the same time."),
    row("edge", rf"\b({_CHANGING})\s+(?=at\s+(?:the\s+)?{_EDGE}\b)", r"\1 1 st ", "Cont to dec at armhole edge as before on every RS row until 20 sts rem."),
    row("as before|as set|as est", rf"\b({_CHANGING}\s+{N}\s+{STS}\s+at\s+(?:the\s+)?(?:neck|armhole|raglan|front|side)\s+edge)\b(?!\s+as\s+before)((?:(?!\bat\s+(?:the\s+)?same\s+time|\b{_CHANGE}\s+(?:\d|at))[^.;])*?)(?:\s*,\s*|\s+)(?:\d\s+{STS}\s+in\s+from\s+(?:the\s+)?edge\s+)?{_AS_SET}\b(?:\s*,(?=\s+(?:on|in|of)\b))?", r"\1 as before\2", "Dec 1 st at armhole edge on every RS row as before until 20 sts rem."),
    row("as before", rf"(\bat\s+(?:the\s+)?)raglan(\s+edge\s+as\s+before)(?:\s+only)?(?:\s+(?:inside|within)\s+(?:the\s+)?border(?:\s+of\s+{N}\s+{STS})?)?", r"\1armhole\2", "Dec 1 st at raglan edge inside the border of 2 sts on every RS row as before until 20 sts rem."),
    row("as before", rf"\b(?:still|cont(?:inue)?\s+to)\s+({_CHANGING}\s+{N}\s+{STS}\s+at\s+(?:the\s+)?(?:neck|armhole|front|side)\s+edge\s+as\s+before)", r"\1", "Continue to dec 1 st at armhole edge every other row as before 6 more times."),
    row("same time", rf"{_START}((?:work(?:ing)?\s+)?{_CHANGING}\s+{N}\s+{STS}\s+at\s+(?:the\s+)?(?:neck|armhole|front|side)\s+edge(?:\s+as\s+before)?\s+(?:(?:on|in|of)\s+)?{_EVERY})\s*[,;]?\s*(?:and\s+)?,?\s*at\s+(?:the\s+)?same\s+time\s*,?\s+({_CHANGE}\s+[^.;]*?){_E}", r"\1\3, at the same time \2", "Cont to dec at raglan edge on every RS row as before, and at the same time dec 1 st at neck edge on next 4 rows."),
    row("shaping|decreas", rf"{_START}(?:still|while\s+(?:still\s+)?|continuing\s+to|keep(?:ing)?(?:\s+on)?)\s*(?:shaping|shape|decreasing|dec)\s+(?:at\s+)?(?:the\s+)?(?:raglan|armhole)(?:\s+edge)?\s+on\s+({_EVERY})\s+{_AS_SET}\s*,\s*(?:and\s+)?(?:at\s+the\s+same\s+time\s*,?\s*)?({_CHANGE}\s+{N}\s+{STS}\s+at\s+(?:the\s+)?neck\s+edge\s+[^.;]*?){_E}", r"\1\3, at the same time dec 1 st at armhole edge as before on \2", "Still shaping raglan on every RS row as before, dec 1 st at neck edge on next 5 rows."),
    row("work", rf"{_START}work\s+({N}(?:\s+more)?\s+rows?)\s*,?\s*(?:while\s+|and\s+)?({_CHANGE}|{_CHANGING})\s+({N}\s+{STS}\s+at\s+(?:the\s+)?)(neck|armhole|raglan|front|side)(\s+edge\b(?:\s+as\s+before)?)(?:\s+only)?\s+((?:in|on|of)\s+)?(?=(?:the\s+)?(?:next|every|each|first|1st|2nd|3rd|foll)\b)", r"\1work \2, at the same time \3 \4\5\6 on ", "Work 6 rows dec 1 st at neck edge on every row."),
    said_row_behind("edge", rf"(\b{_CHANGING}\s+{N}\s+{STS}\s+at\s+(?:the\s+)?{_EDGE})\s*\(\s*(?P<said>(?:k\s*1|knit\s+1)\s*,\s*{_SHAPED}\s*,\s*{_WORK}\s+to\s+(?:the\s+)?end|{_WORK}\s+to\s+(?:the\s+)?last\s+(?:3|three)\s+{STS}\s*,\s*{_SHAPED}\s*,\s*(?:k\s*1|knit\s+1))\s*\)", "Dec 1 st at neck edge (knit to last 3 sts, k2tog, k1) every RS row 5 times."),
    # --- the rows one after the other ---
    row("next row", rf"\b(?:the\s+)?next\s+row\s*,?\s*(?:and\s+)?(?:then\s+)?(?:once\s+(?:more\s+)?|again\s+)?(?:on\s+)?(?:the\s+)?(?:(?:foll(?:owing)?\.?|next)\s+row|row\s+(?:after|following)(?:\s+(?:that|this|it))?|one\s+after\s+(?:that|it)){_E}", "next 2 rows", "Dec 1 st at neck edge on next row, then once more on the following row."),
    row("row", r"\bnext\s+((?:(?:rs|ws)\s+)?row)\s*,?\s*(?:and\s+)?(?:then\s+)?(?:once\s+(?:more\s+)?|again\s+)?(?:on\s+)?(?:the\s+)?(?:foll(?:owing)?\.?|next)\s+(rs|ws|alt(?:ernate)?)\s+row(?=\s*[.;]|\s*$)", r"next \1, then every \2 row 1 times", "Dec 1 st at each end of next RS row and on foll RS row."),
    row(" in ", rf"({_CHANGE}\s+{N}\s+{STS}\s+{_WHERE}\s+(?:as\s+before\s+)?)in\s+(?=(?:the\s+)?(?:next|every|each|foll|\d+(?:st|nd|rd|th)))", r"\1on ", "Decrease 1 st at the neck edge in the next 5 rows, then on every other row 3 times."),
    row("the next|the foll|first", rf"({_CHANGING}\s+{N}\s+{STS}\s+{_WHERE}\s+(?:as\s+before\s+)?)(?:on|of|in)\s+(?:the\s+)?(?:(next\b)|(?:first|1st)(?=(?:\s+row)?\s+and\b))(?!\s+\d)", r"\1on next", "Decrease 1 st at armhole edge on the first and every foll alt row until 20 sts rem."),
    row("each end|both end", r"(\b(?:each|both)\s+(?:ends?|sides?)\b[^.]*?(?:[,;]|\band)\s*(?:then\s+)?)(?:at\s+)?(?:each|both)\s+ends?\s+of\s+(?=(?:the\s+)?(?:next|every|each|foll)\b)", r"\1", "Inc 1 st at each end of 5th row, then each end of every following 6th row until there are 72 sts."),
    row("then of|then in", rf"((?:[,;]|\band)\s*then\s+)(?:of|in)\s+(?=(?:the\s+)?(?:every|each|foll|next|{N}\s+foll))", r"\1on ", "Dec 1 st at each end of next 3 rows, then of 4 foll alt rows, then of every foll 4th row until 50 sts rem."),
    row("and then", r"\s+and\s+then\s+(?=(?:on\s+|of\s+|in\s+)?(?:the\s+)?(?:(?:\d+\s+|one\s+|two\s+|three\s+|four\s+|five\s+|six\s+)?foll|next|every|each))", ", then ", "Dec 1 st at each end of next 4 rows and then on foll 3 alt rows."),
    row("to end", rf"{_START}(next\s+row\s*(?:\(?[rw]s\)?)?\s*:\s*)(?:work|knit|purl|k|p|patt(?:ern)?)\s+(?:in\s+patt(?:ern)?\s+)?to\s+(?:the\s+)?end\s*,?\s*(?:but\s+)?({_CHANGING}\s+(?:1|one)\s+{STS}\s+at\s+(?:the\s+)?(?:neck|armhole|front|side)\s+edge)(?:\s+of\s+(?:this|the)\s+row)?{_E}", r"\1\2\3 on next row", "Next row (WS): P to end, but dec 1 st at armhole edge."),
    # --- cast off in steps ---
    said_row_behind("tog", rf"(\b{OFF}(?:\s+(?:all|rem(?:aining)?)(?:\s+{N})?(?:\s+{STS})?|\s+(?:in\s+(?:patt(?:ern)?|rib)|loosely|knitwise|purlwise))*)\s*,\s*(?P<said>(?:taking|working|knitting|k|work)\s+(?:2|two)\s+(?:{STS}\s+)?tog(?:ether)?\s*(?:(?:all\s+along|(?:all\s+the\s+way\s+)?across|along|to\s+(?:the\s+)?end\s+of)(?:\s+(?:the|this)\s+row)?)?){_E}", "Cast off, taking 2 tog all along the row."),
    said_row_behind("marked|cent|corner|mitre|point", rf"(\b{OFF}(?:\s+(?:all|rem(?:aining)?)(?:\s+{STS})?|\s+(?:loosely|in\s+rib(?:bing)?|in\s+patt(?:ern)?))*)\s*,?\s+(?P<said>(?:still\s+)?{_CHANGING}\s+(?:(?:1|one)\s+{STS}\s+)?(?:(?:at|on)\s+)?(?:either|each|both)\s+sides?\s+of\s+(?:the\s+)?(?:marked|cent(?:er|re)|corner)\s+{STS}(?:\s+as\s+(?:before|set))?(?:\s+as\s+you\s+go)?|(?:still\s+)?{_CHANGING}\s+at\s+(?:the\s+)?(?:cent(?:er|re)|point|corners?)(?:\s+front)?(?:\s+as\s+(?:before|set))?(?:\s+as\s+you\s+go)?){_E}", "Cast off in rib, dec either side of the marked st as before as you go."),
    row("then|and", rf"(\b(?:{OFF}|bo)\s+{N}\s+{STS}\s+at\s+(?:the\s+)?{_EDGE}\s+(?:once|twice|{N}\s+times))\s*,\s*(?:and\s+)?then\s+(?={_CHANGE}\s+{N}\s+{STS}\s+at\b)", r"\1. ", "BO 4 sts at neck edge once, then dec 1 st at neck edge every RS row 3 times."),
    row("in steps|steps", rf"({OFF}|bo)(\s+in\s+steps\s+[^.;]*?(?:once|twice|times)\s*,?\s*(?:and\s+)?(?:then\s+)?{N}\s+{STS}){_E}", r"\1\2 once", "Bind off in steps at the shoulder edge: 6 sts twice, then 7 sts."),
    row("in steps|steps", rf"{_START}({OFF}|bo)\s+in\s+steps\s+at\s+(?:the\s+)?(armhole|neck|shoulder|side)\s+edge\s*[:,]\s*([^.;]*?{N}\s+{STS})(\s+(?:once|twice|{N}\s+times))?{_E}", r"\1\2 at \3 edge \4\5", "Bind off in steps at the neck edge: 6 sts twice, then 7 sts once."),
    # --- spread over a row ---
    *(
        row("evenly", rf"(?<=,)\s*(?:{stitch})\s+to\s+(?:the\s+)?last\s+({N})(?:\s+{STS})?\s*,?\s*({_CHANGING})\s+({N})(?:\s+{STS})?\s+evenly(?:\s+spaced)?(?=\s*,)", rf" \2 \3 sts evenly to last \1 sts {worked}", f"K5, {'rib' if stitch[0] == 'r' else stitch[0]} to last 5 sts dec 9 evenly, K5.")
        for stitch, worked in (("k|knit", "knitted"), ("p|purl", "purled"), (r"rib|patt(?:ern)?|work\s+in\s+(?:rib|patt(?:ern)?)", ""))
    ),
    row("evenly", rf"{_START}({_CHANGE})\s+evenly\s+({N}\s+{STS})\s+(?:on|over|in|across)\s+(?:the\s+)?(?:next|foll(?:owing)?)\s+(?:row|rnd|round){_E}", r"\1\2 \3 evenly", "Decrease evenly 8 sts on the next round."),
)  # fmt: skip
"""The rows, in the order tried."""
