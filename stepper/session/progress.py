"""Where a garment stands, in figures, for `stepper where` and other reports. Pure."""

from __future__ import annotations

from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.session.counting.tally import count_at
from stepper.session.state import Position, State


@dataclass(frozen=True, slots=True, kw_only=True)
class Progress:
    """Where a garment stands. The field names are those of `stepper where --json`."""

    title: str
    section: str
    """Current section; the last one if all is done, empty in a plan without rounds."""
    round: int
    """Round of the section being worked, from 1; the last one if all is done."""
    of: int
    """Rounds of the section; 0 while it is not read to its end."""
    stitch: int
    """Stitches of the round worked."""
    stitches: int
    """Stitches on the needles."""
    label: str | None
    """Label of the current round."""
    finished: bool
    rounds_done: int
    rounds_left: int
    """Rounds not done yet, including the current one."""
    stitches_done: int
    """Stitches worked in all."""
    stitches_left: int
    last_cue_at: str | None
    """When the knitter last did something. ISO 8601; None before the first cue."""
    whole: bool = True
    """Whether the pattern is read to its end; else what is left is only what is known of it."""


def measure_progress(plan: Plan, state: State) -> Progress:
    """Return where the knitting stands.

    Args:
        plan: The plan as knitted, with its lengths corrected.
        state: Where the session stands.
    """
    rounds, place = plan.rounds, state.place
    index = min(place.index, len(rounds))
    all_done = index == len(rounds)
    here = rounds[min(index, len(rounds) - 1)] if rounds else None
    stitch = here.progress if here and all_done else place.stitch
    done = sum(round_.progress for round_ in rounds[:index]) + (0 if all_done else place.stitch)
    return Progress(
        title=plan.title,
        section=here.section if here else "",
        round=here.number if here else 0,
        of=here.of if here else 0,
        stitch=stitch,
        stitches=count_at(plan, Position(index=index, stitch=stitch)),
        label=here.label if here else None,
        finished=all_done and plan.open is None,
        rounds_done=index,
        rounds_left=len(rounds) - index,
        stitches_done=done,
        stitches_left=sum(round_.progress for round_ in rounds) - done,
        last_cue_at=state.last_cue_at or None,
        whole=plan.open is None,
    )
