"""Numbers in figures and lists of words, as people write them. No I/O."""

from __future__ import annotations

from collections.abc import Iterable


def format_number(value: float, places: int = 2) -> str:
    """Return a number in figures without needless zeros: 22, 21.5, never 21.50 or -0.

    Args:
        value: Any finite number.
        places: Most digits after the point. Range: 0 and up.

    Source: rounding as by Python's `format`, to the nearest, with ties to the even digit.
    """
    figures = f"{value:.{places}f}"
    if "." in figures:
        figures = figures.rstrip("0").rstrip(".")
    return "0" if figures == "-0" else figures


def list_words(words: Iterable[str]) -> str:
    """Join words as a sentence lists them: "a", "a and b", "a, b and c".

    Args:
        words: Range: at least one.
    """
    *first, last = words
    return f"{', '.join(first)} and {last}" if first else last
