"""Other wordings of booklets and of pages typed at home: fillers, steps by number, words left out or put in. No I/O."""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import LONG, OFF, ROUND, STS, N, Synonym, row

_END: Final = r"(?=\s*[.;]|\s*$)"
_FABRIC: Final = r"(?:garter\s+st(?:itch)?|st\s+st|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?|moss\s+st(?:itch)?|seed\s+st(?:itch)?)"
_SHADE: Final = r"\s+(?:colou?r|shade|yarn|wool)\b"
_STEP: Final = r"(?-i:Using|Change|Work|Next(?=\s*:)|Rep(?:eat)?(?!\s+last)|Cast\s+on|Cast\s+off|Bind\s+off|BO|CO|Join|Place|Shape|With|Pick\s+up|Continue|Cont|Break|Cut|Sew|Divide|Slip)\b"
_PICKED: Final = r"(?:pick\s+up(?:\s+and\s+(?:knit|k))?|pu\s+and\s+k(?:nit)?)"
_OVER: Final = rf"(?:the\s+|those\s+)?(?:(?:bound|cast)[-\s]?off(?:\s+{STS})?|{STS}\s+(?:bound|cast)[-\s]?off)(?:\s+(?:of|on|in)\s+(?:the\s+)?(?:previous|last|prev)\.?\s+row)?"
_HEAD: Final = r"(^\s*(?:(?:next|buttonhole)\s+row|row\s+\d+)\s*(?:\([^)]*\)\s*)?:\s*)"
_YARN: Final = r"(?-i:MC|CC\d?|[A-Z]\d?)"

