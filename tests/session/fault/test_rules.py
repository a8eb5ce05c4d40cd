from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from stepper.language.understanding.understand import understand
from stepper.session.codec import decode_event, encode_event
from stepper.session.cues import (
    Choose,
    Count,
    CountAloud,
    Cue,
    FaultIn,
    Lifeline,
    MarkerCounts,
    Saw,
    SectionCount,
    Ten,
    Tink,
    Undo,
)
from stepper.session.events import Counted, Doubted, Event, Observed, Searched
from stepper.session.machine import Session
from stepper.session.replay import replay_events
from stepper.session.state import Fault, Knitting, Observation, Position, Seen, State, Verified
from tests.agreed_sitting import plan_of
from tests.plans import final_increase, plan
from tests.playbook import AT, after, check, opened, tell, transcript
from tests.tables import each_row

HAT = Path(__file__).parents[3] / "sample_projects" / "hat.yaml"


def _cue(said: str, session: Session) -> Cue:
    cue = understand(said, session.plan, at=AT)
    assert isinstance(cue, Cue)
    return cue


MARKED = plan(
    ("yoke", [("co80", {"markers": (20, 40, 60)}), ("k80", {"markers": (20, 40, 60)}), "k80", "k80"])
)


def _at(index: int, stitch: int = 0) -> Session:
    verified = Verified(place=Position(index=1), stitches=80)
    knitting = Knitting(place=Position(index=index, stitch=stitch), verified=verified)
    return Session(MARKED, State(seq=1, knitting=knitting))


def test_a_fault_is_found_named_and_mended() -> None:
    """The whole way: a count, the loop, counts between markers, the first remedy, and its place in the next round.
    The stretch that is left is counted as well, and one way is said at a time."""
    session = _at(2)
    check(
        session,
        """
        > count is 79
        79: 1 fewer than 80.
        Is there a loose loop below the needles? Say: I see a loop, or: no loop.
        > no loop
        In parts: count up to the first marker: 20 expected. Say: there are, and the number.
        > there are 20
        Count from the first marker to the second: 20 expected. Say: yes, or the number.
        > there are 20
        Count from the second marker to the third: 20 expected. Say: yes, or the number.
        > count is 20
        Count from the third marker to the end: 20 expected. Say: yes, or the number.
        > there are 19
        The fault lies from the third marker to the end: 1 too few. Say: what can I do.
        > what happened
        Probably two stitches were worked together by mistake in yoke round 2, going by the count.
        > what can i do
        Make one after stitch 70 of yoke round 3; it hardly shows. Say: take remedy 1, or: what else.
        > what else
        2, undo 20 stitches back to stitch 60 of yoke round 2, about 1 minute; 3, go on, with 79 stitches to
            the end of yoke; 4, rip 1 round back to the beginning of yoke round 2, about 6 minutes.
        > take remedy 1
        Mend in this round: at stitch 70, make one.
        Yoke, round 3 of 4: knit seventy, make one, knit nine.
        > how many stitches
        79 stitches now, 80 at the end.
        > undo that
        Taken back: the remedy.
        Yoke, round 3 of 4: knit all eighty.
        > take remedy 3
        Go on; all that follows is said for the stitches you have.
        Yoke, round 3 of 4: knit all seventy nine.
        > count is 79
        79, as it should be.
        """,
    )


def test_counting_once_more_changes_nothing_and_is_offered_once() -> None:
    """The cheapest slip of all is one of counting; a second count that says the same is believed, and what was said of
    the loop still holds."""
    session = _at(2)
    check(
        session,
        """
        > count is 79
        79: 1 fewer than 80.
        Is there a loose loop below the needles? Say: I see a loop, or: no loop.
        > what can i do
        Look first: is there a loose loop below the needles? Say: I see a loop, or: no loop.
        > no
        In parts: count up to the first marker: 20 expected. Say: there are, and the number.
        > take remedy 1
        Count once more: 80 expected. Say: count is, and the number.
        > count is 80
        80, as it should be.
        """,
    )
    assert session.state.knitting.fault is None
    assert session.state.knitting.faults == 0, "a slip of counting is no fault of her knitting"
    twice = after(_at(2), "count is 79", "no loop", "i miscounted", "count is 79")
    assert twice.state.knitting.fault == Fault(
        place=Position(index=2), difference=-1, sights=(Observation(seen=Seen.LOOP, number=0),), confirmed=True
    )


