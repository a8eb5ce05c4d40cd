from __future__ import annotations

import json
import os
import shutil
import signal
import subprocess
import tempfile
import threading
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, precondition, rule

from stepper.errors import SurroundingsError
from stepper.store.journal import SNAPSHOTS_KEPT, Journal
from stepper.store.location import lock_path, unfinished_path
from stepper.store.records import JournalEntry
from tests.store.disk import KILLED_WITH_A_LOG, saved_journal

StartChild = Callable[..., "subprocess.Popen[str]"]
MakeEntry = Callable[[int], JournalEntry]

AT = "2025-03-03T20:15:00+01:00"
LATER = "2025-03-04T08:00:00+01:00"

JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats(allow_nan=False) | st.text(),
    lambda inner: st.lists(inner) | st.dictionaries(st.text(), inner),
    max_leaves=8,
)

DIE_AT_RENAME = """
import os, signal, sys
from pathlib import Path
from stepper.store.journal import Journal
def watch(event, arguments):
    if event == "os.rename":
        os.kill(os.getpid(), signal.SIGKILL)
sys.addaudithook(watch)
Journal.open(Path(sys.argv[1]), title="A")
"""

KNIT = """
import sys, time
from pathlib import Path
from stepper.store.journal import Journal
from stepper.store.records import JournalEntry
journal = Journal.open(Path(sys.argv[1]), title="A")
journal.append([JournalEntry(at="2025-03-03T20:15:00+01:00", kind="K", body="1", version=1)])
print("kept", flush=True)
time.sleep(60)
"""


def test_a_new_journal_is_one_file_when_closed(path: Path) -> None:
    """A knitter who copies her folder must need only the project and the journal."""
    with Journal.open(path, title="A"):
        assert path.exists()

    assert list(path.parent.iterdir()) == [path]


def test_entries_are_numbered_without_gaps_from_1(path: Path, entry: MakeEntry) -> None:
    """Each entry must get the next place, over batches and sittings alike."""
    with Journal.open(path, title="A") as journal:
        assert journal.append([entry(1)]) == (1,)
        assert journal.append([entry(2), entry(3)]) == (2, 3)
        assert journal.append([]) == ()
    with Journal.open(path, title="A") as journal:
        assert journal.append([entry(4)]) == (4,)
        assert [e.seq for e in journal.entries()] == [1, 2, 3, 4]
        assert journal.count() == 4


def test_an_entry_comes_back_as_it_was_kept(path: Path) -> None:
    """Time, kind, body and version must be found again to the letter."""
    kept = JournalEntry(at="2025-03-03T20:15:00.5+01:00", kind="Noted", body='{"text":  "ß↗😀"}', version=7)
    with Journal.open(path, title="A") as journal:
        journal.append([kept])
    with Journal.open(path, title="A") as journal:
        *_, last = journal.entries()

    assert last
    assert (last.seq, last.at, last.kind, last.body, last.version) == (1, kept.at, kept.kind, kept.body, 7)


@settings(max_examples=40, deadline=None)
@given(st.lists(st.lists(st.tuples(JSON, st.booleans()), max_size=4), max_size=4))
def test_any_body_comes_back_as_it_was_kept(batches: list[list[tuple[Any, bool]]]) -> None:
    """Whatever JSON the session writes must be found again character by character, in the same order."""
    texts = [[json.dumps(value, ensure_ascii=ascii_only) for value, ascii_only in batch] for batch in batches]
    folder = Path(tempfile.mkdtemp())
    try:
        with Journal.open(folder / "a.journal", title="A") as journal:
            for batch in texts:
                journal.append([JournalEntry(at=AT, kind="K", body=text, version=1) for text in batch])
        with Journal.read_only(folder / "a.journal") as reader:
            found = [e.body for e in reader.entries()]
    finally:
        shutil.rmtree(folder)

    assert found == [text for batch in texts for text in batch]


def test_a_batch_with_a_fault_is_not_kept_at_all(path: Path, entry: MakeEntry) -> None:
    """When one entry of a batch cannot be kept, none may be, and the next batch follows without a gap."""
    faulty = entry(2)
    object.__setattr__(faulty, "kind", None)  # what the record itself would refuse
    with Journal.open(path, title="A") as journal:
        with pytest.raises(Exception, match="NOT NULL"):
            journal.append([entry(1), faulty])

        assert journal.count() == 0
        assert journal.append([entry(1)]) == (1,)


def test_a_second_session_is_refused_until_the_first_ends(path: Path, entry: MakeEntry) -> None:
    """Two sessions must never count the same garment; the first goes on undisturbed."""
    first = Journal.open(path, title="A")
    with pytest.raises(SurroundingsError, match="already being knitted in another session"):
        Journal.open(path, title="A")
    assert first.append([entry(1)]) == (1,)
    first.close()
    first.close()

    with Journal.open(path, title="A") as journal:
        assert journal.count() == 1


