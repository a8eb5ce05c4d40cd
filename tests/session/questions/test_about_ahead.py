"""What is asked about what lies ahead, on the garment of `tests.plans` and the whole ones in fixtures.

Every figure is counted by hand on the printed rounds.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TypeVar

import pytest

from stepper.craft.pace_by_kind import KnittingKind
from stepper.craft.stitches import Kind
from stepper.craft.stitches import stitch as stitch_of
from stepper.plan.model import Round, Stretch
from stepper.plan.under_way.lengthen import LengthCorrection
from stepper.plan.yarn.yarn_left import Weighing, forecast
from stepper.session.effects import Effect, TellLasting
from stepper.session.questions import about_ahead
from stepper.session.state import Ball, Day, Done, Knitting, Position, Reminder, State, Verified
from tests.fixtures import plan_named
from tests.plan.test_compile import plan_of
from tests.plans import final_increase, plan
from tests.project.samples import project

GARMENT = final_increase()
Told = TypeVar("Told", bound=Effect)
AT = "2025-03-03T20:15:00+01:00"


def _at(index: int, stitch: int = 0, **fields: object) -> State:
    place = Position(index=index, stitch=stitch)
    return State(seq=5, knitting=Knitting(place=place, **fields))  # type: ignore[arg-type] # test notation


def _one(kind: type[Told], effects: Iterator[Effect]) -> Told:
    (found,) = tuple(effects)
    assert isinstance(found, kind)
    return found


@pytest.mark.parametrize(
    ("index", "stitch", "found", "changes"),
    [(0, 0, 3, 21), (3, 0, 3, 21), (3, 102, 3, 12), (3, 246, None, 0), (4, 0, None, 0)],
)
def test_the_next_increases_are_those_not_yet_made(
    index: int, stitch: int, found: int | None, changes: int
) -> None:
    """Round 2 of the yoke makes 21: nine of them by stitch 102 (5 + 1, then eight times 11 + 1)."""
    told = _one(
        about_ahead.TellNextShaping,
        about_ahead.tell_next_shaping(GARMENT, _at(index, stitch), AT, kind=Kind.INCREASE),
    )

    assert (told.index, told.changes) == (found, changes)


def test_the_length_goes_by_what_was_measured() -> None:
    """Who measured 4 cm is not told 2 a minute later. By hand: 5 rounds of a stretch from its origin, at 12.5 to 10 cm."""
    pullover = plan_named("switchback")
    stretch = pullover.stretches[1]
    correction = LengthCorrection(stretch=1, rounds=stretch.last + 1 - stretch.first, rounds_per_10cm=12.5)
    state = _at(stretch.origin + 5, corrections=(correction,))
    told = _one(about_ahead.TellLength, about_ahead.tell_length(pullover, state, AT))
    assert told.length_mm == pytest.approx(40)
    plain = _one(about_ahead.TellLength, about_ahead.tell_length(pullover, _at(stretch.origin + 5), AT))
    assert plain.length_mm == pytest.approx(5 / 30 * 100)


def test_what_is_left_of_the_shaping_counts_the_section_in_hand() -> None:
    """The sleeve of the fixture decreases in 8 rounds, two stitches each; before round 30 one of them is done."""
    pullover = plan_named("switchback")
    told = _one(
        about_ahead.TellShapingLeft,
        about_ahead.tell_shaping_left(pullover, _at(189), AT, kind=Kind.DECREASE),
    )

    assert (told.section, told.rounds, told.changes, told.done) == ("left sleeve", 7, 14, 1)


def test_the_division_is_the_next_round_that_puts_stitches_on_hold() -> None:
    """The yoke's last round; behind it there is none."""
    assert about_ahead.division(GARMENT, 0) == 7
    assert about_ahead.division(GARMENT, 8) is None
    assert _one(about_ahead.TellRoundsTo, about_ahead.tell_division(GARMENT, _at(3), AT)).index == 7