def test_where_all_stretches_are_as_expected_it_is_all_there() -> None:
    """Nothing is cut or made because of one wrong count, in whatever order the stretches are counted."""
    session = after(_at(2), "count is 79", "no loop", "there are 20", "there are 20", "there are 20")
    assert transcript(session, "> there are 20").endswith("It is all there: 80. The count was a slip.")
    assert session.state.knitting.fault is None
    assert session.state.knitting.verified == Verified(place=Position(index=2), stitches=80)
    at_once = after(_at(2), "count is 79", "no loop", "between 20 20 20 20")
    assert at_once.state.knitting.fault is None


def test_a_part_that_is_as_expected_is_answered_in_one_word() -> None:
    """Yes and no are heard best over a film. The first part is answered by its number: counting the whole once more is
    open as well then, and a yes might be about that."""
    session = after(_at(2), "count is 79", "no loop")
    check(
        session,
        """
        > yes
        Say the number.
        > there are 20
        Count from the first marker to the second: 20 expected. Say: yes, or the number.
        > no
        Say the number.
        > yes
        Count from the second marker to the third: 20 expected. Say: yes, or the number.
        > there are 19
        The fault lies from the second marker to the third: 1 too few. Say: what can I do.
        """,
    )
    by_number = after(_at(2), "count is 79", "no loop", "there are 20", "there are 20", "there are 19")
    assert session.state.knitting.fault == by_number.state.knitting.fault


def test_a_yes_that_was_heard_badly_is_read_back() -> None:
    """It stands for a number, and a heard number is not yet a fact."""
    session = after(_at(2), "count is 79", "no loop", "there are 20")
    badly = session.consider(replace(_cue("yes", session), heard=0.5)).events
    assert [type(each) for each in badly] == [Doubted]
    well = session.consider(replace(_cue("yes", session), heard=0.9)).events
    assert [type(each) for each in well] == [Searched]


def test_what_she_chose_to_look_at_or_to_count_is_what_yes_is_about() -> None:
    """A part is still to be counted then; a yes to the question must not become its count."""
    hat = plan_of(HAT.read_text(encoding="utf-8"), None)
    assert hat is not None
    good = Verified(place=Position(index=50), stitches=hat.rounds[49].after)
    knitting = Knitting(place=Position(index=56), verified=good)

    def counted() -> Session:
        return after(Session(hat, State(seq=1, knitting=knitting)), "count is 47", "no loop", "there are 9")

    check(
        counted(),
        """
        > take remedy 3
        Did round 9 come out at its end? Say: it came out, or how many left over or short.
        > what can i do
        Look first: did round 9 come out at its end? Say: it came out, or how many left over or short.
        > yes
        Count after the second decrease up to and including the fourth: 10 expected. Say: yes, or the
            number.
        > yes
        Count after the fourth decrease up to and including the sixth: 10 expected. Say: yes, or the
            number.
        """,
    )
    check(
        counted(),
        """
        > take remedy 2
        Count once more: 45 expected. Say: count is, and the number.
        > yes
        Say the number.
        """,
    )


def test_a_live_loop_is_caught_before_anything_else() -> None:
    """No other way is offered while it hangs; "I dropped a stitch" begins it, without a count."""
    session = _at(2)
    check(
        session,
        """
        > i dropped a stitch
        Catch the loop first: put a hook through it, draw each bar above through, in pattern, up to the needle. Then
            say: it is caught.
        > what else
        That is the only way now.
        > it is caught
        Count now: 80 expected, now that the loop is caught.
        > count is 80
        80, as it should be.
        """,
    )
    counted = after(_at(2), "count is 79", "yes")
    assert transcript(counted, "> what can i do").splitlines()[1].startswith("Catch the loop first")
    assert after(counted, "take remedy 1").state.knitting.fault is None


def test_two_faults_are_mended_one_after_the_other() -> None:
    """Each with its sign and in its own stretch: the first in the next round, after which the count is asked for that
    finds the second."""
    session = _at(2)
    check(
        session,
        """
        > count is 78
        78: 2 fewer than 80.
        Is there a loose loop below the needles? Say: I see a loop, or: no loop.
        > no
        In parts: count up to the first marker: 20 expected. Say: there are, and the number.
        > there are 19
        Two faults: 1 too few up to the first marker; 1 too few elsewhere, for later. Say: what can I do.
        > take remedy 1
        Mend in this round: at stitch 10, make one.
        Yoke, round 3 of 4: knit ten, make one, knit sixty nine.
        > next step
        Count now: 80 expected, after the mend.
        Round 4: knit all eighty.
        > count is 79
        79: 1 fewer than 80.
        Is there a loose loop below the needles? Say: I see a loop, or: no loop.
        """,
    )


