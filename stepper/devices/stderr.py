"""Keep off the screen what sound libraries write straight to descriptor 2."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from threading import RLock

_ONE_AT_A_TIME = RLock()
"""Two threads that swap descriptor 2 at once could put the wrong one back."""


@contextmanager
def quiet_stderr() -> Iterator[None]:
    """Throw away what libraries written in C say on standard error, for as long as the block lasts."""
    with _ONE_AT_A_TIME:
        kept = _set_aside()
        try:
            yield
        finally:
            _put_back(kept)


@contextmanager
def stderr_aside() -> Iterator[None]:
    """Keep standard error off a full screen for as long as it is shown, whatever writes there meanwhile.

    Unlike `quiet_stderr` it does not keep other threads waiting: their quiet blocks come and go inside it.
    """
    with _ONE_AT_A_TIME:
        kept = _set_aside()
    try:
        yield
    finally:
        with _ONE_AT_A_TIME:  # after every quiet block that is under way, or that would put back nothing
            _put_back(kept)


def _set_aside() -> int | None:
    """Have descriptor 2 lead nowhere; return where it led, None if there is no standard error."""
    try:
        kept = os.dup(2)
    except OSError:
        return None
    with suppress(OSError):  # a torn screen is better than no voice
        nowhere = os.open(os.devnull, os.O_WRONLY)
        os.dup2(nowhere, 2)
        os.close(nowhere)
    return kept


def _put_back(kept: int | None) -> None:
    if kept is not None:
        os.dup2(kept, 2)
        os.close(kept)
