from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.session.cues import (
    AtMarker,
    AtStitch,
    Back,
    Cue,
    GoTo,
    Next,
    RoundsBack,
    RoundsDone,
    StitchesBack,
    Stride,
    YarnDone,
)
from stepper.session.effects import Refuse
from stepper.session.events import Advanced, Event, Jumped, Placed, Returned, StrideSet
from stepper.session.evolve import evolve
from stepper.session.machine import Session
from stepper.session.moves import MOST_UNTOLD, bare_words, round_called
from stepper.session.state import Knitting, Position, State, Verified
from stepper.session.steps import By, RoundSort, sort_of
from tests.fixtures import plan_named
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
        Taken as done: up to Yoke, round 6 of 6, Divide, which goes from 246 to 156 stitches.
        Body, round 1 of 15: knit all one hundred fifty six.
        > go to yoke round one
        Yoke, round 1 of 6: knit all two hundred twenty five.
        > go to round fifteen of body
        Taken as done: up to Body, round 14 of 15; two rounds among them change the number of stitches.
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
        By colour, in colourwork.
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
        By gap, in rounds with shaping.
        Change 1 of 21: knit five, make one.
        > go to round 4
        Taken as done: up to Yoke, round 3 of 6, chart cairn round 1.
        Yoke, round 4 of 6, chart cairn round 2: one chalk, four ember, one chalk, forty one times.
        > by colour
        By colour, in colourwork.
        Round 4, chart cairn round 2: one chalk.
        > go to round 2
        Yoke, round 2 of 6, Final increase, change 1 of 21: knit five, make one.
        > go to round 3
        Taken as done: up to Yoke, round 2 of 6, Final increase.
        Yoke, round 3 of 6, chart cairn round 1: two chalk.
        > go to body
        Taken as done: up to Yoke, round 6 of 6, Divide, which goes from 246 to 156 stitches.
        Body, round 1 of 15: knit all one hundred fifty six.
        """,
    )


def test_raglan_lace_colour_increase_and_plain_rounds_each_keep_a_choice_of_their_own() -> None:
    """From marker to marker in the raglan must not cut an increase round at its markers."""
    rounds = {
        sort_of(each): each
        for name in ("cardigan", "switchback", "shawl")
        for each in plan_named(name).rounds
    }
    chosen = {
        RoundSort.RAGLAN: By.MARKER,
        RoundSort.EVEN: By.GAP,
        RoundSort.TEXTURE: By.REPEAT,
        RoundSort.COLOURS: By.COLOUR,
    }
    state = State()
    for sort, by in chosen.items():
        state = evolve(state, StrideSet(at=AT, by=by, sort=sort))

    assert {sort: state.knitting.by_of(rounds[sort]) for sort in chosen} == chosen
    assert state.knitting.by_of(rounds[RoundSort.PLAIN]) is By.ROUND
    assert state.knitting.by_of(rounds[RoundSort.SHAPING]) is By.ROUND


def test_a_choice_made_for_all_shaped_rounds_holds_until_one_sort_is_chosen_anew() -> None:
    """A journal of before had one choice for the raglan and the even increases."""
    rounds = {sort_of(each): each for name in ("cardigan", "switchback") for each in plan_named(name).rounds}
    state = evolve(State(), StrideSet(at=AT, by=By.GAP, sort=RoundSort.SHAPED))
    assert state.knitting.by_of(rounds[RoundSort.RAGLAN]) is By.GAP

    state = evolve(state, StrideSet(at=AT, by=By.MARKER, sort=RoundSort.RAGLAN))
    assert state.knitting.by_of(rounds[RoundSort.RAGLAN]) is By.MARKER
    assert state.knitting.by_of(rounds[RoundSort.EVEN]) is By.GAP


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


def _moved(session: Session, cue: Cue) -> tuple[int, int] | None:
    """Return the place a cue leads to, as round and stitch; None if it is refused."""
    considered = session.consider(cue)
    if not considered.events:
        assert any(isinstance(each, Refuse) for each in considered.effects)
        return None
    place = considered.state.place
    return place.index, place.stitch


def _event(session: Session, cue: Cue) -> Event:
    (event,) = session.consider(cue).events
    return event


def test_what_lies_ahead_is_called_by_its_name_before_what_is_done() -> None:
    """ "At the division" is the next one, and the last one where none is left. By hand, of the scenario: the yoke begins
    with round 2, the increase is round 3, the division round 7, the body round 8 and its rib round 18."""
    garment = final_increase()
    found = {
        (name, here): round_called(garment, name, here)
        for name in ("yoke", "FINAL  increase", "division", "split", "body", "ribbing", "rib", "attic", "")
        for here in (0, 3, 7, 8, 18, 20, 22)
    }
    expected = {
        "yoke": 2,
        "FINAL  increase": 3,
        "division": 7,
        "split": 7,
        "body": 8,
        "ribbing": 18,
        "rib": 18,
    }
    assert found == {(name, here): expected.get(name) for name, here in found}


def test_of_two_rounds_of_one_name_the_next_is_meant_and_else_the_last() -> None:
    """A sock is knitted twice, a rib begins and ends it. By hand: ribs begin with rounds 1 and 5, and are not begun
    again by the second round of either."""
    rib, plain = "(k2 p2)x5", "k20"
    sock = plan(("left sleeve", ["co20", rib, rib, plain, plain]), ("right sleeve", [rib, rib, plain]))
    assert [round_called(sock, "ribbing", here) for here in range(8)] == [1, 1, 5, 5, 5, 5, 5, 5]
    assert [round_called(sock, "sleeves", here) for here in (0, 1, 5, 6)] == [0, 5, 5, 5]
    assert round_called(sock, "right sleeve", 0) == 5
    assert round_called(sock, "sleeve of the jacket", 0) is None
    assert bare_words("Right  Sleeves") == {"right", "sleeve"}


def test_rounds_knitted_in_silence_are_taken_as_done_up_to_the_last_one() -> None:
    """From the twenty first of 23 rounds three can be done, and not four."""
    done = {rounds: _moved(_at(20, 5), RoundsDone(at=AT, rounds=rounds)) for rounds in (-1, 0, 1, 2, 3, 4)}
    assert done == {-1: None, 0: None, 1: (21, 0), 2: (22, 0), 3: (23, 0), 4: None}
    event = _event(_at(20, 5), RoundsDone(at=AT, rounds=2))
    assert isinstance(event, Placed)
    assert event.stitches == 156 - 5 + 156


def test_a_round_is_known_by_its_yarn_as_far_ahead_as_a_knitter_works_without_a_word() -> None:
    """Nine rounds on, another round in that yarn is meant. By hand: ember is worked in round 9 alone."""
    striped = plan(("body", ["co40", *["k40"] * 8, "k40:B", "k40"]))
    assert MOST_UNTOLD == 8

    def from_round(index: int, yarn: str, stitch: int = 0) -> tuple[int, int] | None:
        knitting = Knitting(place=Position(index=index, stitch=stitch))
        return _moved(Session(striped, State(seq=1, knitting=knitting)), YarnDone(at=AT, yarn=yarn))

    assert [from_round(index, "ember") for index in (0, 1, 2, 8, 9, 10)] == [None, *[(10, 0)] * 4, None]
    assert from_round(9, "EMBER", stitch=7) == (10, 0)
    assert from_round(3, "b") == (10, 0)
    assert from_round(3, "chalk") == (4, 0)
    assert from_round(3, "coal") is None


def test_rounds_are_gone_back_to_their_beginning_and_no_further_than_the_first() -> None:
    """Each with the stitches that come off: 225 of the neckband's rounds and what is worked of the one in hand; asked how many, she stays."""
    back = {
        (stitch, rounds): _moved(_at(2, stitch), RoundsBack(at=AT, rounds=rounds))
        for stitch in (0, 10)
        for rounds in (-1, 0, 1, 2, 3)
    }
    assert back == {
        (0, -1): (2, 0), (0, 0): None, (0, 1): (1, 0), (0, 2): (0, 0), (0, 3): None,
        (10, -1): (2, 10), (10, 0): (2, 0), (10, 1): (1, 0), (10, 2): (0, 0), (10, 3): None,
    }  # fmt: skip
    event = _event(_at(2, 10), RoundsBack(at=AT, rounds=2))
    assert isinstance(event, Returned)
    assert event.stitches == 225 + 225 + 10


