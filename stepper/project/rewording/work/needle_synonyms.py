"""Other wordings for rounds written needle by needle, as in socks. No I/O."""

from __future__ import annotations

from stepper.project.rewording.synonym import STS, N, Synonym, row

_HEAD = r"(?:(?:on\s+)?(?:N|needles?\s*|ndls?\.?\s*)\d(?:\s*(?:,|and|&)\s*(?:N\s*|needles?\s*)?\d)*\s*:)"

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
