"""Events: what happened. Past tense, frozen, never changed and never deleted.

An event carries all that is needed to fold it into the state and to tell of it later, so replay never needs a
plan. What it makes of the knitting stands with it (`Event.applied`); what holds for all events alike, as the
numbering and undo, stands in `stepper.session.evolve`. The journal stores the fields of events by kind and
version: see `stepper.session.codec`. The file is long because it is one list, from which `EVENTS` is derived.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.craft.pace_by_kind import KnittingKind
from stepper.plan.under_way.absorb import Mend
from stepper.plan.under_way.carry import Difference
from stepper.plan.under_way.lengthen import LengthCorrection
from stepper.plan.under_way.respace import Respacing
from stepper.plan.yarn.yarn_left import Weighing
from stepper.records import dataclass
from stepper.session.amendments import (
    go_back_to,
    move_mends,
    replace_correction,
    replace_respacing,
)
from stepper.session.fault import findings
from stepper.session.fault.ways import RemedyKind
from stepper.session.state import (
    NOTES_KEPT,
    Answer,
    Asking,
    Ball,
    Doubt,
    Knitting,
    NoteKept,
    Observation,
    OpenAnswer,
    OpenWork,
    Position,
    Question,
    ReadingAlong,
    Reminder,
    StrideKept,
    Verified,
)
from stepper.session.steps import By, RoundSort


@dataclass(frozen=True, slots=True, kw_only=True)
class Event:
    """Something that happened in a session."""

    at: str
    """When. ISO 8601 with the offset from UTC."""

    def applied(self, knitting: Knitting) -> Knitting:
        """Return what the event makes of the knitting; unchanged if it is only kept. It never fails."""
        return knitting


@dataclass(frozen=True, slots=True, kw_only=True)
class Moved(Event):
    """The place moved, forth or back; the base of every event that moves it."""

    origin: Position
    place: Position

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting at the place reached."""
        return replace(knitting, place=self.place)


@dataclass(frozen=True, slots=True, kw_only=True)
class Opened(Event):
    """A sitting began."""

    fingerprint: str
    """That of the plan knitted by."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanChanged(Event):
    """The project file had changed since the last sitting; the place was carried over."""

    old_fingerprint: str
    new_fingerprint: str
    origin: Position
    """Where the knitting stood in the old plan."""
    place: Position
    """Where it stands in the new one."""
    corrections: tuple[LengthCorrection, ...]
    """The length corrections as they apply to the new plan."""
    changes: tuple[Difference, ...]
    """What changed."""
    have: int
    """Stitches the old plan had at the beginning of the current round. Unit: stitches."""
    want: int
    """Stitches the new plan has there. Unit: stitches."""
    found: bool = True
    """Whether the current round is in the new plan; otherwise the place is the nearest to it."""
    comparable: bool = True
    """Whether the old plan could still be read; otherwise an empty `changes` means nothing."""
    mends: tuple[Mend, ...] = ()
    """Counts that are off, as they apply to the new plan."""
    respacings: tuple[Respacing, ...] | None = None
    """Respaced rounds as they apply to the new plan; None in entries of version 1, which kept them
    unchanged."""
    lifelines: tuple[Position, ...] | None = None
    """Lifelines as they are in the new plan; None in entries of version 1, which kept them unchanged."""
    answer: int = 0
    """Which of the offered places she chose, from 1; 0 if the place was certain."""
    settled: bool = False
    """Whether she has just answered what the row is at which the plan ended, and it only goes on from
    there."""
    unplaced: int = 0
    """Rows that she had counted of a row that was not read, and that the new plan does not have as rows by
    its words: the place is in front of them."""
    worked: int = 0
    """Stitches of the rows that she worked by the words of that row, and behind which the place is."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceAsked(Event):
    """The project file had changed since the last sitting, and the session asked where to go on."""

    old_fingerprint: str
    question: Question
    changes: tuple[Difference, ...]
    """What changed."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Advanced(Moved):
    """A step was finished."""

    stitches: int
    """Stitches worked in the step. Unit: stitches."""
    work: KnittingKind = KnittingKind.UNKNOWN
    """Kind of knitting of the round; unknown in entries of version 1."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Returned(Moved):
    """The knitter went back a step."""

    stitches: int = 0
    """Stitches no longer counted as worked; 0 in entries of version 1. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Placed(Moved):
    """The place was set within the round."""

    stitches: int = 0
    """Stitches worked since, below 0 for fewer; 0 in entries of version 1. Unit: stitches."""
    work: KnittingKind = KnittingKind.UNKNOWN
    """Kind of knitting of the round; unknown in entries of version 1."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Jumped(Moved):
    """The place was set to another round."""

    stitches: int = 0
    """Stitches no longer counted as worked if it leads back. What it skips is not knitted now and does not
    count. 0 in entries of version 1. Unit: stitches."""
    off_path: bool = False
    """Whether the last good count is not on the path knitted to this place, so that it no longer stands.
    Never in entries before version 3."""

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting at the round gone to; a good count off the path no longer stands."""
        verified = None if self.off_path else knitting.verified
        return replace(knitting, place=self.place, verified=verified)


@dataclass(frozen=True, slots=True, kw_only=True)
class StrideSet(Event):
    """How much one step reads out was changed."""

    by: By
    sort: RoundSort | None = None
    """The rounds it was chosen for; None for all, as in a journal of before."""

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting with the choice for these rounds, or for all in place of each."""
        if self.sort is None:
            return replace(knitting, by=self.by, strides=())
        kept = [each for each in knitting.strides if each.sort is not self.sort]
        return replace(knitting, strides=(*kept, StrideKept(sort=self.sort, by=self.by)))


