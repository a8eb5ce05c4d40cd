"""Take a cue without the address word that was said near, though a film hides from the gate where it ends.

The networks hear such cues; they hear those of a film as well. So what they find is taken only where it is
over, stands out of the room, and the sound falls behind it (`nearness`).
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from stepper.devices.ports import HEARING_RATE_HZ
from stepper.ears.loudness import Loudness
from stepper.ears.nearness import nearness
from stepper.ears.ports import FoundAlone, Heard

_OVER_S, _LONG_OVER_S = 0.3, 0.9
# It has to be over for so long, and not for longer: it was looked at before.
_BEFORE_S, _AFTER_S = 0.25, 0.22
_BYTES_S: Final = HEARING_RATE_HZ * 2


class SeekingAlone:
    """Looks through stretches of sound for a cue alone."""

    def __init__(
        self,
        find: Callable[[bytes], FoundAlone | None],
        recognise: Callable[[bytes], Heard | None],
        loudness: Loudness,
    ) -> None:
        """Begin with nothing heard.

        Args:
            find: Finds what may be a cue in a stretch of sound.
            recognise: Hears what was cut out.
            loudness: How loud it was lately, up to the end of each stretch.
        """
        self._find, self._recognise, self._loudness = find, recognise, loudness

    def look(self, sound: bytes) -> Heard | None:
        """Return the cue that has just been said near, or None.

        Args:
            sound: The last seconds, to this very moment.
        """
        found = self._find(sound)
        if found is None:
            return None
        began_s, ended_s = (len(sound) / _BYTES_S - each for each in (found.start_s, found.end_s))
        if not _OVER_S <= ended_s <= _LONG_OVER_S:
            return None
        falls_db = self._loudness.fall_db(began_s, ended_s)
        above_db = self._loudness.above_db(began_s, ended_s)
        if falls_db is None or above_db is None:
            return None
        if nearness(found, falls_db=falls_db, above_db=above_db, sure=1.0) < 0:
            return None
        start = max(0, round((found.start_s - _BEFORE_S) * HEARING_RATE_HZ))
        heard = self._recognise(sound[start * 2 : round((found.end_s + _AFTER_S) * HEARING_RATE_HZ) * 2])
        if heard is None or heard.addressed or heard.text != found.text:
            return None
        sure = nearness(found, falls_db=falls_db, above_db=above_db, sure=heard.score)
        return heard if sure >= 0 else None
