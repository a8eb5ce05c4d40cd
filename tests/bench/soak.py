"""Hold an evening of many hours at speed, and watch memory, handles and threads.

    nice -n 15 python -m tests.bench.soak [--hours 8] [--ears] [--seed 1]

The sitting is the program's own: journal on the disk, eSpeak NG in its process, every line synthesised; the loudspeaker
takes what is played at once, and the clock goes by the evening, a cue every ten seconds. With `--ears` each of those ten
seconds is sound for the detector and the recogniser as well: a quiet room, speech every half minute. A garment that is
finished is followed by another, as a sitting of its own. Prints a row for every quarter of an hour; ends with 1 where
memory grew by more than 16 MB, or handles or threads at all, from the second hour to the end.
"""

from __future__ import annotations

import argparse
import gc
import os
import random
import sys
import tempfile
import time
from array import array
from collections.abc import Iterator
from contextlib import AbstractContextManager, nullcontext, suppress
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from pathlib import Path

import stepper.mouth.open_speaker as opening
from stepper.ears.listen import listen, load_speech_detector
from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.settings import SpeechSettings
from stepper.devices.resample import resample
from stepper.session.cues import Cue, Enough
from stepper.sitting import assembly
from stepper.sitting.assembly import SittingOptions, hold_sitting
from stepper.sitting.front_end import SittingView
from stepper.sitting.preferences import Preferences
from stepper.sitting.project_file import LoadedProject, load_project
from stepper.sitting.recognisers import load_recogniser

FIXTURES = Path(__file__).parents[1] / "fixtures"
GARMENTS = ("switchback", "hat", "socks", "cardigan")
EVERY_S = 10.0
TOLD_S = 900.0
MOST_GROWTH_MB = 16.0
CUES = ("next",) * 24 + ("where are we", "how many stitches", "again", "go back one step", "undo that", "note the cuff is tight", "what can I say", "yes", "no", "open the window")
SPOKEN = ("next step", "where are we", "it rained all day and the harbour was empty", "how many stitches")


class Swallowing:
    """A loudspeaker that has played everything as soon as it is given it."""

    pending_s, lost = 0.0, False

    def play(self, pcm: bytes, rate_hz: int) -> None:
        """Play."""

    def clear(self) -> None:
        """Fall silent."""

    def close(self) -> None:
        """Close."""


@dataclass
class Evening:
    """How far it has come, and what was measured."""

    hours: float
    chance: random.Random
    passed_s: float = 0.0
    cues: int = 0
    lines: int = 0
    heard: int = 0
    rounds: int = 0
    rows: list[tuple[float, float, int, int]] = field(default_factory=list)
    begun: float = field(default_factory=time.monotonic)

    @property
    def over(self) -> bool:
        return self.passed_s >= self.hours * 3600

    def now(self) -> str:
        return (datetime.fromisoformat("2025-03-03T18:00:00+01:00") + timedelta(seconds=int(self.passed_s))).isoformat()

    def pass_time(self) -> None:
        """Let ten seconds pass, and measure at every quarter of an hour."""
        before, self.passed_s = self.passed_s, self.passed_s + EVERY_S
        if before // TOLD_S == self.passed_s // TOLD_S:
            return
        gc.collect()
        processes = [os.getpid(), *children()]
        row = self.passed_s / 3600, sum(map(resident_mb, processes)), handles(), len(os.listdir("/proc/self/task"))
        self.rows.append(row)
        print("{:5.2f} h  {:6.1f} MB  {:3} handles  {:2} threads".format(*row)
              + f"  {self.cues} cues, {self.lines} lines, {self.heard} heard, {time.monotonic() - self.begun:.0f} s", flush=True)

    def verdict(self) -> int:
        """Compare the second hour with the last."""
        early = [row for row in self.rows if 1 < row[0] <= 2]
        late = [row for row in self.rows if row[0] > self.hours - 1]
        if not early or not late:
            print("too short to compare the second hour with the last")
            return 2
        grown = max(row[1] for row in late) - max(row[1] for row in early)
        more = [max(row[at] for row in late) - max(row[at] for row in early) for at in (2, 3)]
        print(f"{self.hours:g} hours in {time.monotonic() - self.begun:.0f} s: {self.cues} cues, {self.lines} lines said, {self.heard} heard; from the"
              f" second hour to the last {grown:+.1f} MB, {more[0]:+} handles, {more[1]:+} threads")
        return int(grown > MOST_GROWTH_MB or more[0] > 0 or more[1] > 0)


def children() -> list[int]:
    """Return the processes that this one started."""
    found = []
    for task in Path("/proc/self/task").iterdir():
        with suppress(FileNotFoundError, ProcessLookupError):  # a thread that has just ended
            found += [int(each) for each in (task / "children").read_text().split()]
    return found