def test_the_needle_in_hand_and_the_round_of_the_next_one_are_told() -> None:
    """The fixture changes from 3.5 to 3.75 mm after the neckband of 11 rounds."""
    told = _one(about_ahead.TellNeedle, about_ahead.tell_needle(plan_named("switchback"), _at(0), AT))

    assert (told.needle_mm, told.index) == (3.5, 11)


def test_another_size_is_told_with_the_round_that_it_begins_in() -> None:
    """Neck in one size, the rest in a smaller one: the switch is in the middle of a yoke, which is in both."""
    plan_ = plan_named("switchback")
    (switch,) = [each.index for each in plan_.rounds[1:] if plan_.rounds[each.index - 1].size != each.size]
    ahead = _one(about_ahead.TellSize, about_ahead.tell_size(plan_, _at(0), AT))
    behind = _one(about_ahead.TellSize, about_ahead.tell_size(plan_, _at(switch), AT))

    assert (ahead.size, ahead.others) == ("4", ((switch, "2"),))
    assert (behind.size, behind.others) == ("2", ((0, "4"),))
    assert plan_.rounds[switch].section == plan_.rounds[switch - 1].section


def test_the_gauge_is_that_of_the_fabric_in_hand_and_none_is_made_up() -> None:
    """As the file of the fixture prints it: 22 stitches and 30 rounds; the garment in figures has none."""
    told = _one(about_ahead.TellGauge, about_ahead.tell_gauge(plan_named("switchback"), _at(50), AT))

    assert (told.stitches_per_10cm, told.rounds_per_10cm) == pytest.approx((22, 30))
    assert _one(about_ahead.TellGauge, about_ahead.tell_gauge(GARMENT, _at(3), AT)).stitches_per_10cm is None


def test_the_length_is_that_of_the_rounds_worked() -> None:
    """At ten rounds to 10 cm, five rounds of the body are 5 cm of 10, and five are left; a part that is not worked to
    a length has its rounds times the gauge: 28 rounds at 30 to 10 cm, the one that picks up adding none."""
    body = _one(about_ahead.TellLength, about_ahead.tell_length(GARMENT, _at(13), AT))
    sleeve = _one(about_ahead.TellLength, about_ahead.tell_length(plan_named("switchback"), _at(190), AT))

    assert (body.length_mm, body.target_mm, body.rounds_left) == (pytest.approx(50), 100.0, 5)
    assert sleeve.target_mm is None
    assert sleeve.length_mm == pytest.approx(28 / 30 * 100, abs=1)
    assert _one(about_ahead.TellLength, about_ahead.tell_length(GARMENT, _at(3), AT)).length_mm is None


def test_less_yarn_is_needed_the_further_she_is_and_none_without_a_skein() -> None:
    """The rest of the garment never takes more than the whole."""
    pullover = plan_named("switchback")
    whole = dict(_one(about_ahead.TellYarnNeeded, about_ahead.tell_yarn_needed(pullover, _at(0), AT)).needed)
    rest = dict(_one(about_ahead.TellYarnNeeded, about_ahead.tell_yarn_needed(pullover, _at(189), AT)).needed)
    nothing = _one(about_ahead.TellYarnNeeded, about_ahead.tell_yarn_needed(GARMENT, _at(0), AT))

    assert set(rest) < set(whole)
    assert all(0 < grams < whole[yarn] for yarn, grams in rest.items())
    assert nothing.needed == ()


def test_the_pace_is_the_usual_one_until_hers_is_known() -> None:
    """Thirty stitches a minute over 225 stitches are seven and a half minutes; common practice."""
    told = _one(about_ahead.TellPace, about_ahead.tell_pace(GARMENT, _at(2), AT))

    assert (told.stitches_per_minute, told.round_s, told.measured) == (30.0, 450.0, False)


def test_an_evening_names_what_has_to_be_at_hand() -> None:
    """From the yoke's first round two hours reach the body: the second yarn, the holder and the new section."""
    state = _at(2, reminders=(Reminder(index=6, text="try it on"),))
    told = _one(about_ahead.TellEvening, about_ahead.tell_tonight(GARMENT, state, AT))

    assert told.sights == (4, 7, 8)
    assert told.reminders == 1


