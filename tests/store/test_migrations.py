from __future__ import annotations

import json
import signal
import sqlite3
import subprocess
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from stepper.errors import SurroundingsError
from stepper.store import migrations
from stepper.store.database import connect
from stepper.store.journal import Journal
from stepper.store.migrations import MIGRATIONS, Migration, applied_version, migrate, refuse_newer
from tests.store.disk import listing, saved_journal

StartChild = Callable[..., "subprocess.Popen[str]"]


def add_mood(connection: sqlite3.Connection) -> None:
    """Change the tables and what is in them, as a real migration would."""
    connection.execute(
        "CREATE TABLE mood (seq INTEGER PRIMARY KEY REFERENCES entry, mood TEXT NOT NULL) STRICT"
    )
    connection.execute("INSERT INTO mood SELECT seq, 'calm' FROM entry")


def add_yarn(connection: sqlite3.Connection) -> None:
    """Change one table by one column."""
    connection.execute("ALTER TABLE garment ADD COLUMN yarn TEXT NOT NULL DEFAULT 'wool'")


def fail_half_way(connection: sqlite3.Connection) -> None:
    """Make half a change, then fail."""
    add_yarn(connection)
    connection.execute("DROP TABLE snapshot")
    raise RuntimeError("half-way")


LATER = (
    *MIGRATIONS,
    Migration(version=3, name="a mood for each entry", apply=add_mood),
    Migration(version=4, name="the yarn", apply=add_yarn),
)

KILLED_IN_MIGRATION = """
import os, signal, sys
from pathlib import Path
from stepper.store import migrations
from stepper.store.journal import Journal
from stepper.store.migrations import MIGRATIONS, Migration
def add_yarn(connection):
    connection.execute("ALTER TABLE garment ADD COLUMN yarn TEXT NOT NULL DEFAULT 'wool'")
def die(connection):
    connection.execute("CREATE TABLE mood (x)")
    connection.execute("DROP TABLE snapshot")
    os.kill(os.getpid(), signal.SIGKILL)
later = (
    *MIGRATIONS, Migration(version=3, name="a", apply=add_yarn), Migration(version=4, name="b", apply=die)
)
migrations.MIGRATIONS = later
Journal.open(Path(sys.argv[1]), title="Switchback")
"""


