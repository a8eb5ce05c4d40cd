"""Project files and pages spoilt at random, as slips of the pen and of a copied page spoil them. Seeded.

The seeds are the fixtures, the invented garments as typed, and the entries of the corpus made into files and pages.
"""

from __future__ import annotations

import random
import re
from functools import lru_cache
from pathlib import Path

from tests.project.corpus_entries import entries
from tests.project.corpus_judge import text_of

TESTS = Path(__file__).parents[1]
HUGE = ("0", "1", "-3", "007", "9999", "10000", "123456789012345678901234567890", "1e9", "½", "3/0", "²", "٣", "2.5.1", "1/2/3")
ODD = ("\u00a0", "\u200b", "\u202e", "\u0301", "\ufeff", "𝟜", "ﬁ", "İ", "ß", "…", "•", "\x85", "\u2028", "\x0b", "🧶", "“", "’", "×", "\ud7ff", "٭")
BRACKETS = "()[]{}*<>\"'"
JOINTS = (", ", ". ", "; ", ": ", " and ", " then ", " until ", " every ", " at the same time ", " rep from * ", " to last ", " (", ") ", " - ", "\n      ", "\n\n")


@lru_cache(maxsize=1)
def seeds() -> tuple[str, ...]:
    """Return the texts that are spoilt: files, and pages marked with a first row `PASTE`."""
    files = [path.read_text(encoding="utf-8") for path in sorted((TESTS / "fixtures").glob("*.yaml"))]
    files += [path.read_text(encoding="utf-8") for path in sorted((TESTS / "project/corpus/garments").glob("*.yaml"))]
    pages = [path.read_text(encoding="utf-8") for path in sorted((TESTS / "project/printed").glob("*.txt"))]
    for entry in entries().values():
        lines = [*entry.before, *entry.printed, *entry.after]
        files.append(text_of(lines, entry.sizes, entry.units, entry.own)[0])
        if entry.kind == 36:
            pages.append("\n".join(re.sub(r"^== ", "", line) for line in lines))
    return (*files, *(f"PASTE\n{page}" for page in pages))


def spoilt(text: str, chance: random.Random) -> str:
    """Return a text with one to six slips in it."""
    for _ in range(chance.choice((1, 1, 1, 2, 2, 3, 6))):
        text = chance.choice(_SLIPS)(text, chance)
    return text[:60_000]


def _words(text: str) -> list[tuple[int, int]]:
    return [match.span() for match in re.finditer(r"\S+", text)] or [(0, 0)]


def _dropped(text: str, chance: random.Random) -> str:
    start, end = chance.choice(_words(text))
    return text[:start] + text[end:]


def _doubled(text: str, chance: random.Random) -> str:
    start, end = chance.choice(_words(text))
    times = chance.choice((1, 1, 2, 40))
    return text[:end] + f" {text[start:end]}" * times + text[end:]


def _swapped(text: str, chance: random.Random) -> str:
    words = _words(text)
    at = chance.randrange(max(1, len(words) - 1))
    if at + 1 >= len(words):
        return text
    (a, b), (c, d) = words[at], words[at + 1]
    return text[:a] + text[c:d] + text[b:c] + text[a:b] + text[d:]


def _numbered(text: str, chance: random.Random) -> str:
    numbers = list(re.finditer(r"\d+", text))
    if not numbers:
        return text
    match = chance.choice(numbers)
    return text[: match.start()] + chance.choice(HUGE) + text[match.end() :]


def _bracketed(text: str, chance: random.Random) -> str:
    at = chance.randrange(len(text) + 1)
    return text[:at] + chance.choice(BRACKETS) * chance.choice((1, 1, 1, 2, 30)) + text[at:]


def _odd(text: str, chance: random.Random) -> str:
    at = chance.randrange(len(text) + 1)
    return text[:at] + chance.choice(ODD) + text[at + chance.randrange(2) :]


def _joined(text: str, chance: random.Random) -> str:
    _, end = chance.choice(_words(text))
    return text[:end] + chance.choice(JOINTS) + text[end:].lstrip(" ")


def _rows(text: str, chance: random.Random) -> str:
    rows = text.split("\n")
    at, to = chance.randrange(len(rows)), chance.randrange(len(rows))
    kind = chance.randrange(4)
    if kind == 0:
        del rows[at]
    elif kind == 1:
        rows.insert(to, rows[at])
    elif kind == 2:
        rows[at], rows[to] = rows[to], rows[at]
    else:
        rows[at : at + 2] = [" ".join(rows[at : at + 2])]
    return "\n".join(rows)


def _crossed(text: str, chance: random.Random) -> str:
    """Put rows of another text in."""
    other = chance.choice(seeds()).split("\n")
    at = chance.randrange(len(other))
    rows = text.split("\n")
    to = chance.randrange(len(rows) + 1)
    return "\n".join(rows[:to] + other[at : at + chance.randrange(1, 8)] + rows[to:])


def _long(text: str, chance: random.Random) -> str:
    rows = text.split("\n")
    at = chance.randrange(len(rows))
    rows[at] = rows[at] + " " + (rows[at].strip() + chance.choice((", ", " ", "; "))) * chance.choice((3, 20, 80))
    return "\n".join(rows)


def _cased(text: str, chance: random.Random) -> str:
    start, end = chance.choice(_words(text))
    return text[:start] + text[start:end].swapcase() + text[end:]


_SLIPS = (_dropped, _doubled, _swapped, _numbered, _bracketed, _odd, _joined, _rows, _crossed, _long, _cased)