def test_rounds_of_this_evening_are_counted_back_from_the_place_in_hand() -> None:
    """340 stitches, of which 115 lie in the round in hand: one whole round of 225 before it. Those of other days are not
    of this evening."""
    day = Day(date="2025-03-03", done=(Done(work="plain", stitches=200), Done(work="shaped", stitches=140)))
    others = tuple(
        Day(date=date, done=(Done(work="plain", stitches=999),)) for date in ("2025-03-01", "2025-03-02")
    )
    state = State(seq=5, days=(*others, day), knitting=Knitting(place=Position(index=3, stitch=115)))
    told = _one(about_ahead.TellKnittedToday, about_ahead.tell_knitted_today(GARMENT, state, AT))

    assert (told.stitches, told.rounds) == (340, 1.0)


def test_only_reminders_that_are_to_come_are_told() -> None:
    """What was said already is kept for going back, and is no answer."""
    state = _at(4, reminders=(Reminder(index=2, text="a"), Reminder(index=6, text="b")))

    told = _one(about_ahead.TellReminders, about_ahead.tell_reminders_kept(GARMENT, state, AT))
    assert [each.text for each in told.reminders] == ["b"]


def test_a_count_ahead_of_her_says_nothing() -> None:
    """She went back behind it."""
    ahead = Verified(place=Position(index=6), stitches=246)
    told = _one(about_ahead.TellLastCount, about_ahead.tell_last_count(GARMENT, _at(3, verified=ahead), AT))

    assert told.count is None


def test_as_printed_nothing_is_altered() -> None:
    """What the file does not alter is not told."""
    told = _one(about_ahead.TellAlterations, about_ahead.tell_alterations(GARMENT, _at(3), AT))

    assert (told.here, told.elsewhere, told.sizes) == ((), (), ())


PIECE = plan(
    (
        "yoke",
        [
            "co20",
            ("k20", {"needle_mm": 4.0}),
            "(k4 m1)x5",
            ("k25", {"needle_mm": 3.5}),
            "k2 kfb k19 kfb k2",
            "k27",
        ],
    ),
    ("crown", ["(k7 k2tog)x3", "k10 hold4:thumb k10", ("(k3 ssk)x4", {"needle_mm": 4.0}), "bo16"]),
)


@pytest.mark.parametrize("kind", [Kind.INCREASE, Kind.DECREASE])
def test_from_every_stitch_of_a_piece_the_next_changes_are_those_that_are_still_to_make(kind: Kind) -> None:
    """All stitches are laid out one by one with their places, and looked through from each place on."""
    laid = []
    for round_ in PIECE.rounds:
        done = 0
        for run in round_.runs:
            for _ in range(run.times):
                done += stitch_of(run.stitch).progress
                if stitch_of(run.stitch).kind is kind:
                    laid.append((round_.index, done, round_.section))
    for round_ in PIECE.rounds:
        for worked in range(round_.progress):
            left = [each for each in laid if each[:2] > (round_.index, worked)]
            told = _one(
                about_ahead.TellNextShaping,
                about_ahead.tell_next_shaping(PIECE, _at(round_.index, worked), AT, kind=kind),
            )
            first = left[0][0] if left else None
            assert (told.index, told.changes) == (first, sum(each[0] == first for each in left))
            assert told.increases is (kind is Kind.INCREASE)
            rest = _one(
                about_ahead.TellShapingLeft,
                about_ahead.tell_shaping_left(PIECE, _at(round_.index, worked), AT, kind=kind),
            )
            here = [each for each in laid if each[2] == round_.section]
            assert rest.changes == sum(each[:2] > (round_.index, worked) for each in here)
            assert rest.done == len({each[0] for each in here if each[0] < round_.index})
            own = [each for each in here if each[0] == round_.index]
            assert rest.in_hand == ((sum(each[1] > worked for each in own), len(own)) if own else None)
            assert rest.rounds == len({each[0] for each in here if each[0] >= round_.index})


