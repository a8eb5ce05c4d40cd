"""Other wordings for finishing, for explanations and for what stands beside an instruction. No I/O.

None of these works a stitch or says how many, and they are said in place: how to hold the work, where to look, slipping a
marker as it comes, both needles held together to cast on loosely, the width of a repeat behind the name of its chart,
a yarn named behind the work it is for.
"""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import CUT_YARN, PAUSE, ROUND, STS, YARN_A_H, N, Synonym, row

_FOLDED = r"(?:hem|facing|neckband|collar|cuff|waistband|band|edging|border|casing|brim|picot\s+edge)s?"
_PART = (
    r"(?:left|right|front|back|body|sleeves?|yoke|collar|cuffs?|hem|neckband|button|bands?|hood|pocket|flap|hat|brim|crown|hand|"
    r"thumb|foot|leg|sock|mitten|cowl|piece)"
)
_M = r"(?:(?:the\s+)?(?:(?:bor|beginning|side|old|next|other|raglan|gusset|stitch)\s+)*(?:markers?|ms?)\b|bor\b)"
_DPN = r"(?:dpns?|double[\s-]pointed\s+needles?|needles?)\b"
_LASTS = rf"(?=\s+(?:until|for)\s+(?!{YARN_A_H}\b))"
_FABRIC = r"(?:\s+(?:even|straight))?(?:\s+in\s+(?:[a-z0-9,.'-]+\s+){0,3}?(?:st|stitch|stockinette|rib|ribbing|patt|pattern|garter)\b\.?)?"
_NAMED = (
    r"(?![^.,;]*\b[Cc]harts?\b)(?!(?:Charts?|Back|Front|Left|Right|First|Second|Sleeves?|Body|Yoke|Neck\w*|Collar|Hood|Heel|Foot|Toe|Leg|Cuff|Thumb|Hand|Gusset|"
    r"Crown|Brim|Hat|Sock|Mitten|Mitt|Section|Part|Step|Setup|Size|The|This|Row|Rnd|Round|RS|WS|MC|CC)\b)[A-Z][a-z']+(?:-[A-Za-z]+)?(?:\s+[A-Z][a-z']+){0,3}"
)

