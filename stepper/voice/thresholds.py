"""How sure a recogniser has to be before it acts: one table.

The strict row is for cues without an address word, the loose one for cues behind it, since whoever says the
address word means the program.

Source: likelihood and letters from earlier measurements on synthetic voices in film sound; the other columns
were chosen on the development voices of `tests/bench/voice`.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final


@dataclass(frozen=True, slots=True, kw_only=True)
class Thresholds:
    """What it takes."""

    sounds_within: float
    """Taken for its sounds alone when they are no farther from those heard. Range: 0 to 1."""
    sounds_clear: float
    """And when the nearest cue of another meaning is so much farther. Range: 0 to 1."""
    least: float
    """Taken for its likelihood when that is no more than this below that of the free transcript. A natural
    logarithm, 0 or less."""
    clear: float
    """And when the next cue of another meaning is so much less likely. A natural logarithm."""
    agreed: float
    """Or so much less likely, when the free transcript is that very cue. A natural logarithm."""
    furthest: float
    """And when its sounds are no farther than this from those of the transcript. Range: 0 to 1."""


STRICT: Final = Thresholds(
    sounds_within=0.28, sounds_clear=0.08, least=-8.0, clear=1.5, agreed=1.0, furthest=0.65
)
LOOSE: Final = Thresholds(
    sounds_within=0.3, sounds_clear=0.08, least=-12.0, clear=1.5, agreed=1.0, furthest=0.9
)
ALIKE_WITHIN: Final = 0.3
"""Two cues of different meaning that are no farther apart in sound are never told apart by sound alone."""
TOKEN_DUE: Final = 1.3
"""What a text is given for each of its tokens, since each costs it some likelihood whatever was said."""
