"""Keep what happened while knitting, so that a killed program loses nothing it has answered.

One SQLite file per garment. Entries are only ever added. `append` returns once they are on the disk, so
whatever is spoken or shown after `append` is never undone by a crash. `database` says how much of this is
proved.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Sequence
from contextlib import suppress
from pathlib import Path
from typing import Self

from stepper.errors import SurroundingsError
from stepper.store.copies import COPY_EVERY, Copies
from stepper.store.database import hold_write_right, leave_nothing_beside
from stepper.store.digests import snapshot_digest
from stepper.store.failures import DamagedError, NotAJournalError, explain_failures
from stepper.store.history import add_rows, entry_rows, plan_row
from stepper.store.lock import GarmentLock
from stepper.store.new_files import put_in_place
from stepper.store.opening import OpenedJournal, open_existing, open_for_session
from stepper.store.reader import JournalReader, open_reader
from stepper.store.records import JournalEntry, Newest, check_moment
from stepper.store.recovery import RecentRows, put_back_image, save_elsewhere, signature

SNAPSHOTS_KEPT = 2
"""Number of snapshots left after a new one: that one, and one more in case the newest turns out to be
unreadable."""


class Journal(JournalReader):
    """A journal open for one session: it holds the garment's lock until it is closed or the process ends.

    Every method may raise SurroundingsError: the disk is full, the drive is gone. Nothing is half kept then,
    and the call may be repeated.
    """

    def __init__(self, path: Path, opened: OpenedJournal, lock: GarmentLock, title: str) -> None:
        super().__init__(path, opened.connection, opened.newest.journal, opened.remark)
        self._lock = lock
        self._title = title
        self._newest = opened.newest
        self._copies = Copies(path)
        self._recent = RecentRows()
        self._copied = opened.newest.seq
        self._told_of_copies = False
        self._closed = False
        self._signature = signature(path)
        if opened.newest.seq:
            self._copies.write_mark(opened.newest)
            self._copy()

    @classmethod
    def open(cls, path: Path, *, title: str) -> Self:
        """Open a garment's journal for a session: create it if there is none, and bring it up to date.

        One that is damaged, missing or older than what was kept last is rebuilt from what can be read and
        from its copies; `take_remarks` says so.

        Args:
            path: The journal.
            title: The garment's title.

        Raises:
            SurroundingsError: Another session has it; the file is something else, was written by a newer
                program, or is so damaged that nothing can be read; the folder cannot be written to. An
                existing file is left as it is.
        """
        lock = GarmentLock(path)
        try:
            with explain_failures(path):
                opened = open_for_session(path, title)
                return cls(path, opened, lock, title)
        except BaseException:
            lock.release()
            raise

    @classmethod
    def read_only(cls, path: Path) -> JournalReader:
        """Open a garment's journal to read it, even while a session has it open. Nothing is ever written.

        Args:
            path: The journal.

        Raises:
            SurroundingsError: There is none yet, or it cannot be read.
        """
        return open_reader(path)

    def append(self, entries: Sequence[JournalEntry]) -> tuple[int, ...]:
        """Keep all the entries or none, and return once they are on the disk.

        If the journal was deleted, moved or exchanged meanwhile, it is first put back with all that was kept;
        `take_remarks` says so.

        Args:
            entries: What happened, oldest first.

        Returns:
            Their places. Shape: as `entries`. Always: consecutive, starting one after the newest entry before
            them.
        """
        if not entries:
            return ()
        with explain_failures(self._path):
            self._look_after_the_file()
            rows = entry_rows(self._newest, entries)
            with hold_write_right(self._connection):
                after = add_rows(self._connection, self._newest, entries=rows)
            self._recent.entries += rows
            self._have(after)
        if self._newest.seq // COPY_EVERY > self._copied // COPY_EVERY:
            self._copy()
        return tuple(row[0] for row in rows)

    def keep_plan(self, project_text: str, fingerprint: str, at: str) -> int:
        """Keep the project text the next entries belong to, unless it is the current one.

        Args:
            project_text: The project file, character by character.
            fingerprint: What identifies the plan made from it.
            at: Now. ISO 8601 with the offset from UTC.

        Returns:
            The number of the plan version in force from the next entry on. Range: 1 and up.

        Raises:
            ValueError: `at` is not such a time.
        """
        check_moment(at)
        with explain_failures(self._path):
            self._look_after_the_file()
            latest = self.latest_plan()
            if latest and (latest.project_text, latest.fingerprint) == (project_text, fingerprint):
                return latest.number
            row = plan_row(self._newest, at, fingerprint, project_text)
            with hold_write_right(self._connection):
                after = add_rows(self._connection, self._newest, plans=[row])
            self._recent.plans.append(row)
            self._have(after)
        return after.plan

    def keep_snapshot(self, seq: int, body: str, fingerprint: str, codec_version: int) -> None:
        """Keep the state after an entry to save time later; of the older snapshots only the latest remains.

        Args:
            seq: Place of the last entry the state contains. Range: 0 to `count()`.
            body: The state, in the caller's own form.
            fingerprint: The plan it belongs to.
            codec_version: Version of the form of `body`.

        Raises:
            ValueError: `seq` is beyond the newest entry or below 0.
        """
        with explain_failures(self._path):
            self._look_after_the_file()
            newest = self._newest.seq
            if not 0 <= seq <= newest:
                raise ValueError(f"seq must be from 0 to {newest} (got {seq!r})")
            digest = snapshot_digest(self._digest_at(seq), seq, fingerprint, codec_version, body)
            with hold_write_right(self._connection):
                self._connection.execute(
                    "INSERT INTO snapshot (seq, fingerprint, codec_version, body, digest) "
                    "VALUES (?, ?, ?, ?, ?)",
                    (seq, fingerprint, codec_version, body, digest),
                )
                self._connection.execute(
                    "DELETE FROM snapshot WHERE id NOT IN (SELECT id FROM snapshot ORDER BY id DESC LIMIT ?)",
                    (SNAPSHOTS_KEPT,),
                )
            self._signature = signature(self._path)

    def close(self) -> None:
        """Close the file and release the lock. A second call does nothing."""
        if self._closed:
            return
        self._closed = True
        try:
            with suppress(SurroundingsError, sqlite3.Error, OSError):
                with explain_failures(self._path):
                    self._look_after_the_file()
                self._copy()
                leave_nothing_beside(self._connection)
        finally:
            self._copies.close()
            super().close()
            self._lock.release()

    def _have(self, after: Newest) -> None:
        """Remember what is on the disk now, here and in the mark beside the journal."""
        self._newest = after
        self._signature = signature(self._path)
        if after.seq:
            self._copies.write_mark(after)

    def _copy(self) -> None:
        """Make a rolling copy; if that fails, say so and go on."""
        self._copied = self._newest.seq
        try:
            with explain_failures(self._path):
                self._copies.copy(self._newest)
        except SurroundingsError:
            if not self._told_of_copies:
                self._told_of_copies = True
                self._remarks.append(f"No copy of the journal can be made in {self._copies.folder.name}.")

    def _look_after_the_file(self) -> None:
        """Make sure that the journal is still the file the last commit left; otherwise put it back."""
        now = signature(self._path)
        if now and now == self._signature:
            return
        was, self._signature = self._signature, ()
        image = self._own_image()
        if not self._path.parent.is_dir():
            raise save_elsewhere(self._path, image)
        if now and now[:2] == was[:2]:
            self._connection.close()
            if self._is_as_it_was():
                return
        found = put_back_image(self._path, image, self._recent, self._newest, self._copies, self._title)
        aside = put_in_place(self._path, found, "found")
        self._connection.close()
        before = self._newest.seq
        self._connection, self._newest = open_existing(self._path, self._title)
        self._have(self._newest)
        lost = before - self._newest.seq
        self._remarks.append(
            f"{self._path.name} was {'deleted or moved' if aside is None else 'exchanged or changed'} "
            "while you were knitting and was written anew with "
            + (f"all but the last {lost} of {before} entries" if lost else f"all its {before} entries")
            + ("." if aside is None else f"; what lay there is kept as {aside.name}.")
        )

    def _own_image(self) -> bytes:
        """Return what the open file holds, wherever it lies now; empty if it cannot be read."""
        with suppress(sqlite3.Error):
            if self._connection.in_transaction:
                self._connection.execute("ROLLBACK")
            return self._connection.serialize()
        return b""

    def _is_as_it_was(self) -> bool:
        """Open the file again; return whether it holds what was kept, so that only its timestamps changed."""
        try:
            connection, newest = open_existing(self._path, self._title)
        except (DamagedError, NotAJournalError):
            return False
        if newest != self._newest:
            connection.close()
            return False
        self._connection = connection
        self._signature = signature(self._path)
        return True
