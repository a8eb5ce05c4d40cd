"""Every slip of one letter in a word of a legal line, for the tests of suggestions and their measure."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

from stepper.project.reader import read_project
from stepper.project.reading.wording import EXAMPLES
from tests.project.wording_patterns import patterns

SAMPLES = sorted((Path(__file__).parents[1] / "fixtures").glob("*.yaml"))
LETTERS = "abcdefghijklmnopqrstuvwxyz"
_WORD = re.compile(r"\b\d+(?:st|nd|rd|th)\b|[A-Za-z]\d?[A-Za-z]+(?:'d)?|[A-Za-z]+\d[A-Za-z]+|[A-Za-z]{2,}")
"""Words of two letters and more; stitches such as k2tog too. A plain stitch with its number, k34, is a number."""


def legal_lines() -> dict[str, tuple[int, frozenset[str]]]:
    """Collect legal lines: text to the number of sizes and the names of the garment."""
    lines = {text: (6, frozenset({"trail"})) for text in EXAMPLES}
    names_there = frozenset({"peak", "lace", "MC", "A", "B"})
    # A row behind "#" names a section, and one that ends in a colon is no line by itself.
    rows = [row for pattern in patterns() for row in pattern.work.splitlines()]
    lines |= {row: (3, names_there) for row in rows if not row.endswith(":") and not row.startswith("#")}
    for path in SAMPLES:
        project = read_project(path.read_text(encoding="utf-8")).project
        assert project is not None
        names = frozenset({*project.charts, *project.yarns})
        lines |= {
            line.text: (len(project.sizes), names) for section in project.sections for line in section.lines
        }
    return lines


def words_of(line: str) -> list[tuple[int, str]]:
    """List the words of a line with their places."""
    return [(match.start(), match.group()) for match in _WORD.finditer(line)]


def slips_of(word: str) -> Iterator[str]:
    """Return every word one slip away: a letter too few, too many or wrong, or two exchanged. Digits stay."""
    begin = len(word) - len(word.lstrip("0123456789"))
    for at in range(begin, len(word) + 1):
        for letter in LETTERS:
            yield word[:at] + letter + word[at:]
        if at == len(word):
            return
        if word[at].isalpha():
            yield word[:at] + word[at + 1 :]
            for letter in LETTERS:
                if letter != word[at].lower():
                    yield word[:at] + letter + word[at + 1 :]
        pair = word[at : at + 2]
        if len(pair) == 2 and pair.isalpha() and pair[0].lower() != pair[1].lower():
            yield word[:at] + pair[1] + pair[0] + word[at + 2 :]
