"""The bottom row of the screen: what is being typed and what it would do, or the keys needed most. No I/O."""

from __future__ import annotations

from types import MappingProxyType
from typing import Final

from stepper.screen.keys import NUMBER_KEYS, Page, TypedEntry
from stepper.screen.rows import Row, Span, clean, text_width
from stepper.screen.scene import Scene
from stepper.screen.style import BOLD, Badge, Terminal, paint_badge
from stepper.screen.ui_state import pick_number_cue
from stepper.session.cues import SectionCount, Ten

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
        Page.ROUND: ("space next", "page up back", "u undo", "figures count", "n note", "? keys"),
        Page.KEYS: ("down more", "esc back to the round"),
        Page.JOURNAL: ("enter go back to there", "up, down choose", "esc back to the round"),
        Page.CHART: ("arrows move", "esc back to the round"),
        Page.YOKE: ("space next", "esc back to the round"),
    }
)


def draw_bottom_row(scene: Scene, terminal: Terminal) -> Row:
    """Draw the bottom row."""
    ui = scene.ui
    if ui.entry is not None:
        return _line(scene, terminal)
    if ui.digits:
        return _number(scene, terminal)
    if ui.leaving:
        mark = Span(" q again stops for tonight ", paint_badge(Badge.ASKS, terminal.depth))
        return (Span(" "), mark, Span(" any other key goes on"))
    return _hints(_HINTS[ui.page], terminal.columns)


def _hints(hints: tuple[str, ...], columns: int) -> Row:
    """Write as many hints as fit, always including the last, since it leads to all the others."""
    kept = list(hints)
    while len(kept) > 1 and text_width("   ".join(kept)) + 2 > columns:
        kept.pop(-2)
    spans: list[Span] = []
    for hint in kept:
        key, _, says = hint.partition(" ")
        if key == "page":
            key, says = "page up", says.removeprefix("up ")
        spans += [Span("   " if spans else " "), Span(key, BOLD), Span(f" {says}")]
    return tuple(spans)


def _number(scene: Scene, terminal: Terminal) -> Row:
    """Show the figures typed and what each key would make of them."""
    cue = pick_number_cue(scene.plan, scene.state, int(scene.ui.digits))
    spans = [Span(" "), Span(f" {scene.ui.digits} ", paint_badge(Badge.ASKS, terminal.depth))]
    for row in NUMBER_KEYS:
        says = row.says
        if row.key == "enter":
            says = "adds to the count" if isinstance(cue, Ten) else says
            says = "answers the question" if isinstance(cue, SectionCount) else says
        spans += [Span("  "), Span(row.key, BOLD), Span(f" {says}")]
    return tuple(spans)


def _line(scene: Scene, terminal: Terminal) -> Row:
    """Show the words being typed; only their end if they are longer than the row."""
    ui = scene.ui
    assert ui.entry is not None
    asks = _ASKS[ui.entry]
    if ui.entry is TypedEntry.WEIGHT:
        names = tuple(scene.plan.yarns.values())
        name = clean(names[ui.yarn % len(names)]) if names else "yarn"
        asks = f"{name} {asks}"
    mark = Span(f" {asks} ", paint_badge(Badge.ASKS, terminal.depth))
    unit = {TypedEntry.LENGTH: scene.plan.units, TypedEntry.WEIGHT: "g"}.get(ui.entry, "")
    help_ = "  enter keeps it, esc leaves it"
    if ui.entry is TypedEntry.WEIGHT and len(scene.plan.yarns) > 1:
        help_ = "  tab another yarn, enter keeps it"
    text = clean(ui.text)
    room = terminal.columns - text_width(mark.text) - 4 - text_width(unit)
    while text_width(text) > room and text:
        text = text[1:]
    cursor = "▏" if terminal.blocks else "_"
    shown = (Span(" "), mark, Span(" "), Span(text, BOLD), Span(cursor + unit))
    return (*shown, Span(help_)) if text_width(text) + text_width(help_) <= room else shown
