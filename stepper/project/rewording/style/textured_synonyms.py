"""Other wordings of lace and cables written out: the stitch at the spine, rows as rows, asides of a pattern. No I/O.

What is said of panels and borders beside the work is an aside only where it says that they go on as they are.
"""

from __future__ import annotations

from stepper.project.rewording.synonym import END, OFF, ROUND, STS, N, Synonym, row

_SPINE = r"(?:spine|backbone)"
_MIDDLE = r"(?:cent(?:er|re)|middle|spine)"
_PANELS = r"(?:(?:the|all|both|cable|lace|centre|center|side|garter|moss|seed|edge|st|stocking|stockinette|rib|rope)\s+)*(?:panels?|cables?|patt(?:ern)?s?|lace|borders?|edgings?|edges|bands?|sts|stitches|(?:moss|seed|garter|st|stocking)\s+st(?:itch)?)\b\.?"
_AS_THEY_ARE = r"(?:as\s+(?:set|established|before|given|they\s+are)|correct(?:ly)?(?:\s+(?:placed|positioned))?|in\s+place|in\s+patt(?:ern)?)"
_SIDES = r"(?:at|on|to)\s+(?:(?:each|both|either)\s+)?(?:the\s+)?sides?(?:\s+(?:edges?|of\s+(?:panels?|it|them)))?"
_AND_SIDES = rf"(?:\s*,?\s*(?:and|with)\s+(?:{_PANELS})\s+{_SIDES})?"
_REPEATS = r"(?:an?\s+|1\s+|one\s+|2\s+|two\s+)?(?:more|extra|additional)\s+(?:(?:patt(?:ern)?|lace)\s+)?(?:rep(?:eat)?s?|motifs?)(?:\s+of\s+(?:the\s+)?[a-z]+(?:\s+(?:patt(?:ern)?|lace))?)?"
_EACH_TIME = r"(?:each|every)\s+time|(?:on|in)\s+(?:each|every)\s+rep(?:eat)?"
_STITCH = r"(?:cent(?:er|re)|spine)"

