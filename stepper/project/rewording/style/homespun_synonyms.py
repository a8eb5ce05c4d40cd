"""Other wordings of leaflets, and of pages that knitters type for one another. No I/O."""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import LONG, ROUND, STS, N, Synonym, row

_PART = (
    r"(?:piece|work|knitting|body|sleeve|cuff|hem|rib|ribbing|neckband|yoke|foot|leg|hat|mitten|mitt|glove|hand|thumb|sock|toe|cowl|"
    r"scarf|shawl|it)"
)
_WEARER = (
    r"(?:(?:base|top|tip|end|middle|cent(?:er|re)|start|beginning|bend|width|crook|nail|tips)\s+of\s+)?(?:the\s+|your\s+|her\s+|his\s+)?"
    r"(?:(?:little|ring|middle|index|pinky|pinkie|first|second|big|longest)\s+)?(?:finger|fingers|fingertips?|thumb|knuckles?|wrist|elbow|toes?|"
    r"ankle|heel|shoulder|underarm|ear|ears|earlobes?|neck|nail|palm|knee|waist|hips?|pinky|pinkie)"
)
"""A place on whoever wears it."""
_RIB = r"(?:[(\[]?\s*k\s?\d+\s*[,.]?\s*p\s?\d+\s*\.?\s*[)\]]?|\d\s?x\s?\d)(?:\s+rib(?:bing)?)?"
_NAMED_ROWS = (
    r"(?:seeding|foundation|preparation|preparatory|starting|opening|garter|border|edging|hem|ribbing|rib|base|set-?\s?up)"
)

