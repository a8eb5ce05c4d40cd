"""The signs of the ears and the mouth, and the last words heard.

What is there has a sign as long as it is so; what is missing is said once, since nobody needs to read all
evening that there is no microphone. No I/O.
"""

from __future__ import annotations

from collections.abc import Sequence

from stepper.screen.device_status import DeviceStatus, EarsState, MouthState
from stepper.screen.drawing.rows import Row, Styled, clean, flow_facts, paragraph, shorten
from stepper.screen.drawing.style import BOLD, Badge, Depth
from stepper.screen.pages.count_badge import draw_badge

SPEAKING_DEAF = "speaking, deaf meanwhile"
"""One sign for both: what is said now, and why nothing is heard until it is over."""
ROOM_FOR_REASONS = 56
"""A narrower screen says what is missing without the reason. Unit: columns."""


def draw_devices(devices: DeviceStatus, depth: Depth, columns: int, *, blocks: bool) -> list[Row]:
    """Return rows that say how the ears and the mouth are.

    Args:
        devices: Ears and mouth.
        depth: What the terminal shows.
        columns: Room. Unit: columns.
        blocks: Whether the terminal has signs beyond ASCII.

    Returns:
        No row if there is neither and that has been said; one if all fit, otherwise more.
    """
    signs = [*_ears(devices, depth, blocks=blocks), *_mouth(devices, depth, blocks=blocks)]
    if devices.news:
        missing = _missing(devices, reasons=columns >= ROOM_FOR_REASONS)
        signs += [row for each in missing for row in paragraph(each, columns)]
    return flow_facts(signs, columns, gap=2)


def _ears(devices: DeviceStatus, depth: Depth, *, blocks: bool) -> list[Row]:
    kind = {
        EarsState.LISTENING: Badge.STANDS,
        EarsState.DEAF: Badge.CALM,
        EarsState.CLOSED: Badge.ASKS,
    }.get(devices.ears)
    if kind is None:
        return []
    word = SPEAKING_DEAF if devices.ears is EarsState.DEAF else devices.ears.value
    signs: list[Row] = [(draw_badge(kind, word, depth, blocks=blocks),)]
    if devices.film:
        signs.append((draw_badge(Badge.CALM, "film on", depth, blocks=blocks),))
    return signs


def _mouth(devices: DeviceStatus, depth: Depth, *, blocks: bool) -> list[Row]:
    if devices.mouth is MouthState.SPEAKING and devices.ears is EarsState.DEAF:
        return []  # the ears' sign says both
    if devices.mouth is MouthState.SPEAKING:
        return [(draw_badge(Badge.CALM, "speaking", depth, blocks=blocks),)]
    return [(Styled("Voice on."),)] if devices.mouth is MouthState.QUIET else []


def _missing(devices: DeviceStatus, *, reasons: bool) -> list[str]:
    """Say what is missing, and why if there is room."""
    deaf, mute = devices.ears is EarsState.NONE, devices.mouth is MouthState.NONE
    if deaf and mute and not reasons:
        return ["No ears, no voice: keys alone."]
    said: list[str] = []
    if deaf:
        said.append(f"No ears{_why(devices.why_no_ears, shown=reasons)}.")
    if mute:
        said.append(f"No voice{_why(devices.why_no_mouth, shown=reasons)}.")
    return said


def _why(reason: str, *, shown: bool) -> str:
    said = plain_reason(reason)
    return f": {said}" if said and shown else ""


def plain_reason(reason: str) -> str:
    """Write a reason without what stands in brackets behind it: the words of a library say nothing to her."""
    return clean(reason).partition(" (")[0].rstrip(".")


def draw_heard(devices: DeviceStatus, columns: int, told: Sequence[str] = ()) -> list[Row]:
    """Return a row with what was heard or typed last.

    Args:
        devices: They know it.
        columns: Room. Unit: columns.
        told: What is told on the same page.

    Returns:
        No row if nothing was heard or typed, or if what is told repeats what was typed.
    """
    heard, last = describe_heard(devices), devices.heard
    if last is not None and not last.by_ear and any(f'"{clean(last.text)}"' in line for line in told):
        return []
    return [(Styled(" "), Styled(shorten(heard, columns - 2), BOLD))] if heard else []


def describe_heard(devices: DeviceStatus) -> str:
    """Return the last words and what they did; empty if there were none yet."""
    if devices.heard is None:
        return ""
    verb = "Heard" if devices.heard.by_ear else "Typed"
    return f'{verb} "{clean(devices.heard.text)}": {clean(devices.heard.did)}'
