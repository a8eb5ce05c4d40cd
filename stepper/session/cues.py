"""Cues: what the knitter asks for, whether spoken, typed, pressed on a key or pedal, or sent by a test.

One class for each, imperative, frozen; `CUES` lists them in order of definition. A cue carries the time it
was given because the session has no clock. Words are turned into cues by
`stepper.language.understanding.understand`; what may happen when is in `stepper.session.rules`. The file is
long because it is one list, from which `CUES` is derived: each class is a name, a sentence and its slots.
"""

from __future__ import annotations

from dataclasses import field
from enum import Enum

from stepper.records import dataclass
from stepper.session.questions.topics import HelpWith, PartTopic, Topic
from stepper.session.state import Asking, Seen
from stepper.session.steps import By


@dataclass(frozen=True, slots=True, kw_only=True)
class Cue:
    """Something asked of the session."""

    at: str = ""
    """When it was given. ISO 8601 with the offset from UTC; filled in by the part that has a clock."""
    heard: float | None = None
    """How well it was heard; None where it was typed, keyed or pressed. Range: 0 (a guess) to 1 (certain)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Asks(Cue):
    """Only asks and changes nothing. Answered whenever the ears are open, unless the rules say otherwise."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Keeps(Cue):
    """Only keeps something and leaves the place. Decided alike in a round and when all are done."""


@dataclass(frozen=True, slots=True, kw_only=True)
class KeepsAhead(Cue):
    """Only keeps something for the rounds ahead and leaves the place. Refused when no round is left."""


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
    """Say how the shaping of this round is spaced and when the next change comes."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HowMany(Asks):
    """Say how many stitches there should be."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Count(Cue):
    """Compare a count with the one expected."""

    stitches: int
    """What the knitter counted. Range: 0 and up. Unit: stitches."""
    bare: bool = field(default=False, repr=False)
    """Whether the number stood alone, so that a remedy, a length or what was left over may be meant by it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class OffBy(Cue):
    """Say how many stitches there are too many or too few, as she sees it."""

    stitches: int = 1
    """Range: 1 and up."""
    sign: int = 1
    """1, or -1 for too few."""


@dataclass(frozen=True, slots=True, kw_only=True)
class AtStitch(Cue):
    """Set the place within the round."""

    stitch: int
    """Stitches of the round worked. Range: 0 and up. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class AtMarker(Cue):
    """Set the place within the round to the next marker."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Stride(Keeps):
    """Set how much one step reads out, of rounds like the one in hand."""

    by: By | None = None
    """None for the next one in turn."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HowFar(Asks):
    """Say what is left of the section and of the garment."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HowLong(Asks):
    """Say how long she has knitted, this evening and in all."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Why(Asks):
    """Say why something was asked or advised where she stands."""


@dataclass(frozen=True, slots=True, kw_only=True)
class About(Asks):
    """Say something about the knitting in hand."""

    topic: Topic


@dataclass(frozen=True, slots=True, kw_only=True)
class HowFarTo(Asks):
    """Say how many rounds there are before a section or a labelled line."""

    place: str
    """Its name, in any case."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HowFarIn(Asks):
    """Say how far a section is done, and how long its rest takes, or what else is asked about it."""

    place: str = ""
    """Its name, or a word of it, in any case; empty for the section in hand."""
    asks: PartTopic = PartTopic.PROGRESS


@dataclass(frozen=True, slots=True, kw_only=True)
class StitchesBack(Cue):
    """Move the place back by stitches that she has already undone."""

    stitches: int
    """Range: 1 and up. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Explain(Asks):
    """Say what an abbreviation or a word of the trade means, or what the step in hand means by its words."""

    text: str
    """The abbreviation, the name of the stitch or the word; empty for the words of the step in hand."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RoundsDone(Cue):
    """Set the place behind rounds that were knitted without a cue, the one in hand being the first."""

    rounds: int = 1
    """Range: 1 and up."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RoundsBack(Cue):
    """Return to the beginning of a round so many before the one in hand."""

    rounds: int
    """Range: 0 and up; 0 for the round in hand, below it where she did not say how many."""
    wrong: bool = False
    """Whether she only said that so far down something is wrong that no count shows."""


