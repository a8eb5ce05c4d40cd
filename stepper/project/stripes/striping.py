"""Records of stripes: a sequence that the page defines, and a line that calls for it. No I/O."""

from __future__ import annotations

from stepper.project.problems import Span
from stepper.records import dataclass


@dataclass(frozen=True, slots=True)
class StripesCalled:
    """Stripes that a line is worked in, by a sequence that the page defines."""

    name: str
    """As the line calls it: `stripe sequence`."""
    stripes: tuple[tuple[int, str], ...]
    """Rounds and yarn of each stripe, in order."""
    place: Span
    start: int | None = None
    """Round of the sequence to begin with, from 0, if the line says so."""
    first: str = ""
    """Yarn of the stripe to begin with, if the line says so."""
    goes_on: bool = False
    """Whether the line says that it goes on with stripes begun before: `continue in stripe pattern`."""
    whole: bool = False
    """Whether the line works whole sequences, so that the stripes end with it."""

    @property
    def rounds(self) -> int:
        """How many rounds the sequence repeats over."""
        return sum(number for number, _ in self.stripes)
