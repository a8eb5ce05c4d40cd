"""How safe a commit is: settings, all or none, and processes killed at random and at chosen moments.

Killing a process shows that nothing answered is lost when the program dies. It shows nothing of a power cut.
"""

from __future__ import annotations

import json
import random
import signal
import sqlite3
import subprocess
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from stepper.store.database import (
    ROOM_KEPT_BYTES,
    connect,
    hold_write_right,
    keep_all_in_one_file,
    transaction,
)
from stepper.store.journal import Journal
from stepper.store.records import JournalEntry

StartChild = Callable[..., "subprocess.Popen[str]"]
MakeEntry = Callable[[int], JournalEntry]

needs_sigkill = pytest.mark.skipif(not hasattr(signal, "SIGKILL"), reason="this system has no SIGKILL")

KNIT_UNTIL_KILLED = """
import json, random, sys
from pathlib import Path
from stepper.store.journal import Journal
from stepper.store.records import JournalEntry
journal = Journal.open(Path(sys.argv[1]), title="A")
choose = random.Random(int(sys.argv[2]))
n = journal.count()
while True:
    size = choose.randint(1, 3)
    batch = [
        JournalEntry(at="2025-03-03T20:15:00+01:00", kind="Advanced", version=1,
              body=json.dumps({"n": n + i, "first": n + 1, "size": size, "x": "x" * choose.randint(0, 3000)}))
        for i in range(1, size + 1)
    ]
    n = journal.append(batch)[-1]
    print(n, flush=True)
    if n % 50 == 0:
        journal.keep_snapshot(n, "{}", "f", 1)
"""

DIE_AT = """
import os, signal, sqlite3, sys
from pathlib import Path
from stepper.store.journal import Journal
from stepper.store.records import JournalEntry
path, point, nth = Path(sys.argv[1]), sys.argv[2], int(sys.argv[3])
connections = []
def watch(event, arguments):
    if event == "sqlite3.connect/handle":
        connections.append(arguments[0])
def is_open(connection):
    try:
        return bool(connection.in_transaction)
    except sqlite3.ProgrammingError:
        return False
sys.addaudithook(watch)
journal = Journal.open(path, title="A")
seen = 0
def die_at(statement):
    global seen
    if statement.lstrip().upper().startswith(point):
        seen += 1
        if seen == nth:
            os.kill(os.getpid(), signal.SIGKILL)
connections = [each for each in connections if is_open(each)]
connections[-1].set_trace_callback(die_at)
entries = [JournalEntry(at="2025-03-03T20:15:00+01:00", kind="K", body=str(n), version=1) for n in range(1, 4)]
journal.append(entries)
print("answered", flush=True)
os.kill(os.getpid(), signal.SIGKILL)
"""


@pytest.fixture
def connection(path: Path) -> Iterator[sqlite3.Connection]:
    """A database with one table."""
    connection = connect(path, mode="rwc")
    assert keep_all_in_one_file(connection)
    connection.execute("CREATE TABLE t (x INTEGER PRIMARY KEY) STRICT")
    yield connection
    connection.close()


def check_whole(path: Path) -> list[dict[str, int]]:
    """Check that the journal opens, is sound and has no gap, and return its bodies."""
    with Journal.open(path, title="A") as journal:
        entries = list(journal.entries())
    connection = connect(path)
    assert connection.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
    connection.close()
    assert [e.seq for e in entries] == list(range(1, len(entries) + 1))
    return [json.loads(e.body) for e in entries]


@needs_sigkill
def test_what_was_answered_survives_a_kill_at_any_moment(path: Path, start_child: StartChild) -> None:
    """After each of many kills, all that was answered must be there, in whole batches, at most one beyond."""
    answered = 0
    for turn in range(25):
        child = start_child(KNIT_UNTIL_KILLED, path, turn)
        assert child.stdout
        first = child.stdout.readline()
        time.sleep(random.uniform(0, 0.05))
        child.kill()
        numbers = [
            int(line) for line in (first, *child.stdout.read().splitlines(True)) if line.endswith("\n")
        ]
        child.wait()
        assert numbers, child.stderr and child.stderr.read()
        bodies = check_whole(path)

        assert [b["n"] for b in bodies] == list(range(1, len(bodies) + 1))
        assert numbers[-1] <= len(bodies) <= numbers[-1] + 3
        last = bodies[-1]
        assert last["n"] == last["first"] + last["size"] - 1  # no batch is there in part
        answered += len(numbers)
    assert answered > 25


