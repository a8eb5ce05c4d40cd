from __future__ import annotations

from dataclasses import replace
from typing import TypeVar

import pytest

from stepper.plan.under_way.resuming import PlaceChoice
from stepper.session import clock_cues, cues, events
from stepper.session.answers import ANSWERS, TellExpected, TellSpacing, step_at
from stepper.session.control import ask
from stepper.session.effects import (
    AskCount,
    AskLength,
    AskPlace,
    BeatIn,
    Close,
    Effect,
    Lead,
    RestHands,
    TellAsleep,
    TellAwake,
    TellChanges,
    TellFinished,
    TellMeasured,
    TellSpot,
    TellStep,
    TellStop,
    TellStride,
    TellTaken,
    TellUndone,
    TurnTo,
)
from stepper.session.evolve import evolve
from stepper.session.machine import Session
from stepper.session.respond import TOLD, respond
from stepper.session.rules import RULES, Mode
from stepper.session.state import Knitting, Position, Question, State
from stepper.session.steps import By
from tests.plans import final_increase, plan, with_stretch
from tests.playbook import AT, after, check, opened, tell

GARMENT = final_increase()


def _at(index: int, stitch: int = 0) -> State:
    return State(seq=5, knitting=Knitting(place=Position(index=index, stitch=stitch)), last_cue_at=AT)


def test_every_event_and_every_question_is_answered() -> None:
    """A kind of event or question without an answer would leave the knitter in silence."""
    asking = {cue for (mode, cue), rule in RULES.items() if rule is ask and mode is Mode.KNITTING}

    assert set(TOLD) <= set(events.EVENTS)  # the others are told in their own words: test_event_words
    refused_somewhere = {cues.About, cues.WhatHappened, cues.Remedies, cues.WhatElse, cues.CountAloud}
    assert set(ANSWERS) == asking | refused_somewhere | {cues.Respace}


@pytest.mark.parametrize("view", cues.View)
def test_looking_changes_nothing_and_turns_the_screen(view: cues.View) -> None:
    """A page is no event: nothing is kept."""
    considered = Session(GARMENT).consider(cues.Look(at=AT, view=view))

    assert considered.events == ()
    assert considered.effects == (TurnTo(view=view),)


def test_a_first_sitting_begins_and_a_later_one_recaps() -> None:
    """What was last done, then what comes first now."""
    assert tell(Session(GARMENT), Session(GARMENT).consider_opening(AT, "f")) == [
        "Starting: 23 rounds in all. Say next step when a step is done.",
        "Neckband, round 1 of 2: cast on two hundred twenty five.",
    ]
    session = Session(GARMENT, _at(3, 102))
    assert tell(session, session.consider_opening("2025-03-04T20:00:00+01:00", "f")) == [
        "Last done on 3 March: Yoke, round 2 of 6, Final increase, stitch 102.",
        "At stitch 102: knit ten, make one; then knit eleven, make one, three times.",
    ]
    fresh = Session(GARMENT, State(seq=2))
    assert tell(fresh, fresh.consider_opening(AT, "f"))[0] == "Nothing has been knitted yet."


def test_the_first_step_is_told_in_full_before_the_first_round_and_there_is_none_behind_the_last() -> None:
    """A second evening may begin before a stitch is made: the round before the first is none, and not the last of the
    garment. One that begins when all is bound off has no round to tell."""
    cowl = plan(("cowl", ["co20", "k20", "bo20"]))
    later = "2025-03-04T20:00:00+01:00"
    step = Session(cowl, State(seq=5, last_cue_at=AT)).consider_opening(later, "f").effects[-1]
    assert isinstance(step, TellStep)
    assert step.lead is Lead.FULL
    done = State(seq=9, knitting=Knitting(place=Position(index=3)), last_cue_at=AT)
    assert isinstance(Session(cowl, done).consider_opening(later, "f").effects[-1], TellFinished)


def test_what_the_recap_names_is_not_named_again_unless_the_piece_is_another() -> None:
    """Twice the same place in two lines is tedious; a new piece, or a place that nothing was said of, is named in full."""
    leads = []
    for index in (3, 1, 2, 0):
        session = Session(GARMENT, _at(index, 0))
        step = session.consider_opening("2025-03-04T20:00:00+01:00", "f").effects[-1]
        assert isinstance(step, TellStep)
        leads.append((GARMENT.rounds[index].section, step.lead))
    assert leads == [
        ("yoke", Lead.ROUND),
        ("neckband", Lead.ROUND),
        ("yoke", Lead.FULL),
        ("neckband", Lead.FULL),
    ]