BOOKLET_WORDS: tuple[Synonym, ...] = (
    said_row_behind("for ", rf"\b((?:knit|purl|k|p)\s+{N}\s+{ROUND}\s+on\s+(?:the\s+)?(?:rs|ws|right\s+side|wrong\s+side))\s+(?P<said>(?:for|to\s+form)\s+(?:the\s+|a\s+)?(?:turning\s+(?:ridge|row|edge)|fold(?:ing)?\s?line|hem\s?line|hem|facing|ridge))(?=\s*[.,;]|\s*$)", "P 1 row on RS for turning ridge."),
    row("alternately|alternating", r"\bk\s+1\s+row\s*,?\s*(?:and\s+)?p\s+1\s+row\s*,?\s*alternate?(?:ly|ing)?\s*,?\s+(?=(?:for|until)\b)", "work in st st, beg with a knit row, ", "K 1 row and p 1 row alternately for 10 rows."),
    row("odd|even", r"^(\s*)(odd|even)(?:[-\s]?numbered)?\s+(rounds|rnds|rows)\s*:", r"\1All \2 \3:", "Even rnds: Knit."),
    row("patt", r"\bwork\s+(?:the\s+)?(?:pattern|patt)\s+(rows|rnds|rounds)\s+(\d+)\s*(?:-|to)\s*(\d+)\b", r"work \1 \2-\3", "Work pattern rows 1-4 twice."),
    row("turn", r"(^\s*|[.]\s+)turn\s+(?:the\s+)?work\s*,?\s+and\s+(?=(?:purl|knit|p|k)\b)", r"\1Turn work. ", "Turn work and purl 1 row."),
    row("in patt", r"\b(work\s+in\s+(?:pattern|patt))\s+across(?:\s+(?:the\s+|all\s+)?(?:row|rnd|round|sts|stitches))?(?=\s*[.;(]|\s*$)", r"\1 to end", "Next row: Work in pattern across row."),
    said_row_behind("edge", r"^(\s*)(?P<said>(?:along|around|across)\s+(?:the\s+|one\s+)?(?:(?:long|short|left|right|front|back|side|neck|upper|lower|top|bottom|straight|curved|cast-on|bound-off)\s+){1,3}edge(?:\s+of\s+(?:the\s+)?[a-z]+)?)\s*,\s*(?=(?:with\b|pick\s+up))", "Along one long edge, pick up and k 30 sts."),
    row("keeping", rf"^(\s*)keeping\s+({N}\s+{STS}\s+(?:at|on)\s+each\s+(?:end|side|edge)\s+in\s+{_FABRIC})\s*,\s*((?:work|continue|cont)\b[^.;:]*?)(?=\s*\.|\s*$)", r"\1\3, keeping \2", "Keeping 4 sts at each edge in seed st, work 8 rows in st st."),
    row("keep", rf"^(\s*)keep\s+({N}\s+{STS}\s+(?:at|on)\s+each\s+(?:end|side|edge)\s+in\s+{_FABRIC})\s*,?\s*(?:and|while\s+working|then)\s+((?:work|continue|cont)\b[^.;:]*?)(?=\s*\.|\s*$)", r"\1\3, keeping \2", "Keep 4 sts at each end in garter st and work in st st until piece measures 20 cm."),
    row("chart", rf"\bwork\s+the\s+({N}\s+{ROUND}\s+of\s+(?:the\s+)?chart\s)", r"work all \1", "Work the 2 rounds of chart fern."),
    said_row_behind("to end", r"(\bto\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?row)?)\s+(?P<said>for\s+(?:the\s+)?(?:(?:left|right)\s+)?(?:front|back|side|shoulder|sleeve|half))(?=\s*-\s*\d)", "K20, p to end of row for left front - 40 sts."),
    row("needle for|needles for", rf"(\b{N}\s+{STS})\s+(?:rem(?:ain)?(?:ing)?)\s+on\s+(?:the\s+)?needles?\s+(?P<said>for\s+(?:the\s+)?(?:(?:left|right)\s+)?(?:front|back|side|shoulder|sleeve|half))(?=\s*\.?\s*$)", r"\1 rem", "K to end - 16 sts remain on needle for left front.", spelt_out=True),
    said_row_behind("using|change|work|next|rep|cast|bind|bo |co |join|place|shape|with|pick|cont|break|cut|sew|divide|slip", rf"^(\s*)(?P<said>\d{{1,2}})[.)]?\s+(?={_STEP})", "6 Work in st st until piece measures 20 cm."),
    row("one inch", r"\b(for|measures|is|another|every)\s+one\s+(?=inch\b)", r"\1 1 ", "Work in k1, p1 rib for one inch."),
    row("above", rf"(\brep(?:eat)?)\s+(?:the\s+)?above\s+({N}\s+{ROUND})", r"\1 last \2", "Repeat above 2 rows 4 times."),
    row("across to", r"\b(k|p|knit|purl|work)\s+across\s+(?=to\s+(?:last|end|within|\d|the\b|marker))", r"\1 ", "Next row: K3, ssk, k across to last 5 sts, k2tog, k3."),
    row("sl m|sl st m", r"\bsl\s+(?:st\s+|stitch\s+)?marker\b", "sm", "Rnd 2: K1, sl marker, m1, k to end."),
    row("main", rf"\b(needles?\s+and)\s+(?:the\s+)?main{_SHADE}", r"\1 MC", "Using 3.5 mm needles and main shade, cast on 40 sts."),
    row("(", rf"\(\s*({_YARN})\s*\)\s*([kp]\s?\d+)(?=\s*[,;]?\s*(?:\*|\(\s*{_YARN}\s*\)|rep\b|repeat\b|[.]|$))", r"\2 in \1", "Row 1: *(MC) k3, (CC) k3; rep from * to end."),
    row("pick|pu ", rf"(\b{_PICKED}\b[^.;:]*?,\s*(?:and\s+|then\s+)?\d+)\s+(?=(?:from|down|up|along|across|around|over)\s)", r"\1 sts ", "With RS facing, pick up and knit 20 sts down left front neck, 10 across back neck, and 20 up right front neck.", again=True),
    row("through", r"(\bthrough\s+(?:the\s+|all\s+|rem(?:aining)?\s+)*(?:sts|stitches|loops))\s*;\s*(?=(?:draw|pull|fasten|secure|tighten)\b)", r"\1, ", "Break yarn and run through rem sts; draw up and secure."),
    row("bind-off|bind off|bo ", r"^\s*use\s+(?:an?\s+|the\s+)?(?:3|three)-?\s?needle\s+(?:bind|cast)[-\s]off\s+to\s+join\s+(?:the\s+)?shoulders(?=\s*\.?\s*$)", "join shoulders with three-needle bind off", "Use 3-needle bind off to join shoulders."),
    row("cast on|co ", rf"{_HEAD}(?:cast\s+on|co)\s+({N})(?:\s+{STS})?\s+over\s+(?:each\s+)?{_OVER}(?=\s*[.(-]|\s*$)", r"\1work in pattern, casting on \2 sts over each buttonhole", "Next row: Cast on 2 sts over bound-off sts."),
    row("casting on", rf"\bwork\s+(?:back|across|to\s+end|in\s+pattern)\s*,?\s+casting\s+on\s+({N})(?:\s+{STS})?\s+over\s+(?:each\s+)?{_OVER}", r"work in pattern, casting on \1 sts over each buttonhole", "Next row: Work across, casting on 2 sts over the bound-off sts."),
    row("casting on", rf"\b(knit|purl|k|p)\s+(?:to\s+end|across|back)\s*,?\s+casting\s+on\s+({N})(?:\s+{STS})?\s+over\s+(?:each\s+)?{_OVER}", r"\1, casting on \2 sts over each buttonhole", "Next row: K to end, casting on 2 sts over the cast-off sts."),
    row("to match", r"(^\s*|[.]\s*)work\s+(?:the\s+)?(?:other|second|opposite)\s+(?:side|shoulder|front)\s+to\s+match(?:\s+(?:the\s+)?first(?:\s+side)?)?(?=\s*\.?\s*$)", r"\1Complete to match first side, reversing shaping", "Work other side to match."),
    row("to match", r"(^\s*|[.]\s*)(?:complete|finish)\s+(?:the\s+)?(?:other|second)\s+side\s+to\s+match\s+(?:the\s+)?first(?:\s+side)?(?=\s*[,.]|\s*$)", r"\1Complete to match first side", "Complete second side to match first."),
    row("rejoin", r"\b(re-?join\s+(?:the\s+)?yarn)\s+and\s+(?=complete\s+to\s+match\b)", r"\1 to rem sts. ", "Rejoin yarn and complete to match first side."),
    row("to match", r"(^\s*|[.]\s*)(?:work|make|knit)\s+(?:the\s+)?(?:left|right)\s+(front|side|half|sleeve|mitten|mitt)\s+to\s+match\s+(?:the\s+)?((?:left|right)\s+\2)\s*,\s*revers(?:e|ing)\s+(?:all\s+|the\s+)*shapings?(?=\s*\.?\s*$)", r"\1Work as for \3, reversing shaping", "Work left front to match right front, reversing shaping."),
    row("st and|nd and|rd and|th and", r"(\brep(?:eat)?)\s+(?:the\s+)?(\d+)(?:st|nd|rd|th)\s+and\s+(\d+)(?:st|nd|rd|th)\s+rows(?:\s+alternately)?\s+(?=until\b)", r"\1 rows \2 and \3 ", "Repeat the 2nd and 3rd rows alternately until piece measures 15 cm."),
)  # fmt: skip
"""The rows that come before all others, in the order tried."""