def test_another_needle_and_the_division_are_the_next_ones_from_the_round_in_hand() -> None:
    """By hand: 4 mm from round 1, 3.5 mm from round 3, 4 mm again from round 8; stitches go on hold in round 7. Where a
    round names no needle, the one in hand stays, so that none is the next."""
    needles = [
        _one(about_ahead.TellNeedle, about_ahead.tell_needle(PIECE, _at(index), AT)).index
        for index in (1, 3, 8, 9)
    ]
    assert needles == [3, 8, None, None]
    assert [about_ahead.division(PIECE, index) for index in (0, 6, 7, 8, 10)] == [7, 7, 7, None, None]


def test_what_was_weighed_is_answered_with_whether_it_lasts_and_is_not_asked_for_again() -> None:
    """The rest is then told in her hands: a ball that is lighter than it should be takes more for the rest as well."""
    pullover = plan_named("switchback")
    yarn = about_ahead.yarns_of(pullover.rounds[60])[0]
    ball = Ball(yarn=yarn, weighing=Weighing(index=60, stitch=0, grams=1.0))
    state = _at(60)
    weighed = replace(state, knitting=replace(state.knitting, balls=(ball,)))
    plain = _one(about_ahead.TellYarnNeeded, about_ahead.tell_yarn_needed(pullover, state, AT))
    needed, lasting = about_ahead.tell_yarn_needed(pullover, weighed, AT)
    found = forecast(pullover, yarn, ball.weighing)

    assert isinstance(needed, about_ahead.TellYarnNeeded)
    assert isinstance(lasting, TellLasting)
    assert found is not None
    assert not plain.weighed
    assert needed.weighed
    assert lasting.named
    assert found.factor != pytest.approx(1.0, abs=0.05)
    assert needed.needed[0] == (yarn, pytest.approx(plain.needed[0][1] * found.factor))


def test_the_rest_takes_what_is_worked_twice_too() -> None:
    """A sleeve printed once for both: half of the yarn would be wanting in the second one."""
    once = plan_of(project("Cast on 40 sts.\nJoin in the round.\nKnit 9 rounds.\nBind off."))
    twice = replace(once, rounds=tuple(replace(each, section="sleeves") for each in once.rounds))
    one, both = (
        _one(about_ahead.TellYarnNeeded, about_ahead.tell_yarn_needed(each, _at(0), AT))
        for each in (once, twice)
    )
    assert dict(both.needed) == pytest.approx({yarn: 2 * grams for yarn, grams in one.needed})
    assert one.needed


def test_one_yarn_without_a_skein_is_enough_to_say_that_some_is_unknown() -> None:
    """The sum of what is known would else be taken for all that has to be bought."""
    pullover = plan_named("switchback")
    stocks = dict(pullover.materials.stocks)
    less = replace(pullover, materials=replace(pullover.materials, stocks=dict(list(stocks.items())[:1])))
    none = replace(pullover, materials=replace(pullover.materials, stocks={}))
    assert len(stocks) > 1
    told = [
        _one(about_ahead.TellYarnNeeded, about_ahead.tell_yarn_needed(each, _at(0), AT)).unknown
        for each in (pullover, less, none)
    ]
    assert told == [False, True, True]


def test_a_reminder_of_the_round_in_hand_is_no_longer_to_come() -> None:
    """It has just been said."""
    state = _at(5, reminders=tuple(Reminder(index=index, text="x") for index in (4, 5, 6, 9)))
    told = _one(about_ahead.TellReminders, about_ahead.tell_reminders_kept(GARMENT, state, AT))
    assert [each.index for each in told.reminders] == [6, 9]


