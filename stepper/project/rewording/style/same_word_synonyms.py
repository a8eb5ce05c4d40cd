r"""Other words for one thing, put into those that the rest of the tables knows: verbs, times, rows, markers, ends. No I/O.

What thirty designers say in thirty words is brought into one, word by word and wherever it stands, so that a sentence
that reads in one wording reads in all. These rows are looked for first, and only in a line that nothing else reads
(`stepper.project.rewording.second_look`): what reads without them is never changed. Each says the same in every line
that its pattern finds; what depends on the fabric or on the rows before is left alone. Source: the wording of patterns
in print, US and UK, old and modern; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import CUT_YARN, LONG, OFF, ROW, STS, N, Synonym, row

_ON: Final = r"(?:(?:keep|go|carry)\s+on|keep\s+going)"
_SHAPING: Final = r"(?:any\s+)?(?:more\s+|further\s+)?shaping"
_OFF: Final = rf"(?:{OFF}|(?-i:BO))"
_E: Final = r"(?=\s*[.;,)]|\s*$)"
_INC_IN: Final = r"(?:m1[lr]?|make[-\s](?:1|one)(?:[-\s](?:left|right))?|k1?f&?b|pfb)"
_DEC_IN: Final = r"(?:k2tog|p2tog|ssk|skp)"
"""The stitches in which a change is made that is spread evenly."""
_NEEDLES: Final = r"(?:larger|smaller|bigger|finer|thicker|us\s+(?:size\s+)?\d|no\.?\s*\d|size\s+\d|\d[\d./¼½¾\s]*mm|circular|dpns?|double)"
_BOTH: Final = r"(?:each|either|both)\s+(?:sides?|ends?|edges?)"
_ROWS: Final = r"(?:rows|rnds|rounds)"
_EDGE: Final = r"(?:armhole|neck|raglan|front|inner|outer|shaped)\s+edge"
_BEGINS: Final = r"(^\s*|[.;:]\s+|\b(?:and|then)\s+|,\s*)"

SAME_WORDS: tuple[Synonym, ...] = (
    # --- how often ---
    row("further|additional|extra|another", rf"\b(?:an?\s+(?:further|additional|extra)|another)\s+({N})\s+(times|{_ROWS})\b", r"\1 more \2", "Rep last row an additional 3 times."),
    row("further|additional|extra", rf"\b({N})\s+(?:further|additional|extra)\s+(times|{_ROWS})\b", r"\1 more \2", "*K1, p1; rep from * 3 additional times."),
    row("further|additional|extra", rf"\b(?:an?|1)\s+(?:further|additional|extra)\s+({ROW})\b", r"1 more \1", "Purl a further row."),
    row(" time", r"\b(?:another|(?:1|one)\s+more|(?:1|one)\s+(?:additional|further|extra)|(?:1|one)(?=\s+time\s+more))\s+time(?:\s+more)?(?=\s*[-.,;:)]|\s*$|\s+and\b)", "once more", "*K1, p1; rep from * one extra time, k1."),
    row("two times", r"\btwo\s+times\b(?!\s+more)", "twice", "Rows 4 to 7 As rows 2 to 3, two times."),
    row("total of|in total|in all|times total", rf"\b(?:for\s+a\s+total\s+of|a\s+total\s+of|for(?=\s+{N}\s+times\s+(?:in|total)))\s+({N})\s+times\b(?:\s+(?:in\s+(?:all|total)|total))?", r"\1 times in all", "Work chart A for a total of 3 times."),
    row("previous|preceding|these last", rf"\b(?:the\s+|these\s+)?(?:previous|preceding|these\s+last)\s+(?=(?:{N}\s+)?{_ROWS}\b)", "last ", "The preceding 2 rows form rib."),
    row("are left|until there|until you", rf"\buntil\s+(?:(?:there\s+are|you\s+have)\s+(?:only\s+|just\s+)?({N}\s+{STS})\s+(?:left|remaining)|({N}\s+{STS})\s+are\s+left)\b", r"until \1\2 rem", "Rep last 2 rows until there are 32 sts remaining, ending with a P row."),
    row("only|just", rf"\buntil\s+(?:there\s+are\s+)?(?:only|just)\s+(?={N}\s+{STS})", "until ", "Dec 1 st at each end of next and every foll alt row until only 36 sts remain, then on foll 2 rows. 32 sts."),
    row("same as", r"(\brib|\bpatt(?:ern)?|\bst(?:itch)?)\s+(?:the\s+)?same\s+as\s+(?:for\s+)?(?=(?:the\s+)?(?:back|front|sleeves?|body|welt)\b)", r"\1 as for ", "Cont in patt same as for back until work measures 12 cm."),
    row("k every|k all|k each", rf"(^\s*|[.:]\s+)k\s+(?=(?:every|each|all)\s+{ROW}s?\b)", r"\1knit ", "K every rnd until the body measures 9 cm from the underarm."),
    # --- going on ---
    row("on in|going in", rf"\b{_ON}\s+(?=in\s)", "cont ", "Keep on in st st until work measures 3 cm, ending with a k row."),
    row("shaping|even|straight", rf"\b(?:{_ON}|proceed|work\s+evenly)\s+(?:even|straight|without\s+{_SHAPING})\b", "work even", "Carry on without shaping for next 3 rows."),
    row("the rib", r"\bwork\s+the\s+rib(?:bing)?\s+(?=(?:for|until)\b)", "work in rib ", "Work the ribbing for 6 rows."),
    row("without", rf"\b(?:work|cont(?:inue)?)\s+without\s+{_SHAPING}\b", "work even", "Work without shaping in st st with CC until piece measures 1 cm."),
    row("without", r"(\b(?:work|cont(?:inue)?)\s+(?:even|straight))\s*,?\s+without\s+(?:any\s+)?(?:further\s+|more\s+)?(?:(?:inc|dec)reas(?:es|ing)|shaping)\s*,?", r"\1", "Work straight, without further decreases, until piece measures 12 cm."),
    row("now", rf"{_BEGINS}(work|cont(?:inue)?)\s+now\s+(?=in\s)", r"\1\2 ", "Work now in st st for 3 rows more."),
    row("straight|plain|even", rf"\bwork\s+({N})\s+(?:straight|plain|even)\s+({_ROWS})\b", r"work \1 \2 even", "Work three straight rows."),
    row("straight on", r"\b(work|knit|cont(?:inue)?)\s+straight\s+on\b", r"\1 straight", "Knit straight on for 5 cm."),
    row("now", rf"(\bneedles?)\s+now{_E}", r"\1", "Change to smaller needles now."),
    # --- verbs ---
    row("attach", r"\battach\s+(?=(?-i:MC|CC\d?|[A-H])\b)", "join ", "Attach CC and knit 2 rounds."),
    row("fasten", rf"(\b{CUT_YARN})\s*,?\s+and\s+(?=fasten\s+off\b)", r"\1. ", "Break the yarn and fasten off."),
    row("over to|swap|move ", rf"\b(?:change\s+over|swap(?:\s+(?:over|back))?|move(?:\s+(?:over|back))?|switch\s+over)\s+to\s+(?:the\s+)?(?={_NEEDLES})", "change to ", "Swap to 3 1/4mm needles. Knit 1 round."),
    row("attach", r"\b(?:re-?attach(?:\s+the)?\s+(yarn|wool)|attach(?:\s+the)?\s+(yarn|wool)\s+again)\b", r"rejoin \1\2", "Place 20 sts on a holder. With RS facing, attach the yarn again and knit to end."),
    *(
        said_row_behind(has, rf"(\b{way}(?:reas(?:e|ing))?\s+(?:{N}\s+{STS}\s+evenly(?:\s+(?:spaced|across|around|distributed))*|evenly\s+to\s+{N}\s+{STS}))\s*[,(]?\s*(?P<said>(?:(?:using|with|by)\s+(?:working\s+)?|working\s+)(?:an?\s+|the\s+)?{stitch}(?:\s+(?:increases?|decreases?|method))?)\s*\)?(?=\s*[.;]|\s*$)", example)
        for way, stitch, has, example in (
            ("inc", _INC_IN, "m1|make|kf|k1f|pfb", "Inc Rnd: Knit, increasing 12 sts evenly spaced, using M1L."),
            ("dec", _DEC_IN, "k2tog|p2tog|ssk|skp", "Knit, decreasing 12 sts evenly spaced, using ssk."),
        )
    ),
    row("off", r"(^\s*|[.]\s+)(?:cast\s+off|(?-i:BO))\s+(?=(?:purlwise|knitwise|as\s+foll(?:ow)?s|loosely|stretchily)\b[^.:]*:)", r"\1bind off ", "Cast off purlwise: P2, *slip both sts back to left needle, p2tog, p1; rep from * until 1 st remains on the right needle and none on the left, cut yarn and draw through."),
    row("everything|the rest", rf"({_OFF}\s+)(?:everything|the\s+rest)\b", r"\1rem sts", "Cast off the rest in rib."),
    row("that are left|that remain", rf"\bthe\s+({N})\s+{STS}\s+that\s+(?:are\s+left|remain)\b", r"rem \1 sts", "Cast off the 6 sts that are left."),
    row("loosely", rf"(^\s*|[.,]\s*|\b(?:and|then)\s+)loosely\s+(bind\s+off|cast\s+off|(?-i:BO))(?:\s+all)?(?:\s+{STS})?{_E}", r"\1\2 all sts loosely", "When piece measures 2 cm, loosely bind off all sts."),
    said_row("carefully", r"\b(?P<said>carefully)\s+(?=join\b)", "Carefully join in the round."),
    row("double dec", r"\b(?:(?:work|make)\s+)?an?\s+(?:central|centred|centered|vertical)\s+double\s+dec(?:rease)?\b(?:\s*\(\s*cdd\s*\))?", "s2kp", "K4, work a central double decrease, k to end."),
    # --- where stitches wait ---
    # --- markers ---
    row("mkr", r"\bmkr(s?)\b", r"marker\1", "K to mkr, slip mkr, k to end."),
    # --- ends and edges ---
    row("row end", r"\bto\s+(?:the\s+)?row\s+end\b", "to end of row", "Row 1: *K1, p1, rep from * to row end."),
    row("bor m|of-r|of-the-r", r"\bto\s+(?:the\s+)?(?:(?:beg(?:inning)?|start)-of-(?:the-)?(?:rnd|round)|bor)\s+(?:marker|m)\b", "to BOR", "Next rnd: K to beg-of-rnd marker."),
    said_row("having|begin", r"\s*\((?P<said>(?:the\s+)?(?:right[\s-]side|rs)\s+rows\s+(?:having|have|beginning\s+and\s+ending\s+with|begin\s+and\s+end\s+with)\s+(?:a\s+)?k\.?\s?1(?:\s+at\s+(?:each|both)\s+ends?)?)\)", "Work in k1, p1 rib (right-side rows having a k1 at each end) for 4 rows."),
    row("rest", r"(?<=,\s)(k|p|knit|purl|rib|patt)\s+rest(?=\s*(?:[.,;]|$))", r"\1 to end", "Buttonhole row (RS): K3, yo, k2tog, k rest."),
    row("to the end", r"\bto\s+the\s+end\b(?!\s+of\b)", "to end", "Next row (RS): Rib 3, yrn, rib 2 tog, rib to the end."),
    row("ending on|ending along", rf"\b(ending)\s+(?:on|along)\s+(?:the\s+)?(?={_EDGE})", r"\1 at ", "Knit for 1 cm, ending along armhole edge."),
    row("each|both|either", rf"(\b(?:dec(?:rease)?|inc(?:rease)?|k\s?2\s?tog\.?)\b[^.;]*?)\s(?:(?:at|on)\s+)?{_BOTH}\s+(?:of|on|in)\s+(?:the\s+)?(?=(?:next|every|each|foll|following|row|this|\d+(?:st|nd|rd|th))\b)", r"\1 at each end of ", "3rd and 4th rows: Dec 1 st on each side of row."),
    # --- which rows ---
    row("right-side|right side", r"\bright[-\s]side\s+(?=rows?\b)", "RS ", "Dec 1 st at each end of the next 4 right-side rows."),
    row("2nd|second|alt", rf"\b(?:every|each)\s+(?:2nd|second|alternate|alt)\s+(?={ROW}\b)", "every other ", "2nd and every 2nd round: knit."),
    row("subsequent|each following|each foll", r"\b(?:every\s+subsequent|each\s+(?:following|foll|subsequent))\s+(?=\d+th|alt)", "every foll ", "Inc 1 st at neck edge of next and every subsequent 6th row to 50 sts."),
    row("the next and", r"^(\s*)the\s+(?=next\s+and\s+every\b)", r"\1", "The next and every foll 4th row until 34 sts rem: K1, ssk, k to last 3 sts, k2tog, k1."),
    row("following|foll|next", rf"^(\s*)(?:(?:on|in)\s+)?(?:the\s+)?(?:next|foll(?:owing)?)\s+({ROW})\s*(\([rw]s\))?\s*[:,]\s*(?=[a-z*(\[])", r"\1Next \2 \3: ", "On the next row, k2, p2 to last 2 sts, k2."),
    row(" a r", rf"\b(work|knit|purl)\s+a\s+({ROW})\b", r"\1 1 \2", "Work a row even. K2tog. Fasten off."),
    row("end", r"\s*[,;]?\s*(?:and\s+)?end(?:ing)?\s+(?:(?:after|by|having)\s+)?(?:just\s+)?(?:complet(?:ing|ed)|work(?:ing|ed))\s+(?=(?:an?|the)\s+(?:rs|ws|right[-\s]side|wrong[-\s]side|purl|p|knit|k)\s+row\b)", ", ending with ", "Work in garter st for 4 rows, ending after working a WS row."),
    row("at same time", r"\bat\s+same\s+time\b", "at the same time", "Work 10 rows even, at same time dec 1 st at each end of every 4th row."),
    # --- how far ---
    row("reach", rf"\b(until|till)\s+(?:the\s+|your\s+)?([a-z]+(?:\s+edge)?)\s+(?:has\s+)?reach(?:es|ed)\s+(?={LONG})", r"\1 \2 measures ", "Work chart peak until piece has reached 5 cm."),
    # --- yarns and stitches ---
    row("knit |purl ", r"([,:*(]\s*|\bwork\s+)(k|p)(?:nit|url)\s+(\d{1,3})(?=\s*[,;*).\]]|\s*$|\s+a(?:cross|round)\b)", r"\1\2\3", "On every right side row, work knit 1, ssk, k to end, 3 times."),
    row("in pat", r"\bin\s+pat\b", "in pattern", "Round 2: Knit to marker, work instep in pat, knit to end."),
    row("using|in ", r"(?<!join\s)\b(?:using\s+(?:yarn\s+)?(?=(?-i:MC|CC\d?|[A-H])\b)|in\s+(?:yarn\s+)?(?=(?-i:MC|CC\d?|[B-H])\b))", "with ", "Cont using MC only until piece measures 4 cm."),
    row("with yarn", r"\bwith\s+yarn\s+(?=(?-i:MC|CC\d?|[A-H])\b)", "with ", "Work even in st st with yarn CC until piece measures 1 cm."),
    row("rease", r"\b(inc|dec)rease\s+(?=(?:1|one)\s+st(?:itch)?\b)", r"\1 ", "Working in St st, increase 1 st each side of the next row, then every 6th row until there are 46 sts."),
    row("1 stitch", r"\b1\s+stitch(?=\s+(?:at|on|each|both)\s)", "1 st", "Dec 1 stitch at each end of next 2 rows, then 1 stitch at each end of foll 2 alt rows."),
)  # fmt: skip
"""The rows, in the order tried."""
