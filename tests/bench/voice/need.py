"""Is what a knitter says in need, and nothing listens for, taken for a cue that moves the knitting?

    python -m tests.bench.voice.need FOLDER [--alone] [--ratio 10] [--development] [--only WORDING …]

FOLDER holds the material; what these sixty are said with is made there once. Behind "stepper" no question is open;
with --alone every question is, and the address word is not asked for. Without --ratio in a quiet room. Held-out
voices unless --development is given. What is heard counts in four kinds: *understood*, the very cue (some of the
sixty are typed wordings, which the free transcript may hold); one that *moves* the place; one that *answers* or
counts; any *other*, which moves nothing. Wilson's interval of 95 %.
"""

from __future__ import annotations

import argparse
import hashlib
import json
import random
from collections import Counter
from pathlib import Path

from stepper.ears.bundled.moonshine import MoonshineRecogniser
from stepper.ears.wordings import Reply
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.session import cues
from stepper.sitting.project_file import load_project
from stepper.sitting.recogniser_wordings import list_wordings
from tests.bench.voice.__main__ import SAMPLE, share
from tests.bench.voice.material import Clip, clips
from tests.bench.voice.stream import answer_to, hear, with_cues
from tests.bench.voice.voices import VOICES, Voice, say

NEEDS = (
    "wait;pause;hold;what;pardon;never mind;cancel;help;again;enough;stop asking;stop searching;wrong yarn;"
    "i used the wrong yarn;i lost count;i lost a stitch;i split the yarn;something looks wrong;i skipped a round;"
    "rip it out;not right now;not so fast;wait for me;i am not sure;i have no idea;i made a mistake;"
    "hold on a second;no no;no no no;oops;oh no;that's wrong;not yet;stop it;slow down;go away;come again;too fast;"
    "hang on;just a moment;be quiet;shut up;not that one;wrong one;wrong round;wrong colour;what was that;"
    "i lost my place;i am lost;i messed up;that is not right;let me think;leave it;stay there;forget it;"
    "give me a second;i need help;no wait;too tight;ouch"
).split(";")
MOVES = (
    cues.Next, cues.GoOn, cues.Back, cues.GoTo, cues.RoundsDone, cues.RoundsBack, cues.StitchesBack, cues.YarnDone,
    cues.Undo, cues.Redo, cues.Tink, cues.AtStitch, cues.AtMarker, cues.Respace,
)  # fmt: skip
ANSWERS = (
    cues.Count, cues.OffBy, cues.SectionCount, cues.MarkerCounts, cues.Ten, cues.Saw, cues.Yes, cues.No, cues.Choose,
    cues.ThatIsAll, cues.Length,
)  # fmt: skip


def said_in_need(folder: Path, voice: Voice, address: str) -> list[Clip]:
    """Let a voice say each of the sixty; what is there already is kept."""
    speeds, found = random.Random(f"need {voice.label} {address}"), []
    for text in NEEDS:
        whole, speed = f"{address}, {text}" if address else text, round(speeds.uniform(0.85, 1.15), 2)
        path = folder / (hashlib.sha256(f"{voice.label} {whole} {speed}".encode()).hexdigest()[:16] + ".pcm")
        if not path.exists():
            path.write_bytes(say(voice, whole, speed, None).tobytes())
        found.append(Clip(voice=voice, kind="need", address=address, said=text, number=None, sound=path))
    return found


def main() -> None:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("folder", type=Path)
    parser.add_argument("--alone", action="store_true")
    parser.add_argument("--ratio", type=float, help="how much louder than the film; dB; quiet unless given")
    parser.add_argument("--development", action="store_true")
    parser.add_argument("--only", nargs="+", default=NEEDS, help="wordings")
    args = parser.parse_args()
    plan = load_project(SAMPLE).plan
    found = clips(args.folder, not args.development)
    there = {clip.voice.label for clip in found}
    voices = [voice for voice in VOICES if voice.label in there and voice.family != "kokoro"]
    address = "" if args.alone else "stepper"
    said = [clip for voice in voices for clip in said_in_need(args.folder, voice, address) if clip.said in args.only]
    random.Random(3).shuffle(said)
    recogniser = MoonshineRecogniser(
        list_wordings(plan),
        address="stepper",
        is_addressed=lambda: not args.alone,
        asked=lambda: frozenset(Reply) if args.alone else frozenset(),
    )
    sound, events = with_cues(said, [clip for clip in found if clip.kind == "talk"], args.ratio, 1)
    outcome = hear(sound, recogniser)
    recogniser.close()
    kinds, of_text = Counter[str](), {text: Counter[str]() for text in args.only}
    for event in events:
        heard, _ = answer_to(event, outcome)
        kind = kind_of(event.clip.said, heard, plan)
        kinds[kind] += 1
        of_text[event.clip.said][f"{kind}: {heard}" if heard else kind] += 1
    for text, heard_as in of_text.items():
        print(f"{text:24} {dict(heard_as)}")
    print("; ".join(f"{kind} {share(kinds[kind], len(events))}" for kind in ("moves", "answers", "other", "understood", "nothing")))
    print(f"low tones {outcome.refused}; CPU {outcome.all_cpu_s / (len(sound) / 16_000):.1%} of a core", json.dumps(kinds))


def kind_of(said: str, heard: str | None, plan) -> str:
    """Tell what becomes of what was heard: one of the four kinds, or nothing."""
    if heard is None:
        return "nothing"
    meant, cue = understand(said, plan), understand(heard, plan)
    if not isinstance(meant, NotUnderstood) and meant == cue:
        return "understood"
    return "moves" if isinstance(cue, MOVES) else "answers" if isinstance(cue, ANSWERS) else "other"


if __name__ == "__main__":
    main()
