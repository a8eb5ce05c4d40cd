"""Are lengths, weights, places, tallies and remarks heard? Each kind with values drawn anew, near and with a film.

    python -m tests.bench.voice.measures FOLDER [--styles FOLDER] [--ratio 20] [--each 5] [--address stepper]
        [--development]

FOLDER holds the material, for the film. A wrong value is one that is understood as another; of a remark only
that it is one counts. Wilson's interval of 95 %. No gate is in between.
"""

from __future__ import annotations

import argparse
import random
from collections import Counter
from collections.abc import Callable
from pathlib import Path

import numpy as np

from stepper.sitting.project_file import load_project
from stepper.sitting.recogniser_wordings import list_lengths, list_wordings
from stepper.language.numbers import words
from stepper.language.understanding.understand import understand
from stepper.session.cues import Note
from stepper.ears.bundled.moonshine import MoonshineRecogniser
from tests.bench.voice.__main__ import SAMPLE, share
from tests.bench.voice.film import film
from tests.bench.voice.material import clips
from tests.bench.voice.stream import as_16_bit
from tests.bench.voice.voices import installed, say
from tests.bench.voice.wordings import near_and_behind

_YARNS, _PLACES = ("chalk", "pine", "ember"), ("yoke", "body", "left sleeve")
_REMARKS = ("the blue yarn is nearly gone", "two stitches short at the marker", "longer sleeves next time")


def _lengths(source: random.Random) -> str:
    said = source.choice([way for way, value in list_lengths().items() if value < 100])
    before = source.choice(("it measures", "measures", "piece measures", "length is"))
    return " ".join(filter(None, (before, said, source.choice(("centimetres", "inches", "")))))


def _weights(source: random.Random) -> str:
    yarn, grams = source.choice(_YARNS), words(source.randrange(1, 300))
    return source.choice((f"{yarn} weighs {grams} grams", f"weight of {yarn} is {grams} grams"))


def _places(source: random.Random) -> str:
    place, number = source.choice(_PLACES), words(source.randrange(1, 100))
    return source.choice((f"go to round {number} of {place}", f"go to {place} round {number}"))


KINDS: dict[str, Callable[[random.Random], str]] = {
    "length": _lengths,
    "weight": _weights,
    "place": _places,
    "tally": lambda source: f"plus {words(source.randrange(1, 21))}",
    "remark": lambda source: f"{source.choice(('make', 'take'))} a note {source.choice(_REMARKS)}",
}


def main() -> None:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("folder", type=Path)
    parser.add_argument("--styles", type=Path)
    parser.add_argument("--ratio", type=float, default=20.0, help="how much louder than the film; dB")
    parser.add_argument("--each", type=int, default=5, help="texts of each kind for each voice")
    parser.add_argument("--address", default="")
    parser.add_argument("--development", action="store_true")
    args = parser.parse_args()
    plan = load_project(SAMPLE).plan
    recogniser = MoonshineRecogniser(list_wordings(plan), address=args.address)
    voices = [voice for voice in installed(args.styles) if voice.held_out != args.development]
    behind = film(
        [clip for clip in clips(args.folder, not args.development) if clip.kind == "talk"], 600, 900
    )
    print(f"voices: {', '.join(voice.label for voice in voices)}")
    for kind, draw in KINDS.items():
        texts, numbers = random.Random(kind), np.random.default_rng(1)
        count = Counter[str]()
        for voice in voices:
            for _ in range(args.each):
                text = draw(texts)
                clip = say(voice, f"{args.address}, {text}" if args.address else text, 1.0, args.styles)
                for where, sound in zip(
                    ("near", "film"), near_and_behind(clip, behind, args.ratio, numbers), strict=True
                ):
                    heard = recogniser.recognise(as_16_bit(sound).tobytes())
                    found = understand(heard.text, plan) if heard and heard.text else None
                    is_right = (
                        isinstance(found, Note) if kind == "remark" else found == understand(text, plan)
                    )
                    count[f"{where} right"] += is_right
                    count[f"{where} wrong"] += found is not None and not is_right
        of = len(voices) * args.each
        for where, how in (("near", "near"), ("film", f"{args.ratio:g} dB above a film")):
            right, wrong = count[f"{where} right"], count[f"{where} wrong"]
            print(f"{kind:7} {how:22} heard {share(right, of)}, wrong {share(wrong, of)}")
    recogniser.close()


if __name__ == "__main__":
    main()
