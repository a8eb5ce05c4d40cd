"""Watch whether the ears come back for more sound: say once that they hang, and once that they go on."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from threading import Event, Thread
from typing import Final

from stepper.devices.ports import Microphone

HANGS_AFTER_S: Final = 20.0
"""Time over one stretch of sound after which a recogniser is said to hang; it takes a second or two. Unit:
seconds."""


class EarWatch:
    """Hands on the sound of a microphone, and watches whoever takes it."""

    def __init__(
        self,
        microphone: Microphone,
        tell: Callable[[bool, str], None],
        *,
        hangs_after_s: float = HANGS_AFTER_S,
    ) -> None:
        """Begin to watch.

        Args:
            microphone: Where the sound comes from.
            tell: Called from a thread with whether the ears work and a sentence about it.
            hangs_after_s: How long they may be busy. Unit: s.
        """
        self._microphone, self._tell, self._hangs_after_s = microphone, tell, hangs_after_s
        self._busy_since: float | None = None
        self._told = False
        self._over = Event()
        Thread(target=self._watch, name="ear watch", daemon=True).start()

    def blocks(self) -> Iterator[bytes]:
        """Yield the blocks of the microphone; it may be called again after whoever took them failed."""
        for block in self._microphone.blocks():
            self._busy_since = time.monotonic()
            yield block
            self._busy_since = None
            if self._told and not self._over.is_set():
                self._told = False
                self._tell(True, "The ears go on.")

    def close(self) -> None:
        """Stop watching. The microphone stays open."""
        self._over.set()

    def _watch(self) -> None:
        while not self._over.wait(self._hangs_after_s / 4):
            since = self._busy_since
            if since is not None and not self._told and time.monotonic() - since > self._hangs_after_s:
                self._told = True
                self._tell(False, "The ears do not come back; the session goes on by keys and typed cues.")
