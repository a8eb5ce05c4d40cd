from __future__ import annotations

import json
import os
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from stepper.store.copies import COPY_EVERY, DAYS_KEPT, NEWEST_KEPT, Copies, choose_copies
from stepper.store.journal import Journal
from stepper.store.records import JournalEntry, Newest

MakeEntry = Callable[[int], JournalEntry]


def knit(path: Path, entry: MakeEntry, first: int, last: int) -> None:
    """Keep entries one by one, as a sitting does."""
    with Journal.open(path, title="A") as journal:
        for n in range(first, last + 1):
            journal.append([entry(n)])


def test_a_copy_restored_by_hand_is_the_journal(path: Path, entry: MakeEntry, tmp_path: Path) -> None:
    """The way out that needs no program: copy the newest file of the folder back under the journal's name."""
    knit(path, entry, 1, 30)
    (copy,) = Copies(path).listed()
    elsewhere = tmp_path / "elsewhere" / "cuff.journal"
    elsewhere.parent.mkdir()
    shutil.copy(copy, elsewhere)

    with Journal.open(elsewhere, title="A") as journal:
        assert [each.body for each in journal.entries()] == [entry(n).body for n in range(1, 31)]
        assert journal.take_remarks() == ()


def test_copies_are_made_within_a_sitting_and_at_its_end(path: Path, entry: MakeEntry) -> None:
    """However long the evening, at most so many entries are in the journal alone."""
    with Journal.open(path, title="A") as journal:
        journal.append(
            [entry(n) for n in range(1, COPY_EVERY - 1)]
        )  # at once: each append waits for the disk
        for n in range(COPY_EVERY - 1, COPY_EVERY + 3):
            journal.append([entry(n)])
        name = Copies(path).mark()
        assert name is not None
        assert Copies(path).reach(name.journal) == COPY_EVERY
    assert Copies(path).reach(name.journal) == COPY_EVERY + 2


def test_a_killed_sittings_entries_are_copied_when_the_next_begins(path: Path, entry: MakeEntry) -> None:
    """Before anything new is kept, what the last sitting left is in a copy."""
    knit(path, entry, 1, 5)
    shutil.rmtree(Copies(path).folder)
    with Journal.open(path, title="A"):
        assert [each.stem.split("-")[-2] for each in Copies(path).listed()] == ["00005"]


def test_an_evening_is_copied_every_250_entries() -> None:
    """As the handbook of the journal promises: 250 cues are about an hour's, at one in fifteen seconds."""
    assert COPY_EVERY == 250


def test_a_journal_only_looked_into_is_not_copied_again(path: Path, entry: MakeEntry) -> None:
    """Her newest copies are of different evenings and not three times the same."""
    knit(path, entry, 1, 5)
    (copy,) = Copies(path).listed()
    before = copy.stat()
    knit(path, entry, 6, 5)
    assert [(each, each.stat()) for each in Copies(path).listed()] == [(copy, before)]


def test_the_newest_and_the_last_of_some_days_are_kept(tmp_path: Path) -> None:
    """Many short sittings in a day must not push out the evenings before."""
    names = [
        tmp_path / f"left-cuff-2025-03-{day:02}-{hour:02}0000-entry-{day * 100 + hour:05}-abcdef01.journal"
        for day in range(1, 12)
        for hour in range(18, 23)
    ]
    left = sorted(each.stem.split("-")[-2] for each in choose_copies(sorted(names, reverse=True)))

    assert left[-NEWEST_KEPT:] == ["01120", "01121", "01122"]
    assert left[:-NEWEST_KEPT] == ["00822", "00922", "01022", "01119"]
    assert len(left) == NEWEST_KEPT + DAYS_KEPT


def test_a_journal_does_not_delete_anothers_copies(path: Path, entry: MakeEntry) -> None:
    """A journal begun anew beside the copies of the one before leaves those alone."""
    folder = Copies(path).folder
    folder.mkdir()
    others = {folder / f"switchback-2020-01-0{n}-180000-entry-00009-00000000.journal" for n in range(1, 10)}
    for each in others:
        each.write_bytes(b"kept by someone")
    for first in range(1, 9):
        knit(path, entry, first, first)

    assert others <= set(Copies(path).listed())


