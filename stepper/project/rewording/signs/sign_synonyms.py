"""Other ways to write the same signs: hyphens, commas and brackets around stitches, rows called R. No I/O."""

from __future__ import annotations

from stepper.project.grammar import stitch_words
from stepper.project.rewording.synonym import ROUND, STS, N, Synonym, row

_STITCH = rf"(?:[kp]\s?\d+|{stitch_words()})(?![\w&/-])"
_RIB = r"(?:k\s?\d+(?:\s?tbl)?\s*,?\s*p\s?\d+|p\s?\d+\s*,?\s*k\s?\d+(?:\s?tbl)?)"
"""Two kinds of stitches, each with its number, are what is repeated: a border in front of them would be a third."""
_FRACTIONS = r"\d+[¼½¾]?"
_HEADED = rf"^\s*(?:[a-z][a-z-]*\s+){{0,3}}{ROUND}[^:.]*:"
"""The head of a row: behind its stitches a bare number can only be their count, which is compared."""
_UNIT = r"(?:cms?|ins?|inch(?:es)?|\")"

_ONE_UNIT = r'\d[\d\s./¼½¾⅛⅜⅝⅞]*(?:cm|mm|inch(?:es)?|in|")'

SIGNS: tuple[Synonym, ...] = (
    row(
        ".-|. -|.—|.–",
        r"^(\s*(?:(?:to\s+)?(?:shape|divide)\b[a-z ]{2,30}?|(?:(?:left|right|front|back|sleeves?|neck(?:band)?|armhole|collar|cuffs?|welt|border|yoke|body|shoulders?|top|crown|heel|toe|foot|thumb|hand|leg)\b\s?)+(?:shaping)?))\s*\.\s?[-–—]+\s?(?=[A-Z])",
        r"\1: ",
        "Shape armholes.-Cast off 6 sts at beg of next 2 rows.",
    ),
    row("cm|in", rf"\b(work|cont(?:inue)?)\s+({_ONE_UNIT}\s*[(\[/]\s*{_ONE_UNIT}\s*[)\]]?)\s+(in\s+[^.;]*?)(?=\s*[.;]|\s*$)", r"\1 \3 for \2", "Work 2.5cm (1in) in k1, p1 rib."),
    row("~", r"~\s*(?=[\d¼½¾])", "about ", "Work even until piece measures ~12 cm."),
    row("sl-|s-", r"\b(?:sl|s)-(?=\d\b)", "sl ", "Row 2: Sl-1, k4, p to end."),
    row("sl", rf"\b(sl\s?1)\s+(?={_STITCH})", r"\1, ", "Row 2: Sl 1 k11 p8.", again=True),
    row("),|],", rf"([)\]])\s*,\s*(?={N}\s+times\b|twice\b)", r"\1 ", "(K1, p1), 3 times, k to end."),
    row("r", r"^(\s*)R\s?(\d+(?:\s*-\s*\d+)?)\s*(?=[:(.]|\s+and\b)", r"\1Row \2", "R5: K2, p to end.", exact=True),
    row("r", r"\b([Rr]ep(?:eat)?|[Aa]s|[Ss]ame\s+as)\s+R\s?(\d+)", r"\1 row \2", "Row 7: Repeat R5.", exact=True),
    row("all foll", r"\b(and\s+(?:all|every))\s+foll(?:owing)?\s+(?=(?:ws|rs|wrong|right|alt|even|odd))", r"\1 ", "Row 2 and all following WS rows: Purl."),
    row(
        "-",
        rf"\b({_FRACTIONS}\s*\(\s*{_FRACTIONS}(?:\s*,\s*{_FRACTIONS})*)\s*-\s*(?={_FRACTIONS}(?:\s*-\s*{_FRACTIONS})*\s*\)\s*{_UNIT})",
        r"\1, ",
        "Work even until piece measures 11 (11½-12) inches.",
        again=True,
    ),
    row("previously", r"\bpreviously\s+wrapped\b", "wrapped", "Row 3: Knit to 5 sts before previously wrapped st, w&t."),
    row("the next", r"\b(at\s+each\s+end\s+of)\s+the\s+(?=next\b)", r"\1 ", "Inc 1 st at each end of the next and every foll 4th row until there are 64 sts."),
    row("both ends", r"\bat\s+both\s+ends\s+of\b", "at each end of", "Decrease 1 st at both ends of next row."),
    row("across", r"((?:^|:)\s*)([kp]\s?\d+(?:(?:\s*,)?\s*[kp]\s?\d+)+)\s*,?\s+across(?=\s*[.]|\s*$)", r"\1(\2) to end", "Row 1: K1 p1, across."),
    row("rep", r"(\*[^*]*(?<!\*)[,;])\s*rep(?:eat)?\s+(?=(?:around|across|to\s+(?:the\s+)?end)\b)", r"\1 rep from * ", "Rnd 2: *K5, p2; rep around."),
    row("to|around", rf"((?:^|:)\s*)({_RIB})\s*,?\s+(?:(?:to\s+(?:the\s+)?end|(?:all\s+)?around|all\s+across)(?:\s+of\s+(?:the\s+)?{ROUND}|\s+the\s+{ROUND})?)(?=\s*[.]|\s*$|\s*,?\s*(?:and\s+)?turn\s*(?:[.]|$))", r"\1(\2) to end", "Round 1: K2, p2 to end of round."),
    row("to last", rf"((?:^|:)\s*)({_RIB})\s*,?\s+(?=to\s+(?:the\s+)?last\s+(?:{N}\s+)?{STS}\s*,?\s*[kp]\s?\d)", r"\1(\2) ", "Row 1: K2, p2 to last 2 sts, k2."),
    row("left", r"(?<=\*)\s*until\s+(?:one|1)\s+(?:st|stitch)\s+(?:left|rem(?:ain)?s?)\s*,?\s*(?=[kp])", r" to last 1 sts, ", "* k2tog * until one stitch left k1"),
    row("ridges", r"\s*\(\s*(?P<said>\d+\s+(?:garter\s+)?ridges(?:\s+of\s+garter(?:\s+st(?:itch)?)?)?)\s*\)", "", "Knit 8 rows (4 ridges of garter stitch)."),
    row("ready", r",?\s*ending\s+ready\s+to\s+(?:begin|work|start)\s+an?\s+ws\s+row\b", ", ending with a rs row", "Knit 7 rows, ending ready to begin a WS row."),
    row("ready", r",?\s*ending\s+ready\s+to\s+(?:begin|work|start)\s+an?\s+rs\s+row\b", ", ending with a ws row", "Knit 8 rows, ending ready to begin a RS row."),
    row("(place", r"(?<=[,;*])\s*\(\s*place\s+marker\s*\)\s*(?=[,;])", " pm", "K3, (place marker), k5, (place marker), k to end."),
    row("place", r"\s*\(\s*place\s+(?:(?:second|another|next|first)\s+)?(?:stitch\s+)?markers?\s*\)\s*,?", ", pm,", "Row 1: k11 (place stitch marker) p12, k12."),
    row("ro|rnd", rf"({_HEADED}.*(?:[.]|\s-)\s*)({N})(?=\s*[.]?\s*$)", r"\1\2 sts", "Round 3: [K11, k2tog] to end. 108."),
    row("ro|rnd", rf"({_HEADED}.*(?:\b(?:end|around|round|across)|[.])\s*)\(\s*({N})\s*\)(?=\s*[.]?\s*$)", r"\1(\2 sts)", "Rnd 8: K2tog around (36)."),
    row("manner", r"\b(work)\s+(?:in\s+(?:the\s+)?)?same\s+manner\s+as\s+(?=(?:the\s+)?(?:back|front|left|right|first|other|sleeve))", r"\1 as for ", "Work in same manner as back until piece measures 9 cm."),
)
"""The rows, in the order tried."""
