"""Take an answer in a word, a bare number or a "not now" only where nobody else in the room may have said it.

A film says "yes", "no" and "I don't know" all evening, and an open question would be answered by it. So what
is not far louder than the room mostly is has to be said twice: the first is answered with the low tone, as
anything that was not understood, and whoever wants to answer says it again. A film hardly ever says the same
again just then. Pure: what was heard in, what counts out.
"""

from __future__ import annotations

import math
from collections.abc import Hashable
from dataclasses import replace
from typing import Final

from stepper.ears.ports import Heard

SURE_DB: Final = 6.0
"""It has to stand so far above the loud part of the last 45 s, and of the last five minutes, to count at once
(`Loudness.over_room_db`). Source: of 83 answers that films of development voices and people gave in an hour
and a half, some with lines 18 dB softer than others, the loudest stands 4.2 above what was loud in 45 s; of
81 words of people kept for choosing, 10 dB above a film, 47 do. Unit: dB."""
AGAIN_DB: Final = 0.0
"""And so far to count when it is said again: all 81 do, and 19 of the 83. Unit: dB."""
_WITHIN_S = 8.0
# She hears the tone and says it again.


class Answers:
    """Keeps what may have been an answer until it is said again."""

    def __init__(self) -> None:
        """Begin with nothing heard."""
        self._held: dict[Hashable, float] = {}

    def take(self, heard: Heard, over_room_db: float | None, began_s: float, now_s: float) -> Heard | None:
        """Return what was heard as it counts: as it is, without text where it has to be said again, or None
        where it is the film's.

        "No, no" in one breath is said once: who says it again has heard the tone.

        Args:
            heard: What was heard; only an answer is ever held back.
            over_room_db: How far it stands above the loud part of what was before; None where nobody knows
                yet: then it is said twice.
            began_s: When it was said. Unit: s, from any moment on.
            now_s: When it was understood. Unit: s, from the same moment on.
        """
        if not (heard.text and heard.is_answer):
            if heard.text:
                self._held.clear()
            return heard
        if heard.hers:
            self._held.clear()
            return heard
        if over_room_db is not None and over_room_db < AGAIN_DB:
            return None
        said = heard.text if heard.means is None else heard.means
        since_s = began_s - self._held.get(said, math.inf)
        if (over_room_db is not None and over_room_db >= SURE_DB) or 0 <= since_s <= _WITHIN_S:
            self._held.clear()
            return heard
        self._held[said] = now_s
        return replace(heard, text="", score=0.0, goes_on=False)
