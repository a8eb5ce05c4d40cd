"""The whole sample garment, stepped to the last bind-off in a process of its own, killed and resumed on the way.

The evening that is not killed is started as she starts it; those that are resumed, from a program that is loaded.
"""

from __future__ import annotations

import os
import re
import shutil
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from stepper.sitting.project_file import load_project
from tests.commands.garments import environment
from tests.commands.warm import WarmProcess

SWITCHBACK = Path(__file__).parent / "fixtures" / "switchback.yaml"
CUE = "next\n"


class Sitting:
    """A session in a process of its own, driven through its pipes."""

    def __init__(self, path: Path, *, cold: bool) -> None:
        words = ["knit", "--plain", "--mute", str(path)]
        reading, writing = os.pipe()
        heard, said = os.pipe()
        with os.fdopen(reading, "rb") as stdin, os.fdopen(said, "wb") as stdout, os.fdopen(os.dup(2), "wb") as stderr:
            self.process: subprocess.Popen[bytes] | WarmProcess = (
                subprocess.Popen([sys.executable, "-m", "stepper", *words], stdin=stdin, stdout=stdout)
                if cold
                else WarmProcess(words, stdin, stdout, stderr, environment())
            )
        self.stdin = os.fdopen(writing, "w", encoding="utf-8")
        self.stdout = os.fdopen(heard, encoding="utf-8")
        self.opening = self._until_answered()

    def _until_answered(self) -> list[str]:
        """Read what is said up to the answer of a question whose words are known."""
        self.stdin.write("where\n")
        self.stdin.flush()
        lines = []
        for line in self.stdout:
            if re.search(r"stitches on the needles|is finished|Finished", line):
                self.where = line
                return lines
            lines.append(line)
        raise AssertionError(f"the session ended: {lines}")

    def next(self) -> list[str]:
        """Return the cue and read its answer."""
        self.stdin.write(CUE)
        self.stdin.flush()
        return self._until_answered()

    def kill(self) -> None:
        """End it as a flat battery would."""
        self.process.send_signal(signal.SIGKILL)
        self.process.wait(timeout=60)
        self.stdin.close()
        self.stdout.close()

    @property
    def finished(self) -> bool:
        """Whether the last bind-off is done."""
        return "inished" in self.where


def transcript(path: Path, *, kill_every: int | None) -> list[str]:
    """Knit to the end by `next` alone; return every answer in order."""
    said: list[str] = []
    sitting = Sitting(path, cold=kill_every is None)
    cues = 0
    while not sitting.finished:
        said += sitting.next()
        cues += 1
        if kill_every and cues % kill_every == 0:
            sitting.kill()
            sitting = Sitting(path, cold=False)
        assert cues < 2000
    sitting.kill()
    return said


@pytest.fixture(scope="module")
def unbroken(tmp_path_factory: pytest.TempPathFactory) -> list[str]:
    """Knit it once without interruption."""
    path = tmp_path_factory.mktemp("unbroken") / "switchback.yaml"
    shutil.copy(SWITCHBACK, path)
    return transcript(path, kill_every=None)


def test_every_checkpoint_is_asked_with_its_count(unbroken: list[str]) -> None:
    """From cast-on to the last bind-off by `next` alone, each count asked for is the plan's at that round, and
    none of the places where a fault would be locked in is left out."""
    asked = [line for line in unbroken if "Count now" in line]
    rounds = load_project(SWITCHBACK).plan.rounds
    reasons = [r.checkpoint.reason for r in rounds if r.checkpoint and (r.evenly or not r.shaping)]
    told = [found[2] for line in asked if (found := re.search(r"Count now: (\d+) expected, (.*)\.$", line))]
    assert [reason for reason in told if reason in set(reasons)] == reasons
    left = iter(rounds)
    for line in asked:
        found = re.search(r"Count now: (\d+) expected", line)
        assert found is not None
        assert any(round_.after == int(found[1]) for round_ in left), line


def test_killed_after_every_fiftieth_cue_nothing_is_lost_or_doubled(
    unbroken: list[str], tmp_path: Path
) -> None:
    """The answers of all sittings, one after the other, are those of one long evening."""
    path = tmp_path / "switchback.yaml"
    shutil.copy(SWITCHBACK, path)
    assert transcript(path, kill_every=50) == unbroken
