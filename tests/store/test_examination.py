from __future__ import annotations

import sqlite3
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest

from stepper.errors import SurroundingsError
from stepper.store.database import connect
from stepper.store.examination import FIRST_WITH_CHECKSUMS, examine
from stepper.store.failures import DamagedError, NotAJournalError
from stepper.store.journal import Journal
from stepper.store.records import JournalEntry
from tests.store.disk import saved_journal


def test_a_whole_journal_passes(path: Path, entry: Callable[[int], JournalEntry]) -> None:
    """Of the newest form and of the first."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1)])
    with closing(connect(path, mode="ro")) as connection:
        assert examine(connection, path) == FIRST_WITH_CHECKSUMS
    with closing(connect(saved_journal(path))) as connection:
        assert examine(connection, path) == 1


@pytest.mark.parametrize(
    "change",
    [
        "DROP TRIGGER entry_is_not_changed",
        "DROP TABLE snapshot",
        "ALTER TABLE garment ADD COLUMN yarn TEXT",
        "CREATE TABLE mood (x)",
        "UPDATE migration SET name = 'another'",
        "DELETE FROM migration WHERE version = 1",
        "UPDATE migration SET version = -1 WHERE version = 1",
    ],
)
@pytest.mark.parametrize("first_form", [False, True])
def test_other_tables_than_its_own_are_noticed(path: Path, change: str, first_form: bool) -> None:
    """A table that is gone or other must be found at once and not in the middle of a sleeve."""
    if first_form:
        saved_journal(path)
    else:
        Journal.open(path, title="A").close()
    with closing(connect(path)) as connection:
        connection.execute(change)
        with pytest.raises(DamagedError):
            examine(connection, path)


def test_a_first_form_with_a_gap_is_noticed(path: Path) -> None:
    """Without checksums, numbers without gaps are what can be made sure of."""
    with closing(connect(saved_journal(path))) as connection:
        connection.execute("DROP TRIGGER entry_is_not_deleted")
        connection.execute("DELETE FROM entry WHERE seq = 2")
        with pytest.raises(DamagedError):
            examine(connection, path)


def test_another_programs_database_is_told_apart(path: Path) -> None:
    """What was never ours is not called damaged."""
    with closing(connect(path, mode="rwc")) as connection:
        connection.execute("CREATE TABLE entry (x)")
        with pytest.raises(NotAJournalError):
            examine(connection, path)


def _changed_behind_its_back(path: Path, trigger: str, *statements: str) -> sqlite3.Connection:
    """Change rows that a trigger protects, and put the trigger back as though nothing had been."""
    connection = connect(path)
    (text,) = connection.execute("SELECT sql FROM sqlite_master WHERE name = ?", (trigger,)).fetchone()
    connection.execute(f"DROP TRIGGER {trigger}")
    for statement in statements:
        connection.execute(statement)
    connection.execute(text)
    return connection


@pytest.mark.parametrize(
    ("trigger", "statement"),
    [
        ("entry_is_not_deleted", "DELETE FROM entry WHERE seq = 2"),
        ("entry_is_not_changed", "UPDATE entry SET seq = 9 WHERE seq = 2"),
        ("entry_is_not_changed", "UPDATE entry SET seq = 0 WHERE seq = 1"),
    ],
)
def test_rows_of_the_first_form_are_looked_at_though_its_tables_are_as_they_were(
    path: Path, trigger: str, statement: str
) -> None:
    """A disk that loses a page leaves the tables as they are. Without checksums a gap is seen."""
    with closing(_changed_behind_its_back(saved_journal(path), trigger, "SELECT 1")) as connection:
        assert examine(connection, path) == 1
    with closing(_changed_behind_its_back(path, trigger, statement)) as connection, pytest.raises(DamagedError):
        examine(connection, path)


def test_a_row_changed_behind_the_triggers_does_not_fit_its_checksum(
    path: Path, entry: Callable[[int], JournalEntry]
) -> None:
    """From the form with checksums on, a text that a disk changed is found though numbers and tables are right."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(n) for n in range(1, 4)])
    change = "UPDATE entry SET body = '{}' WHERE seq = 2"
    changed = _changed_behind_its_back(path, "entry_is_not_changed", change)
    with closing(changed) as connection, pytest.raises(DamagedError):
        examine(connection, path)


def test_a_form_of_tomorrow_is_refused_with_what_to_do_and_is_not_called_damaged(path: Path) -> None:
    """She has carried the journal from a newer computer: nothing is wrong with it."""
    Journal.open(path, title="A").close()
    with closing(connect(path)) as connection:
        connection.execute("INSERT INTO migration (version, name, applied_at) VALUES (3, 'a form of tomorrow', '2031-01-01')")
        with pytest.raises(SurroundingsError, match="newer version") as refused:
            examine(connection, path)
        assert not isinstance(refused.value, DamagedError)


def test_a_first_form_without_its_title_is_noticed(path: Path) -> None:
    """The row is a table of its own, which a lost page empties; the garment would go on without a name."""
    with closing(connect(saved_journal(path))) as connection:
        connection.execute("DELETE FROM garment")
        with pytest.raises(DamagedError):
            examine(connection, path)


def test_a_first_form_in_which_a_text_is_none_is_noticed(path: Path) -> None:
    """Without checksums the kind of each value is all that tells a spoilt row; here the last body, turned from a text of
    two bytes into a blob of two: serial types 17 and 16, SQLite file format, section 2.1."""
    with closing(connect(saved_journal(path))) as connection:
        connection.execute(
            "INSERT INTO entry (seq, at, kind, version, body) VALUES (4, '2025-03-03T20:15:00+01:00', 'Quux', 1, '77')"
        )
    content = path.read_bytes()
    # The header of the row: its length, seq (in the key), 25 letters, 4 letters, the constant 1, 2 letters.
    row = bytes((6, 0, 63, 21, 9, 17)) + b"2025-03-03T20:15:00+01:00" + b"Quux"
    assert content.count(row) == 1
    path.write_bytes(content.replace(row, row.replace(bytes((9, 17)), bytes((9, 16)), 1)))
    with closing(connect(path)) as connection, pytest.raises(DamagedError):
        examine(connection, path)
