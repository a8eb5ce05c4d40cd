"""Other wordings of the longer sentences on pages: stops after abbreviations, lists, colours, two things at once. No I/O."""

from __future__ import annotations

from stepper.craft.needles import NEEDLES
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import LONG, OFF, ROUND, STS, YARN, N, Synonym, row

_BOR = r"(?:bor|(?:the\s+)?(?:beg(?:inning)?|start|end)(?:\s+of\s+(?:the\s+)?(?:rnd|round))?)"
_PLAIN = r"(?:st\.?\s?st\.?|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?|garter(?:\s+st(?:itch)?)?)"
_BEGUN = r"(?:beg(?:in(?:ning)?)?|start(?:ing)?|commencing)"
_SHORT = (
    r"(?i:sts?|stitch|beg|inc|dec|incr|decr|foll|rem|cont|patt|alt|tog|rnds?|ins?|inch|cms?|meas|approx|needles?|rep|yfwd|rib|tbl)"
)
"""Words that pages shorten and end in a full stop."""
_CABLES = "|".join(
    rf"c{2 * half}{way}\s*[:=]\s*(?:slip|sl)\s+(?:the\s+)?(?:next\s+)?{half}\s+sts?\s+(?:on(?:\s?to)?|to)\s+(?:an?\s+|the\s+)?(?:cable\s+needle|cn)\s*,?\s*"
    rf"(?:and\s+)?(?:hold|leave)\s+(?:it\s+)?(?:at|in|to)\s+(?:the\s+)?{side}(?:\s+of\s+(?:the\s+)?work)?\s*,\s*k\s?{half}\s*,?\s*(?:then\s+)?k\s?{half}\s+from\s+(?:the\s+)?"
    r"(?:cable\s+needle|cn)"
    for half in (2, 3, 4)
    for way, side in (("b", "back"), ("f", "front"))
)
"""Cables spelled out as the Craft Yarn Council counts them, and no others."""
_TWIST = r"(?:being|making|be|make|take|taking)\s+(?:sure|certain|care(?:ful)?)\s+(?:that\s+)?not\s+to\s+twist"

_SLIPPING = r"\s*,?\s+(?:always\s+)?slipping\s+(?:the\s+)?(?:first|1st)\s+st(?:itch)?\s+(?:of|in|on)\s+(?:every|each)\s+row(?:\s+throughout)?(?=\s*[.]|\s*$)"

STOPS: tuple[Synonym, ...] = (
    row(
        "needle",
        r"(\bneedles?\s+and\s+)((?-i:[A-Z]))\.(?=\s*,?\s+(?:and\s+)?(?:cast|co|pick|work|rib|k|p|knit|purl|begin)\b)",
        r"\1\2",
        "With 4 mm needles and A. cast on 20 sts.",
    ),
    row(".", rf"\b(?=[^\W\d_]+\.)({_SHORT})\.(?=\s+[a-z(]|\s*,)", r"\1", "Cast off 3 sts. at beg. of next 2 rows.", exact=True),
    row("patt.|rib.", r"((?:^|[:,;*])\s*(?i:patt|rib))\.(?=\s+\d)", r"\1", "Next row: Patt. 8, k2tog, patt. to end.", exact=True),
    row("rep.|inc.|dec.", r"\b((?i:rep|inc|dec))\.(?=\s+\d)", r"\1", "Rep. 1st row 9 times.", exact=True),
    row("sl", r"\bsl\.\s*(?=\d)", "sl ", "Row 2: Sl. 1, k. to end."),
    row("k.|p.", r"\b([kp])\.(?=\s+(?:row|st)\b)", r"\1", "Work 10 rows in st st, beginning with a k. row."),
    row("commenc", r"\bcommenc(?:e|ing)\b", "beginning", "Work 10 rows in st st, commencing with a k row."),
    row("ways", r"\b(knit|purl)ways?\b", r"\1wise", "Cast off knitways."),
    row(
        ",",
        rf"(?<![\d(\[,.])(\s)(\d+)\s*,\s*(\d+(?:\s*,\s*\d+)+)(?=\s+{STS})",
        r"\1\2 (\3)",
        "CO 88, 96, 104 sts.",
    ),
    row(
        ":",
        rf"(?<![\d(\[,:])(?<!needle)(?<!ndl)(\s|^)(\d+)\s*:\s*(\d+(?:\s*:\s*\d+)*)(?=\s+{STS})",
        r"\1\2 (\3)",
        "Cast on 60 : 64 : 68 sts.",
    ),
    row(
        ",",
        rf"\s*[(\[]\s*(\d+)\s*,\s*(\d+(?:\s*,\s*\d+)*)\s+({STS})\s*[)\]](?=\s*\.?\s*$)",
        r". \1 (\2) \3",
        "Next rnd: Knit, increasing 8, 8, 10 sts evenly spaced. [96, 104, 114 sts]",
    ),
    row("another", rf"\banother\s+({N})\s+times\b", r"\1 times more", "Rep last 2 rows another 3 (4, 5) times."),
)
"""Stops and lists, which come before all others."""