@needs_sigkill
@pytest.mark.parametrize(
    ("point", "nth", "kept"),
    [
        ("BEGIN", 1, 3),  # the right to write is taken again after the commit, before the answer
        ("INSERT", 1, 0),
        ("INSERT", 2, 0),
        ("INSERT", 3, 0),
        ("COMMIT", 1, 0),
        ("never", 1, 3),  # between commit and what follows: speaking and showing
    ],
)
def test_a_kill_at_a_named_moment_keeps_all_or_none(
    path: Path, start_child: StartChild, entry: MakeEntry, point: str, nth: int, kept: int
) -> None:
    """Killed before the commit none of the batch may be there, killed after it all must be."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1), entry(2)])
    child = start_child(DIE_AT, path, point, nth)
    out, complaint = child.communicate(timeout=60)

    assert child.returncode == -signal.SIGKILL, complaint
    assert out == ("answered\n" if point == "never" else "")
    assert check_whole(path)[2:] == [1, 2, 3][:kept]
    with Journal.open(path, title="A") as journal:
        assert journal.append([entry(3)]) == (3 + kept,)


def test_each_connection_has_the_safe_settings(connection: sqlite3.Connection) -> None:
    """Every commit must be on the disk before it is answered: in the one file, with synchronous=FULL (SQLite
    manual)."""
    ask = {
        name: connection.execute(f"PRAGMA {name}").fetchone()[0] for name in ("journal_mode", "synchronous")
    }

    assert ask == {"journal_mode": "persist", "synchronous": 2}
    assert connection.execute("PRAGMA foreign_keys").fetchone() == (1,)
    assert connection.execute("PRAGMA fullfsync").fetchone() == (1,)
    assert connection.isolation_level is None


def test_the_room_of_a_commit_is_kept_and_that_of_a_long_text_given_back(path: Path) -> None:
    """A commit waits longest for a file that changes its length, so the one beside the journal keeps it from cue to
    cue; and 40,000 stitches later it has not grown to the size of the journal."""
    beside, lengths = path.with_name(path.name + "-journal"), []
    with Journal.open(path, title="A") as journal:
        for n in range(30):
            journal.append([JournalEntry(at="2025-03-03T20:15:00+01:00", kind="K", body=str(n), version=1)])
            lengths.append(beside.stat().st_size)
        for n in range(1, 4):
            journal.keep_plan(f"{n}" * 10 * ROOM_KEPT_BYTES, "f", "2025-03-03T20:15:00+01:00")
            journal.keep_snapshot(30, f"{n}" * 10 * ROOM_KEPT_BYTES, "f", 1)
            assert beside.stat().st_size <= ROOM_KEPT_BYTES

    assert ROOM_KEPT_BYTES == 32 * 4096, "whole pages of SQLite"
    assert max(lengths) <= ROOM_KEPT_BYTES / 6
    assert lengths == sorted(lengths)
    assert len(set(lengths)) <= 2
    assert not beside.exists()


def test_a_transaction_is_kept_whole(connection: sqlite3.Connection, path: Path) -> None:
    """What was done in the block must be there for others after it, and not before."""
    other = connect(path)
    with transaction(connection):
        connection.execute("INSERT INTO t VALUES (1), (2)")
        assert other.execute("SELECT count(*) FROM t").fetchone() == (0,)
    assert other.execute("SELECT count(*) FROM t").fetchone() == (2,)
    other.close()


@pytest.mark.parametrize("error", [ValueError("no"), KeyboardInterrupt()])
def test_a_failed_transaction_leaves_nothing(connection: sqlite3.Connection, error: BaseException) -> None:
    """After any exception, an interrupt too, nothing of the block may remain and the next one must work."""

    def insert_and_fail() -> None:
        with transaction(connection):
            connection.execute("INSERT INTO t VALUES (1)")
            raise error

    with pytest.raises(type(error)):
        insert_and_fail()

    assert connection.execute("SELECT count(*) FROM t").fetchone() == (0,)
    with transaction(connection):
        connection.execute("INSERT INTO t VALUES (1)")


def test_the_first_error_is_the_one_reported(connection: sqlite3.Connection) -> None:
    """Tidying up after an error must not hide what went wrong first."""

    def roll_back_and_fail() -> None:
        with transaction(connection):
            connection.execute("ROLLBACK")
            raise ValueError("first")

    with pytest.raises(ValueError, match="first"):
        roll_back_and_fail()


def test_a_transaction_that_outgrows_the_file_is_undone(connection: sqlite3.Connection) -> None:
    """When SQLite itself gives up (no room), the block must be undone and the connection stay usable."""
    connection.execute("CREATE TABLE big (x TEXT)")
    connection.execute("PRAGMA max_page_count = 10")

    def outgrow() -> None:
        with transaction(connection):
            connection.execute("INSERT INTO t VALUES (1)")
            connection.execute("INSERT INTO big VALUES (?)", ("x" * 100_000,))

    with pytest.raises(sqlite3.OperationalError, match="full"):
        outgrow()

    assert not connection.in_transaction
    assert connection.execute("SELECT count(*) FROM t").fetchone() == (0,)


def test_two_writers_cannot_begin_at_once(connection: sqlite3.Connection, path: Path) -> None:
    """A second writer must learn at BEGIN that it cannot write, not half-way."""
    other = connect(path)
    with (
        transaction(connection),
        pytest.raises(sqlite3.OperationalError, match="locked"),
        transaction(other),
    ):
        raise AssertionError("never reached")
    other.close()


@pytest.mark.parametrize(
    "name", ["a b.journal", "50%25 wool?.journal", "#1 & more.journal", "Größe ↗.journal"]
)
def test_any_file_name_can_be_opened(tmp_path: Path, name: str) -> None:
    """A project may be called whatever the system allows; no character may mean something to SQLite."""
    path = tmp_path / name
    try:
        path.touch()
        path.unlink()
    except OSError:
        pytest.skip("this system does not allow such a name")
    with Journal.open(path, title="A"):
        pass

    assert [p.name for p in tmp_path.iterdir()] == [name]
    with Journal.read_only(path) as reader:
        assert reader.title == "A"


def test_the_right_to_write_is_held_before_and_after(connection: sqlite3.Connection, path: Path) -> None:
    """Nobody writes in between, so that what the session knows of its journal stays true; and what was kept is to be read."""
    other = connect(path)
    with hold_write_right(connection):
        assert connection.in_transaction
        connection.execute("INSERT INTO t VALUES (1)")
        with pytest.raises(sqlite3.OperationalError, match="locked"), transaction(other):
            raise AssertionError("never reached")
    with pytest.raises(sqlite3.OperationalError, match="locked"), transaction(other):
        raise AssertionError("never reached")
    assert connection.in_transaction
    assert other.execute("SELECT count(*) FROM t").fetchone() == (1,)
    other.close()
