"""The tables of a journal, version by version, and the number that identifies a journal file.

A version that has ever been released is never edited: each change is a migration of its own in `migrations`.

What the file itself enforces, whoever writes to it:

- entries and plans are only ever added, never changed or deleted;
- entries are numbered 1, 2, 3 … without gaps, and so are plans;
- column types are enforced (STRICT).

From version 2 on, every row has a checksum (`digests`), and one row says how far the journal goes.
"""

from __future__ import annotations

from typing import Final

APPLICATION_ID: Final = 0x57704A31
"""Written in the file's header (bytes 68 to 71) to mark it as a journal of this program."""

_TRIGGERS: Final = (
    # The check before inserting also stops INSERT OR REPLACE, which deletes without firing the other trigger.
    """
    CREATE TRIGGER entry_has_no_gap BEFORE INSERT ON entry
    WHEN NEW.seq IS NOT (SELECT coalesce(max(seq), 0) + 1 FROM entry)
    BEGIN SELECT raise(ABORT, 'entries are numbered without gaps'); END
    """,
    """
    CREATE TRIGGER entry_is_not_changed BEFORE UPDATE ON entry
    BEGIN SELECT raise(ABORT, 'entries are never changed'); END
    """,
    """
    CREATE TRIGGER entry_is_not_deleted BEFORE DELETE ON entry
    BEGIN SELECT raise(ABORT, 'entries are never deleted'); END
    """,
    """
    CREATE TRIGGER plan_has_no_gap BEFORE INSERT ON plan
    WHEN NEW.number IS NOT (SELECT coalesce(max(number), 0) + 1 FROM plan)
    BEGIN SELECT raise(ABORT, 'plans are numbered without gaps'); END
    """,
    """
    CREATE TRIGGER plan_is_not_changed BEFORE UPDATE ON plan
    BEGIN SELECT raise(ABORT, 'plans are never changed'); END
    """,
    """
    CREATE TRIGGER plan_is_not_deleted BEFORE DELETE ON plan
    BEGIN SELECT raise(ABORT, 'plans are never deleted'); END
    """,
)

VERSION_1: Final = (
    f"PRAGMA application_id = {APPLICATION_ID}",
    """
    CREATE TABLE migration (
        version INTEGER PRIMARY KEY,
        name TEXT NOT NULL,
        applied_at TEXT NOT NULL
    ) STRICT
    """,
    """
    CREATE TABLE garment (
        id INTEGER PRIMARY KEY CHECK (id = 1),
        title TEXT NOT NULL
    ) STRICT
    """,
    """
    CREATE TABLE entry (
        seq INTEGER PRIMARY KEY,
        at TEXT NOT NULL,
        kind TEXT NOT NULL,
        version INTEGER NOT NULL CHECK (version >= 1),
        body TEXT NOT NULL
    ) STRICT
    """,
    """
    CREATE TABLE plan (
        number INTEGER PRIMARY KEY,
        from_seq INTEGER NOT NULL CHECK (from_seq >= 1),
        at TEXT NOT NULL,
        fingerprint TEXT NOT NULL,
        project_text TEXT NOT NULL
    ) STRICT
    """,
    # A cache: may be emptied at any time.
    """
    CREATE TABLE snapshot (
        id INTEGER PRIMARY KEY,
        seq INTEGER NOT NULL,
        fingerprint TEXT NOT NULL,
        codec_version INTEGER NOT NULL,
        body TEXT NOT NULL
    ) STRICT
    """,
    *_TRIGGERS,
)
"""Statements that make an empty database a journal of version 1, in order."""

MAKE_ROOM: Final = (
    "DROP TRIGGER entry_has_no_gap",
    "DROP TRIGGER entry_is_not_changed",
    "DROP TRIGGER entry_is_not_deleted",
    "DROP TRIGGER plan_has_no_gap",
    "DROP TRIGGER plan_is_not_changed",
    "DROP TRIGGER plan_is_not_deleted",
    "ALTER TABLE entry RENAME TO old_entry",
    "ALTER TABLE plan RENAME TO old_plan",
    "ALTER TABLE snapshot RENAME TO old_snapshot",
)
"""Statements that set the contents of version 1 aside, in order."""

VERSION_2: Final = (
    """
    CREATE TABLE entry (
        seq INTEGER PRIMARY KEY,
        at TEXT NOT NULL,
        kind TEXT NOT NULL,
        version INTEGER NOT NULL CHECK (version >= 1),
        body TEXT NOT NULL,
        digest BLOB NOT NULL
    ) STRICT
    """,
    """
    CREATE TABLE plan (
        number INTEGER PRIMARY KEY,
        from_seq INTEGER NOT NULL CHECK (from_seq >= 1),
        at TEXT NOT NULL,
        fingerprint TEXT NOT NULL,
        project_text TEXT NOT NULL,
        digest BLOB NOT NULL
    ) STRICT
    """,
    # A cache: may be emptied at any time, and a row with a wrong checksum is skipped.
    """
    CREATE TABLE snapshot (
        id INTEGER PRIMARY KEY,
        seq INTEGER NOT NULL,
        fingerprint TEXT NOT NULL,
        codec_version INTEGER NOT NULL,
        body TEXT NOT NULL,
        digest BLOB NOT NULL DEFAULT x''
    ) STRICT
    """,
    """
    CREATE TABLE newest (
        id INTEGER PRIMARY KEY CHECK (id = 1),
        journal TEXT NOT NULL,
        seq INTEGER NOT NULL,
        digest BLOB NOT NULL,
        plan INTEGER NOT NULL,
        plan_digest BLOB NOT NULL,
        checksum BLOB NOT NULL
    ) STRICT
    """,
)
"""Statements that make the tables of version 2, in order."""

PUT_UP_AGAIN: Final = ("DROP TABLE old_entry", "DROP TABLE old_plan", "DROP TABLE old_snapshot", *_TRIGGERS)
"""Statements that finish the step to version 2, once its tables hold what version 1 held."""