REMARKS: tuple[Synonym, ...] = (
    row(
        "note|nb|n.b.|tip|hint",
        r"^\s*(?:note|n\.?b\.?|tip|hint)\s*[:-]+\s*(?=(?:slip|sl)\s+(?:all\s+)?(?:the\s+)?markers|try\b|the\b|this\b|these\b|your\b|do\s+not\b|don't\b)",
        "",
        "NOTE - Slip all markers as you come to them.",
    ),
    said_row(
        "marker",
        r"(?:(?<=^)|(?<=[.!]))\s*(?P<said>(?:slip|sl)\s+(?:all\s+)?(?:the\s+)?markers?\s+(?:as\s+you\s+(?:come|get|go)(?:\s+to\s+them)?|as\s+you\s+(?:reach|encounter|pass)\s+them|throughout|when\s+you\s+(?:come|get)\s+to\s+(?:them|it)))\s*\.?\s*$",
        "Slip all markers as you come to them.",
    ),
    said_row(
        "try",
        r"(?:(?<=^)|(?<=[.!]))\s*(?P<said>try\s+(?:it|on|the\s+[a-z]+|your\s+[a-z]+)(?:\s+on)?(?:\s+(?:as\s+you\s+go|now|often|from\s+time\s+to\s+time|for\s+fit|to\s+check\s+the\s+fit))?)\s*\.?\s*$",
        "Try it on as you go.",
    ),
    said_row(
        "(",
        r"^\s*\((?P<said>(?:this|these|the)\s+(?:[a-z]+\s+){1,3}?(?:is|are|will|should)\s+(?:worked\s+on\s+the\s+(?:wrong|right)\s+side\s+of\s+the\s+[a-z]+|[a-z ]*?(?:curl|roll|visible|hidden|folded|seen|outside|inside|loose|tight|snug|bulky|shorter|longer)[a-z ]*))\.?\s*\)\s*\.?\s*$",
        "(This round is worked on the wrong side of the collar.)",
    ),
    row(
        "worked in the r",
        rf"^\s*(?:the|this|your)\s+(?:{_PART}\s+){{1,2}}(?:is|are)\s+(?:now\s+)?(?:worked|knitted|knit)\s+in\s+(?:the\s+)?(?:rnd|round)s?\s*[;.:]\s*(?=[a-z*(])",
        "join in the round. ",
        "The yoke is worked in the round; k2tog, k to end.",
    ),
    row(
        "fasten",
        rf"\b({CUT_YARN})\s*,?\s*and\s+(?=fasten\s+off\s*(?:\.|$))",
        r"\1. ",
        "Break yarn and fasten off.",
    ),
    row(
        "worked flat|worked back",
        rf"^\s*(?:the\s+)?(?:{_PART}\s+){{1,3}}(?:is|are)\s+(?:now\s+)?worked\s+(?:flat|back\s+and\s+forth(?:\s+in\s+rows)?)\s*(?:\.|$)",
        "work flat.",
        "The sleeves are worked flat.",
    ),
    row(
        "first worked flat|first worked back|first knitted back",
        rf"^\s*(?P<said>(?:the\s+)?(?:{_PART}\s+){{1,3}}(?:is|are)\s+first\s+(?:worked|knitted)\s+(?:flat|back\s+and\s+forth(?:\s+in\s+rows)?)(?:\s+from\s+the\s+opening(?:\s+at\s+the\s+(?:back|front|side))?)?\s*,?\s+(?:and\s+)?(?:(?:then|thereafter|afterwards|later)\s+in\s+the\s+rounds?(?:\s+on\s+(?:the\s+|a\s+)?circular\s+needle)?))\s*(?:\.|$)",
        "work flat.",
        "The yoke is first worked back and forth from the opening, then in the round.",
        spelt_out=True,
    ),
    said_row(
        "for a",
        r"^\s*(?P<said>for\s+an?\s+(?:closer|looser|snugger|neater|tidier|better|firmer|tighter|softer|cleaner|stretchier)\s+(?:fit|edge|finish|corner|join|look|line|neckline|cuff))\s*,\s*",
        "For a closer fit, k2tog, k to end.",
    ),
    said_row(
        "m1",
        r"^\s*(?P<said>m1[lr]?\s*[:=]\s*(?:with\s+(?:the\s+)?(?:left|right)(?:-hand)?\s+needle\s*,?\s*)?(?:lift|pick\s+up|insert)\s+[a-z ,-]*?(?:bar|strand|loop|thread|yarn)\b[a-z ,-]*?(?:knit|k)\s+(?:it\s+)?(?:into|through|it)\b[a-z ]*)\.?\s*$",
        "M1: Lift the bar between the needles and knit into the back of it.",
    ),
    said_row(
        "ssk",
        r"^\s*(?P<said>ssk\s*[:=]\s*(?:slip|sl)\s+(?:the\s+)?(?:next\s+)?(?:2|two)\s+(?:sts|stitches)\b[a-z ,-]*?(?:knit|k)\s+(?:them\s+|these\s+|both\s+)?(?:(?:2|two)\s+)?(?:sts\s+|stitches\s+)?tog(?:ether)?\b[a-z ]*)\.?\s*$",
        "Ssk: Slip 2 sts knitwise, then knit them together through the back loops.",
    ),
    said_row(
        "kfb",
        r"^\s*(?P<said>kfb\s*[:=]\s*(?:knit|k)\s+in(?:to)?\s+(?:the\s+)?front\s+and\s+(?:then\s+)?(?:the\s+)?back\s+of\s+(?:the\s+)?(?:next\s+|same\s+)?st(?:itch)?)\.?\s*$",
        "Kfb: Knit into front and back of next st.",
    ),
    said_row(
        "turn|fold",
        rf"(?:(?<=^)|(?<=[.!]))\s*(?P<said>(?:turn|fold)\s+(?:the\s+)?{_FOLDED}(?:\s+in\s+half)?(?:\s+(?:to|towards?)\s+(?:the\s+)?(?:inside|wrong\s+side|ws))?(?:\s+(?:along|at|on)\s+(?:the\s+)?[a-z]+(?:\s+(?:ridge|line|row|rnd|round))?)?"
        r"\s*,?\s*and\s+(?:sew|slip-?\s?st(?:itch)?|catch|stitch|hem|oversew)(?:\s+(?:it|in(?:to)?\s+(?:place|position)|down|loosely|neatly|to\s+(?:the\s+)?(?:inside|wrong\s+side|cast-on\s+edge)))*)\s*(?:\.|$)",
        "Turn hem to inside and slip stitch in place.",
    ),
)
"""The rows, in the order tried."""

