"""Write a round told needle by needle with the signs most pages have: "needle 1: ...; needles 2 and 3: ...". No I/O.

Pages set the number of a needle off by a dash ("Needle 1 - knit to last 3 sts"), name two in a list ("N2, N3: patt"), or
star two needles and work them again on the other two ("*N1: ... N2: ... Rep from * on N3 and N4"); such a repeat is
written out, one sentence for each needle. Source: the print of socks, US and UK; common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.regex import regex

_NEEDLE: Final = r"(?:needles?|ndls?\.?|(?-i:N))\s*"
_LIST: Final = rf"[1-5](?:\s*(?:,\s*(?:and\s+)?|\band\b|&)\s*(?:{_NEEDLE})?[1-5])*"
_HEAD: Final = regex(rf"(?<![\w-]){_NEEDLE}(?P<list>{_LIST})\s*(?:(?P<dash>\s-{{1,2}}|[\u2013\u2014])\s*|:\s*)(?=[a-z*(])", re.I)
_DIGIT: Final = regex(r"[1-5]")
_IN_PATTERN: Final = regex(
    r"(?<=:\s)(?:(?:work|k|knit)\s+)?(?:(?:even|straight)\s+)?(?:in\s+)?patt(?:ern)?\b\.?(?:\s+as\s+(?:set|established))?(?=\s*[.;,]|\s*$)", re.I
)
_STARRED: Final = regex(
    rf"\*\s*(?P<body>needle\s(?P<one>[1-5]):\s[^*;]+?)(?P<joint>[.;]\s*)(?P<more>needle\s(?P<two>[1-5]):\s[^*;]+?)[.;*]\s*(?:rep(?:eat)?\.?\s+from\s+\*(?:\s+to\s+\*)?|rep(?:eat)?)\s+(?:again\s+)?(?:on|for|over|across|with)\s+"
    rf"(?:(?:the\s+)?(?:other|remaining|rem|next)\s+(?:two|2)\s+needles|{_NEEDLE}(?P<three>[1-5])\s*(?:,|and|&)\s*(?:{_NEEDLE})?(?P<four>[1-5]))(?=\s*\.?\s*$)",
    re.I,
)


def write_needle_signs(line: Reworded) -> Reworded:
    """Write the needles of a round, and what is worked again on others, as most pages have them.

    Returns:
        The line; the same if it tells of no needle by its number.
    """
    found = list(_HEAD.finditer(line.text))
    if not found:
        return line
    for head in reversed(found):
        numbers = _DIGIT.findall(head["list"])
        named = f"needle {numbers[0]}" if len(numbers) == 1 else f"needles {', '.join(numbers[:-1])} and {numbers[-1]}"
        line = laid_anew(line, *head.span(), (f"{named}: ",))
    for even in reversed(list(_IN_PATTERN.finditer(line.text))):
        line = laid_anew(line, *even.span(), ("in pattern",))
    starred = _STARRED.search(line.text)
    if starred is None:
        return line
    again = (starred["three"] or "3", starred["four"] or "4")
    if (starred["one"], starred["two"]) != ("1", "2") or again != ("3", "4"):
        return line
    bodies = [line.text[slice(*starred.span(name))].split(":", 1)[1].strip() for name in ("body", "more")]
    pieces: list[str | tuple[int, int]] = [starred.span("body"), ". ", starred.span("more")]
    pieces += [f". needle {number}: {body}" for number, body in zip(again, bodies, strict=True)]
    return laid_anew(line, *starred.span(), pieces)
