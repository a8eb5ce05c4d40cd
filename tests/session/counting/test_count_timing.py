from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from itertools import pairwise

import pytest
import scipy  # type: ignore[import-untyped] # scipy brings no types

from stepper.craft.counting import count_interval, learned_fault_rate
from stepper.plan.model import Plan
from stepper.session.counting.count_timing import (
    MORE_SHARE,
    find_lock,
    lifeline_before,
    price_counting,
    stitches_per_minute,
    why_count,
)
from stepper.session.events import Advanced, Counted, Noted
from stepper.session.evolve import evolve_all
from stepper.session.state import Asking, Knitting, Position, State, Verified
from stepper.sitting.project_file import load_project
from tests.bench.counts import SAMPLE, compare
from tests.overhead import overhead
from tests.plans import final_increase, plan

LONG = plan(("body", ["co200", *["k200"] * 40, "bo200"]))


def _state(asking: Asking, done: int, verified: int = 0) -> State:
    last = Verified(place=Position(index=verified), stitches=200)
    return State(knitting=Knitting(place=Position(index=done + 1), asking=asking, verified=last))


@pytest.mark.parametrize("stitches", [40, 80, 156, 246, 400])
def test_the_interval_costs_least(stitches: int) -> None:
    """Against a numeric optimum by scipy: counting there costs no more than half a percent above the
    least."""
    hers = price_counting()
    best = scipy.optimize.minimize_scalar(
        lambda work: overhead(work, stitches, hers), bounds=(1, 60000), method="bounded"
    )
    assert overhead(count_interval(stitches, hers), stitches, hers) <= 1.005 * best.fun


def asked_and_counted(garment: Plan, asking: Asking, rounds: Iterable[int]) -> list[int]:
    """List the rounds after which a count is asked for, each one made and right."""
    asked, verified = [], 0
    for done in rounds:
        if why_count(garment, _state(asking, done, verified), done):
            asked.append(done)
            verified = done + 1
    return asked


@pytest.mark.parametrize(("asking", "share"), [(Asking.COST, 1.0), (Asking.MORE, MORE_SHARE)])
def test_a_count_is_asked_where_it_pays(asking: Asking, share: float) -> None:
    """Between the checkpoints of the plan, about as far apart as the interval says; by default too."""
    asked = asked_and_counted(LONG, asking, range(1, 40))
    apart = share * count_interval(200, price_counting()) / 200
    assert apart <= 39 / len(asked) <= apart + 1


def test_who_does_not_count_is_not_nagged() -> None:
    """Asked again after twice, four times, eight times the interval."""
    asked = [done for done in range(1, 40) if why_count(LONG, _state(Asking.COST, done), done)]
    rounds = count_interval(200, price_counting()) / 200
    assert len(asked) == int(40 / rounds).bit_length()


def test_the_more_faults_the_more_counts() -> None:
    """What her own counts found is learned from."""
    assert count_interval(200, price_counting(faults=20, stitches=20000)) < count_interval(
        200, price_counting(faults=1, stitches=20000)
    )


def test_ask_less_asks_only_where_a_fault_is_locked_in() -> None:
    """Before the bind-off, and nowhere in the plain body."""
    asked = [done for done in range(41) if why_count(LONG, _state(Asking.LESS, done), done)]
    assert asked == [40]


def test_as_the_pattern_does_asks_at_its_checkpoints_and_nowhere_else() -> None:
    """Who wants the pattern's counts gets those: none by cost, none before a shaping it does not mark."""
    for garment in (LONG, final_increase(), load_project(SAMPLE).plan):
        asked = {
            done: found
            for done in range(len(garment.rounds))
            if (found := why_count(garment, _state(Asking.PATTERN, done), done))
        }
        marked = {each.index: each.checkpoint.reason for each in garment.rounds if each.checkpoint}
        assert asked == marked


def test_never_is_never() -> None:
    """Whoever does not want to be asked is not."""
    garment = final_increase()
    assert not any(
        why_count(garment, _state(Asking.NEVER, done), done) for done in range(len(garment.rounds))
    )


def test_what_locks_a_fault_in_is_always_asked_for() -> None:
    """Right after a good count too, when no interval has passed."""
    garment = final_increase()
    for done, reason in {
        0: None,
        2: "before the shaping",
        3: "after the increases",
        6: "before the division",
        7: "after the division",
        21: "before a bind-off",
    }.items():
        found = why_count(garment, _state(Asking.COST, done, verified=max(0, done - 1)), done)
        assert (found or "").startswith(reason or ""), done


