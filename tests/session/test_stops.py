"""What is told before a step as a step of its own, so that nothing she hears at one cue goes on too long."""

from __future__ import annotations

from dataclasses import replace
from itertools import chain

from stepper.language.aloud import spell_out
from stepper.language.effect_words import tell_effect
from stepper.plan.yarn.strand_remarks import catches_of
from stepper.session import cues
from stepper.session.codec import decode_event, encode_event
from stepper.session.effects import Lead, TellStep
from stepper.session.evolve import evolve_all
from stepper.session.machine import Session
from stepper.session.speech_length import seconds_of
from stepper.session.state import Position, ReadingAlong, State
from stepper.session.steps import By, cut_into_steps
from stepper.session.stops import list_first_catches, remarks_before, shorten_catches, stops_at, stops_before
from tests.fixtures import plan_named
from tests.plans import plan
from tests.playbook import AT, check, opened

PICKED_UP = plan(
    (
        "band",
        [
            "co88",
            (
                "k88 pu18",
                {"remarks": ("change to 4.5 mm needles", "with RS facing", "pick up along the right front edge")},
            ),
            "k106",
        ],
    )
)


def test_what_is_told_before_a_step_is_heard_done_and_answered_with_the_same_cue() -> None:
    """Twelve seconds at once are not kept in mind; the needle and the edge are something to do before the stitches."""
    check(
        opened(PICKED_UP),
        """
        > next step
        Change to 4.5 mm needles. With RS facing. Pick up along the right front edge.
        > next step
        Round 2: knit eighty eight, pick up and knit eighteen.
        > next step
        Round 3: knit all one hundred six.
        """,
    )


def test_again_undo_and_back_go_to_the_stop_or_the_step_she_heard_last() -> None:
    """She never has to know that the place did not move."""
    check(
        opened(PICKED_UP),
        """
        > next step
        Change to 4.5 mm needles. With RS facing. Pick up along the right front edge.
        > say that again
        Change to 4.5 mm needles. With RS facing. Pick up along the right front edge.
        > next step
        Round 2: knit eighty eight, pick up and knit eighteen.
        > say that again
        Round 2: knit eighty eight, pick up and knit eighteen.
        > undo that
        Taken back: the step.
        Change to 4.5 mm needles. With RS facing. Pick up along the right front edge.
        > next step
        Round 2: knit eighty eight, pick up and knit eighteen.
        > go back
        Change to 4.5 mm needles. With RS facing. Pick up along the right front edge.
        > go back
        Band, round 1 of 3: cast on eighty eight.
        > next step
        Change to 4.5 mm needles. With RS facing. Pick up along the right front edge.
        """,
    )


def test_the_next_day_she_is_where_she_stopped() -> None:
    """What is heard follows from the events alone, as they lie in the journal."""
    session = opened(PICKED_UP)
    events = []
    for _ in range(2):
        considered = session.consider(cues.Next(at=AT))
        events += [decode_event(*encode_event(each)) for each in considered.events]
        session.adopt(considered)
    assert session.state.place == Position(index=1)
    again = Session(PICKED_UP, evolve_all(State(), events))
    told = [tell_effect(each, PICKED_UP) for each in again.consider_opening(AT, "f").effects]
    assert told == ["Last done on 3 March: Band, round 1 of 3.", "Round 2: knit eighty eight, pick up and knit eighteen."]


def test_a_stop_is_no_knitting() -> None:
    """It has no stitches and takes no part in her pace."""
    session = opened(PICKED_UP)
    session.adopt(session.consider(cues.Next(at=AT)))
    considered = session.consider(cues.Next(at=AT))
    (event,) = considered.events
    assert (event.stitches, event.place) == (0, session.state.place)  # type: ignore[attr-defined] # a step on
    assert considered.state.worked == session.state.worked


def test_a_short_remark_is_told_with_its_step() -> None:
    """A cue more for four words would only keep her waiting."""
    garment = plan(("band", ["co88", ("k88", {"remarks": ("with A",)})]))
    assert stops_before(garment, garment.rounds[1], By.ROUND) == ()


def test_a_fact_is_told_with_its_step_however_long_it_is() -> None:
    """A cue that answers to nothing to do is one that she would have to say for the program's sake."""
    fact = "The Ladder repeats over 4 rows, the Rope over 8 and the Diamond over 10"
    garment = plan(("body", ["co88", ("k40 p8 k40", {"remarks": (fact,)}), "k88"]))
    assert stops_before(garment, garment.rounds[1], By.ROUND) == ()
    check(
        opened(garment),
        """
        > next step
        The Ladder repeats over 4 rows, the Rope over 8 and the Diamond over 10. Round 2: knit forty, purl eight, knit forty.
        > next step
        Round 3: knit all eighty eight.
        """,
    )


def test_a_fact_among_what_is_to_be_done_is_told_in_its_turn() -> None:
    """Needle and edge still are heard before the stitches, and the fact with them, once."""
    said = ("change to 4.5 mm needles", "The hem is meant to roll a little", "pick up along the right front edge, with RS facing")
    garment = plan(("band", ["co88", ("k88 pu18", {"remarks": said}), "k106"]))
    stops = stops_before(garment, garment.rounds[1], By.ROUND)
    assert tuple(chain(*stops)) == said


def test_making_up_is_led_in_once_at_a_stop() -> None:
    """Each stop says when, since she hears it before she binds off; within a stop once is enough."""
    done = tuple(f"when it is done: {each}" for each in ("Weave in all ends", "Join left back raglan and the ends of neckband", "When dry, trim ends"))
    garment = plan(("hat", ["co20", ("bo20", {"remarks": done})]))
    told = [tell_effect(TellStep(index=1, part=cut_into_steps(garment.rounds[1], By.ROUND)[0], lead=Lead.ROUND, stop=each), garment)
            for each in stops_before(garment, garment.rounds[1], By.ROUND)]
    assert told == [
        "When it is done: Weave in all ends. Join left back raglan and the ends of neckband. When dry, trim ends.",
    ]