def test_a_step_is_said_from_the_place_in_it() -> None:
    """What is already worked of a step is not said again as still to do."""
    effect = step_at(GARMENT, _at(8, 100), Lead.PART)

    assert isinstance(effect, TellStep)
    assert (effect.part.start, effect.part.end) == (100, 156)
    assert isinstance(step_at(GARMENT, _at(23), Lead.FULL), TellFinished)


def test_again_is_slower_and_changes_nothing() -> None:
    """The same step, a little slower."""
    session = Session(GARMENT, _at(7))
    considered = session.consider(cues.Again(at=AT))

    assert [effect.slower for effect in considered.effects if isinstance(effect, TellStep)] == [True]
    assert considered.state == session.state
    check(
        session,
        """
        > say that again
        Round 6, Divide: in chalk, knit forty three, hold fifty four for left sleeve,
            cast on nine, knit eighty one.
        """,
    )


def test_questions_are_answered_in_one_line_each() -> None:
    """Where, how many, how far and how spaced, from the middle of a shaped round."""
    check(
        Session(GARMENT, _at(3, 10)),
        """
        > where am i
        Yoke, round 2 of 6, Final increase, at stitch 10 of 246. 226 stitches on the needles.
        > how many stitches
        226 stitches now, 246 at the end.
        > how far to go
        5 rounds left in yoke, 20 altogether, 3578 stitches.
        About 2 hours 20 minutes of knitting left, at a usual pace until yours is known. Done about
            6 March, with usual evenings until yours are known. In 8 cases of 10 between 4 March and 9 March.
        > where are the increases
        21 increases: 15 gaps of 11 and 6 of 10; 1 done, next in 7 stitches.
        > go to body
        Taken as done: up to Yoke, round 6 of 6, Divide, which goes from 246 to 156 stitches.
        Body, round 1 of 15: knit all one hundred fifty six.
        > where are the increases
        None in this round, and none follow.
        > go to yoke
        Yoke, round 1 of 6: knit all two hundred twenty five.
        > where are the decreases
        None in this round. Next: 21 increases, in 1 round: Yoke, round 2, Final increase.
        """,
    )


def test_a_rest_is_suggested_at_the_end_of_a_round_once() -> None:
    """Fifty minutes of knitting, then one line in front of the next round, and none at the round after."""
    session = Session(GARMENT)
    session.adopt(session.consider_opening("2025-03-03T20:00:00+01:00", "a"))
    minutes, told_at = 0, []
    while session.state.place.index < len(GARMENT.rounds) - 1:
        minutes += 3
        at = f"2025-03-03T{20 + minutes // 60}:{minutes % 60:02}:00+01:00"
        considered = session.consider(cues.Next(at=at))
        rests = [each for each in considered.effects if isinstance(each, RestHands)]
        if rests:
            told_at.append((minutes, rests[0].minutes, considered.effects.index(rests[0])))
            assert isinstance(considered.effects[-1], TellStep)
            assert considered.state.place.stitch == 0
        session.adopt(considered)
    assert minutes > 70
    assert [(told, said) for told, said, _ in told_at] == [(told_at[0][0], 50)]
    assert 50 <= told_at[0][0] < 56


def test_nothing_is_foretold_of_a_finished_garment() -> None:
    """Every round is done; there is no day to name."""
    session = Session(GARMENT, _at(len(GARMENT.rounds)))
    effects = session.consider(cues.HowFar(at=AT)).effects
    assert [type(each).__name__ for each in effects] == ["TellFar"]


def test_a_stretch_too_short_to_measure_is_not_asked_about() -> None:
    """Three rounds of rib cannot be measured before they are begun."""
    short = with_stretch(GARMENT, last=10)
    session = Session(short, _at(7))

    effects = session.consider(cues.Next(at=AT)).effects

    assert not any(isinstance(effect, AskLength) for effect in effects)


def test_help_offers_a_handful_that_makes_sense_now() -> None:
    """What she can do where she is, and how to hear more: the whole list took a hundred seconds."""
    session = opened(GARMENT)
    knitting = tell(session, session.consider(cues.Help(at=AT)))[0]
    counting = after(opened(GARMENT), "count with me")
    asleep = after(opened(GARMENT), "stop listening")

    assert knitting.startswith("Say: next step; say again; where am I; count is 246; undo that. For more,")
    assert tell(counting, counting.consider(cues.Help(at=AT)))[0].startswith("Say: and ten; that is all of them;")
    assert tell(asleep, asleep.consider(cues.Help(at=AT)))[0].startswith("Say: start listening;")


_Told = TypeVar("_Told", bound=Effect)


