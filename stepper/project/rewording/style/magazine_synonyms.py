"""Other wordings of magazines, British patterns, older leaflets and booklets, and of few words typed at home. No I/O.

Ribbing of, each side, at armhole side, proceeding, increases in every so many stitches, steps by number, "k2tog x 6",
"Rows 3-6: St st", "work other side to correspond".
"""

from __future__ import annotations

from stepper.project.part_names import PART, WHICH
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import (
    CLOSED,
    CUT_YARN,
    HELD_BY,
    KEPT,
    LONG,
    OFF,
    ROUND,
    STS,
    N,
    Synonym,
    row,
)

_K, _P = r"k(?:nit)?\.?\s*\d+", r"p(?:url)?\.?\s*\d+"
_FIRST = r"(^\s*|(?<=[.!;])\s*|^[^.:]*:\s*)"
"""Where an instruction begins: the line, a sentence of it, or what stands behind its name."""
_LEFT = r"(?:\s+(?:rem(?:ain(?:ing)?)?|left|in\s+all|on\s+(?:the\s+)?needles?)\.?)?"
_TOTAL = rf"{N}\s+{STS}\.?{_LEFT}"
_LEGS = rf"(?:{N}\s+times(?:\s+more)?|{N}\s+more\s+times|once(?:\s+more)?|twice(?:\s+more)?)"
_OFTEN = rf"(?:on\s+)?(?:every|each)\s+(?:(?:other|alt(?:ernate)?|\d+(?:st|nd|rd|th)|second|third|fourth|[rw]s)\s+)?{ROUND}"
_SIDE = r"(?:each|both)\s+(?:sides?|ends?)"
_EDGE = r"(?:neck|armhole|front|side)\s+edge"
_TOG = r"k(?:nit)?\.?\s*(?:2|two)\s*(?:(?:sts|stitches)\s+)?tog(?:ether)?\b\.?"
_PART = rf"{WHICH}{PART}"
_ENDING = r"\s*,?\s*(?:and\s+)?(?:end|ending|finish|finishing)\s+(?:with|on|after)\s+"
_COLOUR = r"(?:white|black|gr[ae]y|red|pink|blue|navy|green|yellow|brown|cream|purple|orange|beige|lilac|lemon|turquoise|rose|gold)"
_TAKEN = r"(?:(?:change|switch)(?:\s+back)?\s+to|with|using|join(?:\s+in)?)"
_ACT = r"(?=(?:cast|co|knit|k|purl|p|work|pick|pu|bind|bo|cont(?:inue)?|rib|ss)\b|[kp]\s?\d)"
_ENDS = r"(?:(?:each|both)\s+(?:sides?|ends?)|(?:the\s+)?beg(?:inning)?\s+and\s+(?:the\s+)?end)"
_FABRIC = r"(?:garter\s+st(?:itch)?|st\s+st|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?|moss\s+st(?:itch)?|seed\s+st(?:itch)?)"
_HALF = r"(?:side|shoulder|front)"
_SHAPED = r"(?:crown|toe|thumb|top|tip|gusset|raglan|yoke|armholes?|neck|shoulders?|waist|heel)"
_SHADE = r"\s+(?:colou?r|shade|yarn|wool)\b"
_STEP = r"(?-i:Using|Change|Work|Next(?=\s*:)|Rep(?:eat)?(?!\s+last)|Cast\s+on|Cast\s+off|Bind\s+off|BO|CO|Join|Place|Shape|With|Pick\s+up|Continue|Cont|Break|Cut|Sew|Divide|Slip)\b"
_OVER = rf"(?:the\s+|those\s+)?(?:(?:bound|cast)[-\s]?off(?:\s+{STS})?|{STS}\s+(?:bound|cast)[-\s]?off)(?:\s+(?:of|on|in)\s+(?:the\s+)?(?:previous|last|prev)\.?\s+row)?"
_HEAD = r"(^\s*(?:(?:next|buttonhole)\s+row|row\s+\d+)\s*(?:\([^)]*\)\s*)?:\s*)"
_YARN = r"(?-i:MC|CC\d?|[A-Z]\d?)"
_ORDINALS = ("2nd", "3rd", "4th", "5th", "6th", "7th", "8th", "9th", "10th", "11th", "12th")
_STOCKING = r"(?:st\.?\s?st\.?|stocking\s+st(?:itch)?|stockinette(?:\s+st(?:itch)?)?)"

