"""Tell the stitches of a rib from others, where a line says "in rib" and no more. No I/O."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import groupby

_Cell = tuple[str, str]
WIDEST = 10
"""Most stitches alike that stand side by side in a rib. Unit: stitches; an assumption: wider ones are written
out, and a band picked up beside a ribbed one is wider."""


def is_ribbed(row: Sequence[_Cell], part: Sequence[_Cell]) -> bool:
    """Return whether part of a row goes on in rib: the row has knit and purl, the part no plain stretch.

    Args:
        row: The stitches of the row as they are seen, each with its yarn.
        part: Those of them that are worked "in rib".
    """
    return {"k", "p"} <= {code[:1] for code, _ in row} and not has_plain_stretch(code for code, _ in part)


def has_plain_stretch(codes: Iterable[str]) -> bool:
    """Return whether more stitches alike stand side by side than in any rib."""
    return any(len(tuple(alike)) > WIDEST for _, alike in groupby(code[:1] for code in codes))
