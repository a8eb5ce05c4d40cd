"""Rows of hundreds of clips and hours of film, on all cores of a machine, and two sets of weights clip by clip.

    python -m tests.bench.voice.large FOLDER RECORDINGS ORDERS OUT [--rows people answers cues films alone]
        [--cores 16] [--models FOLDER] [--films 1] [--hours 10] [--each 999] [--development]
    python -m tests.bench.voice.large --beside OUT OTHER

FOLDER, RECORDINGS and ORDERS are as for `answers`. Rows: `people`, words behind the address word, all of those under
measuring in `people.tsv` (with --development under choosing), in so many films; `answers`, those that answer a question,
alone, said twice, every question open; `cues`, cues and counts, alone and behind the word; `films`, hours of film with the
word asked for, no question open; `alone`, the same without it. Clean, 20, 10 and 5 dB above the film. A row is cut into streams of some thirty clips,
each with its own film. OUT gets a line of JSON for each stream as it is done: the row, the stream, what was said, what
was heard. --models takes the networks of another folder; --beside then tells how many clips of each row are lost and
won by them, with the chance of that if neither were better (sign test).
"""

from __future__ import annotations

import argparse
import json
import math
import os
import random
import time
from collections import defaultdict
from collections.abc import Iterator, Sequence
from multiprocessing import get_context
from pathlib import Path
from typing import Any

import numpy as np

from stepper.ears.bundled.moonshine import MoonshineRecogniser
from stepper.ears.bundled.moonshine_model import MoonshineModel
from stepper.ears.bundled.sound_model import SoundModel
from stepper.ears.wordings import Reply
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.records import dataclass
from stepper.sitting.project_file import load_project
from stepper.sitting.recogniser_wordings import list_wordings
from tests.bench.voice.__main__ import RATIOS, SAMPLE, rate, share
from tests.bench.voice.answers import KINDS, Films
from tests.bench.voice.material import CLOSED, Clip, clips
from tests.bench.voice.people import read
from tests.bench.voice.single_words import ANSWERS, DIGITS, Asked, answer_to_word, in_room, levelled, recorded
from tests.bench.voice.stream import answer_to, as_16_bit, hear, with_cues
from tests.bench.voice.voices import RATE_HZ, VOICES, say, trimmed

FILMS = ("films", "alone")
ROWS = ("people", "answers", "cues", *FILMS)
_EACH, _FILM_S = 30, 300
_AGAIN_S, _APART_S, _BEFORE_S = 2.0, 3.0, 16.0
_KINDS = ("cue", "count", "addressed cue", "addressed count")
_SHARES = {"film": 25, "quick": 15, "uneven": 10, "called": 10, "babble": 5, "sentences": 15, "orders": 15, "breaks": 5}
"""How many of a hundred minutes of film are of each kind."""

