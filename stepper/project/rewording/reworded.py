"""Define a printed line in the grammar's words, each letter with its printed place. No I/O."""

from __future__ import annotations

from stepper.records import dataclass


@dataclass(frozen=True, slots=True)
class Reworded:
    """A line in the grammar's words."""

    text: str
    places: tuple[int, ...]
    """Offset of each letter in the line as printed, from 0; one more for its end."""
    kept: tuple[str, ...] = ()
    """Words taken out, to be said with the line."""
    name: str = ""
    """Name in the head of the line; empty if it has none."""
    yarns: tuple[tuple[str, str], ...] = ()
    """Signs in the text that stand for yarns called by a colour, each with the name."""

    def place(self, offset: int, length: int) -> tuple[int, int]:
        """Return where a stretch of the text is in the line as printed: its offset and length."""
        first = self.places[min(offset, len(self.places) - 1)]
        last = self.places[min(offset + max(length, 1) - 1, len(self.places) - 1)]
        return first, max(1, last + 1 - first)


def as_printed(plain: str) -> Reworded:
    """Return a line unchanged."""
    return Reworded(plain, tuple(range(len(plain) + 1)))
