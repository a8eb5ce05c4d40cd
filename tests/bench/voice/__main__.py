"""How well is she heard? Cues and counts in the sound of a film, and the film alone.

    python -m tests.bench.voice.material FOLDER [--styles FOLDER]    # once; see voices.py for the packages
    python -m tests.bench.voice FOLDER [--part quiet|noise|false|address|cost] [--most 60] [--hours 0.5]
        [--people FOLDER] [--vosk FOLDER] [--development]

The voices are those held out from every choice of a threshold, unless --development is given. Each share
comes with its 95 % interval (Wilson; for rates the exact one of Poisson). --people names a folder of WAV files of
speech without cues, 16 kHz, for the false cues. Film sound: held-out voices talking over music.
"""

from __future__ import annotations

import argparse
import random
import subprocess
import sys
import tempfile
import time
import wave
from collections import Counter
from pathlib import Path

import numpy as np
from scipy.stats import chi2

from stepper.sitting.project_file import load_project
from stepper.sitting.recogniser_wordings import list_wordings
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.ears.bundled.moonshine import MoonshineRecogniser
from stepper.ears.bundled.thresholds import STRICT
from stepper.ears.wordings import Reply
from tests.bench.voice.film import film, loudness
from tests.bench.voice.material import ADDRESSES, CLOSED, Clip, clips
from tests.bench.voice.stream import Event, Outcome, answer_to, as_16_bit, hear, known_after, with_cues
from tests.bench.voice.voices import RATE_HZ, read_wav

SAMPLE = Path(__file__).parents[2] / "fixtures" / "switchback.yaml"
RATIOS = (("clean", None), ("20 dB", 20.0), ("10 dB", 10.0), ("5 dB", 5.0))
FIRST_SOUND_S = 0.060
"""From `say` to heard in a virtual room; `python tests/bench/speak.py`. Unit: s."""


def share(count: int, of: int) -> str:
    """Write a share with its Wilson interval."""
    if not of:
        return "-"
    z, p = 1.96, count / of
    middle = (p + z * z / (2 * of)) / (1 + z * z / of)
    half = z / (1 + z * z / of) * (p * (1 - p) / of + z * z / (4 * of * of)) ** 0.5
    return f"{p:.3f} [{max(0, middle - half):.2f}-{min(1, middle + half):.2f}] of {of}"


_LISTENS = """
import sys
from pathlib import Path
from stepper.sitting.preferences import Preferences
from stepper.sitting.project_file import load_project
from stepper.sitting.recognisers import hear_recording
plan = load_project(Path(sys.argv[1])).plan
list(hear_recording(Path(sys.argv[2]), plan, lambda: True, Preferences()))
status = Path("/proc/self/status").read_text()
print(int(status.partition("VmHWM:")[2].split()[0]) // 1024)
"""
# Not ru_maxrss: that begins with the most that the bench itself held when it started the process.


