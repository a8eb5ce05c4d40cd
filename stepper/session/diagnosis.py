"""Say what probably happened: seven kinds of single fault, each weighed by what is known.

Theory of operation. Every kind, in every round since the last good count, foretells four things: by how many
stitches the count is off, how many changes too many or too few the round shows, how many stitches are left
over at its end (or missing), and whether a loose loop hangs below. What is known of these is compared with
what is foretold; a kind that foretells otherwise is out, the others are ranked by how often such a thing
happens: once for each place where it can. Two kinds that foretell the same cannot be told apart, and then the
likelier comes first. The odds are assumptions; no source was found. No I/O.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import Enum

from stepper.craft.fault_finding import CHANGE_ODDS
from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Group, Item, Plan, Round, flatten
from stepper.session.fault import BREAK_ODDS, window
from stepper.session.state import Fault, Seen, State


class Cause(Enum):
    """What can have happened."""

    LEFT_OUT = "left out"
    """An increase or decrease left out."""
    ONE_TOO_MANY = "one too many"
    """An increase or decrease where none belongs."""
    REPEAT_TWICE = "repeat twice"
    REPEAT_LEFT_OUT = "repeat left out"
    YARN_OVER = "yarn over dropped"
    DROPPED = "stitch dropped"
    OTHER_ROUND = "other round"
    """A round worked for another."""


ODDS = {
    Cause.LEFT_OUT: CHANGE_ODDS,
    Cause.ONE_TOO_MANY: CHANGE_ODDS / 2,
    Cause.REPEAT_TWICE: CHANGE_ODDS / 4,
    Cause.REPEAT_LEFT_OUT: CHANGE_ODDS / 4,
    Cause.YARN_OVER: CHANGE_ODDS,
    Cause.DROPPED: 0.5,
    Cause.OTHER_ROUND: CHANGE_ODDS,
}
"""How often each happens for each place where it can, a plain stitch gone wrong being 1. Assumptions."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Likely:
    """Something that may have happened."""

    cause: Cause
    index: int
    """The round it happened in."""
    code: str
    """The stitch it happened to; empty for repeats and rounds."""
    odds: float
    """Chance that it was this, among all that fit what is known. Range: 0 to 1."""
    known: tuple[Seen, ...]
    """What was seen that speaks for it."""
    other: int | None = None
    """The round that was worked in its place."""


@dataclass(frozen=True, slots=True)
class _Foretold:
    """What a kind of fault in a round leads to."""

    cause: Cause
    code: str
    difference: int
    changes: int
    left: int
    loop: bool
    places: float
    other: int | None = None


def diagnose(plan: Plan, state: State, fault: Fault) -> tuple[Likely, ...]:
    """Rank what may have happened, the likeliest first; nothing where no single fault explains it."""
    seen = {each.seen: each.number for each in fault.sights}
    found: list[tuple[float, int, _Foretold]] = []
    for index in window(plan, fault, state.knitting.verified):
        broken = BREAK_ODDS * sum(each.index == index for each in state.breaks)
        for told in _foretold(plan, index):
            if _fits(told, fault, seen):
                found.append((ODDS[told.cause] * (told.places + broken / CHANGE_ODDS), index, told))
    total = sum(odds for odds, _, _ in found)
    best: dict[tuple[Cause, int], Likely] = {}
    for odds, index, told in found:
        known = tuple(each.seen for each in fault.sights)
        before = best.get((told.cause, index))
        likely = Likely(
            cause=told.cause, index=index, code=told.code, odds=odds / total, known=known, other=told.other
        )
        if before is not None:
            likely = before if before.odds >= likely.odds else likely
        best[told.cause, index] = likely
    return tuple(sorted(best.values(), key=lambda each: -each.odds))


def _fits(told: _Foretold, fault: Fault, seen: dict[Seen, int]) -> bool:
    """Compare what is foretold with what is known."""
    if (fault.difference or not seen) and told.difference != fault.difference:
        return False
    if Seen.LOOP in seen and told.loop != bool(seen[Seen.LOOP]):
        return False
    if Seen.CHANGES in seen and told.changes != seen[Seen.CHANGES]:
        return False
    if Seen.LEFT in seen and told.left != seen[Seen.LEFT]:
        return False
    whole = told.cause is Cause.OTHER_ROUND
    return Seen.WHOLE not in seen or whole == bool(seen[Seen.WHOLE])


def _foretold(plan: Plan, index: int) -> Iterator[_Foretold]:
    round_ = plan.rounds[index]
    yield from _of_stitches(round_)
    yield from _of_repeats(round_)
    yield from _of_rounds(plan, index)


