from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest

from stepper.plan.under_way.fingerprint import fingerprint
from stepper.session.codec import STATE_VERSION, encode_state
from stepper.session.cues import Cue, Enough, Next, Note, Undo
from stepper.session.events import PlanChanged
from stepper.session.machine import Session
from stepper.session.replay import SNAPSHOT_EVERY
from stepper.session.state import Position
from stepper.sitting.project_file import load_project, plan_of_text
from stepper.sitting.session_journal import (
    SNAPSHOT_OWNER,
    EventKeeper,
    ResumedSession,
    open_to_read,
    read_events,
    restore_state,
    resume_session,
)
from stepper.store.journal import Journal
from stepper.store.location import journal_path
from tests.commands.garments import CUFF, garment
from tests.invariants import broken_invariants
from tests.playbook import AT


@pytest.fixture
def journal(tmp_path: Path) -> Iterator[Journal]:
    """Return a journal beside a project file."""
    with Journal.open(journal_path(garment(tmp_path)), title="Cuff") as opened:
        yield opened


def _say(session: Session, keeper: EventKeeper, cue: Cue) -> None:
    considered = session.consider(cue)
    keeper(considered.events, considered.state)
    session.adopt(considered)


def _session(journal: Journal) -> Session:
    return Session(load_project(journal.path.with_suffix(".yaml")).plan)


def test_what_is_kept_comes_back(journal: Journal) -> None:
    """Events in the order they happened, and the state they lead to."""
    session, keeper = _session(journal), EventKeeper(journal)
    for cue in (Next(at=AT), Note(at=AT, text="tight"), Next(at=AT), Undo(at=AT)):
        _say(session, keeper, cue)

    assert restore_state(journal) == session.state
    assert [type(event).__name__ for _, event in read_events(journal)] == [
        "Advanced",
        "Noted",
        "Advanced",
        "Undone",
    ]


