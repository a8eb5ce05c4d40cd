"""What is asked about the round in hand, on the garment of `tests.plans` and the whole ones in fixtures.

Every figure is counted by hand on the printed rounds.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import TypeVar

import pytest

from stepper.session.effects import Effect, TellFinished, TellStep
from stepper.session.questions import about_round
from stepper.session.state import Knitting, Position, State
from stepper.session.steps import By, cut_into_steps
from tests.fixtures import plan_named
from tests.plans import final_increase, plan

GARMENT = final_increase()
Told = TypeVar("Told", bound=Effect)
AT = "2025-03-03T20:15:00+01:00"


def _at(index: int, stitch: int = 0, by: By = By.ROUND) -> State:
    return State(seq=5, knitting=Knitting(place=Position(index=index, stitch=stitch), by=by))


def _one(kind: type[Told], effects: Iterator[Effect]) -> Told:
    (found,) = tuple(effects)
    assert isinstance(found, kind)
    return found


def test_the_steps_around_the_one_in_hand_are_those_that_were_and_will_be_read_out() -> None:
    """Asked in the last round before the yoke: the round before, the yoke's first, and its increase round."""
    behind = _one(about_round.TellNear, about_round.tell_step(GARMENT, _at(1), AT, ahead=-1)).step
    ahead = _one(about_round.TellNear, about_round.tell_step(GARMENT, _at(1), AT, ahead=1)).step
    after = _one(about_round.TellNear, about_round.tell_step(GARMENT, _at(1), AT, ahead=2)).step

    assert isinstance(behind, TellStep)
    assert behind.index == 0
    assert isinstance(ahead, TellStep)
    assert ahead.index == 2
    assert isinstance(after, TellStep)
    assert (after.index, after.part.start) == (3, 0)


def test_before_the_first_and_after_the_last_step_there_is_none() -> None:
    """Nothing is made up at either end."""
    last = len(GARMENT.rounds) - 1

    assert _one(about_round.TellNear, about_round.tell_step(GARMENT, _at(0), AT, ahead=-1)).step is None
    end = _one(about_round.TellNear, about_round.tell_step(GARMENT, _at(last), AT, ahead=1)).step
    assert isinstance(end, TellFinished)


def test_the_rounds_on_either_side_are_told_where_there_are_any() -> None:
    """The first round has none before it."""
    assert _one(about_round.TellRound, about_round.tell_round(GARMENT, _at(0), AT, ahead=-1)).index is None
    assert _one(about_round.TellRound, about_round.tell_round(GARMENT, _at(0), AT, ahead=1)).index == 1


def test_the_yarn_in_hand_is_the_one_of_the_next_stitch() -> None:
    """Round 1 of the chart: two chalk, two ember, two chalk. After three stitches ember is in hand."""
    yarns = _one(about_round.TellYarns, about_round.tell_yarns(GARMENT, _at(4, 3), AT))

    assert (GARMENT.yarns[yarns.now or ""], [GARMENT.yarns[each] for each in yarns.yarns]) == (
        "ember",
        ["chalk", "ember"],
    )


def test_the_next_colour_is_in_this_round_or_in_the_first_one_with_another_yarn() -> None:
    """In the chart round after one more ember stitch; from the increase round on in the chart's first round."""
    here = _one(about_round.TellColourChange, about_round.tell_colour_change(GARMENT, _at(4, 3), AT))
    later = _one(about_round.TellColourChange, about_round.tell_colour_change(GARMENT, _at(3), AT))
    never = _one(about_round.TellColourChange, about_round.tell_colour_change(GARMENT, _at(9), AT))

    assert (here.stitches, here.index, [GARMENT.yarns[each] for each in here.yarns]) == (1, None, ["chalk"])
    assert (later.stitches, later.index, [GARMENT.yarns[each] for each in later.yarns]) == (
        None,
        4,
        ["ember"],
    )
    assert (never.stitches, never.index, never.yarns) == (None, None, ())


def test_the_longest_float_is_told_around_the_join() -> None:
    """One chalk, four ember, one chalk, over and over: chalk passes behind four, ember behind two."""
    told = _one(about_round.TellFloats, about_round.tell_floats(GARMENT, _at(5), AT))

    assert [(GARMENT.yarns[yarn], stitches) for yarn, stitches in told.longest] == [
        ("chalk", 4),
        ("ember", 2),
    ]
    assert _one(about_round.TellFloats, about_round.tell_floats(GARMENT, _at(3), AT)).longest == ()


def test_the_repeat_is_the_one_of_the_next_stitch() -> None:
    """Repeats of six stitches, 41 of them: the 13th stitch opens the third."""
    third = _one(about_round.TellRepeat, about_round.tell_repeat(GARMENT, _at(4, 12), AT))
    none = _one(about_round.TellRepeat, about_round.tell_repeat(GARMENT, _at(8), AT))

    assert (third.number, third.of, third.left) == (3, 41, 6)
    within = _one(about_round.TellRepeat, about_round.tell_repeat(GARMENT, _at(4, 245), AT))
    assert (within.number, within.left) == (41, 1)
    assert (none.number, none.of) == (None, 0)


