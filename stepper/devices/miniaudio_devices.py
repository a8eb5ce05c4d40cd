"""What miniaudio finds of devices: the same for loudspeakers and microphones."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import Any

from stepper.devices.stderr import quiet_stderr

NO_BACKEND = "Null"
"""What miniaudio takes without a word when the system has no sound: it plays into nothing, hears nothing."""


def named(found: Iterable[Mapping[str, Any]], name: str) -> Any:
    """Give what miniaudio knows a device by.

    Args:
        found: Devices as miniaudio lists them.
        name: Part of a name, in any case.

    Returns:
        The mark of the first that fits; nothing where none does.
    """
    return next((each["id"] for each in found if name.casefold() in each["name"].casefold()), None)


def names(listed: Callable[[Any], Iterable[Mapping[str, Any]]]) -> tuple[str, ...]:
    """Name devices; none when miniaudio is not installed or finds no sound.

    Args:
        listed: Takes those wanted out of all that miniaudio finds.
    """
    with quiet_stderr():
        try:
            import miniaudio
        except ImportError:
            return ()
        try:
            devices = miniaudio.Devices()
            if devices.backend == NO_BACKEND:
                return ()
            return tuple(each["name"] for each in listed(devices))
        except miniaudio.MiniaudioError:
            return ()
