from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from stepper.store.database import connect
from stepper.store.journal import Journal
from stepper.store.migrations import MIGRATIONS, migrate
from stepper.store.records import JournalEntry
from stepper.store.schema import APPLICATION_ID
from tests.store.disk import SAVED

AT = "2025-03-03T20:15:00+01:00"


@pytest.fixture
def raw(path: Path, entry: Callable[[int], JournalEntry]) -> Iterator[sqlite3.Connection]:
    """A journal with two entries, a plan and a snapshot, opened behind the program's back."""
    with Journal.open(path, title="A") as journal:
        journal.keep_plan("title: A\n", "f1", AT)
        journal.append([entry(1), entry(2)])
        journal.keep_snapshot(2, "{}", "f1", 1)
    connection = connect(path)
    yield connection
    connection.close()


@pytest.mark.parametrize(
    "statement",
    [
        "UPDATE entry SET body = '{}' WHERE seq = 1",
        "UPDATE entry SET seq = 3 WHERE seq = 2",
        "DELETE FROM entry WHERE seq = 2",
        "DELETE FROM entry",
        f"INSERT OR REPLACE INTO entry VALUES (2, '{AT}', 'K', 1, '{{}}', x'00')",
        f"REPLACE INTO entry VALUES (1, '{AT}', 'K', 1, '{{}}', x'00')",
        f"INSERT INTO entry VALUES (1, '{AT}', 'K', 1, '{{}}', x'00') ON CONFLICT DO UPDATE SET body = '[]'",
        f"INSERT INTO entry VALUES (4, '{AT}', 'K', 1, '{{}}', x'00')",
        f"INSERT INTO entry VALUES (0, '{AT}', 'K', 1, '{{}}', x'00')",
        f"INSERT INTO entry VALUES (NULL, '{AT}', 'K', 1, '{{}}', x'00')",
        f"INSERT INTO entry (at, kind, version, body, digest) VALUES ('{AT}', 'K', 1, '{{}}', x'00')",
        f"INSERT INTO entry VALUES (3, '{AT}', 'K', 0, '{{}}', x'00')",
        f"INSERT INTO entry VALUES (3, '{AT}', 'K', 'one', '{{}}', x'00')",
        f"INSERT INTO entry VALUES (3, '{AT}', 'K', 1, x'00', x'00')",
        f"INSERT INTO entry VALUES (3, '{AT}', NULL, 1, '{{}}', x'00')",
        "UPDATE plan SET project_text = ''",
        "DELETE FROM plan",
        f"REPLACE INTO plan VALUES (1, 1, '{AT}', 'f', '', x'00')",
        f"INSERT INTO entry VALUES (3, '{AT}', 'K', 1, '{{}}', NULL)",
        f"INSERT INTO plan VALUES (3, 1, '{AT}', 'f', '', x'00')",
        "INSERT INTO garment VALUES (2, 'B')",
    ],
)
def test_history_cannot_be_changed_even_from_outside(raw: sqlite3.Connection, statement: str) -> None:
    """The file itself must refuse changed, deleted, numberless or mistyped history, whoever tries."""
    before = list(raw.iterdump())
    with pytest.raises(sqlite3.IntegrityError):
        raw.execute(statement)

    assert list(raw.iterdump()) == before


def test_what_follows_on_is_taken(raw: sqlite3.Connection) -> None:
    """The refusals above must be those of wrong rows, not of all rows."""
    raw.execute(f"INSERT INTO entry VALUES (3, '{AT}', 'K', 1, '{{}}', x'00')")
    raw.execute(f"INSERT INTO plan VALUES (2, 4, '{AT}', 'f', '', x'00')")

    assert raw.execute("SELECT count(*) FROM entry").fetchone() == (3,)


def test_snapshots_may_be_thrown_away(raw: sqlite3.Connection, path: Path) -> None:
    """A cache must never be needed: without it everything is still there."""
    raw.execute("DELETE FROM snapshot")
    with Journal.open(path, title="A") as journal:
        assert journal.latest_snapshot("f1", 1) is None
        assert journal.count() == 2


def test_a_journal_is_recognised_by_its_header(path: Path) -> None:
    """The mark must stand where the file format has it (SQLite file format, offset 68, big-endian)."""
    Journal.open(path, title="A").close()

    assert path.read_bytes()[68:72] == APPLICATION_ID.to_bytes(4, "big") == SAVED.read_bytes()[68:72]


def test_the_first_version_is_what_was_given_out(path: Path) -> None:
    """The tables of version 1 must stay those of the saved file: knitters have such files."""
    first = connect(path, mode="rwc")
    migrate(first, 0, MIGRATIONS[:1])
    first.close()
    tables = "SELECT type, name, sql FROM sqlite_master ORDER BY type, name"
    made, saved = connect(path, mode="ro"), sqlite3.connect(f"{SAVED.as_uri()}?immutable=1", uri=True)
    now, then = made.execute(tables).fetchall(), saved.execute(tables).fetchall()
    made.close()
    saved.close()

    assert now == then
