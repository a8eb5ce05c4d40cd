"""What signals mean to the screen: suspended and resumed by the shell, or told to end."""

from __future__ import annotations

import asyncio
import os
import signal
from collections.abc import Callable
from typing import TYPE_CHECKING

from stepper.screen.ports import Voice

if TYPE_CHECKING:
    from prompt_toolkit.application import Application


def mind_signals(
    loop: asyncio.AbstractEventLoop, app: Application[None], voice: Voice | None
) -> Callable[[], None]:
    """Stop and continue as the shell asks, and leave the terminal as it was when told to end.

    Returns:
        A function that undoes this.
    """
    if os.name != "posix":
        return lambda: None
    from stepper.screen import terminal

    def suspend() -> None:
        if voice is not None:
            voice.silence()
        terminal.suspend(app)

    actions: dict[signal.Signals, Callable[[], None]] = {
        signal.SIGTSTP: suspend,
        signal.SIGCONT: lambda: terminal.redraw_all(app),
        signal.SIGTERM: lambda: app.exit(exception=KeyboardInterrupt()) if not app.is_done else None,
    }
    added = []
    for number, action in actions.items():
        try:
            loop.add_signal_handler(number, action)
        except (ValueError, RuntimeError):  # not the main thread: then the caller handles the signals
            continue
        added.append(number)

    def undo() -> None:
        for number in added:
            loop.remove_signal_handler(number)

    return undo
