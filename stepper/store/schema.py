"""The tables of a journal, version 1, and the number a journal file is recognised by.

A version that was ever given to a knitter is never edited: a change is a migration of its own in
`migrations`.

What the file itself guards, whoever writes to it:

- entries and plans are only ever added, never changed or deleted;
- entries are numbered 1, 2, 3 … without gaps, and so are plans;
- types are kept (STRICT).
"""

from __future__ import annotations

from typing import Final

APPLICATION_ID: Final = 0x57704A31
"""Stands in the file's header (bytes 68 to 71) and marks it as a journal of this program."""

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
    # The check before inserting also stops INSERT OR REPLACE, which deletes without asking the other trigger.
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
"""Statements that make an empty database a journal of version 1, in order."""
