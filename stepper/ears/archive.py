"""Unpack a model's archive, trusting nothing it claims."""

from __future__ import annotations

import lzma
import stat
import struct
import zipfile
import zlib
from collections.abc import Callable
from pathlib import Path, PurePosixPath, PureWindowsPath
from typing import Final

from stepper.errors import SurroundingsError

MOST_FILES: Final = 5_000
MOST_BYTES: Final = 8 * 2**30
"""Most that is unpacked: more than the largest model of any language."""
MOST_TIMES: Final = 100
"""A model unpacks to about twice its archive; what grows a hundredfold is made to fill the disk."""
_UNREADABLE: Final = (
    *(zipfile.BadZipFile, zlib.error, lzma.LZMAError, struct.error, EOFError),
    *(NotImplementedError, RuntimeError, ValueError, LookupError, OverflowError, MemoryError),
)
"""What the standard library raises over an archive that it cannot read: damaged, encrypted, packed in a way
it does not know or that claims to need more memory than there is, or with a name that is no text."""
_LOCKED: Final = 0x1
# The bit of an entry that says it is encrypted (the ZIP specification, 4.4.4).
_PIECE_BYTES: Final = 1 << 20


def unpack(archive: Path, folder: Path, progress: Callable[[int, int], None] = lambda done, of: None) -> None:
    """Unpack a zip archive into an empty folder.

    Args:
        archive: The archive.
        folder: Where to unpack it; it must exist. Whatever is in it after a failure is to be thrown away.
        progress: Called with the bytes unpacked so far, and of how many.

    Raises:
        SurroundingsError: It is no zip archive, it is damaged, or it is malicious.
    """
    try:
        with zipfile.ZipFile(archive) as opened:
            files = opened.infolist()
            _check(archive, files)
            total = sum(file.file_size for file in files)
            done = 0
            for file in files:
                target = folder / PurePosixPath(file.filename)
                if file.is_dir():
                    target.mkdir(parents=True, exist_ok=True)
                    continue
                target.parent.mkdir(parents=True, exist_ok=True)
                if file.flag_bits & _LOCKED:
                    raise SurroundingsError(f"{archive} is locked with a password.")
                with opened.open(file) as packed, target.open("xb") as plain:
                    while piece := packed.read(_PIECE_BYTES):
                        plain.write(piece)
                        done += len(piece)
                        _small_enough(archive, done)
                        progress(done, total)
    except NotImplementedError as error:
        raise SurroundingsError(
            f"{archive} is packed in a way that I cannot unpack: unpack it yourself and give the folder."
        ) from error
    except _UNREADABLE as error:
        why = str(error).rstrip(".") or "it cannot be unpacked"
        raise SurroundingsError(f"{archive} is no zip archive, or it is damaged: {why}.") from error
    except OSError as error:
        raise SurroundingsError(f"{archive} cannot be unpacked: {error.strerror or error}.") from error


def _check(archive: Path, files: list[zipfile.ZipInfo]) -> None:
    if len(files) > MOST_FILES:
        raise SurroundingsError(f"{archive} holds {len(files):,} files; no model has so many.")
    for file in files:
        if not _stays_inside(file.filename):
            raise SurroundingsError(f'{archive} holds "{file.filename}", which lies outside of it.')
        if stat.S_ISLNK(file.external_attr >> 16):
            raise SurroundingsError(f'{archive} holds a link, "{file.filename}"; a model has none.')
    size = sum(file.file_size for file in files)
    _small_enough(archive, size)
    if size > MOST_TIMES * max(1, archive.stat().st_size):
        raise SurroundingsError(f"{archive} would grow to {size:,} bytes; it is no model.")


def _small_enough(archive: Path, size: int) -> None:
    if size > MOST_BYTES:
        raise SurroundingsError(f"{archive} unpacks to more than {MOST_BYTES:,} bytes; it is no model.")


def _stays_inside(name: str) -> bool:
    """Return whether a name means a place inside the folder, on every system."""
    windows = PureWindowsPath(name)
    return (
        bool(name)
        and not windows.drive
        and not windows.root
        and not PurePosixPath(name).is_absolute()
        and ".." not in windows.parts
    )
