"""How far rows of sounds are from each other: an edit distance that knows which sounds are alike.

One tree holds all rows that begin alike, so that thousands are compared at once.

Source: the classes are those of the chart of the International Phonetic Alphabet (voiced and voiceless pairs,
place, height of vowels); the costs are chosen by hand, from memory of what recognisers confuse.
"""

from __future__ import annotations

import importlib
from collections.abc import Sequence
from functools import cache
from typing import Any, Final

from stepper.voice.pronouncing import SOUNDS, Sounds

ALIKE: Final = (
    ("p b", 0.4), ("t d", 0.4), ("k g", 0.4), ("f v", 0.4), ("θ ð", 0.4), ("s z", 0.3), ("ʃ ʒ tʃ dʒ", 0.4),
    ("θ f", 0.5), ("ð d v", 0.5), ("m n ŋ", 0.4), ("l r w j", 0.6), ("s ʃ θ", 0.6), ("t tʃ k p", 0.7),
    ("i ɪ", 0.3), ("ɪ ə ɛ", 0.4), ("ɛ æ eɪ", 0.4), ("ɑ ɔ ə", 0.4), ("ʊ u", 0.3), ("ʊ ə ɜ", 0.4),
    ("æ ə ɑ", 0.5),
    ("ɔ oʊ ɔɪ", 0.4), ("aʊ æ ɑ oʊ", 0.5), ("aɪ ɑ ɔɪ", 0.5), ("eɪ i ɪ", 0.5),
)  # fmt: skip
"""Groups of sounds and what it costs to take one for another of its group. Range: 0 to 1."""

VOWELS: Final = frozenset(("i", "ɪ", "ɛ", "æ", "ɑ", "ɔ", "ʊ", "u", "ə", "ɜ", "aɪ", "aʊ", "eɪ", "ɔɪ", "oʊ"))
_TWO_VOWELS: Final = 0.7
_UNLIKE: Final = 1.0
_WEAK: Final = frozenset(("ə", "h", "t", "d", "ɪ"))
_WEAK_LOST: Final = 0.6
_LOST: Final = 0.9


class Likeness:
    """Rows of sounds, ready to be compared with one that was heard."""

    def __init__(self, rows: Sequence[Sounds]) -> None:
        """Build the tree.

        Args:
            rows: The sounds of each known text; none may be empty.
        """
        self._np: Any = importlib.import_module("numpy")
        self.lengths: Any = self._np.array([len(row) for row in rows])
        """Number of sounds in each row."""
        levels: list[dict[tuple[int, str], int]] = [{} for _ in range(max(map(len, rows), default=0))]
        ends: list[list[tuple[int, int]]] = [[] for _ in levels]
        for number, row in enumerate(rows):
            node = 0
            for level, sound in zip(levels, row, strict=False):
                node = level.setdefault((node, sound), len(level))
            ends[len(row) - 1].append((number, node))
        self._levels = [
            (
                self._np.array([parent for parent, _ in level]),
                self._np.array([SOUNDS.index(sound) for _, sound in level]),
                self._np.array(end, dtype=int).reshape(-1, 2),
            )
            for level, end in zip(levels, ends, strict=True)
        ]

    def start(self, heard: Sounds) -> Any:
        """Give the row to begin with: what it costs to leave out the first sounds of what was heard."""
        inserted = [_lost(sound) for sound in heard]
        return self._np.concatenate([[0.0], self._np.cumsum(inserted)])

    def rows(self, heard: Sounds, start: Any) -> Any:
        """Compare what was heard with every row.

        Args:
            heard: What was heard.
            start: What each beginning of it costs already; `start` above, or a row of another tree.

        Returns:
            For each row what it costs to make it of each beginning of what was heard: rows × (sounds + 1).
        """
        further = _Further(self._np, heard)
        found = self._np.empty((len(self.lengths), len(heard) + 1))
        nodes = start[None]
        for parents, sounds, ends in self._levels:
            nodes = further(nodes[parents], sounds)
            found[ends[:, 0]] = nodes[ends[:, 1]]
        return found


class _Further:
    """One more sound at the end of each of many rows."""

    def __init__(self, np: Any, heard: Sounds) -> None:
        self._np, self._lost = np, np.concatenate([[0.0], np.cumsum([_lost(sound) for sound in heard])])
        self._costs = _costs(np)[:, [SOUNDS.index(sound) for sound in heard]]
        self._lost_costs = np.array([_lost(sound) for sound in SOUNDS])

    def __call__(self, above: Any, sounds: Any) -> Any:
        np = self._np
        nodes = above + self._lost_costs[sounds][:, None]
        nodes[:, 1:] = np.minimum(nodes[:, 1:], above[:, :-1] + self._costs[sounds])
        return np.minimum.accumulate(nodes - self._lost, axis=1) + self._lost


def distance(one: Sounds, other: Sounds) -> float:
    """Tell how far two rows of sounds are apart. Range: 0 (alike) to 1, as a share of the longer one."""
    if not one or not other:
        return 0.0 if one == other else 1.0
    tree = Likeness([one])
    cost = float(tree.rows(other, tree.start(other))[0, -1])
    return min(1.0, cost / max(len(one), len(other)))


def _lost(sound: str) -> float:
    return _WEAK_LOST if sound in _WEAK else _LOST


@cache
def _costs(np: Any) -> Any:
    """Make the table: what it costs to take one sound for another."""
    table = np.full((len(SOUNDS), len(SOUNDS)), _UNLIKE)
    for one, a in enumerate(SOUNDS):
        for other, b in enumerate(SOUNDS):
            if a in VOWELS and b in VOWELS:
                table[one, other] = _TWO_VOWELS
    for group, cost in ALIKE:
        members = [SOUNDS.index(sound) for sound in group.split()]
        for one in members:
            for other in members:
                table[one, other] = min(table[one, other], cost)
    np.fill_diagonal(table, 0.0)
    return table