def _of_stitches(round_: Round) -> Iterator[_Foretold]:
    """Foretell the faults of single stitches."""
    plain = sum(run.times for run in round_.runs if stitch(run.stitch).kind is Kind.PLAIN)
    times: dict[str, int] = {}
    for run in round_.runs:
        times[run.stitch] = times.get(run.stitch, 0) + run.times
    for code, often in times.items():
        entry = stitch(code)
        if entry.kind not in (Kind.INCREASE, Kind.DECREASE):
            continue
        if code in ("yo", "yo2"):
            # A yarn over that slips off leaves a slack strand; one never made leaves nothing.
            yield _Foretold(Cause.YARN_OVER, code, -entry.change, -1, 0, loop=True, places=often)
        yield _Foretold(Cause.LEFT_OUT, code, -entry.change, -1, 0, loop=False, places=often)
        yield _Foretold(Cause.ONE_TOO_MANY, code, entry.change, 1, 0, loop=False, places=often)
    if plain:
        yield _Foretold(Cause.DROPPED, "", -1, 0, 0, loop=True, places=plain)
        if not round_.shaping:
            yield _Foretold(Cause.ONE_TOO_MANY, "yo", 1, 1, 0, loop=False, places=plain / 100)


def _of_repeats(round_: Round) -> Iterator[_Foretold]:
    """Foretell the faults of whole repeats: the round no longer comes out at its end."""
    for at, item in enumerate(round_.phrase):
        if not isinstance(item, Group) or not item.uses:
            continue
        once = tuple(flatten(item.items))
        for more, cause in ((True, Cause.REPEAT_TWICE), (False, Cause.REPEAT_LEFT_OUT)):
            times = item.times + (1 if more else -1)
            items = (
                round_.phrase[:at] + ((Group(item.items, times),) if times else ()) + round_.phrase[at + 1 :]
            )
            change, changes = worked_out(items, round_.before)
            left = sum(run.uses for run in once) * (-1 if more else 1)
            off, off_changes = change - (round_.after - round_.before), changes - len(round_.shaping)
            yield _Foretold(cause, "", off, off_changes, left, loop=False, places=item.times)


def _of_rounds(plan: Plan, index: int) -> Iterator[_Foretold]:
    """Foretell a neighbouring round worked in place of this one."""
    round_ = plan.rounds[index]
    for other in (index + 1, index - 1, index + 2):
        if not 0 <= other < len(plan.rounds) or plan.rounds[other].runs == round_.runs:
            continue
        wrong = plan.rounds[other]
        change, changes = worked_out(wrong.phrase, round_.before)
        off, off_changes = change - (round_.after - round_.before), changes - len(round_.shaping)
        left = round_.before - sum(run.uses for run in wrong.runs)
        yield _Foretold(Cause.OTHER_ROUND, "", off, off_changes, left, loop=False, places=0.5, other=other)


def worked_out(items: Iterable[Item], before: int) -> tuple[int, int]:
    """Work items over a count of stitches; what is left over is worked plain, what is missing is left.

    Returns:
        Stitches gained, and changes made.
    """
    used = change = changes = 0
    short = False
    for run in flatten(tuple(items)):
        entry = stitch(run.stitch)
        if entry.uses:
            fit = min(run.times, (before - used) // entry.uses)
            short = short or fit < run.times
        else:
            fit = 0 if short else run.times  # nothing is made once the stitches have run out
        used += fit * entry.uses
        change += fit * entry.change
        changes += fit * (entry.kind in (Kind.INCREASE, Kind.DECREASE))
    return change, changes


def questions(plan: Plan, fault: Fault, likely: tuple[Likely, ...]) -> Seen | None:
    """Choose what to look at next: the thing that tells the likeliest two apart; nothing when none does."""
    asked = {each.seen for each in fault.sights}
    if len({each.cause for each in likely}) < 2:
        return None
    first, second = likely[0], next(each for each in likely if each.cause is not likely[0].cause)
    ends, whole = (Cause.REPEAT_TWICE, Cause.REPEAT_LEFT_OUT), Cause.OTHER_ROUND
    loops = (Cause.DROPPED, Cause.YARN_OVER)
    for seen, kinds in ((Seen.LOOP, loops), (Seen.LEFT, ends), (Seen.WHOLE, (whole,))):
        if seen not in asked and (first.cause in kinds) != (second.cause in kinds):
            return seen
    return Seen.CHANGES if Seen.CHANGES not in asked else None