def test_taking_work_back_moves_the_place() -> None:
    """What she undoes is said in reverse, and the session stands where she then stands."""
    session = after(
        _at(2), "count is 79", "no loop", "there are 20", "there are 20", "there are 19", "take remedy 2"
    )

    assert session.state.place == Position(index=1, stitch=40)
    assert session.state.knitting.fault is None


@each_row(
    ("said", "answer"),
    [
        ("count is 161", "161 cannot be; 80 are expected."),
        ("between 20 20 20 18", "These add up to 78, but the whole count was 79."),
        ("between 20 20 39", "3 counts were given for 4 stretches."),
        ("there are 400", "400 cannot be; 20 are expected there."),
        ("there are -4", '"-4" is not a whole number that I know.'),
        ("count is minus four", '"minus four" is not a whole number that I know.'),
        ("mistake in round 4", "Round 4 is not knitted yet."),
        ("mistake in round 40", "This section has 4 rounds."),
        ("take remedy 9", "There are 4 remedies."),
        ("unknit 0", "That undoes nothing."),
        ("unknit 900", "So many stitches are not knitted yet."),
        ("count is lots", '"lots" is not a whole number that I know.'),
    ],
)
def test_what_cannot_be_is_said_in_a_sentence_and_changes_nothing(said: str, answer: str) -> None:
    """No count, marker count or round that cannot be moves anything."""
    session = after(_at(2), "count is 79", "no loop")
    before = session.state

    assert transcript(session, f"> {said}") == f"> {said}\n{answer}"
    assert session.state == before


@pytest.mark.parametrize(
    "said", ["there are 40", "what happened", "what can i do", "take remedy 1", "no loop"]
)
def test_without_a_fault_nothing_is_mended(said: str) -> None:
    """One sentence, nothing changed."""
    session = _at(2)
    before = session.state
    assert "Count your stitches" in transcript(session, f"> {said}")
    assert session.state == before


def test_a_count_aloud_is_kept_and_can_be_laid_down() -> None:
    """Tens are added up and said back; she may stop in the middle and go on later."""
    session = _at(2)
    check(
        session,
        """
        > ten
        10 alone is far from 80 stitches. Say: go back 10 rounds; or: 10 rounds done.
        > count with me
        Count with me: say each ten, then: that is all of them.
        > ten
        10 so far.
        > ten and four
        24 so far.
        > stop listening
        You begin yoke round 3.
        Not listening until you say: start listening.
        > start listening
        Listening.
        Yoke, round 3 of 4: knit all eighty.
        > where was I counting
        24 so far.
        > and fifty six
        80 so far.
        > that is all of them
        80, as it should be.
        """,
    )
    assert session.state.knitting.tens is None


def test_a_break_says_the_place_first() -> None:
    """A cue just before a break shortens coming back (Altmann and Trafton 2004), and it is said again after
    it."""
    check(
        _at(1, stitch=31),
        """
        > wait for me
        You are 11 stitches past the first marker.
        Not listening until you say: start listening.
        > start listening
        Listening.
        You are 11 stitches past the first marker.
        At stitch 31: knit forty nine.
        """,
    )


def test_everything_can_be_replayed_and_taken_back() -> None:
    """The events alone lead to the same state; one undo takes back one cue."""
    session = opened(final_increase())
    kept: list[Event] = list(Session(final_increase()).consider_opening(AT, "first").events)
    for said in (
        "go to yoke round 3",
        "count is 245",
        "there are 20",
        "no loop",
        "lifeline here",
        "ask more",
    ):
        before = session.state.knitting
        from_cue = session.consider(_cue(said, session))
        tell(session, from_cue)
        kept += from_cue.events
        if from_cue.events:
            undone = session.consider(Undo(at=AT))
            assert undone.state.knitting == before
    read_back = [decode_event(*encode_event(event)) for event in kept]
    assert replay_events(enumerate(read_back, 1)) == session.state


def _taken(session: Session, cue: Cue) -> bool:
    """Return whether a cue leads to anything."""
    return bool(session.consider(cue).events)


def test_a_count_aloud_goes_up_to_twice_what_there_should_be() -> None:
    """Eighty are expected: a hundred and sixty are a slip, one more was the film; none at all is no ten."""
    for said, taken in ((0, False), (1, True), (10, True), (160, True), (161, False)):
        assert _taken(after(_at(2), "count with me"), Ten(at=AT, stitches=said)) is taken, said
    for said, taken in ((60, True), (61, False)):
        assert (
            _taken(after(_at(2), "count with me", "and one hundred"), Ten(at=AT, stitches=said)) is taken
        ), said
    assert not _taken(_at(2), Ten(at=AT, stitches=10)), "no count was begun"
    assert not _taken(after(_at(2), "count with me", "ten"), CountAloud(at=AT)), "it goes on"


