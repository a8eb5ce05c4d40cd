"""Other wordings for markers: placed, removed, hung in the fabric, and counts between them. No I/O."""

from __future__ import annotations

from stepper.project.rewording.synonym import KEPT, ROUND, N, Synonym, row

_NTH = r"(?:first|second|third|fourth|1st|2nd|3rd|4th|next|another|new|stitch)"
_ALL_BUT = r"(?:\s+(?:except|but)\s+(?:for\s+)?(?:the\s+)?(?:bor|beg(?:inning)?(?:\s+of\s+(?:rnd|round))?|end\s+of\s+(?:rnd|round))(?:\s+(?:marker|m))?)?"
_AS_MET = r"(?:\s+(?:as\s+you\s+(?:come|get|go)(?:\s+to\s+them)?|as\s+you\s+(?:reach|encounter|pass)\s+them|along\s+the\s+way))?"

MARKERS: tuple[Synonym, ...] = (
    row(
        "remove",
        r"\bremove\s+(?:the\s+)?(?:next\s+|gusset\s+|thumb\s+|side\s+)?m\b(?!\s*\d)",
        "remove marker",
        "K to m, remove m, k to end.",
    ),
    row(
        "remove",
        r"\bremove\s+(?P<said>(?:the\s+)?(?:gusset|thumb|side|raglan|first|second|last))\s+marker\b",
        "remove marker",
        "K to marker, remove gusset marker, k to end.",
        spelt_out=True,
    ),
    row(
        "place|pm",
        rf"\b(?=(?P<said>place\s+(?:an?\s+|the\s+)?{_NTH}\s+markers?\b))place\s+(?:an?\s+|the\s+)?{_NTH}\s+marker\b",
        "pm",
        "K10, place first marker, k20, place second marker, k10.",
        spelt_out=True,
    ),
    row(
        "remov",
        rf"^(\s*(?:(?:next|rnd|round|row)[^:]*:\s*)?)((?:knit|purl|work)\s+{N}\s+{ROUND}(?:\s+even)?|(?:knit|purl))\s*,?\s*(?:and\s+)?remov(?:e|ing)\s+(?:all\s+)?(?:the\s+)?markers?{_ALL_BUT}{_AS_MET}(?=\s*\.|\s*$)",
        r"\1remove markers. \2",
        "Knit 1 round, removing markers.",
    ),
    row(
        "remov",
        rf"\bremov(e|ing)\s+(?:all\s+)?(?:the\s+)?markers{_ALL_BUT}{_AS_MET}",
        r"remov\1 markers",
        "Knit to end, removing all markers as you come to them.",
    ),
    row(
        "marker|thread|yarn|pin",
        r"(?:(?<=^)|(?<=[.!]))\s*(?:place|put|hang|attach|insert|clip)\s+(?:an?\s+)?(?:removable|locking|split-?ring|coil-?less|detachable|safety)\s+"
        r"(?:stitch\s+)?(?:marker|pin)s?\s+(?:in|into|on|onto|at|around)\b[^.;:\d]*(?=[.;!]|$)",
        KEPT,
        "Place a removable marker in the fabric to mark the RS.",
    ),
    row(
        "mark",
        r"(?:(?<=^)|(?<=[.!]))\s*mark\s+(?:the\s+)?(?:rs|right\s+side|ws|wrong\s+side|front|back)(?:\s+of\s+(?:the\s+)?(?:work|fabric|piece))?"
        r"(?:\s+with\s+an?\s+[a-z -]+)?(?=\s*[.!]|\s*$)",
        KEPT,
        "Mark the right side of the work with a safety pin.",
    ),
)
"""The rows, in the order tried."""
