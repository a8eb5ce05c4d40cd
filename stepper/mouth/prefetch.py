"""A voice that is slow to make a line yet begins at once, since likely lines are made in advance.

The plan is known, so the next line is too. While nothing is asked for, a thread makes the expected pieces,
the likeliest first; a piece asked for meanwhile takes precedence. What is made is kept, so that repeating a
line costs nothing.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Iterable
from threading import Condition, Thread

from stepper.mouth.ports import NoVoiceError, Synthesiser

KEPT = 96
"""Number of pieces kept. A piece of three seconds takes 130 kB, so all of them take about 12 MB."""

_Piece = tuple[str, int]


class PrefetchingVoice:
    """Makes speech with another voice, some of it before it is asked for."""

    def __init__(self, voice: Synthesiser) -> None:
        """Take over a voice and start the thread.

        Args:
            voice: Makes the sound; owned by this voice from now on, and asked by one thread at a time.
        """
        self._voice = voice
        self._made: OrderedDict[_Piece, bytes] = OrderedDict()
        self._expected: list[_Piece] = []
        self._asked = 0
        self._busy = False
        self._closed = False
        self._changed = Condition()
        self._thread = Thread(target=self._make_ahead, name="voice ahead", daemon=True)
        self._thread.start()

    @property
    def rate_hz(self) -> int:
        """Samples per second of what it makes."""
        return self._voice.rate_hz

    def speech(self, text: str, words_per_minute: int) -> bytes:
        """Return the sound of a stretch of text, made earlier or now.

        Raises:
            NoVoiceError: The voice has stopped for good.
        """
        piece = (text, words_per_minute)
        with self._changed:
            self._asked += 1
            try:
                self._changed.wait_for(lambda: piece in self._made or not self._busy)
                made = self._made.get(piece)
                if made is not None:
                    self._made.move_to_end(piece)
                    return made
                self._busy = True
            finally:
                self._asked -= 1
        return self._make(piece)

    def expect(self, pieces: Iterable[_Piece]) -> None:
        """Expect what will probably be asked for next, in place of what was expected before."""
        with self._changed:
            self._expected = list(pieces)
            self._changed.notify_all()

    def close(self) -> None:
        """Let go of the voice."""
        with self._changed:
            self._closed = True
            self._changed.notify_all()
        self._voice.close()

    def _make_ahead(self) -> None:
        while (piece := self._next_expected()) is not None:
            try:
                self._make(piece)
            except NoVoiceError:
                return  # the next call for a line reports it

    def _next_expected(self) -> _Piece | None:
        with self._changed:
            while not self._closed:
                while self._expected and self._expected[0] in self._made:
                    self._expected.pop(0)
                if self._expected and not self._asked and not self._busy:
                    self._busy = True
                    return self._expected.pop(0)
                self._changed.wait()
            return None

    def _make(self, piece: _Piece) -> bytes:
        """Make a piece; the caller holds `_busy`."""
        try:
            made = self._voice.speech(*piece)
            with self._changed:
                self._made[piece] = made
                self._made.move_to_end(piece)
                while len(self._made) > KEPT:
                    self._made.popitem(last=False)
            return made
        finally:
            with self._changed:
                self._busy = False
                self._changed.notify_all()
