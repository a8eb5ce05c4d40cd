"""The state of the ears and the mouth: listening or not and why, speaking or not, and what was last heard.

What a page shows of them is drawn in `pages/device_signs`.
"""

from __future__ import annotations

from dataclasses import replace
from enum import Enum
from typing import Final

from stepper.records import dataclass

GETTING_READY: Final = "they are still getting ready"
"""Why nothing is heard as long as the ears are being opened."""


class EarsState(Enum):
    """Whether anything is heard."""

    LISTENING = "listening"
    DEAF = "deaf"
    """They leave out what comes in while the program itself speaks."""
    CLOSED = "asleep"
    """She closed them; a cue opens them."""
    NONE = "no ears"
    """Nothing listens at all, for a stated reason."""


def find_ears_state(why_no_ears: str, *, asleep: bool) -> EarsState:
    """Return whether anything is heard while the program is silent.

    Args:
        why_no_ears: Why nothing listens; empty if something does.
        asleep: Whether she closed the ears.
    """
    if why_no_ears:
        return EarsState.NONE
    return EarsState.CLOSED if asleep else EarsState.LISTENING


class MouthState(Enum):
    """Whether anything is said."""

    SPEAKING = "speaking"
    QUIET = "quiet"
    """It could speak but is quiet."""
    NONE = "no voice"
    """Nothing is ever said, for a stated reason."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HeardWords:
    """The last words that came in, and what came of them."""

    text: str
    did: str
    """What they did, or that they did nothing, as half a sentence."""
    by_ear: bool = True
    """Whether they came through the ears; otherwise they were typed."""


@dataclass(frozen=True, slots=True, kw_only=True)
class DeviceStatus:
    """Ears, mouth and the last words."""

    ears: EarsState = EarsState.NONE
    why_no_ears: str = "keys and typed cues only"
    film: bool = False
    """Whether a film is on, so that a spoken cue needs the address word; means nothing without ears."""
    mouth: MouthState = MouthState.NONE
    why_no_mouth: str = "mute"
    news: bool = True
    """Whether what is missing has not been said yet, or has changed since."""
    heard: HeardWords | None = None

    def while_speaking(self) -> DeviceStatus:
        """Return the status while a line is being said: the ears leave out what comes in meanwhile."""
        # A device that was gone may be back, so a voice that could not speak a moment ago may be speaking.
        ears = EarsState.DEAF if self.ears is EarsState.LISTENING else self.ears
        return replace(self, ears=ears, mouth=MouthState.SPEAKING)
