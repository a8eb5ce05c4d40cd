"""Puts clips of one speaker or of several behind each other: what nobody recorded, and a knitter will say.

    python -m tests.bench.voice.training.joins RECORDINGS DATA      # people's telephone numbers, cut between digits

Nobody says the address word on record, and few say numbers of several digits. So an address word, said by a synthetic
voice, is put in front of a person's word; digits of people, of one or of several, behind each other; and synthetic cues
behind another voice's address word. The gaps are 0.03 to 0.6 s, and each part has its own loudness.
"""

from __future__ import annotations

import argparse
import random
from collections import defaultdict
from collections.abc import Sequence
from pathlib import Path

import numpy as np

from tests.bench.voice.training.packs import RATE_HZ, Clip, pack
from tests.bench.voice.training.texts import FRONTS

DIGITS = ("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine")
SINGLE = (*DIGITS, "yes", "no", "stop", "go", "forward", "backward")
_PIECE, _LEVEL = 160, 3_000.0
_GAPS_S = ((0.03, 0.2, 0.5), (0.2, 0.6, 0.5))
_SURE, _LEAST_GAP_S, _MOST_DIGITS = -1.5, 0.05, 4


def levelled(sound: np.ndarray) -> np.ndarray:
    """Cut the silence off both ends and bring the louder half to a common loudness."""
    sound = sound.astype(np.float32)
    frames = sound[: len(sound) // _PIECE * _PIECE].reshape(-1, _PIECE)
    peaks = np.abs(frames).max(1)
    loud = np.nonzero(peaks > peaks.max() / 60)[0]
    first, last = max(0, loud[0] - 2), min(len(frames), loud[-1] + 3)
    power = np.sort((frames[first:last] ** 2).mean(1))
    return sound[first * _PIECE : last * _PIECE] * (_LEVEL / (np.sqrt(power[len(power) // 2 :].mean()) + 1e-6))


class Joiner:
    """Draws clips and joins them."""

    def __init__(self, clips: Sequence[Clip], seed: int) -> None:
        self.source = random.Random(seed)
        speech = [each for each in clips if each.sounds and each.kind != "noise" and len(each.sound) > 2_000]
        self.fronts = [each for each in speech if each.text in FRONTS and each.family in ("espeak", "kokoro")]
        self.words, self.throats, self.digits, self.others = defaultdict(list), defaultdict(list), defaultdict(list), []
        for each in speech:
            if each.family in ("words", "digits"):
                self.words[each.text].append(each)
            if each.family == "throats":
                self.throats[each.text].append(each)
            if each.family in ("words", "digits") and set(each.text.split()) <= set(DIGITS):
                self.digits[len(each.text.split())].append(each)
            if each.family in ("kokoro", "espeak") and each.kind in ("cue", "count", "slots", "answer") and not each.text.startswith(FRONTS):
                self.others.append(each)
        self.by_speaker = defaultdict(list)
        for each in self.digits[1]:
            if each.by:
                self.by_speaker[each.by].append(each)
        self.several = [some for some in self.by_speaker.values() if len({each.text for each in some}) > 1]

    def made(self, count: int, held: bool) -> list[Clip]:
        """Join so many."""
        return [self._one(held) for _ in range(count)] if self.fronts and self.words else []

    def _one(self, held: bool) -> Clip:
        source = self.source
        way = source.choices(("word", "any word", "digits", "cue"), (54, 10, 22, 14))[0]
        front = source.random() < (0.6 if way == "digits" else 0.95)
        if way == "word":
            parts = [self._word(SINGLE)]
        elif way == "any word":
            parts = [self._word(sorted(self.words))]
        elif way == "digits" or not self.others:
            parts = self._number()
        else:
            parts = [source.choice(self.others)]
        return self._joined([source.choice(self.fronts), *parts] if front else parts, way, held)

    def _word(self, words: Sequence[str]) -> Clip:
        """Draw a word, as somebody said it or, half the time, as another throat would."""
        word = self.source.choice([each for each in words if self.words.get(each)])
        others = self.throats.get(word)
        return self.source.choice(others if others and self.source.random() < 0.5 else self.words[word])

    def _number(self) -> list[Clip]:
        """Draw digits, of one person where there are, up to four."""
        source, many = self.source, self.source.choices((1, 2, 3, 4), (15, 35, 40, 10))[0]
        longer = self.digits[many]
        if longer and source.random() < 0.6:
            return [source.choice(longer)]
        if self.several and source.random() < 0.4:
            some = source.choice(self.several)
            return [source.choice(some) for _ in range(many)]
        return [self._word(DIGITS) for _ in range(many)]

    def _joined(self, clips: list[Clip], way: str, held: bool) -> Clip:
        source, parts, sounds = self.source, list[np.ndarray](), list[int]()
        for number, clip in enumerate(clips):
            if number:
                low, high, _ = source.choices(_GAPS_S, [each[2] for each in _GAPS_S])[0]
                hiss = np.random.default_rng(source.getrandbits(32)).standard_normal(round(source.uniform(low, high) * RATE_HZ))
                parts.append(hiss.astype(np.float32) * source.choice((0.3, 3.0, 15.0)))
            parts.append(levelled(clip.sound) * 10 ** (source.gauss(0, 3.0) / 20))
            sounds += clip.sounds or []
        whole = np.concatenate(parts)
        whole *= 16_384 / (np.abs(whole).max() + 1e-6)
        text = ", ".join(clip.text for clip in clips)
        return Clip(sound=whole.astype(np.int16), sounds=sounds, kind=f"joined {way}", family="joined", text=text, held=held, by="")


def cut_numbers(recordings: Path, data: Path) -> None:
    """Cut people's telephone numbers, said digit by digit, into numbers of one to four digits."""
    from stepper.ears.bundled.moonshine_model import MoonshineModel
    from stepper.ears.bundled.sound_model import FRAME_S, SoundModel
    from tests.bench.voice.people import read
    from tests.bench.voice.training.collect import named_part, rows_of, sounds

    source, model, head, found, left = random.Random(3), MoonshineModel(), SoundModel(), [], 0
    names = dict(zip(DIGITS, sounds(list(DIGITS)), strict=True))
    for row in rows_of(recordings):
        said = row["text"].lower().split()
        part = named_part(row)
        if row["corpus"] != "alphanumeric-duke" or part == "measuring" or not said or not set(said) <= set(DIGITS):
            continue
        sound = np.frombuffer(read(recordings / row["file"]), np.int16)
        likely = head.likely(model.states(sound.tobytes()))
        ends, fit = _aligned(likely, [names[word] for word in said])
        if fit < _SURE:
            left += 1
            continue
        at = 0
        while at < len(said):
            many = source.choices((1, 2, 3, _MOST_DIGITS), (35, 25, 30, 10))[0]
            some = said[at : at + many]
            start = (ends[at - 1][1] + ends[at][0]) / 2 if at else ends[0][0] - 8
            last = at + len(some) - 1
            end = (ends[last][1] + ends[last + 1][0]) / 2 if last + 1 < len(said) else ends[last][1] + 10
            clear = (not at or ends[at][0] - ends[at - 1][1] > _LEAST_GAP_S / FRAME_S) and (
                last + 1 == len(said) or ends[last + 1][0] - ends[last][1] > _LEAST_GAP_S / FRAME_S)  # fmt: skip
            if clear:
                cut = sound[max(0, round(start * FRAME_S * RATE_HZ)) : round(end * FRAME_S * RATE_HZ)]
                found.append((cut, {"kind": "digits", "family": "digits", "text": " ".join(some), "held": part == "choosing",
                                    "by": row["speaker"], "sounds": [each for word in some for each in names[word]]}))  # fmt: skip
            at += len(some)
    pack(data, "numbers", found, "20k")
    print(f"{len(found)} numbers of {len({row['by'] for _, row in found})} people, {left} recordings left out")


def _aligned(likely: np.ndarray, words: list[list[int]]) -> tuple[list[tuple[int, int]], float]:
    """Return the first and last frame of each word in the likeliest way to say them all, and how much less likely
    than anything a frame is in it. Natural logarithm."""
    columns = [0]
    for word in words:
        for sound in word:
            columns += [sound + 1, 0]
    states, frames = len(columns), len(likely)
    column, best = np.array(columns), np.full(len(columns), -np.inf)
    best[:2] = likely[0, column[:2]]
    back = np.zeros((frames, states), np.int8)
    skips = np.zeros(states, bool)
    skips[3::2] = column[3::2] != column[1:-2:2]
    for frame in range(1, frames):
        ways = np.full((3, states), -np.inf)
        ways[0], ways[1, 1:] = best, best[:-1]
        ways[2, 2:] = np.where(skips[2:], best[:-2], -np.inf)
        back[frame] = ways.argmax(0)
        best = ways.max(0) + likely[frame, column]
    state = states - 1 if best[-1] > best[-2] else states - 2
    total, path = best[state], np.zeros(frames, int)
    for frame in range(frames - 1, -1, -1):
        path[frame] = state
        state -= back[frame, state]
    ends, first = [], 1
    for word in words:
        inside = np.nonzero((path >= first) & (path < first + 2 * len(word) - 1))[0]
        ends.append((int(inside[0]), int(inside[-1])))
        first += 2 * len(word)
    return ends, float(total - likely.max(1).sum()) / len(words)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("recordings", type=Path)
    parser.add_argument("data", type=Path)
    args = parser.parse_args()
    cut_numbers(args.recordings, args.data)


if __name__ == "__main__":
    main()