def test_each_change_is_told_once_with_the_sections_that_it_is_made_in() -> None:
    """She asks what she has changed: each change is named once, however many rounds it touches, and a change of another
    section is not taken for one of the section in hand."""
    changed = {3: ("shorter",), 4: ("shorter", "one size up"), 9: ("longer", "shorter")}
    rounds = tuple(replace(each, altered=changed.get(each.index, ())) for each in GARMENT.rounds)
    other = rounds[9].section
    assert rounds[3].section == rounds[4].section == "yoke" != other
    told = _one(
        about_ahead.TellAlterations, about_ahead.tell_alterations(replace(GARMENT, rounds=rounds), _at(4), AT)
    )
    assert told.here == (("shorter", (other,)), ("one size up", ()))
    assert told.elsewhere == (("longer", (other,)),)
    none = _one(about_ahead.TellAlterations, about_ahead.tell_alterations(GARMENT, _at(4), AT))
    assert (none.here, none.elsewhere) == ((), ())
    smaller = tuple(replace(each, size="3" if each.index < 4 else "2") for each in GARMENT.rounds)
    blended = about_ahead.tell_alterations(replace(GARMENT, rounds=smaller), _at(6), AT)
    assert _one(about_ahead.TellAlterations, blended).sizes == ((4, "2"),)


def test_rounds_knitted_today_are_counted_back_from_the_place_in_hand() -> None:
    """By hand: of 30 stitches 5 are in the round in hand, 20 are the round before, and 5 a quarter of the one before
    that."""
    body = plan(("body", ["co20", "k20", "k20", "k20"]))
    day = Day(date="2025-03-03", done=(Done(work=KnittingKind.PLAIN, stitches=30),))
    state = replace(_at(3, 5), days=(day,))
    told = _one(about_ahead.TellKnittedToday, about_ahead.tell_knitted_today(body, state, AT))
    assert (told.stitches, told.rounds) == (30, 1.25)


@pytest.mark.parametrize(("corrected", "length_mm"), [(0, 20.0), (1, 10.0)])
def test_a_length_goes_by_what_was_measured_in_its_own_stretch(corrected: int, length_mm: float) -> None:
    """By hand: three rounds at 30 to 10 cm are 10 mm, at the 15 she measured 20 mm; what she measured in the other stretch
    says nothing of this one."""
    stretches = (
        Stretch(first=1, last=5, origin=1, target_mm=100.0, rounds_per_10cm=30.0),
        Stretch(first=6, last=9, origin=6, target_mm=100.0, rounds_per_10cm=30.0),
    )
    body = plan(("body", ["co20", *["k20"] * 10]), stretches=stretches)
    measured = LengthCorrection(stretch=corrected, rounds=5, rounds_per_10cm=15.0)
    told = _one(about_ahead.TellLength, about_ahead.tell_length(body, _at(4, corrections=(measured,)), AT))
    assert told.length_mm == pytest.approx(length_mm)


def test_of_her_reminders_those_are_told_for_tonight_that_the_evening_will_reach() -> None:
    """The one of the round in hand has been said, one of the last round within two hours will be, one behind it not."""
    body = plan(("body", ["co200", *["k200"] * 60]))
    film_to = _one(about_ahead.TellEvening, about_ahead.tell_tonight(body, _at(5), AT)).outlook.film_to.index
    assert 7 < film_to < 59

    def reminders(*rounds: int) -> int:
        kept = tuple(Reminder(index=index, text="x") for index in rounds)
        told = about_ahead.tell_tonight(body, _at(5, reminders=kept), AT)
        return _one(about_ahead.TellEvening, told).reminders

    assert [reminders(index) for index in (4, 5, 6, film_to, film_to + 1)] == [0, 0, 1, 1, 0]


def _yarns(round_: Round) -> set[str]:
    """Return the yarns that the stitches of a round are worked in."""
    return {run.yarn for run in round_.runs if run.progress and run.stitch not in ("hold", "return", "rest")}


