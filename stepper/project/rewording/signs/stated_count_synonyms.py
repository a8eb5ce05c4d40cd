"""Other wordings of counts behind a row - of a part, several in one bracket - and of "round(s)". No I/O.

A count of a part is checked for that part: "3 gusset sts" are those between its markers, "20 sts each for front and
back" are half of all. Whose stitches were gained or lost changes nothing in how many there are.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.synonym import N, Synonym, row

_S: Final = r"(?:sts|stitches|st|stitch)\b"
_PART: Final = (
    r"(?:(?:left|right|front|back|side|sleeve|body|border|band|heel|instep|sole|gusset|thumb|hand|palm|underarm|neck|collar|cuff|"
    r"hem|yoke|toe|foot|leg|crown|raglan|armhole|shoulder|edge)\s+){1,3}"
)
_CHANGED: Final = r"(?:inc|dec)(?:reased|r|'d)?\b\.?"
_TAIL: Final = rf"(?:\s+(?:rem(?:ain(?:ing)?)?\b\.?|{_CHANGED}|total|in\s+all))?"
_E: Final = r"(?=\s*[\])]?\s*[.;]?\s*$|\s*[.;])"

WRITTEN_FORMS: tuple[Synonym, ...] = (
    row("in all", rf"(\brep(?:eat)?\.?\s+from\s+\*\s*{N}\s+times)\s+in\s+all\b", r"\1 in total", "*K3, k2tog; rep from * 4 times in all, k to end."),
    row("=", rf"(?<=[a-z\d])\s*=\s*({N}\s+{_S})\s+(?:left|rem(?:ain(?:ing)?)?|on\s+(?:the\s+)?needles?|in\s+all)(?=\s*\.?\s*$)", r". \1", "Knit 2 rounds = 24 sts left."),
    row("(es)|(s)", r"\b(?:st(?:itch)?)\((?:e?s)\)", "sts", "Bind off the rem 3 st(s)."),
    row("(s)", r"\b(rnd|round|row|time|repeat|ridge|marker|needle)\(s\)", r"\1s", "Work 1 (2, 2) rnd(s) even."),
    row("make ", r"\bmake\s+(?:1|one|a|an)\s+(?:yarn[\s-]?over|yo)\b", "yo", "Row 3: Knit 3, make 1 yarn over, knit 2 together, knit to end."),
)  # fmt: skip
"""The rows for single words, tried before numbers are looked at."""

STATED_COUNTS: tuple[Synonym, ...] = (
    row("size", rf"({N}\s+{_S}{_TAIL})\s*,?\s+(?:(?:for|in|on)\s+)?(?:all|every|each)\s+sizes?{_E}", r"\1", "K2tog around. 6 sts rem for all sizes."),
    row("gusset|thumb", rf"((?:^|[-.;:,(\[]|\band)\s*{N})\s+(gusset|thumb)\s+{_S}{_E}", r"\1 sts of \2", "Rnd 3: Knit to m, m1r, sm, k to end. 41 sts; 5 thumb sts."),
    row("-", rf"(-\s*{N})\s+(?P<said>{_PART})(?={_S}{_TAIL}{_E})", r"\1 ", "Knit to end-44 body sts.", spelt_out=True),
    row(";", rf"({N}\s+{_S}{_TAIL})\s*;\s*(?:and\s+)?(?={N}\s+{_S}(?:{_TAIL}{_E}|\s+(?:between|of)\b))", r"\1. ", "K2tog around-6 sts dec'd; 6 sts rem.", again=True),
    row("[", rf"\[\s*({N}\s+{_S}{_TAIL}\s*\.\s*{N}\s+{_S}(?:{_TAIL}))\s*\]", r"(\1)", "K2tog around. [6 sts decreased; 6 sts rem]"),
    row(";", rf"(?<=\w)\s*;\s+(?={N}\s+sts\s+of\s+(?:gusset|thumb)\s*\.?\s*$)", ". ", "Rnd 3: Knit to m, m1r, sm, k to end; 5 thumb sts."),
)  # fmt: skip
"""The rows for counts, in the order tried."""
