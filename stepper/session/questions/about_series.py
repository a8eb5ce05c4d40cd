"""Two counts at once: shapings and cables that run side by side, each on rounds of its own. Pure.

A series is what changes at one place of the round: increases or decreases at its beginning, at its end or
elsewhere, and cables. Both ends that change on the same rounds are one count to the knitter. A series runs
from its first round in the section to its last.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from enum import Enum
from functools import lru_cache

from stepper.craft.stitches import TURNS, Kind, stitch
from stepper.plan.model import Plan, Round
from stepper.plan.same_plan import SamePlan
from stepper.records import dataclass
from stepper.session.effects import Effect
from stepper.session.state import State

END_SHARE = 0.25
"""Share of a round that counts as its beginning or its end. Chosen here."""
SAME_SHARE = 0.75
"""Share of their rounds on which both ends change where they are one count. Chosen here."""


class InRound(Enum):
    """Where in the round a series changes something."""

    BEGINNING = "at the beginning"
    END = "at the end"
    ELSEWHERE = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Series:
    """Something that is worked on some rounds of a section, in their own count."""

    kind: Kind
    where: InRound
    index: int
    """The next round that has it, the one in hand included."""
    number: int
    """Which of its rounds that is, from 1."""
    of: int
    """How many rounds have it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellSeries(Effect):
    """Say when each of the series that run side by side is due."""

    series: tuple[Series, ...]
    """Two or more, the one due first in front."""
    here: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TellDueNow(Effect):
    """Say which of the series that run side by side are due in a round, and which of their rounds it is."""

    series: tuple[Series, ...]
    """At least one."""


def tell_due_now(plan: Plan, here: int) -> Iterator[Effect]:
    """Tell which counts a round belongs to, where more than one runs.

    Args:
        plan: The plan as knitted.
        here: Index of the round.
    """
    if here >= len(plan.rounds):
        return
    running = find_running_series(plan, here)
    due = tuple(each for each in running if each.index == here)
    if len(running) > 1 and due:
        yield TellDueNow(series=due)


def tell_series(plan: Plan, state: State) -> Iterator[Effect]:
    """Tell when each count is due, where more than one runs in the round in hand."""
    here = state.place.index
    if here >= len(plan.rounds):
        return
    running = find_running_series(plan, here)
    if len(running) > 1:
        yield TellSeries(series=running, here=here)


def find_running_series(plan: Plan, here: int) -> tuple[Series, ...]:
    """Find the series that have begun and are not over, with the next round of each.

    Args:
        plan: The plan as knitted.
        here: Index of the round in hand.
    """
    running = [
        _next_of(kind, where, rounds, here)
        for kind, where, rounds in _counted_in(SamePlan(plan), plan.rounds[here].section)
        if len(rounds) > 1 and rounds[0] <= here <= rounds[-1]
    ]
    return tuple(sorted(running, key=lambda each: each.index))


@lru_cache(maxsize=64)
def _counted_in(same: SamePlan, section: str) -> tuple[tuple[Kind, InRound, list[int]], ...]:
    """Return the counts of a section with their rounds in order; kept, since each round asks for them."""
    found: dict[tuple[Kind, InRound], set[int]] = {}
    for round_ in same.plan.rounds:
        if round_.section == section:
            for key in _changes(round_):
                found.setdefault(key, set()).add(round_.index)
    return tuple((kind, where, sorted(rounds)) for kind, where, rounds in _counts(found))


def _next_of(kind: Kind, where: InRound, rounds: list[int], here: int) -> Series:
    """Return a series at its next round; `here` is not behind the last."""
    passed = sum(index < here for index in rounds)
    return Series(kind=kind, where=where, index=rounds[passed], number=passed + 1, of=len(rounds))


def _counts(found: Mapping[tuple[Kind, InRound], set[int]]) -> Iterator[tuple[Kind, InRound, set[int]]]:
    """Yield the counts: a kind is two of them only if its beginnings and its ends go their own ways."""
    for kind in (Kind.INCREASE, Kind.DECREASE, Kind.CABLE):
        rounds = {where: found[kind, where] for where in InRound if (kind, where) in found}
        together = set[int]().union(*rounds.values())
        first, last = rounds.get(InRound.BEGINNING, set()), rounds.get(InRound.END, set())
        if InRound.ELSEWHERE in rounds or len(first & last) >= SAME_SHARE * len(together):
            yield kind, InRound.ELSEWHERE, together
        else:
            yield from ((kind, where, indices) for where, indices in rounds.items())


def _changes(round_: Round) -> Iterator[tuple[Kind, InRound]]:
    """Yield what is changed in a round and where; lace, which takes and gives, only by what it comes to."""
    if any(stitch(run.stitch).kind is Kind.CABLE for run in round_.runs):
        yield Kind.CABLE, InRound.ELSEWHERE
    kinds = {entry.kind for run in round_.runs if (entry := stitch(run.stitch)).shapes}
    short = any(run.stitch in TURNS for run in round_.runs)
    if not kinds or short or round_.before == round_.after or not round_.before:
        return
    if len(kinds) > 1:
        yield (Kind.INCREASE if round_.after > round_.before else Kind.DECREASE), InRound.ELSEWHERE
        return
    (kind,) = kinds
    if not round_.flat or round_.evenly:
        yield kind, InRound.ELSEWHERE
        return
    near = END_SHARE * round_.before
    for place in round_.shaping:
        ends = InRound.BEGINNING if place <= near else InRound.END if place >= round_.before - near else None
        # The wrong side goes back the way the right side came.
        if ends is not None and round_.side == "WS":
            ends = InRound.END if ends is InRound.BEGINNING else InRound.BEGINNING
        yield kind, ends or InRound.ELSEWHERE
