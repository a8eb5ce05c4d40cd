"""Where a garment's journal lies: next to its project file, under the same name.

`switchback.yaml` has `switchback.journal`. While a session runs, SQLite keeps `-wal` and `-shm` beside it and
the lock lies in `-lock`; all three are gone after a session that was closed. After one that was killed they
stay: the log `-wal` then holds the last entries and belongs to the journal.
"""

from __future__ import annotations

from pathlib import Path

SUFFIX = ".journal"
"""Ending of a journal's name."""


def journal_path(project: Path) -> Path:
    """Return the place of the journal that belongs to a project file.

    A link is followed first: one garment has one journal, whichever name its project file is opened by.

    Args:
        project: The project file; it need not exist.
    """
    return project.resolve().with_suffix(SUFFIX)


def lock_path(journal: Path) -> Path:
    """Return the place of the lock that only one session holds at a time."""
    return journal.with_name(journal.name + "-lock")


def unfinished_path(journal: Path) -> Path:
    """Return the place where a journal is made before it gets its name."""
    return journal.with_name(journal.name + "-new")


def log_paths(journal: Path) -> tuple[Path, ...]:
    """Return the places where SQLite keeps what is on its way into the journal or out of it.

    Such a file belongs to the journal it lies beside: without it, the last entries are lost or half done.
    """
    return tuple(journal.with_name(journal.name + ending) for ending in ("-wal", "-journal"))
