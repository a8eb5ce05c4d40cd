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
from collections.abc import Iterator, Sequence
from contextlib import suppress
from importlib.util import cache_from_source
from pathlib import Path
from typing import Any

from stepper.files import create_private, open_plain, read_plain

_MOST_BYTES = 32 << 20
_MOST_OF_A_HEAD = 1024
_Lies = tuple[int, int, int]
"""Where a value lies: its first byte, how many there are, and their sum."""


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
    _write(name, [_head(kept), b"\n", kept])


def _write(name: str, pieces: Sequence[bytes]) -> None:
    """Write a file in the place of what was kept under a name, where one can be written."""
    for place in _places(name):
        beside = place.with_name(f"{place.name}-{os.getpid()}")
        try:
            place.parent.mkdir(parents=True, exist_ok=True)
            with create_private(beside) as file:
                file.writelines(pieces)
            beside.replace(place)
        except OSError:
            with suppress(OSError):
                beside.unlink(missing_ok=True)
            continue
        return


class KeptTable:
    """Values found by their keys, which are worked out once for all starts of the program.

    All that an evening could ask takes ten megabytes, and four times that as values. So none is ever
    taken up whole: where each value lies is read at the first question, and a value when it is asked for.
    """

    def __init__(self, name: str, most: int, least_new: int) -> None:
        """Take where the table stands; nothing is read yet.

        Args:
            name: The name under which it is kept.
            most: How many values are kept at most; where those of earlier versions fill that, it begins anew.
            least_new: How many have to be new before all are written again.
        """
        self._name = name
        self._most = most
        self._least_new = least_new
        self._place: Path | None = None
        self._lies: dict[int, _Lies] | None = None
        self._new: dict[Any, Any] = {}

    def get(self, key: Any) -> Any:
        """Return the value of a key, or None."""
        if self._lies is None:
            self._place, self._lies = self._find()
        if key in self._new:
            return self._new[key]
        lies = self._lies.get(_sum_of(key))
        if lies is None or self._place is None:
            return None
        with suppress(OSError, ValueError, EOFError, TypeError), open_plain(self._place) as file:
            file.seek(lies[0])
            kept = file.read(lies[1])
            # The sums of two keys may be the same, and another start may have written the table anew.
            if binascii.crc32(kept) == lies[2]:
                of, value = marshal.loads(kept)
                return value if of == key else None
        return None

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
        values = self._others()
        if len(values) + len(self._new) > self._most:
            values = {}
        values |= {_sum_of(key): marshal.dumps((key, value)) for key, value in self._new.items()}
        lies, end = dict[int, _Lies](), 0
        for number, kept in values.items():
            lies[number] = end, len(kept), binascii.crc32(kept)
            end += len(kept)
        where = marshal.dumps(lies)
        _write(self._name, [_head(where), b" %d\n" % len(where), where, *values.values()])
        self._new = {}
        self._place = self._lies = None

    def _find(self) -> tuple[Path | None, dict[int, _Lies]]:
        """Find the file of the table, and where in it the value of each key lies, by the sum of the key."""
        for place in _places(self._name):
            with suppress(OSError, ValueError, EOFError, TypeError), open_plain(place) as file:
                head, _, length = file.readline(_MOST_OF_A_HEAD).rpartition(b" ")
                where = file.read(min(int(length), _MOST_BYTES))
                if head == _head(where):
                    begin, lies = file.tell(), marshal.loads(where)
                    return place, {number: (begin + at, *rest) for number, (at, *rest) in lies.items()}
        return None, {}

    def _others(self) -> dict[int, bytes]:
        """Return the values that are kept now, as they are written, by the sums of their keys."""
        place, lies = self._find()
        with suppress(OSError):
            raw = read_plain(place, _MOST_BYTES) if place is not None else b""
            kept = {number: (raw[at : at + size], all_) for number, (at, size, all_) in lies.items()}
            return {number: value for number, (value, all_) in kept.items() if binascii.crc32(value) == all_}
        return {}


def _sum_of(key: Any) -> int:
    """Return by which number a key is looked up."""
    return binascii.crc32(repr(key).encode(errors="surrogatepass"))


def _head(kept: bytes) -> bytes:
    """Return the first line of a file: which Python wrote it, and a sum of what it wrote."""
    return f"{binascii.crc32(kept)} {sys.version!r}".encode()


def _places(name: str) -> Iterator[Path]:
    """Yield where something may be kept, the place that counts first."""
    yield Path(cache_from_source(__file__)).with_name(f"{name}.{sys.implementation.cache_tag}.kept")
    from platformdirs import user_cache_path  # asked for only where the first place was no good

    yield user_cache_path("stepper", appauthor=False) / f"{name}.{sys.implementation.cache_tag}.kept"