def memory_mb(sound: np.ndarray) -> int:
    """Let the program's ears alone hear a stream, in a process without any of this bench; the most it takes. Unit: MB."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "stream.wav"
        with wave.open(str(path), "wb") as file:
            file.setparams((1, 2, RATE_HZ, len(sound), "NONE", ""))
            file.writeframes(sound.tobytes())
        said = subprocess.run(
            [sys.executable, "-c", _LISTENS, str(SAMPLE), str(path)], capture_output=True, text=True, check=True
        )
    return int(said.stdout.split()[-1])


def rate(count: int, hours: float) -> str:
    """Write a rate with the exact interval of Poisson."""
    low = chi2.ppf(0.025, 2 * count) / 2 if count else 0.0
    return f"{count / hours:.2f} an hour [{low / hours:.2f}-{chi2.ppf(0.975, 2 * count + 2) / 2 / hours:.2f}]"


class Bench:
    """The material and what is common to all parts."""

    def __init__(self, args: argparse.Namespace) -> None:
        self.args = args
        self.plan = load_project(SAMPLE).plan
        self.all = clips(args.folder, not args.development)
        self.talk = [clip for clip in self.all if clip.kind == "talk"]
        voices = sorted({clip.voice.label for clip in self.all})
        print(f"{'development' if args.development else 'held-out'} voices: {', '.join(voices)}")

    def some(self, kind: str, address: str = "") -> list[Clip]:
        """Draw clips of a kind, voice by voice in turn."""
        found = [
            clip for clip in self.all if clip.kind == kind and clip.address == address and self.known(clip)
        ]
        random.Random(kind).shuffle(found)
        seen: Counter[str] = Counter()
        ranked = []
        for clip in found:
            seen[clip.voice.label] += 1
            ranked.append((seen[clip.voice.label], len(ranked), clip))
        return [clip for *_, clip in sorted(ranked, key=lambda each: each[:2])][: self.args.most]

    def known(self, clip: Clip) -> bool:
        """Tell whether what a clip says is still in the vocabulary, which may have changed since it was made."""
        return not clip.kind.endswith("cue") or clip.said in CLOSED

    def recogniser(self, address: str = "", strict=STRICT, asked: frozenset[Reply] = frozenset()):
        if self.args.vosk:
            from stepper.ears.vosk_recogniser import VoskRecogniser

            return VoskRecogniser(list_wordings(self.plan), self.args.vosk, address=address)
        return MoonshineRecogniser(list_wordings(self.plan), address=address, strict=strict, asked=lambda: asked)

    def same(self, said: str, heard: str) -> bool:
        """Tell whether two texts are the same cue."""
        one, other = (understand(text, self.plan) for text in (said, heard))
        return not isinstance(one, NotUnderstood) and one == other

    def table(self, kind: str, address: str = "", asked: frozenset[Reply] = frozenset()) -> None:
        """Print heard and wrong at each loudness of the film."""
        what = f'"{address}" + {kind.split()[-1]}' if address else kind
        what += ", asked for" if asked else ""
        if self.args.row not in ("", what):
            return
        recogniser = self.recogniser(address, asked=asked)
        chosen = self.some(kind, address)
        for name, ratio in RATIOS:
            if (
                (ratio is None)
                if self.args.part == "noise"
                else (ratio is not None and self.args.part == "quiet")
            ):
                continue
            if self.args.ratio not in (None, ratio):
                continue
            sound, events = with_cues(chosen, self.talk, ratio, 1)
            outcome = hear(sound, recogniser)
            answers = [(event, *answer_to(event, outcome)) for event in events]
            right = [event for event, text, _ in answers if text and self.same(event.clip.said, text)]
            wrong = sum(bool(text) and not self.same(event.clip.said, text) for event, text, _ in answers)
            print(
                f"{what:22} {name:6} heard {share(len(right), len(events))}, wrong {share(wrong, len(events))}"
            )
            self.by_voice(answers)
            if self.args.verbose:
                for event, text, _ in answers:
                    if text is None or not self.same(event.clip.said, text):
                        print(f"    {event.clip.voice.label}: {event.clip.said} -> {text}")
            self.times(outcome, right)
        recogniser.close()

    def by_voice(self, answers) -> None:
        """Print how many cues of each voice were heard."""
        said, heard = Counter(), Counter()
        for event, text, _ in answers:
            said[event.clip.voice.label] += 1
            heard[event.clip.voice.label] += bool(text) and self.same(event.clip.said, text)
        print("    by voice: " + ", ".join(f"{voice} {heard[voice]}/{said[voice]}" for voice in sorted(said)))

    def times(self, outcome: Outcome, right: list[Event]) -> None:
        """Print how long after its end a cue that is heard is answered, on a machine with nothing else to do."""
        waits = [known_after(event, outcome) for event in right]
        first = np.array([wait for wait in waits if wait is not None]) + FIRST_SOUND_S
        if len(first):
            print(
                f"    end of cue to first sound: median {np.median(first) * 1000:.0f} ms, "
                f"p95 {np.percentile(first, 95) * 1000:.0f} ms; an utterance recognised in "
                f"{np.median(outcome.cpu_s) * 1000:.0f} ms, p95 {np.percentile(outcome.cpu_s, 95) * 1000:.0f} (CPU)"
            )

    def false(self, address: str = "", asked: frozenset[Reply] = frozenset()) -> None:
        """Print how often something is heard where no cue was said."""
        recogniser = self.recogniser(address, asked=asked)
        heard: list[str] = []
        hours = people_hours = 0.0
        people: list[str] = []
        for number in range(round(self.args.hours * 6)):  # ten minutes each
            stream = film(self.talk, 600, 100 + number)
            outcome = hear(as_16_bit(stream * 0.05 / loudness(stream)), recogniser)
            heard += [text for _, text in outcome.heard]
            hours += 600 / 3600
        if self.args.people:
            files = sorted(self.args.people.glob("*.wav"))
            sound = [part for file in files for part in (read_wav(file)[0], np.zeros(RATE_HZ, np.int16))]
            whole = np.concatenate(sound)[: round(self.args.people_hours * 3600 * RATE_HZ)]
            hiss = np.random.default_rng(1).standard_normal(len(whole)) * 10
            outcome = hear((whole * 0.5 + hiss).astype(np.int16), recogniser)
            people, people_hours = [text for _, text in outcome.heard], len(whole) / RATE_HZ / 3600
        name = f'behind "{address}"' if address else "without an address word"
        name += ", while a count is asked for" if asked else ""
        if hours:
            print(
                f"false cues {name}: film of synthetic voices {hours:.1f} h, {rate(len(heard), hours)}: {heard}"
            )
        if people_hours:
            print(
                f"false cues {name}: people {people_hours:.2f} h, {rate(len(people), people_hours)}: {people}"
            )
        recogniser.close()

    def cost(self) -> None:
        """Print load time, memory, and the processor's share while listening."""
        began = time.perf_counter()
        recogniser = self.recogniser("stepper")
        print(f"load {time.perf_counter() - began:.2f} s")
        stream = as_16_bit(film(self.talk, 300, 5) * 0.05)
        outcome = hear(stream, recogniser)
        print(
            f"CPU while a film is on: {outcome.all_cpu_s / 300:.1%} of a core, {len(outcome.took_s)} utterances"
        )
        quiet = np.random.default_rng(2).standard_normal(300 * RATE_HZ) * 10
        outcome = hear(quiet.astype(np.int16), recogniser)
        print(f"CPU in a quiet room: {outcome.all_cpu_s / 300:.1%} of a core")
        print(f"memory at most: {memory_mb(stream)} MB in a process that only listens")
        recogniser.close()


