"""Tell a sentence all of whose clauses are of making up: washed, pressed, sewn, stuffed, in any order and number. No I/O.

Theory of operation. "Turn through, sew on buttons to match the holes, insert pad and button up" has four orders, each of them
for what is off the needles. A sentence is cut at its commas and joints, and each clause has to begin with a verb of making up or
with a word that only says how ("omitting ribbing", "with a damp cloth", "until it is dry"); one at least has to be done to
finished cloth alone. What needs live stitches, a needle or yarn to knit with is looked for by who asks. Source: common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.synonym import word_set
from stepper.regex import regex

_OF_CLOTH: Final = word_set(
    "wash hand-wash soak rinse wring press steam iron block re-block pin unpin pat dry stuff sew oversew backstitch back-stitch "
    "seam tack baste darn embroider button hem stitch slip-stitch slipstitch reshape re-shape launder felt"
)
"""Verbs of what is done to finished cloth, and to nothing else."""
_NOUNS: Final = frozenset(["stitch", "button", "hem", "seam"])
_OBJECTS: Final = word_set("the a an it them all both each up down on in together your these with")
"""Of these some are names as well: they are verbs before an object."""
_BESIDE: Final = word_set(
    "insert leave lay let tie knot fold ease match attach trim thread fasten weave cover smooth hang squeeze roll fill gather "
    "turn set spread stretch shape allow remove place put pull take open flatten tidy neaten secure cut line wrap twist admire wear enjoy give close"
)
"""Verbs that may be of making up beside one of those."""
_LEADS: Final = word_set(
    "and then now finally lastly next gently carefully neatly lightly very firmly loosely afterwards also please first if so again just"
)
_HOW: Final = word_set(
    "omitting avoiding using taking easing matching being with while until when so after once before on under over through from "
    "along around in into to for by firmly neatly not without leaving stitching sewing pinning pressing as round like at right wrong inside"
)
"""Words with which a clause says how, where or how long."""
_CUT: Final = regex(r"\s*[,;:]\s*|\s+(?:and|then|but)\s+|\s+-+\s+")
_STOP: Final = regex(r"\bif\s+you\s+(?:like|wish|prefer)\b")
_WORD: Final = regex(r"[a-z][a-z'-]*")


def is_made_up(words: str) -> bool:
    """Return whether each clause of a sentence is of making up.

    Args:
        words: One sentence, made plain, without its full stop.

    Returns:
        Whether it is; what of the knitting stands in it besides is not looked at here.
    """
    sure = False
    for number, clause in enumerate(_CUT.split(_STOP.sub(" ", words.lower()))):
        inner = _WORD.findall(clause)
        while inner and inner[0] in _LEADS:
            inner.pop(0)
        if not inner:
            continue
        if inner[0] in _NOUNS and not set(inner[1:2]) & _OBJECTS:
            return False
        if inner[0] in _OF_CLOTH or (inner[0] == "leave" and inner[-1:] == ["dry"] and "until" in inner):
            sure = sure or len(inner) > 1 or number > 0
        elif inner[0] not in _BESIDE | _HOW and (number == 0 or len(inner) > 4 or not sure):
            return False
    return sure
