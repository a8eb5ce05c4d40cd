"""What may be said of a row that is not read. Every number waits for a yes."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.model import OpenKind, Plan, Proposed
from stepper.session.cues import Back, Count, Cue, GoOn, Next, No, RoundsDone, Undo, Yes
from stepper.session.events import Event, Returned, RowAnswered, RowSaid
from stepper.session.machine import Session
from stepper.session.open_row.rules import MOST_ROWS
from stepper.session.state import OpenAnswer, OpenWork
from tests.plans import plan
from tests.playbook import AT
from tests.session.open_row.evening import ONE_ROUND, ROW, cowl, evening
from tests.tables import each_row

IDLE = Proposed(kind=OpenKind.IDLE)


def say(session: Session, *cues: Cue) -> tuple[Event, ...]:
    """Give cues one after the other; return the events of the last."""
    events: tuple[Event, ...] = ()
    for cue in cues:
        considered = session.consider(replace(cue, at=AT))
        session.adopt(considered)
        events = considered.events
    return events


@each_row(
    ("garment", "cues", "answer"),
    [
        # What the page lets guess is taken with a yes, and nothing is knitted of it yet.
        (cowl(proposed=ONE_ROUND), (Yes(),), OpenAnswer(kind=OpenKind.ROWS)),
        (cowl(proposed=IDLE), (Yes(),), OpenAnswer(kind=OpenKind.IDLE)),
        # It is another number: said, read back, yes.
        (cowl(proposed=ONE_ROUND), (Count(stitches=35), Yes()), OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=35)),
        # Counted as she knits.
        (cowl(), (Next(), GoOn(), Count(stitches=44), Yes()), OpenAnswer(kind=OpenKind.ROWS, rows=2, stitches=44)),
        (cowl(), (Next(), Count(stitches=0), Yes()), OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=0)),
        (cowl(), (RoundsDone(rounds=6), Count(stitches=40), Yes()), OpenAnswer(kind=OpenKind.ROWS, rows=6, stitches=40)),
        (cowl(proposed=ONE_ROUND), (Next(), Yes()), OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=36)),
        # One round more than was said was none; back takes it off.
        (cowl(), (Next(), Next(), Back(), Count(stitches=40), Yes()), OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=40)),
        # A count that was misheard is dropped, and said again.
        (cowl(), (Next(), Count(stitches=50), No(), Count(stitches=40), Yes()), OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=40)),
        # Other stitches wait on a holder, and a sleeve that grows past that in many rows keeps their number.
        (replace(cowl(), open=replace(ROW, held=(("", 12),))), (RoundsDone(rounds=48), Count(stitches=56), Yes()), OpenAnswer(kind=OpenKind.ROWS, rows=48, stitches=56)),
        # Nothing is knitted for it: a no where nothing was proposed, and a yes.
        (cowl(), (No(), Yes()), OpenAnswer(kind=OpenKind.IDLE)),
        (cowl(proposed=ONE_ROUND), (No(), No(), Yes()), OpenAnswer(kind=OpenKind.IDLE)),
        (cowl(trouble="It turns in the row."), (No(), Yes()), OpenAnswer(kind=OpenKind.IDLE)),
    ],
)
def test_what_is_said_and_agreed_to_is_the_answer(garment: Plan, cues: tuple[Cue, ...], answer: OpenAnswer) -> None:
    """Only the last yes leads to the file: all before it is taken back like any step."""
    session = evening(garment)
    events = say(session, *cues[:-1])
    assert not any(isinstance(each, RowAnswered) for each in events)
    (event,) = say(session, cues[-1])
    assert event == RowAnswered(at=AT, meant=answer, words="Twirl the loops over the thumb.")


@each_row(
    ("garment", "cues"),
    [
        (cowl(), (Yes(),)),
        (cowl(), (Count(stitches=40),)),  # of how many rounds?
        (cowl(), (Next(), Yes())),  # and then how many stitches?
        (cowl(), (Next(), No())),
        (cowl(), (Next(), Count(stitches=1200))),
        (cowl(), (RoundsDone(rounds=MOST_ROWS + 1),)),
        (cowl(), (RoundsDone(rounds=-1),)),
        (cowl(), (No(later=True),)),
        (cowl(), (No(), Next())),
        (cowl(proposed=IDLE), (Next(),)),  # to go on, or a round by its words?
        (cowl(proposed=ONE_ROUND), (No(unsure=True),)),
        # What turns, joins or holds cannot be kept by a count.
        (cowl(trouble="It turns in the row."), (Next(),)),
        (cowl(trouble="It turns in the row."), (Count(stitches=40),)),
        (cowl(trouble="It turns in the row."), (Yes(),)),
        # The rows behind it would go on in the fabric before.
        (cowl(fabric="stockinette"), (No(),)),
    ],
)
def test_what_is_not_enough_changes_nothing(garment: Plan, cues: tuple[Cue, ...]) -> None:
    """It is refused with what to say instead."""
    session = evening(garment)
    say(session, *cues[:-1])
    before = session.state
    assert say(session, cues[-1]) == ()
    assert session.state == before


def test_a_count_behind_its_rounds_is_of_them_though_a_fault_was_looked_for() -> None:
    """She counted wrong before the row and knitted on: her counts of it were all taken for the round before."""
    session = evening(cowl(), index=2)
    say(session, Count(stitches=42))
    assert session.state.knitting.fault is not None
    say(session, Next(), Next())
    (event,) = say(session, Next())
    assert isinstance(event, RowSaid)
    (event,) = say(session, Count(stitches=42))
    assert event == RowSaid(at=AT, said=OpenWork(rows=event.said.rows, stitches=42, declined=True))
    assert session.state.knitting.fault is None
    (event,) = say(session, Yes())
    assert isinstance(event, RowAnswered)


def test_back_leaves_the_row_once_nothing_is_said_of_it() -> None:
    """Then it returns to the round before, as everywhere."""
    session = evening(cowl(proposed=ONE_ROUND))
    (event,) = say(session, No(), Back())
    assert event == RowSaid(at=AT, said=OpenWork())
    (event,) = say(session, Back())
    assert isinstance(event, Returned)
    assert session.state.place.index == 2


def test_undo_takes_back_a_row_of_it() -> None:
    """One cue, one undo."""
    session = evening(cowl())
    say(session, Next(), Next())
    say(session, Undo())
    assert session.state.knitting.open == OpenWork(rows=1, declined=True)


@pytest.mark.parametrize("garment", [cowl(), cowl(proposed=ONE_ROUND)], ids=["nothing proposed", "one round"])
def test_in_a_round_that_is_read_all_is_as_ever(garment: Plan) -> None:
    """The open row concerns nobody before she comes to it."""
    session = evening(garment, index=1)
    (event,) = say(session, Next())
    assert type(event).__name__ == "Advanced"


def test_any_count_may_come_onto_empty_needles() -> None:
    """Three times as many as none would be none."""
    session = evening(replace(plan(("body", ["co40", "k40", "bo40"])), open=ROW))
    say(session, Next(), Count(stitches=64))
    assert session.state.knitting.open == OpenWork(rows=1, stitches=64, declined=True)
