"""A microphone that may go and return without ending the session.

The loss of a device is reported once, and the device is looked for every few seconds; its return is reported
too. Not every system tells when a device goes: one that yields no block for a while counts as gone.
"""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from threading import Event, Lock

from stepper.devices.open_streams import open_input
from stepper.devices.ports import Door, InputStream, NoInputError
from stepper.devices.streams import GAP

STALLED_S = 4.0
"""A microphone that yields nothing for this long is gone. One that has been idle may take 2 s to wake up."""
REOPEN_EVERY_S = 5.0
"""How often a microphone that has gone is looked for. Unit: seconds."""
SILENT_S = 20.0
"""Nothing but zeros for this long means a microphone that is muted or that the system does not let us hear.
One that works always yields some noise."""
_LOOK_S = 0.5


class LiveMicrophone:
    """The microphone as a live source of sound."""

    def __init__(
        self,
        device: str = "",
        *,
        deaf: Callable[[], bool] = lambda: False,
        door: Door | None = None,
        there: Callable[[bool, str], None] = lambda is_there, sentence: None,
        reopen_every_s: float = REOPEN_EVERY_S,
    ) -> None:
        """Open the microphone of the settings, or the usual one if that is not there.

        Args:
            device: Part of its name; empty for the usual one.
            deaf: Whether what comes in now is to be left out, as it is while the program itself speaks.
            door: Decides what of a block is let in; if None, all of it while the ears are open.
            there: Called with whether the microphone is there and a sentence, each time it goes or returns.
                Called from a thread.
            reopen_every_s: How often one that has gone is looked for. Unit: seconds.

        Raises:
            NoInputError: No microphone can be opened.
        """
        self._name, self._there = device, there
        self._deaf, self._door = deaf, door
        self._reopen_every_s = reopen_every_s
        self._silent_since: float | None = None
        self._told_silent = False
        self._closed = Event()
        self._lock = Lock()
        self.remark: str | None = None
        """A sentence on the setting that could not be followed; None if all is as wanted."""
        self._input: InputStream | None = self._opened()

    def blocks(self) -> Iterator[bytes]:
        """Yield blocks of 40 ms as they come in, an empty one for missing sound, until it is closed."""
        came_at = time.monotonic()
        while not self._closed.is_set():
            device = self._input
            if device is None:
                if not self._found_again():
                    continue
                came_at = time.monotonic()
                continue
            block = device.take(_LOOK_S)
            if block is not None:
                came_at = time.monotonic()
                self._mind_silence(block, came_at)
                yield block
            elif not self._closed.is_set() and (device.lost or time.monotonic() - came_at > STALLED_S):
                self._lose(device)
                yield GAP

    def close(self) -> None:
        """Let go of the device, for good."""
        self._closed.set()
        with self._lock:
            device, self._input = self._input, None
        if device is not None:
            device.close()

    def _mind_silence(self, block: bytes, now: float) -> None:
        """Report once that nothing but zeros has come in for long, and once that this is over."""
        if any(block):
            if self._told_silent:
                self._there(True, "The microphone can be heard again.")
            self._silent_since, self._told_silent = None, False
        elif block:
            self._silent_since = self._silent_since if self._silent_since is not None else now
            if not self._told_silent and now - self._silent_since > SILENT_S:
                self._told_silent = True
                self._there(False, "The microphone gives nothing but silence: is it muted, or not allowed?")

    def _opened(self) -> InputStream:
        try:
            return open_input(self._name, self._deaf, self._door)
        except NoInputError:
            if not self._name:
                raise
        device = open_input("", self._deaf, self._door)
        self.remark = f'The microphone "{self._name}" cannot be opened; the usual one is used.'
        return device

    def _lose(self, device: InputStream) -> None:
        with self._lock:
            if self._closed.is_set():
                return
            self._input = None
        self._there(False, "The microphone has gone; the session goes on by keys and typed cues.")
        device.close()

    def _found_again(self) -> bool:
        if self._closed.wait(self._reopen_every_s):
            return False
        try:
            device = self._opened()
        except NoInputError:
            return False
        with self._lock:
            if not self._closed.is_set():
                self._input = device
                self._there(True, "The microphone is back.")
                return True
        device.close()
        return False
