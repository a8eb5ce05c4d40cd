"""Ten thousand sweaters with seeded faults: stitches counted and ripped under four ways of asking.

Prints figures; fails never. `python -m tests.bench.counts [sweaters] [one fault in how many stitches]`.
A fault stays until the next count finds it; then the work is ripped back to it and knitted again, faults and
all. Whoever never counts finds it at the end of a section, where nothing comes out any more.
"""

from __future__ import annotations

import random
import sys
from dataclasses import dataclass
from pathlib import Path

from stepper.commands.loading import load
from stepper.craft.counting import CountCosts, count_interval, learned_fault_rate
from stepper.plan.model import Plan
from stepper.session.checking import costs, locks

SAMPLE = Path(__file__).parents[2] / "sample_projects" / "switchback.yaml"
WAYS = ("never", "each round", "each shaped round", "by cost")


@dataclass
class Toll:
    """What a way of asking costs."""

    counted: int = 0
    ripped: int = 0
    sweaters: int = 0

    def hours(self, rates: CountCosts) -> float:
        """Give the time lost for each sweater. Unit: h."""
        return (self.counted * rates.count_s + self.ripped * rates.redo_s) / 3600 / max(1, self.sweaters)


def places(garment: Plan, way: str) -> tuple[bool, ...]:
    """Tell after which rounds is counted; the end of a section always shows a fault."""
    found, since = [], 0
    for done, round_ in enumerate(garment.rounds):
        ahead = garment.rounds[done + 1] if done + 1 < len(garment.rounds) else None
        last = ahead is None or ahead.section != round_.section
        since += round_.progress
        count = way == "each round" or (way == "each shaped round" and bool(round_.shaping))
        if way == "by cost":
            due = since >= count_interval(max(1, round_.after), costs())
            count = due or (ahead is not None and locks(round_, ahead) is not None)
        found.append(count or last)
        since = 0 if count else since
    return tuple(found)


def knit(
    rounds: tuple[int, ...], counts: tuple[bool, ...], rate: float, dice: random.Random, toll: Toll
) -> None:
    """Knit one sweater; faults come at random, a count finds the first of them."""
    toll.sweaters += 1
    done, since = 0, 0
    fault = dice.expovariate(rate)
    while done < len(rounds):
        since += rounds[done]
        fault -= rounds[done]
        if counts[done]:
            toll.counted += rounds[done]
            while fault < 0:
                # What was knitted since the fault is ripped and knitted again, and may go wrong again.
                lost = min(since, round(-fault))
                toll.ripped += lost
                fault = dice.expovariate(rate) - lost
            since = 0
        done += 1


def compare(garment: Plan, sweaters: int, rate: float, seed: int = 1) -> dict[str, Toll]:
    """Knit many sweaters each way."""
    rounds = tuple(max(round_.progress, 1) for round_ in garment.rounds)
    tolls = {}
    for way in WAYS:
        dice, counts, toll = random.Random(seed), places(garment, way), Toll()
        for _ in range(sweaters):
            knit(rounds, counts, rate, dice, toll)
        tolls[way] = toll
    return tolls


def main() -> None:
    """Print the comparison."""
    sweaters = int(sys.argv[1]) if len(sys.argv) > 1 else 10_000
    rate = 1 / float(sys.argv[2]) if len(sys.argv) > 2 else learned_fault_rate(0, 0)
    rates = costs()
    garment = load(SAMPLE).plan
    print(
        f"{sweaters} sweaters of {sum(r.progress for r in garment.rounds)} stitches, a fault in {1 / rate:.0f}"
    )
    for way, toll in compare(garment, sweaters, rate).items():
        each = toll.sweaters
        print(
            f"{way:18} counted {toll.counted / each:9.0f}  ripped {toll.ripped / each:9.0f}  "
            f"hours {toll.hours(rates):6.2f} a sweater"
        )


if __name__ == "__main__":
    main()
