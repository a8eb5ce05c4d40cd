"""Rolling copies of a journal, and the mark of its newest entry, in a folder beside it.

Each copy is a whole journal; its name says when it was made, how many entries it has and which journal it is
a copy of. The mark says how much the journal must hold at least, which exposes a file exchanged for an
earlier one. It is written after each commit without waiting for the disk, so after a power cut it may be
behind the journal, never ahead of it.
"""

from __future__ import annotations

import json
import os
import sqlite3
from collections.abc import Iterable
from contextlib import closing, suppress
from datetime import datetime
from hashlib import blake2b
from pathlib import Path
from typing import Final

from stepper.files import AS_IT_IS, NO_LINK, PRIVATE_FILE, make_private_folder, write_new_private
from stepper.store.database import connect
from stepper.store.location import SUFFIX, copies_folder
from stepper.store.records import Newest

COPY_EVERY: Final = 250
"""Entries between two copies within a sitting."""
NEWEST_KEPT: Final = 3
"""Number of newest copies kept, whatever their day."""
DAYS_KEPT: Final = 4
"""Number of earlier days whose last copy is kept as well."""

_MARK: Final = "newest"
_MARK_BYTES: Final = 256
_NAME_LETTERS: Final = 8
"""Number of letters of the journal's own name that go into the name of a copy."""


class Copies:
    """The copies of one journal.

    Args:
        journal: The journal.
    """

    def __init__(self, journal: Path) -> None:
        self._journal = journal
        self.folder = copies_folder(journal)
        self._mark: int | None = None

    def listed(self) -> list[Path]:
        """Return the copies of any journal, newest first."""
        try:
            found = [each for each in self.folder.iterdir() if each.suffix == SUFFIX and each.is_file()]
        except OSError:
            return []
        return sorted(found, reverse=True)

    def reach(self, journal: str) -> int:
        """Return how many entries a journal's fullest copy has, going by the copies' names; 0 if none.

        Args:
            journal: The journal's own name.
        """
        return max((_entries_of(each, journal) for each in self.listed()), default=0)

    def mark(self) -> Newest | None:
        """Return what was kept last according to the mark; None if the mark is missing or damaged."""
        try:
            with (self.folder / _MARK).open("rb") as file:
                noted = json.loads(file.read(_MARK_BYTES))
            newest = Newest(
                journal=noted["journal"],
                seq=noted["entry"],
                digest=bytes.fromhex(noted["digest"]),
                plan=noted["plan"],
                plan_digest=bytes.fromhex(noted["plan_digest"]),
            )
            return newest if _noted(newest) == noted else None
        except (OSError, ValueError, KeyError, TypeError):
            return None

    def write_mark(self, newest: Newest) -> None:
        """Note what was kept last. A failure is ignored: it does the journal no harm."""
        text = json.dumps(_noted(newest), separators=(",", ":")).ljust(_MARK_BYTES).encode()
        with suppress(OSError):
            if self._mark is None:
                make_private_folder(self.folder)
                flags = os.O_WRONLY | os.O_CREAT | NO_LINK | AS_IT_IS
                self._mark = os.open(self.folder / _MARK, flags, PRIVATE_FILE)
            os.lseek(self._mark, 0, os.SEEK_SET)
            os.write(self._mark, text)

    def copy(self, newest: Newest) -> None:
        """Copy the journal as it is now, unless such a copy exists, and delete copies no longer needed.

        Args:
            newest: How far the journal goes.

        Raises:
            OSError: It cannot be done.
            sqlite3.Error: The same, said by SQLite.
        """
        if self.reach(newest.journal) == newest.seq:
            return
        self.close()  # the folder may have been replaced by now, and the mark with it
        make_private_folder(self.folder)
        unfinished = self.folder / "unfinished"
        unfinished.unlink(missing_ok=True)
        try:
            with closing(connect(self._journal, mode="ro")) as source:
                image = _backed_up(source)
            write_new_private(unfinished, image)
            name = f"{self._journal.stem}-{datetime.now():%Y-%m-%d-%H%M%S}-entry-{newest.seq:05d}"
            unfinished.replace(self.folder / f"{name}-{newest.journal[:_NAME_LETTERS]}{SUFFIX}")
        finally:
            unfinished.unlink(missing_ok=True)
        self._let_go(newest.journal)
        self.write_mark(newest)

    def close(self) -> None:
        """Close the mark. A second call does nothing."""
        descriptor, self._mark = self._mark, None
        if descriptor is not None:
            os.close(descriptor)

    def _let_go(self, journal: str) -> None:
        """Delete those of this journal's copies that need not be kept."""
        own = [each for each in self.listed() if _entries_of(each, journal)]
        for each in set(own) - choose_copies(own):
            with suppress(OSError):
                each.unlink()


def choose_copies(copies: Iterable[Path]) -> set[Path]:
    """Choose the copies to keep: the newest, and the last one of each of a few earlier days.

    Args:
        copies: All of one journal, newest first.
    """
    names = list(copies)
    by_day: dict[str, Path] = {}
    for each in names[NEWEST_KEPT:]:
        by_day.setdefault("-".join(each.stem.rsplit("-", 7)[1:4]), each)
    return {*names[:NEWEST_KEPT], *list(by_day.values())[:DAYS_KEPT]}


def _entries_of(copy: Path, journal: str) -> int:
    """Return how many entries a copy has according to its name; 0 if it belongs to another journal."""
    *_, entry, count, own = ("", "", "", *copy.stem.rsplit("-", 3))
    if entry != "entry" or own != journal[:_NAME_LETTERS] or not count.isdecimal():
        return 0
    return int(count)


def _backed_up(source: sqlite3.Connection) -> bytes:
    """Copy a database in one go by SQLite's own backup."""
    with closing(sqlite3.connect(":memory:", isolation_level=None)) as target:
        source.backup(target)
        return target.serialize()


def _noted(newest: Newest) -> dict[str, str | int]:
    noted: dict[str, str | int] = {
        "journal": newest.journal,
        "entry": newest.seq,
        "digest": newest.digest.hex(),
        "plan": newest.plan,
        "plan_digest": newest.plan_digest.hex(),
    }
    check = blake2b(json.dumps(noted, sort_keys=True).encode(), digest_size=8).hexdigest()
    return {**noted, "check": check}
