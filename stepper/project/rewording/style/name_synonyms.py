"""Other wordings around the stitches: parts, places, edges, finishing, explanations. No I/O."""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.signs.notation import BEGINS
from stepper.project.rewording.synonym import KEPT, STS, N, Synonym, row

_PART = (
    r"(?:(?:left|right|cent(?:er|re)|front|back|side|sleeve|body|border|band|buttonhole|button|heel|instep|sole|gusset|thumb|hand|"
    r"underarm|neck|collar|cuff|hem|yoke|toe|edge|rib|shoulder|steek|panel|raglan|turning|fold|ridge|facing|thumbhole|"
    r"pocket|crown|brim|foot|leg|first|second|earflap|flap|half(?:\s+(?:of\s+)?the)?)\b)"
)
_PARTS = rf"(?:{_PART}(?:\s+{_PART}){{0,3}})"
_WORKS = r"(?:k|p|knit|purl)"

ASIDES: tuple[Synonym, ...] = (
    said_row_behind(
        "edge",
        rf"^([^:]*\b(?:row|rnd)\b[^:]*:\s*(?:bo|bind\s+off|cast\s+off)\s+{N}(?:\s+{STS})?)\s+(?P<said>at\s+(?:the\s+)?(?:neck|armhole|front|side|shoulder)\s+edge)(?=\s*,\s*(?:k|p|knit|purl|work)\b)",
        "Next row (WS): BO 8 sts at neck edge, p to end.",
    ),
    # --- parts ---
    row(
        "across",
        rf"\b({_WORKS}|work)\s+across\s+(?:the\s+)?({N})\s+(?:held\s+)?{STS}\s+(?:of|from)\s+(?:the\s+)?((?:{_PART}\s*)+?)(?:\s+(?:st(?:itch)?\s+)?holder)?(?=\s*[,;.]|\s*$)",
        r"\1 across \2 \3 sts",
        "K across 20 sts of first earflap, k20.",
    ),
    row(
        "holder",
        rf"\b(k|p|knit|purl|work)\s*({N})\s+(?:{STS}\s+)?from\s+(?:the\s+)?((?:{_PART}\s*)+?)\s+(?:st(?:itch)?\s+)?holder(?=\s*[,;.]|\s*$)",
        r"\1 across \2 \3 sts",
        "K20 sts from first earflap holder, k to end.",
    ),
    row(
        "holder",
        rf"\b(k|p|knit|purl|work)\s*({N})\s+((?:{_PART}\s*)+?)\s+{STS}\s+from\s+(?:the\s+|an?\s+)?(?:st(?:itch)?\s+)?holder(?=\s*[,;.]|\s*$)",
        r"\1 across \2 \3 sts",
        "K20 right sleeve sts from holder, k to end.",
    ),
    said_row_behind(
        "for",
        rf"\b({_WORKS}\s*{N}(?:\s+{STS})?)\s+(?P<said>for\s+(?:the\s+)?{_PARTS})(?=\s*[,;.)]|\s*$)",
        "K28 for back, pm, k4 for underarm, pm, k to end.",
    ),
    row(
        "st",
        rf"\b((?:{_WORKS}|to\s+(?:the\s+)?last\s)\s*{N})\s+(?P<said>{_PARTS})\s+(?={STS})",
        r"\1 ",
        "Knit 15 left front sts, pm, knit 30 back sts.",
        spelt_out=True,
    ),
    row(
        "first",
        rf"\b({_WORKS})\s+(?:the\s+)?first\s+({N})\s+(?P<said>{_PARTS})\s+(?={STS})",
        r"\1 \2 ",
        "Knit the first 5 band sts, purl to end.",
        spelt_out=True,
    ),
    row(
        "st",
        rf"((?:^|[.!])\s*[(\[]?\s*{N})\s+(?P<said>{_PARTS})\s+(?={STS}\s*[)\]]?\s*\.?\s*$)",
        r"\1 ",
        "Knit 2 rounds. 60 body sts.",
        spelt_out=True,
    ),
    said_row_behind(
        "for",
        rf"((?:^|[.!])\s*[(\[]?\s*{N}\s+{STS}(?:\s+rem(?:ain)?)?)\s+(?P<said>for\s+(?:the\s+)?{_PARTS})(?=\s*[)\]]?\s*\.?\s*$)",
        "Knit 2 rounds. 66 sts for body.",
    ),
    row(
        "hold",
        rf"\bhold\s+({N})\s+({_PARTS})\s+{STS}",
        r"hold \1 sts for \2",
        "Hold 20 sleeve sts, k to end.",
    ),
    row(
        "hold",
        rf"((?:^|[.:])\s*)hold\s+(?P<said>(?:the\s+)?first)\s+(?={N})",
        r"\1hold ",
        "Hold first 20 sts for left sleeve, k to end.",
        spelt_out=True,
    ),
    # --- places ---
    row(
        "within",
        rf"\bto\s+within\s+({N})\s+{STS}\s+(?:of|from)\s+",
        r"to \1 sts before ",
        "K to within 4 sts of marker, k2tog, k2, sm, k to end.",
    ),
    row(
        "until",
        rf"\b(k|p|knit|purl|work)\s+until\s+(?={N}\s+{STS}\s+before\b)",
        r"\1 to ",
        "K until 2 sts before m, k2tog, sm, k to end.",
    ),
    row(
        "unworked",
        rf"\b(k|p|knit|purl|work)\s+until\s+({N})\s+{STS}\s+rem(?:ain)?s?\s+unworked\b",
        r"\1 to last \2 sts",
        "Knit until 6 sts remain unworked, p6.",
    ),
    row(
        "the last",
        rf"\bto\s+the\s+last\s+(?={N}\s+{STS}|{STS})",
        "to last ",
        "Knit to the last six stitches, purl to end.",
    ),
    row(
        "from",
        rf"\b(to\s+{N}\s+{STS})\s+from\s+(?=(?:the\s+)?(?:end|marker|m)\b)",
        r"\1 before ",
        "K to 5 sts from the end, p5.",
    ),
    row(
        "up to|as far",
        r"\b(?:up\s+to|as\s+far\s+as)\s+(?=(?:the\s+|next\s+)*(?:marker|m|end|last)\b)",
        "to ",
        "Knit up to marker, p to end.",
    ),
    row(
        "work",
        rf"\bwork\s+({N}\s+{STS})(?=\s*[,;])",
        r"work \1 in pattern",
        "Work 8 sts, place marker, work to end.",
    ),
    row(
        "rem",
        rf"\b({_WORKS})\s+(?P<said>(?:the\s+)?rem(?:aining)?)\s+(?={N}(?:\s+{STS})?(?=\s*[,;.]|\s*$))",
        r"\1 ",
        "K5, purl the rem 15 sts.",
        spelt_out=True,
    ),
    row(
        "marker",
        r"\b(?:slip|sl)\s+the\s+(?:stitch\s+)?marker\b",
        "sm",
        "K to marker, slip the stitch marker, k to end.",
    ),
    row("marker", r"\bremove\s+next\s+marker\b", "remove marker", "K to m, remove next marker, k to end."),
    # --- edges ---
    row(
        "down|round|up",
        rf"\b(pick\s+up\s+and\s+(?:knit|k)\s+{N}(?:\s+{STS})?)\s+(?P<said>(?:evenly\s+)?(?:round|around|down|up)\s+(?:the\s+)?[a-z][a-z ]*[a-z])"
        r"(?=\s*[,;.]|\s*$)",
        r"\1",
        "Pick up and knit 18 sts down the zip.",
    ),
    said_row(
        "about|approx",
        r"\s*\(\s*(?P<said>(?:about|approx\w*\.?|roughly)\s+\d\s+(?:sts\s+)?(?:for|in|out\s+of)\s+every\s+\d\s+rows?)\s*\)",
        "Pick up and knit 62 sts along left front edge (about 3 for every 4 rows).",
    ),
    row(
        "at",
        r"^\s*(?:starting|beginning|beg)\s+at\s+[^,.;:\d]*,\s*(?=pick\s+up)",
        KEPT,
        "Starting at the zip, pick up and knit 4 sts.",
    ),
    # --- headings ---
    row("-", rf"^(\s*{_PARTS})\s+-\s+(?={BEGINS})", r"\1: ", "Body - Knit 5 rounds."),
    # --- finishing and explanations ---
    row(
        "seam|sleeves|press|pom|ribbon",
        r"(?:(?<=^)|(?<=[.!]))\s*(?:join\s+(?:the\s+)?(?:[a-z]+\s+){0,5}?seams?|set\s+in\s+(?:the\s+)?sleeves?|press(?:\s+lightly)?"
        r"|make\s+an?\s+(?:pom-?pom|pompon|tassel)|thread\s+(?:the\s+)?ribbon)\b[^.!;]*;?\s*",
        KEPT,
        "Join side and sleeve seams.",
    ),
    row(
        "will|now|look|complete|given",
        r"^\s*(?:the|your|this)\s+(?:[a-z]+\s+){1,3}?(?:(?:is|are)\s+(?:now\s+)?(?:complete|completed|finished)|will\s+(?:roll|curl|look|lie)"
        r"|should\s+(?:now\s+)?look|looks)\b[^.;:,]*",
        KEPT,
        "The collar will roll naturally to the outside.",
    ),
    row(
        "instructions",
        r"^\s*instructions\s+are\s+(?:given\s+)?for\s+(?:the\s+)?(?:smallest|first)\s+size\b(?:[^.;:\d]*\b(?:sizes?|brackets|parentheses)\b)?",
        KEPT,
        "Instructions are given for the smallest size, with larger sizes in brackets.",
    ),
    row(
        "read",
        r"^\s*read\s+(?:through|the)\b(?![^.;:]*\b(?:backwards?|upside\s+down|from\s+(?:the\s+)?(?:left|top))\b)[^.;:\d]*(?=[.;:]|$)",
        KEPT,
        "Read through to the end of this section before going on.",
    ),
    row(
        "yarn",
        r"^\s*carry\s+(?:the\s+)?(?:unused\s+)?yarns?\b[^.;:\d]*(?=[.;:]|$)",
        KEPT,
        "Carry yarn not in use loosely up the inside.",
    ),
)
"""The rows, in the order tried."""
