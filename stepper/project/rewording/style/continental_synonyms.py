"""Other wordings of continental pages put into English: threads, asides behind "=", explanations, due lengths. No I/O.

Such pages explain a technique once under a name in capitals and refer to it ("- read DECREASE TIP"), say behind an
equals sign what stitches are or come to, say how often "in total", and begin a sentence with the length at which it is
due. What is explained becomes a round of that name; a reference works it where the sentence says no more than the
explanation does, and is said with the line where the sentence can be read without it.
Source: pattern pages of continental houses in English; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.part_names import PIECE
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import BEGIN, LONG, OFF, ROUND, STOP, STS, N, Synonym, row

_THREAD: Final = r"(?:(?:marker|marking)\s+threads?|markers?)"
_TWO: Final = r"(?:\s+(?:these|the|those|them|2|two|4|four|6|six|sts|stitches))*"
_MIDDLE: Final = (
    rf"[(]\s*=?\s*(?P<said>(?:the\s+|with\s+(?:the\s+)?)?{_THREAD}\s+(?:(?:sits|is|lies)\s+)?"
    rf"(?:in\s+the\s+(?:middle|cent(?:er|re))\s+of|(?:mid(?:way)?\s+|in\s+)?between){_TWO})\s*[)]"
)
"""That a marker stands in the middle of the stitches before these brackets."""
_NAME: Final = (
    r"(?-i:(?!CHART|DIAGRAM|PATTERN|STRIPE|TEXTURE|LACE|CABLE|BORDER|BUTTON)[A-Z][A-Z-]+(?:[ /][A-Z][A-Z-]+){0,3})"
)
"""The name of what is explained elsewhere: never a chart or a pattern, which say what is worked."""
_EXPLAINED: Final = rf"(?:{_NAME}|(?-i:(?:Increase|Decrease|Increasing|Decreasing|Raglan)\s+tip|(?:Toe|Thumb|Crown|Raglan|Gusset)\s+(?:decreases|increases)|Raglan))"
"""The name of a round that is explained, at the head of its explanation."""
_TIP: Final = rf"(?:{_NAME}|(?-i:BUTTON\s?HOLES?|Increase|Decrease|Raglan)(?:\s+tip)?|(?:increas|decreas)(?:e|ing)\s+tips?)"
_REFERENCE: Final = (
    r"(?:(?:please\s+)?(?:see|read|remember|as\s+(?:described|explained)\s+(?:in|under))\s+(?:the\s+)?"
    rf"(?:(?:explanations?|descriptions?)(?:\s+(?:above|below|(?:of|for)\s+{_TIP}))?|above|{_TIP})(?:\s+(?:above|below))?)"
)
_JOINT: Final = r"(?:\s*-+\s*|\s*[,;]\s*|\s*[(]\s*)(?:and\s+)?"
_PIECE: Final = rf"(?:(?:(?:back|front)\s+)?{PIECE}|it)"
_OFTEN: Final = rf"(?:a\s+total\s+of\s+({N})\s+times|({N})\s+times\s+(?:in\s+(?:all|total)|altogether))"
_THUS: Final = r"(?:like\s+this|(?:in\s+)?this\s+way|in\s+this\s+manner|as\s+before)"
_NEEDLE: Final = r"(?:(?:an?|the)\s+)?((?:(?:short|long)\s+)?(?:circular|double[-\s]pointed|straight)\s+needles?|needles?|dpns)\s+(?:size\s+|no\.?\s+)?(\d+(?:[.]\d+)?\s*mm)\b(?:\s*,?\s*(?:length\s+)?\d+\s*cm)?"
_SAID_NEEDLE: Final = _NEEDLE.replace("((?:(?:short", "(?P<said>(?:(?:short", 1)
_RIB: Final = r"(?:[(]\s*=?|,)\s*(?:k|knit)\s*(\d)\s*[,/]\s*(?:p|purl)\s*(\d)\s*(?:[)]|,|(?=[.]|$))(?:\s*(?:in\s+the\s+round|in\s+rounds|back\s+and\s+forth))?"
_LEFT: Final = r"(?:left|remain(?:ing)?|rem)"
_WHERE: Final = (
    r"(?:shoulders?|needles?|round|row|back|front|neck|(?:each\s+)?parts?|(?:back\s+|front\s+)?piece|heel\s+needle|thread|side)"
)
_NTH_ROUND: Final = r"(?:\d+(?:st|nd|rd|th)(?:\s*[(][\d\s,a-z]+[)])?|rs|ws|second|third|fourth|sixth|eighth|other)\s+(rounds?|rnds?|rows?)"
_BESIDE: Final = rf"(?:at|on|in)\s+each\s+side\s+of\s+(?:each|every|both|all(?:\s+the)?|the)\s+{_THREAD}"
"""Beside each marker, where the words do not say how many there are."""
_BOTH_OF: Final = rf"(?:at|on|in)\s+each\s+side\s+of\s+(?:both|(?:the\s+)?(?:2|two))(?:\s+of)?(?:\s+the)?()\s+{_THREAD}"
_EACH: Final = rf"(?:at|on|in)\s+each\s+side\s+of\s+(?:each|every|both|all|the)(?:\s+of)?(?:\s+the)?(?:\s+({N}))?\s+{_THREAD}"
"""Beside each marker, as the words stand when the first rows of the table are through."""

CONTINENTAL_SIGNS: tuple[Synonym, ...] = (
    row("side", r"[(]\s*=\s*(right|wrong)\s+side\s*[)]", r"(\1 side)", "Row 1 (= right side): Knit."),
    *(
        row(
            "marker",
            rf"\b(knit|purl|k|p)\s*{2 * half}(?:\s+{STS})?\s*{_MIDDLE}",
            rf"\1 {half}, slip marker, \1 {half}",
            f"*Knit to 3 sts before marker, k2tog, knit {2 * half} (the marker thread sits in the middle of these {2 * half} stitches), ssk; rep from * at each marker, k to end.",
            spelt_out=True,
        )
        for half in (1, 2, 3)
    ),
    row("over", r"\b(?:slip|sl)\s+(?:1|one)(?:\s+(?:st|stitch))?\s+(?:as\s+if\s+to\s+knit|knitwise)\s*,\s*(?:knit\s+(?:1|one)|k\s?1)(?:\s+(?:st|stitch))?\s*,?\s*(?:and\s+)?pass\s+(?:the\s+)?slipped\s+st(?:itch)?\s+over(?:\s+(?:the\s+)?(?:knitted|knit|worked)\s+(?:st|stitch|one))?", "skp", "K1, slip 1 stitch as if to knit, knit 1, pass the slipped stitch over, k to end."),
    row("twisted", r"\b(knit|purl|k|p)\s*2\s+(?:(?:sts|stitches)\s+)?twisted\s+together\b", r"\1 2 together tbl", "Knit 5, knit 2 twisted together, k to end."),
    row("yarn over", r"(?:(?<=^)|(?<=[,;:*(]))(\s*)1\s+yarn\s+over\b", r"\1yo", "Row 3: Knit 1, 1 yarn over, knit 2 together, knit to end."),
    row("cast on", rf"{BEGIN}(cast\s+on(?:\s+loosely)?\s+{N}\s+{STS}(?:\s+loosely)?)\s+(?:on|with|using)\s+{_SAID_NEEDLE}\s+and\s+(?:with\s+)?(?:the\s+)?((?-i:MC|CC\d?|[A-H])|main\s+colou?r)\b", r"change to \3 needles. with \4, \1", "Cast on 60 stitches with circular needle size 3.5 mm and main colour.", spelt_out=True),
    said_row_behind("cast on", rf"{BEGIN}(cast\s+on(?:\s+loosely)?\s+{N}\s+{STS}(?:\s+loosely)?)\s*[(]\s*(?P<said>(?:including|incl\.?|of\s+which)\s+{N}\s+(?:[a-z]+\s+)?{STS}(?:\s+(?:in|at|on)\s+each\s+side)?(?:\s+(?:towards|for)\s+(?:mid\s+front|(?:the\s+)?(?:front\s+)?bands?))?)\s*[)]", "Cast on 60 stitches (including 5 band stitches in each side towards mid front)."),
    row("cast on", rf"{BEGIN}(cast\s+on(?:\s+loosely)?\s+{N}\s+{STS}(?:\s+loosely)?)\s+(?:on|with|using)\s+{_SAID_NEEDLE}(?=\s*[.,;]|\s*$|\s+and\s+(?:distribute|divide|work|knit|join|place)\b)", r"change to \3 needles. \1", "Cast on 60 stitches on a short circular needle size 3.5 mm.", spelt_out=True),
    row("double ", r"\bdouble\s+pointed\s+needles?\b", "double-pointed needles", "Change to double pointed needles size 3 mm."),
    row("change ", rf"\b(change)\s+(?:back\s+)?to\s+{_NEEDLE}", r"\1 to \3 \2", "Change to double pointed needles size 3 mm."),
    row("distribute|divide", rf"\b(cast\s+on\s+{N}\s+{STS}(?:\s+loosely)?)\s+and\s+(?:distribute|divide)\s+(?:them|the\s+stitches)\s+(?:evenly\s+)?(?:on|over|between)\s+(?:the\s+)?(\d|three|four)\s+needles", r"\1. divide over \2 needles", "Cast on 60 sts and distribute them on 4 needles."),
    row("tighten", r"\b(turn)(?:\s+the\s+(?:work|piece))?\s*(?:,|\s+and)\s*(?P<said>tighten\s+(?:the\s+)?(?:thread|yarn))\s*(?:,\s*(?:and\s+)?|\s+and\s+|(?=[.]|$))", r"\1, ", "Row 1: Knit 12, turn, tighten the thread, purl 8, turn.", spelt_out=True),
    row("over all", rf"(\b{N}\s+(?:{ROUND}|ridges?))(?:\s+back\s+and\s+forth)?\s+over\s+all\s+(?:the\s+)?{STS}", r"\1", "Knit 1 round over all stitches."),
    row("two|2", rf"\b(?:knit|work)\s+(?:all\s+(?:the\s+)?(?:remaining\s+)?{STS}\s+together|together\s+all\s+(?:the\s+)?(?:remaining\s+)?{STS})\s+(?:two\s+(?:by|and)\s+two|2\s+(?:by|and)\s+2)\b", "*k2tog; rep from * to end", "Knit all stitches together 2 by 2."),
    row("loosely", rf"(?:(?<=^)|(?<=[.!]))(\s*)loosely\s+({OFF}(?:\s+(?:all|the|rem(?:aining)?|{STS}))*)", r"\1\2 loosely", "Loosely bind off all sts."),
    row("knit from|with knit|by knitting|with rib|with purl", rf"\b({OFF}(?:\s+(?:all\s+(?:the\s+)?{STS}|loosely))*)\s+(?:with\s+(?:a\s+)?|in\s+)(rib|knit|purl)(?:\s+from\s+the\s+(?:right|wrong)\s+side)?(?=\s*[.]|\s*$)", r"\1 in \2", "Bind off loosely with knit."),
    row("by knitting", rf"\b({OFF}(?:\s+(?:all\s+(?:the\s+)?{STS}|loosely))*)\s+by\s+knitting(?=\s*[.]|\s*$)", r"\1 in knit", "Bind off loosely by knitting."),
    row("from ", rf"\bfrom\s+(?:the|this)\s+{_THREAD}\s+(?P<said>(?:at\s+)?mid\s+(?:front|back)|(?:at|on|in)\s+(?:the\s+)?(?:heel|neck(?:\s+edge)?|side|middle))(?=\s*[.,;(]|\s*$)", "from marker", "Mark the last row. Work even until piece measures 12 cm from the marker mid front.", spelt_out=True),
    row("measured", rf"\b(?P<said>(?:insert|place|put)\s+(?:1|one|a)\s+{_THREAD}(?:\s+(?:in\s+the\s+(?:piece|work|middle\s+of\s+the\s+(?:row|round))|here|mid\s+(?:front|back)|after\s+the\s+first\s+{N}\s+{STS}|[(]\s*=?\s*(?:approx\.?\s+)?mid\s+(?:front|back)\s*[)]))*)\s*[,;.!-]\s*(?:and\s+)?(?:the\s+)?(?:piece|yoke|work|body|sleeve)\s+is\s+(?:now\s+)?measured\s+from\s+(?:here|this\s+{_THREAD}|the\s+{_THREAD})(?=\s*[.!]|\s*$)", "the piece is now measured from here", "Insert 1 marker in the piece after the first 40 stitches (= approx. mid front); the yoke is measured from this marker!", spelt_out=True),
    row("thread", rf"(\b{STS}|\bthem)\s+(on|onto|from)\s+(?:a|1|the)\s+thread(?=\s*[,.;]|\s*$|\s+(?:for|on(?:to)?|back)\b)", r"\1 \2 a holder", "Next round: Knit 12 sts, slip the next 10 sts on a thread for the sleeve, k to end."),
    row("together", rf"^\s*(?:knit\s+all\s+rounds\s+and\s+)?dec(?:rease)?\s+(?:1\s+st\s+)?(?P<said>(?:on|at)\s+each\s+side\s+of\s+(?:the\s+)?[a-z ]+?)\s+(?:as\s+follows|like\s+this)\s*:\s*knit\s+together\s+the\s+last\s+2\s+{STS}\s+before\s+the\s+first\s+{_THREAD}\s*,?\s*and\s+knit\s+together\s+twisted\s+the\s+first\s+2\s+{STS}\s+after\s+the\s+(?:second|last|other)\s+{_THREAD}", r"Dec round: knit to 2 sts before marker, k2tog, slip marker, knit to marker, slip marker, k2tog tbl, knit to end", "Decrease on each side of the top of the foot as follows: Knit together the last 2 stitches before the first marker thread, and knit together twisted the first 2 stitches after the second marker thread.", spelt_out=True),
    row("side", r"\b(?:finish|end)\s+with\s+a\s+row\s+(?:worked\s+)?(?:from|on)\s+the\s+(right|wrong)\s+side\b", r"ends with a \1 side row", "Knit 12 rows. Finish with a row from the wrong side."),
    row("beginning", rf"\b(?:insert|place|put)\s+(?:1|one|a)\s+{_THREAD}\s+at\s+the\s+(?:beginning|start)\s+of\s+the\s+round(?:\s*(?:=|[(]\s*=?)\s*(?P<said>(?:mid\s+|the\s+middle\s+|center\s+|centre\s+)?(?:under\s+(?:the\s+)?(?:sleeve|arm)|back|front|side))\s*[)]?)?", "place marker for beginning of round", "Insert 1 marker thread at the beginning of the round = mid under sleeve.", spelt_out=True),
    row("last row|last round", rf"\b(?:insert|place|put)\s+(?:1|one|a)\s+{_THREAD}\s+(?P<said>in\s+the\s+middle)\s+of\s+the\s+last\s+(row|round)", r"mark the last \2", "Insert a marker thread in the middle of the last row.", spelt_out=True),
    row("on the", rf"\b((?:knit|purl|work)\s+until\s+{N}\s+{STS}\s+rem(?:ain)?)\s+on\s+the\s+(?:needle|row|round)(?=\s*,)", r"\1", "Row 1 (RS): Knit until 10 stitches remain on the needle, skpo, turn."),
    row("knit|purl", r"(?:(?<=^)|(?<=[,;:*(]))(\s*)(\d{1,2})\s+(knit|purl)(?=\s*[,;*)]|\s*[.]?\s*$)", r"\1\3 \2", "*2 knit, 2 purl; rep from * to end."),
    row("*-*|from *", r"(\*[^*]+?)\s*\*\s*,?\s*rep(?:eat)?\s+(?:(?:from\s+)?\*\s*-\s*\*|from\s+\*(?:\s+to\s+\*)?)(?:\s+(?:the\s+whole|all\s+the\s+way|all)\s+(?:the\s+)?round|(?<=-\*)(?=\s*[.=]|\s*$))", r"\1; rep from * to end", "*Knit 4, knit 2 together*, repeat *-* all the way round."),
)  # fmt: skip
"""The rows for signs, tried before numbers are looked at."""

CONTINENTAL: tuple[Synonym, ...] = (
    # --- counts ---
    row("=", rf"^\s*=\s*({N}\s+{STS})\s*\.?\s*$", r"\1.", "= 58 (64, 70) sts."),
    row("=", rf"(?<=[a-z\d])\s*=\s*({N}\s+{STS})\s+{_LEFT}\s+(?:on|for|in|at)\s+(?:the\s+)?{_WHERE}(?=\s*\.?\s*$)", r". \1", "Knit 2 rounds = 24 sts remain on the round."),
    row("left|rem", rf"^\s*(?:there\s+are\s+(?:now\s+)?|you\s+now\s+have\s+)?({N}\s+{STS})\s+(?:are\s+)?{_LEFT}\s+(?:on|for|in)\s+(?:the\s+)?{_WHERE}{STOP}", r"\1.", "There are 24 (26, 28) stitches left for the shoulder."),
    row("after", rf"^\s*after\s+(?:(?:the|all)\s+)?(?:(?:last|final|these|those)\s+)?(?:increas|decreas)(?:e|es|ings?)(?:\s+round)?\s*,?\s*(?:there\s+are|you\s+have)\s+({N}\s+{STS})(?:\s+{_LEFT})?(?:\s+on\s+(?:the\s+)?(?:(?:circular|larger|smaller|long|short|working|left|right|heel|sole|toe)\s+)?(?:needles?|round|row))?{STOP}", r"\1.", "After the last increase there are 88 stitches on the needle."),
    row("=", rf"[(]\s*=\s*({N})\s+{STS}\s+(increas|decreas)ed(?:\s+(?:in\s+total|on\s+the\s+(?:round|row)))*\s*[)]", r"(\1 sts \2ed)", "Row 5: Knit 2, yo, k to last 2 sts, yo, k2 (= 2 stitches increased on the row)."),
    # --- what is explained elsewhere ---
    *(
        row("see|read|remember", rf"(?:\s*\b(?:and\s+)?(?:begin\s+(?:to\s+)?)?|\b)(inc|dec)(?:reas(?:e|ing))?\s+for\s+({_NAME}|raglan)\s+(?:at|on|in)\s+each\s+side\s+of\s+(?:the|all|all\s+the)\s+{markers}\s+{_THREAD}{_JOINT}(?P<said>(?:see|read|remember)\s+(?:the\s+)?explanation(?:\s+(?:above|below))?)\s*[)]?(?=\s*[.,!=]|\s*$)", rf". work \2 round. {2 * markers} sts \1", f"Knit 1 round and increase for RAGLAN on each side of the {markers} markers - see explanation above.", spelt_out=True)
        for markers in (2, 4)
    ),
    *(
        row("see|read|remember", rf"(?:\s*\b(?:and\s+)?(?:begin\s+(?:to\s+)?)?|\b)(inc|dec)(?:reas(?:e|ing))?\s+(?:(?:1|one)\s+{STS}|for\s+{_TIP})\s+(?:at|on|in)\s+each\s+side\s+of\s+(?:the|all|all\s+the)\s+{markers}\s+{_THREAD}{_JOINT}(?:see|read|remember)\s+(?:the\s+)?(?:explanation\s+for\s+)?({_NAME})(?:\s+(?:above|below))?\s*[)]?(?=\s*[.,!=]|\s*$)", rf". work \2 round. {2 * markers} sts \1", f"Knit 1 round and increase 1 stitch on each side of the {markers} markers - see RAGLAN.")
        for markers in (2, 4)
    ),
    row("see|read|remember", rf"(?:\s*\b(?:and\s+)?(?:begin\s+(?:to\s+)?)?|\b)(?:inc|dec)(?:reas(?:e|ing))?\s+for\s+({_NAME}|raglan)(?:\s+{_BESIDE})?{_JOINT}(?P<said>(?:see|read|remember)\s+(?:the\s+)?explanation(?:\s+(?:above|below))?)\s*[)]?(?=\s*[.,!=]|\s*$)", r". work \1 round", "Knit 1 round and increase for RAGLAN on each side of each marker - see explanation above.", spelt_out=True),
    row("see|read|remember", rf"\b(?:inc|dec)(?:reas(?:e|ing))?\s+(?:(?:1|one)\s+{STS}\s+{_BESIDE}|for\s+[a-z]+(?:\s+{_BESIDE})?){_JOINT}(?:see|read|remember)\s+(?:the\s+)?({_NAME})(?:\s+(?:above|below))?\s*[)]?(?=\s*[.,!=]|\s*$)", r"work \1 round", "Decrease 1 stitch on each side of each marker - read DECREASE TIP."),
    row("see|read|remember", rf"\b(inc|dec)(?:reas(?:e|ing))?\s+({N})\s+{STS}\s+(?:(?:mid|in\s+the\s+middle)\s+)?under\s+(?:the\s+)?(?:sleeve|arm){_JOINT}(?:see|read|remember)\s+(?:the\s+)?({_NAME})(?:\s+(?:above|below))?\s*[)]?(?=\s*[.,!=]|\s*$)", r"work \3 round. \2 sts \1", "Decrease 2 stitches under the sleeve - read DECREASE TIP."),
    row("work", rf"\bwork\s+({_NAME})\s+(?=(?:on\s+|in\s+)?(?:every|each)\b)", r"work \1 round ", "Work TOE DECREASES on every 2nd round 4 times, and then on every round 8 times."),
    row(". work", r"^\s*[.]\s+(?=work\s)", "", "Increase 1 stitch on each side of the 2 markers - see RAGLAN."),
    said_row("see|read|remember|as ", rf"(?<=[\w)]){_JOINT}(?P<said>{_REFERENCE})\s*[)]?(?=\s*[.,;:!=]|\s*$)", "Knit 1 round, increasing 8 sts evenly - read INCREASE TIP."),
    said_row("see|read|remember", rf"{BEGIN}(?P<said>(?:now\s+)?{_REFERENCE}){STOP}", "Read INCREASE TIP."),
    # --- how often ---
    row("total|altogether|in all", rf"\b(?:(inc|dec)(?:rease)?\s+{_THUS}|repeat\s+(?:the|this|these)\s+(inc|dec)(?:reas(?:e|es|ings?)))\s+(?:approx\.?\s+)?(?:(?:on|in)\s+)?(?:every|each)\s+({_NTH_ROUND})\s+{_OFTEN}", r"rep same \1\2 \4 every \3 \5\6 times in total", "Increase like this every 2nd round a total of 5 times."),
    row("total|altogether|in all", rf"\b(?:(inc|dec)(?:rease)?\s+{_THUS}|repeat\s+(?:the|this|these)\s+(inc|dec)(?:reas(?:e|es|ings?)))\s+(?:approx\.?\s+)?(?:every|each)\s+({LONG})\s+{_OFTEN}", r"rep same \1\2 round every \3 \4\5 times in total", "Decrease like this every 3 cm a total of 5 times."),
    row("more|another", rf"\brepeat\s+(?:the|this|these)\s+(inc|dec)(?:reas(?:e|es|ings?))\s+(?:approx\.?\s+)?(?:(?:on|in)\s+)?(?:every|each)\s+({_NTH_ROUND}|{LONG})\s+(?:another\s+({N})\s+times|({N})\s+(?:more\s+times|times\s+more))", r"rep same \1 round every \2 \4\5 times more", "Repeat the decrease every 4 cm 2 more times."),
    row("decrease on|increase on|decrease every|increase every", rf"(?:(?<=^)|(?<=[.,]))(\s*)(?:and\s+)?(?:then\s+)?(inc|dec)rease\s+(?:on\s+)?(?:every|each)\s+(?:(?:(other|\d+(?:st|nd|rd|th))\s+)?(round|row))\s+({N})\s+times(\s+in\s+(?:all|total))?(?=\s*[.,=]|\s*$)", r"\1rep same \2 \4 every \3 \4 \5 times\6", "Increase like this every 2nd round a total of 5 times. Then increase on every round 4 times."),
    # --- fabrics ---
    row("rib", rf"\b(?:then\s+)?(?:work|knit)\s+(?:in\s+)?rib(?:bing)?(?:\s+in\s+(?:the\s+round|rounds))?\s*{_RIB}", r"work in k\1, p\2 rib", "Work rib in the round (= knit 2, purl 2) for 3 cm."),
    row("rib", r"\bwork\s+(?:(?:an?\s+)?ribbed\s+edge|rib)(?:\s+in\s+the\s+round)?\s+with\s+knit\s*(\d)\s*,\s*purl\s*(\d)\b", r"work in k\1, p\2 rib", "Work a ribbed edge in the round with knit 2, purl 2 for 7 cm."),
    row("rib as", r"\bwork\s+rib\s+as\s+follows\s*:\s*\*\s*(?:knit|k)\s*(\d)\s*,\s*(?:purl|p)\s*(\d)\s*[;,]?\s*\*?\s*[;,]?\s*(?:rep|repeat)\s+from\s+\*(?:\s+to\s+\*)?(?:\s+(?:(?:the\s+whole|all)\s+(?:the\s+)?(?:round|row)|to\s+end|around))?(?=\s*\.?\s*$)", r"work in k\1, p\2 rib", "Work rib as follows: *1 knit, 1 purl*, repeat from * to * the whole round."),
    row("over", rf"\b({OFF}|bo)(\s+loosely)?\s+(?:with\s+)?knit\s+over\s+knit\s+and\s+purl\s+over\s+purl\b", r"\1\2 in rib", "Bind off with knit over knit and purl over purl."),
    row("side", rf"\b(in\s+(?:stockinette|stocking)(?:\s+st(?:itch)?)?)\s+with\s+({N})\s+(?:(?P<said>band|edge|border)\s+)?{STS}\s+in\s+garter(?:\s+st(?:itch)?)?\s+(?:in|at|on)\s+each\s+side\b", r"\1, keeping \2 edge sts in garter st", "Continue in stockinette stitch with 5 band stitches in garter stitch in each side.", spelt_out=True),
    row("over all", rf"\b(in\s+(?:stockinette|stocking|garter)(?:\s+st(?:itch)?)?)\s+over\s+all\s+{STS}(?=\s*[.,]|\s*$|\s+(?:until|for)\b)", r"\1", "Continue in stockinette stitch over all stitches."),
    row("in the round", r"(?:(?<=^)|(?<=[.!]))(\s*)knit\s+in\s+the\s+round(?=\s*\.?\s*$)", r"\1join in the round. work in st st", "Knit in the round."),
    row("back and forth", r"(?:(?<=^)|(?<=[.!]))(\s*)(?:now\s+)?(?:work|knit)\s+back\s+and\s+forth(?:\s+on\s+(?:the\s+)?(?:circular\s+)?needle)?(?=\s*\.?\s*$)", r"\1work flat", "Work back and forth."),
    row("while|same time", rf"(?:(?<=^)|(?<=[.!]))(\s*(?:knit|purl)\s+(?:1|one)\s+(?:round|row))\s*,?\s+(?:while|(?:and|where\s+you)\s+at\s+the\s+same\s+time)\s+(inc|dec)(?:rease|reasing)?\s+({N}\s+{STS}\s+evenly)", r"\1, \2reasing \3", "Knit 1 round and at the same time decrease 8 sts evenly."),
    row("divide", r"^(\s*)(?:now\s+|on\s+the\s+next\s+round\s*,?\s+)?divide\s+(?:the\s+)?(?:yoke|piece|work)\s+for\s+(?:the\s+)?body\s+and\s+(?:the\s+)?sleeves(?:\s+on\s+the\s+next\s+round)?\s*,?\s*(?:as\s+follows|like\s+this|i\.e\.)\s*:\s*", r"\1Next round: ", "On the next round divide the yoke for body and sleeves as follows: Knit 12 sts, hold 10 sts for sleeve, k to end."),
    # --- lengths at which something is due ---
    row("when", rf"(?:(?<=^)|(?<=[.!]))(\s*)(?:now\s+)?when\s+(?:the\s+)?({_PIECE})\s+measures\s+((?:about\s+|approx\.?\s+)?{LONG})((?:\s+from\s+(?:the\s+)?[a-z][a-z -]*?)?)\s*,?\s+(?P<said>it\s+is\s+time\s+(?:for|to)\s+(?:work\s+)?[a-z ]+)(?=\s*[.]|\s*$)", r"\1work even until \2 measures \3\4", "When the leg measures 17 cm, it is time for the heel.", spelt_out=True),
    row("when", rf"^(\s*)((?:{OFF}|bo)(?:\s+(?:all|loosely|the\s+remaining|remaining|{STS}|in\s+rib))*)\s+when\s+(?:the\s+)?({_PIECE})\s+measures\s+({LONG})(?=\s*\.?\s*$)", r"\1work even until \3 measures \4. \2", "Bind off when piece measures 26 cm."),
    # --- parts ---
    row("aside", rf"{BEGIN}(?:lay|put|set)\s+(?:the\s+)?(?:piece|work|body)\s+aside\s*(?:,?\s*(?:and|while)\s+(?P<said>(?:work|knit)\s+(?:the\s+)?sleeves?|(?:the\s+)?sleeves?\s+(?:is|are)\s+(?:worked|knitted)))?(?=\s*[.]|\s*$)", "hold all sts", "Put the work aside and knit the sleeves.", spelt_out=True),
    row("work as ", rf"{BEGIN}work\s+as\s+(?:on\s+)?(?:the\s+)?((?:left\s+|right\s+)?(?:front|back))\s+piece\s*,?\s+but\s+(?:mirrored|reversed)(?=\s*[.]|\s*$)", r"work as for \1, reversing shaping", "Work as right front piece but mirrored."),
    row("same as", rf"{BEGIN}work\s+(?:the\s+)?(?:left|right)\s+front(?:\s+piece)?\s+(?:the\s+same\s+as|as)\s+(?:the\s+)?(left|right)(?:\s+front(?:\s+piece)?)?\s*,?\s+but\s+(?:mirrored|reversed)(?=\s*[.]|\s*$)", r"work as for \1 front, reversing shaping", "Work the left front the same as the right, but mirrored."),
    row("as on", rf"{BEGIN}work\s+as\s+on\s+(?:the\s+)?(body|back|front|(?:left|right)\s+(?:front|sleeve))(?:\s+piece)?(?=\s*[.]|\s*$)", r"work as for \1", "Work as on back."),
    row("mirrored", rf"{BEGIN}work\s+(?:the\s+)?other\s+(side|shoulder|half)\s+(?:(?:in\s+)?the\s+same\s+way\s*,?\s*(?:but\s+)?)?mirrored(?=\s*[.]|\s*$)", r"complete like other side, reversing shaping", "Work the other side mirrored."),
    # --- markers ---
    row("beginning", rf"\bplace\s+marker\s+for\s+beginning\s+of\s+round\s*,?\s+and\s+(?:1|one|another|a)(?:\s+{_THREAD})?\s+after\s+({N})\s+{STS}(?:\s*[(]\s*=?\s*(?P<said>(?:the\s+)?sides?(?:\s+of\s+the\s+body)?)\s*[)])?", r"place marker every \1 sts", "Insert 1 marker thread at the beginning of the round and 1 marker thread after 12 stitches.", spelt_out=True),
    row("side", rf"\b(?:insert|place|put)\s+(?:2|two)\s+{_THREAD}\s+(?:in\s+the\s+(?:piece|sides)\s*)?,?\s*({N})\s+{STS}\s+(?:in\s+)?from\s+each\s+side\b", r"place markers \1 sts in from each side", "Insert 2 marker threads in the piece, 12 stitches in from each side."),
    row("between", rf"(from\s+each\s+side)\s*[(]\s*=\s*({N})\s+{STS}\s+between\s+(?:the\s+)?{_THREAD}(?:\s+on\s+(?:the\s+)?(?:back(?:\s+piece)?|front(?:\s+piece)?))?\s*[)]", r"\1. \2 sts between markers", "Insert 2 marker threads in the piece, 12 stitches in from each side (= 24 stitches between the marker threads on the back piece)."),
    row("without", rf"\binsert\s+(?:\d+|two|three|four)\s+{_THREAD}\s+(?:in\s+(?:the\s+)?(?:piece|yoke)\s+)?(?:without\s+working\s+the\s+{STS}\s*,?\s+)(?:as\s+follows|like\s+this)\s*:\s*count\s+({N})\s+{STS}\s*(?:[(][^()]*[)])?\s*,\s*(?:insert|place|put)\s+(?:1|one|a)\s+{_THREAD}", r"place markers in turn after \1 sts", "Insert 4 marker threads in the piece without working the stitches as follows: Count 16 stitches, insert 1 marker thread, count 18 stitches, insert 1 marker thread."),
    row("count", rf"\b(place\s+markers\s+in\s+turn\s+after\s+[^.;:]*?)\s+sts\s*,\s*(?:and\s+)?count\s+({N})\s+{STS}\s*(?:[(][^()]*[)])?\s*,\s*(?:and\s+)?(?:insert|place|put)\s+(?:1|one|a)\s+{_THREAD}", r"\1, \2 sts", "Insert 2 marker threads in the piece without working the stitches as follows: Count 16 stitches, insert 1 marker thread, count 18 stitches, insert 1 marker thread.", again=True),
    # --- stitches on a thread ---
    row("holder", rf"^(\s*)(?:slip|put|place)\s+(?:the\s+)?({N})\s+{STS}\s+from\s+(?:a|the)\s+holder(?:\s+on\s+one\s+side\s+of\s+the\s+(?:piece|work))?\s+(?:back\s+)?on(?:to)?\s+(?:the\s+)?{_NEEDLE}", r"\1change to \4 \3. return \2 held sts to needles", "Slip the 28 stitches from the thread on one side of the piece onto double pointed needles size 4 mm."),
    row("pick up|knit up", rf"(\breturn\s+{N}\s+held\s+sts\s+to\s+needles)\s*,?\s+and\s+(?:pick|knit)\s+up\s+(?:in\s+addition\s+)?(?:1|one)\s+{STS}\s+in\s+each\s+of\s+the\s+({N})\s+(?:new\s+)?{STS}\s+cast\s+on\s+(?P<said>under\s+the\s+sleeve)", r"\1. pick up and knit \2 sts", "Slip the 28 stitches from the thread onto circular needle size 4 mm and pick up in addition 1 stitch in each of the 8 stitches cast on under the sleeve.", spelt_out=True),
    # --- binding off ---
    row("=", rf"\s*=\s*({N}\s+{STS})\s+(?:rem(?:ain)?(?:ing)?\s+|(?:are\s+)?left\s+)?(?:on|for|in)\s+(?:each\s+of\s+)?(?:the\s+)?(?:front(?:\s+piece)?\s+and\s+(?:on\s+)?(?:the\s+)?back|back(?:\s+piece)?\s+and\s+(?:on\s+)?(?:the\s+)?front)(?:\s+piece)?{STOP}", r". \1 each for front and back", "Bind off 6 stitches in each side for armholes (= 3 stitches on each side of both marker threads) = 28 stitches remain on front piece and on back piece."),
    *(
        row("sleeve|arm", rf"\b(?:{OFF}|bo)\s+{2 * half}\s+{STS}\s+(?P<said>(?:in\s+(?:the\s+)?)?mid(?:dle)?\s+(?:of\s+)?under\s+(?:the\s+)?(?:sleeve|arm)|under\s+(?:the\s+)?(?:sleeve|arm))\s*[(]\s*=?\s*{half}\s+{STS}\s+(?:at|on|in)\s+each\s+side\s+of\s+(?:the\s+)?{_THREAD}\s*[)]", f"bind off {half} sts, k to last {half} sts, bind off {half} sts", f"Next round: Bind off {2 * half} stitches mid under sleeve (= {half} stitches on each side of marker thread).", spelt_out=True)
        for half in range(2, 8)
    ),
    *(
        row("marker", rf"\b({OFF}|bo)\s+{2 * half}\s+{STS}\s+(?:in|on|at)\s+each\s+side(?:\s+(?P<said>for\s+(?:the\s+)?armholes?))?\s*[(]\s*=?\s*{half}\s+{STS}\s+(?:at|on|in)\s+each\s+side\s+of\s+(?:both|each|the)(?:\s+2)?\s+{_THREAD}\s*[)](?:\s*,?\s+and\s+(?:finish|work|complete)\s+each\s+(?:piece|part)\s+separately)?", rf"*work to {half} sts before marker, bind off {half} sts, remove marker, bind off {half} sts; rep from * at both markers, work to end", f"Next row: Bind off {2 * half} stitches in each side for armholes (= {half} stitches on each side of both marker threads).", spelt_out=True)
        for half in range(2, 7)
    ),
    row("marker", rf"\b({OFF}|bo)\s+({N})\s+{STS}\s+(?:at|on|in)\s+each\s+side\s+of\s+(?:both|each|the)(?:\s+2)?\s+{_THREAD}(?:\s+(?P<said>for\s+(?:the\s+)?armholes?))?", r"*work to \2 sts before marker, bind off \2 sts, remove marker, bind off \2 sts; rep from * at both markers, work to end", "On the next round, bind off 3 stitches on each side of both marker threads for armholes.", spelt_out=True),
    row("from", rf"\b({OFF}|bo)\s+({N}\s+{STS})\s+on\s+(?:the\s+)?next\s+row\s+from\s+(?:the\s+)?(neck|front|mid\s+front)\b", r"\1 \2 at neck edge of next row", "Bind off 1 stitch on next row from the neck."),
    row("neck", rf"\b({OFF}|bo)\s+for\s+(?:the\s+)?neck\s+at\s+(?:the\s+)?beginning\s+of\s+(?:every|each)\s+row\s+from\s+(?:mid\s+front|the\s+neck|neck)\s*:\s*(?={N}\s+{STS}\s+{N}\s+times?)", r"\1 at neck edge: ", "Bind off for neck at the beginning of every row from mid front: 3 sts 1 time and 1 st 2 times."),
    row("at neck edge:", rf"\b({OFF}|bo)\s+at\s+neck\s+edge\s*:\s*({N}\s+{STS})\s+({N})\s+times?\s*(?:,\s*and\s+|,|and)\s*(?={N}\s+{STS}\s+{N}\s+times?)", r"\1 \2 at neck edge every 2nd row \3 times. \1 at neck edge: ", "Bind off for neck at the beginning of every row from mid front: 3 sts 1 time, 2 sts 1 time and 1 st 2 times.", again=True),
    row("at neck edge:", rf"\b({OFF}|bo)\s+at\s+neck\s+edge\s*:\s*({N}\s+{STS})\s+({N})\s+times?\b(?=\s*[.,;=]|\s*$)", r"\1 \2 at neck edge every 2nd row \3 times", "Bind off for neck at the beginning of every row from mid front: 3 sts 1 time."),
    row("separately", rf"(?:(?<=^)|(?<=[.!]))(\s*)(?:now\s+)?({OFF}|bo)\s+the\s+middle\s+({N}\s+{STS})(?:\s+for\s+(?:the\s+)?neck)?\s*,?\s+and\s+(?P<said>(?:finish|work|complete)\s+(?:each|the)\s+(?:shoulders?|sides?)\s+separately)(?=\s*\.?\s*$)", r"\1\2 center \3, work to end. hold sts beyond gap", "Now bind off the middle 20 stitches for neck and finish each shoulder separately.", spelt_out=True),
    row("middle", rf"(?:(?<=^)|(?<=[.!]))(\s*)(?:now\s+)?({OFF}|bo)\s+the\s+middle\s+(?={N}\s+{STS})", r"\1\2 center ", "Now bind off the middle 20 sts for neck."),
    row("armholes", rf"\b({OFF}|bo)\s+(?:{STS}\s+)?for\s+(?:the\s+)?armholes\s+at\s+(?:the\s+)?beginning\s+of\s+(?:each|every)\s+row(?:\s+as\s+follows)?\s*:\s*(?={N}\s+{STS}\s+{N}\s+times?)", r"\1 at each side: ", "Bind off for armholes at the beginning of each row as follows: 3 sts 1 time, and 1 st 2 times."),
    row("side", rf"\b({OFF}|bo)\s+(?:for\s+(?:the\s+)?(?:armholes?|shoulders?|neck(?:line)?|sleeve\s+caps?)\s+)?(?:in|on|at)\s+(?:the\s+)?(?:each|both|either)\s+sides?\s+at\s+(?:the\s+)?beg(?:inning)?\s+of\s+(?:each|every)\s+row\s*:\s*(?={N}\s+{STS}\s+{N}\s+times?)", r"\1 at each side: ", "Bind off for armholes on each side at the beginning of each row: 3 sts 1 time, and 1 st 2 times."),
    # --- what is told behind "=" ---
    row("(=|( =", r"(?<=[\w)])\s*[(]\s*=\s*(?P<said>(?:the\s+)?(?:approx\.?\s+)?[a-z][a-z ,/-]*)[)]", "", "Purl 1 round (= fold edge)."),
    said_row("left", rf"\s*[(]\s*(?P<said>(?:=\s*|approx\.?\s+)*{LONG}\s+(?:left|remain(?:s|ing)?)(?:\s+to\s+(?:the\s+)?(?:finished|full|total)\s+(?:length|measurements?))?)\s*[)]", "Work even until foot measures 18 cm (= 4 cm left)."),
)  # fmt: skip
"""The rows, in the order tried."""

TECHNIQUES: tuple[Synonym, ...] = (
    *(
        row(
            "before",
            rf"(\bto\s+(?:last\s+)?{short}\s+sts?\s+before\s+(?:the\s+|each\s+)?marker\s*,\s*{change}\s*,\s*(?:knit|k))\s*{2 * half}(?=\s*,\s*(?:yo|sl\b|slip|k2tog|ssk|skp))",
            rf"\1 {half}, sm, k {half}",
            f"INCREASE TIP: Work until {short} stitches remain before the marker thread, {example}, knit {2 * half}, {example} (= 2 stitches changed).",
        )
        for half in (1, 2)
        for short, change, example in ((half, "yo", "1 yarn over"), (half + 2, "k2tog", "knit 2 together"))
    ),
    *(
        row(
            "marker",
            rf"^\s*({_EXPLAINED})(?:\s*[(][^()]*[)])?(?:\s*:\s*|\s+(?-i:(?=[A-Z][a-z])))(?:(?:inc|dec)(?:rease)?\s+(?:1|one)\s+{STS}\s+{each}\s*(?:[(]\s*=?\s*{N}\s+{STS}[^()]*[)]\s*)?(?:as\s+follows|like\s+this|in\s+this\s+way)?\s*[:.]\s*){said}"
            r"(?:(?:start|begin|work|knit)\s+(?:to\s+)?(?:last\s+)?(\d+)\s+(?:sts?|stitches|stitch)\s+before\s+(?:the\s+|each\s+)?marker\s*,\s*)"
            rf"([^.:()*]*?\bsm\b[^.:()*]*?){tail}{STOP}",
            rf"\1 round: *work to \3 sts before marker, \4; rep from * {often}, work to end.{count}",
            f"{name}: Decrease 1 stitch on each side of {which} as follows: Work until 3 stitches remain before the marker thread, knit 2 together, knit 2 (marker thread is in the middle of these 2 stitches), slip 1 stitch as if to knit, knit 1, pass the slipped stitch over{printed}.",
        )
        for name, each, said, often, which in (
            ("DECREASE TIP", _BOTH_OF, "", "at both markers", "both marker threads"),
            ("DECREASE TIP", _EACH, "?", "at each marker", "each marker thread"),
        )
        for tail, count, printed in (
            (r"\s*[.,]?\s*[(]?\s*=?\s*(\d+)\s+(?:sts?|stitch|stitches)\s+(inc|dec)\w*(?:\s+in\s+total)?(?:\s+on\s+the\s+(?:row|round))?\s*[)]?", r" \5 sts \6reased.", " (= 4 stitches decreased)"),
            (rf"(?:\s*[.,]?\s*[(]?\s*=?\s*{N}\s+{STS}\s+changed(?:\s+in\s+total)?(?:\s+on\s+the\s+(?:row|round))?\s*[)]?)?", "", ""),
        )
    ),
)  # fmt: skip
"""Rounds that are explained, tried when the stitches stand in one notation."""
