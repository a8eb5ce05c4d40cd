"""A mouth made of a voice that makes sound and a device that plays it.

A line's sound is ready in a few milliseconds, so the voice is asked for a whole piece at a time: if its
process dies over one, none of that piece has been heard and it can be asked for again.
"""

from __future__ import annotations

import time
from collections.abc import Callable, Iterable
from threading import Event, Lock

from stepper.devices.ports import NoOutputError, OutputStream
from stepper.mouth.pieces import cut_into_pieces
from stepper.mouth.ports import Synthesiser

_AHEAD_S = 1.0
"""The next piece of a long line is made when this much of the one before is left to be heard."""
STALLED_S = 4.0
"""A device that plays nothing for this long is gone; one that was idle may take 2 s to wake up. Unit:
seconds."""
_SHORTEST_LOOK_S, _LONGEST_LOOK_S = 0.005, 0.1
REOPEN_EVERY_S = 5.0
"""Least time between two searches for a missing device. Unit: seconds."""


class PlaybackMouth:
    """Say lines by making their sound and playing it."""

    def __init__(
        self,
        synthesiser: Synthesiser,
        output: OutputStream,
        *,
        reopen: Callable[[], OutputStream],
        tell: Callable[[str], None],
        cut: Callable[[str], tuple[str, ...]] = cut_into_pieces,
    ) -> None:
        """Take over a voice and an open output.

        Args:
            synthesiser: Makes the sound; owned by this mouth from now on.
            output: Plays it; owned by this mouth from now on.
            reopen: Opens another output once that one is gone; may raise `NoOutputError`.
            tell: Called from a thread with one sentence for the user each time the device goes.
            cut: Cuts a line into the pieces the voice is asked for.
        """
        self._synthesiser = synthesiser
        self._output: OutputStream | None = output
        self._reopen = reopen
        self._tell = tell
        self._cut = cut
        self._tried_at = 0.0
        self._lock = Lock()
        self._closed = False

    def utter(self, text: str, words_per_minute: int, cut: Event) -> None:
        """Say a line and return when it has been heard or cut off, or when it cannot be heard.

        Raises:
            NoVoiceError: The voice has stopped for good.
        """
        output = self._present_output()
        if output is None:
            return
        for piece in self._cut(text):
            pcm = self._synthesiser.speech(piece, words_per_minute)
            with self._lock:  # so that nothing played after a cut escapes the hush that comes with it
                if cut.is_set() or self._closed:
                    return
                output.play(pcm, self._synthesiser.rate_hz)
            if not self._is_heard(output, cut, but_for_s=_AHEAD_S):
                return
        self._is_heard(output, cut, but_for_s=0.0)

    def chime(self, pcm: bytes, rate_hz: int) -> None:
        """Play a short sound after what is playing, if there is a device."""
        with self._lock:
            if self._output is not None and not self._closed:
                self._output.play(pcm, rate_hz)

    def expect(self, lines: Iterable[tuple[str, int]]) -> None:
        """Have the voice prepare what will probably be said next."""
        self._synthesiser.expect((piece, speed) for text, speed in lines for piece in self._cut(text))

    def hush(self) -> None:
        """Make no more sound, at once."""
        with self._lock:
            if self._output is not None:
                self._output.clear()

    def close(self) -> None:
        """Let go of the voice and of the device."""
        with self._lock:
            self._closed = True
            output, self._output = self._output, None
        self._synthesiser.close()
        if output is not None:
            output.close()

    def _is_heard(self, output: OutputStream, cut: Event, *, but_for_s: float) -> bool:
        """Wait until only that much is left to be heard; return whether the line goes on."""
        least_s, moved_at = float("inf"), time.monotonic()
        while (left_s := output.pending_s - but_for_s) > 0:
            if left_s < least_s:
                least_s, moved_at = left_s, time.monotonic()
            if output.lost or time.monotonic() - moved_at > STALLED_S:
                self._lose(output)
                return False
            if cut.wait(min(max(left_s, _SHORTEST_LOOK_S), _LONGEST_LOOK_S)):
                return False
        return not cut.is_set()

    def _lose(self, output: OutputStream) -> None:
        with self._lock:
            if self._closed:
                return
            self._output = None
        self._tried_at = time.monotonic()
        self._tell("The sound device has gone; the session goes on in text until it is back.")
        output.close()

    def _present_output(self) -> OutputStream | None:
        with self._lock:
            output = self._output
        if output is not None and output.lost:
            self._lose(output)
            output = None
        if output is None and time.monotonic() - self._tried_at > REOPEN_EVERY_S:
            output = self._opened_again()
        return output

    def _opened_again(self) -> OutputStream | None:
        self._tried_at = time.monotonic()
        try:
            output = self._reopen()
        except NoOutputError:
            return None
        with self._lock:
            if not self._closed:
                self._output = output
                return output
        output.close()
        return None
