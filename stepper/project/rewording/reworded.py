"""Define a printed line in the grammar's words, each letter with its printed place. No I/O."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

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


def laid_anew(line: Reworded, start: int, end: int, pieces: Sequence[str | tuple[int, int]]) -> Reworded:
    """Return a line in which a stretch is written anew from its own words, in another order, and from others.

    Args:
        line: The line.
        start: Where the stretch begins in the text.
        end: Where it ends.
        pieces: What stands there instead: words, or where in the text they are from. Words that are put in
            take the place of those behind them, at the beginning and the end that of the stretch.
    """
    text, places = list[str](), list[int]()
    here = line.places[start]
    for at, piece in enumerate(pieces):
        if isinstance(piece, str):
            follows = next((other for other in pieces[at + 1 :] if not isinstance(other, str)), None)
            here = line.places[follows[0]] if follows is not None and any(text) else here
            text.append(piece)
            places += [here] * len(piece)
        else:
            first, last = piece
            text.append(line.text[first:last])
            places += line.places[first:last]
            here = line.places[max(first, last - 1)]
    return replace(
        line,
        text=line.text[:start] + "".join(text) + line.text[end:],
        places=(*line.places[:start], *places, *line.places[end:]),
    )


def cut_out(line: Reworded, cuts: Sequence[tuple[int, int, str]]) -> Reworded:
    """Return a line without some stretches, whose words are said with it.

    Args:
        line: The line.
        cuts: Where each stretch begins and ends in the text, in their order, and what is said of it; the
            signs around those words are not.
    """
    for start, end, _ in reversed(cuts):
        line = laid_anew(line, start, end, ())
    return replace(line, kept=(*line.kept, *(said.strip(" .,;-") for _, _, said in cuts)))