Answer = tuple[str, str | None, bool]
"""What was said, what was heard in answer, and whether that is the same."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Stream:
    """One stream of a row."""

    part: str
    row: str
    number: int
    ratio_db: float | None = None
    said: tuple[Any, ...] = ()
    """Clips, or words with their recordings."""
    kind: str = ""


class Player:
    """Plays streams to one recogniser."""

    def __init__(self, args: argparse.Namespace) -> None:
        """Load it."""
        self.args, self.plan = args, load_project(SAMPLE).plan
        self.is_addressed, self.asked = True, lambda: frozenset[Reply]()
        networks: dict[str, Any] = {}
        if args.models:
            networks = {
                "model": MoonshineModel(encoder=args.models / "encoder.onnx"),
                "sounds": SoundModel(args.models / "sounds.onnx"),
            }
        self.recogniser = MoonshineRecogniser(
            list_wordings(self.plan), address="stepper", is_addressed=lambda: self.is_addressed,
            asked=lambda: self.asked(), **networks,
        )  # fmt: skip
        self.talk = [clip for clip in clips(args.folder, not args.development) if clip.kind == "talk"]
        self.films: Films | None = None
        self.fronts = [
            say(voice, "stepper", 1.0, None)
            for voice in VOICES
            if voice.family in ("espeak", "flite") and voice.held_out != args.development
        ]

    def play(self, stream: Stream) -> list[Answer]:
        """Play a stream; of a film what was heard in it is all there is."""
        self.is_addressed = stream.part in ("people", "films") or stream.kind.startswith("addressed")
        self.asked = lambda: frozenset[Reply]()
        if stream.part in FILMS:
            return self._film(stream)
        return self._cues(stream) if stream.part == "cues" else self._words(stream)

    def same(self, said: str, heard: str | None) -> bool:
        """Return whether two texts are the same cue."""
        one, other = (understand(text, self.plan) for text in (said, heard or ""))
        return bool(heard) and not isinstance(one, NotUnderstood) and one == other

    def _film(self, stream: Stream) -> list[Answer]:
        self.films = self.films or Films(self.args)
        sound = self.films.make(stream.kind, _FILM_S, 5000 + stream.number)
        return [("", text, False) for _, text in hear(as_16_bit(sound), self.recogniser).heard]

    def _cues(self, stream: Stream) -> list[Answer]:
        sound, events = with_cues(stream.said, self.talk, stream.ratio_db, 100 + stream.number)
        outcome = hear(sound, self.recogniser)
        answers = [(event.clip.said, answer_to(event, outcome)[0]) for event in events]
        return [(said, heard, self.same(said, heard)) for said, heard in answers]

    def _words(self, stream: Stream) -> list[Answer]:
        source, at, said = random.Random(stream.number), _BEFORE_S, list[tuple[str, float, np.ndarray]]()
        for word, path in stream.said:
            sound = levelled(trimmed(np.frombuffer(read(path), np.int16)))
            if stream.part == "people":
                gap = np.zeros(round(source.uniform(0.05, 0.2) * RATE_HZ), np.float32)
                sound = np.concatenate([levelled(source.choice(self.fronts)), gap, sound])
            for pause_s in (_APART_S,) if stream.part == "people" else (_AGAIN_S, _APART_S):
                said.append((word, at, sound))
                at += len(sound) / RATE_HZ + pause_s
        sound = in_room(said, at + 4, self.talk, stream.ratio_db, 100 + stream.number)
        ends = [(word, start_s + len(each) / RATE_HZ) for word, start_s, each in said]
        self.asked = asked = Asked(ends if stream.part == "people" else [])
        outcome = hear(as_16_bit(sound), self.recogniser, asked.at)
        answers = [(word, answer_to_word(start_s, len(each) / RATE_HZ, outcome)) for word, start_s, each in said]
        return [(word, heard, heard == word) for word, heard in answers]


def streams(args: argparse.Namespace) -> Iterator[Stream]:
    """List the streams of all rows."""
    known = recorded(args.recordings, "choosing" if args.development else "measuring")
    surest = tuple(each for each in list_wordings(load_project(SAMPLE).plan).called if " " not in each)
    for part, words in (("people", (*surest, *DIGITS)), ("answers", ANSWERS)):
        said = [(word, path) for word in dict.fromkeys(words) for path in sorted(known.get(word, ()))]
        yield from _cut(args, part, part, "", said, args.films if part == "people" else 1)
    found = clips(args.folder, not args.development)
    for kind in _KINDS:
        some = [each for each in found if each.kind == kind and each.address in ("", "stepper") and _is_cue(each)]
        yield from _cut(args, "cues", kind.replace("addressed", '"stepper" +'), kind, some, 1)
    yield from film_streams(args)


def film_streams(args: argparse.Namespace) -> Iterator[Stream]:
    """List the streams of films in which nobody says a cue."""
    for part in FILMS:
        if part in args.rows:
            for kind in KINDS:
                for number in range(max(1, round(args.hours * 3600 * _SHARES[kind] / 100 / _FILM_S))):
                    yield Stream(part=part, row=f"{part} {kind}", number=number, kind=kind)


def _is_cue(clip: Clip) -> bool:
    return clip.kind.endswith("count") or clip.said in CLOSED


def _cut(args: argparse.Namespace, part: str, row: str, kind: str, said: Sequence[Any], films: int) -> Iterator[Stream]:
    """Cut a row into streams, for each loudness and film."""
    if part not in args.rows:
        return
    said = list(said)
    random.Random(row).shuffle(said)
    said = said[: args.each]
    many = max(1, round(len(said) / _EACH))
    for name, ratio_db in RATIOS:
        for film in range(films if ratio_db is not None else 1):
            for at in range(many):
                yield Stream(
                    part=part, row=f"{row} {name}", number=1000 * film + at, ratio_db=ratio_db, said=tuple(said[at::many]), kind=kind
                )


def beside(path: Path, other: Path) -> None:
    """Print, of each row that both files have, how many clips are heard, lost and won by the other."""
    counts: dict[str, list[int]] = defaultdict(lambda: [0] * 5)
    one, two = (
        {(row, number): answers for row, number, answers in map(json.loads, each.read_text().splitlines())} for each in (path, other)
    )
    for (row, number), answers in one.items():
        for before, now in zip(answers, two.get((row, number), ()), strict=False):
            found = counts[row]
            for at, is_so in enumerate((True, before[2], now[2], before[2] and not now[2], now[2] and not before[2])):
                found[at] += is_so
    for row, (of, first, second, lost, won) in counts.items():
        differ = lost + won
        chance = min(1.0, 2 * sum(math.comb(differ, each) for each in range(min(lost, won) + 1)) / 2**differ)
        print(f"{row:32} heard {first} and {second} of {of}; lost {lost}, won {won}, by chance {chance:.2f}")


def told(path: Path) -> None:
    """Print the rows of a file."""
    rows: dict[str, list[list[Answer]]] = defaultdict(list)
    for line in path.read_text().splitlines():
        row, _, answers = json.loads(line)
        rows[row].append(answers)
    for row, found in rows.items():
        said = [each for answers in found for each in answers]
        if row.startswith(FILMS):
            hours = len(found) * _FILM_S / 3600
            print(f"{row:32} {rate(len(said), hours)} in {hours:.2f} h: {[heard for _, heard, _ in said]}")
            continue
        again = said[1::2] if row.startswith("answers") else []
        said = said[::2] if again else said
        wrong = sum(heard is not None and not right for _, heard, right in said)
        print(f"{row:32} heard {share(sum(right for *_, right in said), len(said))}, another {wrong}")
        if again:
            later = sum(first[1] is None and second[2] for first, second in zip(said, again, strict=True))
            print(f"{'':32} when said again {later}")


_player: list[Player] = []


def _begin(args: argparse.Namespace) -> None:
    for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS"):
        os.environ[name] = "1"
    _player.append(Player(args))


def _play(stream: Stream) -> tuple[str, int, list[Answer]]:
    return stream.row, stream.number, _player[0].play(stream)


def main() -> None:
    """Play rows, or lay two files beside each other."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("paths", type=Path, nargs="+")
    parser.add_argument("--rows", nargs="+", choices=ROWS, default=ROWS)
    parser.add_argument("--cores", type=int, default=os.cpu_count() or 1)
    parser.add_argument("--models", type=Path)
    parser.add_argument("--films", type=int, default=1, help="in how many films people's words are said")
    parser.add_argument("--hours", type=float, default=10.0, help="of film")
    parser.add_argument("--each", type=int, default=999, help="clips of each row at most")
    parser.add_argument("--development", action="store_true")
    parser.add_argument("--beside", action="store_true")
    args = parser.parse_args()
    if args.beside:
        beside(*args.paths)
        return
    args.folder, args.recordings, args.orders, out = args.paths
    began, every = time.time(), sorted(streams(args), key=lambda each: -len(each.said))
    with out.open("a") as file, get_context("spawn").Pool(args.cores, _begin, (args,)) as pool:
        for number, found in enumerate(pool.imap_unordered(_play, every), 1):
            file.write(json.dumps(found) + "\n")
            file.flush()
            if number % 20 == 0:
                print(f"{number} of {len(every)} streams after {time.time() - began:.0f} s", flush=True)
    told(out)


if __name__ == "__main__":
    main()