def main() -> None:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("folder", type=Path)
    parser.add_argument(
        "--part", choices=("quiet", "noise", "false", "address", "cost", "all"), default="all"
    )
    parser.add_argument("--most", type=int, default=60, help="cues and counts in each row")
    parser.add_argument("--hours", type=float, default=0.5)
    parser.add_argument("--people", type=Path)
    parser.add_argument("--people-hours", type=float, default=0.5)
    parser.add_argument("--address", default="stepper")
    parser.add_argument("--vosk", type=Path)
    parser.add_argument("--development", action="store_true")
    parser.add_argument("--row", default="", help="only rows of this name, such as 'count, asked for'")
    parser.add_argument("--ratio", type=float, help="only rows that much louder than the film; dB")
    parser.add_argument("--verbose", action="store_true")
    args = parser.parse_args()
    bench = Bench(args)
    if args.part in ("quiet", "noise", "all"):
        for kind in ("cue", "count"):
            bench.table(kind)
        bench.table("count", asked=frozenset({Reply.NUMBER}))
        bench.table("addressed cue", args.address)
        bench.table("addressed count", args.address)
    if args.part in ("false", "all"):
        bench.false()
        bench.false(args.address)
        bench.false(asked=frozenset({Reply.NUMBER}))
    if args.part == "address":
        for address in ADDRESSES:
            bench.table("addressed cue", address)
    if args.part in ("cost", "all"):
        bench.cost()


if __name__ == "__main__":
    main()
