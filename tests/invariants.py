"""What every plan keeps, whatever the pattern: the arithmetic that cannot be wrong. No I/O."""

from __future__ import annotations

from collections.abc import Iterator

from stepper.craft.even.spacing import gaps_between
from stepper.plan.model import Group, Plan, Round


def broken_invariants(plan: Plan) -> tuple[str, ...]:
    """List every invariant that a plan breaks, as sentences; empty for a sound plan."""
    return tuple(_broken(plan))


def _broken(plan: Plan) -> Iterator[str]:
    previous: Round | None = None
    known: dict[int, tuple[int, int]] = {}
    for round_ in plan.rounds:
        where = f"{round_.section} round {round_.number}"
        if round_.index != (previous.index + 1 if previous else 0):
            yield f"{where}: index {round_.index} does not follow"
        ended = previous.after if previous else 0
        if round_.before != ended:
            yield f"{where}: begins with {round_.before}, the round before ends with {ended}"
        yield from _stitches(round_, where, known)
        if round_.evenly:
            yield from _even(round_, where)
        if round_.chart is not None:
            # The edges of a chart stand beside its repeats as plain runs, and are worked once.
            groups = [item for item in round_.phrase if isinstance(item, Group)]
            named = all(group.name == round_.chart for group in groups)
            if len(groups) > 1 or not named or sum(item.uses for item in round_.phrase) != round_.before:
                yield f"{where}: not a whole number of chart repeats"
        previous = round_


def _stitches(round_: Round, where: str, known: dict[int, tuple[int, int]]) -> Iterator[str]:
    if id(round_.runs) not in known:  # rounds that are alike share their runs
        runs = round_.runs
        known[id(runs)] = (sum(run.uses for run in runs), sum(run.leaves for run in runs))
    uses, leaves = known[id(round_.runs)]
    if uses != round_.before:
        yield f"{where}: the runs use {uses} of {round_.before}"
    if leaves != round_.after:
        yield f"{where}: the runs leave {leaves}, not {round_.after}"
    if sum(item.uses for item in round_.phrase) != uses:
        yield f"{where}: the phrase and the runs differ"


def _even(round_: Round, where: str) -> Iterator[str]:
    changes = abs(round_.after - round_.before)
    if len(round_.shaping) != changes:
        yield f"{where}: {len(round_.shaping)} changes instead of {changes}"
    if not changes or round_.flat:
        return
    gaps = gaps_between(round_.shaping, round_.before)
    if sum(gaps) != round_.before:
        yield f"{where}: the gaps sum to {sum(gaps)}, not {round_.before}"
    if max(gaps) - min(gaps) > 1 and not round_.altered:
        # What she alters herself, as a centre kept free, may cost evenness.
        yield f"{where}: gaps of {min(gaps)} to {max(gaps)}"
