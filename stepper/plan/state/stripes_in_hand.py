"""Stripes by a sequence that the page defines: which round of it comes next. Records; no I/O."""

from __future__ import annotations

from stepper.records import dataclass


@dataclass(slots=True, kw_only=True)
class StripesInHand:
    """The sequence being worked; the yarn in hand is always that of its next round."""

    name: str
    yarns: tuple[str, ...]
    """Key of the yarn of each round, in order."""
    next: int = 0
    """Round that comes next, from 0."""
    last: str = ""
    """Yarn of the round last worked; empty for none."""
    whole: bool = False
    """Whether the line that called for it works it a number of times, so that it ends with that line."""
    line: int = 0
    """Line of the file that last called for it: rows in other yarns that it repeats are worked in these."""
    told: bool = False
    """Whether it was told that they go on in lines that do not name them."""

    @property
    def yarn(self) -> str:
        """Key of the yarn of the next round."""
        return self.yarns[self.next % len(self.yarns)]

    def step(self) -> None:
        """Count a round as worked."""
        self.last = self.yarn
        self.next = (self.next + 1) % len(self.yarns)
