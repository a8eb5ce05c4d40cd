"""When the garment will be done, and how much an evening or a film brings, from plan and state. Pure.

Days are measured in minutes of knitting at her present pace, not in stitches, so that an evening of rib and
one of colourwork count for the time they took. The day of the question is the first of the days to come, and
what was already knitted on it counts as still to do, because half an evening says nothing about a whole one.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import date, timedelta
from functools import lru_cache
from typing import Final

from stepper.craft.finish import forecast_finish
from stepper.craft.pace import TimedStretch
from stepper.craft.pace_by_kind import KnittingKind, PaceByKind, measure_pace_by_kind
from stepper.plan.kinds import kind_of
from stepper.plan.model import Plan, Round
from stepper.plan.same_plan import SamePlan
from stepper.records import dataclass
from stepper.session.pace.learning import evening_of
from stepper.session.state import Day, Position, State, TimedStep

FILM_S: Final = 7200.0
"""A film of two hours. Unit: s."""
USUAL_WEEK_MIN: Final = (60.0, 60.0, 0.0, 60.0, 60.0, 0.0, 60.0)
"""The week assumed before any is known: an hour on five evenings of seven. An assumption without a source,
and reported as one. Unit: minutes of knitting."""
DAYS_LOOKED_AT: Final = 56
"""How many days back the forecast looks: how she knitted last year says little about now.
Unit: days."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Outlook:
    """What is ahead, in time."""

    paces: PaceByKind
    today: str | None
    """Day of the question, ISO 8601; None if its time is not known."""
    seconds_left: float
    """Knitting time of what is left, breaks left out; the moments between rounds, which come in every one of
    them, are part of it. Unit: s."""
    likely: str | None
    """Day to be done, ISO 8601; None if nothing is left or the time of asking is not known."""
    early: str | None
    """One chance in ten of being done by then."""
    late: str | None
    """Nine chances in ten of being done by then; None if the days are too few or too uneven to say."""
    assumed_days: int
    """Number of days of the usual week used for days not yet known. Range: 0 to 7."""
    finish_by: str | None
    """Day to be done by, from the project file, ISO 8601."""
    evenings: int | None
    """Evenings up to that day, including this one and that one; 0 if it has passed."""
    rounds_each: int | None
    """Rounds to knit on each of those evenings; None if the day has passed."""
    seconds_each: float | None
    """Knitting time needed on each of those evenings, breaks left out. Unit: s."""
    film_rounds: int
    """Rounds finished in a two-hour film from here, including the current one."""
    film_to: Position
    """Where such a film ends."""


def paces_of(state: State) -> PaceByKind:
    """Measure her pace by kind from the steps so far."""
    return _paces(state.worked)


@lru_cache(maxsize=2)
def _paces(worked: tuple[TimedStep, ...]) -> PaceByKind:
    """Return the pace that some steps show; kept, since the screen asks more than once with each step."""
    steps: dict[KnittingKind, list[TimedStretch]] = {}
    for each in worked:
        steps.setdefault(each.work, []).append(TimedStretch(stitches=each.stitches, seconds=each.seconds))
    return measure_pace_by_kind(steps)


def work_until(plan: Plan, place: Position, end: int) -> dict[KnittingKind, int]:
    """Return the stitches by kind from a place up to a round, which the screen asks with every step.

    Args:
        plan: The plan as knitted.
        place: Where the knitting stands.
        end: Index of the first round that is not counted.
    """
    if place.index >= end:
        return {}
    ahead, behind = (_work_from(SamePlan(plan))[index] for index in (place.index, end))
    left = {kind: count - behind.get(kind, 0) for kind, count in ahead.items()}
    round_ = plan.rounds[place.index]
    left[kind_of(round_)] -= _worked_of(round_, place)
    return left


@lru_cache(maxsize=4)
def _work_from(same: SamePlan) -> tuple[Mapping[KnittingKind, int], ...]:
    """Return the stitches by kind from the beginning of each round to the end, and none behind the last."""
    tables: list[dict[KnittingKind, int]] = [{}]
    for round_ in reversed(same.plan.rounds):
        kind, behind = kind_of(round_), tables[-1]
        tables.append({**behind, kind: behind.get(kind, 0) + round_.progress})
    return tuple(reversed(tables))


