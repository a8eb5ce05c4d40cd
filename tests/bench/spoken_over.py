"""Does the program stop when she speaks over it, and only then?

    python -m tests.bench.spoken_over simulated FOLDER [--lines 120] [--film 10] [--gain -6] [--echoes 0.3] [--voice espeak]
    python -m tests.bench.spoken_over room FOLDER [--trials 20] [--film 10] [--gain -6] [--echoes 0.3] [--alone]

FOLDER holds the clips of `tests.bench.voice.material`; the voices held out from every choice speak. The room is made: an
impulse response of a direct path, a tail of noise that falls by 60 dB in so many seconds, the band of a small loudspeaker
and its soft clipping. --gain is how much softer the program's voice comes back than it was given out; she is at -20 dB.
"simulated" feeds canceller, detector and decision as fast as they go. "room" runs the program's speaker, ears and door in
a room of null devices, in real time, and prints what was heard; where nothing came of a cue she says it again a second after
it fell silent.
"""

from __future__ import annotations

import argparse
import os
import random
import subprocess
import tempfile
import threading
import time
from pathlib import Path

import numpy as np
from scipy.signal import butter, fftconvolve, resample_poly, sosfilt

from stepper.devices.played_sound import PlayedSound
from stepper.ears.echo import EchoCanceller
from stepper.ears.settings import HearingSettings
from stepper.ears.listen import load_speech_detector, measure_level_db
from stepper.ears.over_speech import OverSpeech
from stepper.language.aloud import spell_out
from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.natural import NaturalVoice
from stepper.mouth.open_speaker import open_speaker
from stepper.mouth.settings import SpeechSettings
from stepper.sitting.live_ears import LiveEars
from stepper.sitting.preferences import Preferences
from stepper.sitting.project_file import load_project
from tests.bench.voice.film import film, loudness
from tests.bench.voice.material import Clip, clips, read
from tests.bench.voice.voices import RATE_HZ
from tests.commands.garments import environment
from tests.sound_room import Room

SAMPLE = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"
HER_LOUDNESS = 0.1
BLOCK = RATE_HZ * 40 // 1000
CHUNK = 512


def lines() -> list[str]:
    """What the program says in a sitting of the sample: its steps, in order."""
    import sys

    with tempfile.TemporaryDirectory() as folder:
        copy = Path(folder) / "g.yaml"
        copy.write_bytes(SAMPLE.read_bytes())
        cues = "\n".join(["next step", "where are we", "next step", "how far"] * 70)
        said = subprocess.run(
            [sys.executable, "-m", "stepper", "knit", str(copy), "--plain", "--mute"],
            input=cues, capture_output=True, text=True, env={**environment(), "COLUMNS": "4000"},
        ).stdout  # fmt: skip
    found = [spell_out(line) for line in said.splitlines() if len(line) > 30]
    random.Random(3).shuffle(found)
    return found


def impulse(echoes_s: float, seed: int) -> np.ndarray:
    """Make an impulse response of power 1."""
    source = np.random.default_rng(seed)
    count = round(echoes_s * RATE_HZ)
    response = np.zeros(count + 33)
    response[32:-1] = source.standard_normal(count) * 10 ** (-3 * np.arange(count) / count) * 0.25
    response[32] += 1
    response = sosfilt(butter(2, [180, 6500], "bandpass", fs=RATE_HZ, output="sos"), response)
    return response / np.sqrt((response**2).sum())


def behind(talk: list[Clip], seconds: float, ratio_db: float | None, seed: int) -> np.ndarray:
    """Make the room's own sound: hiss, and a film so many dB softer than she is."""
    sound = np.random.default_rng(seed).standard_normal(round(seconds * RATE_HZ)) * 3e-4
    if ratio_db is not None:
        played = film(talk, seconds, seed)
        played *= HER_LOUDNESS * 10 ** (-ratio_db / 20) / loudness(played)
        sound += fftconvolve(played, impulse(0.4, 7))[: len(sound)]
    return sound


