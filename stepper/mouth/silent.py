"""The speaker of a session that goes on in text alone. No I/O."""

from __future__ import annotations

from collections.abc import Iterable

from stepper.mouth.ports import SpokenLine, Tone


class TextOnlySpeaker:
    """Says nothing, and so is always done."""

    @property
    def speaking(self) -> bool:
        """Never."""
        return False

    def say(self, text: str, slower: bool = False) -> None:
        """Leave the line to the screen."""

    def sound(self, sound: Tone) -> None:
        """Leave the tone out."""

    def expect(self, lines: Iterable[SpokenLine]) -> None:
        """Do nothing: no line is prepared."""

    def silence(self) -> None:
        """Do nothing: it is quiet."""

    @property
    def paused(self) -> bool:
        """Never."""
        return False

    def pause(self) -> bool:
        """Return False: nothing is being said."""
        return False

    def go_on(self) -> None:
        """Do nothing: nothing is held back."""

    def wait(self, timeout: float) -> bool:
        """Return True: it is always quiet."""
        return True

    def close(self) -> None:
        """Do nothing: there is nothing to let go of."""
