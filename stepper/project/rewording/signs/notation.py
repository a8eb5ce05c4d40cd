"""One notation for the many in print: size lists, lengths, stitches, stars, heads without a colon. No I/O.

The rows of this table change how something is written, never what it says: a dash in a size list becomes a
comma, a full stop between stitches a comma, "K 2 tog" becomes k2tog. A form with two meanings has no row:
"4-5 rounds" may be a list of two sizes or a choice, and is refused.
"""

from __future__ import annotations

from stepper.project.grammar import stitch_words
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import LONG, ROUND, STS, N, Synonym, row

_STITCH = rf"(?:{stitch_words()})(?![\w&/-])"
BEGINS = (
    rf"(?:\*|[(\[]\s*(?:[kp]\b|[kp]\s?\d|{_STITCH})|(?:knit|purl|k|p|sl|slip)\b|(?:[kp]|sl)\s?\d|{_STITCH})"
)
"""How a row of stitches begins."""
_ORDERS = r"(?-i:(?:Cast|Bind|BO|CO|Work|Patt|Pattern|Rib|Inc|Dec|Increase|Decrease|With|Using|Place)\b)"
"""How what is done in a row begins where the page prints it with a capital, behind a head without a colon."""
_LIKE = r"(?:(?:work\s+)?(?:as|same\s+as|like)\s+(?:the\s+)?(?:\d|row|rnd|round))"
_LIST = r"\d+(?:\s*,\s*\d+)*"
_NAMED = (
    r"(?:dec|inc|decrease|increase|set-?\s?up|foundation|eyelet|turning|buttonhole|ridge|preparation|joining|edging|"
    r"fold|picot|cable)"
)
_SHAPED = r"(?:raglan|gusset|thumb|crown|sleeve|body|waist|hip|toe|yoke|neck|v-neck|armhole|shoulder)"
"""What a row shapes, in front of what it is called by: "Raglan dec row"."""

NUMBERS: tuple[Synonym, ...] = (
    row(
        ")|]",
        rf"(\d+)\s*,?\s*[(\[]\s*({_LIST})\s*[)\]]\s*,?\s*({_LIST})(?=\s+{STS})",
        r"\1 (\2, \3)",
        "CO 96, (104), 112 sts.",
    ),
    row(
        "(|[",
        rf"(?<=[a-z]\s)[(\[]\s*(\d+)\s*,\s*({_LIST})\s*[)\]]\s*(\d+)(?=\s+{STS})",
        r"\1 (\2, \3)",
        "CO [88, 92] 96 sts.",
    ),
    row("/", r"(?<=\d)-(?=[1-7]/[248])", " ", "Work until piece measures 7-1/2 in."),
    row("ins|cms", r"(?<=[\d¼½¾])\s*(in|cm)s\b", r" \1", "Work until piece measures 3 ins."),
    said_row(
        "about|approx|rough",
        rf"\b(?P<said>about|approx\.?|approximately|roughly)\s+(?={LONG})",
        "Knit until piece measures about 5 cm.",
    ),
)

