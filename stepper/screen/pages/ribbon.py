"""The whole round as one line across the screen, from right to left as knitted, with the place in it. No
I/O."""

from __future__ import annotations

from stepper.plan.model import Round
from stepper.screen.cells import is_turned
from stepper.screen.drawing.rows import Row, Styled
from stepper.screen.drawing.style import BOLD
from stepper.session.counting.tally import markers_in


def draw_ribbon(round_: Round, stitches: int, columns: int, *, blocks: bool) -> Row:
    """Draw the round as a line: worked stitches thick, the rest thin, markers across it.

    Args:
        round_: The round.
        stitches: How many of its stitches are worked. Unit: stitches.
        columns: How wide the line is. Range: 1 and up.
        blocks: Whether the terminal has block signs.

    Always: `columns` wide; all thin before the first stitch, all thick after the last, and partly thin as
    long as a stitch is left.
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
        return (Styled("".join(mirrored if sign == point else sign for sign in signs), BOLD),)
    return (Styled("".join(reversed(signs)), BOLD),)
