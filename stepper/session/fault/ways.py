"""What a remedy is: its kind, what it costs, and where the knitting stands once it is carried out. No I/O."""

from __future__ import annotations

from enum import StrEnum

from stepper.craft.pace import DEFAULT_STITCHES_PER_MINUTE
from stepper.plan.under_way.absorb import Mend
from stepper.plan.under_way.respace import Respacing
from stepper.records import dataclass
from stepper.session.fault.landmarks import Landmark
from stepper.session.state import Position, Seen


class RemedyKind(StrEnum):
    """The ways to mend a fault. The values are what the journal keeps."""

    LOOK = "look"
    """Look at the fabric for one thing before anything is changed: most of all for a live loop."""
    RECOUNT = "recount"
    """Count once more before anything is changed: it may be the count that is wrong."""
    NARROW = "narrow"
    """Count between landmarks before anything is changed: the place is not known yet."""
    FINISH = "finish"
    """Finish the round and count then: at its end increases, repeats or colours tell where the fault lies."""
    LADDER = "ladder"
    """Catch a live loop and ladder it up to the needle with a hook."""
    RESPACE = "respace"
    """Respace the increases or decreases left in the round, so that it works out."""
    PLAIN = "plain"
    """Make or lose stitches in the next plain round, above the fault."""
    DROP = "drop"
    """Drop one column down to the fault and work it up again. In old journals only."""
    TINK = "tink"
    """Undo stitches one by one, back to the fault."""
    ACCEPT = "accept"
    """Go on; the rounds to come follow the count in hand (`stepper.plan.under_way.absorb`) until the next
    shaping absorbs it, or to the bind-off."""
    RIP = "rip"
    """Rip to the last lifeline or good count."""

    @property
    def settles(self) -> bool:
        """Whether choosing this counts as mending the fault, so that it is no longer looked for."""
        return self not in (
            RemedyKind.LOOK,
            RemedyKind.RECOUNT,
            RemedyKind.NARROW,
            RemedyKind.FINISH,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class StitchesToCount:
    """Stitches to count between two landmarks."""

    kind: Landmark
    first: int
    """The landmark to count from, from 0 for the beginning of the round."""
    end: int | None
    """The landmark to count to; None for the end of the round."""
    expect: int
    """Stitches there should be. Unit: stitches."""
    index: int | None = None
    """The round the landmarks were made in; None for markers."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Remedy:
    """One way to mend a fault."""

    kind: RemedyKind
    stitches: int
    """What it costs, in stitches knitted. Unit: stitches."""
    minutes: float
    """The same at her pace. Unit: minutes."""
    place: Position
    """Where the knitting stands once it is carried out."""
    undone: int = 0
    """Stitches taken back on the way. Unit: stitches."""
    rounds: int = 0
    """Rounds taken back on the way, or, for a loop, above it. Unit: rounds."""
    mend: Mend | None = None
    """What is then still to be worked."""
    by: int | None = None
    """The round before which it has to be mended, because that round would not work out."""
    lifeline: bool = False
    """Whether ripping ends at a lifeline."""
    look: tuple[Seen, int] | None = None
    """What to look at, and in which round."""
    stretch: StitchesToCount | None = None
    """What to count."""
    expect: int = 0
    """Stitches there should be on the needles where a count is asked for. Unit: stitches."""
    plain: bool = False
    """Whether nothing tells one stitch from another, so that markers help to count."""
    respacing: Respacing | None = None
    """How the round is respaced."""
    made: int = 0
    """How many of the round's increases or decreases are made, if it is respaced."""
    by_eye: bool = False
    """Whether the round in hand is finished with its shaping where it is seen to belong, not by the count."""
    above: int = 0
    """Rounds between the fault and where it is made good; the more there are, the more it shows."""


def cost_remedy(kind: RemedyKind, stitches: float, place: Position, **more: object) -> Remedy:
    """Return a remedy from its cost in stitches, at the usual pace."""
    minutes = stitches / DEFAULT_STITCHES_PER_MINUTE
    return Remedy(kind=kind, stitches=round(stitches), minutes=minutes, place=place, **more)  # type: ignore[arg-type] # passed on
