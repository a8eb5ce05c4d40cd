"""Files: plain ones of a bounded size are read, private ones are their owner's alone."""

from __future__ import annotations

import errno
import os
import stat
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from stepper.files import (
    create_private,
    keep_private,
    make_private_folder,
    open_plain,
    read_plain,
    write_private,
)

posix = pytest.mark.skipif(sys.platform == "win32", reason="permissions and pipes of POSIX")


@pytest.fixture(params=[0o000, 0o022, 0o077])
def _umask(request: pytest.FixtureRequest) -> Iterator[None]:
    """A process that grants all, the usual, or nothing."""
    before = os.umask(request.param)
    yield
    os.umask(before)


def mode(path: Path) -> int:
    """Return the permissions of a file."""
    return stat.S_IMODE(path.stat().st_mode)


@posix
def test_a_pipe_is_refused_at_once(tmp_path: Path) -> None:
    """Nobody may ever write into it, and the program would wait for ever."""
    pipe = tmp_path / "pipe"
    os.mkfifo(pipe)
    with pytest.raises(OSError, match="no plain file"):
        open_plain(pipe)


@posix
def test_a_device_is_refused(tmp_path: Path) -> None:
    """It may never end."""
    with pytest.raises(OSError, match="no plain file"):
        open_plain(Path("/dev/zero"))


def test_a_folder_is_refused_as_one(tmp_path: Path) -> None:
    """Callers say which file in it they mean."""
    with pytest.raises(OSError, match=r"folder|denied") as refused:
        open_plain(tmp_path)
    assert sys.platform == "win32" or refused.value.errno == errno.EISDIR


def test_a_file_is_read_up_to_its_largest_size(tmp_path: Path) -> None:
    """One byte more is refused with the size allowed."""
    path = tmp_path / "a"
    path.write_bytes(bytes(1000))
    assert read_plain(path, 1000) == bytes(1000)
    with pytest.raises(OSError, match="larger than 999 bytes"):
        read_plain(path, 999)


@posix
@pytest.mark.usefixtures("_umask")
def test_what_is_private_is_its_owners_whatever_the_process_grants(tmp_path: Path) -> None:
    """A shared computer's other users hear and read nothing of her."""
    folder = tmp_path / "deep" / "own"
    make_private_folder(folder)
    make_private_folder(folder)
    with create_private(folder / "one") as file:
        file.write(b"1")
    write_private(folder / "two", b"2")
    write_private(folder / "two", b"3")
    assert (folder / "two").read_bytes() == b"3"
    assert [mode(folder), mode(folder / "one"), mode(folder / "two")] == [0o700, 0o600, 0o600]
    assert sorted(each.name for each in folder.iterdir()) == ["one", "two"]


def test_a_private_file_is_never_created_over_another(tmp_path: Path) -> None:
    """Nor is a link followed."""
    (tmp_path / "one").write_bytes(b"1")
    with pytest.raises(FileExistsError):
        create_private(tmp_path / "one")


@posix
def test_a_private_file_that_cannot_be_written_leaves_the_old_one(tmp_path: Path) -> None:
    """And nothing beside it."""
    (tmp_path / "one" / "in").mkdir(parents=True)
    with pytest.raises(OSError, match="directory"):
        write_private(tmp_path / "one", b"2")
    assert sorted(each.name for each in tmp_path.iterdir()) == ["one"]


@posix
def test_what_was_open_to_others_is_closed(tmp_path: Path) -> None:
    """Journals of before are made private; a link's target is not ours to change."""
    path, link = tmp_path / "one", tmp_path / "link"
    path.write_bytes(b"")
    path.chmod(0o664)
    link.symlink_to(path)
    keep_private(link)
    assert mode(path) == 0o664
    keep_private(path)
    assert mode(path) == 0o600
    keep_private(tmp_path / "missing")
