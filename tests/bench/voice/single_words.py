"""Are people's single words heard through the gate, alone in answer to a question and behind the address word?

    python -m tests.bench.voice.single_words FOLDER RECORDINGS [--alone] [--all-open] [--ratio 10] [--most 12] [--choosing] [--again]

FOLDER holds the material, for the film; RECORDINGS has recordings of Speech Commands with a manifest.tsv, of which
those by people are taken whom `people.tsv` has under measuring, or with --choosing under choosing. Nobody among them
says the address word: a synthetic voice, held out from all choosing, says it 0.05 to 0.2 s before the word. The question
that the word answers is open while it is said, and none for a word that answers none; with --all-open every question
all the time, which the program never has. With --alone nothing is in front, and no film is on for the program. With --again each word is said
again two seconds later, as whoever hears the low tone does: how many are heard at once, and how many of the others
then. Wilson's interval of 95 %.
"""

from __future__ import annotations

import argparse
import csv
import random
from collections import Counter
from collections.abc import Sequence
from pathlib import Path

import numpy as np

from stepper.ears.bundled.moonshine import MoonshineRecogniser
from stepper.ears.wordings import Reply
from stepper.sitting.project_file import load_project
from stepper.sitting.recogniser_wordings import list_wordings
from tests.bench.voice.__main__ import SAMPLE, share
from tests.bench.voice.film import film, loudness
from tests.bench.voice.material import Clip, clips
from tests.bench.voice.people import read
from tests.bench.voice.stream import Outcome, as_16_bit, hear
from tests.bench.voice.voices import RATE_HZ, VOICES, say, trimmed

DIGITS = ("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine")
ANSWERS = ("yes", "no", *DIGITS)
_LEVEL = 0.1
_APART_S, _LATEST_S, _BEFORE_S = 3.0, 1.6, 16.0
_AGAIN_S = 2.0

Said = tuple[str, float, np.ndarray]
"""What is said, when it begins in s, and its sound."""


def recorded(folder: Path, part: str) -> dict[str, list[Path]]:
    """Return the recordings of each word by the people of a part."""
    with (Path(__file__).parent / "people.tsv").open(encoding="utf-8") as file:
        apart = {row["speaker"] for row in csv.DictReader(file, delimiter="\t") if row["part"] == part}
    found: dict[str, list[Path]] = {}
    with (folder / "manifest.tsv").open(encoding="utf-8") as file:
        for row in csv.DictReader(file, delimiter="\t"):
            if row["corpus"] == "speech-commands" and row["speaker"] in apart:
                found.setdefault(row["text"], []).append(folder / row["file"])
    return found


def levelled(sound: np.ndarray) -> np.ndarray:
    """Bring a clip to the common loudness."""
    speech = sound.astype(np.float32) / 32_768
    return speech * (_LEVEL / loudness(speech))


def in_room(said: Sequence[Said], length_s: float, talk: Sequence[Clip], ratio_db: float | None, seed: int) -> np.ndarray:
    """Lay what is said, each at its time, into a quiet room or so many dB above a film."""
    count = round(length_s * RATE_HZ)
    stream = np.random.default_rng(1).standard_normal(count).astype(np.float32) * 3e-4
    if ratio_db is not None:
        behind = film(talk, count / RATE_HZ + 1, seed)[:count]
        stream = behind * (_LEVEL * 10 ** (-ratio_db / 20) / loudness(behind))
    for _, start_s, sound in said:
        start = round(start_s * RATE_HZ)
        stream[start : start + len(sound)] += sound
    return stream


class Asked:
    """Which questions are open at each moment of a stream."""

    def __init__(self, said: Sequence[tuple[str, float]]) -> None:
        """Take what is said, and when it ends; nothing for every question all the time."""
        self._said = [(end_s + _LATEST_S, _answered_by(word)) for word, end_s in said]
        self._open = frozenset(Reply) if not said else frozenset[Reply]()

    def __call__(self) -> frozenset[Reply]:
        """Return those that are open now."""
        return self._open

    def at(self, at_s: float) -> None:
        """Go on to a moment: what the next word answers is open from the end of what the one before is given."""
        while self._said and self._said[0][0] < at_s:
            self._said.pop(0)
        if self._said:
            self._open = self._said[0][1]


