"""The finished garment."""

from __future__ import annotations

from stepper.screen.layout import Block, stack_blocks
from stepper.screen.pages.bottom_row import draw_bottom_row
from stepper.screen.rows import Row, row
from stepper.screen.scene import Scene
from stepper.screen.style import BOLD, Terminal


def draw_finished_page(scene: Scene, terminal: Terminal) -> list[Row]:
    """Draw the page. Always: as many rows as the terminal has."""
    blocks = [
        Block(rank=0, rows=[row(" Finished", BOLD)]),
        Block(rank=9, grown=lambda rows: [()] * rows),
        Block(rank=2, rows=[draw_bottom_row(scene, terminal)]),
    ]
    return stack_blocks(blocks, terminal.columns, terminal.rows)
