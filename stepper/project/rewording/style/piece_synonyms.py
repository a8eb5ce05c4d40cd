"""Other wordings of garments made in pieces, as leaflets and magazines print them. No I/O.

Each row takes a family of words to the one form that the rows after it read: what is worked as on another
part, which stitches a neck goes on with, at which edges a raglan is shaped.
"""

from __future__ import annotations

from stepper.project.part_names import EDGING, PART, WHICH
from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import HELD_BY, JOIN_YARN, OFF, ROUND, STS, N, Synonym, row

_PART = rf"{WHICH}{PART}s?"
_RIB = r"(?:k\.?\s?\d{1,2}\s*,\s*p\.?\s?\d{1,2}\s+)?rib(?:bing)?"
_RIBBED = rf"{WHICH}(?:{PART}|{EDGING})s?"
_AS_GIVEN = r"as\s+(?:(?:(?:given|worked|set|directed|described|instructed)\s+)?(?:for|on|at)\s+(?:the\s+)?)?"
_UP_TO = r"(?=\s+(?:to|until|as\s+far\s+as|up\s+to)\b)"
_STEP = r"(?P<said>for\s+(?:the\s+)?(?:first|left|right|second|other)\s+(?:side|front|shoulder|half)(?:\s+(?:of\s+(?:the\s+)?)?neck)?)"
_THEN = r"(?=\s*,\s*(?:k|p|knit|purl|work|patt|rib|cast|bind)\b|\s+and\s+(?:k|p|knit|purl|work|patt|rib|cast|bind|complete|finish)\b)"
_LENGTH_OF = r"(?:matches|measures\s+(?:the\s+)?same\s+as|is\s+(?:the\s+)?same(?:\s+length)?\s+as|corresponds\s+(?:with|to))"
_SHAPES = r"(?:inc|dec)(?:reas(?:e|ing))?\b"

