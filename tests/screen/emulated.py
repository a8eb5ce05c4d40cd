"""The whole screen on an emulated terminal, in this process: real keys in, real letters out."""

from __future__ import annotations

import time
from collections.abc import Callable
from contextlib import ExitStack, suppress
from threading import Event, Thread
from typing import Self

import pyte
from prompt_toolkit.data_structures import Size
from prompt_toolkit.input import PipeInput, create_pipe_input
from prompt_toolkit.output.vt100 import Vt100_Output

from stepper.screen.app import Screen
from stepper.screen.drawing.style import Depth
from stepper.screen.ports import ScreenSetup, Voice
from tests.screen.scenes import Desk, yarns
from tests.waiting import PATIENCE_S

KEYS = {
    "enter": "\r",
    "space": " ",
    "escape": "\x1b",
    "page down": "\x1b[6~",
    "page up": "\x1b[5~",
    "up": "\x1b[A",
    "down": "\x1b[B",
    "right": "\x1b[C",
    "left": "\x1b[D",
    "backspace": "\x7f",
    "tab": "\t",
    "ctrl-c": "\x03",
}
"""What a terminal sends for a key. Source: ECMA-48 and xterm's control sequences."""


class _Stream:
    """What the terminal's library writes to."""

    encoding = "utf-8"

    def __init__(self, stream: pyte.Stream) -> None:
        self._stream = stream
        self.broken = False

    def write(self, text: str) -> int:
        """Take letters."""
        if self.broken:
            raise BrokenPipeError(32, "Broken pipe")
        self._stream.feed(text)
        return len(text)

    def flush(self) -> None:
        """Nothing waits."""

    def isatty(self) -> bool:
        """Say that it is a terminal."""
        return True

    def fileno(self) -> int:
        """Say that it has no number."""
        raise OSError("no file")


class Emulated:
    """A screen under test; its time stands still unless it is told otherwise."""

    def __init__(
        self,
        desk: Desk,
        *,
        columns: int = 80,
        rows: int = 24,
        depth: Depth = Depth.NONE,
        blocks: bool = True,
        voice: Voice | None = None,
        why_no_ears: str = "keys and typed cues only",
    ) -> None:
        self.desk, self.now = desk, 100.0
        self.size = Size(rows=rows, columns=columns)
        self.display = pyte.Screen(columns, rows)
        self.stream = _Stream(pyte.Stream(self.display))
        self.screen = Screen(
            ScreenSetup(
                yarns=yarns(),
                history=lambda: list(desk.events),
                whole_history=lambda: list(desk.events),
                depth=depth,
                blocks=blocks,
                voice=voice,
                why_no_voice="" if voice else "mute",
                why_no_ears=why_no_ears,
                clock=lambda: self.now,
            )
        )
        for line in desk.lines:
            self.screen.show(line)
        desk.turn, desk.show = self.screen.turn, self.screen.show  # from now on the screen is told
        self.error: BaseException | None = None
        self._stack = ExitStack()
        self._thread = Thread(target=self._run, daemon=True)
        self._input: PipeInput | None = None

    def __enter__(self) -> Self:
        self._input = self._stack.enter_context(create_pipe_input())
        self._thread.start()
        self.wait_for(lambda: self.screen.app is not None and self.screen.app.render_counter > 0)
        self._settle()
        return self

    def __exit__(self, *args: object) -> None:
        if self._thread.is_alive():
            self.press("ctrl-c", settle=False)
        self._thread.join(PATIENCE_S)
        self._stack.close()

    def _run(self) -> None:
        output = Vt100_Output(
            self.stream,  # type: ignore[arg-type] # as much of a text file as the library uses
            lambda: self.size,
            term="xterm-256color",
            enable_cpr=False,
        )
        try:
            self.screen.run(self.desk.conductor, source=self._input, target=output)
        except BaseException as error:
            self.error = error

    def press(self, *keys: str, settle: bool = True) -> Self:
        """Press keys one after another, half a second apart by the screen's own clock."""
        for key in keys:
            self.now += 0.5
            assert self._input is not None
            before = self._drawn
            self._input.send_text(KEYS.get(key, key))
            if settle:
                self.wait_for(lambda before=before: self._drawn > before or not self._thread.is_alive())
                self._settle()
        return self

    def resize(self, columns: int, rows: int) -> Self:
        """Change the size of the window."""
        app = self.screen.app
        assert app is not None
        assert app.loop is not None
        before = self._drawn
        self.size = Size(rows=rows, columns=columns)
        self.display.resize(rows, columns)
        app.loop.call_soon_threadsafe(app._on_resize)
        self.wait_for(lambda: self._drawn > before)
        self._settle()
        return self

    def ended(self) -> bool:
        """Wait until the screen is over; tell whether it is."""
        self._thread.join(PATIENCE_S)
        return not self._thread.is_alive()

    @property
    def text(self) -> str:
        """What is to be seen, without spaces at the ends of rows."""
        return "\n".join(line.rstrip() for line in self.display.display).rstrip("\n") + "\n"

    @property
    def _drawn(self) -> int:
        app = self.screen.app
        return app.render_counter if app is not None else 0

    def _settle(self) -> None:
        """Wait until what was begun to be drawn is drawn whole: the terminal's thread does one thing at a
        time."""
        drawn = -1
        while drawn != self._drawn:
            drawn = self._drawn
            app = self.screen.app
            loop = app.loop if app is not None else None
            if loop is None:
                return
            over = Event()
            with suppress(RuntimeError):  # the loop ended this very moment
                loop.call_soon_threadsafe(over.set)
                over.wait(PATIENCE_S)

    def wait_for(self, condition: Callable[[], bool]) -> None:
        """Wait until something holds; show the screen where it does not come to pass."""
        until = time.monotonic() + PATIENCE_S
        while not condition():
            if time.monotonic() > until or self.error is not None:
                raise AssertionError(f"waited in vain ({self.error!r}); the screen shows\n{self.text}")
            time.sleep(0.002)
