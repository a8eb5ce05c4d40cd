"""With every question open, how often does a film answer it? Films of several kinds, no knitter.

    python -m tests.bench.voice.answers FOLDER RECORDINGS ORDERS [--minutes 10] [--kinds film quick …] [--first 400]
        [--development] [--none-open] [--address stepper]

FOLDER holds the material; RECORDINGS people's recordings with a manifest.tsv, of which those are taken that
`people.tsv` has under measuring (with --development under choosing, and the sentences of those learnt from);
ORDERS a folder of recorded orders, every second of which is taken. Held-out voices unless --development is
given. The kinds: `film`, as elsewhere; `quick`, a dialogue of which half the lines hold an answer; `uneven`, the
same with stretches up to 18 dB softer than others; `babble`, four at once; `sentences` and `orders`, people, with
soft music; `called`, a film of which half the lines hold what counts behind the word or as an answer ("I don't
know"); `breaks`, a film that is silent for 50 s again and again, and goes on with an answer. --none-open leaves no question open: then what is heard are false cues. What is answered with the low
tone is counted beside. The rate comes with the exact interval of Poisson.
"""

from __future__ import annotations

import argparse
import csv
import random
from collections.abc import Sequence
from pathlib import Path

import numpy as np

from stepper.ears.bundled.moonshine import MoonshineRecogniser
from stepper.ears.wordings import Reply
from stepper.sitting.project_file import load_project
from stepper.sitting.recogniser_wordings import list_wordings
from tests.bench.voice.__main__ import SAMPLE, rate
from tests.bench.voice.film import babble, film, loudness, music
from tests.bench.voice.material import Clip, clips, read as read_clip
from tests.bench.voice.people import read
from tests.bench.voice.stream import as_16_bit, hear
from tests.bench.voice.voices import RATE_HZ

KINDS = ("film", "quick", "uneven", "babble", "sentences", "orders", "called", "breaks")
_ANSWERS = ("Yes.", "No.", "One.", "Two.", "Four.", "Seven.", "Nine.", "Not now.", "I don't know.")
_READ_ALOUD = ("librispeech", "ljspeech", "common-voice", "alphanumeric-duke", "hymel-keywords")
_SOFTEST_DB = -18.0
_TALKS_S, _SILENT_S, _ALONE_S, _SILENCE = 30.0, 50.0, 2.0, 0.003


def uneven(talk: Sequence[Clip], seconds: float, seed: int) -> np.ndarray:
    """Let voices talk, now loud, now soft."""
    source, sound, at = random.Random(seed), film(talk, seconds, seed), 0
    while at < len(sound):
        count = round(source.uniform(2, 12) * RATE_HZ)
        sound[at : at + count] *= 10 ** (source.uniform(_SOFTEST_DB, 0) / 20)
        at += count
    return sound


def breaks(talk: Sequence[Clip], answers: Sequence[Clip], seconds: float, seed: int) -> np.ndarray:
    """Let a film talk, be silent for longer than the room is measured, and say an answer with nothing behind."""
    source, sound, at = random.Random(seed), film(talk, seconds, seed), _TALKS_S
    while at + _SILENT_S + _ALONE_S < seconds:
        begin, end = (round(each * RATE_HZ) for each in (at, at + _SILENT_S))
        sound[begin : end + round(_ALONE_S * RATE_HZ)] *= _SILENCE
        said = read_clip(source.choice(answers)).astype(np.float32) / 32_768
        sound[end : end + len(said)] += said
        at += _TALKS_S + _SILENT_S
    return sound


def strung(recordings: Sequence[Path], seconds: float, seed: int) -> np.ndarray:
    """Let people say one thing after another, with soft music behind."""
    source, parts, count = random.Random(seed), list[np.ndarray](), 0
    recordings = list(recordings)
    source.shuffle(recordings)
    while count < seconds * RATE_HZ:
        for path in recordings:
            said = np.frombuffer(read(path), np.int16).astype(np.float32) / 32_768
            said = said * (0.05 * source.uniform(0.5, 1) / loudness(said))
            pause = np.zeros(round(source.choice((0.15, 0.3, 0.6, 1.6)) * RATE_HZ), np.float32)
            parts += [said, pause]
            count += len(said) + len(pause)
            if count >= seconds * RATE_HZ:
                break
    return np.concatenate(parts)[: round(seconds * RATE_HZ)] + music(seconds, seed) * 0.006


