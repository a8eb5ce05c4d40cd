"""Fit the estimate of how long a sentence takes to say to rendered speech. Passes no judgement.

    python -m tests.bench.speech_seconds [--folder sample_projects] [--every N]

Renders every sentence that whole garments can produce, as `tests.bench.spoken_lengths` does but before any is parted, by eSpeak NG
at the program's own rate. Prints what least squares makes of them, and how far the constants of `stepper.session.speech_length` lie off,
for sentences without figures and for the few with a figure above those that are put into words.
"""

from __future__ import annotations

import argparse
import re

import numpy as np

from stepper.language.aloud import spell_out
from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.settings import SpeechSettings
from stepper.session.speech_length import seconds_of
from tests.bench.spoken_lengths import ROOT, lines_of
from tests.fixtures import plan_in_size


def features(text: str) -> tuple[int, int, int, int, int]:
    """Count letters, words, commas, colons with semicolons, and one for the sentence."""
    return sum(map(str.isalnum, text)), len(text.split()), text.count(","), text.count(":") + text.count(";"), 1


def main() -> None:
    """Print the fit and what is left."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--folder", default="sample_projects")
    parser.add_argument("--every", type=int, default=10)
    options = parser.parse_args()
    voice, rate = EspeakVoice(SpeechSettings()), SpeechSettings().words_per_minute(slower=False)
    said = {
        sentence
        for path in sorted((ROOT / options.folder).glob("*.yaml"))
        for _, line in lines_of(plan_in_size(path), options.every)
        if line
        for sentence in re.split(r"(?<=[.?!]) ", spell_out(line))
    }
    seconds = {each: len(voice.speech(each, rate)) / 2 / voice.rate_hz for each in sorted(said)}
    voice.close()
    figures = {each for each in said if re.search(r"\d", each)}
    worded = sorted(said - figures)
    rows, lengths = np.array([features(each) for each in worded], float), np.array([seconds[each] for each in worded])
    fit, *_ = np.linalg.lstsq(rows, lengths, rcond=None)
    left = lengths - rows @ fit
    print(f"rate {rate} words a minute; letter, word, comma, colon, sentence: {', '.join(f'{each:.3f}' for each in fit)} s")
    print(f"fit to {len(worded)} sentences: standard deviation of what is left {left.std():.2f} s, at most {left.max():.2f} s short")
    for name, group in (("in words", worded), ("with a figure", sorted(figures))):
        off = np.array([seconds[each] - seconds_of(each) for each in group] or [0.0])
        print(f"constants in use, {len(group)} {name}: mean {off.mean():.2f}, deviation {off.std():.2f}, at most {off.max():.2f} s short")
        for each in sorted(group, key=lambda one: seconds_of(one) - seconds[one])[:3]:
            print(f"  {seconds[each]:.1f} s, estimated {seconds_of(each):.1f}: {each}")


if __name__ == "__main__":
    main()
