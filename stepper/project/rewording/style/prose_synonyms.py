"""Other wordings of whole clauses: rows named in prose, stitches worked across, lengths, lines without a verb. No I/O.

These rows know how a sentence is built (a head, what is worked over how many stitches, how long, a remark), not
which words one page has for it.
"""

from __future__ import annotations

from stepper.craft.needles import NEEDLES
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import CUT_YARN, LONG, OFF, ROUND, STS, N, Synonym, row

_LABEL = r"(\s*(?:[a-z][a-z' -]{1,30}:\s*)?)"
_WORKED = rf"(?=\*|\(|\[|(?:k|p|sl)\s?\d|(?:k|p|knit|purl|work|slip|sl|inc|dec|bo|{OFF}|cast|place|put|leave|rib|patt|[kp]2tog|ssk|skp|yo|m1)\b)"
_WHICH = r"(?:(?:first|1st|next|last|foll(?:owing)?|rem(?:aining)?)\s+)"
_STOPPED = r"(?=\s*(?:[,;.)]|$)|\s+(?:and|then)\b)"
_FABRIC = r"(?:(?:seed|moss|garter|rev(?:erse)?\.?\s+st|st|stocking|stockinette)\s+(?:st(?:itch)?\b\.?)|stockinette|seed|moss|g\s?st|rib(?:bing)?|patt(?:ern)?\b\.?)"
_PART = (
    r"(?:(?:left|right|first|second|other|garter|side|back|front|neck(?:line|band)?|shoulder|armhole|thumb|heel|toe|top|bottom|upper|lower|"
    r"button(?:hole)?|hem|border|edg(?:e|ing)|band|cuff|brim|collar|facing|welt|of|the|each)\b\s*)"
)
_NOUN = (
    r"(?:(?:left|right|side)\s+(?:front|back|edge)(?:\s+of\s+(?:the\s+)?(?:work|piece))?|side\s+edge(?:\s+of\s+(?:the\s+)?(?:work|piece))?|"
    r"(?:(?:total|whole)\s+)?length(?:\s+of\s+(?:the\s+)?(?:work|piece|mitten|sleeve|sock|hat|body|foot|scarf))?)"
)
_HELD_IN = r"(?:(?:the|both|left|right|front|back|body|sleeves?|sides?|needles?|thumb|hand|heel|instep|sole|and|for|each|on|\d)\b[\s,]*)"
"""What a count is made up of, part by part: "14 each sleeve, 22 for front", "15 each on needles 1 and 3"."""
_WORDS = {
    "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10,
}  # fmt: skip
_FABRICS = (
    r"(?:(?:rev(?:erse)?\.?\s+)?(?:st\.?\s?st\.?|stockinette(?:\s+st(?:itch)?\.?)?|stocking\s+st(?:itch)?\.?)"
    r"|garter(?:\s+st(?:itch)?\.?)?|(?:seed|moss)\s+st(?:itch)?\.?|[1-9]\s?x\s?[1-9]\s+rib(?:bing)?)"
)
_FIRST = r"(^\s*|(?:^|[.:])\s*(?:[a-z][a-z ]*:\s*)?)"
"""Where a sentence begins, behind the name of its line if it has one."""
_COLOURED = r"[KkPp]\s?\d+\s+(?:in\s+|with\s+)?[A-Z]{1,2}"
_LENGTH = rf"(?:piece|work|it)\s+measures\s+{LONG}"

