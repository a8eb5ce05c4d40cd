"""Load PortAudio if that is safe.

If ALSA's configuration is empty, PortAudio ends the whole process (`abort`); if it is broken, loading fails
with an error of its own. Nothing inside a process can prevent its abort, so whenever anything but the
system's own configuration is involved, another process tries loading PortAudio first.

Source: found by trying with sounddevice 0.5.6 and PortAudio 19.7 (`ALSA_CONFIG_PATH` set to an empty file).
"""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Mapping
from functools import lru_cache
from pathlib import Path
from typing import Any

from stepper.devices.ports import NoDeviceError

_USUAL = Path("/usr/share/alsa/alsa.conf")
_PROBE_TIMEOUT_S = 20.0


def load_portaudio() -> Any:
    """Return the module `sounddevice` with its library loaded and ready.

    Raises:
        NoDeviceError: It is not installed, or cannot be used here.
    """
    if sys.platform.startswith("linux") and "sounddevice" not in sys.modules:
        why = why_not(list_configurations(os.environ))
        if why:
            raise NoDeviceError(why)
    try:
        import sounddevice
    except (OSError, ImportError) as error:  # the library is missing; the package is missing
        raise NoDeviceError("it is not installed") from error
    except Exception as error:  # its own error class cannot be named before it is loaded
        raise NoDeviceError(f"it does not start ({error})") from error
    if sys.platform.startswith("linux"):
        _hush_alsa()
    return sounddevice


@lru_cache(maxsize=1)
def _hush_alsa() -> object:
    """Keep ALSA from reporting each late block on standard error, among what the program itself prints there.

    Returns:
        What ALSA calls instead, to be kept for as long as the library may call it; None if there is no ALSA.
    """
    import ctypes

    text, number = ctypes.c_char_p, ctypes.c_int
    quiet = ctypes.CFUNCTYPE(None, text, number, text, number, text)(
        lambda file, line, function, error, words: None
    )
    try:
        ctypes.CDLL("libasound.so.2").snd_lib_error_set_handler(quiet)
    except (OSError, AttributeError):
        return None
    return quiet


def list_configurations(environment: Mapping[str, str]) -> tuple[tuple[str, int, int], ...]:
    """List the configuration files of ALSA that are not the system's own, each with its age and size.

    Args:
        environment: The variables of the process.

    Returns:
        Empty if only the system's own is involved; then nothing has to be tried.
    """
    named = [Path(each) for each in environment.get("ALSA_CONFIG_PATH", "").split(":") if each]
    hers = [Path(environment["HOME"]) / ".asoundrc"] if environment.get("HOME") else []
    found = [_stamp(path) for path in (*named, *hers) if path in named or path.exists()]
    if not named and _stamp(_USUAL)[2] <= 0:
        found.append(_stamp(_USUAL))
    return tuple(found)


@lru_cache(maxsize=8)
def why_not(files: tuple[tuple[str, int, int], ...]) -> str:
    """Check in another process whether PortAudio loads.

    Args:
        files: The configuration files it will read, as `list_configurations` gives them.

    Returns:
        Why it must not be loaded, as half a sentence; empty if it may.
    """
    if not files:
        return ""
    try:
        tried = subprocess.run(
            [sys.executable, "-c", "import sounddevice"],
            stdin=subprocess.DEVNULL,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
            timeout=_PROBE_TIMEOUT_S,
            check=False,
        )
    except subprocess.TimeoutExpired:
        return "it hangs when it is loaded"
    except OSError:
        return ""  # no other process can be started here; loading in the usual way will have to tell
    if tried.returncode >= 0:
        return ""  # it loads, or fails in a way that this process survives
    return f"ALSA's configuration is empty or broken ({', '.join(name for name, _, _ in files)})"


def _stamp(path: Path) -> tuple[str, int, int]:
    try:
        about = path.stat()
    except OSError:
        return str(path), 0, -1
    return str(path), about.st_mtime_ns, about.st_size
