"""Turn what the disk and SQLite refuse into a sentence for the knitter.

Anything else is a bug of ours (a broken rule of the schema, a misused connection) and passes through
unchanged.
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
    "{path} is damaged and was left as it is: nothing in it can be read any more, so put back the last good "
    "copy you have of it."
)
_NOT_A_JOURNAL: Final = (
    "{path} is not a journal of this program and was left as it is: move it elsewhere or rename the project."
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
_BY_ERRNO: Final[Mapping[int | None, str]] = MappingProxyType(
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


class NotAJournalError(SurroundingsError):
    """A file has a journal's name but is something else."""


class DamagedError(SurroundingsError):
    """A journal is no longer whole."""


_KINDS: Final[Mapping[int, type[SurroundingsError]]] = MappingProxyType(
    {sqlite3.SQLITE_CORRUPT: DamagedError, sqlite3.SQLITE_NOTADB: NotAJournalError}
)


@contextmanager
def explain_failures(path: Path) -> Generator[None]:
    """Turn whatever the surroundings refuse in this block into a sentence about `path`.

    Args:
        path: The journal the work is about.

    Raises:
        SurroundingsError: The disk or another program stands in the way.
    """
    try:
        yield
    except sqlite3.Error as error:
        # It has no code where Python itself complains of misuse. The low byte is the kind; the rest says more
        # than a knitter wants to know.
        code = getattr(error, "sqlite_errorcode", sqlite3.SQLITE_MISUSE) & 0xFF
        if code not in _BY_SQLITE_CODE:
            raise
        kind = _KINDS.get(code, SurroundingsError)
        raise kind(_BY_SQLITE_CODE[code].format(path=path, detail=error.sqlite_errorname)) from error
    except OSError as error:
        template = _BY_ERRNO.get(error.errno, _DISK)
        raise SurroundingsError(template.format(path=path, detail=error.strerror)) from error


@contextmanager
def treat_as_damage(path: Path) -> Generator[None]:
    """Report whatever a journal's content causes in this block as damage to it.

    For looking at a file to which anything may have happened: there, a missing table, a text that is not a
    text or a number out of all bounds is not a bug of ours.

    Args:
        path: The journal looked at.

    Raises:
        SurroundingsError: It is damaged, or another program stands in the way.
    """
    try:
        with explain_failures(path):
            yield
    except (NotAJournalError, sqlite3.Error, ValueError, TypeError, OverflowError, MemoryError) as error:
        if isinstance(error, NotAJournalError) and error.__cause__ is None:
            raise  # identified by what it is, not by what SQLite cannot do with it
        raise damaged_error(path) from error


def not_a_journal_error(path: Path) -> NotAJournalError:
    """Return the error for a file that has a journal's name but is something else."""
    return NotAJournalError(_NOT_A_JOURNAL.format(path=path))


def in_use_error(path: Path) -> SurroundingsError:
    """Return the error for a journal that another program holds."""
    return SurroundingsError(_IN_USE.format(path=path))


def damaged_error(path: Path) -> DamagedError:
    """Return the error for a journal that is no longer whole."""
    return DamagedError(_DAMAGED.format(path=path))
