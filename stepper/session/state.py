"""Where the knitting stands, as it follows from everything that happened: the fold of all events.

A state holds no plan. It holds the place and the corrections of lengths; the plan as knitted follows from
these and the project file (`stepper.plan.under_way.lengthen.correct_lengths`). So replaying a journal needs
no plan and cannot fail for want of one, and a snapshot of the state stays small.

`Knitting` is the part that undo restores exactly as it was: undo keeps the former `Knitting` instead of
working out an inverse for each event. The rest (numbering, listening, what can be undone) only goes forward.
It is long because every field of the one state says what it holds and in which unit.
"""

from __future__ import annotations

from enum import Enum

from stepper.craft.pace_by_kind import KnittingKind
from stepper.plan.model import OpenKind, PartKind, Round, RowPart
from stepper.plan.under_way.absorb import Mend
from stepper.plan.under_way.lengthen import LengthCorrection
from stepper.plan.under_way.respace import Respacing
from stepper.plan.under_way.resuming import PlaceChoice
from stepper.plan.yarn.yarn_left import Weighing
from stepper.records import dataclass
from stepper.session.steps import By, RoundSort, sort_of

NOTES_KEPT = 12
"""Number of latest notes that can be asked for; the journal holds them all. Chosen here."""
UNDO_DEPTH = 100
"""Number of latest events that can be taken back. Bounded so that a snapshot stays small."""


@dataclass(frozen=True, slots=True, kw_only=True, order=True)
class Position:
    """Where in the garment.

    Places are ordered as they are knitted: by round, and within a round by stitch.
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
    """Where a fault would be locked in, and wherever a count is worth its cost. The default."""
    PATTERN = "pattern"
    """At the checkpoints of the plan and nowhere else."""
    MORE = "more"
    """As `COST` with half the interval, and at the checkpoints of the plan."""
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
    """Stitches left over at the end of the round; below 0 if it came out short."""
    WHOLE = "whole"
    """Whether the round looks like another one throughout: 1 or 0."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Observation:
    """One thing seen."""

    seen: Seen
    number: int
    """Its meaning depends on `seen`."""
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


class Narrowing(Enum):
    """What narrows a fault down before anything is changed, named as the remedies are."""

    LOOK = "look"
    RECOUNT = "recount"
    PART = "narrow"
    """Count between landmarks."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Fault:
    """A fault that is being looked for."""

    place: Position
    """Where the count was made."""
    difference: int
    """Stitches too many; below 0 for too few. Unit: stitches."""
    answers: tuple[Answer, ...] = ()
    sights: tuple[Observation, ...] = ()
    index: int | None = None
    """The round it is in, if she saw it."""
    confirmed: bool = False
    """Whether a second count at the same place gave the same number."""
    chosen: Narrowing | None = None
    """What she chose to do next; None if she was not asked, or has done it."""

    @property
    def hangs_a_loop(self) -> bool:
        """Whether she saw a live loop that is not caught yet."""
        return any(each.seen is Seen.LOOP and each.number for each in self.sights)

    @property
    def was_seen(self) -> bool:
        """Whether she saw something other than a loop."""
        return any(each.seen is not Seen.LOOP for each in self.sights)


class DoubtKind(Enum):
    """What was asked back."""

    COUNT = "count"
    PART = "part"
    """A count between two landmarks."""
    LENGTH = "length"
    LEFT = "left"
    """Stitches left over at the end of the round; below 0 where it came out short."""
    FINISHED = "finished"
    """Whether the round is finished, since the count is that of its end."""
    ROUNDS = "rounds"
    """Rounds ripped back; 0 where she did not say how many."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Doubt:
    """A number that moves nothing before she says that it is so."""

    kind: DoubtKind
    place: Position
    """Where it was said."""
    number: int = 0
    """Unit: stitches."""
    length_mm: float = 0.0
    """Unit: mm."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Reminder:
    """What she asked to be reminded of."""

    index: int
    """The round at whose beginning it is said."""
    text: str = ""
    """In her words; empty if she gave only the time."""


@dataclass(frozen=True, slots=True, kw_only=True)
class NoteKept:
    """What she noted, and where."""

    index: int
    """The round in hand then."""
    text: str
    """In her words. Never empty."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Ball:
    """The last weighing of a yarn."""

    yarn: str
    """Key of the yarn."""
    weighing: Weighing


