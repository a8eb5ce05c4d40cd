"""A speaker made of a queue and a mouth.

One thread owns the mouth and says line after line; callers only add to the queue or empty it. Each line has a
flag of its own, set when it is to be cut off, so that silence reaches the right line even if asked for
between two of them.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable
from dataclasses import field, replace
from threading import Condition, Event, Thread

from stepper.mouth.pieces import strip_unspeakable
from stepper.mouth.ports import Mouth, NoVoiceError, SpokenLine, Tone
from stepper.mouth.settings import SpeechSettings
from stepper.mouth.tones import TONE_RATE_HZ, make_tone
from stepper.records import dataclass

_CLOSE_TIMEOUT_S = 2.0
"""How long closing waits for the last line to be cut off; after that the thread is left alone."""


@dataclass(frozen=True, slots=True, kw_only=True)
class _QueuedLine:
    text: str
    words_per_minute: int
    cut: Event = field(default_factory=Event)


class QueuedSpeaker:
    """Say lines through a mouth, one after another."""

    def __init__(self, mouth: Mouth, settings: SpeechSettings, tell: Callable[[str], None]) -> None:
        """Start the thread.

        Args:
            mouth: Says the lines; owned by this speaker from now on.
            settings: How fast to speak.
            tell: Called from a thread with one sentence for the user when the voice stops for good.
        """
        self._mouth = mouth
        self._settings = settings
        self._tell = tell
        self._waiting: deque[_QueuedLine] = deque()
        self._current: _QueuedLine | None = None
        self._paused = False
        self._deaf_to_lines = False
        self._closed = False
        self._changed = Condition()
        self._thread = Thread(target=self._say_lines, name="speaker", daemon=True)
        self._thread.start()

    @property
    def speaking(self) -> bool:
        """Whether a line is being said or waits its turn."""
        with self._changed:
            return not (self._paused or self._is_quiet())

    def say(self, text: str, slower: bool = False) -> None:
        """Put a line at the end of the queue and return at once."""
        words = strip_unspeakable(text)
        with self._changed:
            if words and not self._deaf_to_lines:
                speed = self._settings.words_per_minute(slower=slower)
                self._waiting.append(_QueuedLine(text=words, words_per_minute=speed))
                self._changed.notify_all()

    def sound(self, sound: Tone) -> None:
        """Play a soft tone at once."""
        if not self._closed:
            self._mouth.chime(make_tone(sound, self._settings.volume), TONE_RATE_HZ)

    def expect(self, lines: Iterable[SpokenLine]) -> None:
        """Prepare what will probably be said next."""
        if self._deaf_to_lines:
            return
        likely = ((strip_unspeakable(line.text), line.slower) for line in lines)
        speed = self._settings.words_per_minute
        self._mouth.expect((text, speed(slower=slower)) for text, slower in likely if text)

    def silence(self) -> None:
        """Fall silent at once and forget the waiting lines."""
        with self._changed:
            self._paused = False
            self._waiting.clear()
            self._cut_off()
            self._changed.notify_all()

    @property
    def paused(self) -> bool:
        """Whether lines are held back."""
        with self._changed:
            return self._paused

    def pause(self) -> bool:
        """Fall silent at once and hold back what was being said and what waits."""
        with self._changed:
            if self._closed or self._paused or self._is_quiet():
                return False
            if self._current is not None:
                self._waiting.appendleft(replace(self._current, cut=Event()))
            self._paused = True
            self._cut_off()
            return True

    def go_on(self) -> None:
        """Say what was held back."""
        with self._changed:
            self._paused = False
            self._changed.notify_all()

    def wait(self, timeout: float) -> bool:
        """Wait until everything has been said, and return whether it has."""
        with self._changed:
            return self._changed.wait_for(self._is_quiet, timeout)

    def close(self) -> None:
        """Fall silent and let go of the device, for good."""
        with self._changed:
            first_time = not self._closed
            self._closed = self._deaf_to_lines = True
        self.silence()
        if first_time:
            self._thread.join(_CLOSE_TIMEOUT_S)
            self._mouth.close()

    def _cut_off(self) -> None:
        if self._current is not None:
            self._current.cut.set()
            self._current = None
            # Inside the lock, or a line said right after this could be hushed instead.
            self._mouth.hush()

    def _is_quiet(self) -> bool:
        return self._current is None and not self._waiting

    def _say_lines(self) -> None:
        while (line := self._next_line()) is not None:
            try:
                self._mouth.utter(line.text, line.words_per_minute, line.cut)
            except NoVoiceError as reason:
                self._give_up(str(reason))
            except Exception as fault:  # a fault in the voice must not take the knitting with it
                self._give_up(f"of a fault in it ({type(fault).__name__}: {fault})")
            finally:
                self._finish(line)

    def _next_line(self) -> _QueuedLine | None:
        with self._changed:
            self._changed.wait_for(lambda: self._closed or bool(self._waiting and not self._paused))
            if self._closed:
                return None
            self._current = self._waiting.popleft()
            return self._current

    def _finish(self, line: _QueuedLine) -> None:
        with self._changed:
            if self._current is line:
                self._current = None
            self._changed.notify_all()

    def _give_up(self, reason: str) -> None:
        with self._changed:
            already_closed = self._closed
            self._deaf_to_lines = True
            self._waiting.clear()
        if not already_closed:
            self._tell(f"The voice has stopped because {reason}; the session goes on in text.")
