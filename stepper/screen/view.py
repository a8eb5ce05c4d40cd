"""The screen as rows: one pure function of what there is to show. No I/O."""

from __future__ import annotations

from collections.abc import Callable
from types import MappingProxyType
from typing import Final

from stepper.screen.drawing.rows import Row, Styled
from stepper.screen.drawing.style import Terminal
from stepper.screen.keys import Page
from stepper.screen.pages.chart_page import draw_chart_page
from stepper.screen.pages.journal_page import draw_journal_page
from stepper.screen.pages.keys_page import draw_keys_page
from stepper.screen.pages.remedies_page import draw_remedies_page
from stepper.screen.pages.round_page import draw_round_page
from stepper.screen.pages.yoke_page import draw_yoke_page
from stepper.screen.scene import Scene

_PAGES: Final[MappingProxyType[Page, Callable[[Scene, Terminal], list[Row]]]] = MappingProxyType(
    {
        Page.ROUND: draw_round_page,
        Page.KEYS: draw_keys_page,
        Page.JOURNAL: draw_journal_page,
        Page.CHART: draw_chart_page,
        Page.YOKE: draw_yoke_page,
        Page.REMEDIES: draw_remedies_page,
    }
)


def draw_screen(scene: Scene, terminal: Terminal) -> list[Row]:
    """Draw the screen.

    Args:
        scene: What there is to show.
        terminal: The terminal to draw on.

    Returns:
        Shape: (terminal.rows,), none wider than the terminal. The same scene gives the same rows.
    """
    rows = _PAGES[scene.ui.page](scene, terminal)
    return rows if terminal.blocks else [tuple(map(_in_ascii, row)) for row in rows]


def _in_ascii(span: Styled) -> Styled:
    """Replace our own signs by ASCII for a plain terminal; the knitter's words stay as they are."""
    return Styled(span.text.replace("…", "~"), span.paint)
