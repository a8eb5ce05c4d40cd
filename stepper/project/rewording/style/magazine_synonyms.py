"""Other wordings of magazines and of older leaflets: ribbing of, each side, at armhole side, counts behind a repeat.

No I/O.
"""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import KEPT, LONG, OFF, ROUND, STS, N, Synonym, row

_K, _P = r"k(?:nit)?\.?\s*\d+", r"p(?:url)?\.?\s*\d+"
_END = r"(?=\s*[.;]|\s*$)"
_FIRST = r"(^\s*|(?<=[.!;])\s*|^[^.:]*:\s*)"
"""Where an instruction begins: the line, a sentence of it, or what stands behind its name."""
_LEFT = r"(?:\s+(?:rem(?:ain(?:ing)?)?|left|in\s+all|on\s+(?:the\s+)?needles?)\.?)?"
_TOTAL = rf"{N}\s+{STS}\.?{_LEFT}"
_LEGS = rf"(?:{N}\s+times(?:\s+more)?|{N}\s+more\s+times|once(?:\s+more)?|twice(?:\s+more)?)"
_OFTEN = rf"(?:on\s+)?(?:every|each)\s+(?:(?:other|alt(?:ernate)?|\d+(?:st|nd|rd|th)|second|third|fourth|[rw]s)\s+)?{ROUND}"
_SIDE = r"(?:each|both)\s+(?:sides?|ends?)"
_EDGE = r"(?:neck|armhole|front|side)\s+edge"
_TOG = r"k(?:nit)?\.?\s*(?:2|two)\s*(?:(?:sts|stitches)\s+)?tog(?:ether)?\b\.?"
_PART = r"(?:(?:left|right)\s+)?(?:back|front|sleeve|body)"
_ENDING = r"\s*,?\s*(?:and\s+)?(?:end|ending|finish|finishing)\s+(?:with|on|after)\s+"
_COUNTED = r"(?:more|times|once|twice|rows?|rnds?|rounds?)"
_COLOUR = r"(?:white|black|gr[ae]y|red|pink|blue|navy|green|yellow|brown|cream|purple|orange|beige|lilac|lemon|turquoise|rose|gold)"
_TAKEN = r"(?:(?:change|switch)(?:\s+back)?\s+to|with|using|join(?:\s+in)?)"
_ACT = r"(?=(?:cast|co|knit|k|purl|p|work|pick|pu|bind|bo|cont(?:inue)?|rib|ss)\b|[kp]\s?\d)"