BESIDE: tuple[Synonym, ...] = (
    said_row("slipping", rf"\s*\(\s*(?P<said>slipping\s+{_M}(?:\s+(?:as|when|whenever)\s+you\s+(?:come|get)\s+to\s+(?:it|them)|\s+as\s+you\s+(?:go|pass|reach\s+(?:it|them)))?)\s*\)", "Knit 2 rnds (slipping the BOR marker as you come to it)."),
    said_row("rep)|repeat)", rf"\s*\(\s*(?P<said>\d+[\s-]+(?:st|stitch)\s+(?:rep|repeat))\s*\)(?=\s*[.,;]?\s*(?:$|{N}|twice|once))", "Work rnds 1-8 of chart A (12-st rep)."),
    said_row("held together", r"\s*,?\s+(?P<said>(?:over|on|onto|around)\s+(?:both|two|2)\s+(?:of\s+the\s+)?(?:needles?|needle\s+tips)\s+held\s+together)\b", "CO 40 sts over both needles held together."),
    said_row_behind("withdraw|pull out|take out", r"((?:^|[.;])\s*)(?P<said>(?:withdraw|pull\s+out|take\s+out)\s+(?:the\s+)?(?:larger|second|spare|other|extra)\s+needle)(?=\s*[.]|\s*$)", "Withdraw the larger needle."),
    said_row_behind(" or ", rf"((?:^|[.;])\s*)(?P<said>(?:divide|distribute|arrange|spread|place)\s+(?:the\s+|all\s+)*(?:{STS}|them)\s+(?:evenly\s+)?(?:over|on|onto|between|among)\s+(?:3|three|4|four)\s+or\s+(?:4|four|5|five)\s+{_DPN})(?=\s*[.]|\s*$)", "Divide sts evenly over 3 or 4 dpn."),
    said_row("to co|to cast on", r"(?<=,)\s*(?:and\s+)?use\s+(?:the\s+|an?\s+|your\s+)?(?P<said>(?:[a-z]+[\s-]){1,4}?(?:method|technique|cast-on))\s+to(?=\s+(?:co|cast\s+on)\b)", "K10, use the cable method to CO 1 st over gap, k to end."),
    said_row_behind("as before", rf"\b((?:co|cast\s+on)\s+{N}\s+{STS})\s+(?P<said>as\s+before)(?=\s*[,;.]|\s*$)", "K10, CO 4 sts as before, k to end."),
    row("half of", r"\b(for\s+half\s+of)\s+(?=(?:back|front|body|sleeve|heel|sole|instep)\b)", r"\1 the ", "K12 for half of back, k to end."),
    row("join", r"\b((?:re-?)?join\s+(?:the\s+)?yarn)\s+and\s*,\s*", r"\1, ", "Join yarn and, beginning at right edge, pick up and knit 3 sts."),
    said_row_behind("circular", rf"\b((?:dpns?|double[\s-]pointed\s+needles?))\s+(?P<said>or\s+(?:an?\s+)?(?:short\s+|long\s+)?circular(?:\s+needle)?(?:\s+for\s+magic\s+loop)?){PAUSE}", "Place 12 held sts on larger dpns or circular needle."),
    said_row_behind("off as", rf"((?:^|[.;,]|\band)\s*(?:bind|cast)\s+off(?:\s+(?:all\s+)?{STS})?(?:\s+in\s+(?:rib(?:bing)?|patt(?:ern)?))?)\s+(?P<said>(?:as|same\s+as)\s+(?:(?:you\s+did\s+)?(?:for|on)\s+)?(?:the\s+)?(?:first\s+|left\s+|right\s+|other\s+)?(?:(?:button(?:hole)?\s*|front\s+)?band|collar|edge|side|edging|border|body|sleeve|sock|mitten|mitt|cuff|hem|neckband|neck|front|back|hand|thumb|leg))(?=\s*\.?\s*$)", "Bind off as for body."),
    said_row("measured", r"\s*,?\s+(?P<said>measured\s+(?:straight\s+)?(?:up|down|along|at)\s+(?:the\s+)?(?:cent(?:er|re)|middle)(?:\s+of\s+(?:the\s+)?)?\s*(?:front|back))(?=\s*\.?\s*$)", "Work until piece measures 12 cm, measured straight down the center front."),
    said_row_behind("taking care|being careful", r"^([^.]*?\b(?:knit|purl))\s*,\s*(?P<said>(?:taking\s+care|being\s+careful)\s+not\s+to\s+(?:drop|lose|skip|miss|twist)\s+(?:the\s+|any\s+)?(?:final\s+|last\s+)?(?:yo|yos|yarn\s*overs?|sts|stitches))(?:\s+of\s+(?:rnd|round|row)\s+\d+)?(?=\s*\.?\s*$)", "Rnd 2: Knit, taking care not to drop the yo."),
    row("with ", rf"((?:^|[.:])\s*)((?:knit(?:\s+every\s+{ROUND})?|work|cont(?:inue)?){_FABRIC})\s+with\s+({YARN_A_H}){_LASTS}", r"\1with \3, \2", "Work even in st st with MC until piece measures 8 cm."),
    row("with ", rf"(:\s*)(knit|purl|k|p)\s+(?:with|in)\s+({YARN_A_H})(?=\s*\.?\s*$)", r"\1with \3, \2", "Rnd 1: Knit with MC."),
    said_row_behind("twist", r"\b(join(?:ing)?\b[^.;,]*?\b(?:rounds?|rnds?|circle))\s*[;,-]+\s*(?P<said>(?:do\s+not|don't|without)\s+twist(?:ing)?(?:\s+(?:the\s+|your\s+)?(?:sts|stitches|cast-on(?:\s+edge)?|work))?)(?=\s*[.!]|\s*$)", "Join to work in the round; do not twist."),
    row("place bor", r"\bplace\s+bor(?=\s*,?\s+and\s+join\b)", "place marker for BOR", "Place BOR and join in the round."),
    row("all sizes", rf"^(\s*)all\s+sizes\s*:\s*(?:you\s+(?:should\s+)?(?:now\s+)?have\s+(?:now\s+)?)?(?={N}\s+{STS}\s*\.?\s*$)", r"\1", "All sizes: You now have 88 sts."),
    row("on both needles|on each needle", r"\bon\s+(?:both|each)\s+needles?\s*:\s*", "each needle: ", "Round 1: On both needles: k1, m1r, k to last st, m1l, k1."),
    row("left on", rf"\b(knit|purl|work|k|p)\s+until\s+(?:there\s+(?:is|are)\s+)?({N})\s+{STS}\s+(?:(?:is|are)\s+left|remains?|rem)\s+on\s+(?:the\s+|each\s+)?needle\b", r"\1 to last \2 sts", "Needle 1: K1, m1r, knit until 1 st is left on the needle, m1l, k1."),
    row("before the last|before last|before the wrapped", rf"\bto\s+(?:the\s+)?(?:st|stitch)\s+(?=before\s+(?:the\s+)?(?:last\s+)?wrapped\s+{STS})", "to 1 st ", "Row 3: Knit to the stitch before the last wrapped stitch, w&t."),
    said_row_behind("fasten", r"((?:^|[.;])\s*)(?P<said>fasten\s+(?:off\s+)?(?:in\s+)?(?:all\s+|the\s+|loose\s+)*ends)(?=\s*[.]|\s*$)", "Fasten all ends."),
    said_row_behind("ridge", r"\b((?:knit|work)\s+\d+\s+ridges?)\s+(?P<said>back\s+and\s+forth)\b", "Knit 3 ridges back and forth."),
    row("ridge", r"\b((?:knit|work)\s+\d+\s+ridges?(?:\s+in\s+garter(?:\s+st(?:itch)?)?)?)\s+and\s+(?=(?:bind|cast)\s+off\b)", r"\1. ", "Knit 3 ridges and bind off loosely."),
    row("of ", rf"\b((?:[Ww]ork|[Rr]ep(?:eat)?|then|WORK)\s+(?:all\s+(?:the\s+)?\d+\s+(?:rnds|rounds|rows)|(?:[Rr]nds?|[Rr]ounds?|[Rr]ows?)\s+\d+(?:\s*(?:-|to|and|through)\s*\d+)?)\s+of)\s+(?:the\s+)?({_NAMED})(?<!\bPattern)(?<!\bPatt)(?<!\bLace)(?<!\bRib)(?<!\bStitch)(?<!\bSt)(?<!\bPanel)(?<!\bCable)(?<!\bMotif)(?=\s+(?:{N}|once|twice|until|for)\b|\s*[.,;]|\s*$)", r"\1 \2 pattern", "Work Rnds 1-4 of Ridge twice.", exact=True),
)  # fmt: skip
"""The rows, in the order tried."""

THROUGH: tuple[Synonym, ...] = tuple(
    row("through|to r|up to|to 1|to 2|to 3|to 4|to 6|to 8", rf"^(\s*)(row|rnd|round)s?\s+(\d*[{digits}])(?:\s*,\s*\d+)*\s*,?\s+and\s+(?:all|every|each)\s+(?:foll(?:owing)?\s+|other\s+)*(?:(?:{word})(?:[\s-]numbered)?|alt(?:ernate)?|ws|rs)\s+(?:rows?|rnds?|rounds?)\s+(?:through|up\s+to|to)\s+(?:and\s+including\s+)?(?:(?:row|rnd|round)\s+)?(\d*[{digits}])(\s*\([rw]s\))?\s*:", rf"\1{word} \2s \3-\4\5:", example)
    for word, digits, example in (
        ("even", "02468", "Rnd 2 and all following even-numbered rnds through Rnd 14: Knit."),
        ("odd", "13579", "Row 1 and all odd-numbered rows through Row 15: Knit."),
    )
)
"""The rows for a head that says up to which row it goes."""
