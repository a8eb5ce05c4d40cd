"""Decide when a count pays: where a fault would be locked in and, in between, where counting costs least.

Theory of operation. Work goes on until so many stitches are done that counting the round costs less than an
unnoticed fault would: Young's interval sqrt(2 C M) (`stepper.craft.counting`), with C the time to count the
round and M the work between two faults, measured in the cost of redoing. The figures are the stitches of the
round, her pace, and her fault rate learned from her counts, or the assumption made there before any count. An
increase or decrease weighs as several plain stitches, because it goes wrong more often. A count falls due at
the end of the round in which the interval is passed; if it is not made, it falls due again after twice, four
times, eight times as much, so that nobody is nagged and nothing about asking has to be remembered.

A count is always due, whatever the figures say, before the first shaping of a section, a chart, a
division or a bind-off, and after what the plan itself marks (a cast-on, stitches picked up, an increase
spread evenly); a good count one plain round earlier serves, and so does one less than half an interval
back, except before what ends or divides the piece and after an even increase. Within a run of shaping
rounds, such as a raglan or the bound-off edges of a shoulder, every round would lock a fault in; there half
the interval has to have passed.
Within short rows nothing is asked for, since part of the stitches wait on either side. No I/O, no clock.
"""

from __future__ import annotations

from collections.abc import Sequence

from stepper.craft.counting import CountCosts, count_interval, learned_fault_rate
from stepper.craft.fault_finding import CHANGE_ODDS
from stepper.craft.pace import DEFAULT_STITCHES_PER_MINUTE, TimedStretch, measure_pace
from stepper.craft.stitches import TURNS, Kind, stitch
from stepper.plan.model import Plan, Round
from stepper.session.fault.workable import is_tolerant
from stepper.session.state import Asking, Position, State

_DIVIDING = frozenset(("hold", "co"))
_ENDING = frozenset(("bo", "graft", "draw"))
_LACE = frozenset(("yo", "yo2"))
_SHORT = TURNS | {"rest"}

MORE_SHARE = 0.5
"""With "ask more" the interval is this share of the best one, as if there were four times as many faults."""
SHAPED_SHARE = 0.5
"""Share of the interval that must have passed before a count is asked for within a run of shaping. Source:
chosen here; half the interval costs a quarter more than the best one (Young's cost is w + 1/w)."""
LIFELINE_ROUNDS = 12
"""Rounds of lace or cables after which another lifeline is worthwhile. Source: common practice, every 10 to
20."""


def price_counting(
    pace: float = DEFAULT_STITCHES_PER_MINUTE, faults: int = 0, stitches: int = 0
) -> CountCosts:
    """Return what counting and ripping cost her.

    Args:
        pace: Stitches per minute. Range: above 0.
        faults: Faults her counts have found.
        stitches: Stitches those counts covered.
    """
    return CountCosts(faults_per_stitch=learned_fault_rate(faults, stitches), knit_s=60 / pace)


def stitches_per_minute(state: State) -> float:
    """Return her pace from the steps so far, or the usual one before any. Unit: stitches per minute."""
    steps = [TimedStretch(stitches=each.stitches, seconds=each.seconds) for each in state.worked]
    return measure_pace(steps).stitches_per_minute


def why_count(plan: Plan, state: State, done: int) -> str | None:
    """Return why a count pays at the end of a round; None if it does not.

    Args:
        plan: The plan as knitted.
        state: Where the session stands, with the round done.
        done: Index of the round.
    """
    asking, round_ = state.knitting.asking, plan.rounds[done]
    if asking is Asking.NEVER or not round_.after or round_.is_uncounted:
        return None  # nothing is on the needles, or nobody knows how many
    check = round_.checkpoint.reason if round_.checkpoint is not None else None
    if asking is Asking.PATTERN:
        return check
    ahead = plan.rounds[done + 1] if done + 1 < len(plan.rounds) else None
    if ahead is not None and is_short_row(round_) and is_short_row(ahead):
        return None  # some stitches wait on either side; the row that takes all in again is counted
    lock = None if ahead is None else find_lock(round_, ahead)
    lately, soft = _counted_lately(plan, state, done), None
    if lock is not None and not _ends(lock) and (lately or _goes_on(lock, plan, done)):
        lock, soft = None, lock
    if lock is not None and _just_counted(state, done) and is_tolerant(round_):
        lock = None  # it was right one plain round ago
    if asking is Asking.LESS:
        return lock
    plain = not round_.shaping and not lately
    if check is not None and (lock or asking is Asking.MORE or plain or round_.evenly):
        return check
    return lock or _by_cost(plan, state, done, soft or check)


SHAPING = "before the shaping"
EDGE = "before an edge is bound off"
CHART = "before chart "


def find_lock(done: Round, ahead: Round) -> str | None:
    """Return what in the round ahead would lock a fault in; None if nothing would."""
    codes = {run.stitch for run in ahead.runs}
    if _binds_edge(ahead):
        return None if _binds_edge(done) else EDGE
    if codes & _ENDING:
        return "before a bind-off" if "bo" in codes else "before the end"
    if codes & _DIVIDING:
        return "before the division" if "hold" in codes else None
    if ahead.chart is not None and ahead.chart != done.chart:
        return f"{CHART}{ahead.chart}"
    return SHAPING if ahead.shaping and not done.shaping else None