def work_in(rounds: Iterable[Round], place: Position) -> dict[KnittingKind, int]:
    """Return the stitches by kind of some rounds, without those of the round in hand that are worked.

    Args:
        rounds: None of them done.
        place: Where the knitting stands.
    """
    left: dict[KnittingKind, int] = {}
    for round_ in rounds:
        kind = kind_of(round_)
        left[kind] = left.get(kind, 0) + round_.progress
        if round_.index == place.index:
            left[kind] -= _worked_of(round_, place)
    return left


def _worked_of(round_: Round, place: Position) -> int:
    """Return the stitches worked of the round in hand, which a wrong count can say to be more than it has."""
    return min(place.stitch, round_.progress)


def look_ahead(plan: Plan, state: State, at: str) -> Outlook:
    """Look ahead.

    Args:
        plan: The plan as knitted.
        state: Where the session stands.
        at: Now. ISO 8601; if it is not a time, no day is predicted.
    """
    paces, today = paces_of(state), _day(evening_of(at))
    left = paces.seconds_for(work_until(plan, state.place, len(plan.rounds)))
    likely, early, late, assumed = _finish(state.days, paces, left, today)
    evenings = _evenings(plan.finish_by, today)
    rounds_left = max(0, len(plan.rounds) - state.place.index)
    film_rounds, film_to = _film(plan, state.place, paces)
    return Outlook(
        paces=paces,
        today=None if today is None else today.isoformat(),
        seconds_left=left,
        likely=likely,
        early=early,
        late=late,
        assumed_days=assumed,
        finish_by=plan.finish_by,
        evenings=evenings,
        rounds_each=-(-rounds_left // evenings) if evenings else None,
        seconds_each=left / evenings if evenings else None,
        film_rounds=film_rounds,
        film_to=film_to,
    )


def _finish(
    days: Sequence[Day], paces: PaceByKind, left: float, today: date | None
) -> tuple[str | None, str | None, str | None, int]:
    """Predict the day: likely, early, late, and how many days of the usual week were assumed."""
    if today is None or not left:
        return None, None, None, 0
    minutes = {day.date: paces.seconds_for(stitches_by_kind(day)) / 60 for day in days}
    before = sorted(each for each in minutes if each < today.isoformat())
    seen: list[float] = []
    if before:
        first = max(date.fromisoformat(before[0]), today - timedelta(days=DAYS_LOOKED_AT))
        span = (today - first).days
        seen = [minutes.get((first + timedelta(days=each)).isoformat(), 0.0) for each in range(span)]
    seen = seen if any(seen) else []
    assumed = max(0, len(USUAL_WEEK_MIN) - len(seen))
    done_today = minutes.get(today.isoformat(), 0.0)
    forecast = forecast_finish(left / 60 + done_today, [*USUAL_WEEK_MIN[:assumed], *seen])
    assert forecast is not None  # a usual week or a day with knitting is always among them

    def on(number: int) -> str:
        return (today + timedelta(days=number - 1)).isoformat()

    late = None if forecast.late_days is None else on(forecast.late_days)
    return on(forecast.likely_days), on(forecast.early_days), late, assumed


def stitches_by_kind(day: Day) -> Mapping[KnittingKind, float]:
    """Return what a day added to the garment, by kind of knitting. Unit: stitches."""
    return {each.work: each.stitches for each in day.done}


def _evenings(finish_by: str | None, today: date | None) -> int | None:
    due = _day(finish_by or "")
    if due is None or today is None:
        return None
    return max(0, (due - today).days + 1)


def _day(text: str) -> date | None:
    try:
        return date.fromisoformat(text)
    except ValueError:
        return None


def _film(plan: Plan, place: Position, paces: PaceByKind) -> tuple[int, Position]:
    """Knit on for the length of a film: return the rounds finished and the place reached."""
    left, rounds, stitch = FILM_S, 0, place.stitch
    for round_ in plan.rounds[place.index :]:
        pace = paces.of(kind_of(round_))
        needed = pace.seconds_for(max(0, round_.progress - stitch))
        if needed > left:
            return rounds, Position(
                index=round_.index, stitch=stitch + int(left * pace.stitches_per_minute / 60)
            )
        left, rounds, stitch = left - needed, rounds + 1, 0
    return rounds, Position(index=len(plan.rounds))
