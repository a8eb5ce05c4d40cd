"""Other wordings for stitches laid over needles, counted on them, and worked needle by needle. No I/O.

A sock, mitten or hat in the round lies on several needles, and a page of today names them in many ways: "Ndl 2",
"second needle", "N2". They become `needle 2` first, so that every row behind these has one name of a needle to know.
What is counted on the needles behind a shaping ("14 sts on N1, 28 sts on N2") is compared with where they end.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import STOCKINETTE, STS, N, Synonym, row

_NEEDLE: Final = r"(?:needle|dpn)s?"
_FEW: Final = ("", "", "two", "three", "four")
_TAKEN: Final = r"(?:(?:the|all|these|your|rem(?:aining)?|live|foot|leg|sock|cuff)\s+)*"
_LAY: Final = rf"(?:(?:re-?)?(?:divide|arrange|distribute)|split|spread|place|put)\s+(?:{_TAKEN}{STS}\s*|them\s+)?(?:evenly\s+)?"
_OVER: Final = r"(?:over|onto|on|among|between|across|to)\s+(?:your\s+|the\s+)?"
_SO: Final = r"[:,(-]*\s*(?:(?:as\s+foll(?:ow)?s\s*:?|so\s+(?:that\s+)?(?:there\s+are|you\s+have)|with|having)\s*)?"
_ENDS: Final = r"\s*\)?(?=\s*[.;]|\s*$)"
_NEXT: Final = r"\s*(?:,\s*and|[,;]|and)\s+"
_FIRST: Final = {"the sts": rf"(?:across\s+)?(?:the\s+)?(?:{STS}\s+)?", "the first 4 sts": rf"(?:across\s+)?(?:the\s+)?(?:first\s+)?({N})\s+(?:{STS}\s+)?"}
_OF: Final = r"needles?\s*[1-5](?:\s*(?:,\s*and|,|and|&)\s*(?:needle\s*)?[1-5])*"
_PATT: Final = r"(?:patt(?:ern)?(?:\s+as\s+(?:set|est(?:ablished|\.)?))?|(?:est(?:ablished|\.)\s+)?patt(?:ern)?|[a-z'-]+\s+(?:patt(?:ern)?|rib(?:bing)?|st(?:itch)?|lace))"
_FLAT: Final = r"(?:\s+(?:back\s+and\s+forth(?:\s+in\s+rows)?|in\s+rows|flat))?"
_ALONE: Final = rf"\s+(?:over|on|across|using)\s+(?:just\s+|only\s+)?(?:(?:the\s+)?(?:heel\s+)?{STS}\s+(?:on|of)\s+)?needle\s+([1-5])(?:\s+only)?(?=\s*[.;,:]|\s*$)"
_FABRICS: Final = ((STOCKINETTE, "knit to end", "st st"), (rf"(?!{STOCKINETTE}){_PATT}", "work in pattern to end", "patt"))


def _items(needles: int) -> tuple[str, ...]:
    """Return the two ways to count what lies on each of some needles: number first, and needle first."""
    sign = r"\s*(?::|=|-+|\()\s*"
    behind = _NEXT.join(
        rf"({N})(?:\s+{STS})?\s+(?:(?:are|is)\s+)?on(?:to)?\s+(?:the\s+)?needle\s*{at}" for at in range(1, needles + 1)
    )
    before = r"\s*\)?[,;]?\s+(?:and\s+)?".join(rf"needle\s*{at}{sign}({N})\s+{STS}" for at in range(1, needles + 1))
    return behind, before


def _each_needle(needles: int) -> str:
    return ", ".join(rf"\{at} sts on needle {at}" for at in range(1, needles + 1))


def _laid(needles: int) -> tuple[Synonym, ...]:
    """Return the rows for stitches laid over some needles by a list, and for those counted on them."""
    few, each = _FEW[needles], _each_needle(needles)
    shown = ", ".join(f"16 sts on N{at}" for at in range(1, needles + 1))
    behind, before = _items(needles)
    moved = each
    for at in range(needles, 0, -1):
        moved = moved.replace(rf"\{at} ", rf"\{at + 1} ")
    figures = r"\s*([-/])\s*".join([r"(\d+)", r"(\d+)"]) + r"\s*\3\s*(\d+)" * (needles - 2)
    counted = ", ".join(rf"\{at + 1 if at == 1 else at + 2} sts on needle {at}" for at in range(1, needles + 1))
    return (
        row("needle 1", rf"(^\s*|[.:]\s+){_LAY}(?:{_OVER}(?:{few}|{needles})\s+{_NEEDLE}\s*)?{_SO}?{behind}{_ENDS}", rf"\1divide over {needles} needles, {moved}", f"Arrange sts so that there are {shown}."),
        row("needle 1", rf"(^\s*|[.:]\s+){_LAY}(?:{_OVER}(?:{few}|{needles})\s+{_NEEDLE}\s*)?{_SO}?{before}{_ENDS}", rf"\1divide over {needles} needles, {moved}", f"Divide sts as follows: {shown}.".replace("16 sts on N1", "N1: 16 sts").replace("16 sts on N2", "N2: 16 sts").replace("16 sts on N3", "N3: 16 sts").replace("16 sts on N4", "N4: 16 sts")),
        row("-|/", rf"(^\s*|[.]\s+){_LAY}{_OVER}(?:{few}|{needles})\s+{_NEEDLE}\s*{_SO}{figures}{_ENDS}", rf"\1divide over {needles} needles, {counted}", f"Divide sts over {few} needles: {'-'.join(['16'] * needles)}."),
        row("needle 1", rf"(\b(?:{STS}|rem(?:ain)?|times|more|once|twice|dec'?d|inc'?d|end))\s*[.,;:(=-]+\s*{behind}{_ENDS}", rf"\1. lying over {needles} needles, {moved}", f"Rep last 2 rnds until {needles * 16} sts rem - {shown}."),
    )


BY_NEEDLES: tuple[Synonym, ...] = (
    # --- what a needle is called ---
    row("needle", r"\b([1-4])(?:st|nd|rd|th)\s+needle\s*[:,]\s*(?=(?:in\s+patt(?:ern)?|rib)\b)", r"needle \1: ", "Rnd 1: 1st needle, knit. 2nd needle, in patt. 3rd needle, knit."),
    row("rib", r"(\bneedle\s*[1-4]\s*:\s*)rib(?=\s*[.;,]|\s*$)", r"\1work in rib", "Rnd 1: Needle 1: knit. Needle 2: rib. Needle 3: knit."),
    row("ndl", r"\bndl(s?)\.?\s*(?:#\s*|no\.?\s*)?(?=[1-5](?!\.?\d|\s*mm))", r"needle\1 ", "Ndl 1: K to last 3 sts, k2tog, k1; ndl 2: k1, ssk, k to end."),
    row("n1|n2|n3|n4", r"(?<!\w)N([1-5])((?:\s*,\s*N[1-5])*\s*,?\s*(?:and|&)\s*N[1-5])(?!\w)", r"needles \1\2", "N1 and N3: K to end. N2: Work in patt.", exact=True),
    row("n1|n2|n3|n4|n5", r"(?<!\w)N([1-5])(?!\w)", r"needle \1", "Arrange sts so there are 16 sts on N1 and 16 sts on N2.", exact=True),
    row("needle 1,|needle 2,|needle 3,|needles", r"(\bneedles?\s+[1-5](?:\s*,\s*[1-5])*\s*(?:,\s*and|,|and|&)\s*)needle\s+(?=[1-5])", r"\1", "N1, N2 and N3: K to end.", again=True),
    row("needle", r"\bneedles?\s+(?:#\s*|no\.\s*|number\s+)(?=[1-5]\s*[:;,.)]|[1-5]$)", "needle ", "Needle #1: K to end; needle #2: k to end."),
    # --- those of the first needle knitted once more ---
    *(
        row("needle", rf"((?:^|[.;,])\s*(?:and\s+|then\s+)?)(?:knit|k)\s+{_FIRST[told]}(?:of|from|on)\s+needle\s+1\s+(?:onto|on\s+to|with|using|to)\s+(?:the\s+)?(?:same\s+needle\s+as\s+)?needle\s+[345](?=\s*[.;,(-]|\s*$)", words, f"Knit {told} of N1 onto N3.")
        for told, words in (("the sts", r"\1k needle 1 to the new beginning"), ("the first 4 sts", r"\1k\2 sts to new beginning"))
    ),
    # --- how many lie on each ---
    row("each", rf"({N})(?:\s+{STS})?\s+each\s+on\s+(?:the\s+)?needles?\s+([1-5])\s*(?:and|&)\s*(?:needle\s+)?([1-5])\b", r"\1 sts on needle \2, \1 sts on needle \3", "Divide over three needles: 16 sts on N1, 8 sts each on N2 and N3."),
    row("per |needle tip|to a|to each|each dpn", rf"({N}\s+{STS})\s+(?:per|on\s+each|to\s+(?:a|each))\s+(?:needle(?:\s+tip)?|dpn)\b", r"\1 on each needle", "Divide evenly over 2 needles, 16 sts per needle."),
    row("on each needle", rf"(\b(?:{STS}|rem(?:ain)?|beginning))\s*[;:(-]+\s*({N}\s+{STS}\s+on\s+each\s+needle){_ENDS}", r"\1. \2", "Knit until there are 32 sts; 16 sts on each needle."),
    row("on each needle", rf"\b{_LAY}in\s+half\b\s*{_SO}({N}\s+{STS}\s+on\s+each\s+needle){_ENDS}", r"divide over 2 needles. \1", "Divide the stitches in half, so you have 16 stitches on each needle tip."),
    # a number of stitches is a count, and checked
    row("divid|distribut|arrang", rf"((?:^|[.])\s*)((?:re-?)?(?:divide|arrange|distribute))\s+{_TAKEN}({N})\s+{STS}\s+(?=(?:evenly\s+)?{_OVER}(?:two|three|four|[2-4])\s+{_NEEDLE})", r"\1\3 sts. \2 sts ", "Divide 64 sts over four needles: 16-16-16-16."),
    *(synonym for needles in (4, 3, 2) for synonym in _laid(needles)),
    # --- rows over the stitches on one of them ---
    row("heel|back and|in rows|flat", rf"(\b(?:heel(?:\s+flap)?|back\s+and\s+forth|in\s+rows|flat)\b[^.;:]*?\s)(?:over|on|across|with|using)\s+(?:just\s+|only\s+)?(?:the\s+)?({N})\s+(?:heel\s+)?{STS}\s+(?:on|of|from)\s+needle\s+([1-5])(?:\s+only)?(?=\s*[.;,:]|\s*$)", r"\1over next \2 sts on needle \3", "The heel flap is worked back and forth over the 16 sts on N1."),
    row("heel", rf"(^\s*|[.]\s+)(?P<said>(?:the\s+)?heel(?:\s+flap)?)\s+is\s+(?:now\s+)?(?:worked|knit(?:ted)?){_FLAT}{_ALONE}", r"\1work in rows over sts of heel on needle \3", "The heel is worked back and forth on N1 only."),
    row("heel", rf"(^\s*|[.]\s+)(?:now\s+)?work\s+(?P<said>(?:the\s+)?heel(?:\s+flap)?){_FLAT}{_ALONE}", r"\1work in rows over sts of heel on needle \3", "Work the heel back and forth over the sts on N1 only."),
    row("back and|in rows|flat", rf"(^\s*|[.]\s+)(?:you(?:\s+will|'ll)?\s+)?(?:now\s+)?work(?P<said>{_FLAT}){_ALONE}", r"\1work in rows over sts on needle \3", "Work back and forth on N1 only.", spelt_out=True),
    # --- what is worked on them ---
    row(
        "same as|rep|as for|as on|as needle",
        r"(needles?\s*([1-5])\s*:\s*)([^:.]*?)(\s*[;.]\s*(?:[^:]*:[^:]*[;.]\s*)??needle\s*[1-5]\s*:\s*)(?:(?:work\s+)?(?:the\s+)?same\s+as|rep(?:eat)?(?:\s+as\s+for)?|(?:work\s+)?as\s+(?:for|on)?)\s*needle\s*\2(?=\s*[.;(]|\s*$)",
        r"\1\3\4\3",
        "Needle 1: K1, ssk, k to last 3 sts, k2tog, k1. Needle 2: Same as Needle 1.",
        again=True,
    ),
    row("rep", r"(needle\s*1\s*:\s*)([^:.]*?)\s*[;.]\s*rep(?:eat)?\s+(?:for|on|across)\s+needle\s*2(?=\s*[.;(]|\s*$)", r"\1\2; needle 2: \2", "Needle 1: K1, ssk, k to last 3 sts, k2tog, k1. Repeat for Needle 2."),
    row("needle", rf"((?:^|[.;:])\s*(?:and\s+|then\s+)?)(k|knit|p|purl)\s+to\s+(end|last\s+{N}\s+{STS})\s+(?:of|on)\s+needle\s+([1-5])(?=\s*[,;.])(?=.*needles?\s+[1-5])", r"\1needle \4: \2 to \3", "Knit to last 3 sts of N1, k2tog, k1; knit across N2; on N3, k1, ssk, knit to end."),
    row("needle", rf"((?:^|[:.;,])\s*(?:and\s+|then\s+)?)(k|knit|p|purl)\s+(?:even\s+)?(?:(?:across|over)\s+)?(?:(?:all\s+)?{STS}\s+on\s+)?({_OF})(?=\s*[,;.]|\s+and\b)(?!.*\brows\s+over\b)(?=.*needles?\s+[1-5])", r"\1\3: \2 to end", "Knit across N1; N2: k1, ssk, k to end."),
    row("needle", rf"((?:^|[:.;])\s*)work\s+(?:(?:across|over)\s+)?(?:{STS}\s+on\s+)?({_OF})(?=\s*[;.])(?=.*needles?\s+[1-5])", r"\1\2: work to end", "Work N1; on N2, k1, ssk, k to end."),
    row("needle", rf"(\bneedles?\s*[1-5]\b.*?(?:[;.,]\s*(?:and\s+|then\s+)?|\band\s+))(k|knit|p|purl)\s+(?:(?:across|over)\s+)?(?:{STS}\s+on\s+)?({_OF})(?=\s*\.?\s*$)", r"\1\3: \2 to end", "N1: K1, ssk, k to end; knit N2."),
    row("needle", rf"((?:^|[:.;,])\s*(?:and\s+|then\s+)?)work\s+(?:even\s+)?in\s+patt(?:ern)?(?:\s+as\s+(?:set|est(?:ablished)?))?\s+(?:on|across|over)\s+(?:{STS}\s+on\s+)?({_OF})(?=\s*[,;.]|\s*$)", r"\1\2: work in pattern to end", "N1: K1, ssk, k to end; work in patt across N2."),
    row("needle", rf"((?:^|[:.;,])\s*(?:and\s+|then\s+)?)work\s+(?:even\s+)?(?:across\s+|over\s+)?({_OF})\s+in\s+patt(?:ern)?(?:\s+as\s+(?:set|est(?:ablished)?))?(?=\s*[,;.]|\s*$)", r"\1\2: work in pattern to end", "N1: K1, ssk, k to end; work N2 in patt."),
    *(
        row(
            "needle",
            rf"(^\s*|[.]\s+)(?:work|cont(?:inue)?)(?:\s+(?:even|straight))?\s*,?\s+(?:working\s+|keeping\s+|with\s+)?(?:(?:{STS}\s+on\s+)?({_OF})\s+in\s+{first}|in\s+{first}\s+on\s+({_OF}))"
            rf"\s*,?\s+(?:and\s+)?(?:(?:{STS}\s+on\s+)?({_OF})\s+in\s+{second}|(?:in\s+)?{second}\s+on\s+({_OF}))\s*,?\s+(?=(?:until|for)\b)",
            rf"\1\2\3: {one}; \4\5: {other}. rep last {what} ",
            f"Work even, working N1 and N3 in {shown} and N2 in {beside}, until foot measures 12 cm.",
        )
        for what in ("round",)
        for (first, one, shown), (second, other, beside) in (_FABRICS, _FABRICS[::-1])
    ),
)  # fmt: skip
"""The rows, in the order tried."""

_NAMED: Final = r"(?:N\s?|(?:needles?|ndls?\.?)\s*#?)"
_N12: Final = rf"{_NAMED}[1-5](?:\s*(?:,\s*and|,|and|&)\s*(?:{_NAMED})?[1-5])*(?!\w)"
_SET: Final = r"as\s+(?:set|est(?:ablished|\.)?)"
_WAIT: Final = r"(?:just\s+|simply\s+|now\s+)?(?:rests?|waits?|stays?|(?:are|is)\s+(?:not\s+worked|left\s+(?:alone|unworked))|remains?\s+(?:on\s+hold|unworked))"
_MEANWHILE: Final = r"(?:\s+(?:while|until|during)\s+(?:you\s+(?:work|knit|turn)\s+)?(?:(?:working|knitting|turning)\s+)?(?:the\s+)?heel(?:\s+(?:flap\s+)?is\s+(?:being\s+)?(?:worked|knitted|done|finished|complete|turned))?(?:\s+(?:back\s+and\s+forth\s+)?(?:on|over)\s+(?:N\s?|needle\s+)[1-5])?)?"

NEEDLE_BY_NEEDLE: tuple[Synonym, ...] = (
    row("same", r"(\b(?:needle\s*|N)1\s*:[^:]*?)\s*[.;,]\s*(?:and\s+)?((?:needle\s*|N)2)\s*:\s*(?:(?:exactly|the|do)\s+)*same(?:\s+again)?(?=\s*[.;(]|\s*$)", r"\1; \2: as needle 1", "Rnd 1: N1: k1, ssk, k to last 3 sts, k2tog, k1. N2: same."),
    row("same|rep", r"(\b(?:needle\s*|N)1\s*:[^:]*?)\s*[.;,]\s*(?:and\s+|then\s+)*(?:(?:(?:do|work|exactly|just|the)\s+)*same(?:\s+again)?|rep(?:eat)?)\s+(?:on|for|across)\s+(?:the\s+)?((?:needle\s*|N)2)(?=\s*[.;(]|\s*$)", r"\1; \2: as needle 1", "Rnd 1: Needle 1: k1, m1, k to last st, m1, k1. Same again on needle 2."),
    row("as needle|as n", r"((?:^|[;.,:])\s*(?:needles?\s*|N)\d)\s+(?=(?:the\s+)?(?:same\s+)?as\s+(?:needle\s*|N)\d)", r"\1: ", "Needle 1: k to last 3 sts, k2tog, k1; needle 2: k1, ssk, k to end; needle 3 as needle 1; needle 4 as needle 2."),
    # --- what is worked on each ---
    row("in patt", rf"((?:^|[.;:,])\s*(?:and\s+)?)(?:knit|work)\s+(?:across\s+)?(?:the\s+{STS}\s+(?:on|of)\s+)?({_N12})\s+in\s+patt(?:ern)?(?:\s+{_SET})?\s*[,;]\s*(?:and\s+)?(?:then\s+)?(knit|purl)\s+(?:across\s+)?({_N12})(?=\s*\.?\s*$)", r"\1\2: work in pattern to end; \4: \3 to end", "Knit across N1 in pattern, knit N2."),
    row("on each needle", r"((?:^|:)\s*)on\s+each\s+needle\s*[,:]\s*(?=[kps*(]|work)", r"\1each needle: ", "Dec rnd: On each needle, k1, ssk, k to last 3 sts, k2tog, k1."),
    row("*", rf"(\*[^*]*?\bto\s+last\s+{N}\s+{STS})\s+(?:of|on)\s+{_NAMED}1([^*]*\brep(?:eat)?\s+from\s+\*\s+(?:on|for|across)\s+){_NAMED}2(?!\w)", r"\1\2second needle", "Rnd 1: *K1, ssk, k to last 3 sts of N1, k2tog, k1; rep from * on N2."),
    row("*", rf"(\brep(?:eat)?\s+from\s+\*\s+(?:on|for|across)\s+){_NAMED}2(?!\w)", r"\1second needle", "Rnd 1: *K1, ssk, k to last 3 sts on needle, k2tog, k1; rep from * on N2."),
    row("half", rf"\*\s*((?:with\s+[A-Z]\w?,\s*)?)([^*;.]*?\b(?:k|knit|work)\s+to)\s+last\s+({N})\s+({STS})\s+of\s+(?:this|the|first|the\s+first)\s+half\s*,\s*([^*;.]*?)\s*[;,]\s*rep(?:eat)?\s+from\s+\*\s+(?:for|on|over|across)\s+(?:the\s+)?(?:second|other)\s+half\b", r"\1\2 \3 \4 before halfway, \5, \2 last \3 \4, \5", "Dec rnd: *K1, ssk, work to last 3 sts of this half, k2tog, k1; rep from * for second half."),
    # --- a stitch that changes needles ---
    row("so ", rf"\b(?:slip|move|transfer)\s+({N})\s+{STS}\s+from\s+({_NAMED}[1-5])\s+(?:on)?to\s+({_NAMED}[1-5])\s*,?\s+so\s+(?:that\s+)?(?:there\s+are|you\s+have)\s+(?=(?:{N})\s+{STS}\s+on\s+each\s+needle)", r"slip \1 sts from \2 to \3. ", "CO 40 sts. Divide over 2 needles. Move one stitch from N2 to N1, so that there are 20 sts on each needle."),
    said_row_behind("(a ", rf"(\b(?:slip|move|transfer)\s+(?:the\s+)?(?:first|last)\s+{STS}\s+(?:of|on|from)\s+{_NAMED}[1-5])\s*\(\s*(?P<said>an?\s+(?:purl|knit)(?:\s+{STS})?)\s*\)", "CO 40 sts. Divide over 2 needles. Slip the first st of N2 (a purl st) to the end of N1."),
    # --- how many lie on each ---
    row("1", rf"((?:^|[.;])\s*){_NAMED}1\s*:\s*({N})\s+{STS}\s*[.,;]\s*{_NAMED}2\s*:\s*({N})\s+{STS}(?=\s*\.?\s*$)", r"\1Lying over 2 needles, \2 sts on needle 1, \3 sts on needle 2", "CO 40 sts. Divide over 2 needles. Slip last st of N1 to N2. N1: 19 sts. N2: 21 sts."),
    row("2|two", rf"((?:^|[.])\s*){_LAY}{_OVER}(?:two|2)\s+{_NEEDLE}\s*[,:]\s*({N})(?:\s+{STS})?\s+for\s+(?:the\s+)?(?:back|front|instep|top)\s*(?:,\s*(?:and\s+)?|\s+and\s+)({N})(?:\s+{STS})?\s+for\s+(?:the\s+)?(?:palm|front|back|sole|heel){_ENDS}", r"\1divide over 2 needles, \2 sts on needle 1, \3 sts on needle 2", "Divide the sts over 2 needles, 24 for the back and 24 for the palm."),
    row("each half", rf"((?:^|[.])\s*)divide\s+(?:the\s+)?{STS}\s+(?P<said>for\s+(?:the\s+)?(?:back|front|palm|top)\s+and\s+(?:the\s+)?(?:back|front|palm|sole))\s*,?\s+with\s+({N}\s+{STS})\s+in\s+each\s+half(?:\s*,\s*beginning\s+at\s+the\s+(?:start|beginning)\s+of\s+the\s+(?:rnd|round))?{_ENDS}", r"\1divide over 2 needles. \3 on each needle", "Divide sts for back and palm with 24 sts in each half.", spelt_out=True),
    row("graft", rf"((?:^|[.])\s*)with\s+({N}\s+{STS}\s+on\s+each\s+needle)\s*,\s*(?=graft\b)", r"\1\2. ", "With 12 sts on each needle, graft the toe."),
    # --- how long ---
    said_row_behind("without", rf"(\bon\s+{_N12})\s*,\s*(?P<said>without\s+(?:further\s+|any\s+)?(?:decreasing|increasing|shaping|decreases|increases))\s*,(?=\s*(?:until|for)\b)", "Continue in patt on N1 and in St st on N2, without decreasing, until foot measures 18 cm."),
    row("with|working|keeping", rf"((?:^|[.])\s*)(?:cont(?:inue)?|work)(?:\s+(?:even|straight|{_SET}|in\s+this\s+(?:manner|way)))*\s*,?\s+(?:working|with|keeping)\s+(?:in\s+)?((?:[a-z'-]+\s+)?[a-z.]+(?:\s+st(?:itch)?)?)\s+on\s+({_N12})\s*,?\s+and\s+(?:in\s+)?((?:[a-z'-]+\s+)?[a-z.]+(?:\s+st(?:itch)?)?)\s+on\s+({_N12})\s*,?\s+(?=(?:until|for)\b)", r"\1Work, working in \2 on \3 and in \4 on \5, ", "Continue in this manner, with Lace Rib on N1 and stockinette on N2, until foot measures 18 cm."),
    row("with|working|keeping", rf"((?:^|[.])\s*)(?:cont(?:inue)?|work)(?:\s+(?:even|straight|{_SET}|in\s+this\s+(?:manner|way)))+\s*,?\s+(?:working|with|keeping)\s+(?={_N12}\s+in\b)", r"\1Work even, working ", "Work even as set, with N1 in pattern and N2 in St st, until foot measures 18 cm."),
    # --- those that wait ---
    said_row("rest|wait|stay|left|remain|not worked", rf"((?:^|(?<=[.])))\s*(?P<said>(?:the\s+)?(?:instep\s+)?(?:{STS}\s+(?:on|of)\s+(?:{_NAMED}[1-5](?!\w)|the\s+(?:instep|other\s+needles?))|{_NAMED}[1-5])\s+{_WAIT}{_MEANWHILE}|(?:the\s+)?instep\s+{STS}\s+{_WAIT}(?:\s+on\s+{_NAMED}[1-5])?{_MEANWHILE})\s*(?:[.]|$)", "The sts on N1 rest while the heel is being worked."),
)  # fmt: skip
"""The rows for lines that nothing else reads, in the order tried."""
