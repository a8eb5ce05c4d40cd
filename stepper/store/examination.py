"""Look a journal over before it is trusted: its form, its tables, its rows, its checksums. Writes nothing."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from functools import cache
from pathlib import Path

from stepper.store import migrations
from stepper.store.failures import damaged_error, treat_as_damage
from stepper.store.history import BrokenHistoryError, check_history
from stepper.store.migrations import Migration, applied_version, migrate, refuse_newer

FIRST_WITH_CHECKSUMS = 2
"""The first version of the journal's form whose rows have checksums."""


def examine(connection: sqlite3.Connection, path: Path) -> int:
    """Make sure a journal is whole.

    Args:
        connection: Open on the journal or an image of it.
        path: The journal, for the error message.

    Returns:
        The version of its form; 1 and up.

    Raises:
        NotAJournalError: It is something else.
        DamagedError: It is not whole.
        SurroundingsError: It is from a newer program, or another program holds it.
    """
    with treat_as_damage(path):
        version = applied_version(connection, path)
        refuse_newer(version, path)
        known = migrations.MIGRATIONS[:version]
        made = connection.execute("SELECT version, name FROM migration ORDER BY version").fetchall()
        if made != [(each.version, each.name) for each in known]:
            raise damaged_error(path)
        if _tables(connection) != _tables_of(known):
            raise damaged_error(path)
        if connection.execute("PRAGMA quick_check(1)").fetchone() != ("ok",):
            raise damaged_error(path)
        if version >= FIRST_WITH_CHECKSUMS:
            check_history(connection)
        else:
            _check_first_form(connection)
    return version


def _check_first_form(connection: sqlite3.Connection) -> None:
    """Check what can be checked without checksums: that numbers have no gaps.

    That texts are texts, `quick_check` has seen (SQLite, "STRICT Tables", section 2).
    """
    if connection.execute("SELECT count(*) FROM garment").fetchone() != (1,):
        raise BrokenHistoryError("the title is gone")
    for table, number in (("entry", "seq"), ("plan", "number")):
        found = connection.execute(f"SELECT {number} FROM {table} ORDER BY {number}")
        for expected, (kept,) in enumerate(found, start=1):
            if kept != expected:
                raise BrokenHistoryError(f"row {expected} is changed")


def _tables(connection: sqlite3.Connection) -> list[tuple[str, str, str, str]]:
    return connection.execute(
        "SELECT type, name, tbl_name, sql FROM sqlite_master ORDER BY type, name"
    ).fetchall()


@cache
def _tables_of(given: tuple[Migration, ...]) -> list[tuple[str, str, str, str]]:
    """Return the tables that migrations produce."""
    with closing(sqlite3.connect(":memory:", isolation_level=None)) as model:
        migrate(model, 0, given)
        return _tables(model)
