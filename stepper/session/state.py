"""Where the knitting stands, as it follows from everything that happened: the fold of all events.

A state holds no plan. It holds the place and the corrections of lengths; the plan as it is knitted follows
from these and from the project file (`stepper.plan.lengthen.corrected`). So replaying a journal needs no
plan, cannot fail for want of one, and a snapshot of the state stays small.

`Knitting` is the part that undo gives back, whole, exactly as it was: undo keeps the former `Knitting` rather
than working out an opposite for each event. The rest (numbering, listening, what can be undone) only goes
forward.
"""

from __future__ import annotations

from dataclasses import dataclass

from stepper.plan.lengthen import Correction
from stepper.session.steps import By

UNDO_DEPTH = 100
"""Things that can be taken back, counted from the last. Bounded so that a snapshot stays small."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """Where in the garment."""

    index: int = 0
    """Round being worked, from 0 over the whole garment; the number of rounds when all are done."""
    stitch: int = 0
    """Stitches of it worked, as counted on the right needle. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Verified:
    """The last count that was as it should be."""

    place: Place
    stitches: int
    """Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Knitting:
    """What undo gives back."""

    place: Place = Place()
    by: By = By.ROUND
    corrections: tuple[Correction, ...] = ()
    """What measuring changed, at most one for each stretch."""
    verified: Verified | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Memento:
    """An event that can be taken back (or done again), and what to return to."""

    seq: int
    """Number of the event."""
    kind: str
    """What the knitter did, as the name of the class of the first event of the chain of undo and redo."""
    knitting: Knitting
    """What taking it back returns to."""


@dataclass(frozen=True, slots=True, kw_only=True)
class State:
    """Where the session stands."""

    seq: int = 0
    """Number of the last event."""
    knitting: Knitting = Knitting()
    undo: tuple[Memento, ...] = ()
    """What can be taken back, the latest last."""
    redo: tuple[Memento, ...] = ()
    """What can be done again, the latest last."""
    asleep: bool = False
    """Whether the ears are closed."""
    closed: bool = False
    """Whether the sitting is over."""
    fingerprint: str = ""
    """Of the plan the place belongs to; empty before the first sitting."""
    last_cue_at: str = ""
    """When the knitter last did something. ISO 8601; empty before the first cue."""

    @property
    def place(self) -> Place:
        """Where in the garment."""
        return self.knitting.place
