"""What happens to a journal while a session has it open, and what a copy of the file alone is worth."""

from __future__ import annotations

import os
import random
import shutil
import sqlite3
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest

from stepper.errors import SurroundingsError
from stepper.store.copies import Copies
from stepper.store.history import add_rows
from stepper.store.images import is_empty
from stepper.store.journal import Journal
from stepper.store.location import copies_folder, lock_path, log_paths
from stepper.store.records import JournalEntry, Newest
from stepper.store.recovery import RecentRows, put_back_image, save_elsewhere, signature
from tests.store.disk import is_plain, listing

MakeEntry = Callable[[int], JournalEntry]
StartChild = Callable[..., "subprocess.Popen[str]"]
AT = "2025-03-03T20:15:00+01:00"

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="an open file cannot be moved there")

KNIT_ALONG = """
import json, sys
from pathlib import Path
from stepper.errors import SurroundingsError
from stepper.store.journal import Journal
from stepper.store.records import JournalEntry
journal = Journal.open(Path(sys.argv[1]), title="A")
for n in range(1, 100_000):
    journal.append([JournalEntry(at="2025-03-03T20:15:00+01:00", kind="K", body=str(n), version=1)])
    print(n, flush=True)
"""

GET_IN = """
import sys
from pathlib import Path
from stepper.errors import SurroundingsError
from stepper.store.journal import Journal
try:
    Journal.open(Path(sys.argv[1]), title="A")
    print("got in")
except SurroundingsError as error:
    print(error)
"""


@pytest.fixture
def sitting(path: Path, entry: MakeEntry) -> Iterator[Journal]:
    """A journal with an evening before, open with three entries of this one."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(n) for n in range(1, 11)])
    journal = Journal.open(path, title="A")
    journal.keep_plan("title: A\n", "f", AT)
    journal.append([entry(n) for n in range(11, 14)])
    journal.keep_snapshot(12, "{}", "f", 1)
    yield journal
    journal.close()


def goes_on(journal: Journal, entry: MakeEntry) -> str:
    """Keep one entry more; return what is told, once everything is found to be there."""
    assert journal.append([entry(14)]) == (14,)
    (remark,) = journal.take_remarks()
    assert is_plain(remark)
    assert "\n" not in remark
    journal.append([entry(15)])
    assert journal.take_remarks() == ()
    with Journal.read_only(journal.path) as reader:
        assert [each.body for each in reader.entries()] == [entry(n).body for n in range(1, 16)]
        assert [each.project_text for each in reader.plan_versions()] == ["title: A\n"]
        assert reader.take_remarks() == ()
    return remark


def test_a_journal_deleted_while_she_knits_is_written_anew(sitting: Journal, entry: MakeEntry) -> None:
    """Nothing answered may go down with the name: the next commit notices and writes it all again."""
    sitting.path.unlink()

    assert goes_on(sitting, entry) == (
        "switchback.journal was deleted or moved while you were knitting and was written anew with "
        "all its 13 entries."
    )


def test_a_journal_renamed_while_she_knits_is_written_anew(sitting: Journal, entry: MakeEntry) -> None:
    """The file moved away stays as it is, and the evening goes on under its own name."""
    moved = sitting.path.with_name("tidied away")
    sitting.path.rename(moved)
    before = moved.read_bytes()
    goes_on(sitting, entry)

    assert moved.read_bytes() == before


def test_a_journal_replaced_while_she_knits_is_put_aside(sitting: Journal, entry: MakeEntry) -> None:
    """A file put in its place by a synchronising program is kept under another name, and hers goes on."""
    strange = sitting.path.with_name("strange")
    strange.write_bytes(b"from elsewhere")
    strange.replace(sitting.path)
    remark = goes_on(sitting, entry)

    (aside,) = sitting.path.parent.glob("*-found-*")
    assert aside.read_bytes() == b"from elsewhere"
    assert "was exchanged or changed while you were knitting" in remark
    assert aside.name in remark


@pytest.mark.parametrize("content", [b"", b"from elsewhere" * 900, None])
def test_a_journal_overwritten_while_she_knits_is_made_good(
    sitting: Journal, entry: MakeEntry, content: bytes | None
) -> None:
    """Written over in place, nothing of the file is left: the copies and what is in memory are the journal."""
    if content is None:
        content = Copies(sitting.path).listed()[-1].read_bytes()  # an earlier state of its own
    sitting.path.write_bytes(content)
    remark = goes_on(sitting, entry)

    (aside,) = sitting.path.parent.glob("*-found-*")
    assert aside.read_bytes() == content
    assert "with all its 13 entries" in remark


def test_the_journal_and_its_copies_deleted_while_she_knits(sitting: Journal, entry: MakeEntry) -> None:
    """A whole folder emptied under the program costs nothing either."""
    sitting.path.unlink()
    shutil.rmtree(copies_folder(sitting.path))
    for log in log_paths(sitting.path):
        log.unlink(missing_ok=True)
    goes_on(sitting, entry)


def test_what_is_left_in_the_file_itself_is_read_where_its_copies_are_gone(
    sitting: Journal, entry: MakeEntry, tmp_path: Path
) -> None:
    """The evening before stands nowhere else then: a row changed by another program must not cost all the others."""
    other = tmp_path / "other"
    shutil.copy(sitting.path, other)
    with closing(sqlite3.connect(other, isolation_level=None)) as connection:
        connection.execute("UPDATE newest SET seq = 9")
    shutil.rmtree(copies_folder(sitting.path))
    sitting.path.write_bytes(other.read_bytes())
    assert "with all its 13 entries" in goes_on(sitting, entry)


def test_an_equal_file_that_another_program_put_there_and_holds_is_put_aside(sitting: Journal, entry: MakeEntry) -> None:
    """A synchronising program is not done with what it wrote: she need not wait for it, nor does it write into hers."""
    theirs = sitting.path.with_name("theirs")
    shutil.copy(sitting.path, theirs)
    theirs.replace(sitting.path)
    with closing(sqlite3.connect(sitting.path, isolation_level=None)) as holder:
        holder.execute("BEGIN EXCLUSIVE")
        assert "what lay there is kept as" in goes_on(sitting, entry)


def test_a_journal_deleted_in_the_middle_of_a_commit_is_missed_at_the_next(
    sitting: Journal, entry: MakeEntry, monkeypatch: pytest.MonkeyPatch
) -> None:
    """That commit went into a file without a name; nothing more may follow it there."""

    def add_and_lose(*given: Any, **named: Any) -> Newest:
        after = add_rows(*given, **named)
        sitting.path.unlink()
        return after

    monkeypatch.setattr("stepper.store.journal.add_rows", add_and_lose)
    sitting.append([entry(14)])
    monkeypatch.undo()
    assert sitting.append([entry(15)]) == (15,)
    assert "was deleted or moved" in sitting.take_remarks()[0]
    with Journal.read_only(sitting.path) as reader:
        assert reader.count() == 15


def test_a_journal_closed_already_is_left_to_who_has_it_now(sitting: Journal, entry: MakeEntry) -> None:
    """Closed twice, as where a window is shut behind a good night, it must not touch what the next sitting keeps."""
    sitting.close()
    with Journal.open(sitting.path, title="A") as next_one:
        next_one.append([entry(14)])
    before = listing(sitting.path.parent)
    sitting.close()
    assert listing(sitting.path.parent) == before


def test_a_journal_only_touched_is_not_spoken_of(sitting: Journal, entry: MakeEntry) -> None:
    """A new time alone, as a backup leaves it, is no damage and must not be reported as one."""
    os.utime(sitting.path)
    before = listing(sitting.path.parent).keys()
    assert sitting.append([entry(14)]) == (14,)

    assert sitting.take_remarks() == ()
    assert listing(sitting.path.parent).keys() == before
    assert sitting.append([entry(15)]) == (15,)


def test_a_journal_deleted_at_the_very_end_is_put_back_before_it_is_closed(sitting: Journal) -> None:
    """She says good night, and tomorrow's first words are not about a file that was missing."""
    sitting.path.unlink()
    sitting.close()
    with Journal.open(sitting.path, title="A") as journal:
        assert (journal.count(), journal.take_remarks()) == (13, ())


