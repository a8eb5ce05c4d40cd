"""One long stream of sound with cues in it, and what a recogniser makes of it, as through a microphone."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from itertools import cycle, islice

import numpy as np

from stepper.ears.listen import listen, load_speech_detector
from stepper.ears.ports import Finder, Foresighted, FoundAlone, Heard, Knower, LoneFinder, Place, Recogniser
from tests.bench.voice.film import film, loudness
from tests.bench.voice.material import Clip, read
from tests.bench.voice.voices import RATE_HZ

_BLOCK = RATE_HZ * 40 // 1000
_LATEST_S = 1.6


@dataclass(frozen=True, slots=True, kw_only=True)
class Event:
    """A cue in the stream."""

    clip: Clip
    start_s: float
    end_s: float


@dataclass(slots=True)
class Outcome:
    """What was heard, and how long it took."""

    heard: list[tuple[float, str]] = field(default_factory=list)
    """When the utterance was complete, in stream time, and its text."""
    known_s: list[float] = field(default_factory=list)
    """When each of them was known on a machine with nothing else to do: no block comes before its time, and
    each takes the processor's time that it took here. Unit: s, in stream time."""
    took_s: list[float] = field(default_factory=list)
    """How long the recogniser took over each utterance, as the clock on the wall goes."""
    cpu_s: list[float] = field(default_factory=list)
    utterances_s: list[float] = field(default_factory=list)
    refused: int = 0
    """How often something was answered with the low tone."""
    all_cpu_s: float = 0.0
    """Processor time for all of it: detector, gate and recogniser."""


class _Stream:
    """A microphone that gives a stream as fast as it is taken, and knows how far it is."""

    def __init__(self, sound: np.ndarray, passes: Callable[[float], object]) -> None:
        self._sound, self._passes, self.at_s = sound, passes, 0.0
        self._begun_s, self._cpu_s = 0.0, time.process_time()

    @property
    def now_s(self) -> float:
        """How late it is on a machine with nothing else to do."""
        return self._begun_s + time.process_time() - self._cpu_s

    def blocks(self) -> Iterator[bytes]:
        for start in range(0, len(self._sound), _BLOCK):
            self.at_s = (start + _BLOCK) / RATE_HZ
            self._passes(self.at_s)
            self._begun_s, self._cpu_s = max(self.now_s, self.at_s), time.process_time()
            yield self._sound[start : start + _BLOCK].tobytes()

    def close(self) -> None:
        pass


class _Watched:
    """A recogniser with a stop watch."""

    def __init__(self, inner: Recogniser, outcome: Outcome, stream: _Stream) -> None:
        self._inner, self._outcome, self._stream = inner, outcome, stream
        if isinstance(inner, Knower):
            self.is_hers = inner.is_hers

    def recognise(self, segment: bytes) -> Heard | None:
        wall, cpu = time.perf_counter(), time.process_time()
        heard = self._inner.recognise(segment)
        self._outcome.took_s.append(time.perf_counter() - wall)
        self._outcome.cpu_s.append(time.process_time() - cpu)
        self._outcome.utterances_s.append(self._stream.at_s)
        return heard

    def recognise_early(self, segment: bytes) -> Heard | None:
        return self._inner.recognise_early(segment) if isinstance(self._inner, Foresighted) else None

    def goes_on(self, segment: bytes, heard: Heard) -> bool:
        return isinstance(self._inner, Foresighted) and self._inner.goes_on(segment, heard)

    def find(self, sound: bytes) -> Place | None:
        return self._inner.find(sound) if isinstance(self._inner, Finder) else None

    def hears_alone(self) -> bool:
        return isinstance(self._inner, LoneFinder) and self._inner.hears_alone()

    def find_alone(self, sound: bytes) -> FoundAlone | None:
        return self._inner.find_alone(sound) if isinstance(self._inner, LoneFinder) else None

    def close(self) -> None:
        pass


def hear(
    sound: np.ndarray, recogniser: Recogniser, passes: Callable[[float], object] = lambda at_s: None
) -> Outcome:
    """Let a recogniser listen to a stream.

    Args:
        sound: The stream.
        recogniser: Who listens.
        passes: Told before each block where that ends. Unit: s.
    """
    outcome, stream = Outcome(), _Stream(sound, passes)
    began = time.process_time()
    for heard in listen(stream, _Watched(recogniser, outcome, stream), load_speech_detector()):
        if heard.text:
            outcome.heard.append((stream.at_s, heard.text))
            outcome.known_s.append(stream.now_s)
        else:
            outcome.refused += 1
    outcome.all_cpu_s = time.process_time() - began
    return outcome


def with_cues(
    clips: Sequence[Clip],
    talk: Sequence[Clip],
    ratio_db: float | None,
    seed: int,
    pauses_s: Sequence[float] = (3.0,),
) -> tuple[np.ndarray, list[Event]]:
    """Put cues into the sound of a film, each so many dB louder than the film.

    Args:
        clips: The cues, in order.
        talk: What the film says.
        ratio_db: None for a quiet room.
        seed: The film's.
        pauses_s: What follows each cue, in turn. Unit: s.
    """
    lengths = [len(read(clip)) / RATE_HZ for clip in clips]
    pauses = list(islice(cycle(pauses_s), len(clips)))
    total = 20 + sum(lengths) + sum(pauses)
    if ratio_db is None:
        behind = np.random.default_rng(seed).standard_normal(round(total * RATE_HZ)).astype(np.float32) * 3e-4
    else:
        behind = film(talk, total, seed)
        behind *= 0.1 * 10 ** (-ratio_db / 20) / loudness(behind)
    sound, at, events = behind.copy(), 16.0, []
    for clip, length, pause in zip(clips, lengths, pauses, strict=True):
        speech = read(clip).astype(np.float32) / 32_768
        speech *= 0.1 / loudness(speech)
        start = round(at * RATE_HZ)
        sound[start : start + len(speech)] += speech
        events.append(Event(clip=clip, start_s=at, end_s=at + length))
        at += length + pause
    return as_16_bit(sound), events


def as_16_bit(sound: np.ndarray) -> np.ndarray:
    """Turn a float stream into signed 16-bit."""
    return (np.clip(sound / max(1.0, np.abs(sound).max()), -1, 1) * 32_767).astype(np.int16)


def known_after(event: Event, outcome: Outcome) -> float | None:
    """Give how long after its end a cue was known; None if nothing was heard in answer to it. Unit: s."""
    for (at, _), known_s in zip(outcome.heard, outcome.known_s, strict=True):
        if event.start_s < at <= event.end_s + _LATEST_S:
            return known_s - event.end_s
    return None


def answer_to(event: Event, outcome: Outcome) -> tuple[str | None, float]:
    """Give what was heard in answer to a cue, and how long after its end the utterance was complete."""
    for at, text in outcome.heard:
        if event.start_s < at <= event.end_s + _LATEST_S:
            return text, at - event.end_s
    return None, 0.0
