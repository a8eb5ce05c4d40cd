"""Effects: what the session wants told, asked or done. Imperative, frozen, without words.

An effect holds the numbers; the words are in `stepper.language.effect_words`, so that the session can be
tested without a language and the words without a session. Each becomes one line. The file is long because
it is one list: each class is a name, a sentence and what it holds.
"""

from __future__ import annotations

from enum import Enum

from stepper.plan.model import Run
from stepper.plan.under_way.absorb import Mend
from stepper.plan.under_way.carry import Difference
from stepper.plan.under_way.resuming import PlaceChoice
from stepper.records import dataclass
from stepper.session.cues import Cue, View
from stepper.session.events import Event
from stepper.session.fault.diagnosis import Likely
from stepper.session.fault.landmarks import Landmark
from stepper.session.fault.ways import Remedy, RemedyKind, StitchesToCount
from stepper.session.questions.topics import HelpWith
from stepper.session.state import Asking, Position, Seen
from stepper.session.steps import By, RoundSort, StepPart


class Lead(Enum):
    """How much of the place is said before an instruction."""

    FULL = "full"
    """Section, round of how many, label."""
    ROUND = "round"
    """Round, label."""
    PART = "part"
    """Where in the round."""
    RUN = "run"
    """Nothing but the number of a repeat at its beginning, while reading along."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Effect:
    """Something to be told, asked or done."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Refuse(Effect):
    """Say why a cue makes no sense now."""

    sentence: str
    aloud: bool = True
    """Whether to say it; otherwise it is only shown."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellStart(Effect):
    """Say that a new garment begins."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellRecap(Effect):
    """Say what was done last before this sitting."""

    done: Position | None
    """The end of what is worked; None if nothing is."""
    at: str
    """When the knitter last did something. ISO 8601; empty where unknown."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellChanges(Effect):
    """Say what changed in the project file since the last sitting."""

    changes: tuple[Difference, ...]
    have: int
    want: int
    found: bool
    comparable: bool
    unplaced: int = 0
    """Rows she had counted that are not in the new plan as such: the place is in front of them."""


@dataclass(frozen=True, slots=True, kw_only=True)
class AskPlace(Effect):
    """Ask where to go on in a changed pattern; `later` if the sitting ends without an answer."""

    choices: tuple[PlaceChoice, ...]
    later: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class TellChosen(Effect):
    """Say that the knitting goes on at the chosen place, and what does not fit there."""

    choice: PlaceChoice


@dataclass(frozen=True, slots=True, kw_only=True)
class TellStep(Effect):
    """Say what to do now."""

    index: int
    part: StepPart
    lead: Lead
    slower: bool = False
    stop: tuple[str, ...] = ()
    """What is told by itself, before the step is; empty if it is the step's turn."""
    heard: tuple[str, ...] = ()
    """What was told so, and is left out now."""
    told: tuple[str, ...] = ()
    """What was told with a row that was not read, and is left out now; without full stops."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellTaken(Effect):
    """Say what a jump takes for done."""

    stitches: int
    """Unit: stitches."""
    place: Position
    """The end of what is taken for done."""
    changed: tuple[int, ...] = ()
    """Rounds among them that nobody told and that leave another number of stitches, by index."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellFinished(Effect):
    """Say that no round is left."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellCounted(Effect):
    """Say whether a count is right."""

    counted: int
    now: int
    end: int
    brief: bool
    """Whether it is counted again and a part asked for in the same breath: only what is off is said then."""


@dataclass(frozen=True, slots=True, kw_only=True)
class AskCount(Effect):
    """Ask for a count."""

    expect: int
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class AskLength(Effect):
    """Ask for a measurement."""

    target_mm: float
    section: str


@dataclass(frozen=True, slots=True, kw_only=True)
class TellStride(Effect):
    """Say how much a step reads out from now on, and of which rounds."""

    by: By
    sort: RoundSort | None
    """The rounds it is chosen for; None for all."""
    flat: bool
    """Whether they are rows."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellSecond(Effect):
    """Say that a piece that is finished is printed once for two, and how to begin the second."""

    section: str


@dataclass(frozen=True, slots=True, kw_only=True)
class RestHands(Effect):
    """Remind her to rest her hands."""

    minutes: int
    """How long she has knitted without a rest. Unit: minutes."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellMeasured(Effect):
    """Say what a measurement means."""

    length_mm: float
    target_mm: float
    rounds_per_10cm: float
    """As knitted."""
    planned_per_10cm: float
    """As the plan has it."""
    rounds_left: int
    longer_by: int
    """Rounds the stretch has more than before; below 0 for fewer."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellKept(Effect):
    """Say that a measurement, a weighing or a note is recorded."""

    length_mm: float | None = None
    early: bool = False
    """Whether the stretch that is worked to a length has not begun yet, and is measured from here."""
    yarn: str | None = None
    grams: float | None = None
    note: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class TellLasting(Effect):
    """Say whether what is left of a yarn lasts for the rest of the garment."""

    yarn: str
    """Key of the yarn."""
    beside: int
    """Whole skeins assumed to be there besides the ball that was weighed."""
    doubtful: bool
    """Whether the weighing can be read in more than one way, or fits none."""
    over_g: float
    """What is likely to be left at the end; below 0 if some is missing. Unit: g."""
    out: int | None
    """Index of the round in which it likely runs out; None if it lasts."""
    out_soonest: int | None
    """The same if the knitting takes as much as it may."""
    buy: int
    """Skeins to buy so that it lasts even then."""
    named: bool = False
    """Whether the yarn has to be named, since others were spoken of."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellUndone(Effect):
    """Say what was taken back or done again."""

    event: type[Event] | None
    """The kind of event it was; None if that is no longer known."""
    again: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class TellEvent(Effect):
    """Say what has just happened, in the event's own words."""

    event: Event


