from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.session.fault.diagnosis import diagnose
from stepper.session.fault.making_good import is_located, make_good, spread_left
from stepper.session.fault.search import search
from stepper.session.fault.ways import Remedy, RemedyKind
from stepper.session.machine import Session
from stepper.session.state import Answer, Fault, Knitting, Observation, Position, Seen, State, Verified
from tests.plans import plan
from tests.playbook import after, transcript

NO_LOOP = Observation(seen=Seen.LOOP, number=0)
GUSSET = plan(
    (
        "hand",
        [
            ("co40", {"markers": (10, 13)}),
            ("k10 m1 k3 m1 k27", {"markers": (10, 15)}),
            ("k42", {"markers": (10, 15)}),
            "k42",
        ],
    )
)
YOKE = plan(("yoke", ["co80", "(k8 m1)x10", "k90", "k90"]))


def _state(index: int, stitch: int = 0) -> State:
    place, verified = Position(index=index, stitch=stitch), Verified(place=Position(index=1), stitches=80)
    return State(knitting=Knitting(place=place, verified=verified))


def _ways(garment: object, state: State, fault: Fault) -> list[Remedy]:
    looking = search(garment, state, fault)  # type: ignore[arg-type] # a plan
    causes = diagnose(garment, state, fault)  # type: ignore[arg-type] # a plan
    return make_good(garment, state.place, fault, looking, causes)  # type: ignore[arg-type] # a plan


def test_an_increase_left_out_is_made_in_the_next_round_between_its_markers() -> None:
    """In the gusset and not beside it: strictly behind the first marker and before the second. By hand: a gusset of
    five from stitch 10 to 15, one of them missing, leaves 11 to 13."""
    state = _state(2)
    off = Answer(first=1, end=2, stitches=4)
    fault = Fault(place=Position(index=2), difference=-1, answers=(off,), sights=(NO_LOOP,))
    (way, *_) = _ways(GUSSET, state, fault)
    assert way.kind is RemedyKind.PLAIN
    assert way.mend is not None
    assert way.mend.index == 2
    assert 11 <= way.mend.stitch <= 13
    assert way.above == 0
    (unexplained, *_) = make_good(GUSSET, state.place, fault, search(GUSSET, state, fault), ())
    assert unexplained.above == 0


def test_how_far_below_its_mend_a_fault_lies_is_counted_from_the_likeliest_cause() -> None:
    """The step that shows is as many rounds up. By hand: the increase is missing in round 1, and the round to mend it in
    is the one in hand."""
    half = {"markers": (45,)}
    garment = plan(("yoke", [("co80", {"markers": (40,)}), ("(k8 m1)x10", half), *[("k90", half)] * 4]))
    off = Answer(first=0, end=1, stitches=44)
    for index in (2, 3, 4):
        fault = Fault(place=Position(index=index), difference=-1, answers=(off,), sights=(NO_LOOP,))
        (way,) = [way for way in _ways(garment, _state(index), fault) if way.kind is RemedyKind.PLAIN]
        assert way.above == index - 2


def test_nothing_is_made_good_before_a_count_says_where() -> None:
    """A count of the whole says nothing of the gusset."""
    state = _state(2)
    whole = Fault(place=Position(index=2), difference=-1, confirmed=True, sights=(NO_LOOP,))
    assert _ways(GUSSET, state, whole) == []
    assert not is_located(whole, search(GUSSET, state, whole), state.place)
    moved_on = replace(whole, answers=(Answer(first=1, end=2, stitches=4),))
    assert not is_located(moved_on, search(GUSSET, state, moved_on), Position(index=3))


def test_an_increase_is_made_above_the_one_that_was_left_out() -> None:
    """Counted from increase to increase the third runs on, so that its place is known to the stitch. By hand: after
    26 stitches, the 27th being the increase."""
    state = _state(2)
    answers = (Answer(first=0, end=2, stitches=18), Answer(first=2, end=3, stitches=17))
    fault = Fault(place=Position(index=2), difference=-1, answers=answers, sights=(NO_LOOP,))
    (way, *_) = _ways(YOKE, state, fault)
    assert way.mend is not None
    assert way.mend.stitch == 26


