"""Take a cue without the address word that was said near, though a film hides from the gate where it ends.

The networks hear such cues; they hear those of a film as well. So what they find is taken only where it is
over, stands out of the room, and the sound falls behind it (`nearness`). A count may go on after a breath, so
it has to be over for longer, and is looked for in a window that holds all of it.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from typing import Final

from stepper.devices.ports import HEARING_RATE_HZ
from stepper.ears.loudness import Loudness
from stepper.ears.nearness import (
    CLEAR_HERS,
    CLEAR_NUMBER,
    HERS_LESS,
    NUMBER_FALLS_DB,
    STRAY,
    UNDER_WAY,
    less_for_hers,
    nearness,
)
from stepper.ears.ports import FoundAlone, Heard

_OVER_S, _LONG_OVER_S = 0.3, 0.96
# It has to be over for so long, and not for longer: it was looked at before.
_NUMBER_OVER_S, _MAY_GO_ON_OVER_S, _LOOKS_S = 0.5, 0.9, 0.8
# A number that can go on has the time behind the closing of the gate that others have there (`listen`).
_SHORT_S = 1.1
# A bare number that takes no longer stands in the narrow window of 2.4 s until it is over for long enough.
# Of 114 of development voices, and a yes and a no of each, 117 are heard so 10 dB above a film, 111 with all
# waited for in the wide window, none another.
_BEFORE_S, _AFTER_S = 0.25, 0.22
_BYTES_S: Final = HEARING_RATE_HZ * 2


class SeekingAlone:
    """Looks through stretches of sound for a cue alone."""

    def __init__(
        self,
        find: Callable[[bytes], FoundAlone | None],
        recognise: Callable[[bytes], Heard | None],
        loudness: Loudness,
        is_hers: Callable[[bytes], bool] | None = None,
    ) -> None:
        """Begin with nothing heard.

        Args:
            find: Finds what may be a cue in a stretch of sound.
            recognise: Hears what was cut out.
            loudness: How loud it was lately, up to the end of each stretch.
            is_hers: Tells whether what was cut out is surely hers; None where no voice is known.
        """
        self._find, self._recognise, self._loudness = find, recognise, loudness
        self._is_hers = is_hers
        self.sees_number = False
        """Whether what was found last has a number in it that was said just now, over or not, and may be
        hers."""
        self.sees_long_number = False
        """The same, and it may be too long for the narrow window."""
        self.ago_s = (0.0, 0.0)
        """How long ago what was found last began, and ended. Unit: s."""

    def look(self, sound: bytes) -> Heard | None:
        """Return the cue that has just been said near, or None.

        Args:
            sound: The last seconds, to this very moment.
        """
        found = self._find(sound)
        self.sees_number = self.sees_long_number = False
        if found is None:
            return None
        began_s, ended_s = (len(sound) / _BYTES_S - each for each in (found.start_s, found.end_s))
        self.ago_s = (began_s, ended_s)
        least_s, most_s = _over(found)
        if found.has_number and found.fit >= UNDER_WAY and ended_s <= most_s:
            self.sees_number = not found.is_answer or self._may_be_near(found, began_s, ended_s)
            is_short = found.is_answer and began_s - ended_s <= _SHORT_S
            self.sees_long_number = self.sees_number and not is_short
        if not least_s <= ended_s <= most_s:
            return None
        is_unclear = found.has_number and found.clear < CLEAR_NUMBER
        may_be_unclear = bool(self._is_hers) and not found.is_answer and found.clear >= CLEAR_HERS
        if (is_unclear and not may_be_unclear) or (found.has_number and found.behind > STRAY):
            return None
        falls_db = self._loudness.fall_db(began_s, ended_s)
        if falls_db is None or (found.may_go_on and falls_db < NUMBER_FALLS_DB):
            return None
        most_less = HERS_LESS if self._is_hers else 0.0
        if nearness(found, falls_db=falls_db, above_db=math.inf, sure=1.0) + most_less < 0:
            return None  # however loud it is; that takes a look at the last 45 s
        above_db = self._loudness.above_db(began_s, ended_s)
        if above_db is None:
            return None
        start = max(0, round((found.start_s - _BEFORE_S) * HEARING_RATE_HZ)) * 2
        cut = sound[start : round((found.end_s + _AFTER_S) * HEARING_RATE_HZ) * 2]
        less = less_for_hers(falls_db, above_db) if self._is_hers else 0.0
        near = nearness(found, falls_db=falls_db, above_db=above_db, sure=1.0)
        has_to_be_hers = near < 0 or is_unclear
        if near + less < 0 or (has_to_be_hers and not (self._is_hers and self._is_hers(cut))):
            return None
        heard = self._recognise(cut)
        if heard is None or heard.addressed or heard.text not in (found.text, *found.alike):
            return None
        sure = nearness(found, falls_db=falls_db, above_db=above_db, sure=heard.score)
        sure += less if heard.hers else 0.0
        if sure < 0 or (found.may_go_on and self._goes_on(sound[start:], heard)):
            return None
        return heard

    def _may_be_near(self, found: FoundAlone, began_s: float, ended_s: float) -> bool:
        """Return whether a bare number may be taken yet, however far the sound falls behind it: a film says
        "two" and "for" all the time."""
        above_db = self._loudness.above_db(began_s, ended_s)
        over = replace(found, behind=0)
        return above_db is None or nearness(over, falls_db=math.inf, above_db=above_db, sure=1.0) >= 0

    def _goes_on(self, sound: bytes, heard: Heard) -> bool:
        """Return whether a number is heard as another with everything that is behind it: "one hundred" with
        "and thirteen"."""
        longer = self._recognise(sound)
        return longer is not None and longer.text not in ("", heard.text)


def _over(found: FoundAlone) -> tuple[float, float]:
    """Return how long it has to be over at least and at most. Unit: s."""
    if not found.has_number:
        return _OVER_S, _LONG_OVER_S
    least_s = _MAY_GO_ON_OVER_S if found.may_go_on else _NUMBER_OVER_S
    return least_s, least_s + _LOOKS_S