HOMESPUN: tuple[Synonym, ...] = (
    # --- spelling and signs ---
    row("tog-b|tog b", r"\b([kp]\s?\d?\s?tog)-?\s?b(?:l)?\b(?![\w'])", r"\1 tbl", "K2, p2tog-b, yo, k to end."),
    row("dpn", r"\bdpn\b(?=\s*[.,;]|\s*$|\s+(?:as|when|if|once|before|and)\b)", "dpns", "Change to dpn."),
    row("size", r"\b(smaller|larger|bigger)[-\s]sized?\s+(?=needles?\b|dpns?\b|double|circular)", r"\1 ", "Change to smaller size needles."),
    row("till|until", r"\b(?:till|'til|until)\s+(?=(?:the\s+)?end\b)", "to ", "Row 2: Slip 1, then purl till the end."),
    row("(pm|(slip|(sm|(remove", r"(?<=[,;*])\s*[(\[]\s*(pm|slip\s+(?:the\s+)?marker|sm|remove\s+(?:the\s+)?marker)\s*[)\]]", r" \1", "K3, pm, k5, (slip marker), k to end."),
    row("last", r"\b(rep(?:eat)?\s+from\s+\*+)\s*(?:across(?:\s+(?:the\s+)?row)?|around)?\s*,?\s*end(?:ing)?\s+(?:with\s+)?(k|p|knit|purl)\s+(?:the\s+)?last\s+(\d+)\s+(?:sts|stitches)\b", r"\1 to last \3 sts, \2\3", "K2, *yo, k2tog, k1, repeat from * across row ending with K last 2 sts."),
    row("next", r"^(\s*)next\s*:\s*(?=(?:k|p|knit|purl)\b)", r"\1Next row: ", "Next: Purl."),
    row("rows|rnds|rounds", rf"^\s*(?P<said>{_NAMED_ROWS})\s+(rows|rnds|rounds)\s+(\d+)\s*(?:-|to|and|&)\s*(\d+)\s*:", r"\2 \3-\4:", "Foundation rows 1 to 3: Knit.", spelt_out=True),
    # --- casting on, picking up, needles ---
    row("loosely", r"\bcast\s+on\s+loosely\s+with\s+([^,.;]*?\bneedles?)\s+and\s+([a-z][\w-]*)\s+(?=\d)", r"with \1 and \2, cast on loosely ", "Cast on loosely with 4 mm needles and A 38 sts."),
    row("pick up", r"\b(pick\s+up\s+and\s+)k(?=\d)", r"\1knit ", "K3, pick up and k3 sts along side edge."),
    row("evenly", rf"\b(pick\s+up\s+and\s+(?:knit|purl)\s+{N}\s+(?:sts|stitches))\s+evenly(?:\s+spaced)?\s+(?:across|along|down|up|over)\s+", r"\1 evenly along ", "K3, pick up and knit 3 sts evenly spaced across side edge, pick up and knit 3 sts along cast-on edge."),
    row("only", r"\b((?:change|switch|go)\s+(?:back\s+)?to)\s+((?-i:MC|CC\d?|[A-H]))\s+only\b|\b((?:change|switch|go)\s+(?:back\s+)?to|with|using)\s+only\s+((?-i:MC|CC\d?|[A-H]))\b", r"\1\3 \2\4", "Change back to only A and purl 1 row."),
    row("back", r"\b(?:change|switch|go)\s+back\s+to\s+(?=(?-i:MC|CC\d?|[A-H])\b)", "change to ", "Change back to A and purl 1 row."),
    row("to note|to mark|to denote|to show|to indicate", r"\b((?:place|put)\s+(?:an?\s+)?markers?)\s+to\s+(?:note|mark|denote|show|indicate)\s+(?=(?:the\s+)?(?:beg|start|end))", r"\1 for ", "Place marker to note beginning of round."),
    row("graft|kitchener", r"\b(?:kitchener(?:\s+st(?:itch)?)?\s+or\s+graft|graft\s+or\s+kitchener(?:\s+st(?:itch)?)?|kitchener\s+st(?:itch)?)(?=\s+(?:the\s+)?(?:rem\w*|last|\d))", "graft", "Kitchener stitch or graft the remaining 10 stitches."),
    said_row_behind("per |for each", r"\b(\d+\s+(?:sts|stitches))\s+(?P<said>(?:per|for\s+each)\s+(?:sock|mitten|mitt|sleeve|glove|leg|slipper|cuff))\b", "Cast on 16 stitches per sock."),
    # --- lengths and counts ---
    row("from", rf"\buntil\s+(?:the\s+)?{_PART}\s+(from\s+(?:the\s+)?(?:beg(?:inning)?\b\.?|start|cast-?\s?on(?:\s+edge)?|co\s+edge|underarm))\s+measures\s+((?:about\s+|approx(?:imately|\.)?\s+)?{LONG})", r"until piece measures \2 \1", "Work even until work from beg measures 20 cm."),
    row("around", rf"\b(knit|purl)\s+(?:around|in\s+the\s+(?:round|rnd))\s+(?=(?:until\s+(?:you\s+have\b|(?:the\s+)?{_PART}\s+(?:measures|is))|for\s+{LONG})\b)", r"\1 ", "Knit around for 6 in."),
    said_row("or ", r"\s*,?\s*(?P<said>or\s+(?:(?:about|roughly|approximately|approx\.?)\s+)?(?:(?:\d/\d|¼|½|¾|half|one\s+third|two[-\s]thirds|three[-\s]quarters|a\s+third)\s+(?:of\s+)?)the\s+(?:(?:total|full|whole|finished)\s+)?[a-z]+\s+length)(?=\s*\.?\s*$)", "Work even until piece measures 15 cm or about 2/3 of the total foot length."),
    row("k |p ", rf"^(\s*)k\s+(?:in\s+the\s+(?:round|rnd)\s+)?(?=for\s+(?:about\s+)?{LONG}|until\s+(?:the\s+)?{_PART}\s+(?:measures|is|reaches)\b|until\s+\d+\s+rows\s+from\b)", r"\1Knit ", "K for 2 inches."),
    row("from", rf"\buntil\s+(?:you\s+have\s+)?({N}\s+{ROUND})\s+from\s+(?:the\s+)?(?:beg(?:inning)?\b\.?|start|cast-?\s?on(?:\s+edge)?)", r"until \1 have been worked in all", "Knit until 16 rows from beginning."),
    row("reach|cover|touch", rf"\b(knit|purl|work|continue|cont)(?:\s+(plain|even|straight|in\s+pattern|in\s+st\s+st))?\s+(?P<said>until\s+(?:the\s+|your\s+)?{_PART}\s+(?:reaches|covers|touches|comes\s+to|fits\s+to)\s+(?:the\s+)?{_WEARER})\s*[(\[]\s*({N})\s+(rounds|rnds|rows)\s*[)\]]", r"\1 \4 \5", "Knit until mitten reaches the top of the little finger (26 rounds).", spelt_out=True),
    row("reach|cover|touch", rf"\buntil\s+(?P<said>(?:the\s+|your\s+)?{_PART}\s+(?:reaches|covers|touches|comes\s+to)\s+(?:the\s+)?{_WEARER})\s*[,(\[]+\s*((?:about\s+|approx(?:imately|\.)?\s+)?{LONG})\s+(from\s+(?:the\s+)?(?:beg(?:inning)?\b\.?|start|cast-?\s?on(?:\s+edge)?|underarm|cuff))\s*[)\]]?", r"until piece measures \2 \3", "Work even until sleeve reaches the wrist, about 40 cm from underarm.", spelt_out=True),
    said_row_behind("about|approx", rf"({LONG})\s*[(\[]\s*(?P<said>(?:about|approx(?:imately|\.)?)\s+{N}\s+{ROUND})\s*[)\]]", "Work another 2 inches (about 12 rows)."),
    row("leaving", rf"\s*,?\s*\bleaving\s+(?:you\s+with\s+)?(?:a\s+total\s+of\s+({N})\s+(?:total\s+)?{STS}|({N})\s+(?:{STS}\s+(?:total|in\s+(?:all|total))|total\s+{STS}))(?=\s*\.?\s*$)", r". \1\2 sts", "K to marker, remove marker, k to end, leaving a total of 34 sts."),
    row("shaping", r"\b(?:without|with\s+no)\s+(?:any\s+)?(?:further|more|additional)\s+shaping\b", "even", "Work without further shaping until piece measures 20 cm."),
    row("without shaping", rf"^(\s*work)\s+(?:another|a\s+further)\s+((?:{LONG})(?:\s*[(\[][^()\[\]]*[)\]])?)\s+without\s+shaping\b", r"\1 even for \2", "Work another 5 cm without shaping."),
    row("ending", rf"\b({ROUND}|{LONG}|measures\s+{LONG}),?\s+ending\s+on\s+(?:the\s+)?(\d+)(?:st|nd|rd|th)\s+(row|rnd|round)(?:\s+of\s+(?:the\s+)?(?:patt?|pattern))?\b", r"\1, ending with \3 \2", "Work in pattern until piece measures 20 cm, ending on 4th row of pattern."),
    # --- ribs and rows named again ---
    said_row_behind("as ", rf"\b({_RIB})\s+(?P<said>as\s+(?:(?:given|worked|set|described)\s+)?(?:above|before|at\s+(?:the\s+)?beg(?:inning)?))(?=\s*[.,;]|\s*$)", "Work 6 rows of k2, p2 rib as given above."),
    said_row_behind("of ", rf"\b(rep(?:eat)?\s+(?:the\s+)?last\s+(?:\w+\s+)?(?:rows|rnds|rounds))\s+(?P<said>of\s+(?:the\s+)?{_RIB})(?=\s)", "Rep last 2 rows of (k2, p2) ribbing twice more."),
    row("cent", r"(?<=(?:more|imes)[,.]\s)(inc|dec)(?:r|rease|reasing)?\.?\s+(?:1|one)\s+(?:st|stitch)\s+(?P<said>(?:at|in)\s+(?:the\s+)?(?:cent(?:er|re)|middle))\s+of\s+(?:the\s+)?last\s+(row|rnd|round)\b", r"\1 1 st evenly across last \3", "Rep last 2 rows twice more, dec 1 st at center of last row.", spelt_out=True),
    # --- shaping ---
    row("this row|this rnd|this round", r"\b((?:inc|dec)(?:rease)?\s+(?:1|one)\s+(?:st|stitch)\s+(?:at\s+)?(?:each|both)\s+ends?)\s+(?:of\s+)?this\s+(row|rnd|round)\s*,?\s*(?:and\s+)?then\s+(?:(?:inc|dec)(?:rease)?\s+(?:1|one)\s+(?:st|stitch)\s+(?:at\s+)?(?:each|both)\s+ends?\s+)?(?:of\s+)?(?=every\b)", r"\1 of next \2, then ", "Inc 1 st each end this row, then inc 1 st each end every 4th row 5 times."),
    row("begin|beg", r"^(\s*next\s+(?:row|rnd|round)(?:\s*\([rw]s\))?)\s*-+\s*(?P<said>(?:begin|beg)\s+(?:the\s+)?(?:[a-z]+\s+){0,2}(?:shapings?|increases|decreases))\s*:", r"\1:", "Next row - Begin sleeve shaping: K2, m1, k to end.", spelt_out=True),
)  # fmt: skip
"""The rows, in the order tried."""
