"""Say why something was asked or advised where she stands: one ground, the nearest first. Pure."""

from __future__ import annotations

from collections.abc import Iterator
from enum import Enum

from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.session.cues import Why
from stepper.session.effects import AskCount, Effect, TellLifeline
from stepper.session.fault.respond import ask_checks
from stepper.session.state import State


class Ground(Enum):
    """What was asked or advised."""

    PLACE = "place"
    """Where to go on in a pattern that has changed."""
    DOUBT = "doubt"
    """A number of hers was asked back."""
    SEARCH = "search"
    """Counts are asked for to find a fault."""
    OPEN = "open row"
    """What a row that is not read comes to."""
    COUNT = "count"
    """A count at the end of a round."""
    LIFELINE = "lifeline"
    NOTHING = "nothing"
    """Nothing was: the step in hand stands on the page."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellWhy(Effect):
    """Say why something was asked or advised."""

    ground: Ground
    reason: str = ""
    """`COUNT`: as in `AskCount`."""
    label: str = ""
    """`NOTHING`: what the page calls the round in hand; empty if it has no name."""


def tell_why(plan: Plan, state: State, cue: Why) -> Iterator[Effect]:
    """Tell why what she has just heard was asked or advised."""
    place, knitting = state.place, state.knitting
    if state.question is not None:
        yield TellWhy(ground=Ground.PLACE)
        return
    if knitting.doubt is not None:
        yield TellWhy(ground=Ground.DOUBT)
        return
    if knitting.fault is not None:
        yield TellWhy(ground=Ground.SEARCH)
        return
    if place.index >= len(plan.rounds):
        yield TellWhy(ground=Ground.NOTHING if plan.open is None else Ground.OPEN)
        return
    asked = list(ask_checks(plan, state, place.index - 1)) if place.index and not place.stitch else []
    for each in asked:
        if isinstance(each, AskCount):
            yield TellWhy(ground=Ground.COUNT, reason=each.reason)
        elif isinstance(each, TellLifeline):
            yield TellWhy(ground=Ground.LIFELINE)
    if not asked:
        yield TellWhy(ground=Ground.NOTHING, label=plan.rounds[place.index].label or "")
