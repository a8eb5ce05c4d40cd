"""Are people heard, and not only synthesisers? Words that people recorded, taken in as cues of her own.

    python -m tests.bench.voice.people FOLDER [--most 100]
    python -m tests.bench.voice.people RECORDINGS --split [--most 12] [--ratio 10]

FOLDER has one folder for each word, named as it is said (an underscore for a space), with recordings that ffmpeg
can read; or files named WORD_..., where a digit stands for its name. Each is looked for among all cues of the
sample and the other words of the folder; single words are harder than any cue. Prints heard and taken for another,
with Wilson's interval of 95 %. No gate is in between. With --split the folder holds recordings with a manifest.tsv, of which
those 35 words are taken that are said by people whom `people.tsv` has under measuring; --ratio puts talk of theirs behind it.
"""

from __future__ import annotations

import argparse
import csv
import random
import subprocess
from dataclasses import replace
from pathlib import Path

import numpy as np

from stepper.sitting.project_file import load_project
from stepper.sitting.recogniser_wordings import list_wordings
from stepper.language.numbers import words
from stepper.ears.bundled.moonshine import MoonshineRecogniser
from tests.bench.voice.__main__ import SAMPLE, share
from tests.bench.voice.stream import as_16_bit
from tests.bench.voice.wordings import near_and_behind


def read(path: Path) -> bytes:
    """Read a recording as 16 kHz, signed 16-bit."""
    command = ["ffmpeg", "-v", "error", "-i", str(path), "-ar", "16000", "-ac", "1", "-f", "s16le", "-"]
    return subprocess.run(command, check=True, capture_output=True).stdout


def recordings(folder: Path) -> dict[str, list[Path]]:
    """Give the recordings of each word."""
    found: dict[str, list[Path]] = {}
    for path in sorted(each for each in folder.rglob("*") if each.is_file()):
        name = path.stem.split("_")[0] if path.parent == folder else path.parent.name
        said = words(int(name)) if name.isdigit() else name.replace("_", " ")
        found.setdefault(said, []).append(path)
    return found


def measured(folder: Path) -> dict[str, list[Path]]:
    """Give the recordings of each word by people who were neither learnt from nor chosen by."""
    with (Path(__file__).parent / "people.tsv").open(encoding="utf-8") as file:
        apart = {row["speaker"] for row in csv.DictReader(file, delimiter="\t") if row["part"] == "measuring"}
    found: dict[str, list[Path]] = {}
    with (folder / "manifest.tsv").open(encoding="utf-8") as file:
        for row in csv.DictReader(file, delimiter="\t"):
            if row["corpus"] == "speech-commands" and row["speaker"] in apart:
                found.setdefault(row["text"], []).append(folder / row["file"])
    return found


def behind_talk(folder: Path) -> np.ndarray:
    """Make ten minutes of what people read out, one after the other."""
    sounds = [np.frombuffer(read(path), np.int16) for path in sorted((folder / "librispeech").glob("*.opus"))[:60]]
    return np.concatenate(sounds).astype(np.float32)[: 600 * 16_000] / 32_768


def main() -> None:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("folder", type=Path)
    parser.add_argument("--most", type=int, default=100, help="recordings of each word")
    parser.add_argument("--split", action="store_true")
    parser.add_argument("--ratio", type=float, help="how much louder than talk; dB; quiet unless given")
    args = parser.parse_args()
    said = measured(args.folder) if args.split else recordings(args.folder)
    talk, source = behind_talk(args.folder) if args.ratio is not None else None, np.random.default_rng(1)
    known = list_wordings(load_project(SAMPLE).plan)
    recogniser = MoonshineRecogniser(
        replace(known, phrases={**known.phrases, **{word: word for word in said}})
    )
    right = wrong = total = 0
    for word, paths in said.items():
        random.Random(word).shuffle(paths)
        heard = []
        for path in paths[: args.most]:
            sound = read(path)
            if talk is not None:
                clip = np.frombuffer(sound, np.int16)
                sound = as_16_bit(near_and_behind(clip, talk, args.ratio, source)[1]).tobytes()
            heard.append(recogniser.recognise(sound))
        good = sum(each is not None and each.text == word for each in heard)
        bad = sum(each is not None and each.text != word for each in heard)
        right, wrong, total = right + good, wrong + bad, total + len(heard)
        print(f"{word:16} heard {share(good, len(heard))}, another {share(bad, len(heard))}")
    print(f"all {len(said)} words: heard {share(right, total)}, another {share(wrong, total)}")
    recogniser.close()


if __name__ == "__main__":
    main()