def test_what_is_left_of_a_chart_ends_with_it() -> None:
    """The chart has three rounds."""
    first = _one(about_round.TellChartRow, about_round.tell_chart(GARMENT, _at(4), AT))

    assert first.left == 2
    assert _one(about_round.TellChartRow, about_round.tell_chart(GARMENT, _at(6), AT)).left == 0


def test_the_next_marker_is_counted_from_the_place_in_hand() -> None:
    """Row 50 of the cardigan's yoke in size M ends with 34, 57, 72, 57, 34 stitches between its markers: from stitch 7
    the first one is 27 away."""
    cardigan = plan_named("cardigan")
    told = _one(about_round.TellMarker, about_round.tell_marker(cardigan, _at(49, 7), AT))

    assert (told.stitches, told.between) == (27, (34, 57, 72, 57, 34))
    assert (told.number, told.of) == (1, 4)
    last = _one(about_round.TellMarker, about_round.tell_marker(cardigan, _at(49, 240), AT))
    assert (last.stitches, last.number) == (None, 0)


def test_a_turn_is_told_in_the_row_that_has_it() -> None:
    """Asked a row ahead: ten stitches, then the turn; asked in it, from the place in hand."""
    short = plan(("heel", ["co20", ("k20", {"flat": True}), ("k10 turn rest10", {"flat": True})]))

    ahead = _one(about_round.TellTurn, about_round.tell_turn(short, _at(1, 4), AT))
    inside = _one(about_round.TellTurn, about_round.tell_turn(short, _at(2, 4), AT))

    assert (ahead.index, ahead.stitches) == (2, 10)
    assert (inside.index, inside.stitches) == (2, 6)


def test_the_side_is_the_one_of_the_round_in_hand() -> None:
    """The record names the round; its words tell the side."""
    assert _one(about_round.TellSide, about_round.tell_side(GARMENT, _at(3), AT)).index == 3


STRANDED = plan(
    (
        "yoke",
        [
            ("co24", {"markers": (6, 18)}),
            ("k3 k2:B k1 k4:B k2 (k1:A k1)x6", {"markers": (6, 18)}),
            ("k24", {"markers": (6, 18)}),
            ("(k2 k4:B)x4", {"chart": ("peak", 1)}),
            ("(k4:B k2)x4", {"chart": ("peak", 2)}),
            ("(k2 k4:B)x4", {"chart": ("peak", 1)}),
            "k24:A",
        ],
    )
)


@pytest.mark.parametrize("by", [By.ROUND, By.COLOUR, By.REPEAT])
def test_from_every_stitch_the_steps_around_are_those_of_the_whole_piece_in_order(by: By) -> None:
    """All steps of the piece in one row: the one in hand is where the stitch lies, the next and the one after it follow it,
    the last lies before it, and behind the end all is finished."""
    row = [(each.index, part) for each in STRANDED.rounds for part in cut_into_steps(each, by)]
    for round_ in STRANDED.rounds:
        for worked in range(round_.progress):
            here = next(
                at for at, (index, part) in enumerate(row) if index == round_.index and worked < part.end
            )
            for ahead in (-1, 1, 2, 3):
                told = _one(
                    about_round.TellNear,
                    about_round.tell_step(STRANDED, _at(round_.index, worked, by), AT, ahead=ahead),
                ).step
                at = here + ahead
                if at < 0:
                    assert told is None
                elif at >= len(row):
                    assert isinstance(told, TellFinished)
                else:
                    assert isinstance(told, TellStep)
                    assert (told.index, told.part) == row[at]


def test_from_every_stitch_the_yarns_the_markers_and_what_is_left_are_those_on_the_needle() -> None:
    """The stitches of each round laid out one by one with their yarn: the one in hand is that of the next stitch, the next
    colour is the first other one, and the markers hang after the sixth and the eighteenth."""
    for round_ in STRANDED.rounds:
        yarns = [run.yarn for run in round_.runs for _ in range(run.times)]
        assert about_round.yarns_of(round_) == tuple(dict.fromkeys(yarns))
        for worked in range(round_.progress):
            state = _at(round_.index, worked)
            left = _one(about_round.TellStitchesLeft, about_round.tell_stitches_left(STRANDED, state, AT))
            assert left.left == len(yarns) - worked
            now = _one(about_round.TellYarns, about_round.tell_yarns(STRANDED, state, AT))
            assert (now.now, now.yarns) == (yarns[worked], tuple(dict.fromkeys(yarns)))
            change = _one(about_round.TellColourChange, about_round.tell_colour_change(STRANDED, state, AT))
            other = [at for at in range(worked, len(yarns)) if yarns[at] != yarns[worked]]
            if other:
                assert (change.stitches, change.index, change.yarns) == (
                    other[0] - worked,
                    None,
                    (yarns[other[0]],),
                )
            else:
                fresh = [
                    (
                        later.index,
                        tuple(dict.fromkeys(run.yarn for run in later.runs if run.yarn not in yarns)),
                    )
                    for later in STRANDED.rounds[round_.index + 1 :]
                    if {run.yarn for run in later.runs} - set(yarns)
                ]
                assert change.stitches is None
                assert (change.index, change.yarns) == (fresh[0] if fresh else (None, ()))
            if round_.index in (0, 1, 2):
                marker = _one(about_round.TellMarker, about_round.tell_marker(STRANDED, state, AT))
                assert marker.stitches == next((at - worked for at in (6, 18) if at > worked), None)
                assert marker.between == (6, 12, 6)