def _binds_edge(round_: Round) -> bool:
    """Return whether a row binds off some stitches where it begins, as armholes and shoulders are shaped."""
    begins = next((run.stitch for run in round_.runs if run.uses), "")
    return begins == "bo" and round_.after > 0


def is_short_row(round_: Round) -> bool:
    """Return whether a row turns before its end or leaves stitches unworked."""
    return bool({run.stitch for run in round_.runs} & _SHORT)


def _ends(lock: str) -> bool:
    """Return whether a lock is one that ends or divides the piece."""
    return lock not in (SHAPING, EDGE) and not lock.startswith(CHART)


def _goes_on(lock: str, plan: Plan, done: int) -> bool:
    """Return whether the shaping ahead only continues that of its section."""
    return lock in (SHAPING, EDGE) and _shaped_before(plan, done)


def _counted_lately(plan: Plan, state: State, done: int) -> bool:
    """Return whether a good count lies less than half an interval back, so that another would cost more than
    it saves: in a stranded yoke a chart or an increase comes every few rounds."""
    verified = state.knitting.stands
    if verified is None:
        return False
    risk = _risk_of(plan.rounds[verified.place.index : done + 1]) - verified.place.stitch
    return risk < SHAPED_SHARE * interval_at(plan, state, done)


def _just_counted(state: State, done: int) -> bool:
    """Return whether the stitches were counted and found right at the beginning of a round."""
    verified = state.knitting.stands
    return verified is not None and verified.place == Position(index=done)


def _shaped_before(plan: Plan, done: int) -> bool:
    """Return whether the shaping of a section has begun before a round ends."""
    section = plan.rounds[done].section
    ahead = plan.rounds[done + 1]
    if ahead.section != section or ahead.evenly:
        return False
    inside = plan.rounds[done - plan.rounds[done].number + 1 : done + 1]
    return any(each.shaping and not each.evenly for each in inside)


def _by_cost(plan: Plan, state: State, done: int, soft: str | None) -> str | None:
    """Return why a count is due if the cheapest interval, or half of it at a shaped round, has passed."""
    verified = state.knitting.stands.place if state.knitting.stands is not None else Position()
    if verified >= Position(index=done + 1):
        return None
    worked = plan.rounds[verified.index : done]
    before = max(0.0, _risk_of(worked) - verified.stitch)
    after = before + _risk_of(plan.rounds[done : done + 1])
    interval = interval_at(plan, state, done)
    if soft is not None and SHAPED_SHARE <= after / interval < 2:
        return soft
    if _times_due(before / interval) == _times_due(after / interval):
        return None
    since = plan.rounds[verified.index : done + 1]
    what = "rows" if all(each.flat for each in since) else "rounds"
    return "a count pays here" if len(since) < 2 else f"{len(since)} {what} without a count"


def _times_due(intervals: float) -> int:
    """Return how often a count fell due in a number of intervals: after 1, 2, 4, 8 of them."""
    return int(intervals).bit_length()


def interval_at(plan: Plan, state: State, done: int) -> float:
    """Return the cheapest amount of work between two counts at the end of a round. Unit: plain stitches."""
    hers = price_counting(stitches_per_minute(state), state.knitting.faults, state.knitting.covered)
    best = count_interval(max(1, plan.rounds[done].after), hers)
    return max(1.0, best * (MORE_SHARE if state.knitting.asking is Asking.MORE else 1))


def _risk_of(rounds: Sequence[Round]) -> float:
    """Weigh rounds by what can go wrong in them. Unit: plain stitches.

    Identical rounds share their stitches, which are added up once; a count may be hundreds of rounds back.
    """
    known: dict[int, int] = {}
    total = 0.0
    for each in rounds:
        key = id(each.runs)
        if key not in known:
            known[key] = each.progress
        total += known[key] + CHANGE_ODDS * len(each.shaping)
    return total


def lifeline_before(plan: Plan, state: State, done: int) -> bool:
    """Return whether a lifeline is worth laying after a round, before lace, cables or a chart begin.

    Within lace and cables, again every `LIFELINE_ROUNDS`, or at the next beginning of a shorter chart.
    """
    asking = state.knitting.asking
    if done + 1 >= len(plan.rounds) or asking is Asking.NEVER:
        return False
    now, ahead = plan.rounds[done], plan.rounds[done + 1]
    if any(each.index == done + 1 for each in state.knitting.lifelines):
        return False
    if is_risky(ahead) and not is_risky(now) and is_tolerant(now):
        # A patterned round after a single plain one is not a beginning.
        return not any(map(is_risky, plan.rounds[max(0, done - 1) : done])) or _long_since(state, done)
    begins = ahead.chart is not None and ahead.chart != now.chart
    if begins:
        return asking is not Asking.LESS or is_risky(ahead)
    return is_risky(now) and ahead.chart_round == 1 and _long_since(state, done)


def is_risky(round_: Round) -> bool:
    """Return whether ripping a round is risky: yarn overs and cables unravel."""
    codes = {run.stitch for run in round_.runs}
    return bool(codes & _LACE) or any(stitch(code).kind is Kind.CABLE for code in codes)


def _long_since(state: State, done: int) -> bool:
    """Return whether the last lifeline is far back."""
    last = max((each.index for each in state.knitting.lifelines), default=None)
    return last is not None and done + 1 - last >= LIFELINE_ROUNDS
