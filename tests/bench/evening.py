"""A whole section knitted by voice: is it heard, is it answered, how soon, and what does it cost?

    python tests/bench/evening.py [--looped] [--film] [--rounds N] [--voice espeak|natural] [--tail]
    python tests/bench/evening.py --cost MINUTES --material FOLDER [--announced]

Speaks the cues of a section into the microphone of a virtual room, takes the answers from its loudspeaker, has
them heard again by another recogniser (PocketSphinx, its own model), and compares them with the `--plain`
transcript. No person, no real room and no real microphone takes part.

`--tail` measures instead how long the program's own voice still comes in through the microphone after the
speaker says that it is done. `--cost` has the program listen to a film of the held-out voices of `tests.bench.voice` in
FOLDER, nobody knitting, and prints what it and its processes hold and take; with `--announced` it was told "film on".
"""

from __future__ import annotations

import argparse
import math
import os
import statistics
import sys
import tempfile
import time
import wave
from array import array
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.natural import NaturalVoice
from stepper.mouth.settings import SpeechSettings
from tests import evening
from tests.commands.garments import stepper
from tests.sound_room import Room

CUES = ["where are we", *["next step"] * 10, "say that again", "next step"]
"""The neckband of Switchback, eleven rounds, to the first round of its yoke."""


def the_room(folder: Path):
    room = Room(folder, dict(os.environ))
    room.start()
    os.environ.update(room.changed)
    return room


def knit(room, folder: Path, args) -> None:
    project = folder / "switchback.yaml"
    project.write_text((ROOT / "tests" / "fixtures" / "switchback.yaml").read_text())
    cues = CUES[: args.rounds] if args.rounds else CUES
    voice = (NaturalVoice if args.voice == "natural" else EspeakVoice)(SpeechSettings())
    wavs = {cue: evening.spoken(cue, folder / f"{cue.replace(' ', '-')}.wav", voice) for cue in set(cues)}
    voice.close()
    film = None
    if args.film:
        with wave.open(str(wavs["next step"])) as file:
            samples = array("h", file.readframes(file.getnframes()))
        film = evening.film(folder / "film.wav", 80 + 22 * len(cues), evening.root_mean_square(samples))
    done = []
    with evening.evening(
        room, project, folder, looped=args.looped, film_wav=film, sounds=not args.silent
    ) as sitting:
        shares = []
        for seconds in (20, 40):  # a film that has just begun is not yet the room
            before, began = evening.process_cost(sitting.process_id)[0], time.monotonic()
            time.sleep(seconds)
            after, memory = evening.process_cost(sitting.process_id)
            shares.append((after - before) / (time.monotonic() - began))
        for cue in cues:
            for attempt in range(3):
                exchange = sitting.ask(cue, wavs[cue], patience_s=15.0)
                exchange.tries = attempt + 1
                done.append(exchange)
                if exchange.lines:
                    break
                print(f"  not heard: {cue}", flush=True)
            print(f"  {exchange.waited_s:5.2f} s  {cue}: {' '.join(exchange.lines)}", flush=True)
        heard = sum(remark.startswith("Heard") for remark in sitting.remarks)
        memory = max(memory, evening.process_cost(sitting.process_id)[1])
    asked = len(cues)
    once = sum(1 for each in done if each.lines and each.tries == 1)
    told = evening.without_counts([line for each in done for line in each.lines])
    copy = folder / "typed" / "switchback.yaml"
    copy.parent.mkdir()
    copy.write_text(project.read_text())
    typed = stepper("knit", copy, "--plain", "--mute", typed="\n".join(cues) + "\n").stdout.splitlines()
    expected = evening.without_counts(typed[3:])
    again = evening.understood(done, evening.SecondEars())
    right = sum(wanted == found for wanted, found in again)
    waits = sorted(each.waited_s for each in done if each.lines and not math.isnan(each.waited_s))
    p95 = waits[min(len(waits) - 1, round(0.95 * len(waits)))]
    how = f"voice {args.voice}{', looped' if args.looped else ''}{', film at -20 dB' if args.film else ''}"
    print(f"{how}: {once} of {asked} cues heard at once, {heard} taken for cues in {len(done)} said")
    print(f"told as the typed transcript: {'yes' if told == expected else 'NO'} ({len(told)} lines)")
    if told != expected:
        print(*(f"  {a!r} / {b!r}" for a, b in zip(told, expected) if a != b), sep="\n")
    print(f"answers heard again by another recogniser: {right} of {len(again)} the very line")
    print(*(f"  said {a!r}\n  heard {b!r}" for a, b in again if a != b), sep="\n")
    first = "word" if args.silent else "tone"
    if not args.film:  # over a film nobody can tell in the recording where the cue ended
        print(f"end of cue to first {first}: median {statistics.median(waits):.2f} s, p95 {p95:.2f} s, n {len(waits)}")
    print(
        f"CPU while listening: first 20 s {shares[0]:.1%}, 40 s after that {shares[1]:.1%} of a core; "
        f"memory {memory:.0f} MB"
    )


