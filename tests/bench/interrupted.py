"""Hours that are left, forecast and simulated, for six knitters whose doorbell rings. Passes no judgement.

    python -m tests.bench.interrupted [--seed N] [--each N]

Each knitter (`tests.session.knitters`: her own speed, evenings and pauses, none of it known to the forecast) is
interrupted in one step in eight, for two minutes to an hour and a half, which the session sees as a slow step.
After some evenings it is written down what the forecast gives for
the hours and the day; she then knits to the end. Printed: hours forecast against hours simulated, whether the day
lay in the 80 % range, and by how much one interrupted step moved the day.
"""

from __future__ import annotations

import argparse
import statistics
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

    def work_on(self, left):
        origin, work, stitches, seconds = super().work_on(left)
        self.knitted_s += seconds
        if self.random.random() < INTERRUPTED:
            self.away_s = self.random.uniform(120, 5400)
        return origin, work, stitches, seconds

    def tell_step(self, at, origin, stitches, work):
        # The evening's minutes are knitting; the door only moves the clock.
        self.late_s += self.away_s
        self.away_s = 0.0
        super().tell_step(_later(at, self.late_s), origin, stitches, work)

    def evening(self, *, told: bool = True) -> None:
        self.late_s = 0.0
        super().evening(told=told)


def _later(at: str, seconds: float) -> str:
    return (datetime.fromisoformat(at) + timedelta(seconds=seconds)).isoformat()


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked:
    """What was foretold after an evening, and what came of it."""

    evenings: int
    forecast_h: float
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
    yield f"{'knitter':14} {'evenings':>8} {'hours left: forecast':>21} {'simulated':>10} {'one step moves':>15}"
    for days in TEMPERAMENTS:
        knitter, asked = knit(days, f"{seed} {days.__name__}")
        for each in asked:
            hours = (knitter.knitted_s - each.knitted_s) / 3600
            first = days.__name__ if each is asked[0] else ""
            moved = f"{each.moved} days"
            yield f"{first:14} {each.evenings:8} {each.forecast_h:21.1f} {hours:10.1f} {moved:>15}"


def many(seed: int, each: int) -> Iterator[str]:
    """Yield how often the day lay in the range, and how far off the hours were, over many interrupted knitters."""
    inside = asked_in_all = 0
    off: list[float] = []
    most = 0
    for days in TEMPERAMENTS:
        for number in range(each):
            knitter, asked = knit(days, f"{seed} {days.__name__} {number}")
            finished = date.fromordinal(FIRST_DAY.date().toordinal() + knitter.day - 1).isoformat()
            most = max([most, *(one.moved for one in asked)])
            for one in asked:
                hours = (knitter.knitted_s - one.knitted_s) / 3600
                off.append(one.forecast_h / hours - 1)
            settled = [one for one in asked if one.evenings >= 8 and one.late is not None]
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
    yield f"one interrupted step moved the day by {most} at most"


def main() -> None:
    """Print the figures."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--seed", type=int, default=1974)
    parser.add_argument("--each", type=int, default=20, help="knitters of each temperament for the shares")
    options = parser.parse_args()
    print(*lines(options.seed), sep="\n")
    print(*many(options.seed, options.each), sep="\n")


if __name__ == "__main__":
    main()
