"""How well rows of sounds fit what was heard: the likeliest way to lay each over the frames. No I/O.

All rows that begin alike are laid together, so that thousands take a few milliseconds. There may be silence
between two sounds, and before and after them all; a sound may last any length of time.

Source: connectionist temporal classification (Graves, Fernández, Gomez and Schmidhuber, 2006), the likeliest
alignment in place of the sum over all.
"""

from __future__ import annotations

import importlib
import math
from collections.abc import Sequence
from typing import Any

from stepper.mouth.pronunciation import SOUNDS, Sounds

NOTHING = 0
"""The column of "no sound here"; the sound number n of `SOUNDS` has column n + 1."""
_AS_GOOD = 0.05
# Silence behind a row changes its likelihood by rounding alone.


def column_of(sound: str) -> int:
    """Return the column of a sound in what is likely in each frame."""
    return SOUNDS.index(sound) + 1


class SoundTree:
    """Rows of sounds, ready to be laid over an utterance."""

    def __init__(self, rows: Sequence[Sounds]) -> None:
        """Build the tree.

        Args:
            rows: The sounds of each known text; none may be empty.
        """
        self._np: Any = importlib.import_module("numpy")
        known: dict[tuple[int, int], int] = {}
        parents, columns, ends = [0], [NOTHING], []
        for row in rows:
            node = 0
            for sound in row:
                step = (node, column_of(sound))
                if step not in known:
                    known[step] = len(parents)
                    parents.append(node)
                    columns.append(step[1])
                node = known[step]
            ends.append(node)
        np = self._np
        self._parents, self._columns = np.array(parents), np.array(columns)
        self._ends = np.array(ends, dtype=int)
        again = self._columns == self._columns[self._parents]
        again[0] = False
        self._again = np.flatnonzero(again)
        # The same sound twice needs a gap between.
        self._before_again = self._parents[self._again]

    def points(self, likely: Any, start: Any = None) -> Any:
        """Lay every row over an utterance, ending at any point of it.

        Args:
            likely: Natural log-probability of each sound in each frame: frames × columns.
            start: Log-probability of what is in front of a row, for each point between frames from in front
                of the first to behind the last; None for nothing but silence.

        Returns:
            The log-probability that each row has been said by each such point: points × rows.
        """
        np = self._np
        start = log_silence(likely) if start is None else start
        found = np.empty((len(likely) + 1, len(self._ends)), np.float32)
        sounded = np.full(len(self._parents), -math.inf, np.float32)
        gap = sounded.copy()
        gap[0] = start[0]
        reached, entered, emitted = np.empty_like(gap), np.empty_like(gap), np.empty_like(gap)
        silence = likely[:, NOTHING]
        for at in range(len(likely)):  # in place, being a fifth of all work over a film
            np.maximum(gap, sounded, out=reached)
            reached.take(self._ends, out=found[at], mode="clip")
            reached.take(self._parents, out=entered, mode="clip")
            entered[self._again] = gap[self._before_again]
            np.add(reached, silence[at], out=gap)
            np.maximum(sounded, entered, out=sounded)
            likely[at].take(self._columns, out=emitted, mode="clip")  # all frames at once would take 7 MB
            sounded += emitted
            sounded[0], gap[0] = -math.inf, start[at + 1]  # nothing leads into the root from here
        np.maximum(gap, sounded).take(self._ends, out=found[-1], mode="clip")
        found[0] = -math.inf
        return found


class Endings:
    """Rows of sounds, or silence, that an utterance may end with."""

    def __init__(self, rows: Sequence[Sounds]) -> None:
        """Build the tree.

        Args:
            rows: The sounds of each; empty for silence.
        """
        self._np: Any = importlib.import_module("numpy")
        self._count = len(rows)
        self._spoken = [at for at, row in enumerate(rows) if row]
        self._tree = SoundTree([rows[at][::-1] for at in self._spoken])

    def points(self, likely: Any, *, amid: bool = False) -> Any:
        """Return the log-probability that a row, and nothing else, follows from each point on: points × rows.

        Args:
            likely: As in `SoundTree.points`.
            amid: Whether anything at all may be said behind the row.
        """
        backwards = likely[::-1]
        behind = log_anything(backwards) if amid else log_silence(backwards)
        found = self._np.repeat(behind[:, None], self._count, 1)
        if self._spoken:
            found[:, self._spoken] = self._tree.points(backwards, behind)
        return found[::-1]


def log_silence(likely: Any) -> Any:
    """Return the log-probability that nothing was said by each point between frames."""
    return _from_the_start(likely[:, NOTHING])


def log_anything(likely: Any) -> Any:
    """Return the log-probability of the likeliest way to say anything at all by each point between frames."""
    return _from_the_start(likely.max(1))


def _from_the_start(frames: Any) -> Any:
    np = importlib.import_module("numpy")
    return np.concatenate([[0.0], np.cumsum(frames)]).astype(np.float32)


def find_span(likely: Any, rows: Sequence[Sounds]) -> tuple[int, int]:
    """Find where in an utterance the best of some rows of sounds begins and ends, with anything around it.

    Args:
        likely: As in `SoundTree.points`.
        rows: At least one; none may be empty.

    Returns:
        Its first frame, and the one behind its last.
    """
    _, row, end = _first_best(likely, rows)
    *_, length = _first_best(likely[::-1], [rows[row][::-1]])
    return len(likely) - length, end


def _first_best(likely: Any, rows: Sequence[Sounds]) -> tuple[float, int, int]:
    """Return how well the best row fits, which it is, and the first point by which it is over."""
    free = log_anything(likely)
    above = SoundTree(rows).points(likely, free) - free[:, None]
    row = int(above.max(0).argmax())
    best = float(above[:, row].max())
    return best, row, int((above[:, row] >= best - _AS_GOOD).argmax())
