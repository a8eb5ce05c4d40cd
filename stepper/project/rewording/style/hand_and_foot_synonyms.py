"""Other wordings of socks, mittens, gloves and hats as pages of today print them. No I/O.

Each row knows a class of words: how long a thumb is, told a second time by the hand in it; what is counted between
the legs of a shaping; where a heel is all worked; what is done with the yarn at a gap. They come early, so that the
rows behind them meet the plain sentence.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import LONG, STS, N, Synonym, row

_END: Final = r"(?=\s*[.;]|\s*$)"
_ON_HAND: Final = (
    r"(?:(?:the|your|its|just|almost|base|tip|top|end|middle|bottom|side|bend|crook|of|at|to|little|pinky|pinkie|index|ring|middle|big|first|fore|finger|forefinger|fingers|"
    r"fingertips?|thumb|thumbs|nail|thumbnail|knuckles?|toe|toes|wrist|elbow|ankle|ankles|palm|hand|foot|calf|knee|ears?|earlobes?|eyebrows|forehead|head|crown|when|as|tried|on|it|is|and|or|"
    r"where|begins|joins|divide|separate|meets?|between)\s*)+"
)
_REACHES: Final = r"(?:reach(?:es)?|covers?|comes?\s+(?:up\s+)?to|hits?|meets?|touch(?:es)?|clears?|is\s+(?:just\s+)?(?:at|above|below|past|level\s+with))"
_IT: Final = r"(?:it|(?:the\s+|your\s+)?(?:piece|work|mitten|mitt|hand|glove|thumb|finger|sock|foot|leg|cuff|hat|cap|toe|fabric))"
_THUMB_HELD: Final = r"(?:(?:the\s+)?(?:held\s+)?thumb\s+(?:gap|opening|hole|slit|split|divide|separation|hold|holder|sts(?:\s+on\s+hold)?|stitches)|(?:the\s+)?gap|(?:the\s+)?held\s+(?:thumb\s+)?(?:sts|stitches))"
_LEG: Final = r"(?:on\s+)?every\b(?:[^.;()\[\]]|\([\d,\s]+\))*?\b(?:times(?:\s+more)?|more|once|twice|rem(?:ain)?)"
_NONE: Final = rf"(?:you\s+(?:run\s+out\s+of|have\s+no\s+more)\s+(?:heel\s+|side\s+|flap\s+)?{STS}(?:\s+to\s+work)?|(?:no|there\s+are\s+no\s+more)\s+(?:heel\s+|side\s+|flap\s+)?{STS}\s+(?:are\s+left|remain|left|beyond\s+the\s+gaps?)(?:\s+to\s+work)?)"
_ALL: Final = rf"until\s+(?:all\s+(?:of\s+)?(?:the\s+)?(?:heel\s+|flap\s+)?{STS}\s+(?:have\s+been|are)\s+(?:worked|used(?:\s+up)?)|{_NONE})"
_ENDING: Final = r"\s*,?\s*(?:and\s+)?ending\s+(?:with|on|after)\s+(?:an?\s+)?(rs|ws|purl|knit|p|k)\s+row"
_WRAPPED: Final = rf"(?:ds|double\s+{STS}|wrapped\s+{STS}|wraps|turned\s+{STS}|turns)"

HANDS_AND_FEET: tuple[Synonym, ...] = (
    # --- as it stands ---
    row("established rib", r"\bin\s+established\s+(rib)(?:bing)?\b", r"in \1 as established", "Continue in established rib for 4 cm."),
    row(
        "begin|start",
        r"(^\s*|[.]\s+)(?:now\s+)?(?:begin|start|commence)\s+(?:to\s+work\s+|working\s+)?(?:in\s+)?(?:the\s+)?((?:[a-z'-]+\s+){1,3}?(?:pattern|patt|rib|ribbing|st|stitch|lace))\s+and\s+(?:work|cont(?:inue)?)(?:\s+(?:even|straight))?\s+(?=(?:until|for)\b)",
        r"\1work in \2 ",
        "Begin Fern Rib and work even until leg measures 6 cm.",
    ),
    # --- a length told again by the hand or foot in it ---
    said_row_behind("or ", rf"(\b(?:until|for)\s[^.;]*?{LONG}[^.;()]{{0,40}}?)\s*,?\s*\(?\s*(?P<said>\bor\s+(?:until\s+|when\s+|to\s+)?(?:{_IT}\s+)?(?:just\s+|almost\s+)?{_REACHES}\s+{_ON_HAND})(?<=\S)\)?(?=\s*[.;,]|\s*$)", "Knit until thumb measures 4 cm, or just covers your thumb nail."),
    row("gap|thumb|held", rf"\b(measures\s+{LONG}(?:\s*\(or\b[^()]*\))?)\s+(?:above|from|beyond|past|after)\s+{_THUMB_HELD}(?=\s*[.,;(]|\s+or\b|\s*$)", r"\1 from divide", "Knit until mitten measures 8 cm above the thumb gap."),
    row("way|manner", r"(^\s*|[.]\s+)cont(?:inue)?\s+in\s+this\s+(?:way|manner)\s+(?=until\s+(?:the\s+)?\w+\s+measures\b)", r"\1repeat last rounds ", "Continue in this way until leg measures 12 cm."),
    row("ending", r"\b((?:ending\s+(?:with|after)|or)\s+)(?:an?\s+)?r\s?(?=\d{1,2}(?:\s+or\b|\s*[.;,]|\s*$))", r"\1row ", "Work in moss st until piece measures 4 cm, ending with R2."),
    row("or ", r"\b(ending\s+(?:with|after)\s+(?:an?\s+)?)((?:rnd|round|row)\s?\d+)\s+(?P<said>or\s+(?:an?\s+)?(?:rnd|round|row)?\s?\d+)(?=\s*[.;]|\s*$)", r"\1\2", "Knit until piece measures 4 cm, ending with Rnd 1 or 3.", spelt_out=True),
    # --- a count between the legs of a shaping ---
    row(
        "then every|then on every",
        rf"(^\s*|[.]\s+)((?:rep(?:eat)?|work)\s+)((?:(?:the|this|these|last)\s+)*(?:[a-z][a-z'-]*\s+)?(?:dec(?:rease)?|inc(?:rease)?)\s+(?:rnd|round|row)s?\s+)({_LEG})\s*[,-]?\s*[(\[-]\s*({N}\s+{STS}(?:\s+rem(?:ain)?)?)\s*[)\]]?\s*[,;]?\s*(?:and\s+)?then\s+(?=(?:on\s+)?every\b)",
        r"\1\2\3\4. \5. Rep \3",
        "Rep dec rnd every 4th rnd twice more [20 sts], then every other rnd 3 times.",
        again=True,
    ),
    row("-", rf"(^|[.])\s*-+\s*(?={N}\s+{STS}(?:\s*[.:;]|\s*$))", r"\1 ", "- 32 sts: 16 sts on N1, 16 sts on N2."),
    row("sts", rf"(\b(?:times(?:\s+more)?|more|once|twice))\s*[-(]+\s*({N}\s+{STS}(?:\s+rem(?:ain)?)?)\s*\)?(?=\s*[.;]\s*\w)", r"\1. \2", "Work dec rnd every other rnd 3 times - 26 sts. Work dec rnd every rnd 2 times."),
    row("every r", r"(^\s*|[.]\s+)(?:then\s+)(inc|dec)(?:rease)?\s+(?=(?:on\s+|in\s+)?every\s+(?:row|rnd|round|rd)\s+until\b)", r"\1\2rease ", "Then decrease every rnd until 8 sts remain."),
    # --- the turn of a heel, and its short rows ---
    row("until all|run out|no more|until no", rf"\b{_ALL}{_ENDING}(?:\s*,?\s*(?P<said>(?:and\s+)?omitting\s+(?:the\s+)?(?:final|last)\s+[kp]\s?1(?:\s+and\s+[kp]\s?1)?\s+(?:on|in|at\s+the\s+end\s+of)\s+(?:the\s+)?last\s+(?:two\s+|2\s+)?rows?))?(?=\s*[.;,(-]|\s*$)", r"until all sts are worked. Ends with a \1 row", "Rep rows 3 and 4 until all the heel sts have been worked, ending with a WS row.", spelt_out=True),
    row("run out|no more|until no", rf"\buntil\s+{_NONE}{_END}", "until all sts are worked", "Rep rows 3 and 4 until you run out of stitches."),
    row("between|each side", rf"\buntil\s+(?P<said>(?:there\s+are|you\s+have)\s+{N}\s+{_WRAPPED}\s+(?:on|at)\s+each\s+(?:side|end))\s*,?\s*(?:and|with)\s+({N}\s+(?:{STS}\s+)?)(?:between\s+them|(?:unwrapped\s+|plain\s+)?(?:{STS}\s+)?(?:(?:rem(?:ain)?\s+)?in\s+(?:the\s+)?(?:cent(?:er|re)|middle)|between))(?=\s*[.,;]|\s*$)", r"until \2 rem unwrapped in the center", "Rep rows 1 and 2 until there are 9 DS on each side and 10 sts between them.", spelt_out=True),
    row("between", rf"\buntil\s+(?:there\s+are\s+|only\s+|you\s+have\s+)?({N}\s+{STS})\s+(?:(?:rem(?:ain)?|are\s+left)\s+)?between\s+(?:the\s+)?(?:two\s+)?(?:wrapped\s+{STS}|wraps)(?=\s*[.,;]|\s*$)", r"until \1 rem unwrapped in the center", "Rep rows 1 and 2 until 10 sts remain between wraps."),
    row("unwrapped in the center", rf"(\brem\s+unwrapped\s+in\s+the\s+center){_ENDING}", r"\1. Ends with a \2 row", "Rep rows 1 and 2 until 10 sts remain between wraps, ending with a WS row."),
    said_row_behind("gap)", r"\b((?:ssk|k2tog|skp|p2tog|ssp)(?:\s+tbl)?)\s*\(\s*(?P<said>(?:1|one)\s+(?:st|stitch)\s+(?:from|on|at)\s+(?:each|either)\s+side\s+of\s+(?:the\s+)?gap)\s*\)", "Sl 1, k to 1 st before gap, ssk (1 st from each side of gap), k1, turn."),
    said_row("(do not|(without|(leav", r"\s*\(\s*(?P<said>(?:do\s+not\s+work|without\s+working|leav(?:e|ing))\s+(?:the\s+)?(?:ds|double\s+st(?:itch)?|wrapped\s+st(?:itch)?)(?:\s+(?:itself|unworked))?)\s*\)", "Make DS, knit to 1 st before DS, k1 (do not work the DS), turn."),
    # --- rows and slipped stitches of a flap, told behind it ---
    row("rows", rf"(\btimes(?:\s+more)?|\bmore|\btwice|\bonce)\s*[-,;(]+\s*({N}\s+rows)(?P<said>(?:\s+(?:have\s+been\s+)?(?:worked|completed|done|in\s+all))?(?:\s*,\s*(?:and\s+)?{N}\s+(?:slipped\s+(?:{STS}|edge\s+{STS})|edge\s+{STS}|chains?)\s+(?:along|on|at|up)\s+(?:each|either)\s+(?:edge|side))?)\s*\)?{_END}", r"\1. \2", "Rep rows 1 and 2 13 more times - 28 rows worked, 14 slipped sts along each edge.", spelt_out=True),
    row("rem|left|have", rf"(^\s*|[.]\s+)(?:you(?:\s+will|'ll)?\s+(?:now\s+)?(?:have|should\s+have)\s+)?({N})\s+(?:heel|sole|flap)\s+({STS})\s+(?:rem(?:ain)?|(?:are\s+)?left)(?=\s*[.;]|\s*$)", r"\1\2 \3 rem", "Rep rows 3 and 4 until all sts are worked. You'll have 14 heel stitches left."),
    # --- thumbs, and the instep of a gusset ---
    row("sts", rf"\bwork\s+(?:(?:even\s+)?in\s+(?:patt(?:ern)?|est(?:ablished)?\s+patt(?:ern)?)(?:\s+as\s+(?:set|est(?:ablished)?))?\s+(?:across|over)\s+)(?:the\s+)?(?:held\s+)?((?:{N}\s+)?(?:instep|sole|palm|hand|thumb)\s+{STS})", r"work across \1", "Work in patt across 28 instep sts."),
    row("sts", rf"\bwork\s+(?:(?:across|over)\s+)?(?:the\s+)?(?:held\s+)?((?:{N}\s+)?(?:instep|sole|palm|hand|thumb)\s+{STS})\s+(?:even\s+)?in\s+(?:patt(?:ern)?|est(?:ablished)?\s+patt(?:ern)?|(?:[a-z'-]+\s+){{1,3}}?(?:rib|patt(?:ern)?|st(?:itch)?|lace)\s+as\s+(?:set|est(?:ablished)?))(?:\s+as\s+(?:set|est(?:ablished)?))?(?=\s*[.,;]|\s*$)", r"work across \1", "Work across instep sts in pattern."),
    said_row("with|using", r"\b(?P<said>(?:with|using)\s+(?:(?:the|an?)\s+)?(?:(?:same|new|empty|free|spare|second|third|fourth|other|extra|working)\s+)+(?:needle|dpn)(?:\s*\(\s*(?:(?:this\s+is\s+)?(?:now\s+)?)?needle\s+[1-5]\s*\))?)\s*(?:,\s*|(?=(?:pick|knit\s+across|work\s+across)\b))", "With the same needle pick up and knit 15 sts along the edge of the flap."),
    row("heel", rf"([,;.]\s*(?:and\s+|then\s+)?)(?:k|knit)\s*({N})\s+heel\s+{STS}\s+(?:from|of|off)\s+needle\s+1(?=\s*[.,;(-]|\s*$)", r". k\2 sts to new beginning", "Pick up and knit 6 sts along the edge, then knit 8 heel sts from N1."),
    said_row_behind("beg|start|round|rnd", r"(\bto\s+new\s+beginning\b[^.]*(?:[.][^.]*){0,2}[.])\s*(?P<said>(?:the\s+|this\s+is\s+(?:now\s+)?the\s+)?(?:new\s+)?(?:beg(?:inning)?|start|bor|rnd|round)\b(?:\s+of\s+(?:the\s+)?(?:rnd|round)s?)?\s+(?:is|are|begins?|starts?)(?:\s+now)?(?:\s+(?:at|in))?(?:\s+(?:here|the|cent(?:er|re)|middle|back|of|heel|sole))*)(?=\s*[.]|\s*$)", "Pick up and knit 6 sts along the edge, then knit 8 heel sts from N1. The beg of the rnd is now at the center of the heel."),
    row("from |off ", rf"\b(?:slip|place|put|transfer|return|move)\s+(?:the\s+)?({N}\s+)?(?:held\s+)?((?:thumb|instep|finger|hand)\s+)?({STS})\s+(?:from|off)\s+(?:the\s+|an?\s+)?(?:(?:waste|scrap)\s+yarn|(?:st(?:itch)?\s+)?holders?|hold|thread)\s+(?:back\s+)?(?:on\s+to|onto|to|on)\s+(?:the\s+)?((?:two|three|four|[2-4])\s+)?(?:needles?|dpns?|double[-\s]pointed\s+needles)\b", r"return \1\2\3 to \4needles", "Slip the 13 sts from the waste yarn back on to three needles."),
    row("needles|dpns", rf"\b(?:slip|place|put|transfer|return|move)\s+(?:the\s+)?({N}\s+)?(?:held\s+)?((?:thumb|finger)\s+{STS})\s+(?:back\s+)?(?:on\s+to|onto|to|on)\s+((?:two|three|four|[2-4])\s+)(?:needles?|dpns?|double[-\s]pointed\s+needles)\b", r"return \1\2 to \3needles", "Put the 13 thumb sts onto 3 needles."),
    row("return", rf"\b(return\s+(?:{N}\s+)?(?:[a-z]+\s+)?{STS}\s+to\s+)((?:two|three|four|[2-4])\s+)needles\b", r"\1needles. Divide over \2needles", "Transfer thumb sts from holder to 3 dpns."),
    row("thumb|finger", rf"(\bpick\s+up(?:\s+and\s+(?:knit|k))?\s+{N}\s+{STS}[^.;]*?,\s*(?:then\s+|and\s+)?)(?:knit|k)\s+(?:across\s+)?(?:the\s+)?(?:held\s+)?(?=(?:thumb|finger)\s+{STS})", r"\1knit across ", "Rejoin yarn, pick up and knit 1 st in the gap, knit the thumb sts."),
    said_row("start|begin", r"(?:(?<=^)|(?<=[.]))\s*(?P<said>(?:starting|beginning)\s+(?:at|on|from|in)\s+(?:the\s+)?(?:(?:right|left|near|far)(?:[-\s]hand)?\s+(?:side|edge|end|corner)\s+of\s+(?:the\s+)?|middle\s+of\s+(?:the\s+)?)?(?:gap|thumb\s+(?:gap|opening|hole)|opening))\s*,\s*(?=(?:re-?join|join|attach|pick)\b)", "Starting at the right side of the gap, rejoin yarn, pick up and knit 1 st in the gap, knit the thumb sts."),
    # --- what is done with the yarn, and with markers, beside the round ---
    said_row("pulling|drawing|tugging|snug", r"\s*,\s*(?:and\s+)?(?P<said>(?:pulling|drawing|tugging)\s+(?:the\s+)?(?:working\s+)?(?:yarn|first\s+st(?:itch)?|sts|it)\s+(?:snug(?:ly)?|tight(?:ly)?|firm(?:ly)?|taut)(?:\s+(?:across|over|at)\s+(?:the\s+)?(?:gap|join|opening|thumb))?(?:\s+(?:to|so\s+as\s+to)\s+(?:avoid|prevent|close|minimi[sz]e)\s+(?:an?\s+|any\s+|the\s+)?(?:holes?|gaps?|ladders?))?)(?=\s*[.;(\[]|\s*$)", "K10, hold 5 sts for thumb, knit to end, pulling the yarn snug across the gap."),
    said_row_behind("marker", r"(\bto\s+end)\s*,\s*(?P<said>using\s+(?:an?\s+|the\s+)?(?:different(?:ly)?|contrasting|unique|special|second)(?:[-\s]colou?red|\s+colou?r(?:ed)?)?\s+marker\s+(?:for|to\s+mark|at)\s+(?:the\s+)?(?:end|beg(?:inning)?|start|bor)(?:\s+of\s+(?:the\s+)?(?:rnd|round|rd))?)(?=\s*[.;]|\s*$)", "Rnd 1: *K2, k2tog, pm; rep from * to end, using a different marker for the end of the rnd."),
    row("removing", rf"(\buntil\s+{N}\s+{STS}\s+(?:rem(?:ain)?|are\s+left))\s*,\s*removing\s+(?:the\s+|all\s+)*markers\s+(?:on|in)\s+(?:the\s+)?last\s+(?:rnd|round|rd|row)(?=\s*[.;]|\s*$)", r"\1. Remove markers", "Rep last 2 rnds until 8 sts remain, removing the markers on the last rnd."),
    # --- drawn together ---
    said_row_behind("using|with", r"((?:^|[.;])\s*)(?P<said>(?:using|with)\s+(?:an?\s+|the\s+|your\s+)?(?:tapestry|darning|yarn|blunt|sewing|wool)\s+needle)\s*,?\s*(?=(?:draw|thread|pull|pass|run)\b)", "Using a tapestry needle, draw yarn through live sts and pull tight."),
    said_row_behind("bind", r"(\bbind\s+off\s+all\s+(?:sts|stitches)[^.;(]*?)\s*\(\s*(?P<said>(?:an?\s+)?(?:sewn|stretchy|tubular|elastic|super\s+stretchy)\s+(?:bind[-\s]?off|method)\s+(?:is|works|looks|would\s+be)\s+(?:good|best|nice|nicely|well|great|perfect|ideal|recommended)(?:\s+here)?)\s*\)", "Bind off all sts loosely in rib (a sewn bind off is good here)."),
)  # fmt: skip
"""The rows, in the order tried."""
