"""No row of the tables of wordings hangs on words said again and again.

An expression in which a repeated part can match the same words in two ways tries all of them before it gives up: the time
doubles with each word (J. Friedl, Mastering Regular Expressions, chapter on crafting an efficient expression; from memory).
"""

from __future__ import annotations

import re
import signal
from collections.abc import Iterator

import pytest

from stepper.project.rewording.reword import SPLIT_HEADS, SPOKEN, SYNONYMS
from stepper.project.rewording.synonym import Synonym

_REPEATED = re.compile(r"\)(?:[*+]|\{\d+,)")
"""A group that may follow itself: nothing else can become slow."""
_MOST_S = 0.5
"""Of the processor. The slowest takes some milliseconds; one that hangs takes years."""
ROWS = [row for row in (*SYNONYMS, *SPOKEN, *SPLIT_HEADS) if _REPEATED.search(row.expression)]

pytestmark = pytest.mark.skipif(not hasattr(signal, "setitimer"), reason="the system has no clock for a process")


def _spoken_again(row: Synonym) -> Iterator[str]:
    """Yield lines that say words of a row's expression or of its example again and again, and end in what nothing reads."""
    for word in sorted(set(re.findall(r"(?<![\\\w<])[a-z]{2,}(?=[|)\\])", row.expression))):
        yield " ".join([word] * 30) + " ~"
    said = row.example.split()
    for size in (1, 2, 3):
        for begin in range(len(said) - size + 1):
            yield " ".join([*said[:begin], *said[begin : begin + size] * (60 // size), "~"])


def _has_hung(row: Synonym, line: str) -> bool:
    def stop(*_: object) -> None:
        raise TimeoutError

    before = signal.signal(signal.SIGVTALRM, stop)
    signal.setitimer(signal.ITIMER_VIRTUAL, _MOST_S)
    try:
        row.pattern.search(line)
    except TimeoutError:
        return True
    finally:
        signal.setitimer(signal.ITIMER_VIRTUAL, 0)
        signal.signal(signal.SIGVTALRM, before)
    return False


def test_no_row_hangs_on_words_said_again_and_again() -> None:
    """A word said thirty times takes no row longer than a moment."""
    assert len(ROWS) > 300
    assert [(row.example, line[:60]) for row in ROWS for line in _spoken_again(row) if _has_hung(row, line)] == []
