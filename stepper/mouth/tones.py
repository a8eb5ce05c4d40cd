"""Soft tones in place of words, for "heard", "not understood" and "film on". Pure: numbers in, sound out.

Two notes up for "heard", two notes down and lower for "not understood", three notes there and back for a
film, so that they differ in shape and not in pitch alone. All are short, fade in and out, and are soft
compared with speech.
"""

from __future__ import annotations

import math
from array import array
from functools import lru_cache

from stepper.mouth.ports import Tone

TONE_RATE_HZ = 22_050
"""Samples per second of every tone."""
_LOUDEST = 0.09
"""Peak of a tone as a share of the loudest sound: 21 dB below it."""
_FADE_S = 0.008
_NOTES: dict[Tone, tuple[tuple[float, float], ...]] = {
    Tone.HEARD: ((659.3, 0.045), (880.0, 0.055)),
    Tone.NOT_UNDERSTOOD: ((523.3, 0.08), (392.0, 0.11)),
    Tone.FILM: ((880.0, 0.055), (659.3, 0.055), (880.0, 0.07)),
}
"""Pitch in Hz and length in s of each note: e'' a'' up, c'' g' down, a'' e'' a'' (equal temperament, a' =
440 Hz). At the pitch of a voice, a third or more below these, the ears' detector would take them for speech.
"""


@lru_cache(maxsize=8)
def make_tone(sound: Tone, volume: float = 1.0) -> bytes:
    """Make a tone: one channel, signed 16-bit, at `TONE_RATE_HZ`.

    Args:
        sound: What it stands for.
        volume: Range: 0 to 1.
    """
    samples = array("h")
    for pitch_hz, lasts_s in _NOTES[sound]:
        count = round(lasts_s * TONE_RATE_HZ)
        fade = _FADE_S * TONE_RATE_HZ
        for at in range(count):
            rises = min(1.0, at / fade, (count - 1 - at) / fade)
            turn = 2 * math.pi * pitch_hz * at / TONE_RATE_HZ
            samples.append(round(32_767 * _LOUDEST * volume * rises * math.sin(turn)))
    return samples.tobytes()
