from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.language.effect_words import tell_effect
from stepper.plan.model import Plan, flatten
from stepper.session import clock_cues, cues
from stepper.session.effects import BeatIn
from stepper.session.machine import Session
from stepper.session.read_along import SHORTEST_S, cut_into_runs
from stepper.session.state import Knitting, Position, ReadingAlong, State, TimedStep
from tests.plans import phrase, plan
from tests.playbook import AT, check, opened

LACE = "(k2 yo ssk sm)x3 k4"


def _plan(text: str = LACE) -> Plan:
    uses = sum(run.uses for run in flatten(phrase(text)))
    return plan(("body", [f"co{uses}", text, f"k{uses}"]))


def _at_lace(**state: object) -> Session:
    return Session(_plan(), replace(opened(_plan()).state, **state))  # type: ignore[arg-type]


def _say(session: Session, cue: cues.Cue) -> tuple[list[str], BeatIn | None]:
    """Work off a cue; give what is told and the beat that is asked for."""
    considered = session.consider(replace(cue, at=AT))
    session.adopt(considered)
    lines = [line for effect in considered.effects if (line := tell_effect(effect, session.plan))]
    beats = [effect for effect in considered.effects if isinstance(effect, BeatIn)]
    return lines, beats[-1] if beats else None


def _read_through(session: Session) -> list[str]:
    """Read a round along to its end; give every line."""
    told_all, beat = _say(session, cues.ReadAlong())
    while beat is not None:
        lines, beat = _say(session, clock_cues.Beat(seq=beat.seq))
        told_all += lines
    return told_all


def test_a_round_is_read_run_by_run_with_markers_and_repeats_named_and_stops_before_its_end() -> None:
    """She hears each run in turn without a cue, and is asked to check before the round counts as done."""
    session = _at_lace()
    _say(session, cues.Next())
    assert _read_through(session) == [
        "Repeat 1 of 3: knit two.",
        "Yarn over.",
        "Slip slip knit, slip marker.",
        "Repeat 2 of 3: knit two.",
        "Yarn over.",
        "Slip slip knit, slip marker.",
        "Repeat 3 of 3: knit two.",
        "Yarn over.",
        "Slip slip knit, slip marker.",
        "Knit four.",
        "End of round 2: 16 stitches. Say next step when it is right.",
    ]
    assert session.state.place == Position(index=1, stitch=12)
    assert session.state.reading is None
    _say(session, cues.Next())
    assert session.state.place == Position(index=2)


def test_the_time_for_a_run_is_her_pace() -> None:
    """At 20 stitches a minute four stitches take 12 s: 4 x 60 / 20."""
    steps = tuple(TimedStep(stitches=100, seconds=300.0) for _ in range(3))
    session = _at_lace(
        worked=steps, knitting=replace(opened(_plan()).state.knitting, place=Position(index=1, stitch=12))
    )
    _, beat = _say(session, cues.ReadAlong())
    assert beat is not None
    assert beat.seconds == pytest.approx(12.0)


def test_slower_and_faster_correct_the_pace_and_come_back_to_it() -> None:
    """One step slower and one faster is the pace from before; the shortest time is that of saying it."""
    session = _at_lace(knitting=replace(opened(_plan()).state.knitting, place=Position(index=1)))
    _, first = _say(session, cues.ReadAlong())
    lines, slower = _say(session, cues.Slower())
    assert lines == ["Slower."]
    _, same = _say(session, cues.Faster())
    assert first is not None
    assert slower is not None
    assert same is not None
    assert slower.seconds == pytest.approx(first.seconds * 1.25)
    assert same.seconds == pytest.approx(first.seconds)
    for _ in range(20):
        lines, fastest = _say(session, cues.Faster())
    assert lines == ["That is as far as it goes."]
    assert fastest is not None
    assert fastest.seconds == SHORTEST_S


def test_hold_waits_and_go_on_goes_on_where_it_was() -> None:
    """The telephone rings: nothing moves until she says so, and a beat that was under way is out of date."""
    session = _at_lace(knitting=replace(opened(_plan()).state.knitting, place=Position(index=1)))
    _, beat = _say(session, cues.ReadAlong())
    assert _say(session, cues.PauseReading()) == (["Waiting. Say: go on."], None)
    assert beat is not None
    assert _say(session, clock_cues.Beat(seq=beat.seq)) == ([], None)
    assert session.state.place == Position(index=1)
    lines, beat = _say(session, cues.GoOn())
    assert lines == ["Repeat 1 of 3: knit two."]
    assert beat is not None


