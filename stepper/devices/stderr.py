"""Keep off the screen what sound libraries write straight to descriptor 2."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from threading import RLock

_ONE_AT_A_TIME = RLock()
"""Two threads that swap descriptor 2 at once could put the wrong one back."""


@contextmanager
def quiet_stderr(log: Path | None = None) -> Iterator[None]:
    """Send what libraries written in C say on standard error to a log, for as long as the block lasts.

    Args:
        log: File to add to; None throws it away.
    """
    with _ONE_AT_A_TIME:
        try:
            kept = os.dup(2)
        except OSError:  # there is no standard error, so it cannot garble the screen
            yield
            return
        try:
            _point_stderr_at(log)
            yield
        finally:
            os.dup2(kept, 2)
            os.close(kept)


@contextmanager
def stderr_aside(log: Path | None = None) -> Iterator[None]:
    """Keep standard error off a full screen for as long as it is shown, whatever writes there meanwhile.

    Unlike `quiet_stderr` it does not keep other threads waiting: their quiet blocks come and go inside it.

    Args:
        log: File to add to; None throws it away.
    """
    with _ONE_AT_A_TIME:
        try:
            kept = os.dup(2)
        except OSError:  # there is no standard error, so it cannot garble the screen
            kept = -1
        if kept >= 0:
            _point_stderr_at(log)
    try:
        yield
    finally:
        with _ONE_AT_A_TIME:  # after every quiet block that is under way, or it would put back the log
            if kept >= 0:
                os.dup2(kept, 2)
                os.close(kept)


def _point_stderr_at(log: Path | None) -> None:
    try:
        target = os.open(log or os.devnull, os.O_WRONLY | os.O_APPEND | (os.O_CREAT if log else 0), 0o600)
    except OSError:  # losing the log is better than losing the voice
        return
    os.dup2(target, 2)
    os.close(target)
