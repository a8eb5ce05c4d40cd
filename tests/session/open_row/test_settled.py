"""Once a row is settled the knitting goes on behind what is knitted of it."""

from __future__ import annotations

from dataclasses import replace

from stepper.language.effect_words import tell_effect
from stepper.plan.model import PartKind, Plan, Run
from stepper.session.cues import Again, Count, Next, No, Yes
from stepper.session.events import PlanChanged
from stepper.session.machine import Session
from stepper.session.state import OpenWork
from tests.plans import plan
from tests.playbook import AT
from tests.session.open_row.evening import ROW, cowl, evening
from tests.tables import each_row

OWN = "Twirl the loops over the thumb"


def gone_on(own: int) -> Plan:
    """Return the garment as it goes on, with so many rounds by the words."""
    made = plan(("body", ["co40", "k40", "k40", *["k40"] * own, "p40", "bo40"]))
    rounds = tuple(
        replace(each, words=OWN) if 3 <= each.index < 3 + own else each for each in made.rounds
    )
    return replace(made, rounds=rounds)


def settle(session: Session, new: Plan) -> Session:
    """Go on with a plan."""
    session.adopt(session.consider_plan(new, AT, "new", settled=True))
    return session


@each_row(
    ("worked", "own", "index"),
    [(0, 1, 3), (2, 2, 5), (2, 3, 5), (3, 2, 3), (1, 0, 3)],
)
def test_the_place_is_behind_the_rows_that_are_knitted(worked: int, own: int, index: int) -> None:
    """Those she counted by "next step", if the file has them as rows by the words; none if it has fewer."""
    session = evening(cowl())
    for _ in range(worked):
        session.adopt(session.consider(Next(at=AT)))
    settle(session, gone_on(own))
    assert session.state.place.index == index
    assert session.state.knitting.open is None
    unplaced = session.consider_plan(gone_on(own), AT, "newer").events[0]
    assert isinstance(unplaced, PlanChanged)
    assert unplaced.unplaced == 0
    assert session.state.fingerprint == "new"


def test_a_round_that_is_read_is_nothing_of_the_row() -> None:
    """Who changes the file in the middle goes on where she is, whatever was said of the row before."""
    session = evening(cowl(), index=1)
    session = Session(session.base, replace(session.state, knitting=replace(session.state.knitting, open=OpenWork(rows=2))))
    settle(session, gone_on(2))
    assert session.state.place.index == 1


def test_what_was_said_with_the_row_is_not_said_again_with_the_round_behind_it() -> None:
    """She has just heard both; asked for again they are told in full."""
    garment = cowl()
    assert garment.open is not None
    session = evening(replace(garment, open=replace(garment.open, remarks=("change to 3.5 mm needles",))))
    new = gone_on(0)
    remarks = ("change to 3.5 mm needles", "Twirl the loops over the thumb.", "join the other ball")
    rounds = (*new.rounds[:3], replace(new.rounds[3], remarks=remarks), *new.rounds[4:])
    considered = session.consider_plan(replace(new, rounds=rounds), AT, "new", settled=True)
    told = " ".join(tell_effect(each, considered.plan) for each in considered.effects)
    assert "other ball" in told
    assert "needles" not in told
    assert "Twirl" not in told
    session.adopt(considered)
    again = " ".join(tell_effect(each, session.plan) for each in session.consider(Again(at=AT)).effects)
    assert "needles" in again


def test_stitches_that_came_by_the_words_are_not_asked_for_again() -> None:
    """Where none were on the needles, the first of her rows is the one that brings them, and has no words."""
    bound = replace(plan(("body", ["co40", "k40", "bo40"])), open=replace(ROW, section="sleeve"))
    new = plan(("body", ["co40", "k40", "bo40"]), ("sleeve", ["co20", "k20", "k20"]))
    rounds = tuple(replace(each, words=OWN) if each.index == 4 else each for each in new.rounds)
    session = evening(bound)
    for _ in range(2):
        session.adopt(session.consider(Next(at=AT)))
    settle(session, replace(new, rounds=rounds))
    assert session.state.place.index == 5