def test_a_question_in_between_does_not_disturb_and_a_correction_is_followed() -> None:
    """Asking where she is leaves the beat in force; a place she sets is read on from."""
    session = _at_lace(knitting=replace(opened(_plan()).state.knitting, place=Position(index=1)))
    _, beat = _say(session, cues.ReadAlong())
    assert _say(session, cues.Where())[1] is None
    assert beat is not None
    assert beat.seq == session.state.seq
    lines, beat = _say(session, cues.AtStitch(stitch=12))
    assert lines == ["Knit four."]
    assert beat is not None


def test_next_while_reading_is_the_next_run_and_undo_holds() -> None:
    """Who is ahead of the voice pulls it along; what is taken back makes it wait."""
    session = _at_lace(knitting=replace(opened(_plan()).state.knitting, place=Position(index=1)))
    _say(session, cues.ReadAlong())
    assert _say(session, cues.Next())[0] == ["Yarn over."]
    _say(session, cues.Undo())
    assert session.state.place == Position(index=1)
    assert session.state.reading == ReadingAlong(index=1, held=True)


def test_read_along_in_a_playbook() -> None:
    """What cannot be read along, or is not, is one sentence."""
    check(
        _plan(),
        """
        > slower
        Nothing is being read along. Say: read along.
        > read along
        This round is one run from end to end; there is nothing to read along.
        > go on
        Count now: 16 expected, before the shaping.
        Round 2: knit two, yarn over, slip slip knit, slip marker, three times; then knit four.
        > read along
        Repeat 1 of 3: knit two.
        > read along
        I am reading along.
        > hold on
        Waiting. Say: go on.
        > hold on
        I am waiting. Say: go on.
        """,
    )


def test_leaving_the_round_or_the_sitting_ends_it() -> None:
    """Nothing goes on by itself that she has left."""
    for leave in (cues.GoTo(round_number=3), cues.Wait(), cues.Enough()):
        session = _at_lace(knitting=replace(opened(_plan()).state.knitting, place=Position(index=1)))
        _, beat = _say(session, cues.ReadAlong())
        _say(session, leave)
        assert session.state.reading is None
        assert beat is not None
        assert _say(session, clock_cues.Beat(seq=session.state.seq)) == ([], None)


@given(st.lists(st.sampled_from(["k3", "p2", "(k1 p1)x3", "sm", "yo", "ssk", "(k2 sm)x2", "pm"]), min_size=1))
def test_the_runs_follow_on_from_the_first_stitch_to_the_last(parts: list[str]) -> None:
    """Whatever the round, no stitch is left out or read twice, and nothing worked is missing."""
    text = " ".join(["k1", *parts])
    uses = sum(run.uses for run in flatten(phrase(text)))
    made = plan(("body", [f"co{uses}", text])).rounds[1]
    cut = cut_into_runs(made)
    assert [part.start for part in cut] == [0, *(part.end for part in cut[:-1])]
    assert cut[-1].end == made.progress
    assert sum(run.times for part in cut for run in flatten(part.items)) == sum(
        run.times for run in flatten(made.phrase)
    )


def test_a_beat_on_an_empty_state_changes_nothing() -> None:
    """A timer that fires too late finds nobody reading."""
    session = Session(_plan(), State())
    assert session.consider(clock_cues.Beat(at=AT)).events == ()


def test_a_count_that_finishes_the_round_ends_the_reading() -> None:
    """She counts at the last run and says that the round is done. Read on into the next, the place would be a run
    further at the next beat, though she had not begun it."""
    body = plan(("body", ["co20", "k10 m1 k10", "k10 p11", "k21"]))
    state = replace(opened(body).state, knitting=Knitting(place=Position(index=1, stitch=5)))
    session = Session(body, state)
    _say(session, cues.ReadAlong())
    _say(session, cues.Count(stitches=21))
    _, beat = _say(session, cues.Yes())
    assert session.state.place == Position(index=2)
    assert (session.state.reading, beat) == (None, None)