def near(clip: Clip) -> np.ndarray:
    """Read a clip as loud as she is."""
    sound = read(clip).astype(np.float64) / 32_768
    return sound * HER_LOUDNESS / loudness(sound)


def simulated(args: argparse.Namespace, talk: list[Clip], cues: list[Clip]) -> None:
    """Count false stops of the program alone, then how soon it stops for her, line after line."""
    voice = NaturalVoice(SpeechSettings()) if args.voice == "natural" else EspeakVoice(SpeechSettings())
    spoken = []
    for line in lines()[: args.lines]:
        pcm = np.frombuffer(voice.speech(line, 150), np.int16)
        divisor = np.gcd(voice.rate_hz, RATE_HZ)
        spoken.append(resample_poly(pcm.astype(float), RATE_HZ // divisor, voice.rate_hz // divisor))
    voice.close()
    gap, source = 3 * RATE_HZ, random.Random(args.seed)
    far, spans, at = [np.zeros(16 * RATE_HZ)], [], 16 * RATE_HZ
    for sound in spoken:
        spans.append((at, at + len(sound)))
        far += [sound, np.zeros(gap)]
        at += len(sound) + gap
    given = np.clip(np.concatenate(far), -32_768, 32_767).astype(np.int16)
    echo = fftconvolve(np.tanh(given / 16_384) / 2, impulse(args.echoes, args.seed))[: len(given)]
    echo = np.roll(echo, round(0.06 * RATE_HZ)) * 10 ** (args.gain / 20)
    room = echo + behind(talk, len(given) / RATE_HZ, args.film, args.seed)
    hers, said = np.zeros(len(given)), []
    for start, end in spans[5::6]:  # nobody interrupts every line
        if end - start > 1.5 * RATE_HZ:
            sound = near(source.choice(cues))
            begins = start + round(source.uniform(0.6, 1.2) * RATE_HZ)
            hers[begins : begins + len(sound)] += sound[: len(hers) - begins]
            said.append((begins, begins + len(sound)))
    minutes = sum(end - start for start, end in spans) / RATE_HZ / 60
    stops = _stops(room, given, spans)
    print(f"program alone: {len({line for line, _ in stops})} of {len(spans)} lines stopped in {minutes:.1f} minutes of speech", flush=True)
    stops = _stops(room + hers, given, spans)
    took = sorted(
        next((at - begins for _, at in stops if begins <= at <= ends + 0.3 * RATE_HZ), 10**9) / RATE_HZ for begins, ends in said
    )
    caught = [each for each in took if each < 60]
    print(
        f"she speaks over it: {len(caught)} of {len(said)} noticed while she speaks, after {np.median(caught or [9]):.2f} s, "
        f"nine in ten of these within {np.quantile(caught or [9], 0.9):.2f} s"
    )


def _stops(heard: np.ndarray, given: np.ndarray, spans: list[tuple[int, int]]) -> list[tuple[int, int]]:
    """List where each line would first be held back: its number, and the sample."""
    canceller, speech, over = EchoCanceller(), load_speech_detector(), OverSpeech()
    pcm = (np.clip(heard, -1, 1) * 32_767).astype(np.int16)
    speaking = np.zeros(len(pcm), bool)
    for start, end in spans:
        speaking[start : end + round(0.35 * RATE_HZ)] = True
    found, rest, at = [], b"", 0
    for start in range(0, len(pcm) - BLOCK, BLOCK):
        block, deaf = pcm[start : start + BLOCK].tobytes(), bool(speaking[start])
        if deaf:
            block = canceller.clean(block, given[start : start + BLOCK].tobytes(), RATE_HZ)
        rest += block
        while len(rest) >= CHUNK * 2:
            chunk, rest = rest[: CHUNK * 2], rest[CHUNK * 2 :]
            at += CHUNK
            level = measure_level_db(chunk)
            if not deaf:
                over.take_room(level)
            elif over.take(level, speech(chunk) if over.matters(level) else 0.0):
                line = max(number for number, (begins, _) in enumerate(spans) if begins <= at)
                if not any(each == line for each, _ in found):
                    found.append((line, at))
    return found


class Air(threading.Thread):
    """Carries sound from the loudspeaker to the microphone, with the room's own and hers, in real time."""

    def __init__(self, room: Room, response: np.ndarray, own: np.ndarray) -> None:
        super().__init__(daemon=True)
        self._out_of = subprocess.Popen(
            ["parecord", "-d", "spk.monitor", "--raw", "--format=s16le", "--channels=1", f"--rate={RATE_HZ}", "--latency-msec=10"],
            stdout=subprocess.PIPE, env=room.env,
        )  # fmt: skip
        self._into = subprocess.Popen(
            ["pacat", "-d", "micfeed", "--raw", "--format=s16le", "--channels=1", f"--rate={RATE_HZ}", "--latency-msec=150"],
            stdin=subprocess.PIPE, env=room.env,
        )  # fmt: skip
        self._response, self._own, self._at = response, own, 0
        self._hers = np.zeros(0)
        self.spoke_at = self.loud_at = 0.0
        self.ends = False

    def say(self, sound: np.ndarray) -> None:
        """Let her speak from the next moment on."""
        self.spoke_at = 0.0
        self._hers = sound

    def run(self) -> None:
        size = 160
        tail = np.zeros(len(self._response) - 1 + size)
        while not self.ends:
            block = np.frombuffer(self._out_of.stdout.read(size * 2), np.int16).astype(np.float64)
            if len(block) < size:
                return
            now = time.monotonic()
            if np.abs(block).max() > 300:
                self.loud_at = now
            tail[: -size] = tail[size:]
            tail[-size:] = 0
            tail += fftconvolve(np.tanh(block / 16_384) / 2, self._response)
            mixed = tail[:size].copy()
            own = self._own[self._at % (len(self._own) - size) :][:size]
            self._at += size
            hers, self._hers = self._hers[:size], self._hers[size:]
            if len(hers) and not self.spoke_at:
                self.spoke_at = now
            mixed += own
            mixed[: len(hers)] += hers
            self._into.stdin.write((np.clip(mixed, -1, 1) * 32_767).astype(np.int16).tobytes())
            self._into.stdin.flush()

    def close(self) -> None:
        self.ends = True
        self.join(2)
        for process in (self._out_of, self._into):
            process.kill()
            process.wait()


def in_room(args: argparse.Namespace, talk: list[Clip], cues: list[Clip]) -> None:
    """Let the program speak and her interrupt it, in real time."""
    folder = Path(tempfile.mkdtemp())
    room = Room(folder, dict(os.environ))
    room.start()
    os.environ.update(room.changed)
    response = impulse(args.echoes, args.seed) * 10 ** (args.gain / 20)
    air = Air(room, response, behind(talk, 120, args.film, args.seed))
    air.start()
    played, heard, told = PlayedSound(), [], []
    speaker, remark = open_speaker(SpeechSettings(engine="espeak"), told.append, played)
    assert remark is None, remark

    def hear(text: str, score: float) -> None:
        heard.append((time.monotonic(), text))
        if text:
            speaker.silence()

    ears = LiveEars(
        load_project(SAMPLE).plan, speaker, Preferences(hearing=HearingSettings(interrupt=True)), hear=hear, tell=lambda _, sentence: told.append(sentence),
        is_addressed=lambda: args.film is not None, played=played,
    )  # fmt: skip
    while not any("istening" in sentence for sentence in told):
        time.sleep(0.1)
    time.sleep(16 if args.film is not None else 4)
    source, texts = random.Random(args.seed), lines()
    texts = [line for line in texts if len(line) > 60]
    stopped, at_once, again, wrong, for_nothing, spoken_s = [], 0, 0, 0, 0, 0.0
    try:
        for line in texts[-8:]:  # it gets to know the room
            speaker.say(line)
        while speaker.speaking:
            time.sleep(0.05)
        assert not speaker.paused
        for number in range(args.trials):
            if not args.alone:  # nobody interrupts every line
                for line in source.sample(texts, 3):
                    speaker.say(line)
                while speaker.speaking:
                    time.sleep(0.05)
                speaker.silence()
                time.sleep(0.6)
            heard.clear()
            speaker.say(texts[number % len(texts)])
            began = time.monotonic()
            if args.alone:
                while speaker.speaking:
                    time.sleep(0.02)
                spoken_s += time.monotonic() - began
                if speaker.paused:
                    stopped.append(number)
                    print("  stopped:", texts[number % len(texts)], heard, flush=True)
                    speaker.silence()
                time.sleep(0.6)
                continue
            time.sleep(source.uniform(0.9, 1.6))
            clip = source.choice(cues)
            if speaker.paused or not speaker.speaking:  # stopped for nothing before she spoke: no trial
                for_nothing += speaker.paused
                speaker.silence()
                time.sleep(1.2)
                continue
            air.say(near(clip))
            held, asked_again_at = None, 0.0
            while time.monotonic() - began < 14 and not any(text for _, text in heard):
                if held is None and speaker.paused and time.monotonic() - air.loud_at > 0.08:
                    held = air.loud_at - air.spoke_at
                    asked_again_at = time.monotonic() + len(read(clip)) / RATE_HZ + 1.0
                if asked_again_at and time.monotonic() > asked_again_at:  # it is quiet now, and nothing came of it
                    air.say(near(clip))
                    asked_again_at = 0.0
                if held is not None and not speaker.paused:
                    break
                if held is None and not speaker.speaking and not speaker.paused:
                    break
                time.sleep(0.01)
            time.sleep(0.3)
            said = f"{clip.address} {clip.said}".strip()
            texts_heard = [text for _, text in heard]
            if held is not None:
                stopped.append(held)
                right = any(text == clip.said for text in texts_heard)
                at_once += right and asked_again_at > 0
                again += right and not asked_again_at
                wrong += any(text and text != clip.said for text in texts_heard)
            print(f"  {said!r} by {clip.voice.label}: silent after {held if held is None else round(held, 2)} s, heard {texts_heard}", flush=True)
            speaker.silence()
            while speaker.speaking:
                time.sleep(0.05)
            time.sleep(1.2)
    finally:
        ears.close()
        speaker.close()
        air.close()
        room.stop()
    if args.alone:
        print(f"program alone: {len(stopped)} of {args.trials} lines stopped, {spoken_s / 60:.1f} minutes of speech")
    else:
        print(
            f"she speaks over it: {len(stopped)} of {args.trials} stopped, silent after {np.median(stopped or [9]):.2f} s, nine in ten "
            f"within {np.quantile(stopped or [9], 0.9):.2f} s; understood at once {at_once}, said again {again}, another cue {wrong}; stopped before she spoke {for_nothing}"
        )
    print([sentence for sentence in told if "istening" not in sentence])


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("part", choices=("simulated", "room"))
    parser.add_argument("folder", type=Path)
    parser.add_argument("--lines", type=int, default=120)
    parser.add_argument("--trials", type=int, default=20)
    parser.add_argument("--film", type=float, help="how much softer than she a film is, dB; without it none is on")
    parser.add_argument("--gain", type=float, default=-6.0)
    parser.add_argument("--echoes", type=float, default=0.3, help="how long the room echoes, s")
    parser.add_argument("--voice", choices=("espeak", "natural"), default="espeak")
    parser.add_argument("--alone", action="store_true", help="she says nothing: count false stops")
    parser.add_argument("--seed", type=int, default=1)
    args = parser.parse_args()
    held_out = clips(args.folder, True)
    talk = [clip for clip in held_out if clip.kind == "talk"]
    kind = "addressed cue" if args.film is not None else "cue"
    cues = [clip for clip in held_out if clip.kind == kind and (not clip.address or clip.address == "stepper")]
    (simulated if args.part == "simulated" else in_room)(args, talk, cues)


if __name__ == "__main__":
    main()
