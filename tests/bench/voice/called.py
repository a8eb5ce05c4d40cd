"""Are the wordings that count behind the address word, or as an answer alone, heard? Each of them, over a film.

    python -m tests.bench.voice.called FOLDER [--alone] [--ratio 10] [--seeds 1 2] [--development]
        [--only WORDING …]

FOLDER holds the material. Behind "stepper" no question is open; with --alone every question is, and each wording that
answers one is said again two seconds later, as whoever hears the low tone does: how many are heard at once, and how
many of the others then. Without --ratio in a quiet room. Held-out voices unless --development is given; --seeds are
those of the films. Wilson's interval of 95 %.
"""

from __future__ import annotations

import argparse
import random
from collections import Counter, defaultdict
from pathlib import Path

from stepper.ears.bundled.moonshine import MoonshineRecogniser
from stepper.ears.wordings import Reply
from stepper.sitting.project_file import load_project
from stepper.sitting.recogniser_wordings import list_wordings
from tests.bench.voice.__main__ import SAMPLE, share
from tests.bench.voice.material import CALLED, clips
from tests.bench.voice.stream import answer_to, hear, with_cues
from tests.bench.voice.voices import RATE_HZ

_AGAIN_S, _APART_S = 2.0, 6.0


def main() -> None:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("folder", type=Path)
    parser.add_argument("--alone", action="store_true")
    parser.add_argument("--ratio", type=float, help="how much louder than the film; dB; quiet unless given")
    parser.add_argument("--seeds", type=int, nargs="+", default=[1], help="of the films")
    parser.add_argument("--development", action="store_true")
    parser.add_argument("--only", nargs="+", default=CALLED, help="wordings")
    args = parser.parse_args()
    wordings = list_wordings(load_project(SAMPLE).plan)
    found = clips(args.folder, not args.development)
    talk = [clip for clip in found if clip.kind == "talk"]
    kind = "called" if args.alone else "addressed called"
    said = [clip for clip in found if clip.kind == kind and clip.said in args.only]
    if args.alone:
        said = [clip for clip in said if wordings.called[clip.said].answers is not None]
    random.Random(3).shuffle(said)
    recogniser = MoonshineRecogniser(
        wordings,
        address="stepper",
        is_addressed=lambda: not args.alone,
        asked=lambda: frozenset(Reply) if args.alone else frozenset(),
    )
    of, at_once, later = Counter[str](), Counter[str](), Counter[str]()
    others = defaultdict[str, list[str]](list)
    cpu_s = seconds = 0.0
    for seed in args.seeds:
        pauses = (_AGAIN_S, _APART_S) if args.alone else (3.0,)
        sound, events = with_cues([clip for clip in said for _ in pauses], talk, args.ratio, seed, pauses)
        outcome = hear(sound, recogniser)
        cpu_s, seconds = cpu_s + outcome.all_cpu_s, seconds + len(sound) / RATE_HZ
        answers = [answer_to(event, outcome)[0] for event in events]
        for place in range(0, len(events), len(pauses)):
            text = events[place].clip.said
            of[text] += 1
            first, *again = [
                (heard, heard is not None and wordings.called.get(heard) == wordings.called[text])
                for heard in answers[place : place + len(pauses)]
            ]
            at_once[text] += first[1]
            later[text] += first[0] is None and any(is_right for _, is_right in again)
            others[text] += [
                heard
                for heard, is_right in (first, *(again if first[0] is None else ()))
                if heard is not None and not is_right
            ]
    recogniser.close()
    for text in of:
        again = f", said again {later[text]}" if args.alone else ""
        print(f"{text:24} heard {share(at_once[text], of[text])}{again}, another {others[text]}")
    both = f", at once or when said again {share(at_once.total() + later.total(), of.total())}" if args.alone else ""
    print(f"all: heard {share(at_once.total(), of.total())}{both}, another {sum(map(len, others.values()))}")
    print(f"CPU {cpu_s / seconds:.1%} of a core")


if __name__ == "__main__":
    main()
