"""Answer what comes of slips that no count shows: a round worked twice, a wrong yarn, a marker lost. Pure.

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
from stepper.session.counting.tally import markers_in
from stepper.session.effects import Effect, Refuse
from stepper.session.questions.topics import Topic
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
class TellWayOut(Effect):
    """Say what is done about something, wherever the knitting stands."""

    topic: Topic
    """What it is about: a wrong yarn, a long float, a yarn that ended."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellMarkersLost(Effect):
    """Say where the round begins and where its markers stand."""

    index: int
    worked: int
    """Stitches worked of the round in hand. Unit: stitches."""
    after: tuple[int, ...]
    """Behind how many stitches of the round each marker stands. Unit: stitches."""


def tell_way_out(plan: Plan, state: State, at: str, topic: Topic) -> Iterator[Effect]:
    """Tell how, whatever round is in hand."""
    yield TellWayOut(topic=topic)


def tell_markers_lost(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell where the markers of the round in hand belong, its beginning by what is worked of it."""
    place = state.place
    round_ = plan.rounds[place.index]
    if place.stitch:  # ahead of her a change would move them
        after = tuple(each for each in markers_in(round_) if each <= place.stitch or not round_.shaping)
    else:  # on her needles is what the round before left
        last = plan.rounds[place.index - 1] if place.index else round_
        after = tuple(each for each in last.markers if 0 < each < round_.before)
    yield TellMarkersLost(index=place.index, worked=place.stitch, after=after)


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