MAGAZINE_WORDS: tuple[Synonym, ...] = (
    # --- yarns by their colour ---
    row("main|background", rf"\b({_TAKEN})\s+(?:the\s+)?(?:main|background)\s+(?:colou?r|shade)\b(?:\s+(?:yarn|wool))?(?!\s*[(\[])", r"\1 MC", "Change to main colour and knit 4 rows."),
    row("contrast", rf"\b({_TAKEN})\s+(?:the\s+)?(?:2nd|second)\s+contrast(?:ing)?(?:\s+(?:colou?r|shade))?\b(?!\s*[(\[])", r"\1 CC2", "Change to second contrast. Knit 2 rows."),
    row("contrast", rf"\b({_TAKEN})\s+(?:the\s+|an?\s+)?(?:(?:1st|first)\s+)?contrast(?:ing)?\s+(?:colou?r|shade)\b(?!\s*[(\[])", r"\1 CC", "Join contrasting colour. Knit 2 rows."),
    row("yarn|wool", rf"\b((?:{_TAKEN}|in)\s+(?:the\s+)?{_COLOUR})\s+(?:yarn|wool)\b", r"\1", "With white yarn, knit 4 rows."),
    row("and", rf"(^\s*|[.;:]\s*)((?:(?:change|switch)\s+to|join)\s+{_COLOUR})\s*,?\s+and\s+{_ACT}", r"\1\2. ", "Join green and knit 2 rows."),
    row("join|attach|change", rf"\b((?:break|cut)(?:\s+off)?\s+{_COLOUR})\s*,?\s*(?:and\s+)?(?:then\s+)?(?:join(?:\s+in)?|attach|change\s+to)\s+(?={_COLOUR}\b)", r"\1. Join ", "Break pink and join blue."),
    row("in |with", rf"(^\s*|[.;]\s*)((?:knit|work|k|purl)\s+{N}\s+(?:more\s+)?{ROUND})\s+(?:in|with)\s+({_COLOUR}){_END}", r"\1with \3, \2", "Knit 4 rows in white."),
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
    row("underarm|armhole", rf"{_FIRST}work\s+to\s+(?:the\s+)?(underarms?|armholes?)\s+(?:the\s+)?same\s+as\s+(?:the\s+)?({_PART}){_END}", r"\1Work same as \3 to \2", "Work to underarm the same as back."),
    row("total", rf"(\btimes)\s*,\s*total\s+(?:of\s+)?({N}\s+{ROUND})(?=\s*\.?\s*$)", r"\1. \2 in all", "Work rows 1 and 2 three times, total 6 rows."),
    row("twice|times", rf"(:\s*as\s+(?:rows|rnds|rounds)\s+\d+(?:\s*(?:-|to|and)\s*\d+)?)\s*,\s*(?={_LEGS})", r"\1 ", "Rows 9 to 14: As rows 3 to 5, twice."),
    row("through", rf"{_FIRST}((?:(?:break|cut)\s+(?:off\s+)?(?:the\s+)?(?:yarn|wool|thread)\s*,?\s*(?:and\s+)?)?)(?:thread|draw|pull|run|pass)\s+(?:the\s+)?(?:yarn|wool|thread|end|tail|it)\s+through\s+(?:the\s+|all\s+|these\s+|rem(?:aining)?\s+|last\s+)*(\d+)\s+(?:sts|stitches|loops)(?P<said>(?:\s+on\s+(?:the\s+)?needles?)?(?:\s*,?\s*(?:and\s+)?(?:pull|draw|fasten|end|secure|tighten)\b(?:\s+(?:up|off|it|them|tight|tightly|firmly|securely|in))*)*){_END}", r"\1\3 sts. \2draw yarn through sts", "Thread the end through the 29 sts on the needle and fasten off securely.", spelt_out=True),
    row("over th|on th|on last|on rem|over rem", rf"{_FIRST}(?:work\s+(?:over|on)\s+(?:the|these|those|rem(?:aining)?|last)\s+(?:last\s+)?({N}\s+{STS})(?:\s+only)?\s+|on\s+(?:the\s+)?(?:rem(?:aining)?|last)\s+({N}\s+{STS})\s*,?\s+work\s+)(?=(?:for\s+(?:{LONG}|{N}\s+{ROUND})|until)\b)", r"\1\2\3. Work ", "Work over these 18 sts for 4 cm."),
    row("rd", r"(?<![\d\w])rd(s?)\b", r"rnd\1", "Work 1 rd even."),
    said_row_behind("(until", rf"(\b{N}\s+(?:more\s+)?{ROUND})\s*\(\s*(?P<said>until\s+(?:the\s+)?[a-z]+\s+measures\s+{LONG})\s*\)", "Work 3 more rnds (until mitt measures 8 inches)."),
    row("purl|p", r"(?:(?<=^)|(?<=[.!:]\s))(?:purl|p)\s*(\d+)\s*,?\s*(?:and\s+)?(?:knit|k)\s*(\d+)(?:\s+(?:sts|stitches))?\s+(?=for\s+\d)", r"work in p\1, k\2 rib ", "Purl 2, knit 2 sts for 4 inches."),
    row("purl", r"\b((?:knit|k)\s+\d,?\s+(?:purl|p)\s+\d)\s+(?:sts|stitches)\s+(?=for\b)", r"\1 ", "Knit 2, purl 2 sts for 4 inches."),
    row("last st", r"(,\s*)sl(?:ip)?\s+(?:the\s+)?last\s+(?:st|stitch)\b", r"\1sl 1", "Row 1: K to last st, sl last st."),
    row("k r", r"(,\s*)(k|p|knit|purl)\s+(?:rnd|round|row)(?=\s*\*?\s*[.]?\s*$)", r"\1\2 to end", "Rnd 3: K1, sl marker, k rnd."),
    row("beg", rf"(\b{STS}\.?)\s+beg(?:inning)?\.?\s+(?:of\s+)?(?=next\s+(?:{N}\s+)?(?:rs|ws)\s)", r"\1 at beg of ", "Cast off 3 sts beg next 2 WS rows."),
    row("yif|yib", r"\b(sl(?:ip)?\s*\d*(?:\s*(?:the\s+)?(?:last|first|next)\s+(?:st|stitch))?)\s+yi([fb])\b", r"\1 wyi\2", "Row 1: k1, sl1 yif, k to end."),
    row("next r", r"^(\s*next\s+(?:row|rnd|round))\s*,\s*(?=[kp]\s?\d|\*|\(|\[|(?:k|p|knit|purl|sl|ssk|yo)\b)", r"\1: ", "Next rnd, k1, remove marker, k to end."),
    row(". ", r"(\([^()*.]*(?:tog|\d|\bst))\.\s+(?=[kp]\s?\d|(?:sl|ssk|yo|inc|k|p)\b)", r"\1, ", "Next row: (K2tog. K1) to end.", again=True),
    row("thus|so on", r"\b((?:continue|cont|go\s+on)\s+(?:in|de)creasing)\s+thus\b", r"\1 in this way", "Continue decreasing thus on every 6th row until 60 sts remain."),
    row("an inch", r"\b((?:for|is|measures)\s+(?:about\s+)?)an?\s+inch\b", r"\11 inch", "Work in 1x1 rib for about an inch."),
    row("wise", r"\b(?:inc(?:rease)?)\s+(?:k|knit)[\s-]?wise\s+in(?:to)?\s+(?:every|each)\s+(?:st|stitch)\b(?:\s+(?:to\s+(?:the\s+)?end|across|around))?", "*kfb; rep from * to end", "1st row: Inc k-wise into every st."),
    row("inc", r"(,\s*)inc(?:rease)?(?:\s+1)?\s+in\s+(?:the\s+)?last\s+(?:st|stitch)\b(?=\s*(?:-|–|\(|\.\s))", r"\1inc 1", "Next row: Inc in first st, k38, inc in last st - 42 sts."),
    row("*", r"(\*[^*]*\*)\s*,\s*$", r"\1.", "Row 1: P 2, * yo, k 2 tog, k 1, P 2 *,"),
    row("end", r"\*\s*((?:(?!rep)[^*])*?)\s*,?\s*\*\s*,?\s*(?:and\s+)?end(?:ing)?(?:\s+with)?\s+([kp])\s*(\d+)(?=\s*\.?\s*$)", r"*\1; rep from * to last \3 sts, \2\3", "Row 1: *p 2, k 1, * end p 2."),
    row("end|finish", rf"(\b{N}\s+(?:more\s+)?rows?(?:\s+(?:in\s+[a-z0-9, ]+?|even|straight|without\s+shaping))?){_ENDING}(?:the\s+)?(?:rs|right\s+side)\s+facing(?:\s+(?:you|for\s+(?:the\s+)?next\s+row))?{_END}", r"\1. ends with a WS row", "Work 9 rows in rib, ending with RS facing for next row."),
    row("end|finish", rf"(\b{N}\s+(?:more\s+)?rows?(?:\s+(?:in\s+[a-z0-9, ]+?|even|straight|without\s+shaping))?){_ENDING}(?:the\s+)?(?:ws|wrong\s+side)\s+facing(?:\s+(?:you|for\s+(?:the\s+)?next\s+row))?{_END}", r"\1. ends with a RS row", "Work 9 rows in rib, ending with WS facing for next row."),
    row("follow|foll", r"(\bneedles?|\bdpns?)\s*,?\s*(?:and\s+)?(?P<said>(?:(?:then|now)\s+)?(?:work|cont(?:inue)?|proceed|beg(?:in)?)\s+in\s+(?:[a-z]+\s+){0,3}patt?(?:ern)?\.?\s+as\s+foll(?:ow)?s?\.?)\s*[:.]?\s*$", r"\1.", "Change to larger needles and work in pattern as follows:", spelt_out=True),
    row("follow|foll", rf"(\b(?:{STS}|inch(?:es)?|in|cm|{ROUND}))\s*\.?\s*,?\s*(?:and\s+)?(?P<said>(?:then|now)\s+(?:shape\s+(?:the\s+)?[a-z]+(?:\s+[a-z]+)?|work\s+(?:an?\s+|the\s+)?buttonholes?)\s+as\s+foll(?:ow)?s?\.?)\s*[:.]?\s*$", r"\1.", "Work 4 rows in st st, then shape waist as follows:", spelt_out=True),
    row("holder", r"\bst\.?\s?-\s?holder\b|\bst\.\s*holder\b", "st holder", "Place first 8 sts on st-holder."),
    row("increase in|inc in", r"\binc(?:rease)?\.?\s+in\s+(?:the\s+)?next\s+(?:[kp]\s+)(?:st|stitch)\b|\bincrease\s+in\s+(?:the\s+)?next\s+(?:st|stitch)\b(?=\s*[;*])", "inc in next st", "Next row: *p5, increase in the next st; rep from * to end."),
    row("edge", rf"\b((?:{OFF}|bo)\s+{N}\s+{STS}\.?)\s+(?:from|on)\s+(?:the\s+)?((?:shoulder|neck|armhole|side|front)\s+edge)\b", r"\1 at \2", "Bind off 6 sts from shoulder edge every other row 3 times."),
)  # fmt: skip
"""The rows that come before all others, in the order tried."""

