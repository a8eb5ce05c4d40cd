"""What a single working along the needle is called. No I/O."""

from __future__ import annotations


def row_word(flat: bool) -> str:
    """Return "row" for knitting that is turned, "round" for knitting in the round. Common practice."""
    return "row" if flat else "round"