def test_only_a_round_of_the_section_can_be_gone_to() -> None:
    """The yoke has six rounds, so there is no nought and no seventh; a label is a round by itself, also with its number
    unsaid, and the division has a name of its own."""
    inside = {number: _moved(_at(3, 10), GoTo(at=AT, round_number=number)) for number in (-1, 0, 1, 2, 6, 7)}
    assert inside == {-1: None, 0: None, 1: (2, 0), 2: (3, 0), 6: (7, 0), 7: None}
    assert _moved(_at(20), GoTo(at=AT, place="final increase")) == (3, 0)
    assert _moved(_at(3), GoTo(at=AT, place="Division")) == (7, 0)
    assert _moved(_at(3), GoTo(at=AT, place="body")) == (8, 0)
    assert _moved(_at(23), GoTo(at=AT, round_number=15)) == (22, 0)
    back = _event(_at(3, 10), GoTo(at=AT, round_number=1))
    ahead = _event(_at(3, 10), GoTo(at=AT, round_number=6))
    assert isinstance(back, Jumped)
    assert isinstance(ahead, Jumped)
    assert (back.stitches, ahead.stitches) == (225 + 10, 0)


def test_a_jump_is_off_the_path_where_no_good_count_vouches_for_the_way() -> None:
    """Between the last good count and the stitch in hand all was counted or told; a jump before or beyond leaves
    rounds that nobody has vouched for."""
    knitting = Knitting(place=Position(index=4), verified=Verified(place=Position(index=3), stitches=225))
    jumps = {}
    for number in (1, 2, 3, 4):
        event = _event(
            Session(final_increase(), State(seq=1, knitting=knitting)), GoTo(at=AT, round_number=number)
        )
        assert isinstance(event, Jumped)
        jumps[event.place.index] = event.off_path
    assert jumps == {2: True, 3: False, 4: False, 5: True}
    uncounted = _event(_at(4), GoTo(at=AT, round_number=6))
    assert isinstance(uncounted, Jumped)
    assert not uncounted.off_path


