"""Other wordings inside a row told in prose: how far, past which place, between which stars, and what it changes. No I/O.

They are looked for only in a line that nothing else reads. A group between two stars that ends its row is
worked over all of it (common practice). Source: the wording of patterns in print, US and UK.
"""

from __future__ import annotations

from typing import Final

from stepper.project.part_names import PART, WHICH
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import LONG, STS, N, Synonym, row

_WORK: Final = r"(k|p|knit|purl)"
_PART: Final = rf"(?:half\s+)?{WHICH}{PART}s?"
_DS: Final = r"(?:ds|double\s+st(?:itch)?)"
_TURN: Final = r"(?=\s*,\s*(?:and\s+)?(?:turn|w&t|wrap))"
_STITCH: Final = r"(?:[kp]\s?\d|k\d?tog|p\d?tog|ssk|ssp|skp|skpo|sl\b|m1|cdd|dec\b|inc\b|turn|w&t)"
_PASS: Final = r"(?:sm|slm|slip\s+(?:the\s+)?marker)\b"
_MANNER: Final = r"(?:in\s+(?:this|the\s+same)\s+(?:manner|way|fashion)|like\s+this|as\s+(?:before|set|established))"
_GOES_ON: Final = rf"(?:(?:cont(?:inue)?|go\s+on|carry\s+on|keep\s+on|work)(?:\s+(?:to\s+work|working|short\s+rows))?(?:\s+{_MANNER})?)"
_EACH_TIME: Final = r"(?:(?:at|before)\s+(?:each|every)\s+turn|(?:each|every)\s+time(?:\s+before\s+(?:turning|you\s+turn))?|(?:than|past)\s+(?:the\s+)?(?:last|previous)\s+(?:turn|time)|before\s+(?:each|every)\s+turn)"
_MORE_TIMES: Final = rf"(?:(?:for\s+)?another\s+({N})\s+times|({N})\s+(?:more\s+times|times\s+more))"
_RESOLVED: Final = rf"(?:(?:(?:and\s+)?(?:close|resolve|pick\s+up|hide|work|knit)(?=\s+(?:all\s+|the\s+|each\s+|every\s+)*(?:gaps|wraps|ds|double))|(?:again\s+)?(?:closing|resolving|picking\s+up|hiding|working|knitting|lifting))\s+(?:(?:all(?:\s+of)?|any|each|every|the|remaining|rem|both|last)\s+)*(?:gaps?|wraps?|{_DS}|double\s+st(?:itche)?s|dss)(?:\s+(?:(?:as|when)\s+(?:you\s+(?:come|get|go)(?:\s+(?:to|across)\s+(?:them|it|each))?|(?:one|1)(?:\s+st(?:itch)?)?|single\s+{STS}|one\s+{STS}|you\s+(?:meet|reach)\s+them)|by\s+(?:knitting|working)\s+(?:the\s+wraps|them|each)\s+(?:together\s+)?with\s+the(?:ir|m)?\s*{STS}|(?:together\s+)?with\s+their\s+{STS}))*)"
_REPEATS: Final = rf"{N}\s+repeats(?:\s+of\s+{N}\s+{STS})?(?:\s+a?round)?"
_CHARTED: Final = r"(?:rounds|rnds|rows)\s+\d+\s*-\s*\d+\s+(?:of|from)\s+(?:the\s+)?chart(?:\s+[a-z0-9])?"
_ENDS: Final = r"(?=\s*[.,;=(]|\s+-|\s*$)"

