"""Read how a line says rounds are worked: in a fabric, a rib, a pattern by its name. No I/O."""

from __future__ import annotations

import re
from typing import Any

from stepper.project.instructions import ONLY_CHART


def manner_of(tree: Any) -> str:
    """Return how rounds are worked, as in `WorkRounds.manner`; "pattern" if the line does not say."""
    if tree is None:
        return "pattern"
    token = tree.children[0]
    words = " ".join(str(token).lower().split())
    if token.type == "PATTERN_MANNER":
        return f"named {name_of(words)}"
    ribbed = re.search(r"(\d+)\D+?(\d+)", words)
    if ribbed:
        return f"rib {ribbed.group(1)} {ribbed.group(2)}"
    for word, manner in (
        ("garter", "garter"),
        ("sto", "stockinette"),
        ("st st", "stockinette"),
        ("rib", "rib"),
    ):
        if word in words:
            return manner
    return "pattern"


def is_even(tree: Any) -> bool:
    """Return whether a line says only that nothing is shaped (`even`, `straight`), naming no fabric."""
    return (
        tree is not None and re.match(r"(?:even|evenly|straight)$", str(tree.children[0]), re.I) is not None
    )


def is_as_set(tree: Any) -> bool:
    """Return whether a line says that the fabric it names is established: `in seed st as established`."""
    return tree is not None and len(tree.children) > 1


def name_of(words: str) -> str:
    """Return the name of a pattern without the words that introduce it."""
    return re.sub(
        r"^(?:in|of)\s+|^the\s+", "", re.sub(r"^(?:in|of)\s+", "", " ".join(words.lower().split()))
    ).rstrip(".")


def chart_called(words: str) -> str:
    """Return the name of a chart as a line calls it: one without a name is the only one of the garment."""
    return re.sub(r"^(next\s+round\s+of\s+)?(the\s+)?chart\b\s*", "", words, flags=re.I) or ONLY_CHART


def forms_name(words: str) -> str:
    """Return the name in "form the Trellis pattern"."""
    words = " ".join(words.lower().split()).rstrip(".")
    words = re.sub(r"^(?:form|make|set(?: up)?|establish)\s+(?:the\s+|one\s+)?", "", words)
    return re.sub(r"\s+and\s+are\b.*$", "", words).rstrip(".")


_STRETCHES = (
    (r"in\s+(?:the\s+)?garter(?:\s+st(?:itch)?)?", "garter"),
    (r"in\s+(?:the\s+)?(?:(?:stockinette|stocking)(?:\s+st(?:itch)?)?|st\s+st)", "stockinette"),
    (r"in\s+(?:the\s+)?rev(?:erse)?\.?\s+(?:stockinette|stocking|st)(?:\s+st(?:itch)?)?", "reverse"),
    (r"in\s+(?:the\s+)?seed(?:\s+st(?:itch)?)?", "seed"),
    (r"in\s+(?:the\s+)?moss(?:\s+st(?:itch)?)?|moss", "moss"),
    (r"in\s+opposite", "opposite"),
)
"""Fabrics that one row can work over a stretch, whichever row it is."""


def stretch_in(tree: Any) -> str:
    """Return the fabric that an element names for its stitches, as in `Work.fabric`; empty for none."""
    kinds = ("MANNER", "RIB_MANNER", "PATTERN_MANNER", "PATTERN", "STRETCH")
    tokens = tree.scan_values(lambda value: getattr(value, "type", "") in kinds)
    said = [" ".join(str(token).rstrip(".").split()) for token in tokens]
    found = (name for words, name in _STRETCHES for one in said if re.fullmatch(words, one, re.I))
    return next(found, "")