def test_a_place_in_the_round_is_one_of_its_stitches() -> None:
    """From none to all 246; what was worked on the way is counted, and less than none where she goes back."""
    placed = {
        stitch: _moved(_at(3, 10), AtStitch(at=AT, stitch=stitch)) for stitch in (-1, 0, 1, 245, 246, 247)
    }
    assert placed == {-1: None, 0: (3, 0), 1: (3, 1), 245: (3, 245), 246: (4, 0), 247: None}
    for stitch, worked in ((0, -10), (1, -9), (245, 235), (246, 236)):
        event = _event(_at(3, 10), AtStitch(at=AT, stitch=stitch))
        assert isinstance(event, Placed)
        assert event.stitches == worked


def test_the_next_marker_is_one_that_lies_ahead() -> None:
    """At a marker the one after it is meant. By hand: markers after 5 and 15 of 20."""
    marked = plan(("body", ["co20", "k5 pm k10 pm k5"]))
    found = [
        _moved(
            Session(marked, State(seq=1, knitting=Knitting(place=Position(index=1, stitch=at)))),
            AtMarker(at=AT),
        )
        for at in (0, 4, 5, 14, 15, 19)
    ]
    assert found == [(1, 5), (1, 5), (1, 15), (1, 15), None, None]


def test_without_a_name_the_stride_goes_round_all_there_are() -> None:
    """A pedal has one button: as often as there are strides, and she is where she began."""
    session, seen = _at(3), [_at(3).state.knitting.by_of(final_increase().rounds[3])]
    for _ in By:
        session.adopt(session.consider(Stride(at=AT)))
        seen.append(session.state.knitting.by_of(final_increase().rounds[3]))
    assert seen[0] is seen[-1]
    assert seen[:-1] == list(By)[list(By).index(seen[0]) :] + list(By)[: list(By).index(seen[0])]