PROSE: tuple[Synonym, ...] = (
    # --- numbers in words ---
    *(
        row(word, rf"\b{word}\s+(?=inch(?:es)?\b|cms?\b|centimet(?:er|re)s\b)", f"{number} ", f"Work in k1, p1 rib for {word} inches.")
        for word, number in _WORDS.items()
    ),
    *(
        row(word, rf"\b((?:cast|bind)\s+(?:on|off)|pick\s+up\s+and\s+knit)\s+{word}\s+(?={STS})", rf"\1 {number} ", f"Cast on {word} sts.")
        for word, number in _WORDS.items()
    ),
    row("ins", r"(?<=[)\]])\s*ins\b\.?", " in", "Work even until piece measures 6¾ (7, 7¼) ins."),
    # --- rows named in prose ---
    row(".", r"^(\s*)[A-H]\.\s+(?=[A-Z*(\[])", r"\1", "A. Work 4 rows in st st.", exact=True),
    row(
        "next",
        rf"^{_LABEL}(?:(?:then|now)\s+)?(?:(?:(?:on|in|for)\s+)?the|on|in)\s+next\s+(row|rnd|round)\s*,?\s*(?::\s*)?{_WORKED}",
        r"\1next \2: ",
        "On the next row k12, k2tog, k to end.",
    ),
    row(
        "row|rnd|round",
        r"^(\s*next\s+(?:row|rnd|round)(?:\s*\(?(?:[rw]s|right\s+side|wrong\s+side)\)?)?)\s*-{1,2}\s*(?=[a-z*(\[])",
        r"\1: ",
        "Next row - K2, k2tog, k to end.",
    ),
    row("rs r|ws r|even r|odd r|side r", rf"^(\s*)on\s+(?:(?:all|every|each)\s+)?(?:the\s+)?((?:rs|ws|even|odd|(?:right|wrong)[-\s]side)(?:-numbered)?\s+)(row|rnd|round)s?\s*[,:]\s*{_WORKED}", r"\1all \2\3s: ", "On WS rows, purl."),
    row("row|rnd|round", r"^(\s*(?:row|rnd|round)s?\s+\d+(?:\s*(?:-|to|and|&|,)\s*\d+)*)\s+(?=as\s+(?:row|rnd|round)s?\s+\d)", r"\1: ", "Rows 5 and 6 As rows 1 and 2."),
    row("turn ", r"^(\s*)turn\s+(\d+)\s*:\s*", r"\1row \2: ", "Turn 1: K10, turn."),
    row("same as", r"\bsame\s+as\s+(?:the\s+)?(\d+)(?:st|nd|rd|th)\s+(row|rnd|round)\b", r"as \2 \1", "Row 7: Same as 3rd row."),
    row("these last|those last", r"\b(?:these|those)\s+last\s+(?=(?:\d|two|three|four|five|six)\b)", "these ", "Rep these last 2 rows 3 times more."),
    row("repeat the|rep the", rf"\b(rep(?:eat)?)\s+the\s+(?={N}\s+(?:rows|rnds|rounds)\b)", r"\1 these ", "Repeat the 2 rows 3 times more."),
    # --- stitches worked across ---
    row(
        "across|over",
        rf"\b(k|p|knit|purl)\s+(?:across|over)\s+(?:the\s+)?{_WHICH}?({N}\s+{STS}){_STOPPED}",
        r"\1 \2",
        "Knit across first 12 sts, k2tog, k to end.",
    ),
    row(
        "work",
        rf"\bwork\s+(?:even\s+)?(?:(?:across|over)\s+|(?=(?:the\s+)?{_WHICH}))(?:(?:the\s+)?{_WHICH})?({N})\s+{STS}{_STOPPED}(?!\s*,?\s*(?:and\s+|then\s+)?(?:place|put|slip|sl|slide|leave)\b)",
        r"work \1 sts in pattern",
        "K1, k2tog, work next 12 sts, k2tog, k1.",
    ),
    row(
        "across|over",
        rf"\bwork\s+(?:in\s+)?({_FABRIC})\s+(?:across|over)\s+(?:the\s+)?{_WHICH}?({N})\s+{STS}",
        r"work \2 sts in \1",
        "Row 1: K4, work in moss st across next 9 sts, k4.",
    ),
    row(
        "across|over",
        rf"((?:^|[:,])\s*)({_FABRIC})\s+(?:across|over)\s+(?:the\s+)?{_WHICH}?({N})\s+{STS}",
        r"\1work \3 sts in \2",
        "Row 1: Seed st across first 9 sts, k to end.",
    ),
    row(
        "work",
        rf"\bwork\s+(?:the\s+)?{_WHICH}({N})\s+{STS}\s+in\s+({_FABRIC})",
        r"work \1 sts in \2",
        "Row 1: Work first 5 sts in moss st, k to end.",
    ),
    row(
        "themselves|purl",
        rf"\b(?:work|patt)(?:\s+(?:across|to\s+end)(?:\s+(?:the\s+)?row)?)?\s*,\s*(?:purling\s+(?:all\s+)?(?:the\s+)?purl\s+{STS}\s+and\s+knitting\s+(?:all\s+)?(?:the\s+)?knit|knitting\s+(?:all\s+)?(?:the\s+)?knit\s+{STS}\s+and\s+purling\s+(?:all\s+)?(?:the\s+)?purl)\s+{STS}"
        r"(?:\s+as\s+they\s+(?:present|appear|come|face\s+you)(?:\s+themselves)?)?",
        "work in pattern to end",
        "Row 2: Work across row, purling all purl sts and knitting all knit sts.",
    ),
    # --- how long ---
    row("above", rf"({LONG})\s+above\s+(?:the\s+)?(rib(?:bing)?|border|hem|band|welt|cuff)\b", r"\1 from end of \2", "Work even until piece measures 9 cm above ribbing."),
    row("until", rf"\buntil\s+(?={LONG}\s+from\b)", "until piece measures ", "Work in k1, p1 rib until 4 in from cast-on edge."),
    row("until", rf"\buntil\s+(?:you\s+have\s+(?:worked\s+)?|there\s+(?:is|are)\s+)({LONG})\s+of\s+(ribbing|rib)\b", r"until \2 measures \1", "Rep row 1 until you have 1 inch of ribbing."),
    row("measures| is ", rf"\buntil\s+(?:the\s+)?{_NOUN}\s+(?:measures|is)(?=\s+(?:about\s+|approx(?:imately|\.)?\s+)?[\d¼½¾])", "until piece measures", "Work even until left front measures 9 cm."),
    row(
        "with|using",
        rf"^{_LABEL}((?:cast\s+on|co)\s+{N}\s+{STS})\s*,?\s+(?:with|using)\s+(?:an?\s+|the\s+)?(?:pair\s+of\s+)?({NEEDLES})\b(?!\s+and\s+(?:yarn\b|colou?r\b|(?-i:MC|CC\d?|[A-Z])\b))",
        r"\1change to \3. \2",
        "Cast on 40 sts with 4 mm needles.",
    ),
    row("rib", r"\bin\s+rib(?:bing)?\s+(?:of\s+)?(k\s?\d+)\s*,?\s*(p\s?\d+)\s*,?\s*(?=for\b|until\b)", r"in \1, \2 rib ", "Work in ribbing of k2, p2, for 6 cm."),
    row("then", rf"(\b(?:{ROUND}|rib(?:bing)?)|{LONG})\s*,\s*(?:and\s+)?then\s+(?=(?:{OFF}|bo)(?:\s+(?:all|loosely))*(?:\s+in\s+[a-z ]+)?\s*(?:\.|$)|change\s+to\b|break\b)", r"\1. ", "Work in k1, p1 rib for 2 inches, then bind off in pattern."),
    row(
        "or ",
        r"(?<=[\w\"\])])\s*,?\s*\b(?P<said>or\s+(?:until|up\s+to|to|when)\s+(?![^.;]*\b(?:desired|required|wanted|preferred|like|want|wish|prefer)\b)[a-z][a-z' ]+)(?=\s*[.;]|\s*$)",
        "",
        "Work even until piece measures 9 cm or until the yarn is almost used up.",
    ),
    said_row("if you", r"\s*\(\s*(?P<said>or\s+(?:more|less|fewer|longer|shorter)\s+if\s+you\s+(?:wish|want|like|prefer)[a-z ]*)\)", "Repeat rows 1-2 7 times (or more if you wish for a longer scarf)."),
    # --- remarks ---
    said_row(
        "(",
        r"\s*\(\s*(?P<said>(?:for\s+)?(?:the\s+)?(?:neck|armhole|raglan|waist|sleeve|sleeves|front|back|hip|bust)\s+(?:dec(?:rease)?|inc(?:rease)?)s?)\s*\)",
        "K10, k2tog (neck dec), k to end.",
    ),
    said_row("(for", rf"\s*\(\s*(?P<said>for\s+(?:the\s+)?{_PART}{{1,5}})\)", "K10, bind off 8 sts (for back of neck), k to end."),
    said_row_behind(
        " for |to create|to form|to make",
        rf"(\b(?:{ROUND}|rib(?:bing)?|st(?:itch)?)|{LONG})\s*,?\s+(?P<said>(?:for|to\s+(?:create|form|make))\s+(?:the\s+|an?\s+)?{_PART}{{1,4}})(?=\s*\.?\s*$)",
        "Work 4 rows in k2, p2 rib to create hem.",
    ),
    row("toward", r"\bwith\s+(?:the\s+)?(right|wrong)\s+side\s+of\s+(?:the\s+)?work\s+(?:towards?|facing)\s+you\b", r"with \1 side facing", "With right side of work toward you, pick up and knit 20 sts."),
    row("rem.", r"\brem\.\s*(?=\))", "rem", "K2tog, k to end. (10 sts rem.)"),
    row("-side", r"\b(wrong|right)-side(?=\s+row\b)", r"\1 side", "Work even until piece measures 9 cm, ending after a wrong-side row."),
    row(
        "back and forth",
        r"^\s*(?:the\s+)?(?:sleeves?|body|yoke|front|back|piece|flap|top|cap)\s+(?:will|is|are)\s+(?:now\s+)?(?:be\s+)?(?:now\s+)?worked\s+(?=back\s+and\s+forth\b)(?P<said>back\s+and\s+forth(?:\s+in\s+(?:rows|stockinette(?:\s+st(?:itch)?)?|st\s+st))?)(?=\s*\.?\s*$)",
        "work flat",
        "Sleeves are now worked back and forth in stockinette st.",
        spelt_out=True,
    ),
    said_row("new st", r"(?<=\w),?\s+(?P<said>to\s+(?:create|make|form)\s+(?:an?\s+)?(?:new|extra)\s+st(?:itch)?)(?=\s*[,.;])", "Row 3: Knit 2, yarn over to create a new stitch, knit to end."),
    # --- stars ---
    row(
        "*",
        r"^([^*]*)\*\s*((?:(?!\brep(?:eat)?\b)[^*])*?[a-z0-9)])\s*,?\s*\*\s*,?\s*(?=[kp]\s?\d[^*]*$)",
        r"\1*\2; rep from *, ",
        "K1, *yo, k2tog* k1.",
    ),
    row(
        "*",
        r"^([^*]*)\*\s*([^*]*?[a-z0-9)])\s*,?\s*\*\s*(?:for\s+(?:the\s+)?(?:complete|whole|entire|full)\s+(?:rnd|round|row))\s*(?=\.[^*]*$|$)",
        r"\1*\2; rep from * to end",
        "Round 6: *Ssk* for complete round.",
    ),
    row(
        "repeat|rep ",
        r"^(\s*(?:next\s+(?:row|rnd|round)|(?:row|rnd|round)s?\s+\d+)\s*(?:\(?[rw]s\)?\s*)?:\s*)([^.:;*]*[a-z0-9)])\s*\.\s*rep(?:eat)?\s+(?:to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:row|rnd|round))?|across|around)(?=\s*\.?\s*$)",
        r"\1*\2; rep from * to end",
        "Row 3: Knit 2, yo, k2tog. Repeat to the end of the row",
    ),
    said_row_behind(
        ":",
        rf"({N}\s+{STS})\s*:\s*(?P<said>(?:\d[\d\s(),\[\]]*(?:{STS}\s+)?(?:each\s+|for\s+|on\s+|and\s+)+{_HELD_IN}{{1,5}})+)(?=\.?\s*$)",
        "Work the last 2 rnds 2 more times. 72 sts: 24 on each needle, 48 for the sole.",
    ),
    # --- held, drawn through, marked, picked up ---
    row(" one ", r"\b(held\s+(?:sts|stitches)\s+(?:of|for|from)\s+)one\s+(?=sleeve|front|side|shoulder|thumb|cuff)", r"\1first ", "Transfer 20 held sts of one sleeve to needle."),
    row("thread|wool", r"\b(break|cut)\s+(?:off\s+)?(?:the\s+|your\s+)?(?:thread|wool)\b", r"\1 yarn", "Cut thread, draw through rem 6 sts."),
    row("feed", r"\bfeed\s+(?:it\s+|the\s+(?:yarn|tail|end)\s+)?(?=thr(?:ough|u)\b)", "draw ", "Cut yarn and feed through remaining stitches."),
    said_row(
        "cinch|secure",
        r"(?:(?<=^)|(?<=[.!]))\s*(?P<said>(?:cinch|pull\s+(?:tight|up)|draw\s+up)\s+(?:tight(?:ly)?\s+)?and\s+(?:secure|fasten(?:\s+off)?)(?:\s+(?:the\s+)?(?:yarn|end|tail))?(?:\s+(?:on\s+(?:the\s+)?)?(?:inside|wrong\s+side|ws))?)\s*\.?\s*$",
        "Cinch and secure yarn inside.",
    ),
    said_row(
        "marker|safety pin",
        r"(?:(?<=^)|(?<=[.!]))\s*(?P<said>(?:after\s+(?:a\s+few|several|one\s+or\s+two|a\s+couple\s+of)\s+(?:rounds|rnds|rows)(?:\s+(?:have\s+been|are))?(?:\s+worked)?\s*,\s*)?(?:place|put|attach|use|hang)\s+(?:an?\s+)?(?:(?:split[-\s]ring|locking|removable|stitch|coil(?:ess)?)\s+)*(?:marker|safety\s+pin)"
        r"(?:\s+or\s+(?:an?\s+)?(?:marker|safety\s+pin|scrap\s+of\s+yarn))?(?:\s+(?:in|on)\s+(?:the\s+|your\s+)?(?:work|fabric|piece|knitting))?\s+to\s+(?:indicate|mark|show)\s+(?:the\s+)?(?:beginning|start)\s+of\s+(?:the\s+)?(?:rnd|round|row))\s*\.?\s*$",
        "Use a locking stitch marker to mark the beginning of the round.",
    ),
    said_row_behind(
        "graft",
        rf"(\bgraft\s+(?:the\s+)?(?:rem(?:aining)?\.?\s+)?(?:sts|stitches))\s*,?\s*(?P<said>or\s+{CUT_YARN}\s*,?\s*(?:and\s+)?(?:draw|pull|thread|run)\s+(?:it\s+|tail\s+)?through\s+(?:the\s+)?(?:rem(?:aining)?\s+)?(?:sts|stitches))(?=\s*\.?\s*$)",
        "Graft remaining sts, or break yarn and draw through sts.",
    ),
    row("twisted", r"\b1\s?x\s?1\s+twisted\s+rib\b", "twisted rib", "Work 10 rounds in 1x1 twisted rib."),
    said_row_behind(
        "in rows of",
        r"^(\s*)(?P<said>work\s+in\s+rows\s+of\s+(?:g\.?\s?st|garter(?:\s+st(?:itch)?)?))\b\.?\s*:\s*(?=(?:k|knit)\s)",
        "Work in rows of g st: K 8 rows.",
    ),
    row(
        "chart",
        rf"\bwork\s+(?:the\s+)?chart\s+([a-z]\w*)\s*,\s*(?P<said>repeating\s+it\s+{N}\s+times\s+(?:across|around|in)\s+(?:each|every|the)\s+(?:rnd|round|row))\s*,\s*until\s+(?:both|all(?:\s+{N})?)\s+(?:rnds|rounds|rows)\s+have\s+been\s+worked\s+({N}\s+times|once|twice)",
        r"chart \1, \3",
        "Work Fern chart, repeating it 4 times across each rnd, until both rnds have been worked 2 times.",
        spelt_out=True,
    ),
    row("join in", r"\b[Jj]oin\s+in\s+(?=(?:MC|CC\d?|[A-Z])\b)", "with ", "Join in B.", exact=True),
    # --- a fabric without a verb, how long it goes on, what is said beside a change ---
    row(
        "garter|seed|moss|st|x",
        rf"{_FIRST}({_FABRICS})\s*,?\s+(?:for\s+)?({N}\s+{ROUND})(?=\s*[,.;]|\s*$)",
        r"\1Work in \2 for \3",
        "Garter stitch for 6 rows.",
    ),
    row(
        "garter|seed|moss|st|x",
        rf"{_FIRST}({_FABRICS})\s+(?=for\s+{LONG}|until\s+{_LENGTH})",
        r"\1Work in \2 ",
        "Seed stitch for 4 cm.",
    ),
    row("rib for", rf"{_FIRST}rib\s+for\s+(?={N}\s+{ROUND}|{LONG})", r"\1Work in rib for ", "Rib for 8 rows."),
    row(
        "even|straight|plain",
        rf"{_FIRST}(knit|k)\s+(?:even|straight|plain)\s+(?=for\s+(?:{N}\s+{ROUND}|{LONG})|until\s+{_LENGTH})",
        r"\1\2 ",
        "Knit even for 3 inches.",
    ),
    row(
        "another",
        rf"\b(work|knit|k|purl|p)\s+another\s+({N})\s+({ROUND})(?:\s+(?:even|straight))?(?=\s*[,.;]|\s*$)",
        r"\1 \2 more \3",
        "Work another 6 rounds even.",
    ),
    row(
        "evenly",
        rf"\bevenly\s+(?:spaced\s+)?(?:on|over|in|across|around)\s+(?:the\s+)?(?=(?:next|last|following)\s+{ROUND})",
        "evenly across the ",
        "Inc 8 sts evenly spaced on next rnd.",
    ),
    row("pick up &", r"\bpick\s+up\s*&\s*(?:knit|k)\s*(?=\d)", "pick up and knit ", "Pick up & k 60 sts evenly around armhole."),
    row(
        "evenly",
        rf"\b(pick\s+up\s+(?:and|&)\s+(?:knit|k)\s*{N}\s+{STS})\s+evenly\s+(?=(?:around|along|across|from|on)\b)",
        r"\1 ",
        "Pick up and knit 60 sts evenly around armhole.",
    ),
    row(
        "place|pm",
        r"(^\s*)(place\s+(?:a\s+)?marker|pm)\s+at\s+(?:the\s+)?(?:beg(?:inning)?|start|end)\s+of\s+(?:the\s+)?(?:round|rnd)(?=\s*[.]?\s*$)",
        r"\1\2 for beg of rnd",
        "Pm at beg of rnd.",
    ),
    row(
        "kitchener",
        r"{_FIRST}(?:(?:use|using)\s+(?:the\s+)?kitchener(?:\s+st(?:itch)?)?\s+to\s+(?:close|graft|join)|close(?=[a-z ]+\b(?:with|using)\s+(?:the\s+)?kitchener\b))\s+(?:the\s+)?(toe|top|tip)(?:\s+(?:with|using)\s+(?:the\s+)?kitchener(?:\s+st(?:itch)?)?)?(?=\s*[.,]|\s*$)".replace("{_FIRST}", _FIRST),
        r"\1Graft the \2",
        "Use Kitchener stitch to close the toe.",
    ),
    row("around|end|across", rf"{_FIRST}({_COLOURED}(?:,\s*{_COLOURED})+)\s+(?:(?:all\s+)?around|(?:all\s+)?across|to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?{ROUND})?)(?=\s*[.]|\s*$)", r"\1(\2) to end", "K1 in MC, k3 in CC around.", exact=True),
    row(
        "work this|last dec|last inc|these dec|these inc",
        rf"{_FIRST}(?:work\s+this|(?:rep(?:eat)?|work)\s+(?:these|(?:the\s+)?last))\s+(dec|inc)(?:rease)?s?(?:\s+{ROUND})?\s+(?=(?:on\s+)?every\b)",
        r"\1\2 in this way ",
        "Work this decrease every 8th round 4 times more.",
    ),
    row("in this way every", r"\b(in\s+this\s+way\s+(?:on\s+)?every\s+\d+)\s+(round|rnd|row)s\b", r"\1th \2", "Inc in this way every 6 rnds 3 times in all."),
    row("m1", rf"{_FIRST}m1\s+(?=at\s+each\s+end\s+of\s+(?:the\s+)?next\b)", r"\1Inc 1 st ", "M1 at each end of next row."),
    row("around to", r"\b([kp])\s+around\s+(?=to\s+last\b)", r"\1 ", "Rnd 3: K2tog, k around to last 2 sts, ssk."),
    row(
        "join",
        r"\b((?:[Bb]reak|[Cc]ut|[Ff]asten)(?:\s+off)?\s+(?:yarn\s+)?[A-Z]{1,3}),\s*(?:and\s+)?(join\s+(?:in\s+)?[A-Z]{1,3})(?=\s*[.]|\s*$)",
        r"\1. \2",
        "Break MC, join CC.",
        exact=True,
    ),
)  # fmt: skip
"""The rows, in the order tried."""
