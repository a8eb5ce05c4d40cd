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
from enum import Enum

from stepper.craft.pace_by_kind import KnittingKind
from stepper.plan.absorb import Mend
from stepper.plan.lengthen import LengthCorrection
from stepper.plan.respace import Respacing
from stepper.plan.resuming import PlaceChoice
from stepper.session.steps import By

UNDO_DEPTH = 100
"""Things that can be taken back, counted from the last. Bounded so that a snapshot stays small."""


@dataclass(frozen=True, slots=True, kw_only=True, order=True)
class Position:
    """Where in the garment.

    Places are ordered as they are knitted: by the round, and within a round by the stitch.
    """

    index: int = 0
    """Round being worked, from 0 over the whole garment; the number of rounds when all are done."""
    stitch: int = 0
    """Stitches of it worked, as counted on the right needle. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Verified:
    """The last count that was as it should be."""

    place: Position
    stitches: int
    """Unit: stitches."""


class Asking(Enum):
    """How often a count is asked for."""

    COST = "cost"
    """Where a fault would be locked in, and wherever a count pays by its cost; so it is by itself."""
    PATTERN = "pattern"
    """At the checkpoints of the plan and nowhere else."""
    MORE = "more"
    """As by cost with half the interval, and at the checkpoints of the plan."""
    LESS = "less"
    """Only where a fault would be locked in."""
    NEVER = "never"


class Seen(Enum):
    """Something the knitter saw in the fabric when she looked for a fault."""

    LOOP = "loop"
    """Whether a loose loop hangs below the needles: 1 or 0."""
    CHANGES = "changes"
    """Increases and decreases of the round in excess of the plan; below 0 for too few."""
    LEFT = "left"
    """Stitches left over at the end of the round; below 0 where it came out short."""
    WHOLE = "whole"
    """Whether the round looks like another one all along: 1 or 0."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Sight:
    """One thing seen."""

    seen: Seen
    number: int
    """What it means is said by `seen`."""
    index: int | None = None
    """The round it was seen in; None if that is not known or does not matter."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """A count of some neighbouring sections."""

    first: int
    """First section counted, from 0."""
    end: int
    """One past the last."""
    stitches: int
    """Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Fault:
    """A fault that is being looked for."""

    place: Position
    """Where the count was made."""
    difference: int
    """Stitches too many; below 0 for too few. Unit: stitches."""
    answers: tuple[Answer, ...] = ()
    sights: tuple[Sight, ...] = ()
    index: int | None = None
    """The round it is in, where she saw it."""
    confirmed: bool = False
    """Whether a second count at the same place came to the same."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Reminder:
    """What she asked to be reminded of."""

    index: int
    """The round at whose beginning it is said."""
    text: str = ""
    """In her words; empty where she named only the time."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Knitting:
    """What undo gives back."""

    place: Position = Position()
    by: By = By.ROUND
    corrections: tuple[LengthCorrection, ...] = ()
    """What measuring changed, at most one for each stretch."""
    respacings: tuple[Respacing, ...] = ()
    """Rounds whose shaping was spread anew, at most one for each."""
    verified: Verified | None = None
    fault: Fault | None = None
    mends: tuple[Mend, ...] = ()
    """Counts that are off and where each is made good, in the order in which they were chosen."""
    lifelines: tuple[Position, ...] = ()
    """Where a lifeline lies, in the order of the garment."""
    tens: tuple[int, ...] | None = None
    """The parts of a count that is being made aloud; None if none is. Unit: stitches."""
    asking: Asking = Asking.COST
    reminders: tuple[Reminder, ...] = ()
    """What she asked to be reminded of, in the order of the rounds; what has been said stays until she asks
    for another, so that going back brings it again."""
    uncounted: int = 0
    """Stitches worked since the last count. Unit: stitches."""
    covered: int = 0
    """Stitches her counts have covered. Unit: stitches."""
    faults: int = 0
    """Faults her counts have found."""

    @property
    def stands(self) -> Verified | None:
        """The last good count as far as it lies behind the place; one she has gone back behind says nothing
        of the stitches in hand."""
        verified = self.verified
        return verified if verified is not None and verified.place <= self.place else None


@dataclass(frozen=True, slots=True, kw_only=True)
class Memento:
    """An event that can be taken back (or done again), and what to return to."""

    seq: int
    """Number of the event."""
    kind: str
    """What the knitter did, as the name of the class of the first event of the chain of undo and redo."""
    knitting: Knitting
    """What taking it back returns to."""
    stitches: int = 0
    """Stitches it brought the garment; below 0 where it took some back. Unit: stitches."""
    work: KnittingKind = KnittingKind.UNKNOWN
    """Their kind."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TimedStep:
    """A step and how long it took."""

    stitches: int
    """Range: 1 and up. Unit: stitches."""
    seconds: float
    """From cue to cue. Range: above 0. Unit: s."""
    work: KnittingKind = KnittingKind.UNKNOWN


@dataclass(frozen=True, slots=True, kw_only=True)
class Done:
    """Stitches of one kind."""

    work: KnittingKind
    stitches: int
    """Range: 1 and up. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Day:
    """A day with knitting."""

    date: str
    """ISO 8601. Knitting after midnight belongs to the evening before."""
    done: tuple[Done, ...] = ()
    """What the garment gained; what was ripped out again is taken off."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadingAlong:
    """A round that is read out run by run at her pace."""

    index: int
    """The round."""
    factor: float = 1.0
    """Time for a stitch as a share of what her steps so far took. Range: 0.25 to 4."""
    held: bool = False
    """Whether it waits for "go on"."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Adapted:
    """What was said of the old plan as it applies to the new one."""

    corrections: tuple[LengthCorrection, ...] = ()
    """Corrections of lengths."""
    mends: tuple[Mend, ...] = ()
    """Counts that are off."""
    respacings: tuple[Respacing, ...] = ()
    """Rounds whose shaping was spread anew."""
    lifelines: tuple[Position, ...] = ()
    """Where a lifeline lies."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """Where to go on: asked because the pattern has changed, and what is knitted does not say it beyond
    doubt. Nothing moves before the answer."""

    new_fingerprint: str
    """Of the plan to go on with."""
    choices: tuple[PlaceChoice, ...]
    """In the order they were said."""
    adapted: Adapted = Adapted()


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
    reading: ReadingAlong | None = None
    """What is being read along; None most of the time."""
    question: Question | None = None
    """Where to go on in a changed pattern, while that is asked; None most of the time."""
    asleep: bool = False
    """Whether the ears are closed."""
    closed: bool = False
    """Whether the sitting is over."""
    fingerprint: str = ""
    """Of the plan the place belongs to; empty before the first sitting."""
    last_cue_at: str = ""
    """When the knitter last did something. ISO 8601; empty before the first cue."""
    breaks: tuple[Position, ...] = ()
    """Where she was interrupted, the latest last, bounded."""
    worked: tuple[TimedStep, ...] = ()
    """The last steps of each kind with their times, for her pace, bounded."""
    days: tuple[Day, ...] = ()
    """The last days with knitting, in order, bounded."""
    begun_at: str = ""
    """When the stitches in hand were begun. ISO 8601; empty where not known."""
    sat_since: str = ""
    """Since when she has knitted without a rest. ISO 8601; empty where not known."""
    rest_told: bool = False
    """Whether it was time to remind her to rest since then."""

    @property
    def place(self) -> Position:
        """Where in the garment."""
        return self.knitting.place