def test_a_count_one_plain_round_ago_serves() -> None:
    """Nobody wants to count two hundred stitches twice with one plain round between."""
    garment = final_increase()
    assert why_count(garment, _state(Asking.COST, 2, verified=2), 2) is None
    assert why_count(garment, _state(Asking.LESS, 2, verified=2), 2) is None
    assert why_count(garment, _state(Asking.COST, 2, verified=1), 2) == "before the shaping"
    assert why_count(garment, _state(Asking.LESS, 2, verified=1), 2) == "before the shaping"


def test_before_a_bind_off_too_a_count_one_plain_round_ago_serves_and_one_before_a_rib_does_not() -> None:
    """In a rib a fault shows where it is made, and not in the count of before."""
    rib = plan(("body", ["co200", *["k200"] * 3, "(k2 p2)x50", "bo200"]))
    for asking in (Asking.COST, Asking.LESS, Asking.MORE):
        asked = [why_count(LONG, _state(asking, 40, verified=at), 40) for at in (38, 39, 40)]
        assert asked == ["before a bind-off", "before a bind-off", None]
        assert why_count(rib, _state(asking, 4, verified=4), 4) == "before a bind-off"


def test_a_run_of_shaping_is_asked_for_at_half_the_interval() -> None:
    """In a raglan every round would lock a fault in; a count in each of them would cost more than it saves."""
    rounds = [line for n in range(200, 280, 4) for line in (f"k{n}", f"(k{n // 4} m1)x4")]
    raglan = plan(("yoke", ["co200", *rounds]))
    asked = asked_and_counted(raglan, Asking.COST, range(1, len(raglan.rounds)))
    apart = count_interval(240, price_counting()) / 240
    assert asked[0] == 1, "before the first of them always"
    assert apart / 2 <= len(rounds) / len(asked) <= apart + 1


def test_short_rows_divide_nothing() -> None:
    """Stitches left unworked for a turn stay on the needle."""
    heel = plan(("heel", ["co40", "k30 turn rest10", "rest10 k20 turn rest10", "k40"]))
    assert not any(find_lock(now, ahead) for now, ahead in pairwise(heel.rounds))


def test_what_locks_a_fault_in_is_named() -> None:
    """Shaping, a chart, a division, a bind-off."""
    garment = final_increase().rounds
    assert find_lock(garment[2], garment[3]) == "before the shaping"
    assert find_lock(garment[3], garment[4]) == "before chart cairn"
    assert find_lock(garment[6], garment[7]) == "before the division"
    assert find_lock(garment[-2], garment[-1]) == "before a bind-off"
    assert find_lock(garment[8], garment[9]) is None
    assert find_lock(garment[4], replace(garment[5], chart=None)) is None, (
        "the end of a chart locks nothing in"
    )


def test_a_lifeline_is_suggested_before_lace_once() -> None:
    """And not again when it is in."""
    lace = plan(("shawl", ["co40", "k40", "(k2 yo k2tog)x10"]))
    assert lifeline_before(lace, _state(Asking.COST, 1), 1)
    laid = State(knitting=Knitting(place=Position(index=2), lifelines=(Position(index=2),)))
    assert not lifeline_before(lace, laid, 1)
    assert not lifeline_before(lace, _state(Asking.COST, 0), 0)


def test_lifelines_are_suggested_where_ripping_runs() -> None:
    """Before a chart with the usual asking, not with "less"; in cables again when the last lies far back."""
    garment = final_increase()
    assert lifeline_before(garment, _state(Asking.COST, 3), 3)
    assert not lifeline_before(garment, _state(Asking.LESS, 3), 3)
    assert not lifeline_before(garment, _state(Asking.NEVER, 3), 3)
    cables = [("k4 2/2_rc k32", {"chart": ("rope", 1 + at % 4)}) for at in range(16)]
    rope = plan(("body", ["co40", "k40", *cables]))
    begun = State(knitting=Knitting(place=Position(index=2), lifelines=(Position(index=2),)))
    assert [done for done in range(2, 17) if lifeline_before(rope, begun, done)] == [13]