def test_what_follows_of_a_chart_ends_with_its_repeat() -> None:
    """By hand: two rounds of the chart, the first of them once more, and then none."""
    left = [
        _one(about_round.TellChartRow, about_round.tell_chart(STRANDED, _at(index), AT)).left
        for index in range(7)
    ]
    assert left == [0, 0, 0, 1, 0, 0, 0]


def test_what_is_left_of_a_row_that_is_turned_ends_at_the_turn() -> None:
    """The ten stitches beyond it are not worked. By hand: ten before the turn, four of them done."""
    short = plan(("heel", ["co20", ("k20", {"flat": True}), ("k10 turn rest10", {"flat": True})]))
    for worked, left in ((0, 10), (4, 6)):
        told = _one(about_round.TellStitchesLeft, about_round.tell_stitches_left(short, _at(2, worked), AT))
        assert (told.left, told.of, told.turned) == (left, 10, True)


def test_a_turn_is_the_next_one_until_it_is_made() -> None:
    """By hand: the second row is turned after sixteen stitches, the third worked to its end. At the very turn it is still
    to be made."""
    flat = {"flat": True}
    rows = ["co20", "k16 turn rest4", "k20"]
    heel = plan(("heel", [(each, flat) for each in rows]))
    found = {}
    for index, worked in ((0, 0), (0, 5), (1, 0), (1, 15), (1, 16), (2, 0)):
        told = _one(about_round.TellTurn, about_round.tell_turn(heel, _at(index, worked), AT))
        found[index, worked] = (told.index, told.stitches, told.rows)
    assert found == {
        (0, 0): (1, 16, 1),
        (0, 5): (1, 16, 1),
        (1, 0): (1, 16, 1),
        (1, 15): (1, 1, 1),
        (1, 16): (1, 0, 1),
        (2, 0): (2, None, 0),
    }


TWO_REPEATS = plan(("body", ["co27", "k3 (k2 p2)x2 k5 (k1 p2)x3 k2", "(k25 p2)x1"]))
"""Two repeats of four from the fourth stitch on, three of three from the seventeenth, two stitches behind them."""


@pytest.mark.parametrize(
    ("stitch", "number", "of", "left"),
    [
        (0, None, 3, None),  # before them
        (3, 1, 2, 4),
        (8, 2, 2, 3),  # the last of the first: what comes next is the first of another, five stitches on
        (16, 1, 3, 3),
        (23, 3, 3, 2),  # the last of all: as long as the one before it
        (25, None, 3, None),  # behind them
    ],
)
def test_which_repeat_and_how_much_of_it_is_left_is_said_at_each_stitch(
    stitch: int, number: int | None, of: int, left: int | None
) -> None:
    """Told "repeat two of two" one stitch late she works it again. By hand, of a round with two kinds of repeats."""
    told = _one(about_round.TellRepeat, about_round.tell_repeat(TWO_REPEATS, _at(1, stitch), AT))
    assert (told.number, told.of, told.left) == (number, of, left)


def test_a_repeat_worked_once_ends_where_nobody_can_tell() -> None:
    """A single one has nothing to measure it by."""
    told = _one(about_round.TellRepeat, about_round.tell_repeat(TWO_REPEATS, _at(2, 5), AT))
    assert (told.number, told.of, told.left) == (1, 1, None)


def test_the_step_before_a_round_without_stitches_is_not_that_round() -> None:
    """A turn alone takes a cue to get past, but who stands before it has not done it."""
    rows = plan(("heel", ["turn", "co8", "k8"]))
    assert _one(about_round.TellNear, about_round.tell_step(rows, _at(0), AT, ahead=-1)).step is None
    step = _one(about_round.TellNear, about_round.tell_step(rows, _at(1), AT, ahead=-1)).step
    assert isinstance(step, TellStep)
    assert step.index == 0


def test_which_yarn_lies_below_is_told_in_any_round_with_the_same_yarns() -> None:
    """The plan says it once for a set of yarns, and she asks evenings later."""
    made = plan_named("switchback")
    said = {
        _one(about_round.TellCarried, about_round.tell_carried(made, _at(each.index), AT)).words
        for each in made.rounds
        if len({run.yarn for run in each.runs if run.yarn}) == 2
    }
    assert said
    assert all(each.startswith("Carry ") and " below " in each for each in said)
    first = about_round.tell_carried(made, _at(0), AT)
    assert _one(about_round.TellCarried, first).words == ""
