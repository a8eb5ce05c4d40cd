"""Lists of sizes in the dress of printed pages, and counts behind a row: of a part, several in one bracket. No I/O.

A bracket of numbers alone behind a number is a list of sizes wherever it stands: nothing else is printed so.

A count of a part is checked for that part: "3 gusset sts" are those between its markers, "20 sts each for front and
back" are half of all. Whose stitches were gained or lost changes nothing in how many there are.
"""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import ROUND, STS, N, Synonym, row

_LIST = r"\d+(?:\s*[,;:/-]\s*\d+)*"
_TENTHS = r"\d+(?:\.\d+)?(?:\s*[¼½¾⅛⅜⅝⅞]|\s+[1-7]/[248])?"
_LENGTH_LIST = rf'{_TENTHS}\s*(?:"|in|cm)?(?:\s*[,;]\s*{_TENTHS}\s*(?:"|in|cm)?)*'
_COUNTED = rf"\d+(?:\s*[(\[]\s*{_LIST}\s*[)\]])?"
_SAYS = r"(?:there\s+(?:are|will\s+be|should\s+(?:now\s+)?be)|you(?:\s+(?:will|should))?(?:\s+now)?\s+have|now\s+you\s+have)(?:\s+now)?(?:\s+a\s+total\s+of)?"
_HERE = r"(?:\s+(?:on|in)\s+(?:(?:the|your|each)\s+)?needles?|\s+(?:in\s+(?:all|total)|total))?"
_S = r"(?:sts|stitches|st|stitch)\b"
_PART = (
    r"(?:(?:left|right|front|back|side|sleeve|body|border|band|heel|instep|sole|gusset|thumb|hand|palm|underarm|neck|collar|cuff|"
    r"hem|yoke|toe|foot|leg|crown|raglan|armhole|shoulder|edge)\s+){1,3}"
)
_CHANGED = r"(?:inc|dec)(?:reased|r|'d)?\b\.?"
_TAIL = rf"(?:\s+(?:rem(?:ain(?:ing)?)?\b\.?|{_CHANGED}|total|in\s+all))?"
_E = r"(?=\s*[\])]?\s*[.;]?\s*$|\s*[.;])"

LISTS: tuple[Synonym, ...] = (
    row("''", r"(?<=[\d.¼½¾⅛⅜⅝⅞])\s*''", '"', "Work even until piece measures 7''."),
    row(",", rf"(?<=\d)\s*,\s*(?=[(\[]\s*\d+(?:\s*[,;:/-]\s*\d+)+\s*[)\]]|[(\[]\s*\d+\s*[)\]]\s*(?:{STS}|{ROUND}|(?:more\s+)?times\b))", " ", "CO 82, (92, 100) sts."),
    row('"|in|cm', rf'(\d(?:\s*[¼½¾⅛⅜⅝⅞])?\s*(?:"|in|cm))\s*,\s*(?=[(\[]\s*{_LENGTH_LIST}\s*[)\]])', r"\1 ", 'Work even until piece measures 7", (7.5", 8").'),
    row("(|[", rf"\b(co|cast\s+on|bo|bind\s+off|cast\s+off|knit|purl|[kp])\s*[(\[]\s*(\d+)\s*,\s*(\d+(?:\s*,\s*\d+)*)\s*[)\]](?=\s+{STS})", r"\1 \2 (\3)", "CO [58, 60, 62] sts."),
    row("[(|((", rf"[(\[]\s*\(\s*({_COUNTED}\s*{STS})\s*\)\s*[)\]]", r"(\1)", "Knit to end. [(106 (110, 116) sts)]"),
    # A dash behind a full stop, close to a small number, is the sign of what is lost.
    row("-", rf"(?<=[\w)\]*.!])\s*[.!;:=]+\s*-(?=1?\d\b)({N})\s+{STS}(?=\s*[.]?\s*$)", r". \1 sts dec", "K1, k2tog, k to end. −1 st."),
    row("-", rf"[(\[]\s*-\s*({N})(?:\s+{STS})?\s*[)\]](?=\s*[.]?\s*$)", r"(\1 sts dec)", "K1, k2tog, k to end (−1 st)."),
    row("-", rf"(^\s*|[.;]\s*)-\s*({_COUNTED}\s*{STS}(?:\s+(?:rem|remain)\w*)?)\s*-?(?=\s*\.?\s*$)", r"\1\2", "- 58 (60, 62) sts remain -"),
    row("total|count", rf"(^\s*|[.;]\s*)(?:total(?:\s+{STS})?(?:\s+count)?|st(?:itch)?(?:es)?\s+count)\s*[:=-]?\s*({_COUNTED})(?:\s*{STS})?(?=\s*[.)]?\s*$)", r"\1\2 sts", "Total sts: 58 (60, 62)."),
    row("in all", rf"(\brep(?:eat)?\.?\s+from\s+\*\s*{N}\s+times)\s+in\s+all\b", r"\1 in total", "*K3, k2tog; rep from * 4 times in all, k to end."),
    row("total of|there will", rf"(^\s*|[.;]\s*)(?:(?:a\s+)?total\s+of|there\s+will\s+be)\s+({_COUNTED}\s*{STS}){_HERE}(?=\s*\.?\s*$)", r"\1\2", "Total of 96 (104, 112) sts on needles."),
    row("(=|[=|( =|[ =|there|you", rf"[(\[]\s*(?:=|{_SAYS}\s)\s*({_COUNTED}\s*{STS}){_HERE}\s*\.?\s*[)\]]", r"(\1)", "Row 5: Knit. (There should be 58 sts on your needle.)"),
    row("=", rf"(?<=[a-z\d])\s*=\s*({N}\s+{_S})\s+(?:left|rem(?:ain(?:ing)?)?|on\s+(?:the\s+)?needles?|in\s+all)(?=\s*\.?\s*$)", r". \1", "Knit 2 rounds = 24 sts left."),
    row("(es)|(s)", r"\b(?:st(?:itch)?)\((?:e?s)\)", "sts", "Bind off the rem 3 st(s)."),
    row("(s)", r"\b(rnd|round|row|time|repeat|ridge|marker|needle)\(s\)", r"\1s", "Work 1 (2, 2) rnd(s) even."),
    row("make ", r"\bmake\s+(?:1|one|a|an)\s+(?:yarn[\s-]?over|yo)\b", "yo", "Row 3: Knit 3, make 1 yarn over, knit 2 together, knit to end."),
)  # fmt: skip
"""The rows for single words, tried before numbers are looked at."""