def test_the_name_of_a_copy_ends_in_how_many_entries_it_has_and_eight_letters_of_the_journals_name(
    path: Path, entry: MakeEntry
) -> None:
    """Copies of before are known by their names: with another number of letters they would count as another garment's."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1), entry(2), entry(3)])
    (copy,) = Copies(path).listed()
    mark = Copies(path).mark()
    assert mark is not None
    assert copy.stem.rsplit("-", 3)[1:] == ["entry", "00003", mark.journal[:8]]
    assert len(bytes.fromhex(mark.journal)) == 16  # as long as a UUID (RFC 9562), and for the same reason


def test_where_there_is_no_copy_none_reaches_any_entry(path: Path) -> None:
    """Nought entries, as of a journal that is empty; below nought would be fewer than none."""
    assert Copies(path).reach("a1") == 0


def test_only_a_copy_of_this_journal_by_its_name_says_how_far_the_copies_reach(path: Path, entry: MakeEntry) -> None:
    """A file she put there herself must not pass for a copy, or none would be made any more."""
    knit(path, entry, 1, 5)
    copies = Copies(path)
    name = copies.mark()
    assert name is not None
    (copy,) = copies.listed()
    for words in (("-entry-00005-", "-note-00009-"), ("-entry-00005-", "-entry-nine-"), ("-entry-00005-", "-entry-00009-x")):
        shutil.copy(copy, copy.with_name(copy.name.replace(*words)))
    assert copies.reach(name.journal) == 5
    shutil.copy(copy, copy.with_name(copy.name.replace("-00005-", "-00009-")))
    assert copies.reach(name.journal) == 9


def test_the_mark_is_what_was_noted_last_however_long_that_before_was(path: Path) -> None:
    """It is written over in its place, so what a longer one leaves behind must not spoil it. Another sitting reads it."""
    copies = Copies(path)
    long = Newest(journal="a" * 40, seq=123456, digest=b"\xff" * 16, plan=12, plan_digest=b"\xee" * 16)
    short = Newest(journal="b", seq=1, digest=b"\x01", plan=1, plan_digest=b"\x02")
    for newest in (short, long, short):
        copies.write_mark(newest)
        assert Copies(path).mark() == newest
    copies.close()
    copies.write_mark(long)
    assert Copies(path).mark() == long


def test_a_folder_deleted_within_a_sitting_is_made_anew_with_its_mark(path: Path, entry: MakeEntry) -> None:
    """A mark kept in a file that nobody can see any more would tell the next sitting nothing."""
    knit(path, entry, 1, 5)
    copies = Copies(path)
    newest = copies.mark()
    assert newest is not None
    copies.write_mark(newest)
    shutil.rmtree(copies.folder)
    copies.copy(newest)
    assert (Copies(path).mark(), Copies(path).reach(newest.journal)) == (newest, 5)


def test_a_mark_written_by_a_version_of_before_is_still_one(path: Path) -> None:
    """Word for word as it was kept once: a mark that is not believed would let an older journal pass in silence."""
    copies = Copies(path)
    copies.folder.mkdir()
    (copies.folder / "newest").write_text(
        '{"journal":"a1","entry":5,"digest":"00ff","plan":1,"plan_digest":"11","check":"c0bdb9f23c769537"}'
    )
    assert copies.mark() == Newest(journal="a1", seq=5, digest=b"\x00\xff", plan=1, plan_digest=b"\x11")


def test_a_mark_that_is_damaged_is_no_mark(path: Path, entry: MakeEntry) -> None:
    """A wrong mark would tell her that entries are missing which never were."""
    knit(path, entry, 1, 5)
    mark = Copies(path).folder / "newest"
    noted = json.loads(mark.read_text())
    assert noted["entry"] == 5
    for change in ({"entry": 9}, {"digest": "00"}, {"check": "0"}):
        mark.write_text(json.dumps({**noted, **change}))
        assert Copies(path).mark() is None
    mark.write_bytes(b"\xff")
    assert Copies(path).mark() is None


@pytest.mark.skipif(not hasattr(os, "symlink"), reason="this system has no links")
def test_a_mark_that_is_a_link_is_not_followed(path: Path, entry: MakeEntry, tmp_path: Path) -> None:
    """Nothing outside is written to, whatever lies under the mark's name."""
    other = tmp_path / "diary"
    other.write_text("dear diary")
    Copies(path).folder.mkdir()
    (Copies(path).folder / "newest").symlink_to(other)
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1)])

    assert other.read_text() == "dear diary"


def test_where_no_copy_can_be_made_it_is_said_once_and_knitting_goes_on(path: Path, entry: MakeEntry) -> None:
    """A file in place of the folder costs the copies, never the knitting."""
    Copies(path).folder.write_text("in the way")
    with Journal.open(path, title="A") as journal:
        for first in range(1, 2 * COPY_EVERY + 2, 50):  # several at once: each append waits for the disk
            journal.append([entry(n) for n in range(first, first + 50)])
        remarks = journal.take_remarks()

    assert remarks == ("No copy of the journal can be made in switchback.journal-copies.",)


def test_sittings_of_one_day_leave_the_newest_copies_and_the_last_before_them(path: Path, entry: MakeEntry) -> None:
    """Copies that nobody needs are taken off the disk. By hand: of nine sittings today the newest few, and of the others
    the last one of the day."""
    for first in range(1, 10):
        knit(path, entry, first, first)
    entries = [int(each.stem.split("-")[-2]) for each in Copies(path).listed()]
    assert entries == [9 - back for back in range(NEWEST_KEPT + 1)]


def test_a_folder_named_like_a_copy_is_none(path: Path, entry: MakeEntry) -> None:
    """Someone who sorts her backups may make one; to take it for the fullest copy would be to read nothing."""
    knit(path, entry, 1, 5)
    (copy,) = Copies(path).listed()
    (copy.parent / f"z{copy.name}").mkdir()
    assert Copies(path).listed() == [copy]
