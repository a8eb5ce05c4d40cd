"""Lines printed without their verb: a fabric and how long it goes on, and what is said beside a change. No I/O."""

from __future__ import annotations

from stepper.project.rewording.synonym import LONG, ROUND, STS, N, Synonym, row

_FABRIC = (
    r"(?:(?:rev(?:erse)?\.?\s+)?(?:st\.?\s?st\.?|stockinette(?:\s+st(?:itch)?\.?)?|stocking\s+st(?:itch)?\.?)"
    r"|garter(?:\s+st(?:itch)?\.?)?|(?:seed|moss)\s+st(?:itch)?\.?|[1-9]\s?x\s?[1-9]\s+rib(?:bing)?)"
)
_FIRST = r"(^\s*|(?:^|[.:])\s*(?:[a-z][a-z ]*:\s*)?)"
"""Where a sentence begins, behind the name of its line if it has one."""
_COLOURED = r"[KkPp]\s?\d+\s+(?:in\s+|with\s+)?[A-Z]{1,2}"
_LENGTH = rf"(?:piece|work|it)\s+measures\s+{LONG}"

VERBLESS: tuple[Synonym, ...] = (
    row(
        "garter|seed|moss|st|x",
        rf"{_FIRST}({_FABRIC})\s*,?\s+(?:for\s+)?({N}\s+{ROUND})(?=\s*[,.;]|\s*$)",
        r"\1Work in \2 for \3",
        "Garter stitch for 6 rows.",
    ),
    row(
        "garter|seed|moss|st|x",
        rf"{_FIRST}({_FABRIC})\s+(?=for\s+{LONG}|until\s+{_LENGTH})",
        r"\1Work in \2 ",
        "Seed stitch for 4 cm.",
    ),
    row("rib for", rf"{_FIRST}rib\s+for\s+(?={N}\s+{ROUND}|{LONG})", r"\1Work in rib for ", "Rib for 8 rows."),
    row(
        "even|straight|plain",
        rf"{_FIRST}(knit|k)\s+(?:even|straight|plain)\s+(?=for\s+(?:{N}\s+{ROUND}|{LONG})|until\s+{_LENGTH})",
        r"\1\2 ",
        "Knit even for 3 inches.",
    ),
    row(
        "another",
        rf"\b(work|knit|k|purl|p)\s+another\s+({N})\s+({ROUND})(?:\s+(?:even|straight))?(?=\s*[,.;]|\s*$)",
        r"\1 \2 more \3",
        "Work another 6 rounds even.",
    ),
    row(
        "evenly",
        rf"\bevenly\s+(?:spaced\s+)?(?:on|over|in|across|around)\s+(?:the\s+)?(?=(?:next|last|following)\s+{ROUND})",
        "evenly across the ",
        "Inc 8 sts evenly spaced on next rnd.",
    ),
    row("pick up &", r"\bpick\s+up\s*&\s*(?:knit|k)\s*(?=\d)", "pick up and knit ", "Pick up & k 60 sts evenly around armhole."),
    row(
        "evenly",
        rf"\b(pick\s+up\s+(?:and|&)\s+(?:knit|k)\s*{N}\s+{STS})\s+evenly\s+(?=(?:around|along|across|from|on)\b)",
        r"\1 ",
        "Pick up and knit 60 sts evenly around armhole.",
    ),
    row("evenly", rf"\bevenly(?:\s+across\s+the\s+next\s+{ROUND})?\s*\(\s*({N}\s+{STS})\s*\)(?=\s*[.]?\s*$)", r"evenly. \1", "Dec 6 sts evenly across next round (74 sts)."),
    row(
        "place|pm",
        r"(^\s*)(place\s+(?:a\s+)?marker|pm)\s+at\s+(?:the\s+)?(?:beg(?:inning)?|start|end)\s+of\s+(?:the\s+)?(?:round|rnd)(?=\s*[.]?\s*$)",
        r"\1\2 for beg of rnd",
        "Pm at beg of rnd.",
    ),
    row(
        "kitchener",
        r"{_FIRST}(?:(?:use|using)\s+(?:the\s+)?kitchener(?:\s+st(?:itch)?)?\s+to\s+(?:close|graft|join)|close(?=[a-z ]+\b(?:with|using)\s+(?:the\s+)?kitchener\b))\s+(?:the\s+)?(toe|top|tip)(?:\s+(?:with|using)\s+(?:the\s+)?kitchener(?:\s+st(?:itch)?)?)?(?=\s*[.,]|\s*$)".replace("{_FIRST}", _FIRST),
        r"\1Graft the \2",
        "Use Kitchener stitch to close the toe.",
    ),
    row("around|end|across", rf"{_FIRST}({_COLOURED}(?:,\s*{_COLOURED})+)\s+(?:(?:all\s+)?around|(?:all\s+)?across|to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?{ROUND})?)(?=\s*[.]|\s*$)", r"\1(\2) to end", "K1 in MC, k3 in CC around.", exact=True),
    row(
        "work this|last dec|last inc|these dec|these inc",
        rf"{_FIRST}(?:work\s+this|(?:rep(?:eat)?|work)\s+(?:these|(?:the\s+)?last))\s+(dec|inc)(?:rease)?s?(?:\s+{ROUND})?\s+(?=(?:on\s+)?every\b)",
        r"\1\2 in this way ",
        "Work this decrease every 8th round 4 times more.",
    ),
    row("in this way every", r"\b(in\s+this\s+way\s+(?:on\s+)?every\s+\d+)\s+(round|rnd|row)s\b", r"\1th \2", "Inc in this way every 6 rnds 3 times in all."),
    row("m1", rf"{_FIRST}m1\s+(?=at\s+each\s+end\s+of\s+(?:the\s+)?next\b)", r"\1Inc 1 st ", "M1 at each end of next row."),
    row("around to", r"\b([kp])\s+around\s+(?=to\s+last\b)", r"\1 ", "Rnd 3: K2tog, k around to last 2 sts, ssk."),
    row(
        "join",
        r"\b((?:[Bb]reak|[Cc]ut|[Ff]asten)(?:\s+off)?\s+(?:yarn\s+)?[A-Z]{1,3}),\s*(?:and\s+)?(join\s+(?:in\s+)?[A-Z]{1,3})(?=\s*[.]|\s*$)",
        r"\1. \2",
        "Break MC, join CC.",
        exact=True,
    ),
)
"""The rows, in the order tried."""
