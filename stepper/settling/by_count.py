"""What keeps an open row from being kept by its count, and what she says yes to besides. Asks nothing."""

from __future__ import annotations

import re
from typing import Final

from stepper.project.reading.own_words import find_depended_on, turns_at_its_end
from stepper.regex import regex
from stepper.settling.by_parts import JOINS
from stepper.settling.rows_asked import RowAsked, bound_off_at_edge

_ROW_OF_RING: Final = regex(r"^\W*(?:[\w'-]+\s+){0,3}?rows?\b[^.:]{0,20}[.:]|\bturn\W*$", re.I)
"""Words that call a round a row, or turn it at its end: whether the ring is left is not known of them."""
_FABRIC: Final = regex(
    r"\b(?:knit|work|purl|cont\w*|begin\w*|start\w*|chang\w+|switch\w*|and|in|to)\s+(?:(?:in|to|with|all|plain|now|even)\s+)*"
    r"(?P<fabric>stockinette|stocking\s+st\w*|st\.?\s?st|reverse\s+st\w*|garter(?:\s+st\w*)?|(?:moss|seed)\s+st\w*"
    r"|(?:[kp]\s?\d,?\s*)*rib(?:bing)?)\b",
    re.I,
)
"""A fabric that words order, not one that they speak of: "the rib"."""


def fabric_ordered(words: str) -> str:
    """Return the fabric that words order from here on, as they name it; empty if they order none.

    Where nothing is knitted for them, the rows behind them would go on in the fabric before.
    """
    match = _FABRIC.search(words)
    return " ".join(match["fabric"].lower().split()) if match is not None else ""


def why_not_by_count(asked: RowAsked) -> str:
    """Return why a row cannot be kept by how many rows and stitches it comes to; empty if it can.

    What goes on hold or is worked besides is in her count. Of a turn in rows it is not known which side faces
    her then, and what is bound off in the middle leaves two pieces.
    """
    words, flat = asked.left.text, asked.so_far.flat
    depended = find_depended_on(words)
    if "turn" in depended and flat is not False and not turns_at_its_end(words):
        return _sentence(depended["turn"])
    if "go" in depended and (flat is False or not bound_off_at_edge(words)):
        return _sentence(depended["go"])
    return ""


def _sentence(told: str) -> str:
    return f"It cannot be kept by a count: {told}"


def besides_count(asked: RowAsked) -> str:
    """Return what she says yes to besides the count of a row."""
    depended = find_depended_on(asked.left.text)
    if "join" in depended:
        return f"in {'rounds' if joins(asked) else 'rows'} from here"
    if "turn" in depended and asked.so_far.flat is False:
        return "every turn closed"
    return "still in rounds" if is_row_of_ring(asked) else ""


def is_row_of_ring(asked: RowAsked) -> bool:
    """Return whether words in a ring speak of a row, which may turn it into rows or only be its name."""
    return asked.so_far.flat is False and _ROW_OF_RING.search(asked.left.text) is not None


def joins(asked: RowAsked) -> bool:
    """Return whether words make rounds of rows."""
    return JOINS.search(asked.left.text) is not None