def _effect(kind: type[_Told], session: Session, cue: cues.Cue) -> _Told:
    """Return the one effect of a kind that a cue has."""
    (found,) = [each for each in session.consider(cue).effects if isinstance(each, kind)]
    return found


def test_the_next_increase_is_in_the_nearest_shaped_round_ahead() -> None:
    """Asked in a shaped round, it is the one after this; behind the last there is none. By hand: the third and the
    fifth round are shaped."""
    yoke = plan(("yoke", ["co80", "k80", "(k8 m1)x10", "k90", "(k9 m1)x10", "k100", "k100"]))
    told = [
        _effect(
            TellSpacing,
            Session(yoke, State(seq=1, knitting=Knitting(place=Position(index=index)))),
            cues.Spacing(at=AT),
        ).next_index
        for index in range(7)
    ]
    assert told == [2, 2, 4, 4, None, None, None]


def test_a_finished_garment_has_nothing_to_count() -> None:
    """Asked how many stitches when all is bound off, the answer is none, and no fault of the program."""
    told = _effect(TellExpected, Session(GARMENT, _at(len(GARMENT.rounds))), cues.HowMany(at=AT))
    assert (told.now, told.end, told.between) == (0, 0, ())


def test_a_measurement_is_told_with_what_follows_from_it() -> None:
    """By the rule of three: seven rounds are 7.7 cm, so 10 cm take 9.1 and nine are knitted, one fewer than ten; two
    are left after these seven. The round in hand is the same, so it is not said again."""
    session = Session(GARMENT, _at(15))
    considered = session.consider(cues.Length(at=AT, length_mm=77.0))
    told = _effect(TellMeasured, session, cues.Length(at=AT, length_mm=77.0))
    assert (told.length_mm, told.target_mm, told.planned_per_10cm) == (77.0, 100.0, 10.0)
    assert told.rounds_per_10cm == pytest.approx(700 / 77)
    assert (told.rounds_left, told.longer_by) == (2, -1)
    assert not any(isinstance(each, TellStep) for each in considered.effects)


@pytest.mark.parametrize(("index", "length_mm"), [(15, 104.0), (18, 80.0)])
def test_where_another_round_is_in_hand_after_a_measurement_it_is_said(index: int, length_mm: float) -> None:
    """Long enough, and short at the end: in both the next round is not the one she was told last."""
    effects = Session(GARMENT, _at(index)).consider(cues.Length(at=AT, length_mm=length_mm)).effects
    assert isinstance(effects[-1], TellStep)


def test_a_measurement_is_asked_for_just_when_three_rounds_are_left_of_ten() -> None:
    """Of ten rounds to a length seven are done: once, neither sooner nor later."""
    asked = []
    for index in range(8, 19):
        effects = Session(GARMENT, _at(index)).consider(cues.Next(at=AT)).effects
        asked += [index + 1 for each in effects if isinstance(each, AskLength)]
    assert asked == [15]


def test_a_question_about_the_place_speaks_of_no_difference_of_stitches() -> None:
    """Where to go on is open, so nothing is known of how many stitches there should be."""
    choice = PlaceChoice(
        index=2, stitch=0, section="yoke", number=1, flat=False, label=None, have=225, want=225
    )
    question = Question(new_fingerprint="b", choices=(choice,))
    event = events.PlaceAsked(at=AT, old_fingerprint="a", question=question, changes=())
    before = _at(2)
    told = respond(GARMENT, before, None, (event,), evolve(before, event))
    assert told[0] == TellChanges(changes=(), have=0, want=0, found=True, comparable=True)


def test_a_sitting_ends_with_where_it_stands_and_what_comes_first() -> None:
    """The last thing she hears is what the next evening begins with, and only then is it over."""
    effects = Session(GARMENT, _at(3, 10)).consider(cues.Enough(at=AT)).effects
    (stop,) = [each for each in effects if isinstance(each, TellStop)]
    assert stop.place == Position(index=3, stitch=10)
    assert isinstance(stop.first, TellStep)
    assert stop.first.index == 3
    assert isinstance(effects[-1], Close)


def test_what_is_taken_back_is_followed_by_the_step_in_hand_only_where_that_is_another() -> None:
    """After a step taken back she must know where her hands are; after a note taken back they are where they were."""
    session = opened(GARMENT)
    for cue, step in ((cues.Next(at=AT), True), (cues.Note(at=AT, text="soft"), False)):
        session.adopt(session.consider(cue))
        considered = session.consider(cues.Undo(at=AT))
        session.adopt(considered)
        assert any(isinstance(each, TellStep) for each in considered.effects) is step


