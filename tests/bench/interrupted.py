"""Hours that are left, forecast and simulated, for six knitters whose doorbell rings. Passes no judgement.

    python -m tests.bench.interrupted [--seed N] [--each N]

Each knitter (`tests.session.knitters`: her own speed, evenings and pauses, none of it known to the forecast) is
interrupted in one step in eight, for two minutes to an hour and a half, which the session sees as a slow step.
After some evenings it is written down what the forecast gives for
the hours and the day; she then knits to the end. Printed: hours forecast against hours simulated, whether the day
lay in the 80 % range, and by how much one interrupted step moved the day.

Her hours are those on the sofa: with the two minutes on average between one round and the next (tea, the film),
which come in every round and which she would count, and without the time at the door. A clock from cue to cue
cannot tell such a pause from knitting. The hours of the needles alone stand beside them.
"""

from __future__ import annotations

import argparse
import statistics
import sys
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from random import Random

from stepper.craft.pace_by_kind import KnittingKind
from stepper.session.pace.outlook import look_ahead
from stepper.session.state import TimedStep
from tests.session.knitters import FIRST_DAY, TEMPERAMENTS, Days, Knitter
from tests.session.pace.test_outlook import BLANKET, ROUNDS

ASKED_AFTER = (1, 2, 4, 8, 14, 20)
"""Evenings after which the forecast is asked."""
INTERRUPTED = 1 / 8
"""Share of steps in which she is called away."""


class CalledAway(Knitter):
    """A knitter whose doorbell rings."""

    away_s: float = 0.0
    """Of the step in hand. Unit: s."""
    late_s: float = 0.0
    """Of this evening so far. Unit: s."""
    knitted_s: float = 0.0
    """With the needles in motion. Unit: s."""
    sofa_s: float = 0.0
    """The same with the tea and the film between rounds, as she would count her hours. Unit: s."""
    since: str = ""
    """When the step in hand was begun, by a clock without a door."""

    def work_on(self, left):
        origin, work, stitches, seconds = super().work_on(left)
        self.knitted_s += seconds
        if self.random.random() < INTERRUPTED:
            self.away_s = self.random.uniform(120, 5400)
        return origin, work, stitches, seconds

    def tell_step(self, at, origin, stitches, work):
        self.sofa_s += (datetime.fromisoformat(at) - datetime.fromisoformat(self.since)).total_seconds()
        self.since = at
        # The evening's minutes are knitting; the door only moves the clock.
        self.late_s += self.away_s
        self.away_s = 0.0
        super().tell_step(_later(at, self.late_s), origin, stitches, work)

    def evening(self, *, told: bool = True) -> None:
        self.late_s = 0.0
        self.since = self.now.isoformat()
        super().evening(told=told)


def _later(at: str, seconds: float) -> str:
    return (datetime.fromisoformat(at) + timedelta(seconds=seconds)).isoformat()


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked:
    """What was foretold after an evening, and what came of it."""

    evenings: int
    forecast_h: float
    sofa_s: float
    knitted_s: float
    likely: str
    early: str
    late: str | None
    moved: int
    """Days by which one more interrupted step moved the likely day, the most of four."""


def moved_by_one_step(knitter: Knitter) -> int:
    """Interrupt one step more, in four ways; return the most days by which the likely day moves."""
    now = knitter.now.isoformat()
    before = look_ahead(BLANKET, knitter.state, now).likely
    most = 0
    for stitches, seconds in ((3, 75.0), (1, 3600.0), (40, 5400.0), (360, 9000.0)):
        step = TimedStep(stitches=stitches, seconds=seconds, work=KnittingKind.PLAIN)
        state = replace(knitter.state, worked=(*knitter.state.worked, step))
        after = look_ahead(BLANKET, state, now).likely
        if before is not None and after is not None:
            most = max(most, abs((date.fromisoformat(after) - date.fromisoformat(before)).days))
    return most


