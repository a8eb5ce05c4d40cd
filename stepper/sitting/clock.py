"""The time of day, as cues and the journal carry it."""

from __future__ import annotations

from datetime import datetime


def now() -> str:
    """Return the current time with its offset from UTC, to the second. ISO 8601."""
    return datetime.now().astimezone().isoformat(timespec="seconds")
