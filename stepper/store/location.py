"""Where a garment's journal lies: next to its project file, under the same name.

`pullover.yaml` has `pullover.journal`, and beside it `pullover.journal-copies`, the folder of its
rolling copies. While a session runs, SQLite keeps its rollback journal in `-journal` beside it and the lock
lies in `-lock`; both are gone once the session is closed. Journals of the first version had a log `-wal`,
which may hold their last entries.
"""

from __future__ import annotations

from datetime import datetime
from pathlib import Path

SUFFIX = ".journal"
"""Suffix of a journal's name."""


def journal_path(project: Path) -> Path:
    """Return the path of the journal that belongs to a project file.

    Links are followed first: one garment has one journal, whichever name its project file is opened under.

    Args:
        project: The project file; it need not exist.
    """
    return project.resolve().with_suffix(SUFFIX)


def lock_path(journal: Path) -> Path:
    """Return the path of the lock that only one session holds at a time."""
    return journal.with_name(journal.name + "-lock")


def unfinished_path(journal: Path) -> Path:
    """Return the path under which a journal is made before it gets its name."""
    return journal.with_name(journal.name + "-new")


def copies_folder(journal: Path) -> Path:
    """Return the folder of the rolling copies and of the mark of the newest entry."""
    return journal.with_name(journal.name + "-copies")


def log_paths(journal: Path) -> tuple[Path, ...]:
    """Return the paths where SQLite keeps what is on its way into the journal or out of it.

    Such a file belongs to the journal beside it: without it, the last entries are lost or half done.
    """
    return tuple(journal.with_name(journal.name + ending) for ending in ("-wal", "-journal"))


def free_name(path: Path, word: str) -> Path:
    """Return an unused name for setting a file aside: what it is and when.

    Args:
        path: The file's own name.
        word: What it is called from now on: "damaged", "earlier".
    """
    stamp = datetime.now().strftime("%Y-%m-%d-%H%M%S")
    wanted, turn = path.with_name(f"{path.name}-{word}-{stamp}"), 1
    while wanted.exists() or wanted.is_symlink():
        turn += 1
        wanted = path.with_name(f"{path.name}-{word}-{stamp}-{turn}")
    return wanted
