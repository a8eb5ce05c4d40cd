"""Read how a line says rounds are worked: in a fabric, a rib, a pattern by its name. No I/O."""

from __future__ import annotations

import re
from typing import Any


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
    return re.sub(r"^in\s+|^the\s+", "", re.sub(r"^in\s+", "", words)).rstrip(".")


def forms_name(words: str) -> str:
    """Return the name in "form the Trellis pattern"."""
    words = " ".join(words.lower().split()).rstrip(".")
    words = re.sub(r"^(?:form|make|set(?: up)?|establish)\s+(?:the\s+|one\s+)?", "", words)
    return re.sub(r"\s+and\s+are\b.*$", "", words).rstrip(".")
