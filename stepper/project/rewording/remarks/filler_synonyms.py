"""Other wordings by what fills a sentence: adverbs that change nothing, and what explains the words before it. No I/O.

Each row is for a class of words wherever they stand, not for a sentence. A filler says nothing that the words around
it do not say already: "throughout" behind the name of a fabric, "without shaping" behind plain rounds. An
explanation - "i.e.", a rib told in stitches behind its name - is said with the line, and only where it can hold
no instruction. A number that can be checked is no explanation. "About", "at least", "only", "alternately" and
"except" are no fillers.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import LONG, ROUND, STS, YARN_A_H, N, Synonym, row

_FABRIC: Final = (
    r"(?:(?:st\.?[\s-]?st|stockinette|stocking(?:ette)?|garter|seed|moss|rib(?:bing)?|reverse\s+st(?:ockinette)?)"
    r"(?:\s+st(?:itch)?\b\.?)?|(?:in\s+)?patt(?:ern)?|k\s?\d\s*,\s*p\s?\d(?:\s+rib(?:bing)?)?)"
)
_FAIRLY: Final = r"(?:fairly|quite|rather|reasonably|moderately|somewhat|nice\s+and|extra)"
_END: Final = r"(?=\s*[.,;)]|\s*$)"
_PLAIN: Final = r"(?:knit|purl|k|p|work)"
_SHAPING: Final = r"(?:shaping|decreas(?:es?|ing)|increas(?:es?|ing)|decs?|incs?|decreasing\s+or\s+increasing)"
_TIMES: Final = rf"(?:{N}\s+(?:more\s+)?times(?:\s+more)?|twice(?:\s+more)?|once\s+more)"

FILLERS: tuple[Synonym, ...] = (
    row("next r", r"^(\s*next\s+(?:row|rnd|round))\.\s*-+\s*(?=\S)", r"\1: ", "Next row.-K. 12, turn."),
    row("equal|regular", r"\bat\s+(?:equal|regular)\s+(?:distances|intervals)\b", "evenly", "Next rnd: Knit, decreasing 4 sts at equal distances."),
    row(
        "all ",
        r"\b(k\s?2\s?tog|p\s?2\s?tog|ssk)\s+all\s+(?:the\s+way\s+a?round|round)(?=\s*[.,;=-]|\s*$)",
        r"\1 around",
        "Next rnd: K2tog all the way round.",
    ),
    row(
        "take ",
        rf"\b(?:now\s+)?take\s+(?:2|two)\s+{STS}\.?\s+tog(?:ether)?\.?\s+(?=at\s+(?:each|both)\s+ends?\b)",
        "dec 1 st ",
        "Now take 2 sts together at each end of every alternate row until 12 sts remain.",
    ),
    row(
        "by casting|by binding",
        r"((?:^|[.:])\s*)(?P<said>(?:to\s+)?shape\s+(?:the\s+)?(?:shoulders?|armholes?|neck|top|(?:sleeve\s+)?(?:cap|head|top)|raglans?|underarms?|sides?))\s+by\s+(?:casting|binding)\s+off\s+",
        r"\1bind off ",
        "Shape shoulders by casting off 6 sts at the beginning of the next 4 rows.",
        spelt_out=True,
    ),
    row(
        "alternate rows|alt rows",
        r"\b(at\s+(?:the\s+)?(?:neck|armhole|front|side)\s+edge)\s+(?:in|on|of)\s+alt(?:ernate)?\s+rows\b",
        r"\1 every alternate row",
        "Cast off 6 sts at armhole edge in alternate rows three times.",
    ),
    row("depth", r"\buntil\s+(?:the\s+)?armhole\s+depth\s+(?:is|measures)\s+(?=\d)", "until armhole measures ", "Work even until armhole depth is 9 cm."),
    row("altogether", rf"(\bmeasures\s+{LONG})\s+altogether\b", r"\1 in all", "Continue in st st until mitt measures 9 cm altogether."),
    row(
        "without",
        r"\b(in\s+(?:st\.?[\s-]?st|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?)\.?)\s*,?\s+without\s+(?:any\s+|further\s+)*shaping\s*,?\s+(?=until|for)",
        r"\1 ",
        "Continue in st.st. without shaping until piece measures 9 cm.",
    ),
    said_row_behind(
        "tightly|firmly",
        rf"\b((?:cast\s+on|co)\s+{N}\s+{STS})\s+(?P<said>(?:{_FAIRLY}\s+)?(?:tightly|firmly)){_END}",
        "Cast on 8 sts fairly tightly.",
    ),
    row("divide them", r"\bdivide\s+them\s+(?=(?:evenly\s+)?(?:over|between|on|onto)\b)", "divide sts ", "Divide them over 4 needles."),
    row(
        "up in|on in",
        rf"\b(work|knit|cont(?:inue)?|carry)\s+(?:on|up|upwards)\s+in\s+(?={_FABRIC})",
        "work in ",
        "Carry on in st st for 6 cm.",
    ),
    row(
        "all",
        rf"\b(knit|purl|k|p)\s+({N}\s+{ROUND})\s+(?:plain\s+)?all\s+(?:a?round|across)\b",
        r"\1 \2",
        "Knit 1 rnd plain all round.",
    ),
    row(
        "where you",
        rf"\b(knit|purl|k|p|work)\s+((?:1|one)\s+{ROUND})\s*,?\s+(?:where|in\s+which|while|whilst)\s+you\s+(decrease|increase|dec|inc)\b",
        r"\1 \2, \3",
        "Knit 1 round where you decrease 4 sts evenly.",
    ),
    row(
        "not",
        r"\s*,?\s+(?:(?:but|and)\s+)?not\s+(?:too\s+(?:tight(?:ly)?|firmly)|tightly)\b",
        " loosely",
        "Cast off all sts in rib, not too tightly.",
    ),
    row("loosely|elastically", rf"\b(?P<said>{_FAIRLY}\s+(loosely|elastically))\b", r"\2", "Cast off quite loosely.", spelt_out=True),
    row("again", rf"\bonce\s+again{_END}", "once more", "Rep the last 2 rows once again."),
    row(
        "the ",
        r"\b((?:change|switch|go|return)\s+(?:back\s+)?to|with|using|onto|on)\s+the\s+(?=(?:larger|smaller|longer|shorter|bigger)\b)",
        r"\1 ",
        "Switch to the larger needles.",
    ),
    row("bigger", r"\bbigger(?=\s+(?:needles?|ndls?|dpns?|circulars?))", "larger", "Change to bigger needles."),
    row("then every|then on every", r"\b(\d+(?:st|nd|rd|th)(?:\s+row|\s+rnd|\s+round)?)\s*,?\s+and\s+then\s+(?:on\s+|in\s+)?every\b", r"\1 and every", "Inc 1 st at each end of the 5th and then every 6th row 4 times."),
    row("reaches", rf"\b(until\s+(?:the\s+)?[a-z]+(?:\s+[a-z]+)?)\s+reaches\s+(?=(?:about\s+|approx\.?\s+)?{LONG})", r"\1 measures ", "Work even until mitt reaches 6 cm."),
    row(
        "deep|tall|high",
        rf"\b(until\s+(?:the\s+)?[a-z]+(?:\s+[a-z]+)?\s+is\s+(?:about\s+|approx\.?\s+)?{LONG})\.?\s+(?:deep|tall|high)\b",
        r"\1 long",
        "Work even until cowl is 9 cm deep.",
    ),
    row("more times", rf"\b(rep(?:eat)?\s+{ROUND}\s+\d+\s*(?:and|&|-|to)\s*\d+)\s*,\s+(?={_TIMES})", r"\1 ", "Rep rows 1 and 2, 9 more times."),
    row(
        "next|last",
        r"^(\s*)(knit|purl|k|p)\s+(?:the\s+)?next\s+(row|rnd|round)\s*,\s*(?=(?:inc|dec)(?:reas(?:e|ing))?\b)",
        r"\1Next \3: \2, ",
        "Knit next row, inc 6 sts evenly.",
    ),
    row("plain knitting", rf"\b(?:in\s+)?plain\s+knitting\s+for\s+(?={N}\s+{ROUND})", "knitting ", "Continue in plain knitting for 20 rounds."),
    row("knitting ", rf"\b(?:continue|cont|work|go\s+on)\s+knitting\s+(?={N}\s+{ROUND})", "knit ", "Continue in plain knitting for 20 rounds."),
    row(
        "one r|1 r",
        rf"\b(knit|purl|k|p)\s+((?:one|1)\s+row)\s+back{_END}",
        r"\1 \2",
        "Purl one row back.",
    ),
    row("knit up", rf"\bknit\s+up\s+(?={N}\s+{STS})", "pick up and knit ", "Knit up 13 sts along side of heel flap."),
    row(
        "inc r|dec r|increase r|decrease r",
        r"^(\s*)(\d)(?:st|nd|rd|th)\s+(inc|dec|increase|decrease)\.?\s+(row|rnd|round)\s*:",
        r"\1\3 \4 \2:",
        "1st inc row: K2, m1, k to end.",
    ),
    row("*-*", r"\*\s*([^*]+?)\s*\*\s*[,;]?\s*rep(?:eat)?\.?\s+(?:from\s+)?\*\s*-\s*\*\s*(?:the\s+round\s+out|(?:all\s+)?a?round|to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:row|rnd|round))?)", r"*\1; rep from * to end", "*K6, k2tog*, repeat *-* around."),
    row(
        "cut|break",
        rf"((?:^|[.;:])\s*)((?:cut|break)\s+(?:off\s+)?{YARN_A_H})\s*,?\s+(?:and|then)\s+(?=(?:knit|purl|work|cont(?:inue)?|carry|bind|cast|k|p)\b)",
        r"\1\2. ",
        "Break A and knit 2 rounds.",
    ),
    row(
        "continue|cont|carry",
        rf"((?:^|[.;:])\s*)(?:continue|cont|carry\s+on|go\s+on)\s+(?:knitting\s+)?(?:with|in|using)\s+({YARN_A_H})(?:\s+(?:only|alone))?(?=\s*\.?\s*$)",
        r"\1with \2",
        "Break A and continue with B only.",
    ),
    row(
        "slipping",
        rf"(:\s*|^\s*)(knit|purl|k|p)\s*,\s+slipping\s+(?:the\s+)?(?:first|1st)\s+(?:st|stitch){_END}",
        r"\1sl 1, \2 to end",
        "Row 4: Purl, slipping the first stitch.",
    ),
    row(
        "mm|size",
        rf"((?:^|[.:])\s*)((?:cast\s+on|co)\s+{N}\s+{STS})\s+(?:on|with|using)\s+(?:the\s+|a\s+)?(?P<said>(?:circular|double[-\s]pointed|straight|short|long)\s+needles?|dpns?|needles?)\s+(?:size\s+|no\.?\s+)?(\d+(?:\.\d+)?\s*mm)\b",
        r"\1change to \4 needles. \2",
        "Co 36 sts on double pointed needles 2.5 mm.",
        spelt_out=True,
    ),
    row(
        "in cc",
        rf"((?:^|[.:])\s*)(?:then\s+)?((?:work|cont(?:inue)?|knit|purl)\s+(?:for\s+)?(?:{N}\s+(?:more\s+)?|every\s+){ROUND})\s+in\s+(CC\d)(?:\s+(?:only|alone))?\b",
        r"\1with \3, \2",
        "Work 10 rows in CC2.",
    ),
    row("remove it", r"\bmarker\s*,\s*remove\s+it\b", "marker, remove marker", "K to marker, remove it, k to end."),
    row("following marker", r"\bto\s+(?:the\s+)?following\s+marker\b", "to next marker", "K to the following marker, sl m, k to end."),
    row("b/o", r"(?<![\w/])b/o(?![\w/])", "bind off", "B/O."),
    row(
        "pulling|drawing|tightening",
        r"(\b(?:sts|stitches|loops)(?:\s+on\s+(?:the\s+)?needles?)?)\s*,?\s+(?:pulling|drawing|tightening)\s+(?:up\s+|it\s+)*(?:tight(?:ly)?|firmly|up)?(?:\s+to\s+close\s+(?:the\s+)?(?:hole|top|toe|crown|tip))?(?=\s*\.?\s*$)",
        r"\1, pull tight",
        "Draw yarn through remaining sts, pulling tight to close the hole.",
    ),
    said_row("tail|end", rf"\s*,?\s*(?P<said>leaving\s+an?\s+(?:long\s+)?(?:tail|end)\s+(?:of\s+)?(?:about\s+|approx\.?\s+|approximately\s+|roughly\s+)?{LONG}(?:\s+long|\s+in\s+length)?)(?!\s*[a-z])", "Break yarn, leaving a tail about 20 cm long."),
    row("co.", r"(?<![\w-])CO\.\s+(?=\d)", "CO ", "CO. 68 sts.", exact=True),
    row("loose", rf"\b(bind\s+off|cast\s+off|bo)(\s+[^.;]*?)?,\s+loose{_END}", r"\1\2 loosely", "Bind off 24 sts for neck, loose."),
    row("loosely", r"\b(purlwise|knitwise)\s+and\s+loosely\b", r"loosely \1", "Cast off knitwise and loosely."),
    row("one row|a row", r"\b(at\s+(?:both|each)\s+ends?)\s+of\s+(?:one|a|the)\s+row\s+(?=every\s+)", r"\1 ", "Inc 1 st at each end of one row every 2 cm 4 times."),
    row(
        "form|makes",
        rf"((?:^|[.])\s*)((?:these|last)\s+({N}\s+{ROUND})\s+forms?\s+(?:the\s+)?[a-z0-9 ]*?(?:rib(?:bing)?|patt(?:ern)?))\s*[,;]?\s+(?:and\s+)?(?:(?:are|is)\s+)?rep(?:eat(?:ed)?)?\s+(?:them\s+)?(?=(?:a\s+further\s+)?{N}\s+(?:more\s+)?times|until\b|twice|once)",
        r"\1\2. Repeat these \3 ",
        "These 2 rows form rib pattern, repeat 4 more times.",
    ),
    said_row_behind(
        "on rs|on ws|on right|on wrong",
        r"\b(rev(?:erse)?\.?\s+st(?:\.?[\s-]?st|ockinette(?:\s+st(?:itch)?)?|ocking\s+st(?:itch)?)\.?)\s*\(\s*(?P<said>(?:purl|p)\s+(?:on\s+)?(?:the\s+)?(?:rs|right\s+side)\s*,?\s*(?:and\s+)?(?:knit|k)\s+(?:on\s+)?(?:the\s+)?(?:ws|wrong\s+side))\s*\)",
        "Work 3 rows in rev st st (p on RS, k on WS).",
    ),
    said_row_behind(
        "you will have|you'll have|you have just",
        r"((?:^|[.!])\s*)(?P<said>you(?:'ll|\s+will|\s+should)?\s+(?:have\s+)?(?:just\s+)?(?:have\s+)?(?:just\s+)?(?:completed|worked|finished|ended\s+with)\s+(?:an?\s+)?(?:(?:round|rnd|row)\s+\d+|(?:rs|ws|right[-\s]side|wrong[-\s]side)\s+row)(?:\s+of\s+(?:the\s+)?(?:chart|pattern)(?:\s+[a-z])?)?)\s*(?=\.|$)",
        "You will have just completed row 12 of the chart.",
    ),
    row(
        "remain|left|rem",
        rf"\s*,?\s+(?:so\s+that|so)\s+({N}\s+{STS})\s+(?:rem(?:ain)?|are\s+left|remain\s+on\s+the\s+needles?)(?=\s*\.?\s*$)",
        r". \1",
        "Cast off 7 sts at the beg of the next 4 rows, so that 22 sts remain.",
    ),
    row(
        "leaving",
        rf"(\b{ROUND}|\btimes|\bend)\s*,\s+leaving\s+({N}\s+{STS})(?:\s+on\s+(?:the\s+)?needles?)?(?=\s*\.?\s*$)",
        r"\1. \2",
        "Bind off 7 sts at beg of next 4 rows, leaving 22 sts.",
    ),
    row(
        "altogether|in all|in total",
        rf"({_TIMES}|{N}\s+(?:more\s+)?{ROUND})\s*,\s+(?:for|making)\s+(?:a\s+total\s+of\s+)?({N}\s+{ROUND})\s+(?:altogether|in\s+all|in\s+total)(?=\s*\.?\s*$)",
        r"\1. \2 in all",
        "Repeat the last 2 rnds three times more, for 8 rnds altogether.",
    ),
    row(
        "in all|in total",
        rf"({_TIMES})\s*\(\s*({N})\s+(?:rib|ribbed|garter|moss|seed|patt|pattern)\s+({ROUND})\s+(?:in\s+all|in\s+total)\s*\)(?=\s*\.?\s*$)",
        r"\1. \2 \3 in all",
        "Rep last 2 rows 2 times more (6 rib rows in total).",
    ),
    row(
        "altogether",
        rf"\b({N}\s+times)\s+altogether\b",
        r"\1 in total",
        "Work rows 1-4 5 times altogether.",
    ),
    said_row_behind(
        "i.e|that is",
        rf"({LONG}|{N}\s+{ROUND}|{N}\s+times)\s*(?:,\s*|\()(?P<said>(?:i\.?\s?e\.?|that\s+is)\s*,?\s+(?:about\s+|approx(?:imately|\.)?\s+)?(?:{N}\s+{ROUND}|{LONG}))\s*\)?(?=\s*[.,;]?\s*$)",
        "Work in k2, p2 rib for 5 cm, i.e. about 16 rounds.",
    ),
    said_row(
        "do not|don't",
        r"\s*\(\s*(?P<said>(?:do\s+not|don't)\s+(?:cut|break|fasten\s+off)(?:\s+off)?(?:\s+the)?\s+(?:yarn|wool|(?-i:MC|CC\d?|[A-H])))\s*\)",
        "With B (do not cut A), knit 2 rounds.",
    ),
)  # fmt: skip
"""The rows that are tried before others, in the order tried."""

LATE_FILLERS: tuple[Synonym, ...] = (
    row(
        "throughout",
        rf"\b((?:work|cont(?:inue)?|proceed|knit)\s+(?:straight\s+|even\s+)?in\s+{_FABRIC})\s+throughout(?=(?:\s*\([^)]*\))?\s*,?\s+(?:for|until|till)\b)",
        r"\1",
        "Work in k1, p1 rib throughout for 5 cm.",
    ),
    said_row_behind(
        "without|with no",
        rf"\b({_PLAIN}\s+{N}\s+(?:more\s+)?{ROUND})\s*,?\s+(?P<said>(?:without|with\s+no)\s+(?:any\s+|further\s+)*{_SHAPING}){_END}",
        "Knit 1 round without decreases.",
    ),
    row("straight up", r"\bstraight\s+up(?:wards)?\b", "straight", "Knit straight up in stockinette stitch for 5 cm."),
    row("distribut|spread|divided|spaced", r"\bevenly\s+(?:distributed|spread|divided|spaced)(?:\s+out)?(?=\s*[.,;=)]|\s*$)", "evenly", "Decrease 4 sts evenly distributed."),
    row("the next", r"\b(on|in|over|of|for)\s+the\s+next\s+(?=(?:\d|two|three|four|five|six|seven|eight|nine|ten)\b)", r"\1 next ", "Dec 1 st at neck edge on the next 6 rows."),
    row(
        "knit",
        rf"\bknit\s+(?:straight\s+|even\s+)?in\s+(?={_FABRIC}\s+(?:for|until)\b)",
        "work in ",
        "Knit straight in stockinette stitch for 5 cm.",
    ),
    row(
        "in the r",
        r"\b(knit|purl)\s+(?:straight|even|plain|on)?\s*in\s+(?:the\s+)?(?:round|rnd|rounds|rnds)\s*,?\s+(?:even\s*,\s*)?(?=(?:for|until)\b)",
        r"\1 ",
        "Knit straight in the round for 12 cm.",
    ),
    row(
        "rib k|rib p|rib (|ribbing k|ribbing p|ribbing (",
        r"\b((?:work|knit|cont(?:inue)?)\s+)(?:in\s+)?rib(?:bing)?\s*\(?\s*([kp]\s?\d\s*,?\s*[kp]\s?\d)\s*\)?(?:\s+(?:a?round|all\s+round|across))?(?=\s+(?:for|until)\b)",
        r"\1in \2 rib",
        "Work rib k2, p2 around until piece measures 4 cm.",
    ),
    row("nd row|rd row|st row|th row|nd r|rd r", r"\b(end(?:ing)?\s+with)\s+(?:a\s+|the\s+)?(\d+)(?:st|nd|rd|th)\s+(row|rnd|round)(?=\s*[.,;]|\s*$)", r"\1 \3 \2", "Rep rows 2 and 3 until piece measures 9 cm, ending with 3rd row."),
    row(
        "these sts|those sts",
        rf"\b((?:work|cont(?:inue)?|knit)(?:\s+(?:straight|even)|\s+in\s+{_FABRIC})?)\s+(?P<said>on\s+(?:these|those)\s+(?:{N}\s+)?{STS}(?:\s+only)?)\s+(?=(?:for|until)\b)",
        r"\1 ",
        "Continue on these sts until sleeve measures 24 cm.",
        spelt_out=True,
    ),
    row(
        "x",
        r"\b(?:(\d)\s?x\s?(\d)|(\d)\s?x\s?(\d))\s+rib(?:bing)?\s*\(\s*(k\s?(?:\1|\4)\s*,?\s*p\s?(?:\2|\3))(?:\s+(?:all\s+round|around|to\s+end|across))?\s*\)",
        r"\5 rib",
        "Work 8 rnds in 1x1 rib (k1, p1 all round).",
    ),
)  # fmt: skip
"""The rows that are tried on what others leave, in the order tried."""
