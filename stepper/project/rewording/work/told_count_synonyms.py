"""Other wordings for counts told of a row further up, of one needle, or of the rows worked. No I/O.

"After Rnd 9: 144 sts." stands behind the line that works round 9 of a chart, and is checked against that
round; "with 27 on N2" behind a repeat becomes a sentence of its own, which is checked too. Source: the
wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.synonym import ROUND, STS, N, Synonym, row

_STOP: Final = r"(?=\s*[.;)\]]|\s*$)"
_NEEDLE: Final = r"(?:N|needle\s*|ndl\.?\s*)(\d)\b"
_LEFT: Final = r"(?:\s+(?:rem(?:ain(?:ing)?)?|(?:are\s+)?left|in\s+(?:all|total)|total|altogether))?"
_HAVE: Final = (
    r"(?:(?:there\s+(?:are|will\s+be|should\s+(?:now\s+)?be)|you(?:\s+(?:will|should))?(?:\s+now)?\s+have|you'll\s+(?:now\s+)?have|you've)\s+(?:now\s+)?(?:got\s+)?(?:a\s+total\s+of\s+)?)?"
)
_NUMBERED: Final = r"(?:round|rnd|row)\s+(\d{1,3})(?:\s+of\s+(?:the\s+)?chart(?:\s+[a-z0-9]+)?)?"
_DONE: Final = r"(?:\s+(?:is|has\s+been)\s+(?:worked|completed?|done|knitted|finished))?"
_BEHIND: Final = r"(?:(?:(?:at|by)\s+(?:the\s+)?end\s+of|on\s+completion\s+of|on\s+completing|after(?:\s+(?:working|completing|knitting|finishing))?|once|when)\s+)"
_COUNT: Final = rf"({N}\s+{STS}){_LEFT}(?:\s+on\s+(?:the\s+|your\s+)?needles?)?"

AFTER_ROWS: tuple[Synonym, ...] = (
    row(
        "after|end of|when|once|on completi",
        rf"((?:^|[.!;(\[]|,\s*(?:and\s+)?(?=after\b))\s*)(?:and\s+)?{_BEHIND}{_NUMBERED}{_DONE}\s*[:,=-]*\s*{_HAVE}{_COUNT}(?:\s*,\s*(?:and\s+)?(?=after\b)|{_STOP})",
        r"\1\3 after row \2. ",
        "After Rnd 2 you should have 20 sts.",
        again=True,
    ),
    row(
        "after|end of",
        rf"((?:^|[.!;(\[])\s*){_HAVE}{_COUNT}\s+(?:after|at\s+(?:the\s+)?end\s+of)\s+{_NUMBERED}{_STOP}",
        r"\1\2 after row \3",
        "20 sts at the end of Rnd 2.",
    ),
    row(
        "count after|count at|sts after|sts at|stitches after|stitches at",
        rf"((?:^|[.!;(\[])\s*)(?:(?:st|stitch)\s+count|{STS})\s+(?:after|at\s+(?:the\s+)?end\s+of)\s+{_NUMBERED}\s*[:=-]+\s*({N})(?:\s+{STS})?{_LEFT}{_STOP}",
        r"\1\3 sts after row \2",
        "Stitch count after rnd 2: 20 sts.",
    ),
)  # fmt: skip
"""The rows for a count of a row further up, tried before its number and the count are taken for a list."""

TOLD_COUNTS: tuple[Synonym, ...] = (
    row("more", rf"\(\s*({N}\s+{STS})\s+more\s*\)", r"(\1 inc)", "K1, m1, k to last st, m1, k1. (2 sts more)"),
    row("fewer|less", rf"\(\s*({N}\s+{STS})\s+(?:fewer|less)\s*\)", r"(\1 dec)", "K1, k2tog, k to end. (1 st less)"),
    # --- on one needle ---
    row(
        "on n|on each of n",
        rf"(\buntil\s+(?:there\s+are\s+|you\s+have\s+)?(?:only\s+)?{N}\s+{STS}{_LEFT})\s*[,;:(-]+\s*(?:with\s+|leaving\s+|and\s+)?(?={N}(?:\s+{STS}|\s+of\s+(?:them|these))?\s+on\s+(?:N|needle|ndl|each\s+of))",
        r"\1. ",
        "Rep rnds 1 and 2 until 36 sts rem, with 18 on N2.",
    ),
    row(
        "on n",
        rf"((?:^|[.])\s*)({N})(?:\s+{STS}|\s+of\s+(?:them|these))?\s+on\s+{_NEEDLE}(?=\s*\)?\s*[.]|\s*\)?\s*$)",
        r"\1\2 sts on needle \3",
        "Knit 1 round. 20 on N2.",
    ),
    # --- rows worked ---
    row(
        "until",
        rf"(\b(?:times(?:\s+more)?|more|once|twice))\s*,\s*until\s+(?:there\s+are|you\s+have)\s+({N}\s+{ROUND})(?:\s+(?:in|on)\s+(?:the\s+)?(?:heel\s+)?flap)?(?:\s+(?:in\s+(?:all|total)|altogether))?(?=\s*[.]|\s*$)",
        r"\1. \2",
        "Rep last 2 rows 13 times more, until there are 28 rows in the flap.",
    ),
    row(
        "rows|rnds|rounds",
        rf"\b(?:until\s+)(?:(?:there\s+are|you\s+have(?:\s+worked)?)\s+)?({N}\s+{ROUND})\s+(?:(?:of|in|on)\s+(?:the\s+)?(?:heel\s+)?(?:flap|heel)\s+)?(?:have\s+been|are)\s+(?:worked|completed?|knitted|done)\s*,\s*(?=ending\b)",
        r"until \1 so far, ",
        "Rep rows 1 and 2 until 28 rows have been worked, ending with a WS row.",
    ),
    row(
        "flap|heel",
        rf"\buntil\s+(?:there\s+are\s+|you\s+have(?:\s+worked)?\s+)?({N}\s+{ROUND})(?:\s+(?:of|in|on)\s+(?:the\s+)?(?:heel\s+)?(?:flap|heel))(?:\s+(?:have\s+been|are)\s+(?:worked|completed?|knitted|done))?(?=\s*[.,]|\s*$)",
        r"until \1 so far",
        "Rep rows 1 and 2 until 28 rows of the flap have been worked.",
    ),
    row(
        "flap|heel",
        rf"\buntil\s+(?:the\s+)?(?:heel\s+)?(?:flap|heel)\s+has\s+({N}\s+{ROUND})(?:\s+(?:in\s+(?:all|total)|altogether))?(?=\s*[.,]|\s*$)",
        r"until \1 so far",
        "Rep rows 1 and 2 until the flap has 28 rows in all.",
    ),
    row(
        "so far",
        rf"(\buntil\s+{N}\s+{ROUND}\s+so\s+far)\s*,\s*ending\s+with\s+(?:an?\s+)?((?:rs|ws|right[-\s]side|wrong[-\s]side)(?:\s+row)?)(?=\s*[.]|\s*$)",
        r"\1. ends with a \2",
        "Rep rows 1 and 2 until the flap has 28 rows, ending with a WS row.",
    ),
)  # fmt: skip
"""The rows, in the order tried; lists of sizes stand in one form."""
