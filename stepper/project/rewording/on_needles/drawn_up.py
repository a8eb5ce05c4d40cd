"""Write stitches that are drawn up on the yarn in the grammar's words: cut, threaded through, pulled tight, fastened. No I/O.

"Break off wool, leaving an 8-inch tail, draw through remaining sts and fasten securely" and "cut the yarn to 20 cm, thread it
through the sts twice, pull tight and secure inside" are one thing. Such a sentence is made of a few phrases, in any order and
number: the yarn is cut, a tail is left, it goes through the stitches, is pulled and fastened. Through which stitches is the
order; the rest is said. One word of no kind leaves the sentence as it is printed. Source: the wording of patterns in print,
US and UK; common practice.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from stepper.project.rewording.reworded import Reworded
from stepper.project.rewording.synonym import LONG, STS, N
from stepper.project.rewording.told.phrases import ToldPhrase, Written, prepare_kinds, write_sentences
from stepper.regex import regex

_YARN: Final = r"(?:(?:the|your|working)\s+)*(?:yarn|wool|thread)"
_END: Final = r"(?:(?:the|your|yarn|wool|loose|long)\s+)*(?:tail|end|yarn|wool|thread)"
_NEEDLE: Final = r"(?:an?|the|your)\s+(?:(?:blunt|tapestry|darning|wool|yarn|sewing)\s+)*needle"
_WHERE: Final = rf"(?:(?:the|all|of|these|those|your|each)\s+)*(?:(?:last|remaining|rem|live|open)\s+)*(?:{N}\s+)?(?:(?:remaining|rem|live|open)\s+)?{STS}(?:\s+(?:left|remaining|that\s+remain|on\s+the\s+needles?))?"
_INSIDE: Final = r"(?:on|to|at)\s+(?:the\s+)?(?:inside|wrong\s+side|ws|back|reverse)(?:\s+of\s+the\s+(?:work|hat|mitten|sock))?"
_HOW: Final = r"(?:tight(?:ly)?|firm(?:ly)?|snug(?:ly)?|closed|shut|up|together|well|securely|neatly|gently|carefully)"
_CLOSE: Final = r"to\s+close(?:\s+(?:up\s+)?(?:the\s+)?(?:hole|top|gap|opening|toe|tip|crown))?"
_PULLS: Final = r"(?:pull|draw|gather|cinch|tighten|close|snug)"
_FASTENS: Final = r"(?:fasten|secure|weave|darn|sew|knot|run|tie)"
DRAWN_UP: Final = prepare_kinds(
    *(
        (kind, rf"\(?(?:(?:now|finally|&)\s+)*(?P<told>{expression})(?![\w'-])\)?")
        for kind, expression in (
            ("cut", rf"(?:break|cut|snip)\s+(?:off\s+)?{_YARN}(?:\s+off)?|(?:break|cut)\s+off(?=\s*,)"),
            ("tail", rf"(?:(?:leaving|with|to|leave)\s+)(?:about\s+|approx(?:imately|\.)?\s+)?(?:an?\s+)?(?:(?:good|long|generous)\s+)*(?:{LONG}|\d+[-\s](?:inch|cm))?(?:[-\s]*long)?(?:\s*(?:tail|end|length)(?:\s+of\s+(?:yarn|wool))?)?(?:\s+(?:for|to)\s+(?:sewing|sew|closing|weaving|weave)(?:\s+(?:up|in|it))?)?(?<=[\w\"])"),
            ("through", rf"(?:draw|thread|run|pass|pull)\s+(?:(?:it|{_END})\s+)?(?:(?:onto|on|into)\s+{_NEEDLE}\s+and\s+)?(?:(?:draw|run|pass|pull)\s+)?(?:(?:with|using)\s+{_NEEDLE}\s+)?(?:twice\s+)?through\s+(?P<where>{_WHERE})(?:\s+(?:twice|two\s+times|once\s+more|again))?"),
            ("needle", rf"thread\s+(?:it|{_END})\s+(?:onto|on|into|through)\s+{_NEEDLE}|(?:with|using)\s+{_NEEDLE}"),
            ("pull", rf"{_PULLS}(?:\s+(?:it|{_END}|the\s+(?:{STS}|hole|top)))?(?:\s+{_HOW})+(?:\s+{_CLOSE})?|{_PULLS}\s+{_CLOSE}"),
            ("fasten", rf"{_FASTENS}(?:\s+(?:off|in|down))?(?:\s+(?:it|{_END}s?))?(?:\s+{_HOW})*(?:\s+(?:off|in))?(?:\s+(?:inside|{_INSIDE}))?"),
            ("inside", rf"(?:take|bring|pass|draw)\s+(?:it|{_END})\s+(?:through\s+)?{_INSIDE}"),
            ("aside", r"(?:twice|once|two\s+times)(?:\s*,?\s+if\s+you\s+(?:don't|do\s+not)\s+trust\s+it)?"),
        )
    )
)
"""The kinds of phrases of which such a sentence is made."""
_STOP: Final = regex(r"\s*(?:[.!]|$)")
_STARTS: Final = regex(r"(?:^|(?<=[.!:])\s)\s*(?:(?:and|then|now|finally)\s+)?(?=(?:break|cut|snip|draw|thread|run|pass|pull|using|with)\b)", re.IGNORECASE)


def write_drawn_up(line: Reworded) -> Reworded:
    """Write the sentences of a line that draw stitches up, and tell the rest of them; the same if it has none."""
    if "through" not in line.text.lower():
        return line
    return write_sentences(line, _STARTS, DRAWN_UP, _written)


def _written(phrases: Sequence[ToldPhrase], start: re.Match[str]) -> Written | None:
    """Return a sentence that says once through which stitches the yarn goes, and no other order; else None."""
    kinds = [phrase.kind for phrase in phrases]
    alone = "count" not in kinds and _STOP.match(start.string, phrases[-1].match.end()) is not None
    if kinds.count("through") != 1 or len(kinds) < 2 or not alone:
        return None
    order = phrases[kinds.index("through")].match
    said = [phrase.get("told").strip() for phrase in phrases if phrase.kind not in ("through", "cut")]
    twice = " ".join(order["told"].split()[-2:]) if order.end("where") < order.end("told") else ""
    cut = "Cut" if start.string[start.end()].isupper() else "cut"
    return [f"{cut} yarn and draw through ", order.span("where")], [words for words in (twice, *said) if words]
