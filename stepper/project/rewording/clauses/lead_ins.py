"""Take off a line what only leads into the rows below it: "and proceed in the following pattern:". No I/O.

Such words name the pattern, how many stitches and rows it has, and that its rows follow; they work nothing.
What stands before them in the line is left as a sentence. They end the line and say by "following", by "as
follows" or by a colon that rows come: "Work in lace pattern" without that works the pattern, and is left. Looked
for only in a line that nothing else reads. Source: the print of patterns, US and UK; common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.reworded import Reworded, cut_out
from stepper.project.rewording.synonym import ROUND, STS, N
from stepper.regex import regex

_FOLLOWS: Final = (
    r"(?:as\s+(?:foll(?:ow)?s?\b\.?|(?:given|set\s+out|shown|written|described)\s+below|below)|thus|like\s+(?:this|so)|in\s+(?:this|the\s+following)\s+(?:way|manner|fashion)"
    r"|(?:the\s+)?following\s+instructions|below)"
)
_VERB: Final = (
    r"(?:(?:now|then|next|and\s+then)\s*,?\s+)?(?:(?:work|knit|proceed|continue|cont|commence|begin|beg|start)\b\.?(?:\s+(?:to\s+work|working|knitting|with|on))?|(?:change|switch|turn)\s+to)"
)
_NAMED: Final = (
    r"(?:(?:the|an?|this|our|your)\s+)?(?:(?P<follows>following)\s+)?(?:(?:\d{1,2}|two|three|four|six|eight|ten|twelve)[\s-](?:row|rnd|round|st|stitch)\s+)?(?:(?!(?:next|same|last|first|rem|remaining|only|other|row|rows|rnd|rnds|round|rounds|st|sts|"
    r"stitches|to|for|until|till|and|or|with|in|on|at|from|every|each|knit|purl|work|inc|dec|bind|cast|over|between|before|after|all|both|chart|follow\w*|as|established|set|needle\w*|marker\w*)\b)[a-z][a-z'-]*\s+){0,4}?"
    r"(?:pattern|patt?\b\.?|lace|rib|ribbing|stitch|repeat|sequence|texture|rows|rounds|rnds)"
)
_NUMBERED: Final = rf"(?:(?:{N})\s*(?:{STS}|{ROUND})?)"
_OVER: Final = (
    rf"(?:\s*,?\s*(?:which\s+(?:is|has)|with|having|over)\s+(?:(?:worked|repeated|made|an?|the|over|of|repeat|multiple)\s+)*{_NUMBERED}(?:\s+(?:and|x|by)\s+{_NUMBERED})?"
    rf"|\s*[(\[](?:(?:a|worked|over|multiple|of|repeat|patt(?:ern)?|rep)\s+)*{_NUMBERED}(?:\s*(?:,|\+|and|plus|x|by)\s*{_NUMBERED})*(?:\s+(?:each|in\s+all))?[)\]])"
)
_LEADS: Final = regex(
    rf"(?P<joint>^\s*|\s*[.;,]\s+(?:and\s+)?|\s+and\s+|\s*[.;,]?\s+(?=then\b))(?P<said>{_VERB}\s+(?:(?:in|on)\s+)?{_NAMED}(?P<over>{_OVER})?(?:\s*,?\s+(?P<thus>{_FOLLOWS}))?)\s*(?P<colon>[:\u2013\u2014-]*)\s*\.?\s*$",
    re.I,
)
_PLAINLY: Final = regex(
    rf"(?P<joint>^\s*|\s*[.;,]\s+(?:and\s+)?|\s+and\s+)(?P<said>{_VERB}(?:\s+(?:knitting|working))?\s+{_FOLLOWS})\s*[:.\u2013\u2014-]*\s*$",
    re.I,
)


def write_lead_ins(line: Reworded) -> Reworded:
    """Take off what leads into the rows below, to be said with the line.

    Returns:
        The line; the same if it does not end so.
    """
    found = _LEADS.search(line.text)
    if found is not None and not (found["follows"] or found["thus"] or found["colon"]):
        return line
    found = found or _PLAINLY.search(line.text)
    if found is None:
        return line
    before = line.text[: found.start()].rstrip()
    made = cut_out(line, ((found.start(), len(line.text), found["said"]),))
    return made if before else cut_out(line, ((0, len(line.text), found["said"]),))