@dataclass(frozen=True, slots=True, kw_only=True)
class StrideKept:
    """How much one step reads out of rounds of one sort."""

    sort: RoundSort
    by: By


@dataclass(frozen=True, slots=True, kw_only=True)
class PartAnswer:
    """An answer to a question about the stitches of a row: a number, or yes or no."""

    number: int | None = None
    """None for yes or no. Unit: stitches."""
    yes: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class OpenWork:
    """What was said so far of a row that is not read, at which the garment ends for now."""

    rows: int = 0
    """Rows worked by its words. Range: 0 and up."""
    stitches: int | None = None
    """Her count after them, which waits for a yes; None while she has said none. Unit: stitches."""
    declined: bool = False
    """Whether it is not what it seems to be."""
    idle: bool = False
    """Whether nothing is knitted for it, which waits for a yes."""
    heard: int = 0
    """How many parts of its words are heard besides the first, where they are said in parts."""
    joined: bool = False
    """Whether her count was so high that stitches from hold may be in it, so that these are asked for."""
    answers: tuple[PartAnswer, ...] = ()
    """What she answered of its stitches, in the order asked (`stepper.session.open_row.by_parts`)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class OpenAnswer:
    """What a row that is not read is, as she answered it."""

    kind: OpenKind
    rows: int = 0
    """How many rows it is; 0 for as proposed. Range: 0 and up."""
    stitches: int | None = None
    """Stitches after them; None for as proposed. Unit: stitches."""
    parts: tuple[RowPart, ...] = ()
    """`PARTS`: all stitches of the row, in their order."""
    name: str = ""
    """`TAKEN`: what is taken from hold."""
    round: bool | None = None
    """`TAKEN`, `COME`, `PARTS`: whether rounds follow, else rows; None where that is not asked."""
    right: bool = True
    """`TAKEN`, `COME`, and `PARTS` that come onto empty needles: whether the right side faces her."""

    @property
    def comes_back(self) -> bool:
        """Whether all of it comes from hold onto empty needles."""
        all_back = all(part.kind is PartKind.BACK for part in self.parts)
        return self.kind is OpenKind.TAKEN or (self.kind is OpenKind.PARTS and bool(self.parts) and all_back)

    @property
    def left(self) -> int:
        """Stitches on the needles behind it, by her answers; 0 where they say nothing of that."""
        on = sum(part.leaves for part in self.parts)
        on += sum(part.stitches for part in self.parts if part.kind is PartKind.ON)
        on -= sum(part.stitches for part in self.parts if part.kind is PartKind.FIRST_HELD)
        return on if self.parts else self.stitches or 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Knitting:
    """What undo restores."""

    place: Position = Position()
    heard: int = 0
    """Stops before the step in hand that are heard and done (`stepper.session.stops`)."""
    by: By = By.ROUND
    """How much one step reads out of a round of a sort for which nothing was chosen."""
    strides: tuple[StrideKept, ...] = ()
    """What was chosen for each sort of rounds, at most one for each."""
    corrections: tuple[LengthCorrection, ...] = ()
    """What measuring changed, at most one for each stretch."""
    respacings: tuple[Respacing, ...] = ()
    """Respacings of rounds, at most one for each."""
    verified: Verified | None = None
    fault: Fault | None = None
    doubt: Doubt | None = None
    """What was asked back, while that is open; None most of the time."""
    mends: tuple[Mend, ...] = ()
    """Counts that are off and where each is made good, in the order in which they were chosen."""
    lifelines: tuple[Position, ...] = ()
    """Where there is a lifeline, in the order of the garment."""
    tens: tuple[int, ...] | None = None
    """The parts of a count being made aloud; None if none is. Unit: stitches."""
    open: OpenWork | None = None
    """What was said of the row at which the garment ends for now; None while nothing is."""
    asking: Asking = Asking.COST
    reminders: tuple[Reminder, ...] = ()
    """What she asked to be reminded of, in the order of the rounds. A reminder that has been said stays until
    she asks for another, so that it comes again if she goes back."""
    notes: tuple[NoteKept, ...] = ()
    """What she noted last, in the order in which she did."""
    balls: tuple[Ball, ...] = ()
    """What she weighed, at most one for each yarn."""
    uncounted: int = 0
    """Stitches worked since the last count. Unit: stitches."""
    covered: int = 0
    """Stitches her counts have covered. Unit: stitches."""
    faults: int = 0
    """Faults her counts have found."""

    def by_of(self, round_: Round) -> By:
        """Return how much one step reads out of a round."""
        sort = sort_of(round_)
        chosen = {stride.sort: stride.by for stride in self.strides}
        shaped = sort in (RoundSort.RAGLAN, RoundSort.EVEN, RoundSort.SHAPING)
        otherwise = chosen.get(RoundSort.SHAPED, self.by) if shaped else self.by
        return chosen.get(sort, otherwise)

    @property
    def row_said(self) -> OpenWork:
        """What was said of the row at which the garment ends for now; nothing where nothing was."""
        return self.open if self.open is not None else OpenWork()

    @property
    def stands(self) -> Verified | None:
        """The last good count if it is behind the place; once she has gone back past it, it says nothing."""
        verified = self.verified
        return verified if verified is not None and verified.place <= self.place else None


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
    """What the garment gained, minus what was ripped out again."""


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
    """Stitches it added to the garment; below 0 if it took some back. Unit: stitches."""
    work: KnittingKind = KnittingKind.UNKNOWN
    """Their kind."""
    day: Day | None = None
    """The day as it was before; None in a snapshot of before it was kept, or if the event has no time."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadingAlong:
    """A round that is read out run by run at her pace."""

    index: int
    """The round."""
    factor: float = 1.0
    """Time for a stitch relative to her steps so far. Range: 0.25 to 4."""
    held: bool = False
    """Whether it is paused until "go on"."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Adapted:
    """What was said about the old plan as it applies to the new one."""

    corrections: tuple[LengthCorrection, ...] = ()
    """Corrections of lengths."""
    mends: tuple[Mend, ...] = ()
    """Counts that are off."""
    respacings: tuple[Respacing, ...] = ()
    """Rounds whose shaping was respaced."""
    lifelines: tuple[Position, ...] = ()
    """Where a lifeline lies."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """Where to go on, asked because the pattern has changed and what is knitted leaves the place in doubt.
    Nothing moves before the answer."""

    new_fingerprint: str
    """That of the plan to go on with."""
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
    """What can be taken back, latest last."""
    redo: tuple[Memento, ...] = ()
    """What can be done again, latest last."""
    reading: ReadingAlong | None = None
    """What is being read along; None most of the time."""
    question: Question | None = None
    """Where to go on in a changed pattern, while that is asked; None most of the time."""
    asleep: bool = False
    """Whether the ears are closed."""
    closed: bool = False
    """Whether the sitting is over."""
    fingerprint: str = ""
    """That of the plan the place belongs to; empty before the first sitting."""
    last_cue_at: str = ""
    """When the knitter last did something. ISO 8601; empty before the first cue."""
    breaks: tuple[Position, ...] = ()
    """Where she was interrupted, latest last, bounded."""
    worked: tuple[TimedStep, ...] = ()
    """The last steps of each kind with their times, for her pace, bounded."""
    days: tuple[Day, ...] = ()
    """The last days with knitting, in order, bounded."""
    begun_at: str = ""
    """When the current stitches were begun. ISO 8601; empty if not known."""
    sat_since: str = ""
    """Since when she has knitted without a rest. ISO 8601; empty if not known."""
    told_from: int = 0
    """Where in the round the steps begin that were told without a gap up to here. Unit: stitches."""
    rest_told: bool = False
    """Whether a reminder to rest has fallen due since then."""

    @property
    def place(self) -> Position:
        """Where in the garment."""
        return self.knitting.place