PIECES: tuple[Synonym, ...] = (
    # --- sizes and signs ---
    said_row_behind("mm", r"\b(\d(?:\.\d+)?\s?mm)\s*\(\s*(?P<said>(?:(?:old\s+)?uk\s*)?(?:no\.?|size)\s*\d{1,2})\s*\)(?=\s+(?:[a-z-]+\s+)?(?:needles?|dpns?)\b)", "Change to 4mm (No. 8) needles."),
    row("rows more|rounds more|rnds more|row more|rnd more|round more", rf"\b({N})\s+({ROUND})\s+more\b(?!\s+than)", r"\1 more \2", "Rib 10 rows more."),
    row("few rows", r"\bwork\s+a\s+few\s+(?:more\s+)?rows\s+(?=(?:straight|even|without\s+(?:further\s+)?shaping|in\s+[a-z .]+?)\s+until\b)", "work ", "Work a few rows straight until work measures 9 cm."),
    row("foll.", r"\b(foll)\.(?=\s+(?:\d|alt\b|row|rnd|[a-z]))", r"\1", "Inc 1 st at each end of every foll. 6th row 3 times."),
    row("buttonhole row", r"^(\s*)(?:1st|first)\s+buttonhole\s+row\b", r"\1Row 1", "1st buttonhole row (RS): Rib 3, cast off 3, rib to end."),
    row("buttonhole row", r"^(\s*)(?:2nd|second)\s+buttonhole\s+row\b", r"\1Row 2", "2nd buttonhole row: Rib, casting on 3 sts over those cast off."),
    # --- as on another part ---
    row("same as", rf"\b((?:work|knit)\s+(?:exactly\s+|the\s+)*)same\s+as\s+(?=(?:the\s+)?(?:for\s+)?{_PART}\s+until\b)", r"\1as for ", "Work same as back until piece measures 15 in."),
    row("as on", rf"\b((?:work|knit|proceed|cont(?:inue)?)\s+(?:exactly\s+)?)as\s+on\s+(?=(?:the\s+)?{_PART}{_UP_TO})", r"\1as for ", "Work as on back to armhole."),
    row("as far as", rf"\b((?:as(?:\s+(?:given\s+)?for)?|same\s+as)\s+(?:the\s+)?{_PART})\s+as\s+far\s+as\s+", r"\1 to ", "Work as for back as far as armhole shaping."),
    row("to match", r"\b(to\s+match\s+(?:the\s+)?first\s+side)\s+of\s+(?:the\s+)?(?:neck|front|work|opening)\b", r"\1", "Complete to match first side of neck."),
    row("to match", r"\bwork\s+(?=to\s+match\s+(?:the\s+)?first\s+side\b)", "complete ", "Work to match first side, reversing shaping."),
    row("revers", r"(\bto\s+match\s+(?:the\s+)?first\s+side)\s+(?=revers(?:e|ing)\b)", r"\1, ", "Complete to match first side reversing shaping."),
    row("rib as|ribbing as", rf"\bin\s+{_RIB}\s+{_AS_GIVEN}({_RIBBED})\b(?=\s+(?:for|until)\b)", r"in as-\1 rib", "Work in k1, p1 rib as on back for 6 cm."),
    row("rib as|ribbing as", rf"\b(work|cont(?:inue)?)\s+({N}\s+(?:more\s+)?{ROUND})\s+in\s+{_RIB}\s+{_AS_GIVEN}({_RIBBED})\b(?=\s*[.,;]|\s*$)", r"\1 in as-\3 rib for \2", "Work 8 rows in k1, p1 rib as on back."),
    row("patt as|pattern as|patt. as", rf"\bin\s+(?:the\s+)?patt(?:ern)?\.?\s+{_AS_GIVEN}({_PART})\b(?=\s+(?:for|until)\b|\s*[.,;]|\s*$)", r"in as-\1 pattern", "Work in patt as given for back for 10 cm."),
    # --- which stitches it goes on with ---
    row("turn", rf"(,\s*turn)\s*[,;]?\s*(?:and\s+)?(?:work|cont(?:inue)?|complete)\s+(?:on\s+(?:these|this\s+group\s+of|the(?:se)?\s+{N})\s+(?:{N}\s+)?{STS}(?:\s+only)?|on\s+this\s+side)(?:\s+first)?(?:\s+{_STEP})?(?=\s*[.]|\s*$)", r"\1, leaving remaining sts on a holder", "Next row: K30, turn and work on these sts for first side of neck."),
    row("yarn|wool", rf"\b{JOIN_YARN}\s+(?:to|at)\s+(?:the\s+)?(?:(?:inner|neck|inside|cent(?:re|er))\s+(?:end|edge)\s+of\s+(?:the\s+)?(?:rem(?:aining)?\.?\s+|held\s+)?{STS}|next\s+st(?:itch)?|inner\s+edge){_THEN}", "rejoin yarn to rem sts", "Rejoin yarn to inner end of rem sts, k to end."),
    row("rem", rf"\breturn\s+to\s+(?:the\s+)?rem(?:aining)?\.?\s+{STS}\s*,?\s*(?:and\s+)?(?:with\s+(?:rs|right\s+side)\s+facing\s*,?\s*)?{JOIN_YARN}{_THEN}", "rejoin yarn to rem sts", "Return to rem sts, rejoin yarn and k to end."),
    row("holder|hold|needle|yarn|thread|pin", rf"((?:^|[.:])\s*(?:with\s+(?:rs|right\s+side)\s+facing\s*,?\s*)?)(?:slip|place|put|leave|sl)\s+(?:the\s+)?(?:next|first|following|foll|cent(?:re|er))\s+({N})\s+{STS}\s+(?:on\s?to|on|to)\s+(?:{HELD_BY}|an?\s+(?:safety\s+pin|thread))(?:\s+for\s+(?:the\s+)?(?:neck-?\s?band|collar|neck|hood))?\s*(?:,|\band\b)\s*(?:with\s+(?:rs|right\s+side)\s+facing\s*,?\s*)?{JOIN_YARN}(?:\s+to\s+(?:the\s+)?(?:rem(?:aining)?\.?\s+|other\s+|next\s+)(?:{STS}))?\s*(?:,|\band\b)\s*(?=(?:k|p|knit|purl|work|patt|rib)\b|[kp]\d)", r"\1rejoin yarn to rem sts. Hold \2, ", "With RS facing, slip next 15 sts onto a holder, rejoin yarn to rem sts, k to end."),
    row("join|attach|take up", rf"(\b{JOIN_YARN}(?:\s+(?:to|at)\s+(?:the\s+)?(?:rem(?:aining)?\.?\s+{STS}|(?:neck|inner|inside|cent(?:re|er))(?:\s+edge)?))?(?:\s*,\s*(?:and\s+)?|\s+and\s+)(?:then\s+)?(?:{OFF}|bo))\s+(?:the\s+)?(?:cent(?:re|er)|middle|next|first)\s+(?={N})", r"\1 ", "Rejoin yarn to rem sts, cast off centre 21 sts, k to end."),
    # --- at which edges ---
    row("edges", rf"\b({_SHAPES}\s+(?:{N}\s+)?{STS}\s+)at\s+(?:(?:both|each)\s+)?(?:raglan|armhole|sleeve)\s+edges\b", r"\1at each end", "Dec 1 st at raglan edges on next and every alt row until 30 sts rem."),
    row("raglan edge", rf"\b({_SHAPES}\s+(?:{N}\s+)?{STS}\s+at\s+(?:the\s+)?)raglan\s+edge\b(?![^.]*\bas\s+(?:set|before|established))", r"\1armhole edge", "Dec 1 st at raglan edge on every RS row 4 times."),
    row(
        "same time",
        rf"(?:(?<=^)|(?<=[.]\s))({_SHAPES}\s+(?:1|one)\s+{STS}\s+at\s+armhole\s+edge\s+(?:on|of)\s+(?:every|each)\s+(?:rs|ws|right[-\s]side|wrong[-\s]side)\s+row)\s*,?\s*(?:and\s+|but\s+)?at\s+the\s+same\s+time\s*,?\s*({_SHAPES}\s+(?:1|one)\s+{STS}\s+at\s+(?:the\s+)?neck\s+edge\s+[^.;]*?)(?=\s*[.]|\s*$)",
        r"\2, at the same time \1",
        "Dec 1 st at raglan edge on every RS row, at the same time dec 1 st at neck edge on next 4 rows.",
    ),
    row("shap", rf"\b(?:shap(?:e|ing)\s+(?:the\s+)?sides?\s+by\s+)({_SHAPES})", r"\1", "Shape sides by inc 1 st at each end of every 6th row until there are 70 sts."),
    row("into patt|in patt", rf"\b(inc(?:reas(?:e|ing))?)\s*,?\s+and\s+work(?:ing)?\s+in(?:to)?\s+patt(?:ern)?\.?\s*,?\s*(?=(?:1|one)\s+{STS}\b)", r"\1 ", "Inc and work into patt 1 st at each end of every 6th row until there are 60 sts."),
    row("on needle|on the needle", rf"\buntil\s+({N}\s+{STS})\s+are\s+(?:on\s+(?:the\s+)?needle|obtained)\b", r"until there are \1", "Inc 1 st at each end of every 6th row until 70 sts are on needle."),
    row("inc|dec", rf"\b((?:work|cont(?:inue)?|proceed)\s+in\s+(?:st\.?\s?st|stocking\s+st(?:itch)?|patt(?:ern)?|rib))\.?\s+(?={_SHAPES}\s+(?:1|one)\s+{STS}\s+(?:at\s+)?(?:each|both)\b)", r"\1, ", "Cont in st st inc 1 st at each end of every 6th row until there are 70 sts."),
    # --- rows and lengths ---
    row("casting on", rf"(:\s*)(?:rib|patt|work\s+in\s+(?:rib|patt(?:ern)?))(?:\s+to\s+end)?\s*,\s*cast(?:ing)?\s+on\s+(?={N}(?:\s+{STS})?\s+(?:over|above|in\s+place\s+of)\b)", r"\1work in pattern, casting on ", "Next row: Rib to end, casting on 3 sts over those cast off on previous row."),
    row("side edge|front edge|armhole edge|neck edge|inner edge", rf"(\buntil\s+[^.;,]*?\b{_LENGTH_OF}\s+[^.;,]*?)\s*,?\s*(?:and\s+)?end(?:ing)?\s+at\s+((?:the\s+)?(?:side|front|armhole|neck|inner)\s+edge)\b(?=\s*[.]|\s*$)", r"\1. ends at \2", "Cont straight until front matches back to armhole, ending at side edge."),
    row("sequence|stripe", r"\b(in\s+(?:st\.?[\s-]?st|stocking\s+st(?:itch)?|stockinette(?:\s+st(?:itch)?)?))\s*,?\s+(?:and\s+|in\s+)?(?:a\s+)?stripes?\s+(?:sequence\s+|pattern\s+)?of\s+(?=\d)", r"\1 in stripes of ", "Work in st st and stripe sequence of 6 rows B, 6 rows A until piece measures 20 cm."),
)  # fmt: skip
"""The rows, in the order tried."""
