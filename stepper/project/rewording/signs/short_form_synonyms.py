"""Short forms and asides of patterns as they are written today: "inc'ing", "from CO", "for buttonhole". No I/O."""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row
from stepper.project.rewording.synonym import ROUND, STS, N, Synonym, row

_TODAY = r"(?:^\s*|(?<=[.:;])\s*)"
_METHOD = r"(?:german|wrap\s+and\s+turn|shadow\s+wrap)\s+"

SHORT_FORMS: tuple[Synonym, ...] = (
    row("ing", r"\b(inc|dec)'ing\b", r"\1reasing", "Knit 1 rnd, inc'ing 8 sts evenly around."),
    row("from co", r"\bfrom\s+(?:the\s+)?CO\b(?!\s+edge)", "from cast-on edge", "Knit every rnd until piece measures 14\" from CO.", exact=True),
    row("removing", r"\s*\(\s*(removing\s+(?:the\s+)?markers?)\s*\)", r" \1", "Next rnd: [K to 4 sts before marker, BO 8 sts (removing marker)] twice."),
    row("circ", r"\bcirc\b\.?(?!\w)", "circular needle", "With larger circ, k 4."),
    row("starting|beginning", rf"(\bchart(?:\s+[A-Z0-9])?)\s*,?\s+(?:starting|beginning)\s+(?:with|at|on)\s+{ROUND}\s+1(?=\s*[.,]|\s*$)", r"\1", "Work Chart A, starting with rnd 1."),
    row("across", r"\b(k|knit|p|purl)\s+across\s+(?:the\s+)?(?P<said>(?:left\s+|right\s+)?(?:back|front|sleeve|instep|sole|heel|body))(?:\s+sts)?\s+(?=to\s+(?:the\s+)?(?:next\s+)?(?:marker|m)\b)", r"\1 ", "K across back to marker, turn."),
    said_row("short row", rf"{_TODAY}(?P<said>work\s+(?:the\s+)?short[\s-]rows?\s+as\s+follows)\s*:?\s*$", "Work short rows as follows:"),
    row("short row", rf"{_TODAY}(work\s+{_METHOD}short[\s-]rows?)\s+(?P<said>as\s+follows)\s*:?\s*$", r"\1.", "Work German short rows as follows:", spelt_out=True),
    row("replace", r"(\bremove\s+(?:the\s+)?(?:bor\s+)?marker\b[^.;]*,\s*(?:and\s+)?)replace\s+(?:the\s+)?(?:bor\s+)?marker\s+(?=for\s+(?:the\s+)?(?:new\s+)?(?:bor|beg))", r"\1pm ", "Remove BOR marker, k5, replace marker for new BOR."),
    row("total", rf"\b(work\s+these\s+(?:\w+\s+)?{ROUND}\s+{N}\s+times)\s+(?:in\s+)?total\b", r"\1 in all", "Work these 2 rounds 16 times total."),
    row("ribbing|rib", r'\bwork\s+(\d[\d\s./¼½¾]*(?:"|inch(?:es)?|in|cm))\s+of\s+(rib(?:bing)?)(?=\s*[.,]|\s*$)', r"work in \2 for \1", 'Work 2" of ribbing.'),
    row("tight", r"(\b(?:cut|break)\s+(?:the\s+)?(?:yarn|tail)[^.;]*?)\s*;\s*(?=(?:thread|draw|pull|run)\b)", r"\1, ", "Cut yarn; thread through rem sts and pull tight."),
    row("each", rf"\b(divide\s+(?:sts\s+)?(?:evenly\s+)?(?:on|over|between|among|onto)\s+\w+\s+(?:dpns?|needles))\s*(?:\(\s*|,\s*)({N}\s+{STS})\s+(?:each|(?:per|to\s+each|on\s+each)\s+(?:needle|dpn))\s*\)?", r"\1, \2 on each", "CO 64 sts. Divide evenly on 4 dpns (16 sts each). Join."),
    row("working", rf"{_TODAY}working\s+in\s+(?=(?:st\.?\s?st|stockinette|patt(?:ern)?|rib|garter)\b[^,;.]*,\s*(?:dec|inc|bind|cast|bo|co)\b)", "cont in ", "Working in St st, dec 1 st each end of every RS row 5 times."),
    row("buttonhole", r"\s+(?P<said>for\s+(?:a\s+|the\s+)?button\s?hole)(?=\s*[,.])", "", "K2, yo, k2tog for buttonhole, k to end."),
    row("buttonhole", rf"{_TODAY}(?P<said>(?:make|work)\s+(?:an?\s+)?button\s?hole)\s+(?:on|in)\s+(?:the\s+)?(next\s+(?:(?:rs|ws)\s+)?{ROUND})\s*:", r"\2:", "Make buttonhole on next RS row: k3, yo, k2tog, k to end."),
    row("between", rf"(\bto\s+(?:the\s+)?(?:(?:next|first|1st|second|2nd|third|3rd)\s+)?(?:marker|m)\b(?:\s*,\s*(?:rm|sm|(?:remove|slip)\s+(?:marker|m)))?\s*,\s*(?:place|put|slip|transfer)\s+(?:all\s+)?(?:the\s+)?{STS}\s+)between\s+(?:the\s+)?(?:(?:next\s+)?(?:two|2)\s+|next\s+)?markers\b", r"\1to next marker", "K to marker, rm, place sts between markers on waste yarn, rm, k to end.", again=True),
    row("mds", r"\bturn\s*(?:,|and)\s*mds\b", "turn, make DS", "Row 1: K to 10 sts before end, turn, MDS."),
    row("pu", r"\bPU\s+(?:and\s+k(?:nit)?\s+|&\s*k\s+)?(?=\d)", "pick up and knit ", "PU 90 sts around neck edge.", exact=True),
    row("rep", rf"{_TODAY}(rep(?:eat)?\s+(?!last|these|this)[a-z]+\s+(?:dec|inc))\s+(?=(?:on\s+)?(?:every|each)\b)", r"\1 rnd ", "Rep raglan dec every other rnd 5 times."),
)
"""The rows, in the order tried."""
