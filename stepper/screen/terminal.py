"""The only part that knows the terminal library: its keys under our names, our rows as its characters."""

from __future__ import annotations

import os
import signal
from collections.abc import Callable, Sequence
from functools import lru_cache
from types import MappingProxyType
from typing import Final, Protocol

from prompt_toolkit.application import Application
from prompt_toolkit.application.run_in_terminal import run_in_terminal
from prompt_toolkit.input import Input
from prompt_toolkit.key_binding import KeyBindings, KeyPressEvent
from prompt_toolkit.keys import Keys
from prompt_toolkit.layout import Layout, Window
from prompt_toolkit.layout.mouse_handlers import MouseHandlers
from prompt_toolkit.layout.screen import Char, WritePosition
from prompt_toolkit.layout.screen import Screen as Canvas
from prompt_toolkit.output import ColorDepth, Output
from prompt_toolkit.styles import Attrs, Style

from stepper.screen.drawing.rows import Row, clean, clean_row, row_width, text_width
from stepper.screen.drawing.style import SIXTEEN, Depth, Paint, Terminal
from stepper.screen.scene import Scene
from stepper.screen.view import draw_screen

DEPTHS: Final = MappingProxyType(
    {
        Depth.TRUE: ColorDepth.DEPTH_24_BIT,
        Depth.INDEXED: ColorDepth.DEPTH_8_BIT,
        Depth.SIXTEEN: ColorDepth.DEPTH_4_BIT,
        Depth.NONE: ColorDepth.DEPTH_1_BIT,
    }
)

KEY_NAMES: Final = MappingProxyType(
    {
        Keys.ControlM: "enter",
        Keys.ControlJ: "enter",
        Keys.ControlH: "backspace",
        Keys.ControlI: "tab",
        Keys.Escape: "escape",
        Keys.PageDown: "page down",
        Keys.PageUp: "page up",
        Keys.Left: "left",
        Keys.Right: "right",
        Keys.Up: "up",
        Keys.Down: "down",
    }
)
"""The library's names of keys, with ours."""

_STYLE: Final = Style([])
"""No names of styles: every paint is written out."""

_LONE_ESCAPE_S = 0.05
"""How long to wait after an escape for the rest of a longer key. Unit: s."""


class DrawnScreen(Protocol):
    """What is drawn here, and where keys go."""

    @property
    def app(self) -> Application[None] | None:
        """The application that runs; None before and after."""

    def rows(self, columns: int, rows: int) -> tuple[Scene, Terminal]:
        """Return what is to be drawn at a size."""

    def key(self, name: str) -> None:
        """Take a key."""

    def paste(self, text: str) -> None:
        """Take pasted text."""

    def guarded(self, action: Callable[[], None]) -> None:
        """Do something on behalf of a key; if it fails, leave the screen and report the fault outside."""

    def leave(self) -> None:
        """Leave at once."""


def build_application(screen: DrawnScreen, source: Input | None, target: Output | None) -> Application[None]:
    """Make the library's application that draws a screen and feeds it keys."""
    app: Application[None] = Application(
        layout=Layout(_Rows(screen)),
        key_bindings=_bindings(screen),
        full_screen=True,
        mouse_support=False,
        color_depth=DEPTHS[screen.rows(1, 1)[1].depth],
        input=source,
        output=target,
        include_default_pygments_style=False,
        # Where a signal reports a new size, there is no need to ask for it twice a second.
        terminal_size_polling_interval=None if hasattr(signal, "SIGWINCH") else 0.5,
    )
    app.ttimeoutlen = _LONE_ESCAPE_S
    return app


class _Rows(Window):
    """Our rows as the library's characters.

    A whole screen is written straight into the library's buffer: its own way checks every character for
    cursors, scrolling and wrapping, none of which occur here, and takes twice as long. After that only what
    has changed is written, past the library, which would compare every character with the one before.
    """

    def __init__(self, screen: DrawnScreen) -> None:
        super().__init__(always_hide_cursor=True)
        self._rows_of = screen
        self._shown: list[Row] = []

    def write_to_screen(
        self,
        screen: Canvas,
        mouse_handlers: MouseHandlers,
        write_position: WritePosition,
        parent_style: str,
        erase_bg: bool,
        z_index: int | None,
    ) -> None:
        """Draw."""
        wide, high = write_position.width, write_position.height
        rows: list[Row] = []
        self._rows_of.guarded(lambda: rows.extend(draw_screen(*self._rows_of.rows(wide, high))[:high]))
        app = self._rows_of.app
        # None if the library wants all of it, as at another size; also at the end, for a terminal that has no
        # second screen to leave.
        last = None if app is None or app.is_done else app.renderer.last_rendered_screen
        if app is not None and last is not None and len(rows) == len(self._shown):
            last.data_buffer.clear()  # as empty as the new one, so that the library finds nothing to do
            write_changes(app.output, self._shown, rows, app.color_depth)
        else:
            for at, row in enumerate(rows):
                write_row(row, screen.data_buffer[write_position.ypos + at], write_position.xpos, wide)
        self._shown = rows
        screen.width = max(screen.width, write_position.xpos + wide)
        screen.height = max(screen.height, write_position.ypos + high)
        screen.visible_windows_to_write_positions[self] = write_position


