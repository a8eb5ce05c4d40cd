"""Which wordings are heard well? Each, said by every quick development voice, near and with a film behind.

    python -m tests.bench.voice.wordings FOLDER [--ratio 12] [--most 6] [--only "how often"]

FOLDER holds the material, for the film. Prints how many of the voices each wording was heard from, the worst
first, with what it was taken for. No gate is in between: this is about the words alone. `--most` takes so many of the
voices, of every family in turn; `--only` says those wordings alone that hold one of these words, against all others.
"""

from __future__ import annotations

import argparse
from collections import Counter, defaultdict
from pathlib import Path

import numpy as np

from stepper.sitting.project_file import load_project
from stepper.sitting.recogniser_wordings import list_wordings
from stepper.ears.bundled.moonshine import MoonshineRecogniser
from tests.bench.voice.__main__ import SAMPLE
from tests.bench.voice.film import film, loudness
from tests.bench.voice.material import CLOSED, clips
from tests.bench.voice.stream import as_16_bit
from tests.bench.voice.voices import RATE_HZ, VOICES, say

_QUICK = ("espeak", "flite")
_AROUND_S = 0.25


def near_and_behind(
    clip: np.ndarray, behind: np.ndarray, ratio_db: float, source: np.random.Generator
) -> tuple[np.ndarray, np.ndarray]:
    """Give a clip with a quarter second around it, in quiet and somewhere in a film so much softer."""
    around = np.zeros(round(_AROUND_S * RATE_HZ), np.float32)
    speech = np.concatenate([around, clip.astype(np.float32) / 32_768, around])
    at = source.integers(len(behind) - len(speech))
    noise = behind[at : at + len(speech)]
    return speech, speech + noise * (loudness(speech) / loudness(noise)) * 10 ** (-ratio_db / 20)


def main() -> None:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("folder", type=Path)
    parser.add_argument("--ratio", type=float, default=12.0, help="how much louder than the film; dB")
    parser.add_argument("--most", type=int, default=len(VOICES), help="voices at most")
    parser.add_argument("--only", nargs="*", default=[""], help="words that a wording holds to be said")
    args = parser.parse_args()
    chosen = [text for text in CLOSED if any(each in text for each in args.only)]
    quick = [voice for voice in VOICES if voice.family in _QUICK and not voice.held_out]
    voices = sorted(quick, key=lambda voice: [each for each in quick if each.family == voice.family].index(voice))
    voices = voices[: args.most]
    wordings = list_wordings(load_project(SAMPLE).plan)
    recogniser = MoonshineRecogniser(wordings)
    behind = film([clip for clip in clips(args.folder, False) if clip.kind == "talk"], 600, 900)
    source, heard, taken = np.random.default_rng(1), Counter[str](), defaultdict[str, Counter[str]](Counter)
    for voice in voices:
        for text in chosen:
            for sound in near_and_behind(say(voice, text, 1.0, None), behind, args.ratio, source):
                found = recogniser.recognise(as_16_bit(sound).tobytes())
                is_right = found is not None and wordings.phrases.get(found.text) == wordings.phrases[text]
                heard[text] += is_right
                if found is not None and not is_right:
                    taken[text][found.text] += 1
    print(f"{len(chosen)} of {len(CLOSED)} wordings, {len(voices)} voices, near and {args.ratio:g} dB above a film")
    print(
        f"heard {heard.total() / len(chosen) / len(voices) / 2:.3f}, wrong {sum(map(Counter.total, taken.values()))}"
    )
    for text in sorted(chosen, key=lambda each: (heard[each], each)):
        wrong = ", ".join(f"{other} ({count})" for other, count in taken[text].items())
        print(f"{heard[text]:3} of {len(voices) * 2}  {text}{f'  taken for {wrong}' if wrong else ''}")
    recogniser.close()


if __name__ == "__main__":
    main()
