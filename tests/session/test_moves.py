from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.session.cues import Back, Next, RoundsBack, StitchesBack
from stepper.session.effects import Refuse
from stepper.session.events import Returned, StrideSet
from stepper.session.evolve import evolve
from stepper.session.machine import Session
from stepper.session.state import Knitting, Position, State
from stepper.session.steps import By
from tests.plans import final_increase, plan
from tests.playbook import AT, after, check, opened


def _at(index: int, stitch: int = 0, by: By = By.ROUND) -> Session:
    return Session(
        final_increase(), State(seq=1, knitting=Knitting(place=Position(index=index, stitch=stitch), by=by))
    )


def test_next_leads_through_the_steps_and_on_to_the_next_round() -> None:
    """A long round is followed part by part, and the round after it begins at its beginning."""
    check(
        _at(3),
        """
        > next step
        At stitch 102: knit ten, make one; then knit eleven, make one, three times.
        > next step
        At stitch 149: knit ten, make one; then knit eleven, make one, three times.
        > next step
        At stitch 196: knit ten, make one, knit ten, make one.
        > next step
        At stitch 218: knit ten, make one, knit ten, make one, knit six.
        > next step
        Count now: 246 expected, after the increases.
        A lifeline pays here. When it is in, say: lifeline here.
        Round 3, chart cairn round 1: two chalk, two ember, two chalk, forty one times.
        """,
    )


def test_back_from_the_middle_of_a_step_goes_to_its_beginning_first() -> None:
    """The step before where she is, is the beginning of the one she is in; then the one before that."""
    check(
        _at(3, stitch=120),
        """
        > go back
        Yoke, round 2 of 6, Final increase, at stitch 102: knit ten, make one;
            then knit eleven, make one, three times.
        > go back
        Yoke, round 2 of 6, Final increase: knit five, make one; then knit eleven, make one, eight times.
        > go back
        Yoke, round 1 of 6: knit all two hundred twenty five.
        """,
    )


def test_back_from_the_end_of_the_garment_works() -> None:
    """The last round is never out of reach."""
    session = after(_at(len(final_increase().rounds)), "go back")

    assert session.state.place == Position(index=22)


def test_there_is_nothing_before_the_beginning() -> None:
    """Refused with a sentence, and nothing changes."""
    check(opened(final_increase()), "> go back\nThis is the very beginning.")


@given(st.integers(0, 22), st.sampled_from(By), st.data())
def test_back_undoes_next_as_far_as_the_beginning_of_the_step(
    index: int, by: By, data: st.DataObject
) -> None:
    """After one step forth and one back she is at the beginning of the step she was in."""
    stitch = data.draw(st.integers(0, final_increase().rounds[index].progress - 1))
    session = _at(index, stitch, by)

    session.adopt(session.consider(Next(at=AT)))
    session.adopt(session.consider(Back(at=AT)))

    assert session.state.place.index == index
    assert session.state.place.stitch <= stitch


@pytest.mark.parametrize("by", By)
def test_next_alone_knits_the_whole_garment(by: By) -> None:
    """Next and nothing else leads from the cast-on to the end, and every stitch is worked once."""
    session = _at(0, by=by)
    worked = 0
    for _ in range(3000):
        if session.state.place.index == len(session.plan.rounds):
            break
        considered = session.consider(Next(at=AT))
        worked += considered.events[0].stitches  # type: ignore[attr-defined] # an Advanced
        session.adopt(considered)

    assert session.state.place == Position(index=23)
    assert worked == sum(round_.progress for round_ in session.plan.rounds)


def test_a_stitch_sets_the_place_and_the_last_one_finishes_the_round() -> None:
    """Stitch 246 of 246 is the end of the round, with all that is due there; stitch 247 is a slip."""
    check(
        _at(3),
        """
        > stitch eighty four
        At stitch 84: knit five, make one, knit eleven, make one.
        > stitch two hundred forty seven
        This round has 246 stitches.
        > stitch 246
        Count now: 246 expected, after the increases.
        A lifeline pays here. When it is in, say: lifeline here.
        Round 3, chart cairn round 1: two chalk, two ember, two chalk, forty one times.
        """,
    )


def test_the_marker_is_the_next_one_ahead() -> None:
    """At the marker twice is two markers on; without one ahead it says so."""
    session = opened(plan(("body", ["co20", "k5 pm k10 pm k5"])))

    check(
        session,
        """
        > next step
        Round 2: knit five, place marker, knit ten, place marker, knit five.
        > at the marker
        At stitch 5: place marker, knit ten, place marker, knit five.
        > at the marker
        At stitch 15: place marker, knit five.
        > at the marker
        No marker lies ahead in this round.
        """,
    )