@dataclass(frozen=True, slots=True, kw_only=True)
class YarnDone(Cue):
    """Set the place behind the next round that is worked in a yarn."""

    yarn: str
    """The yarn as it was called: its key or its name."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Length(Cue):
    """Record a measured length, and adjust a stretch worked to a length."""

    length_mm: float
    """Length of the piece. Range: above 0. Unit: mm."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Weight(Keeps):
    """Record a weighing of what is left of a yarn."""

    yarn: str
    """The yarn as she called it: its key or its name."""
    grams: float
    """Range: 0 and up. Unit: g."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Note(Keeps):
    """Record a note at this place."""

    text: str = ""
    """As typed or understood; empty if she said nothing more, which is refused."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RemindMe(KeepsAhead):
    """Remind her of something some rounds from here, at a place, or at a length."""

    rounds: int | None = None
    """Rounds from the one in hand to the one at whose beginning it is said. Range: 1 and up; None where a
    place or a length says when."""
    place: str = ""
    """Name of a section or a label at whose beginning it is said; empty for none."""
    length_mm: float | None = None
    """Length of the piece, by its rounds, at which it is said. Range: above 0. Unit: mm."""
    text: str = ""
    """What to remind her of, in her words; empty if she gave only the time."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ForgetReminders(Keeps):
    """Forget what she asked to be reminded of."""


@dataclass(frozen=True, slots=True, kw_only=True)
class GoTo(Cue):
    """Set the place to a round, a section or a labelled line."""

    round_number: int | None = None
    """Round of the section, from 1; None for the place's own first round."""
    place: str = ""
    """Name of a section or a label, in any case; empty for the current section."""


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

    about: HelpWith = HelpWith.NOW


@dataclass(frozen=True, slots=True, kw_only=True)
class SectionCount(Cue):
    """Answer a question of the fault search with a count."""

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
    number: int
    """As `Seen` says, without its sign."""
    sign: int = 1
    """1, or -1 for too few or too short."""


@dataclass(frozen=True, slots=True, kw_only=True)
class FaultIn(Cue):
    """Say in which round of the section in hand a fault is, or how far below the needles."""

    round_number: int = 0
    """From 1; 0 where it is told by how far it lies below."""
    back: int = 0
    """How many rounds below the needles it lies, 1 for the last that is done; 0 where its number is told."""


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
    """Answer what was asked with no, or not at all."""

    later: bool = False
    """Whether she only leaves what is asked for now: a number that was read back, or a search."""
    unsure: bool = False
    """Whether she only cannot tell, so that what is asked stays open."""


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
    """Respace the remaining increases or decreases over the rest of the round."""

    stitch: int | None = None
    """Where she is, as counted on the right needle; None for the session's place. Unit: stitches."""
    made: int | None = None
    """How many she has made; None for as many as planned so far."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Lifeline(Keeps):
    """Record a lifeline at the beginning of the current round."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Ask(Keeps):
    """Set how often a count is asked for."""

    asking: Asking


@dataclass(frozen=True, slots=True, kw_only=True)
class CountAloud(Cue):
    """Begin a count aloud, or say how far the present one has got."""


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
    """Read the current round run by run at her pace, without a cue for each."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Slower(Cue):
    """Read along more slowly."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Faster(Cue):
    """Read along faster."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PauseReading(Cue):
    """Pause reading along."""


@dataclass(frozen=True, slots=True, kw_only=True)
class GoOn(Cue):
    """Go on reading along; otherwise the same as `Next`."""


class View(Enum):
    """What a screen can show."""

    ROUND = "round"
    CHART = "chart"
    YOKE = "yoke"
    JOURNAL = "journal"


@dataclass(frozen=True, slots=True, kw_only=True)
class Film(Cue):
    """Require the address word before every spoken cue, as while a film is on, or stop requiring it."""

    on: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Look(Cue):
    """Turn the screen to a page."""

    view: View


FAMILIES: tuple[type[Cue], ...] = (Asks, Keeps, KeepsAhead)
"""What only gathers cues with one row of the rules, and cannot be said itself."""


CUES: tuple[type[Cue], ...] = tuple(
    each
    for each in tuple(globals().values())
    if isinstance(each, type) and issubclass(each, Cue) and each not in (Cue, *FAMILIES)
)
"""Every kind of cue that can be said, in order of definition, which is the order of the help."""
