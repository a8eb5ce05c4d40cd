"""A whole garment at the prompt: every line that is told, with its words and seconds. Passes no judgement.

    python -m tests.bench.transcript [GARMENT] [--out FILE] [--silent]

The garment (a file of `sample_projects/` or `tests/fixtures/` by name, `switchback` by default) is knitted from the
first step to the last with "next step", and asked "where am I" at each tenth round. Each line is cut at its full
stops, rendered by eSpeak NG at the program's own rate and timed. `--silent` leaves the lines out.
"""

from __future__ import annotations

import argparse
import re
import statistics
import sys
from collections.abc import Iterator, Sequence
from pathlib import Path

from stepper.language.aloud import spell_out
from stepper.language.effect_words import tell_effect
from stepper.language.stretches import part_long_sentences
from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.settings import SpeechSettings
from stepper.plan.model import Plan
from stepper.session import cues
from stepper.session.machine import Session
from tests.bench.spoken_lengths import AT, ROOT
from tests.fixtures import plan_in_size

EVERY = 10
"""Rounds between two questions."""


def exchange(plan: Plan) -> Iterator[tuple[str, str]]:
    """Knit a garment and yield each line of the answers, the first one with what was said to the program."""
    session = Session(plan)
    considered, said, asked = session.consider_opening(AT, "x"), "", -1
    while True:
        session.adopt(considered)
        for effect in considered.effects:
            yield said, tell_effect(effect, session.plan)
            said = ""
        place = session.state.place
        if place.index >= len(session.plan.rounds):
            return
        if place.index != asked and place.index % EVERY == 0:
            asked = place.index
            for effect in session.consider(cues.Where(at=AT)).effects:
                yield "where am I", tell_effect(effect, session.plan)
        considered, said = session.consider(cues.Next(at=AT)), "next step"


def summary(name: str, lengths: Sequence[float]) -> str:
    """Give median, 95th percentile and longest in one line."""
    ordered = sorted(lengths)
    p95 = ordered[round(0.95 * (len(ordered) - 1))]
    return f"{name}: {len(ordered)}, p50 {statistics.median(ordered):.1f}, p95 {p95:.1f}, longest {ordered[-1]:.1f}"


def main() -> None:
    """Print the transcript and its lengths."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("garment", nargs="?", default="switchback")
    parser.add_argument("--out", type=Path, help="file for the transcript; printed without it")
    parser.add_argument("--silent", action="store_true", help="lengths only")
    options = parser.parse_args()
    folders = (ROOT / "sample_projects", ROOT / "tests" / "fixtures")
    path = next(at for folder in folders if (at := folder / f"{options.garment}.yaml").exists())
    voice, rate = EspeakVoice(SpeechSettings()), SpeechSettings().words_per_minute(slower=False)
    known: dict[str, float] = {}
    seconds, words, sentences = [], [], []
    out = options.out.open("w") if options.out else sys.stdout
    for said, line in exchange(plan_in_size(path)):
        if not line:
            continue
        parts = re.split(r"(?<=[.?!]) ", part_long_sentences(spell_out(line)))
        for part in parts:
            if part not in known:
                known[part] = len(voice.speech(part, rate)) / 2 / voice.rate_hz
        sentences += [known[part] for part in parts]
        seconds.append(sum(known[part] for part in parts))
        words.append(float(sum(len(part.split()) for part in parts)))
        if not options.silent:
            if said:
                print(f"> {said}", file=out)
            print(f"  {line}  [{words[-1]:.0f} words, {seconds[-1]:.1f} s]", file=out)
    voice.close()
    print(summary("lines, words", words))
    print(summary("lines, seconds", seconds))
    print(summary("sentences, seconds", sentences))
    above = sum(each > 8 for each in sentences)
    print(f"sentences above 8 s: {above} of {len(sentences)}")


if __name__ == "__main__":
    main()
