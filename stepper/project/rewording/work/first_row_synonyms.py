"""Other wordings for the row a fabric begins with, ribs in stars, and rows that take turns. No I/O.

"Work 9 rows in g st (1st row is WS)" names the side of its first row as a head does. A pattern that is begun
with one of its rows is worked "in" it from that row on. Rows that are worked alternately until something is
reached are repeated: how often in all is not said of them, so that both readings come to the same. Source: the
wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.synonym import LONG, ROUND, N, Synonym, row

_START: Final = r"(^\s*|[.;]\s+)"
_BEGUN: Final = r"(?:beg(?:in(?:ning)?)?|start(?:ing)?|commenc(?:e|ing))\.?\s+(?:with|on|at)\s+(?:an?\s+|the\s+)?"
_FIRST: Final = r"(?:the\s+)?(?:1st|first)(?:\s+(?:one|row|of\s+(?:these|them)(?:\s+rows)?))?\s*(?:being|is|=|:|to\s+be|will\s+be)\s*(?:worked\s+on\s+)?(?:an?\s+|the\s+)?"
_WORK: Final = r"(?:work|knit|k|purl|p|cont(?:inue)?)"
_STRETCH: Final = rf"({_WORK}\s+(?:(?:even|straight)\s+)?(?:for\s+)?(?:{N}\s+(?:more\s+)?rows|in\s+[a-z])(?:(?!\bending\b|\binc|\bdec)[^.;:(])*?)"
"""A stretch of rows without a shaping of its own."""
_NAMES: Final = (
    r"(?!(?:the|a|an|your|to|at|in|with|on|work\w*|knit\w*|purl\w*|rows?|rounds?|rnds?|charts?|pattern|patt|next|rib|short|raglan|neck|armhole|shoulder|shaping|dec\w*|inc\w*|"
    r"main|colou?r\w*|yarn|foot|heel|toe|leg|body|sleeve|hem|cuff|thumb|gusset|here|again|from|by|working|of)\b)[a-z][a-z'-]+"
)
_OWN: Final = rf"((?:{_NAMES}\s+){{0,2}}?{_NAMES})(\s+(?:pattern|patt|stitch|st|lace|rib(?:bing)?|panel|cable))?"
_AND: Final = r"\s*,?\s*(?:and\s+)?(?:then\s+)?"
_LASTS: Final = rf"(for\s+(?:{N}\s+{ROUND}|{LONG})|until\s+[^.;]*)"
_STARRED: Final = r"[*(\[]\s*(k\s?\d{1,2}(?:\s+tbl)?)\s*[.,]?\s*(p\s?\d{1,2}(?:\s+tbl)?)\s*[*)\]]"
_ROWS: Final = rf"(?:{ROUND})\s+\d+(?:\s*(?:,|-|and|&|to)\s*\d+)+"

FIRST_ROWS: tuple[Synonym, ...] = (
    # --- the side of the first row ---
    *(
        sided
        for side, told in (("WS", r"(?:ws|wrong[-\s]side)"), ("RS", r"(?:rs|right[-\s]side)"))
        for sided in (
            row(
                "first|1st",
                rf"{_START}{_STRETCH}\s*[,;(-]+\s*(?:with\s+)?{_FIRST}{told}(?:\s+row)?\s*\)?(?=\s*[.;,]|\s*$|\s+(?:for|until)\b)",
                rf"\1next row ({side}): \2",
                f"Work 9 rows in garter st (1st row is {side}).",
            ),
            row(
                "beg|start|commenc",
                rf"{_START}{_STRETCH}\s*[,;(]\s*{_BEGUN}{told}\s+row\s*\)?(?=\s*[.;]|\s*$)",
                rf"\1next row ({side}): \2",
                f"Work 5 rows in garter st, starting with a {side} row.",
            ),
        )
    ),
    # --- a pattern begun with one of its rows ---
    row(
        "beg|start|commenc",
        rf"{_START}(?:now\s+|then\s+)?(?:begin|start|commence)\s+(?:working\s+)?(?:(?:in|with)\s+)?(?:the\s+)?{_OWN}\s*,?\s+(?:with|on|at|from)\s+(?:R|(?:row|rnd|round)\s+)(\d+){_AND}(?:work|cont(?:inue)?|knit)\s+(?:even\s+|straight\s+)?{_LASTS}",
        r"\1work rows \4 on of \2\3 \5",
        "Begin Moss Rib with Row 1 and work for 10 rows.",
    ),
    row(
        "with row|with rnd|with round",
        rf"{_START}(?:begin|start)\s+(?:with|on|at)\s+(?:row|rnd|round)\s+(\d+)\s+of\s+(?:the\s+)?{_OWN}{_AND}work\s+(?:for\s+)?({N}\s+{ROUND}|{LONG})(?=\s*[.,;]|\s*$)",
        r"\1work rows \2 on of \3\4 for \5",
        "Begin with Row 3 of Eyelet Rib and work 10 rows.",
    ),
    row(
        "rows ",
        r"\bwork\s+rows\s+(\d+)\s+on\s+of\s+((?:[a-z'-]+\s+)*?[a-z'-]+\s+(?:pattern|patt|stitch|st|lace|rib(?:bing)?|panel|cable))\s+(?=for\b|until\b)",
        r"work in \2, beginning with row \1 ",
        "Begin Wave Pattern with Row 1 and work for 10 rows.",
    ),
    row(
        "rows ",
        r"\bwork\s+rows\s+(\d+)\s+on\s+of\s+((?:[a-z'-]+\s+)*?[a-z'-]+)\s+(?=for\b|until\b)",
        r"work in \2 pattern, beginning with row \1 ",
        "Begin Broken Seed with Row 1 and work for 10 rows.",
    ),
    # --- ribs in stars ---
    row(
        "rib",
        rf"{_STARRED}\s*rib(?:bing)?\b",
        r"\1, \2 rib",
        "*K2, p2* rib for 6 rnds.",
    ),
    row(
        "rib",
        rf"{_START}(?:work\s+(?:in\s+)?)?rib(?:bing)?\s*{_STARRED}\s*(?:for\s+)?({N}\s+{ROUND}|{LONG})(?=\s*[.,;]|\s*$)",
        r"\1work in \2, \3 rib for \4",
        "Rib (k1, p1) 10 rounds.",
    ),
    row(
        "around|across",
        rf"{_START}work\s+(?:in\s+)?[*(\[]?\s*(k\s?\d{{1,2}})\s*,\s*(p\s?\d{{1,2}})\s*[*)\]]?\s*(?:around|across)\s+for\s+({N}\s+{ROUND}|{LONG})",
        r"\1work in \2, \3 rib for \4",
        "Work k1, p1 around for 8 rnds.",
    ),
    row(
        "tbl",
        r"\bin\s+k\s?1\s+tbl\s*,\s*p\s?1\s+rib(?:bing)?\b",
        "in twisted rib",
        "Work in k1 tbl, p1 rib for 8 rnds.",
    ),
    # --- rows that take turns ---
    row(
        "alternately|in turn|alternat",
        rf"\b(?:work|rep(?:eat)?|knit)\s+({_ROWS})\s*,?\s+(?:alternately|in\s+turn|in\s+alternation)\s*,?\s+(?=until\b)",
        r"rep \1 ",
        "Work Rnds 1 and 2 alternately until 40 sts rem.",
    ),
    row(
        "alternat",
        rf"{_START}(?:(?:work|cont(?:inue)?|go\s+on)\s+(?:to\s+|in\s+(?:this|the\s+same)\s+(?:way|manner)\s*,?\s+)?)?alternat(?:e|ing)\s+({_ROWS})\s*,?\s+(?=until\b)",
        r"\1rep \2 ",
        "Alternate Rnds 1 and 2 until 40 sts rem.",
    ),
    row(
        "alternat",
        rf"\b(rep(?:eat)?\s+{_ROWS})\s*,?\s+alternat(?:ing|ely)(?:\s+between\s+them)?\s*,?\s+(?=until\b)",
        r"\1 ",
        "Rep Rnds 1 and 2, alternating, until 40 sts rem.",
    ),
)  # fmt: skip
"""The rows, in the order tried; lists of sizes stand in one form."""