STATED_COUNTS: tuple[Synonym, ...] = (
    said_row_behind("each", rf"(\b{N}\s+{_S}\s+(?:dec|inc)(?:reased|['’]d)?)\s*,\s*(?P<said>{N}\s+(?:{_S}\s+)?(?:from|in|on|at|for)\s+each\s+(?:sleeve|side|front|back|end|edge|half|section|part))(?=\s*[.]|\s*$)", "*K8, k2tog; rep from * to end. 4 sts dec, two from each sleeve."),
    said_row_behind("as before", rf"(\b{N}\s+{_S}\b[^.]*?),\s*(?P<said>sleeves?\s+as\s+before)(?=\s*[.]|\s*$)", "Knit 2 rounds. 40 sts: 12 for front and back, sleeves as before."),
    said_row("phase|stage", r"^\s*(?P<said>(?:phase|stage)\s+(?:\d|[a-d]|one|two|three|four)\b)\s*[.:]?\s*$", "Phase 1."),
    row("size", rf"({N}\s+{_S}{_TAIL})\s*,?\s+(?:(?:for|in|on)\s+)?(?:all|every|each)\s+sizes?(?:{_E}|(?=\s*,\s*then\b))", r"\1", "K2tog around. 6 sts rem for all sizes."),
    row("gusset|thumb", rf"((?:^|[-.;:,(\[]|\band)\s*{N})\s+(gusset|thumb)\s+{_S}{_E}", r"\1 sts of \2", "Rnd 3: Knit to m, m1r, sm, k to end. 41 sts; 5 thumb sts."),
    row("-", rf"(-\s*{N})\s+(?P<said>{_PART})(?={_S}{_TAIL}{_E})", r"\1 ", "Knit to end-44 body sts.", spelt_out=True),
    row(";", rf"({N}\s+{_S}{_TAIL})\s*;\s*(?:and\s+)?(?={N}\s+{_S}(?:{_TAIL}{_E}|\s+(?:between|of)\b))", r"\1. ", "K2tog around-6 sts dec'd; 6 sts rem.", again=True),
    row("[", rf"\[\s*({N}\s+{_S}{_TAIL}\s*\.\s*{N}\s+{_S}(?:{_TAIL}))\s*\]", r"(\1)", "K2tog around. [6 sts decreased; 6 sts rem]"),
    row(";", rf"(?<=\w)\s*;\s+(?={N}\s+sts\s+of\s+(?:gusset|thumb)\s*\.?\s*$)", ". ", "Rnd 3: Knit to m, m1r, sm, k to end; 5 thumb sts."),
)  # fmt: skip
"""The rows for counts, in the order tried."""
