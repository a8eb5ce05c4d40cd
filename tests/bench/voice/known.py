"""Is she heard better where her voice is known? Her own clips, voice by voice and person by person, known or not.

    python -m tests.bench.voice.known FOLDER RECORDINGS OUT [--plain] [--rows cue count "addressed cue"
        "addressed count" talk answers people films alone] [--ratios 99 20 10 5] [--orders ORDERS] [--hours 10]
        [--cores 16] [--development]
    python -m tests.bench.voice.large --beside PLAIN OUT

FOLDER and RECORDINGS are as for `large`. A voice is known by 15 s of its talk, a person by the words that answer nothing;
measured are a voice's cues, counts and, for what is heard in it at all, talk; of people who said ten words or more those
that answer, alone, said twice, every question open (`answers`), and behind the word (`people`). The film is of the other
voices. 99 is a quiet room. In `films` and `alone`, as in `large`, which read ORDERS, nobody says a cue, and another of those
people is known each five minutes. --plain knows nobody. OUT gets the lines that `large` writes.
"""

from __future__ import annotations

import argparse
import csv
import json
import os
import random
from collections import defaultdict
from collections.abc import Iterator
from itertools import cycle
from multiprocessing import get_context
from pathlib import Path

import numpy as np

from stepper.ears.known_voice import KnowingRecogniser, KnownVoice, mean_of, pieces_of
from stepper.ears.speaker_embedding import SpeakerEncoder
from tests.bench.voice.large import FILMS, Answer, Player, Stream, film_streams, told
from tests.bench.voice.material import CLOSED, Clip, clips
from tests.bench.voice.material import read as read_clip
from tests.bench.voice.people import read
from tests.bench.voice.single_words import ANSWERS, levelled
from tests.bench.voice.stream import as_16_bit
from tests.bench.voice.voices import RATE_HZ, trimmed

OF_VOICES, OF_PEOPLE = ("cue", "count", "addressed cue", "addressed count", "talk"), ("answers", "people")
ROWS = (*OF_VOICES, *OF_PEOPLE, *FILMS)
QUIET = 99.0
_LEARNT_S, _FEWEST_CLIPS, _MOST_CLIPS, _FEWEST_LEARNT = 15, 10, 20, 6
_HISS = 3e-4

Job = tuple[str, Stream]
"""Who speaks, and the stream."""


class People:
    """The people of a part who said enough words to be known by some and measured by others."""

    def __init__(self, folder: Path, part: str) -> None:
        """Look them up."""
        with (Path(__file__).parent / "people.tsv").open(encoding="utf-8") as file:
            parts = {(row["corpus"], row["speaker"]): row["part"] for row in csv.DictReader(file, delimiter="\t")}
        found: dict[str, list[tuple[str, Path]]] = defaultdict(list)
        with (folder / "manifest.tsv").open(encoding="utf-8") as file:
            for row in csv.DictReader(file, delimiter="\t"):
                is_word = row["corpus"] in ("speech-commands", "audiomnist")
                if is_word and parts.get((row["corpus"], row["speaker"])) == part:
                    found[f"{row['corpus']} {row['speaker']}"].append((row["text"].lower(), folder / row["file"]))
        self.learnt: dict[str, list[Path]] = {}
        self.answers: dict[str, list[tuple[str, Path]]] = {}
        for who, words in sorted(found.items()):
            if len(words) >= _FEWEST_CLIPS:
                random.Random(7).shuffle(words)
                answers = [each for each in words if each[0] in ANSWERS]
                learnt = [path for word, path in words if word not in ANSWERS]
                while len(learnt) < _FEWEST_LEARNT and len(answers) > _FEWEST_LEARNT // 2:
                    learnt.append(answers.pop()[1])
                self.learnt[who], self.answers[who] = learnt, answers