def write_changes(output: Output, before: Sequence[Row], now: Sequence[Row], depth: ColorDepth) -> None:
    """Write the parts of rows that have changed.

    Args:
        output: The terminal, its cursor in the upper left corner, where it is put back.
        before: The rows it shows.
        now: The rows it is to show, as many.
        depth: How many colours it has.
    """
    line = 0
    for at, (old, new) in enumerate(zip(before, now, strict=True)):
        if old is not new and old != new:
            output.cursor_down(at - line)
            line = at
            _write_change(output, old, new, depth)
    output.write_raw("\r")
    output.cursor_up(line)


def _write_change(output: Output, old: Row, new: Row, depth: ColorDepth) -> None:
    """Write a row from its first change to its last."""
    old, new = clean_row(old), clean_row(new)
    first = _count_equal(old, new)
    wider = row_width(old) - row_width(new)
    last = len(new) - (_count_equal(old[first:][::-1], new[first:][::-1]) if not wider else 0)
    output.write_raw("\r")
    output.cursor_forward(row_width(new[:first]))
    set_attributes, write = output.set_attributes, output.write
    for text, paint in new[first:last]:
        set_attributes(_attributes_of(paint), depth)
        write(text)
    output.reset_attributes()
    if wider > 0:
        output.erase_end_of_line()


def _count_equal(one: Row, other: Row) -> int:
    """Count the spans with which two rows begin alike."""
    return next(
        (at for at, pair in enumerate(zip(one, other, strict=False)) if pair[0] != pair[1]),
        min(len(one), len(other)),
    )


@lru_cache(maxsize=512)
def _attributes_of(paint: Paint) -> Attrs:
    return _STYLE.get_attrs_for_style_str(style_of(paint))


@lru_cache(maxsize=4096)
def _char(letter: str, style: str) -> Char:
    return Char(letter, style)


def write_row(row: Row, buffer: dict[int, Char], left: int, columns: int) -> None:
    """Write one of our rows into a row of the library's buffer.

    Args:
        row: At most `columns` wide.
        buffer: The characters by column.
        left: Column of the first one.
        columns: Room. Unit: columns.
    """
    column, end = left, left + columns
    for span in row:
        style = style_of(span.paint)
        for letter in clean(span.text):
            wide = 1 if letter < "\x7f" else text_width(letter)
            if wide == 0 and column > left:  # a combining mark belongs to the letter before it
                before = buffer[column - 1]
                buffer[column - 1] = Char(before.char + letter, before.style)
                continue
            if column + wide > end:
                return
            buffer[column] = _char(letter, style)
            if wide == 2:
                buffer[column + 1] = Char("", style)
            column += wide


@lru_cache(maxsize=512)
def style_of(paint: Paint) -> str:
    """Return a paint in the library's style language."""
    words = []
    if paint.ground is not None:
        words.append(f"bg:{SIXTEEN.get(paint.ground, paint.ground.hex)}")
    if paint.ink is not None:
        words.append(SIXTEEN.get(paint.ink, paint.ink.hex))
    if paint.bold:
        words.append("bold")
    if paint.reverse:
        words.append("reverse")
    return " ".join(words)


def _bindings(screen: DrawnScreen) -> KeyBindings:
    """Feed every key to the screen by its name."""
    bindings = KeyBindings()

    def press(name: str) -> None:
        screen.guarded(lambda: screen.key(name))

    def on_named(event: KeyPressEvent) -> None:
        press(KEY_NAMES[Keys(event.key_sequence[0].key)])

    def on_letter(event: KeyPressEvent) -> None:
        key = event.key_sequence[0].key
        if not isinstance(key, Keys) and len(key) == 1:
            press("space" if key == " " else key)

    for key in KEY_NAMES:
        # Act at once: no longer key sequence begins with any of these.
        bindings.add(key, eager=True)(on_named)
    bindings.add(Keys.Any)(on_letter)
    bindings.add(Keys.BracketedPaste)(lambda event: screen.guarded(lambda: screen.paste(event.data)))
    bindings.add(Keys.ControlC)(lambda event: screen.leave())
    bindings.add(Keys.SIGINT)(lambda event: screen.leave())
    if hasattr(signal, "SIGTSTP"):
        bindings.add(Keys.ControlZ)(lambda event: os.kill(os.getpid(), signal.SIGTSTP))
    return bindings


def suspend(app: Application[None]) -> None:
    """Hand the terminal back and stop until the shell lets the program continue; then redraw."""
    # The signal that cannot be caught, since the one the shell sends is being handled here.
    run_in_terminal(lambda: os.kill(os.getpid(), signal.SIGSTOP))


def redraw_all(app: Application[None]) -> None:
    """Redraw everything: another program may have written on the terminal meanwhile."""
    if app.is_running and not app.is_done:
        app.renderer.clear()
        app.invalidate()
