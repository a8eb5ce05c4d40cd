"""The state of the ears and the mouth: listening or not and why, speaking or not, and what was last heard. No
I/O.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from stepper.screen.pages.count_badge import draw_badge
from stepper.screen.rows import Row, Span, clean, flow_facts
from stepper.screen.style import Badge, Depth


class EarsState(Enum):
    """Whether anything is heard."""

    LISTENING = "listening"
    CLOSED = "not listening"
    """She closed them; a cue opens them."""
    NONE = "no ears"
    """Nothing listens at all, for a stated reason."""


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
    mouth: MouthState = MouthState.NONE
    why_no_mouth: str = "mute"
    heard: HeardWords | None = None


ROOM_FOR_REASONS = 56
"""A narrower screen shows the state without the reason. Unit: columns."""


def draw_devices(devices: DeviceStatus, depth: Depth, columns: int, *, blocks: bool) -> list[Row]:
    """Return rows that say how the ears and the mouth are: one row if both fit, otherwise two.

    Args:
        devices: Ears and mouth.
        depth: What the terminal shows.
        columns: Room. Unit: columns.
        blocks: Whether the terminal has signs beyond ASCII.
    """
    reasons = columns >= ROOM_FOR_REASONS
    return flow_facts(_facts(devices, depth, blocks=blocks, reasons=reasons), columns, gap=2)


def _facts(devices: DeviceStatus, depth: Depth, *, blocks: bool, reasons: bool) -> list[Row]:
    if devices.ears is EarsState.LISTENING:
        ears = draw_badge(Badge.STANDS, "listening", depth, blocks=blocks)
    elif devices.ears is EarsState.CLOSED:
        ears = draw_badge(Badge.ASKS, "not listening", depth, blocks=blocks)
    else:
        ears = Span(f"No ears{_why(devices.why_no_ears, shown=reasons)}.")
    if devices.mouth is MouthState.SPEAKING:
        mouth = draw_badge(Badge.CALM, "speaking", depth, blocks=blocks)
    elif devices.mouth is MouthState.QUIET:
        mouth = Span("Voice on.")
    else:
        mouth = Span(f"No voice{_why(devices.why_no_mouth, shown=reasons)}.")
    return [(ears,), (mouth,)]


def _why(reason: str, *, shown: bool) -> str:
    return f": {clean(reason).rstrip('.')}" if reason and shown else ""


def describe_heard(devices: DeviceStatus) -> str:
    """Return the last words and what they did; empty if there were none yet."""
    if devices.heard is None:
        return ""
    verb = "Heard" if devices.heard.by_ear else "Typed"
    return f'{verb} "{clean(devices.heard.text)}": {clean(devices.heard.did)}'