def test_counting_by_cost_loses_least_time() -> None:
    """Over forty sweaters with seeded faults, against no checking, each round and each shaped round."""
    garment = load_project(SAMPLE).plan
    tolls = compare(garment, 40, learned_fault_rate(0, 0))
    hours = {way: toll.hours(price_counting()) for way, toll in tolls.items()}

    ours = tolls["by cost, as set out"]
    assert hours["by cost, as set out"] < min(
        hours[way] for way in ("never", "each round", "each shaped round", "ask less")
    )
    assert ours.counted < tolls["each round"].counted
    assert ours.ripped < tolls["each shaped round"].ripped


def test_pace_and_faults_are_learned_from_what_she_does() -> None:
    """Sixty stitches in a minute are her pace; a count that was off is a fault in what it covered."""
    events = (
        Noted(at="2025-03-03T20:00:00+01:00", place=Position(), text="begin"),
        Advanced(at="2025-03-03T20:01:00+01:00", origin=Position(), place=Position(index=1), stitches=60),
        Counted(
            at="2025-03-03T20:02:00+01:00", place=Position(index=1), stitches=59, expected=60, expected_end=60
        ),
    )
    state = evolve_all(State(), events)

    assert stitches_per_minute(State()) == 30
    assert stitches_per_minute(state) == 60
    assert (state.knitting.faults, state.knitting.covered, state.knitting.uncounted) == (1, 60, 0)


def test_a_count_falls_due_in_the_round_that_passes_the_interval() -> None:
    """Worked out by hand: 200 stitches take 100 s to count, one in 3,000 goes wrong, a stitch ripped and knitted again
    takes 2.5 s; Young's sqrt(2 C M) is sqrt(2 * 100 * 3000 / 2.5) = 490 stitches, passed in the third round of 200
    after the last count, and again after twice and four times as much."""

    def told(done: int, verified: Position, asking: Asking = Asking.COST) -> str | None:
        good = Verified(place=verified, stitches=200)
        state = State(knitting=Knitting(place=Position(index=done + 1), asking=asking, verified=good))
        return why_count(LONG, state, done)

    counted = Position(index=2)
    assert {done: found for done in range(2, 14) if (found := told(done, counted))} == {
        4: "3 rounds without a count",
        6: "5 rounds without a count",
        11: "10 rounds without a count",
    }
    # A count with 150 stitches of a round worked covers these as well.
    assert [done for done in range(2, 7) if told(done, Position(index=2, stitch=150))] == [5]
    # "Ask more" halves it to 245: passed in the second round, in the third (twice) and in the fifth (four times).
    assert [done for done in range(2, 9) if told(done, counted, Asking.MORE)] == [3, 4, 6]


def test_one_round_of_very_many_stitches_is_a_round_and_not_rounds() -> None:
    """2,000 stitches: sqrt(2 * 1000 * 3000 / 2.5) is 1,549, so each round passes it."""
    shawl = plan(("shawl", ["co2000", "k2000", "k2000", "k2000"]))
    assert why_count(shawl, _state(Asking.COST, 1, verified=1), 1) == "a count pays here"


def test_a_lifeline_in_lace_is_laid_again_after_twelve_rounds() -> None:
    """Before a patterned round, with plain ones between: common practice, every ten to twenty rounds."""
    lace = plan(("shawl", ["co40", "k40", *["(k2 yo k2tog)x10", "k40"] * 10]))
    laid = State(knitting=Knitting(place=Position(index=3), lifelines=(Position(index=2),)))
    assert [done for done in range(2, 21) if lifeline_before(lace, laid, done)] == [13, 15, 17, 19]
    assert [done for done in range(2, 21) if lifeline_before(lace, State(), done)] == []


def test_an_increase_spread_evenly_is_no_beginning_of_a_run_of_shaping() -> None:
    """What comes first of a raglan locks a fault in, whatever was spread over a round before it in the same section;
    inside the run the next shaping does not."""
    yoke = plan(("yoke", ["co40", "(k4 m1)x10", "k50", "(k5 m1)x10"]))
    spread = replace(yoke.rounds[1], evenly=True)
    raglan = replace(yoke, rounds=(yoke.rounds[0], spread, *yoke.rounds[2:]))
    assert why_count(raglan, _state(Asking.LESS, 2), 2) == "before the shaping"
    assert why_count(yoke, _state(Asking.LESS, 2), 2) is None


def test_nothing_is_asked_for_inside_short_rows() -> None:
    """A heel of short rows: its stitches wait on either side, and counting them in the middle tells nothing. The row
    that takes all of them in again is counted as any other."""
    heel = plan(
        (
            "heel",
            ["co40", "k40", "k36 turn rest4", "rest4 p32 turn rest4", "rest4 k28 turn rest8", "k40", "k40"],
        ),
    )
    for asking in (Asking.COST, Asking.MORE, Asking.LESS):
        assert [why_count(heel, _state(asking, done), done) for done in (2, 3)] == [None, None]