def test_a_run_read_along_is_told_when_its_time_has_come_and_an_old_clock_says_nothing() -> None:
    """Each beat brings the next run and asks for another beat; one that something else came before is out of date."""
    session = opened(plan(("body", ["co24", "(k2 yo ssk)x6", "k24"])))
    session.adopt(session.consider(cues.Next(at=AT)))
    begun = session.consider(cues.ReadAlong(at=AT))
    session.adopt(begun)
    (beat,) = [each for each in begun.effects if isinstance(each, BeatIn)]
    assert session.consider(clock_cues.Beat(at=AT, seq=beat.seq - 1)).effects == ()
    told = session.consider(clock_cues.Beat(at=AT, seq=beat.seq))
    assert [type(each).__name__ for each in told.effects] == ["TellStep", "BeatIn"]
    assert told.state.place == Position(index=1, stitch=2)


def _kinds(session: Session, cue: cues.Cue) -> list[str]:
    return [type(each).__name__ for each in session.consider(cue).effects]


def _lead(session: Session, cue: cues.Cue) -> Lead:
    return _effect(TellStep, session, cue).lead


def test_as_much_of_the_place_is_said_as_has_changed() -> None:
    """Within a round the part, from round to round the round, in a new section and after a move all of it. By hand: the
    yoke ends with round 7."""
    at_stitch = cues.AtStitch(at=AT, stitch=3)
    assert _lead(Session(GARMENT, _at(3)), at_stitch) is Lead.PART
    assert _lead(Session(GARMENT, _at(8)), cues.Next(at=AT)) is Lead.ROUND
    assert _lead(Session(GARMENT, _at(7)), cues.AtStitch(at=AT, stitch=GARMENT.rounds[7].progress)) is Lead.FULL
    assert _lead(Session(GARMENT, _at(9)), cues.Back(at=AT)) is Lead.FULL
    assert _lead(Session(GARMENT, _at(9)), cues.GoTo(at=AT, place="yoke")) is Lead.FULL
    assert _lead(Session(GARMENT, _at(8, 4)), cues.Stride(at=AT, by=By.GAP)) is Lead.PART


def test_only_what_nobody_told_is_said_to_be_taken_as_done() -> None:
    """One round finished is a step; two are taken as done, and so is what a jump goes over; going back takes nothing."""
    session = Session(GARMENT, _at(8, 6))
    assert "TellTaken" not in _kinds(session, cues.RoundsDone(at=AT, rounds=1))
    taken = _effect(TellTaken, session, cues.RoundsDone(at=AT, rounds=2))
    assert (taken.stitches, taken.place) == (150 + 156, Position(index=10))
    jumped = _effect(TellTaken, session, cues.GoTo(at=AT, round_number=3))
    assert (jumped.stitches, jumped.place) == (150 + 156, Position(index=10))
    untold = [index for index in (9,) if GARMENT.rounds[index].before != GARMENT.rounds[index].after]
    assert list(taken.changed) == list(jumped.changed) == untold
    far = _effect(TellTaken, Session(GARMENT, _at(0)), cues.RoundsDone(at=AT, rounds=10))
    shaped = [each.index for each in GARMENT.rounds[1:10] if each.before != each.after]
    assert list(far.changed) == shaped
    assert shaped
    assert "TellTaken" not in _kinds(session, cues.GoTo(at=AT, round_number=1))
    assert "TellTaken" not in _kinds(Session(GARMENT, _at(8)), cues.GoTo(at=AT, round_number=1))
    assert "TellTaken" not in _kinds(session, cues.Back(at=AT))


def test_going_to_sleep_and_waking_say_the_place_where_the_round_is_begun() -> None:
    """The last thing heard and the first: how far, and then the step. Between two rounds the round alone says it."""
    asleep = Session(GARMENT, _at(8, 6)).consider(cues.Wait(at=AT))
    assert [type(each) for each in asleep.effects] == [TellSpot, TellAsleep]
    for stitch, kinds, lead in ((6, [TellAwake, TellSpot, TellStep], Lead.PART), (0, [TellAwake, TellStep], Lead.FULL)):
        state = Session(GARMENT, _at(8, stitch)).consider(cues.Wait(at=AT)).state
        woken = Session(GARMENT, state).consider(cues.Listen(at=AT)).effects
        assert [type(each) for each in woken] == kinds
        assert isinstance(woken[-1], TellStep)
        assert woken[-1].lead is lead


