"""An evening in a room without hardware: cues spoken into the microphone, answers taken from the loudspeaker.

Used by a short test and, for a whole section, by `tests/bench/evening.py`. What the program says is heard again
by another recogniser than its own, which has to pick the right line among all that were said and the same lines
with other numbers.
"""

from __future__ import annotations

import os
import random
import re
import subprocess
import sys
import threading
import time
import wave
from array import array
from collections.abc import Iterator, Sequence
from contextlib import contextmanager, nullcontext
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from stepper.devices.resample import resample
from stepper.language.aloud import spell_out
from stepper.language.numbers import number, words
from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.settings import SpeechSettings
from tests.commands.garments import environment

LOUD = 500
"""Louder than any noise of the way, softer than any vowel. Unit: steps of 16-bit sound."""
FILM_DB = -20.0
"""How loud the film is beside her voice. Unit: dB."""
FILM_LINES = (
    "I told you not to come here after dark, and yet you came.",
    "The harbour was empty when we got there. Nobody had seen the boat.",
    "Do you remember the summer we painted the kitchen yellow?",
    "Then tell them the truth, all of it, and see what they do.",
    "There are forty seven names on that list and yours is the first.",
)
"""Invented, like all that is said in the film."""


@dataclass
class Exchange:
    """One cue and what came of it."""

    cue: str
    lines: list[str] = field(default_factory=list)
    """What was told, as the `--plain` transcript has it."""
    said: bytes = b""
    """What the loudspeaker gave out meanwhile, at 16 kHz."""
    waited_s: float = 0.0
    """From the last sound of the cue to the first of the answer. Unit: s."""


def spoken(text: str, path: Path, voice: Any) -> Path:
    """Write a cue as a WAV file that ends with its last sound."""
    pcm = array("h", voice.speech(text, 150))
    loud = [at for at, value in enumerate(pcm) if abs(value) > LOUD]
    written(path, pcm[loud[0] : loud[-1] + 1].tobytes(), voice.rate_hz)
    return path