@pytest.mark.parametrize(("count", "made"), [(43, 4), (45, 6)])
def test_in_the_middle_of_an_increase_round_the_rest_is_spaced_anew(count: int, made: int) -> None:
    """Forty stitches were cast on and forty five are on the right needle by the plan: five increases; she has made one
    more or fewer. Nothing is ripped, and the round comes out at ninety."""
    garment = plan(("yoke", ["co80", "(k8 m1)x10", "k90"]))
    state = replace(_state(1, stitch=45), seq=1)
    session = Session(garment, state)
    whole = 85 + made - 5
    after(session, f"count is {whole}", *(["no loop"] if made < 5 else []), f"count is {whole}")
    said = transcript(session, "> what can i do")
    assert f"{made} of 10 are made" in said
    after(session, "take remedy 1")
    assert session.state.knitting.fault is None
    round_ = session.plan.rounds[1]
    assert round_.after == 90
    assert session.state.place.stitch == 40 + made
    assert count in (43, 45)


def test_only_evenly_spread_changes_may_be_moved() -> None:
    """A decrease at the edge has its place."""
    edge = plan(("front", ["co40", "k36 k2tog k2"]))
    assert (
        spread_left(
            edge,
            Knitting(place=Position(index=1, stitch=20)),
            Fault(place=Position(index=1, stitch=20), difference=1),
            (),
        )
        == []
    )


@pytest.mark.parametrize(
    ("line", "stitch", "by_difference"),
    [
        ("(k8 m1)x10", 45, {-6: None, -5: 0, -2: 3, -1: 4, 1: 6, 2: 7, 6: None}),
        ("(k6 k2tog)x10", 35, {-6: None, -2: 7, -1: 6, 1: 4, 2: 3, 5: 0, 6: None}),
        ("(k5 k3tog)x10", 30, {-2: 6, -1: None, 1: None, 2: 4, 3: None, 4: 3}),
    ],
)
def test_how_many_changes_were_made_follows_from_the_count(
    line: str, stitch: int, by_difference: dict[int, int | None]
) -> None:
    """Half-way through ten changes five are made by the plan: each stitch too many is an increase more or a decrease less,
    a double decrease takes two, and none can be less than not made or more than all. By hand."""
    garment = plan(("yoke", ["co80", line]))
    place = Position(index=1, stitch=stitch)
    knitting = Knitting(place=place, verified=Verified(place=Position(index=1), stitches=80))
    found = {}
    for difference in by_difference:
        ways = spread_left(garment, knitting, Fault(place=place, difference=difference), ())
        found[difference] = ways[0].made if ways else None
    assert found == by_difference


def test_what_is_left_of_a_round_is_spaced_anew_only_where_the_fault_is_in_it() -> None:
    """Counted right at its beginning, or known to have happened in it; a fault of a round below is none of its changes."""
    garment = plan(("yoke", ["co80", "k80", "(k8 m1)x10"]))
    place = Position(index=2, stitch=45)
    fault = Fault(place=place, difference=1)
    for index, offered in ((1, False), (2, True)):
        knitting = Knitting(place=place, verified=Verified(place=Position(index=index), stitches=80))
        assert bool(spread_left(garment, knitting, fault, ())) is offered
    knitting = Knitting(place=place, verified=Verified(place=Position(index=2), stitches=80))
    assert spread_left(garment, knitting, replace(fault, difference=0), ()) == []
    assert spread_left(garment, knitting, replace(fault, place=Position(index=2, stitch=44)), ()) == []
    at_start = replace(knitting, place=Position(index=2))
    assert spread_left(garment, at_start, replace(fault, place=Position(index=2)), ()) == []


@pytest.mark.parametrize("last", ["k15 hold10:sleeve k15", "k5 bo30 k5"])
def test_where_the_piece_is_divided_or_bound_off_no_stitch_is_made(last: str) -> None:
    """Of a ribbing with a stitch missing before the half, the next round divides the piece or binds off its middle: every
    stitch is spoken for where it is."""
    half = {"markers": (20,)}
    piece = plan(("yoke", [("co40", half), ("(k2 p2)x10", half), last]))
    fault = Fault(
        place=Position(index=2),
        difference=-1,
        answers=(Answer(first=0, end=1, stitches=19),),
        sights=(NO_LOOP,),
    )
    assert _ways(piece, _state(2), fault) == []


def test_an_even_round_with_too_few_changes_does_not_take_up_the_difference() -> None:
    """By hand: four increases cannot make six fewer; three too many they can take up, and one is left."""
    garment = plan(("yoke", ["co80", "k80", "(k20 m1)x4", "k84"]))
    state = _state(2)
    for off, taken_up in ((6, False), (3, True)):
        fault = Fault(place=Position(index=2), difference=off, confirmed=True, sights=(NO_LOOP,))
        ways = [way for way in _ways(garment, state, fault) if way.kind is RemedyKind.ACCEPT]
        assert bool(ways) is taken_up
