"""Write that stitches come onto empty needles by the words of an open row. Asks nothing.

What such words say besides - six rows of ribbing, the second sleeve as the first - is knitted on these
stitches: the row stays open behind them, and is asked about once more where she comes to it.
"""

from __future__ import annotations

import re
from collections.abc import Collection
from typing import Final

from stepper.plan.model import CountWanted, PartKind
from stepper.project.page.unread.kept_rows import marked_rows
from stepper.project.page.unread.left_open import LeftOpen
from stepper.regex import regex
from stepper.session.state import OpenAnswer

CASTS_ON: Final = regex(r"\bcast(?:ing)?[\s-]+on\b|\bCO\b", re.I)
"""Words by which stitches are cast on."""
COMES: Final = regex(rf"{CASTS_ON.pattern}|\bpick(?:ing|ed)?\s+up\b", re.I)
"""Words by which stitches come onto the needles."""
_HOW_ON: Final = regex(
    r"\([^()]*\)|\bjoin(?:ing|ed)?\b[^.;]*|\b(?:work(?:ed|ing)?|knit(?:ted|ting)?)\s+(?:flat\b|back\s+and\s+forth|"
    r"(?:in\s+)?(?:the\s+)?(?:rows|rounds?|rnds?)\b(?=\s*(?:[.,;]|$)))|\b(?:knit(?:ted)?|cable|purl(?:ed)?|rib(?:bed)?)"
    r"[\s-]+cast[\s-]+on\b|\b(?:pick(?:ing|ed)?|take|taking)\s+up\s+(?:and\s+|&\s*)(?:knit\b|k(?:\b|(?=\d)))",
    re.I,
)
"""How stitches come onto the needles, and what shape they are in: nothing that is knitted behind them."""
_KNITS: Final = regex(
    r"\b(?:knit|purl|work|rib(?:bing)?|patt(?:ern)?|garter|ridges?|rows?|r(?:ou)?nds?(?!\s+(?:the|neck|armholes?|edges?)\b)|inc(?:rease)?|dec(?:rease)?"
    r"|cont(?:inue)?|st\s+st|moss|seed|stockinette|stocking|until|till|even|straight|follow|\d\s*(?:cms?|ins?|inch(?:es)?)|[kp]\s?\d+|[kp]|k\d?tog|ssk)\b",
    re.I,
)
"""Words by which rows are worked."""
_AGAIN: Final = regex(
    r"\b(?:same|as\s+(?:(?:the|for|on|given)\s+)*(?:first|other|back|front|left|right|before|above|body|sleeve"
    r"|follow\w*)|like\s+(?:the\s+)?(?:first|other|back|front|left|right)|rep(?:eat)?"
    r"|(?:make|knit|work)\s+(?:2|two)|both)\b",
    re.I,
)
"""Words by which another part is worked once more."""


_PARITY: Final = regex(r"\b(?:an?\s+)?(?P<parity>odd|even)\s+(?:number|count|total|amount)\b", re.I)
_MULTIPLE: Final = regex(
    r"\b(?:a\s+)?multiple\s+of\s+(?P<of>\d+)(?:\s*st(?:itche)?s)?(?:\s*(?:\+|plus|and)\s*(?P<over>\d+)\b(?:\s+(?:over|more))?)?"
    r"|\b(?:number\s+)?divisible\s+by\s+(?P<by>\d+)|\bcome\s+to\s+(?P<come>\d+)\s+and\s+(?P<rest>\d+)\s+over\b",
    re.I,
)
_RANGE: Final = regex(
    r"\b(?:approx(?:imately)?\.?|about|around|roughly|some|c\.|ca\.?)\s*(?P<least>\d+)(?:\s*(?:-|\u2013|to|or)\s*(?P<most>\d+))?"
    r"(?!\s*(?:[(\[:/,-]\s*\d|(?:sts?|stitches)\s+(?:for|in|to|from)\s+(?:every|each)\b|\d|cm|in\b|mm|\"))",
    re.I,
)
_OPEN: Final = regex(
    r"\bat\s+(?:a|the)\s+rate\s+of\b|\b(?:sts?|stitches)\s+(?:for|in|to|from|out\s+of)\s+(?:every|each)\s+\w+"
    r"|\bas\s+many\s+(?:sts|stitches)\s+as\b",
    re.I,
)
"""Words that leave the number of stitches to the edge along which they are picked up."""


def wanted_in(words: str) -> CountWanted | None:
    """Return what words ask of the number of stitches that come by them; None where they leave none open.

    A range for each size is not taken: which of them is hers the words alone do not say.
    """
    parity, multiple, near = _PARITY.search(words), _MULTIPLE.search(words), _RANGE.search(words)
    if not (parity or multiple or (_OPEN.search(words) and COMES.search(words))):
        return None
    of, over = 1, 0
    if multiple is not None:
        of = int(multiple["of"] or multiple["by"] or multiple["come"])
        over = int(multiple["over"] or multiple["rest"] or 0)
    elif parity is not None:
        of, over = 2, int(parity["parity"].lower() == "odd")
    if not 0 <= over < of:
        return None
    least = int(near["least"]) if near is not None else 0
    most = int(near["most"] or least) if near is not None else 0
    return CountWanted(multiple=of, over=over, least=least, most=most)


def write_come(answer: OpenAnswer, words: str) -> tuple[tuple[str, ...], ...]:
    """Write that stitches come onto empty needles.

    Behind a cast-on the right side faces her first, behind stitches picked up the wrong side: so her answer
    to which side it is chooses between them (common practice). In the round the words do.

    Args:
        answer: What she answered, of kind `COME`.
        words: The words of the page.

    Returns:
        The rows that may be written, without indentation, the best form first.
    """
    casts_on = CASTS_ON.search(words) is not None if answer.round else answer.right
    head = f"Own words, {'cast on' if casts_on else 'pick up'} {answer.stitches} sts"
    shape = "Join in the round." if answer.round else "Work flat."
    plain = " ".join(words.split()).rstrip(" ,;:–—-")
    ended = plain if plain.endswith((".", "!", "?")) else f"{plain}."
    return (
        (f"{head}: {ended}", shape),
        (f"Note: {plain}", f"{head}: by the words above.", shape),
    )


def goes_on_behind(words: str) -> bool:
    """Return whether words by which stitches come say more that is knitted: rows, another part."""
    return _KNITS.search(_HOW_ON.sub(" ", words)) is not None or _AGAIN.search(words) is not None


def open_behind(left: LeftOpen, by_parts: Collection[PartKind]) -> tuple[str, ...]:
    """Return a row as it stays open behind the stitches that come by it; empty if it says no more.

    Args:
        left: The row.
        by_parts: What it is asked of. Where stitches that wait come onto the needles and its words do not
            say so, they say another thing: "Work the second sleeve the same."
    """
    more = goes_on_behind(left.text) or by_parts == {PartKind.HELD, PartKind.ON}
    return tuple(marked_rows([left.text], left.where, "")) if more else ()