MAGAZINES: tuple[Synonym, ...] = (
    row("plain", rf"\bknit\s+plain\s+(?=for\s+(?:{LONG}|{N}\s+{ROUND})|until\b)", "knit ", "Cast on 50 sts and knit plain for 8 cm."),
    row("and", rf"(^\s*|[.;:]\s*)(with\s+(?:(?-i:MC|CC\d?|[A-H])|{_COLOUR}))\s+and\s+{_ACT}", r"\1\2, ", "Join in contrast colour and work 6 rows in st st."),
    said_row_behind("beg|start", rf"{_FIRST}(?P<said>(?:begin(?:ning)?|beg|start(?:ing)?)\.?\s+at\s+(?:the\s+)?(?:[a-z]+\s+){{0,2}}?(?:(?:base|top|bottom|back|front|cent(?:re|er))\s+of\s+(?:the\s+)?[a-z]+|edge|end|bottom|top|base|neck|hem|cuff|toe|waist|head))\s*(?:,|\s+and\b|\.(?=\s+cast\b))\s*(?=(?:(?:with|using)\s+[^.;:]*?)?(?:cast\s+on|co)\b)", "Beg at base of body, with A, cast on 6 sts."),
    row("remainder", r"\b(k|knit|p|purl|rib|work)\s+(?:the\s+)?remainder(?:\s+of\s+(?:the\s+)?(?:row|rnd|round))?(?=\s*[,.;)]|\s*$)", r"\1 to end", "Row 1: K15, k remainder."),
    row("using", rf"(^\s*|[.;:]\s*|\b(?:and|then)\s+)using\s+(?:the\s+)?(?:(?:yarn|colou?r)\s+)?((?-i:MC|CC\d?|[A-H])|{_COLOUR})\s*,?\s+{_ACT}", r"\1with \2, ", "Using MC cast on 20 sts."),
    # --- ribs and fabrics ---
    row("of k", rf"\brib(?:bing)?\s+of\s+({_K})\s*\.?\s*,?\s*({_P})\b\.?(?:\s*,\s*(?=for\b|until\b))?", r"\1, \2 rib ", "Work 5 rows in ribbing of k 1, p 1."),
    row("ss", rf"{_FIRST}((?:beg(?:inning)?\.?\s+with\s+an?\s+(?:k|knit|p|purl)\s+row\s*,\s*)?)ss\s+({N}\s+{ROUND}){CLOSED}", r"\1\2work \3 in st st", "Ss 4 rows."),
    row("ss", r"\bin\s+ss(?=\s*[.,;]|\s*$|\s+(?:for|until)\b)", "in st st", "Work 4 rows in ss."),
    said_row_behind("given for|as for", rf"(\bin\s+(?:\d\s?x\s?\d|k\s?\d,?\s*p\s?\d)\s+rib(?:bing)?)\s*,?\s+(?P<said>as\s+(?:given\s+)?for\s+(?:the\s+)?{_PART}){CLOSED}", "Work 9 rows in 1x1 rib as given for back."),
    row("constitut|complet|compris", rf"(\b(?:these|last)\s+(?:{N}\s+)?(?:rows|rnds|rounds))\s+(?:constitutes?|completes?|comprises?)\s+(?:the\s+|one\s+)?(?=(?:[a-z]+\s+)?(?:patt(?:ern)?|rib))", r"\1 form ", "These 2 rows constitute the pattern."),
    row("throughout", rf"(\b(?:these|last)\s+(?:{N}\s+)?(?:rows|rnds|rounds)\s+(?:form|set|make)\s+(?:the\s+)?(?:[a-z]+\s+)?(?:patt(?:ern)?|rib(?:bing)?))\s+throughout{CLOSED}", r"\1", "These 4 rows set the pattern throughout."),
    row("end|finish", rf"(\b{N}\s+(?:more\s+)?rows?\s+in\s+[a-z0-9, ]+?){_ENDING}(?:an?\s+)?(rs|ws|right[-\s]side|wrong[-\s]side)\s+row{CLOSED}", r"\1. ends with a \2 row", "Work 9 rows in k2, p2 rib, ending with a WS row."),
    # --- one word for another ---
    row("wrap", r"\bwrap\s?(?:1|one|next\s+(?:st|stitch))\s*(?:,\s*(?:and\s+)?|\s+and\s+)turn\b", "w&t", "1st row: K20, wrap1, turn."),
    row("further", rf"\b(?:a\s+)?further\s+({N})\s+times\b", r"\1 more times", "Repeat a further 3 times."),
    row("attach", r"{_FIRST}(?:[Rr]e-?)?[Aa]ttach\s+(?=[A-Z]{1,2}\d?(?:\s*[.,]|\s*$))".replace("{_FIRST}", _FIRST), r"\1join ", "Attach CC.", exact=True),
    row("attach|join", r"\b([Bb]reak|[Cc]ut)(\s+off)?\s+([A-Z]{1,3}\d?)\s*,?\s+and\s+(?:attach|join\s+in|join)\s+(?=[A-Z]{1,3}\d?(?:\s*[.,]|\s*$))", r"\1\2 \3. Join ", "Break MC and attach CC.", exact=True),
    row("hereafter|thereafter|from here|from this point|from now", rf"{_FIRST}(?:hereafter|thereafter|from\s+(?:here|this\s+point|now)(?:\s+(?:on|onwards?|out))?)\s*,?\s+(?=(?:work|cont|knit|k\b|rep|inc|dec|bind|cast))", r"\1", "Hereafter work straight until piece measures 12 inches."),
    row("then|next,|now", rf"{_FIRST}(?:then|next|now)\s*,?\s+(?=(?:rep(?:eat)?|work|inc(?:rease)?|dec(?:rease)?|change|switch|cont(?:inue)?|bind|cast|knit|purl|break|join|place|pick)\b)", r"\1", "Then repeat row 1 once."),
    # --- both sides, and one ---
    row("side|end", rf"\b((?:{OFF}|bo)\s+{N}\s+{STS}\.?)\s+(?:at\s+|on\s+)?{_SIDE}\s+(?P<said>for\s+(?:the\s+)?(?:armholes?|underarms?))(?=\s*[.,]|\s*$)", r"\1 each side", "Bind off 4 sts each side for armholes.", spelt_out=True),
    row("each side|both sides|each end", rf"\b((?:{OFF}|bo)\s+{N}\s+{STS}\.?)\s+at\s+(?:the\s+)?(?:beg|begin|beginning|start)\.?\s+of\s+(?:each|every)\s+row\s+({_LEGS})\s+(?:at\s+|on\s+)?{_SIDE}{CLOSED}", r"\1 each side \2", "Bind off 5 sts at beginning of each row 3 times each side."),
    row("side", rf"\b(armhole|neck|front)\s+(?:side|end)\b(?=\s*[,.]|\s+(?:{_OFTEN}|{_LEGS}|once|of)\b|\s*$)", r"\1 edge", "Dec 1 st at armhole side every other row 3 times."),
    row("starting|beginning", rf"{_FIRST}(?:starting|beginning)\s+at\s+(?:the\s+)?((?:shoulder|neck|armhole|side|front)\s+edge)\s*,?\s+((?:{OFF}|bo)\s+{N}\s+{STS}\.?)\s+(?=(?:{_OFTEN}|{_LEGS})\b)", r"\1\3 at \2 ", "Starting at shoulder edge, bind off 8 sts every other row 3 times."),
    row("tog", rf"{_FIRST}{_TOG}\s+(?:at\s+)?{_SIDE}\s+(?:of\s+)?({_OFTEN}\s+{_LEGS}){CLOSED}", r"\1Dec 1 st at each end of \2, working decreases 0 sts in from edge", "K 2 tog. each side every other row 3 times."),
    row("tog", rf"{_FIRST}{_TOG}\s+at\s+(?:the\s+)?({_EDGE})\s+({_OFTEN}\s+{_LEGS}){CLOSED}", r"\1Dec 1 st at \2 \3, working decreases 0 sts in from edge", "K2tog at neck edge every row 4 times."),
    # --- counts behind what is repeated ---
    row("times|more|once|twice", rf"(\brep(?:eat)?\s+(?:the\s+)?(?:last|these|those)\s+(?:{N}\s+)?{ROUND})\s*,\s*(?={_LEGS}\b)", r"\1 ", "Repeat last 4 rows, 3 times more."),
    row("-|–|—", rf"(^[^()*]*\brep(?:eat)?\s+(?:rows?|rnds?|rounds?)\s+\d+)\s*[-–—]+\s*({_TOTAL})(?=\s*\.?\s*$)", r"\1. \2", "Row 4: Rep row 2 - 24 sts."),
    row("at the end of|at end of", rf"([-–—(]\s*{N}\s+{STS})\s+at\s+(?:the\s+)?end\s+of\s+(?:this|the)\s+(?:row|rnd|round)(?=\s*\)?\s*\.?\s*$)", r"\1", "Row 2: Kfb in each st across - 12 sts at the end of this row."),
    # --- heads ---
    row("row|rnd|round", rf"^(\s*(?:{ROUND})\s+\d+(?:\s*(?:-|–|to|and|&)\s*\d+)?)\s*[-–—]+\s*(?=(?:rep(?:eat)?|as|knit|purl|k|p)\b)", r"\1: ", "Row 5—Repeat row 3."),
    row("foll", r"^(\s*(?:row|rnd|round)s?\s+\d+|\s*\d+(?:st|nd|rd|th)\s+(?:row|rnd|round))\s+(?:and|&)\s+(?:all\s+|every\s+)?foll(?:owing)?\.?\s+(?:alt(?:ernate)?\.?|other)\s+rows?\s*(\([rw]s\))?\s*:?\s+", r"\1 and every alt row \2: ", "Row 2 and following alt rows: Purl."),
    row("even|odd", r"^(\s*(?:row|rnd|round)s?\s+\d+)\s+(?:and|&)\s+all[-\s]+(?:other\s+)?(even|odd)(?:-?\s?numbered)?[-\s]+(rows|rnds|rounds)\s*[.:]\s+", r"\1 and all \2 \3: ", "Row 2 and all-even rows. Purl."),
    row("rs r|ws r", rf"\b((?:{OFF}|bo|cast\s+on|co|inc(?:rease)?|dec(?:rease)?)\.?\s+{N}\s+{STS}\.?\s+(?:at\s+)?[^.;:]*?)\s*(?:of\s+|on\s+|over\s+)?(?:the\s+)?next\s+({N})\s+(rs|ws)\s+rows\b", r"\1 of every \3 row \2 times", "Inc 1 st at each end of next 2 RS rows."),
    row("k as k", rf"\b({OFF}(?:\s+(?:all|the|sts|stitches|loosely))*)\s*,?\s+k\s+as\s+k\s*,?\s+(?:and\s+)?p\s+as\s+p{CLOSED}", r"\1 in pattern", "Bind off K as K and P as P."),
    said_row_behind("k as k", rf"\b({OFF}\s+(?:all\s+)?in\s+(?:rib(?:bing)?|patt(?:ern)?))\s*,?\s+(?P<said>k\s+as\s+k\s*,?\s+(?:and\s+)?p\s+as\s+p){CLOSED}", "Bind off in ribbing, k as k and p as p."),
    row("work th|work on th|knit th", rf"{_FIRST}(?:work|continue|cont|knit)\s+(?:on\s+|over\s+)?(?:the|these|those|rem(?:aining)?)\s+({N}\s+{STS})\s+(?:even\s+|straight\s+)?(in\s+[^.;:,]*?)\s*(?=(?:for|until)\b)", r"\1\2. Work \3 ", "Work these 16 sts in st st for 8 rows."),
    row("work th|work on th|knit th", rf"{_FIRST}work\s+(?:on\s+|over\s+)?(?:the|these|those|rem(?:aining)?)\s+({N}\s+{STS})\s+for\s+({N}\s+{ROUND})\s+(?=in\b)", r"\1\2. Work \3 ", "Work the 16 sts for 8 rows in st st."),
    row("in this way on next|in this way on the next|in this way next", rf"{_FIRST}(?:continue|cont|go\s+on)\s+(inc|dec)reasing\s+in\s+this\s+way\s+(?=(?:on\s+)?(?:the\s+)?next\b)", r"\1rep alike \2 row ", "Continue decreasing in this way on next and every foll 6th row until 60 sts remain."),
    # --- what asks for no stitch ---
    said_row_behind("to ", r"(^[^:*]*\b(?:row|rnd|round)(?:\s+\d+)?\s*(?:\([rw]s\)\s*)?:\s*)(?P<said>to\s+(?:make|form|work)\s+(?:the\s+|an?\s+)?(?:eyelets?|holes?|picots?|buttonholes?|hem|fold\s?line|casing|beading)(?:\s+for\s+(?:the\s+)?[a-z]+)?)\s*[,:]\s*(?=[*(\[]|[kp]\s?\d|(?:k|p|knit|purl|sl|yo)\b)", "Next row: To make eyelets for drawstring, *k1, yo, k2tog; rep from * to last st, k1."),
    said_row("(", r"\s*\(\s*(?P<said>to\s+(?:denote|mark|indicate|show)\s+(?:the\s+)?[a-z][a-z ]*?)\s*\)", "Place markers at both ends of last row (to denote side openings)."),
    said_row_behind("back of neck|for neck", rf"\b({OFF}\s+(?:all\s+)?(?:rem(?:aining)?\.?\s+|the\s+)*(?:{N}\s+)?{STS}\.?)\s+(?P<said>for\s+(?:the\s+)?(?:back\s+of\s+(?:the\s+)?)?neck){CLOSED}", "Bind off remaining sts. for back of neck."),
    row("do not|don't", rf"{_FIRST}(?:do\s+not|don't)\s+(?:yet\s+)?(?:{OFF}|fasten\s+off|break\s+off)(?:\s+(?:the\s+)?(?:yarn|sts|stitches|yet))*(?=\s*[.!]|\s*$)[.!]?", KEPT, "Do not bind off."),
    row("dec r|inc r", r"([.]\s+)(dec|inc)\s+(rnd|round|row)\s+(?=(?:on\s+)?every\b)", r"\1Work \2 \3 ", "Knit 2 rnds, then dec rnd every 8th rnd 6 times."),
    row("twice into|twice in|front and back|once in", r"(^\s*|[:.]\s*)(?:(?:k|knit)\s+(?:twice\s+in(?:to)?|in(?:to)?\s+(?:the\s+)?front\s+and\s+(?:the\s+)?back\s+of)|inc(?:rease)?\s+once\s+in(?:to)?)\s+(?:every|each)\s+st(?:itch)?\b(?:\s+(?:to\s+(?:the\s+)?end|across|around))?", r"\1*kfb; rep from * to end", "Next row: K twice into every st."),
    row("all st|all ro", rf"\b(knit|purl)\s+all\s+(?:sts|stitches|rows|rounds|rnds)\s+(?=(?:until|for\s+(?:{LONG}|{N}\s+{ROUND}))\b)", r"\1 ", "Knit all sts until hat measures 15 cm."),
    said_row_behind("twist", r"(\bjoin\s+in\s+the\s+(?:round|rnd))\s*,\s*(?P<said>(?:be\s+)?careful\s+not\s+to\s+twist(?:\s+(?:the\s+)?(?:sts|stitches))?|making\s+sure\s+(?:that\s+)?(?:the\s+)?(?:sts|stitches)\s+are\s+not\s+twisted)", "Join in the round, careful not to twist."),
    # --- how long ---
    row("a further", rf"\b(work|knit|k|purl|p|rib|patt)\s+a\s+further\s+(?={N}\s+{ROUND})", r"\1 ", "Work a further 6 rows straight."),
    # --- which rows and stitches ---
    row("of the|on the", r"\b(of|on)\s+the\s+(?=(?:\d{1,2}(?:st|nd|rd|th)|third|fourth|fifth|sixth|seventh|eighth|tenth)(?:\s+row)?\s+(?:and|&)\s+(?:every|foll))", r"\1 ", "Inc 1 st at each end of the 3rd and every 8th row 4 times."),
    row("tog", rf"{_FIRST}{_TOG}\s+at\s+{_ENDS}\s+of\s+(?:the\s+)?(next\s+(?:row{CLOSED}|(?:and|row)\b[^.;:,]*)|every\b[^.;:,]*){CLOSED}", r"\1Dec 1 st at each end of \2, working decreases 0 sts in from edge", "K2tog at each end of the next and every alternate row until 30 sts remain."),
    row("tog", rf"(:\s*){_TOG}\s+at\s+{_ENDS}(?:\s+of\s+(?:the\s+)?row)?{CLOSED}", r"\1k2tog, work in pattern to last 2 sts, k2tog", "Next row: K2tog at each end of row."),
    row("on these|on the|over these|on rem", rf"{_FIRST}(?:cont(?:inue)?|go\s+on)\s+(?:on|over|with)\s+(?:these|those|the(?:\s+(?:last|first))?|rem(?:aining)?)\s+({N}\s+{STS})(?:\s+only)?{CLOSED}", r"\1\2", "Cont on these 20 sts only."),
    row("working on|working over", rf"{_FIRST}working\s+(?:on|over)\s+(?:these|those|the(?:\s+(?:last|first))?|rem(?:aining)?)\s+({N}\s+{STS})(?:\s+only)?\s*,\s*(?=(?:dec|inc|work|knit|purl|k|p|cont|{OFF})\b)", r"\1\2. ", "Working on these 20 sts only, work 4 rows in st st."),
    said_row_behind("work in|as foll", r"^(\s*)(?P<said>work\s+in\s+(?:\d\s?x\s?\d|k\d,?\s*p\d)\s+rib(?:bing)?\s+as\s+foll(?:ow)?s)\s*:\s*(?=\*|\(|\[|[kp]\s?\d)", "Work in 2x2 rib as follows: *K2, p2; rep from * to end."),
    # --- ends, and what only heads the rows below ---
    row("ribwise", rf"\b({OFF}(?:\s+(?:all|loosely|sts|stitches|evenly))*)\s+rib-?wise\b", r"\1 in rib", "Cast off loosely ribwise."),
    said_row_behind("gather", r"(\bthrough\s+(?:the\s+|all\s+|rem(?:aining)?\s+)*(?:sts|stitches|loops))\s*,?\s*(?:and\s+)?(?P<said>gather(?:\s+(?:up|tight|tightly|firmly))*(?:\s*,?\s*(?:and\s+)?(?:secure|fasten(?:\s+off)?)(?:\s+(?:tightly|firmly|securely))?)?)(?=\s*\.|\s*$)", "Thread yarn through rem sts, gather and secure."),
    said_row("begin|start|for ", rf"^\s*(?P<said>(?:(?:begin|start)\s+(?:the\s+)?(?:{_SHAPED}\s+)?(?:decreas(?:es|ing)|increas(?:es|ing)|shaping)|(?:decrease|increase|shape)\s+for\s+(?:the\s+)?{_SHAPED})(?:\s+as\s+foll(?:ow)?s)?)\s*[:.]?\s*$", "Begin crown decreases:"),
)  # fmt: skip
"""The rows that come late, in the order tried."""

