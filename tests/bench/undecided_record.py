"""Note which conditions have a say while tests run: what the copies that `undecided` writes call."""

from __future__ import annotations

import atexit
import json
import operator
import os
from collections import Counter
from collections.abc import Callable
from typing import Any

FILE = "UNDECIDED"
"""Environment variable: where the notes are written, a file for each process."""
SEEN: Counter[tuple[str, str]] = Counter()
COMPARED: dict[str, Callable[[Any, Any], Any]] = {
    "<": operator.lt, "<=": operator.le, ">": operator.gt, ">=": operator.ge,
}  # fmt: skip


def chain(key: str, conj: bool, pure: bool, *parts: Callable[[], object]) -> object:
    """Evaluate `and` or `or`; note a part without which the outcome would be another.

    Args:
        key: Where it stands.
        conj: Whether it is `and`.
        pure: Whether the parts may be evaluated once more: only then the later ones are asked what they would say.
        parts: Each part, to be called.
    """
    SEEN[key, "all"] += 1
    value: object = None
    for at, part in enumerate(parts):
        value = part()
        if bool(value) != conj:
            if not SEEN[key, str(at)] and not (pure and _said_anyway(conj, parts[at + 1 :])):
                SEEN[key, str(at)] += 1
            break
    return value


def _said_anyway(conj: bool, rest: tuple[Callable[[], object], ...]) -> bool:
    try:
        return any(bool(part()) != conj for part in rest)
    except Exception:  # noqa: BLE001 # the part before guards it
        return False


def compare(key: str, sign: str, left: object, right: object) -> bool:
    """Compare; note whether both were ever the same."""
    SEEN[key, "all"] += 1
    SEEN[key, "same"] += bool(left == right)
    return bool(COMPARED[sign](left, right))


def branch(key: str, value: object) -> object:
    """Note which way it goes."""
    SEEN[key, str(bool(value))] += 1
    return value


def _write() -> None:
    if os.environ.get(FILE):
        with open(f"{os.environ[FILE]}.{os.getpid()}", "w", encoding="utf-8") as file:
            json.dump([[*key, count] for key, count in SEEN.items()], file)


atexit.register(_write)
