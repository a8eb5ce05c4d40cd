"""The journal's page: what was done when, latest first, with a marked entry to go back to. No I/O."""

from __future__ import annotations

from collections.abc import Sequence

from stepper.screen.drawing.layout import Block, stack_blocks
from stepper.screen.drawing.rows import Row, Styled, row, shorten, wrap
from stepper.screen.drawing.style import BOLD, Badge, Terminal, paint_badge
from stepper.screen.event_log import LogEntry, find_way_back
from stepper.screen.pages.bottom_row import draw_bottom_row
from stepper.screen.scene import Scene
from stepper.session.cues import Redo, Undo

_BACK = "  (taken back)"
_LEAST_BESIDE = 20
# Columns beside the time below which the marked entry begins on the next row.


def draw_journal_page(scene: Scene, terminal: Terminal) -> list[Row]:
    """Draw the page. Always: as many rows as the terminal has."""
    history = scene.history
    chosen = find_marked(scene)
    room = max(1, terminal.rows - 4)
    marked = _marked_lines(history, chosen, terminal) if history else []
    others = max(1, room - len(marked) + 1)
    first = max(0, min(chosen - others // 2, len(history) - others))
    lines: list[Row] = []
    for number in range(first, min(first + others, len(history))):
        lines += marked if number == chosen else [_line(history, number, terminal)]
    if not lines:
        lines = [row(" Nothing has happened yet.")]
    blocks = [
        Block(rank=1, rows=[(Styled(" Journal", BOLD), Styled(f"   {_counted(history, chosen)}"))]),
        Block(rank=0, rows=lines, least=1),
        Block(rank=9, grown=lambda rows: [()] * rows),
        Block(rank=3, rows=[row(f" {_what_enter_does(scene, chosen)}", BOLD)]),
        Block(rank=2, rows=[draw_bottom_row(scene, terminal)]),
    ]
    return stack_blocks(blocks, terminal.columns, terminal.rows)


def find_marked(scene: Scene) -> int:
    """Return the index in the history of the marked entry, from 0; the latest if none is marked."""
    return max(0, min(scene.ui.down, len(scene.history) - 1))


def _counted(history: Sequence[LogEntry], chosen: int) -> str:
    return f"{chosen + 1} of {len(history)}, the latest first" if history else ""


def _line(history: Sequence[LogEntry], number: int, terminal: Terminal) -> Row:
    """Write an entry: the date if it is new, the time, what was done, whether it stands."""
    entry = history[number]
    new_day = number == 0 or history[number - 1].day != entry.day
    lead = f" {entry.day if new_day else '':>7} {entry.clock:>5}  "
    back = "" if entry.stands else _BACK
    text = shorten(entry.what, terminal.columns - len(lead) - len(back)) + back
    return (Styled(lead), Styled(text, BOLD) if entry.stands else Styled(text))


def _marked_lines(history: Sequence[LogEntry], chosen: int, terminal: Terminal) -> list[Row]:
    """Write the marked entry whole, on as many rows as it needs."""
    entry = history[chosen]
    mark = "▸" if terminal.blocks else ">"
    lead = f"{mark}{entry.day:>7} {entry.clock:>5}  "
    text = entry.what + ("" if entry.stands else _BACK)
    paint = paint_badge(Badge.CALM, terminal.depth)
    if terminal.columns < len(lead) + _LEAST_BESIDE:
        below = [(Styled(f"  {line}", paint),) for line in wrap(text, max(1, terminal.columns - 2))]
        return [(Styled(lead.rstrip(), paint),), *below]
    lines = wrap(text, terminal.columns - len(lead))
    return [(Styled((" " * len(lead) if at else lead) + line, paint),) for at, line in enumerate(lines)]


def _what_enter_does(scene: Scene, chosen: int) -> str:
    """Say in advance what going back would do."""
    if not scene.history:
        return ""
    way = find_way_back(scene.history[chosen], scene.history, scene.plan, scene.state)
    if not way:
        return "This is where the knitting stands."
    if isinstance(way[0], Undo):
        return f"Enter takes back {len(way)}; r does them again."
    if isinstance(way[0], Redo):
        return f"Enter does {len(way)} again."
    return "Enter goes to that place; u comes back."
