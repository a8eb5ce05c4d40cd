"""The rule for respacing the rest of a shaped round, and what is said about it. No I/O."""

from __future__ import annotations

from collections.abc import Iterator

from stepper.plan.model import Plan
from stepper.plan.under_way.respace import NoRoomError, Respacing, gaps_ahead, respace, spread_of
from stepper.session.counting.tally import tally_stitches
from stepper.session.cues import Cue, Respace
from stepper.session.decision import Decision, Refusal
from stepper.session.effects import Effect, TellRespaced
from stepper.session.events import Respaced
from stepper.session.state import Position, State


def respace_rest(plan: Plan, state: State, cue: Respace) -> Decision:
    """Spread the remaining changes over the rest of the current round."""
    origin, round_ = state.place, plan.rounds[state.place.index]
    spread = spread_of(round_)
    if spread is None:
        return Refusal(
            sentence="The shaping of this round has its own places."
            if round_.shaping
            else "This round has no increases or decreases to space."
        )
    here = tally_stitches(round_, origin.stitch if cue.stitch is None else cue.stitch)
    made = here.shaped if cue.made is None else cue.made
    # A stitch she names is one on her right needle; otherwise the old stitches worked are those of the plan.
    used = here.used if cue.stitch is None else cue.stitch - made * spread.change.change
    if used < 0 or used > round_.before:
        return Refusal(sentence=f"With {made} made, this round has no stitch {cue.stitch}.")
    try:
        places = respace(round_, used=used, made=made)
    except NoRoomError as none:
        return Refusal(sentence=str(none))
    place = Position(index=origin.index, stitch=used + made * spread.change.change)
    if place.stitch >= round_.progress:
        ends = f"Stitch {place.stitch} ends this round"
        return Refusal(sentence=f"{ends}; nothing is left to space. Say next step.")
    if places == round_.shaping and place == origin:
        return ()
    respacing = Respacing.of(round_, places)
    return (
        Respaced(
            at=cue.at,
            origin=origin,
            place=place,
            made=made,
            planned=here.shaped,
            respacing=respacing,
        ),
    )


def tell_rest(plan: Plan, state: State, cue: Cue | None = None) -> Iterator[Effect]:
    """Say how the remaining changes are spaced from the current place on."""
    round_ = plan.rounds[state.place.index]
    now = tally_stitches(round_, state.place.stitch)
    first, gaps = gaps_ahead(round_.shaping, used=now.used, made=now.shaped)
    spread = spread_of(round_)
    uses = spread.change.uses if spread is not None else 0
    yield TellRespaced(left=len(round_.shaping) - now.shaped, first=first, gaps=gaps, uses=uses)


def tell_respaced(plan: Plan, before: State, event: Respaced, after: State) -> Iterator[Effect]:
    """Say how the remaining changes are now spaced."""
    yield from tell_rest(plan, after)