@pytest.mark.parametrize("name", ["shawl", "socks", "switchback"])
def test_what_lies_ahead_is_what_she_meets_when_she_walks_on(name: str) -> None:
    """From every nineteenth round of each garment she walks on, a round at a time, to where another needle is taken up, the piece
    is divided or another size begins; for the evening up to the last round that it reaches, and keeps the first three rounds
    at which something begins."""
    made = plan_named(name)
    begins = {0: made.rounds[0].size}
    for round_ in made.rounds[1:]:
        if round_.size != made.rounds[round_.index - 1].size:
            begins[round_.index] = round_.size
    for here in made.rounds[::19]:
        state, needle, divided = _at(here.index), None, None
        for round_ in made.rounds[here.index :]:
            if needle is None and round_.needle_mm is not None and round_.needle_mm != here.needle_mm:
                needle = round_.index
            if divided is None and [run for run in round_.runs if run.stitch == "hold"]:
                divided = round_.index
        told = _one(about_ahead.TellNeedle, about_ahead.tell_needle(made, state, AT))
        assert (told.needle_mm, told.index) == (here.needle_mm, needle)
        assert _one(about_ahead.TellRoundsTo, about_ahead.tell_division(made, state, AT)).index == divided

        in_hand = [index for index in begins if index <= here.index][-1]
        sizes = _one(about_ahead.TellSize, about_ahead.tell_size(made, state, AT))
        assert (sizes.size, dict(sizes.others)) == (
            begins[in_hand],
            {at: each for at, each in begins.items() if at != in_hand},
        )

        evening = _one(about_ahead.TellEvening, about_ahead.tell_tonight(made, state, AT))
        last, met = min(evening.outlook.film_to.index, len(made.rounds) - 1), []
        skeins = [end.likely for end in evening.skeins]
        assert all(here.index < each <= last for each in skeins)
        for round_ in made.rounds[here.index + 1 : last + 1]:
            before = made.rounds[round_.index - 1]
            at_hand = {
                yarn
                for each in made.rounds[max(0, round_.index - 10) : round_.index]
                for yarn in _yarns(each)
            }
            codes = {run.stitch for run in round_.runs}
            new_needle = round_.needle_mm is not None and round_.needle_mm != before.needle_mm
            new_yarn = _yarns(round_) - at_hand
            if (
                round_.section != before.section
                or new_needle
                or new_yarn
                or codes & {"hold", "pm"}
                or round_.index in skeins
            ):
                met.append(round_.index)
        assert list(evening.sights) == met[:3], here.index


def test_what_begins_in_the_last_round_of_the_evening_is_named_and_what_begins_behind_it_is_not() -> None:
    """She lays out what she will need before the film, not what she will not come to."""
    rows = ["k200"] * 60
    whole = plan(("body", ["co200", *rows]))
    last = _one(about_ahead.TellEvening, about_ahead.tell_tonight(whole, _at(5), AT)).outlook.film_to.index
    for begins, named in ((last, (last,)), (last + 1, ())):
        parted = plan(("body", ["co200", *rows[: begins - 1]]), ("edge", rows[begins - 1 :]))
        assert _one(about_ahead.TellEvening, about_ahead.tell_tonight(parted, _at(5), AT)).sights == named


def test_another_needle_in_the_very_next_round_is_told() -> None:
    """It has to lie at hand now. By hand."""
    body = plan(
        (
            "body",
            [
                (row, {"needle_mm": mm})
                for row, mm in (("co20", 3.0), ("k20", 3.0), ("k20", 3.5), ("k20", 3.5))
            ],
        )
    )
    told = [
        _one(about_ahead.TellNeedle, about_ahead.tell_needle(body, _at(index), AT)).index
        for index in range(4)
    ]
    assert told == [2, 2, None, None]


def test_a_ball_that_was_weighed_is_no_answer_where_no_yarn_of_the_rest_can_be() -> None:
    """Its yarn has lost its line in the file since; the sitting goes on."""
    ball = Ball(yarn="MC", weighing=Weighing(index=1, stitch=0, grams=40.0))
    told = _one(about_ahead.TellYarnNeeded, about_ahead.tell_yarn_needed(GARMENT, _at(3, balls=(ball,)), AT))
    assert (told.needed, told.weighed) == ((), False)
