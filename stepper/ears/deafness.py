"""Close the ears while the program speaks and for a tail after, so that it does not hear itself.

The last word of a line is on its way through the loudspeaker, the air and the microphone when the speaker
says that it is done. How long that way is, in a virtual room: `python tests/bench/evening.py --tail`.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from typing import Protocol


class Speaking(Protocol):
    """Something that speaks, and can say whether it is speaking."""

    @property
    def speaking(self) -> bool:
        """Whether a line is being said or waits its turn."""


class Deafness:
    """A predicate: whether what comes in through the microphone now may be the program's own voice.

    It has to be asked often, at least once in each line that is said: the microphone asks with every block.
    """

    def __init__(self, speaker: Speaking, tail_s: float, clock: Callable[[], float] = time.monotonic) -> None:
        """Begin with open ears.

        Args:
            speaker: What speaks.
            tail_s: How long the ears stay closed after the last word. Range: 0 and up. Unit: s.
            clock: Returns the time now. Unit: s.
        """
        self._speaker, self._tail_s, self._clock = speaker, tail_s, clock
        self._until = float("-inf")

    def __call__(self) -> bool:
        """Return whether the ears are closed now."""
        now = self._clock()
        if self._speaker.speaking:
            self._until = now + self._tail_s
        return now < self._until or self._speaker.speaking
