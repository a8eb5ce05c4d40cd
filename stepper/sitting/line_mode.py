"""A sitting line by line: typed cues in, spoken lines out as text."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, nullcontext
from threading import Thread, Timer

from stepper.session.cues import Cue, Enough, View
from stepper.sitting.conductor import Conductor
from stepper.sitting.folding import write_folded
from stepper.sitting.front_end import SittingView


class LineMode:
    """The front end of scripts, screen readers and terminals that cannot show the full screen."""

    listens_by_itself = False
    turn: Callable[[View], None] | None = None

    def __init__(self, *, prompts: bool) -> None:
        """Choose how lines are read.

        Args:
            prompts: Whether they are typed at a prompt with history; otherwise standard input is read while
                other cues come in.
        """
        self._prompts = prompts
        self._view: SittingView | None = None

    @property
    def _conductor(self) -> Conductor:
        assert self._view is not None
        return self._view.conductor

    def open(self, view: SittingView) -> None:
        """Print what is knitted."""
        self._view = view
        self.show(f"{view.title}.")

    def show(self, line: str) -> None:
        """Print a line at once."""
        write_folded(line, sys.stdout)

    def schedule(self, seconds: float, cue: Cue) -> None:
        """Offer a cue after a delay, from a thread of its own."""
        timer = Timer(seconds, lambda: self._conductor.offer(cue))
        timer.daemon = True
        timer.start()

    def hear(self, text: str, score: float = 1.0) -> None:
        """Print on standard error what was heard, and hand it over."""
        complain(f'Heard "{text}".' if text else "Heard something that is no cue.")
        self._conductor.offer_words(text, heard=True, score=score)

    def wake(self) -> None:
        """Do nothing: the conductor waits for its queue by itself."""

    def report_ears(self, is_open: bool, sentence: str) -> None:
        """Print a sentence about the ears on standard error."""
        complain(sentence)

    def report_voice(self, sentence: str) -> None:
        """Print a sentence about the voice on standard error."""
        complain(sentence)

    def guard_terminal(self) -> AbstractContextManager[None]:
        """Do nothing: lines printed by others do no harm between ours."""
        return nullcontext()

    def run(self, recording: Iterator[str] | None) -> None:
        """Follow the recording, or else what is typed, until that ends or the sitting does."""
        if recording is not None:
            self._follow(recording, heard=True)
        elif self._prompts:
            self._follow(_prompted_lines(), heard=False)
        else:
            Thread(target=self._hand_over_typed, name="typed", daemon=True).start()
            self._conductor.run()

    def close(self) -> None:
        """Do nothing: every line is printed already."""

    def _follow(self, cues: Iterator[str], *, heard: bool) -> None:
        """Follow cues one by one until they end or the sitting does."""
        conductor = self._conductor
        for line in cues:
            conductor.offer_words(line, heard=heard)
            conductor.drain()
            if conductor.closed:
                return
        conductor.offer(Enough())
        conductor.drain()

    def _hand_over_typed(self) -> None:
        """Hand over typed lines until the end of the input, which means the same as `Enough`."""
        for line in _typed_lines():
            self._conductor.offer_words(line)
        self._conductor.offer(Enough())


def _typed_lines() -> Iterator[str]:
    """Yield the lines of standard input, each as soon as it is whole.

    They are read from the descriptor: a thread still waiting inside Python's own buffer when the program ends
    would crash it.
    """
    encoding, held = sys.stdin.encoding or "utf-8", b""
    while True:
        try:
            more = os.read(sys.stdin.fileno(), 65_536)
        except (OSError, ValueError):  # the input is gone, which counts as its end
            more = b""
        *whole, held = (held + more).split(b"\n") if more else (held, b"")
        for line in whole:
            text = line.decode(encoding, "replace").rstrip("\r")
            if text.strip():
                yield text
        if not more:
            return


def _prompted_lines() -> Iterator[str]:
    """Yield lines from a prompt with history, until Ctrl-D."""
    from prompt_toolkit import PromptSession

    session: PromptSession[str] = PromptSession()
    while True:
        try:
            line = session.prompt("> ")
        except EOFError:
            return
        if line.strip():
            yield line


def complain(sentence: str) -> None:
    """Print a sentence on standard error at once."""
    write_folded(sentence, sys.stderr)
