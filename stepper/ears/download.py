"""Fetch a file from an address, resuming where an earlier try was cut off."""

from __future__ import annotations

import hashlib
import shutil
import urllib.error
import urllib.parse
import urllib.request
from collections.abc import Callable
from http.client import HTTPException
from pathlib import Path
from typing import Any, Final

from stepper.errors import SurroundingsError

MOST_BYTES: Final = 4 << 30
"""Most that is fetched: more than the archive of the largest model of any language. Unit: bytes."""
_PIECE_BYTES: Final = 1 << 18
_TIMEOUT_S: Final = 30.0
_PARTIAL: Final = 206
_NOT_SATISFIABLE: Final = 416


def is_address(text: str) -> bool:
    """Return whether a text is an address and not a path; it may be one that cannot be read."""
    return text.lower().startswith(("http:", "https:"))


def is_open(address: str) -> bool:
    """Return whether anyone on the way can exchange what is fetched from an address."""
    return address.lower().startswith("http:")


def name_at(address: str) -> str:
    """Return the name of the file at an address; empty if it has none.

    Raises:
        SurroundingsError: It is no address.
    """
    try:
        parts = urllib.parse.urlsplit(address)
        named = bool(parts.hostname) and (parts.port is None or parts.port > 0)
    except ValueError:
        named = False
    if not named:
        raise SurroundingsError(f"{address} is no address that can be fetched.")
    return Path(urllib.parse.unquote(parts.path)).name


def fetch(address: str, target: Path, progress: Callable[[int, int], None] = lambda done, of: None) -> None:
    """Fetch a file.

    What has arrived is kept beside the target under `.part`, with the server's mark of the file; the next
    call resumes there if the server still has the same file, and starts over if not.

    Args:
        address: Where it is; http or https.
        target: Where it goes. It appears only when it is whole.
        progress: Called with the bytes received so far, and of how many; 0 if the server does not say.

    Raises:
        SurroundingsError: It cannot be fetched, the connection was cut, or it is larger than `MOST_BYTES` or
            than the room on the disk.
    """
    name_at(address)
    part, mark = target.with_name(target.name + ".part"), target.with_name(target.name + ".mark")
    state = mark.read_text("latin-1") if part.exists() and mark.exists() else ""
    have = part.stat().st_size if state else 0
    headers = {"Range": f"bytes={have}-", "If-Range": state} if have else {}
    request = urllib.request.Request(address, headers=headers)
    try:
        with urllib.request.urlopen(request, timeout=_TIMEOUT_S) as answer:
            if answer.status != _PARTIAL:
                have = 0
            expected = have + int(answer.headers.get("Content-Length") or 0)
            _small_enough(address, expected, part)
            mark.write_text(_mark_of(answer), "latin-1")
            _take(answer, address, part, have, expected, progress)
    except urllib.error.HTTPError as error:
        if error.code == _NOT_SATISFIABLE:  # what is here is longer than what is there
            part.unlink(missing_ok=True)
        raise SurroundingsError(f"{address} cannot be fetched: {error.code} {error.reason}.") from error
    except (OSError, HTTPException, ValueError) as error:
        reason = getattr(error, "reason", error)
        raise SurroundingsError(
            f"{address} cannot be fetched: {reason}. What came in is kept; the same command goes on there."
        ) from error
    part.replace(target)
    mark.unlink(missing_ok=True)


def checksum(path: Path) -> str:
    """Return the SHA-256 of a file in hexadecimal."""
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


def _take(
    answer: Any, address: str, part: Path, have: int, expected: int, progress: Callable[[int, int], None]
) -> None:
    with part.open("ab" if have else "wb") as file:
        while piece := answer.read(_PIECE_BYTES):
            have += len(piece)
            if have > MOST_BYTES:
                part.unlink(missing_ok=True)
                raise _too_large(address)
            file.write(piece)
            progress(have, expected)
    if expected and have < expected:
        raise OSError(f"the connection was cut after {have:,} of {expected:,} bytes")


def _small_enough(address: str, expected: int, part: Path) -> None:
    """Refuse what the server itself says is too large, before any of it comes in."""
    if expected > MOST_BYTES:
        raise _too_large(address)
    room = shutil.disk_usage(part.parent).free + (part.stat().st_size if part.exists() else 0)
    if expected > room:
        raise SurroundingsError(
            f"{address} has {expected:,} bytes, and there is room for {room:,} in {part.parent}."
        )


def _too_large(address: str) -> SurroundingsError:
    return SurroundingsError(f"{address} has more than {MOST_BYTES:,} bytes; no model is so large.")


def _mark_of(answer: Any) -> str:
    """Return what tells one state of the server's file from another."""
    strong = str(answer.headers.get("ETag") or "")
    return (
        strong if strong and not strong.startswith("W/") else str(answer.headers.get("Last-Modified") or "")
    )