PARAGRAPHS: tuple[Synonym, ...] = (
    # --- joined in the round ---
    row("twist", rf"\b{_TWIST}(?:\s+(?:the\s+|your\s+)?{STS})?", "being careful not to twist", "Join in the round, making sure not to twist sts."),
    said_row(
        "bor|beg",
        r"\s*[;,.]\s*(?P<said>(?:the\s+)?(?:bor|beg(?:inning)?\s+of\s+(?:the\s+)?(?:rnd|round))\s+is\s+(?:at|in)\s+(?:the\s+)?[a-z -]+(?:\s+of\s+needle\s+\d|\s+back|\s+underarm|\s+side))(?=\s*\.?\s*$)",
        "Join in the round; BOR is at start of needle 1.",
    ),
    row(
        "join",
        rf"(\b{STS})\s*[;,]\s*(?:pm|place\s+(?:an?\s+)?marker)(?:\s+for\s+{_BOR})?\s*,?\s*(?:and\s+)?join(?:\s+(?:for\s+working|to\s+work))?(?:\s+in\s+(?:the\s+)?(?:rnd|round)s?)?(?=\s*[.,;]|\s*$)",
        r"\1. join in the round",
        "CO 80 sts; pm and join.",
    ),
    row(
        "join",
        rf"((?:^|[.])\s*)(?:pm|place\s+(?:an?\s+)?marker)(?:\s+for\s+{_BOR}\s*,?\s*and\s+join|\s+and\s+join\s+for\s+working)(?:\s+in\s+(?:the\s+)?(?:rnd|round)s?)?(?=\s*[.,;]|\s*$)",
        r"\1join in the round",
        "CO 48 sts. Pm for beg of rnd and join.",
    ),
    row(
        "on each",
        rf"\b((?:cast\s+on|co)\s+{N}\s+{STS})\s*(?:,\s*|[(]\s*)({N})\s+(?:{STS}\s+)?on\s+each\s+of\s+(two|three|four|[2-4])\s+needles\s*[)]?",
        r"\1. divide over \3 needles. \2 sts on each needle",
        "Cast on 60 sts, 20 on each of three needles.",
    ),
    row(
        "set of",
        rf"\b((?:cast\s+on|co)\s+{N}\s+{STS})\s+on\s+(?:an?\s+)?set\s+of\s+(?:four|4)\s+(?:needles|dpns)\s*,\s*(?:arranging\s+)?({N})\s+(?:{STS}\s+)?on\s+each(?:\s+needle)?",
        r"\1. divide over 3 needles. \2 sts on each needle",
        "Cast on 48 sts on set of four needles, arranging 16 on each.",
    ),
    row("in a r", r"\s*,?\s*(?:and\s+)?join\s+in\s+a\s+(?:round|rnd)\b", ". join in the round", "Cast on 48 sts and join in a round."),
    row("rounds", r"((?:^|[.])\s*)work\s+in\s+rounds(?=\s*[.]|\s*$)", r"\1join in the round", "Cast on 48 sts. Work in rounds."),
    said_row_behind(
        "cast-on|cast on",
        r"^(\s*)(?P<said>using\s+(?:an?\s+|the\s+)?[a-z'-]+(?:\s+[a-z'-]+){0,2}\s+cast[-\s]on(?:\s+method)?)\s*,\s*(?=(?:cast\s+on|co)\b)",
        "Using a closed cast-on, CO 16 sts.",
    ),
    said_row_behind(
        "using",
        rf"\b((?:cast\s+on|co)\s+{N}\s+{STS}(?:\s+(?:with|in|using)\s+{YARN})?)\s*,?\s+(?P<said>using\s+(?:an?\s+|the\s+)?[a-z'-]+(?:\s+[a-z'-]+){{0,2}}\s+(?:method|cast[-\s]on))(?=\s*[.,;]|\s*$)",
        "Cast on 40 sts with A, using the thumb method.",
    ),
    row("circular", r"\b(smaller|larger)\s+circular\b(?!\s+needle)", r"\1 circular needle", "With larger circular, cast on 60 sts."),
    row(
        "with|using",
        rf"^(\s*)(?:with|using)\s+({YARN})\s+and\s+the\s+({NEEDLES})\s*,\s*(?:loosely\s+)?(?=(?:cast\s+on|co)\b)",
        r"\1change to \3. with \2, ",
        "With MC and the larger circular needle, cast on 60 sts.",
    ),
    row("flat in|forth in", r"\bwork\s+(?:flat|back\s+and\s+forth(?:\s+in\s+rows)?)\s+in\s+(?!rows\b)(?=[a-z\d])", "work flat. work in ", "CO 40 sts. Work flat in st st for 4 rows."),
    row(
        "back and forth",
        rf"\b((?:cast\s+on|co)\s+{N}\s+{STS}\.\s*)working\s+back\s+and\s+forth\s*,\s*{_BEGUN}\s+with\s+a\s+(?:k|knit)\s+row\s+and\s+(?=work)",
        r"\1work flat. ",
        "CO 12 sts. Working back and forth, begin with a knit row and work 8 rows in st st.",
    ),
    # --- colours in a row ---
    row(
        "k|p",
        rf"\b([kp])\.?\s?(\d+)\s?({YARN})(?=\s*[,;.)*\]]|\s*$)",
        r"\1\2 with \3",
        "*K2 CC, k2 MC; rep from * around.",
        again=True,
    ),
    row("in ", rf"((?:^|[.])\s*)in\s+({YARN})\s*,\s*(?=(?:knit|purl|k|p|work)\b)", r"\1with \2, ", "Break CC. In MC, knit 3 rnds."),
    row(
        "with ",
        rf"((?:^|[.;])\s*)(knit|purl)\s+({N}\s+{ROUND})\s+with\s+({YARN})(?=\s*[.;]|\s*$)",
        r"\1with \4, \2 \3",
        "Purl 2 rounds with MC.",
    ),
    # --- rows ---
    row("(rs|(ws", rf"^(\s*(?:next\s+)?{ROUND}(?:\s+\d+)?\s*)[(]\s*(rs|ws)\s+(?P<said>inc|dec)\s*[)]\s*:", r"\1(\2):", "Next row (RS dec): K1, k2tog, k to end.", spelt_out=True),
    row("pm|sm", r"\b([kp]\s?\d+(?:\s*[(\[][\d\s,;:]+[)\]])?)\s+(?=(?:pm|sm)\b)", r"\1, ", "K8 pm, k4 pm, k to end."),
    row("are left", rf"\buntil\s+({N}\s+{STS})\s+are\s+left\b", r"until \1 rem", "Decrease 1 st at each end of every other row until 14 sts are left."),
    said_row(
        "twisting",
        rf"\s*,\s*(?P<said>twisting\s+{YARN}\s+and\s+{YARN}(?:\s+(?:together|around\s+each\s+other))?(?:\s+at\s+(?:the\s+)?(?:beg(?:inning)?|start)\s+of\s+(?:each|every)\s+(?:new\s+)?{ROUND})?)(?=\s*\.?\s*$)",
        "Knit 3 rounds, twisting A and B together at beginning of each round.",
    ),
    row("next", r"^(\s*)next\s+(rs|ws)\s+(row)\s*:", r"\1next \3 (\2):", "Next RS row: K1, k2tog, k to end."),
    row("twisted", r"\btwisted\s+rib\s*\(\s*k\s?1\s*tbl\s*,\s*p\s?1\s*\)", "twisted rib", "Work in twisted rib (k1tbl, p1) for 6 rnds."),
    row(
        "bo|bind|cast",
        rf"^(\s*)((?:bo|{OFF})(?:\s+(?:all|rem(?:aining)?|loosely|in\s+(?:rib|patt(?:ern)?)|{STS}))*)\s+on\s+(?:the\s+)?(?:next\s+|foll(?:owing)?\s+)?(rs|ws|right\s+side|wrong\s+side)\s+row",
        r"\1next row (\3): \2",
        "Bind off loosely on the next RS row.",
    ),
    row(
        "wraps",
        rf"\b(knit|purl)\s+(?:all\s+(?:the\s+)?{STS}|to\s+end)\s*,\s*(?P<said>(?:picking|lifting)\s+up\s+(?:all\s+)?(?:the\s+)?wraps\s+and\s+(?:knitting|purling|working)\s+(?:them\s+)?tog(?:ether)?\s+with\s+(?:their|the|wrapped|\s)+{STS}(?:\s+as\s+you\s+(?:come|get)\s+to\s+them)?)(?=\s*[.]|\s*$)",
        r"\1 to end",
        "Next rnd: Knit all sts, picking up wraps and knitting them tog with their sts as you come to them.",
        spelt_out=True,
    ),
    row(
        "yo",
        r"\b(knit|purl)\s*,\s*(?P<said>(?:working|treating|knitting|purling)\s+(?:each|every|all)\s+(?:the\s+)?(?:yos?|yarn\s+overs?)\s+as\s+(?:an?\s+)?(?:regular\s+|normal\s+|ordinary\s+)?(?:st(?:itch)?|sts|stitches))(?=\s*[.]|\s*$)",
        r"\1 to end",
        "Next rnd: Knit, working each yo as a regular st.",
        spelt_out=True,
    ),
    row(
        "slipping",
        rf"^(\s*)(?:(?:knit|k)\s+({N})\s+rows(?:\s+plain|\s+in\s+garter(?:\s+st(?:itch)?)?)?|work\s+({N})\s+rows\s+(?:in|of)\s+garter(?:\s+st(?:itch)?)?){_SLIPPING}",
        r"\1next \2\3 rows: sl 1, knit to end",
        "Knit 4 rows, slipping the first st of every row.",
    ),
    row(
        "slipping",
        rf"^(\s*)(?:(?:work|knit|cont(?:inue)?)\s+in\s+garter(?:\s+st(?:itch)?)?|knit\s+every\s+row)\s+((?:for|until)\s+[^,;:*]*?{LONG}){_SLIPPING}",
        r"\1next row: sl 1, knit to end. Rep last row \2",
        "Work in garter st for 5 cm, slipping the first st of every row.",
    ),
    row(
        "before",
        rf"\b(k|p|knit|purl|work)\s+until\s+({N})\s+{STS}\s+(?:rem(?:ain)?|are\s+left)\s+before\s+",
        r"\1 to \2 sts before ",
        "Knit until 2 sts remain before marker, k2tog, k to end.",
    ),
    row("every row", rf"^(\s*)(?P<said>work\s+in\s+[a-z ]+?\s+st(?:itch)?)\s+for\s+({N})\s+rows\s*:\s*every\s+row\s*:\s*", r"\1next \3 rows: ", "Work in seed st for 6 rows: every row: *K1, p1; rep from * to last st, k1.", spelt_out=True),
    row("moss", r"\bmoss\s+st(?:itch)?\s+(?=\d)", "moss ", "Next row: Moss st 4, k to last 4 sts, moss st 4."),
    row("patt|rib", rf"\b(\d+(?:st|nd|rd|th))\s+(?:patt(?:ern)?|rib)\s+(?={ROUND})", r"\1 ", "1st patt row: K2, p to end."),
    row("inc", rf"\binc\s+(?:1\s+)?in(?:to)?\s+(?:the\s+)?(?:each\s+of\s+(?:the\s+)?)?next\s+({N})\s+{STS}", r"(inc1) \1 times", "K5, inc in next 2 sts, k to end."),
    row("(rs)|(ws)", r"^(\s*(?!row|rnd|round)[a-z][a-z -]*?\d*\s*):\s*\(\s*(rs|ws)\s*\)\s*", r"\1 (\2): ", "Final row: (RS) K11, k2tog, k to end."),
    row("knit|k ", rf"\b(knit|purl|k|p)\s+all\s+{STS}\s+for\s+({N}\s+{ROUND})", r"\1 \2", "Knit all sts for 3 rounds."),
    row(
        ";",
        rf"((?:knit|purl|work)\s+{N}\s+{ROUND}(?:\s+in\s+[a-z ]+?)?)\s*;\s*(?=(?:{OFF}|bo|break|cut|change|join|turn)\b)",
        r"\1. ",
        "Purl 2 rounds; bind off purlwise.",
    ),
    # --- how often ---
    row("*", r"^(\s*)(?:work|rep(?:eat)?)\s+from\s+\*\s+to\s+\*\s+(?=\S)", r"\1again from * to * ", "Work from * to * once more."),
    row("this", r"\b(rep(?:eat)?)\s+this\s+(row|rnd|round)\b", r"\1 last \2", "Rep this rnd 4 more times."),
    row(
        "until",
        rf"(\b(?:times(?:\s+more)?|more|once|twice))\s*,\s*until\s+(?:you\s+have|there\s+are)\s+({N}\s+{STS})(?:\s+on\s+(?:the\s+)?needles?)?(?=\s*[.]|\s*$)",
        r"\1. \2",
        "Rep rows 1 and 2 four more times, until you have 17 sts.",
    ),
    row("until", rf"(\b{N}\s+times)\s*,?\s*until\s+({N})\s+{STS}\s+(?:rem(?:ain)?|are\s+left)(?=\s*[.]|\s*$)", r"\1. \2 sts", "Dec 1 st at neck edge of every other row 9 times until 9 sts remain."),
    row(
        "work",
        rf"((?:^|[.])\s*)work\s+(?:the\s+)?last\s+({N}\s+{ROUND})\s+(?={N}\s+more\s+times|{N}\s+times\s+more|once\s+more|twice\s+more)",
        r"\1rep last \2 ",
        "Work the last 2 rnds 2 more times.",
    ),
    row("once|twice|times", r"^(\s*)((?:row|rnd|round)s?\s+\d+(?:\s*(?:-|and|&)\s*\d+)?)\s+(?=(?:once|twice|\d+\s+times)\s+more\b)", r"\1rep \2 ", "Row 2 once more."),
    row("of ", r"\b((?:rows|rnds|rounds)\s+\d+\s*-\s*\d+)\s+of\s+(?:the\s+)?patt(?:ern)?\b", r"\1", "Work rounds 1-4 of pattern 2 times in all."),
    row("them", rf"\bthese\s+({N}\s+{ROUND})\s+form\s+(?:the\s+)?patt(?:ern)?\s*\.\s*rep(?:eat)?\s+them\b", r"rep last \1", "These 2 rows form the pattern. Rep them 4 times more."),
    row("in all", rf"\buntil\s+({N}\s+{ROUND})\s+in\s+(?:all|total)\s+have\s+been\s+worked\b", r"until \1 have been worked in all", "Rep these 2 rows until 12 rows in all have been worked."),
    row("as ", r"(:\s*)as\s+(\d+)(?:st|nd|rd|th)(?=\s*\.?\s*$)", r"\1rep row \2", "3rd row: As 2nd."),
    row("again", r"(\b(?:once|twice|times|more))\s*,\s*then\s+(\d+)(?:st|nd|rd|th)\s+and\s+(\d+)(?:st|nd|rd|th)\s+(row|rnd|round)s\s+again", r"\1. work \4s \2 and \3 once", "Rep last 4 rows once more, then 1st and 2nd rows again."),
    row("as follows", r"\s*,\s*then\s+(?:work|rep(?:eat)?)\s+(?:inc|dec)\w*\s+(?:rnd|round|row)\s+as\s+follows\s*:\s*", ". ", "Knit 6 rnds, then rep dec rnd as follows: *K2tog, k8; rep from * to end."),
    row(
        "as before|as set",
        r"\b(inc|dec)(?:rease)?\s+(?:1|one)\s+st\s+as\s+(?:before|set)\s+at\s+(?:each|both)\s+ends?\s+of\s+(every)\s+(?:foll(?:owing)?\s+)?(\S+\s+row)\b",
        r"rep \1 row \2 \3",
        "Cont in st st, inc 1 st as before at each end of every foll 4th row until there are 28 sts.",
    ),
    # --- fabrics ---
    said_row_behind("across all|over all", rf"\b(in\s+[a-z ]+?\s+st(?:itch)?)\s+(?P<said>(?:across|over)\s+all\s+{STS})(?=\s*[.]|\s*$)", "Work 4 rows in moss st across all sts."),
    row(
        "st",
        rf"\b({_PLAIN})\s+((?:{_BEGUN}|starting)\s+with\s+an?\s+(?:k|knit|p|purl|rs|ws)\s+row)",
        r"\1, \2",
        "Work 8 rows in st st starting with a knit row.",
    ),
    row("st", rf"^(\s*{_BEGUN}\s+with\s+an?\s+(?:k|knit|p|purl|rs|ws)\s+row)\s*,\s*({_PLAIN})\s+({N}\s+rows)", r"\1, work \3 in \2", "Starting with a k row, st st 10 rows."),
    row("rib", rf"((?:^|[.])\s*)rib\s+({N}\s+{ROUND})\s*(?:in\s+|\(\s*)([kp]\s?\d+\s*,\s*[kp]\s?\d+)\s*[)]?(?=\s*[.]|\s*$)", r"\1work \2 in \3 rib", "Rib 10 rounds (k1, p1)."),
    row("for", rf"\b([kp]\s?\d+(?:(?:\s*,)?\s*[kp]\s?\d+)+)\s+around\s+(for\s+{LONG})", r"(\1) to end. work \2", "K2, p1 around for 2 cm."),
    row("even|straight", rf"((?:^|[.])\s*)work\s+({LONG})\s+(?:even|straight)(?=\s*[.]|\s*$)", r"\1work even for \2", "Work 4 cm even."),
    row("another", r"\bwork\s+another\s+(row|rnd|round)\s+(?:even\s+)?in\s+(?:the\s+)?patt(?:ern)?\b", r"work 1 \1 in pattern", "Work another round in the pattern."),
    row("on these", rf"\b((?:cont(?:inue)?|work)\s+in\s+{_PLAIN})\s+on\s+(?:these|the)\s+({N}\s+{STS})\s+for\s+({N}\s+{ROUND})", r"\2. \1 for \3", "Continue in st st on these 60 sts for 5 rows."),
    row("straight up", rf"({LONG})\s*,?\s+straight\s+up\s+(?=from\b)", r"\1 ", "Work even until piece measures 9 cm straight up from marker."),
    row(
        "change",
        rf"^(\s*change\s+to\s+{NEEDLES})\s+and\s+(work\s+{N}\s+rows\s+in\s+{_PLAIN})\s*,\s*({_BEGUN}\s+with\s+an?\s+(?:k|knit|p|purl)\s+row)(?=\s*\.?\s*$)",
        r"\1 and \3, \2",
        "Change to 4 mm needles and work 10 rows in st st, beginning with a k row.",
    ),
    # --- dividing and holding ---
    row(
        "only",
        rf"((?:^|[.])\s*)work\s+on\s+(?:these\s+)?({N}\s+{STS})\s+only(?:\s+for\s+(?:the\s+)?first\s+side(?:\s+of\s+(?:the\s+)?neck)?)?(?=\s*[.]|\s*$)",
        r"\1\2",
        "Work on these 14 sts only.",
    ),
    row("holder", r"\b(?:an?\s+)?(?:second|third|another|other|separate)\s+(?:st(?:itch)?\s+)?holder\b", "a holder", "K10, slip next 12 sts onto a second holder, k to end."),
    row("foll", rf"\b(at\s+(?:the\s+)?(?:neck|armhole|front|side)\s+edge\s+(?:of|on)\s+)(?:the\s+)?foll(?:owing)?\s+(?={N}\s+rows\s*,)", r"\1next ", "Dec 1 st at neck edge of foll 2 rows, then on foll alt row."),
    row(
        "same edge",
        rf"((?:bo|{OFF})\s+{N}\s+{STS}\s+at\s+(?:the\s+)?beg(?:inning)?\s+of\s+(?:the\s+)?next\s+row)\s*,\s*then\s+({N})\s+{STS}\s+({N}\s+times|once|twice)\s+at\s+(?:the\s+)?same\s+edge",
        r"\1. bind off \2 sts at the beginning of every 2nd row \3",
        "Bind off 4 sts at beginning of next row, then 2 sts 2 times at same edge.",
    ),
    row("rows,|rows;", rf"((?:bo|{OFF})\s+{N}\s+{STS}\s+at\s+(?:the\s+)?beg(?:inning)?\s+of\s+(?:the\s+)?next\s+{N}\s+rows\s*[,;]\s*(?:then\s+)?{N})\s+(?=at\s+(?:the\s+)?beg)", r"\1 sts ", "Bind off 3 sts at beginning of next 2 rows, 7 at beginning of next 8 rows."),
    # --- needles ---
    # --- said ---
    said_row("markers placed", r"(?:(?<=^)|(?<=[.!]))\s*(?P<said>\d+\s+markers\s+(?:have\s+been\s+)?placed)(?=\s*\.?\s*$)", "*K10, pm; rep from * around. 8 markers placed."),
    said_row("colo", r"\s*,\s*(?P<said>using\s+an?\s+(?:different|second|contrast(?:ing)?)\s+colou?r(?:ed)?(?:\s+marker)?\s+for\s+(?:the\s+)?(?:end|beg(?:inning)?)[-\s]of[-\s](?:the[-\s])?(?:rnd|round))(?=\s*[.]|\s*$)", "*K10, pm; rep from * around, using a different colour for end-of-round."),
    said_row("made", r"\s*\(\s*(?P<said>\d+\s+button\s?holes?\s+(?:made|worked))\s*\)", "K2, yo, k2tog, k to end (1 buttonhole made)."),
    said_row("fold", r"(?:(?<=^)|(?<=[.!]))\s*(?P<said>fold\s+(?:the\s+)?(?:hem|brim|facing|band|casing)\s+to\s+(?:the\s+)?(?:ws|wrong\s+side|inside)\s+along\s+(?:the\s+)?(?:turning|fold|purl|picot)\s+(?:rnd|round|row|ridge|line)\s+and\s+(?:sew|knit)(?:\s+or\s+(?:sew|knit))?\s+(?:in(?:to)?\s+place|down)(?:\s+later)?)\s*\.?\s*$", "Fold hem to WS along turning round and sew into place later."),
    said_row("c4|c6|c8", rf"^\s*(?P<said>{_CABLES})\s*\.?\s*$", "C6B: slip next 3 sts on to cable needle and hold at back of work, k3, then k3 from cable needle."),
    row("all sizes", rf"^(\s*)all\s+sizes\s*:\s*(?=[a-z]+\s+(?:rnd|round|row)\s*:|(?:bo|{OFF}|work|knit|k|purl|check|count)\b)", r"\1", "All sizes: Dec rnd: K1, k2tog, k to end."),
)
"""The rows, in the order tried."""