def test_a_snapshot_is_kept_now_and_then_and_trusted(journal: Journal) -> None:
    """Taking up a long garment reads the last snapshot and what came after, not everything."""
    session, keeper = _session(journal), EventKeeper(journal)
    for _ in range(SNAPSHOT_EVERY // 2 + 5):
        _say(session, keeper, Next(at=AT))
        _say(session, keeper, Undo(at=AT))

    snapshot = journal.latest_snapshot(SNAPSHOT_OWNER, STATE_VERSION)

    assert snapshot is not None
    assert snapshot.seq == SNAPSHOT_EVERY
    assert restore_state(journal) == session.state


def test_a_snapshot_that_cannot_be_read_costs_nothing_but_time(journal: Journal) -> None:
    """A cache gone bad is left aside and the state folded from the beginning."""
    session, keeper = _session(journal), EventKeeper(journal)
    for _ in range(4):
        _say(session, keeper, Next(at=AT))
    journal.keep_snapshot(3, '{"seq":99}', SNAPSHOT_OWNER, STATE_VERSION)

    assert restore_state(journal) == session.state


def test_a_snapshot_that_was_changed_is_never_trusted(journal: Journal) -> None:
    """The state of another place in a row of the file must not become where she is."""
    session, keeper = _session(journal), EventKeeper(journal)
    for _ in range(4):
        _say(session, keeper, Next(at=AT))
    journal.keep_snapshot(4, encode_state(session.state), SNAPSHOT_OWNER, STATE_VERSION)
    assert journal.latest_snapshot(SNAPSHOT_OWNER, STATE_VERSION) is not None
    journal.close()
    with closing(sqlite3.connect(journal.path)) as other, other:
        other.execute("UPDATE snapshot SET body = replace(body, '4', '5')")

    with Journal.read_only(journal.path) as reader:
        assert reader.latest_snapshot(SNAPSHOT_OWNER, STATE_VERSION) is None
        assert restore_state(reader) == session.state


def test_what_is_to_be_told_of_the_journal_comes_with_the_next_event(journal: Journal) -> None:
    """Deleted under the program it is written anew, and whoever keeps the next step hears so, once."""
    session, keeper = _session(journal), EventKeeper(journal)
    _say(session, keeper, Next(at=AT))
    journal.path.unlink()
    considered = session.consider(Next(at=AT))
    (remark,) = keeper(considered.events, considered.state)
    session.adopt(considered)

    assert remark.startswith("cuff.journal was deleted or moved while you were knitting")
    assert restore_state(journal) == session.state
    considered = session.consider(Next(at=AT))
    assert keeper(considered.events, considered.state) == ()


def test_reading_tells_on_standard_error_what_is_not_as_it_should_be(
    journal: Journal, capsys: pytest.CaptureFixture[str]
) -> None:
    """Who looks where the knitting stands learns that the answer comes from the copies."""
    session, keeper = _session(journal), EventKeeper(journal)
    _say(session, keeper, Next(at=AT))
    journal.close()
    with open_to_read(journal.path) as reader:
        assert reader.count() == 1
    assert capsys.readouterr().err == ""
    journal.path.write_bytes(journal.path.read_bytes()[:9000])
    with open_to_read(journal.path) as reader:
        assert reader.count() == 1

    assert capsys.readouterr().err == (
        "cuff.journal is damaged; this is what can be read of it and its copies.\n"
    )
    with open_to_read(journal.path.with_name("other.journal")) as none:
        assert none is None


def test_closing_keeps_a_snapshot(journal: Journal) -> None:
    """The next sitting opens on it."""
    session, keeper = _session(journal), EventKeeper(journal)
    _say(session, keeper, Enough(at=AT))

    assert journal.latest_snapshot(SNAPSHOT_OWNER, STATE_VERSION) is not None


def test_an_unchanged_file_is_taken_up_as_it_is(journal: Journal) -> None:
    """Nothing to tell, and a comment put into the file is nothing."""
    path = journal.path.with_suffix(".yaml")
    loaded = load_project(path)
    taken = resume_session(loaded, journal, AT)
    journal.keep_plan(loaded.text, taken.fingerprint, AT)
    opening = taken.session.consider_opening(AT, taken.fingerprint)
    EventKeeper(journal)(opening.events, opening.state)
    path.write_text("# my own copy\n" + loaded.text, encoding="utf-8")

    again = resume_session(load_project(path), journal, AT)

    assert (taken.changed, again.changed) == (None, None)
    assert again.session.state == opening.state


def test_a_power_cut_between_the_new_text_and_the_move_to_it_is_made_good(journal: Journal) -> None:
    """The new text is kept first; if the move was not, the next start still compares with what was
    knitted."""
    path = journal.path.with_suffix(".yaml")
    loaded = load_project(path)
    taken = resume_session(loaded, journal, AT)
    journal.keep_plan(loaded.text, taken.fingerprint, AT)
    keeper, session = EventKeeper(journal), taken.session
    opening = session.consider_opening(AT, taken.fingerprint)
    keeper(opening.events, opening.state)
    session.adopt(opening)
    for _ in range(5):
        _say(session, keeper, Next(at=AT))
    garment(path.parent, CUFF.replace("Work 3 rounds", "Work 5 rounds"))
    changed = load_project(path)
    journal.keep_plan(changed.text, resume_session(changed, journal, AT).fingerprint, AT)

    again = resume_session(changed, journal, AT)  # as if the program had died right here

    assert again.changed is not None
    assert again.changed.state.place == Position(index=7)
    assert session.state.place == Position(index=5)


def test_a_past_that_is_read_otherwise_now_is_carried_with_a_warning(journal: Journal) -> None:
    """What an older version made of the same text is not known any more: her rounds may not be these."""
    loaded = load_project(journal.path.with_suffix(".yaml"))
    session, keeper = Session(loaded.plan), EventKeeper(journal)
    journal.keep_plan(loaded.text, "as an older version read it", AT)
    opening = session.consider_opening(AT, "as an older version read it")
    keeper(opening.events, opening.state)

    taken = resume_session(loaded, journal, AT)

    assert taken.changed is not None
    assert [getattr(effect, "comparable", None) for effect in taken.changed.effects] == [False]


def test_a_past_that_compiles_no_more_is_carried_with_a_warning(journal: Journal) -> None:
    """If an older version's text is not understood any more, the place is kept and the knitter told to
    look."""
    path = journal.path.with_suffix(".yaml")
    loaded = load_project(path)
    session, keeper = Session(loaded.plan), EventKeeper(journal)
    journal.keep_plan("title: [", "long ago", AT)
    opening = session.consider_opening(AT, "long ago")
    keeper(opening.events, opening.state)
    session.adopt(opening)
    _say(session, keeper, Next(at=AT))

    taken = resume_session(loaded, journal, AT)

    assert taken.changed is not None
    assert taken.changed.state.place == Position(index=1)
    assert [getattr(effect, "comparable", None) for effect in taken.changed.effects] == [False]


BEFORE_MANNERS = Path(__file__).parent / "knitted_before_manners.yaml"
BEFORE_MANNERS_MARK = "e145fc30ac9f46fe7a90c7def935bc50"
"""Its fingerprint by the program that spaced every even round alike and wrote it as flat repeats, kept from then."""


def knitted_before(journal: Journal, rounds: int, steps: int) -> ResumedSession:
    """Knit rounds of the plan as it was then, some steps of the next, and take the garment up again now."""
    path = journal.path.with_suffix(".yaml")
    path.write_text(BEFORE_MANNERS.read_text(encoding="utf-8"), encoding="utf-8")
    loaded = load_project(path)
    then = plan_of_text(loaded.text, "then", path.parent, formerly=True)
    assert fingerprint(then) == BEFORE_MANNERS_MARK != fingerprint(loaded.plan)
    session, keeper = Session(then), EventKeeper(journal)
    journal.keep_plan(loaded.text, BEFORE_MANNERS_MARK, AT)
    opening = session.consider_opening(AT, BEFORE_MANNERS_MARK)
    keeper(opening.events, opening.state)
    session.adopt(opening)
    while session.state.place.index < rounds:
        _say(session, keeper, Next(at=AT))
    for _ in range(steps):
        _say(session, keeper, Next(at=AT))
    return resume_session(loaded, journal, AT)


@pytest.mark.parametrize("rounds", range(1, 21))
def test_a_place_in_a_journal_of_the_former_spacing_is_carried_over(journal: Journal, rounds: int) -> None:
    """Behind the same round as before, whatever even rounds lie in what is knitted: nothing is asked, and what is
    past is not told as a change."""
    taken = knitted_before(journal, rounds, 0)
    assert taken.changed is not None
    assert taken.changed.state.place == taken.session.state.place == Position(index=rounds)
    event = taken.changed.events[0]
    assert isinstance(event, PlanChanged)
    assert (event.comparable, event.found) == (True, True)
    assert [change for change in event.changes if change.knitted] == []


@pytest.mark.parametrize("index", [3, 6, 8, 16, 18])
def test_an_even_round_half_worked_goes_on_as_it_was_begun(journal: Journal, index: int) -> None:
    """Its changes stay where she was told to make them; the even rounds to come are spaced as they are now."""
    taken = knitted_before(journal, index, 1)
    assert taken.changed is not None
    place = taken.session.state.place
    assert (place.index, place.stitch > 0) == (index, True)
    assert taken.changed.state.place == place
    then, now, plain = taken.session.plan.rounds, taken.changed.plan.rounds, taken.changed.base.rounds
    assert now[index].runs == then[index].runs != plain[index].runs
    assert [each.runs for each in now if each.index != index] == [
        each.runs for each in plain if each.index != index
    ]
    assert broken_invariants(taken.changed.plan) == ()
