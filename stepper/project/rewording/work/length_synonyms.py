"""Other wordings for how long something is worked and what follows: lengths, counts, stripes. No I/O."""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import END, LONG, OFF, ROUND, STS, N, Synonym, row

_STOCKINETTE = r"(?:st\s+st|stockinette(?:\s+st(?:itch)?)?|stocking(?:\s+st(?:itch)?)?)"
_YARN = r"(?:MC|CC\d?|[A-Z])"
_ENDING = r"(?:end|ending|finish|finishing)\s+(?:with|on|after)"
_THEN = r"(?:cast\s+off|bind\s+off|bo\b|break\b|cut\b|work\b|knit\b|purl\b|rep\b|repeat\b|dec\b|inc\b|change\b|join\b)"
_LASTED = rf"(?:{ROUND}|times(?:\s+more)?|more|straight|even|plain|needles?|rib(?:bing)?|st|chart\s+\w+|armholes?|underarms?|neck|shoulders?)"
LENGTHS: tuple[Synonym, ...] = (
    # --- fabrics ---
    row("st.|s.s.|s. s.", r"\bst\.\s*st\b\.?|\bs\.\s?s\.", "st st", "Work in St. St. until piece measures 4 cm."),
    said_row_behind(
        "(",
        rf"(?<!rev )(?<!rev\. )(?<!reverse )\b({_STOCKINETTE})\s*\((?P<said>(?:(?:k|knit)\s+(?:1|one)\s+row\s*,?\s*(?:p|purl)\s+(?:1|one)\s+row"
        r"|(?:1|one)\s+row\s+(?:k|knit)\s*,\s*(?:1|one)\s+row\s+(?:p|purl)|(?:k|knit)\s+every\s+(?:rnd|round)"
        r"|(?:k|knit)\s+on\s+(?:the\s+)?rs\s*,\s*(?:p|purl)\s+on\s+(?:the\s+)?ws))\.?\s*\)",
        "Work 6 rows in stocking stitch (k 1 row, p 1 row).",
    ),
    row(
        "knitting",
        rf"\b(work\s+{N}\s+{ROUND})\s*,\s*knitting\s+(?:the\s+)?rs\s+rows\s+and\s+purling\s+(?:the\s+)?ws\s+rows\b",
        r"\1 in stockinette",
        "Work 6 rows, knitting RS rows and purling WS rows.",
    ),
    *(
        row(
            "row",
            rf"^(\s*)((?:work\s+)?(?:{N}\s+{ROUND}\s+)?(?:in\s+)?{_STOCKINETTE})\s*,\s*(?:beg(?:inning|in)?|start(?:ing)?)\s+(?:with|on)\s+an?\s+(?:{told})\s+row"
            r"(?:(?=\s*\.?\s*$)|\s*,(?=\s*(?:for|until)\b))",
            rf"\1next row ({side}): \2",
            f"Work in st st, beg with a {how} row, for 10 rows.",
        )
        for side, how, told in (("rs", "k", "rs|k|knit"), ("ws", "p", "ws|p|purl"))
    ),
    row(
        "row|rnd|round",
        rf"\b((?:knit|purl)\s+{N}\s+{ROUND})\s+and\s+(?:then\s+)?(?=(?:knit|purl)\s+{N}\s+{ROUND})",
        r"\1. ",
        "Knit 2 rounds and then purl 2 rounds.",
    ),
    said_row_behind(
        "(knit",
        r"(\b(?:as\s+(?:set|established)|patt(?:ern)?))\s*\(\s*(?P<said>knit(?:ting)?\s+the\s+knits?(?:\s+(?:sts|stitches))?\s+and\s+purl(?:ing)?\s+the\s+purls?(?:\s+(?:sts|stitches))?)\s*\)",
        "Work in patt as set (knit the knits and purl the purls).",
    ),
    # --- lengths ---
    row(
        "k ",
        r"((?:^|[.:])\s*)k\s+(?=\d[\d\s./¼½¾⅛⅜⅝⅞]*(?:[(\[][^)\]]*[)\]]\s*)?(?:cm\b|\"|inch(?:es)?\b|in(?=\s*[.;]|\s*$)))",
        r"\1knit for ",
        "K 5 cm.",
    ),
    row("shaping", r"\bwithout\s+(?:further\s+|any\s+)?shaping\b", "even", "Work 4 rounds without shaping."),
    row("total", r"\b(measures\s+)a\s+total\s+of\s+", r"\1", "Knit until piece measures a total of 9 cm."),
    row("long", rf"\b(is\s+(?:now\s+)?{LONG}(?:\s*[/(\[]\s*{LONG}\s*[)\]]?)?)\s+long\b(?:\s*,?\s+(?:measured|measuring)(?=\s+from\b))?", r"\1", "Work in rib until work is 8 cm long."),
    row(
        "in all|in total",
        rf"\b(measures\s+{LONG})\s+in\s+(?:all|total)\b",
        r"\1 from cast-on edge",
        "Work straight until piece measures 9 cm in all.",
    ),
    row(
        "co edge",
        r"\bfrom\s+(?:the\s+)?co(?:\s+edge)?\b",
        "from cast-on edge",
        "Knit until piece measures 6 cm from CO edge.",
    ),
    said_row_behind(
        "at|in",
        r"\b(from\s+(?:the\s+)?cast-on(?:\s+edge)?)\s+(?P<said>(?:at|in)\s+(?:the\s+)?(?:(?:cent(?:er|re)|middle)\s+(?:of\s+(?:the\s+)?)?)?(?:front|back|forehead))\b",
        "Work until piece measures 8 cm from cast-on edge at centre front.",
    ),
    row(
        "neckband|collar",
        rf"(\bmeasures?\s+{LONG})\s*,?\s+(?P<said>(?:(?:measured|measuring)\s+)?(?:at\s+|in\s+|along\s+)?(?:the\s+)?(?:mid|middle|cent(?:er|re))[-\s](?:of\s+(?:the\s+)?)?(?:front|back)\s*,?\s+(?:(?:from\s+)?below|under|from)\s+(?:the\s+)?(neckband|collar))\b",
        r"\1 from end of \3",
        "Work until yoke measures 20 cm, mid front, below the neckband.",
        spelt_out=True,
    ),
    row(
        "below|under",
        rf"(\bmeasures?\s+{LONG})\s*,?\s+(?:(?:measured|measuring)\s+)?(?:from\s+)?(?:below|under)\s+(?:the\s+)?(neckband|collar)\b",
        r"\1 from end of \2",
        "Work until yoke measures 20 cm below the neckband.",
    ),
    row("another", rf"\bfor\s+another\s+(?={LONG}|{N}\s+{ROUND})", "for ", "Knit for another 3 cm."),
    row(
        "further|another",
        rf"\b(knit|purl|work|work\s+even)\s+(?:a\s+further|another)\s+(?={LONG})",
        r"\1 for ",
        "Knit a further 3 cm.",
    ),
    row("more", r"(\d[\d./\s¼½¾]*)\s+more\s+(inches|cm|in)\b", r"\1 \2 more", "Work 2 more inches."),
    row(
        "more",
        rf"\b(knit|purl|work)\s+({LONG})\s+more\b",
        r"\1 for \2",
        "Knit 3 cm more.",
    ),
    row(
        "same|matches",
        r"\b(until\s+(?:the\s+)?(?:[a-z]+\s+){1,2}?)(?:matches|(?:is|measures)\s+(?:the\s+)?same(?:\s+length)?\s+as)\s+(?=[a-z ]+\s+to\b)",
        r"\1measures same as ",
        "Work even until left sleeve is the same length as right sleeve to underarm.",
    ),
    # --- endings ---
    row(
        "ending",
        rf",\s*((?:inc|dec)(?:reas(?:e|ing))?\.?\s+{N}\s+{STS}\s+evenly(?:\s+(?:across|in|on|over)\s+(?:the\s+)?last\s+row)?)\s*,?\s*(?:and\s+)?(ending\s+with\s+(?:a\s+)?(?:rs|ws)(?:\s+row)?)(?=\s*[.]|\s*$)",
        r", \2, \1",
        "Work in rib for 6 cm, inc 8 sts evenly on last row and ending with a WS row.",
    ),
    *(
        ended
        for side, facing, how in (("ws", r"rs|right\s+side", "p|purl"), ("rs", r"ws|wrong\s+side", "k|knit"))
        for ended in (
            row(
                "facing",
                rf",?\s*(?:end|ending|finish|finishing)\s+(?:with|on)\s+(?:the\s+)?(?:{facing})\s+facing(?:\s+for\s+(?:the\s+)?next\s+row)?\b",
                f", ending with a {side} row",
                f"Work even until piece measures 4 cm, ending with {facing[:2].upper()} facing.",
            ),
            row(
                "row",
                rf"(\bin\s+{_STOCKINETTE}\s[^.;]*?),?\s*{_ENDING}\s+an?\s+(?:{how})\s+row\b",
                rf"\1, ending with a {side} row",
                f"Cont in st st until work measures 4 cm, ending with a {how[0]} row.",
            ),
        )
    ),
    row(
        "row",
        r"\b(ending\s+(?:with|after|on)\s+)an?\s+(\d+)(?:st|nd|rd|th)\s+(row|rnd|round)\b",
        r"\1\3 \2",
        "Rep rows 1-4 until piece measures 4 cm, ending with a 4th row.",
    ),
    said_row(
        "ready",
        r",\s*(?P<said>ready\s+to\s+(?:work|start|begin)\s+an?\s+(?:rs|ws)\s+row)\b",
        "Work even for 2 cm, ending with a WS row, ready to work a RS row.",
    ),
    # --- what follows ---
    row(
        "then",
        rf"(\b{_LASTED})\s*,?\s*(?:and\s+)?then\s+(?={_THEN})",
        r"\1. ",
        "Rep last 2 rows 3 times more, then knit 1 row.",
    ),
    row(
        "then",
        rf"(\b(?:in|with)\s+(?-i:{_YARN}))\s*,?\s*(?:and\s+)?then\s+(?={_THEN})",
        r"\1. ",
        "Knit 2 rounds in CC, then change to A and knit 2 rounds.",
    ),
    row(
        "knit",
        rf"\b(work\s+{N}\s+{ROUND})\s*,\s*knitting\s+(?:the\s+)?knits?(?:\s+{STS})?\s+and\s+purling\s+(?:the\s+)?purls?(?:\s+{STS})?(?=\s*[.]|\s*$)",
        r"\1 in pattern",
        "Work 3 rounds, knitting the knit sts and purling the purl sts.",
    ),
    row(
        "times",
        rf"(?:^|(?<=[.]))\s*[(\[]?\s*((?:knit|purl|k|p)\s*(?:1|one)\s+{ROUND})\s*,\s*(?:then\s+)?((?:knit|purl|k|p)\s*(?:1|one)\s+{ROUND})\s*[)\]]?\s*,?\s*({N}\s+times)(?=\s*[.]|\s*$)",
        r"\1. \2. rep last 2 rows \3 in all",
        "K 1 row, P 1 row, 3 times.",
    ),
    row(
        "beg",
        rf"\b((bo|{OFF})\s+{N}\s+{STS}\s+at\s+(?:the\s+)?beg(?:inning)?\s+of\s+(?:the\s+)?(?:next|foll(?:owing)?)\s+{N}\s+rows)\s*"
        rf"(?:,?\s*then|\s+and|[,;])\s+(?={N}\s+{STS}\s+at\s+(?:the\s+)?beg)",
        r"\1. \2 ",
        "Bind off 6 sts at beg of next 2 rows, then 4 sts at beg of foll 4 rows.",
        again=True,
    ),
    row(
        "these|those",
        rf"\bwork\s+(?:these|those)\s+({N}\s+{ROUND})\s+(?=a\s+total|{N}\s+times\s+in\s+all)",
        r"rep last \1 ",
        "Work these 6 rnds a total of 3 times.",
    ),
    row(
        "these|those",
        rf"(?:(?<=^)|(?<=[.;]))(\s*)work\s+(?:these|those)\s+({N}\s+{ROUND})\s+(?={N}\s+times|once|twice|{N}\s+more\s+times)",
        r"\1work last \2 ",
        "Work these 2 rows 16 times.",
    ),
    row(
        "and",
        rf"\b((?:cast\s+on|co)\s+{N}\s+{STS})\s*,?\s*and\s+(?=(?:work|knit|purl)\s+{N}\s+rows\b)",
        r"\1. work flat. ",
        "Cast on 20 sts and work 4 rows in garter st.",
    ),
    row(
        "and",
        rf"\b((?:cast\s+on|co)\s+{N}\s+{STS})\s*,?\s*and\s+(?=(?:work|knit|purl)\b(?!\s+{N}\s+rows?\b))",
        r"\1. ",
        "Cast on 20 sts and knit 2 rounds.",
    ),
    row(
        "evenly",
        rf"\b((?:inc|dec)\w*\s+{N}\s+{STS}\s+evenly)\s+(?:across|over|on|in)\s+(?:the\s+)?next\s+{ROUND}",
        r"\1",
        "Dec 6 sts evenly across next row.",
    ),
    row("k,|k ,", r"\bk\s*,\s*(?=(?:inc|dec)\w*\s)", "knit, ", "K, inc 56 sts evenly around."),
    row("p,|p ,", r"\bp\s*,\s*(?=(?:inc|dec)\w*\s)", "purl, ", "P, dec 6 sts evenly across row."),
    row(
        ")th|]th",
        rf"\bevery\s+(\d+\s*[(\[][\d\s,;]+[)\]])th\s+(?={ROUND})",
        r"every \1 ",
        "Rep dec rnd every 4 (3, 2)th rnd 3 times.",
    ),
    # --- counts ---
    row(
        "inc|dec",
        rf"\(\s*({N})\s+(inc|dec)(?:reased|'d)?\s*\)",
        r"(\1 sts \2)",
        "K1, m1l, k18, m1r, k1. (2 inc)",
    ),
    row(
        "inc|dec",
        rf"\b({N}\s+{STS}\s+(?:inc|dec)(?:reased|'d)?)\s*,\s*(?={N}\s+{STS})",
        r"\1. ",
        "*K3, k2tog; rep from * to end. 8 sts dec'd, 32 sts rem.",
    ),
    row(
        "inc|dec",
        rf"\b({N}\s+{STS}\s+(?:inc|dec)(?:reased|'d)?)\s+(?:each|every|per)\s+{ROUND}{END}",
        r"\1",
        "K1, m1l, k18, m1r, k1. 2 sts inc'd each round.",
    ),
    row(
        "have|there|total",
        rf"((?:^|[.!])\s*)(?:there\s+(?:are|should\s+be)(?:\s+now)?|(?:now\s+)?you\s+(?:(?:should|will)\s+)?(?:now\s+)?have|total)\s+(?={N}\s+{STS})",
        r"\1",
        "*K3, k2tog; rep from * to end. You should have 32 sts.",
    ),
    row(
        "left",
        rf"((?:^|[.!])\s*{N}\s+{STS})\s+left(?=\s*\.?\s*$)",
        r"\1 rem",
        "*K3, k2tog; rep from * to end. 32 sts left.",
    ),
    # --- yarns ---
    row(
        "and join", rf"\b((?:break|cut)\s+(?-i:{_YARN}))\s+and\s+(?=join\b)", r"\1. ", "Break CC and join A."
    ),
    row(
        "and",
        rf"\b(?:join|change\s+to|switch\s+to)\s+((?-i:{_YARN}))\s+and\s+(?=(?:knit|purl|work|k|p)\b)",
        r"with \1, ",
        "Change to CC and knit 3 rnds.",
    ),
    row(
        "only",
        rf"\b(?=(?P<said>with\s+(?-i:{_YARN})\s+only\b))(with\s+\w+)\s+only\b",
        r"\2",
        "With CC2 only, knit 3 rounds.",
        spelt_out=True,
    ),
    row(
        "with", rf"(:\s*with\s+(?-i:{_YARN}))\s*:\s*", r"\1, ", "Rnd 1: With CC: *K1, p1; rep from * to end."
    ),
    row(
        "rnd|round|row",
        rf"\b(knit|purl)\s+({N}\s+{ROUND})\s+(?:in\s+|with\s+)?((?-i:{_YARN}))\s*(?:,\s*(?:and\s+)?|and\s+)(?:then\s+)?(?:\1\s+)?(?={N}\s+{ROUND}\s+(?:in\s+|with\s+)?(?-i:{_YARN})(?!\w))",
        r"with \3, \1 \2. \1 ",
        "Knit 2 rnds A, 2 rnds B.",
        again=True,
    ),
    row(
        "all in",
        rf"\bwork\s+({N}\s+{ROUND})\s+(?:in\s+|with\s+)?((?-i:{_YARN}))\s*(?:,\s*(?:and\s+)?|and\s+)(?=.*?\b(?:in|with)\s+(?-i:{_YARN})\s*,\s*all\s+in\s+((?:seed|moss|garter)(?:\s+st(?:itch)?)?|{_STOCKINETTE})(?=\s*[.]|\s*$))",
        r"with \2, work \1 in \3. work ",
        "Work 2 rows in CC, 6 rows in MC and 5 rows in CC, all in seed st.",
        again=True,
    ),
    row(
        "all in",
        rf"\bwork\s+({N}\s+{ROUND})\s+(?:in\s+|with\s+)?((?-i:{_YARN}))\s*,\s*all\s+in\s+((?:seed|moss|garter)(?:\s+st(?:itch)?)?|{_STOCKINETTE})(?=\s*[.]|\s*$)",
        r"with \2, work \1 in \3",
        "Work 2 rows in CC and 4 rows in MC, all in garter st.",
    ),
    # --- needles ---
    row("uk", r"\(\s*uk\s*\d+\s*,\s*(?=us)", "(", "Change to 4.5 mm (UK 7, US 7) needles."),
    said_row(
        "set of",
        r"\b(?P<said>set\s+of\s+(?:four|five|4|5))\s+(?=\d)",
        "Change to set of four 3.5 mm double-pointed needles.",
    ),
    row(
        "circular|needle|dpn",
        r'(mm\)?|\bsmaller|\blarger)\s*,?\s*(?=(?P<said>\d+\s*(?:cm|in|inch|")(?:\s*\(\s*\d+\s*(?:cm|in|inch|")\s*\))?(?:-|\s)?(?:long)?\s*(?:circular\s+|double-pointed\s+)?(?:needles?|dpns?)\b))'
        r'\d+\s*(?:cm|in|inch|")(?:\s*\(\s*\d+\s*(?:cm|in|inch|")\s*\))?(?:-|\s)?(?:long)?\s*(?=(?:circular|double-pointed|needles?|dpns?)\b)',
        r"\1 ",
        "Change to 4.5 mm, 16 in (40 cm) circular needle.",
        spelt_out=True,
    ),
)
"""The rows, in the order tried."""
