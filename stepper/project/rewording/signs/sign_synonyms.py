"""Other ways to write the same signs - hyphens, commas and brackets, rows called R - and short forms of today. No I/O."""

from __future__ import annotations

from stepper.project.grammar import stitch_words
from stepper.project.rewording.said_rows import said_row
from stepper.project.rewording.synonym import ROUND, STS, N, Synonym, row

_STITCH = rf"(?:[kp]\s?\d+|{stitch_words()})(?![\w&/-])"
_RIB = r"(?:k\s?\d+(?:\s?tbl)?\s*,?\s*p\s?\d+|p\s?\d+\s*,?\s*k\s?\d+(?:\s?tbl)?)"
"""Two kinds of stitches, each with its number, are what is repeated: a border in front of them would be a third."""
_HEADED = rf"^\s*(?:[a-z][a-z-]*\s+){{0,3}}(?:{ROUND}|(?:inc|dec)(?:rease)?\b)[^:.]*:"
"""The head of a row: behind its stitches a bare number can only be their count, which is compared."""
_ONE_UNIT = r'\d[\d\s./¼½¾⅛⅜⅝⅞]*(?:cm|mm|inch(?:es)?|in|")'
_TODAY = r"(?:^\s*|(?<=[.:;])\s*)"
_METHOD = r"(?:german|wrap\s+and\s+turn|shadow\s+wrap)\s+"

