"""Other wordings for how long a repeat or a stretch of a row goes on: "until". No I/O."""

from __future__ import annotations

from stepper.project.rewording.synonym import ROUND, STS, N, Synonym, row

_WORK = r"(?:k|p|knit|purl|work)"
_MANNER = (
    r"(?:in\s+(?:this|the\s+same|that)\s+(?:manner|way|fashion)|as\s+(?:set|established|before)|thus|in\s+this\s+sequence)"
)
_GO_ON = r"(?:cont(?:inue)?|work|keep\s+on|carry\s+on|proceed|go\s+on)(?:\s+(?:working|dec(?:reas)?ing|shaping|to\s+(?:dec(?:rease)?|work)))?"
_LESS = (
    r"(?:working|having|with|knitting|leaving|and\s+work(?:ing)?)\s+(?:1|one)\s+(?:(?:st|stitch)\s+(?:less|fewer)|(?:less|fewer)\s+(?:st|stitch))\s+between\s+(?:the\s+)?dec(?:rease)?s"
    r"(?:\s+(?:each\s+time|each\s+dec(?:rease|reasing)?\s+(?:round|rnd|row)|(?:on|in|at)\s+(?:each|every)(?:\s+(?:foll(?:owing)?|subsequent|succeeding|successive))?\s+dec(?:rease|reasing)?\s+(?:round|rnd|row)))?"
)
_SHAPING = r"(?:\s*,?\s+(?:inc(?:reas)?(?:ing)?|dec(?:reas)?(?:ing)?|shaping)(?:\s+as\s+(?:set|established|before))?)?"
_DONE = r"(?:(?:have|has)\s+been|are)\s+(?:worked|knitted|knit|completed?)"
_RIGHT = r"(?:right|rh|r\.h\.|right[-\s]hand)"
_BOUND = (
    rf"(?:(?:bo|(?:bind|cast)\s+off)\s+(?:(?:the\s+)?(?:next|first)\s+)?{N}(?:\s+{STS})?"
    r"(?:\s+(?:for|at)\s+(?:the\s+)?(?:(?:left|right|front|back)\s+)?(?:underarm|armhole|neck|neckline|thumb|shoulder|buttonhole))?"
    r"\s*,\s*(?:then\s+|and\s+)?)"
)
_AFTER_BOUND = r"after\s+(?:the\s+)?(?:bo\b|bind[-\s]?off|cast[-\s]?off|binding\s+off|casting\s+off|(?:bound|cast)-?\s?off(?:\s+(?:sts|stitches|edge))?)\b"