def test_a_step_forth_and_back_tells_the_stitches_worked() -> None:
    """From the middle of a step only what is left of it, and back only what was done. By hand: the second step of the
    increase is from stitch 102 to 149."""
    forth, back = _event(_at(3, 120), Next(at=AT)), _event(_at(3, 120), Back(at=AT))
    assert isinstance(forth, Advanced)
    assert (forth.origin, forth.place, forth.stitches) == (
        Position(index=3, stitch=120),
        Position(index=3, stitch=149),
        29,
    )
    assert isinstance(back, Returned)
    assert (back.origin, back.place, back.stitches) == (
        Position(index=3, stitch=120),
        Position(index=3, stitch=102),
        18,
    )
    assert _moved(_at(1), Back(at=AT)) == (0, 0)
    assert _moved(_at(0, 1), Back(at=AT)) == (0, 0)


def test_what_is_called_nothing_is_refused_and_the_division_is_found_without_a_label() -> None:
    """She says what she calls it; the label of a nearer round comes first."""
    divided = plan(
        ("yoke", ["co40", "k40", "k30 hold10:strap", "k30"]), ("body", ["k30", "k20 hold10:pocket", "k20"])
    )

    def gone(index: int, place: str) -> tuple[int, int] | None:
        return _moved(
            Session(divided, State(seq=1, knitting=Knitting(place=Position(index=index)))),
            GoTo(at=AT, place=place),
        )

    assert gone(0, "the attic") is None
    assert gone(0, "division") == (2, 0)
    assert gone(4, "Divide") == (5, 0)


def test_where_a_file_names_no_yarn_none_is_listed_and_a_marker_in_a_yarn_is_no_round_in_it() -> None:
    """ "There are: ." would be half a sentence; a contrast marker is placed and not knitted."""
    body = plan(("body", ["co40", "k20 pm:B k20", "k40:B"]), yarns={})
    (refused,) = Session(body).consider(YarnDone(at=AT, yarn="ember")).effects
    assert isinstance(refused, Refuse)
    assert refused.sentence == "No yarn here is called ember."
    marked = plan(("body", ["co40", "k20 pm:B k20", "k40:B"]))
    assert _moved(Session(marked), YarnDone(at=AT, yarn="ember")) == (3, 0)


def test_a_section_is_meant_by_its_words_in_any_order_and_a_rib_by_name_before_one_by_its_stitches() -> None:
    """ "Sleeve left" is the left sleeve. A section that is called rib is the one she means, though others are ribbed."""
    garment = plan(
        ("cuff", ["co20", "(k2 p2)x5", "k20"]), ("left sleeve", ["k20", "k20"]), ("rib", ["k20", "(k2 p2)x5"])
    )
    assert round_called(garment, "sleeve left", 0) == 3
    assert round_called(garment, "sleeve", 0) == 3
    assert round_called(garment, "rib", 0) == 5
    assert round_called(garment, "ribbing", 0) == 1


def test_from_the_beginning_of_a_round_it_goes_back_to_the_last_step_of_the_one_before() -> None:
    """Not to its first: her needles are at its end. By hand, of a round in three steps by the repeat."""
    garment = plan(("body", ["co12", "(k2 p2)x3", "k12"]))
    session = Session(garment, State(seq=1, knitting=Knitting(place=Position(index=2), by=By.REPEAT)))
    places = []
    for _ in range(3):
        session.adopt(session.consider(Back(at=AT)))
        places.append(session.state.place)
    assert places == [Position(index=1, stitch=8), Position(index=1, stitch=4), Position(index=1)]
