"""Open a journal for a session or for reading, and say what is not as it should be.

A journal that is damaged, missing or older than what was kept last is rebuilt from what can be read and from
the copies beside it. The file that was there is set aside under a new name, never overwritten.
"""

from __future__ import annotations

import sqlite3
from contextlib import closing, suppress
from pathlib import Path
from types import MappingProxyType
from typing import Final

from stepper.files import keep_private, open_plain
from stepper.records import dataclass
from stepper.store.copies import Copies
from stepper.store.database import connect, keep_all_in_one_file
from stepper.store.examination import examine
from stepper.store.failures import (
    DamagedError,
    NotAJournalError,
    damaged_error,
    in_use_error,
    treat_as_damage,
)
from stepper.store.history import BrokenHistoryError, digest_at, read_newest, write_newest
from stepper.store.images import (
    HEADER_BYTES,
    is_empty,
    open_image,
    read_image,
    refuse_other_header,
)
from stepper.store.location import copies_folder, log_paths
from stepper.store.migrations import migrate
from stepper.store.new_files import create_journal, put_in_place
from stepper.store.records import Newest
from stepper.store.salvage import ReadableRows, SalvagedJournal, salvage


@dataclass(frozen=True, slots=True, kw_only=True)
class OpenedJournal:
    """A journal ready for use."""

    connection: sqlite3.Connection
    newest: Newest
    """How far it goes."""
    remark: str
    """What the knitter must be told about it, in one sentence; empty if nothing."""


def open_for_session(path: Path, title: str) -> OpenedJournal:
    """Open a journal for a session, holding the right to write; create it if there is none.

    Args:
        path: The journal; its lock is held.
        title: The garment's title.

    Raises:
        OSError, sqlite3.Error, SurroundingsError: It cannot be used. A file that is there is left as it is.
    """
    copies = Copies(path)
    if not path.exists():
        salvaged = salvage(path, _noted(copies), copies.listed(), title)
        if salvaged is not None:
            return _put_back(path, "old", salvaged, title)
        create_journal(path, title)
        connection, newest = open_existing(path, title)
        return OpenedJournal(connection=connection, newest=newest, remark="")
    open_plain(path).close()
    path.open("r+b").close()  # fails here if the file may not be written
    for each in (path, *log_paths(path), copies.folder):
        keep_private(each)  # one of before may have been readable by others
    try:
        connection, newest = open_existing(path, title)
    except (DamagedError, NotAJournalError):
        salvaged = _from_the_damaged(path, copies, title)
        if salvaged is None:
            raise
        return _put_back(path, "damaged", salvaged, title)
    salvaged = _what_goes_on(path, copies, newest, title)
    if salvaged is not None:
        connection.close()
        return _put_back(path, "earlier", salvaged, title)
    remark = _not_the_last(path, copies, connection, newest)
    return OpenedJournal(connection=connection, newest=newest, remark=remark)


def open_for_reading(path: Path) -> OpenedJournal:
    """Open an image of a journal in memory, in the newest form. Writes nothing to the disk.

    Args:
        path: The journal; it or copies of it exist.

    Raises:
        OSError, sqlite3.Error, SurroundingsError: It cannot be read.
    """
    copies = Copies(path)
    if not path.exists():
        salvaged = salvage(path, _noted(copies), copies.listed(), "")
        if salvaged is None:
            raise damaged_error(path)
        remark = f"{path.name} is missing; this is read from its copies{_lacking(salvaged)}."
        return _opened_in_memory(path, salvaged, remark)
    open_plain(path).close()
    try:
        connection = open_image(path, read_image(path))
        migrate(connection, examine(connection, path))
    except (DamagedError, NotAJournalError):
        salvaged = _from_the_damaged(path, copies, "")
        if salvaged is None:
            raise
        remark = f"{path.name} is damaged; this is what can be read of it and its copies{_lacking(salvaged)}."
        return _opened_in_memory(path, salvaged, remark)
    newest = read_newest(connection)
    salvaged = _what_goes_on(path, copies, newest, "")
    if salvaged is not None:
        connection.close()
        return _opened_in_memory(
            path,
            salvaged,
            f"{path.name} is an earlier one, which ends at entry {newest.seq}; this is read from its copies"
            f"{_lacking(salvaged)}.",
        )
    remark = _not_the_last(path, copies, connection, newest)
    return OpenedJournal(connection=connection, newest=newest, remark=remark)


