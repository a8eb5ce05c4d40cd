"""Puts whole batches of clips into rooms and films, where the training is: the noisy sound and, aligned with it, the
clean one. All of it runs on the accelerator, so that mixing never holds the training up.

Each version of a clip has its own pace, a pause perhaps, its own loudness from word to word, room, microphone, distance
from the film, and length of silence around it.
"""

from __future__ import annotations

import numpy as np
import torch

RATE_HZ = 16_000
_PIECE = 320
_REACH = 8_000
"""Longest echo. Unit: samples."""
_MIDDLES_HZ = (150, 400, 1000, 2200, 4500, 7500)


class Store:
    """Clips one behind the other in the accelerator's memory."""

    def __init__(self, clips: list[np.ndarray], device: str) -> None:
        lengths = np.array([len(clip) for clip in clips])
        self.lengths = torch.tensor(lengths, device=device)
        self.starts = torch.tensor(np.cumsum([0, *lengths[:-1]]), device=device)
        self.sound = torch.tensor(np.concatenate([*clips, np.zeros(1, np.int16)]), device=device)


class Mixer:
    """Draws rooms, films and distances."""

    def __init__(self, clips: Store, films: Store, noises: Store | None, device: str, seed: int) -> None:
        self.clips, self.films, self.noises, self.device = clips, films, noises, device
        self.source = torch.Generator(device=device)
        self.source.manual_seed(seed)

    def uniform(self, *shape: int, low: float = 0.0, high: float = 1.0) -> torch.Tensor:
        return torch.rand(*shape, device=self.device, generator=self.source) * (high - low) + low

    def normal(self, *shape: int) -> torch.Tensor:
        return torch.randn(*shape, device=self.device, generator=self.source)

    def pairs(
        self, numbers: torch.Tensor, low_db: float = 0.0, high_db: float = 26.0, plain: bool = False
    ) -> tuple[torch.Tensor, torch.Tensor, torch.Tensor, torch.Tensor]:
        """Make one version of each clip.

        Args:
            numbers: Which clips.
            low_db: How loud above the film at least.
            high_db: How loud above it at most.
            plain: Only in a film, at low_db.

        Returns:
            The noisy sound, the clean one (both batch × samples), how many samples of each are there, and how
            loud above the film, in dB.
        """
        clean, speech, lengths = self._said(numbers, plain)
        far = clean
        if not plain:
            peak = far.abs().amax(1, keepdim=True) + 1e-9
            hard = self.uniform(len(far), 1, low=1.5, high=4.0)
            driven = torch.tanh(far / peak * hard) * peak
            far = torch.where(self.uniform(len(far), 1) < 0.12, driven, far)
            far = self._roomy(far)
        noise, ratio = self._noise(clean.shape, low_db, high_db, plain)
        level = _loudness(far, speech) / _loudness(noise, torch.ones_like(speech, dtype=torch.bool))
        noisy = far + noise * level[:, None] * 10 ** (-ratio[:, None] / 20)
        there = torch.arange(clean.shape[1], device=self.device)[None] < lengths[:, None]
        noisy, clean = noisy * there, clean * there
        loud = 10 ** (self.uniform(len(far), 1, low=-30.0, high=-1.0) / 20)
        noisy = noisy / (noisy.abs().amax(1, keepdim=True) + 1e-9) * loud
        clean = clean / (clean.abs().amax(1, keepdim=True) + 1e-9) * 0.5
        clean = (clean + self.normal(*clean.shape) * 3e-4) * there
        return noisy, clean, lengths, ratio

    def _said(self, numbers, plain):
        """Lay clips over a stretch of silence, at their own pace, with a pause and swings of loudness."""
        count = len(numbers)
        pace = torch.where(self.uniform(count) < 0.7, self.uniform(count, low=0.84, high=1.18), torch.ones(1, device=self.device))
        pace = torch.ones_like(pace) if plain else pace
        own = ((self.clips.lengths[numbers] - 1) / pace).long()
        before = (self.uniform(count, low=0.02, high=0.45) * RATE_HZ).long()
        behind = (self.uniform(count, low=0.05, high=0.55) * RATE_HZ).long()
        gap = (self.uniform(count, low=0.05, high=0.45) * RATE_HZ).long() * (self.uniform(count) < 0.25)
        place, quiet = self._quietest(numbers, own, pace)
        gap = torch.zeros_like(gap) if plain else gap * quiet
        lengths = before + own + gap + behind
        longest = int(lengths.max())
        longest += -longest % 1600
        at = torch.arange(longest, device=self.device)[None] - before[:, None]
        in_gap = (at >= place[:, None]) & (at < (place + gap)[:, None])
        at = torch.where(at >= (place + gap)[:, None], at - gap[:, None], at)
        said = self._read(numbers, at.float() * pace[:, None], (at >= 0) & (at < own[:, None]) & ~in_gap)
        if not plain:
            said = said * self._swings(longest, before, own + gap)
        speech = torch.arange(longest, device=self.device)[None]
        speech = (speech >= before[:, None]) & (speech < (before + own + gap)[:, None]) & ~in_gap
        cut = (self.uniform(count) < 0.2) & (not plain)
        short = torch.minimum((behind - RATE_HZ * 3 // 100).clamp(min=0), lengths // 3)
        return said, speech, (lengths - torch.where(cut, short, 0)).clamp(min=8000)

    def _read(self, numbers, places, there):
        """Read clips at places between their samples."""
        places = places.clamp(min=0)
        low = places.floor()
        share = places - low
        start, last = self.clips.starts[numbers][:, None], (self.clips.lengths[numbers] - 1)[:, None]
        one = self.clips.sound[start + low.long().clamp(max=last)].float()
        other = self.clips.sound[start + (low.long() + 1).clamp(max=last)].float()
        return (one + (other - one) * share) / 32_768 * there

    def _quietest(self, numbers, own, pace):
        """Return where each clip is quietest, away from its ends, and whether that may be between two words."""
        step = RATE_HZ * 3 // 100
        longest = int(own.max())
        longest += -longest % step
        at = torch.arange(longest, device=self.device)[None].expand(len(numbers), -1)
        power = self._read(numbers, at.float() * pace[:, None], at < own[:, None]) ** 2
        power = power.view(len(numbers), -1, step).mean(2)
        count, piece = own // step, torch.arange(power.shape[1], device=self.device)[None]
        inside = (piece >= 4) & (piece < (count - 4)[:, None])
        least, found = power.masked_fill(~inside, float("inf")).min(1)
        return found * step + step // 2, (least <= power.amax(1) * 10**-2.6) & (count >= 14)

    def _swings(self, longest, before, own):
        """Louder and softer every third of a second; the voice often drops at the end, and soft beginnings."""
        count = len(own)
        knots = max(2, round(longest / RATE_HZ / 0.35) + 1)
        gain = self.normal(count, 1, knots) * self.uniform(count, 1, 1, low=0.0, high=4.0)
        gain = torch.nn.functional.interpolate(gain, size=longest, mode="linear", align_corners=True)[:, 0]
        at = torch.arange(longest, device=self.device)[None].float()
        for share, deepest, is_end in ((0.4, 12.0, True), (0.15, 9.0, False)):
            reach = (self.uniform(count, low=0.2, high=0.6) * RATE_HZ)[:, None]
            drop = self.uniform(count, 1, low=2.0, high=deepest) * (self.uniform(count, 1) < share)
            begin, end = before[:, None].float(), (before + own)[:, None].float()
            part = (at - (end - reach)) / reach if is_end else (begin + reach - at) / reach
            gain = gain - drop * part.clamp(0, 1)
        wild = self.uniform(count, 1) < 0.6
        return torch.where(wild, 10 ** (gain / 20), 1.0)

    def _roomy(self, sound, room: float = 0.5, microphone: float = 0.5):
        """Let half of the sounds go through a microphone, half through a room."""
        count, samples = sound.shape
        size = samples + _REACH
        response = self._room(count, room)
        spectrum = torch.fft.rfft(sound, size) * torch.fft.rfft(response, size)
        spectrum = spectrum * self._microphone(count, spectrum.shape[1], microphone)
        return torch.fft.irfft(spectrum, size)[:, :samples]

    def _room(self, count, share):
        length = self.uniform(count, 1, low=0.1, high=0.5) * RATE_HZ
        at = torch.arange(_REACH, device=self.device)[None].float()
        echo = self.normal(count, _REACH) * torch.exp(-6.9 * at / length) * (at < length)
        echo = echo * (at >= self.uniform(count, 1, low=0.001, high=0.01) * RATE_HZ)
        loud = 10 ** (self.uniform(count, 1, low=-20.0, high=-1.0) / 20)
        echo = echo * loud / ((echo**2).sum(1, keepdim=True) + 1e-9).sqrt() * (self.uniform(count, 1) < share)
        echo[:, 0] += 1
        return echo

    def _microphone(self, count, bins, share):
        hertz = torch.linspace(0, RATE_HZ / 2, bins, device=self.device)
        log = hertz.clamp(min=60).log()
        gain = torch.zeros(count, bins, device=self.device)
        for middle in _MIDDLES_HZ:
            gain += self.normal(count, 1) * 3 * torch.exp(-(((log - np.log(middle)) / 0.6) ** 2))[None]
        edge = self.uniform(count, 1, low=2800.0, high=6300.0)
        dull = 10 * torch.log10(1 + (hertz[None] / edge) ** 8)
        gain = gain - dull * (self.uniform(count, 1) < 0.15)
        return torch.where(self.uniform(count, 1) < share, 10 ** (gain / 20), 1.0)

    def _noise(self, shape, low_db, high_db, plain):
        """Draw what is behind each: a film mostly, a noise, or the hiss of a quiet room."""
        count, samples = shape
        film = self._stretch(self.films, count, samples)
        ratio = self.uniform(count, low=low_db, high=high_db)
        if plain:
            return film, torch.full_like(ratio, low_db)
        film = self._roomy(film)
        kind = self.uniform(count)
        hiss = self.normal(count, samples)
        behind = torch.where((kind < 0.20)[:, None], hiss, film)
        ratio = torch.where(kind < 0.15, self.uniform(count, low=25.0, high=55.0), ratio)
        ratio = torch.where((kind >= 0.15) & (kind < 0.20), ratio.clamp(min=2.0), ratio)
        if self.noises is not None:
            behind = torch.where(((kind >= 0.20) & (kind < 0.30))[:, None], self._stretch(self.noises, count, samples), behind)
        return behind, ratio

    def _stretch(self, store, count, samples):
        """Cut a stretch out of a random sound of a store, round again where it is short."""
        which = torch.randint(len(store.lengths), (count,), device=self.device, generator=self.source)
        length = store.lengths[which][:, None]
        at = (self.uniform(count, 1) * length).long() + torch.arange(samples, device=self.device)[None]
        return store.sound[store.starts[which][:, None] + at % length].float() / 32_768 + self.normal(count, samples) * 1e-4


def _loudness(sound, there):
    """Return the root mean square of the louder half of the 20 ms pieces that are there."""
    pieces = sound[:, : sound.shape[1] // _PIECE * _PIECE].view(len(sound), -1, _PIECE)
    inside = there[:, : pieces.shape[1] * _PIECE : _PIECE]
    power = (pieces**2).mean(2).masked_fill(~inside, -1.0).sort(1, descending=True).values
    half = ((inside.sum(1) + 1) // 2).clamp(min=1)
    loudest = torch.arange(power.shape[1], device=sound.device)[None] < half[:, None]
    return ((power.clamp(min=0) * loudest).sum(1) / half).sqrt() + 1e-9