class Knowing:
    """Plays streams to a recogniser that knows who speaks."""

    def __init__(self, args: argparse.Namespace) -> None:
        """Load it."""
        self._player, self._encoder, self._plain = Player(args), SpeakerEncoder(), args.plain
        self._recogniser, self._talk = self._player.recogniser, self._player.talk
        self._clips = clips(args.folder, not args.development)
        self._people = People(args.recordings, "choosing" if args.development else "measuring")
        self._known: dict[str, KnownVoice] = {}

    def play(self, job: Job) -> tuple[str, int, list[Answer]]:
        """Play one stream."""
        who, stream = job
        if who not in self._known:
            pieces = pieces_of(self._speech(who))
            self._known[who] = KnownVoice(vector=mean_of([self._encoder.vector(piece) for piece in pieces]))
        knowing = KnowingRecogniser(self._recogniser, self._known[who], self._encoder)
        self._player.recogniser = self._recogniser if self._plain else knowing  # type: ignore[assignment]
        self._player.talk = [clip for clip in self._talk if clip.voice.label != who]
        return stream.row, stream.number, self._player.play(stream)

    def _speech(self, who: str) -> bytes:
        if who in self._people.learnt:
            sounds = [levelled(trimmed(np.frombuffer(read(path), np.int16))) for path in self._people.learnt[who]]
        else:
            hers = [clip for clip in self._clips if clip.voice.label == who and clip.kind in ("talk", "short talk")]
            sounds = [levelled(read_clip(clip)) for clip in hers]
            random.Random(3).shuffle(sounds)
        sound = np.concatenate(sounds)[: _LEARNT_S * RATE_HZ]
        return as_16_bit(sound + np.random.default_rng(2).standard_normal(len(sound)) * _HISS).tobytes()


def jobs(args: argparse.Namespace) -> Iterator[Job]:
    """List the streams."""
    found = clips(args.folder, not args.development)
    voices = sorted({clip.voice.label for clip in found if clip.kind == "cue"})
    people = People(args.recordings, "choosing" if args.development else "measuring")
    for ratio in args.ratios:
        room, name = None if ratio == QUIET else ratio, "clean" if ratio == QUIET else f"{ratio:g} dB"
        for number, who in enumerate(voices):
            for kind in set(OF_VOICES) & set(args.rows):
                said = [clip for clip in found if clip.voice.label == who and _is_said(clip, kind)]
                random.Random(kind).shuffle(said)
                parts = -(-len(said) // _MOST_CLIPS)
                for part in range(parts):
                    some = tuple(said[part::parts])
                    row = f"{kind} {name}"
                    yield who, Stream(part="cues", row=row, number=10 * number + part, ratio_db=room, said=some, kind=kind)
        for of in set(OF_PEOPLE) & set(args.rows):
            for number, (who, words) in enumerate(people.answers.items()):
                row = f"{of} {name}"
                yield who, Stream(part=of, row=row, number=500 + number, ratio_db=room, said=tuple(words))
    yield from zip(cycle(people.learnt), film_streams(args), strict=False)


def _is_said(clip: Clip, kind: str) -> bool:
    if kind == "talk":
        return clip.kind in ("talk", "short talk")
    return clip.kind == kind and clip.address in ("", "stepper") and (kind.endswith("count") or clip.said in CLOSED)


_knowing: list[Knowing] = []


def _begin(args: argparse.Namespace) -> None:
    os.environ["OMP_NUM_THREADS"] = "1"
    _knowing.append(Knowing(args))


def _play(job: Job) -> tuple[str, int, list[Answer]]:
    return _knowing[0].play(job)


def main() -> None:
    """Play the rows and print them."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("folder", type=Path)
    parser.add_argument("recordings", type=Path)
    parser.add_argument("out", type=Path)
    parser.add_argument("--rows", nargs="+", choices=ROWS, default=(*OF_VOICES, *OF_PEOPLE))
    parser.add_argument("--ratios", nargs="+", type=float, default=(QUIET, 20.0, 10.0, 5.0))
    parser.add_argument("--cores", type=int, default=os.cpu_count() or 1)
    parser.add_argument("--orders", type=Path, help="recorded orders, for the films")
    parser.add_argument("--hours", type=float, default=10.0, help="of film")
    parser.add_argument("--plain", action="store_true")
    parser.add_argument("--development", action="store_true")
    args = parser.parse_args()
    if args.orders is None and set(FILMS) & set(args.rows):
        parser.error("films hold orders: --orders")
    args.models = None
    with args.out.open("a") as file, get_context("spawn").Pool(args.cores, _begin, (args,)) as pool:
        for found in pool.imap_unordered(_play, jobs(args)):
            file.write(json.dumps(found) + "\n")
            file.flush()
    told(args.out)


if __name__ == "__main__":
    main()
