"""Repeats inside a round: how they are worked, and what to say if they do not fit. Pure functions; no I/O."""

from __future__ import annotations

from stepper.project.stitchwork import Mark, Several, Until


def goes_by_markers(element: Several) -> bool:
    """Return whether a repeat works up to a marker and passes it, and so goes from marker to marker."""
    to = any(isinstance(inner, Until) and inner.goal == "marker" for inner in element.elements)
    return to and any(isinstance(inner, Mark) and inner.stitch != "pm" for inner in element.elements)


def no_division(unit: int, room: int, count: int) -> tuple[str, str]:
    """Say that a repeat does not divide the stitches it has, and which counts it would. Unit: stitches."""
    fits, over = divmod(room, unit)
    below, above = count - over, count + unit - over
    message = (
        f"the repeat of {unit} stitches does not divide the {room} it has: {fits} repeats leave {over} over."
    )
    near = f"{below} or {above}" if below > 0 else f"{above}"
    return message, f"It would fit on {near} stitches instead of {count}."


def said_so_often(code: str, times: int) -> str:
    """Quote a stitch worked a number of times as printed: `k8`, `k2tog`, `k2tog × 3`."""
    return f"{code}{times}" if len(code) == 1 else f"{code} × {times}" if times > 1 else code