SIGNS: tuple[Synonym, ...] = (
    row(
        ".-|. -|.—|.–",
        r"^(\s*(?:(?:to\s+)?(?:shape|divide)\b[a-z ]{2,30}?|(?:(?:left|right|front|back|sleeves?|neck(?:band)?|armhole|collar|cuffs?|welt|border|yoke|body|shoulders?|top|crown|heel|toe|foot|thumb|hand|leg)\b\s?)+(?:shaping)?))\s*\.\s?[-–—]+\s?(?=[A-Z])",
        r"\1: ",
        "Shape armholes.-Cast off 6 sts at beg of next 2 rows.",
    ),
    row("cm|in", rf"\b(work|cont(?:inue)?)\s+({_ONE_UNIT}\s*[(\[/]\s*{_ONE_UNIT}\s*[)\]]?)\s+(in\s+[^.;]*?)(?=\s*,\s*ending\b|\s*[.;]|\s*,?\s*(?:and\s+)?then\b|\s*$)", r"\1 \3 for \2", "Work 2.5cm (1in) in k1, p1 rib."),
    row("~", r"~\s*(?=[\d¼½¾])", "about ", "Work even until piece measures ~12 cm."),
    row("sl-|s-", r"\b(?:sl|s)-(?=\d\b)", "sl ", "Row 2: Sl-1, k4, p to end."),
    row("sl", rf"\b(sl\s?1)\s+(?={_STITCH})", r"\1, ", "Row 2: Sl 1 k11 p8.", again=True),
    row("),|],", rf"([)\]])\s*,\s*(?={N}\s+times\b|twice\b)", r"\1 ", "(K1, p1), 3 times, k to end."),
    row("r", r"^(\s*)R\s?(\d+(?:\s*-\s*\d+)?)\s*(?=[:(.]|\s+and\b)", r"\1Row \2", "R5: K2, p to end.", exact=True),
    row("r", r"\b([Rr]ep(?:eat)?|[Aa]s|[Ss]ame\s+as)\s+R\s?(\d+)", r"\1 row \2", "Row 7: Repeat R5.", exact=True),
    row("all foll", r"\b(and\s+(?:all|every))\s+foll(?:owing)?\s+(?=(?:ws|rs|wrong|right|alt|even|odd))", r"\1 ", "Row 2 and all following WS rows: Purl."),
    row("previously", r"\bpreviously\s+wrapped\b", "wrapped", "Row 3: Knit to 5 sts before previously wrapped st, w&t."),
    row("both ends", r"\bat\s+both\s+ends\s+of\b", "at each end of", "Decrease 1 st at both ends of next row."),
    row("across", r"((?:^|:)\s*)([kp]\s?\d+(?:(?:\s*,)?\s*[kp]\s?\d+)+)\s*,?\s+across(?=\s*[.]|\s*$)", r"\1(\2) to end", "Row 1: K1 p1, across."),
    row("to|around", rf"((?:^|:)\s*)({_RIB})\s*,?\s+(?:(?:to\s+(?:the\s+)?end|(?:all\s+)?around|all\s+across)(?:\s+of\s+(?:the\s+)?{ROUND}|\s+the\s+{ROUND})?)(?=\s*[.]|\s*$|\s*,?\s*(?:and\s+)?turn\s*(?:[.]|$))", r"\1(\2) to end", "Round 1: K2, p2 to end of round."),
    row("to last", rf"((?:^|:)\s*)({_RIB})\s*,?\s+(?=to\s+(?:the\s+)?last\s+(?:{N}\s+)?{STS}\s*,?\s*[kp]\s?\d)", r"\1(\2) ", "Row 1: K2, p2 to last 2 sts, k2."),
    row("left", r"(?<=\*)\s*until\s+(?:one|1)\s+(?:st|stitch)\s+(?:left|rem(?:ain)?s?)\s*,?\s*(?=[kp])", r" to last 1 sts, ", "* k2tog * until one stitch left k1"),
    row("ridges", r"\s*\(\s*(?P<said>\d+\s+(?:garter\s+)?ridges(?:\s+of\s+garter(?:\s+st(?:itch)?)?)?)\s*\)", "", "Knit 8 rows (4 ridges of garter stitch)."),
    row("(place", r"(?<=[,;*])\s*\(\s*place\s+marker\s*\)\s*(?=[,;])", " pm", "K3, (place marker), k5, (place marker), k to end."),
    row("place", r"\s*\(\s*place\s+(?:(?:second|another|next|first)\s+)?(?:stitch\s+)?markers?\s*\)\s*,?", ", pm,", "Row 1: k11 (place stitch marker) p12, k12."),
    row("ro|rnd|inc|dec", rf"({_HEADED}.*(?:[.]|\s-)\s*)({N})(?=\s*[.]?\s*$)", r"\1\2 sts", "Round 3: [K11, k2tog] to end. 108."),
    row("ro|rnd|inc|dec", rf"({_HEADED}.*(?:\b(?:end|around|round|across)|[.])\s*)\(\s*({N})\s*\)(?=\s*[.]?\s*$)", r"\1(\2 sts)", "Rnd 8: K2tog around (36)."),
    # --- short forms and asides: "inc'ing", "from CO", "for buttonhole" ---
    row("ing", r"\b(inc|dec)'ing\b", r"\1reasing", "Knit 1 rnd, inc'ing 8 sts evenly around."),
    row("from co", r"\bfrom\s+(?:the\s+)?CO\b(?!\s+edge)", "from cast-on edge", "Knit every rnd until piece measures 14\" from CO.", exact=True),
    row("removing", r"\s*\(\s*removing\s+(?:(?:the|all|bor|side|raglan|underarm|beginning)\s+){0,2}(?:marker(s?)|m)\s*\)", r" removing marker\1", "Next rnd: [K to 4 sts before marker, BO 8 sts (removing marker)] twice."),
    row("w/", r"(?<![\w&/])w/\s*(?=[a-z])", "with ", "K20, CO 6 sts w/ backward loop, k20.", again=True),
    # Where the row ends its stitches are all worked, or it is refused: the place they reach says no more.
    row("to bor|to the bor", r"(?<=[\d)\]])\s+to\s+(?:the\s+)?BOR(?:\s+(?:marker|m)\b)?(?=\s*[.]|\s*$)", "", "Set-up rnd: K10, pm, k30 to BOR."),
    row("circ", r"\bcirc\b\.?(?!\w)", "circular needle", "With larger circ, k 4."),
    row("starting|beginning", rf"(\bchart(?:\s+[A-Z0-9])?)\s*,?\s+(?:starting|beginning)\s+(?:with|at|on)\s+{ROUND}\s+1(?=\s*[.,]|\s*$)", r"\1", "Work Chart A, starting with rnd 1."),
    row("across", r"\b(k|knit|p|purl)\s+across\s+(?:the\s+)?(?P<said>(?:left\s+|right\s+)?(?:back|front|sleeve|instep|sole|heel|body))(?:\s+sts)?\s+(?=to\s+(?:the\s+)?(?:next\s+)?(?:marker|m)\b)", r"\1 ", "K across back to marker, turn."),
    said_row("short row", rf"{_TODAY}(?P<said>work\s+(?:the\s+)?short[\s-]rows?\s+as\s+follows)\s*:?\s*$", "Work short rows as follows:"),
    row("short row", rf"{_TODAY}(work\s+{_METHOD}short[\s-]rows?)\s+(?P<said>as\s+follows)\s*:?\s*$", r"\1.", "Work German short rows as follows:", spelt_out=True),
    row("replace", r"(\bremove\s+(?:the\s+)?(?:bor\s+)?marker\b[^.;]*,\s*(?:and\s+)?)replace\s+(?:the\s+)?(?:bor\s+)?marker\s+(?=for\s+(?:the\s+)?(?:new\s+)?(?:bor|beg))", r"\1pm ", "Remove BOR marker, k5, replace marker for new BOR."),
    row("total", rf"\b(work\s+these\s+(?:\w+\s+)?{ROUND}\s+{N}\s+times)\s+(?:in\s+)?total\b", r"\1 in all", "Work these 2 rounds 16 times total."),
    row("cut|break", r"(\b(?:cut|break)\s+(?:off\s+)?(?:the\s+)?(?:yarn|tail)(?:[^.;]|(?<=\d)\.(?=\d))*?)\s*;\s*(?=(?:thread|draw|pull|run)\b)", r"\1, ", "Cut yarn; thread through rem sts and pull tight."),
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
