from __future__ import annotations

import os
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from stepper.store import migrations
from stepper.store.database import connect
from stepper.store.history import check_history
from stepper.store.location import log_paths, unfinished_path
from stepper.store.migrations import MIGRATIONS, Migration
from stepper.store.new_files import create_journal, put_in_place
from tests.store.disk import listing


def test_a_new_journal_is_whole_and_alone(path: Path) -> None:
    """Made under another name and then renamed, it is never there in part."""
    create_journal(path, "Cuff")
    with closing(connect(path, mode="ro")) as connection:
        assert check_history(connection).seq == 0
        assert connection.execute("SELECT title FROM garment").fetchone() == ("Cuff",)
    assert [each.name for each in path.parent.iterdir()] == [path.name]


def test_what_takes_back_half_a_commit_of_a_journal_that_is_gone_is_put_aside(path: Path) -> None:
    """Left under its name it would be worked into the new journal, and it is no one's to delete."""
    log_paths(path)[1].write_bytes(b"left over")
    create_journal(path, "Cuff")
    (aside,) = [each for each in path.parent.iterdir() if each != path]

    assert aside.read_bytes() == b"left over"
    assert "-journal-old-" in aside.name


def test_where_it_cannot_be_written_what_was_there_stays(path: Path) -> None:
    """A full disk, here a folder in the way, must not cost the file that is to be replaced."""
    path.write_bytes(b"something")
    unfinished_path(path).mkdir()
    with pytest.raises(OSError, match=r".+"):
        put_in_place(path, b"journal", "damaged")

    assert path.read_bytes() == b"something"


def test_what_a_killed_session_half_wrote_is_in_nobodys_way(path: Path) -> None:
    """The journal is put back also where putting it back was broken off before."""
    unfinished_path(path).write_bytes(b"half of a journal that was longer")
    assert put_in_place(path, b"journal", "damaged") is None
    assert listing(path.parent) == {path.name: b"journal"}


def test_nothing_is_overwritten_when_a_journal_is_put_in_place(path: Path) -> None:
    """What bore the name, and what lay beside it, is there afterwards under names of their own."""
    path.write_bytes(b"something")
    for each in log_paths(path):
        each.write_bytes(each.name.encode())
    aside = put_in_place(path, b"journal", "damaged")

    assert path.read_bytes() == b"journal"
    assert aside is not None
    assert not any(each.exists() for each in log_paths(path))  # it would be worked into the new journal
    assert sorted(listing(path.parent).values()) == sorted(
        [b"journal", b"something", *(each.name.encode() for each in log_paths(path))]
    )


@pytest.mark.skipif(not hasattr(os, "symlink"), reason="this system has no links")
def test_a_link_is_put_aside_as_the_link_it_is(path: Path, tmp_path: Path) -> None:
    """What it points to lies on her other drive and stays there alone; a second name for it here would be a surprise."""
    elsewhere = tmp_path / "elsewhere"
    elsewhere.write_bytes(b"something")
    path.symlink_to(elsewhere)
    aside = put_in_place(path, b"journal", "old")

    assert aside is not None
    assert aside.is_symlink()
    assert (aside.read_bytes(), path.read_bytes(), elsewhere.stat().st_nlink) == (b"something", b"journal", 1)


def test_on_a_disk_without_hard_links_what_bore_the_name_is_kept_too(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A stick formatted with FAT knows one name for a file and no other: the old one is renamed instead."""

    def refuse(*_: object, **__: object) -> None:
        raise PermissionError

    path.write_bytes(b"something")
    monkeypatch.setattr(os, "link", refuse)
    aside = put_in_place(path, b"journal", "damaged")
    assert aside is not None
    assert (path.read_bytes(), aside.read_bytes()) == (b"journal", b"something")


def test_there_is_no_moment_without_a_journal(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A kill between the setting aside and the putting back would leave nothing under her journal's name."""
    there: list[bool] = []
    rename = Path.replace

    def watched(source: Path, target: Path) -> Path:
        done = rename(source, target)
        there.append(path.exists())
        return done

    path.write_bytes(b"something")
    log_paths(path)[1].write_bytes(b"beside it")
    monkeypatch.setattr(Path, "replace", watched)
    put_in_place(path, b"journal", "damaged")
    assert there == [True, True]


def test_while_it_is_made_a_journal_is_one_file(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A kill in the middle leaves one file that is thrown away, and no log that a later one would be worked in with."""
    seen: list[list[str]] = []

    def look(connection: sqlite3.Connection) -> None:
        connection.execute("CREATE TABLE looked (at INTEGER)")
        seen.append([each.name for each in path.parent.iterdir()])

    last = Migration(version=len(MIGRATIONS) + 1, name="look around", apply=look)
    monkeypatch.setattr(migrations, "MIGRATIONS", (*MIGRATIONS, last))
    create_journal(path, "Cuff")
    assert seen == [[unfinished_path(path).name]]


@pytest.mark.skipif(not hasattr(os, "symlink"), reason="this system has no links")
def test_a_link_that_leads_nowhere_is_put_aside_too(path: Path, tmp_path: Path) -> None:
    """The drive it points to is not plugged in today: where the link went, nobody would find her journal tomorrow."""
    path.symlink_to(tmp_path / "not plugged in")
    aside = put_in_place(path, b"journal", "old")

    assert aside is not None
    assert aside.readlink() == tmp_path / "not plugged in"
    assert path.read_bytes() == b"journal"
