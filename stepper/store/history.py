"""The chain of checksums inside a journal: write it on, and see whether it holds."""

from __future__ import annotations

import sqlite3
from collections.abc import Sequence
from dataclasses import astuple
from typing import Final

from stepper.store.digests import chain_seed, entry_digest, newest_digest, plan_digest
from stepper.store.records import JournalEntry, Newest

CHECKED_AT_OPENING: Final = 10_000
"""Number of newest entries whose checksums are checked when a journal is opened; a garment of 40,000 stitches
told in steps of eight has half as many. Older ones are checked whenever they are read."""

ENTRY_COLUMNS: Final = "seq, at, kind, version, body, digest"
PLAN_COLUMNS: Final = "number, from_seq, at, fingerprint, project_text, digest"

EntryRow = tuple[int, str, str, int, str, bytes]
PlanRow = tuple[int, int, str, str, str, bytes]


class BrokenHistoryError(ValueError):
    """The journal does not hold what was once put into it."""


def read_newest(connection: sqlite3.Connection) -> Newest:
    """Return how far the journal says it goes.

    Raises:
        BrokenHistoryError: It does not say, or its checksum is not right.
    """
    row = connection.execute(
        "SELECT journal, seq, digest, plan, plan_digest, checksum FROM newest"
    ).fetchone()
    title = connection.execute("SELECT title FROM garment").fetchone()
    if row is None or title is None:
        raise BrokenHistoryError("the row of the newest entry or the title is gone")
    newest = Newest(journal=row[0], seq=row[1], digest=row[2], plan=row[3], plan_digest=row[4])
    if newest_digest(newest, title[0]) != row[5]:
        raise BrokenHistoryError("the row of the newest entry is changed")
    return newest


def write_newest(connection: sqlite3.Connection, newest: Newest) -> None:
    """Record how far the journal goes; to be called within the transaction that added the rows."""
    (title,) = connection.execute("SELECT title FROM garment").fetchone() or ("",)
    connection.execute(
        "INSERT OR REPLACE INTO newest (id, journal, seq, digest, plan, plan_digest, checksum) "
        "VALUES (1, ?, ?, ?, ?, ?, ?)",
        (*astuple(newest), newest_digest(newest, title)),
    )


def entry_rows(newest: Newest, entries: Sequence[JournalEntry]) -> list[EntryRow]:
    """Return entries as the rows that follow the newest one."""
    rows: list[EntryRow] = []
    digest = newest.digest
    for seq, each in enumerate(entries, start=newest.seq + 1):
        digest = entry_digest(digest, seq, each.at, each.kind, each.version, each.body)
        rows.append((seq, each.at, each.kind, each.version, each.body, digest))
    return rows


def plan_row(newest: Newest, at: str, fingerprint: str, project_text: str) -> PlanRow:
    """Return a project text, valid from the next entry on, as the row that follows the newest one."""
    number, from_seq = newest.plan + 1, newest.seq + 1
    digest = plan_digest(newest.plan_digest, number, from_seq, at, fingerprint, project_text)
    return number, from_seq, at, fingerprint, project_text, digest


def add_rows(
    connection: sqlite3.Connection,
    newest: Newest,
    entries: Sequence[EntryRow] = (),
    plans: Sequence[PlanRow] = (),
) -> Newest:
    """Add rows after the newest ones. Call it within a transaction.

    Returns:
        How far the journal goes with them.
    """
    connection.executemany(f"INSERT INTO entry ({ENTRY_COLUMNS}) VALUES (?, ?, ?, ?, ?, ?)", entries)
    connection.executemany(f"INSERT INTO plan ({PLAN_COLUMNS}) VALUES (?, ?, ?, ?, ?, ?)", plans)
    after = Newest(
        journal=newest.journal,
        seq=entries[-1][0] if entries else newest.seq,
        digest=entries[-1][5] if entries else newest.digest,
        plan=plans[-1][0] if plans else newest.plan,
        plan_digest=plans[-1][5] if plans else newest.plan_digest,
    )
    write_newest(connection, after)
    return after


def digest_at(connection: sqlite3.Connection, journal: str, seq: int) -> bytes:
    """Return the checksum that the entry after `seq` is chained to.

    Raises:
        BrokenHistoryError: There is no such entry.
    """
    if seq == 0:
        return chain_seed(journal)
    row = connection.execute("SELECT digest FROM entry WHERE seq = ?", (seq,)).fetchone()
    if row is None:
        raise BrokenHistoryError(f"entry {seq} is gone")
    (digest,) = row
    return bytes(digest)


def check_history(connection: sqlite3.Connection, newest_only: int = CHECKED_AT_OPENING) -> Newest:
    """Make sure that the newest entries and all project texts are what was put in, and that none is missing.

    Args:
        connection: Open on a journal of the newest form.
        newest_only: How many of the newest entries to look at.

    Returns:
        How far the journal goes.

    Raises:
        BrokenHistoryError: It is not whole.
    """
    newest = read_newest(connection)
    _check_numbers(connection, "entry", "seq", newest.seq)
    _check_numbers(connection, "plan", "number", newest.plan)
    after = max(0, newest.seq - newest_only)
    digest = digest_at(connection, newest.journal, after)
    rows = connection.execute(f"SELECT {ENTRY_COLUMNS} FROM entry WHERE seq > ? ORDER BY seq", (after,))
    for seq, at, kind, version, body, kept in rows:
        digest = entry_digest(digest, seq, at, kind, version, body)
        if digest != kept:
            raise BrokenHistoryError(f"entry {seq} is changed")
    plans = chain_seed(newest.journal)
    for row in connection.execute(f"SELECT {PLAN_COLUMNS} FROM plan ORDER BY number"):
        plans = plan_digest(plans, *row[:5])
        if plans != row[5]:
            raise BrokenHistoryError(f"project text {row[0]} is changed")
    if (digest, plans) != (newest.digest, newest.plan_digest):
        raise BrokenHistoryError("the newest entry is not the one it should be")
    return newest


def _check_numbers(connection: sqlite3.Connection, table: str, number: str, newest: int) -> None:
    """Make sure that rows are numbered 1, 2, 3 … up to the newest."""
    # Queried separately, each is looked up; in a single query SQLite goes through every row.
    asked = ("count(*)", f"min({number})", f"max({number})")
    query = ", ".join(f"(SELECT {each} FROM {table})" for each in asked)
    found = connection.execute(f"SELECT {query}").fetchone()
    if found != ((newest, 1, newest) if newest else (0, None, None)):
        raise BrokenHistoryError("rows are missing or too many")