_HEADS: tuple[Synonym, ...] = (
    row(
        "row|rnd|round",
        rf"^(\s*(?:next\s+)?{ROUND}(?:\s+\d+)?)\s*-+\s*(?:((?:right|wrong)\s+side)\s*-+\s*)?(?={BEGINS})",
        r"\1 \2: ",
        "Row 1-K2, *p2, k2; rep from * to end.",
    ),
    row(
        "set",
        r"^(\s*(?:row|rnd|round)\s+\d+)\s*[-:]\s*set-?\s?up\s+(?:row|rnd|round)\s*(\((?:rs|ws)\))?\s*:",
        r"\1 \2:",
        "Row 1 - Set up row (RS): K2, pm, k to end.",
    ),
    row(
        "rs|ws",
        rf"^(\s*)(?:\(\s*([rw]s)\s*\)\s*:?|([rw]s)\s*:)\s*(?={BEGINS}|{_ORDERS}|knit|purl|work)",
        r"\1next row (\2\3): ",
        "(WS) Purl.",
    ),
    row(
        "rows|rnds|rounds",
        r"^(\s*(?:rows|rnds|rounds)\s+\d+\s*(?:-|to|and|&)\s*\d+)\s+(?=(?:using|with|change|work)\b)",
        r"\1: ",
        "Rows 1 to 6 Work in st st.",
    ),
    row(
        "each|all|every",
        rf"^(\s*(?:row|rnd|round)\s+\d+(?:\s*\((?:rs|ws)\))?\s*,?\s+and\s+)(?:all|each|every)"
        rf"(\s+(?:(?:other|foll(?:owing)?|the)\s+)*(?:rs|ws|even|odd|(?:right|wrong)[-\s]side)(?:-numbered)?\s+{ROUND})\s*[:,.-]?\s*(?={BEGINS}|{_ORDERS}|knit|purl)",
        r"\1all\2: ",
        "Row 2 and all WS rows Purl.",
    ),
    row(
        "rnd|round|row",
        rf"^(\s*)(\d+)(?:st|nd|rd|th)\s+(?=and\s+(?:every|all)\b[^:]*?({ROUND})\s*:)",
        r"\1\3 \2 ",
        "2nd and every alt rnd: Knit.",
    ),
    row(
        "rnd|round|row",
        rf"^(\s*\d+(?:st|nd|rd|th)\s+{ROUND}(?:\s*\((?:rs|ws|right\s+side|wrong\s+side)\))?)\s*[.,-]?\s+"
        rf"(?={BEGINS}|{_LIKE})",
        r"\1: ",
        "1st row. K.",
    ),
    row(
        "rnd|round|row",
        rf"^(\s*(?:(?:short\s+)?{ROUND}\s+\d+(?:\s*(?:-|,|and\b|&)\s*\d+)*|next\s+{ROUND}|(?:rs|ws|(?:{_SHAPED}\s+)?{_NAMED})\s+(?:rnd|round|row))"
        rf"(?:\s*\(?(?:rs|ws)\b\)?)?)\s*[.-]?\s+(?={BEGINS})",
        r"\1: ",
        "Next row (RS) K2, ssk, k to end.",
    ),
    row(
        "row|rnd|round",
        rf"^(\s*(?:next\s+{ROUND}|\d+(?:st|nd|rd|th)\s+{ROUND}|{ROUND}\s+\d+)(?:\s*\(?(?:rs|ws)\b\)?)?)\s*[.-]?\s+(?={_ORDERS})",
        r"\1: ",
        "Next row (WS) Cast off 4 sts, p to end.",
    ),
    row(
        "as|like",
        rf"(:\s*)(?:work\s+)?(?:as|same\s+as|like)\s+(?:the\s+)?(\d+)(?:st|nd|rd|th)\s+({ROUND})(?=\s*\.?\s*$)",
        r"\1rep \3 \2",
        "4th row: As 2nd row.",
    ),
    row(
        "as|like",
        rf"(:\s*)(?:work\s+)?(?:as|same\s+as|like)\s+(?:the\s+)?(\d+)(?:st|nd|rd|th)\s*(?:-|to|through)\s*(\d+)(?:st|nd|rd|th)\s+({ROUND})(?=\s*\.?\s*$)",
        r"\1rep \4 \2-\3",
        "5th-8th rows: As 1st-4th rows.",
    ),
    row(
        "st|nd|rd|th",
        rf"\b(work|rep(?:eat)?)\s+(?:the\s+|from\s+)?(\d+)(?:st|nd|rd|th)\s*(?:-|to|through)\s*(\d+)(?:st|nd|rd|th)\s+({ROUND})(?:\s+inclusive)?",
        r"\1 \4 \2-\3",
        "Work 1st to 8th rows twice.",
    ),
    row(
        "st|nd|rd|th",
        rf"\b(work|rep(?:eat)?)\s+(?:the\s+)?(\d+)(?:st|nd|rd|th)\s*(?:and|&)\s*(\d+)(?:st|nd|rd|th)\s+({ROUND})",
        r"\1 \4 \2 and \3",
        "Work 1st and 2nd rows twice.",
    ),
    row(
        "of",
        rf"\b(ending\s+(?:with|on|after)\s+(?:a\s+|the\s+)?{ROUND}\s+\d+)\s+of\s+(?:the\s+)?(?:[a-z]+\s+){{0,2}}(?:pattern|patt)\b",
        r"\1",
        "Work in moss st for 10 cm, ending with row 4 of pattern.",
    ),
    row(
        "patt|lace|stitch|rib|st",
        rf"^(\s*)(work|rep(?:eat)?)\s+((?:the\s+)?(?!(?:row|rnd|round|the|this|these|last|in|even|to|from|until|chart)\b)(?:[a-z'-]+\s+){{1,3}}?(?:pattern|patt|lace))\s+((?:{N}\s+(?:more\s+)?times|twice|once)(?:\s+more)?)(?=\s*[.,]|\s*$)",
        r"\1\2 all rows of \3 \4",
        "Work trellis pattern 3 times.",
    ),
    row(
        "as|like",
        rf"(:\s*)(?:work\s+)?(?:as|same\s+as|like)\s+(?:the\s+)?({ROUND}\s+\d)",
        r"\1rep \2",
        "Row 4: Work as row 2.",
    ),
)

