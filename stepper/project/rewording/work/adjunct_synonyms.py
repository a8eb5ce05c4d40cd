"""Other wordings for what stands beside rows and charts and changes no stitch, wherever it stands. No I/O.

How often a repeat stands across the row, that a chart increases where it shows so, that a pattern is worked
over all stitches: the chart and the pattern say so themselves, and the words are said. Rows of a chart are
named without its name where only one is worked. Source: the wording of patterns in print; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import LONG, ROUND, STS, N, Synonym, row

_C: Final = r"(?:the\s+)?chart\b(?:\s+(?-i:[A-Z]|\d)\b)?"
_STOP: Final = r"(?=\s*[.,;]|\s*$|\s+and\s+(?:inc|dec|join|work|read)\w*ing\b)"
_SHOWN: Final = r"(?:where|as|when(?:ever)?)\s+(?:shown|indicated|marked|given|noted|charted)(?:\s+(?:in|on|by)\s+(?:the\s+)?chart)?"
_REPEAT: Final = r"(?:the\s+|each\s+)?(?:(?:\d+[-\s]?(?:st|stitch|sts|stitches)\s+)?(?:pattern\s+|patt\s+)?(?:rep(?:eat)?|motif|patt(?:ern)?))"
_PER_ROW: Final = rf"(?:around|across|in\s+(?:each|every)\s+{ROUND}|(?:on|in|per)\s+(?:(?:each|every|the)\s+)?{ROUND})(?:\s+(?:the\s+)?(?:{ROUND}))?"
_OWN: Final = r"(?:[a-z][a-z'-]*\s+){1,3}?(?:pattern|patt|stitch|lace|rib(?:bing)?|panel|cable|motif)"
_ROWS: Final = rf"(?:(?:rnds|rounds|rows)\s+1\s*(?:-|to|through)\s*\d+|the\s+(?:{N}\s+)?(?:rnds|rounds|rows)|the\s+(?:\d+[-\s](?:row|rnd|round)\s+)?rep(?:eat)?)"
_DS: Final = r"(?:ds|double\s+st(?:itch)?)"

ADJUNCTS: tuple[Synonym, ...] = (
    # --- beside a chart ---
    said_row_behind(
        "increas|decreas",
        rf"(\b{_C}[^.;:]*?)\s*,?\s*(?:and\s+)?(?P<said>(?:inc|dec)reasing\s+{_SHOWN}){_STOP}",
        "Work Rnds 1-4 of Chart fern, joining CC as needed and increasing where indicated.",
    ),
    said_row_behind(
        "repeat|rep |motif|patt",
        rf"(\b{_C}[^.;:]*?)\s*,?\s*(?:and\s+)?(?P<said>\bworking\s+{_REPEAT}\s+{N}\s+times\s+{_PER_ROW}){_STOP}",
        "Work Rnds 1-4 of Chart fern, working the 6-st repeat 8 times in each rnd.",
    ),
    row(
        "chart",
        rf"(^\s*|[.;]\s+)(?:now\s+)?(?:work|cont(?:inue)?)\s+(?:even\s+)?(?:in\s+(?:the\s+)?(?:established\s+)?chart(?:ed)?\s+patt(?:ern)?|in\s+patt(?:ern)?\s+(?:from|of|following)\s+{_C})(?:\s+as\s+(?:set|established))?\s*,?\s*(?P<said>(?:(?:and\s+)?rep(?:eating)?\s+{_ROWS}(?:\s+of\s+{_C})?(?:\s+(?:as\s+(?:needed|necessary|required|set)|throughout))?)?)\s*,?\s+(?=until\b|for\b)",
        r"\1work in pattern ",
        "Continue in chart pattern, repeating Rnds 1-16 as needed, until mitten measures 18 cm.",
        spelt_out=True,
    ),
    row(
        "chart",
        rf"((?:^|[:,;*]\s*(?:and\s+|then\s+)?)\s*)work\s+(?:across\s+)?(?:in|from|following)\s+({_C})(?:\s+as\s+(?:set|established))?\s+(?=to\b)",
        r"\1work next round of \2 ",
        "Next rnd: Work in chart to marker, sm, k1, sm, work in chart to end.",
    ),
    # --- beside the rows of a pattern ---
    said_row_behind(
        "around|over all|across all",
        rf"(\b(?:work|rep(?:eat)?)\s+(?:{ROUND}\s+\d+(?:\s*(?:-|to|through|and|&)\s*\d+)?\s+of\s+)(?:the\s+)?{_OWN})\s+(?P<said>(?:around|over|across)\s+all\s+(?:the\s+)?{STS})\s*,?(?=\s+(?:until|for|{N}\s+times|once|twice)\b|\s*[.,]|\s*$)",
        "Moss rib: Rnd 1: *K1, p1; rep from * to end. Rnd 2: Knit. Work Rnds 1-2 of Moss Rib over all sts until piece measures 10 cm.",
    ),
    row(
        "until",
        rf"(\bwork\s+{ROUND}\s+\d+(?:\s*(?:-|to|through|and|&)\s*\d+)?\s+of\s+(?:the\s+)?{_OWN})\s*,\s+(?=until\b)",
        r"\1 ",
        "Moss rib: Rnd 1: *K1, p1; rep from * to end. Rnd 2: Knit. Work Rnds 1-2 of Moss Rib, until piece measures 10 cm.",
    ),
    row(
        "as given|as for|as on|as worked|as set",
        rf"(\b(?:work|rep(?:eat)?)\s+(?:the\s+|all\s+)?(?:{N}\s+{ROUND}|{ROUND}\s+\d+(?:\s*(?:-|to|through|and|&)\s*\d+)?)\s+of\s+(?:the\s+)?(?:[a-z][a-z'-]*\s+){{1,3}}?(?:pattern|patt|stitch|lace|rib(?:bing)?|border|moss|seed|band))\s+(?P<said>as\s+(?:(?:given|worked|set)\s+)?(?:for|on)\s+(?:the\s+)?(?:back|front|(?:left|right)\s+front|sleeves?|body|first\s+\w+))(?=\s+(?:{N}\s+(?:more\s+)?times|once|twice|until|for)\b|\s*[.,]|\s*$)",
        r"\1",
        "Border patt: Row 1: Knit. Row 2: Purl. Work the 2 rows of border patt as given for back 3 times.",
        spelt_out=True,
    ),
    row(
        "rep them|repeat them",
        rf"(^\s*|[.;]\s+)rep(?:eat)?\s+them\s+(?=until\b|for\b|{N}\s+(?:more\s+)?times\b|once\s+more|twice\s+more)",
        r"\1rep these rows ",
        "Rows 1-2: Knit. Repeat them until work measures 10 cm.",
    ),
    # --- German short rows ---
    row("prev", rf"\bprev\.?\s+(?={_DS}\b)", "previous ", "Row 3 (RS): Make DS, k to prev DS, k DS, k4, turn."),
    said_row_behind("slipping", rf"(\bto\s+(?:the\s+)?(?:last\s+|previous\s+|first\s+|next\s+)?(?:{_DS}|end|wrapped\s+st)\b)\s*[(,]\s*(?P<said>slipping\s+(?:the\s+|all\s+|any\s+)*(?:markers?|ms?)(?:\s+as\s+you\s+(?:come|go)\s*(?:to\s+them)?)?)\s*\)?", "Row 3 (RS): Make DS, k to prev DS (slipping Ms), k DS, k4, turn."),
    said_row(
        "wraps",
        rf",?\s*(?:and\s+)?(?P<said>(?:picking\s+up|lifting)\s+(?:the\s+|all\s+|any\s+)*(?:remaining\s+)?wraps?\s+and\s+(?:knitt?|purl|work)ing\s+(?:them|each(?:\s+one|\s+wrap)?)\s+(?:tog(?:ether)?\s+)?with\s+the\s+{STS}\s+(?:that\s+)?they\s+(?:wrap|belong\s+to|surround)(?:\s+as\s+you\s+(?:come|get)\s+to\s+them)?)(?=\s*[.]|\s*$)",
        "Knit 1 rnd, picking up the wraps and knitting them together with the sts they wrap.",
    ),
    said_row_behind(
        "resolving|working|knitting|purling",
        rf"(\bwork\s+{N}\s+rows(?:\s+in\s+[a-z ]+?|\s+even)?(?:\s+over\s+all\s+{STS})?)\s*,\s*(?P<said>(?:resolving|working|knitting|purling)\s+(?:(?:the|all|any|each|remaining|last|two|both)\s+)*(?:{_DS}|double\s+stitches|wraps)\s+(?:(?:as\s+(?:one|single)\s+(?:{STS})?|together)\s+)?(?:on|in)\s+the\s+first(?:\s+(?:of\s+(?:these|them)(?:\s+rows)?|row|one))?)(?=\s+and\s+end|\s*,\s*(?:and\s+)?end|\s*[.]|\s*$)",
        "Work 12 rows in st st over all sts, resolving the remaining DS on the first of these and ending with a WS row.",
    ),
    # --- where nothing is left open but the words ---
    said_row_behind(
        "over all",
        rf"(\bwork\s+(?:{N}\s+{ROUND}|in\s+[a-z ]+?)(?:\s+in\s+[a-z ]+?)?)\s+(?P<said>over\s+all\s+(?:the\s+)?{STS})(?=\s*,|\s+(?:until|for|and\s+end)\b)",
        "Work 12 rows in st st over all sts, ending with a WS row.",
    ),
    row("and ending", rf"(\bwork\s+{N}\s+{ROUND}(?:\s+in\s+[a-z ]+?)?)\s+and\s+(?=ending\s+with\b)", r"\1, ", "Work 12 rows in st st and ending with a WS row."),
    row(
        "along|from",
        rf"(\buntil\s+(?:the\s+)?(?:piece|work|it|back|front|body|sleeve)\s+(?:measures|is)\s+{LONG})\s*,\s+(?=from\s+armhole\s+edge\b)",
        r"\1 ",
        "Work in st st until back measures 14 cm, measured along the armhole edge.",
    ),
)  # fmt: skip
"""The rows, in the order tried; lists of sizes stand in one form."""
