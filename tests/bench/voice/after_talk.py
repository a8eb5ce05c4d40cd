"""Is anything heard after a talk of her own, which was as loud near the microphone as what she says to the program?

    python -m tests.bench.voice.after_talk FOLDER [--addressed] [--ratio 20] [--talk 40] [--development]

FOLDER holds the material, for what is talked and for the film. Each voice talks for so long, is silent for five
seconds, and answers eight times, ten seconds apart; each answer is said again two seconds later, as whoever is not
understood does. Every question is open, no address word is asked for. With --addressed it talks five times, and says
"stepper, forward" 1, 2, 4, 7 and 11 s later.
"""

from __future__ import annotations

import argparse
import random
from collections import Counter
from pathlib import Path

from stepper.ears.bundled.moonshine import MoonshineRecogniser
from stepper.ears.wordings import Reply
from stepper.sitting.project_file import load_project
from stepper.sitting.recogniser_wordings import list_wordings
from tests.bench.voice.__main__ import SAMPLE, share
from tests.bench.voice.material import Clip, clips
from tests.bench.voice.single_words import ANSWERS, Said, answer_to_word, in_room, levelled
from tests.bench.voice.stream import as_16_bit, hear
from tests.bench.voice.voices import RATE_HZ, VOICES, Voice, say

_BEFORE_S, _SILENT_S, _AGAIN_S, _APART_S = 20.0, 5.0, 2.0, 8.0
_ANSWERS = 8

_PAUSES_S = (1.0, 2.0, 4.0, 7.0, 11.0)
_CUE = "forward"


def talking(voice: Voice, talk: list[Clip], begin_s: float, talk_s: float, source: random.Random) -> list[Said]:
    """Let a voice say one sentence after another."""
    said, at = list[Said](), begin_s
    while at < begin_s + talk_s:
        sound = levelled(say(voice, source.choice(talk).said, 1.0, None))
        said.append(("", at, sound))
        at += len(sound) / RATE_HZ + source.uniform(0.5, 1.5)
    return said


def answering(voice: Voice, talk: list[Clip], talk_s: float, source: random.Random) -> list[Said]:
    """Let a voice talk, and then answer, each time twice."""
    said = talking(voice, talk, _BEFORE_S, talk_s, source)
    at = end_s(said[-1]) + _SILENT_S
    for _ in range(_ANSWERS):
        word = source.choice(ANSWERS)
        sound = levelled(say(voice, word, 1.0, None))
        for pause_s in (_AGAIN_S, _APART_S):
            said.append((word, at, sound))
            at += len(sound) / RATE_HZ + pause_s
    return said


def calling(voice: Voice, talk: list[Clip], talk_s: float, source: random.Random) -> list[Said]:
    """Let a voice talk, and say a cue behind the address word, again and again."""
    said, at = list[Said](), _BEFORE_S
    for pause_s in _PAUSES_S:
        said += talking(voice, talk, at, talk_s, source)
        cue = levelled(say(voice, f"stepper, {_CUE}", 1.0, None))
        said.append((_CUE, end_s(said[-1]) + pause_s, cue))
        at = end_s(said[-1]) + 4
    return said


def end_s(said: Said) -> float:
    """Return when it ends. Unit: s."""
    return said[1] + len(said[2]) / RATE_HZ


def heard_of(said: list[Said], talk: list[Clip], ratio_db: float | None, seed: int, *, addressed: bool) -> list[tuple[str, str | None]]:
    """Let what is said be listened to; return each answer or cue, and what was heard in its place."""
    stream = in_room(said, end_s(said[-1]) + 2, talk, ratio_db, seed)
    recogniser = MoonshineRecogniser(
        list_wordings(load_project(SAMPLE).plan),
        address="stepper",
        is_addressed=lambda: addressed,
        asked=lambda: frozenset() if addressed else frozenset(Reply),
    )
    outcome = hear(as_16_bit(stream), recogniser)
    recogniser.close()
    return [(word, answer_to_word(at, len(sound) / RATE_HZ, outcome)) for word, at, sound in said if word]


def main() -> None:
    """Print for each answer or cue behind the talk how many voices are heard."""
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("folder", type=Path)
    parser.add_argument("--addressed", action="store_true")
    parser.add_argument("--ratio", type=float, help="how much louder than the film; dB; quiet unless given")
    parser.add_argument("--talk", type=float, default=40.0, help="how long she talks each time; s")
    parser.add_argument("--development", action="store_true")
    args = parser.parse_args()
    talk = [clip for clip in clips(args.folder, not args.development) if clip.kind == "talk"]
    voices = [
        voice
        for voice in VOICES
        if voice.family in ("espeak", "flite") and voice.held_out != args.development
    ]
    say_all = calling if args.addressed else answering
    heard = [
        heard_of(say_all(voice, talk, args.talk, random.Random(seed)), talk, args.ratio, seed, addressed=args.addressed)
        for seed, voice in enumerate(voices)
    ]
    if args.addressed:
        for at, pause_s in enumerate(_PAUSES_S):
            right = sum(each[at][0] == each[at][1] for each in heard)
            print(f"{pause_s:g} s after the talk: heard {right} of {len(voices)}")
        return
    totals: Counter[str] = Counter()
    for at in range(_ANSWERS):
        pairs = [(each[2 * at], each[2 * at + 1]) for each in heard]
        found = Counter(map(_as_heard, pairs))
        totals += found
        print(f"answer {at + 1}: " + ", ".join(f"{what} {found[what]}" for what in _KINDS))
    print("all: " + ", ".join(f"{what} {totals[what]}" for what in _KINDS))
    print(f"heard {share(totals['at once'] + totals['said again'], totals.total())}")


_KINDS = ("at once", "said again", "another", "lost")


def _as_heard(pair: tuple[tuple[str, str | None], tuple[str, str | None]]) -> str:
    (word, first), (_, second) = pair
    if (first or second) is None:
        return "lost"
    if (first or second) != word:
        return "another"
    return "at once" if first else "said again"


if __name__ == "__main__":
    main()
