"""Cues: what the knitter asks for. The same thing spoken, keyed, pressed on a pedal, typed or tested.

One class for each, imperative, frozen; `CUES` lists them as they are defined. A cue carries the time it was
given because the session owns no clock. Words are turned into cues by `stepper.language.understand`; what may
happen when is in `stepper.session.rules`.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from stepper.session.state import Asking, Seen
from stepper.session.steps import By


@dataclass(frozen=True, slots=True, kw_only=True)
class Cue:
    """Something asked of the session."""

    at: str = ""
    """When. ISO 8601 with the offset from UTC; whoever has a clock fills it in."""


@dataclass(frozen=True, slots=True, kw_only=True)
class FromClock(Cue):
    """Sent by a clock and never said, so that no rule and no wording is needed for it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Asks(Cue):
    """Only asks: nothing changes. Answered wherever the ears are open, unless the rules say else."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Next(Cue):
    """Finish the current step and say the next one."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Back(Cue):
    """Return to the step before."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Again(Asks):
    """Say the current step again, a little slower."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Where(Asks):
    """Say where the knitting stands."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Spacing(Asks):
    """Say how the shaping of this round is spaced and when the next of it comes."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HowMany(Asks):
    """Say how many stitches there should be."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Count(Cue):
    """Compare a count with the one expected."""

    stitches: int
    """What the knitter counted. Range: 0 and up. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class AtStitch(Cue):
    """Set the place within the round."""

    stitch: int
    """Stitches of the round worked. Range: 0 and up. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class AtMarker(Cue):
    """Set the place within the round to the next marker."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Stride(Cue):
    """Set how much one step reads out."""

    by: By


@dataclass(frozen=True, slots=True, kw_only=True)
class HowFar(Asks):
    """Say what is left of the section and of the garment."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HowLong(Asks):
    """Say how long she has knitted, this evening and in all."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Length(Cue):
    """Keep a length measured, and let a stretch worked to a length follow it."""

    length_mm: float
    """Length of the piece. Range: above 0. Unit: mm."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Weight(Cue):
    """Keep a weighing of what is left of a yarn."""

    yarn: str
    """The yarn as it was called: its key or its name."""
    grams: float
    """Range: 0 and up. Unit: g."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Note(Cue):
    """Keep a note at this place."""

    text: str = ""
    """As it was typed or understood; empty where she said nothing more, which is refused."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RemindMe(Cue):
    """Remind her of something some rounds from here."""

    rounds: int
    """Rounds from the one in hand to the one at whose beginning it is said. Range: 1 and up."""
    text: str = ""
    """Of what, in her words; empty where she named only the time."""


@dataclass(frozen=True, slots=True, kw_only=True)
class GoTo(Cue):
    """Set the place to a round, a section or a labelled line."""

    round_number: int | None = None
    """Round of the section, from 1; None for the place's own first round."""
    place: str = ""
    """Name of a section or a label, in any case; empty for the section in hand."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Undo(Cue):
    """Take the last thing back."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Redo(Cue):
    """Do again what was taken back."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Wait(Cue):
    """Stop listening."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Listen(Cue):
    """Listen again."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Enough(Cue):
    """Say where the knitting stops and what comes first next time, and close."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Help(Asks):
    """Say what can be said."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SectionCount(Cue):
    """Answer a question of fault finding with a count."""

    stitches: int
    """Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class MarkerCounts(Cue):
    """Give the counts between all markers at once."""

    counts: tuple[int, ...]
    """One for each section, in working order. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Saw(Cue):
    """Say what is to be seen where a fault is looked for."""

    seen: Seen
    number: int = 1
    """As `Seen` says, without its sign."""
    sign: int = 1
    """1, or -1 for too few or too short."""


@dataclass(frozen=True, slots=True, kw_only=True)
class FaultIn(Cue):
    """Say in which round of the section in hand a fault is."""

    round_number: int
    """From 1."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WhatHappened(Cue):
    """Say what probably went wrong."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Remedies(Cue):
    """Say how the fault can be mended and what each way costs."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WhatElse(Cue):
    """Say the other ways to mend the fault."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CountAgain(Cue):
    """Take the last count for a slip, and count once more."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Yes(Cue):
    """Answer what was asked with yes."""


@dataclass(frozen=True, slots=True, kw_only=True)
class No(Cue):
    """Answer what was asked with no."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Choose(Cue):
    """Take one of the remedies."""

    number: int
    """From 1, in the order they were said."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Tink(Cue):
    """Undo stitches one by one, the last first."""

    stitches: int = 1
    """Range: 1 and up. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Respace(Cue):
    """Spread the increases or decreases that are left anew over the rest of the round."""

    stitch: int | None = None
    """Where she is, as counted on the right needle; None for the place the session has. Unit: stitches."""
    made: int | None = None
    """How many she has made; None for as many as planned so far."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Lifeline(Cue):
    """Keep that a lifeline lies at the beginning of the round in hand."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Ask(Cue):
    """Set how often a count is asked for."""

    asking: Asking


@dataclass(frozen=True, slots=True, kw_only=True)
class CountAloud(Cue):
    """Begin a count aloud, or say how far one has come."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Ten(Cue):
    """Add to the count that is being made aloud."""

    stitches: int
    """Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ThatIsAll(Cue):
    """End the count aloud and compare it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadAlong(Cue):
    """Read the round in hand run by run at her pace, without a cue for each."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Slower(Cue):
    """Read along more slowly."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Faster(Cue):
    """Read along faster."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PauseReading(Cue):
    """Wait with reading along."""


@dataclass(frozen=True, slots=True, kw_only=True)
class GoOn(Cue):
    """Go on with reading along; elsewhere the same as `Next`."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Beat(FromClock):
    """The time for a run that is read along is over."""

    seq: int = 0
    """Number of the last event when the beat was asked for; after any other it is out of date."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Silence(FromClock):
    """Nothing was asked for a long while."""

    alarm: int = 0
    """Number of the alarm; one that was set anew since is out of date."""


class View(Enum):
    """What a screen can show."""

    ROUND = "round"
    CHART = "chart"
    YOKE = "yoke"
    JOURNAL = "journal"


@dataclass(frozen=True, slots=True, kw_only=True)
class Film(Cue):
    """Ask for the address word in front of every spoken cue, as while a film is on, or no more."""

    on: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Look(Cue):
    """Turn the screen to something."""

    view: View


CUES: tuple[type[Cue], ...] = tuple(
    each
    for each in tuple(globals().values())
    if isinstance(each, type)
    and issubclass(each, Cue)
    and not issubclass(each, FromClock)
    and each not in (Cue, Asks)
)
"""Every kind of cue that can be said, in the order of their definition here, which is that of the help."""
