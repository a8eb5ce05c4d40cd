"""What a clock sends to the session: no knitter says it, so it needs no rule and no wording."""

from __future__ import annotations

from stepper.records import dataclass
from stepper.session.cues import Cue


@dataclass(frozen=True, slots=True, kw_only=True)
class Beat(Cue):
    """The time for a run that is read along is over."""

    seq: int = 0
    """Number of the last event when the beat was requested; after any other it is out of date."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Silence(Cue):
    """Nothing was asked for a long while."""

    alarm: int = 0
    """Number of the alarm; it is out of date if the alarm was reset since."""
