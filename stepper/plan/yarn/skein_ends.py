"""Where one skein of a yarn ends and the next is taken up, by what the rounds take. No I/O.

By the label alone, or from a weighed ball on, corrected by what her own knitting took. Nothing is said of a
yarn whose skein the file does not describe, nor without a gauge.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache
from itertools import accumulate

from stepper.plan.materials import Stock
from stepper.plan.model import Plan
from stepper.plan.same_plan import SamePlan
from stepper.plan.yarn.worked_twice import with_second_pieces
from stepper.plan.yarn.yarn_left import LABEL_OFF, Weighing, forecast
from stepper.plan.yarn.yarn_use import Amount, yarn_use
from stepper.records import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class SkeinEnd:
    """The end of a skein while there is still something to knit in its yarn."""

    yarn: str
    """Key of the yarn."""
    soonest: int
    """Index of the round in which it ends if the skein is a twentieth short."""
    likely: int
    """Index of the round in which it ends by the label; never before `soonest`."""
    more: bool
    """Whether another skein lies there, or the file does not say how many were bought."""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Balls:
    """What there is of a yarn from a place on, ball by ball."""

    first_m: float
    """The ball in hand. Unit: m."""
    each_m: float
    """Every further skein. Unit: m."""
    further: float | None
    """How many there are; None if the file does not say. Unit: skeins."""


@lru_cache(maxsize=4)
def _uses(same: SamePlan) -> tuple[dict[str, Amount], ...]:
    return with_second_pieces(same.plan, yarn_use(same.plan))


def find_skein_ends(plan: Plan, yarn: str, weighing: Weighing | None = None) -> tuple[SkeinEnd, ...]:
    """Find where the skeins of a yarn end.

    Args:
        plan: The plan as knitted.
        yarn: Key of the yarn.
        weighing: The last one of this yarn, if there is one; ends before it are not looked for.

    Returns:
        In the order of the rounds, up to the last skein there is; none for the one that the garment ends in.
    """
    return _skein_ends(SamePlan(plan), yarn, weighing)


@lru_cache(maxsize=64)
def _skein_ends(same: SamePlan, yarn: str, weighing: Weighing | None) -> tuple[SkeinEnd, ...]:
    plan, stock = same.plan, same.plan.materials.stocks.get(yarn)
    if stock is None:
        return ()
    uses = _uses(same)
    metres = [use[yarn].likely_mm / 1000 if yarn in use else 0.0 for use in uses]
    if weighing is None:
        further = None if stock.bought is None else stock.bought - 1
        balls = _Balls(first_m=stock.skein.metres, each_m=stock.skein.metres, further=further)
        return tuple(_ends(yarn, balls, list(accumulate(metres)), 0))
    found = forecast(plan, yarn, weighing, uses)
    if found is None or weighing.index >= len(metres):
        return ()
    begun = min(1.0, weighing.stitch / (plan.rounds[weighing.index].progress or 1))
    ahead = [found.factor * each for each in metres[weighing.index :]]
    ahead[0] *= 1 - begun
    balls = _weighed(stock, weighing.grams, found.beside)
    return tuple(_ends(yarn, balls, list(accumulate(ahead)), weighing.index))


def _weighed(stock: Stock, grams: float, beside: int) -> _Balls:
    """Part what was weighed into the ball in hand and whole skeins."""
    whole, in_hand = 0, grams
    if grams > stock.skein.grams * (1 + LABEL_OFF):  # all there is
        whole, in_hand = int(grams // stock.skein.grams), grams % stock.skein.grams
    further = None if stock.bought is None else float(whole + beside)
    return _Balls(first_m=stock.skein.metres_in(in_hand), each_m=stock.skein.metres, further=further)


def _ends(yarn: str, balls: _Balls, taken: list[float], first: int) -> Iterator[SkeinEnd]:
    """Follow the yarn through the rounds.

    Args:
        yarn: Its key.
        balls: What there is of it before the round `first`.
        taken: What that round and those after it take, added up. Unit: m.
        first: Index of that round.
    """
    number, end_m, last_m = 0, balls.first_m, balls.first_m
    while taken and taken[-1] > end_m:
        soonest = next(at for at, much in enumerate(taken) if much > end_m - LABEL_OFF * last_m)
        likely = next(at for at, much in enumerate(taken) if much > end_m)
        more = balls.further is None or number < balls.further
        yield SkeinEnd(yarn=yarn, soonest=first + soonest, likely=first + likely, more=more)
        if not more:
            return
        left = 1.0 if balls.further is None else min(1.0, balls.further - number)
        number, last_m = number + 1, left * balls.each_m
        end_m += last_m