@dataclass(frozen=True, slots=True, kw_only=True)
class TellAsleep(Effect):
    """Say that the ears are closed."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellAwake(Effect):
    """Say that the ears are open."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TurnTo(Effect):
    """Show something on the screen, or say that there is none."""

    view: View


@dataclass(frozen=True, slots=True, kw_only=True)
class TurnFilm(Effect):
    """Require the address word from now on, or stop requiring it, and say so."""

    on: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class TellHelp(Effect):
    """Say what can be said."""

    about: HelpWith
    cues: tuple[type[Cue], ...]
    """What to name, the most useful first; empty where `about` says it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellStop(Effect):
    """Say where the knitting stops and what comes first next time."""

    place: Position
    """The end of what is worked."""
    first: Effect
    """`TellStep`, or `TellFinished` if nothing follows."""


@dataclass(frozen=True, slots=True, kw_only=True)
class AskSections(Effect):
    """Ask for a count between landmarks."""

    stretch: StitchesToCount
    again: bool = False
    """Whether it is the first, and so begins to count once more, part by part."""
    yes: bool
    """Whether yes says that there are as many as expected."""


@dataclass(frozen=True, slots=True, kw_only=True)
class AskLook(Effect):
    """Ask her to look at the fabric for one thing."""

    seen: Seen
    index: int
    """The round to look at."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellFound(Effect):
    """Say between which stitches the fault lies, or that it is not a single one."""

    kind: Landmark | None
    """None if there are no landmarks to tell the stitches apart by."""
    first: int = 0
    end: int | None = None
    difference: int
    single: bool = True
    index: int | None = None
    """The round the landmarks were made in; None for markers."""
    rest: int = 0
    """Stitches off elsewhere, by another fault. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellCauses(Effect):
    """Say what probably happened, the likeliest first."""

    causes: tuple[Likely, ...]
    difference: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TellRemedies(Effect):
    """Say the first way to mend it, and that there are others."""

    remedies: tuple[Remedy, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class TellRemedied(Effect):
    """Say what to do for the chosen remedy, and where that leads."""

    remedy: RemedyKind
    undone: tuple[Run, ...]
    """What comes off, last worked first, if it is undone stitch by stitch."""
    place: Position
    mend: Mend | None
    stitches: int = 0
    """How many come off. Unit: stitches."""
    expect: int = 0
    """Stitches to be counted then; 0 where no count is asked for. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellMend(Effect):
    """Remind her of extra stitches to work, or stitches to lose, in the round that begins."""

    mend: Mend


@dataclass(frozen=True, slots=True, kw_only=True)
class TellTinked(Effect):
    """Say which stitches come off, last worked first, and where that leads."""

    runs: tuple[Run, ...]
    place: Position


@dataclass(frozen=True, slots=True, kw_only=True)
class TellRespaced(Effect):
    """Say in one breath how the remaining increases or decreases of the round are spaced."""

    left: int
    """How many are left."""
    first: int
    """Stitches to work before the first of them. Unit: stitches."""
    gaps: tuple[int, ...]
    """From each of them to the next, counting itself: 11 is every eleventh stitch. Unit: stitches."""
    uses: int
    """Stitches each takes up; 0 for an increase. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellLifeline(Effect):
    """Say that a lifeline is recorded, or that one would be worthwhile here."""

    laid: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class TellAsking(Effect):
    """Say how often a count is asked for from now on."""

    asking: Asking


@dataclass(frozen=True, slots=True, kw_only=True)
class TellTally(Effect):
    """Say how far a count made aloud has got."""

    total: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TellSpot(Effect):
    """Say the place by what is on the needles: how far past which marker, or which round to begin."""

    past: int
    """Stitches since it. Unit: stitches."""
    marker: int
    """Which marker of the round, from 1; 0 for the beginning of the round."""
    index: int | None = None


class ReadingChange(Enum):
    """What became of reading along."""

    HELD = "held"
    SLOWER = "slower"
    FASTER = "faster"
    LIMIT = "limit"
    """It cannot go any slower or faster."""
    END = "end"


@dataclass(frozen=True, slots=True, kw_only=True)
class TellReading(Effect):
    """Say what became of reading along."""

    change: ReadingChange
    index: int
    """The round."""
    count: int = 0
    """Stitches there should be at the end of it. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class BeatIn(Effect):
    """Send a `Beat` after a delay."""

    seconds: float
    """Range: above 0. Unit: s."""
    seq: int
    """The number the beat is to carry."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Close(Effect):
    """End the sitting."""
