"""The bottom row of the screen: what is being typed and what it would do, or the keys needed most. No I/O."""

from __future__ import annotations

from types import MappingProxyType
from typing import Final

from stepper.screen.drawing.rows import Row, Styled, clean, text_width
from stepper.screen.drawing.style import BOLD, Badge, Terminal, paint_badge
from stepper.screen.keys import NUMBER_KEYS, Page, TypedEntry
from stepper.screen.scene import Scene
from stepper.session.open_row.rules import takes_next

_ASKS: Final = MappingProxyType(
    {
        TypedEntry.NOTE: "Note",
        TypedEntry.LENGTH: "Measures",
        TypedEntry.WEIGHT: "weighs",
        TypedEntry.WORDS: "Say",
    }
)
_HINTS: Final = MappingProxyType(
    {
        Page.ROUND: ("space next", "page up back", "u undo", "figures count", "n note", "q stop", "? keys"),
        Page.KEYS: ("down more", "esc back to the round"),
        Page.JOURNAL: ("enter go back to there", "up, down choose", "esc back to the round"),
        Page.CHART: ("arrows move", "esc back to the round"),
        Page.REMEDIES: ("enter take it", "up, down choose", "esc back to the round"),
        Page.YOKE: ("space next", "esc back to the round"),
    }
)
_FINISHED: Final = ("u undo", "o yoke", "d chart", "j journal", "n note", "q twice to stop", "? keys")

_ROW_DONE: Final = "space a row is done"
_OPEN: Final = ("/ yes or no", _ROW_DONE, "figures count", "page up back", "u undo", "? keys")


def draw_bottom_row(scene: Scene, terminal: Terminal, page: tuple[int, int] = (1, 1)) -> Row:
    """Draw the bottom row.

    Args:
        scene: What there is to show.
        terminal: The terminal to draw on.
        page: Which page of a text too long for the window is shown, from 1, and of how many.
    """
    ui = scene.ui
    if ui.entry is not None:
        return _line(scene, terminal)
    if ui.digits:
        return _number(scene, terminal)
    if ui.leaving:
        mark = Styled(" q again stops for tonight ", paint_badge(Badge.ASKS, terminal.depth))
        leaving = (Styled(" "), mark, Styled(" any other key goes on"))
        return leaving if sum(text_width(span.text) for span in leaving) <= terminal.columns else leaving[:2]
    hints = _HINTS[ui.page]
    if ui.page is Page.ROUND and scene.state.place.index >= len(scene.course.rounds):
        hints = _FINISHED if scene.plan.open is None else _open_hints(scene)
    if page[1] > 1:
        hints = (f"tab more, {page[0]} of {page[1]}", *hints)
    return _hints(hints, terminal.columns, paged=page[1] > 1)


def _open_hints(scene: Scene) -> tuple[str, ...]:
    """Return the hints at a row that is not read, without the key that it refuses."""
    taken = takes_next(scene.plan, scene.state)
    return tuple(hint for hint in _OPEN if taken or hint != _ROW_DONE)


def _hints(hints: tuple[str, ...], columns: int, *, paged: bool) -> Row:
    """Write as many hints as fit, always including the last, since it leads to all the others; but rather the
    first, if that leads on in a text of which only a part is to be seen."""
    kept = list(hints)
    while len(kept) > 1 and text_width("   ".join(kept)) + 2 > columns:
        kept.pop(-1 if paged and len(kept) == 2 else -2)
    spans: list[Styled] = []
    for hint in kept:
        key, _, says = hint.partition(" ")
        if key == "page":
            key, says = "page up", says.removeprefix("up ")
        spans += [Styled("   " if spans else " "), Styled(key, BOLD), Styled(f" {says}")]
    return tuple(spans)


def _number(scene: Scene, terminal: Terminal) -> Row:
    """Show the figures typed and what each key would make of them."""
    spans = [Styled(" "), Styled(f" {scene.ui.digits} ", paint_badge(Badge.ASKS, terminal.depth))]
    left = terminal.columns - sum(text_width(span.text) for span in spans)
    for row in NUMBER_KEYS:
        says = _enter(scene) if row.key == "enter" else row.says
        hint = (Styled("  "), Styled(row.key, BOLD), Styled(f" {says}"))
        left -= sum(text_width(span.text) for span in hint)
        if left < 0:
            break
        spans += hint
    return tuple(spans)


def _enter(scene: Scene) -> str:
    """Say what enter makes of the number, as `ui_state.pick_number_cue` decides it."""
    if scene.state.question is not None:
        return "go on there"
    if scene.state.knitting.tens is not None:
        return "adds to the count"
    return "answers the question" if scene.asked.part else NUMBER_KEYS[0].says


def _line(scene: Scene, terminal: Terminal) -> Row:
    """Show the words being typed; only their end if they are longer than the row."""
    ui = scene.ui
    assert ui.entry is not None
    asks = _ASKS[ui.entry]
    if ui.entry is TypedEntry.WEIGHT:
        names = tuple(scene.plan.yarns.values())
        name = clean(names[ui.yarn % len(names)]) if names else "yarn"
        asks = f"{name} {asks}"
    mark = Styled(f" {asks} ", paint_badge(Badge.ASKS, terminal.depth))
    unit = {TypedEntry.LENGTH: scene.plan.units, TypedEntry.WEIGHT: "g"}.get(ui.entry, "")
    help_ = "  enter keeps it, esc leaves it"
    if ui.entry is TypedEntry.WEIGHT and len(scene.plan.yarns) > 1:
        help_ = "  tab another yarn, enter keeps it"
    text = clean(ui.text)
    room = terminal.columns - text_width(mark.text) - 4 - text_width(unit)
    while text_width(text) > room and text:
        text = text[1:]
    cursor = "▏" if terminal.blocks else "_"
    shown = (Styled(" "), mark, Styled(" "), Styled(text, BOLD), Styled(cursor + unit))
    return (*shown, Styled(help_)) if text_width(text) + text_width(help_) <= room else shown