BOOKLETS: tuple[Synonym, ...] = (
    # --- words and signs ---
    said_row_behind("for ", rf"\b(work\s+{N}\s+{ROUND}\s+in\s+{_FABRIC})\s+(?P<said>(?:for|to\s+form)\s+(?:the\s+|a\s+)?(?:turning\s+(?:ridge|row|edge)|fold(?:ing)?\s?line|hem\s?line|hem|facing|ridge))(?=\s*[.,;]|\s*$)", "Work 6 rows in stockinette for facing."),
    row("within", r"\bto\s+within\s+(?:the\s+)?last\s+(?=\d)", "to last ", "Row 9: K4, *p2tog, yo; rep from * to within last 4, k4."),
    row("continue to|cont to|keep working|keep knitting|continue working|cont working", r"\b(?:cont(?:inue)?\s+to\s+|keep\s+(?:on\s+)?|cont(?:inue)?\s+)work(?:ing)?\s+(?=(?:even|straight|in\s+(?!the\s+(?:round|rnd))|until|for)\b)", "work ", "Continue to work even until piece measures 30 cm."),
    row("in the r", r"\b(?:keep\s+(?:on\s+)?(?:working|knitting)|cont(?:inue)?\s+(?:to\s+)?(?:work(?:ing)?\s+|knit(?:ting)?\s+)?)\s*(?P<said>in\s+(?:the\s+)?(?:rounds?|rnds?))\s+(?=(?:until|for)\b)", "work ", "Keep working in the round until piece measures 30 cm.", spelt_out=True),
    row("until", rf"(\b(?:work|cont|continue|knit)\b[^.:;*]*?)\s+until\s+(?={LONG}{CLOSED})", r"\1 until piece measures ", "Continue working straight until 30 cm."),
    row("work rib|work ribbing|work garter|work st", rf"\bwork\s+(?=(?:rib(?:bing)?|{_FABRIC})\s+(?:for|until)\b)", "work in ", "Work rib for 5 cm."),
    row("stitch|st st|garter st|moss st|seed st|stockinette", rf"^(\s*(?:rows|rnds|rounds)\s+\d+\s*(?:-|to)\s*\d+[^:*]*:\s*)({_FABRIC})(?=\s*\.?\s*$)", r"\1work in \2", "Rows 7-12: Garter stitch."),
    row("work", rf"\b(?:cont(?:inue)?)\s+in\s+({_FABRIC})\s+and\s+work\s+({N}\s+{ROUND}){CLOSED}", r"work \2 in \1", "Continue in st st and work 7 rows."),
    row("with|in |using", rf"(\b(?:cast\s+on|co)\s+{N}\s+{STS}(?:\s+loosely)?)\s+(?:with|in|using)\s+({_YARN})(?=\s*[,.;]|\s*$)", r"with \2, \1", "Cast on 40 sts loosely with MC."),
    # --- binding off, picking up, drawing through ---
    said_row_behind("for", rf"(\b{OFF}(?:\s+(?:all|rem(?:aining)?|the|sts|stitches|loosely|in\s+(?:pattern|patt|rib|purl|knit)))+)\s+(?P<said>for\s+(?:the\s+)?(?:back\s+|front\s+|side\s+|top\s+)*(?:of\s+(?:the\s+)?)?(?:neck|shoulders?|edge|sleeve|hood|collar|cuff|back|front))(?=\s*[.]|\s*$)", "Bind off remaining sts loosely for back of neck."),
    row("weave|graft", rf"\b(?P<said>(?:divide|arrange|place)\s+(?:the\s+|rem(?:aining)?\s+)*(?:{STS}\s+)?(?:evenly\s+)?(?:on|onto|over|between)\s+(?:two|2)\s+needles)\s*,?\s*(?:and\s+)?(?:weave|graft)\s+(?:the\s+)?(?:{STS}\s+)?together{CLOSED}", "graft sts together", "Divide sts on 2 needles and weave together.", spelt_out=True),
    row("kitchener", rf"(^\s*|[.]\s*)kitchener(?:\s+st(?:itch)?)?\s+(?:the\s+)?(?:toe|tip|top|end)(?:\s+{STS})?(?:\s+(?:closed|together|shut))?{CLOSED}", r"\1graft sts", "Kitchener stitch toe together."),
    row("bind off|bo,|bo.|bo", rf"(\b(?:for\s+{LONG}|for\s+{N}\s+{ROUND}|{N}\s+{ROUND}|to\s+end|{ROUND}))\s*,\s*(?:and\s+|then\s+)?(?:bo|bind\s+off)(?=\s*\.|\s*$)", r"\1. Bind off", "Work in k2, p2 rib for 3 cm, BO."),
)  # fmt: skip
"""The rows that come late, in the order tried."""

