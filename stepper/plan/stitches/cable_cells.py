"""Cables in the columns of a fabric: what each column is on the row where its cable crosses. No I/O.

A cell of a crossing row is the cable and which of its stitches the column is, such as `2/2 rc#3`; the cable
is crossed again as long as all its columns stand side by side.
"""

from __future__ import annotations

from collections.abc import Sequence

from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Item, Run, flatten

_Cell = tuple[str, str]


def looks_of(run: Run) -> str:
    """Return what the stitches of cables look like: a purl cross has its purls behind the knit ones.

    Source: Craft Yarn Council, cables: 2/1 RPC leaves k2, p1; 2/1 LPC leaves p1, k2 (from memory).

    Raises:
        ValueError: nobody can tell which of the stitches are purled.
    """
    width = stitch(run.stitch).uses
    sizes, _, turn = run.stitch.partition(" ")
    if turn in ("rpc", "lpc") and sizes.count("/") == 1:
        knits, purls = (int(part) for part in sizes.split("/"))
        return ("k" * knits + "p" * purls if turn == "rpc" else "p" * purls + "k" * knits) * run.times
    if run.stitch.startswith("t") or turn.endswith("pc"):
        raise ValueError("nobody can tell which of its crossed stitches are purled")
    return "k" * width * run.times


def crossings(phrase: tuple[Item, ...]) -> dict[int, _Cell]:
    """Return the cells of the columns crossed by the cables of a right-side row, by their place in it."""
    found: dict[int, _Cell] = {}
    at = 0
    for run in flatten(phrase):
        entry = stitch(run.stitch)
        if entry.kind is Kind.CABLE:
            for place in range(run.times * entry.uses):
                found[at + place] = (f"{run.stitch}#{place % entry.uses}", "")
        at += run.leaves
    return found


def look_of(code: str) -> str:
    """Return how a column looks on the row where its cable crosses; any other code as it is."""
    cable, mark, place = code.partition("#")
    return looks_of(Run(cable, 1, ""))[int(place)] if mark else code


def cross_again(cells: Sequence[_Cell]) -> tuple[list[_Cell], tuple[str, ...]]:
    """Return cells with a cable, and nothing after it, wherever all its columns stand side by side.

    What is left of a cable that decreases have cut into is worked as it looks.

    Returns:
        The cells, and the cables of which not all columns stand there.
    """
    if not any("#" in code for code, _ in set(cells)):
        return list(cells), ()
    made: list[_Cell] = []
    broken: dict[str, None] = {}
    at = 0
    while at < len(cells):
        cable, mark, _ = cells[at][0].partition("#")
        width = stitch(cable).uses if mark else 1
        whole = [f"{cable}#{number}" for number in range(width)]
        if not mark or [cell[0] for cell in cells[at : at + width]] == whole:
            made.append((cable, cells[at][1]))
            at += width
            continue
        broken[cable] = None
        made.append((look_of(cells[at][0]), cells[at][1]))
        at += 1
    return made, tuple(broken)