def test_rows_that_the_new_plan_has_otherwise_are_told_of() -> None:
    """A row that she counted and then had read by writing it anew: she is in front of its rounds, and hears it."""
    session = evening(cowl())
    for _ in range(3):
        session.adopt(session.consider(Next(at=AT)))
    considered = session.consider_plan(gone_on(0), AT, "new")
    (event,) = considered.events
    assert isinstance(event, PlanChanged)
    assert (event.place.index, event.unplaced) == (3, 3)
    told = " ".join(tell_effect(each, considered.plan) for each in considered.effects)
    assert "You had counted 3 rounds of a row that was not read, and are in front of them: say 3 rounds done." in told


def test_what_is_knitted_by_words_counts_in_the_evening() -> None:
    """The file has it as rounds of the garment: they were knitted tonight like any other."""
    session = evening(cowl())
    for _ in range(2):
        session.adopt(session.consider(Next(at=AT)))
    before = sum(done.stitches for day in session.state.days for done in day.done)
    settle(session, gone_on(2))
    after = sum(done.stitches for day in session.state.days for done in day.done)
    assert after - before == sum(each.progress for each in session.plan.rounds[3:5]) > 0


OWN15, OFF10 = Run("own", 15, "MC"), Run("bo", 10, "MC")
LAID = (Run("rest", 15, "MC"), Run("hold", 15, "holder"))


@each_row(
    ("waits", "phrases", "index"),
    [
        # Bound off in the middle: the row, and the stitches that it laid aside.
        (True, ((OWN15, OFF10, OWN15), LAID), 5),
        (False, ((OWN15, OFF10, OWN15),), 4),
        # The file has another row than she knitted: she is in front of it.
        (True, (), 3),
    ],
)
def test_the_place_is_behind_a_row_whose_stitches_were_asked(waits: bool, phrases: tuple[tuple[Run, ...], ...], index: int) -> None:
    """She has knitted it before she was asked, and what waits is on its thread."""
    row = replace(ROW, flat=True, by_parts=frozenset({PartKind.OFF}))
    session = evening(replace(cowl(), open=row))
    for cue in (Yes(at=AT), Count(at=AT, stitches=15), Count(at=AT, stitches=10), Yes(at=AT), Yes(at=AT) if waits else No(at=AT)):
        session.adopt(session.consider(cue))
    new = gone_on(3)
    rounds = [replace(each, words="") for each in new.rounds]
    for at, phrase in enumerate(phrases, start=3):
        rounds[at] = replace(rounds[at], phrase=phrase, line=21)
    settle(session, replace(new, rounds=tuple(rounds)))
    assert session.state.place.index == index


def test_the_place_is_behind_all_parts_that_came_back() -> None:
    """They hang on one needle already, and nobody is told to put the second back."""
    bound = replace(plan(("body", ["co40", "k40", "bo40"])), open=replace(ROW, stitches=0, by_parts=frozenset({PartKind.HELD, PartKind.BACK}), held=(("sleeve", 12), ("palm", 28))))
    session = evening(bound)
    for cue in (Yes(at=AT), Yes(at=AT), Yes(at=AT), Yes(at=AT), Yes(at=AT)):
        session.adopt(session.consider(cue))
    new = plan(("body", ["co40", "k40", "bo40"]), ("yoke", ["co40", "k40", "k40"]))
    rounds = list(new.rounds)
    rounds[3] = replace(rounds[3], phrase=(Run("return", 12, "sleeve"),))
    rounds[4] = replace(rounds[4], phrase=(Run("rest", 12, "MC"), Run("return", 28, "palm")))
    settle(session, replace(new, rounds=tuple(rounds)))
    assert session.state.place.index == 5
