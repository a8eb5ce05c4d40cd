"""One form for what stands in every line: lists of sizes, lengths, a second unit, the row a length ends with. No I/O.

These rows come before all that look at whole sentences, so that a sentence known with one dress of a list or an
ending is known with each of them. They change how something is written, never what it says.
"""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import ROUND, SIDE, STS, Synonym, row

_F = r"(?:\d+(?:\.\d+)?(?:\s?[¼½¾⅛⅜⅝⅞]|[\s-][1-7]/[248])?|[¼½¾⅛⅜⅝⅞])"
"""One number, as `7`, `7.5`, `7½`, `7-1/2`."""
_UNIT = r"(?:cms?\b|mm\b|ins?\b|inch(?:es)?\b|\"|”|″)"
COUNTED = rf"(?:(?:(?:new|band|edge|more)\s+)?{STS}|{ROUND}|(?:more\s+)?times\b|ridges?\b|repeats?\b|{_UNIT})"
"""What a list of sizes is of."""
_COMMAS = rf"{_F}(?:\s*,\s*{_F})*"
_LISTED = rf"{_F}(?:\s*[(\[]\s*{_COMMAS}\s*[)\]])?"

_JOINED = r"(\bjoin\b[^.;]*?)\s*[,;]?\s*(?:and\s+)?(?:placing|place|pm|marking)\b(?:\s+an?)?(?:\s+(?:unique|different|contrasting|distinctive|special|colou?red)(?:-colou?red)?(?=\s))?(?:\s+(?:marker|m)\b)?"
_STARTED = r"(?:beg(?:in(?:ning)?)?\.?|start)"

_FOR_BEG = rf"(?:for|to\s+mark|as)\s+(?:the\s+)?(?:new\s+)?(?:bor\b|{_STARTED}\s+of\s+(?:the\s+)?{ROUND})"

