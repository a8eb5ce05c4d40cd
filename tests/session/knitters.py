"""Simulated knitters with several temperaments: whole evenings, told to the session as events with times.

Invented for these tests; nothing of it is taken from the forecast. A knitter has a speed of her own for each
kind of knitting, rounds that vary, pauses between rounds, and days that follow her temperament.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from datetime import datetime, timedelta, timezone
from random import Random

from stepper.plan.kinds import kind_of
from stepper.plan.model import Plan
from stepper.session.events import Advanced, Closed, Event, Opened, Placed
from stepper.session.evolve import evolve
from stepper.session.state import Position, State

ZONE = timezone(timedelta(hours=1))
FIRST_DAY = datetime(2026, 1, 5, 20, 0, tzinfo=ZONE)

Days = Callable[[Random], Iterator[float]]
"""Minutes of knitting of each day, from the first on, for ever."""


def steady(random: Random) -> Iterator[float]:
    """Every evening, much the same."""
    while True:
        yield random.lognormvariate(math.log(70), 0.45)


def most_evenings(random: Random) -> Iterator[float]:
    """Three evenings in five, short or long."""
    while True:
        yield random.gammavariate(2, 40) if random.random() < 0.6 else 0.0


def weekends(random: Random) -> Iterator[float]:
    """Saturday and Sunday, seldom a little between."""
    weekday = random.randrange(7)
    while True:
        weekday = (weekday + 1) % 7
        if weekday >= 5:
            yield random.uniform(90, 240)
        else:
            yield random.uniform(15, 45) if random.random() < 0.2 else 0.0


def film_nights(random: Random) -> Iterator[float]:
    """Two films a week, and now and then half an hour."""
    weekday = random.randrange(7)
    while True:
        weekday = (weekday + 1) % 7
        if weekday in (1, 4) and random.random() < 0.85:
            yield 110 * random.lognormvariate(0, 0.15)
        else:
            yield random.uniform(20, 50) if random.random() < 0.3 else 0.0


def spells(random: Random) -> Iterator[float]:
    """A week at it, then days of nothing."""
    at_it = random.random() < 0.67
    while True:
        if random.random() < (1 / 8 if at_it else 1 / 4):
            at_it = not at_it
        yield random.gammavariate(3, 25) if at_it else 0.0


def cooling(random: Random) -> Iterator[float]:
    """Keen at first, a little less every day."""
    share = 1.0
    while True:
        share *= 0.993
        yield share * random.gammavariate(2, 45) if random.random() < 0.7 else 0.0


TEMPERAMENTS: tuple[Days, ...] = (steady, most_evenings, weekends, film_nights, spells, cooling)


Rounds = tuple[tuple[str, int], ...]
"""Kind and stitches of each round of a plan."""


def rounds_of(plan: Plan) -> Rounds:
    """Return what a knitter needs to know of a plan."""
    return tuple((kind_of(each), each.progress) for each in plan.rounds)


@dataclass
class Knitter:
    """Knits a plan, evening by evening, and tells the session what it would be told."""

    rounds: Rounds
    random: Random
    days: Iterator[float]
    state: State = field(default_factory=State)
    day: int = 0
    """Days gone by."""

    def __post_init__(self) -> None:
        self.tempo = self.random.uniform(0.8, 1.5)
        # Her own speeds, not the usual ones. Unit: s for a stitch.
        self.each = {
            kind: 2.0 * slower * self.random.uniform(0.85, 1.2) / self.tempo
            for kind, slower in {
                "plain": 1, "rib": 1.25, "texture": 1.4, "colourwork": 1.6, "edge": 1.5
            }.items()
        }  # fmt: skip
        self.index = self.stitch = 0

    @property
    def done(self) -> bool:
        """Whether the last stitch is worked."""
        return self.index >= len(self.rounds)

    @property
    def now(self) -> datetime:
        """Eight in the evening of this day."""
        return FIRST_DAY + timedelta(days=self.day)

    def evening(self, *, told: bool = True) -> None:
        """Knit for as long as this day brings, and go to bed."""
        minutes, clock = next(self.days), self.now
        self.day += 1
        if minutes < 1 or self.done:
            return
        left = 60 * minutes
        if told:
            self._tell(Opened(at=clock.isoformat(), fingerprint="a"))
        while left > 0 and not self.done:
            origin, work, stitches, seconds = self.work_on(left)
            left -= seconds
            # The door, the tea, the film: pauses take time and bring nothing.
            clock += timedelta(seconds=seconds + (self.random.expovariate(1 / 120)))
            if told:
                self.tell_step(clock.isoformat(), origin, stitches, work)
        if told:
            self._tell(Closed(at=clock.isoformat(), place=self._place()))

    def work_on(self, left: float) -> tuple[Position, str, int, float]:
        """Work to the end of the round, or for as long as is left."""
        origin, (work, stitches) = self._place(), self.rounds[self.index]
        each = self.each[work] * self.random.lognormvariate(0, 0.08)
        stitches -= self.stitch
        if stitches * each > left:
            stitches = int(left / each)
            self.stitch += stitches
            return origin, work, stitches, max(left, 1.0)
        self.index, self.stitch = self.index + 1, 0
        return origin, work, stitches, stitches * each

    def tell_step(self, at: str, origin: Position, stitches: int, work: str) -> None:
        """Tell the session of a step."""
        kind: type[Advanced | Placed] = Placed if self.stitch else Advanced
        if stitches:
            self._tell(kind(at=at, origin=origin, place=self._place(), stitches=stitches, work=work))

    def _place(self) -> Position:
        return Position(index=self.index, stitch=self.stitch)

    def _tell(self, event: Event) -> None:
        self.state = evolve(self.state, event)
