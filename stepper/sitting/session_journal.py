"""Between the session and the journal: keep events, and restore the session as it was left."""

from __future__ import annotations

import sys
from collections.abc import Generator
from contextlib import contextmanager
from pathlib import Path

from stepper.plan.model import Plan
from stepper.plan.under_way.fingerprint import fingerprint
from stepper.records import dataclass
from stepper.session.codec import STATE_VERSION, decode_event, encode_event, encode_state
from stepper.session.events import Event, PlanChanged
from stepper.session.machine import Considered, Session
from stepper.session.replay import SNAPSHOT_EVERY, replay_events, state_from_snapshot
from stepper.session.state import State
from stepper.sitting.project_file import LoadedProject, plans_of_text
from stepper.store.journal import Journal
from stepper.store.reader import JournalReader, journal_exists
from stepper.store.records import JournalEntry

SNAPSHOT_OWNER = "state"
"""The fingerprint that snapshots are filed under. A state holds no plan, so one fits any plan."""


class EventKeeper:
    """Keeps events in a journal, and now and then the state, so that it need not be folded from the start."""

    def __init__(self, journal: Journal) -> None:
        self._journal = journal

    def __call__(self, events: tuple[Event, ...], state: State) -> tuple[str, ...]:
        """Keep events; return once they are on the disk.

        Returns:
            What the knitter must be told about the journal, one sentence each: for instance that it was
            damaged and put back.

        Raises:
            SurroundingsError: They could not be kept.
        """
        self._journal.append([_entry(event) for event in events])
        due = state.seq // SNAPSHOT_EVERY > (state.seq - len(events)) // SNAPSHOT_EVERY
        if due or state.closed or any(isinstance(event, PlanChanged) for event in events):
            self._journal.keep_snapshot(state.seq, encode_state(state), SNAPSHOT_OWNER, STATE_VERSION)
        return self._journal.take_remarks()


@contextmanager
def open_to_read(path: Path) -> Generator[JournalReader | None]:
    """Open a garment's journal to read it; anything wrong with it is reported on standard error.

    Args:
        path: The journal.

    Yields:
        The journal; None if nothing of the garment has been knitted.

    Raises:
        SurroundingsError: It cannot be read.
    """
    if not journal_exists(path):
        yield None
        return
    with Journal.read_only(path) as journal:
        for remark in journal.take_remarks():
            print(remark, file=sys.stderr)
        yield journal


def restore_state(journal: JournalReader) -> State:
    """Return the state a journal leads to, with the help of its newest snapshot.

    Raises:
        SurroundingsError: The journal cannot be read, or contains something this version does not know.
    """
    snapshot = journal.latest_snapshot(SNAPSHOT_OWNER, STATE_VERSION)
    state = None if snapshot is None else state_from_snapshot(snapshot.seq, snapshot.body)
    return replay_events(read_events(journal, after=state.seq if state else 0), state)


@dataclass(frozen=True, slots=True, kw_only=True)
class ResumedSession:
    """A session as it was left, not yet opened."""

    session: Session
    """On the plan by which it has been knitted so far."""
    changed: Considered | None
    """The move to the file's present plan, or the question where to go on in it; None if that plan is the
    same."""
    fingerprint: str
    """That of the file's present plan."""


def resume_session(loaded: LoadedProject, journal: JournalReader | None, at: str) -> ResumedSession:
    """Restore a session from a project file and a journal. Writes nothing.

    Args:
        loaded: The project file as it is now.
        journal: What has been knitted; None if nothing.
        at: Now, for what follows from a changed file. ISO 8601 with the offset from UTC.

    Raises:
        SurroundingsError: As `restore_state`.
    """
    mark = fingerprint(loaded.plan)
    state = restore_state(journal) if journal is not None else State()
    if journal is None or state.fingerprint in ("", mark):
        return ResumedSession(session=Session(loaded.plan, state), changed=None, fingerprint=mark)
    earlier = _plan_knitted(journal, state.fingerprint, loaded.path.parent)
    session = Session(loaded.plan if earlier is None else earlier, state)
    changed = session.consider_plan(loaded.plan, at, mark, comparable=earlier is not None)
    return ResumedSession(session=session, changed=changed, fingerprint=mark)


def _plan_knitted(journal: JournalReader, mark: str, folder: Path) -> Plan | None:
    """Compile the project text knitted by so far; None if this version cannot read it or reads it
    differently."""
    for version in reversed(journal.plan_versions()):
        if version.fingerprint == mark:
            # Even rounds were spaced and written otherwise once; a journal may have been knitted by that.
            plans = plans_of_text(version.project_text, "the pattern as it was", folder)
            return next((plan for plan in plans if fingerprint(plan) == mark), None)
    return None


def read_events(journal: JournalReader, after: int = 0) -> list[tuple[int, Event]]:
    """Return the events behind one, by default all of them, with their numbers.

    Raises:
        SurroundingsError: As `restore_state`.
    """
    return [(each.seq, decode_event(each.kind, each.version, each.body)) for each in journal.entries(after)]


def _entry(event: Event) -> JournalEntry:
    kind, version, body = encode_event(event)
    return JournalEntry(at=event.at, kind=kind, body=body, version=version)