def test_rounds_sections_and_labels_can_be_gone_to() -> None:
    """By number in the section in hand, by name anywhere, and both together, in any case."""
    check(
        _at(0),
        """
        > go to the Final Increase
        Taken as done: up to Yoke, round 1 of 6.
        Yoke, round 2 of 6, Final increase: knit five, make one;
            then knit eleven, make one, eight times.
        > go to round 5
        Taken as done: up to Yoke, round 4 of 6, chart cairn round 2.
        Yoke, round 5 of 6, chart cairn round 3: in ember, knit all two hundred forty six.
        > go to body
        Taken as done: up to Yoke, round 6 of 6, Divide.
        Body, round 1 of 15: knit all one hundred fifty six.
        > go to yoke round one
        Yoke, round 1 of 6: knit all two hundred twenty five.
        > go to round fifteen of body
        Taken as done: up to Body, round 14 of 15.
        Body, round 15 of 15: bind off one hundred fifty six.
        > go to round 16
        Body has 15 rounds.
        > go to the attic
        Nothing here is called "attic".
        """,
    )


def test_changing_the_stride_leaves_the_place() -> None:
    """In the middle of a round she may want smaller steps, and goes on from the very stitch."""
    check(
        _at(4, stitch=9),
        """
        > by colour
        By colour.
        At stitch 9: one ember.
        > by colour
        It is by colour already.
        > next step
        At stitch 10: four chalk.
        """,
    )


def test_a_row_is_called_a_row() -> None:
    """Flat knitting has rows, with a wrong side."""
    flat = plan(("back", [("co8", {"flat": True}), ("p8", {"flat": True, "side": "WS"})]))

    check(
        opened(flat),
        """
        > next step
        Row 2, wrong side: purl all eight.
        > stitch 9
        This row has 8 stitches.
        > at the marker
        No marker lies ahead in this row.
        """,
    )


def test_an_empty_file_is_refused_politely() -> None:
    """A file without a round has nowhere to go."""
    empty = replace(final_increase(), rounds=(), stretches=())

    check(
        opened(empty),
        "> go to round 1\nThere is nothing to knit in this file.\n> go back\nThis is the very beginning.",
    )


def test_a_stride_is_chosen_once_for_each_sort_of_round() -> None:
    """Colour by colour in the chart, gap by gap in the increase round; a plain round stays a step."""
    check(
        final_increase(),
        """
        > go to round 2 of yoke
        Taken as done: up to Yoke, round 1 of 6.
        Yoke, round 2 of 6, Final increase: knit five, make one; then knit eleven, make one, eight times.
        > by gap
        By gap.
        Change 1 of 21: knit five, make one.
        > go to round 4
        Taken as done: up to Yoke, round 3 of 6, chart cairn round 1.
        Yoke, round 4 of 6, chart cairn round 2: one chalk, four ember, one chalk, forty one times.
        > by colour
        By colour.
        Round 4, chart cairn round 2: one chalk.
        > go to round 2
        Yoke, round 2 of 6, Final increase, change 1 of 21: knit five, make one.
        > go to round 3
        Taken as done: up to Yoke, round 2 of 6, Final increase.
        Yoke, round 3 of 6, chart cairn round 1: two chalk.
        > go to body
        Taken as done: up to Yoke, round 6 of 6, Divide.
        Body, round 1 of 15: knit all one hundred fifty six.
        """,
    )


def test_a_stride_of_a_journal_of_before_holds_for_all_rounds() -> None:
    """It was chosen for everything then."""
    knitting = evolve(State(), StrideSet(at=AT, by=By.COLOUR)).knitting

    assert all(knitting.by_of(round_) is By.COLOUR for round_ in final_increase().rounds)


def test_stitches_she_has_undone_herself_take_the_place_back() -> None:
    """She ripped ten and says so: she is not told to undo them once more."""
    (event,) = _at(1, 20).consider(StitchesBack(stitches=10)).events
    assert isinstance(event, Returned)
    assert (event.place, event.stitches) == (Position(index=1, stitch=10), 10)
    for wrong in (0, 9999):
        (effect,) = _at(1, 20).consider(StitchesBack(stitches=wrong)).effects
        assert isinstance(effect, Refuse)


def test_a_round_is_started_again_from_its_beginning() -> None:
    """Where it has hardly begun there is nothing to start again."""
    (event,) = _at(1, 20).consider(RoundsBack(rounds=0)).events
    assert isinstance(event, Returned)
    assert event.place == Position(index=1)
    (effect,) = _at(1).consider(RoundsBack(rounds=0)).effects
    assert isinstance(effect, Refuse)
