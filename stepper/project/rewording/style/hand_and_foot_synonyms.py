"""Other wordings of socks, mittens, gloves and hats as pages of today print them. No I/O.

Each row knows a class of words: how long a thumb is, told a second time by the hand in it; what is counted between
the legs of a shaping; where a heel is all worked; what is done with the yarn at a gap. They come early, so that the
rows behind them meet the plain sentence.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import CLOSED, LONG, STS, N, Synonym, row

_PATTERN: Final = r"(?:in\s+)?(?:patt(?:ern)?(?:\s+as\s+(?:set|established))?|(?:established|charted|cable|lace|rib|stitch)\s+patt(?:ern)?)"
_PLAIN: Final = r"(?:in\s+)?(?:st\.?\s?st|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?)"
_TOP: Final = r"(?:the\s+)?(?:instep|top\s+of\s+(?:the\s+)?foot)(?:\s+(?:sts|stitches))?"
_SOLE: Final = r"(?:the\s+)?(?:sole|bottom\s+of\s+(?:the\s+)?foot)(?:\s+(?:sts|stitches))?"
_FOOT_HALVES: Final = (
    rf"(?:{_TOP}\s+{_PATTERN}\s*(?:,\s*(?:and\s+)?|and\s+|\s+and\s+){_SOLE}\s+{_PLAIN}|{_SOLE}\s+{_PLAIN}\s*(?:,\s*(?:and\s+)?|\s+and\s+){_TOP}\s+{_PATTERN}"
    rf"|{_PATTERN}\s+(?:on|over|across)\s+{_TOP}\s*(?:,\s*(?:and\s+)?|\s+and\s+){_PLAIN}\s+(?:on|over|across)\s+{_SOLE}|{_PLAIN}\s+(?:on|over|across)\s+{_SOLE}\s*(?:,\s*(?:and\s+)?|\s+and\s+){_PATTERN}\s+(?:on|over|across)\s+{_TOP})"
)
"""The two halves of a foot, each with its fabric."""
_CORNER: Final = r"(?:the\s+)?(?:gaps?|corner|top\s+of\s+(?:the\s+)?(?:flap|gusset|gap)|space)(?:\s+(?:between|of)\s+(?:the\s+)?(?:heel\s+)?flap(?:\s+and\s+(?:the\s+)?(?:instep|needles?)(?:\s+sts)?)?)?"
_ON_HAND: Final = (
    r"(?:(?:the|your|its|just|almost|base|tip|top|end|middle|bottom|side|bend|crook|of|at|to|little|pinky|pinkie|index|ring|middle|big|first|fore|finger|forefinger|fingers|"
    r"fingertips?|thumb|thumbs|nail|thumbnail|knuckles?|toe|toes|wrist|elbow|ankle|ankles|palm|hand|foot|calf|knee|ears?|earlobes?|eyebrows|forehead|head|crown|when|as|tried|on|it|is|and|or|"
    r"where|begins|joins|divide|separate|meets?|between)\s*)+"
)
_REACHES: Final = r"(?:reach(?:es)?|covers?|comes?\s+(?:up\s+)?to|hits?|meets?|touch(?:es)?|clears?|is\s+(?:just\s+)?(?:at|above|below|past|level\s+with))"
_IT: Final = r"(?:it|(?:the\s+|your\s+)?(?:piece|work|mitten|mitt|hand|glove|thumb|finger|sock|foot|leg|cuff|hat|cap|toe|fabric))"
_THUMB_HELD: Final = r"(?:(?:the\s+)?(?:held\s+)?thumb\s+(?:gap|opening|hole|slit|split|divide|separation|hold|holder|sts(?:\s+on\s+hold)?|stitches)|(?:the\s+)?gap|(?:the\s+)?held\s+(?:thumb\s+)?(?:sts|stitches))"
_LEG: Final = r"(?:on\s+)?every\b(?:[^.;()\[\]]|\([\d,\s]+\))*?\b(?:times(?:\s+more)?|more|once|twice|rem(?:ain)?)"
_NONE: Final = rf"(?:all\s+(?:of\s+)?(?:the\s+)?(?:heel\s+)?{STS}\s+(?:have\s+been|are)\s+consumed|you\s+(?:run\s+out\s+of|have\s+no\s+more)\s+(?:heel\s+|side\s+|flap\s+)?{STS}(?:\s+to\s+work)?|(?:no|there\s+are\s+no\s+more)\s+(?:heel\s+|side\s+|flap\s+)?{STS}\s+(?:are\s+left|remain|left|beyond\s+the\s+gaps?)(?:\s+to\s+work)?)"
_ALL: Final = rf"until\s+(?:all\s+(?:of\s+)?(?:the\s+)?(?:heel\s+|flap\s+)?{STS}\s+(?:have\s+been|are)\s+(?:worked|used(?:\s+up)?|consumed)|{_NONE})"
_ENDING: Final = r"\s*,?\s*(?:and\s+)?ending\s+(?:with|on|after)\s+(?:an?\s+)?(rs|ws|purl|knit|p|k)\s+row"
_ONE_MORE: Final = (
    rf"(?:always\s+)?(?:working|with|having|knitting)\s+(?:(?:1|one)\s+more\s+{STS}|(?:1|one)\s+{STS}\s+more)\s+(?:between|before)\s+(?:(?:the|each)\s+)?dec(?:rease)?s?\b\.?"
    r"(?:\s+(?:each|every)\s+time|\s+on\s+(?:each|every)\s+row)?(?:\s*\((?=[^()]*\b(?:clos|gap))[^()\d]*\))?"
)
"""One stitch more before the decrease of each row of a heel that is turned."""

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
    row(
        "instep|top of",
        rf"(^\s*|[.]\s+)(?P<said>keeping\s+{_FOOT_HALVES})\s*,\s*(?:cont(?:inue)?|work)(?:\s+(?:even|straight|working))?\s+(?=until\b|for\b)",
        r"\1work even in pattern ",
        "Keeping instep in pattern and sole in St st, work even until foot measures 7 cm.",
        spelt_out=True,
    ),
    row(
        "instep|top of",
        rf"(^\s*|[.]\s+)(?:cont(?:inue)?|work)(?:\s+(?:even|straight|working|as\s+(?:set|established)))*\s*,?\s+\(?\s*(?P<said>(?:(?:keeping|working|with)\s+)?{_FOOT_HALVES})\s*\)?\s*,?\s+(?=until\b|for\b)",
        r"\1work even in pattern ",
        "Work even (instep in pattern, sole in St st) until foot measures 7 cm.",
        spelt_out=True,
    ),
    # --- a count between the legs of a shaping, and shapings named by what they shape ---
    row("decreases|increases|shaping", rf"(^\s*|[.]\s+)(?:work|rep(?:eat)?|cont(?:inue)?(?:\s+(?:to\s+work|working|with))?)\s+(?:the\s+|these\s+)?(?:(?P<said>(?-i:toe|crown|gusset|thumb|top|sole|foot|tip))\s+)?(?-i:(dec|inc)reases)\s+(?:on\s+)?(every\s+(?:(?:other|\d+(?:st|nd|rd|th))\s+)?(rnd|round|row))\s+(?=until\b|{N}\s+(?:more\s+)?times)", r"\1rep same \3 \5 \4 ", "Work toe decreases every other rnd until 32 sts rem, then every rnd until 16 sts rem.", spelt_out=True),
    row("dec", rf"(^\s*|[.]\s+)(dec)(?:rease)?\s+(?:on\s+)?(every\s+(?:(?:other|\d+(?:st|nd|rd|th))\s+)?(rnd|round|row))\s+(?={N}\s+times\s*,?\s*(?:and\s+)?then\s+(?:on\s+)?every\b)", r"\1rep same \2 \4 \3 ", "Dec every other rnd 6 times, then every rnd 4 times."),
    row("continue|cont ", r"(^\s*|[.]\s+)cont(?:inue)?\s+(?:to\s+)?(dec|inc)(?:rease|reasing)?\s+(?:on\s+)?(every\s+(?:(?:other|\d+(?:st|nd|rd|th))\s+)?(rnd|round|row))\s+(?:as\s+(?:established|set|before)|in\s+(?:this|the\s+same)\s+(?:way|manner))\s*,?\s+(?=until\b)", r"\1rep alike \2 \4 \3 ", "Continue to decrease every other rnd as established until 32 sts remain, then every rnd until 8 sts remain."),
    row("manner|way", rf"(^\s*|[.]\s+)(?:cont(?:inue)?|work)\s+in\s+this\s+(?:way|manner)\s*,\s*(inc|dec)(?:reas)?(?:e|ing)?\s+({N}\s+{STS})\s+every\s+([3-9])(?:rd|th)\s+(rnd|round|row)\s*,?\s+(until\s+[^.;,]*?)(?=\s*[,.;]|\s*$)", r"\1repeat last \4 \5s \6. at a pace of \2rease \3 every \4th \5", "Continue in this manner, inc 2 sts every 3rd rnd, until there are 13 sts between markers."),
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
    row("until all|run out|no more|until no|consumed", rf"\b{_ALL}{_ENDING}(?:\s*,?\s*(?P<said>(?:and\s+)?omitting\s+(?:the\s+)?(?:final|last)\s+[kp]\s?1(?:\s+and\s+[kp]\s?1)?\s+(?:on|in|at\s+the\s+end\s+of)\s+(?:the\s+)?last\s+(?:two\s+|2\s+)?rows?))?(?=\s*[.;,(-]|\s*$)", r"until all sts are worked. Ends with a \1 row", "Rep rows 3 and 4 until all the heel sts have been worked, ending with a WS row.", spelt_out=True),
    row("run out|no more|until no|consumed", rf"\buntil\s+{_NONE}{CLOSED}", "until all sts are worked", "Rep rows 3 and 4 until you run out of stitches."),
    row("unwrapped in the center", rf"(\brem\s+unwrapped\s+in\s+the\s+center){_ENDING}", r"\1. Ends with a \2 row", "Rep rows 1 and 2 until 10 sts rem unwrapped in the center, ending with a WS row."),
    said_row_behind("gap)", r"\b((?:ssk|k2tog|skp|p2tog|ssp)(?:\s+tbl)?)\s*\(\s*(?P<said>(?:1|one)\s+(?:st|stitch)\s+(?:from|on|at)\s+(?:each|either)\s+side\s+of\s+(?:the\s+)?gap)\s*\)", "Sl 1, k to 1 st before gap, ssk (1 st from each side of gap), k1, turn."),
    said_row("(do not|(without|(leav", r"\s*\(\s*(?P<said>(?:do\s+not\s+work|without\s+working|leav(?:e|ing))\s+(?:the\s+)?(?:ds|double\s+st(?:itch)?|wrapped\s+st(?:itch)?)(?:\s+(?:itself|unworked))?)\s*\)", "Make DS, knit to 1 st before DS, k1 (do not work the DS), turn."),
    row("gap", r"\bgap\s+(?:formed|made|created|left)\s+(?:on|in|by)\s+(?:the\s+)?(?:previous|last|prev\.?)\s+(?:row|turn)\b", "gap", "Sl 1, k to 1 st before the gap formed on the previous row, ssk, k1, turn."),
    row("over and|off and", rf"(\buntil\s+all\s+(?:of\s+)?(?:the\s+)?{STS}\s+(?:have\s+been|are)\s+worked)\s+(?:over|off)\s+and\s+({N})(?:\s+{STS})?\s+(?:rem(?:ain)?|are\s+left)(?=\s*\.?\s*$)", r"\1. \2 sts", "Rep rows 3 and 4 until all the sts have been worked over and 16 remain."),
    said_row_behind("1 more|one more", rf"((?:^\s*|[.]\s+)(?:cont(?:inue)?|work|go\s+on|rep(?:eat)?)\s+(?:(?:in|like)\s+(?:this|the\s+same)(?:\s+(?:manner|way))?|(?:the\s+)?(?:last|these)\s+(?:2|two)\s+rows|rows\s+\d+\s+and\s+\d+|as\s+(?:established|set)))\s*,?\s+(?P<said>{_ONE_MORE})\s*,?(?=\s+until\b)", "Rep rows 3 and 4, working 1 more st before the dec each time, until all sts have been worked."),
    row("until all", rf"(^\s*|[.]\s+)(?:cont(?:inue)?|work|go\s+on)\s+(?:in\s+this|as)\s+(?:manner|way|established|set)\s+(?=until\s+all\s+(?:of\s+)?(?:the\s+)?(?:(?:heel|flap|side)\s+)?{STS}\b)", r"\1rep last 2 rows ", "Continue in this manner until all heel sts have been worked."),
    # --- rows and slipped stitches of a flap, told behind it ---
    row("rows", rf"(\btimes(?:\s+more)?|\bmore|\btwice|\bonce)\s*[-,;(]+\s*({N}\s+rows)(?P<said>(?:\s+(?:have\s+been\s+)?(?:worked|completed|done|in\s+all))?(?:\s*,\s*(?:and\s+)?{N}\s+(?:slipped\s+(?:{STS}|edge\s+{STS})|edge\s+{STS}|chains?)\s+(?:along|on|at|up)\s+(?:each|either)\s+(?:edge|side))?)\s*\)?{CLOSED}", r"\1. \2", "Rep rows 1 and 2 13 more times - 28 rows worked, 14 slipped sts along each edge.", spelt_out=True),
    row("rem|left|have", rf"(^\s*|[.]\s+)(?:you(?:\s+will|'ll)?\s+(?:now\s+)?(?:have|should\s+have)\s+)?({N})\s+(?:heel|sole|flap)\s+({STS})\s+(?:rem(?:ain)?|(?:are\s+)?left)(?:\s+on\s+(?:the\s+|your\s+)?needles?)?(?=\s*[.;]|\s*$)", r"\1\2 \3 rem", "Rep rows 3 and 4 until all sts are worked. You'll have 14 heel stitches left."),
    # --- thumbs, and the instep of a gusset ---
    row("gusset", rf"((?:^|[.(\[]\s*|\buntil\s+|[-:,]\s+)(?:there\s+are\s+(?:now\s+)?|you\s+have\s+)?{N})\s+(?:{STS}\s+(?:in|for)\s+(?:the\s+)?(?:thumb\s+)?gusset|thumb\s+gusset\s+{STS})(?=\s*[.,)\]]|\s*$)", r"\1 sts of gusset", "Rep rnds 1-3 5 more times. 13 sts in thumb gusset."),
    row("gusset", rf"(\b(?:times(?:\s+more)?|more|once|twice))\s*[-:,;(]+\s*({N}\s+(?:{STS}\s+of\s+gusset|gusset\s+{STS}))\s*\)?(?=\s*\.?\s*$)", r"\1. \2", "Rep rnds 1-3 4 more times (13 gusset sts)."),
    row("between", rf"(\buntil\s+(?:there\s+are\s+)?{N}\s+{STS}\s+between\s+(?:the\s+)?(?:gusset\s+|thumb\s+)?markers)\s*[,;(-]\s*({N}\s+{STS})(?P<said>\s+(?:in\s+)?(?:total|all))?\)?(?=\s*\.?\s*$)", r"\1. \2", "Rep last 3 rnds until there are 13 sts between gusset markers, 44 sts total.", spelt_out=True),
    row("removing|remove", r"\b(remov(?:e|ing)\s+(?:all\s+)?(?:the\s+)?)(?P<said>gusset|thumb|side|toe|crown|decrease|stitch)\s+(?=markers\b)", r"\1", "Knit to end, removing gusset markers.", spelt_out=True),
    row("gap|corner|top of", rf"(\bpick\s+up(?:\s+and\s+(?:knit|k))?\s+{N}(?:\s+{STS})?\b[^.,;()]*?)\s*,?\s*(?:plus|\+)\s+({N})(?:\s+(?:extra|more|additional))?(?:\s+{STS})?\s+(?:in|at|from)\s+{_CORNER}", r"\1, pick up and knit \2 sts", "Pick up and knit 16 sts along side of heel flap, plus 1 st in the gap."),
    said_row_behind("in each|for each|from each|into each", rf"(\bpick\s+up(?:\s+(?:and|&)\s+(?:knit|k))?\s+{N}\s+{STS}\b[^.,;()]*?)\s*[(,]\s*(?P<said>(?:that\s+is\s+|i\.e\.\s+)?(?:1|one)\s+(?:st\s+)?(?:in|for|from|into)\s+each\s+(?:of\s+(?:the|those)\s+)?(?:(?:slipped|slip|edge|chain|sl|selvedge|selvage|elongated|garter|big|long)\s*)+(?:{STS}|edges?|loops?|ridges?)?(?:\s*,?\s+(?:plus|and|\+)\s+{N}(?:\s+(?:extra|more))?(?:\s+{STS})?\s+(?:in|at|from)\s+{_CORNER}(?:\s+to\s+(?:avoid|prevent|close|stop)\s+(?:a|the|any)\s+(?:holes?|gaps?))?)?)(?:\s*\)|(?=\s*(?:[.;]|$)))", "Pick up and knit 17 sts along the heel flap (1 in each slipped st plus 1 at the corner)."),
    said_row_behind("m1", rf"(\bm1[lr]?)\s+(?P<said>(?:in|at)\s+{_CORNER})(?=\s*,)", "Knit across 12 heel sts, pick up and knit 16 sts, M1 in gap between flap and instep, knit to end."),
    row("heel sts|sole sts|heel st", rf"(\bacross\b[^.;:]*?,\s*(?:and\s+|then\s+)?)(?:knit|k)\s+(?:the\s+)?(?=(?:heel|sole)\s+{STS})", r"\1knit across ", "Next rnd: Work across instep sts, knit heel sts."),
    said_row("with|using", r"\b(?P<said>(?:with|using)\s+(?:(?:the|an?)\s+)?(?:(?:same|new|empty|free|spare|second|third|fourth|other|extra|working)\s+)+(?:needle|dpn)(?:\s*\(\s*(?:(?:this\s+is\s+)?(?:now\s+)?)?needle\s+[1-5]\s*\))?)\s*(?:,\s*|(?=(?:pick|knit\s+across|work\s+across)\b))", "With the same needle pick up and knit 15 sts along the edge of the flap."),
    row("one needle|1 needle", rf"\b(?:slip|place|put|move)\s+(?:all\s+)?(?:of\s+)?(?:the\s+)?((?:{N}\s+)?instep\s+{STS})\s+(?:back\s+)?(?P<said>on(?:to)?\s+(?:one|1|a\s+single)\s+needle(?:\s*\((?:this\s+is\s+)?(?:now\s+)?needle\s+[1-5]\))?)\s*,?\s*(?:and\s+)?(?:then\s+)?(knit|work)\s+(?:across\s+)?them(?:\s+in\s+(?:patt(?:ern)?|(?:[a-z'-]+\s+){{1,3}}?(?:rib|patt(?:ern)?|st(?:itch)?|lace))(?:\s+as\s+(?:set|est(?:ablished)?))?)?(?=\s*[.,;]|\s*$)", r"\3 across \1", "Slip all the instep sts onto one needle (this is now N2) and work across them in pattern as set.", spelt_out=True),
    row("heel sts|instep", rf"(\b(?:(?:knit|k)\s+(?:across\s+)?(?:the\s+)?(?:rem(?:aining)?\s+)?(?:{N}\s+)?heel\s+{STS}|(?:work|knit|k)\s+across\s+(?:the\s+)?(?:{N}\s+)?(?:held\s+)?instep(?:\s+{STS})?))\s*\.\s*(?:then\s+)?(?=pick\s+up\b)", r"\1, ", "Set-up rnd: Knit across the heel sts. Pick up and knit 16 sts along the edge of the flap, k to end."),
    row("pick up", rf"(\bpick\s+up\s+and\s+(?:knit|k)\s+{N}(?:\s+{STS})?(?:\s+(?:along|down|up|on|from)\s+[a-z -]+?)?)\s*\.\s*(?:then\s+)?(?=(?:work|knit|k)\s+across\s+(?:the\s+)?(?:{N}\s+)?(?:held\s+)?instep\b)", r"\1, ", "Pick up and knit 16 sts along the edge of the flap. Work across instep sts."),
    row("sts", rf"\bwork\s+(?:(?:even\s+)?in\s+(?:patt(?:ern)?|est(?:ablished)?\s+patt(?:ern)?)(?:\s+as\s+(?:set|est(?:ablished)?))?\s+(?:across|over)\s+)(?:the\s+)?(?:held\s+)?((?:{N}\s+)?(?:instep|sole|palm|hand|thumb)\s+{STS})", r"work across \1", "Work in patt across 28 instep sts."),
    row("sts|instep", rf"(?<!\d:\s)\bwork\s+(?:(?:across|over)\s+)?(?:the\s+)?(?:held\s+)?((?:{N}\s+)?(?:(?:instep|sole|palm|hand|thumb)\s+{STS}|instep(?=.*\bpick\s+up\b)))\s+(?:even\s+)?in\s+(?:patt(?:ern)?|est(?:ablished)?\s+patt(?:ern)?|(?:[a-z'-]+\s+){{1,3}}?(?:rib|patt(?:ern)?|st(?:itch)?|lace)\s+as\s+(?:set|est(?:ablished)?))(?:\s+as\s+(?:set|est(?:ablished)?))?(?=\s*[.,;]|\s*$)", r"work across \1", "Work across instep sts in pattern."),
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
    row("sts in patt|stitches in patt", rf"\bwork\s+(?P<said>(?:the\s+)?(?:instep|sole|palm|hand)\s+{STS})\s+in\s+patt(?:ern)?(?:\s+as\s+(?:set|est(?:ablished)?))?\s+(?=to\b)", "work in patt ", "K to 3 sts before first marker, k2tog, k1, sm, work instep sts in patt to second marker, sm, k1, ssk, k to end.", spelt_out=True),
    # --- drawn together ---
    said_row_behind("kitchener", r"((?:^|[.])\s*)(?P<said>(?:using|with)\s+(?:the\s+)?kitchener(?:'s)?(?:\s+(?:st(?:itch)?|method|graft))?)\s*,?\s*(?=graft\b)", "Using Kitchener stitch, graft 8 sts."),
    said_row_behind("using|with", r"((?:^|[.;])\s*)(?P<said>(?:using|with)\s+(?:an?\s+|the\s+|your\s+)?(?:tapestry|darning|yarn|blunt|sewing|wool)\s+needle)\s*,?\s*(?=(?:draw|thread|pull|pass|run)\b)", "Using a tapestry needle, draw yarn through live sts and pull tight."),
    said_row_behind("bind", r"(\bbind\s+off\s+all\s+(?:sts|stitches)[^.;(]*?)\s*\(\s*(?P<said>(?:an?\s+)?(?:sewn|stretchy|tubular|elastic|super\s+stretchy)\s+(?:bind[-\s]?off|method)\s+(?:is|works|looks|would\s+be)\s+(?:good|best|nice|nicely|well|great|perfect|ideal|recommended)(?:\s+here)?)\s*\)", "Bind off all sts loosely in rib (a sewn bind off is good here)."),
)  # fmt: skip
"""The rows, in the order tried."""