def open_existing(path: Path, title: str) -> tuple[sqlite3.Connection, Newest]:
    """Open an existing journal, examine it, bring it up to date and hold the right to write to it.

    Args:
        path: The journal.
        title: The garment's title.

    Returns:
        The connection, within a transaction, and how far the journal goes.

    Raises:
        sqlite3.Error, SurroundingsError: It cannot be used; nothing has been changed.
    """
    with path.open("rb") as file:
        refuse_other_header(path, file.read(HEADER_BYTES))
    if not all(map(is_empty, log_paths(path))):
        # SQLite works what lies beside it into it on opening it for writing: look at the outcome first.
        with closing(open_image(path, read_image(path))) as look:
            examine(look, path)
    with treat_as_damage(path):
        connection = connect(path)
    try:
        with treat_as_damage(path):
            connection.execute("BEGIN IMMEDIATE")
        version = examine(connection, path)
        connection.execute("COMMIT")
        if not keep_all_in_one_file(connection):
            raise in_use_error(path)
        migrate(connection, version)
        connection.execute("BEGIN IMMEDIATE")
        newest = read_newest(connection)
        if connection.execute("SELECT title FROM garment").fetchone() != (title,):
            connection.execute("UPDATE garment SET title = ?", (title,))
            write_newest(connection, newest)
            connection.execute("COMMIT")
            connection.execute("BEGIN IMMEDIATE")
    except BaseException:
        connection.close()
        raise
    return connection, newest


def _noted(copies: Copies) -> ReadableRows:
    findings, mark = ReadableRows(), copies.mark()
    if mark is not None:
        findings.know(mark)
    return findings


def _from_the_damaged(path: Path, copies: Copies, title: str) -> SalvagedJournal | None:
    """Rebuild a damaged journal from what can be read."""
    findings = ReadableRows()
    for read in (read_image, Path.read_bytes):  # as SQLite would read it, and alone
        with suppress(OSError, sqlite3.Error):
            findings.look_through(path, read(path))
    mark = copies.mark()
    if mark is not None:
        findings.know(mark)
    return salvage(path, findings, copies.listed(), title)


def _what_goes_on(path: Path, copies: Copies, newest: Newest, title: str) -> SalvagedJournal | None:
    """Return a longer journal than the sound one at hand, if more was kept and copies have it."""
    mark = copies.mark()
    known = mark.seq if mark is not None and mark.journal == newest.journal else copies.reach(newest.journal)
    if known <= newest.seq:
        return None
    found = salvage(path, _noted(copies), copies.listed(), title, continues=newest)
    return found if found is not None and found.newest.seq > newest.seq else None


def _not_the_last(path: Path, copies: Copies, connection: sqlite3.Connection, newest: Newest) -> str:
    """Return what to say if the journal is not the one that was kept last."""
    mark = copies.mark()
    if mark is None:
        return ""
    where = f"; copies of what was kept here lie in {copies_folder(path).name}"
    if mark.journal != newest.journal:
        return f"{path.name} is another journal than the one kept here last{where}."
    if mark.seq > newest.seq:
        lost = mark.seq - newest.seq
        missing = f"{_entries(lost)} kept after it {_are(lost)} missing"
        return f"{path.name} ends at entry {newest.seq}: {missing}{where}."
    with suppress(BrokenHistoryError):
        if digest_at(connection, newest.journal, mark.seq) == mark.digest:
            return ""
    return f"{path.name} was knitted on elsewhere from an earlier entry than the one kept here last{where}."


def _opened_in_memory(path: Path, salvaged: SalvagedJournal, remark: str) -> OpenedJournal:
    return OpenedJournal(
        connection=open_image(path, salvaged.image), newest=salvaged.newest, remark=remark
    )


_PUT_BACK: Final = MappingProxyType(
    {
        "old": ("missing and was put back from its copies", "to begin anew, move {copies} away as well"),
        "damaged": ("damaged and was put together again", "the damaged file is kept as {aside}"),
        "earlier": ("an earlier one and was put back", "the file that was there is kept as {aside}"),
    }
)
# What was the matter with a journal, by the word that is put behind the name of a file that was there; and
# what to know of it now.


def _put_back(path: Path, word: str, salvaged: SalvagedJournal, title: str) -> OpenedJournal:
    """Put a rebuilt journal in place and open it."""
    aside = put_in_place(path, salvaged.image, word)
    connection, newest = open_existing(path, title)
    was, known = _PUT_BACK[word]
    known = known.format(copies=copies_folder(path).name, aside="nothing" if aside is None else aside.name)
    remark = f"{path.name} was {was} with {_entries(salvaged.newest.seq)}{_lacking(salvaged)}; {known}."
    return OpenedJournal(connection=connection, newest=newest, remark=remark)


def _lacking(salvaged: SalvagedJournal) -> str:
    """Return how many entries are missing, as part of a sentence."""
    return f", {_entries(salvaged.lost)} after them {_are(salvaged.lost)} missing" if salvaged.lost else ""


def _entries(count: int) -> str:
    return f"{count} {'entry' if count == 1 else 'entries'}"


def _are(count: int) -> str:
    return "is" if count == 1 else "are"
