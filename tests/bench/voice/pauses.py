"""Are numbers right when there is a pause in them? Each said in two breaths, so far apart, and heard through the gate.

    python -m tests.bench.voice.pauses FOLDER [--styles FOLDER] [--each 4] [--pauses 0.2,0.3,0.4]
        [--ratios clean,20,10] [--address stepper] [--development] [--verbose]

FOLDER holds the material, for the film; what is said here is kept beside it. The pause stands behind the opening
("count is …"), behind "hundred", or behind the tens or a digit. A wrong count is one that is understood as another
number. Wilson's interval of 95 %.
"""

from __future__ import annotations

import argparse
import hashlib
import random
from pathlib import Path

import numpy as np

from stepper.ears.bundled.moonshine import MoonshineRecogniser
from stepper.language.numbers import digits_words, words
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.sitting.project_file import load_project
from stepper.sitting.recogniser_wordings import list_wordings
from tests.bench.voice.__main__ import SAMPLE, share
from tests.bench.voice.material import Clip, clips
from tests.bench.voice.stream import answer_to, hear, with_cues
from tests.bench.voice.voices import RATE_HZ, Voice, installed, say

PLACES = ("hundred", "opening", "tens")


def breaths(source: random.Random, place: str) -> tuple[str, str, int]:
    """Draw a count in two parts with the pause between them, and its number."""
    opening = source.choice(("count is", "my count is", "i counted"))
    if place == "hundred":
        number = source.randrange(1, 10) * 100 + source.randrange(1, 100)
        hundred, rest = words(number).split(" hundred ")
        joined = "and " if source.random() < 0.3 else ""
        return f"{opening} {hundred} hundred", joined + rest, number
    if place == "opening":
        number = source.randrange(12, 1000)
        return opening, words(number), number
    number = source.randrange(2, 10) * 10 + source.randrange(1, 10)
    if source.random() < 0.5:
        first, rest = words(number).split(" ")
    else:
        first, rest = digits_words(number).split(" ")
    return f"{opening} {first}", rest, number


def said(folder: Path, voice: Voice, text: str, styles: Path | None) -> np.ndarray:
    """Let a voice say a part, once."""
    path = folder / (hashlib.sha256(f"{voice.label} {text}".encode()).hexdigest()[:16] + ".pcm")
    if not path.exists():
        path.write_bytes(say(voice, text, 1.0, styles).tobytes())
    return np.frombuffer(path.read_bytes(), np.int16)


def with_pause(
    folder: Path, voice: Voice, address: str, parts: tuple[str, str, int], pause_s: float, styles: Path | None
) -> Clip:
    """Put two parts together with a pause between."""
    first, rest, number = parts
    front = f"{address}, {first}" if address else first
    sound = np.concatenate([
        said(folder, voice, front, styles), np.zeros(round(pause_s * RATE_HZ), np.int16), said(folder, voice, rest, styles)
    ])  # fmt: skip
    name = hashlib.sha256(f"{voice.label} {front} {rest} {pause_s}".encode()).hexdigest()[:16] + ".joined"
    (folder / name).write_bytes(sound.tobytes())
    return Clip(
        voice=voice, kind="count", address=address, said=f"{first} {rest}", number=number, sound=folder / name
    )


def main() -> None:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("folder", type=Path)
    parser.add_argument("--styles", type=Path)
    parser.add_argument("--each", type=int, default=4, help="counts of each voice for each place and pause")
    parser.add_argument("--pauses", default="0.2,0.3,0.4")
    parser.add_argument("--ratios", default="clean", help="dB above the film, or clean")
    parser.add_argument("--places", default=",".join(PLACES))
    parser.add_argument("--family", default="", help="only voices of these families")
    parser.add_argument("--address", default="")
    parser.add_argument("--development", action="store_true")
    parser.add_argument("--verbose", action="store_true")
    args = parser.parse_args()
    kept = args.folder / "pauses"
    kept.mkdir(exist_ok=True)
    plan = load_project(SAMPLE).plan
    talk = [clip for clip in clips(args.folder, not args.development) if clip.kind == "talk"]
    voices = [
        voice
        for voice in installed(args.styles)
        if voice.held_out != args.development and (not args.family or voice.family in args.family.split(","))
    ]
    recogniser = MoonshineRecogniser(list_wordings(plan), address=args.address)
    print(f"voices: {', '.join(voice.label for voice in voices)}")
    for ratio in args.ratios.split(","):
        for place in args.places.split(","):
            for pause in map(float, args.pauses.split(",")):
                drawn = random.Random(place)
                chosen = [
                    with_pause(kept, voice, args.address, breaths(drawn, place), pause, args.styles)
                    for _ in range(args.each)
                    for voice in voices
                ]
                sound, events = with_cues(chosen, talk, None if ratio == "clean" else float(ratio), 1)
                outcome = hear(sound, recogniser)
                right = wrong = 0
                for event in events:
                    text, _ = answer_to(event, outcome)
                    meant, found = understand(event.clip.said, plan), understand(text or "", plan)
                    right += bool(text) and found == meant
                    if text and found != meant and not isinstance(found, NotUnderstood):
                        wrong += 1
                        if args.verbose:
                            print(f"    {event.clip.voice.label}: {event.clip.said} -> {text}")
                name = ratio if ratio == "clean" else f"{ratio} dB"
                print(
                    f"behind {place:8} {pause:.1f} s {name:6} heard {share(right, len(events))}, "
                    f"wrong {share(wrong, len(events))}",
                    flush=True,
                )
    recogniser.close()


if __name__ == "__main__":
    main()