def test_as_much_can_be_unknitted_as_was_knitted() -> None:
    """The two rounds of eighty, the cast-on among them, and not a stitch more."""
    for stitches, taken in ((-1, False), (0, False), (1, True), (160, True), (161, False)):
        assert _taken(_at(2), Tink(at=AT, stitches=stitches)) is taken, stitches


def test_a_lifeline_goes_in_between_rounds_once_there_is_one() -> None:
    """Through a round half worked it holds half of it."""
    assert [_taken(_at(*place), Lifeline(at=AT)) for place in ((0, 0), (1, 0), (2, 0), (2, 1))] == [
        False, True, True, False,
    ]  # fmt: skip


def test_a_mistake_is_in_a_round_that_is_begun() -> None:
    """The third of four rounds counts as knitted from its first stitch on."""
    for place, known in (((2, 0), [1, 2]), ((2, 1), [1, 2, 3]), ((4, 0), [1, 2, 3, 4])):
        session = after(_at(*place), "count is 79")
        assert [each for each in range(-1, 7) if _taken(session, FaultIn(at=AT, round_number=each))] == known
    (event,) = _at(2, 1).consider(FaultIn(at=AT, round_number=3)).events
    assert isinstance(event, Observed)
    assert event.index == 2


def test_a_mistake_lies_so_many_rounds_below_the_needles() -> None:
    """She counts down from the needle, and knows no number; by hand, two below the beginning of the fourth is the second."""
    for place, known in (((3, 0), {1: 2, 2: 1, 3: 0}), ((3, 1), {1: 2, 2: 1, 3: 0})):
        session = _at(*place)
        taken = {each: session.consider(FaultIn(at=AT, back=each)).events for each in range(1, 6)}
        found = {each: events[0].index for each, events in taken.items() if events and isinstance(events[0], Observed)}
        assert found == known


def test_a_loop_or_stitches_left_over_begin_a_search_and_nothing_else_that_is_seen_does() -> None:
    """No loop is no news before a count, and the first stitch has nothing below it."""
    begins = {
        (seen, number): _taken(_at(2), Saw(at=AT, seen=seen, number=number))
        for seen in Seen
        for number in (0, 1)
    }
    assert begins == {
        (seen, number): seen is Seen.LEFT or (seen is Seen.LOOP and number == 1) for seen, number in begins
    }
    assert [_taken(_at(2), Saw(at=AT, seen=Seen.LEFT, number=each)) for each in (-1, 9999, 10000)] == [
        False, True, False,
    ]  # fmt: skip
    assert not _taken(_at(0), Saw(at=AT, seen=Seen.LOOP, number=1))
    assert _taken(_at(0, 1), Saw(at=AT, seen=Seen.LOOP, number=1))


def test_what_is_left_over_belongs_to_the_round_last_worked_at() -> None:
    """Between two rounds it is the one just finished. Too few are kept as less than none."""
    for place, index in (((2, 0), 1), ((2, 5), 2), ((4, 0), 3)):
        (event,) = _at(*place).consider(Saw(at=AT, seen=Seen.LEFT, number=2, sign=-1)).events
        assert isinstance(event, Observed)
        assert event.sight == Observation(seen=Seen.LEFT, number=-2, index=index)


def test_a_remedy_is_one_of_those_there_are() -> None:
    """The number that she says is that of the list, from one on."""
    session = after(_at(2), "count is 79", "no loop")
    assert [each for each in range(-1, 8) if _taken(session, Choose(at=AT, number=each))] == [1, 2, 3, 4]


def test_counts_of_all_stretches_have_to_make_up_the_whole() -> None:
    """One fewer in one of the four stretches of twenty, or all as they should be, which makes the whole right; anything
    else was miscounted. By hand, for 79 of 80."""
    session = after(_at(2), "count is 79", "no loop")

    def events(*counts: int) -> list[type]:
        return [type(each) for each in session.consider(MarkerCounts(at=AT, counts=counts)).events]

    assert events(20, 19, 20, 20) == [Searched]
    assert events(20, 20, 20, 20) == [Counted]
    assert events(40, 0, 19, 20) == [Searched], "twice as many are not impossible"
    assert events(41, 0, 18, 20) == []
    assert events(40, -1, 20, 20) == []
    assert events(20, 20, 20, 18) == []
    assert events(20, 20, 20) == []
    assert events(20, 20, 20, 19, 0) == []


