"""Find the legal words that a misspelt one may mean, nearest first. No I/O.

Source of the measure: Damerau (1964), "A technique for computer detection and correction of spelling
errors": four in five misspellings are one letter too many, one too few, one wrong, or two adjacent letters
swapped. Each counts as one slip here (the restricted measure: no stretch is changed twice).
"""

from __future__ import annotations

from functools import lru_cache


def slips(one: str, other: str, *, most: int = 2) -> int:
    """Count the slips between two words.

    Args:
        one: A word.
        other: Another.
        most: Slips above which the number does not matter. Range: 0 and up.

    Returns:
        The number; `most` + 1 if there are more. Always: the same both ways round; 0 for the same word.
    """
    if abs(len(one) - len(other)) > most:
        return most + 1
    before: list[int] = []
    last = list(range(len(other) + 1))
    for row, letter in enumerate(one, start=1):
        line = [row]
        for column, sign in enumerate(other, start=1):
            cost = min(last[column] + 1, line[column - 1] + 1, last[column - 1] + (letter != sign))
            exchanged = row > 1 and column > 1 and letter == other[column - 2] and one[row - 2] == sign
            line.append(min(cost, before[column - 2] + 1) if exchanged else cost)
        if min(line) > most:
            return most + 1
        before, last = last, line
    return min(last[-1], most + 1)


def most_slips(word: str) -> int:
    """Return how many slips a word may have and still be guessed: one if short, two if longer."""
    return 1 if len(word) <= 4 else 2


@lru_cache(maxsize=4096)
def near(word: str, choices: frozenset[str] | tuple[str, ...]) -> tuple[tuple[int, str], ...]:
    """List the choices near a word, nearest first; in a tie, same letters first, then same first letter.

    Args:
        word: The word as written.
        choices: The legal words.

    Returns:
        Slips and choice. Case does not count.
    """
    lower = word.lower()
    most = most_slips(lower)
    found = []
    for choice in choices:
        if abs(len(choice) - len(lower)) > most or len(set(lower) - set(choice.lower())) > most:
            continue
        count = slips(lower, choice.lower(), most=most)
        if count <= most:
            found.append((count, choice))
    return tuple(sorted(found, key=lambda pair: (pair[0], *_unlike(lower, pair[1].lower()))))


def _unlike(word: str, choice: str) -> tuple[bool, bool, int, str]:
    exchanged = sorted(word) == sorted(choice)
    return (not exchanged, word[:1] != choice[:1], -len(choice), choice)
