"""What every start would work out anew and alike, kept on the disk between starts.

It lies beside the compiled modules, where Python keeps what it makes of the program's text, or, where nobody
may write, in the user's folder for such things. It is plain values, written as those modules are, for this
Python alone. Whatever is missing, or is not whole, is worked out again, so these files may be deleted at any
time.
"""

from __future__ import annotations

import atexit
import binascii
import marshal
import os
import sys
from collections.abc import Iterator
from contextlib import suppress
from importlib.util import cache_from_source
from pathlib import Path
from typing import Any

from stepper.files import create_private, read_plain

_MOST_BYTES = 32 << 20


def read_kept(name: str) -> Any:
    """Return what was kept under a name; None if nothing was, or not by this Python, or not whole."""
    for place in _places(name):
        with suppress(OSError, ValueError, EOFError, TypeError):
            head, _, kept = read_plain(place, _MOST_BYTES).partition(b"\n")
            if head == _head(kept):
                return marshal.loads(kept)
    return None


def keep(name: str, value: Any) -> None:
    """Keep a value under a name, in the place of what was kept there; where none can be written, nothing is.

    Args:
        name: The name, as part of a file's name.
        value: Numbers, words, bytes, None, and lists, tuples and tables of them.
    """
    kept = marshal.dumps(value)
    for place in _places(name):
        beside = place.with_name(f"{place.name}-{os.getpid()}")
        try:
            place.parent.mkdir(parents=True, exist_ok=True)
            with create_private(beside) as file:
                file.write(_head(kept) + b"\n" + kept)
            beside.replace(place)
        except OSError:
            with suppress(OSError):
                beside.unlink(missing_ok=True)
            continue
        return


class KeptTable:
    """Values found by their keys, which are worked out once for all starts of the program."""

    def __init__(self, name: str, most: int, least_new: int) -> None:
        """Take where the table stands; it is read when a value is first asked.

        Args:
            name: The name under which it is kept.
            most: How many values are kept at most; where those of earlier versions fill that, it begins anew.
            least_new: How many have to be new before all are written again.
        """
        self._name = name
        self._most = most
        self._least_new = least_new
        self._kept: dict[Any, Any] | None = None
        self._new: dict[Any, Any] = {}

    def get(self, key: Any) -> Any:
        """Return the value of a key, or None."""
        if self._kept is None:
            self._kept = read_kept(self._name) or {}
        return self._kept.get(key) or self._new.get(key)

    def add(self, key: Any, value: Any) -> None:
        """Add a value, which is never None nor empty; it is kept when the program ends."""
        if not self._new:
            atexit.register(self.keep)
        self._new[key] = value

    def keep(self, least: int | None = None) -> None:
        """Keep what is new for the next start, beside what others have kept since.

        Args:
            least: How many must be new; as many as the table says where None.
        """
        if len(self._new) < (self._least_new if least is None else least):
            return
        others = read_kept(self._name) or {}
        fits = len(others) + len(self._new) <= self._most
        keep(self._name, {**others, **self._new} if fits else self._new)
        self._new = {}


def _head(kept: bytes) -> bytes:
    """Return the first line of a file: which Python wrote it, and a sum of what it wrote."""
    return f"{binascii.crc32(kept)} {sys.version!r}".encode()


def _places(name: str) -> Iterator[Path]:
    """Yield where something may be kept, the place that counts first."""
    yield Path(cache_from_source(__file__)).with_name(f"{name}.{sys.implementation.cache_tag}.kept")
    from platformdirs import user_cache_path  # asked for only where the first place was no good

    yield user_cache_path("stepper", appauthor=False) / f"{name}.{sys.implementation.cache_tag}.kept"
