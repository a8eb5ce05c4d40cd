from __future__ import annotations

import sqlite3
from collections.abc import Callable
from contextlib import closing
from dataclasses import replace
from pathlib import Path

import pytest

from stepper.store.database import connect
from stepper.store.history import (
    CHECKED_AT_OPENING,
    BrokenHistoryError,
    check_history,
    digest_at,
    read_newest,
    write_newest,
)
from stepper.store.journal import Journal
from stepper.store.records import JournalEntry

MakeEntry = Callable[[int], JournalEntry]
AT = "2025-03-03T20:15:00+01:00"


@pytest.fixture
def raw(path: Path, entry: MakeEntry) -> sqlite3.Connection:
    """A journal of fifty entries and two texts, opened behind the program's back, its triggers gone."""
    with Journal.open(path, title="A") as journal:
        journal.keep_plan("one", "f1", AT)
        journal.append([entry(n) for n in range(1, 51)])
        journal.keep_plan("two", "f2", AT)
    connection = connect(path)
    for (name,) in connection.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall():
        connection.execute(f"DROP TRIGGER {name}")
    return connection


def test_what_was_kept_holds(raw: sqlite3.Connection) -> None:
    """The checks must not refuse what is whole."""
    with closing(raw):
        newest = check_history(raw)
        assert (newest.seq, newest.plan) == (50, 2)
        assert digest_at(raw, newest.journal, 50) == newest.digest


@pytest.mark.parametrize(
    "change",
    [
        "DELETE FROM entry WHERE seq = 50",
        "DELETE FROM entry WHERE seq = 20",
        "DELETE FROM entry WHERE seq = 1",
        "UPDATE entry SET body = '{}' WHERE seq = 1",
        "UPDATE entry SET kind = 'Other' WHERE seq = 50",
        "UPDATE entry SET digest = (SELECT digest FROM entry WHERE seq = 3) WHERE seq = 4",
        "INSERT INTO entry SELECT 51, at, kind, version, body, digest FROM entry WHERE seq = 50",
        "UPDATE plan SET project_text = 'three' WHERE number = 1",
        "DELETE FROM plan WHERE number = 2",
        "UPDATE newest SET seq = 49",
        "UPDATE newest SET plan = 1",
        "UPDATE garment SET title = 'B'",
        "DELETE FROM newest",
        "DELETE FROM garment",
    ],
)
def test_any_change_is_noticed(raw: sqlite3.Connection, change: str) -> None:
    """A row lost, exchanged, put in or changed anywhere is never taken for what was kept."""
    raw.execute(change)
    with closing(raw), pytest.raises(BrokenHistoryError):
        check_history(raw)


def test_only_so_many_of_the_newest_are_looked_at(raw: sqlite3.Connection) -> None:
    """A very long journal opens quickly; what lies further back is looked at when it is read."""
    raw.execute("UPDATE entry SET body = '{}' WHERE seq = 10")
    with closing(raw):
        assert check_history(raw, newest_only=40).seq == 50
        with pytest.raises(BrokenHistoryError):
            check_history(raw, newest_only=41)


@pytest.mark.parametrize("seq", [1, 9])
def test_an_entry_that_is_gone_is_missed_however_far_back(raw: sqlite3.Connection, seq: int) -> None:
    """Counting the rows takes no time: an evening that a damage took out is told when the journal is opened."""
    raw.execute("DELETE FROM entry WHERE seq = ?", (seq,))
    with closing(raw), pytest.raises(BrokenHistoryError, match="missing"):
        check_history(raw, newest_only=40)


def test_an_entry_that_is_not_there_has_no_checksum(raw: sqlite3.Connection) -> None:
    """Asked for beyond the end, the answer is not made up."""
    with closing(raw), pytest.raises(BrokenHistoryError):
        digest_at(raw, read_newest(raw).journal, 51)


def test_twice_the_entries_of_a_garment_are_looked_at_when_it_is_opened() -> None:
    """A pullover of 40,000 stitches, told in steps of eight: 5,000 entries, and as many again for counts, notes and
    what is undone. By hand; the figures are assumptions of the project."""
    assert CHECKED_AT_OPENING == 2 * 40_000 // 8


def test_a_row_of_the_newest_that_is_sound_in_itself_has_to_fit_the_entries(raw: sqlite3.Connection) -> None:
    """The page with that row may come from a backup of another course with as many entries: the journal would go on
    from a checksum that no entry has."""
    newest = read_newest(raw)
    with closing(raw):
        for other in (replace(newest, digest=b"x" * 16), replace(newest, plan_digest=b"x" * 16)):
            write_newest(raw, other)
            assert read_newest(raw) == other
            with pytest.raises(BrokenHistoryError, match="not the one it should be"):
                check_history(raw)
        write_newest(raw, replace(newest, plan=1))  # the next text would take the number of the last
        with pytest.raises(BrokenHistoryError, match="too many"):
            check_history(raw)
