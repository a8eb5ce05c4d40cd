"""Other wordings of pages put into English from elsewhere: threads for markers, "in each side", "(= front)". No I/O.

Such pages say on which side of a thread stitches are worked, what a number of stitches is for behind an equals sign,
how often a shaping is worked in all before they say where, and list what is bound off at both sides step by step.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.synonym import STS, N, Synonym, row

_OFF: Final = r"(?:bind|cast)\s+off|bo"
_CHANGE: Final = r"(?:inc|dec)(?:reas(?:e|ing))?\b\.?"
_SIDE: Final = r"(?:in|on|at)\s+(?:the\s+)?(?:each|both|either)\s+sides?"
_STEP: Final = rf"{N}\s+{STS}\s+{N}\s+times?"

_THUS: Final = r"(?:as\s+foll(?:ow)?s|like\s+this|thus|in\s+this\s+(?:way|manner))"

TRANSLATED: tuple[Synonym, ...] = (
    row("as foll|like this|thus", rf"^(\s*)(?:now\s+)?(?:(?:on\s+)?(?:the\s+)?next\s+(row|rnd|round)(?:\s+is\s+(?:worked|knitted)|\s*,?\s+(?:work|knit))?|(?:work|knit)\s+(?:the\s+)?(?:next|1|one)\s+(row|rnd|round))\s+{_THUS}\s*:\s*(?=\S)", r"\1Next \2\3: ", "Next round is worked as follows: K2, k2tog, k to end."),
    row("mm", r"\b((?:change|switch)\s+to|with|using)\s+(?:the\s+)?((?:circular|straight)\s+needles?|dpns)\s+(?:size\s+|no\.?\s+)?(\d+(?:\.\d+)?\s*mm)\b", r"\1 \3 \2", "Change to circular needle 2.5 mm."),
    row("side", r"^(\s*)(knit|purl)\s+(?:1|one)\s+row\s+(?:back\s+)?(?:from|on)\s+the\s+(right|wrong)\s+side(?=\s*\.?\s*$)", r"\1with \3 side facing, \2 1 row", "Purl 1 row from the wrong side."),
    row("divided|split", r"\bfrom\s+where\s+(?:it|the\s+(?:work|piece|body|stitches))\s+(?:was|were)\s+(?:divided|split)\b", "from the divide", "Knit until body measures 12 cm from where it was divided."),
    row("front", rf"^(\s*(?:there\s+are\s+(?:now\s+)?)?)({N}\s+{STS})\s+(?:on|in|for)\s+(?:the\s+)?front\s+and\s+(?:(?:on|in|for)\s+)?(?:the\s+)?back(?=\s*\.?\s*$)", r"\2 each for front and back", "There are 12 sts on the front and on the back."),
    row(":=|: =|:.", rf"^\s*(?P<said>[a-z][a-z -]{{1,30}}):\s*[=.]\s*({N}\s+{STS}\s*\.?\s*)$", r"\2", "Body: = 24 sts."),
    row("thread", r"\b(?:marker|marking)\s+threads?\b", "marker", "Knit to 1 st before the marker thread, yo, k2, yo, k to end."),
    row("new", rf"\b((?:cast\s+on|co)\s+{N})\s+(?P<said>new)\s+(?={STS})", r"\1 ", "K12, hold 10 sts, cast on 4 new sts, k to end.", spelt_out=True),
    row("(=|( =", rf"((?:{N}\s+{STS}|\b[kp]\s?{N}))\s*\(\s*=\s*(?P<said>(?:the\s+)?[a-z][a-z ]*)\)", r"\1", "Knit 12 sts (= half back piece), hold 10 sts, k to end."),
    row("without", r"\b(knit|purl)\s+without\s+(?:any\s+|further\s+)*(?:increas|decreas)ings?\s+(?=until\b|for\b)", r"\1 ", "Knit without decreasing until piece measures 12 cm."),
    row("without", r"\b(work|cont(?:inue)?)\s+without\s+(?:any\s+|further\s+)*(?:increas|decreas)ings?\s+(?=until\b|for\b)", r"\1 even ", "Work without increasing until piece measures 12 cm."),
    row("without", r"\b(in\s+(?:st\.?[\s-]?st|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?|garter(?:\s+st(?:itch)?)?)\.?)\s*,?\s+without\s+(?:any\s+|further\s+)*(?:increas|decreas)ings?(?=\s+(?:until|for)\b|\s*\.?\s*$)", r"\1", "Work 2 cm in stocking stitch without decreasing."),
    row("inside|within", rf"^([^.]*?\b{_CHANGE}\s+{N}\s+{STS}[^.,]*?)\s*,?\s+(?:inside|within)\s+({N})\s+edge\s+{STS}\s*,?\s+([^.]*?)(?=\s*[.]|\s*$)", r"\1 \3, worked \2 sts in from edge", "Dec 1 st at each side on every 2nd row, inside 1 edge st, 4 times."),
    row("side", rf"\b({_CHANGE}\s+{N}\s+{STS})\s+(?:in|on)\s+(?:the\s+)?(?:each|both|either)\s+sides?\s*,?\s+(?=on\b|every\b|each\b|in\s+every\b|of\b)", r"\1 at each side ", "Decrease 1 st in each side on every 2nd row 4 times."),
    row("side", rf"\b({_OFF})\s+(?:for\s+(?:the\s+)?[a-z]+\s+)?at\s+(?:the\s+)?beg(?:inning)?\s+of\s+(?:each|every)\s+row\s*,?\s+{_SIDE}\s*:\s*(?={_STEP})", r"\1 at each side: ", "Cast off at the beginning of each row in each side: 3 sts 2 times and 2 sts 1 time."),
    row("side", rf"\b({_OFF})\s+(?:for\s+(?:the\s+)?[a-z]+\s+)?{_SIDE}\s*:\s*({N}\s+{STS})\s+({N})\s+times?\b\s*(?:,|and)\s*(?:and\s+)?(?:then\s+)?(?={_STEP})", r"\1 \2 at each side \3 times. \1 at each side: ", "Bind off at each side: 3 sts 2 times, 2 sts 2 times.", again=True),
    row("side:|sides:|side :|sides :", rf"\b({_OFF})\s+{_SIDE}\s*:\s*({N}\s+{STS})\s+({N})\s+times?\b(?=\s*[.,;=]|\s*$)", r"\1 \2 at each side \3 times", "Bind off at both sides: 3 sts 2 times."),
)  # fmt: skip
"""The rows, in the order tried."""
