from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.session import control, cues
from stepper.session.changed_plan import plan_question
from stepper.session.cues import Ask, Cue, ForgetReminders, Lifeline, Note, RemindMe, Stride, Weight
from stepper.session.decide import decide
from stepper.session.decision import Refusal
from stepper.session.events import ReminderSet
from stepper.session.keeping import KEPT
from stepper.session.machine import Session
from stepper.session.open_row.rules import not_before
from stepper.session.rules import RULES, Mode
from stepper.session.state import Asking, Knitting, Position, Reminder, State
from stepper.session.steps import By
from tests.plans import final_increase, plan, with_stretch
from tests.playbook import AT, check, opened, tell
from tests.session.test_rules import GARMENT, STATES, example

FAMILIES = (cues.Keeps, cues.KeepsAhead)


def _of(*families: type[Cue]) -> set[type[Cue]]:
    return {cue for cue in cues.CUES if issubclass(cue, families)}


def test_every_cue_that_only_keeps_something_has_its_rule_and_no_other_has() -> None:
    """A row that the table of rules does not read would say one thing while the session does another."""
    assert set(KEPT) == _of(*FAMILIES)


@pytest.mark.parametrize(
    "cue", sorted(_of(*FAMILIES), key=lambda cue: cue.__name__), ids=lambda cue: cue.__name__
)
def test_cues_of_a_family_have_its_row_in_every_mode(cue: type[Cue]) -> None:
    """A cue with another row belongs to no family, so that the row of the family says what may happen when."""
    finished = control.refuse_done if issubclass(cue, cues.KeepsAhead) else KEPT[cue]
    assert {mode: RULES[mode, cue] for mode in Mode} == {
        Mode.KNITTING: KEPT[cue],
        Mode.OPEN: not_before if finished is control.refuse_done else finished,
        Mode.FINISHED: finished,
        Mode.CLOSED: control.refuse,
        Mode.ASKED: plan_question.not_yet,
    }


@pytest.mark.parametrize(
    "cue", sorted(_of(*FAMILIES), key=lambda cue: cue.__name__), ids=lambda cue: cue.__name__
)
def test_what_only_keeps_something_leaves_the_place_and_is_one_undo(cue: type[Cue]) -> None:
    """That is what the families promise. Something is kept, and taking it back leaves the knitting as it was."""
    garment = replace(GARMENT, yarns={"MC": "pine"})
    at = replace(STATES[Mode.KNITTING].knitting, place=Position(index=4), reminders=(Reminder(index=9),))
    session = Session(garment, State(seq=9, knitting=at))

    considered = session.consider(example(cue))
    session.adopt(considered)

    assert len(considered.events) == 1
    kept = session.state.knitting
    assert replace(kept, place=at.place, heard=0) == kept != at
    assert (kept.corrections, kept.respacings, kept.mends) == (at.corrections, at.respacings, at.mends)
    session.adopt(session.consider(cues.Undo(at=AT)))
    assert session.state.knitting == at


def _refusal(cue: Cue, *, place: Position, **knitting: object) -> str:
    """Return the words in which a cue is refused; empty if it is kept."""
    state = State(seq=9, knitting=Knitting(place=place, **knitting))  # type: ignore[arg-type] # its fields
    decision = decide(final_increase(), state, replace(cue, at=AT))
    return decision.sentence if isinstance(decision, Refusal) else ""


def test_a_yarn_is_weighed_by_its_name_and_nothing_weighs_less_than_nothing() -> None:
    """An empty ball may be said; a yarn that nobody named is refused with those there are."""
    here = Position(index=8)
    assert _refusal(Weight(yarn="chalk", grams=0.0), place=here) == ""
    assert _refusal(Weight(yarn="chalk", grams=-0.5), place=here) == "A weight is nothing or more."
    assert _refusal(Weight(yarn="sand", grams=5.0), place=here).startswith(
        "No yarn here is called sand; say chalk"
    )
    nameless = decide(replace(GARMENT, yarns={}), State(), Weight(yarn="sand", grams=5.0))
    assert nameless == Refusal(sentence="No yarn here is called sand.")


def test_a_note_has_words() -> None:
    """Blanks are none; what is around the words is left out."""
    assert _refusal(Note(text="  "), place=Position()) == "A note needs some words."
    (event,) = Session(final_increase(), State()).consider(Note(at=AT, text="  snug  ")).events
    assert getattr(event, "text", "") == "snug"


def test_a_lifeline_goes_through_a_whole_round_that_is_knitted() -> None:
    """Not before the first stitch, and not within a round; at the end of all it may."""
    assert _refusal(Lifeline(), place=Position()) == "Nothing has been knitted yet."
    within = "A lifeline goes in between rounds; finish this one first."
    assert _refusal(Lifeline(), place=Position(stitch=1)) == within
    assert _refusal(Lifeline(), place=Position(index=3, stitch=1)) == within
    for index in (1, 23):
        assert _refusal(Lifeline(), place=Position(index=index)) == "", index


@pytest.mark.parametrize("asking", Asking, ids=lambda asking: asking.value)
def test_how_often_a_count_is_asked_for_is_changed_to_another_only(asking: Asking) -> None:
    """The same once more is said to be so already, and nothing is kept that would be in the way of undo."""
    for now in Asking:
        said = _refusal(Ask(asking=asking), place=Position(index=3), asking=now)
        assert said == ("That is how it is already." if now is asking else ""), now


