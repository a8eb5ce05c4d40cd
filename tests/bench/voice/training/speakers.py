"""Lets synthetic speakers say the texts: one folder of clips with an index of what each says.

    python -m tests.bench.voice.training.speakers CLIPS --styles FOLDER [--each 1500] [--people FOLDER] [--anew FILE]

Variants of eSpeak NG; Kokoro, its styles mixed two by two; a diphone voice of Festival; and those two again as
other people, by WORLD's analysis and synthesis (another throat, another pitch, smoothed as speech from averaged
parameters is). With --people, recordings too, WAV at 16 kHz: what is said in them is what the bundled recogniser
writes down, where it is sure of it.
"""

from __future__ import annotations

import argparse
import json
import random
import subprocess
from collections.abc import Callable, Iterator
from pathlib import Path

import numpy as np
import pyworld
from scipy.ndimage import uniform_filter1d
from scipy.signal import resample_poly

from stepper.ears.bundled.moonshine_model import MoonshineModel
from tests.bench.voice.training.texts import draw
from tests.bench.voice.voices import RATE_HZ, VOICES, kokoro_say, read_wav, through_file, trimmed

MEASURED = {voice.name for voice in VOICES}
_VARIANTS = Path("/usr/lib/x86_64-linux-gnu/espeak-ng-data/voices/!v")
_UNLIKE_PEOPLE = ("croak", "whisper", "klatt5", "UniRobot", "robosoft", "Demonic", "Half-Life", "Alien", "Mike",
                  "iven", "announcer", "fast_test")  # fmt: skip
_ACCENTS = (*["en-us"] * 4, *["en-gb"] * 3, "en-gb-x-rp", "en-gb-x-gbclan", "en-gb-x-gbcwmd", "en-us-nyc")
_SHORTEST_S, _LONGEST_S = 0.5, 5.2
_FEWEST_WORDS, _SURE_EACH_WORD = 3, -0.3

Speaker = Callable[[str], np.ndarray]
"""Says a text: 16 kHz, signed 16-bit."""