@dataclass(frozen=True, slots=True, kw_only=True)
class Counted(Event):
    """The knitter counted her stitches."""

    place: Position
    stitches: int
    """What she counted. Unit: stitches."""
    expected: int
    """What there should be at this place. Unit: stitches."""
    expected_end: int
    """What there should be at the end of this round. Unit: stitches."""

    worked: int = 0
    """Stitches worked from the place to the end of the round, where she said that it is finished with this
    count; 0 where it is not. Always 0 in entries of version 1. Unit: stitches."""

    @property
    def agrees(self) -> bool:
        """Whether the count is right here or for the end of the round."""
        return self.stitches in (self.expected, self.expected_end)

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting with the count as the last good one, or with a fault to look for."""
        if not self.agrees:
            off = self.stitches - self.expected
            return replace(knitting, fault=findings.count_off(knitting.fault, self.place, off), tens=None)
        place = Position(index=self.place.index + 1) if self.worked else self.place
        verified = Verified(place=place, stitches=self.stitches)
        here = place if self.worked else knitting.place
        return replace(knitting, place=here, verified=verified, fault=None, tens=None)


@dataclass(frozen=True, slots=True, kw_only=True)
class Doubted(Event):
    """A number was asked back before it moves anything, or dropped."""

    doubt: Doubt | None
    """What is asked back; None where she said no."""

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting with what is asked back."""
        return replace(knitting, doubt=self.doubt)


@dataclass(frozen=True, slots=True, kw_only=True)
class Measured(Event):
    """The piece was measured."""

    place: Position
    length_mm: float
    """Unit: mm."""
    section: str
    rounds_worked: int = 0
    """Finished rounds in the length; 0 if nothing here is worked to a length."""
    rounds_before: int = 0
    """Rounds the stretch had. Unit: rounds."""
    rounds_left: int = 0
    """Rounds of the stretch still to work now, including the current one. Unit: rounds."""
    target_mm: float = 0.0
    """Length to reach. Unit: mm."""
    planned_per_10cm: float = 0.0
    """The gauge of the plan. Unit: rounds per 10 cm."""
    correction: LengthCorrection | None = None
    """What it changed in the plan; None if nothing here is worked to a length."""

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting with the stretch corrected and what comes after it moved."""
        if self.correction is None:
            return knitting
        longer_by = self.correction.rounds - self.rounds_before
        end = self.place.index + self.rounds_left - longer_by
        return replace(
            knitting,
            corrections=replace_correction(knitting.corrections, self.correction),
            mends=move_mends(knitting.mends, end, longer_by),
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Weighed(Event):
    """A yarn was weighed."""

    place: Position
    yarn: str
    """Key of the yarn."""
    grams: float
    """What is left of it. Unit: g."""

    @property
    def weighing(self) -> Weighing:
        """The weighing with its place."""
        return Weighing(index=self.place.index, stitch=self.place.stitch, grams=self.grams)

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting with this as the last weighing of the yarn."""
        rest = [each for each in knitting.balls if each.yarn != self.yarn]
        return replace(knitting, balls=(*rest, Ball(yarn=self.yarn, weighing=self.weighing)))


@dataclass(frozen=True, slots=True, kw_only=True)
class Noted(Event):
    """A note was made."""

    place: Position
    text: str

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting with the note behind the others, of which the latest are kept."""
        if not self.text:
            return knitting
        noted = NoteKept(index=self.place.index, text=self.text)
        return replace(knitting, notes=(*knitting.notes, noted)[-NOTES_KEPT:])


@dataclass(frozen=True, slots=True, kw_only=True)
class RowSaid(Event):
    """Something was said of the row that is not read: a row of it worked, a count, that it is nothing."""

    said: OpenWork

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting with what is known of the row now; a count after its rounds ends a search."""
        counted = self.said.stitches is not None and bool(self.said.rows)
        return replace(knitting, open=self.said, fault=None if counted else knitting.fault)


