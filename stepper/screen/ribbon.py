"""The whole round as one line across the screen, knitted from right to left: where in it she is. No I/O."""

from __future__ import annotations

from stepper.plan.model import Round
from stepper.screen.cells import is_turned
from stepper.screen.rows import Row, Span
from stepper.screen.style import BOLD
from stepper.session.tally import markers_in


def ribbon(round_: Round, stitches: int, columns: int, *, blocks: bool) -> Row:
    """Draw the round as a line: what is worked thick, what is left thin, markers across it.

    Args:
        round_: The round.
        stitches: How many of it are worked. Unit: stitches.
        columns: How wide the line is. Range: 1 and up.
        blocks: Whether the terminal has block signs.

    Always: `columns` wide; nothing is thick before the first stitch, everything after the last, and there is
    something thin as long as a stitch is left.
    """
    thick, thin, marker, point = ("█", "─", "┃", "◂") if blocks else ("#", "-", "|", "<")
    total = max(1, round_.progress)
    filled = min(columns, stitches * columns // total)
    signs = [thick if column < filled else thin for column in range(columns)]
    for mark in markers_in(round_):
        at = min(columns - 1, mark * columns // total)
        if at >= filled:
            signs[at] = marker
    if filled < columns:
        signs[filled] = point
    if is_turned(round_):
        mirrored = "▸" if blocks else ">"
        return (Span("".join(mirrored if sign == point else sign for sign in signs), BOLD),)
    return (Span("".join(reversed(signs)), BOLD),)