BOOKLETS: tuple[Synonym, ...] = (
    # --- words and signs ---
    said_row_behind("for ", rf"\b(work\s+{N}\s+{ROUND}\s+in\s+{_FABRIC})\s+(?P<said>(?:for|to\s+form)\s+(?:the\s+|a\s+)?(?:turning\s+(?:ridge|row|edge)|fold(?:ing)?\s?line|hem\s?line|hem|facing|ridge))(?=\s*[.,;]|\s*$)", "Work 6 rows in stockinette for facing."),
    row("within", r"\bto\s+within\s+(?:the\s+)?last\s+(?=\d)", "to last ", "Row 9: K4, *p2tog, yo; rep from * to within last 4, k4."),
    row("continue to|cont to|keep working|keep knitting|continue working|cont working", r"\b(?:cont(?:inue)?\s+to\s+|keep\s+(?:on\s+)?|cont(?:inue)?\s+)work(?:ing)?\s+(?=(?:even|straight|in\s+(?!the\s+(?:round|rnd))|until|for)\b)", "work ", "Continue to work even until piece measures 30 cm."),
    row("in the r", r"\b(?:keep\s+(?:on\s+)?(?:working|knitting)|cont(?:inue)?\s+(?:to\s+)?(?:work(?:ing)?\s+|knit(?:ting)?\s+)?)\s*(?P<said>in\s+(?:the\s+)?(?:rounds?|rnds?))\s+(?=(?:until|for)\b)", "work ", "Keep working in the round until piece measures 30 cm.", spelt_out=True),
    row("until", rf"(\b(?:work|cont|continue|knit)\b[^.:;*]*?)\s+until\s+(?={LONG}{_END})", r"\1 until piece measures ", "Continue working straight until 30 cm."),
    row("work rib|work ribbing|work garter|work st", rf"\bwork\s+(?=(?:rib(?:bing)?|{_FABRIC})\s+(?:for|until)\b)", "work in ", "Work rib for 5 cm."),
    row("stitch|st st|garter st|moss st|seed st|stockinette", rf"^(\s*(?:rows|rnds|rounds)\s+\d+\s*(?:-|to)\s*\d+[^:*]*:\s*)({_FABRIC})(?=\s*\.?\s*$)", r"\1work in \2", "Rows 7-12: Garter stitch."),
    row("work", rf"\b(?:cont(?:inue)?)\s+in\s+({_FABRIC})\s+and\s+work\s+({N}\s+{ROUND}){_END}", r"work \2 in \1", "Continue in st st and work 7 rows."),
    row("with|in |using", rf"(\b(?:cast\s+on|co)\s+{N}\s+{STS}(?:\s+loosely)?)\s+(?:with|in|using)\s+({_YARN})(?=\s*[,.;]|\s*$)", r"with \2, \1", "Cast on 40 sts loosely with MC."),
    # --- binding off, picking up, drawing through ---
    said_row_behind("for", rf"(\b{OFF}(?:\s+(?:all|rem(?:aining)?|the|sts|stitches|loosely|in\s+(?:pattern|patt|rib|purl|knit)))+)\s+(?P<said>for\s+(?:the\s+)?(?:back\s+|front\s+|side\s+|top\s+)*(?:of\s+(?:the\s+)?)?(?:neck|shoulders?|edge|sleeve|hood|collar|cuff|back|front))(?=\s*[.]|\s*$)", "Bind off remaining sts loosely for back of neck."),
    row("weave|graft", rf"\b(?P<said>(?:divide|arrange|place)\s+(?:the\s+|rem(?:aining)?\s+)*(?:{STS}\s+)?(?:evenly\s+)?(?:on|onto|over|between)\s+(?:two|2)\s+needles)\s*,?\s*(?:and\s+)?(?:weave|graft)\s+(?:the\s+)?(?:{STS}\s+)?together{_END}", "graft sts together", "Divide sts on 2 needles and weave together.", spelt_out=True),
    row("kitchener", rf"(^\s*|[.]\s*)kitchener(?:\s+st(?:itch)?)?\s+(?:the\s+)?(?:toe|tip|top|end)(?:\s+{STS})?(?:\s+(?:closed|together|shut))?{_END}", r"\1graft sts", "Kitchener stitch toe together."),
    row("bind off|bo,|bo.|bo", rf"(\b(?:for\s+{LONG}|for\s+{N}\s+{ROUND}|{N}\s+{ROUND}|to\s+end|{ROUND}))\s*,\s*(?:and\s+|then\s+)?(?:bo|bind\s+off)(?=\s*\.|\s*$)", r"\1. Bind off", "Work in k2, p2 rib for 3 cm, BO."),
)  # fmt: skip
"""The rows that come late, in the order tried."""
