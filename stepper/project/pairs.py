"""Pieces of which there are two, and what a page says of a pair where it prints one of them. No I/O."""

from __future__ import annotations

import re
from typing import Final

from stepper.regex import regex

_NAMES: Final = ("mitten", "mitt", "glove", "sock", "stocking", "slipper", "bootee", "bootie", "wristlet")
_WARMED: Final = ("leg", "wrist", "hand")
WHOLES: Final = rf"{'|'.join(_NAMES)}|(?:{'|'.join(_WARMED)})[-\s]?warmer"
"""What is a garment in itself, with its thumb or heel, as a page prints it."""
WHOLE_NAMES: Final = frozenset({*_NAMES, *(f"{limb}warmer" for limb in _WARMED)})
"""The same, each as one word: the second of it is all of the page again."""
OF_TWO: Final = (
    rf"(?:sleeve|{WHOLES}|front|cuff|strap|pocket|thumb|piece|ear\s?flap|armband|armhole\s+(?:band|border|edging))"
)
"""What there are two of."""
COPIES: Final = ("second", "third", "fourth", "fifth")
"""What the copies of a section are called behind its name, from the first copy on."""
_BOTH = regex(
    rf"\b(?:both|the\s+two|the)\s+({OF_TWO})s\s+are\s+(?:(?:worked|made|knit(?:ted)?)\s+)?(?:exactly\s+)?"
    rf"(?:alike|identical|(?:just\s+)?the\s+same)\b(?!\s+(?:as|to|until|except|but|length|size))",
    re.I,
)


_SIDED = regex(
    r"\W*(?:for\s+)?(?:the\s+)?(?P<side>left|right)(?:[\s-]+hand)?\s+"
    rf"(?P<of>(?:{WHOLES}|hand|foot|palm)(?=s?\b)|(?=(?:row|rnd|round)\b))s?(?:\s+only)?(?:\s*(?:row|rnd|round))?\W*",
    re.I,
)


def side_of_pair(label: str | None) -> tuple[str, str]:
    """Return the side and the noun of a label that a row of one piece of a pair bears, both in lower case.

    Args:
        label: "RIGHT mitt".

    Returns:
        ("right", "mitt"), of "right row" ("right", ""); two empty words for any other label. Source: common
        practice.
    """
    found = _SIDED.fullmatch(label or "")
    return (found["side"].lower(), found["of"].lower()) if found is not None else ("", "")


def piece_in(section: str) -> str:
    """Return the name of the piece that a section is of: `right mitten` of `right mitten, cuff`."""
    return section.lower().partition(", ")[0]


def without_copy(section: str) -> str:
    """Return a section's name as that of the first of its copies: "foot" of "foot, second"."""
    name, joint, last = section.rpartition(", ")
    return name if joint and last in COPIES else section


def pair_alike(sentence: str) -> str:
    """Return the piece of which a sentence says that both are alike, in its singular and lower case.

    Args:
        sentence: "Both mittens are alike. Wear on either hand."

    Returns:
        "mitten"; empty if the sentence says so of none. Source: common practice.
    """
    found = _BOTH.search(sentence)
    return found.group(1).lower() if found is not None else ""