def test_every_remark_of_a_garment_is_told_once_in_stops_or_with_its_step() -> None:
    """Nothing is lost between the two, whatever is read out at one cue."""
    garment = plan_named("switchback")
    parted = 0
    for round_ in garment.rounds:
        wanted = [*remarks_before(round_), *list_first_catches(garment, round_)]
        stops = stops_before(garment, round_, By.ROUND)
        parted += bool(stops)
        heard = tuple(chain(*stops))
        part = cut_into_steps(round_, By.ROUND)[0]
        step = TellStep(index=round_.index, part=part, lead=Lead.ROUND, heard=heard)
        told = [*(tell_effect(TellStep(index=0, part=part, lead=Lead.ROUND, stop=each), garment) for each in stops)]
        said = " ".join([*told, tell_effect(step, garment)]).casefold()
        assert all(said.count(each.rstrip(".").casefold()) == 1 for each in wanted), said
        assert all(seconds_of(spell_out(each)) <= 7.8 for each in told)
    assert parted > 5


def test_where_floats_are_caught_is_told_without_how_long_they_are() -> None:
    """That can be asked for."""
    garment = plan_named("switchback")
    caught = next(each for each in garment.rounds if catches_of(each))
    assert shorten_catches(catches_of(caught)) == ("Catch pine behind stitch 10 of each repeat",)


def test_a_round_read_along_has_no_stop() -> None:
    """It is read out run by run, and the first run brings what comes before it."""
    garment = plan(("band", ["co20", ("k5 m1 k10 m1 k5", {"remarks": ("pick up " * 12,)})]))
    session = opened(garment)
    session.adopt(session.consider(cues.Next(at=AT)))
    session.adopt(session.consider(cues.ReadAlong(at=AT)))
    session.adopt(session.consider(cues.Next(at=AT)))
    assert session.state.place == Position(index=1, stitch=5)


def test_a_jump_is_told_with_its_place_before_a_stop_and_taken_back_alike() -> None:
    """A stop has no place in it: who goes back to it, or takes a jump back, hears where she is now."""
    check(
        plan_named("switchback"),
        """
        > go to round 20 of yoke
        Taken as done: up to Yoke, round 19 of 37, chart ridge round 3; two rounds among them change the number of stitches.
        Catch ember behind stitches 5 and 10 of each repeat.
        > go to second increase
        Yoke, round 16 of 37, Second increase, at its beginning. 150 stitches on the needles.
        From the next round on 3 yarns at once, for 12 rounds: chalk, ember and pine.
        > undo
        Taken back: the jump.
        Yoke, round 20 of 37, chart ridge round 4, at its beginning. 225 stitches on the needles.
        Catch ember behind stitches 5 and 10 of each repeat.
        > next step
        Catch pine behind stitches 2 and 13 of each repeat.
        > undo
        Taken back: the step.
        Catch ember behind stitches 5 and 10 of each repeat.
        """,
    )


def test_rounds_at_once_lead_over_stops_and_yarns_taken_up_and_are_taken_back() -> None:
    """By number, by what she sees, by place: each says how far it takes the work for done, and undo returns."""
    check(
        plan_named("switchback"),
        """
        > go to round 4 of yoke
        Taken as done: up to Yoke, round 3 of 37; among them round 2, First increase, from 100 to 150 stitches.
        Yoke, round 4 of 37: knit all one hundred fifty.
        > the pine row is finished
        Taken as done: up to Yoke, round 5 of 37, chart trail round 1.
        Count now: 150 expected, before chart trail.
        A lifeline pays here. When it is in, say: lifeline here.
        Catch pine behind stitch 1 of each repeat.
        > undo
        Taken back: the place.
        Yoke, round 4 of 37: knit all one hundred fifty.
        > three rounds done
        Taken as done: up to Yoke, round 6 of 37, chart trail round 2.
        Count now: 150 expected, before chart trail.
        A lifeline pays here. When it is in, say: lifeline here.
        Round 7, chart trail round 3, repeat 1 of 15: two chalk, two pine, two chalk.
        > go back two rounds
        Yoke, round 5 of 37, chart trail round 1, at its beginning. 150 stitches on the needles.
        Carry pine below chalk, in every round with both. Catch pine behind stitch 10 of each repeat.
        > undo
        Taken back: going back.
        Yoke, round 7 of 37, chart trail round 3, repeat 1 of 15: two chalk, two pine, two chalk.
        > undo
        Taken back: the place.
        Yoke, round 4 of 37: knit all one hundred fifty.
        > go back 40 rounds
        Only 14 lie behind.
        """,
    )


def test_behind_the_last_round_and_while_it_is_read_along_nothing_is_told_before_the_step() -> None:
    """All is knitted, or the runs follow one another in her pace: a remark in between would take its place."""
    index = next(each.index for each in PICKED_UP.rounds if stops_before(PICKED_UP, each, By.ROUND))
    state = opened(PICKED_UP).state
    here = replace(state, knitting=replace(state.knitting, place=Position(index=index)))
    assert stops_at(PICKED_UP, here)[1] != ()
    assert stops_at(PICKED_UP, replace(here, reading=ReadingAlong(index=index))) == ((), ())
    end = replace(state, knitting=replace(state.knitting, place=Position(index=len(PICKED_UP.rounds))))
    assert stops_at(PICKED_UP, end) == ((), ())