def resident_mb(process: int) -> float:
    """Return the memory of a process."""
    return int(Path(f"/proc/{process}/statm").read_text().split()[1]) * os.sysconf("SC_PAGE_SIZE") / 1e6


def handles() -> int:
    """Return how many files, pipes and sockets this process has open."""
    return len(os.listdir("/proc/self/fd"))


class Room:
    """A microphone's sound: a quiet room in which somebody speaks every half minute."""

    def __init__(self, seed: int) -> None:
        voice = EspeakVoice(SpeechSettings(engine="espeak"))
        try:
            self._said = [resample(voice.speech(text, 150), voice.rate_hz, 16_000) for text in SPOKEN]
        finally:
            voice.close()
        chance = random.Random(seed)
        self._quiet = array("h", (chance.randint(-12, 12) for _ in range(16_000))).tobytes()
        self.closed = False

    def seconds(self, number: int) -> bytes:
        """Return ten seconds."""
        whole = self._quiet * 10
        if number % 3:
            return whole
        said = self._said[number // 3 % len(self._said)]
        return self._quiet + said + whole[len(self._quiet) + len(said) :]


class Knitter:
    """Gives cues until the evening, or the garment, is over."""

    listens_by_itself = False
    turn = None

    def __init__(self, evening: Evening, loaded: LoadedProject, room: Room | None) -> None:
        self._evening, self._loaded, self._room = evening, loaded, room

    def open(self, view: SittingView) -> None:
        self._conductor = view.conductor

    def show(self, line: str) -> None:
        self._evening.lines += 1

    def schedule(self, seconds: float, cue: Cue) -> None:
        """Ring no alarm."""

    def hear(self, text: str, score: float = 1.0) -> None:
        """Hear nothing by itself."""

    def report_ears(self, is_open: bool, sentence: str) -> None:
        """Have ears of its own."""

    def report_voice(self, sentence: str) -> None:
        raise AssertionError(sentence)

    def guard_terminal(self) -> AbstractContextManager[None]:
        return nullcontext()

    def blocks(self) -> Iterator[bytes]:
        """Let ten seconds of sound pass for every cue."""
        assert self._room is not None
        number = 0
        while self._one_cue():
            number += 1
            sound = self._room.seconds(number)
            yield from (sound[at : at + 1280] for at in range(0, len(sound), 1280))

    def _one_cue(self) -> bool:
        evening, session = self._evening, self._conductor.session
        if evening.over or self._conductor.closed or session.state.place.index >= len(session.plan.rounds) - 1:
            return False
        round_ = session.plan.rounds[session.state.place.index]
        count = evening.chance.random() < 0.1
        self._conductor.offer_words(f"count is {round_.before}" if count else evening.chance.choice(CUES))
        self._conductor.drain()
        evening.cues += 1
        evening.pass_time()
        return True

    def run(self, recording: Iterator[str] | None) -> None:
        if self._room is None:
            while self._one_cue():
                pass
        else:
            recogniser = load_recogniser(self._loaded.plan, Preferences())
            try:
                for heard in listen(self, recogniser, load_speech_detector()):
                    self._evening.heard += bool(heard.text)
                    self._conductor.offer_words(heard.text, heard=True, score=heard.score)
                    self._conductor.drain()
            finally:
                recogniser.close()
        self._evening.rounds += self._conductor.session.state.place.index
        if not self._conductor.closed:
            self._conductor.offer(Enough())
            self._conductor.drain()

    def close(self) -> None:
        """End."""


def main() -> int:
    """Hold the evening."""
    parser = argparse.ArgumentParser(description=(__doc__ or "").split("\n", 1)[0])
    parser.add_argument("--hours", type=float, default=8.0)
    parser.add_argument("--ears", action="store_true")
    parser.add_argument("--seed", type=int, default=1)
    given = parser.parse_args()
    evening = Evening(given.hours, random.Random(given.seed))
    assembly.now = evening.now
    opening.open_output = lambda *_: Swallowing()
    room = Room(given.seed) if given.ears else None
    number = 0
    with tempfile.TemporaryDirectory() as folder:
        while not evening.over:
            name = GARMENTS[number % len(GARMENTS)]
            path = Path(folder) / f"{name}-{number}.yaml"
            path.write_text((FIXTURES / f"{name}.yaml").read_text(encoding="utf-8"), encoding="utf-8")
            loaded = load_project(path)
            hold_sitting(loaded, Knitter(evening, loaded, room), Preferences(), SittingOptions(deaf=True))
            number += 1
    print(f"{number} sittings, {evening.rounds} rounds")
    return evening.verdict()


if __name__ == "__main__":
    sys.exit(main())
