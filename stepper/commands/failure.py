"""Our own bugs: write a log that can be sent, and say where it is."""

from __future__ import annotations

import datetime
import platform
import sys
import tempfile
import traceback
from pathlib import Path

from stepper import __version__
from stepper.commands.standard_streams import complain

BUG = 3


def report() -> int:
    """Write the exception being handled to a log file and print where it is.

    Returns:
        The exit code for a bug.
    """
    now = datetime.datetime.now().astimezone().isoformat(timespec="seconds")
    text = (
        f"stepper {__version__}, Python {platform.python_version()}, {platform.platform()}, {now}\n"
        f"command: {sys.argv[1:]}\n\n{traceback.format_exc()}"
    )
    name = f"stepper-{now.replace(':', '')}.log"
    for folder in (Path.cwd(), Path(tempfile.gettempdir())):
        try:
            path = folder / name
            path.write_text(text, encoding="utf-8", errors="backslashreplace")
        except OSError:
            continue
        complain(f"stepper has a fault of its own. What happened is written down in {path}.")
        complain("Nothing that was said or shown before is lost.")
        return BUG
    complain(text)
    return BUG