@contextmanager
def knowing(later: tuple[Migration, ...]) -> Iterator[None]:
    """Be a later program, or a faulty one, with other migrations."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(migrations, "MIGRATIONS", later)
        yield


@pytest.fixture
def saved(path: Path) -> Path:
    """A copy of the journal kept from version 1."""
    return saved_journal(path)


def dump(path: Path) -> list[str]:
    """Return all there is in a journal as text."""
    connection = connect(path, mode="ro")
    try:
        return list(connection.iterdump())
    finally:
        connection.close()


def version(path: Path) -> int:
    """Return the version of a journal."""
    connection = connect(path, mode="ro")
    try:
        return applied_version(connection, path)
    finally:
        connection.close()


def check_saved_content(journal: Journal) -> None:
    """Check that what the saved journal was given is there."""
    assert [(e.seq, e.kind, json.loads(e.body)) for e in journal.entries()] == [
        (1, "Began", {"section": "yoke"}),
        (2, "Advanced", {"round": 1}),
        (3, "Noted", {"text": "Strähne 2 angefangen – knot in the yarn"}),
    ]
    assert [(p.number, p.from_seq, p.fingerprint, p.project_text) for p in journal.plan_versions()] == [
        (1, 1, "f1", "title: Switchback\n"),
        (2, 3, "f2", "title: Switchback\nsize: 3\n"),
    ]
    snapshot = journal.latest_snapshot("f2", 1)
    assert snapshot
    assert (snapshot.seq, snapshot.body) == (3, '{"at": 3}')
    assert journal.title == "Switchback"


def test_a_journal_of_version_1_opens_and_reads(saved: Path) -> None:
    """What a knitter kept with the first version must be found by every later one."""
    with Journal.open(saved, title="Switchback") as journal:
        check_saved_content(journal)


def test_a_journal_of_version_1_can_be_read_without_opening_it_for_knitting(saved: Path) -> None:
    """Looking where the knitting stands must work on a file from the first version as well."""
    with Journal.read_only(saved) as reader:
        assert reader.count() == 3


def test_an_old_journal_is_brought_up_to_date_with_all_it_holds(saved: Path) -> None:
    """Each pending migration must be applied and recorded once, in order, and nothing be lost."""
    for _ in range(2):
        with knowing(LATER), Journal.open(saved, title="Switchback") as journal:
            check_saved_content(journal)
    connection = connect(saved, mode="ro")

    assert connection.execute("SELECT version, name FROM migration ORDER BY version").fetchall() == [
        (m.version, m.name) for m in LATER
    ]
    assert connection.execute("SELECT * FROM mood").fetchall() == [(1, "calm"), (2, "calm"), (3, "calm")]
    assert connection.execute("SELECT title, yarn FROM garment").fetchall() == [("Switchback", "wool")]
    connection.close()


def test_a_new_journal_has_the_newest_version(path: Path) -> None:
    """A fresh journal must go through the same steps as an old one."""
    with knowing(LATER):
        Journal.open(path, title="A").close()

    assert version(path) == 4


def test_a_failing_migration_leaves_the_journal_as_it_was(saved: Path) -> None:
    """A faulty migration must not cost the knitter anything; the program before it still opens the file."""
    before = dump(saved)
    faulty = (MIGRATIONS[0], Migration(version=2, name="faulty", apply=fail_half_way))
    with knowing(faulty), pytest.raises(RuntimeError, match="half-way"):
        Journal.open(saved, title="Switchback")

    assert dump(saved) == before
    with Journal.open(saved, title="Switchback") as journal:
        check_saved_content(journal)


def test_migrations_before_a_failing_one_stay_applied(saved: Path) -> None:
    """Each migration is its own unit: a later fault must not undo an earlier one that is recorded."""
    faulty = (*LATER[:3], Migration(version=4, name="faulty", apply=fail_half_way))
    with knowing(faulty), pytest.raises(RuntimeError, match="half-way"):
        Journal.open(saved, title="Switchback")

    assert version(saved) == 3


@pytest.mark.skipif(not hasattr(signal, "SIGKILL"), reason="this system has no SIGKILL")
def test_a_kill_in_a_migration_leaves_the_version_before_it(saved: Path, start_child: StartChild) -> None:
    """Killed in the middle of a migration, the journal must hold all of the version before and open again."""
    child = start_child(KILLED_IN_MIGRATION, saved)
    _, complaint = child.communicate(timeout=60)

    assert child.returncode == -signal.SIGKILL, complaint
    assert version(saved) == 3
    assert not any("mood" in line for line in dump(saved))
    final = (
        *MIGRATIONS,
        Migration(version=3, name="a", apply=add_yarn),
        Migration(version=4, name="b", apply=add_mood),
    )
    with knowing(final), Journal.open(saved, title="Switchback") as journal:
        check_saved_content(journal)
    assert version(saved) == 4


def test_a_newer_journal_is_refused_untouched(saved: Path) -> None:
    """A journal from a later program must be neither read wrongly nor changed, and the way out be said."""
    with knowing(LATER):
        Journal.open(saved, title="Switchback").close()
    before = listing(saved.parent)
    for attempt in (lambda: Journal.open(saved, title="Other"), lambda: Journal.read_only(saved)):
        with pytest.raises(SurroundingsError, match=r"newer version of this program.*Update the program"):
            attempt()

    assert listing(saved.parent) == before


def test_the_version_known_is_not_newer(path: Path) -> None:
    """Only what is beyond the newest migration known may be refused."""
    with knowing(LATER):
        refuse_newer(4, path)
        with pytest.raises(SurroundingsError):
            refuse_newer(5, path)


@pytest.mark.parametrize("numbers", [(2,), (1, 3), (1, 1), (0, 1)])
def test_migrations_must_be_numbered_without_gaps(numbers: tuple[int, ...]) -> None:
    """A list with a gap or a number given twice is a fault of ours and must show at once."""
    connection = sqlite3.connect(":memory:", isolation_level=None)
    broken = [Migration(version=n, name="x", apply=add_yarn) for n in numbers]

    with pytest.raises(ValueError, match="without gaps"):
        migrate(connection, 0, broken)


@pytest.mark.parametrize(
    "rash",
    [
        lambda connection: connection.execute("COMMIT"),
        lambda connection: connection.execute("ROLLBACK"),
        lambda connection: connection.executescript("SELECT 1;"),  # commits before it begins
    ],
)
def test_a_migration_must_not_end_its_transaction(rash: Callable[[sqlite3.Connection], None]) -> None:
    """A migration that commits by itself would break the promise of all or nothing and must be found."""
    connection = sqlite3.connect(":memory:", isolation_level=None)

    with pytest.raises(AssertionError, match="ended the transaction"):
        migrate(connection, 0, [Migration(version=1, name="rash", apply=rash)])


def test_the_migrations_given_out_are_numbered_from_1() -> None:
    """The list every journal goes through must itself keep the rule."""
    assert [m.version for m in MIGRATIONS] == list(range(1, len(MIGRATIONS) + 1))
    assert len({m.name for m in MIGRATIONS}) == len(MIGRATIONS)


def test_what_was_remembered_is_taken_along_as_far_as_the_journal_goes(saved: Path) -> None:
    """A state kept before the first entry is a state; one kept of an entry that is not there would skip what she knits next."""
    connection = connect(saved)
    connection.execute("DELETE FROM snapshot")
    for number, seq in enumerate((0, 3, 4), start=1):
        connection.execute(
            "INSERT INTO snapshot (id, seq, fingerprint, codec_version, body) VALUES (?, ?, 'f', 1, '{}')", (number, seq)
        )
    connection.close()
    Journal.open(saved, title="Switchback").close()
    connection = connect(saved, mode="ro")
    assert connection.execute("SELECT seq FROM snapshot ORDER BY seq").fetchall() == [(0,), (3,)]
    connection.close()
