"""Say which rows of the screen can be read at two metres, as the table in DEVELOPERS.md.

Run: python tests/bench/legible.py. Prints a table; fails on nothing. Angles are those of a small x, of numerals
that of the figures themselves; the rows of the screen are counted in the real page of a real garment.
"""

from __future__ import annotations

import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.legibility import EASE_ARCMIN, LAPTOP, PLAIN_X, X_HIGH, angle_arcmin, row_height_mm
from stepper.screen.drawing.letters import LETTERINGS, draw_letters
from stepper.screen.pages.round_page import draw_round_page, scale_for
from stepper.screen.pages.step_text import word_step
from stepper.screen.drawing.rows import text_of
from stepper.screen.drawing.style import Terminal
from tests.screen.scenes import MOMENTS

SIZES = ((40, 12), (80, 24), (120, 40), (200, 60))
DISTANCE_MM = 2000.0


def step_x_rows(terminal: Terminal) -> float:
    """Find in which size of letters the step is drawn. Unit: rows of a small x."""
    scene = MOMENTS["count-stands"]()
    text = "\n".join(map(text_of, draw_round_page(scene, terminal)))
    word = word_step(scene).clauses[0].split()[0]
    for lettering in LETTERINGS:
        drawn = draw_letters(word, lettering, 1000, terminal)
        if drawn is not None and all(text_of(row).strip() in text for row in drawn):
            return X_HIGH * lettering.down
    return PLAIN_X


def main() -> None:
    """Print the table."""
    print("| window | a row | the terminal's own letters | the step | numerals |")
    print("|---|---|---|---|---|")
    for columns, rows in SIZES:
        terminal = Terminal(columns=columns, rows=rows)
        high = row_height_mm(LAPTOP, columns, rows)
        seen = [PLAIN_X, step_x_rows(terminal), float(scale_for(terminal).rows)]
        angles = [angle_arcmin(each * high, DISTANCE_MM) for each in seen]
        cells = [f"{each:.1f}'{'' if each >= EASE_ARCMIN else ', too small'}" for each in angles]
        print(f"| {columns}×{rows} | {high:.1f} mm | {' | '.join(cells)} |")


if __name__ == "__main__":
    main()
