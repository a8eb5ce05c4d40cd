"""Which thresholds? What each would hear, take for something else, and hear where nothing was said.

    python -m tests.bench.voice.choose FOLDER [--most 90] [--hours 1] [--people FOLDER] [--keep FILE] [--held-out]

Each piece that the gate cuts out is weighed once, with and without the address word; the table then tries
threshold after threshold on what was weighed. Development voices, unless --held-out is given, which is for
looking at what was chosen and not for choosing.
"""

from __future__ import annotations

import argparse
import pickle
from collections import Counter, defaultdict
from collections.abc import Hashable
from dataclasses import dataclass, replace
from itertools import product
from pathlib import Path

import numpy as np

from stepper.sitting.recogniser_wordings import list_wordings
from stepper.ears.bundled.decision import Candidate, decide
from stepper.ears.bundled.moonshine import Listening, MoonshineRecogniser, Utterance
from stepper.ears.bundled.thresholds import LOOSE, STRICT, Thresholds
from stepper.ears.wordings import Wordings
from tests.bench.voice.__main__ import Bench
from tests.bench.voice.film import film, loudness
from tests.bench.voice.stream import as_16_bit, hear, with_cues
from tests.bench.voice.voices import RATE_HZ, read_wav

RATIOS = (("clean", None), ("20 dB", 20.0), ("10 dB", 10.0))


class Weighing(MoonshineRecogniser):
    """Remembers how it weighed each piece."""

    def __init__(self, wordings: Wordings, address: str) -> None:
        super().__init__(wordings, address=address)
        self.pieces: list[list[Candidate]] = []

    def weighed(self, utterance: Utterance, manner: Listening) -> list[Candidate]:
        self.pieces.append(super().weighed(utterance, manner))
        return self.pieces[-1]


@dataclass(frozen=True, slots=True, kw_only=True)
class Said:
    """A cue, and the pieces that were cut out while it could be answered."""

    row: str
    voice: str
    text: str
    means: Hashable
    pieces: list[list[Candidate]]


def meaning(wordings: Wordings, text: str) -> Hashable:
    """Tell what a cue means to the recogniser."""
    if text in wordings.phrases:
        return wordings.phrases[text]
    for frame in wordings.frames:
        number = text.removeprefix(frame.before).removesuffix(frame.after).strip()
        if frame.around(number) == text and number in wordings.numbers:
            return (frame.means, wordings.numbers[number])
    raise KeyError(text)


def said(bench: Bench, wordings: Wordings, address: str) -> list[Said]:
    """Play cues and counts, and weigh what comes out of the gate."""
    found = []
    kinds = ("addressed cue", "addressed count") if address else ("cue", "count")
    chosen = [clip for kind in kinds for clip in bench.some(kind, address)]
    for name, ratio in RATIOS:
        recogniser = Weighing(wordings, address)
        sound, events = with_cues(chosen, bench.talk, ratio, 1)
        outcome = hear(sound, recogniser)
        cut = list(zip(outcome.utterances_s, recogniser.pieces, strict=True))
        for event in events:
            means = meaning(wordings, event.clip.said)
            pieces = [piece for at, piece in cut if event.start_s < at <= event.end_s + 1.6]
            row = f"{event.clip.kind} {name}"
            found.append(Said(row=row, voice=event.clip.voice.label, text=event.clip.said, means=means, pieces=pieces))
        recogniser.close()
    return found


def unsaid(bench: Bench, wordings: Wordings, address: str, hours: float, people: Path | None) -> dict:
    """Play what holds no cue; give hours and pieces of each kind."""
    found = {}
    recogniser = Weighing(wordings, address)
    for number in range(round(hours * 6)):
        stream = film(bench.talk, 600, 500 + number)
        hear(as_16_bit(stream * 0.05 / loudness(stream)), recogniser)
    found["film"] = (hours, list(recogniser.pieces))
    if people is not None:
        recogniser.pieces.clear()
        rest = np.random.default_rng(1).integers(-3, 4, RATE_HZ * 3 // 2).astype(np.int16)
        whole = np.concatenate([part for file in sorted(people.glob("*.wav")) for part in (read_wav(file)[0], rest)])
        hear(whole, recogniser)
        found["people"] = (len(whole) / RATE_HZ / 3600, list(recogniser.pieces))
    return found


def table(cues: list[Said], nothing: dict, thresholds: Thresholds) -> str:
    """Write what one pair of thresholds would do."""
    heard: dict[str, Counter[str]] = defaultdict(Counter)
    for cue in cues:
        taken = next((each for each in (decide(piece, thresholds) for piece in cue.pieces) if each), None)
        heard[cue.row]["said"] += 1
        heard[cue.row]["right" if taken and taken.means == cue.means else "wrong" if taken else "lost"] += 1
    parts = [
        f"{row} {count['right'] / count['said']:.3f} ({count['wrong']} wrong of {count['said']})"
        for row, count in heard.items()
    ]
    for kind, (hours, pieces) in nothing.items():
        parts.append(f"{kind} {sum(decide(piece, thresholds) is not None for piece in pieces)} in {hours:.2f} h")
    return f"words {thresholds.words:.1f} least {thresholds.least:5.1f} clear {thresholds.clear:3.1f}: {', '.join(parts)}"


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("folder", type=Path)
    parser.add_argument("--most", type=int, default=90)
    parser.add_argument("--hours", type=float, default=1.0)
    parser.add_argument("--people", type=Path)
    parser.add_argument("--keep", type=Path, help="read what was weighed from this file, or write it there")
    parser.add_argument("--held-out", action="store_true")
    args = parser.parse_args()
    args.development, args.vosk = not args.held_out, None
    if args.keep and args.keep.exists():
        weighed = pickle.loads(args.keep.read_bytes())
    else:
        bench = Bench(args)
        wordings = list_wordings(bench.plan)
        weighed = {
            address: (said(bench, wordings, address), unsaid(bench, wordings, address, args.hours, args.people))
            for address in ("", "stepper")
        }
        if args.keep:
            args.keep.write_bytes(pickle.dumps(weighed))
    for address, chosen in (("", STRICT), ("stepper", LOOSE)):
        print(f'behind "{address}"' if address else "without an address word")
        print("chosen", table(*weighed[address], chosen))
        if not args.held_out:
            for words, clear in product((0.25, 0.5, 1.0), (2.0, 3.0)):
                for least in (-4.0, -7.0, -9.0, -12.0, -16.0):
                    tried = replace(chosen, words=words, least=least, agreed=min(least, chosen.agreed), clear=clear)
                    print("      ", table(*weighed[address], tried))


if __name__ == "__main__":
    main()
