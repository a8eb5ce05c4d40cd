"""The names of the sizes, in the order of every list of the pattern. No I/O."""

from __future__ import annotations

import re


def read_sizes(text: str) -> tuple[str, ...]:
    """Read the size line: `1 (2, 3, 4)`, `S (M, L)` or a single name.

    Returns:
        The names in order; empty where the text holds none.
    """
    parts = re.split(r"[(\[\]),;]+", text)
    return tuple(" ".join(part.split()) for part in parts if part.strip())


def find_size(name: str, sizes: tuple[str, ...]) -> int | None:
    """Find a size by its name, whatever the case. Returns its place from 0, or nothing."""
    wanted = " ".join(name.split()).lower()
    for place, size in enumerate(sizes):
        if size.lower() == wanted:
            return place
    return None
