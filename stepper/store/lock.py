"""Let only one session at a time knit a garment.

The lock is the operating system's own, on an open file, so it goes the moment its process does, however that
ended; the file's content only says who holds it. A file left behind by a killed session therefore locks
nothing.

Someone may delete the file under a running session. The session's hold on the journal itself
(`database.hold_write_right`) then keeps a second session out. Anything but a plain file, above all a link, is
never written to.
"""

from __future__ import annotations

import errno
import json
import os
import stat
import sys
import weakref
from contextlib import ExitStack, suppress
from datetime import datetime
from pathlib import Path
from typing import Final

from stepper.errors import SurroundingsError
from stepper.files import NO_LINK
from stepper.store.failures import explain_failures
from stepper.store.location import lock_path

if sys.platform == "win32":
    import msvcrt

    # Windows denies others even reading the locked bytes: lock one far beyond the note they are to read.
    _LOCKED_BYTE: Final = 1 << 20

    def _try_lock(descriptor: int) -> bool:
        os.lseek(descriptor, _LOCKED_BYTE, os.SEEK_SET)
        try:
            msvcrt.locking(descriptor, msvcrt.LK_NBLCK, 1)
        except PermissionError:
            return False
        finally:
            os.lseek(descriptor, 0, os.SEEK_SET)
        return True
else:
    import fcntl

    def _try_lock(descriptor: int) -> bool:
        try:
            fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            return False
        return True


_NOTE_BYTES: Final = 500


class GarmentLock:
    """The right to write one garment's journal; held from construction to `release`.

    Args:
        journal: The journal to lock.

    Raises:
        SurroundingsError: Another session holds it, or the folder allows no lock.
    """

    def __init__(self, journal: Path) -> None:
        self._path = lock_path(journal)
        self._descriptor: int | None = None
        with explain_failures(journal):
            descriptor = _open_locked(self._path)
            if descriptor is None:
                raise SurroundingsError(_refusal(journal, self._path))
        self._descriptor = descriptor
        now = datetime.now().astimezone()
        note = json.dumps({"process": os.getpid(), "since": now.isoformat(timespec="seconds")})
        with suppress(OSError):  # the note is a courtesy; the journal reports a full disk
            os.ftruncate(descriptor, os.write(descriptor, note.encode()))
        if hasattr(os, "register_at_fork"):
            # A forked child shares the open file, and would keep the lock alive beyond a killed session.
            own = weakref.ref(self)
            os.register_at_fork(after_in_child=lambda: _forget(own))

    def release(self) -> None:
        """Give the right back. A second call does nothing."""
        descriptor, self._descriptor = self._descriptor, None
        if descriptor is None:
            return
        # Windows deletes no open file; elsewhere it must go while the lock is still held, or another
        # session's file would be deleted. A session that opened it in between notices in `_open_locked`.
        own = _is_still(self._path, descriptor)
        if sys.platform == "win32":
            os.close(descriptor)
            _delete(self._path)
        else:
            if own:
                _delete(self._path)
            os.close(descriptor)

    def _close_copy(self) -> None:
        """Close a forked child's copy of the open file; the parent keeps the lock."""
        if self._descriptor is not None:
            os.close(self._descriptor)
            self._descriptor = None


def _forget(own: weakref.ref[GarmentLock]) -> None:
    lock = own()
    if lock is not None:
        lock._close_copy()


def _open_locked(path: Path) -> int | None:
    """Return a descriptor of the locked file at `path`, or None if another session holds it."""
    while True:
        if path.is_symlink():  # for systems without O_NOFOLLOW
            raise _no_lock(path)
        try:
            descriptor = os.open(path, os.O_RDWR | os.O_CREAT | NO_LINK, 0o644)
        except OSError as error:
            if error.errno == errno.ELOOP:
                raise _no_lock(path) from error
            raise
        with ExitStack() as if_not_kept:
            if_not_kept.callback(os.close, descriptor)
            found = os.fstat(descriptor)
            if not stat.S_ISREG(found.st_mode) or found.st_nlink > 1:
                raise _no_lock(path)
            if not _try_lock(descriptor):
                return None
            if _is_still(path, descriptor):
                if_not_kept.pop_all()
                return descriptor
        # The holder deleted the file between our opening and our locking it: what we locked has no name.


def _no_lock(path: Path) -> SurroundingsError:
    """Return the error for something that merely bears the lock's name."""
    return SurroundingsError(
        f"{path} is a link or no plain file, so it cannot be the lock of the journal and was left as it is: "
        "delete it and try again."
    )


def _is_still(path: Path, descriptor: int) -> bool:
    """Return whether the open file is the one that bears the name now."""
    try:
        named = path.lstat()
    except OSError:
        return False
    return os.path.samestat(named, os.fstat(descriptor))


def _delete(path: Path) -> None:
    """Delete the file if possible; left behind, it is harmless but untidy."""
    with suppress(OSError):
        path.unlink()


def _refusal(journal: Path, path: Path) -> str:
    """Return the sentence that says who holds the lock, if that can be read."""
    try:
        note = json.loads(path.read_bytes()[:_NOTE_BYTES])
        since = datetime.fromisoformat(note["since"])
        holder = f" (process {int(note['process'])}, since {since:%H:%M} on {since.day} {since:%B %Y})"
    except (OSError, ValueError, KeyError, TypeError):
        holder = ""  # being written at this moment, or not readable
    return (
        f"{journal.stem} is already being knitted in another session{holder}. "
        "Go on there, or end that session first."
    )