_STITCHES: tuple[Synonym, ...] = (
    row("tog", r"\b([kp])\.\s*([23])\s+tog(?:ether)?\b\.?,?(?!\s+tbl)", r"\1\2tog,", "K. 2 tog. K. to end."),
    row("k|p", r"\b([kp])\.\s*(?=\d|to\b)", r"\1 ", "*K. 2, p. 2; rep from * to end."),
    row(
        "k|p",
        r"(?<![\w./-])(\d+)\s?([kp])\b\.?(?=\s*[,;)\]*]|\s*\.|\s*$)",
        r"\2\1",
        "1k, 2p, k to end.",
    ),
    row(
        "tog",
        r"\b([kp])(?:nit|url)?\s?([23])\s+tog(?:ether)?\b(?:\.(?=\s*[,;)\]]))?(?!\s+tbl)",
        r"\1\2tog",
        "K 3 tog, k to end.",
    ),
    row("s.|s ", r"(?<![\w.])s\.?\s?1(?=\s*,\s*k\.?\s?(?:1|2\s?tog\.?)\s*,\s*p\.?\s?s\.?\s?s\.?\s?o\b)", "sl 1", "K 2, s. 1, k 1, p.s.s.o., k to end."),
    row("p.s.s.o|pass", r"\bp\.\s?s\.\s?s\.\s?o\b\.?", "psso", "Sl 1, k 2 tog, p.s.s.o., k to end."),
    row("y.|w.", r"(?<![\w.])[yw]\.\s?(?:fwd|fd|r\.\s?n|o\.\s?n)(?![\w-])\.?", "yo", "K.2, y.fwd., k.2 tog., k. to end."),
    row("t.b.l|t. b", r"(?<![\w.])t\.\s?b\.\s?l\b\.?", "tbl", "K.1 t.b.l., p.1, k. to end."),
    row("s.k.|s. k.", r"(?<![\w.])s\.\s?k\.\s?p\.?(?:\s?o\b\.?)?(?=\s*[,;.)\]*]|\s*$)", "skp", "K 1, s.k.p.o., k to end."),
    row("s.s", r"(?<![\w.])s\.\s?s\.\s?k\.?(?=\s*[,;.)\]*]|\s*$)", "ssk", "K 1, s.s.k., k to end."),
    row("r.s|r. s|w.s|w. s", r"(?<![\w.])(?-i:([RW])\.\s?S)(?:\.(?=\s+(?-i:[a-z(])|\s*[,;:)\]])|(?=[\s,;:)\]])(?!\.))", r"\1S", "1st row (R.S.): Knit."),
    row("r.s|w.s|r. s|w. s", r"\(\s*([rw])\.\s?s\.?\s*\)", r"(\1s)", "1st row: (r.s.) Knit."),
    row("s.s|s. s", r"\bin\s+s\.\s?s\b\.?(?=\s*[,;.)]|\s*$|\s+(?:for|until|beg|ending|finishing))", "in st st", "Work 10 rows in s.s."),
    row("2d", r"(?<=\b2)d(?=\s+(?:row|rnd|round|needle|st|and\s+\d))", "nd", "2d row: Knit."),
    row("3d", r"(?<=\b3)d(?=\s+(?:row|rnd|round|needle|st|and\s+\d))", "rd", "3d row: Knit."),
    row(
        "pass",
        r"\bpass\s+(?:the\s+)?(?:slipped\s+st(?:itch)?|slip\s+st(?:itch)?|sl\s+st)\s+over\b",
        "psso",
        "Slip 1, knit 1, pass slipped stitch over, knit to end.",
    ),
    row(
        "psso",
        r"\bsl(?:ip)?\s*1\s*[,-]\s*(?:k|knit)\s+1\s*[,-]\s*psso\b",
        "skp",
        "Sl 1, K 1, psso, k to end.",
    ),
    row("yarn over", r"\byarn\s+over\b", "yo", "K2, yarn over, k2tog, k16."),
    row("f&b|f & b", r"\bk\s?1?\s*f\s?&\s?b\b", "kfb", "K1 f&b, k19."),
    row(
        "front",
        r"\b([kp])(?:nit|url)?\s+in(?:to)?\s+(?:the\s+)?front\s+and\s+back\s+of\s+(?:the\s+)?(?:next|same)\s+st(?:itch)?\b",
        r"\1fb",
        "K in front and back of next st, k to end.",
    ),
    row("m1", r"\bm1\s*-\s*([lrp])\b", r"m1\1", "K1, M1-L, k18, M1-R, k1."),
    said_row_behind(
        "m1",
        r"\b(m1[lrp]?)\s*\(?\s*(?P<said>by\s+(?:picking\s+up|lifting)"
        r"(?:\s+(?:the|an?|bar|loop|strand|thread|horizontal|between|before|next|last|sts?|stitch|stitches|and|knitting|purling"
        r"|in|into|onto|on|through|back|front|of|it|this|left|right|needle|from|behind|to))+)\b\s*\)?",
        "K1, M1 (by picking up the bar between sts), k to end.",
    ),
    row(
        "k1/|p1/",
        r"\b([kp]1)/([kp]1)\s+(?=in(?:to)?\s+(?:the\s+)?(?:next|same)\s+st)",
        r"(\1, \2) ",
        "K1/p1 in next st, k to end.",
    ),
    row(
        "k|p|s|y|m",
        rf"((?<![\w/-])(?:[kp]\d+|{_STITCH}))\s+(?=[kp]\d+\b|{_STITCH})(?![kp]\d+\s+rib)",
        r"\1, ",
        "K3 p2 k10 p5.",
        again=True,
    ),
    row("k", rf"\bk\s*(?={N}\s+{ROUND})", "knit ", "K 2 rows."),
    row("p", rf"\bp\s*(?={N}\s+{ROUND})", "purl ", "K 1 row, p 1 row."),
)