@dataclass(frozen=True, slots=True, kw_only=True)
class RowAnswered(Event):
    """All was said that has to be known of the row that is not read. The project file is written after it."""

    meant: OpenAnswer
    words: str
    """The row, as the page prints it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Undone(Event):
    """An event was taken back. If that event is itself an undo, what it took back is done again."""

    seq: int
    """Number of the event taken back."""


@dataclass(frozen=True, slots=True, kw_only=True)
class FellAsleep(Event):
    """The ears were closed."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WokeUp(Event):
    """The ears were opened."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Closed(Event):
    """The sitting ended."""

    place: Position


@dataclass(frozen=True, slots=True, kw_only=True)
class Searched(Event):
    """Some of the stitches, or all of them by sections, were counted to find a fault."""

    answers: tuple[Answer, ...]

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting with the counts added to the fault."""
        if knitting.fault is None:
            return knitting
        return replace(knitting, fault=findings.add_answers(knitting.fault, self.answers))


@dataclass(frozen=True, slots=True, kw_only=True)
class SearchLeft(Event):
    """The search for a fault was left before it was found; the work stays as it is."""

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting without the fault."""
        return replace(knitting, fault=None)


@dataclass(frozen=True, slots=True, kw_only=True)
class Observed(Event):
    """The knitter said what she saw, or in which round a fault is."""

    place: Position
    sight: Observation | None = None
    index: int | None = None
    """The round the fault is in, if she said so."""

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting with what was seen added to the fault."""
        return replace(knitting, fault=findings.add_sight(knitting.fault, self.place, self.sight, self.index))


@dataclass(frozen=True, slots=True, kw_only=True)
class Remedied(Moved):
    """A remedy was chosen; if it takes work back, the place moved with it."""

    remedy: RemedyKind
    difference: int
    """What the count was off by. Unit: stitches."""
    stitches: int
    """What it costs. Unit: stitches."""
    minutes: float
    """What it costs at her pace. Unit: minutes."""
    mend: Mend | None = None
    """What is still to be worked; None if nothing is."""
    undone: int = 0
    """Stitches taken back; 0 in entries that do not say. Unit: stitches."""

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting mended, or with what she does first chosen."""
        if not self.remedy.settles:  # she looks or counts first
            return replace(knitting, fault=findings.choose_way(knitting.fault, self.remedy.value))
        back = go_back_to(knitting, self.place)
        if self.mend is None:
            return replace(back, fault=None)
        # An old journal does not say from where on the count is off: take the place where it was chosen.
        mend = self.mend if self.mend.origin >= 0 else replace(self.mend, origin=self.place.index)
        return replace(back, fault=None, mends=(*knitting.mends, mend))  # all that were off stay so


@dataclass(frozen=True, slots=True, kw_only=True)
class Tinked(Moved):
    """Stitches were undone one by one."""

    stitches: int
    """Unit: stitches."""

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting without what was undone."""
        return go_back_to(knitting, self.place)


@dataclass(frozen=True, slots=True, kw_only=True)
class Respaced(Moved):
    """The remaining increases or decreases of a round were respaced; the place is where she said she is."""

    made: int
    """Increases or decreases she has made. Range: 0 and up."""
    planned: int
    """How many the plan had made by there. Range: 0 and up."""
    respacing: Respacing

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting at her place, with the round respaced and the fault gone."""
        respacings = replace_respacing(knitting.respacings, self.respacing)
        return replace(knitting, place=self.place, respacings=respacings, fault=None, tens=None)


@dataclass(frozen=True, slots=True, kw_only=True)
class LifelineLaid(Event):
    """A lifeline was laid through the stitches."""

    place: Position

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting with the lifeline, in the order of the garment."""
        return replace(knitting, lifelines=tuple(sorted({*knitting.lifelines, self.place})))


@dataclass(frozen=True, slots=True, kw_only=True)
class ReminderSet(Event):
    """She asked to be reminded of something."""

    place: Position
    """Where she asked."""
    reminder: Reminder

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting with the reminder among those still ahead."""
        ahead = [each for each in knitting.reminders if each.index > self.place.index]
        reminders = sorted([*ahead, self.reminder], key=lambda each: each.index)
        return replace(knitting, reminders=tuple(reminders))


@dataclass(frozen=True, slots=True, kw_only=True)
class RemindersForgotten(Event):
    """She asked that nothing more be said of what she asked to be reminded of."""

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting without reminders."""
        return replace(knitting, reminders=())


@dataclass(frozen=True, slots=True, kw_only=True)
class AskingSet(Event):
    """How often a count is asked for was changed."""

    asking: Asking

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting with the choice."""
        return replace(knitting, asking=self.asking)


@dataclass(frozen=True, slots=True, kw_only=True)
class Tallied(Event):
    """Part of a count made aloud; none when the count begins."""

    tens: tuple[int, ...]
    """All parts so far. Unit: stitches."""

    def applied(self, knitting: Knitting) -> Knitting:
        """Return the knitting with the parts of the count."""
        return replace(knitting, tens=self.tens)


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadingSet(Event):
    """Reading along began, paused, went on, changed its pace, or ended."""

    reading: ReadingAlong | None
    """As it is now; None if it ended."""


EVENTS: tuple[type[Event], ...] = tuple(
    each
    for each in tuple(globals().values())
    if isinstance(each, type) and issubclass(each, Event) and each not in (Event, Moved)
)
"""Every kind of event, in order of definition."""