TEXTURED: tuple[Synonym, ...] = (
    row("spine|backbone", rf"\b(?:the\s+)?{_SPINE}(?:\s+{STS})?", "centre st", "K3, yo, k to spine, yo, k1, yo, k to last 3 sts, yo, k3."),
    row("k cent|k the cent|knit cent|knit the cent|k mid", rf"\b(?:k|knit)\s+(?:the\s+)?{_MIDDLE}\s+st(?:itch)?(?=\s*[,;.]|\s*$)", "k1", "K3, yo, k to center st, yo, k center st, yo, k to last 3 sts, yo, k3."),
    row("p cent|p the cent|purl cent|purl the cent|p mid", rf"([,;*]\s*)(?:p|purl)\s+(?:the\s+)?{_MIDDLE}\s+st(?:itch)?(?=\s*[,;.]|\s*$)", r"\1p1", "*P1, k1; rep from * to 2 sts before center st, p2tog, p center st, p2tog tbl, *k1, p1; rep from * to end."),
    row("k|knit|knitting", rf"\b((?:work|knit)\s+even|work|patt(?:ern)?)\s*,\s*(?:knitting|k)\s+(?:all\s+)?(?:the\s+)?knits?(?:\s+{STS})?\s+and\s+(?:purling|p)\s+(?:all\s+)?(?:the\s+)?purls?(?:\s+{STS})?{END}", "work in pattern to end", "Rnd 2: Work even, knitting the knit sts and purling the purl sts."),
    row("k the knit|k all", rf"\bk\s+(?:all\s+)?(?:the\s+)?knit(?:\s+{STS})?\s+and\s+p\s+(?:all\s+)?(?:the\s+)?purl(?:\s+{STS})?(?:\s+as\s+they\s+(?:appear|face\s+you|come))?", "work in pattern to end", "All WS rows: K the knit sts and p the purl sts."),
    row("as for row|as for rnd|as for round|as rows", rf"^(\s*(?:{ROUND}\s+\d+\s*(?:-|to|and)\s*\d+\s*(?:\([rw]s\)\s*)?:\s*)?)work\s+(?:as\s+for|as|same\s+as)\s+(?=(?:rows|rnds|rounds)\s+\d+\s*(?:-|to|and)\s*\d+)", r"\1rep ", "Rows 11-14: Work as for rows 3-6."),
    row("again", rf"(\b(?:then\s+)?(?:work|rep(?:eat)?)\s+(?:rows|rnds|rounds)\s+\d+\s*(?:-|to|and)\s*\d+)\s+again{END}", r"\1 once more", "Rep rows 1-8 4 times more, then rep rows 1-4 again."),
    row("together over|tog over|together across|tog across|tog twice|together at|tog at", rf"\b((?:{OFF})[^.;:]*?)\s*,?\s+(?P<said>(?:and\s+)?working\s+(?:2|two)\s+(?:{STS}\s+)?tog(?:ether)?\s+(?:once\s+|twice\s+)?(?:over|across|at)\s+(?:(?:the\s+)?(?:top|centre|center)\s+of\s+)?(?:each|every|the|all)\s+cables?){END}", r"\1", "Cast off all sts loosely in patt, working 2 sts tog over each cable.", spelt_out=True),
    row("with|keeping", rf"(\b(?:in\s+this\s+(?:way|manner)|as\s+(?:set|established|before)|thus|in\s+patt(?:ern)?(?:\s+as\s+(?:set|established))?))\s*,\s*(?P<said>(?:with|keeping)\s+{_PANELS}\s+{_AS_THEY_ARE}{_AND_SIDES})\s*,?\s+(?=until\b|for\b|inc|dec|shap|cast|bind|work\b)", r"\1, ", "Cont in this way, with panels as set and moss st at sides, inc 1 st at each end of every 6th row 3 times.", spelt_out=True),
    row("way|manner", rf"^(\s*cont(?:inue)?)\s+(?:to\s+work\s+)?in\s+this\s+(?:way|manner|fashion)\s*,?\s+(?=(?:inc|dec)\w*\.?\s+{N}\s+{STS}\s+(?:at\s+)?(?:each|both|either)\s+ends?\b)", r"\1 as set, ", "Cont in this way, inc 1 st at each end of every 6th row 3 times."),
    row("more|extra|additional", rf"(\brep(?:eat)?\s+(?:these|the\s+last|last|{ROUND}\s+\d+\s*(?:-|to|and)\s*\d+)[^.;:,]*?(?:times(?:\s+more)?|twice(?:\s+more)?|once\s+more|more))\s*,\s*(?P<said>(?:but\s+)?(?:working|with)\s+{_REPEATS}(?:\s+(?:(?:at|on)\s+(?:each|either|both)\s+sides?(?:\s+of\s+(?:the\s+)?{_STITCH}(?:\s+st(?:itch)?)?)?|between\s+(?:the\s+)?(?:markers|corners|edges)))?(?:\s+(?:{_EACH_TIME}))?){END}", r"\1", "Repeat these 8 rows 3 more times, working one more repeat of the lace on each side every time.", spelt_out=True),
    row("not turn", rf"((?:^|[.;,])\s*)(?P<said>do\s+not\s+turn\s+at\s+(?:the\s+)?end\s+of\s+(?:the\s+)?(?:last\s+|this\s+|final\s+)?{ROUND}){END}", r"\1", "Do not turn at the end of the last row.", spelt_out=True),
    row("and inc|and dec", rf"(\bending\s+with\s+(?:an?\s+|the\s+)?(?:{ROUND}\s+\d+|\d+(?:st|nd|rd|th)\s+{ROUND}))\s+and\s+(?=(?:inc|dec)\w*\.?\s+{N}\b)", r"\1, ", "Work 7 cm in rib, ending with a 1st row and inc 4 sts evenly across last row."),
    row("not press|not iron|not steam|not flatten", rf"(?:(^|[.])\s*|\s*[;,]\s*(?:but\s+)?)(?P<said>do\s+not\s+(?:press|iron|steam|flatten|over-?press)(?:\s+(?:the\s+)?(?:ribs?|ribbing|cables?|bobbles?|lace|moss\s+st(?:itch)?|garter\s+st(?:itch)?|knitting|work|pieces?|bands?))?){END}", r"\1", "Do not press. Join shoulder seams.", spelt_out=True),
)  # fmt: skip
"""The rows, in the order tried."""

_ROW_OF_RIB = rf"beg(?:in(?:ning)?)?\.?\s+with\s+(?:an?\s+|the\s+)?(?:{ROUND}\s+(\d{{1,2}})|(\d{{1,2}})(?:st|nd|rd|th)\s+{ROUND})(?:\s+of\s+(?:the\s+)?rib)?"

RIBS_BEGUN: tuple[Synonym, ...] = (
    row("rib", rf"^(\s*){_ROW_OF_RIB}\s*,?\s+(work)\s+({N}\s+{ROUND})\s+(?:in\s+)?((?:k\s?\d+\s*,?\s*p\s?\d+|\d\s?x\s?\d)\s+rib(?:bing)?){END}", r"\1\4 \5 in \6 beginning with row \2\3", "Beg with a 2nd row, work 5 rows in k1, p1 rib."),
    row("rib", rf"^(\s*){_ROW_OF_RIB}\s*,?\s+(work\s+in\s+(?:k\s?\d+\s*,?\s*p\s?\d+|\d\s?x\s?\d)\s+rib(?:bing)?)\s+(?=for\b|until\b)", r"\1\4 beginning with row \2\3 ", "Beg with a 2nd row, work in k2, p2 rib for 6 cm."),
    row("as-", rf"^(\s*){_ROW_OF_RIB}\s*,?\s+(work\s+in\s+as-[a-z ]+?rib)\s+(?=for\b|until\b)", r"\1\4 beginning with row \2\3 ", "Beg with a 2nd row, work 5 rows in rib as given for back."),
    row("as-", rf"(\bwork\s+in\s+as-[a-z ]+?rib)\s+((?:for|until)\s+[^.;,]*?)\s*,\s*{_ROW_OF_RIB}{END}", r"\1 beginning with row \3\4 \2", "Work 5 rows in rib as given for back, beg with a 2nd row."),
)  # fmt: skip
"""The row of a part's rib with which another begins, once the rib is called by its part."""
