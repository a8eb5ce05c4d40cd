"""Whether somebody near speaks while the program does, in what is left once its own voice is taken away.

Pure: numbers in, decisions out.

Two things tell. The detector of speech: what the canceller leaves of the program's own voice is hardly ever
speech to it. And loudness: she is louder than the room is, as at the gate, and louder than what is usually
left, which in a room that echoes for long, or while a film is on, is much. So nobody is noticed before the
program has spoken for fifteen seconds, in which the canceller gets to know the room as well.

Source: made rooms, `python -m tests.bench.spoken_over simulated`. In 22 minutes of speech in eight of
them, echoing for 0.3 to 0.6 s, four with a film, it was stopped for nothing in 0 of 240 lines, and 71 of
85 cues said over it now and then were noticed; said over every second line 29, since then she is
what is usually left.
"""

from __future__ import annotations

import math
from collections import deque

from stepper.ears.gate import CHUNK_S

_SPEECH = 0.5
_LEVELS = round(15 / CHUNK_S)
_PERCENTILE = 0.85
NEARER_DB = 6.0
"""How far above the room's usual loudness she is. Unit: dB."""
_QUIETEST_DB = -68.0
"""A room is taken to be no quieter than that; what she says near a microphone lies far above it."""
WITHIN_CHUNKS = 10
NEAR_CHUNKS = 5
"""So many of the last `WITHIN_CHUNKS` have to be speech of somebody near. Of her about every second is,
since the canceller takes some of her away too; a click, a cough or a word of a film is in fewer."""
_LEFT = round(180 / CHUNK_S)
_LEFT_PERCENTILE = 0.95
_ABOVE_LEFT_DB = 6.0
SETTLING_CHUNKS, KNOWN_CHUNKS = round(5 / CHUNK_S), round(15 / CHUNK_S)
"""How much of the program's own voice the canceller needs to settle, of which what is left tells nothing, and
how much has to have been heard before anybody is noticed over it."""
_LOOKED_AT_EVERY = 16
_OWN_WORDS_CHUNKS, _OWN_WORDS_LEFT_CHUNKS = round(2.5 / CHUNK_S), round(0.5 / CHUNK_S)


class OverSpeech:
    """Knows how loud the room is, and decides chunk by chunk while the program speaks."""

    def __init__(self) -> None:
        """Start with a quiet room."""
        self._room: deque[float] = deque(maxlen=_LEVELS)
        self._lately: deque[bool] = deque(maxlen=WITHIN_CHUNKS)
        self._floor_db: float | None = None
        self._left: deque[float] = deque(maxlen=_LEFT)
        self._left_db = math.inf
        self._taken = 0
        self._unsettled = SETTLING_CHUNKS

    def take_room(self, level_db: float) -> None:
        """Note how loud a chunk is that came in while the program was silent. Unit: dB."""
        self._room.append(level_db)
        self._floor_db = None
        self._lately.clear()

    def unsettle(self) -> None:
        """Notice nobody until the canceller has had time to find the echo anew."""
        self._unsettled = SETTLING_CHUNKS
        self._lately.clear()

    def leave_out_her_words(self) -> None:
        """Forget how loud the last 2.5 s were, and the last half second over speech: that was she."""
        for levels, count in ((self._room, _OWN_WORDS_CHUNKS), (self._left, _OWN_WORDS_LEFT_CHUNKS)):
            for _ in range(min(count, len(levels))):
                levels.pop()
        self._floor_db = None

    def matters(self, level_db: float) -> bool:
        """Return whether it makes a difference if a chunk of this level is speech."""
        return level_db >= self._least_db()

    def take(self, level_db: float, speech: float) -> bool:
        """Take a chunk of what is left while the program speaks, and return whether somebody near speaks.

        Args:
            level_db: How loud it is. Unit: dB.
            speech: How likely it is speech. Range: 0 to 1.
        """
        if self._taken % _LOOKED_AT_EVERY == 0 and self._taken >= KNOWN_CHUNKS:
            self._left_db = sorted(self._left)[int(len(self._left) * _LEFT_PERCENTILE)]
        self._taken += 1
        if self._unsettled:
            self._unsettled -= 1
            return False
        self._lately.append(speech >= _SPEECH and self.matters(level_db))
        self._left.append(level_db)
        return sum(self._lately) >= NEAR_CHUNKS

    def _least_db(self) -> float:
        if self._floor_db is None:
            levels = sorted(self._room)
            usual = levels[int(len(levels) * _PERCENTILE)] if levels else _QUIETEST_DB
            self._floor_db = max(usual, _QUIETEST_DB)
        return max(self._floor_db + NEARER_DB, self._left_db + _ABOVE_LEFT_DB)
