"""How loud it was lately: how far a cue stands out of the room, and how far the sound falls behind it.

Pure: numbers in, numbers out. She is near, and a film is not: where she ends, the sound falls to the film;
where a film's own words end, its line goes on, or its music does.
"""

from __future__ import annotations

import math
from collections import deque
from collections.abc import Sequence
from itertools import islice
from statistics import fmean, median
from typing import Final

from stepper.ears.gate import CHUNK_S

_KEPT = round(300 / CHUNK_S)
_LATELY = round(45 / CHUNK_S)
_FADING_CHUNKS: Final = 3
# Behind the last sound of a cue its own end still sounds.
_FEWEST_CHUNKS = 2
_STRETCH, _APART = 40, 13
# The room is measured as in `seeking`: in stretches of 1.3 s, by their loudest third.
_LOUDEST = 14
_PEAK, _NINE_TENTHS = 4, 0.9
_KNOWN = round(10 / CHUNK_S)
# A film that was on for three seconds may have been silent for two of them.
_OFTEN = round(40 / CHUNK_S) // _APART
# What was so loud for 40 s of the last five minutes is still in the room, though it is silent now. Were it
# less, more would be asked over a film that is on all the while than by the last 45 s.
_ALONE_CHUNKS, _SILENT_DB, _OWN_VOICE_DB = round(1.5 / CHUNK_S), 20.0, 8.0
# After a talk with somebody her own voice is what was loud in the room, and an answer in a word stands 1 to
# 5 dB below the loud part of that; but in silence, as hardly a word of a film does (`models/ears`).
_EARLIER_CHUNKS, _LATER_CHUNKS = 3, 4
# The sounds of a word are found where each is surest, so it begins and ends so much before and behind.


class Loudness:
    """Keeps how loud each chunk of the last five minutes was; most is measured by the last 45 s of them."""

    def __init__(self) -> None:
        """Begin with nothing heard."""
        self._levels: deque[float] = deque(maxlen=_KEPT)
        self._hers: deque[bool] = deque(maxlen=_KEPT)

    def take(self, level_db: float) -> None:
        """Take one more chunk. Unit: dB, above any fixed reference."""
        self._levels.append(level_db)
        self._hers.append(False)

    def leave_out(self, began_s: float) -> None:
        """Take what has been heard since for hers: later words of hers are not measured by it.

        Args:
            began_s: How long ago it began. Unit: s.
        """
        begin, end = max(0, self._places(began_s, 0.0)[0] - _EARLIER_CHUNKS), len(self._hers)
        for at in range(begin, end):
            self._hers[at] = True

    def fall_db(self, began_s: float, ended_s: float) -> float | None:
        """Return how much louder something was than what has followed it.

        Args:
            began_s: How long ago its sounds began. Unit: s.
            ended_s: How long ago they ended. Unit: s.

        Returns:
            Its loudest third against the loudest half of what is behind; None if too little is. Unit: dB.
        """
        begin, end = self._places(began_s, ended_s)
        own, behind = self._between(begin, end), self._between(end + _FADING_CHUNKS, len(self._levels))
        if not own or len(behind) < _FEWEST_CHUNKS:
            return None
        return _loudest(own, len(own) / 3) - _loudest(behind, len(behind) / 2)

    def above_db(self, began_s: float, ended_s: float) -> float | None:
        """Return how much louder something was than the room mostly is when it is loud.

        Args:
            began_s: How long ago its sounds began. Unit: s.
            ended_s: How long ago they ended. Unit: s.

        Returns:
            Its loudest half second against the median of what was before; None if nothing was. Unit: dB.
        """
        begin, end = self._places(began_s, ended_s)
        own, before = self._between(begin, end), self._between(begin - _LATELY, begin)
        if not own or not before:
            return None
        starts = range(0, max(1, len(before) - _STRETCH), _APART)
        stretches = [before[start : start + _STRETCH] for start in starts]
        return _loudest(own, _LOUDEST) - median(_loudest(each, len(each) / 3) for each in stretches)

    def over_room_db(self, began_s: float, ended_s: float) -> float | None:
        """Return how much louder the loudest eighth of a second of a word is than that of nine in ten of the
        stretches in the 45 s before it, her own words left out, and than that of what was loud for 40 s of
        the last five minutes.

        A short word is as loud as a long one so, one loud line of a film counts for little, and a film that
        was silent for a minute is not forgotten. What is hardly softer than that, and stands in silence,
        counts as no softer: it may have been she who talked.

        Args:
            began_s: How long ago its sounds began. Unit: s.
            ended_s: How long ago they ended. Unit: s.

        Returns:
            None if less than ten seconds were before. Unit: dB.
        """
        begin, end = self._places(began_s, ended_s)
        begin = max(0, begin - _EARLIER_CHUNKS)
        lately = self._peaks(begin - _LATELY, begin)
        if not lately:
            return None
        loud = lately[int(_NINE_TENTHS * (len(lately) - 1))]
        all_of_it = self._peaks(0, begin)
        if len(all_of_it) > _OFTEN:
            loud = max(loud, all_of_it[-_OFTEN])
        over_db = _loudest(self._between(begin, end + _LATER_CHUNKS), _PEAK) - loud
        return 0.0 if -_OWN_VOICE_DB <= over_db < 0 and self._is_alone(begin, end) else over_db

    def _is_alone(self, begin: int, end: int) -> bool:
        """Return whether silence was before something, and is behind it."""
        own = self._between(begin, end)
        softest_db = _loudest(own, len(own) / 3) - _SILENT_DB
        # Its first sound may be found late ("nine"), and its last may still fade.
        before = self._between(begin - _ALONE_CHUNKS, begin - _EARLIER_CHUNKS)
        behind = self._between(end + _LATER_CHUNKS, len(self._levels))
        return bool(before and behind) and max(_loudest(before, _PEAK), median(behind)) <= softest_db

    def _peaks(self, begin: int, end: int) -> list[float]:
        """Return the loudest of each stretch between two chunks, her own words left out, the softest first;
        nothing if less than ten seconds are left. Unit: dB."""
        begin = max(0, begin)
        between = zip(self._between(begin, end), islice(self._hers, begin, end), strict=True)
        others = [level for level, is_hers in between if not is_hers]
        if len(others) < _KNOWN:
            return []
        starts = range(0, max(1, len(others) - _STRETCH), _APART)
        return sorted(_loudest(others[start : start + _STRETCH], _PEAK) for start in starts)

    def _places(self, began_s: float, ended_s: float) -> tuple[int, int]:
        """Return the first chunk of something, and the one behind its last."""
        begin = max(0, math.floor(len(self._levels) - began_s / CHUNK_S))
        return begin, max(begin + 1, math.ceil(len(self._levels) - ended_s / CHUNK_S))

    def _between(self, begin: int, end: int) -> list[float]:
        return list(islice(self._levels, max(0, begin), end))


def _loudest(levels: Sequence[float], count: float) -> float:
    """Return the mean of the loudest chunks, so many of them; at least one, and no more than there are."""
    return fmean(sorted(levels)[-max(1, round(count)) :])