MAGAZINE_WORDS: tuple[Synonym, ...] = (
    said_row_behind("for ", rf"\b((?:knit|purl|k|p)\s+{N}\s+{ROUND}\s+on\s+(?:the\s+)?(?:rs|ws|right\s+side|wrong\s+side))\s+(?P<said>(?:for|to\s+form)\s+(?:the\s+|a\s+)?(?:turning\s+(?:ridge|row|edge)|fold(?:ing)?\s?line|hem\s?line|hem|facing|ridge))(?=\s*[.,;]|\s*$)", "P 1 row on RS for turning ridge."),
    row("alternately|alternating", r"\bk\s+1\s+row\s*,?\s*(?:and\s+)?p\s+1\s+row\s*,?\s*alternate?(?:ly|ing)?\s*,?\s+(?=(?:for|until)\b)", "work in st st, beg with a knit row, ", "K 1 row and p 1 row alternately for 10 rows."),
    row("odd|even", r"^(\s*)(odd|even)(?:[-\s]?numbered)?\s+(rounds|rnds|rows)\s*:", r"\1All \2 \3:", "Even rnds: Knit."),
    row("patt", r"\bwork\s+(?:the\s+)?(?:pattern|patt)\s+(rows|rnds|rounds)\s+(\d+)\s*(?:-|to)\s*(\d+)\b", r"work \1 \2-\3", "Work pattern rows 1-4 twice."),
    row("turn", r"(^\s*|[.]\s+)turn\s+(?:the\s+)?work\s*,?\s+and\s+(?=(?:purl|knit|p|k)\b)", r"\1Turn work. ", "Turn work and purl 1 row."),
    row("in patt", r"\b(work\s+in\s+(?:pattern|patt))\s+across(?:\s+(?:the\s+|all\s+)?(?:row|rnd|round|sts|stitches))?(?=\s*[.;(]|\s*$)", r"\1 to end", "Next row: Work in pattern across row."),
    said_row_behind("edge", r"^(\s*)(?P<said>(?:along|around|across)\s+(?:the\s+|one\s+)?(?:(?:long|short|left|right|front|back|side|neck|upper|lower|top|bottom|straight|curved|cast-on|bound-off)\s+){1,3}edge(?:\s+of\s+(?:the\s+)?[a-z]+)?)\s*,\s*(?=(?:with\b|pick\s+up))", "Along one long edge, pick up and k 30 sts."),
    row("keep", rf"^(\s*)keep(?:ing)?\s+({N}\s+{STS}\s+(?:at|on)\s+each\s+(?:end|side|edge)\s+in\s+{_FABRIC})\s*(?:,\s*|,?\s*(?:and|while\s+working|then)\s+)((?:work|continue|cont)\b[^.;:]*?)(?=\s*\.|\s*$)", r"\1\3, keeping \2", "Keeping 4 sts at each edge in seed st, work 8 rows in st st."),
    said_row_behind("to end", r"(\bto\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?row)?)\s+(?P<said>for\s+(?:the\s+)?(?:(?:left|right)\s+)?(?:front|back|side|shoulder|sleeve|half))(?=\s*-\s*\d)", "K20, p to end of row for left front - 40 sts."),
    row("needle for|needles for", rf"(\b{N}\s+{STS})\s+(?:rem(?:ain)?(?:ing)?)\s+on\s+(?:the\s+)?needles?\s+(?P<said>for\s+(?:the\s+)?(?:(?:left|right)\s+)?(?:front|back|side|shoulder|sleeve|half))(?=\s*\.?\s*$)", r"\1 rem", "K to end - 16 sts remain on needle for left front.", spelt_out=True),
    said_row_behind("using|change|work|next|rep|cast|bind|bo |co |join|place|shape|with|pick|cont|break|cut|sew|divide|slip", rf"^(\s*)(?P<said>\d{{1,2}})[.)]?\s+(?={_STEP})", "6 Work in st st until piece measures 20 cm."),
    row("one inch", r"\b(for|measures|is|another|every)\s+one\s+(?=inch\b)", r"\1 1 ", "Work in k1, p1 rib for one inch."),
    row("above", rf"(\brep(?:eat)?)\s+(?:the\s+)?above\s+({N}\s+{ROUND})", r"\1 last \2", "Repeat above 2 rows 4 times."),
    row("across to", r"\b(k|p|knit|purl|work)\s+across\s+(?=to\s+(?:last|end|within|\d|the\b|marker))", r"\1 ", "Next row: K3, ssk, k across to last 5 sts, k2tog, k3."),
    row("sl m|sl st m", r"\bsl\s+(?:st\s+|stitch\s+)?marker\b", "sm", "Rnd 2: K1, sl marker, m1, k to end."),
    row("main", rf"\b(needles?\s+and)\s+(?:the\s+)?main{_SHADE}", r"\1 MC", "Using 3.5 mm needles and main shade, cast on 40 sts."),
    row("(", rf"\(\s*({_YARN})\s*\)\s*([kp]\s?\d+)(?=\s*[,;]?\s*(?:\*|\(\s*{_YARN}\s*\)|rep\b|repeat\b|[.]|$))", r"\2 in \1", "Row 1: *(MC) k3, (CC) k3; rep from * to end."),
    row("bind-off|bind off|bo ", r"^\s*use\s+(?:an?\s+|the\s+)?(?:3|three)-?\s?needle\s+(?:bind|cast)[-\s]off\s+to\s+join\s+(?:the\s+)?shoulders(?=\s*\.?\s*$)", "join shoulders with three-needle bind off", "Use 3-needle bind off to join shoulders."),
    row("cast on|co ", rf"{_HEAD}(?:cast\s+on|co)\s+({N})(?:\s+{STS})?\s+over\s+(?:each\s+)?{_OVER}(?=\s*[.(-]|\s*$)", r"\1work in pattern, casting on \2 sts over each buttonhole", "Next row: Cast on 2 sts over bound-off sts."),
    row("casting on", rf"\bwork\s+(?:back|across|to\s+end|in\s+pattern)\s*,?\s+casting\s+on\s+({N})(?:\s+{STS})?\s+over\s+(?:each\s+)?{_OVER}", r"work in pattern, casting on \1 sts over each buttonhole", "Next row: Work across, casting on 2 sts over the bound-off sts."),
    row("casting on", rf"\b(knit|purl|k|p)\s+(?:to\s+end|across|back)\s*,?\s+casting\s+on\s+({N})(?:\s+{STS})?\s+over\s+(?:each\s+)?{_OVER}", r"\1, casting on \2 sts over each buttonhole", "Next row: K to end, casting on 2 sts over the cast-off sts."),
    row("to match", r"(^\s*|[.]\s*)work\s+(?:the\s+)?(?:other|second|opposite)\s+(?:side|shoulder|front)\s+to\s+match(?:\s+(?:the\s+)?first(?:\s+side)?)?(?=\s*\.?\s*$)", r"\1Complete to match first side, reversing shaping", "Work other side to match."),
    row("to match", r"(^\s*|[.]\s*)(?:complete|finish)\s+(?:the\s+)?(?:other|second)\s+side\s+to\s+match\s+(?:the\s+)?first(?:\s+side)?(?=\s*[,.]|\s*$)", r"\1Complete to match first side", "Complete second side to match first."),
    row("rejoin", r"\b(re-?join\s+(?:the\s+)?yarn)\s+and\s+(?=complete\s+to\s+match\b)", r"\1 to rem sts. ", "Rejoin yarn and complete to match first side."),
    row("to match", r"(^\s*|[.]\s*)(?:work|make|knit)\s+(?:the\s+)?(?:left|right)\s+(front|side|half|sleeve|mitten|mitt)\s+to\s+match\s+(?:the\s+)?((?:left|right)\s+\2)\s*,\s*revers(?:e|ing)\s+(?:all\s+|the\s+)*shapings?(?=\s*\.?\s*$)", r"\1Work as for \3, reversing shaping", "Work left front to match right front, reversing shaping."),
    row("st and|nd and|rd and|th and", r"(\brep(?:eat)?)\s+(?:the\s+)?(\d+)(?:st|nd|rd|th)\s+and\s+(\d+)(?:st|nd|rd|th)\s+rows(?:\s+alternately)?\s+(?=until\b)", r"\1 rows \2 and \3 ", "Repeat the 2nd and 3rd rows alternately until piece measures 15 cm."),
    # --- yarns by their colour ---
    row("main|background", rf"\b({_TAKEN})\s+(?:the\s+)?(?:main|background)\s+(?:colou?r|shade)\b(?:\s+(?:yarn|wool))?(?!\s*[(\[])", r"\1 MC", "Change to main colour and knit 4 rows."),
    row("contrast", rf"\b({_TAKEN})\s+(?:the\s+)?(?:2nd|second)\s+contrast(?:ing)?(?:\s+(?:colou?r|shade))?\b(?!\s*[(\[])", r"\1 CC2", "Change to second contrast. Knit 2 rows."),
    row("contrast", rf"\b({_TAKEN})\s+(?:the\s+|an?\s+)?(?:(?:1st|first)\s+)?contrast(?:ing)?\s+(?:colou?r|shade)\b(?!\s*[(\[])", r"\1 CC", "Join contrasting colour. Knit 2 rows."),
    row("yarn|wool", rf"\b((?:{_TAKEN}|in)\s+(?:the\s+)?{_COLOUR})\s+(?:yarn|wool)\b", r"\1", "With white yarn, knit 4 rows."),
    row("and", rf"(^\s*|[.;:]\s*)((?:(?:change|switch)\s+to|join)\s+{_COLOUR})\s*,?\s+and\s+{_ACT}", r"\1\2. ", "Join green and knit 2 rows."),
    row("join|attach|change", rf"\b((?:break|cut)(?:\s+off)?\s+{_COLOUR})\s*,?\s*(?:and\s+)?(?:then\s+)?(?:join(?:\s+in)?|attach|change\s+to)\s+(?={_COLOUR}\b)", r"\1. Join ", "Break pink and join blue."),
    row("in |with", rf"(^\s*|[.;]\s*)((?:knit|work|k|purl)\s+{N}\s+(?:more\s+)?{ROUND})\s+(?:in|with)\s+({_COLOUR}){CLOSED}", r"\1with \3, \2", "Knit 4 rows in white."),
    # --- what a sentence opens with ---
    said_row_behind("to shape", rf"{_FIRST}(?P<said>to\s+shape\s+(?:the\s+)?(?:(?:left|right|back|front)\s+)?(?:shoulders?|neck|armholes?|raglan|crown|toe|top|thumb|waist|heel|instep|foot|sleeve\s+(?:cap|top)))\s*,\s*(?=(?:{OFF}|bo|inc|dec|k|p|work)\b)", "To shape shoulders, bind off 3 sts at the beginning of next 4 rows."),
    # --- words ---
    row("s of", rf"\b(?:work|knit|cont(?:inue)?)\s+({N}\s+(?:more\s+)?{ROUND})\s+of\s+(?:the\s+)?(?=(?:patt(?:ern)?|rib(?:bing)?)(?=\s*[.,;]|\s*$))", r"work \1 in ", "Work 9 rows of pattern."),
    row("back of", r"\b([kp])(?:nit|url)?\s+in(?:to)?\s+(?:the\s+)?back\s+(?:loop\s+)?of\s+(?:the\s+)?next\s+(?:st|stitch)\b", r"\11 tbl", "Row 3: *P1, k in back of next st; rep from * to end."),
    row("across", r"((?:^|:)\s*)((?:[kp]\s?\d+\s*,\s*)+[kp]\s?\d+)\s*,?\s+across(?:\s+(?:the\s+)?row)?(?=\s*[.(]|\s*$)", r"\1*\2; rep from * to end", "Row 1: K2, p2 across row."),
    row("row", r"\b(?:k|knit)\s+(?:1|one)\s+row\s*,?\s*(?:and\s+)?(?:p|purl)\s+(?:1|one)\s+row\s*,?\s+(?=(?:for|until)\b)", "work in st st, beg with a knit row, ", "K 1 row, P 1 row for 7 cm."),
    row("repeat,", r"\*\s*([^*]*?)\s*,\s*repeat\s*,\s*([kp])\s*(\d+)(?=\s*[.(]|\s*$)", r"*\1; rep from * to last \3 sts, \2\3", "Row 1: *k5, k2tog, repeat, k3."),
    row("even", r"\b((?:k|p|knit|purl)\s+(?:across|around|to\s+end))\s+even(?=\s*\.|\s*$)", r"\1", "Row 2: Purl across even."),
    row("work", rf"\b((?:cast\s+on|co)\s+{N}\s+{STS})\s+(?=work\s+(?:in|\d))", r"\1. ", "Cast on 80 sts work in k1, p1 rib for 2 cm."),
    row("underarm|armhole", rf"{_FIRST}work\s+to\s+(?:the\s+)?(underarms?|armholes?)\s+(?:the\s+)?same\s+as\s+(?:the\s+)?({_PART}){CLOSED}", r"\1Work same as \3 to \2", "Work to underarm the same as back."),
    row("total", rf"(\btimes)\s*,\s*total\s+(?:of\s+)?({N}\s+{ROUND})(?=\s*\.?\s*$)", r"\1. \2 in all", "Work rows 1 and 2 three times, total 6 rows."),
    row("twice|times", rf"(:\s*as\s+(?:rows|rnds|rounds)\s+\d+(?:\s*(?:-|to|and)\s*\d+)?)\s*,\s*(?={_LEGS})", r"\1 ", "Rows 9 to 14: As rows 3 to 5, twice."),
    row("through", rf"{_FIRST}((?:{CUT_YARN}\s*,?\s*(?:and\s+)?)?)(?:thread|draw|pull|run|pass)\s+(?:the\s+)?(?:yarn|wool|thread|end|tail|it)\s+through\s+(?:the\s+|all\s+|these\s+|rem(?:aining)?\s+|last\s+)*(\d+)\s+(?:sts|stitches|loops)(?P<said>(?:\s+on\s+(?:the\s+)?needles?)?(?:\s*(?:,\s*)?(?:and\s+)?(?:pull|draw|fasten|end|secure|tighten)\b(?:\s+(?:up|off|it|them|tight|tightly|firmly|securely|in))*)*){CLOSED}", r"\1\3 sts. \2draw yarn through sts", "Thread the end through the 29 sts on the needle and fasten off securely.", spelt_out=True),
    row("over th|on th|on last|on rem|over rem", rf"{_FIRST}(?:work\s+(?:over|on)\s+(?:the|these|those|rem(?:aining)?|last)\s+(?:last\s+)?({N}\s+{STS})(?:\s+only)?\s+|on\s+(?:the\s+)?(?:rem(?:aining)?|last)\s+({N}\s+{STS})\s*,?\s+work\s+)(?=(?:for\s+(?:{LONG}|{N}\s+{ROUND})|until)\b)", r"\1\2\3. Work ", "Work over these 18 sts for 4 cm."),
    row("rd", r"(?<![\d\w])rd(s?)\b", r"rnd\1", "Work 1 rd even."),
    said_row_behind("(until", rf"(\b{N}\s+(?:more\s+)?{ROUND})\s*\(\s*(?P<said>until\s+(?:the\s+)?[a-z]+\s+measures\s+{LONG})\s*\)", "Work 3 more rnds (until mitt measures 8 inches)."),
    row("purl|p", r"(?:(?<=^)|(?<=[.!:]\s))(?:purl|p)\s*(\d+)\s*,?\s*(?:and\s+)?(?:knit|k)\s*(\d+)(?:\s+(?:sts|stitches))?\s+(?=for\s+\d)", r"work in p\1, k\2 rib ", "Purl 2, knit 2 sts for 4 inches."),
    row("purl", r"\b((?:knit|k)\s+\d,?\s+(?:purl|p)\s+\d)\s+(?:sts|stitches)\s+(?=for\b)", r"\1 ", "Knit 2, purl 2 sts for 4 inches."),
    row("last st", r"(,\s*)sl(?:ip)?\s+(?:the\s+)?last\s+(?:st|stitch)\b", r"\1sl 1", "Row 1: K to last st, sl last st."),
    row("k r", r"(,\s*)(k|p|knit|purl)\s+(?:rnd|round|row)(?=\s*\*?\s*[.]?\s*$)", r"\1\2 to end", "Rnd 3: K1, sl marker, k rnd."),
    row("yif|yib", r"\b(sl(?:ip)?\s*\d*(?:\s*(?:the\s+)?(?:last|first|next)\s+(?:st|stitch))?)\s+yi([fb])\b", r"\1 wyi\2", "Row 1: k1, sl1 yif, k to end."),
    row(". ", r"(\([^()*.]*(?:tog|\d|\bst))\.\s+(?=[kp]\s?\d|(?:sl|ssk|yo|inc|k|p)\b)", r"\1, ", "Next row: (K2tog. K1) to end.", again=True),
    row("thus|so on", r"\b((?:continue|cont|go\s+on)\s+(?:in|de)creasing)\s+thus\b", r"\1 in this way", "Continue decreasing thus on every 6th row until 60 sts remain."),
    row("an inch", r"\b((?:for|is|measures)\s+(?:about\s+)?)an?\s+inch\b", r"\11 inch", "Work in 1x1 rib for about an inch."),
    row("wise", r"\b(?:inc(?:rease)?)\s+(?:k|knit)[\s-]?wise\s+in(?:to)?\s+(?:every|each)\s+(?:st|stitch)\b(?:\s+(?:to\s+(?:the\s+)?end|across|around))?", "*kfb; rep from * to end", "1st row: Inc k-wise into every st."),
    row("inc", r"(,\s*)inc(?:rease)?(?:\s+1)?\s+in\s+(?:the\s+)?last\s+(?:st|stitch)\b(?=\s*(?:-|–|\(|\.\s))", r"\1inc 1", "Next row: Inc in first st, k38, inc in last st - 42 sts."),
    row("*", r"(\*[^*]*\*)\s*,\s*$", r"\1.", "Row 1: P 2, * yo, k 2 tog, k 1, P 2 *,"),
    row("end", r"\*\s*((?:(?!rep)[^*])*?)\s*,?\s*\*\s*,?\s*(?:and\s+)?end(?:ing)?(?:\s+with)?\s+([kp])\s*(\d+)(?=\s*\.?\s*$)", r"*\1; rep from * to last \3 sts, \2\3", "Row 1: *p 2, k 1, * end p 2."),
    row("and patt", r"(\bneedles?|\bdpns?)\s+and\s+(?:in\s+)?patt(?:ern)?\.?\s*,\s*(?=(?:inc|dec)\b)", r"\1 and work in patt, ", "Change to 4 mm needles and pattern, inc 1 st at both ends of the 5th and every foll 4th row 3 times."),
    row("follow|foll", r"(\bneedles?|\bdpns?)\s*,?\s*(?:and\s+)?(?P<said>(?:(?:then|now)\s+)?(?:work|cont(?:inue)?|proceed|beg(?:in)?)\s+in\s+(?:[a-z]+\s+){0,3}patt?(?:ern)?\.?\s+as\s+foll(?:ow)?s?\.?)\s*[:.]?\s*$", r"\1.", "Change to larger needles and work in pattern as follows:", spelt_out=True),
    row("follow|foll", rf"(\b(?:{STS}|inch(?:es)?|in|cm|{ROUND}))\s*\.?\s*,?\s*(?:and\s+)?(?P<said>(?:then|now)\s+(?:shape\s+(?:the\s+)?[a-z]+(?:\s+[a-z]+)?|work\s+(?:an?\s+|the\s+)?buttonholes?)\s+as\s+foll(?:ow)?s?\.?)\s*[:.]?\s*$", r"\1.", "Work 4 rows in st st, then shape waist as follows:", spelt_out=True),
    row("holder", r"\bst\.?\s?-\s?holder\b|\bst\.\s*holder\b", "st holder", "Place first 8 sts on st-holder."),
    row("increase in|inc in", r"\binc(?:rease)?\.?\s+in\s+(?:the\s+)?next\s+(?:[kp]\s+)(?:st|stitch)\b|\bincrease\s+in\s+(?:the\s+)?next\s+(?:st|stitch)\b(?=\s*[;*])", "inc in next st", "Next row: *p5, increase in the next st; rep from * to end."),
    row("edge", rf"\b((?:{OFF}|bo)\s+{N}\s+{STS}\.?)\s+(?:from|on)\s+(?:the\s+)?((?:shoulder|neck|armhole|side|front)\s+edge)\b", r"\1 at \2", "Bind off 6 sts from shoulder edge every other row 3 times."),
    row("on next|on the next|on foll|on the foll", r"(^\s*|(?<=[.!])\s+)on\s+(?:the\s+)?(?:next|foll(?:owing)?)\s+(rnd|round|row)\s*,\s*(?=increase\b)", r"\1next \2: ", "On next round, increase 8 sts evenly."),
    row("correspond|to match first|to match the first", rf"{_FIRST}(?:(?:work|knit)(?=[^.;]*\scorrespond)|complete|finish)\s+(?:(?:the\s+)?(?:other|second|2nd|left|right|opposite)\s+{_HALF}\s+)?to\s+(?:correspond\s+(?:with|to)|match)\s+(?:the\s+)?(?:first|other)\s+{_HALF}((?:\s*,\s*(?:but\s+)?revers(?:e|ing)\s+(?:all\s+|the\s+)*shapings?)?){CLOSED}", r"\1Complete to match first side\2", "Work to correspond with first side, reversing shaping."),
    row("to correspond", rf"{_FIRST}(?:work|complete|finish|knit)\s+(?:the\s+)?(?:other|second|2nd|opposite)\s+{_HALF}\s+to\s+correspond{CLOSED}", r"\1Complete to match first side, reversing shaping", "Work other side to correspond."),
    row("for patt|for the patt", rf"(\brep(?:eat)?\s+(?:these|the\s+last|last|{ROUND})\s+[^.;:]*?)\s+for\s+(?:the\s+)?patt(?:ern)?\s+(?=(?:until|for)\b)", r"\1 ", "Rep these 2 rows for patt until work measures 20 cm."),
    row("back and forth", rf"(\bwork\s+back\s+and\s+forth\s+(?:in\s+rows\s+)?(?:on|over)\s+(?:(?:these|the|next)\s+)*{N}\s+{STS})(?:\s+only)?\s+as\s+foll(?:ow)?s\s*:?\s*$", r"\1", "Work back and forth on these 32 sts as follows:"),
    row("for ", rf"(\b{N}\s+{ROUND})\s+(?P<said>for\s+(?:the\s+)?(?:border|edging|hem|band|brim|cuff))\s+(?=and\b)", r"\1 ", "Knit 4 rows for border and bind off loosely.", spelt_out=True),
    row("evenly:", rf"\b(evenly(?:\s+(?:spaced|across|around))?)\s*:\s*({N}\s+{STS})(?=\s*\.?\s*$)", r"\1. \2", "Next round: Knit, increasing 8 sts evenly: 68 sts."),
    row("(right|(wrong|(rs|(ws", r"^(\s*(?:row|rnd|round)\s+\d+)\s*:\s*(\(\s*(?:rs|ws|right\s+side|wrong\s+side)\s*\))\s*:\s*", r"\1 \2: ", "Row 1: (Right side): Knit."),
    row("&", r"^(\s*\d+(?:st|nd|rd|th))\s*&\s*(?=every\b|all\b|\d)", r"\1 and ", "2nd & every alt row: Purl."),
    row(" x", r"\*\s*([^*]+?)\s*\*\s*x\s*(\d+)\b", r"(\1) \2 times", "Row 2: *K1, k2tog* x 6."),
    row(" x", r"(^|[:,]\s*)((?:k|p)\s?\d\s?tog|ssk|skpo|kfb|pfb)\s+x\s*(\d+)\b", r"\1(\2) \3 times", "Row 3: K2tog x 6."),
    row("across to last", r"\b((?:k|p)\s?\d\s?tog|ssk)\s+across\s+to\s+last\s+", r"*\1; rep from * to last ", "Next row: K2tog across to last st, k1."),
    row("all along", r"\ball\s+along(?:\s+the)?(?:\s+(?:row|rnd|round))?(?=\s*[.(]|\s*$)", "to end", "Next row: K2tog all along the row."),
    row("break|cut", rf"\b(to\s+(?:the\s+)?end|around|across)\s*,\s*(?:and\s+|then\s+)?(?={CUT_YARN})", r"\1. ", "Row 4: K2tog to end, break yarn and thread through rem sts."),
    row("knitting", r"\b(?:continue|cont|keep)\s+knitting\s+(?:(?:in\s+(?:the\s+)?rounds?|around|even|straight)\s+)+(?=(?:until|for)\b)", "knit ", "Continue knitting in the round until hat measures 15 cm."),
)  # fmt: skip
"""The rows that come before all others, in the order tried."""

