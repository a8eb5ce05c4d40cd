"""The finish forecast against simulated knitters, and its arithmetic by hand."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from random import Random

import pytest

from stepper.craft.pace_by_kind import USUAL_PER_MINUTE, KnittingKind
from stepper.plan.kinds import kind_of
from stepper.plan.model import Plan
from stepper.session.pace.outlook import (
    DAYS_LOOKED_AT,
    FILM_S,
    USUAL_WEEK_MIN,
    look_ahead,
    paces_of,
    work_in,
    work_until,
)
from stepper.session.state import Day, Done, Knitting, Position, State, TimedStep
from tests.plans import plan
from tests.session.knitters import FIRST_DAY, TEMPERAMENTS, Days, Knitter, rounds_of
from tests.tables import each_row

PULLOVER = plan(
    ("neckband", ["co120", *["(k2 p2)x30"] * 12]),
    ("yoke", [*["k120"] * 8, *["(k2 k2:A)x30"] * 40]),
    ("body", [*["k120"] * 190, *["(k2 p2)x30"] * 20, "bo120"]),
)
BLANKET = plan(
    ("border", ["co360", *["k1 (k2 p2)x89 k3"] * 12]),
    ("middle", [*["k360"] * 30, *["(k2 k2:A)x90"] * 50, *["k360"] * 100]),
    ("end", [*["k1 (k2 p2)x89 k3"] * 12, "bo360"]),
)
ROUNDS = rounds_of(BLANKET)
AT = "2026-03-01T20:00:00+01:00"


def with_due(made: Plan, finish_by: str) -> Plan:
    """Return a plan with a day to be done by."""
    return Plan(title=made.title, rounds=made.rounds, yarns=made.yarns, finish_by=finish_by)


def share_inside(days: Days, knitters: int, seed: int) -> tuple[int, int]:
    """Ask each knitter once, some evening; return how many finished inside their range, and how many had one."""
    inside = asked = 0
    for number in range(knitters):
        random = Random(f"{seed} {days.__name__} {number}")
        knitter = Knitter(ROUNDS, random, days(random))
        for _ in range(random.randint(8, 28)):
            knitter.evening()
        if knitter.done:
            continue
        seen = look_ahead(BLANKET, knitter.state, knitter.now.isoformat())
        if seen.late is None:
            continue
        while not knitter.done:
            knitter.evening(told=False)
        finished = date.fromordinal(FIRST_DAY.date().toordinal() + knitter.day - 1).isoformat()
        assert seen.early is not None
        inside += seen.early <= finished <= seen.late
        asked += 1
    return inside, asked


def test_the_true_day_is_in_the_range_about_eight_times_in_ten(capsys: pytest.CaptureFixture[str]) -> None:
    """Six temperaments, each knitter asked once: 75 to 85 in 100 finish inside their 80 % range, and no
    temperament is far from it."""
    found = {days.__name__: share_inside(days, 50, seed=1974) for days in TEMPERAMENTS}
    inside, asked = (sum(each[number] for each in found.values()) for number in (0, 1))
    with capsys.disabled():
        shares = ", ".join(f"{name} {100 * yes / of:.0f}" for name, (yes, of) in found.items())
        print(
            f"\nfinish inside the 80 % range: {100 * inside / asked:.1f} of 100 ({asked} knitters): {shares}"
        )
    assert asked > 280
    assert 75 <= 100 * inside / asked <= 85
    assert all(65 <= 100 * yes / of <= 95 for yes, of in found.values())


def test_a_week_in_a_knitter_is_known_by_her_own_pace() -> None:
    """What the session learned of her speed is her speed, kind by kind, though a pause follows every round."""
    random = Random(5)
    knitter = Knitter(rounds_of(PULLOVER), random, TEMPERAMENTS[0](random))
    for _ in range(12):
        knitter.evening()
    paces = paces_of(knitter.state)
    for kind in ("rib", "colourwork", "plain"):
        # A pause of two minutes after a round of four to six, where it is not a break, is part of her pace.
        assert 0.5 < paces.of(kind).stitches_per_minute * knitter.each[kind] / 60 < 1.05
    assert paces.of("rib").stitches_per_minute > paces.of("colourwork").stitches_per_minute


@each_row("evenings", [0, 1, 2, 5, 12])
@each_row("step", [(3, 75.0), (1, 3600.0), (40, 5400.0), (360, 9000.0)])
def test_one_interrupted_step_moves_the_day_by_two_at_most(evenings: int, step: tuple[int, float]) -> None:
    """The doorbell, the telephone, supper: whatever a step took, whenever it comes. 75 s for three stitches once made
    months of it."""
    random = Random(11)
    knitter = Knitter(ROUNDS, random, TEMPERAMENTS[0](random))
    for _ in range(evenings):
        knitter.evening()
    stitches, seconds = step
    interrupted = TimedStep(stitches=stitches, seconds=seconds, work=KnittingKind.PLAIN)
    before = look_ahead(BLANKET, knitter.state, knitter.now.isoformat())
    state = replace(knitter.state, worked=(*knitter.state.worked, interrupted))
    after = look_ahead(BLANKET, state, knitter.now.isoformat())

    assert before.likely is not None
    assert after.likely is not None
    moved = date.fromisoformat(after.likely) - date.fromisoformat(before.likely)
    assert abs(moved.days) <= 2


def test_before_anything_is_known_a_usual_week_stands_in_and_is_said_to() -> None:
    """An hour on five of seven evenings at the usual pace (an assumption of this project; arithmetic)."""
    seen = look_ahead(PULLOVER, State(), AT)
    minutes = sum(count / USUAL_PER_MINUTE[kind] for kind, count in work_until(PULLOVER, Position(), len(PULLOVER.rounds)).items())
    assert not seen.paces.measured
    assert seen.assumed_days == 7
    assert seen.seconds_left == pytest.approx(60 * minutes)
    days = -(-minutes // (sum(USUAL_WEEK_MIN) / 7))
    assert seen.likely == date.fromordinal(date(2026, 3, 1).toordinal() + int(days) - 1).isoformat()
    assert seen.early is not None
    assert seen.late is not None
    assert seen.early <= seen.likely <= seen.late


def test_her_own_evenings_take_the_place_of_the_usual_ones() -> None:
    """After a week nothing is assumed any more; days without knitting are days."""
    days = tuple(
        Day(date=f"2026-02-{day}", done=(Done(work="plain", stitches=1800),)) for day in (16, 18, 24)
    )
    seen = look_ahead(PULLOVER, State(days=days), AT)
    assert seen.assumed_days == 0
    # Three hours in the thirteen days from 16 to 28 February (arithmetic).
    needed = seen.seconds_left / 60 / (180 / 13)
    assert (
        seen.likely == date.fromordinal(date(2026, 3, 1).toordinal() + int(-(-needed // 1)) - 1).isoformat()
    )


def test_an_evening_half_over_says_nothing_of_a_whole_one() -> None:
    """Today's ten minutes do not pull the forecast down; they are taken off what is left."""
    week = tuple(
        Day(date=f"2026-02-{day}", done=(Done(work="plain", stitches=1800),)) for day in range(15, 29)
    )
    today = Day(date="2026-03-01", done=(Done(work="plain", stitches=300),))
    before = look_ahead(PULLOVER, State(days=week), AT)
    place = Knitting(place=Position(index=80, stitch=60))
    after = look_ahead(PULLOVER, State(days=(*week, today), knitting=place), AT)
    assert before.likely == before.early == before.late
    assert after.likely == after.early == after.late


