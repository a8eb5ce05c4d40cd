"""Other wordings for markers - placed, removed, counted between - and for rounds written needle by needle. No I/O."""

from __future__ import annotations

from stepper.project.rewording.synonym import KEPT, ROUND, STS, N, Synonym, row

_NTH = r"(?:first|second|third|fourth|1st|2nd|3rd|4th|next|another|new|stitch)"
_ALL_BUT = r"(?:\s+(?:except|but)\s+(?:for\s+)?(?:the\s+)?(?:bor|beg(?:inning)?(?:\s+of\s+(?:rnd|round))?|end\s+of\s+(?:rnd|round))(?:\s+(?:marker|m))?)?"
_AS_MET = r"(?:\s+(?:as\s+you\s+(?:come|get|go)(?:\s+to\s+them)?|as\s+you\s+(?:reach|encounter|pass)\s+them|along\s+the\s+way))?"
_HEAD = r"(?:(?:on\s+)?(?:N|needles?\s*|ndls?\.?\s*)\d(?:\s*(?:,|and|&)\s*(?:N\s*|needles?\s*)?\d)*\s*:)"

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

NEEDLEWORK: tuple[Synonym, ...] = (
    row(
        "each of",
        rf"\b(?:divide|arrange|distribute|place|put)\s+({N})\s+{STS}\s+(?:on|onto|over)\s+each\s+of\s+(?:the\s+)?(two|three|four|five|[2-5])\s+(?:needles|dpns|double-pointed\s+needles)",
        r"divide over \2 needles. \1 sts on each needle",
        "Place 16 sts on each of 2 needles.",
    ),
    row(
        "needle|n1|n2",
        r"\s*[.;,]\s*(?=(?:on\s+)?(?:N|needles?\s*)\d(?:\s*(?:,|and|&)\s*(?:N\s*|needles?\s*)?\d)*\s*:)",
        "; ",
        "N1: Knit to last 3 sts, k2tog, k1. N2: K1, ssk, k to end.",
        again=True,
    ),
    row(
        "needle",
        rf"\b(to\s+(?:last\s+{N}\s+{STS}|last\s+{STS}|end))\s+(?:of|on)\s+(?:the\s+)?(?:needle\b(?:\s*\d)?|N\d)(?!\s*[^.*]*\brep)",
        r"\1",
        "N1: K to last 3 sts on needle, k2tog, k1; N2: k1, ssk, k to end of needle.",
    ),
    row(
        "needle|n2",
        rf"\*\s*([^*.]*?\bto\s+(?:last\s+(?:{N}\s+)?{STS}|end|{N}\s+{STS}\s+before\s+end)\b)(?:\s+(?:of|on)\s+(?:the\s+)?needle)?([^*.]*?)[;,]?\s*rep(?:eat)?\s+from\s+\*\s+"
        r"(?:on|for|across)\s+(?:the\s+)?(?:second|2nd|other)\s+needle\b",
        r"needles 1 and 2: \1\2",
        "*K1, m1r, knit to last st on needle, m1l, k1; rep from * on second needle.",
    ),
    row(
        "needle",
        rf"\*\s*([^*.]*?\bto\s+(?:last\s+(?:{N}\s+)?{STS}|end)\b)(?:\s+(?:of|on)\s+(?:the\s+)?needle)?([^*.]*?)[;,]?\s*rep(?:eat)?\s+from\s+\*\s+"
        r"(?:on|for|across)\s+(?:each|every)\s+(?:rem(?:aining)?\s+)?needle\b",
        r"each needle: \1\2",
        "*K to last 2 sts on needle, k2tog; rep from * on each needle.",
    ),
    row(
        "needle",
        r"\b(dec(?:rease)?)\s+(?:1|one)\s+st\s+at\s+(?=(?:the\s+)?(?:beg|end|start)\w*\s+of\s+(?:N|needles?\s*)\d)",
        r"\1 at ",
        "Dec 1 st at end of needle 1 and at beg of needle 2.",
    ),
    row(
        "needle|n1",
        rf"({_HEAD}\s*)work\s+(?:even\s+)?(?:in\s+(?:patt(?:ern)?|rib)|even)(?:\s+as\s+(?:set|established))?(?=\s*[;.,]|\s*$)",
        r"\1work in pattern to end",
        "N1: K1, ssk, k to end; N2: work in patt.",
        again=True,
    ),
)
"""The rows, in the order tried."""
