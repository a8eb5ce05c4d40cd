"""How sure a recogniser has to be before it acts: one table.

The strict row is for cues without an address word, the loose one for cues behind it, since whoever says the
address word means the program.

Source: chosen on the development voices of `tests/bench/voice` (261 cues and counts clean, 95 cues at 20 dB,
244 lines of talk, half of which hold a cue's own words) for few false cues at no great loss; `sounds_within`
and `sounds_clear` are from earlier measurements on other synthetic voices and were found good there too. The
likelihoods cannot be compared with those of a score that is corrected for noise: here each token has its due.
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
    """Taken for its likelihood when that, the due for its tokens added, is above that of the free transcript
    by so much. A natural logarithm; below 0 it may be less likely."""
    clear: float
    """And when the next cue of another meaning is so much less likely. A natural logarithm."""
    agreed: float
    """Or so much less likely, when the free transcript is that very cue. A natural logarithm."""
    furthest: float
    """And when its sounds are no farther than this from those of the transcript. Range: 0 to 1."""


STRICT: Final = Thresholds(
    sounds_within=0.28, sounds_clear=0.08, least=-1.5, clear=1.0, agreed=0.7, furthest=0.65
)
LOOSE: Final = Thresholds(
    sounds_within=0.3, sounds_clear=0.08, least=-8.0, clear=1.0, agreed=0.7, furthest=0.75
)
ALIKE_WITHIN: Final = 0.3
"""Two cues of different meaning that are no farther apart in sound are never told apart by sound alone."""
TOKEN_DUE: Final = 0.7
"""What a text is given for each of its tokens, since each costs it some likelihood whatever was said."""
