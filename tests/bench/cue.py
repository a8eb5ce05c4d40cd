"""Measure a cue from the typed line to its answer, and taking up a garment with a long history.

Run: python tests/bench/cue.py [EVENTS]. Prints figures; fails on nothing. Uses a real journal on the disk of
the current folder's temporary directory, the sample garment, and everything but the voice.
"""

from __future__ import annotations

import statistics
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from stepper.sitting.session_journal import SNAPSHOT_OWNER, EventKeeper, read_events, resume_session
from stepper.sitting.clock import now
from stepper.sitting.project_file import LoadedProject, load_project
from stepper.sitting.conductor import Conductor
from stepper.sitting.ports import ConductorPorts
from stepper.session.codec import STATE_VERSION, encode_event, encode_state
from stepper.session.cues import Back, Next
from stepper.session.events import Event
from stepper.session.machine import Session
from stepper.session.replay import SNAPSHOT_EVERY, replay_events
from stepper.session.state import Position, State
from stepper.store.journal import Journal
from stepper.store.records import JournalEntry

SAMPLE = ROOT / "tests" / "fixtures" / "switchback.yaml"


def milliseconds(times: list[float]) -> str:
    """Give median and 95th percentile."""
    cut = statistics.quantiles(times, n=20)
    return f"median {statistics.median(times) * 1e3:.2f} ms, p95 {cut[18] * 1e3:.2f} ms, worst {max(times) * 1e3:.2f} ms"


def timed_cues(folder: Path, loaded: LoadedProject, cues: list[str]) -> None:
    """Type cues into a session and time each until its answer is there."""
    with Journal.open(folder / "cues.journal", title=loaded.plan.title) as journal:
        taken = resume_session(loaded, journal, now())
        journal.keep_plan(loaded.text, taken.fingerprint, now())
        shown: list[str] = []
        conductor = Conductor(
            taken.session,
            ConductorPorts(keep=EventKeeper(journal), show=shown.append, clock=now),
        )
        conductor.begin(taken.fingerprint)
        times: dict[str, list[float]] = {}
        for cue in cues:
            begin = time.perf_counter()
            conductor.offer_words(cue)
            conductor.drain()
            times.setdefault(cue.split()[0], []).append(time.perf_counter() - begin)
        print(f"{len(cues)} cues, {journal.count()} events")
        for kind, found in times.items():
            print(f"  {kind:10} {len(found):5} times  {milliseconds(found)}")


def long_history(loaded: LoadedProject, count: int) -> list[Event]:
    """Give the events of a knitter who goes three steps forth and one back for years."""
    session, events = Session(loaded.plan), []
    while len(events) < count:
        far = session.state.place.index > len(session.plan.rounds) - 5
        session = Session(loaded.plan) if far else session
        cue = (
            Back(at="2025-03-03T20:15:00+01:00")
            if len(events) % 4 == 3
            and session.state.place != Position()  # from the very beginning there is no way back
            else Next(at="2025-03-03T20:15:00+01:00")
        )
        considered = session.consider(cue)
        session.adopt(considered)
        assert considered.events, f"{cue} was refused"
        events += considered.events
    return events[:count]


def timed_resume(folder: Path, loaded: LoadedProject, count: int) -> None:
    """Time taking up a garment with a long journal, with its snapshot and without."""
    events = long_history(loaded, count)
    with Journal.open(folder / "long.journal", title=loaded.plan.title) as journal:
        entries = []
        for event in events:
            kind, version, body = encode_event(event)
            entries.append(JournalEntry(at=event.at, kind=kind, body=body, version=version))
        journal.append(entries)
        kept = count - SNAPSHOT_EVERY + 1  # the worst case: the next cue would have kept a snapshot
        state = replay_events(read_events(journal)[:kept])
        journal.keep_snapshot(kept, encode_state(state), SNAPSHOT_OWNER, STATE_VERSION)
        del state
    times = []
    for _ in range(20):
        begin = time.perf_counter()
        with Journal.open(folder / "long.journal", title=loaded.plan.title) as journal:
            session = resume_session(loaded, journal, now()).session
            lines = session.consider_opening(now(), "f").effects
        times.append(time.perf_counter() - begin)
        assert lines
    print(f"resume with {count} events, snapshot {SNAPSHOT_EVERY - 1} events old: {milliseconds(times)}")
    begin = time.perf_counter()
    with Journal.open(folder / "long.journal", title=loaded.plan.title) as journal:
        whole: State = replay_events(read_events(journal))
    print(f"the same without a snapshot: {time.perf_counter() - begin:.2f} s ({whole.seq} events)")


def main() -> None:
    """Print all figures."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 100_000
    begin = time.perf_counter()
    loaded = load_project(SAMPLE)
    print(
        f"{SAMPLE.name}: {len(loaded.plan.rounds)} rounds, loaded in {(time.perf_counter() - begin) * 1e3:.0f} ms"
    )
    questions = ["where am i", "how many stitches", "count is 246", "where are the increases"]
    with tempfile.TemporaryDirectory() as folder:
        timed_cues(Path(folder), loaded, (["next step"] * 4 + ["undo that"] + questions) * 120)
        timed_resume(Path(folder), loaded, count)


if __name__ == "__main__":
    main()