def test_a_second_session_is_allowed_once_the_first_was_killed(path: Path, start_child: StartChild) -> None:
    """After a crash the knitter must go on at once, with all that was kept."""
    child = start_child(KNIT, path)
    assert child.stdout
    assert child.stdout.readline() == "kept\n"
    with pytest.raises(SurroundingsError, match=f"process {child.pid}"):
        Journal.open(path, title="A")
    child.kill()
    child.wait()

    with Journal.open(path, title="A") as journal:
        assert [e.body for e in journal.entries()] == ["1"]


def test_a_failed_opening_gives_the_lock_back(path: Path) -> None:
    """A refusal must not itself shut the knitter out of the next attempt."""
    path.write_bytes(b"something else")
    with pytest.raises(SurroundingsError):
        Journal.open(path, title="A")
    assert not lock_path(path).exists()
    path.unlink()

    Journal.open(path, title="A").close()


@pytest.mark.skipif(not hasattr(signal, "SIGKILL"), reason="this system has no SIGKILL")
def test_a_kill_while_a_journal_is_made_leaves_none(path: Path, start_child: StartChild) -> None:
    """Killed just before the new journal gets its name, there must be none, and the next opening make one."""
    child = start_child(DIE_AT_RENAME, path)
    _, complaint = child.communicate(timeout=60)
    assert child.returncode == -signal.SIGKILL, complaint
    assert not path.exists()
    assert unfinished_path(path).exists()

    with Journal.open(path, title="A") as journal:
        assert journal.count() == 0
    assert list(path.parent.iterdir()) == [path]


def test_a_half_made_journal_is_thrown_away(path: Path) -> None:
    """Rubbish from a crash while making a journal must not become part of the next one."""
    unfinished_path(path).write_bytes(b"half")

    Journal.open(path, title="A").close()
    assert list(path.parent.iterdir()) == [path]


def test_a_log_without_its_journal_is_not_used_up(path: Path, start_child: StartChild) -> None:
    """When a journal of before was deleted but its log holds entries, nothing may be begun over it."""
    start_child(KILLED_WITH_A_LOG, saved_journal(path), 4).wait()
    saved = tempfile.mkdtemp()
    shutil.move(path, saved)
    log = path.with_name(path.name + "-wal")
    before = log.read_bytes()
    assert before

    with pytest.raises(SurroundingsError, match=r"is missing, but .+-wal is still there"):
        Journal.open(path, title="A")
    assert log.read_bytes() == before
    shutil.move(Path(saved) / path.name, path)
    with Journal.open(path, title="A") as journal:
        assert [each.seq for each in journal.entries()] == [1, 2, 3, 4, 5, 6, 7]
    assert not log.exists()
    shutil.rmtree(saved)


def test_the_title_follows_the_project(path: Path) -> None:
    """A garment renamed in its project must be listed under the new name."""
    Journal.open(path, title="Old").close()
    with Journal.open(path, title="New 'name'; --") as journal:
        assert journal.title == "New 'name'; --"
    with Journal.read_only(path) as reader:
        assert reader.title == "New 'name'; --"


def test_each_plan_is_kept_with_the_entry_it_holds_from(path: Path, entry: MakeEntry) -> None:
    """Every project text she knitted by must be found again, with the place where it begins to hold."""
    with Journal.open(path, title="A") as journal:
        assert journal.keep_plan("one", "f1", AT) == 1
        journal.append([entry(1), entry(2)])
        assert journal.keep_plan("two\r\n\ttwo\0", "f2", LATER) == 2
        journal.append([entry(3)])
        assert journal.keep_plan("one", "f1", LATER) == 3
        plans = journal.plan_versions()
        latest = journal.latest_plan()

    assert [(p.number, p.from_seq, p.at, p.fingerprint, p.project_text) for p in plans] == [
        (1, 1, AT, "f1", "one"),
        (2, 3, LATER, "f2", "two\r\n\ttwo\0"),
        (3, 4, LATER, "f1", "one"),
    ]
    assert latest == plans[-1]


def test_the_same_plan_is_kept_once(path: Path, entry: MakeEntry) -> None:
    """Opening the same project evening after evening must not pile up copies of it."""
    with Journal.open(path, title="A") as journal:
        journal.keep_plan("one", "f1", AT)
        journal.append([entry(1)])
    with Journal.open(path, title="A") as journal:
        assert journal.keep_plan("one", "f1", LATER) == 1
        assert len(journal.plan_versions()) == 1
        assert journal.keep_plan("one", "made differently", LATER) == 2


def test_a_plan_needs_a_time_with_an_offset(path: Path) -> None:
    """A time that does not say which moment it is must be found where it is given."""
    with Journal.open(path, title="A") as journal, pytest.raises(ValueError, match="offset"):
        journal.keep_plan("one", "f1", "2025-03-03T20:15:00")


