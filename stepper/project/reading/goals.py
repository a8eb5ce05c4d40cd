"""Read the places up to which stitches are worked, and which marker is meant, in the parsed tree. No I/O."""

from __future__ import annotations

import re
from typing import Any

from lark import Token

_ORDINALS = ("second", "third", "fourth", "fifth", "sixth", "seventh", "eighth")
GOALS = {
    "to_end": "end",
    "to_last": "last",
    "to_last_before": "last",
    "to_centre": "centre",
    "before_centre": "before centre",
    "to_opening": "opening",
    "to_half": "half",
    "before_half": "half",
    "to_behind": "behind",
    "to_marker": "marker",
    "to_before": "marker",
    "to_turning": "turn",
    "before_turning": "turn",
    "past_turning": "past",
}
"""Goal of each rule of the grammar, as `stepper.project.stitchwork.Until` has it."""


def read_goal(tree: Any) -> str:
    """Return which marker, or stitch at a turn, the words of a goal mean."""
    words = " ".join(str(child).lower() for child in tree.children if isinstance(child, Token))
    if GOALS.get(tree.data) in ("turn", "past"):
        return "wrap" if "wrap" in words else "" if re.search(r"turn|gap", words) else "ds"
    if GOALS.get(tree.data) not in ("marker", "behind"):
        return ""
    words = next(str(child).lower() for child in tree.children if getattr(child, "type", "") == "MARKER")
    if re.search(r"\b(?:bor|beg|beginning|end)\b", words):
        return "end"
    if "neck" in words:
        return "neck"
    if re.search(r"\b(?:first|1st)\b", words):
        return "first"
    by_number = re.search(r"\s#?([1-8])$", words)
    if by_number is not None:
        return by_number.group(1)
    numbered = re.search(rf"\b(?:([2-8])(?:nd|rd|th)|({'|'.join(_ORDINALS)}))\b", words)
    if numbered is not None:
        return numbered.group(1) or str(_ORDINALS.index(numbered.group(2)) + 2)
    return "last" if "last" in words.split() else ""