def test_what_this_evening_kept_is_remembered_where_file_and_copies_are_spoilt(path: Path, entry: MakeEntry) -> None:
    """A garment begun tonight is whole in memory: text and entries are written anew, and none is told to be lost."""
    with Journal.open(path, title="A") as journal:
        journal.keep_plan("title: A\n", "f", AT)
        journal.append([entry(n) for n in range(1, 4)])
        shutil.rmtree(copies_folder(path))
        path.write_bytes(b"\0" * path.stat().st_size)
        journal.append([entry(4)])
        (remark,) = journal.take_remarks()
        assert "with all its 3 entries" in remark
    with Journal.read_only(path) as reader:
        assert [each.body for each in reader.entries()] == [entry(n).body for n in range(1, 5)]
        assert [each.project_text for each in reader.plan_versions()] == ["title: A\n"]


def test_a_snapshot_or_a_text_notices_as_well(sitting: Journal) -> None:
    """Whatever is kept next, the journal is looked after first."""
    sitting.path.unlink()
    sitting.keep_snapshot(13, "{}", "f", 1)
    assert len(sitting.take_remarks()) == 1
    sitting.path.unlink()
    assert sitting.keep_plan("title: B\n", "g", AT) == 2
    assert len(sitting.take_remarks()) == 1


