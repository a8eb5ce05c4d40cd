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

from stepper.ears.bundled.spotting import PronouncedPhrase
from stepper.mouth.pronunciation import SOUNDS, Sounds

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


class SoundDistances:
    """Rows of sounds, ready to be compared with one that was heard."""

    def __init__(self, rows: Sequence[Sounds]) -> None:
        """Build the tree.

        Args:
            rows: The sounds of each known text; none may be empty.
        """
        self._np: Any = importlib.import_module("numpy")
        self._lengths: Any = self._np.array([len(row) for row in rows])
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

    def distances(self, heard: Sounds) -> Any:
        """Return how far each row is from what was heard, as a share of the longer of the two.

        Args:
            heard: At least one sound.

        Returns:
            One number for each row. Range: 0 (alike) to 1.
        """
        further = _Further(self._np, heard)
        found = self._np.empty(len(self._lengths))
        nodes = further.left_out[None]
        for parents, sounds, ends in self._levels:
            nodes = further(nodes[parents], sounds)
            found[ends[:, 0]] = nodes[ends[:, 1], -1]
        return found / self._lengths.clip(min=len(heard))


class _Further:
    """One more sound at the end of each of many rows."""

    def __init__(self, np: Any, heard: Sounds) -> None:
        self._np = np
        self.left_out: Any = np.concatenate([[0.0], np.cumsum([_lost(sound) for sound in heard])])
        """What it costs to leave out each beginning of what was heard."""
        self._costs = _costs(np)[:, [SOUNDS.index(sound) for sound in heard]]
        self._lost_costs = np.array([_lost(sound) for sound in SOUNDS])

    def __call__(self, above: Any, sounds: Any) -> Any:
        np = self._np
        nodes = above + self._lost_costs[sounds][:, None]
        nodes[:, 1:] = np.minimum(nodes[:, 1:], above[:, :-1] + self._costs[sounds])
        return np.minimum.accumulate(nodes - self.left_out, axis=1) + self.left_out


def similar_phrases(phrases: Sequence[PronouncedPhrase], within: float) -> list[tuple[str, str, float]]:
    """List the phrases that sound like a phrase of another meaning.

    Args:
        phrases: None may be without a sound.
        within: How far apart they may be. Range: 0 to 1.

    Returns:
        Each pair once, and how far apart the two are as a share of the longer one, the nearest first.
    """
    tree, found = SoundDistances([each.sounds for each in phrases]), []
    for at, one in enumerate(phrases):
        distances = tree.distances(one.sounds)
        for number in (distances <= within).nonzero()[0]:
            other = phrases[number]
            if at < number and one.means != other.means:
                found.append((one.text, other.text, float(distances[number])))
    return sorted(found, key=lambda pair: pair[2])


def _lost(sound: str) -> float:
    return _WEAK_LOST if sound in _WEAK else _LOST


@cache
def _costs(np: Any) -> Any:
    """Return the table of what it costs to take one sound for another."""
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
