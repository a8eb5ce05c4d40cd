from __future__ import annotations

import shutil
import sqlite3
import subprocess
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest

from stepper.errors import SurroundingsError
from stepper.store.examination import examine
from stepper.store.images import is_empty, open_image, read_image, refuse_other_header
from stepper.store.journal import Journal
from stepper.store.location import log_paths
from stepper.store.records import JournalEntry
from tests.store.damages import Original
from tests.store.disk import KILLED_WITH_A_LOG, listing, saved_journal

MakeEntry = Callable[[int], JournalEntry]
StartChild = Callable[..., "subprocess.Popen[str]"]


def count(path: Path) -> int:
    """Return how many entries an image has."""
    connection = open_image(path, read_image(path))
    (found,) = connection.execute("SELECT count(*) FROM entry").fetchone()
    connection.close()
    return int(found)


def test_reading_a_closed_journal_leaves_no_trace(path: Path, entry: MakeEntry) -> None:
    """Looking must change neither the file nor the folder, down to the time of change."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1)])
    before = (listing(path.parent), path.stat().st_mtime_ns)

    assert count(path) == 1
    assert (listing(path.parent), path.stat().st_mtime_ns) == before


def test_reading_an_open_journal_sees_the_last_commit(path: Path, entry: MakeEntry) -> None:
    """Someone may ask while she knits, and sees all that was answered."""
    with Journal.open(path, title="A") as journal:
        for n in range(1, 4):
            journal.append([entry(n)])
            assert count(path) == n


def test_a_log_is_read_and_left_alone(path: Path, start_child: StartChild) -> None:
    """A journal of before that was killed has its last entries beside it, and looking must not move them."""
    start_child(KILLED_WITH_A_LOG, saved_journal(path), 20).wait()
    before = listing(path.parent)

    assert count(path) == 23
    assert listing(path.parent) == before


def test_half_a_commit_is_taken_back_in_the_image_alone(whole: Original, tmp_path: Path) -> None:
    """What a kill in the middle of a commit leaves is read as it was before it, and the file not touched."""
    path = tmp_path / "cuff.journal"
    shutil.copy(whole.folder / "half", path)
    shutil.copy(whole.folder / "half-journal", log_paths(path)[1])
    before = listing(path.parent)
    connection = open_image(path, read_image(path))
    examine(connection, path)

    assert connection.execute("SELECT count(*) FROM entry").fetchone() == (len(whole.bodies),)
    with closing(open_image(path, path.read_bytes())) as alone, pytest.raises(SurroundingsError):
        examine(alone, path)  # it was in the middle of a commit indeed
    assert listing(path.parent) == before
    assert path.read_bytes() == before["cuff.journal"]


def test_an_image_cut_off_can_be_read_as_far_as_it_goes(path: Path, entry: MakeEntry) -> None:
    """SQLite refuses a file shorter than it says; its first pages must be readable all the same."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(n) for n in range(1, 2001)])
    connection = open_image(path, path.read_bytes()[:100_000])

    assert connection.execute("SELECT body FROM entry WHERE seq = 1").fetchone() is not None
    with pytest.raises(sqlite3.DatabaseError):
        connection.execute("SELECT body FROM entry WHERE seq = 2000").fetchone()


@pytest.mark.parametrize("header", [b"", b"SQLite", b"SQLite format 3\x00", b"title: Cuff\n", bytes(100)])
def test_what_is_no_database_is_refused(path: Path, header: bytes) -> None:
    """A file of another kind is named, not read."""
    with pytest.raises(SurroundingsError):
        refuse_other_header(path, header)
    with pytest.raises(SurroundingsError):
        open_image(path, header)


def test_nothing_and_nothing_in_it_are_the_same(path: Path) -> None:
    """An empty log holds nothing back."""
    assert is_empty(path)
    path.touch()
    assert is_empty(path)
    path.write_bytes(b"x")
    assert not is_empty(path)


def test_what_is_crossed_out_holds_nothing(path: Path, entry: MakeEntry) -> None:
    """Between two cues the file that would take a commit back is full of what was; none of it is to come back, and it
    must not be kept as though it mattered."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1)])
        beside = log_paths(path)[1]
        assert beside.stat().st_size > 4096
        assert is_empty(beside)


def test_an_image_is_padded_to_the_very_length_it_names(path: Path, entry: MakeEntry) -> None:
    """Whole it is taken as it is, a byte short it gets that byte, and what claims to be huge gets none. The length is that
    of SQLite's own header: pages of so many bytes, so many pages."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(n) for n in range(1, 101)])
    whole = path.read_bytes()
    assert int.from_bytes(whole[16:18], "big") * int.from_bytes(whole[28:32], "big") == len(whole)
    for image in (whole, whole[:-1], whole[:-4096]):
        connection = open_image(path, image)
        assert len(connection.serialize()) == len(whole)
        connection.close()
    claims = whole[:28] + (2**20).to_bytes(4, "big") + whole[32:]
    connection = open_image(path, claims)
    assert len(connection.serialize()) < 2 * len(whole)
    connection.close()


@pytest.mark.parametrize("page", [512, 4096, 32768, 65536])
def test_a_page_of_any_size_is_padded_to_its_length(page: int, tmp_path: Path) -> None:
    """The header names 65,536 bytes as 1, since they do not fit in its two. Source: SQLite file format, section 1.3.2;
    the files are SQLite's own."""
    made = tmp_path / "made"
    connection = sqlite3.connect(made)
    connection.execute(f"PRAGMA page_size = {page}")
    connection.execute("CREATE TABLE a (b)")
    connection.commit()
    connection.close()
    whole = made.read_bytes()
    assert len(whole) % page == 0
    opened = open_image(made, whole[:-7])
    assert len(opened.serialize()) == len(whole)
    assert opened.execute("SELECT count(*) FROM sqlite_schema").fetchone() == (1,)
    opened.close()


@pytest.mark.parametrize(("length", "word"), [(0, "cut off"), (16, "cut off"), (99, "cut off"), (100, "")])
def test_a_header_is_a_hundred_bytes(path: Path, length: int, word: str) -> None:
    """As SQLite's file format says (section 1.3); with one byte fewer it is cut off."""
    header = (b"SQLite format 3\x00" + bytes(100))[:length]
    if word:
        with pytest.raises(SurroundingsError):
            refuse_other_header(path, header)
    else:
        refuse_other_header(path, header)


def test_a_log_is_read_where_the_header_does_not_speak_of_it(path: Path, start_child: StartChild) -> None:
    """SQLite goes by the log that is there; with the mark in the header damaged the last entries are still in it."""
    start_child(KILLED_WITH_A_LOG, saved_journal(path), 20).wait()
    content = path.read_bytes()
    path.write_bytes(content[:18] + b"\x01\x01" + content[20:])
    before = listing(path.parent)

    assert count(path) == 23
    assert listing(path.parent) == before
