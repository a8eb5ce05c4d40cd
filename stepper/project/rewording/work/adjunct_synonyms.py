"""Other wordings for what stands beside rows and charts and changes no stitch, wherever it stands. No I/O.

How often a repeat stands across the row, that a chart increases where it shows so, that a pattern is worked
over all stitches: the chart and the pattern say so themselves, and the words are said. Rows of a chart are
named without its name where only one is worked. Source: the wording of patterns in print; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import CLOSED, LONG, ROUND, STS, N, Synonym, row

_C: Final = r"(?:the\s+)?chart\b(?:\s+(?-i:[A-Z]|\d)\b)?"
_STOP: Final = r"(?=\s*[.,;]|\s*$|\s+and\s+(?:inc|dec|join|work|read)\w*ing\b)"
_SHOWN: Final = r"(?:where|as|when(?:ever)?)\s+(?:shown|indicated|marked|given|noted|charted)(?:\s+(?:in|on|by)\s+(?:the\s+)?chart)?"
_REPEAT: Final = r"(?:the\s+|each\s+)?(?:(?:\d+[-\s]?(?:st|stitch|sts|stitches)\s+)?(?:pattern\s+|patt\s+)?(?:rep(?:eat)?|motif|patt(?:ern)?))"
_PER_ROW: Final = rf"(?:(?:in|on|per)\s+(?:(?:each|every|the)\s+)?{ROUND})"
_OWN: Final = r"(?:[a-z][a-z'-]*\s+){1,3}?(?:pattern|patt|stitch|lace|rib(?:bing)?|panel|cable|motif)"
_ROWS: Final = rf"(?:(?:rnds|rounds|rows)\s+1\s*(?:-|to|through)\s*\d+|the\s+(?:{N}\s+)?(?:rnds|rounds|rows)|the\s+(?:\d+[-\s](?:row|rnd|round)\s+)?rep(?:eat)?)"
_CHART_DONE: Final = rf"(?:all\s+(?:of\s+)?(?:the\s+)?(?:{N}\s+)?(?:rnds|rounds|rows)\s+of\s+)?{_C}\s+(?:is|are|has\s+been|have\s+been)\s+(?:completed?|finished|worked|done|knit(?:ted)?)"
_K_P: Final = r"[(\[]?\s*k\s?\d{1,2}\s*[.,]\s*p\s?\d{1,2}\.?\s*[)\]]?\s*rib(?:bing)?"
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
    said_row(
        "chart",
        rf"^\s*(?P<said>(?:when|once|after)\s+{_CHART_DONE})\s*,\s*(?=[a-z\d])",
        "When Chart A is complete, break CC.",
    ),
    said_row(
        "chart",
        rf"(?:^|(?<=[.;]))\s*(?P<said>(?:{_C}\s+is\s+read|read\s+(?:all\s+(?:rnds|rounds|rows)\s+of\s+)?{_C})\s+(?:from\s+)?(?:right\s+to\s+left|(?:the\s+)?bottom\s+(?:to|up\s+to)\s+(?:the\s+)?top)(?:\s+(?:on|in|for)\s+(?:every|each|all)\s+(?:rnds?|rounds?|rows?))?(?:\s*,?\s+and\s+{_REPEAT}\s+is\s+worked\s+{N}\s+times(?:\s+{_PER_ROW})?)?)(?=\s*\.?\s*$|\s*[.;]\s)",
        "The chart is read from right to left on every rnd, and the 4-st repeat is worked 24 times.",
    ),
    # --- how often, and where from ---
    row(
        "work them",
        rf"(^\s*|[.;]\s+)work\s+them\s+(?={N}\s+times\s+(?:in\s+(?:all|total)|altogether)|a\s+total\s+of|until\b)",
        r"\1rep these rows ",
        "Work them 4 times in total.",
    ),
    row("from the joining|from joining", r"\bfrom\s+(?:the\s+)?joining\s+(?:rnd|round|row)\b", "from beginning of joining", "Knit until yoke measures 8 cm from the joining rnd."),
    said_row_behind(
        " or ",
        rf"({LONG})\s+(?P<said>for\s+an?\s+(?!total)[a-z][a-z -]{{2,24}}?\s*,?\s+or\s+{LONG}\s+(?:for|if)\s+[a-z][a-z ,'-]*?)(?=\s*\.?\s*$)",
        "Rep rnd 1 until brim measures 4 in for a folded brim or 2 in for a single one.",
    ),
    said_row_behind(
        "rib",
        rf"(\brep(?:eat)?\s+(?:the\s+)?last\s+(?:{N}\s+)?{ROUND})\s+(?P<said>(?:for|of|in)\s+(?:the\s+)?{_K_P})(?=\s+(?:for|until)\b)",
        "Rep last 2 rows for (K2. P2) ribbing for 6 cm.",
    ),
    row(
        "slipping",
        rf"(\b(?:knit|work|purl)\s+{N}\s+(?:rnd|round)s?)\s*,\s*slipping\s+(?:the\s+)?(?:last|first)\s+({N}\s+)?({STS})\s+(?:of|from)\s+(?:the\s+)?(?:N|needle\s*)(\d)\s+(?:on)?to\s+(?:the\s+)?(?:N|needle\s*)(\d)(?:\s+at\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:instep|rnd|round|sole|heel))?)?{CLOSED}",
        r"\1. slip \2 \3 from needle \4 to needle \5",
        "Knit 1 rnd, slipping the last 2 sts of N1 to N2.",
    ),
    row("slip ", r"\bslip\s{2,}(?=(?:st|stitch)\s+from\s+needle)", "slip 1 ", "Knit 1 rnd, slipping the last st of N1 to N2 at the end of the instep."),
    row(
        "as set|as est",
        rf"((?:^|[:;.])\s*(?:on\s+)?(?:N|needle\s*)\d\s*:\s*)work\s+(?P<said>(?:in\s+)?(?:the\s+)?{_OWN}\s+as\s+(?:set|est(?:ablished)?))(?=\s*[.;]|\s*$)",
        r"\1work in pattern to end",
        "Rnd 1: N1: Work Lace Rib as set; N2: Knit.",
    ),
    said_row_behind(
        "of the",
        rf"(\brep(?:eat)?\s+(?:the\s+)?(?:last\s+)?{N}\s+{ROUND})\s+(?P<said>of\s+the\s+(?:rib(?:bing)?|patt(?:ern)?|border|cuff))(?=\s+(?:until|for)\b)",
        "Rep last 2 rows of the rib until cuff measures 5 cm.",
    ),
    row("pattern row|patt row|pattern rnd|patt rnd|pattern round", r"(\bending\s+(?:with|after|on)\s+)(?:a\s+)?patt(?:ern)?\s+(row|rnd|round)\s+(?=\d)", r"\1\2 ", "Rep rows 1-8 until piece measures 10 cm, ending with pattern row 8."),
    row("and then every|and then on every", r"(\bnext\s+(?:row|rnd|round))\s+and\s+then\s+(?=(?:on\s+)?every\b)", r"\1, then ", "Inc 1 st at each end of next row and then every foll 6th row 8 times more."),
    # --- what the rows just written are ---
    row(
        "set the",
        rf"\b((?:these|the\s+last|last)\s+(?:{N}\s+)?(?:rows|rnds|rounds))\s+set\s+the\s+(?:{STS}|layout)\s*(?P<said>(?:\(\s*[^()]*\))?)(?=\s*[.]|\s*$)",
        r"\1 set the pattern",
        "These 2 rows set the sts (st st with garter st border at each edge).",
        spelt_out=True,
    ),
    row(
        "rows.|rnds.|rounds.",
        r"^(\s*(?:\d+(?:st|nd|rd|th)\s*(?:,|and|&|to)\s*)+\d+(?:st|nd|rd|th)\s+(?:rows|rnds|rounds))\.\s*(?=(?:as\s+\d|knit|purl|k|p|rep)\b)",
        r"\1: ",
        "5th and 6th rows. Knit.",
    ),
    said_row_behind("make a button", r"(\b(?:yo|yrn|yfwd|k2tog|ssk))\s*\(\s*(?P<said>to\s+make\s+(?:a\s+|the\s+)?(?:buttonhole|eyelet|hole))\s*\)", "Row 1: Rib 2, *k2tog, yo (to make a buttonhole), rib 4; rep from * to end."),
    # --- beside the rows of a pattern ---
    said_row_behind(
        "between",
        r"(^\s*(?:cont(?:inue)?|work)\s+(?:even\s+)?in\s+patt(?:ern)?\s+as\s+(?:set|est(?:ablished)?))\s*,\s*(?P<said>(?:working|keeping)\s+(?:next\s+(?:row|rnd|round)\s+of\s+)?(?:the\s+)?(?:[a-z]+\s+){1,3}?(?:panel|cable|chart|lace|pattern|motif)s?(?:\s+[a-z0-9])?\s+between\s+(?:the\s+)?markers?(?:\s+and\s+[a-z. ]{3,20}?\s+(?:at|on)\s+(?:each|either)\s+side)?)\s*,(?=\s+(?:until|for)\b)",
        "Cont in pattern as set, working next row of cable panel between markers and st st at each side, until piece measures 20 cm.",
    ),
    said_row_behind(
        "around|over all|across all",
        rf"(\b(?:work|rep(?:eat)?)\s+(?:{ROUND}\s+\d+(?:\s*(?:-|to|through|and|&)\s*\d+)?\s+of\s+)(?:the\s+)?{_OWN})\s+(?P<said>(?:around|over|across)\s+all\s+(?:the\s+)?{STS})\s*,?(?=\s+(?:until|for|{N}\s+times|once|twice)\b|\s*[.,]|\s*$)",
        "Work Rnds 1-2 of Fern Lace over all sts until piece measures 10 cm.",
    ),
    row(
        "until",
        rf"(\bwork\s+{ROUND}\s+\d+(?:\s*(?:-|to|through|and|&)\s*\d+)?\s+of\s+(?:the\s+)?{_OWN})\s*,\s+(?=until\b)",
        r"\1 ",
        "Work Rnds 1-2 of Fern Lace, until piece measures 10 cm.",
    ),
    row(
        "as given|as for|as on|as worked|as set",
        rf"(\b(?:work|rep(?:eat)?)\s+(?:the\s+|all\s+)?(?:{N}\s+{ROUND}|{ROUND}\s+\d+(?:\s*(?:-|to|through|and|&)\s*\d+)?)\s+of\s+(?:the\s+)?(?:[a-z][a-z'-]*\s+){{1,3}}?(?:pattern|patt|stitch|lace|rib(?:bing)?|border|moss|seed|band))\s+(?P<said>as\s+(?:(?:given|worked|set)\s+)?(?:for|on)\s+(?:the\s+)?(?:back|front|(?:left|right)\s+front|sleeves?|body|first\s+\w+))(?=\s+(?:{N}\s+(?:more\s+)?times|once|twice|until|for)\b|\s*[.,]|\s*$)",
        r"\1",
        "Work the 2 rows of border patt as given for back 3 times.",
        spelt_out=True,
    ),
    row(
        "rep them|repeat them",
        r"(^\s*|[.;]\s+)rep(?:eat)?\s+them\s+(?=until\b|for\b)",
        r"\1rep these rows ",
        "Repeat them until work measures 10 cm.",
    ),
    # --- German short rows ---
    row("prev", rf"\bprev\.?\s+(?={_DS}\b)", "previous ", "Row 3 (RS): Make DS, k to prev DS, k DS, k4, turn."),
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
)  # fmt: skip
"""The rows, in the order tried; lists of sizes stand in one form."""