def test_in_a_stranded_yoke_a_count_that_costs_more_than_it_saves_is_not_asked_for() -> None:
    """Charts and even increases follow each other every few rounds; a good count less than half an interval back
    serves. `python -m tests.bench.yoke` prints the sum behind each."""
    yoke = load_project(SAMPLE).plan
    first = next(round_.index for round_ in yoke.rounds if round_.chart)
    before = Verified(place=Position(index=first), stitches=yoke.rounds[first].before)
    state = State(knitting=Knitting(place=Position(index=first + 1), verified=before))
    at_once = why_count(yoke, state, first)
    assert at_once is None


def test_the_reason_says_how_many_rounds_went_without_a_count_from_two_on() -> None:
    """ "1 rounds" is said of none. With "ask more" a count falls due after 245 stitches: in the second round of two hundred
    since the last count, and a round of three hundred passes it alone."""

    def told(garment: Plan, done: int, counted: int) -> str | None:
        good = Verified(place=Position(index=counted), stitches=200)
        state = State(knitting=Knitting(place=Position(index=done + 1), asking=Asking.MORE, verified=good))
        return why_count(garment, state, done)

    assert told(LONG, 3, 2) == "2 rounds without a count"
    assert told(LONG, 2, 2) is None
    wide = plan(("body", ["co600", *["k600"] * 9, "bo600"]))
    assert told(wide, 3, 3) == "a count pays here"


def test_shaping_in_the_section_before_does_not_spare_the_count_before_shaping_begins() -> None:
    """A hem that was increased and a yoke that will be are two shapings; the second begins on a count that is known."""
    hem, yoke = ["co40", "k1 m1 k38 m1 k1", "k42"], ["k1 m1 k40 m1 k1", "k44"]
    one = plan(("body", [*hem, *yoke]))
    two = plan(("hem", hem), ("yoke", yoke))
    state = State(knitting=Knitting(place=Position(index=3), asking=Asking.LESS))
    assert (why_count(one, state, 2) is None, why_count(two, state, 2) is None) == (True, False)


def test_the_steps_of_a_shoulder_are_counted_before_the_first_and_not_each_twice() -> None:
    """Six rows that bind off eight stitches each asked seven times, for the same stitches after a row and before the next."""
    shoulder = [f"bo8 k{left}" for left in (72, 64, 56, 48, 40, 32)]
    back = plan(("back", ["co80", *["k80"] * 12, *shoulder, "bo32"]))
    asked = asked_and_counted(back, Asking.COST, range(10, 19))
    assert asked[0] == 12
    assert len(asked) <= 3
    assert find_lock(back.rounds[12], back.rounds[13]) == "before an edge is bound off"
    assert not any(find_lock(now, ahead) for now, ahead in pairwise(back.rounds[13:19]))
    assert find_lock(back.rounds[18], back.rounds[19]) == "before a bind-off"


def test_who_asks_for_less_lays_a_lifeline_before_a_chart_only_if_it_unravels() -> None:
    """After a ribbed round a chart begins: of yarn overs it is lace and runs, of purls it holds. As usual either has one."""
    for chart, runs in (("(yo k2tog)x10", True), ("(k1 p1)x10", False)):
        piece = plan(("cowl", ["co20", "(k1 p1)x10", (chart, {"chart": ("A", 1)}), "k20"]))
        for asking, laid in ((Asking.COST, True), (Asking.LESS, runs), (Asking.NEVER, False)):
            assert lifeline_before(piece, _state(asking, 1), 1) is laid, (chart, asking)


def test_the_next_lifeline_is_suggested_a_dozen_rounds_above_the_last() -> None:
    """By hand: in lace of one chart round the last lies before the round of index 2, so that it pays again from the beginning of
    that of index 14 on, when the one of index 13 is done."""
    lace = plan(("shawl", ["co40", "k40", *[("(k2 yo k2tog)x10", {"chart": ("fern", 1)})] * 16]))
    begun = State(knitting=Knitting(place=Position(index=2), lifelines=(Position(index=2),)))
    assert [done for done in range(2, 17) if lifeline_before(lace, begun, done)] == [13, 14, 15, 16]
