"""Other wordings in everyday English: sizes by two tables, colours by letters, sums, remarks in brackets. No I/O."""

from __future__ import annotations

from stepper.craft.needles import NEEDLES
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import CHANGE, KEPT, LONG, OFF, ROUND, STS, N, Synonym, row

EVERYDAY: tuple[Synonym, ...] = (
    # --- sizes, colours, signs ---
    row("¼", r"(?<=\d)\s?¼(?=\s*mm)", ".25", "Change to 3¼ mm needles."),
    row("½", r"(?<=\d)\s?½(?=\s*mm)", ".5", "Change to 4½ mm needles."),
    row("¾", r"(?<=\d)\s?¾(?=\s*mm)", ".75", "Change to 3¾ mm needles."),
    row(
        " or ",
        r"\b(?:size\s+|no\.?\s*)?\d{1,2}\s+or\s+(?=\d[\d.]*\s*mm)",
        "",
        "Change to size 8 or 4 mm needles.",
    ),
    row(
        "colo",
        r"\b[Cc][Oo][Ll][Oo][Uu]?[Rr]\s+([A-Z])\b",
        r"\1",
        "With Color A, knit 2 rounds.",
        exact=True,
    ),
    row("thru", r"\bthru\b", "through", "Cut yarn, draw thru rem 6 sts."),
    row("yrn|yfwd|yfd|yon", r"\by(?:rn|fwd|fd|on)\b", "yo", "K1, yrn, k2tog, k to end."),
    row("s1", r"(?<![\w-])S\s?1(?=\s*[,;])", "sl 1", "Row 2: S1, k to end.", exact=True),
    row(
        "tall|high|deep|wide",
        rf"\b(measures\s+{LONG})\s+(?:tall|high|deep)\b",
        r"\1",
        "Work even until hat measures 7 in tall.",
    ),
    row("rib", r"\brib(?:bing)?\s+patt(?:ern)?\b\.?(?=\s*[,.;]|\s*$|\s+(?:for|until)\b)", "rib", "Work in rib pattern for 3 rounds."),
    row("very", r"\bvery\s+loosely\b", "loosely", "Cast off very loosely."),
    row("incr|decr", r"\b(inc|dec)r\b\.?(?=\s+\d)", r"\1", "Incr. 1 st at each end of next row."),
    said_row("(", r"\s*\(\s*(?P<said>all\s+sizes)\s*\)", "Work in k1, p1 rib for 2 cm (all sizes)."),
    row("times)", rf"\*\s*\(\s*({N}\s+times|twice)\s*\)\s*,?\s*(?=[a-z])", r"* \1, ", "*K3, kfb* (4 times) Knit to end."),
    row("stitches|sts", rf"\bknit\s+the\s+remaining\s+{STS}(?=\s*[.,;]|\s*$)", "knit to end", "K10, knit the remaining stitches."),
    row(
        "knit",
        rf"\bknit\s+all\s+(?:the\s+)?knit\s+{STS}\s+and\s+purl\s+all\s+(?:the\s+)?purl\s+{STS}",
        "work in pattern to end",
        "Next round: Knit all knit sts and purl all purl sts.",
    ),
    # --- sums at the end ---
    row(
        "total|so ",
        rf"(?<=[\w)\]*])\s*,?\s+(?:for\s+a\s+total\s+of|so\s+(?:that\s+)?(?:you\s+(?:now\s+)?have|there\s+are(?:\s+now)?))\s+({N}\s+{STS})(?=\s*\.?\s*$)",
        r". \1",
        "K to last st, m1, k1 for a total of 34 sts.",
    ),
    row(
        " by ",
        rf"\b({CHANGE})\s+by\s+({N})\s+(?:{STS}\s+)?(evenly)",
        r"\1 \2 sts \3",
        "Knit, increase by 8 evenly across row.",
    ),
    row(
        " by ",
        rf"\b({CHANGE})\s+evenly\s+by\s+({N})(?:\s+{STS})?",
        r"\1 \2 sts evenly",
        "Knit, increasing evenly by 8.",
    ),
    row(
        "last row",
        rf"(\b(?:rib(?:bing)?|{LONG}|{ROUND}))\s*,?\s*(?:and\s+)?({CHANGE}\s+{N}\s+{STS})\s+(?:on|in|across|over)\s+(?:the\s+)?last\s+row(?:\s+of\s+rib(?:bing)?)?\b",
        r"\1, \2 evenly on last row",
        "Work in k1, p1 rib for 5 cm, inc 1 st in last row of ribbing.",
    ),
    row(
        "even",
        r"(:\s*)(knit|k|purl|p)\s+(?:even|plain|straight)(?=\s*\.?\s*$)",
        r"\1\2 to end",
        "Round 2: K even.",
    ),
    # --- remarks ---
    said_row(
        "(",
        rf"\s*\(\s*(?P<said>{N}\s+(?:inc(?:rease)?|dec(?:rease)?)\s+{ROUND}(?:\s+(?:in\s+all|in\s+total|total|worked))?)\s*\)",
        "Repeat rounds 1 and 2 three more times (four increase rows).",
    ),
    said_row(
        "buttonhole|button hole",
        r"\s*,?\s*\(\s*(?P<said>(?:this\s+)?(?:makes|forms)\s+(?:an?\s+|the\s+)?button\s?hole)\s*\)",
        "K1, yo, k2tog (makes a buttonhole), k to end.",
    ),
    said_row_behind(
        "buttonhole|button hole",
        r"(:\s*|^\s*)(?P<said>(?:make|work)\s+(?:an?\s+|the\s+)?button\s?holes?(?:\s+row)?\s+as\s+follows)\s*:\s*(?=\S)",
        "Row 4: Make a button hole as follows: k2, yo, k2tog, k to end.",
    ),
    row(
        "sew|stitch|pin|press|weave|set in",
        r"^\s*(?:(?:(?:finishing|making\s+up|to\s+finish|assembly)\s*[:.-]\s*|(?:then|finally|now|lastly|next)\s*,?\s+)+(?:sew|stitch|weave)|stitch\s+up|pin|press|set\s+in)\b[^.!;]*",
        KEPT,
        "Finally sew the side and sleeve seams.",
    ),
    said_row(
        "forms|sets",
        r"^\s*(?P<said>(?:this|these)\s+(?:\w+\s+)?(?:rounds?|rnds?|rows?)\s+(?:forms?|sets?)\s+(?:the\s+)?\d\s?x\s?\d\s+rib)\s*\.?\s*$",
        "This round forms 2x2 rib.",
    ),
    row(
        "this r",
        r"\bthis\s+(round|rnd|row)\s+(?:forms|makes|sets(?:\s+up)?|establishes)\s+(?:the\s+)?",
        r"these 1 \1s form ",
        "This round forms rib pattern.",
    ),
    row(
        "as set|established",
        rf"((?:^|[.])\s*)([^.]*?\bas\s+(?:set|established))\s+(?:on|by|in)\s+(?:these|the\s+last|those|last)\s+({N})\s+({ROUND})",
        r"\1These \3 \4 form pattern. \2",
        "Cont in patt as set on these 4 rows until piece measures 9 cm.",
    ),
    said_row(
        "working",
        rf",\s*(?P<said>working\s+across\s+all\s+{STS})\s*,?",
        "Work in patt, working across all sts, until piece measures 9 cm.",
    ),
    row(
        "should",
        r"(?:(?<=^)|(?<=[.!]))\s*(?:the\s+)?(?:piece|work|[a-z]+)\s+should\s+(?:now\s+)?measure\s+[^.;]*?(?=\.(?!\d)|;|$)",
        KEPT,
        "Piece should measure 9 inches in all.",
    ),
    # --- sentences of the old pages ---
    row("alternately", r"(?<=[)\]])\s*alternately\s+(?=across|to\b)", " ", "K4, (p1, k1) alternately to end."),
    row(
        "alternately",
        rf"\b(rep(?:eat)?\s+(?:these|those|(?:the\s+)?last)\s+(?:{N}\s+)?{ROUND})\s+alternately\b",
        r"\1",
        "Repeat these 2 rows alternately until piece measures 4 cm.",
    ),
    row("across", r"\bacross\s+to\s+within\s+(?:the\s+)?(?=last\b)", "to ", "K2, (p1, k1) across to within last 4 sts, k4."),
    row(
        "side)",
        r"(:\s*)\(\s*((?:right|wrong)\s+side)\s*\)\s*",
        r" (\2)\1",
        "1st row: (Wrong side) K3, p to end.",
    ),
    row("[", r"\[\s*((?:rs|ws)(?:\s+facing)?)\s*\](?=\s*:)", r"(\1)", "Set-up row [RS]: K2, pm, k to end."),
    row("every inch", r"\bevery\s+(?:inch|in)\b", "every 1 inch", "Inc 1 st at each end of every inch 4 times."),
    said_row_behind(
        "cent",
        rf"({LONG})\s*,?\s*(?P<said>at\s+(?:the\s+)?cent(?:er|re))(?=\s*[,.;]|\s*$)",
        "Work even until piece measures 9 cm at centre, ending with a WS row.",
    ),
    # --- two things in a sentence ---
    row(
        " and ",
        rf"(\b{ROUND}|\bbo|{OFF})\s+and\s+(?={OFF}(?:\s+(?:loosely|in\s+(?:rib|patt(?:ern)?)))?\s*\.?\s*$|weave\s+in\b|darn\s+in\b)",
        r"\1. ",
        "Cont in rib for 3 more rnds and bind off loosely.",
    ),
    said_row(
        "rejoin|join",
        r"\s+and\s+(?P<said>(?:re-?join|re-?attach)\s+(?:the\s+)?yarn)(?=\s*\.?\s*$)",
        "Place 12 held sts on needle and rejoin yarn.",
    ),
    said_row_behind(
        "for ",
        rf"\b((?:{OFF}|bo)\s+(?:all\s+|the\s+|rem(?:aining)?\.?\s+)+{N}\s+{STS})\s+(?P<said>for\s+(?:the\s+)?(?:back\s+of\s+)?(?:back\s+|front\s+)?(?:neck|shoulders?|armholes?))(?=\s*[.,;]|\s*$)",
        "Bind off remaining 20 sts for back neck.",
    ),
    row(
        "join",
        rf"^(\s*(?:cast\s+on|co)\s+{N}\s+{STS})\s*-+\s*(?=join\b)",
        r"\1. ",
        "Cast on 96 sts - join in the round.",
    ),
    row("on the", r"\bat\s+(?:the\s+)?beg(?:inning)?\.?\s+on\s+(?=(?:the\s+)?next\b)", "at beg of ", "Bind off 3 sts at the beg on the next 2 rows."),
    row("finishing", r"^\s*finishing\s*[:.-]?\s+(?=weave|sew|block|darn)", "", "FINISHING Weave in ends."),
    said_row("complete", r"(?:(?<=^)|(?<=[.!]))\s*(?P<said>(?:thumb|finger|heel|toe|back|front|sleeve|body|cuff|hand|flap|piece)\s+is\s+(?:now\s+)?(?:complete|finished|done))\s*\.?\s*$", "Heel is complete."),
    row(
        "glove|panel|side|strip|square|wristlet|headband|bag|bonnet",
        r"\buntil\s+(?:the\s+)?(?:glove|panel|strip|square|wristlet|headband|bag|bonnet|gauntlet|legwarmer|vest|sweater|jumper)\s+(?=measures|is\b)",
        "until piece ",
        "Work even until panel measures 9 cm.",
    ),
    row("k1-f|p1-f", r"\b([kp])\s?1?-f/b\b", r"\1fb", "K1-f/b, k to end."),
    # --- needles and rounds ---
    said_row_behind(
        "divide|distribute|arrange",
        r"^(\s*)(?P<said>(?:divide|distribute|arrange)\s+(?:the\s+)?(?:sts\s+|stitches\s+)?(?:evenly\s+)?(?:between|over|onto|among|on)\s+(?:the\s+|your\s+)?(?:needles|dpns))\s*,?\s*(?:and\s+)?(?=join\b)",
        "Divide evenly between needles and join in the round.",
    ),
    row(
        "divide|distribute|arrange",
        r"((?:^|[.])\s*)(?:divide|distribute|arrange)\s+(?:the\s+)?(?:sts\s+|stitches\s+)?(?:evenly\s+)?(?:between|over|onto|among|on)\s+(two|three|four|five|[2-5])\s+(?:needles|dpns)\s*,?\s*and\s+(?=join\b)",
        r"\1divide over \2 needles. ",
        "Divide evenly between 3 needles and join in the round.",
    ),
    row(
        "in ",
        r"\b(?:place\s+(?:an?\s+)?marker|pm)\s+and\s+(?:begin\s+|start\s+)?work(?:ing)?\s+in\s+(?:the\s+)?(?:rounds?|rnds?)\b",
        "join in the round",
        "Place marker and work in the round.",
    ),
    row(
        "sleeve|body|front|back|thumb|heel|instep|hood",
        rf"\b(?:place|put|slip|sl|transfer)\s+(?:the\s+)?(?:next\s+)?({N})\s+{STS}\s+for\s+(?:the\s+)?((?:(?:left|right|first|second|other)\s+)?(?:sleeve|body|front|back|thumb|heel|instep|hood))\s+(?:on|onto|to)\s+(?:hold|(?:a\s+)?(?:st(?:itch)?\s+)?holder|(?:waste|scrap)\s+yarn)\b(?:\s*,?\s*to\s+be\s+worked\s+later)?",
        r"hold \1 sts for \2",
        "K10, place next 12 sts for first sleeve on scrap yarn to be worked later, k to end.",
    ),
    row(
        "only",
        rf"^(\s*)work\s+(?:over|on)\s+(?:the\s+|these\s+)?({N})\s+(?:(?:left|right|back|front|sleeve|neck|shoulder|body|heel|instep|yoke|cent(?:er|re))\s+){{0,2}}{STS}\s+only(?=\s*\.?\s*$)",
        r"\1\2 sts",
        "Work over 18 left front sts only.",
    ),
    row(
        "more",
        rf"\b(for\s+{LONG})(?:\s*[(\[][^)\]]*[)\]])?\s+more\b(?=\s*[.,;]|\s*$)",
        r"\1",
        "Work even in st st for 1½\" (4cm) more.",
    ),
    row(
        "row",
        rf"^(\s*)(change\s+to\s+{NEEDLES})\s*,?\s*(?:and\s*,?\s*)?(?:beg(?:inning|in)?|start(?:ing)?)\s+with\s+(?:an?\s+)?(?:k|knit|rs)\s+row\s*,?\s*(?=(?:work|cont(?:inue)?)\b)",
        r"\1next row (rs): \2. ",
        "Change to 4 mm needles and starting with a knit row, work in st st for 3 cm.",
    ),
    row(
        "row",
        rf"^(\s*)(change\s+to\s+{NEEDLES})\s*,?\s*(?:and\s*,?\s+)?(?:beg(?:inning|in)?|start(?:ing)?)\s+with\s+(?:an?\s+)?(?:p|purl|ws)\s+row\s*,?\s*(?=(?:work|cont(?:inue)?)\b)",
        r"\1next row (ws): \2. ",
        "Change to 4 mm needles and, beginning with a purl row, work in st st for 3 cm.",
    ),
    # --- where and how often ---
    row(
        "at ",
        rf"((?:^|[:.])\s*)at\s+(?:the\s+)?(beg(?:inning)?\.?\s+of)\s+(?:each\s+of\s+)?(?:the\s+)?next\s+({N})\s+rows\s*,?\s*((?:bo|{OFF}|cast\s+on)\s+{N}\s+{STS})(?=\s*[.]|\s*$)",
        r"\1\4 at \2 next \3 rows",
        "At the beg of each of the next 2 rows bind off 4 sts.",
    ),
    row(
        "each end|each side",
        rf"\b({CHANGE}\s+{N}\s+{STS})\s+(each\s+(?:end|side))(?:\s+of\s+(?:the\s+)?(?:needle|row))?\s+(?:on\s+)?(?=every|next)",
        r"\1 at each end of ",
        "Work in st st, inc 1 st each end of needle every 8th row 4 times.",
    ),
    row(
        "obtained| on ",
        rf"^(\s*)((?:cont(?:inue)?|work)(?:\s+(?:even|straight))?)\s+on\s+(?:the(?:se)?\s+)?({N}\s+{STS})(?:\s+obtained)?\s+until\b",
        r"\1\3. work even until",
        "Work even on 58 sts until piece measures 18 cm.",
    ),
    row(
        "until",
        rf"\b(rib|patt(?:ern)?)\s+until\s+({N})\s+{STS}\s+(?:rem(?:ain)?s?|(?:are\s+)?left)\b",
        r"\1 to last \2 sts",
        "K3, skp, rib until 5 sts rem, k2tog, k3.",
    ),
    row(
        "twice|thrice",
        r"\*((?:(?!\brep(?:eat)?\b)[^*])+?)[,;]?\s*\*\s*,?\s*(?=(?:twice|thrice)\b)",
        r"(\1) ",
        "*K1, ssk, k11, k2tog, k1* twice.",
    ),
    row(
        "wrong|right",
        r"\b(end(?:ing)?\s+(?:with|on|after))\s+(?:the\s+|an?\s+)?(wrong|right)\s+side(?!\s+(?:row|fac))",
        r"\1 a \2 side row",
        "Work in rib until piece measures 9 cm, ending with the wrong side.",
    ),
    row(
        "rows|rnds|rounds",
        rf"\bfor\s+(?P<said>{LONG}(?:\s*[(\[][^)\]]*[)\]])?)\s*,\s*(?={N}\s+(?:rows|rnds|rounds)\b)",
        "for ",
        "Work in k2, p2 rib for 3 cm, 10 rows.",
        spelt_out=True,
    ),
    row(
        "join",
        r"\bjoin\s+(?:the\s+)?(?:round|rnd)(?=\s*,?\s*(?:taking|being)\b)",
        "join in the round",
        "Join round, taking care not to twist.",
    ),
    row(
        "start",
        r"\b((?:pm|place\s+(?:an?\s+)?marker)\s+(?:for|at|to\s+mark|to\s+indicate)\s+(?:the\s+)?)(?:start|beg(?:inning)?)\s+of\s+(?:the\s+)?(?:rnd|round)\b",
        r"\1beg of rnd",
        "Pm for start of rnd.",
    ),
)
"""The rows, in the order tried."""