def _answered_by(word: str) -> frozenset[Reply]:
    if word in DIGITS:
        return frozenset({Reply.NUMBER})
    return frozenset({Reply.YES_OR_NO}) if word in ("yes", "no") else frozenset()


def main() -> None:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("folder", type=Path)
    parser.add_argument("recordings", type=Path)
    parser.add_argument("--alone", action="store_true")
    parser.add_argument("--all-open", action="store_true")
    parser.add_argument("--ratio", type=float, help="how much louder than the film; dB; quiet unless given")
    parser.add_argument("--most", type=int, default=12, help="recordings of each word")
    parser.add_argument("--choosing", action="store_true")
    parser.add_argument("--again", action="store_true")
    parser.add_argument("--apart", type=float, default=_APART_S, help="s from the end of a word to the next")
    parser.add_argument("--seed", type=int, default=1, help="of the film")
    args = parser.parse_args()
    wordings = list_wordings(load_project(SAMPLE).plan)
    known = recorded(args.recordings, "choosing" if args.choosing else "measuring")
    surest = tuple(each for each in wordings.called if " " not in each)
    words = [word for word in (ANSWERS if args.alone else (*surest, *DIGITS)) if word in known]
    items = [
        (word, path)
        for word in words
        for path in random.Random(word).sample(known[word], min(args.most, len(known[word])))
    ]
    random.Random(2).shuffle(items)
    source, at, said = random.Random(1), _BEFORE_S, list[tuple[str, float, np.ndarray]]()
    fronts = [
        say(voice, "stepper", 1.0, None)
        for voice in VOICES
        if voice.family in ("espeak", "flite") and voice.held_out != args.choosing
    ]
    for word, path in items:
        sound = levelled(trimmed(np.frombuffer(read(path), np.int16)))
        if not args.alone:
            gap = np.zeros(round(source.uniform(0.05, 0.2) * RATE_HZ), np.float32)
            sound = np.concatenate([levelled(source.choice(fronts)), gap, sound])
        for pause_s in (_AGAIN_S, args.apart) if args.again else (args.apart,):
            said.append((word, at, sound))
            at += len(sound) / RATE_HZ + pause_s
    talk = [clip for clip in clips(args.folder, not args.choosing) if clip.kind == "talk"] if args.ratio is not None else []
    stream = in_room(said, at + 4, talk, args.ratio, args.seed)
    asked = Asked([] if args.all_open else [(word, start_s + len(sound) / RATE_HZ) for word, start_s, sound in said])
    recogniser = MoonshineRecogniser(wordings, address="stepper", is_addressed=lambda: not args.alone, asked=asked)
    outcome = hear(as_16_bit(stream), recogniser, asked.at)
    recogniser.close()
    right, wrong, of = Counter[str](), Counter[str](), Counter[str]()
    answers = [(word, answer_to_word(start_s, len(sound) / RATE_HZ, outcome)) for word, start_s, sound in said]
    for word, heard in answers[:: 2 if args.again else 1]:
        of[word] += 1
        right[word] += heard == word
        wrong[word] += heard is not None and heard != word
    print(", ".join(f"{word} {right[word]}/{of[word]}" for word in words))
    print(f"heard {share(right.total(), of.total())}, another {share(wrong.total(), of.total())}")
    others = Counter(f"{word} as {heard}" for word, heard in answers[:: 2 if args.again else 1] if heard not in (None, word))
    print("another:", ", ".join(f"{what} {times}" for what, times in others.items()) or "none")
    if args.again:
        pairs = list(zip(answers[::2], answers[1::2], strict=True))
        later = sum(first is None and second == word for (word, first), (_, second) in pairs)
        other = sum(first is None and second not in (None, word) for (word, first), (_, second) in pairs)
        print(f"heard when said again {later}, another {other}, lost {of.total() - right.total() - wrong.total() - later - other}")
    print(f"CPU {outcome.all_cpu_s / (len(stream) / RATE_HZ):.1%} of a core")


def answer_to_word(start_s: float, length_s: float, outcome: Outcome) -> str | None:
    """Return what was heard in answer to a word; None if nothing was."""
    end_s = start_s + length_s + _LATEST_S
    return next((text for when, text in outcome.heard if start_s < when <= end_s), None)


if __name__ == "__main__":
    main()
