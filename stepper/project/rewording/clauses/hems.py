"""Write a hem that is folded up and knitted together with its cast-on edge, and lengths from its fold. No I/O.

"Fold the edge along the purl round and knit each st together with the corresponding st of the cast-on edge" works one
plain round: what is picked out of the edge is worked with the stitch above it, so that the number stays. Each part of it
is looked for until the sentence ends; one word that is none of them leaves all of it. Looked for only in a line that
nothing else reads. Source: the print of hats, mittens and sweaters with a facing; common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.reworded import Reworded, cut_out, laid_anew
from stepper.project.rewording.synonym import STS
from stepper.regex import regex

_ART: Final = r"(?:(?:the|an?|one|1|your|its|each|every|next)\s+)*"
_LINE: Final = r"(?:(?:purl(?:ed)?|turning|folding|fold|picot|eyelet|hem|ridge)\s+)*(?:rounds?|rnds?|rows?|ridge|line|edge|fold)"
_FOLD: Final = (
    rf"(?:(?:now|then)\s+)?(?:fold|turn)\s+(?:up\s+)?{_ART}(?:(?:cast-?\s?on\s+)?(?:hem|edge|work|fabric|brim|cuff|facing|piece|knitting|border|band|lower)\s*)*(?:in\s+(?:half|two)\s*)?"
    rf"(?:up\s+)?(?:(?:along|at|on)\s+{_ART}{_LINE}\s*)?(?:(?:to|towards)\s+{_ART}(?:inside|wrong\s+side|ws)\s*)?(?:,?\s*(?:with\s+)?(?:ws|wrong\s+sides?|rs|right\s+sides?)\s+(?:together|out|outside)\s*)?(?:up\s*)?"
)
_OWN: Final = rf"{_ART}(?:live\s+)?{STS}(?:\s+(?:on|from|of)\s+(?:the\s+)?(?:left\s+|left-hand\s+|working\s+)?needle)?"
_EDGE: Final = (
    rf"{_ART}(?:(?:corresponding|matching|opposite)\s+)?(?:(?:cast-?\s?on|co|provisional)\s+)?(?:{STS}|loops?|bumps?)(?:\s+(?:(?:of|from|in|on|along)\s+)?{_ART}(?:cast-?\s?on|co|provisional|first)\s+(?:edge|row|round|{STS}))?"
)
_JOIN: Final = (
    rf"(?:(?:k|knit)(?:ting)?\s+(?:together\s+)?{_OWN}\s+(?:together\s+)?(?:with|and)\s+{_EDGE}(?:\s+together)?"
    rf"|join\s+(?:the\s+)?hem\s+by\s+knitting\s+{_OWN}\s+together\s+with\s+{_EDGE})(?:\s+(?:all\s+(?:the\s+way\s+)?(?:a?round)|a?round|to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:rnd|round|row))?|across))?"
)
_ROUND: Final = r"(?:(?:k|knit|work)\s+(?:1|one)\s+(?:round|rnd|row)\s*,?\s*(?:by\s+)?)?"
_AGAIN: Final = r"(?:\s*[;,]\s*(?:rep(?:eat)?\s+from\s+\*|rep(?:eat)?)(?:\s+(?:to\s+(?:the\s+)?end|a?round))?)?"
_HEM: Final = regex(
    rf"(?:^\s*|(?<=[:.]\s))(?P<said>(?:{_FOLD}(?:\s*[,;]?\s*(?:and\s+)?(?:then\s+)?|\.\s+)(?:on\s+the\s+next\s+(?:round|rnd|row)\s*,?\s*)?)?{_ROUND}\*?\s*{_JOIN}{_AGAIN})(?=\s*\.?\s*$)",
    re.I,
)
_CAST_ON: Final = regex(r"cast-?\s?on|\bco\b|provisional", re.I)
_FROM: Final = regex(
    r"(?<=\bfrom)\s+(?:the\s+)?(?:fold(?:ed)?(?:\s+(?:line|edge|row|round|rnd))?|(?:turning|folding|purl|hem)\s+(?:ridge|round|rnd|row|line)|hem\s?line)(?=\s*[.,;:(]|\s*$|\s+(?:and|or|then|ending)\b)",
    re.I,
)


def write_hems(line: Reworded) -> Reworded:
    """Write a hem knitted together as a plain round, and lengths from a fold as from its purled round.

    Returns:
        The line; the same if it tells of neither.
    """
    found = _HEM.search(line.text)
    if found is not None and _CAST_ON.search(found[0]):
        kept = cut_out(line, ((found.start("said"), found.end("said"), found["said"]),))
        return laid_anew(kept, found.start("said"), found.start("said"), ("k to end",))
    far = _FROM.search(line.text)
    return line if far is None else laid_anew(line, *far.span(), (" fold",))