def test_a_number_said_while_a_part_is_asked_for_is_of_what_it_is_nearer_to() -> None:
    """Twenty are asked for and eighty there should be, of which 79 were counted: up to 49 it is the part."""
    session = after(_at(2), "count is 79", "no loop")
    kinds = {}
    for said in (0, 19, 20, 21, 39, 49, 50, 78, 79, 80, 160):
        kinds[said] = [type(each) for each in session.consider(Count(at=AT, stitches=said)).events]
    assert kinds[20] == kinds[19] == kinds[21] == [Searched]
    assert kinds[0] == kinds[39] == [Doubted], "of all only one is missing"
    assert kinds[49] == [], "of the part, and too many for it"
    assert kinds[50] == kinds[79] == kinds[160] == [Counted]
    assert kinds[78] == kinds[80] == [Counted]
    assert not _taken(session, SectionCount(at=AT, stitches=-1))
    assert _taken(session, SectionCount(at=AT, stitches=0))


@pytest.mark.parametrize(
    ("whole", "behind", "last"), [(66, 33, "half"), (103, 75, "third quarter"), (41, 20, "half")]
)
def test_the_count_behind_the_last_marker_hung_is_a_count_of_all(whole: int, behind: int, last: str) -> None:
    """Markers hung at the half or the quarters leave only what is behind the last to count. By hand: 33 of 66 are marked
    off, 75 of 103 and 20 of 41, and what is counted behind them is added."""
    body = plan(("body", [f"co{whole}", f"k{whole}", f"k{whole}"]))
    session = after(opened(body), "next step", "next step", f"count {whole + 1}")
    for more in (0, 1, 2):
        (event,) = session.consider(SectionCount(at=AT, stitches=whole - behind + more)).events
        assert isinstance(event, Counted), last
        assert (event.stitches, event.expected) == (whole + more, whole)


def test_a_number_just_between_the_part_and_the_whole_is_of_the_whole() -> None:
    """By hand: 49 is 29 more than the part of twenty and 29 fewer than the 78 she counted; one fewer is nearer to the
    part, and too many for it."""
    session = after(_at(2), "count is 78", "no loop")
    assert [type(each) for each in session.consider(Count(at=AT, stitches=49)).events] == [Counted]
    assert session.consider(Count(at=AT, stitches=48)).events == ()


def test_once_she_has_knitted_on_all_is_counted_anew_and_no_part_of_what_was_below() -> None:
    """A round later what hangs between two markers is of the new round: a number is of all of it, though it were nearer to
    the part that was asked for; and what was only seen asks for the part no longer."""
    session = after(_at(2), "count is 79", "no loop", "next step")
    assert [type(each) for each in session.consider(Count(at=AT, stitches=20)).events] == [Counted]
    for cue in (SectionCount(at=AT, stitches=20), MarkerCounts(at=AT, counts=(20, 20, 20, 19))):
        considered = session.consider(cue)
        assert considered.events == ()
        said = tell(session, considered)
        assert said == ["You have knitted on since that count: count all the stitches first."]
    (asked,) = tell(session, session.consider(Saw(at=AT, seen=Seen.CHANGES, number=0)))
    assert asked.startswith("Count once more: a marker after 40")


def test_in_the_last_round_a_fault_is_named_by_the_rounds_of_its_own_section() -> None:
    """A border of one round has no round below it in itself; what she names is not looked up in the body."""
    garment = plan(("body", ["co20", "k20"]), ("border", ["k20"]))
    session = Session(garment, State(seq=1, knitting=Knitting(place=Position(index=2))))
    assert transcript(session, "> mistake in round 2") == "> mistake in round 2\nThis section has 1 round."
    (effect,) = session.consider(FaultIn(at=AT, round_number=1)).effects
    assert "not knitted yet" in str(effect)


def test_what_is_asked_while_a_fault_is_sought_is_said_again() -> None:
    """Saying "what was that" she means the question that she did not catch, and not the round alone."""
    check(
        Session(MARKED, State(seq=1, knitting=Knitting(place=Position(index=2)))),
        """
        > count is 86
        86: 6 more than 80.
        In parts: count up to the first marker: 20 expected. Say: there are, and the number.
        > say again
        In parts: count up to the first marker: 20 expected. Say: there are, and the number.
        Round 3: knit all eighty.
        """,
    )
