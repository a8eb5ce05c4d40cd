"""Files as the program reads and writes them: plain ones of a bounded size, and private ones.

A pipe or a device in a file's place may never answer, or never end, so only plain files are read. What is
private (the journal, the print of a voice, a recording) is readable by its owner alone whatever the process
would grant.
"""

from __future__ import annotations

import errno
import os
import stat
from contextlib import suppress
from pathlib import Path
from typing import BinaryIO, Final

PRIVATE_FILE: Final = 0o600
"""Permissions of a private file: its owner reads and writes it."""
PRIVATE_FOLDER: Final = 0o700
"""Permissions of a private folder."""

AS_IT_IS: Final = getattr(os, "O_BINARY", 0) | getattr(os, "O_CLOEXEC", 0)
"""Opens a file without turning line ends round, and not for child processes."""
NO_LINK: Final = getattr(os, "O_NOFOLLOW", 0)
"""Opens no link, where the system can tell."""


def open_plain(path: Path) -> BinaryIO:
    """Open a file to read it, without waiting for anyone.

    Raises:
        OSError: It cannot be read, or is no plain file; `strerror` is a clause that says so.
    """
    descriptor = os.open(path, os.O_RDONLY | AS_IT_IS | getattr(os, "O_NONBLOCK", 0))
    try:
        mode = os.fstat(descriptor).st_mode
        if stat.S_ISDIR(mode):
            raise OSError(errno.EISDIR, "it is a folder", str(path))
        if not stat.S_ISREG(mode):
            raise OSError(errno.EINVAL, "it is no plain file", str(path))
        return os.fdopen(descriptor, "rb")
    except BaseException:
        os.close(descriptor)
        raise


def read_plain(path: Path, most_bytes: int) -> bytes:
    """Read a whole file.

    Args:
        path: The file.
        most_bytes: Largest size allowed.

    Raises:
        OSError: As `open_plain`; or it is larger.
    """
    with open_plain(path) as file:
        raw = file.read(most_bytes + 1)
    if len(raw) > most_bytes:
        raise OSError(errno.EFBIG, f"it is larger than {most_bytes:,} bytes", str(path))
    return raw


def create_private(path: Path) -> BinaryIO:
    """Create a private file to write it.

    Raises:
        OSError: It cannot be created; above all, because there is one.
    """
    return os.fdopen(os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL | AS_IT_IS, PRIVATE_FILE), "wb")


def write_new_private(path: Path, content: bytes) -> None:
    """Write a private file that is not there yet, and return once it is on the disk.

    Raises:
        OSError: It cannot be created or written; above all, because there is one.
    """
    with create_private(path) as file:
        file.write(content)
        file.flush()
        os.fsync(file.fileno())


def write_private(path: Path, content: bytes) -> None:
    """Write a private file, whole or not at all; an existing one is replaced.

    Raises:
        OSError: It cannot be written; what was there still is.
    """
    beside = path.with_name(f"{path.name}-new")
    beside.unlink(missing_ok=True)
    try:
        with create_private(beside) as file:
            file.write(content)
        beside.replace(path)
    except BaseException:
        with suppress(OSError):
            beside.unlink(missing_ok=True)
        raise


def make_private_folder(path: Path) -> None:
    """Make a private folder and whatever is missing above it; one that is there stays as it is.

    Raises:
        OSError: It cannot be made.
    """
    path.parent.mkdir(parents=True, exist_ok=True)
    with suppress(FileExistsError):
        path.mkdir(mode=PRIVATE_FOLDER)


def keep_private(path: Path) -> None:
    """Take others' permissions off a file or folder of ours; if that cannot be done, it stays as it is."""
    with suppress(OSError):
        found = path.lstat()
        if stat.S_ISLNK(found.st_mode) or (hasattr(os, "getuid") and found.st_uid != os.getuid()):
            return
        if found.st_mode & 0o077:
            path.chmod(stat.S_IMODE(found.st_mode) & 0o700)
