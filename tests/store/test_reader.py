from __future__ import annotations

import subprocess
from collections.abc import Callable
from pathlib import Path

import pytest

from stepper.errors import SurroundingsError
from stepper.store.database import connect
from stepper.store.history import read_newest
from stepper.store.journal import Journal
from stepper.store.reader import JournalReader, journal_exists, open_reader
from stepper.store.records import JournalEntry
from tests.store.disk import listing, saved_journal

StartChild = Callable[..., "subprocess.Popen[str]"]
MakeEntry = Callable[[int], JournalEntry]

WRITE = """
import sys
import time
from pathlib import Path
from stepper.store.journal import Journal
from stepper.store.records import JournalEntry
journal = Journal.open(Path(sys.argv[1]), title="A")
for n in range(1, 100_000):
    journal.append([JournalEntry(at="2025-03-03T20:15:00+01:00", kind="K", body=str(n), version=1)] * 2)
    if n == 20:
        print("begun", flush=True)
    time.sleep(0.001)  # or the journal grows so fast that reading it is all that the test does
"""

OPEN_AND_CLOSE = """
import sys
from pathlib import Path
from stepper.store.journal import Journal
from stepper.store.records import JournalEntry
while True:
    with Journal.open(Path(sys.argv[1]), title="A") as journal:
        for _ in range(4):
            journal.append(
                [JournalEntry(at="2025-03-03T20:15:00+01:00", kind="K", body='"' + "x" * 3000 + '"', version=1)] * 5
            )
    print("closed", flush=True)
"""

SESSION_BEGINS_AS_THE_FILE_IS_READ = """
import sys
from pathlib import Path
from stepper.store.journal import Journal
from stepper.store.records import JournalEntry
path, sessions = Path(sys.argv[1]), []
Journal.open(path, title="A").close()
def watch(event, arguments):
    if event == "open" and arguments[0] == str(path) and not sessions:
        sessions.append(None)  # what the session itself opens is not to be caught
        sessions[0] = Journal.open(path, title="A")
        sessions[0].append([JournalEntry(at="2025-03-03T20:15:00+01:00", kind="K", body="1", version=1)])
sys.addaudithook(watch)
print(Journal.read_only(path).count(), len(sessions))
"""


def test_a_journal_that_is_not_there_is_not_made(path: Path) -> None:
    """Asking where the knitting stands must not begin it."""
    with pytest.raises(SurroundingsError, match="nothing of this garment has been knitted"):
        open_reader(path)

    assert list(path.parent.iterdir()) == []


def test_a_journal_of_a_missing_folder_is_not_made(tmp_path: Path) -> None:
    """A wrong path must be answered like a journal not begun."""
    with pytest.raises(SurroundingsError):
        open_reader(tmp_path / "nowhere" / "a.journal")


def test_an_empty_journal_reads_as_empty(path: Path) -> None:
    """A garment opened but not yet knitted must give nothing, not fail."""
    Journal.open(path, title="A").close()
    with open_reader(path) as reader:
        assert list(reader.entries()) == []
        assert reader.count() == 0
        assert reader.plan_versions() == ()
        assert reader.latest_plan() is None
        assert reader.latest_snapshot("f", 1) is None
        assert reader.title == "A"
        assert reader.path == path


@pytest.mark.parametrize("count", [1, 999, 1000, 1001, 2500])
def test_entries_come_in_order_from_where_asked(path: Path, entry: MakeEntry, count: int) -> None:
    """However many there are and wherever reading begins, none may be missing or come twice."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(n) for n in range(1, count + 1)])
    with open_reader(path) as reader:
        for after in (0, 1, count // 2, count - 1, count, count + 1):
            assert [e.seq for e in reader.entries(after)] == list(range(after + 1, count + 1))


def test_half_a_reading_holds_nothing_up(path: Path, entry: MakeEntry) -> None:
    """A reader that stops half-way must leave the session free to keep what comes, and sees one moment."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(n) for n in range(1, 2001)])
        with open_reader(path) as reader:
            reading = reader.entries()
            next(reading)
            assert journal.append([entry(2001)]) == (2001,)

            assert [e.seq for e in reading] == list(range(2, 2001))


