"""A recogniser for tests and rehearsals: it takes whatever is spoken for the next line of a script."""

from __future__ import annotations

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