def cost(room, folder: Path, args) -> None:
    """Print what the program takes while a film is on, minute by minute."""
    import numpy as np

    from tests.bench.voice.film import film, loudness
    from tests.bench.voice.material import clips
    from tests.bench.voice.stream import as_16_bit
    from tests.bench.voice.voices import RATE_HZ

    talk = [clip for clip in clips(args.material, True) if clip.kind == "talk"]
    sound = film(talk, args.cost * 60 + 30, args.seed)
    evening.written(folder / "film.wav", as_16_bit(sound * 0.05 / np.float32(loudness(sound))).tobytes(), RATE_HZ)
    project = folder / "switchback.yaml"
    project.write_text((ROOT / "tests" / "fixtures" / "switchback.yaml").read_text())
    with evening.evening(room, project, folder, looped=False, film_wav=folder / "film.wav") as sitting:
        if args.announced:
            sitting.type("film on")
        before, began = evening.process_cost(sitting.process_id)[0], time.monotonic()
        most = most_of_all = 0.0
        while time.monotonic() - began < args.cost * 60:
            time.sleep(5)
            held = [evening.process_cost(each)[1] for each in (sitting.process_id, *evening.children(sitting.process_id))]
            most, most_of_all = max(most, held[0]), max(most_of_all, sum(held))
        taken, lasted = evening.process_cost(sitting.process_id)[0] - before, time.monotonic() - began
        told = [line for at, line in sitting.told if at > began]
    print(
        f"{lasted / 60:.1f} min of film{', announced' if args.announced else ''}: {most:.0f} MB at most, "
        f"{most_of_all:.0f} MB with its {len(held) - 1} other processes; CPU {taken / lasted:.1%} of a core, told {told}"
    )


def tail(room) -> None:
    from stepper.mouth.open_speaker import open_speaker
    from stepper.devices.open_streams import open_input

    speaker, _ = open_speaker(SpeechSettings(engine="espeak"))
    longest = []
    with room.looped():
        microphone = open_input()
        time.sleep(2)
        for _ in range(15):
            speaker.say("Knit to two stitches before the marker, knit two together.")
            ended, last = 0.0, 0.0
            while not ended or time.monotonic() - ended < 1.0:
                block = microphone.take(0.01)
                if not ended and not speaker.speaking:
                    ended = time.monotonic()
                if block and max(map(abs, array("h", block))) > 300:
                    last = time.monotonic()
            longest.append(last - ended)
        microphone.close()
    speaker.close()
    print(
        f"own voice in the microphone after the speaker is done: median {statistics.median(longest) * 1e3:.0f} ms, "
        f"longest {max(longest) * 1e3:.0f} ms of {len(longest)} lines"
    )


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--looped", action="store_true", help="the loudspeaker is heard by the microphone")
    parser.add_argument("--film", action="store_true", help="film sound 20 dB below the cues")
    parser.add_argument("--silent", action="store_true", help="no tones, to measure the first word")
    parser.add_argument("--voice", choices=["espeak", "natural"], default="natural", help="who speaks the cues")
    parser.add_argument("--rounds", type=int, default=0, help="so many cues only")
    parser.add_argument("--tail", action="store_true", help="measure the echo after the last word instead")
    parser.add_argument("--cost", type=float, default=0, help="minutes of film to listen to; min")
    parser.add_argument("--material", type=Path, help="the material of tests.bench.voice, for --cost")
    parser.add_argument("--announced", action="store_true", help="with --cost: the address word is asked for")
    parser.add_argument("--seed", type=int, default=100, help="of the film of --cost")
    args = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        room = the_room(Path(folder))
        try:
            if args.cost:
                cost(room, Path(folder), args)
            elif args.tail:
                tail(room)
            else:
                knit(room, Path(folder), args)
        finally:
            room.stop()


if __name__ == "__main__":
    main()