def test_a_marker_before_the_first_stitch_is_said_with_it_and_a_round_of_markers_alone_is_one_run() -> None:
    """She slips it on the way to the stitch; as a run of its own there would be nothing to do for a second."""
    first, second = cut_into_runs(plan(("body", ["co6", "sm k2 p4"])).rounds[1])
    assert (first.start, first.end, first.items) == (0, 2, phrase("sm k2"))
    assert (second.start, second.end, second.items) == (2, 6, phrase("p4"))
    markers = replace(plan(("body", ["co6", "k6"])).rounds[1], phrase=phrase("sm pm"))
    (only,) = cut_into_runs(markers)
    assert (only.start, only.end, only.items) == (0, 0, phrase("sm pm"))


def test_what_is_worked_once_has_no_number_and_two_runs_are_enough_to_read() -> None:
    """ "Repeat 1 of 1" says nothing; from two runs on there is something to tell apart."""
    once = plan(("body", ["co8", "(k2 p2)x1 (k1 p1)x2", "k4 p4", "k8"]))
    assert [part.repeat for part in cut_into_runs(once.rounds[1])] == [None, None, (1, 2), None, (2, 2), None]
    for index, lines in (
        (2, ["Knit four."]),
        (3, ["This round is one run from end to end; there is nothing to read along."]),
    ):
        session = Session(once, replace(opened(once).state, knitting=Knitting(place=Position(index=index))))
        assert _say(session, cues.ReadAlong())[0] == lines


def test_reading_begun_anew_while_it_waits_keeps_the_pace_she_set() -> None:
    """She says "read along" where "go on" was meant; the pace she found stays hers."""
    state = opened(_plan()).state
    waiting = ReadingAlong(index=1, factor=2.0, held=True)
    session = Session(_plan(), replace(state, knitting=Knitting(place=Position(index=1)), reading=waiting))
    lines, beat = _say(session, cues.ReadAlong())
    assert lines == ["Repeat 1 of 3: knit two."]
    assert beat is not None
    assert session.state.reading == ReadingAlong(index=1, factor=2.0)
    assert _say(session, cues.ReadAlong())[0] == ["I am reading along."]
    assert _say(session, cues.GoOn())[0] == ["Yarn over."]  # nothing waits: the next run is meant


def test_next_at_the_last_run_finishes_the_round_and_the_reading() -> None:
    """ "Next" is always what comes next."""
    body = plan(("body", ["co8", "k4 p4", "k8"]))
    session = Session(body, replace(opened(body).state, knitting=Knitting(place=Position(index=1))))
    _say(session, cues.ReadAlong())
    assert _say(session, cues.Next())[0] == ["Purl four."]
    _say(session, cues.Next())
    assert (session.state.place, session.state.reading) == (Position(index=2), None)


def test_what_is_taken_back_into_another_round_ends_the_reading_and_within_it_holds_it() -> None:
    """Kept, "go on" would read one run of that round and fall silent. Done again up to the end, nothing is left to read."""
    body = plan(("body", ["co8", "k4 p4", "k4 p4"]))

    def begun(index: int, *said: cues.Cue) -> Session:
        session = Session(body, replace(opened(body).state, knitting=Knitting(place=Position(index=index))))
        for cue in said:
            _say(session, cue)
        return session

    other = begun(1, cues.Next(), cues.ReadAlong(), cues.Undo())
    assert (other.state.place, other.state.reading) == (Position(index=1), None)
    end = begun(2, cues.Next(), cues.Undo(), cues.ReadAlong(), cues.Redo())
    assert (end.state.place, end.state.reading) == (Position(index=3), None)
    within = begun(2, cues.ReadAlong(), cues.Next(), cues.Undo())
    assert (within.state.place, within.state.reading) == (Position(index=2), ReadingAlong(index=2, held=True))


@pytest.mark.parametrize(
    ("asks", "settles"),
    [
        (cues.Count(stitches=20), cues.Count(stitches=16)),
        (cues.Count(stitches=15, heard=0.2), cues.No()),
        (cues.CountAloud(), cues.Count(stitches=16)),
    ],
)
def test_reading_waits_while_a_count_is_talked_about_and_goes_on_when_that_is_settled(
    asks: cues.Cue, settles: cues.Cue
) -> None:
    """Her hands count or look then: a clock that went on would take stitches as worked that are not, and drop what it asked.

    Before its first stitch is worked 3 x (2 + 2) + 4 = 16 stitches hang there (common practice: ssk takes two, yo none).
    """
    session = _at_lace()
    _say(session, cues.Next())
    _say(session, cues.ReadAlong())
    assert _say(session, asks)[1] is None
    assert session.state.reading is not None
    assert _say(session, settles)[1] is not None