def test_a_folder_that_is_gone_is_said_with_where_the_knitting_is_now(
    sitting: Journal, entry: MakeEntry, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """With no place left to write to, what was answered is kept in the home folder and the sentence says so."""
    home = tmp_path / "home"
    home.mkdir()
    monkeypatch.setattr(Path, "home", lambda: home)
    folder = tmp_path / "knitting"
    folder.mkdir()
    path = folder / "b.journal"
    journal = Journal.open(path, title="A")
    journal.append([entry(1), entry(2)])
    shutil.rmtree(folder)
    with pytest.raises(SurroundingsError) as refused:
        journal.append([entry(3)])

    (saved,) = home.iterdir()
    assert str(saved) in str(refused.value)
    assert "\n" not in str(refused.value)
    with Journal.read_only(saved) as alone:
        assert [each.body for each in alone.entries()] == [entry(n).body for n in (1, 2)]
    folder.mkdir()
    shutil.copy(saved, path)
    journal.close()
    with Journal.open(path, title="A") as again:
        assert again.count() == 2


def test_a_second_program_does_not_get_in_where_the_lock_was_deleted(
    sitting: Journal, entry: MakeEntry, start_child: StartChild
) -> None:
    """Two programs must never count the same garment, whoever tidied up the folder."""
    lock_path(sitting.path).unlink()
    out, complaint = start_child(GET_IN, sitting.path).communicate(timeout=60)

    assert complaint == ""
    assert "is in use by another program" in out
    assert sitting.append([entry(14)]) == (14,)
    assert sitting.take_remarks() == ()
    out, _ = start_child(GET_IN, sitting.path).communicate(timeout=60)
    assert "got in" not in out


def test_a_copy_of_the_file_alone_has_every_answered_entry(path: Path, entry: MakeEntry) -> None:
    """Copied between two cues the one file has everything, to the last entry; nothing lives beside it."""
    alone = path.with_name("alone.journal")
    with Journal.open(path, title="A") as journal:
        for n in range(1, 61):
            journal.append([entry(n)])
            subprocess.run(["cp", path, alone], check=True) if n % 5 == 0 else shutil.copy(path, alone)
            with closing(sqlite3.connect(alone)) as copied:
                assert copied.execute("SELECT max(seq), count(*) FROM entry").fetchone() == (n, n)
            assert all(map(is_empty, log_paths(path)))
            # With what lies beside it copied along, nothing that was answered is taken back either.
            shutil.copy(log_paths(path)[1], log_paths(alone)[1])
            with closing(sqlite3.connect(alone)) as copied:
                assert copied.execute("SELECT max(seq), count(*) FROM entry").fetchone() == (n, n)
            log_paths(alone)[1].unlink(missing_ok=True)
            alone.unlink()


def test_a_copy_made_in_the_middle_of_a_commit_is_never_another_state(
    tmp_path: Path, start_child: StartChild
) -> None:
    """Copied while it is written to, the file has all that was answered before; or is found to be torn, and
    what can be read of it is a beginning of the history, told as such."""
    path = tmp_path / "a.journal"
    child = start_child(KNIT_ALONG, path)
    assert child.stdout
    answered, torn, choose = 0, 0, random.Random(1)
    for turn in range(25):
        for _ in range(choose.randint(1, 12)):
            answered = int(child.stdout.readline())
        alone = tmp_path / str(turn) / "a.journal"
        alone.parent.mkdir()
        alone.write_bytes(path.read_bytes())
        try:
            with Journal.open(alone, title="A") as journal:
                remarks, bodies = journal.take_remarks(), [int(each.body) for each in journal.entries()]
        except SurroundingsError:
            torn += 1
            continue
        assert bodies == list(range(1, len(bodies) + 1))
        assert len(bodies) >= answered or remarks
        torn += bool(remarks)
    assert torn < 25


def test_a_signature_is_empty_without_a_file(path: Path) -> None:
    """What is not there is told apart from what is."""
    assert signature(path) == ()
    path.write_bytes(b"x")
    first = signature(path)
    assert first
    os.utime(path, ns=(1, 1))

    assert signature(path) != first


def test_what_cannot_be_put_back_is_refused(path: Path) -> None:
    """With nothing left in file, memory and copies, the refusal is a sentence and no empty journal is made."""
    gone = Newest(journal="j", seq=9, digest=b"x" * 16, plan=0, plan_digest=b"x")
    with pytest.raises(SurroundingsError, match="is damaged"):
        put_back_image(path, b"", RecentRows(), gone, Copies(path), "A")
    assert is_plain(str(save_elsewhere(path, b"")))


def test_a_folder_gone_with_nothing_left_of_it_litters_no_other(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """An empty file in her home folder would look like her knitting, and hold none of it."""
    monkeypatch.setattr(Path, "home", lambda: tmp_path)
    assert "cannot be written elsewhere" in str(save_elsewhere(tmp_path / "gone" / "b.journal", b""))
    assert list(tmp_path.iterdir()) == []


def test_copies_of_another_journal_are_not_put_in_its_place(path: Path, entry: MakeEntry) -> None:
    """The evenings of a garment begun before under the same name are another knitting: refused, not mixed with this one."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(n) for n in range(1, 11)])
    with Journal.open(path, title="A") as journal:
        journal.append([entry(11)])
    copies = Copies(path)
    assert copies.listed()
    gone = Newest(journal="another", seq=3, digest=b"x" * 16, plan=0, plan_digest=b"x" * 16)
    with pytest.raises(SurroundingsError, match="is damaged"):
        put_back_image(path, b"", RecentRows(), gone, copies, "A")
