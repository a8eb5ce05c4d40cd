"""Read and find the names of the sizes, in the order of every list of the pattern. No I/O."""

from __future__ import annotations

import re
from difflib import get_close_matches


def read_sizes(text: str) -> tuple[str, ...]:
    """Read the size line: `1 (2, 3, 4)`, `S (M, L)` or a single name.

    Returns:
        The names in order; empty if the text holds none.
    """
    parts = re.split(r"[(\[\]),;]+", text)
    return tuple(" ".join(part.split()) for part in parts if part.strip())


def find_size(name: str, sizes: tuple[str, ...]) -> int | None:
    """Return the index of a size by its name, whatever the case, from 0; None if there is none."""
    wanted = " ".join(name.split()).lower()
    for place, size in enumerate(sizes):
        if size.lower() == wanted:
            return place
    return None


def size_called(name: str, sizes: tuple[str, ...]) -> int | None:
    """Return the index of a size, from 0, by its name or number ("2nd size"); None if there is none."""
    found = find_size(name, sizes)
    nth = re.fullmatch(r"(\d{1,2})(?:st|nd|rd|th)", name.strip(), re.I)
    if found is None and nth is not None and 1 <= int(nth.group(1)) <= len(sizes):
        return int(nth.group(1)) - 1
    return found


_WORDS = {"extra small": "xs", "small": "s", "medium": "m", "large": "l", "extra large": "xl"}
# Sizes printed as letters and said as words.


def nearest_size(name: str, sizes: tuple[str, ...]) -> str:
    """Return the size of the file nearest to a name it does not have: by number, by letter or by spelling.

    Returns:
        A sentence with the nearest and all sizes, or all sizes if none is near; empty without sizes.
    """
    wanted = " ".join(name.split()).lower()
    wanted = _WORDS.get(wanted, wanted)
    near = ""
    numbers = {float(size): size for size in sizes if re.fullmatch(r"\d+(?:\.\d+)?", size)}
    if numbers and re.fullmatch(r"\d+(?:\.\d+)?", wanted):
        near = numbers[min(numbers, key=lambda number: abs(number - float(wanted)))]
    else:
        lowered = {size.lower(): size for size in sizes}
        close = [wanted] if wanted in lowered else get_close_matches(wanted, lowered, n=1, cutoff=0.5)
        near = lowered[close[0]] if close else ""
    if not sizes:
        return ""
    listed = ", ".join(sizes)
    return f"The nearest is {near}; the sizes are {listed}." if near else f"The sizes are {listed}."
