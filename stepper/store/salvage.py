"""Rebuild a journal from what can be read of it and its copies. In memory; no file is changed.

The chain of checksums proves what is taken: an entry counts only if its checksum continues the one before it.
So the result is the journal as it once was, up to some entry, and never anything else.
"""

from __future__ import annotations

import sqlite3
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from contextlib import closing
from pathlib import Path
from typing import Any

from stepper.errors import SurroundingsError
from stepper.records import dataclass
from stepper.store.digests import chain_seed, entry_digest, plan_digest
from stepper.store.examination import FIRST_WITH_CHECKSUMS, examine
from stepper.store.history import (
    ENTRY_COLUMNS,
    PLAN_COLUMNS,
    BrokenHistoryError,
    add_rows,
    digest_at,
    read_newest,
)
from stepper.store.images import open_image
from stepper.store.migrations import migrate
from stepper.store.records import Newest

Row = tuple[Any, ...]
"""A row as it was read, which may be anything."""

_ENTRY_TYPES = (int, str, str, int, str, bytes)
_PLAN_TYPES = (int, int, str, str, str, bytes)
_UNREADABLE = (sqlite3.Error, ValueError, TypeError, OverflowError, MemoryError)


@dataclass(frozen=True, slots=True, kw_only=True)
class SalvagedJournal:
    """A rebuilt journal."""

    image: bytes
    """The whole journal, in the newest version of its form."""
    newest: Newest
    """How far it goes."""
    lost: int
    """Number of entries kept after its newest one and now missing, as far as is known. Range: 0 and up."""


class ReadableRows:
    """What can be read of a journal, from any file: rows, and names it may have."""

    def __init__(self) -> None:
        self.entries: defaultdict[int, list[Row]] = defaultdict(list)
        self.plans: defaultdict[int, list[Row]] = defaultdict(list)
        self.names: list[str] = []
        self.title = ""
        self.reach: dict[str, int] = {}

    def look_through(self, path: Path, image: bytes) -> None:
        """Collect what can be read of an image."""
        try:
            with closing(open_image(path, image)) as connection:
                self.add(
                    _readable(connection, "entry", ENTRY_COLUMNS, "seq"),
                    _readable(connection, "plan", PLAN_COLUMNS, "number"),
                )
                self._look_for_a_name(connection)
        except (SurroundingsError, *_UNREADABLE):
            return

    def add(self, entries: Iterable[Row], plans: Iterable[Row]) -> None:
        """Collect rows of `entry` and `plan`, leaving out malformed ones."""
        for rows, found, types in (
            (entries, self.entries, _ENTRY_TYPES),
            (plans, self.plans, _PLAN_TYPES),
        ):
            for row in rows:
                if tuple(map(type, row)) == types and row not in found[row[0]]:
                    found[row[0]].append(row)

    def know(self, newest: Newest) -> None:
        """Collect what was noted elsewhere about the newest entry."""
        self.names.append(newest.journal)
        self.reach[newest.journal] = max(newest.seq, self.reach.get(newest.journal, 0))

    def _look_for_a_name(self, connection: sqlite3.Connection) -> None:
        try:
            self.know(read_newest(connection))
            (self.title,) = connection.execute("SELECT title FROM garment").fetchone()
        except _UNREADABLE:
            self.names += [
                row[0]
                for row in _readable(connection, "newest", "journal, seq", "id")
                if isinstance(row[0], str)
            ]


def salvage(
    path: Path,
    findings: ReadableRows,
    copies: Sequence[Path],
    title: str,
    *,
    continues: Newest | None = None,
) -> SalvagedJournal | None:
    """Rebuild a journal.

    Args:
        path: The journal, for error messages that are not shown.
        findings: What is known of it.
        copies: Its copies, newest first.
        title: The garment's title, for a new journal; if empty, the title found or else the file's name.
        continues: If given, only what continues from there is taken.

    Returns:
        The journal that goes furthest; None if not one entry can be read.
    """
    images = [(newest, image) for each in copies for newest, image in _whole(each, continues)]
    names = dict.fromkeys([*findings.names, *(newest.journal for newest, _ in images)])
    for name in names:
        bases: list[tuple[Newest, bytes]] = [each for each in images if each[0].journal == name]
        bases.append(
            (Newest(journal=name, seq=0, digest=chain_seed(name), plan=0, plan_digest=chain_seed(name)), b"")
        )
        reached = [(_continued(newest, findings), newest, image) for newest, image in bases]
        after, base, image = max(reached, key=lambda each: (each[0].seq, each[1].seq))
        if after.seq:
            whole = _built(path, image, base, findings, title)
            return SalvagedJournal(
                image=whole, newest=after, lost=max(0, findings.reach.get(name, 0) - after.seq)
            )
    return None


def _whole(copy: Path, continues: Newest | None) -> Iterator[tuple[Newest, bytes]]:
    """Yield a copy's reach and bytes if it is whole."""
    try:
        image = copy.read_bytes()
        with closing(open_image(copy, image)) as connection:
            version = examine(connection, copy)
            if version < FIRST_WITH_CHECKSUMS:
                return
            newest = read_newest(connection)
            # A journal's checksums begin with its name: another's is never the same.
            if continues is None or (
                digest_at(connection, newest.journal, continues.seq) == continues.digest
            ):
                yield newest, image
    except (OSError, SurroundingsError, BrokenHistoryError):
        return


def _continued(newest: Newest, findings: ReadableRows) -> Newest:
    """Return how far the findings lead on from a given point."""
    seq, digest, number, plan = newest.seq, newest.digest, newest.plan, newest.plan_digest
    for row in _chained(findings.entries, seq, digest, entry_digest):
        seq, digest = row[0], row[5]
    for row in _chained(findings.plans, number, plan, plan_digest):
        number, plan = row[0], row[5]
    return Newest(journal=newest.journal, seq=seq, digest=digest, plan=number, plan_digest=plan)


def _chained(rows: dict[int, list[Row]], number: int, digest: bytes, link: Any) -> Iterator[Row]:
    """Yield the rows that follow one another by their checksums."""
    while True:
        number += 1
        following = next((row for row in rows.get(number, ()) if link(digest, *row[:5]) == row[5]), None)
        if following is None:
            return
        yield following
        digest = following[5]


def _built(path: Path, image: bytes, base: Newest, findings: ReadableRows, title: str) -> bytes:
    """Make the journal: the copy it begins with, and the rows that follow."""
    with closing(
        open_image(path, image) if image else sqlite3.connect(":memory:", isolation_level=None)
    ) as connection:
        version = examine(connection, path) if image else 0
        migrate(connection, version)
        if not image:
            named = title or findings.title or path.stem
            connection.execute("INSERT INTO garment (id, title) VALUES (1, ?)", (named,))
        connection.execute("BEGIN")
        add_rows(
            connection,
            base,
            list(_chained(findings.entries, base.seq, base.digest, entry_digest)),
            list(_chained(findings.plans, base.plan, base.plan_digest, plan_digest)),
        )
        connection.execute("COMMIT")
        return connection.serialize()


def _readable(connection: sqlite3.Connection, table: str, columns: str, key: str) -> list[Row]:
    """Return the readable rows: from the first onwards and, past a spoilt place, from the last backwards."""
    found: list[Row] = []
    for order in ("ASC", "DESC"):
        try:
            for row in connection.execute(f"SELECT {columns} FROM {table} ORDER BY {key} {order}"):
                found.append(row)
        except _UNREADABLE:
            continue
        break
    return found