@pytest.mark.parametrize(
    ("cue", "moves"),
    [
        (cues.Next(at=AT), True),
        (cues.GoTo(at=AT, place="yoke"), True),
        (cues.Stride(at=AT, by=By.GAP), True),
        (cues.Length(at=AT, length_mm=80.0), True),  # another round may be the last of the stretch
        (cues.Weight(at=AT, yarn="pine", grams=20.0), False),
        (cues.RemindMe(at=AT, rounds=2, text="x"), False),
        (cues.Count(at=AT, stitches=156), False),
        (cues.Ask(at=AT, asking=cues.Asking.LESS), False),
    ],
    ids=lambda each: type(each).__name__ if isinstance(each, cues.Cue) else str(each),
)
def test_taken_back_and_done_again_it_says_what_and_the_step_where_that_may_be_another(
    cue: cues.Cue, *, moves: bool
) -> None:
    """She hears the kind of thing that is gone; after what moves nothing she is where she was."""
    session = Session(GARMENT, _at(12, 6))
    session.adopt(session.consider(cue))
    kind = session.state.undo[-1].kind
    for again, undoing in ((False, cues.Undo(at=AT)), (True, cues.Redo(at=AT))):
        considered = session.consider(undoing)
        told = considered.effects[0]
        assert isinstance(told, TellUndone)
        assert told.event is not None
        assert (told.event.__name__, told.again) == (kind, again)
        assert any(isinstance(each, TellStep) for each in considered.effects) is moves
        session.adopt(considered)


def test_another_stride_is_said_with_the_step_it_makes_and_alone_when_all_is_knitted() -> None:
    """There is no step left to cut."""
    assert _kinds(Session(GARMENT, _at(8)), cues.Stride(at=AT, by=By.GAP)) == [TellStride.__name__, "TellStep"]
    assert _kinds(Session(GARMENT, _at(23)), cues.Stride(at=AT, by=By.GAP)) == [TellStride.__name__]


LATER = "2025-03-04T20:00:00+01:00"
"""The evening after `AT`."""
WHERE = Question(
    new_fingerprint="b",
    choices=(PlaceChoice(index=2, stitch=0, section="yoke", number=1, flat=False, label=None, have=225, want=225),),
)


def test_in_a_long_silence_the_place_is_said_and_an_open_question_asked_but_never_to_one_who_sleeps() -> None:
    """She has looked up from the telephone and wonders where she was; once it waits or is closed it keeps still."""
    silence = clock_cues.Silence(at=LATER)

    def heard(state: State) -> list[type[Effect]]:
        considered = Session(GARMENT, state).consider(silence)
        assert considered.state == state
        return [type(each) for each in considered.effects]

    here = _at(8, 6)
    asked = replace(here, question=WHERE)
    assert heard(here) == [TellSpot]
    assert heard(asked) == [AskPlace]
    for state in (here, asked):
        assert heard(replace(state, asleep=True)) == heard(replace(state, closed=True)) == []


@pytest.mark.parametrize("cue", [cues.Enough(at=LATER), cues.Wait(at=LATER)])
def test_back_from_a_silence_to_end_or_to_wait_she_is_not_told_to_knit(cue: cues.Cue) -> None:
    """The place and that it is over are said; a step read out behind it would have her begin it."""
    told = [type(each) for each in Session(GARMENT, _at(8, 6)).consider(cue).effects]
    assert told[0] is TellSpot
    assert TellStep not in told


def test_help_is_given_while_the_place_is_asked_for_too() -> None:
    """Who does not know what to answer asks for help; the same question once more is none."""
    asked = replace(_at(8), question=WHERE)
    assert AskPlace not in [type(each) for each in Session(GARMENT, asked).consider(cues.Help(at=AT)).effects]
    assert [type(each) for each in Session(GARMENT, asked).consider(cues.Where(at=AT)).effects] == [AskPlace]


def test_a_count_that_finishes_a_round_is_not_asked_for_again_at_its_checkpoint() -> None:
    """She has just counted all of them; to be asked for the number at once would sound as though it were doubted."""
    body = plan(("body", ["co20", ("k10 m1 k10", {"checkpoint": "increase"}), "k21"]))
    knitting = Knitting(place=Position(index=1, stitch=5), asking=cues.Asking.PATTERN)
    counted = Session(body, State(seq=3, knitting=knitting))
    finished = [cues.Count(at=AT, stitches=21), cues.Yes(at=AT)]
    for cue in finished:
        considered = counted.consider(cue)
        counted.adopt(considered)
    assert counted.state.place == Position(index=2)
    assert AskCount not in [type(each) for each in considered.effects]
    stepped = Session(body, State(seq=3, knitting=knitting))
    assert AskCount in [type(each) for each in stepped.consider(cues.Next(at=AT)).effects]
