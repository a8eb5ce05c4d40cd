"""What the tests of the journal look at a disk with, and journals as they were written before."""

from __future__ import annotations

import shutil
import tempfile
from pathlib import Path

SAVED = Path(__file__).parent / "saved" / "version_1.sqlite"
"""Written once by version 1 of the journal and never again."""

KILLED_WITH_A_LOG = """
import os, signal, sqlite3, sys
connection = sqlite3.connect(sys.argv[1], isolation_level=None)
connection.execute("PRAGMA journal_mode = WAL").fetchone()
connection.execute("PRAGMA wal_autocheckpoint = 0").fetchone()
for seq in range(4, 4 + int(sys.argv[2])):
    connection.execute(
        "INSERT INTO entry (seq, at, kind, version, body) VALUES (?, '2025-03-03T20:15:00+01:00', 'K', 1, ?)",
        (seq, str(seq)),
    )
os.kill(os.getpid(), signal.SIGKILL)
"""
"""Goes on with the journal of version 1 as that version did, and is killed with so many entries in its log."""


def saved_journal(path: Path) -> Path:
    """Put a copy of the journal kept from version 1 somewhere."""
    shutil.copy(SAVED, path)
    return path


def listing(folder: Path) -> dict[str, bytes]:
    """Return every file of a folder, and of the folders in it, with its content."""
    return {
        str(found.relative_to(folder)): found.read_bytes() for found in folder.rglob("*") if found.is_file()
    }


def is_plain(sentence: str) -> bool:
    """Return whether a sentence is one for a knitter: no words of the trade, complete sentences."""
    sentence = " ".join(word for word in sentence.split() if not word.startswith(tempfile.gettempdir()))
    words = ("sqlite", "errno", "traceback", "exception", "database", "transaction", "none")
    return sentence.endswith(".") and not any(word in sentence.lower() for word in words)
