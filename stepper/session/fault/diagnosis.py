"""Say what probably happened: seven kinds of single fault, each weighed by what is known.

Theory of operation. What each kind predicts for every round since the last good count
(`stepper.session.fault.symptoms`) is compared with what is known: the count, the counts between landmarks,
what was seen in the fabric. A kind that predicts otherwise is out; the others are ranked by their odds, by
the share of their places that lies where the fault was narrowed to, and by whether she was interrupted in
that round. Two kinds that predict the same cannot be told apart; the likelier then comes first. No I/O.
"""

from __future__ import annotations

from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.session.fault.landmarks import Landmark, is_turned
from stepper.session.fault.search import BREAK_ODDS, Search, search, window
from stepper.session.fault.symptoms import SPREAD, Cause, Symptoms, list_symptoms
from stepper.session.state import Fault, Observation, Seen, State

LOOPED = (Cause.DROPPED, Cause.YARN_OVER)
"""What leaves a live loop hanging."""
_UNMADE = (Cause.LEFT_OUT, Cause.YARN_OVER)


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
    """What was seen that supports it."""
    other: int | None = None
    """The round that was worked in its place."""
    changes: int = 0
    """Surplus increases and decreases it shows in its round."""
    left: int = 0
    """Stitches it leaves over at the end of its round."""


def diagnose(plan: Plan, state: State, fault: Fault, looking: Search | None = None) -> tuple[Likely, ...]:
    """Rank what may have happened, the likeliest first; empty if no single fault explains it.

    Args:
        plan: The plan as knitted.
        state: Where she was interrupted, and the last good count.
        fault: What was counted and seen.
        looking: How far the counting between landmarks has come; worked out if not given.
    """
    looking = looking if looking is not None else search(plan, state, fault)
    found: list[tuple[float, int, Symptoms]] = []
    for index in window(plan, fault, state.knitting.stands):
        stitches = max(1, plan.rounds[index].progress)
        broken = BREAK_ODDS / stitches * sum(each.index == index for each in state.breaks)
        for told in list_symptoms(plan, index):
            if _fits(told, index, fault):
                turned = is_turned(plan, index, fault.place.index)
                lone = is_lone(plan, told.cause, index, looking)
                there = 1.0 if lone else _there(told, looking, turned=turned)
                found.append((told.odds * there * (1 + broken), index, told))
    found = _by_landmark(plan, found, looking) or found
    total = sum(odds for odds, _, _ in found)
    if not total:
        return ()
    best: dict[tuple[Cause, int], Likely] = {}
    for odds, index, told in found:
        before = best.get((told.cause, index))
        if odds and (before is None or before.odds < odds / total):
            best[told.cause, index] = _likely(told, index, odds / total, fault)
    return tuple(sorted(best.values(), key=lambda each: -each.odds))


def _likely(told: Symptoms, index: int, odds: float, fault: Fault) -> Likely:
    return Likely(
        cause=told.cause,
        index=index,
        code=told.code,
        odds=odds,
        known=tuple(
            each.seen
            for each in fault.sights
            if each.index in (None, index) and (each.number or each.seen is not Seen.LOOP)
        ),
        other=told.other,
        changes=told.changes,
        left=told.left,
    )


def is_lone(plan: Plan, cause: Cause, index: int, looking: Search) -> bool:
    """Return whether a change left out would have been the only landmark: she has then counted to one of an
    earlier round, and her counts do not tell where the fault is."""
    sections = looking.sections
    if sections is None or sections.kind is not Landmark.CHANGE or len(plan.rounds[index].shaping) != 1:
        return False
    return cause in _UNMADE and sections.index == index


def _there(told: Symptoms, looking: Search, *, turned: bool) -> float:
    """Return what share of a fault's places lies in the sections under suspicion."""
    if looking.sections is None or not looking.suspects:
        return 1.0
    if not looking.single:
        return 1.0 if told.cause in SPREAD else 0.0
    edges = looking.sections.edges
    total = max(1, edges[-1])
    there = sum(
        told.inside(edges[at] / total, edges[at + 1] / total, turned=turned) for at in looking.suspects
    )
    if told.cause not in SPREAD:
        return there
    # What shifts the whole rest of a round can show far from where it happened.
    return (there + len(looking.suspects) / len(looking.sections.counts)) / 2


def _by_landmark(
    plan: Plan, found: list[tuple[float, int, Symptoms]], looking: Search
) -> list[tuple[float, int, Symptoms]]:
    """Keep what agrees with the landmarks themselves: a change that was not made cannot be counted to."""
    if looking.sections is None or looking.sections.kind is not Landmark.CHANGE:
        return found
    made = looking.sections.index
    if looking.landmark < 0:
        return [each for each in found if each[1] == made and each[2].cause in _UNMADE]
    if looking.landmark > 0:
        return [each for each in found if each[1] == made and each[2].cause is Cause.ONE_TOO_MANY]
    # The only change of its round may itself be the one left out.
    lone = made is not None and len(plan.rounds[made].shaping) == 1
    if looking.found is None or lone or looking.suspects[-1] == len(looking.sections.counts) - 1:
        return found
    return [each for each in found if not (each[1] == made and each[2].cause in _UNMADE)]


def _fits(told: Symptoms, index: int, fault: Fault) -> bool:
    """Return whether what is predicted agrees with what is known."""
    if (fault.difference or not fault.sights) and told.difference != fault.difference:
        return False
    return all(_agrees(told, index, sight) for sight in fault.sights)


def _agrees(told: Symptoms, index: int, sight: Observation) -> bool:
    """Return whether one thing seen agrees; a round that is not to blame is as it should be."""
    if sight.seen is Seen.LOOP:
        return told.loop == bool(sight.number)
    here = sight.index in (None, index)
    if sight.seen is Seen.CHANGES:
        return sight.number == (told.changes if here else 0)
    if sight.seen is Seen.LEFT:
        return sight.number == (told.left if here else 0)
    return bool(sight.number) == (here and told.cause is Cause.OTHER_ROUND)


def choose_question(fault: Fault, likely: tuple[Likely, ...]) -> tuple[Seen, int] | None:
    """Choose what to look at next, and in which round: the thing that tells the likeliest two apart.

    Returns:
        None if nothing does, or if everything has been looked at.
    """
    others = [each for each in likely if each.cause is not likely[0].cause] if likely else []
    if not others:
        return None
    asked = {(each.seen, None if each.seen is Seen.LOOP else each.index) for each in fault.sights}
    first, second = likely[0], others[0]
    for seen in (Seen.LOOP, Seen.LEFT, Seen.WHOLE, Seen.CHANGES):
        for index in (first.index, second.index):
            if index == fault.place.index and seen in (Seen.LEFT, Seen.WHOLE):
                continue  # the round in hand has no end yet
            new = (seen, None if seen is Seen.LOOP else index) not in asked and (seen, None) not in asked
            if new and shows(first, seen, index) != shows(second, seen, index):
                return seen, index
    return None


def shows(likely: Likely, seen: Seen, index: int) -> int:
    """Return what a round shows if this is what happened, as `Seen` defines it."""
    if seen is Seen.LOOP:
        return int(likely.cause in LOOPED)
    if index != likely.index:
        return 0
    if seen is Seen.CHANGES:
        return likely.changes
    return likely.left if seen is Seen.LEFT else int(likely.cause is Cause.OTHER_ROUND)
