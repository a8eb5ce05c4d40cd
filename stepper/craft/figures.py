"""Numbers in figures, as people write them. No I/O."""

from __future__ import annotations


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
