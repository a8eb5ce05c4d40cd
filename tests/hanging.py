"""Expressions that hang on words said again and again.

An expression in which a repeated part can match the same words in two ways tries all of them before it gives up: the time
doubles with each word (J. Friedl, Mastering Regular Expressions, chapter on crafting an efficient expression; from memory).
"""

from __future__ import annotations

import re
import signal
from collections.abc import Callable, Iterable, Iterator

import pytest

_REPEATED = re.compile(r"\)(?:[*+]|\{\d+,)")
"""A group that may follow itself: nothing else can become slow."""
_MOST_S = 0.5
"""Of the processor. The slowest takes some milliseconds; one that hangs takes years."""

needs_clock = pytest.mark.skipif(not hasattr(signal, "setitimer"), reason="the system has no clock for a process")


def may_hang(expression: str) -> bool:
    """Return whether an expression has a group that may follow itself."""
    return _REPEATED.search(expression) is not None


NUMBERS_AGAIN = (*(f"{number * 30}~" for number in ("10 ", "10, ", "10-", "1. ", "(10) ", "10 sts ")), f"{'10 (12, 14) ' * 15}~")
"""Lines that give numbers again and again, as a list of sizes copied badly does, and end in what nothing reads."""


def words_again(expression: str) -> Iterator[str]:
    """Yield lines that say each word of an expression again and again, and end in what nothing reads."""
    for word in sorted(set(re.findall(r"(?<![\\\w<])[a-z]{2,}(?=[|)\\])", expression))):
        yield " ".join([word] * 30) + " ~"


def hung_on(asks: Iterable[Callable[[str], object]], line: str) -> bool:
    """Return whether one of several questions about a line is not answered in time."""

    def stop(*_: object) -> None:
        raise TimeoutError

    before = signal.signal(signal.SIGVTALRM, stop)
    signal.setitimer(signal.ITIMER_VIRTUAL, _MOST_S)
    try:
        for ask in asks:
            ask(line)
    except TimeoutError:
        return True
    finally:
        signal.setitimer(signal.ITIMER_VIRTUAL, 0)
        signal.signal(signal.SIGVTALRM, before)
    return False
