"""Speakers for tests and rehearsals: classes with a memory that make no sound."""

from __future__ import annotations

import time
from collections.abc import Iterable
from threading import Condition

from stepper.mouth.ports import SpokenLine, Tone

_FOREVER_AGO = 0.0


class RecordingSpeaker:
    """Remembers what it was told to say, and takes as long over it as asked.

    Lines are said one after another in real time, at a given number of seconds a word; at 0, the default,
    each is over at once.
    """

    def __init__(self, seconds_per_word: float = 0.0) -> None:
        """Start quiet.

        Args:
            seconds_per_word: How long a word takes. Range: 0 and up.
        """
        self.said: list[SpokenLine] = []
        """Every line, in the order given, whether or not it was cut off."""
        self.cut_off: list[SpokenLine] = []
        """The lines that were cut off before they were over, in order."""
        self.sounds: list[Tone] = []
        """Every tone, in order."""
        self.expected: tuple[SpokenLine, ...] = ()
        """What was last said to be likely."""
        self.silenced = 0
        """How often silence was asked for."""
        self.closed = False
        self._seconds_per_word = seconds_per_word
        self._under_way: list[tuple[SpokenLine, float]] = []
        self._held_back: list[SpokenLine] | None = None
        self._changed = Condition()

    @property
    def texts(self) -> tuple[str, ...]:
        """The words of every line, in the order given."""
        return tuple(line.text for line in self.said)

    @property
    def speaking(self) -> bool:
        """Whether the time its lines take is still running."""
        with self._changed:
            return self._left_s() > 0

    def say(self, text: str, slower: bool = False) -> None:
        """Remember a line."""
        if self.closed or not text.strip():
            return
        with self._changed:
            line = SpokenLine(text=text, slower=slower)
            if self._held_back is not None:
                self._held_back.append(line)
                return
            takes_s = self._seconds_per_word * len(text.split())
            self.said.append(line)
            self._under_way.append((line, time.monotonic() + self._left_s() + takes_s))

    def sound(self, sound: Tone) -> None:
        """Remember a tone."""
        if not self.closed:
            self.sounds.append(sound)

    def expect(self, lines: Iterable[SpokenLine]) -> None:
        """Remember what is likely."""
        self.expected = tuple(lines)

    def silence(self) -> None:
        """Fall silent at once, and remember which lines were not over."""
        with self._changed:
            self.silenced += 1
            self.cut_off += self._not_over()
            self._under_way.clear()
            self._held_back = None
            self._changed.notify_all()

    @property
    def paused(self) -> bool:
        """Whether lines are held back."""
        return self._held_back is not None

    def pause(self) -> bool:
        """Hold back the lines that are not over."""
        with self._changed:
            if self._held_back is not None or not self._not_over():
                return False
            self._held_back = self._not_over()
            self._under_way.clear()
            return True

    def go_on(self) -> None:
        """Say again, and remember again, the lines that were held back."""
        held_back, self._held_back = self._held_back, None
        for line in held_back or ():
            self.say(line.text, line.slower)

    def wait(self, timeout: float) -> bool:
        """Wait until the time its lines take is over, and return whether it is."""
        ends_at = time.monotonic() + timeout
        with self._changed:
            while (left_s := self._left_s()) > 0 and (now := time.monotonic()) < ends_at:
                self._changed.wait(min(left_s, ends_at - now))
            return self._left_s() <= 0

    def close(self) -> None:
        """Fall silent, and take no more lines."""
        self.silence()
        self.closed = True

    def _not_over(self) -> list[SpokenLine]:
        now = time.monotonic()
        return [line for line, over_at in self._under_way if over_at > now]

    def _left_s(self) -> float:
        over_at = self._under_way[-1][1] if self._under_way else _FOREVER_AGO
        return max(0.0, over_at - time.monotonic())