def test_what_each_evening_must_bring() -> None:
    """271 rounds in the 14 evenings from 1 to 14 March, both included, are 20 each (arithmetic)."""
    seen = look_ahead(with_due(PULLOVER, "2026-03-14"), State(), AT)
    assert len(PULLOVER.rounds) == 272
    assert (seen.evenings, seen.rounds_each) == (14, 20)
    assert seen.seconds_each == pytest.approx(seen.seconds_left / 14)


@pytest.mark.parametrize(("finish_by", "evenings"), [("2026-02-28", 0), ("2026-03-01", 1)])
def test_a_day_that_has_passed_asks_nothing_of_an_evening(finish_by: str, evenings: int) -> None:
    """The day itself still counts; the day after, there is no evening left."""
    seen = look_ahead(with_due(PULLOVER, finish_by), State(), AT)
    assert seen.evenings == evenings
    assert seen.rounds_each == (272 if evenings else None)


def test_a_film_brings_what_two_hours_bring() -> None:
    """At hardly more than 40 stitches a minute two hours are 4850 stitches: 40 plain rounds of 120 (arithmetic)."""
    worked = tuple(TimedStep(stitches=120, seconds=178, work="plain") for _ in range(40))
    seen = look_ahead(PULLOVER, State(worked=worked, knitting=Knitting(place=Position(index=70))), AT)
    assert seen.film_rounds == 40
    assert seen.film_to.index == 110


def test_a_film_may_outlast_the_garment() -> None:
    """At the last round it ends with the garment."""
    last = len(PULLOVER.rounds) - 1
    seen = look_ahead(PULLOVER, State(knitting=Knitting(place=Position(index=last))), AT)
    assert (seen.film_rounds, seen.film_to) == (1, Position(index=last + 1))


def test_nothing_left_needs_no_day() -> None:
    """A finished garment is not foretold."""
    seen = look_ahead(PULLOVER, State(knitting=Knitting(place=Position(index=272))), AT)
    assert (seen.seconds_left, seen.likely, seen.film_rounds) == (0, None, 0)
    assert seen.assumed_days == 0


def test_without_a_time_no_day_is_foretold() -> None:
    """Who asks without a clock gets hours, not dates."""
    seen = look_ahead(with_due(PULLOVER, "2026-03-14"), State(), "")
    assert (seen.likely, seen.evenings) == (None, None)
    assert seen.seconds_left > 0


