"""Puts clips into rooms and films as the gate cuts them out, and keeps what the encoder makes of them.

    python -m tests.bench.voice.training.mixing CLIPS MIXED.npz [--versions 4] [--seed 1]

Each version of a clip has its own pace, loudness from word to word, room, microphone, distance from the film, and
length of silence around it. Kept are the encoder's states in 16 bit, the sounds of the text, and the loudness
above the film in dB.
"""

from __future__ import annotations

import argparse
from pathlib import Path

import numpy as np
from scipy.signal import fftconvolve

from stepper.ears.moonshine_model import MoonshineModel
from stepper.mouth.pronunciation import SOUNDS, Pronouncer
from tests.bench.voice.film import loudness, music
from tests.bench.voice.training.speakers import index
from tests.bench.voice.voices import RATE_HZ

_FILMS, _FILM_S = 46, 60


class Mixer:
    """Draws rooms, films and distances."""

    def __init__(self, talk: list[np.ndarray], seed: int) -> None:
        self._source = np.random.default_rng(seed)
        self._films = [self._film(talk, seed * 1000 + number) for number in range(_FILMS)]

    def mixed(self, clip: np.ndarray) -> tuple[np.ndarray, float]:
        """Make one version of a clip; give it with its loudness above the film. Unit: dB."""
        draw, sound = self._source, clip.astype(np.float32) / 32_768
        changes = ((0.7, self._pace), (0.2, self._pause), (0.6, self._loudness), (0.12, self._overdriven),
                   (0.5, self._microphone), (0.45, self._room))  # fmt: skip
        for share, change in changes:
            if draw.random() < share:
                sound = change(sound)
        before, behind = (round(draw.uniform(*span) * RATE_HZ) for span in ((0.02, 0.45), (0.05, 0.55)))
        whole = np.concatenate([np.zeros(before, np.float32), sound, np.zeros(behind, np.float32)])
        noise, ratio = self._noise(len(whole))
        whole = whole + noise * (loudness(sound) / loudness(noise)) * 10 ** (-ratio / 20)
        if draw.random() < 0.2:  # cut off short
            whole = whole[: len(whole) - min(max(0, behind - RATE_HZ * 3 // 100), len(whole) // 3)]
        return whole / np.abs(whole).max() * 10 ** (draw.uniform(-30, -1) / 20), ratio

    def _noise(self, length: int) -> tuple[np.ndarray, float]:
        draw, kind = self._source, self._source.random()
        if kind < 0.22:
            return draw.standard_normal(length).astype(np.float32), draw.uniform(25, 55)
        if kind < 0.28:
            return draw.standard_normal(length).astype(np.float32), draw.uniform(4, 26)
        film = self._films[draw.integers(len(self._films))]
        start = draw.integers(max(1, len(film) - length))
        noise = film[start : start + length]
        return (self._microphone(noise) if draw.random() < 0.5 else noise), draw.uniform(4, 26)

    def _film(self, talk: list[np.ndarray], seed: int) -> np.ndarray:
        """Music, and mostly one voice after another, sometimes three at once."""
        draw = np.random.default_rng(seed)
        film = music(_FILM_S, seed) * draw.uniform(0, 0.12)
        for _ in range(draw.choice((0, 1, 3), p=(0.12, 0.66, 0.22))):
            at = draw.uniform(0, 0.5)
            while at < _FILM_S - 1:
                speech = talk[draw.integers(len(talk))].astype(np.float32) / 32_768
                start = round(at * RATE_HZ)
                speech = speech[: len(film) - start]
                film[start : start + len(speech)] += speech * draw.uniform(0.5, 1.0)
                at += len(speech) / RATE_HZ + draw.choice((-0.3, 0.2, 0.6, 1.2))
        return film.astype(np.float32)

    def _pace(self, sound: np.ndarray) -> np.ndarray:
        places = np.arange(0, len(sound) - 1, self._source.uniform(0.84, 1.18))
        return np.interp(places, np.arange(len(sound)), sound).astype(np.float32)

    def _pause(self, sound: np.ndarray) -> np.ndarray:
        """Wait where it is quietest, if that is quiet enough to be between two words."""
        step = RATE_HZ * 3 // 100
        count = len(sound) // step
        if count < 14:
            return sound
        power = (sound[: count * step].reshape(count, step) ** 2).mean(1)
        quietest = 4 + int(power[4:-4].argmin())
        if power[quietest] > power.max() * 10**-2.6:
            return sound
        at = quietest * step + step // 2
        pause = np.zeros(round(self._source.uniform(0.05, 0.32) * RATE_HZ), np.float32)
        return np.concatenate([sound[:at], pause, sound[at:]])

    def _loudness(self, sound: np.ndarray) -> np.ndarray:
        """Louder and softer every third of a second; the voice often drops at the end."""
        draw, length = self._source, len(sound)
        knots = max(2, round(length / RATE_HZ / 0.35) + 1)
        gain = np.interp(np.arange(length), np.linspace(0, length, knots), draw.normal(0, draw.uniform(0, 4), knots))
        for share, deepest, end in ((0.4, 12, True), (0.15, 9, False)):
            if draw.random() < share:
                reach = min(length, round(draw.uniform(0.2, 0.6) * RATE_HZ))
                drop = np.linspace(0, draw.uniform(2, deepest), reach)
                if end:
                    gain[-reach:] -= drop
                else:
                    gain[:reach] -= drop[::-1]
        return (sound * 10 ** (gain / 20)).astype(np.float32)

    def _overdriven(self, sound: np.ndarray) -> np.ndarray:
        most = np.abs(sound).max()
        return (np.tanh(sound / most * self._source.uniform(1.5, 4)) * most).astype(np.float32)

    def _microphone(self, sound: np.ndarray) -> np.ndarray:
        draw, spectrum = self._source, np.fft.rfft(sound)
        hertz = np.fft.rfftfreq(len(sound), 1 / RATE_HZ)
        gain = np.zeros_like(hertz)
        for middle in (150, 400, 1000, 2200, 4500, 7500):
            gain += draw.normal(0, 3) * np.exp(-((np.log(np.maximum(hertz, 60) / middle) / 0.6) ** 2))
        if draw.random() < 0.15:
            gain -= 10 * np.log10(1 + (hertz / draw.uniform(2800, 6300)) ** 8)
        return np.fft.irfft(spectrum * 10 ** (gain / 20), len(sound)).astype(np.float32)

    def _room(self, sound: np.ndarray) -> np.ndarray:
        draw = self._source
        length = round(draw.uniform(0.1, 0.5) * RATE_HZ)
        echo = draw.standard_normal(length) * np.exp(-6.9 * np.arange(length) / length)
        echo[: round(draw.uniform(0.001, 0.01) * RATE_HZ)] = 0
        echo *= 10 ** (draw.uniform(-20, -3) / 20) / np.sqrt((echo**2).sum() + 1e-9)
        echo[0] += 1
        return fftconvolve(sound, echo)[: len(sound) + RATE_HZ * 15 // 100].astype(np.float32)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("clips", type=Path)
    parser.add_argument("out", type=Path)
    parser.add_argument("--versions", type=int, default=4)
    parser.add_argument("--seed", type=int, default=1)
    args = parser.parse_args()
    rows = list(index(args.clips))
    clips = [np.load(args.clips / row["file"]) for row in rows]
    pronouncer = Pronouncer()
    said = [pronouncer.sounds([row["text"]])[0] for row in rows]
    pronouncer.close()
    mixer = Mixer([clip for clip, row in zip(clips, rows, strict=True) if row["kind"] in ("hard", "plain")], args.seed)
    model, columns = MoonshineModel(), {sound: number + 1 for number, sound in enumerate(SOUNDS)}
    states, labels, ratios, sources = [], [], [], []
    order = np.random.default_rng(args.seed).permutation(np.repeat(np.arange(len(rows)), args.versions))
    for number in order:
        sound, ratio = mixer.mixed(clips[number])
        encoded = model.encode((sound * 32_767).astype(np.int16).tobytes()).states[0]
        if 2 * len(said[number]) < len(encoded):  # the sounds, each with nothing behind it, have room
            states.append(encoded.astype(np.float16))
            labels.append(np.array([columns[sound] for sound in said[number]], np.int16))
            ratios.append(ratio)
            sources.append(number)
    np.savez(
        args.out, states=np.concatenate(states), frames=[len(each) for each in states],
        labels=np.concatenate(labels), sounds=[len(each) for each in labels], ratios=ratios, sources=sources,
    )  # fmt: skip
    print(f"{len(states)} utterances, {sum(map(len, states)) * 0.024 / 3600:.1f} h")


if __name__ == "__main__":
    main()