_STARS: tuple[Synonym, ...] = (
    row("+", r"^([^+*]*)\+([^+*]*\brep(?:eat)?\.?\s+from\s+)\+", r"\1*\2*", "+ K2, p2; rep from + to end."),
    row(
        "rep",
        r"(\*[^*.]*[\w)])\s*\.\s+(?=[^*]*\brep(?:eat)?\b\.?\s+from\s+\*)",
        r"\1, ",
        "1st rnd: *P3. C4B. K6. Rep from * around.",
        again=True,
    ),
    row(
        "rep",
        r"\*([^*]+?)[,;]?\s*\*\s*[,;]?\s*(rep(?:eat)?)\s+from\s+\*\s+to\s+\*",
        r"*\1; \2 from *",
        "K1, *k2, p2*, rep from * to * to last st, k1.",
    ),
    row(
        "*",
        r"\*((?:(?!\brep(?:eat)?\b)[^*])+?)[,;]?\s*\*\s*[,;]\s*rep(?:eat)?\s+(?:around|across|to\s+end)\b",
        r"*\1; rep from * to end",
        "*K2, p2*; repeat around.",
    ),
    row(
        "until",
        rf"(?<=\*)\s*until\s+({N})\s+{STS}\s+(?:left|rem(?:ain)?)\b",
        r" to last \1 sts",
        "* k3, ssk * until 3 sts left, k3.",
    ),
    row(
        "to last",
        rf"\*((?:(?!\brep(?:eat)?\b)[^*])+?)[,;]?\s*\*\s*,?\s*(?=to\s+last\s+(?:{N}\s+)?{STS})",
        r"*\1; rep from * ",
        "*K3, ssk* to last 3 sts, k3.",
    ),
    row(
        "*",
        r"^([^*]*)\*((?:(?!\brep(?:eat)?\b)[^*.])+?)[,;]?\s*\*(?=\s*\.?\s*$)",
        r"\1*\2; rep from * to end",
        "*k1, p1*",
    ),
    row(
        "times|twice",
        rf"((?:^|:)\s*)({_STITCH})\s+(?=(?:{N}\s+times|twice)\b)",
        r"\1(\2) ",
        "K2tog twice, k to end.",
    ),
    row(
        "twice|times",
        rf"\b(to\s+(?:last\s+{N}\s+{STS}|(?:{N}\s+{STS}\s+before\s+)?(?:the\s+)?(?:next\s+)?(?:m|mark(?:er)?))\s*,\s*"
        rf"(?:(?:slm|sm|sl\s+m|slip\s+marker)\s*,\s*)?)({_STITCH})\s+(?=twice\b|{N}\s+times\b)",
        r"\1(\2) ",
        "K to last 4 sts, k2tog twice.",
    ),
)

NOTATION: tuple[Synonym, ...] = (*_STITCHES, *_HEADS, *_STARS)
"""The rows, in the order tried."""