def test_the_newest_fitting_snapshot_is_found(path: Path, entry: MakeEntry) -> None:
    """Only a snapshot of the plan in use, in a form that can be read, may be taken."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(n) for n in range(1, 10)])
        journal.keep_snapshot(3, "three", "f1", 1)
        journal.keep_snapshot(5, "five", "f1", 1)
        found = journal.latest_snapshot("f1", 1)

        assert found
        assert (found.seq, found.body, found.fingerprint, found.codec_version) == (5, "five", "f1", 1)
        assert journal.latest_snapshot("f2", 1) is None
        assert journal.latest_snapshot("f1", 2) is None


def test_only_the_last_snapshots_are_kept(path: Path, entry: MakeEntry) -> None:
    """Snapshots must not make the journal grow: the newest stays, and the one before."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(n) for n in range(1, 10)])
        for seq in range(1, 10):
            journal.keep_snapshot(seq, str(seq), f"f{seq}", 1)
        kept = [seq for seq in range(1, 10) if journal.latest_snapshot(f"f{seq}", 1)]

    assert kept == [8, 9]
    assert len(kept) == SNAPSHOTS_KEPT


@pytest.mark.parametrize("seq", [-1, 2, 100])
def test_a_snapshot_of_nothing_is_refused(path: Path, entry: MakeEntry, seq: int) -> None:
    """A snapshot beyond the newest entry would resume from what never happened."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1)])
        with pytest.raises(ValueError, match="seq must be from 0 to 1"):
            journal.keep_snapshot(seq, "{}", "f", 1)


def test_a_journal_may_be_handed_to_another_thread(path: Path, entry: MakeEntry) -> None:
    """Opening in one thread and keeping in another must work, as long as one at a time does."""
    with Journal.open(path, title="A") as journal:
        worker = threading.Thread(target=lambda: journal.append([entry(1)]))
        worker.start()
        worker.join()
        assert journal.count() == 1


class JournalLife(RuleBasedStateMachine):
    """A journal used at will, beside plain lists that say what must be in it."""

    def __init__(self) -> None:
        super().__init__()
        self.folder = Path(tempfile.mkdtemp())
        self.bodies: list[str] = []
        self.plans: list[tuple[int, str]] = []
        self.snapshots: list[tuple[int, str]] = []
        self.journal = Journal.open(self.folder / "a.journal", title="A")

    @rule(values=st.lists(JSON, max_size=3))
    def append(self, values: list[Any]) -> None:
        """Keep some entries."""
        bodies = [json.dumps(value) for value in values]
        places = self.journal.append([JournalEntry(at=AT, kind="K", body=body, version=1) for body in bodies])
        assert places == tuple(range(len(self.bodies) + 1, len(self.bodies) + len(bodies) + 1))
        self.bodies += bodies

    @rule(text=st.sampled_from(["one", "two"]))
    def keep_plan(self, text: str) -> None:
        """Keep a plan, perhaps the same as before."""
        if not self.plans or self.plans[-1][1] != text:
            self.plans.append((len(self.bodies) + 1, text))
        assert self.journal.keep_plan(text, text, AT) == len(self.plans)

    @precondition(lambda self: self.bodies)
    @rule(share=st.floats(0, 1))
    def keep_snapshot(self, share: float) -> None:
        """Keep a snapshot at some entry."""
        seq = int(share * len(self.bodies))
        self.snapshots = [*self.snapshots, (seq, f"at {seq}")][-SNAPSHOTS_KEPT:]
        self.journal.keep_snapshot(seq, f"at {seq}", "f", 1)

    @rule()
    def reopen(self) -> None:
        """Close and open again."""
        self.journal.close()
        self.journal = Journal.open(self.folder / "a.journal", title="A")

    @invariant()
    def agrees(self) -> None:
        """Compare with the lists, seen by the session and by a second look."""
        with Journal.read_only(self.folder / "a.journal") as reader:
            for seen in (self.journal, reader):
                assert [e.body for e in seen.entries()] == self.bodies
                assert [e.seq for e in seen.entries()] == list(range(1, len(self.bodies) + 1))
                assert [(p.from_seq, p.project_text) for p in seen.plan_versions()] == self.plans
                snapshot = seen.latest_snapshot("f", 1)
                assert (snapshot and snapshot.seq) == (max(self.snapshots)[0] if self.snapshots else None)

    def teardown(self) -> None:
        """Close and tidy up."""
        self.journal.close()
        shutil.rmtree(self.folder)


JournalLife.TestCase.settings = settings(max_examples=20, stateful_step_count=15, deadline=None)
TestJournalLife = JournalLife.TestCase


@pytest.mark.skipif(os.name != "posix", reason="permissions of POSIX")
def test_a_journal_is_its_owners_whatever_the_process_grants(path: Path, entry: MakeEntry) -> None:
    """With its copies, what SQLite keeps beside it, and one of before that others could read."""
    before = os.umask(0)
    try:
        with Journal.open(path, title="A") as journal:
            journal.append([entry(1)])
            beside = {each.name: each.stat().st_mode & 0o777 for each in path.parent.rglob("*")}
        path.chmod(0o644)
        Journal.open(path, title="A").close()
        modes = {each.name: each.stat().st_mode & 0o777 for each in path.parent.rglob("*")}
    finally:
        os.umask(before)
    assert modes.pop(f"{path.name}-copies") == 0o700
    assert set(modes.values()) == {0o600}
    assert beside[f"{path.name}-journal"] == 0o600