TOLD_ROWS: tuple[Synonym, ...] = (
    # --- how far ---
    row("across|over", rf"\b{_WORK}\s+(?P<said>(?:back\s+)?(?:across|over|along)\s+(?:the\s+)?{_PART})\s*,\s*(?={_PASS})", r"\1 to marker, ", "Row 2 (WS): P to marker, sm, p across the back, sm, p the right sleeve, sm, p4, turn.", again=True, spelt_out=True),
    row("sleeve|front|back|body|palm|instep", rf"(\b{_PASS}\s*,\s*{_WORK}\s+)(?P<said>(?:the\s+)?{_PART})\s*,\s*(?={_PASS})", r"\1to marker, ", "Row 2 (WS): P to marker, sm, p the right sleeve, sm, p4, turn.", again=True, spelt_out=True),
    said_row_behind("on the other", rf"(\b(?:last|previous)\s+(?:{_DS}|wrapped\s+st(?:itch)?|wrap))\s+(?P<said>(?:on|at)\s+(?:the\s+)?other\s+(?:side|end)){_ENDS}", "Row 3: DS, k to 3 sts before the last DS on the other side, turn."),
    row("further|more|beyond|past", rf"\b{_WORK}(\s+to\s+)(?:the\s+)?(marker|bor|m)\s*,?\s+(?:and|then)\s+(?:(?:k|p|knit|purl)\s+)?({N})(?:\s+{STS})?\s+(?:further|more|beyond(?:\s+it)?|past(?:\s+it)?){_TURN}", r"\1\2\3, \1 \4", "Row 2: P to BOR and 6 sts further, turn."),
    row("make 1|make one", r"\bmake\s+(?:1|one)[\s-]+(l(?=eft)|r(?=ight))(?:eft|ight)\b", r"m1\1", "Thumb round 1: K to marker, slip marker, make 1 left, k to marker, make 1 right, slip marker, k to end."),
    row("slip it|remove it", r"(\bmarker\b(?:(?!\bmarker\b)[^.:])*?,\s*)(?:(s)lip|(r)emove)\s+it\b", r"\1\2\3m", "Next rnd: K to marker, slip it, m1r, k to marker, m1l, slip it, k to end."),
    row("past|beyond", rf"\b{_WORK}\s+(?:to|until)\s+({N})\s+{STS}\s+(?:past|beyond)\s+(?:the\s+)?(?:bor|beg(?:inning)?\s+of\s+(?:the\s+)?(?:round|rnd)|(?:start|beg(?:inning)?)-of-(?:round|rnd))(?:\s+(?:marker|m))?{_TURN}", r"\1 to BOR, \1 \2", "Row 2: P until 8 sts past the beginning of the round, w&t."),
    row("the turn|previous turn|turning point", rf"(\b(?:before|past)\s+)(?:the\s+)?(?:(?:previous|last)\s+)?turn(?:ing\s+point)?(?:\s+(?P<said>on\s+the\s+(?:left|right|other\s+side)))?{_TURN}", r"\1last turn", "Row 3: DS, k to 3 sts before the turn, turn."),
    row("past|beyond", rf"(?<!\bsm,\s)(?<!marker,\s)\b{_WORK}\s*({N})(?:\s+{STS})?\s+(?:past|beyond)\s+(?=(?:the\s+)?(?:(?:last\s+)?(?:{_DS}|turn)|marker|bor|m)\b)", r"\1 to \2 sts past ", "K 10 past the marker, turn."),
    row("across|over", rf"\b{_WORK}\s+(?P<said>(?:back\s+)?(?:across|over|along)\s+(?:the\s+)?{_PART})\s+(?=to\s+{N}\s+{STS}\s+(?:before|past)\b)", r"\1 ", "Cast on 60 sts. K across back to 5 sts before marker, w&t.", spelt_out=True),
    said_row_behind("from ", rf"((?:^|:)\s*)(?P<said>from\s+(?:the\s+)?(?:bor|beg(?:inning)?\s+of\s+(?:the\s+)?(?:round|rnd)))\s*,\s*(?={_WORK}\b)", "Row 1: From BOR, knit 16, turn."),
    said_row_behind("closing|resolving|picking|hiding|lifting|wraps|double|ds", rf"(\b(?:knit|purl|k|p|work)\b[^.;:,]*?)\s*,?\s+(?:while\s+)?(?P<said>{_RESOLVED})(?=\s*[.;]|\s*$)", "Knit to end of round, closing the gaps by knitting the wraps together with their sts."),
    said_row("wraps|double|ds|gaps", rf"(?:(?<=^)|(?<=[.!]))\s*(?P<said>(?:on|in)\s+(?:the\s+)?(?:foll(?:owing)?|next)\s+(?:rnd|round|row)s?\s*,?\s+{_RESOLVED})\s*(?:[.]|$)", "On the following rnd, work each DS as 1 st."),
    # --- short rows that go on ---
    row("further|more|farther", rf"((?:^|[.])\s*){_GOES_ON}\s*,?\s+(?:(?:turning|working|work|going)\s+)?({N})\s+(?:(?:more\s+)?{STS}\s+(?:more|further|farther|beyond)|more\s+{STS})(?:\s+out)?\s+{_EACH_TIME}\s*,?\s+{_MORE_TIMES}{_ENDS}", r"\1Work to \2 sts past last turn, turn. Work to \2 sts past last turn, turn. Rep last 2 rows \3\4 times in all", "Continue in this way, turning 4 sts further out each time, 3 more times."),
    row("leaving|earlier|before", rf"((?:^|[.])\s*){_GOES_ON}\s*,?\s+(?:(?:leaving)\s+({N})\s+more\s+{STS}\s+unworked|(?:turning)\s+({N})\s+{STS}\s+(?:earlier|sooner))\s+{_EACH_TIME}\s*,?\s+{_MORE_TIMES}{_ENDS}", r"\1Work to \2\3 sts before last turn, turn. Work to \2\3 sts before last turn, turn. Rep last 2 rows \4\5 times in all", "Continue in this way, leaving 5 more sts unworked at each turn, 3 more times."),
    # --- what a row is called ---
    # --- rib with its stitches behind ---
    row("rib", rf"\bwork\s+(?:({LONG})\s+(?:of\s+|in\s+)?|(?:in\s+)?)rib(?:bing)?(?:\s+(?:in\s+the\s+round|round\s+and\s+round|all\s+round))?\s*(?:,\s*|\(\s*|:\s*)k(?:nit)?\s?(\d)\s*,\s*p(?:url)?\s?(\d)\s*\)?(?=\s*\.?\s*$)(?<=[\d)])", r"work in k\2, p\3 rib for \1", "Work 4 cm rib in the round, k 1, p 1."),
    row("rib", r"\bwork\s+(?:in\s+)?rib(?:bing)?(?:\s+(?:in\s+the\s+round|round\s+and\s+round|all\s+round))?\s*\(\s*k(?:nit)?\s?(\d)\s*,\s*p(?:url)?\s?(\d)\s*\)\s*(?=until\b|for\b)", r"work in k\1, p\2 rib ", "Work rib round and round (knit 1, purl 1) until piece measures 9 cm."),
    row("rib", r"((?:^|[.:!])\s*)rib\s+(?:in\s+)?k(?:nit)?\s?(\d)\s*,\s*p(?:url)?\s?(\d)(?:\s+rib)?(?:\s+as\s+(?:established|set))?\s+(?=for\b|until\b)", r"\1work in k\2, p\3 rib ", "Rib k1, p1 for 16 rounds."),
    # --- markers ---
    row("marker after|m after", rf"\b{_WORK}\s+(?:1|one|a)\s+(?:round|rnd)\s*,\s*(?:placing|and\s+place)\s+(?:a\s+|the\s+|another\s+)?(?:second\s+|side\s+)?(?:marker|m)\s+after\s+({N})\s+{STS}{_ENDS}", r"\1 \2, pm, \1 to end", "Knit 1 rnd, placing second m after 16 sts."),
    # --- which rows are the pattern ---
    row("purled|knit", rf"((?:^|[.!])\s*)(?:all|every|each)\s+(?:(?:the\s+)?(?:following|foll|other|remaining)\s+)?((?:ws|rs|wrong[-\s]side|right[-\s]side|even|odd))(?:-?\s*numbered)?\s+(row|rnd|round)s?\s+(?:is|are)\s+(?:(knit)(?:ted)?|(purl)ed){_ENDS}", r"\1all \2 \3s: \4\5", "Every following WS row is purled."),
    row("same|like", rf"((?:^|[.!])\s*)(?:(?:every|each|all)\s+(?:(?:the\s+)?(?:following|foll|other|remaining|subsequent)\s+)?)(round|rnd|row)s?\s+(?:is|are)\s+(?:worked\s+|knit\s+)?(?:(?:exactly\s+)?(?:the\s+same|alike)|like\s+this(?:\s+one)?){_ENDS}", r"\1this \2 forms pattern", "K2, p2 around. Every following round is the same. Work until piece measures 5 cm."),
    row("whole|entire|pattern|repeat", rf"((?:^|[.!])\s*)(?:those|these)\s+({N})\s+(rounds|rnds|rows)\s+are\s+(?:your|the)\s+(?:whole\s+|entire\s+|complete\s+)?(?:pattern|repeat|pattern\s+repeat|yoke|lace|texture|cable){_ENDS}", r"\1these \2 \3 form pattern", "Those 2 rows are the whole pattern."),
    row("this is", rf"((?:^|[.:])\s*)(on\s+(?:every|each)\s+(?:rs|ws|right[-\s]side|wrong[-\s]side)\s+row)\s*,\s*(?:work\s+)?((?:[kp]\s?\d|{_STITCH})[^.:*]*)\.\s*this\s+is\s+(?:done|worked)\s+({N})\s+times(?:\s+(?:in\s+(?:all|total)|altogether))?(?:\s*[=:-]\s*(?={N}\s+{STS}))?", r"\1\2, work \3, \4 times. ", "On every RS row, k2, k2tog, k to last 4 sts, skp, k2. This is done 6 times."),
    # --- what it changes ---
    row("you lose", rf"((?:^|[.!])\s*)you\s+lose\s+({N})\s+{STS}{_ENDS}", r"\1\2 sts decreased", "Dec round: K1, k2tog, k to end. You lose 1 st."),
    row("you gain", rf"((?:^|[.!])\s*)you\s+gain\s+({N})\s+{STS}{_ENDS}", r"\1\2 sts increased", "Inc round: K1, m1, k to end. You gain 1 st."),
    row("gone|fewer|less|lost|taken", rf"((?:^|[.!(])\s*)({N})\s+{STS}\s+(?:gone|fewer|less|lost|taken\s+out|disappear)(?=\s*\)|\s*[.,;=(]|\s+-|\s*$)", r"\1\2 sts decreased", "Dec round: K1, k2tog, k to end. 1 st gone."),
    row("more|gained|added|extra", rf"((?:^|[.!(])\s*)({N})\s+{STS}\s+(?:more|gained|added|extra)(?=\s*\)|\s*[.,;=(]|\s+-|\s*$)", r"\1\2 sts increased", "Inc round: K1, m1, k to end. 1 st more."),
    # --- charts ---
    row("repeats", rf"\bwork\s+chart\s+([a-z0-9])\s*,\s*(rounds|rnds|rows)\s+(\d+)\s*(?:-|to)\s*(\d+)\s*[,:]\s*(?P<said>{_REPEATS}){_ENDS}", r"work \2 \3-\4 of chart \1", "Work Chart B, rounds 1 to 30: 12 repeats of 20 sts.", spelt_out=True),
    said_row_behind("repeats", rf"(\bwork\s+{_CHARTED})\s*[,:]\s*(?P<said>{_REPEATS}){_ENDS}", "Work rounds 1-8 of Chart A: 35 repeats of 8 sts."),
    said_row_behind("decreas|increas", rf"(\bwork\s+{_CHARTED})\s*,\s*(?P<said>(?:de|in)creasing\s+on\s+(?:round|rnd|row)s?\s+\d+(?:\s*(?:,|and)\s*\d+)*(?:\s+from\s+{N}\s+to\s+{N}\s+{STS})?){_ENDS}", "Work rounds 1-14 of Chart B, decreasing on round 13 from 6 to 4 sts."),
    said_row_behind("are made|are worked|are shown", rf"(\bwork\s+{_CHARTED}[^.]*\.\s*)(?P<said>(?:de|in)creases\s+are\s+(?:made|worked|shown)\s+on\s+(?:round|rnd|row)s?\s+\d+(?:\s*(?:,|and)\s*\d+)*(?:\s*,?\s+and\s+each\s+repeat\s+(?:then\s+)?has\s+{N}\s+{STS}\s+after(?:\s+it|wards)?)?)\.\s*", "Work rounds 1-8 of Chart A. Decreases are made on round 7, and each repeat has 6 sts after it. 60 sts."),
)  # fmt: skip
"""The rows, in the order tried."""