def test_how_much_a_step_reads_goes_on_to_the_next_and_from_the_last_to_the_first() -> None:
    """Without a word for it the cue takes the next one. In the order of `By`, round about."""
    session = Session(final_increase(), State(seq=1, knitting=Knitting(place=Position(index=3))))
    chosen = []
    for _ in range(len(By) + 1):
        considered = session.consider(Stride(at=AT))
        chosen.append(getattr(considered.events[0], "by", None))
        session.adopt(considered)
    turn = list(By)
    first = turn.index(By.ROUND) + 1
    assert chosen == [turn[(first + each) % len(turn)] for each in range(len(turn) + 1)]
    same = session.consider(Stride(at=AT, by=chosen[-1]))
    assert (same.events, tell(session, same)) == ((), [f"It is by {chosen[-1].value} already."])


def test_behind_the_last_round_a_step_is_chosen_for_all_rounds() -> None:
    """There is no round in hand whose sort it could be for."""
    session = Session(final_increase(), State(seq=1, knitting=Knitting(place=Position(index=23))))
    (event,) = session.consider(Stride(at=AT, by=By.GAP)).events
    assert getattr(event, "sort", "unset") is None


def _state(index: int, *reminders: int) -> State:
    knitting = Knitting(
        place=Position(index=index), reminders=tuple(Reminder(index=each) for each in reminders)
    )
    return State(seq=5, knitting=knitting, last_cue_at=AT)


def test_beyond_the_garment_nothing_is_promised() -> None:
    """A promise that cannot be kept is refused."""
    check(
        opened(final_increase()),
        """
        > remind me in ninety rounds to try it on
        After this round 22 are left.
        > remind me in 0 rounds to try it on
        That is now.
        """,
    )


def _reminded(garment: object, index: int, cue: Cue) -> int | str:
    """Return the round a reminder is kept for, or the words in which it is refused."""
    session = Session(garment, _state(index))  # type: ignore[arg-type] # a plan
    considered = session.consider(cue)
    for event in considered.events:
        assert isinstance(event, ReminderSet)
        return event.reminder.index
    return tell(session, considered)[0]


@pytest.mark.parametrize(
    ("length_mm", "index"),
    [(1.0, 11), (20.0, 0), (20.1, 11), (30.0, 11), (30.1, 12), (99.0, 18), (100.0, 18), (100.1, 19)],
)
def test_a_length_is_the_round_before_which_the_piece_is_that_long(length_mm: float, index: int) -> None:
    """By hand, at ten rounds to 10 cm from the ninth round on: a round a centimetre. Two are done, ten are to do, so that
    2 cm are there already and more than 10 cm will never be."""
    told = _reminded(final_increase(), 10, RemindMe(at=AT, length_mm=length_mm, text="x"))
    if length_mm <= 20:
        assert told == "By the rounds it is that long already."
    elif length_mm > 100:
        assert told == "It does not get that long."
    else:
        assert told == index


def test_a_length_is_promised_only_where_one_is_worked_to_and_a_round_is_left_to_say_it_at() -> None:
    """In the yoke nothing is measured; where the stretch ends the piece there is no round behind it."""
    assert (
        _reminded(final_increase(), 3, RemindMe(at=AT, length_mm=50.0))
        == "Nothing here is worked to a length."
    )
    assert _reminded(final_increase(), 8, RemindMe(at=AT, length_mm=30.0)) == 11
    whole = with_stretch(final_increase(), last=22)
    assert _reminded(whole, 10, RemindMe(at=AT, length_mm=140.0)) == 22
    assert _reminded(whole, 10, RemindMe(at=AT, length_mm=141.0)) == "It does not get that long."


def test_a_reminder_is_for_a_place_or_a_round_that_lies_ahead() -> None:
    """What she is at, or has done, cannot be said later. By hand: the yoke begins with round 2 of 23."""
    garment = final_increase()
    places = [_reminded(garment, here, RemindMe(at=AT, place="yoke")) for here in (0, 1, 2, 3)]
    assert places == [2, 2, "Yoke does not lie ahead.", "Yoke does not lie ahead."]
    assert _reminded(garment, 0, RemindMe(at=AT, place="attic")) == "Attic does not lie ahead."
    rounds = [_reminded(garment, 20, RemindMe(at=AT, rounds=each)) for each in (0, 1, 2, 3)]
    assert rounds == ["That is now.", 21, 22, "After this round 2 are left."]
    assert _reminded(garment, 21, RemindMe(at=AT, rounds=2)) == "After this round 1 is left."
    assert _reminded(garment, 21, RemindMe(at=AT)) == "That is now."


def test_a_reminder_is_kept_in_her_words_without_what_the_ear_put_between_them() -> None:
    """It is read out as one sentence."""
    (event,) = (
        Session(final_increase(), _state(0)).consider(RemindMe(at=AT, rounds=1, text="  try  it on ")).events
    )
    assert isinstance(event, ReminderSet)
    assert event.reminder == Reminder(index=1, text="try it on")


def test_only_reminders_that_are_still_to_come_are_forgotten() -> None:
    """Of one that was said there is nothing to forget."""
    for here, kept in ((4, True), (5, False), (6, False)):
        session = Session(final_increase(), _state(here, 5))
        assert bool(session.consider(ForgetReminders(at=AT)).events) is kept, here


def test_a_round_that_comes_in_parts_by_round_says_why() -> None:
    """She asked for the whole of it, and hears that it is so already, part after part."""
    long_round = [("k1 m1 k2 m1 k3 m1 k4 m1 k5 m1 k6 m1 k7 m1 k8 m1 k9 m1 k10 m1 k11 m1", {})]
    session = Session(plan(("yoke", ["co66", *long_round])), State(seq=1, knitting=Knitting(place=Position(index=1))))
    same = session.consider(Stride(at=AT, by=By.ROUND))
    assert tell(session, same) == ["It is by round already. This round is too long to be said at once."]