def test_reading_while_another_process_writes(path: Path, start_child: StartChild) -> None:
    """While she knits in one window, another must be able to look, and see whole batches that only grow."""
    child = start_child(WRITE, path)
    assert child.stdout
    assert child.stdout.readline() == "begun\n"
    counts = []
    for _ in range(30):
        with Journal.read_only(path) as reader:
            bodies = [int(e.body) for e in reader.entries()]
        assert bodies == [n for n in range(1, len(bodies) // 2 + 1) for _ in "ab"]
        counts.append(len(bodies))

    assert child.poll() is None
    assert counts == sorted(counts)
    assert counts[-1] > counts[0] >= 40


def test_reading_while_sessions_come_and_go(path: Path, start_child: StartChild) -> None:
    """A look at the very moment a session begins or ends must still see a sound journal of whole batches."""
    child = start_child(OPEN_AND_CLOSE, path)
    assert child.stdout
    child.stdout.readline()
    counts = []
    for _ in range(25):
        with Journal.read_only(path) as reader:
            counts.append(len(list(reader.entries())))
    assert child.poll() is None
    child.kill()

    assert all(count % 5 == 0 for count in counts)
    assert counts == sorted(counts)
    assert counts[-1] > counts[0]


def test_a_session_that_begins_as_the_file_is_read_is_seen(path: Path, start_child: StartChild) -> None:
    """What a session answered before the file was read must be seen, though the look began without a log."""
    out, complaint = start_child(SESSION_BEGINS_AS_THE_FILE_IS_READ, path).communicate(timeout=60)

    assert (out, complaint) == ("1 1\n", "")


def test_a_killed_sessions_journal_can_be_read(path: Path, start_child: StartChild) -> None:
    """After a crash, looking must find what was kept, before any session has tidied up."""
    child = start_child(WRITE, path)
    assert child.stdout
    child.stdout.readline()
    child.kill()
    child.wait()
    before = path.read_bytes()
    with open_reader(path) as reader:
        assert reader.count() >= 40

    assert path.read_bytes() == before


def test_a_reader_cannot_write(path: Path) -> None:
    """What is opened for looking must not even offer to write."""
    Journal.open(path, title="A").close()
    with open_reader(path) as reader:
        assert not any(hasattr(reader, name) for name in ("append", "keep_plan", "keep_snapshot"))


def test_a_journal_of_an_older_form_is_read_as_it_is(path: Path) -> None:
    """Where the knitting stands must be told without bringing the file up to date, which only a sitting may."""
    saved_journal(path)
    before = listing(path.parent)
    with open_reader(path) as reader:
        assert [each.kind for each in reader.entries()] == ["Began", "Advanced", "Noted"]
        assert reader.take_remarks() == ()

    assert listing(path.parent) == before


def test_a_journal_without_its_record_of_migrations_is_damaged(path: Path) -> None:
    """A journal whose version cannot be told must not be guessed at."""
    Journal.open(path, title="A").close()
    connection = connect(path)
    connection.execute("DELETE FROM migration")
    connection.close()
    with pytest.raises(SurroundingsError, match="is damaged"):
        open_reader(path)

    connection = connect(path)
    connection.execute("DROP TABLE migration")
    connection.close()
    with pytest.raises(SurroundingsError, match="is damaged"):
        open_reader(path)


def test_a_snapshot_of_the_newest_entry_is_found_and_the_newest_one_first(
    path: Path, entry: MakeEntry
) -> None:
    """It is the one that saves most; of two that fit, the one with more of the history in it."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1), entry(2)])
        for seq in (1, 2):
            journal.keep_snapshot(seq, f"after {seq}", "f", 1)
    with Journal.read_only(path) as reader:
        found = reader.latest_snapshot("f", 1)
        assert found is not None
        assert (found.seq, found.body, found.fingerprint, found.codec_version) == (2, "after 2", "f", 1)


def test_a_garment_of_which_only_copies_are_left_was_begun(path: Path, entry: MakeEntry) -> None:
    """Asked where it stands, the answer comes from them, and not that nothing was knitted."""
    assert not journal_exists(path)
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1)])
    assert journal_exists(path)
    path.unlink()
    assert journal_exists(path)
    with open_reader(path) as reader:
        assert reader.count() == 1


def test_an_entry_is_read_as_it_was_written(path: Path, entry: MakeEntry) -> None:
    """When she worked a round is what her pace and the forecast are made of."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1)])
    with open_reader(path) as reader:
        (read,) = reader.entries()
    written = entry(1)
    assert (read.at, read.kind, read.version, read.body) == (
        written.at, written.kind, written.version, written.body
    )


def test_every_field_comes_back_as_it_was_kept(path: Path) -> None:
    """A time read as a kind, or a plan's number as the entry it begins with, would be noticed months later. Every field of
    each row has a value that no other has."""
    first, second = "2025-03-03T20:15:00+01:00", "2025-03-04T21:30:00+02:00"
    with Journal.open(path, title="Switchback") as journal:
        journal.append([JournalEntry(at=first, kind=f"Kind{n}", body=f'{{"n": {n}}}', version=10 + n) for n in range(1, 4)])
        assert journal.keep_plan("title: Cuff\n", "fingerprint-1", second) == 1
        journal.append([JournalEntry(at=second, kind="Last", body='{"n": 4}', version=14)])
        assert journal.keep_plan("title: Cuff\n", "fingerprint-2", first) == 2
        assert journal.keep_plan("title: Cuff\n", "fingerprint-2", second) == 2, "it is the one in force"
    with open_reader(path) as reader:
        assert reader.title == "Switchback"
        assert reader.count() == 4
        kept = [(each.seq, each.at, each.kind, each.version, each.body) for each in reader.entries()]
        assert kept == [
            (1, first, "Kind1", 11, '{"n": 1}'),
            (2, first, "Kind2", 12, '{"n": 2}'),
            (3, first, "Kind3", 13, '{"n": 3}'),
            (4, second, "Last", 14, '{"n": 4}'),
        ]
        assert [each.seq for each in reader.entries(after=2)] == [3, 4]
        assert [[each.seq for each in reader.entries(after=after)] for after in (3, 4, 5)] == [[4], [], []]
        *_, last = reader.entries()
        assert last is not None
        assert (last.seq, last.kind, last.at) == (4, "Last", second)
        plans = [
            (each.number, each.from_seq, each.at, each.fingerprint, each.project_text) for each in reader.plan_versions()
        ]
        assert plans == [
            (1, 4, second, "fingerprint-1", "title: Cuff\n"),
            (2, 5, first, "fingerprint-2", "title: Cuff\n"),
        ]
        latest = reader.latest_plan()
        assert latest is not None
        assert latest.number == 2


def test_a_journal_in_which_nothing_was_kept_has_nothing_newest(path: Path) -> None:
    """She opened it and went to bed."""
    Journal.open(path, title="A").close()
    with open_reader(path) as reader:
        assert (list(reader.entries()), reader.count()) == ([], 0)
        assert (reader.plan_versions(), reader.latest_plan(), reader.latest_snapshot("f", 1)) == ((), None, None)


def _changed_while_it_is_open(path: Path, *statements: str) -> JournalReader:
    """Return a reader on a file that is changed behind its back after it was looked at."""
    connection = connect(path)
    newest = read_newest(connection)
    for (name,) in connection.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall():
        connection.execute(f"DROP TRIGGER {name}")
    for each in statements:
        connection.execute(each)
    return JournalReader(path, connection, newest.journal)


def test_reading_stops_at_an_entry_that_is_not_what_was_kept(path: Path, entry: MakeEntry) -> None:
    """What lies far back is looked at only now: the rounds before it are true, and nothing after it is made up."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(n) for n in range(1, 6)])
    reader = _changed_while_it_is_open(path, "UPDATE entry SET body = '{}' WHERE seq = 3")
    entries = reader.entries()
    assert [next(entries).seq, next(entries).seq] == [1, 2]
    with pytest.raises(SurroundingsError, match="is damaged"):
        next(entries)
    reader.close()


def test_a_snapshot_that_is_not_what_was_kept_is_passed_over(path: Path, entry: MakeEntry) -> None:
    """It tells where she stands: one that was changed on the disk would put her where she has not been, unsaid."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1), entry(2)])
        journal.keep_snapshot(1, "after 1", "f", 1)
        journal.keep_snapshot(2, "after 2", "f", 1)
    reader = _changed_while_it_is_open(path, "UPDATE snapshot SET body = 'elsewhere' WHERE seq = 2")
    found = reader.latest_snapshot("f", 1)
    assert found is not None
    assert (found.seq, found.body) == (1, "after 1")
    reader.close()


def test_a_snapshot_from_beyond_the_newest_entry_is_passed_over(path: Path, entry: MakeEntry) -> None:
    """Left by a longer course of the garment it would put her where she has not been; the one before it still holds."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1), entry(2)])
        journal.keep_snapshot(2, "after 2", "f", 1)
    reader = _changed_while_it_is_open(
        path,
        "INSERT INTO snapshot (seq, fingerprint, codec_version, body, digest) "
        "SELECT 3, fingerprint, codec_version, 'after 3', digest FROM snapshot",
    )
    found = reader.latest_snapshot("f", 1)
    assert found is not None
    assert (found.seq, found.body) == (2, "after 2")
    reader.close()