UNTIL: tuple[Synonym, ...] = (
    row(
        "between",
        rf"(^\s*|[.!]\s*)(?:cont(?:inue)?|work)\s+(?:even\s+)?{_MANNER}\s*,\s*(?P<said>(?:working|keeping)\s+(?:the\s+)?(?:[a-z]+\s+){{1,3}}?"
        rf"(?:panel|cable|chart|lace|pattern|motif)s?(?:\s+[a-z0-9])?\s+between\s+(?:the\s+)?markers?(?:\s+and\s+(?:all\s+)?(?:the\s+)?(?:rem(?:aining)?|other)\s+{STS}"
        r"\s+in\s+(?:rev(?:erse)?\.?\s+)?(?:st\.?\s?st|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?|garter(?:\s+st(?:itch)?)?))?)\s*,?\s+(?=until\b|for\b)",
        r"\1work even in pattern ",
        "Continue in this manner, working cable panel between markers and rem sts in st st, until leg measures 20 cm.",
        spelt_out=True,
    ),
    row(
        "inc|dec",
        rf"(^\s*|[.!]\s*)(?:cont(?:inue)?|keep|carry\s+on|go\s+on)\s+(?:to\s+)?(?:(inc)|(dec))(?:rease|reasing|\.)?\s*,?\s+{_MANNER}\s*,?\s+(?![^.;]*\b(?:less|fewer)\s+between\b)(?=(?:on\s+)?(?:every|each)\s[^.;]*?\b(row|rnd|round)s?\b)",
        r"\1rep alike \2\3 \4 ",
        "Continue decreasing in this way every other round until 16 sts remain.",
    ),
    row(
        "between",
        rf"(^\s*|[.!]\s*){_GO_ON}(?:\s+{_MANNER})?\s*,?\s+((?:on\s+)?(?:every|each)\s+(?:\S+\s+)?(?:round|rnd|row))\s*,?\s+{_LESS}\s*,?\s+(?=until\s+(?:there\s+are\s+)?{N}\s+{STS})",
        r"\1rep closer dec rnd \2 ",
        "Continue in this manner every 2nd rnd, working 1 st less between decreases each time, until 12 sts remain.",
    ),
    row(
        "between",
        rf"(^\s*|[.!]\s*)(?:{_GO_ON}(?:\s+{_MANNER})?|rep(?:eat)?\s+(?:the\s+)?(?:last|these)\s+(?:2|two)\s+(?:rounds|rnds|rows))\s*,?\s+{_LESS}\s*,?\s+(?=until\s+(?:there\s+are\s+)?{N}\s+{STS})",
        r"\1rep onwards dec rnd ",
        "Continue in this manner, working 1 st less between decreases on each following dec round, until 12 sts remain.",
    ),
    row("every|each", rf"\b(rep(?:eat)?\s+(?:round|rnd|row)\s+\d+)\s+(?:on\s+)?(?:every|each)\s+(?:round|rnd|row)\s+(?=until\s+{N}\s+{STS})", r"\1 ", "Rep rnds 1 and 2 until 32 sts remain, then rep rnd 1 every round until 16 sts remain."),
    row(
        "in this|in the same|in that|as set|as est|as before|thus",
        rf"(^\s*|[.!]\s*)(?:cont(?:inue)?|work|keep\s+on|carry\s+on|proceed|go\s+on)(?:\s+(?:working|inc(?:reas)?ing|dec(?:reas)?ing|shaping|to\s+(?:inc|dec)(?:rease)?))?"
        rf"(?:\s+even)?\s+{_MANNER}{_SHAPING}\s*,?\s+(?=until\s+(?:there\s+are\s+|you\s+have\s+)?{N}\s+{STS})",
        r"\1repeat last rounds ",
        "Continue in this manner until there are 26 sts on needle.",
    ),
    row(
        "needle",
        rf"((?:^|[:.])\s*{_BOUND}?)({_WORK})\s+(?P<said>until\s+(?:there\s+are\s+|you\s+have\s+)?({N})\s+{STS}\s+"
        rf"(?:are\s+)?on\s+(?:the\s+)?{_RIGHT}\s+needle(?:\s+{_AFTER_BOUND})?)",
        r"\1\2 \4",
        "BO 4 sts, knit until there are 10 sts on right needle after BO, BO 4 sts, knit to end.",
        again=True,
        spelt_out=True,
    ),
    row(
        "needle",
        rf"(\b{_BOUND})({_WORK})\s+(?P<said>until\s+(?:there\s+are\s+|you\s+have\s+)?({N})\s+{STS}\s+"
        rf"(?:are\s+)?on\s+(?:the\s+)?{_RIGHT}\s+needle\s+{_AFTER_BOUND})",
        r"\1\2 \4",
        "K4, BO 4 sts for thumb, knit until there are 10 sts on right needle after BO, k to end.",
        again=True,
        spelt_out=True,
    ),
    row(
        "until",
        rf"\b({_WORK})\s+until\s+({N})\s+{STS}\s+(?:rem(?:ain)?s?|(?:are\s+)?left)\b(?=\s*,[^,.]*\b(?:twice|times)\b)",
        r"\1 to last \2 sts",
        "Knit until 4 sts rem, k2tog twice.",
    ),
    row(
        "until all",
        rf"\b({_WORK})\s+until\s+(?:all\s+(?:the\s+)?{STS}|the\s+end\s+of\s+(?:the\s+)?(?:rnd|round|row))\s+(?:have\s+been|are)\s+worked\b",
        r"\1 to end",
        "Purl until all sts have been worked.",
    ),
    row(
        "until all",
        rf"\b(?P<said>until\s+all\s+(?:the\s+)?(?:(?:gusset|heel|flap|side|heel\s+flap)\s+)?{STS}\s+(?:have\s+been|are)\s+(?:worked|used(?:\s+up)?|decreased))"
        rf"\s*[.;,:-]\s*\(?\s*({N}\s+{STS})(?:\s+rem(?:ain)?)?\s*\)?(?=\s*\.?\s*$)",
        r"until \2 rem",
        "Rep last round until all gusset sts have been worked. 18 sts rem.",
        spelt_out=True,
    ),
    row(
        "worked|complete|knit",
        rf"^((?:(?!\bchart\b).)*?)\buntil\s+(?:a\s+total\s+of\s+({N}\s+{ROUND})\s+{_DONE}|({N}\s+{ROUND})\s+{_DONE}\s+(?:in\s+(?:all|total)|altogether|from\s+(?:the\s+)?(?:cast-?\s?on(?:\s+edge)?|beg(?:inning)?)))",
        r"\1until \2\3 altogether",
        "Work even until 6 rows have been completed from cast-on edge.",
    ),
    row(
        "worked|complete|knit",
        rf"^((?:(?!\bchart\b).)*?)\buntil\s+({N}\s+{ROUND})\s+{_DONE}(?=\s*[.,]|\s*$)",
        r"\1until \2 so far",
        "Knit until 12 rounds have been worked.",
    ),
)
"""The rows, in the order tried."""