BRITISH: tuple[Synonym, ...] = (
    row("placing|leaving|slipping", rf"\b(turn)\s*,?\s+(?:and\s+)?(?:placing|leaving|slipping)\s+(?:the\s+)?rem(?:aining)?\.?\s+{STS}\s+(?:on(?:to)?|to)\s+{HELD_BY}", r"\1 and hold all sts", "Next row (RS): K12, turn, placing rem sts on a holder."),
    said_row_behind("straight", rf"({LONG}s?\.?)\s+(?P<said>(?:measured\s+)?on\s+the\s+straight)(?=\s*[,.;]|\s*$)", "Work straight until armhole measures 20 cm on the straight, ending with a WS row."),
    row("proceed", r"\bproceed(?:ing)?\s+(?=in\b|even\b|straight\b|without\b|until\b)", "cont ", "Proceed in st st until work measures 30 cm."),
    row("y fwd|y rn|y on", r"\by\s(fwd|rn|on)\b", r"y\1", "K2, *y fwd, k2tog; rep from * to end."),
    row("rib", rf"(\brib(?:bing)?)\s+(?={LONG}\s*(?:[.,]|$))", r"\1 for ", "K1, P1 rib 3 in."),
    *(
        row(
            f"every {ordinal}",
            rf"((?:^|:)\s*)inc(?:rease)?\.?(?:\s+(?:1|one)(?:\s+{STS})?)?\s+in\s+every\s+{ordinal}\s+st(?:itch)?(?:\s+(?:to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?{ROUND})?|across(?:\s+(?:the\s+)?{ROUND})?))?(?=\s*[.]|\s*$)",
            rf"\1(k{before}, inc in next st) to end",
            f"Next row: Inc in every {ordinal} st to end.",
        )
        for before, ordinal in enumerate(_ORDINALS, 1)
    ),
    row(
        "on these",
        rf"^(\s*)(?:work|cont(?:inue)?)\s+on\s+these\s+({N}\s+{STS})(?:\s+only)?\s+for\s+(?:the\s+)?(?:first|second|left|right)\s+(?:side|front|shoulder)(?:\s+of\s+(?:the\s+)?neck)?(?=\s*[.]?\s*$)",
        r"\1\2",
        "Work on these 24 sts for first side.",
    ),
    row(
        "matches|same as",
        r"\buntil\s+(?:the\s+)?(?:armholes?|work|piece)\s+(?:matches|measures\s+(?:the\s+)?same\s+as)\s+(?:the\s+)?back(?:\s+to\s+(?:the\s+)?(?:start\s+of\s+)?shoulders?(?:\s+shaping)?)?(?=\s*[.,]|\s*$)",
        "until front measures same as back to shoulder",
        "Cont straight until armhole matches back.",
    ),
    row("with a knit|with a k|with a rs|with an rs", rf"^(\s*)(?:cont(?:inue)?|work)\s+in\s+({_STOCKING})\s*,\s*(?:beg(?:inning)?|start(?:ing)?|commencing)\s+with\s+an?\s+(?:k|knit|rs)\s+row\s*,\s*(?=until\b)", r"\1next row (rs): work in \2 ", "Cont in stocking st, starting with a knit row, until work measures 30 cm."),
    row("with|using", rf"^(\s*)({OFF}|bo)((?:\s+(?:all|rem(?:aining)?|the|{STS}|loosely|very|in|pattern|patt|rib|knitwise|purlwise))*)\s+(?:with|using)\s+(?:an?\s+|the\s+)?((?:larger|bigger|smaller)|\d(?:\.\d+)?\s?mm)\s+needles?(?=\s*[.]?\s*$)", r"\1change to \4 needles. \2\3", "Bind off loosely with larger needle."),
    row("last row|last rnd|last round", rf"(\bfor\s+(?:{N}\s+{ROUND}|{LONG}))\.\s+((?:inc|dec)(?:rease)?\.?\s+{N}(?:\s+{STS})?\s+evenly(?:\s+spaced)?\s+(?:on|in|across|over)\s+(?:the\s+)?last\s+{ROUND})", r"\1, \2", "Work in k1, p1 rib for 6 rows. Inc 8 sts evenly across the last row."),
    row("all around|all across", r"(?<=[a-z0-9)\]*])\s+all\s+(around|across)\b", r" \1", "K2tog all around."),
)
"""The rows, in the order tried."""
