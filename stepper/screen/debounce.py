"""Held keys and double presses: which presses count. Pure: the time of each press is passed in.

A press of the same key within 250 ms of the one before is not intended: contacts bounce, and a pedal or key
held down repeats. Every press seen restarts that time, so a whole burst counts once.

A keyboard waits longer than that, usually half a second, before it begins to repeat, so the first repeat
looks like a second press. What follows gives it away: two more at a pace no foot or finger keeps. Then the
step it made is taken back.
"""

from __future__ import annotations

from dataclasses import replace
from enum import Enum
from typing import Final

from stepper.records import dataclass

BOUNCE_S: Final = 0.25
"""Presses of one key closer together than this count as one. Unit: s."""
FIRST_REPEAT_S: Final = 1.1
"""A keyboard begins to repeat a held key within this time. Source: the longest setting of common desktops,
from memory. Unit: s."""
REPEATS_S: Final = (0.015, 0.12)
"""A held key repeats at intervals in this range; contacts bounce faster, fingers are slower. Unit: s."""


class PressVerdict(Enum):
    """What to make of a press."""

    COUNTS = "counts"
    IGNORED = "ignored"
    TAKE_BACK = "take back"
    """Ignored; moreover it shows that the last press that counted was not a real one either."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Presses:
    """What is remembered of earlier presses."""

    key: str = ""
    """The key pressed last."""
    at_s: float = float("-inf")
    """When. Unit: s, on any clock that only goes forward."""
    doubtful: bool = False
    """Whether the last press that counted could be the first repeat of a held key."""
    repeats: int = 0
    """Number of presses at a held key's pace since then."""


def judge_press(presses: Presses, key: str, at_s: float) -> tuple[PressVerdict, Presses]:
    """Return whether a press counts, with what to remember for the next.

    Args:
        presses: What was pressed before.
        key: The key.
        at_s: When. Unit: s.

    Returns:
        The verdict, and what to remember.
    """
    if key != presses.key:
        return PressVerdict.COUNTS, Presses(key=key, at_s=at_s)
    since = at_s - presses.at_s
    if since >= BOUNCE_S:
        return PressVerdict.COUNTS, Presses(key=key, at_s=at_s, doubtful=since <= FIRST_REPEAT_S)
    repeats = presses.repeats + 1 if REPEATS_S[0] <= since <= REPEATS_S[1] else 0
    seen = replace(presses, at_s=at_s, repeats=repeats)
    if presses.doubtful and repeats == 2:
        return PressVerdict.TAKE_BACK, replace(seen, doubtful=False)
    return PressVerdict.IGNORED, seen