def test_a_long_rest_in_a_drawer_is_forgotten() -> None:
    """A year without a stitch does not make the next year's forecast a year longer."""
    old = State(days=(Day(date="2025-01-05", done=(Done(work="plain", stitches=1800),)),))
    assert look_ahead(PULLOVER, old, AT).likely == look_ahead(PULLOVER, State(), AT).likely


@pytest.mark.parametrize(
    ("rounds", "minutes", "day"), [(298, 299.5, "2026-03-07"), (299, 300.5, "2026-03-08")]
)
def test_the_usual_week_brings_five_hours_and_no_more(rounds: int, minutes: float, day: str) -> None:
    """An hour on five evenings is what she is told is assumed, so what needs five hours is done on the seventh day
    and what needs a minute more is not. Source: arithmetic; 20 stitches a minute cast on, 30 plain."""
    scarf = plan(("scarf", ["co30", *["k30"] * rounds]))
    seen = look_ahead(scarf, State(), AT)
    assert seen.seconds_left == 60 * minutes
    assert seen.likely == day


def test_the_usual_week_is_an_hour_on_five_evenings() -> None:
    """Said to her as such before any week of hers is known."""
    assert sorted(USUAL_WEEK_MIN) == [0, 0, 60, 60, 60, 60, 60]
    assert FILM_S == 2 * 60 * 60


@pytest.mark.parametrize("place", [Position(), Position(index=15, stitch=30), Position(index=270, stitch=119)])
def test_a_film_is_knitted_through_stitch_by_stitch(place: Position) -> None:
    """What two hours bring, one stitch after the other at the pace of its kind, is what is told of a film."""
    seen = look_ahead(PULLOVER, State(knitting=Knitting(place=place)), AT)
    left, rounds, at = FILM_S, 0, place
    for round_ in PULLOVER.rounds[place.index :]:
        one = 60 / seen.paces.of(kind_of(round_)).stitches_per_minute
        while at.stitch < round_.progress and left >= one - 1e-9:
            left, at = left - one, replace(at, stitch=at.stitch + 1)
        if at.stitch < round_.progress:
            break
        rounds, at = rounds + 1, Position(index=round_.index + 1)
    assert seen.film_rounds == rounds
    assert seen.film_to.index == at.index
    assert abs(seen.film_to.stitch - at.stitch) <= 1


def test_what_is_left_is_every_stitch_behind_the_place() -> None:
    """By kind, counted one by one; what is worked of the round in hand is not left, and never more than it has."""
    made = plan(("cuff", ["co8", "(k2 p2)x2", "k8", "k8"]))
    assert work_until(made, Position(), len(made.rounds)) == {KnittingKind.EDGE: 8, KnittingKind.RIB: 8, KnittingKind.PLAIN: 16}
    assert work_until(made, Position(index=1, stitch=3), len(made.rounds)) == {KnittingKind.RIB: 5, KnittingKind.PLAIN: 16}
    assert work_until(made, Position(index=3, stitch=8), len(made.rounds)) == {KnittingKind.PLAIN: 0}
    assert work_until(made, Position(index=3, stitch=9), len(made.rounds)) == {KnittingKind.PLAIN: 0}
    assert work_until(made, Position(index=4), len(made.rounds)) == {}
    assert work_in(made.rounds[2:], Position(index=1, stitch=3)) == {KnittingKind.PLAIN: 16}


@pytest.mark.parametrize(
    ("finish_by", "evenings", "each"),
    [("2026-02-28", 0, None), ("2026-03-01", 1, 272), ("2026-03-02", 2, 136), ("2026-03-10", 10, 28), (None, None, None)],
)
def test_rounds_are_shared_out_among_the_evenings_up_to_that_day(
    finish_by: str | None, evenings: int | None, each: int | None
) -> None:
    """Tonight and that evening both count, and the last part of a round is a round. By hand: 272 rounds are left."""
    made = replace(PULLOVER, finish_by=finish_by)
    assert len(made.rounds) == 272
    seen = look_ahead(made, State(), AT)
    assert (seen.evenings, seen.rounds_each) == (evenings, each)
    assert seen.seconds_each == (seen.seconds_left / evenings if evenings else None)


def test_only_the_last_eight_weeks_say_how_she_knits_now() -> None:
    """Knitting of two months ago says as little as none. By hand: 1 March less 56 days is 4 January."""
    assert DAYS_LOOKED_AT == 56

    def assumed(day: str) -> int:
        done = Day(date=day, done=(Done(work=KnittingKind.PLAIN, stitches=2000),))
        return look_ahead(PULLOVER, State(days=(done,)), AT).assumed_days

    assert [assumed(day) for day in ("2026-01-03", "2026-01-04", "2026-02-22", "2026-02-23", "2026-02-28")] == [
        7, 0, 0, 1, 6,
    ]  # fmt: skip
    assert assumed("2026-03-01") == 7, "an evening half over says nothing of a whole one"
