"""Other wordings of pages that knitters write for one another: fabrics changed, steps in lists, asides. No I/O."""

from __future__ import annotations

from stepper.craft.needles import NEEDLES
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import HELD_BY, KEPT, LONG, OFF, STS, N, Synonym, row

_STOCKINETTE = r"(?:st\.?[\s-]?st|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?)"
_TO_NEXT = r"(?:(?:all\s+)?(?:the\s+)?(?:next\s+)?STS\s+(?:(?:up\s+)?to\s+(?:the\s+)?(?:next\s+)?marker|before\s+(?:the\s+)?next\s+marker))".replace("STS", STS)
_PARTS = r"(?:sleeve|body|front|back|thumb|shoulder)"
_YARN = r"(?-i:MC|CC\d?|[A-Z])"

KNITTERS: tuple[Synonym, ...] = (
    # --- fabrics ---
    row("change|switch", rf"((?:^|[.])\s*)(?:now\s+|then\s+)?(?:change|switch)\s+to\s+({_STOCKINETTE})(?=\s*\.?\s*$|\s*\.\s)", r"\1go on in \2", "Change to st st."),
    row("begin|start", rf"^(\s*)(?:begin|start)\s+({_STOCKINETTE})(?=\s*\.?\s*$)", r"\1go on in \2", "Begin stockinette."),
    row("beg|start", rf"\b(with\s+(?:yarn\s+)?{_YARN}\s*,\s*)work\s+({N}\s+rows)\s+in\s+({_STOCKINETTE})\s*,?\s*(?:beg(?:inning)?|start(?:ing)?)\s+with\s+an?\s+(?:k|knit|rs)\s+row", r"next row (rs): \1work \2 in \3", "With A, work 6 rows in st st beg with a knit row."),
    # --- rows ---
    row("on ws rows|on rs rows", r"^(\s*)(\*[^*]+\*\s*(?:across|around|to\s+end))\s+on\s+(rs|ws)\s+rows(?=\s*\.?\s*$)", r"\1\3 rows: \2", "*Sl 1, p1* across on WS rows."),
    row("rs row|ws row", rf"((?:twice|once|times)(?:\s+more)?)\s*,?\s*then\s+(?:work|rep(?:eat)?)\s+(?:the\s+)?(rs|ws)\s+row\s+only\s+(once)\s+more\b(?:\s*-+\s*({N}\s+{STS}))?", r"\1. rep \2 row \3. \4", "Rep last 2 rows twice more, then work RS row only once more."),
    said_row_behind("pattern", r"^(\s*)(?P<said>pattern)\s*(?:-+|:)\s*(?=row\s+\d+\b)", "Pattern - Row 1 - P."),
    row("(k|(p", r"\b(k|p)(\d+)\s*\(\s*\1(\d+)\s*,\s*\1(\d+)\s*\)(?=\s*[,;.]|\s+(?:pm|sm))", r"\1\2 (\3, \4)", "K1 (k2, k2), pm, k16, pm, k to end."),
    row("back loops", r"\b(?:k|knit)\s+(?:1|one)\s+(?:rnd|round)\s*,\s*knitting\s+(?:all\s+)?(?:the\s+)?(?:sts|stitches)\s+on\s+(?:the\s+)?(?:second|2nd)\s+needle\s+through\s+(?:the\s+|their\s+)?back\s+loops?", "needle 1: k to end; needle 2: k tbl to end", "K 1 round, knitting all sts on second needle through back loops."),
    # --- binding off ---
    row(
        "folls|follows",
        rf"^\s*((?:{OFF}|bo))\s+at\s+(?:the\s+)?(neck|armhole|shoulder|front|side)\s+edge\s+on\s+every\s+(?:alt(?:ernate)?|other|2nd|second)\s+row\s+as\s+foll(?:ow)?s\s*:\s*({N})\s+{STS}\s+({N})\s+times\s*,?\s*(?:and\s+|then\s+)*({N})\s+{STS}\s+({N})\s+times(?=\s*\.|\s*$)",
        r"\1 \3 sts at \2 edge every 2nd row \4 times. \1 \5 sts at \2 edge every 2nd row \6 times",
        "Cast off at the neck edge on every alt row as folls: 5 sts 3 times, then 4 sts 2 times.",
    ),
    row("shoulder edge", r"\bat\s+(?:the\s+)?shoulder\s+edge\b", "at armhole edge", "Bind off 6 sts at shoulder edge every 2nd row 3 times."),
    row("side", rf"\b((?:{OFF}|bo)\s+{N}\s+{STS})\s+({N}\s+times|twice)\s+(?:from|at)\s+(?:the\s+)?(neck|armhole|shoulder|front)\s+(?:side|edge)(?=\s*\.|\s*$)", r"\1 at \3 edge every 2nd row \2", "Bind off 6 sts 3 times from armhole side."),
    row("first binding|first bind", rf"\bfor\s+({LONG})\.?\s+from\s+(?:the\s+)?first\s+(?:binding|bind|bound)[-\s]off\b", r"until armhole measures \1", "Work even for 9 cm from the first binding off."),
    # --- on hold ---
    row(
        "marker",
        rf"\b(?:place|put|slip|sl|transfer)\s+{_TO_NEXT}\s+(?:on|onto|to)\s+(?:to\s+)?{HELD_BY}(\s+for\s+(?:the\s+)?{_PARTS})?(?:\s*\(\s*(?P<said>these\s+are\s+(?:the\s+)?(?:left\s+|right\s+)?sleeve\s+(?:sts|stitches))\s*\))?",
        r"hold to next marker\1",
        "K to marker, slip sts between markers onto scrap yarn (these are the sleeve stitches), k to end.",
        spelt_out=True,
    ),
    row(
        "slip|place",
        rf"^(\s*)(?:slip|place|put)\s+(?:the\s+)?first\s+({N})\s+{STS}\s+for\s+(?:first\s+)?shoulder\s+on(?:to)?\s+(?:an?\s+)?(?:st(?:itch)?\s+)?holder\s*,\s*(?:slip|place|put)\s+(?:the\s+)?(?:next\s+)?cent(?:er|re)\s+({N})\s+{STS}\s+for\s+back\s+neck\s+(?:on)?to\s+(?:an?\s+)?(?:second\s+|another\s+)?holder\s*,\s*(?:and\s+)?(?:slip|place|put)\s+(?:the\s+)?rem(?:aining)?\s+{STS}\s+(?:on)?to\s+(?:an?\s+)?(?:third\s+|another\s+)?holder\s+for\s+(?:(?:second|other)\s+)?shoulder",
        r"\1hold \2 sts for first shoulder, hold \3 sts for back neck, hold all sts for second shoulder",
        "Slip first 6 sts for shoulder onto st holder, slip center 24 sts for back neck to another holder, slip remaining sts to another holder for shoulder.",
    ),
    # --- joining and picking up ---
    row("join care", r"\bjoin\s+carefully\s+(?P<said>not\s+to\s+twist)(?:\s+(?:sts|stitches))?\s*,?\s*and\s+", "join in the round. ", "Join carefully not to twist and knit 3 rnds.", spelt_out=True),
    row("in rib|p1 rib|p2 rib", rf"\bknit\s+({N}\s+(?:rnds|rounds|rows))\s+in\s+((?:k\s?\d\s*,\s*p\s?\d\s+)?rib)(?:bing)?(?:\s+patt(?:ern)?)?(?=\s*[.,]|\s*$|\s+or\s)", r"work \1 in \2", "Knit 3 rnds in ribbing pattern."),
    said_row("to desired", r"\s*,?\s*(?P<said>or\s+to\s+(?:the\s+)?desired\s+length\s+of\s+(?:the\s+)?(?:cuff|sleeve|body|hand|leg|foot|thumb|hat))(?=\s*\.?\s*$)", "Knit 3 rnds or to desired length of cuff."),
    row("and using", rf"^(\s*)with\s+((?:rs|right\s+side)\s+facing)\s+and\s+using\s+({NEEDLES})\s+and\s+(?:yarn\s+)?({_YARN})\s*,\s*", r"\1change to \3. with \4, with \2, ", "With RS facing and using 4 mm needles and yarn A, pick up and knit 30 sts."),
    # --- said ---
    said_row("ready|done|finished", r"^\s*(?P<said>turn\s+(?:it\s+|work\s+)?(?:on|to)\s+(?:the\s+)?(?:rs|right\s+side)\s+and\s+you\s+are\s+(?:ready|done|finished))\s*\.?\s*$", "Turn on RS and you are ready."),
    row("aside", r"^\s*(?:set|put)\s+(?:that|this)\s+(?:part|piece)\s+aside(?:\s+and\s+now\s+we(?:'ll|\s+will)\s+(?:work|knit)\s+the\s+[a-z]+)?(?=\s*\.?\s*$)", KEPT, "Set that part aside and now we'll work the front."),
)
"""The rows, in the order tried."""
