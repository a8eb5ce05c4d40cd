"""Turn what the disk and SQLite refuse into a sentence for the knitter.

What is left alone is a fault of ours (a broken rule of the schema, a misused connection) and stays as it is.
"""

from __future__ import annotations

import errno
import sqlite3
from collections.abc import Generator, Mapping
from contextlib import contextmanager
from pathlib import Path
from types import MappingProxyType
from typing import Final

from stepper.errors import SurroundingsError

_FULL: Final = (
    "The disk is full, so {path} cannot be written. Make room and say it again; what was kept is safe."
)
_READ_ONLY: Final = (
    "{path} cannot be written: the file, its folder or the drive is read-only. "
    "Allow writing there, or move the project to a folder of your own."
)
_UNREACHABLE: Final = "{path} cannot be opened: the file or its folder is missing, or may not be used by you."
_IN_USE: Final = "{path} is in use by another program. Close that program and try again."
_DAMAGED: Final = (
    "{path} is damaged and was left as it is. Keep a copy of it, and put back the last good one you have."
)
_NOT_A_JOURNAL: Final = (
    "{path} is not a journal of this program and was left as it is. Move it elsewhere or rename the project."
)
_DISK: Final = (
    "The disk does not read or write {path} as it should ({detail}). What was kept before is still there."
)

_BY_SQLITE_CODE: Final[Mapping[int, str]] = MappingProxyType(
    {
        sqlite3.SQLITE_FULL: _FULL,
        sqlite3.SQLITE_READONLY: _READ_ONLY,
        sqlite3.SQLITE_PERM: _READ_ONLY,
        sqlite3.SQLITE_CANTOPEN: _UNREACHABLE,
        sqlite3.SQLITE_BUSY: _IN_USE,
        sqlite3.SQLITE_LOCKED: _IN_USE,
        sqlite3.SQLITE_PROTOCOL: _IN_USE,
        sqlite3.SQLITE_CORRUPT: _DAMAGED,
        sqlite3.SQLITE_NOTADB: _NOT_A_JOURNAL,
        sqlite3.SQLITE_IOERR: _DISK,
        sqlite3.SQLITE_NOMEM: _DISK,
    }
)
_BY_ERRNO: Final[Mapping[int, str]] = MappingProxyType(
    {
        errno.ENOSPC: _FULL,
        errno.EDQUOT: _FULL,
        errno.EROFS: _READ_ONLY,
        errno.EACCES: _READ_ONLY,
        errno.EPERM: _READ_ONLY,
        errno.ENOENT: _UNREACHABLE,
        errno.ENOTDIR: _UNREACHABLE,
    }
)


@contextmanager
def explained(path: Path) -> Generator[None]:
    """Let what the surroundings refuse in this block come out as a sentence about `path`.

    Args:
        path: The journal the work is about.

    Raises:
        SurroundingsError: The disk or another program stands in the way.
    """
    try:
        yield
    except sqlite3.Error as error:
        sentence = _sentence(path, error)
        if sentence is None:
            raise
        raise SurroundingsError(sentence) from error
    except OSError as error:
        template = _BY_ERRNO.get(error.errno or 0, _DISK)
        raise SurroundingsError(template.format(path=path, detail=error.strerror)) from error


def not_a_journal(path: Path) -> SurroundingsError:
    """Return the error for a file that has a journal's name and is something else."""
    return SurroundingsError(_NOT_A_JOURNAL.format(path=path))


def damaged(path: Path) -> SurroundingsError:
    """Return the error for a journal that is no longer whole."""
    return SurroundingsError(_DAMAGED.format(path=path))


def _sentence(path: Path, error: sqlite3.Error) -> str | None:
    """Return the sentence for an error from SQLite, or None where the fault is ours."""
    code = getattr(error, "sqlite_errorcode", None)  # absent where Python itself complains of misuse
    if code is None:
        return None
    # The low byte is the kind; the rest says more than a knitter wants to know.
    template = _BY_SQLITE_CODE.get(code & 0xFF)
    return None if template is None else template.format(path=path, detail=error.sqlite_errorname)