def at_16_khz(sound: np.ndarray, rate: int) -> np.ndarray:
    divisor = np.gcd(rate, RATE_HZ)
    return trimmed(resample_poly(sound.astype(np.float64), RATE_HZ // divisor, rate // divisor))


def espeak(source: random.Random) -> Speaker:
    """Draw an accent and a variant that are not measured with."""
    used = {name.rpartition("+")[2] for name in MEASURED if "+" in name}
    variants = sorted(
        path.name
        for path in _VARIANTS.iterdir()
        if path.name not in used and not path.name.startswith(_UNLIKE_PEOPLE)
    )

    def say(text: str) -> np.ndarray:
        voice = f"{source.choice(_ACCENTS)}+{source.choice(variants)}"
        speed, pitch = str(source.randint(125, 205)), str(source.randint(25, 75))
        command = ["espeak-ng", "-v", voice, "-s", speed, "-p", pitch, "-w", "WAV", "--", text]
        return at_16_khz(*through_file(command, ""))

    return say


def diphone(source: random.Random) -> Speaker:
    """The speaker "ked" of Festival."""

    def say(text: str) -> np.ndarray:
        slower = f"(Parameter.set 'Duration_Stretch {source.uniform(0.85, 1.25):.2f})"
        command = ["text2wave", "-eval", f"(begin (voice_ked_diphone) {slower})", "-o", "WAV"]
        return at_16_khz(*through_file(command, text))

    return say


def kokoro(source: random.Random, styles: Path) -> Speaker:
    """Mix two styles, of which at least one is of an English speaker; none that is measured with."""
    names = [path.stem for path in sorted(styles.glob("*.bin")) if path.stem not in MEASURED]
    english = [name for name in names if name[0] in "ab"]
    foreign = [name for name in names if name[0] not in "ab"]
    style = {name: np.fromfile(styles / f"{name}.bin", np.float32).reshape(510, 256) for name in names}

    def say(text: str) -> np.ndarray:
        one = source.choice(english)
        others, share = source.choices(
            (([one], 0.0), (english, source.uniform(0.3, 0.7)), (foreign, source.uniform(0.25, 0.65))), (45, 35, 20)
        )[0]
        other = source.choice(others)
        mixed = style[one] * (1 - share) + style[other] * share
        return at_16_khz(*kokoro_say(text, one[0] == "b", source.uniform(0.82, 1.25), mixed))

    return say


def another(sound: np.ndarray, source: np.random.Generator) -> np.ndarray:
    """Make another speaker of a clip: another length of throat, pitch, liveliness and pace.

    Half of them are smoothed over frequency and time too, as speech from averaged parameters is.
    """
    wave = sound.astype(np.float64) / 32_768
    pitch, times = pyworld.dio(wave, RATE_HZ, f0_floor=55, f0_ceil=500)
    pitch = pyworld.stonemask(wave, pitch, times, RATE_HZ)
    envelope = np.log(pyworld.cheaptrick(wave, pitch, times, RATE_HZ) + 1e-12)
    breath = pyworld.d4c(wave, pitch, times, RATE_HZ)
    bins = envelope.shape[1]
    places = np.clip(np.arange(bins) / source.uniform(0.86, 1.2), 0, bins - 1)
    envelope = np.array([np.interp(places, np.arange(bins), row) for row in envelope])
    if source.random() < 0.5:
        cepstrum = np.fft.irfft(envelope, axis=1)
        kept = int(source.choice((18, 24, 32, 40)))
        cepstrum[:, kept : cepstrum.shape[1] - kept + 1] = 0
        envelope = uniform_filter1d(np.fft.rfft(cepstrum, axis=1).real, int(source.choice((3, 5, 7))), axis=0)
    voiced = pitch > 0
    middle = np.median(pitch[voiced]) if voiced.any() else 120.0
    higher = np.clip(source.uniform(75, 260) / middle, 0.62, 1.6)
    tune = (np.maximum(pitch, 1.0) / middle) ** source.uniform(0.2, 1.3)
    breath = np.clip(breath * source.uniform(0.2, 1.0) + max(0.0, source.uniform(-0.8, 0.4)), 0.001, 0.999)
    period = 5 * source.uniform(0.82, 1.2)
    made = pyworld.synthesize(
        np.where(voiced, middle * higher * tune, 0.0), np.exp(envelope), breath, RATE_HZ, frame_period=period
    )
    return (made / np.abs(made).max() * 16_384).astype(np.int16)


def people(folder: Path) -> Iterator[tuple[str, np.ndarray]]:
    """Give the recordings of a folder that are as long as a cue may be, with what was written down of them."""
    model = MoonshineModel()
    for path in sorted(folder.glob("*.wav")):
        sound = trimmed(read_wav(path)[0].astype(np.float64))
        if not _SHORTEST_S < len(sound) / RATE_HZ < _LONGEST_S:
            continue
        text, likely = model.transcribe(model.encode(sound.tobytes()))
        words = len(text.split())
        if words >= _FEWEST_WORDS and likely / words >= _SURE_EACH_WORD:
            yield text, sound


def index(folder: Path) -> Iterator[dict[str, str]]:
    """Give the rows of a folder of clips: file, text, kind."""
    for line in (folder / "index.jsonl").read_text(encoding="utf-8").splitlines():
        yield json.loads(line)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("folder", type=Path)
    parser.add_argument("--styles", type=Path, required=True)
    parser.add_argument("--each", type=int, default=1500)
    parser.add_argument("--people", type=Path)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--anew", type=Path, help="wordings that earlier clips do not say yet, one a line")
    args = parser.parse_args()
    source = random.Random(args.seed)
    anew = args.anew.read_text(encoding="utf-8").splitlines() if args.anew else []
    args.folder.mkdir(parents=True, exist_ok=True)
    speakers = {
        "espeak": (espeak(source), args.each * 4),
        "kokoro": (kokoro(source, args.styles), args.each),
        "diphone": (diphone(source), args.each // 6),
    }
    with (args.folder / "index.jsonl").open("a", encoding="utf-8") as rows:
        made: list[tuple[str, str, np.ndarray]] = []

        def keep(name: str, text: str, kind: str, sound: np.ndarray) -> None:
            np.save(args.folder / f"{name}.npy", sound)
            rows.write(json.dumps({"file": f"{name}.npy", "text": text, "kind": kind}) + "\n")

        for family, (say, count) in speakers.items():
            for number in range(count):
                text, kind = draw(source, anew)
                try:
                    sound = say(text)
                except subprocess.CalledProcessError as error:  # now and then a synthesiser dies of a text
                    print(f"{family}: {error}")
                    continue
                if len(sound) > _LONGEST_S * RATE_HZ:
                    continue
                keep(f"{family}_{args.seed}_{number}", text, kind, sound)
                if family != "espeak":
                    made.append((text, kind, sound))
        for number, (text, sound) in enumerate(people(args.people) if args.people else ()):
            keep(f"people_{args.seed}_{number}", text, "people", sound)
            made.append((text, "people", sound))
        numbers = np.random.default_rng(args.seed)
        for number in range(args.each):
            text, kind, sound = source.choice(made)
            keep(f"another_{args.seed}_{number}", text, kind, another(sound, numbers))


if __name__ == "__main__":
    main()
