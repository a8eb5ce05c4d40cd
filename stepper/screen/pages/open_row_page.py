"""Where the pattern goes on with a row that is not read: its words, and what is asked of it. No I/O."""

from __future__ import annotations

from stepper.language.places import end_sentence, sentence_case
from stepper.plan.model import OpenRow
from stepper.screen.drawing.letters import enlarge
from stepper.screen.drawing.rows import Row, indent, paragraph
from stepper.screen.drawing.style import BOLD, Terminal
from stepper.screen.pages.finished_page import draw_large_title, draw_text_page
from stepper.screen.scene import Scene

_LEAST_ROWS = 22
"""Rows from which on the words may be written large."""


def draw_open_row_page(scene: Scene, terminal: Terminal, row: OpenRow) -> list[Row]:
    """Draw the page; what does not fit is turned page by page. Always: as many rows as the terminal has.

    Args:
        scene: What there is to show; all that is read is done in it.
        terminal: The terminal to draw on.
        row: The row.
    """
    columns = terminal.columns - 2
    first = [end_sentence(sentence_case(each)) for each in row.remarks]
    room = terminal.rows - 14 if terminal.rows >= _LEAST_ROWS else 0
    words = enlarge(row.words, columns, room, terminal) or paragraph(row.words, columns, BOLD)
    text = [line for each in first for line in paragraph(each, columns)]
    if first:
        text.append(())
    text += [*words, ()]
    told = " ".join(scene.told)
    for question in scene.asked.questions:
        if question not in told:
            text += paragraph(question, columns)
    return draw_text_page(
        scene, terminal, draw_large_title(sentence_case(row.section), scene, terminal), indent(text)
    )