def knit(days: Days, seed: str) -> tuple[CalledAway, list[Asked]]:
    """Knit a blanket to its end; return the knitter and what was foretold on the way."""
    random = Random(seed)
    knitter = CalledAway(ROUNDS, random, days(random))
    asked = []
    evenings = 0
    while not knitter.done:
        stood = len(knitter.state.days)
        knitter.evening()
        evenings += len(knitter.state.days) > stood
        if evenings in ASKED_AFTER and len(knitter.state.days) > stood and not knitter.done:
            seen = look_ahead(BLANKET, knitter.state, knitter.now.isoformat())
            assert seen.likely is not None
            assert seen.early is not None
            asked.append(
                Asked(
                    evenings=evenings,
                    forecast_h=seen.seconds_left / 3600,
                    sofa_s=knitter.sofa_s,
                    knitted_s=knitter.knitted_s,
                    likely=seen.likely,
                    early=seen.early,
                    late=seen.late,
                    moved=moved_by_one_step(knitter),
                )
            )
    return knitter, asked


def lines(seed: int) -> Iterator[str]:
    """Yield the table of six, then the shares of many."""
    head = f"{'knitter':14} {'evenings':>8} {'hours left: forecast':>21} {'simulated':>10} {'needles alone':>14}"
    yield f"{head} {'one step moves':>15}"
    for days in TEMPERAMENTS:
        knitter, asked = knit(days, f"{seed} {days.__name__}")
        for each in asked:
            hours = (knitter.sofa_s - each.sofa_s) / 3600
            needles = (knitter.knitted_s - each.knitted_s) / 3600
            first = days.__name__ if each is asked[0] else ""
            moved = f"{each.moved} days"
            line = f"{first:14} {each.evenings:8} {each.forecast_h:21.1f} {hours:10.1f} {needles:14.1f}"
            yield f"{line} {moved:>15}"


def many(seed: int, each: int) -> Iterator[str]:
    """Yield how often the day lay in the range, and how far off the hours were, over many interrupted knitters."""
    inside = asked_in_all = 0
    off: list[float] = []
    needles: list[float] = []
    most = 0
    for days in TEMPERAMENTS:
        for number in range(each):
            knitter, asked = knit(days, f"{seed} {days.__name__} {number}")
            finished = date.fromordinal(FIRST_DAY.date().toordinal() + knitter.day - 1).isoformat()
            most = max([most, *(one.moved for one in asked)])
            for one in asked:
                off.append(one.forecast_h * 3600 / (knitter.sofa_s - one.sofa_s) - 1)
                needles.append(one.forecast_h * 3600 / (knitter.knitted_s - one.knitted_s) - 1)
            settled = [one for one in asked if one.evenings >= 8 and one.late is not None]
            print(".", end="", flush=True, file=sys.stderr)
            if settled:  # each knitter once
                one = settled[number % len(settled)]
                inside += one.early <= finished <= (one.late or "")
                asked_in_all += 1
    ordered = sorted(abs(one) for one in off)
    yield f"finish inside the 80 % range: {100 * inside / asked_in_all:.1f} of 100 ({asked_in_all} interrupted knitters)"
    yield (
        f"hours forecast against simulated: median {100 * statistics.median(off):+.0f} %, off by "
        f"{100 * statistics.median(ordered):.0f} % in the median, {100 * ordered[round(0.95 * (len(ordered) - 1))]:.0f} % in 95 of 100"
    )
    yield f"against the needles alone: median {100 * statistics.median(needles):+.0f} %"
    yield f"one interrupted step moved the day by {most} at most"


def main() -> None:
    """Print the figures."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--seed", type=int, default=1974)
    parser.add_argument("--each", type=int, default=20, help="knitters of each temperament for the shares")
    options = parser.parse_args()
    for line in lines(options.seed):
        print(line, flush=True)
    for line in many(options.seed, options.each):
        print(line, flush=True)


if __name__ == "__main__":
    main()