ONE_FORM: tuple[Synonym, ...] = (
    # Before what a marker is placed for is put in one form, or the bracket behind it stands in the way.
    said_row_behind("(", rf"(\b(?:pm|place\s+(?:(?:a|the|your)\s+)?markers?)(?:\s+{_FOR_BEG})?)\s*\(\s*(?P<said>(?:(?:use|with|in|a|the|of|your|this|one|is)\s+)*(?:unique|different|contrasting|special|odd|other)(?:[-\s]colou?r(?:ed)?)?(?:\s+(?:marker|one|colou?r|kind|from\s+the\s+(?:others|rest)))*)\s*!?\s*\)", "K20, pm, k20, pm for BOR (unique marker!)."),
    row("arm edge|arm-edge", r"\barm[-\s]edge\b", "armhole edge", "Dec 1 st at arm edge of next 4 rows."),
    row("last of", r"\b(?:on|in)\s+the\s+last\s+of\s+(?:these|those)(?:\s+(?:rows|rounds|rnds))?\s*,?\s+(?=(?:inc|dec))", "on the last round ", "Knit 8 rounds. In the last of these decrease 4 sts evenly."),
    # --- short words ---
    row("b.|c.", r"(?<![\w.])([bc])\.\s?o\.?(?=\s)", r"\1o", "B.O. 4 sts at beg of next 2 rows."),
    # --- lists of sizes ---
    row("{", rf"(?<=[\d¼½¾⅛⅜⅝⅞\s])\{{(?=\s*{_F}(?:\s*[,;:/-]\s*{_F})*\s*\}})", "(", "Work even until armhole measures 7½ {8, 8½}\"."),
    row("}", rf"(\(\s*{_F}(?:\s*[,;:/-]\s*{_F})*)\s*\}}", r"\1)", "Work even until armhole measures 7½ {8, 8½}\"."),
    row(
        "-|:|/|,",
        rf"(?<![\w(\[,.:/-])(?<![\d(\[,.:/-]\s)(?<!needle\s)(?<!ndl\s)({_F})\s*([-:/,])\s*({_F}(?:\s*\2\s*{_F})+)(?=\s*{_UNIT})",
        r"\1 (\3)",
        "Work even until armhole measures 18-19-20 cm.",
    ),
    row(
        "-|/",
        rf"(?<![\w(\[/.-])(?<![\d(\[,.:/-]\s)({_F})\s*([-/])\s*({_F}(?:\s*\2\s*{_F})+)(?=\s+{COUNTED})",
        r"\1 (\3)",
        "Cast on 64-72-80 sts.",
    ),
    row("/", r"\b([kp])\s?(\d+)\s?/\s?(\d+(?:/\d+)+)(?![\d/])", r"\1\2 (\3)", "K10/12/14, p2, k to end."),
    row("-", r"(\d)\s*-\s*(?=[(\[]\s*\d+(?:\s*[-,]\s*\d+)*\s*[)\]])", r"\1 ", "Cast on 64-(72-80) sts."),
    row(
        "-|:|/|;",
        rf"({_F}\s*[(\[]\s*{_COMMAS})\s*([-:;/])\s*(?={_F}(?:\s*\2\s*{_F})*\s*[)\]])",
        r"\1, ",
        "Work even until armhole measures 7½ (8-8½)\".",
        again=True,
    ),
    row(
        ")|]",
        rf"({_F})\s*[(\[]\s*({_COMMAS})\s*[)\]]\s*,?\s*({_COMMAS})(?=(?:\s*[(\[]\s*{_COMMAS}\s*[)\]]\s*(?:,\s*)?(?:{_COMMAS})?)*\s*{_UNIT})",
        r"\1 (\2, \3)",
        "Work even until armhole measures 18 [19] 20 cm.",
        again=True,
    ),
    row(
        ")|]",
        rf"({_F}\s*[(\[]\s*{_COMMAS})\s*[)\]]\s*[(\[]\s*(?={_COMMAS}\s*[)\]])",
        r"\1, ",
        "Work even until armhole measures 18 [19] [20] cm.",
        again=True,
    ),
    # --- lengths ---
    row("\"|”|″", r"(?<=[\d¼½¾⅛⅜⅝⅞)\]])\s*[\"”″](?=[\s,.;:)\]\[(/])(?!\.?\s*$|\s*\(\s*in)", " in", "Work even until armhole measures 7½ (8, 8½)\", ending on a purl row."),
    row("inch|ins", r"(?<=[\d¼½¾⅛⅜⅝⅞)\]])\s*(?:inch(?:es)?|ins)\b(?!\.?\s*$)\.?", " in", "Work even until armhole measures 7½ (8, 8½) inches, ending on a purl row."),
    *(
        row(
            second,
            rf"({_LISTED}\s*{first})\s*(?:[(\[]\s*({_LISTED}\s*{second})\b\.?\s*[)\]]|[/=,]\s*({_LISTED}\s*{second})\b\.?)(?!\s*(?:long\b|circ|needle|tail))",
            r"\1 [\2\3]",
            f"Work {one} {first} / {other} {second} in st st, ending with a purl row.",
        )
        for first, second, one, other in (("in", "cm", 4, 10), ("cm", "in", 10, 4))
    ),
    # --- what is taken up, and where stitches wait ---
    row("switch", r"(?:\bswitch|^switching)\s+(?:back\s+)?to\s+(?=[^.;,]{0,30}\bneedles?\b)", "change to ", "Switch to larger needles and work in st st for 5 cm."),
    row(
        "waste|scrap|contrast|spare",
        r"\b(?:on|onto|on\s+to|to)\s+(?:an?\s+|some\s+)?(?:(?:piece|length|strand|bit|spare\s+length)\s+of\s+)?(?:waste|scrap|spare|contrasting)\s+yarn\b",
        "on waste yarn",
        "Place next 20 sts on a length of waste yarn.",
    ),
    row("page", r"(\bchart\s+[\w]+|\bchart)\s*\(\s*(?:see\s+)?(?:on\s+)?(?:page|pg\.?|p\.?)\s*\d+\s*\)", r"\1", "Work Rnds 1-20 of Chart A (page 4)."),
    row("from", rf"(\b{ROUND}\s+\d+(?:\s*(?:-|to|through)\s*\d+)?\s+)from\s+(?=(?:the\s+)?(?:\w+\s+)?chart\b)", r"\1of ", "Work rnds 1-20 from Chart A."),
    row("follow|knit all", rf"\b(?:follow\s+(?=(?:all\s+\d+\s+)?{ROUND}\b[^.;]*\bchart\b)|knit\s+(?=all\s+\d+\s+{ROUND}\s+of\b[^.;]*\bchart\b))", "work ", "Follow rows 1-20 of Chart A."),
    row("even|straight", rf"\b(?:work|cont(?:inue)?)\s+(?:even|straight)\s+({_LISTED}|(?:one|two|three|four|five|six|seven|eight|nine|ten))\s+((?:more\s+)?{ROUND})(?:\s+(?:even|straight|without\s+shaping))?", r"work \1 \2 even", "Work even 4 rounds."),
    row("across", r"\b(knit|purl)\s+across\s*,\s*(?=(?:inc|dec)(?:reas)?)", r"\1, ", "Next row: Knit across, inc 6 sts evenly."),
    row("rib", r"[(\[]\s*(k\s?\d+)\s*[.,]?\s*(p\s?\d+)\s*[)\]]\s*(?=rib)", r"\1, \2 ", "Work 8 rows in [K2, P2] rib."),
    row("turn;", r"\bturn\s*;\s*(?=leav)", "turn, ", "Next row: K20, turn; leave rem sts unworked."),
    row("as given|as worked|as described", r"\bas\s+(?:given|worked|described)\s+for\s+(?=(?:the\s+)?(?:back|front|left|right|first|second|sleeve|body)\b)", "as for ", "Work as given for Back to armhole, ending with a WS row."),
    row("w+t|w&t", r"\bw\s?[+]\s?t\b", "w&t", "Next row: K20, W+T."),
    row("evenly", r"\bevenly\s+(?:over|along)\s+(?:the\s+)?(?=row|rnd|round)", "evenly across ", "Knit, inc 6 sts evenly over row."),
    row(
        "across|rib|patt",
        r"(^\s*|:\s*)(?:work\s+across|(?:work\s+in\s+)?(rib|patt(?:ern)?)(?:\s+to\s+end|\s+across)?)\s*,\s*(?=(?:inc|dec)(?:reas\w+|'?ing)?\b\.?\s+[\d(\[\s,)\]]+\s*(?:sts|stitches)\s+evenly)",
        r"\1work 1 row \2, ",
        "Next row: Rib to end, inc 6 sts evenly.",
    ),
    row("work 1 row rib|work 1 row patt", r"\bwork\s+1\s+row\s+(?=(?:rib|patt))", "work 1 row in ", "Next row: Rib to end, inc 6 sts evenly."),
    # --- where rows are shaped ---
    row(
        "beg|start",
        rf"(\d[\d\s,()\[\]]*\s(?:sts|stitches|st|stitch))\s+(?:at\s+)?(?:the\s+)?{_STARTED}\s+(?:of\s+)?(?:the\s+)?(?=(?:next|following|foll)\b)",
        r"\1 at beg of ",
        "Bind off 4 sts beg next 2 rows.",
    ),
    row(
        "then|and|;",
        rf"(\bat\s+beg\s+of\s+next\s+\d+\s+rows)\s*[,;]?\s*(?:and\s+)?(?:then\s+|and\s+)?({_LISTED}\s+(?:sts|stitches)\s+at\s+beg\s+of\s+)(?:the\s+)?(?:following|next|foll)(?=\s+\d+\s+rows)",
        r"\1, then \2foll",
        "Bind off 5 sts at beg of next 4 rows and 6 sts at beg of following 2 rows.",
    ),
    row("the next", r"\b((?:each|both)\s+(?:ends?|sides?|edges?))\s+(?:of|on|at)\s+the\s+(?=next\b)", r"\1 of ", "Dec 1 st at each end of the next and every foll 4th row until 62 sts rem."),
    row("edge|side", r"\b(1\s+st(?:itch)?)\s+(?:at\s+)?each\s+(?:edge|side)(?=\s+(?:of\s+)?(?:the\s+)?(?:next|every|foll|\d))", r"\1 at each end", "Dec 1 st at each edge of next 3 rows."),
    # --- the round begun ---
    row("without", r"\s*,?\s*without\s+twist(?:ing)?(?:\s+(?:the\s+)?(?:sts|stitches))?", ", being careful not to twist", "Join in the round without twisting."),
    row(
        "plac|pm|marking",
        rf"{_JOINED}\s+(?:(?:for|at|to\s+mark|to\s+indicate)\s+)?(?:the\s+)?(bor|(?:beg(?:inning)?|start)(?:\s+of\s+(?:the\s+)?(?:rnd|round)s?)?)(?=\s*[.;]|\s*$)",
        r"\1. place marker for \2",
        "Join in the round, placing a marker at beg of rnd.",
    ),
    row("plac|pm", rf"{_JOINED}(?=\s*[.;]|\s*$)", r"\1. place marker", "Join in the round and pm."),
    # --- a count at the end ---
    row("sts.]|sts ]|sts]|stitches]", rf"[(\[]\s*({_F})\s*[:,/-]\s*({_F}(?:\s*[:,/-]\s*{_F})*)\s+(?:sts|stitches)\s*\.?\s*[)\]](?=\s*\.?\s*$)", r". \1 (\2) sts", "Bind off 4 sts at beg of next 2 rows. [70: 76: 82 sts.]"),
    row("needle", rf"(?<=[.)\]]\s)({_LISTED}\s+(?:sts|stitches))\s+now\s+on\s+(?:the\s+)?needles?", r"\1", "Bind off 4 sts at beg of next 2 rows. 70 sts now on needle."),
    row(
        "st",
        rf"(\b(?:times?|more|once|twice|evenly(?:\s+(?:around|across|spaced)(?:\s+row)?)?|end|around|across|{ROUND}))\s*(?:[,=]\s*|(?=[(\[]))[(\[]?\s*(?:=\s*)?({_LISTED}\s+(?:sts|stitches))\s*[)\]]?(?=\s*\.?\s*$)",
        r"\1. \2",
        "Rep dec rnd every 6th rnd 5 times, 104 sts.",
    ),
    # --- the row that a length ends with ---
    *(
        faced
        for side, facing in (("WS", r"(?:rs|right[-\s]side)"), ("RS", r"(?:ws|wrong[-\s]side)"))
        for faced in (
            row(
                "ready",
                rf"(?<=[\w)\]])\s*[,;]?\s*(?:and\s+)?(?:ending|finishing)\s+ready\s+(?:to\s+(?:begin|start|work)|for)\s+(?:an?|the\s+next)\s+{facing}\s+row\b",
                f", ending with a {side} row",
                f"Work even for 5 cm, ending ready for a {'RS' if side == 'WS' else 'WS'} row.",
            ),
            row(
                "facing",
                rf"(?<=[\w)\]])\s*[,;]?\s*(?:and\s+)?(?:(?:end(?:ing)?|finish(?:ing)?)\s+)?(?:(?:with|on)\s+)?(?:the\s+)?{facing}\s+(?:of\s+work\s+)?facing(?:\s+you)?\s+for\s+(?:the\s+)?next\s+row\b",
                f", ending with a {side} row",
                f"Work even for 5 cm, with {'RS' if side == 'WS' else 'WS'} facing for next row.",
            ),
        )
    ),
    row(
        "end|finish",
        rf"(?<=[\w)\]])\s*[,;]?\s*(?:and\s+|then\s+|thus\s+|so\s+|thereby\s+|(?:but\s+)?here\s+)?\b(?:end(?:s|ing)?|finish(?:ing)?)\s+(?:(?:with|on|after|by\s+working|having\s+(?:just\s+)?worked)\s+)?(?:an?\s+|the\s+)?({SIDE}|purl|p|knit|k)\s+(?:row|rnd)\b",
        r", ending with a \1 row",
        "Work even for 5 cm, end WS row.",
    ),
    # --- another part, and how it ends ---
    row(
        "as for|as given|same as|as back|as front",
        rf"(\b(?:as\s+(?:given\s+)?for|(?:the\s+)?same\s+as|as)\s+(?:the\s+)?\w+\s+to\s+[^.;,]*?),\s+ending\s+with\s+a\s+({SIDE}|purl|p|knit|k)\s+row\b",
        r"\1. ends with a \2 row",
        "Work as for back to armhole, ending with a WS row.",
    ),
)  # fmt: skip
"""The rows, in the order tried."""