MAGAZINES: tuple[Synonym, ...] = (
    row("plain", rf"\bknit\s+plain\s+(?=for\s+(?:{LONG}|{N}\s+{ROUND})|until\b)", "knit ", "Cast on 50 sts and knit plain for 8 cm."),
    row("and", rf"(^\s*|[.;:]\s*)(with\s+(?:(?-i:MC|CC\d?|[A-H])|{_COLOUR}))\s+and\s+{_ACT}", r"\1\2, ", "Join in contrast colour and work 6 rows in st st."),
    row("thereafter", r"\b((?:every|each)\s+[^.,;:]{1,40}?)\s+thereafter\b", r"\1", "Dec 1 st at each end of next row and every 2 cm thereafter until 30 sts remain."),
    said_row_behind("beg|start", rf"{_FIRST}(?P<said>(?:begin(?:ning)?|beg|start(?:ing)?)\.?\s+at\s+(?:the\s+)?(?:[a-z]+\s+){{0,2}}?(?:(?:base|top|bottom|back|front|cent(?:re|er))\s+of\s+(?:the\s+)?[a-z]+|edge|end|bottom|top|base|neck|hem|cuff|toe|waist|head))\s*(?:,|\s+and\b|\.(?=\s+cast\b))\s*(?=(?:(?:with|using)\s+[^.;:]*?)?(?:cast\s+on|co)\b)", "Beg at base of body, with A, cast on 6 sts."),
    row("rows more|rounds more|rnds more", rf"\b({N})\s+({ROUND})\s+more{_END}", r"\1 more \2", "Work in st st for 3 rows more."),
    row("remainder", r"\b(k|knit|p|purl|rib|work)\s+(?:the\s+)?remainder(?:\s+of\s+(?:the\s+)?(?:row|rnd|round))?(?=\s*[,.;)]|\s*$)", r"\1 to end", "Row 1: K15, k remainder."),
    row("using", rf"(^\s*|[.;:]\s*|\b(?:and|then)\s+)using\s+(?:the\s+)?(?:(?:yarn|colou?r)\s+)?((?-i:MC|CC\d?|[A-H])|{_COLOUR})\s*,?\s+{_ACT}", r"\1with \2, ", "Using MC cast on 20 sts."),
    # --- ribs and fabrics ---
    row("of k", rf"\brib(?:bing)?\s+of\s+({_K})\s*\.?\s*,?\s*({_P})\b\.?(?:\s*,\s*(?=for\b|until\b))?", r"\1, \2 rib ", "Work 5 rows in ribbing of k 1, p 1."),
    row("ss", rf"{_FIRST}((?:beg(?:inning)?\.?\s+with\s+an?\s+(?:k|knit|p|purl)\s+row\s*,\s*)?)ss\s+({N}\s+{ROUND}){_END}", r"\1\2work \3 in st st", "Ss 4 rows."),
    row("ss", r"\bin\s+ss(?=\s*[.,;]|\s*$|\s+(?:for|until)\b)", "in st st", "Work 4 rows in ss."),
    said_row_behind("given for|as for", rf"(\bin\s+(?:\d\s?x\s?\d|k\s?\d,?\s*p\s?\d)\s+rib(?:bing)?)\s*,?\s+(?P<said>as\s+(?:given\s+)?for\s+(?:the\s+)?{_PART}){_END}", "Work 9 rows in 1x1 rib as given for back."),
    row("constitut|complet|compris", rf"(\b(?:these|last)\s+(?:{N}\s+)?(?:rows|rnds|rounds))\s+(?:constitutes?|completes?|comprises?)\s+(?:the\s+|one\s+)?(?=(?:[a-z]+\s+)?(?:patt(?:ern)?|rib))", r"\1 form ", "These 2 rows constitute the pattern."),
    row("throughout", rf"(\b(?:these|last)\s+(?:{N}\s+)?(?:rows|rnds|rounds)\s+(?:form|set|make)\s+(?:the\s+)?(?:[a-z]+\s+)?(?:patt(?:ern)?|rib(?:bing)?))\s+throughout{_END}", r"\1", "These 4 rows set the pattern throughout."),
    row("end|finish", rf"(\b{N}\s+(?:more\s+)?rows?\s+in\s+[a-z0-9, ]+?){_ENDING}(?:an?\s+)?(rs|ws|right[-\s]side|wrong[-\s]side)\s+row{_END}", r"\1. ends with a \2 row", "Work 9 rows in k2, p2 rib, ending with a WS row."),
    # --- one word for another ---
    row("wrap", r"\bwrap\s?(?:1|one|next\s+(?:st|stitch))\s*(?:,\s*(?:and\s+)?|\s+and\s+)turn\b", "w&t", "1st row: K20, wrap1, turn."),
    row("further", rf"\b(?:a\s+)?further\s+({N})\s+times\b", r"\1 more times", "Repeat a further 3 times."),
    row("further", rf"\b({N})\s+times\s+further\b", r"\1 more times", "Rep last 2 rows 3 times further."),
    row("attach", r"{_FIRST}(?:[Rr]e-?)?[Aa]ttach\s+(?=[A-Z]{1,2}\d?(?:\s*[.,]|\s*$))".replace("{_FIRST}", _FIRST), r"\1join ", "Attach CC.", exact=True),
    row("attach|join", r"\b([Bb]reak|[Cc]ut)(\s+off)?\s+([A-Z]{1,3}\d?)\s*,?\s+and\s+(?:attach|join\s+in|join)\s+(?=[A-Z]{1,3}\d?(?:\s*[.,]|\s*$))", r"\1\2 \3. Join ", "Break MC and attach CC.", exact=True),
    row("hereafter|thereafter|from here|from this point|from now", rf"{_FIRST}(?:hereafter|thereafter|from\s+(?:here|this\s+point|now)(?:\s+(?:on|onwards?|out))?)\s*,?\s+(?=(?:work|cont|knit|k\b|rep|inc|dec|bind|cast))", r"\1", "Hereafter work straight until piece measures 12 inches."),
    row("then|next,|now", rf"{_FIRST}(?:then|next|now)\s*,?\s+(?=(?:rep(?:eat)?|work|inc(?:rease)?|dec(?:rease)?|change|switch|cont(?:inue)?|bind|cast|knit|purl|break|join|place|pick)\b)", r"\1", "Then repeat row 1 once."),
    # --- both sides, and one ---
    row("side|end", rf"\b((?:{OFF}|bo)\s+{N}\s+{STS}\.?)\s+(?:at\s+|on\s+)?{_SIDE}\s+(?P<said>for\s+(?:the\s+)?(?:armholes?|underarms?))(?=\s*[.,]|\s*$)", r"\1 each side", "Bind off 4 sts each side for armholes.", spelt_out=True),
    row("each side|both sides|each end", rf"\b((?:{OFF}|bo)\s+{N}\s+{STS}\.?)\s+at\s+(?:the\s+)?(?:beg|begin|beginning|start)\.?\s+of\s+(?:each|every)\s+row\s+({_LEGS})\s+(?:at\s+|on\s+)?{_SIDE}{_END}", r"\1 each side \2", "Bind off 5 sts at beginning of each row 3 times each side."),
    row("side", rf"\b(armhole|neck|front)\s+(?:side|end)\b(?=\s*[,.]|\s+(?:{_OFTEN}|{_LEGS}|once|of)\b|\s*$)", r"\1 edge", "Dec 1 st at armhole side every other row 3 times."),
    row("starting|beginning", rf"{_FIRST}(?:starting|beginning)\s+at\s+(?:the\s+)?((?:shoulder|neck|armhole|side|front)\s+edge)\s*,?\s+((?:{OFF}|bo)\s+{N}\s+{STS}\.?)\s+(?=(?:{_OFTEN}|{_LEGS})\b)", r"\1\3 at \2 ", "Starting at shoulder edge, bind off 8 sts every other row 3 times."),
    row("tog", rf"{_FIRST}{_TOG}\s+(?:at\s+)?{_SIDE}\s+(?:of\s+)?({_OFTEN}\s+{_LEGS}){_END}", r"\1Dec 1 st at each end of \2, working decreases 0 sts in from edge", "K 2 tog. each side every other row 3 times."),
    row("tog", rf"{_FIRST}{_TOG}\s+at\s+(?:the\s+)?({_EDGE})\s+({_OFTEN}\s+{_LEGS}){_END}", r"\1Dec 1 st at \2 \3, working decreases 0 sts in from edge", "K2tog at neck edge every row 4 times."),
    # --- counts behind what is repeated ---
    row("times|more|once|twice", rf"(\brep(?:eat)?\s+(?:the\s+)?(?:last|these|those)\s+(?:{N}\s+)?{ROUND})\s*,\s*(?={_LEGS}\b)", r"\1 ", "Repeat last 4 rows, 3 times more."),
    row("(|-|–|—", rf"(\b(?:rep(?:eat)?|inc(?:rease)?|dec(?:rease)?|{OFF}|bo|cast\s+on|co)\b[^()*:]*\b{_COUNTED})\s*\.?\s*\(\s*({_TOTAL})\s*\)(?=\s*\.?\s*$)", r"\1. \2", "Repeat last 4 rows 5 times (60 sts)."),
    row("-|–|—", rf"(^[^()*]*\brep(?:eat)?\s+(?:rows?|rnds?|rounds?)\s+\d+)\s*[-–—]+\s*({_TOTAL})(?=\s*\.?\s*$)", r"\1. \2", "Row 4: Rep row 2 - 24 sts."),
    row("at the end of|at end of", rf"([-–—(]\s*{N}\s+{STS})\s+at\s+(?:the\s+)?end\s+of\s+(?:this|the)\s+(?:row|rnd|round)(?=\s*\)?\s*\.?\s*$)", r"\1", "Row 2: Kfb in each st across - 12 sts at the end of this row."),
    # --- heads ---
    row("row|rnd|round", rf"^(\s*(?:{ROUND})\s+\d+(?:\s*(?:-|–|to|and|&)\s*\d+)?)\s*[-–—]+\s*(?=(?:rep(?:eat)?|as|knit|purl|k|p)\b)", r"\1: ", "Row 5—Repeat row 3."),
    row("foll", r"^(\s*(?:row|rnd|round)s?\s+\d+|\s*\d+(?:st|nd|rd|th)\s+(?:row|rnd|round))\s+(?:and|&)\s+(?:all\s+|every\s+)?foll(?:owing)?\.?\s+(?:alt(?:ernate)?\.?|other)\s+rows?\s*(\([rw]s\))?\s*:?\s+", r"\1 and every alt row \2: ", "Row 2 and following alt rows: Purl."),
    row("even|odd", r"^(\s*(?:row|rnd|round)s?\s+\d+)\s+(?:and|&)\s+all[-\s]+(?:other\s+)?(even|odd)(?:-?\s?numbered)?[-\s]+(rows|rnds|rounds)\s*[.:]\s+", r"\1 and all \2 \3: ", "Row 2 and all-even rows. Purl."),
    row("rs r|ws r", rf"\b((?:{OFF}|bo|cast\s+on|co|inc(?:rease)?|dec(?:rease)?)\.?\s+{N}\s+{STS}\.?\s+(?:at\s+)?[^.;:]*?)\s*(?:of\s+|on\s+|over\s+)?(?:the\s+)?next\s+({N})\s+(rs|ws)\s+rows\b", r"\1 of every \3 row \2 times", "Inc 1 st at each end of next 2 RS rows."),
    row("k as k", rf"\b({OFF}(?:\s+(?:all|the|sts|stitches|loosely))*)\s*,?\s+k\s+as\s+k\s*,?\s+(?:and\s+)?p\s+as\s+p{_END}", r"\1 in pattern", "Bind off K as K and P as P."),
    said_row_behind("k as k", rf"\b({OFF}\s+(?:all\s+)?in\s+(?:rib(?:bing)?|patt(?:ern)?))\s*,?\s+(?P<said>k\s+as\s+k\s*,?\s+(?:and\s+)?p\s+as\s+p){_END}", "Bind off in ribbing, k as k and p as p."),
    row("work th|work on th|knit th", rf"{_FIRST}(?:work|continue|cont|knit)\s+(?:on\s+|over\s+)?(?:the|these|those|rem(?:aining)?)\s+({N}\s+{STS})\s+(?:even\s+|straight\s+)?(in\s+[^.;:,]*?)\s*(?=(?:for|until)\b)", r"\1\2. Work \3 ", "Work these 16 sts in st st for 8 rows."),
    row("work th|work on th|knit th", rf"{_FIRST}work\s+(?:on\s+|over\s+)?(?:the|these|those|rem(?:aining)?)\s+({N}\s+{STS})\s+for\s+({N}\s+{ROUND})\s+(?=in\b)", r"\1\2. Work \3 ", "Work the 16 sts for 8 rows in st st."),
    row("graft", r"\b((?:break|cut)\s+(?:the\s+)?yarn)\s*,?\s+(?:and\s+)?(?=graft\b)", r"\1. ", "Break yarn, graft remaining 5 sts together."),
    row("in this way on next|in this way on the next|in this way next", rf"{_FIRST}(?:continue|cont|go\s+on)\s+(inc|dec)reasing\s+in\s+this\s+way\s+(?=(?:on\s+)?(?:the\s+)?next\b)", r"\1rep alike \2 row ", "Continue decreasing in this way on next and every foll 6th row until 60 sts remain."),
    # --- what asks for no stitch ---
    said_row_behind("to ", r"(^[^:*]*\b(?:row|rnd|round)(?:\s+\d+)?\s*(?:\([rw]s\)\s*)?:\s*)(?P<said>to\s+(?:make|form|work)\s+(?:the\s+|an?\s+)?(?:eyelets?|holes?|picots?|buttonholes?|hem|fold\s?line|casing|beading)(?:\s+for\s+(?:the\s+)?[a-z]+)?)\s*[,:]\s*(?=[*(\[]|[kp]\s?\d|(?:k|p|knit|purl|sl|yo)\b)", "Next row: To make eyelets for drawstring, *k1, yo, k2tog; rep from * to last st, k1."),
    said_row("(", r"\s*\(\s*(?P<said>to\s+(?:denote|mark|indicate|show)\s+(?:the\s+)?[a-z][a-z ]*?)\s*\)", "Place markers at both ends of last row (to denote side openings)."),
    said_row_behind("back of neck|for neck", rf"\b({OFF}\s+(?:all\s+)?(?:rem(?:aining)?\.?\s+|the\s+)*(?:{N}\s+)?{STS}\.?)\s+(?P<said>for\s+(?:the\s+)?(?:back\s+of\s+(?:the\s+)?)?neck){_END}", "Bind off remaining sts. for back of neck."),
    row("do not|don't", rf"{_FIRST}(?:do\s+not|don't)\s+(?:yet\s+)?(?:{OFF}|fasten\s+off|break\s+off)(?:\s+(?:the\s+)?(?:yarn|sts|stitches|yet))*(?=\s*[.!]|\s*$)[.!]?", KEPT, "Do not bind off."),
)  # fmt: skip
"""The rows that come late, in the order tried."""
