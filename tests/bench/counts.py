"""Ten thousand sweaters with seeded faults: stitches counted and ripped under several ways of asking.

Prints figures; fails never. `python -m tests.bench.counts [sweaters]`.

Faults come at the rate the program assumes, at a third of it and at three times it. "as set out" asks by the
assumed rate all along, which is its case before anything is learned; "rate known" asks by the true one, which
is its case once many counts are made. What is asked when is the program's own rule (`due`), each count taken
to be made. A fault stays until the next count finds it; then the work is ripped back to it and knitted again,
faults and all. Whoever never counts finds it at the end of a section, where nothing comes out any more.
"""

from __future__ import annotations

import random
import sys
from dataclasses import dataclass
from pathlib import Path

from stepper.sitting.project_file import load_project
from stepper.craft.counting import CountCosts, learned_fault_rate
from stepper.plan.model import Plan
from stepper.session.counting.count_timing import price_counting, why_count
from stepper.session.state import Asking, Knitting, Position, State, Verified

SAMPLE = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"
WAYS = (
    "never",
    "each round",
    "each shaped round",
    "by cost, as set out",
    "by cost, rate known",
    "ask more",
    "ask less",
)
ASKING = {"ask more": Asking.MORE, "ask less": Asking.LESS}
MANY = 10_000_000
"""Stitches counted by someone whose rate is known."""


@dataclass
class Toll:
    """What a way of asking costs."""

    counted: int = 0
    ripped: int = 0
    sweaters: int = 0

    def hours(self, rates: CountCosts) -> float:
        """Give the time lost for each sweater. Unit: h."""
        return (self.counted * rates.count_s + self.ripped * rates.redo_s) / 3600 / max(1, self.sweaters)


def places(garment: Plan, way: str, rate: float) -> tuple[bool, ...]:
    """Tell after which rounds is counted; the end of a section always shows a fault."""
    found, last_good = [], 0
    known = {"faults": round(MANY * rate), "covered": MANY} if way == "by cost, rate known" else {}
    for done, round_ in enumerate(garment.rounds):
        ahead = garment.rounds[done + 1] if done + 1 < len(garment.rounds) else None
        last = ahead is None or ahead.section != round_.section
        count = way == "each round" or (way == "each shaped round" and bool(round_.shaping))
        if way in ASKING or way.startswith("by cost"):
            verified = Verified(place=Position(index=last_good), stitches=round_.after)
            asking = ASKING.get(way, Asking.COST)
            place = Position(index=done + 1)
            knitting = Knitting(place=place, asking=asking, verified=verified, **known)
            count = why_count(garment, State(knitting=knitting), done) is not None
        found.append(count or last)
        last_good = done + 1 if count or last else last_good
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
        dice, counts, toll = random.Random(seed), places(garment, way, rate), Toll()
        for _ in range(sweaters):
            knit(rounds, counts, rate, dice, toll)
        tolls[way] = toll
    return tolls


def main() -> None:
    """Print the comparison."""
    sweaters = int(sys.argv[1]) if len(sys.argv) > 1 else 10_000
    assumed, rates = learned_fault_rate(0, 0), price_counting()
    garment = load_project(SAMPLE).plan
    stitches = sum(round_.progress for round_ in garment.rounds)
    for times in (1.0, 1 / 3, 3.0):
        rate = assumed * times
        print(f"{sweaters} sweaters of {stitches} stitches, one fault in {1 / rate:.0f} stitches")
        for way, toll in compare(garment, sweaters, rate).items():
            each = toll.sweaters
            print(
                f"  {way:20} counted {toll.counted / each:8.0f}  ripped {toll.ripped / each:8.0f}  "
                f"hours {toll.hours(rates):6.2f} a sweater"
            )


if __name__ == "__main__":
    main()
