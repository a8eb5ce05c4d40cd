from __future__ import annotations

import pytest
from scipy.optimize import minimize_scalar  # type: ignore[import-untyped] # scipy brings no types

from stepper.commands.loading import load
from stepper.craft.counting import count_interval, learned_fault_rate, overhead
from stepper.session.checking import costs, due, lifeline_before, locks, stitches_per_minute
from stepper.session.events import Advanced, Counted, Noted
from stepper.session.evolve import evolve_all
from stepper.session.state import Asking, Knitting, Place, State, Verified
from tests.bench.counts import SAMPLE, compare
from tests.plans import final_increase, plan

LONG = plan(("body", ["co200", *["k200"] * 40, "bo200"]))


def _state(asking: Asking, done: int, verified: int = 0) -> State:
    last = Verified(place=Place(index=verified), stitches=200)
    return State(knitting=Knitting(place=Place(index=done + 1), asking=asking, verified=last))


@pytest.mark.parametrize("stitches", [40, 80, 156, 246, 400])
def test_the_interval_costs_least(stitches: int) -> None:
    """Against a numeric optimum by scipy: counting there costs no more than half a percent above the
    least."""
    hers = costs()
    best = minimize_scalar(lambda work: overhead(work, stitches, hers), bounds=(1, 60000), method="bounded")
    assert overhead(count_interval(stitches, hers), stitches, hers) <= 1.005 * best.fun


def test_ask_more_asks_where_a_count_pays() -> None:
    """Between the checkpoints of the plan, about as far apart as the interval says."""
    asked = [done for done in range(1, 40) if due(LONG, _state(Asking.MORE, done), done)]
    apart = count_interval(200, costs()) / 200
    assert len(asked) == pytest.approx(39 / apart, abs=1.5)


def test_the_more_faults_the_more_counts() -> None:
    """What her own counts found is learned from."""
    assert count_interval(200, costs(faults=20, stitches=20000)) < count_interval(
        200, costs(faults=1, stitches=20000)
    )


def test_ask_less_asks_only_where_a_fault_is_locked_in() -> None:
    """Before the bind-off, and nowhere in the plain body."""
    asked = [done for done in range(41) if due(LONG, _state(Asking.LESS, done), done)]
    assert asked == [40]


def test_never_is_never() -> None:
    """Whoever does not want to be asked is not."""
    garment = final_increase()
    assert not any(due(garment, _state(Asking.NEVER, done), done) for done in range(len(garment.rounds)))


def test_the_pattern_is_asked_by_as_before() -> None:
    """Unless she says otherwise, the checkpoints of the plan and no others."""
    garment = final_increase()
    for round_ in garment.rounds:
        reason = due(garment, _state(Asking.PATTERN, round_.index), round_.index)
        assert reason == (round_.checkpoint.reason if round_.checkpoint else None)


def test_what_locks_a_fault_in_is_named() -> None:
    """Shaping, a chart, a division, a bind-off."""
    garment = final_increase().rounds
    assert locks(garment[2], garment[3]) == "before the shaping"
    assert locks(garment[3], garment[4]) == "before chart cairn"
    assert locks(garment[6], garment[7]) == "before the division"
    assert locks(garment[-2], garment[-1]) == "before a bind-off"
    assert locks(garment[8], garment[9]) is None


def test_a_lifeline_is_suggested_before_lace_once() -> None:
    """And not again when it is in."""
    lace = plan(("shawl", ["co40", "k40", "(k2 yo k2tog)x10"]))
    assert lifeline_before(lace, _state(Asking.PATTERN, 1), 1)
    laid = State(knitting=Knitting(place=Place(index=2), lifelines=(Place(index=2),)))
    assert not lifeline_before(lace, laid, 1)
    assert not lifeline_before(lace, _state(Asking.PATTERN, 0), 0)


def test_counting_by_cost_loses_least_time() -> None:
    """Over forty sweaters with seeded faults, against no checking, each round and each shaped round."""
    garment = load(SAMPLE).plan
    tolls = compare(garment, 40, learned_fault_rate(0, 0))
    hours = {way: toll.hours(costs()) for way, toll in tolls.items()}

    assert min(hours, key=lambda way: hours[way]) == "by cost"
    assert tolls["by cost"].counted < tolls["each round"].counted
    assert tolls["by cost"].ripped < tolls["each shaped round"].ripped


def test_pace_and_faults_are_learned_from_what_she_does() -> None:
    """Sixty stitches in a minute are her pace; a count that was off is a fault in what it covered."""
    events = (
        Noted(at="2025-03-03T20:00:00+01:00", place=Place(), text="begin"),
        Advanced(at="2025-03-03T20:01:00+01:00", origin=Place(), place=Place(index=1), stitches=60),
        Counted(
            at="2025-03-03T20:02:00+01:00", place=Place(index=1), stitches=59, expected=60, expected_end=60
        ),
    )
    state = evolve_all(State(), events)

    assert stitches_per_minute(State()) == 30
    assert stitches_per_minute(state) == 60
    assert (state.faults, state.covered, state.uncounted) == (1, 60, 0)
