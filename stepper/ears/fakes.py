"""A recogniser for tests and rehearsals: it takes whatever is spoken for the next line of a script."""

from __future__ import annotations

from array import array
from collections import deque
from collections.abc import Iterable

from stepper.ears.ports import Heard


class ScriptedRecogniser:
    """Hears its script, one line for each stretch of sound, and remembers the sound."""

    def __init__(self, script: Iterable[Heard | str | None]) -> None:
        """Take the script.

        Args:
            script: What each stretch of sound is taken for; None for nothing. After its end nothing is
                heard.
        """
        self.segments: list[bytes] = []
        """Every stretch of sound, in order."""
        self.closed = False
        self._script = iter(script)

    def recognise(self, segment: bytes) -> Heard | None:
        """Return the next line of the script."""
        if self.closed:
            return None
        self.segments.append(segment)
        line = next(self._script, None)
        return Heard(text=line, score=1.0) if isinstance(line, str) else line

    def close(self) -> None:
        """Hear nothing any more."""
        self.closed = True


class PlainCanceller:
    """Takes away the loudspeaker's sound just as it was given: the canceller of a room without any walls."""

    def __init__(self, late_by: int = 0) -> None:
        """Begin with a silent loudspeaker.

        Args:
            late_by: How many blocks later than it is told of a sound the microphone hears it. Range: 0 and
                up.
        """
        self._given: deque[bytes] = deque(maxlen=late_by + 1)

    def clean(self, near: bytes, far: bytes, far_rate_hz: int) -> bytes:
        """Return the difference, sample by sample; both have to be of one rate."""
        self._given.append(far)
        is_on_its_way = len(self._given) < (self._given.maxlen or 1)
        heard, given = array("h", near), array("h", bytes(len(near)) if is_on_its_way else self._given[0])
        return array("h", (a - b for a, b in zip(heard, given, strict=True))).tobytes()
