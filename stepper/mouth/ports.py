"""The ports of what speaks, from a line to its sound, and what can go wrong. No I/O.

```
 Speaker.say ─► QueuedSpeaker ─► Mouth ─┬─ PlaybackMouth ─► Synthesiser (in a process) ─► OutputStream
                one thread, line        └─ SystemVoiceMouth ─► the system's voice (a process for each line)
                after line
```

The queue knows nothing of sound, a mouth nothing of queues, an output nothing of words. A natural voice,
which takes longer to start, is another `Synthesiser`.

Everything outside this room knows only `Speaker`; its fake is in `stepper.mouth.fakes`.
"""

from __future__ import annotations

from collections.abc import Iterable
from enum import Enum
from threading import Event
from typing import Protocol

from stepper.errors import SurroundingsError
from stepper.records import dataclass


class NoVoiceError(SurroundingsError):
    """A voice cannot be started, or has stopped for good; the text says why, as half a sentence."""


class Tone(Enum):
    """A soft tone that stands for a word."""

    HEARD = "heard"
    """A cue was heard; its answer follows."""
    NOT_UNDERSTOOD = "not understood"
    """Something was said to the program that is not a cue, or not one that makes sense now."""
    FILM = "film"
    """A film is on: from now on every cue needs the address word."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SpokenLine:
    """One line as given to a speaker."""

    text: str
    slower: bool = False


class Speaker(Protocol):
    """Says lines one after another, in the order given.

    No method raises, whatever happens to the sound device. Every method may be called from any thread.
    """

    @property
    def speaking(self) -> bool:
        """Whether a line is being said, is on its way through the sound device, or waits its turn."""

    def say(self, text: str, slower: bool = False) -> None:
        """Put a line at the end of the queue and return at once.

        Args:
            text: What to say; a text of nothing but spaces is ignored.
            slower: Say it more slowly than usual, as when it is repeated.
        """

    def sound(self, sound: Tone) -> None:
        """Play a soft tone at once, before any line said after it.

        It does not count as speech for `speaking`. A speaker that cannot play tones ignores it.
        """

    def expect(self, lines: Iterable[SpokenLine]) -> None:
        """Prepare what will probably be said next, and forget what was expected before.

        Args:
            lines: Likeliest first. They are said only when `say` is called. A speaker that prepares nothing
                ignores them.
        """

    def silence(self) -> None:
        """Fall silent at once and forget the waiting lines. Lines said afterwards are heard.

        What the device has already taken may sound for another tenth of a second.
        """

    @property
    def paused(self) -> bool:
        """Whether lines are held back by `pause`."""

    def pause(self) -> bool:
        """Fall silent at once and hold back the line that was being said and those that wait.

        Until `go_on` nothing is said, and `speaking` is false; `silence` forgets what is held back.

        Returns:
            Whether there was anything to hold back.
        """

    def go_on(self) -> None:
        """Say again the line that `pause` cut off, from its beginning, and then those that waited."""

    def wait(self, timeout: float) -> bool:
        """Wait until everything has been said.

        Args:
            timeout: How long to wait at most. Unit: seconds.

        Returns:
            Whether it is quiet now.
        """

    def close(self) -> None:
        """Fall silent and let go of the device, for good. Later calls do nothing."""


class Mouth(Protocol):
    """Says one line at a time."""

    def utter(self, text: str, words_per_minute: int, cut: Event) -> None:
        """Say a line and return when it has been heard, or soon after `cut` is set and `hush` called.

        Raises:
            NoVoiceError: The voice has stopped for good.
        """

    def chime(self, pcm: bytes, rate_hz: int) -> None:
        """Play a short sound apart from the lines of `utter`, if possible. From any thread."""

    def expect(self, lines: Iterable[tuple[str, int]]) -> None:
        """Prepare lines that will probably be said next, each with its words per minute.

        Called from any thread.
        """

    def hush(self) -> None:
        """Make no more sound, at once. Called from another thread than `utter`, after `cut` is set."""

    def close(self) -> None:
        """Let go of everything. Never called while a line is said, unless that line will not end."""


class Synthesiser(Protocol):
    """Turns words into sound, faster than they are spoken."""

    @property
    def rate_hz(self) -> int:
        """Samples per second of what it makes."""

    def speech(self, text: str, words_per_minute: int) -> bytes:
        """Make the sound of a stretch of text: one channel, signed 16-bit, no silence after it.

        Raises:
            NoVoiceError: The voice has stopped for good.
        """

    def expect(self, pieces: Iterable[tuple[str, int]]) -> None:
        """Note what will probably be asked for next, each with its words per minute; may be ignored."""

    def close(self) -> None:
        """Let go of everything, from any thread."""
