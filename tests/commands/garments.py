"""Small project files for tests that run whole commands, and how to run one."""

from __future__ import annotations

import contextlib
import os
import signal
import subprocess
from pathlib import Path
from tempfile import TemporaryFile
from textwrap import dedent

from tests.commands.warm import WarmProcess

ROOT = Path(__file__).resolve().parents[2]
"""Where the package lies, so that a process started elsewhere finds it."""

CUFF = """
title: Cuff
sizes: 1
knit: {size: 1}
yarn:
  MC: {name: chalk}
  A: {name: pine}
gauge:
  rib: {needle: 3.5 mm, stitches: 24, rounds: 30}
charts:
  dots:
    key: {".": MC, a: A}
    rows: |
      .a..
      ...a
sections:
  - name: cuff
    gauge: rib
    yarn: MC
    work: |
      Cast on 24 sts.
      Join in the round.
      *K2, p2; rep from * to end. Work 3 rounds.
      First increase: increase evenly to 28 sts.
      Chart dots, 2 times.
      Knit until piece measures 5 cm.
      Bind off.
"""
"""A whole garment of 17 rounds: rib, an increase, a chart, a length, an end."""


PAGE = """
# Written from the text of a printed pattern.
title: Toasting mitts
sizes: S (M, L)
knit: {size: M}
yarn:
  MC: {name: chalk}
gauge:
  plain: {needle: 4 mm, stitches: 20, rounds: 28}
sections:
  - name: cuff
    work: |
      Cast on 36 (40, 44) sts.
      Join in the round.
      Knit 3 rounds.
      # LOOK (row 9 of the text): "Twirl" is not understood here.
      Note: Twirl each pair of loops over the thumb.
      Knit 2 rounds.
      # LOOK (row 12 of the text): "nest" is not understood here.
      Note: Next rnd: Nest the loops in pairs. 18 (20, 22) sts.
      Knit 1 round.
      Bind off.
"""
"""A garment begun from a page, of which two rows are not read; with them it has 11 rounds."""


def garment(folder: Path, text: str = CUFF, name: str = "cuff.yaml") -> Path:
    """Write a project file."""
    path = folder / name
    path.write_text(dedent(text).lstrip(), encoding="utf-8")
    return path


def environment() -> dict[str, str]:
    """Return the surroundings of a process: this package, plain text, nothing buffered."""
    return {**os.environ, "PYTHONPATH": str(ROOT), "PYTHONUTF8": "1"}


def stepper(*words: str | Path, typed: str = "") -> subprocess.CompletedProcess[str]:
    """Run a command to its end."""
    with TemporaryFile() as stdin, TemporaryFile() as stdout, TemporaryFile() as stderr:
        stdin.write(typed.encode())
        stdin.seek(0)
        arguments = [*map(str, words)]
        code = WarmProcess(arguments, stdin, stdout, stderr, environment()).wait(timeout=60)
        told = []
        for each in (stdout, stderr):
            each.seek(0)
            told.append(each.read().decode())
        return subprocess.CompletedProcess(arguments, code, *told)


MARK = "xyzzy"
"""Typed after a cue: it is no cue, changes nothing, and its answer shows that the one before is complete."""


class Sitting:
    """A session in a process of its own that is talked to line by line, and can be killed."""

    def __init__(self, path: Path) -> None:
        """Start it and read what it says at the beginning."""
        reading, writing = os.pipe()
        heard, said = os.pipe()
        with os.fdopen(reading, "rb") as stdin, os.fdopen(said, "wb") as stdout, os.fdopen(os.dup(2), "wb") as stderr:
            words = ["knit", str(path), "--plain", "--mute"]
            self.process = WarmProcess(words, stdin, stdout, stderr, environment())
        self.stdin = os.fdopen(writing, "w", encoding="utf-8")
        self.stdout = os.fdopen(heard, encoding="utf-8")
        self.opening = self.say()

    def say(self, *cues: str) -> list[str]:
        """Type cues and read their answers."""
        self.send(*cues, MARK)
        lines = []
        for line in self.stdout:
            if MARK in line:
                return lines
            lines.append(line.rstrip("\n"))
        raise AssertionError(f"the session ended after {lines}")

    def send(self, *cues: str) -> None:
        """Type cues without waiting for an answer."""
        self.stdin.write("".join(f"{cue}\n" for cue in cues))
        self.stdin.flush()

    def kill(self, signal_number: int = signal.SIGKILL) -> int:
        """Stop it; unless told otherwise as a power cut would, by what no program can catch.

        Returns:
            The exit code.
        """
        self.process.send_signal(signal_number)
        code = self.process.wait(timeout=60)
        for stream in (self.stdin, self.stdout):
            with contextlib.suppress(BrokenPipeError):
                stream.close()
        return code
