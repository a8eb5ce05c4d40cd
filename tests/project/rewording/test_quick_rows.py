"""No row of the tables of wordings hangs on words said again and again."""

from __future__ import annotations

from collections.abc import Iterator

from stepper.project.rewording.reword import SECOND_LOOK, SPLIT_HEADS, SPOKEN, SYNONYMS
from stepper.project.rewording.synonym import Synonym
from tests.hanging import NUMBERS_AGAIN, hung_on, may_hang, needs_clock, words_again

ROWS = [row for row in (*SYNONYMS, *SECOND_LOOK, *SPOKEN, *SPLIT_HEADS) if may_hang(row.expression)]


def _spoken_again(row: Synonym) -> Iterator[str]:
    """Yield lines that say words of a row's expression or of its example again and again, and end in what nothing reads."""
    again = list(words_again(row.expression))
    yield from (*again, *NUMBERS_AGAIN)
    said = row.example.split()
    yield from (" ".join([*said[:begin], words]) for begin in (1, 2, 3) for words in again)
    for size in (1, 2, 3):
        for begin in range(len(said) - size + 1):
            yield " ".join([*said[:begin], *said[begin : begin + size] * (60 // size), "~"])


@needs_clock
def test_no_row_hangs_on_words_said_again_and_again() -> None:
    """A word said thirty times takes no row longer than a moment."""
    assert len(ROWS) > 300
    hung = [(row.example, line) for row in ROWS for line in _spoken_again(row) if hung_on([row.pattern.search], line)]
    assert hung == []