def written(path: Path, pcm: bytes, rate_hz: int) -> None:
    """Write a WAV file of one channel."""
    with wave.open(str(path), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(rate_hz)
        file.writeframes(pcm)


def film(path: Path, seconds: float, beside: float) -> Path:
    """Write film sound: two voices over a slow chord.

    Args:
        path: Where to.
        seconds: How long. Unit: s.
        beside: Root mean square of the voice it is to lie 20 dB below. Unit: steps of 16-bit sound.
    """
    import numpy

    rate = 22_050
    source = random.Random(7)
    voices = [EspeakVoice(SpeechSettings(engine="espeak", voice=name)) for name in ("en-us", "en-gb")]
    said: list[Any] = []
    try:
        while sum(map(len, said)) < seconds * rate:
            pcm = source.choice(voices).speech(source.choice(FILM_LINES), source.randint(140, 180))
            said.append(numpy.frombuffer(pcm, "<i2").astype(float))
            said.append(numpy.zeros(round(source.uniform(0.1, 0.7) * rate)))
    finally:
        for voice in voices:
            voice.close()
    sound = numpy.concatenate(said)
    moments = numpy.arange(len(sound)) / rate
    for pitch_hz in (220.0, 261.6, 329.6):
        sound += 400 * numpy.sin(2 * numpy.pi * pitch_hz * moments) * (1 + numpy.sin(moments / 3))
    gain = beside * 10 ** (FILM_DB / 20) / float(numpy.sqrt(numpy.mean(sound**2)))
    written(path, numpy.clip(sound * gain, -32768, 32767).astype("<i2").tobytes(), rate)
    return path


def root_mean_square(samples: Sequence[float]) -> float:
    """Return the level of some samples."""
    return float((sum(each * each for each in samples) / max(1, len(samples))) ** 0.5)


class Evening:
    """One sitting: `stepper knit --plain --listen` in the room."""

    def __init__(self, room: Any, project: Path, settings: Path) -> None:
        """Start it and wait until it listens."""
        self._room = room
        self.told: list[tuple[float, str]] = []
        self.remarks: list[str] = []
        self._process = subprocess.Popen(
            [sys.executable, "-m", "stepper", "knit", str(project), "--plain", "--listen"],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
            env={**environment(), **room.changed, "STEPPER_SETTINGS": str(settings)},
        )
        for pipe, keep in ((self._process.stdout, self._tell), (self._process.stderr, self._remark)):
            threading.Thread(target=self._read, args=(pipe, keep), daemon=True).start()
        self.wait_for(lambda: "Listening." in self.remarks, 120)

    @property
    def process_id(self) -> int:
        """The system's number for the program."""
        return self._process.pid

    def ask(self, cue: str, wav: Path, patience_s: float = 8.0) -> Exchange:
        """Speak a cue and take down what comes of it, until it is quiet again."""
        done = Exchange(cue=cue)
        before = len(self.told)
        with self._room.record() as out, self._room.record("micfeed.monitor") as into:
            self._room.speak(wav)
            cued_until = time.monotonic()
            ends_at = cued_until + patience_s
            while len(self.told) == before and time.monotonic() < ends_at:
                time.sleep(0.02)
            answered_by = time.monotonic() + (5.0 if len(self.told) > before else 0.0)
            while not any(at > cued_until for at in out.loud_at()) and time.monotonic() < answered_by:
                time.sleep(0.02)
            quiet_since = time.monotonic()
            while time.monotonic() - quiet_since < 1.5:
                loud = [at for at in out.loud_at() if at > quiet_since]
                quiet_since = max(loud, default=quiet_since)
                time.sleep(0.05)
            answered = [at for at in out.loud_at() if at > cued_until - 0.3]
            cued = [at for at in into.loud_at() if not answered or at < answered[0]]
            done.waited_s = answered[0] - cued[-1] if answered and cued else float("nan")
            done.said = resample(out.pcm, out.rate_hz, 16_000)
        done.lines = [line for _, line in self.told[before:]]
        return done

    def type(self, line: str) -> None:
        """Type a cue."""
        assert self._process.stdin is not None
        self._process.stdin.write(f"{line}\n")
        self._process.stdin.flush()

    def quiet(self) -> None:
        """Wait until the opening has been said."""
        with self._room.record() as out:
            quiet_since = time.monotonic()
            while time.monotonic() - quiet_since < 2.0:
                quiet_since = max([at for at in out.loud_at() if at > quiet_since], default=quiet_since)
                time.sleep(0.05)

    def close(self) -> None:
        """End the sitting at once: all that was answered is on the disk, and nobody waits for last words."""
        self._process.terminate()
        self._process.wait(10)

    def wait_for(self, come: Any, seconds: float) -> None:
        """Wait for something that must happen."""
        ends_at = time.monotonic() + seconds
        while not come():
            assert self._process.poll() is None, self.remarks
            assert time.monotonic() < ends_at, f"it did not happen; remarks: {self.remarks}"
            time.sleep(0.02)

    def _tell(self, line: str) -> None:
        self.told.append((time.monotonic(), line))

    def _remark(self, line: str) -> None:
        self.remarks.append(line)

    @staticmethod
    def _read(pipe: Any, keep: Any) -> None:
        for line in pipe:
            keep(line.rstrip("\n"))


@contextmanager
def evening(
    room: Any, project: Path, folder: Path, *, looped: bool, film_wav: Path | None, sounds: bool = True
) -> Iterator[Evening]:
    """Have an evening, with the loudspeaker looped into the microphone or not, with a film or not."""
    settings = folder / "settings.toml"
    settings.write_text(f'[voice]\nengine = "espeak"\n[ears]\nsounds = {str(sounds).lower()}\n')
    sitting = Evening(room, project, settings)
    playing = None
    try:
        sitting.quiet()
        with room.looped() if looped else nullcontext():
            if film_wav is not None:
                playing = room.speak(film_wav, wait=False)
            yield sitting
    finally:
        if playing is not None:
            playing.kill()
            playing.wait(5)
        sitting.close()


_WORDS_OF_THE_TRADE = {"purl": "P ER L", "neckband": "N EH K B AE N D"}
# What the other recogniser's dictionary lacks, in the sounds of that dictionary.


class SecondEars:
    """Another recogniser, with another model: it hears which of several sentences was said."""

    def __init__(self) -> None:
        """Load the model."""
        from pocketsphinx import Decoder

        # Wide beams, and no second pass over the words: a whole sentence has to be found, or none.
        wide = {"beam": 1e-120, "wbeam": 1e-100, "pbeam": 1e-120, "bestpath": False}
        self._decoder: Any = Decoder(loglevel="FATAL", samprate=16_000, lm=None, **wide)
        for word, sounds in _WORDS_OF_THE_TRADE.items():
            self._decoder.add_word(word, sounds, True)
        self._grammars = 0

    def heard(self, pcm: bytes, sentences: Sequence[str]) -> str:
        """Return the sentence that is most like what was said; empty where none is."""
        self._grammars += 1
        name = f"g{self._grammars}"
        choices = " | ".join(sentences)
        self._decoder.add_jsgf_string(name, f"#JSGF V1.0;\ngrammar {name};\npublic <said> = {choices};\n")
        self._decoder.activate_search(name)
        self._decoder.start_utt()
        for at in range(0, len(pcm), 4096):
            self._decoder.process_raw(pcm[at : at + 4096])
        self._decoder.end_utt()
        found = self._decoder.hyp()
        return " ".join(found.hypstr.split()) if found is not None else ""


def plain_words(lines: Sequence[str]) -> str:
    """Return lines as bare words in lower case, as they are said."""
    said = " ".join(spell_out(line) for line in lines)
    return " ".join(re.findall(r"[a-z]+", said.casefold()))


def with_other_numbers(sentence: str) -> set[str]:
    """Return a sentence with each of its numbers one off and ten off."""
    split, found = sentence.split(), set()
    for start in range(len(split)):
        for end in range(len(split), start, -1):
            value = number(split[start:end])
            if value is None or (start and number(split[start - 1 : end]) is not None):
                continue
            for other in (value - 1, value + 1, value + 10):
                if other > 0:
                    found.add(" ".join([*split[:start], words(other), *split[end:]]))
            break
    return found


def understood(exchanges: Sequence[Exchange], ears: SecondEars) -> list[tuple[str, str]]:
    """Hear every answer again among all answers and the same with other numbers.

    Returns:
        What should have been said and what was heard, for each exchange that was answered.
    """
    answers = {plain_words(each.lines) for each in exchanges if each.lines}
    found = []
    for each in exchanges:
        if not each.lines:
            continue
        wanted = plain_words(each.lines)
        choices = sorted(answers | with_other_numbers(wanted))
        found.append((wanted, ears.heard(_from_first_word(each), choices)))
    return found


def _from_first_word(exchange: Exchange) -> bytes:
    """Leave out the silence around what was said, but for a fifth of a second."""
    samples = array("h", exchange.said)
    loud = [at for at, value in enumerate(samples) if abs(value) > LOUD]
    if not loud:
        return b""
    return samples[max(0, loud[0] - 3200) : loud[-1] + 3200].tobytes()


def without_counts(lines: Sequence[str]) -> list[str]:
    """Leave out what depends on how fast she knits: when a count is asked for."""
    return [line for line in lines if not line.startswith(("Count now", "Done so far"))]


def children(process_id: int) -> list[int]:
    """List the processes that a process has started and that its own have."""
    found: list[int] = []
    for task in Path(f"/proc/{process_id}/task").iterdir():
        for each in map(int, (task / "children").read_text().split()):
            found += [each, *children(each)]
    return found


def process_cost(process_id: int) -> tuple[float, float]:
    """Return the CPU time a process has taken and the memory it holds. Unit: s, MB."""
    fields = Path(f"/proc/{process_id}/stat").read_text().rpartition(")")[2].split()
    ticks = int(fields[11]) + int(fields[12])
    pages = int(Path(f"/proc/{process_id}/statm").read_text().split()[1])
    return ticks / os.sysconf("SC_CLK_TCK"), pages * os.sysconf("SC_PAGE_SIZE") / 2**20
