"""Go on with a count that is off: the rounds to come follow it until one of them makes it good. Pure.

A plan in, a plan out, as in `stepper.plan.under_way.lengthen` and `stepper.plan.under_way.respace`. From the
round in which the count was found to be off, every round is worked over what is actually on the needles: a
plain one over more or fewer stitches, a rib or a chart over more or fewer repeats if they divide. The round
that makes it good respaces its increases or decreases, or makes a stitch or works two together at the given
place. So the instructions and expected counts of all later rounds fit the fabric in hand.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from stepper.craft.even.manners import Manner
from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Group, Item, Plan, Round, Run
from stepper.plan.stitches.abbreviate import instruction
from stepper.plan.stitches.evenly import Change, even_round, shaping_places
from stepper.plan.stitches.run_repeats import condense, laid_flat
from stepper.plan.under_way.respace import spread_of
from stepper.records import dataclass

ALTERED = "worked over the count in hand"
"""How a round says that it differs from the pattern because a count was off."""
_ENDS = frozenset(("bo", "draw"))
_PURLED = {"p": ("m1p", "p2tog")}


@dataclass(frozen=True, slots=True, kw_only=True)
class Mend:
    """A count that is off, and where it is made good."""

    index: int
    """The round that makes it good; if none does, the one after the last that is off."""
    stitch: int
    """Where in it. Unit: stitches of the round."""
    change: int
    """Stitches to gain; below 0 to lose. Unit: stitches."""
    origin: int = -1
    """The first round whose count is off; -1 if an old journal does not say."""
    spread: bool = False
    """Whether the shaping of the round is respaced to absorb it."""


def apply_mends(plan: Plan, mends: Iterable[Mend]) -> Plan:
    """Apply mends to a plan, in the order in which they were chosen."""
    for mend in mends:
        plan = _laid(plan, mend)
    return plan


def _laid(plan: Plan, mend: Mend) -> Plan:
    rounds, off = list(plan.rounds), -mend.change
    for index in range(mend.origin, min(mend.index, len(rounds))):
        # A round half worked when the count was made is left as it is, though its count is off.
        rounds[index] = refit_round(rounds[index], off, at=mend.stitch) or _off(rounds[index], off)
    if mend.index < len(rounds) and rounds[mend.index].before:
        rounds[mend.index] = made_good(rounds[mend.index], mend) or rounds[mend.index]
    return replace(plan, rounds=tuple(rounds))


def refit_round(round_: Round, off: int, *, at: int = 0) -> Round | None:
    """Work a round over more or fewer stitches, leaving as many more or fewer.

    Args:
        round_: A round of the plan.
        off: Number of extra stitches; below 0 for fewer.
        at: Where they are, for the markers behind them. Unit: stitches.

    Returns:
        The round over the other count; None if that is impossible: a repeat that does not divide, or shaping,
        whose places are fixed.
    """
    worked = [run for run in round_.runs if stitch(run.stitch).kind is not Kind.MARK]
    kinds = {run.stitch for run in worked}
    if not worked or round_.before + off < 1:
        return None
    if len(worked) == 1 and kinds <= _ENDS:
        return _rewritten(round_, (replace(worked[0], times=worked[0].times + off),), off, left=0)
    alike = (
        len({(run.stitch, run.yarn) for run in worked}) == 1 and stitch(worked[0].stitch).kind is Kind.PLAIN
    )
    phrase = _plain_over(round_.runs, off, at) if alike else _repeats_over(round_.phrase, off)
    return None if phrase is None else _rewritten(round_, phrase, off, left=round_.after + off, at=at)


def _plain_over(runs: tuple[Run, ...], off: int, at: int) -> tuple[Item, ...] | None:
    """Return one stitch throughout over more or fewer stitches, in the stretch between markers concerned."""
    place = 0
    for number, run in enumerate(runs):
        place += run.progress
        if run.progress and (place > at or number == len(runs) - 1):
            if run.times + off < 1:
                return None
            return (*runs[:number], replace(run, times=run.times + off), *runs[number + 1 :])
    return None


def _repeats_over(phrase: tuple[Item, ...], off: int) -> tuple[Item, ...] | None:
    """Return the same repeats more or fewer times, if they divide what is off and do not shape."""
    groups = [at for at, item in enumerate(phrase) if isinstance(item, Group)]
    if len(groups) != 1:
        return None
    at, group = groups[0], phrase[groups[0]]
    assert isinstance(group, Group)
    once = group.uses // group.times
    shaped = any(
        stitch(run.stitch).kind not in (Kind.PLAIN, Kind.CABLE, Kind.MARK) for run in laid_flat(phrase)
    )
    if shaped or not once or off % once or group.times + off // once < 1:
        return None
    return (*phrase[:at], replace(group, times=group.times + off // once), *phrase[at + 1 :])


def made_good(round_: Round, mend: Mend) -> Round | None:
    """Work a round over a count that is off, leaving the stitches the pattern has after it.

    Returns:
        None if impossible: too few changes to spread, or no plain stitch at which to make or lose one.
    """
    off = -mend.change
    if mend.spread:
        phrase = _spread_anew(round_, off)
    else:
        runs = _at_spot(round_.runs, mend)
        phrase = None if runs is None else condense(runs)
    return None if phrase is None else _rewritten(round_, phrase, off, left=round_.after)


def _spread_anew(round_: Round, off: int) -> tuple[Item, ...] | None:
    """Spread more or fewer changes over the round, in the manner that is shortest to say."""
    spread = spread_of(round_)
    if spread is None or round_.before + off < 1:
        return None
    number, odd = divmod(round_.after - round_.before - off, spread.change.change)
    if odd:
        return None
    change = Change(code=spread.change.code, yarn=spread.yarn, plain=spread.plain)
    try:
        made = even_round(round_.before + off, number, change, flat=round_.flat, manner=Manner.SAYABLE)
    except ValueError:
        return None
    return made.items


def _at_spot(runs: tuple[Run, ...], mend: Mend) -> tuple[Run, ...] | None:
    """Make stitches or work two together from a place on; the stitches around keep to the pattern."""
    todo = [run for run in runs for run in [replace(run, times=1)] * run.times]
    order = _from_spot(todo, mend.stitch)
    if len(order) < abs(mend.change):
        return None
    # Not side by side if there is room: two neighbours would make a hole or a pucker.
    apart = order[:: 2 if len(order) >= 2 * abs(mend.change) else 1]
    for at in apart[: abs(mend.change)]:
        made, together = _PURLED.get(todo[at].stitch, ("m1", "k2tog"))
        todo[at] = replace(todo[at], stitch=made if mend.change > 0 else together)
    return laid_flat(tuple(todo))


def _from_spot(todo: list[Run], place: int) -> list[int]:
    """List the plain stitches from a place to the end, then those before it, nearest first."""
    behind: list[int] = []
    ahead: list[int] = []
    reached = 0
    for at, run in enumerate(todo):
        if stitch(run.stitch).kind is Kind.PLAIN:
            (ahead if reached >= place else behind).append(at)
        reached += run.progress
    return ahead + behind[::-1]


def _off(round_: Round, off: int) -> Round:
    """Leave a round as it is, with its counts off."""
    check = round_.checkpoint
    return replace(
        round_,
        before=round_.before + off,
        after=round_.after + off,
        checkpoint=None if check is None else replace(check, expect=check.expect + off),
    )


def _rewritten(round_: Round, phrase: tuple[Item, ...], off: int, *, left: int, at: int = 0) -> Round:
    """Rewrite a round over another count."""
    runs, manner = laid_flat(phrase), None
    if runs[0].stitch == "bo":
        manner = round_.instruction.removeprefix("bind off").strip()
    check = round_.checkpoint
    gained = left - round_.after
    return replace(
        round_,
        before=round_.before + off,
        after=left,
        phrase=phrase,
        runs=runs,
        shaping=shaping_places(runs),
        instruction=instruction(
            phrase,
            chart=round_.chart,
            chart_round=round_.chart_round,
            manner=manner,
            evenly=round_.evenly,
        ),
        checkpoint=None if check is None else replace(check, expect=left),
        markers=tuple(each + gained if each > at else each for each in round_.markers),
        altered=(*round_.altered, ALTERED),
    )
