"""When a count pays: places chosen by cost, on top of the checkpoints of the plan.

Theory of operation. Work goes on until so many stitches lie behind that counting the round costs less than an
unnoticed fault would (`stepper.craft.counting`: Young 1974). The figures are the stitches of the round, her
pace, and her fault rate learned from her counts; before any count the assumption there. A count is due at the
end of the round in which a multiple of that interval is passed, so nothing about asking has to be remembered.
No I/O, no clock.
"""

from __future__ import annotations

from stepper.craft.counting import CountCosts, count_interval, learned_fault_rate
from stepper.craft.pace import DEFAULT_STITCHES_PER_MINUTE, Stretch, measure_pace
from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Plan, Round
from stepper.session.remedy import tolerant
from stepper.session.state import Asking, Place, State

_SPOKEN_FOR = frozenset((Kind.EDGE, Kind.SHIFT))


def costs(pace: float = DEFAULT_STITCHES_PER_MINUTE, faults: int = 0, stitches: int = 0) -> CountCosts:
    """Give what counting and ripping cost her.

    Args:
        pace: Stitches per minute. Range: above 0.
        faults: Faults her counts have found.
        stitches: Stitches those counts covered.
    """
    return CountCosts(faults_per_stitch=learned_fault_rate(faults, stitches), knit_s=60 / pace)


def stitches_per_minute(state: State) -> float:
    """Give her pace from the steps so far; the default before any."""
    steps = [Stretch(stitches=each.stitches, seconds=each.seconds) for each in state.worked]
    return measure_pace(steps).stitches_per_minute


def due(plan: Plan, state: State, done: int) -> str | None:
    """Tell why a count pays at the end of a round; nothing where it does not.

    Args:
        plan: The plan as knitted.
        state: Where the session stands, the round done.
        done: Index of the round.
    """
    asking, round_ = state.knitting.asking, plan.rounds[done]
    if asking is Asking.NEVER:
        return None
    ahead = plan.rounds[done + 1] if done + 1 < len(plan.rounds) else None
    locked = None if ahead is None else locks(round_, ahead)
    if asking is Asking.LESS:
        return locked
    if round_.checkpoint is not None:
        return round_.checkpoint.reason
    if asking is Asking.PATTERN:
        return None
    return locked or _by_cost(plan, state, done)


def locks(done: Round, ahead: Round) -> str | None:
    """Say what the round ahead would lock a fault in with; nothing where it would not."""
    if any(stitch(run.stitch).kind in _SPOKEN_FOR for run in ahead.runs):
        return "before a bind-off" if any(run.stitch == "bo" for run in ahead.runs) else "before the division"
    if ahead.chart is not None and ahead.chart != done.chart:
        return f"before chart {ahead.chart}"
    return "before the shaping" if ahead.shaping and not done.shaping else None


def _by_cost(plan: Plan, state: State, done: int) -> str | None:
    """Tell whether the interval of least cost is passed in a round."""
    verified = state.knitting.verified.place if state.knitting.verified is not None else Place()
    if verified.index > done:
        return None
    hers = costs(stitches_per_minute(state), state.faults, state.covered)
    before = sum(round_.progress for round_ in plan.rounds[verified.index : done]) - verified.stitch
    after = before + plan.rounds[done].progress
    interval = max(1.0, count_interval(max(1, plan.rounds[done].after), hers))
    if int(max(0, before) // interval) == int(after // interval):
        return None
    rounds = done + 1 - verified.index
    return "a count pays here" if rounds < 2 else f"{rounds} rounds since the last good count"


def lifeline_before(plan: Plan, state: State, done: int) -> bool:
    """Tell whether a lifeline is worth laying after a round: a chart or lace begins on sound stitches."""
    if done + 1 >= len(plan.rounds):
        return False
    ahead = plan.rounds[done + 1]
    begins = ahead.chart is not None and ahead.chart != plan.rounds[done].chart
    lace = any(run.stitch in ("yo", "yo2") for run in ahead.runs) and tolerant(plan.rounds[done])
    laid = any(each.index == done + 1 for each in state.knitting.lifelines)
    asking = state.knitting.asking
    return not laid and ((begins and asking is Asking.MORE) or (lace and asking is not Asking.NEVER))
