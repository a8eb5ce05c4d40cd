"""The first thirty seconds as a stranger sees them: what is on the screen when, from the command to the third step.

Run: python -m tests.bench.first_start [sound]. The real program in an emulated terminal of 80 by 24, with settings and
journal nowhere yet, a key pressed every four seconds once the garment is to be seen; with `sound` in a room
of our own (PulseAudio), otherwise without any sound device. Prints each screen that differs, with its second.
"""

from __future__ import annotations

import os
import shutil
import sys
import tempfile
import time
from contextlib import ExitStack
from pathlib import Path

import pexpect
import pyte

from tests.sound_room import Room

ROOT = Path(__file__).resolve().parents[2]
SECONDS = 30.0
KEYS = (" ", "88\r", " ", "?", "\x1b", "o", "\x1b")
"""What a stranger who reads the bottom row presses."""
EVERY_S = 4.0


def main() -> None:
    """Print what is seen."""
    sound = "sound" in sys.argv[1:]
    with ExitStack() as stack:
        folder = Path(stack.enter_context(tempfile.TemporaryDirectory()))
        path = Path(shutil.copy(ROOT / "sample_projects" / "pullover.yaml", folder))
        environment = os.environ | {
            "PYTHONPATH": str(ROOT),
            "PYTHONUTF8": "1",
            "TERM": "xterm-256color",
            "HOME": str(folder),
            "PROMPT_TOOLKIT_NO_CPR": "1",
            "PULSE_SERVER": f"unix:{folder}/nobody",
            "XDG_RUNTIME_DIR": str(folder),
        }
        if sound:
            room = Room(folder, environment)
            room.start()
            stack.callback(room.stop)
            environment = room.env
        child = pexpect.spawn(
            sys.executable, ["-m", "stepper", "knit", str(path)], env=environment, dimensions=(24, 80)
        )
        stack.callback(child.close, force=True)
        watch(child)


def watch(child: pexpect.spawn) -> None:
    """Press a key now and then and print each screen that stays for a quarter of a second."""
    screen = pyte.Screen(80, 24)
    stream = pyte.ByteStream(screen)
    began, shown, keys, next_key = time.monotonic(), "", list(KEYS), 0.0
    while (now := time.monotonic() - began) < SECONDS:
        try:
            stream.feed(child.read_nonblocking(65536, timeout=0.25))
            continue
        except pexpect.TIMEOUT:
            pass
        except pexpect.EOF:
            break
        text = "\n".join(line.rstrip() for line in screen.display).strip("\n")
        if text and text != shown:
            print(f"--- {now:.1f} s\n{text}", flush=True)
            shown = text
            if not next_key and "? keys" in text:
                next_key = now + EVERY_S
        if next_key and now >= next_key and keys:
            key = keys.pop(0)
            child.send(key)
            print(f"--- {now:.1f} s: pressed {key!r}", flush=True)
            next_key = now + EVERY_S


if __name__ == "__main__":
    main()
