"""Answer what comes of slips that no count shows: a round worked twice, a wrong yarn. Pure.

Whether a round worked twice does harm depends on the round. A plain one, or one like the next, is a length,
which another round makes a few millimetres longer. Shaping changes the count, a pattern shows it, and in rows
the next would fall on the other side of the work.
"""

from __future__ import annotations

from collections.abc import Iterator
from enum import Enum
from operator import attrgetter

from stepper.plan.model import Plan, Round
from stepper.records import dataclass
from stepper.session.effects import Effect, Refuse
from stepper.session.state import State

_ALIKE = attrgetter("runs", "words", "section", "needle_mm", "flat", "markers")
"""What makes two rounds alike: worked so, on the same needles and in one part."""


class Harm(Enum):
    """What a round more does."""

    NONE = "none"
    """It is the round that comes next."""
    LONGER = "longer"
    """The piece is a round longer."""
    SHOWS = "shows"
    """The pattern has the round twice."""
    SIDE = "side"
    """The next row falls on the other side."""
    COUNT = "count"
    """The number of stitches may be another."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellWorkedTwice(Effect):
    """Say what comes of a round that was worked twice, and what can be done."""

    harm: Harm
    index: int
    """The round that was worked twice."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellWrongYarn(Effect):
    """Say how stitches in a wrong yarn are mended."""


def tell_wrong_yarn(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell how, whatever round they are in."""
    yield TellWrongYarn()


def tell_worked_twice(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell of the last round that was finished."""
    place = state.place
    if not place.index:
        yield Refuse(sentence="No round is finished yet.")
        return
    index = place.index - 1
    follows = plan.rounds[place.index] if place.index < len(plan.rounds) and not place.stitch else None
    before = plan.rounds[index - 1] if index else None
    yield TellWorkedTwice(harm=_harm_of(before, plan.rounds[index], follows), index=index)


def _harm_of(before: Round | None, twice: Round, follows: Round | None) -> Harm:
    if twice.before != twice.after or twice.shaping:
        return Harm.COUNT
    if follows is not None and _ALIKE(twice) == _ALIKE(follows) and not follows.remarks:
        return Harm.NONE
    if twice.flat:
        return Harm.SIDE
    is_plain = {run.stitch for run in twice.runs if run.progress} == {"k"}
    in_one_yarn = len({run.yarn for run in twice.runs if run.progress}) == 1
    goes_on = before is not None and _ALIKE(before) == _ALIKE(twice)
    if not twice.chart and not twice.words and in_one_yarn and (is_plain or goes_on):
        return Harm.LONGER
    return Harm.SHOWS