def read_aloud(folder: Path, development: bool) -> list[Path]:
    """List recorded sentences and numbers by the people of a part."""
    parts = {"choosing"} if development else {"measuring"}
    with (Path(__file__).parent / "people.tsv").open(encoding="utf-8") as file:
        part_of = {row["speaker"]: row["part"] for row in csv.DictReader(file, delimiter="\t")}
    with (folder / "manifest.tsv").open(encoding="utf-8") as file:
        rows = [row for row in csv.DictReader(file, delimiter="\t") if row["corpus"] in _READ_ALOUD]
    learnt = {"training"} if development else set()
    return [
        folder / row["file"]
        for row in rows
        if part_of.get(row["speaker"]) in (parts | learnt if row["corpus"] == "librispeech" else parts)
    ]


class Films:
    """Makes the sound of each kind."""

    def __init__(self, args: argparse.Namespace) -> None:
        """Read what there is."""
        found = clips(args.folder, not args.development)
        self._long = [clip for clip in found if clip.kind == "talk"]
        self._short = [clip for clip in found if clip.kind == "short talk"]
        self._called = [clip for clip in found if clip.kind == "called talk"]
        self._bare = [clip for clip in (*self._short, *self._called) if clip.said in _ANSWERS]
        self._sentences = read_aloud(args.recordings, args.development)
        self._orders = sorted(args.orders.rglob("*.opus"))[0 if args.development else 1 :: 2]

    def make(self, kind: str, seconds: float, seed: int) -> np.ndarray:
        """Make so much of a kind; float, at the loudness of all films here."""
        sounds = {
            "film": lambda: film(self._long, seconds, seed),
            "quick": lambda: film(self._short * 2 + self._long, seconds, seed),
            "uneven": lambda: uneven(self._short + self._long, seconds, seed),
            "babble": lambda: babble(self._short + self._long, seconds, seed),
            "sentences": lambda: strung(self._sentences, seconds, seed),
            "orders": lambda: strung(self._orders, seconds, seed),
            "breaks": lambda: breaks(self._long, self._bare, seconds, seed),
            "called": lambda: film(self._called * (len(self._long) // len(self._called)) + self._long, seconds, seed),
        }
        sound = sounds[kind]()
        return sound * 0.05 / loudness(sound)


def main() -> None:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("folder", type=Path)
    parser.add_argument("recordings", type=Path)
    parser.add_argument("orders", type=Path)
    parser.add_argument("--minutes", type=float, default=10, help="of each kind")
    parser.add_argument("--kinds", nargs="+", choices=KINDS, default=KINDS)
    parser.add_argument("--first", type=int, default=400, help="seed of the first film")
    parser.add_argument("--development", action="store_true")
    parser.add_argument("--none-open", action="store_true")
    parser.add_argument("--address", default="", help="the address word is asked for; not unless given")
    args = parser.parse_args()
    asked = frozenset[Reply]() if args.none_open else frozenset(Reply)
    recogniser = MoonshineRecogniser(
        list_wordings(load_project(SAMPLE).plan),
        address=args.address or "stepper",
        is_addressed=lambda: bool(args.address),
        asked=lambda: asked,
    )
    films, seconds = Films(args), args.minutes * 60
    taken, hours = list[str](), 0.0
    for kind in args.kinds:
        sound = films.make(kind, seconds, args.first + KINDS.index(kind))
        outcome = hear(as_16_bit(sound), recogniser)
        heard = [(round(at, 1), text) for at, text in outcome.heard]
        print(
            f"{kind:9} {args.minutes:g} min: {len(heard)} taken {heard}, {outcome.refused} times the low tone, "
            f"CPU {outcome.all_cpu_s / seconds:.1%} of a core",
            flush=True,
        )
        taken += [text for _, text in heard]
        hours += seconds / 3600
    recogniser.close()
    print(f"all: {rate(len(taken), hours)} in {hours:.2f} h: {taken}")


if __name__ == "__main__":
    main()
