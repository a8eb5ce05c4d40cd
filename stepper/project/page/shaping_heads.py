"""Make the headings of a shaping the names of the lines below them: "Shape armholes". No I/O.

As a comment such a heading would be lost: nobody would hear it, and no line could mean what stands below it
("until front matches back to shoulder shaping").
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from itertools import pairwise

from stepper.project.instructions import Line
from stepper.project.page.pieces import Piece


def name_by_headings(
    pieces: Sequence[Piece], read: Callable[[str], Line | None], shapes: Callable[[str, str], bool]
) -> list[Piece]:
    """Return the pieces of a part with each heading of a shaping as the label of the line below it.

    Args:
        pieces: As they stand on the page.
        read: Reads a stretch of text as one line; None if it is not one.
        shapes: Whether a row only says what is shaped below it; it is given the row below, too.

    Returns:
        The same pieces. A heading stays a comment where the line below has a name of its own, is not read, or
        would be read otherwise with the name in front of it.
    """
    named = list(pieces)
    for at, (head, below) in enumerate(pairwise(pieces)):
        if head.kind != "comment" or head.front != "heading" or not shapes(head.text, below.text):
            continue
        if below.kind != "line" or below.line is None or below.line.label:
            continue
        name = head.text.rstrip(" :.")
        made = read(f"{name}: {below.text}")
        if made is not None and made.label == name and _same_work(made, below.line):
            named[at] = replace(head, kind="label")
            named[at + 1] = replace(below, line=made)
    return named


def _same_work(one: Line, other: Line) -> bool:
    return one.numbers == other.numbers and list(map(type, one.sentences)) == list(map(type, other.sentences))
